//! What a person at a terminal sees: lines that break between words at the terminal's own width, help however it is asked for,
//! and a photo where the event folder belongs.

#[cfg(unix)]
mod typed;

use std::ffi::OsString;
use std::io::Write;
use std::sync::{Arc, Mutex};

use everysquare::cli::{Console, Screen, run};

#[derive(Clone, Default)]
struct Kept(Arc<Mutex<Vec<u8>>>);

impl Write for Kept {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.0.lock().unwrap().write(bytes)
    }

    fn flush(&mut self) -> std::io::Result<()> {
        Ok(())
    }
}

impl Kept {
    fn text(&self) -> String {
        String::from_utf8(self.0.lock().unwrap().clone()).unwrap()
    }
}

/// Exit code, standard output and standard error.
fn typed(words: &[&str], screen: Screen) -> (u8, String, String) {
    let (out, err) = (Kept::default(), Kept::default());
    let mut console = Console::new(Box::new(out.clone()), Box::new(err.clone()), screen);
    let argv = std::iter::once("everysquare").chain(words.iter().copied()).map(OsString::from);
    let code = run(argv, &mut console);
    (code, out.text(), err.text())
}

fn terminal(width: usize) -> Screen {
    Screen { terminal: true, colour: false, width }
}

fn longest(text: &str) -> usize {
    text.lines().map(|line| line.chars().count()).max().unwrap_or(0)
}

const COMMANDS: [&str; 8] = ["tour", "new", "plan", "print", "rehearse", "check", "display", "serve"];

#[test]
fn help_fits_the_terminal_and_breaks_no_word() {
    for width in [60, 80, 140] {
        for command in COMMANDS {
            let (code, out, _) = typed(&[command, "--help"], terminal(width));
            assert_eq!(code, 0, "{command}");
            assert!(longest(&out) <= width, "{command} at {width}: {}", longest(&out));
        }
    }
    let words = |width| {
        let (_, out, _) = typed(&["new", "--help"], terminal(width));
        out.split_whitespace().map(str::to_owned).collect::<Vec<_>>()
    };
    assert_eq!(words(60), words(100));
}

#[test]
fn help_is_a_word_too() {
    let plain = Screen::plain;
    assert_eq!(typed(&["help"], plain()), typed(&["--help"], plain()));
    for command in COMMANDS {
        assert_eq!(typed(&["help", command], plain()), typed(&[command, "--help"], plain()));
    }
    assert_eq!(typed(&["help", "qwertz"], plain()).0, 2);
}

#[test]
fn a_photo_where_the_folder_belongs_is_noticed() {
    let folder = tempfile::tempdir().unwrap();
    let photo = folder.path().join("wall.jpg");
    std::fs::write(&photo, b"x").unwrap();
    let (photo, event) = (photo.to_str().unwrap(), folder.path().to_str().unwrap());
    for command in ["check", "display"] {
        let (code, _, err) = typed(&[command, photo, event], Screen::plain());
        assert_eq!(code, 2);
        assert!(err.contains("wall.jpg") && err.contains("comes first"), "{err}");
        assert!(err.contains(&format!("everysquare {command} FOLDER PHOTO")), "{err}");
    }
}

#[test]
fn complaints_break_between_words_and_leave_paths_whole() {
    let path = format!("/nowhere/{}/event", "x".repeat(90));
    let (code, _, err) = typed(&["plan", &path], terminal(50));
    assert_eq!(code, 2);
    assert!(err.lines().any(|line| line.contains(&path)), "{err}");
    let other = err.lines().filter(|line| !line.contains("nowhere")).collect::<Vec<_>>().join("\n");
    assert!(longest(&other) <= 50, "{err}");
}

#[test]
fn a_port_out_of_range_is_refused_in_our_words() {
    let (code, _, err) = typed(&["serve", "x", "--port", "99999"], Screen::plain());
    assert_eq!(code, 2);
    assert!(err.contains("65535") && !err.contains("..="), "{err}");
}
