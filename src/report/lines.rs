//! Text for a terminal: lines that fit, and nothing that steers it.

use std::fmt::Write;

/// Characters that a terminal's line has at least.
pub(crate) const WIDTH: usize = 80;

/// In the middle of `room` characters, the odd space before it.
pub(crate) fn centred(mark: &str, room: usize) -> String {
    let spare = room.saturating_sub(mark.chars().count());
    let behind = spare / 2;
    format!("{:before$}{mark}{:behind$}", "", "", before = spare - behind)
}

/// Breaks a text into lines of at most [`WIDTH`] characters; the first begins with `start`, the others with
/// as many spaces.
pub(crate) fn paragraph(text: &mut String, start: &str, said: &str) {
    let indent = " ".repeat(start.chars().count());
    let mut current = start.to_owned();
    let mut empty = true;
    for word in said.split_whitespace() {
        if !empty && current.chars().count() + 1 + word.chars().count() > WIDTH {
            line(text, &current);
            current.clone_from(&indent);
            empty = true;
        }
        if !empty {
            current.push(' ');
        }
        current.push_str(word);
        empty = false;
    }
    line(text, &current);
}

pub(crate) fn line(text: &mut String, said: &str) {
    let _ = writeln!(text, "{}", said.trim_end()); // writing to a String cannot fail
}

/// Without control characters: a name from a file must not steer the terminal.
pub(crate) fn one_line(said: &str) -> String {
    said.chars().map(|c| if c.is_control() { ' ' } else { c }).collect()
}
