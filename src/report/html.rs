//! `report.html`: one page that stands alone. Styles and pictures are inside it, it has no scripts and asks
//! for nothing from elsewhere, so it can be mailed, printed and read on a phone without a network.
//!
//! A state is never told by colour alone: each cell has a mark, a border of its own and, for a screen reader,
//! a sentence. Photos are named by number only.

use std::borrow::Cow;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{DOCTYPE, Markup, PreEscaped, html};

use crate::frame::float;
use crate::judge::{Act, Outcome};
use crate::plan::cell::column_letters;
use crate::plan::lengths::both;
use crate::words::Words;

use super::json::{Report, ReportCell};
use super::letters::LETTERS;
use super::marks::{Marks, legend, row_number};
use super::sentences::{about_cell, count};
use super::steps::{Listed, counts, headline, listed, oddities, source};

const STYLE: &str = include_str!("page.css");
/// Where the top of a turned square points; every label has room.
const MARKS: Marks = Marks { room: 12, arrows: ["→", "↓", "←"] };

/// The pictures on the page, as JPEG files.
#[derive(Copy, Clone, Debug, Default)]
pub struct Pictures<'a> {
    /// Each photo, cropped, blanked and marked, in order.
    pub marked: &'a [Vec<u8>],
    /// The wall, straightened.
    pub straight: Option<Straight<'a>>,
    /// Styles that set the event's colours, see [`super::accent()`]; empty for the usual ones.
    pub accent: &'a str,
}

/// The picture of the straightened wall.
#[derive(Copy, Clone, Debug)]
pub struct Straight<'a> {
    /// The JPEG file.
    pub jpeg: &'a [u8],
    /// How much it shows around the wall, in mm.
    pub margin_mm: f64,
}

/// The page.
#[must_use]
pub fn html(report: &Report, words: &Words, pictures: Pictures<'_>) -> String {
    let page = Page { report, words, pictures };
    let title = words.say("report-title", &[("name", report.event.name.clone().into())]);
    let markup = html! {
        (DOCTYPE)
        html lang=(page.say("report-language")) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="referrer" content="no-referrer";
                title { (shown(&title)) }
                // letters, styles and colours are the program's own
                style { (PreEscaped(letters())) (PreEscaped(STYLE)) (PreEscaped(pictures.accent)) }
            }
            body {
                main {
                    (page.top()) (page.marked()) (page.to_do()) (page.advice()) (page.wall()) (page.straight()) (page.figures())
                }
            }
        }
    };
    markup.into_string()
}

/// Text as a page shows it: what a foreign code says may hold control characters.
pub fn shown(text: &str) -> Cow<'_, str> {
    if text.contains(char::is_control) {
        return Cow::Owned(text.replace(char::is_control, " "));
    }
    Cow::Borrowed(text)
}

struct Page<'a> {
    report: &'a Report,
    words: &'a Words,
    pictures: Pictures<'a>,
}

impl Page<'_> {
    fn say(&self, id: &str) -> String {
        self.words.say(id, &[])
    }

    fn top(&self) -> Markup {
        let (class, sign) = match self.report.outcome() {
            Outcome::AllRight => ("all-right", "✓"),
            Outcome::Fix => ("fix", "→"),
            Outcome::CannotTell => ("cannot-tell", "?"),
        };
        html! {
            p class="kind" { (self.say("report-kind")) }
            h1 { (shown(&self.report.event.name)) }
            @for (i, line) in source(self.report, self.words).iter().enumerate() {
                p class=(if self.report.made && i == 0 { "made" } else { "source" }) { (shown(line)) }
            }
            p class={ "headline " (class) } {
                span aria-hidden="true" { (sign) } " " (shown(&headline(self.report, self.words)))
            }
            ul class="counts" {
                @for (_, phrase) in counts(self.report, self.words) { li { (phrase) } }
            }
            @if let Some(forecast) = &self.report.forecast { p class="forecast" { (shown(forecast)) } }
        }
    }

    fn to_do(&self) -> Markup {
        let steps = listed(self.report, self.words);
        html! {
            @if !steps.is_empty() {
                h2 { (self.say("report-heading-to-do")) }
                ol class="steps" {
                    @for (i, step) in steps.iter().enumerate() {
                        li {
                            (self.spots(step))
                            label for={ "step-" (i) } { (shown(&step.say)) }
                            input type="checkbox" id={ "step-" (i) };
                        }
                    }
                }
            }
            @for line in oddities(self.report, self.words) { p class="odd" { (shown(&line)) } }
        }
    }

    /// What the spots of a step look like now, cut from the picture of the wall; empty beside a step without a picture.
    fn spots(&self, step: &Listed<'_>) -> Markup {
        let (columns, rows) = self.report.size();
        let wall = &self.report.wall;
        if self.pictures.straight.is_none() || columns == 0 || rows == 0 {
            return html! { span class="spots" {} };
        }
        let [wide, high] = [wall.width_mm / float(columns), wall.height_mm / float(rows)];
        let cells = self.report.cells.iter();
        let cell_of = |label: &&str| cells.clone().find(|cell| cell.label == **label);
        let view = |cell: &ReportCell| {
            let (x, y) = (float(cell.column) * wide, float(cell.row) * high);
            format!("{x:.1} {y:.1} {wide:.1} {high:.1}")
        };
        let sign = match step.act {
            Act::Swap => Some("⇄"),
            Act::Move => Some("→"),
            _ => None,
        };
        html! {
            span class="spots" aria-hidden="true" {
                @for (i, cell) in step.spots.iter().filter_map(cell_of).enumerate() {
                    @if let Some(sign) = sign.filter(|_| i > 0) { b { (sign) } }
                    span { svg viewBox=(view(cell)) { use href="#straight-picture" {} } (cell.label) }
                }
            }
        }
    }

    fn wall(&self) -> Markup {
        let (columns, rows) = self.report.size();
        html! {
            h2 id="wall" { (self.say("report-heading-wall")) }
            div class="whole" style={ "--columns: " (columns) } {
                table aria-labelledby="wall" {
                    thead {
                        tr {
                            th scope="col" { span class="hidden" { (self.say("report-rows")) } }
                            @for column in 0..columns { th scope="col" { (column_letters(column)) } }
                        }
                    }
                    tbody {
                        @for row in self.report.cells.chunks(columns.max(1)).take(rows) {
                            tr {
                                th scope="row" { (row.first().map_or("", |cell| row_number(cell))) }
                                @for cell in row { (self.cell(cell)) }
                            }
                        }
                    }
                }
            }
            (self.legend())
        }
    }

    fn cell(&self, cell: &ReportCell) -> Markup {
        let said = about_cell(cell, self.words);
        html! {
            td class=(cell.state.name()) title=(shown(&said)) {
                span aria-hidden="true" { (MARKS.of(cell).1) }
                span class="hidden" { (shown(&said)) }
            }
        }
    }

    fn legend(&self) -> Markup {
        html! {
            ul class="legend" {
                @for entry in legend(self.report, MARKS, self.words) {
                    li { b class=(entry.kind.state().name()) { (entry.mark) } span { (entry.said) } }
                }
            }
        }
    }

    fn advice(&self) -> Markup {
        html! {
            @if !self.report.advice.is_empty() {
                h2 { (self.say("report-heading-advice")) }
                ul class="plain" { @for line in &self.report.advice { li { (shown(line)) } } }
            }
        }
    }

    fn marked(&self) -> Markup {
        let caption = |(i, jpeg): (usize, &Vec<u8>)| {
            let alt = self.say("report-picture-marked");
            let caption = self.report.photos.get(i).map(|photo| {
                let named = [
                    ("number", count(i + 1)),
                    ("width", photo.width.to_string().into()),
                    ("height", photo.height.to_string().into()),
                    ("codes", count(photo.codes_read)),
                ];
                self.words.say("report-photo", &named)
            });
            html! {
                figure {
                    img alt=(alt) src=(jpeg_url(jpeg));
                    figcaption { (caption.unwrap_or_else(|| alt.clone())) }
                }
            }
        };
        html! {
            @if !self.pictures.marked.is_empty() { h2 { (self.say("report-heading-marked")) } }
            @for picture in self.pictures.marked.iter().enumerate() { (caption(picture)) }
        }
    }

    /// The wall's picture. The steps show parts of it, so it is drawn as SVG, in mm on the wall.
    fn straight(&self) -> Markup {
        let Some(Straight { jpeg, margin_mm }) = self.pictures.straight else { return Markup::default() };
        let wall = &self.report.wall;
        let [wide, high] =
            [wall.width_mm, wall.height_mm].map(|side| format!("{:.1}", side + 2.0 * margin_mm));
        let (from, alt) = (-margin_mm, self.say("report-picture-straight"));
        html! {
            h2 { (self.say("report-heading-straight")) }
            figure {
                svg class="straight" viewBox=(format!("{from} {from} {wide} {high}")) role="img" aria-label=(alt) {
                    image id="straight-picture" x=(from) y=(from) width=(wide) height=(high) preserveAspectRatio="none"
                        href=(jpeg_url(jpeg)) {}
                }
                figcaption { (alt) }
            }
        }
    }

    fn figures(&self) -> Markup {
        let wall = &self.report.wall;
        let number = |name, value: f64| (name, value.to_string().into());
        let length = |name, mm: f64| (name, both(mm, self.report.units, self.words).into());
        let lines = [
            self.words.say("report-scale", &[number("factor", wall.scale_factor)]),
            self.words
                .say("report-size", &[length("width", wall.width_mm), length("height", wall.height_mm)]),
            self.words.say("report-shift", &[length("by", wall.worst_shift_mm)]),
            self.words.say("report-modules", &[number("px", wall.photo_px_per_module)]),
        ];
        html! {
            h2 { (self.say("report-heading-facts")) }
            ul class="plain small" { @for line in &lines { li { (line) } } }
            p class="small" { (self.say("report-private")) }
        }
    }
}

/// The page's letters, inside it.
fn letters() -> String {
    let face = |((_, file), weight): ((&str, &[u8]), &str)| {
        let file = STANDARD.encode(file);
        format!(
            "@font-face {{ font-family: Letters; font-weight: {weight}; src: url(\"data:font/woff2;base64,{file}\") format(\"woff2\"); }}\n"
        )
    };
    LETTERS.into_iter().zip(["400", "600 900"]).map(face).collect()
}

/// A picture inside the page.
fn jpeg_url(jpeg: &[u8]) -> String {
    format!("data:image/jpeg;base64,{}", STANDARD.encode(jpeg))
}
