//! The program itself, speaking Spanish.

use std::fs;
use std::path::Path;

use crate::common::everysquare;

/// A new event in a language; gives its folder.
fn event(place: &Path, language: &str) -> String {
    let picture = place.join("drawing.png");
    fs::write(&picture, everysquare::cli::sample::PICTURE_PNG).unwrap();
    let folder = place.join(format!("evening-{language}")).display().to_string();
    let picture = picture.display().to_string();
    let (code, out, err) =
        everysquare(&["new", &folder, "--picture", &picture, "--squares", "12", "--language", language]);
    assert_eq!(code, 0, "{out}{err}");
    folder
}

#[test]
fn an_event_speaks_the_language_of_its_file_from_then_on() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "es");
    let toml = Path::new(&folder).join("event.toml");
    assert!(fs::read_to_string(&toml).unwrap().contains("language = \"es\""));

    let (code, _, err) = everysquare(&["check", &folder, "nada.jpg"]);
    assert_eq!(code, 2);
    assert!(err.contains("Primero escriba: everysquare print"), "{err}");

    let broken =
        fs::read_to_string(&toml).unwrap().replace("rows_from = \"bottom\"", "rows_from = \"under\"");
    fs::write(&toml, broken).unwrap();
    let (code, _, err) = everysquare(&["print", &folder, "--language", "en"]);
    assert_eq!(code, 2);
    assert!(err.contains("event.toml, línea"), "told in the event's own language: {err}");
}

#[test]
fn own_words_take_the_place_of_single_ones_and_a_mistake_in_them_stops_everything() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "en");
    let templates = Path::new(&folder).join("templates");
    fs::create_dir(&templates).unwrap();
    fs::write(templates.join("words.ftl"), "error-folder-not-printed = { $path }: print it, please\n")
        .unwrap();
    let (code, _, err) = everysquare(&["check", &folder, "none.jpg"]);
    assert_eq!((code, err), (2, format!("everysquare: {folder}: print it, please\n")));

    for (words, said) in [
        (
            "print-sqares = x\n",
            "templates/words.ftl, line 1: print-sqares: there’s no sentence with that name. Do you mean print-squares?",
        ),
        (
            "\nprint-squares = { $x }\n",
            "templates/words.ftl, line 2: $x: print-squares has nothing to fill in",
        ),
    ] {
        fs::write(templates.join("words.ftl"), words).unwrap();
        let (code, out, err) = everysquare(&["print", &folder]);
        assert_eq!((code, out.as_str()), (2, ""));
        assert!(err.starts_with(&format!("everysquare: {said}")), "{err}");
        assert!(!Path::new(&folder).join("print").exists(), "nothing is half-written");
    }
}

#[test]
fn help_speaks_the_language_that_is_typed() {
    let (code, out, _) = everysquare(&["new", "--help", "--language", "es"]);
    assert_eq!(code, 0);
    assert!(out.contains("Uso: everysquare new"), "{out}");
    assert!(out.contains("--picture <ARCHIVO>"), "{out}");
    let (_, out, _) = everysquare(&["--help"]);
    assert!(out.contains("Usage: everysquare"), "{out}");
}
