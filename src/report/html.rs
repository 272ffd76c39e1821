//! `report.html`: one page that stands alone. Styles and pictures are inside it, it has no scripts and asks
//! for nothing from elsewhere, so it can be mailed, printed and read on a phone without a network.
//!
//! A state is never told by colour alone: each cell has a mark, a border of its own and, for a screen reader,
//! a sentence. Photos are named by number only.

use std::fmt::Write;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use crate::judge::Outcome;
use crate::plan::cell::column_letters;
use crate::plan::lengths::both;
use crate::words::Words;

use super::json::{Report, ReportCell};
use super::letters::LETTERS;
use super::marks::{Marks, legend, row_number};
use super::sentences::{about_cell, count};
use super::steps::{counts, headline, oddities, source, steps};

const STYLE: &str = include_str!("page.css");
/// Where the top of a turned square points; every label has room.
const MARKS: Marks = Marks { room: 12, arrows: ["→", "↓", "←"] };

/// The pictures on the page, as JPEG files.
#[derive(Copy, Clone, Debug, Default)]
pub struct Pictures<'a> {
    /// Each photo, cropped, blanked and marked, in order.
    pub marked: &'a [Vec<u8>],
    /// The wall, straightened.
    pub straight: Option<&'a [u8]>,
}

/// The page.
#[must_use]
pub fn html(report: &Report, words: &Words, pictures: Pictures<'_>) -> String {
    let page = Page { report, words };
    let parts = [
        page.head(),
        page.top(),
        page.marked(pictures.marked),
        page.to_do(),
        page.advice(),
        page.wall(),
        page.straight(pictures.straight),
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
             <meta name=\"referrer\" content=\"no-referrer\">\n<title>{}</title>\n<style>\n{}{STYLE}</style>\n</head>\n<body>\n<main>\n",
            self.say("report-language"),
            escaped(&title),
            letters(),
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
        html
    }

    fn to_do(&self) -> String {
        let steps = steps(self.report, self.words);
        let mut html = String::new();
        if !steps.is_empty() {
            add(
                &mut html,
                format_args!("<h2>{}</h2>\n<ol class=\"steps\">\n", self.say("report-heading-to-do")),
            );
            for (i, step) in steps.iter().enumerate() {
                let step = escaped(step);
                add(
                    &mut html,
                    format_args!(
                        "<li><label for=\"step-{i}\">{step}</label><input type=\"checkbox\" id=\"step-{i}\"></li>\n"
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

    fn marked(&self, pictures: &[Vec<u8>]) -> String {
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

    fn straight(&self, picture: Option<&[u8]>) -> String {
        let Some(jpeg) = picture else { return String::new() };
        let figure = figure(jpeg, &self.say("report-picture-straight"), None);
        format!("<h2>{}</h2>\n{figure}", self.say("report-heading-straight"))
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
