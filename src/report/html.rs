//! `report.html`: one page that stands alone. Styles and pictures are inside it, it has no scripts and asks
//! for nothing from elsewhere, so it can be mailed, printed and read on a phone without a network.
//!
//! A state is never told by colour alone: each cell has a mark, a border of its own and, for a screen reader,
//! a sentence. Photos are named by number only.

use std::fmt::Write;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

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
    let parts = [
        page.head(),
        page.top(),
        page.marked(),
        page.to_do(),
        page.advice(),
        page.wall(),
        page.straight(),
        page.figures(),
        "</main>\n</body>\n</html>\n".to_owned(),
    ];
    parts.concat()
}

/// Text for between tags and for quoted attributes.
#[must_use]
pub fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            c if c.is_control() => safe.push(' '),
            c => safe.push(c),
        }
    }
    safe
}

struct Page<'a> {
    report: &'a Report,
    words: &'a Words,
    pictures: Pictures<'a>,
}

impl Page<'_> {
    fn say(&self, id: &str) -> String {
        escaped(&self.words.say(id, &[]))
    }

    fn head(&self) -> String {
        let title = self.words.say("report-title", &[("name", self.report.event.name.clone().into())]);
        format!(
            "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n\
             <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
             <meta name=\"referrer\" content=\"no-referrer\">\n<title>{}</title>\n<style>\n{}{STYLE}{}</style>\n</head>\n<body>\n<main>\n",
            self.say("report-language"),
            escaped(&title),
            letters(),
            self.pictures.accent,
        )
    }

    fn top(&self) -> String {
        let mut html = format!(
            "<p class=\"kind\">{}</p>\n<h1>{}</h1>\n",
            self.say("report-kind"),
            escaped(&self.report.event.name)
        );
        for (i, line) in source(self.report, self.words).iter().enumerate() {
            let class = if self.report.made && i == 0 { "made" } else { "source" };
            add(&mut html, format_args!("<p class=\"{class}\">{}</p>\n", escaped(line)));
        }
        let (class, sign) = match self.report.outcome() {
            Outcome::AllRight => ("all-right", "✓"),
            Outcome::Fix => ("fix", "→"),
            Outcome::CannotTell => ("cannot-tell", "?"),
        };
        let said = escaped(&headline(self.report, self.words));
        add(
            &mut html,
            format_args!(
                "<p class=\"headline {class}\"><span aria-hidden=\"true\">{sign}</span> {said}</p>\n<ul class=\"counts\">\n"
            ),
        );
        for (_, phrase) in counts(self.report, self.words) {
            add(&mut html, format_args!("<li>{}</li>\n", escaped(&phrase)));
        }
        html.push_str("</ul>\n");
        if let Some(forecast) = &self.report.forecast {
            add(&mut html, format_args!("<p class=\"forecast\">{}</p>\n", escaped(forecast)));
        }
        html
    }

    fn to_do(&self) -> String {
        let steps = listed(self.report, self.words);
        let mut html = String::new();
        if !steps.is_empty() {
            add(
                &mut html,
                format_args!("<h2>{}</h2>\n<ol class=\"steps\">\n", self.say("report-heading-to-do")),
            );
            for (i, step) in steps.iter().enumerate() {
                let (said, spots) = (escaped(&step.say), self.spots(step));
                add(
                    &mut html,
                    format_args!(
                        "<li>{spots}<label for=\"step-{i}\">{said}</label><input type=\"checkbox\" id=\"step-{i}\"></li>\n"
                    ),
                );
            }
            html.push_str("</ol>\n");
        }
        for line in oddities(self.report, self.words) {
            add(&mut html, format_args!("<p class=\"odd\">{}</p>\n", escaped(&line)));
        }
        html
    }

    /// What the spots of a step look like now, cut from the picture of the wall; empty beside a step without a picture.
    fn spots(&self, step: &Listed<'_>) -> String {
        let (columns, rows) = self.report.size();
        let wall = &self.report.wall;
        if self.pictures.straight.is_none() || columns == 0 || rows == 0 {
            return "<span class=\"spots\"></span>".to_owned();
        }
        let [wide, high] = [wall.width_mm / float(columns), wall.height_mm / float(rows)];
        let cells = self.report.cells.iter();
        let shown: Vec<String> = step
            .spots
            .iter()
            .filter_map(|label| cells.clone().find(|cell| cell.label == **label))
            .map(|cell| {
                let (x, y) = (float(cell.column) * wide, float(cell.row) * high);
                let label = escaped(&cell.label);
                format!(
                    "<span><svg viewBox=\"{x:.1} {y:.1} {wide:.1} {high:.1}\"><use href=\"#wall-picture\"/></svg>{label}</span>"
                )
            })
            .collect();
        let sign = match step.act {
            Act::Swap => "<b>⇄</b>",
            Act::Move => "<b>→</b>",
            _ => "",
        };
        format!("<span class=\"spots\" aria-hidden=\"true\">{}</span>", shown.join(sign))
    }

    fn wall(&self) -> String {
        let (columns, rows) = self.report.size();
        let heading = self.say("report-heading-wall");
        let mut html = format!(
            "<h2 id=\"wall\">{heading}</h2>\n<div class=\"whole\" style=\"--columns: {columns}\">\n<table aria-labelledby=\"wall\">\n<thead>\n<tr><th scope=\"col\"><span class=\"hidden\">{}</span></th>",
            self.say("report-rows"),
        );
        for column in 0..columns {
            add(&mut html, format_args!("<th scope=\"col\">{}</th>", column_letters(column)));
        }
        html.push_str("</tr>\n</thead>\n<tbody>\n");
        for row in self.report.cells.chunks(columns.max(1)).take(rows) {
            let number = row.first().map_or("", |cell| row_number(cell));
            add(&mut html, format_args!("<tr><th scope=\"row\">{}</th>", escaped(number)));
            row.iter().for_each(|cell| html.push_str(&self.cell(cell)));
            html.push_str("</tr>\n");
        }
        html.push_str("</tbody>\n</table>\n</div>\n");
        html.push_str(&self.legend());
        html
    }

    fn cell(&self, cell: &ReportCell) -> String {
        let said = escaped(&about_cell(cell, self.words));
        let mark = escaped(&MARKS.of(cell).1);
        format!(
            "<td class=\"{}\" title=\"{said}\"><span aria-hidden=\"true\">{mark}</span><span class=\"hidden\">{said}</span></td>",
            cell.state.name(),
        )
    }

    fn legend(&self) -> String {
        let mut html = "<ul class=\"legend\">\n".to_owned();
        for entry in legend(self.report, MARKS, self.words) {
            let (mark, said) = (escaped(&entry.mark), escaped(&entry.said));
            add(
                &mut html,
                format_args!(
                    "<li><b class=\"{}\">{mark}</b><span>{said}</span></li>\n",
                    entry.kind.state().name()
                ),
            );
        }
        html.push_str("</ul>\n");
        html
    }

    fn advice(&self) -> String {
        if self.report.advice.is_empty() {
            return String::new();
        }
        let mut html = format!("<h2>{}</h2>\n<ul class=\"plain\">\n", self.say("report-heading-advice"));
        for line in &self.report.advice {
            add(&mut html, format_args!("<li>{}</li>\n", escaped(line)));
        }
        html.push_str("</ul>\n");
        html
    }

    fn marked(&self) -> String {
        let pictures = self.pictures.marked;
        let mut html = String::new();
        if !pictures.is_empty() {
            add(&mut html, format_args!("<h2>{}</h2>\n", self.say("report-heading-marked")));
        }
        for (i, jpeg) in pictures.iter().enumerate() {
            let caption = self.report.photos.get(i).map(|photo| {
                let named = [
                    ("number", count(i + 1)),
                    ("width", photo.width.to_string().into()),
                    ("height", photo.height.to_string().into()),
                    ("codes", count(photo.codes_read)),
                ];
                self.words.say("report-photo", &named)
            });
            html.push_str(&figure(jpeg, &self.say("report-picture-marked"), caption.as_deref()));
        }
        html
    }

    /// The wall's picture. The steps show parts of it, so it is drawn as SVG, in mm on the wall.
    fn straight(&self) -> String {
        let Some(Straight { jpeg, margin_mm }) = self.pictures.straight else { return String::new() };
        let wall = &self.report.wall;
        let [wide, high] = [wall.width_mm, wall.height_mm].map(|side| side + 2.0 * margin_mm);
        let (heading, alt) = (self.say("report-heading-straight"), self.say("report-picture-straight"));
        format!(
            "<h2>{heading}</h2>\n<figure>\n<svg class=\"straight\" viewBox=\"-{margin_mm} -{margin_mm} {wide:.1} {high:.1}\" role=\"img\" aria-label=\"{alt}\">\
             <image id=\"wall-picture\" x=\"-{margin_mm}\" y=\"-{margin_mm}\" width=\"{wide:.1}\" height=\"{high:.1}\" preserveAspectRatio=\"none\" \
             href=\"data:image/jpeg;base64,{}\"/></svg>\n<figcaption>{alt}</figcaption>\n</figure>\n",
            STANDARD.encode(jpeg),
        )
    }

    fn figures(&self) -> String {
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
        let mut html = format!("<h2>{}</h2>\n<ul class=\"plain small\">\n", self.say("report-heading-facts"));
        lines.iter().for_each(|line| add(&mut html, format_args!("<li>{}</li>\n", escaped(line))));
        add(&mut html, format_args!("</ul>\n<p class=\"small\">{}</p>\n", self.say("report-private")));
        html
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

/// A picture inside the page; `alt` is safe already.
fn figure(jpeg: &[u8], alt: &str, caption: Option<&str>) -> String {
    let caption = caption.map_or_else(|| alt.to_owned(), escaped);
    format!(
        "<figure>\n<img alt=\"{alt}\" src=\"data:image/jpeg;base64,{}\">\n<figcaption>{caption}</figcaption>\n</figure>\n",
        STANDARD.encode(jpeg),
    )
}

fn add(html: &mut String, part: std::fmt::Arguments<'_>) {
    let _ = html.write_fmt(part); // writing to a String cannot fail
}
