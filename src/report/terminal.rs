//! The wall drawn in the terminal: in 80 columns or as many as there are, legible without colour, colour on top where it is wanted.
//!
//! ```text
//!        A    B    C    D           every cell one mark:
//!   3    ·    ·    C3   ·           · right      C3  that square hangs there      [ ] empty
//!   2    ·   [ ]   ·    B2v         > v <  turned, the top points that way        ?   not read
//!   1    ·    ?    -    <           -  not in the photo                           !   of another event
//! ```
//!
//! A cell is five characters wide where the whole wall fits so, else three; walls that are wider still are drawn in blocks. In three
//! characters a label longer than two has no room to stand apart from its neighbour; then the mark is `x`.

use crate::plan::cell::column_letters;
use crate::words::Words;

use super::json::{Report, ReportCell};
use super::lines::{centred, line, one_line, paragraph};
use super::marks::{Kind, Marks, legend, row_number};
use super::steps::{counts, headline, oddities, source, steps};

/// Characters a cell, with and without room for every label.
const WIDE: usize = 5;
const NARROW: usize = 3;
/// Before and behind the row's number.
const MARGIN: usize = 2;

/// Colour as an SGR parameter (ECMA-48): only an addition, every kind has its own mark.
fn colour_of(kind: Kind) -> &'static str {
    match kind {
        Kind::Right => "32",
        Kind::Wrong | Kind::WrongShort | Kind::WrongTurned | Kind::Stranger => "1;31",
        Kind::Turned => "1;33",
        Kind::Empty => "36",
        Kind::Unread => "1;35",
        Kind::Unseen | Kind::Reserve | Kind::Free => "2",
    }
}

/// The report as text in lines of `width` characters, with ANSI colours if asked for.
#[must_use]
pub fn terminal(report: &Report, words: &Words, colour: bool, width: usize) -> String {
    let mut text = String::new();
    paragraph(
        &mut text,
        "",
        &words.say("report-title", &[("name", one_line(&report.event.name).into())]),
        width,
    );
    source(report, words).iter().for_each(|line| paragraph(&mut text, "", line, width));
    text.push('\n');
    let marks = Marks { room: room(report, width), arrows: [">", "v", "<"] };
    draw(&mut text, report, marks, colour, width);
    for entry in legend(report, marks, words) {
        let said = format!("{:<5}  {}", entry.mark, entry.said);
        line(&mut text, &painted(&format!("  {said}"), entry.kind, colour));
    }
    text.push('\n');
    paragraph(&mut text, "", &headline(report, words), width);
    let counted: Vec<String> = counts(report, words).into_iter().map(|(_, phrase)| phrase).collect();
    paragraph(&mut text, "", &format!("{}.", counted.join(", ")), width);
    list(&mut text, &words.say("report-heading-to-do", &[]), &steps(report, words), true, width);
    let odd = oddities(report, words);
    if !odd.is_empty() {
        text.push('\n');
        odd.iter().for_each(|line| paragraph(&mut text, "", &one_line(line), width));
    }
    list(&mut text, &words.say("report-heading-advice", &[]), &report.advice, false, width);
    text
}

/// How many characters a cell may take.
fn room(report: &Report, width: usize) -> usize {
    if numbers_width(report) + MARGIN + report.size().0 * WIDE <= width { WIDE } else { NARROW }
}

fn numbers_width(report: &Report) -> usize {
    report.cells.iter().map(|cell| row_number(cell).len()).max().unwrap_or(1) + 1
}

fn draw(text: &mut String, report: &Report, marks: Marks, colour: bool, width: usize) {
    let room = marks.room;
    let (columns, rows) = report.size();
    let numbers = numbers_width(report);
    let side_by_side = (width.saturating_sub(numbers + MARGIN) / room).clamp(1, columns.max(1));
    for from in (0..columns).step_by(side_by_side) {
        let block = from..(from + side_by_side).min(columns);
        let letters: String = block.clone().map(|column| centred(&column_letters(column), room)).collect();
        line(text, &format!("{:numbers$}{:MARGIN$}{letters}", "", ""));
        for row in 0..rows {
            let cells: Vec<&ReportCell> =
                block.clone().filter_map(|column| report.cells.get(row * columns + column)).collect();
            let number = cells.first().map_or("", |cell| row_number(cell));
            let drawn: String = cells
                .iter()
                .map(|cell| marks.of(cell))
                .map(|(kind, mark)| painted(&centred(&mark, room), kind, colour))
                .collect();
            line(text, &format!("{number:>numbers$}{:MARGIN$}{drawn}", ""));
        }
        text.push('\n');
    }
}

fn painted(said: &str, kind: Kind, colour: bool) -> String {
    if colour { format!("\u{1b}[{}m{said}\u{1b}[0m", colour_of(kind)) } else { said.to_owned() }
}

/// A heading and its entries, numbered or with dashes; nothing where there are none.
fn list(text: &mut String, heading: &str, entries: &[String], numbered: bool, width: usize) {
    if entries.is_empty() {
        return;
    }
    text.push('\n');
    line(text, &format!("{heading}:"));
    let digits = entries.len().to_string().len();
    for (i, entry) in entries.iter().enumerate() {
        let start = if numbered { format!("  {:>digits$}. ", i + 1) } else { "  - ".to_owned() };
        paragraph(text, &start, &one_line(entry), width);
    }
}
