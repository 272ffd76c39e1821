//! Text for a terminal: lines that fit, and nothing that steers it.

use std::fmt::Write;

/// Characters in a line where nothing says otherwise.
pub(crate) const WIDTH: usize = 80;

/// In the middle of `room` characters, the odd space before it.
pub(crate) fn centred(mark: &str, room: usize) -> String {
    let spare = room.saturating_sub(mark.chars().count());
    let behind = spare / 2;
    format!("{:before$}{mark}{:behind$}", "", "", before = spare - behind)
}

/// Breaks a text into lines of at most `width` characters; the first begins with `start`, the others with
/// as many spaces. A word that is longer than a line stays whole: it may be a path or a link.
pub(crate) fn paragraph(text: &mut String, start: &str, said: &str, width: usize) {
    let indent = " ".repeat(start.chars().count());
    let mut current = start.to_owned();
    let mut empty = true;
    for word in said.split_whitespace() {
        if !empty && current.chars().count() + 1 + word.chars().count() > width {
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

/// The same for several lines, each of which keeps its own indent.
pub(crate) fn paragraphs(said: &str, width: usize) -> String {
    let mut text = String::new();
    for each in said.lines() {
        let words = each.trim_start();
        paragraph(&mut text, &each[..each.len() - words.len()], words, width);
    }
    text.truncate(text.trim_end().len());
    text
}

pub(crate) fn line(text: &mut String, said: &str) {
    let _ = writeln!(text, "{}", said.trim_end()); // writing to a String cannot fail
}

/// Without control characters: a name from a file must not steer the terminal.
pub(crate) fn one_line(said: &str) -> String {
    said.chars().map(|c| if c.is_control() { ' ' } else { c }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_break_between_words_and_keep_their_indent() {
        let said = "one two three four\n  five six seven\nhttp://10.0.0.7:8417/abcdefghij/";
        assert_eq!(
            paragraphs(said, 12),
            "one two\nthree four\n  five six\n  seven\nhttp://10.0.0.7:8417/abcdefghij/"
        );
        assert_eq!(paragraphs(said, 200), said);
        assert_eq!(paragraphs("", 80), "");
    }
}
