//! Settings to event.toml, and one setting changed within it.

use toml_edit::{Document, Item, TableLike};

use super::choice::Choice;
use super::error::SettingsError;
use super::known::{KNOWN, LISTS};
use super::toml::{example, line, number, quoted, text};
use super::{CodeSettings, Settings, evening, levels, parts};
use crate::words::Words;

/// A value for [`set`].
#[derive(Clone, Debug, PartialEq)]
pub enum NewValue {
    /// A whole number.
    Whole(usize),
    /// A number with decimals.
    Number(f64),
    /// A text or one word out of a few.
    Text(String),
}

impl From<usize> for NewValue {
    fn from(value: usize) -> Self {
        Self::Whole(value)
    }
}

impl From<f64> for NewValue {
    fn from(value: f64) -> Self {
        Self::Number(value)
    }
}

impl From<&str> for NewValue {
    fn from(value: &str) -> Self {
        Self::Text(value.to_owned())
    }
}

impl NewValue {
    /// As TOML has it.
    fn written(&self) -> String {
        match self {
            Self::Whole(value) => value.to_string(),
            Self::Number(value) => number(*value),
            Self::Text(value) => text(value),
        }
    }
}

/// Changes one setting of an event.toml, such as `wall.columns` or `name`, and keeps every other byte: comments, order,
/// line ends. A setting that was left out is added at the end of its table.
///
/// # Errors
/// [`SettingsError`] where there is no such setting or where the changed file would be refused.
pub fn set(file: &str, path: &str, value: impl Into<NewValue>) -> Result<String, SettingsError> {
    let (section, name) = path.rsplit_once('.').unwrap_or(("", path));
    let known = KNOWN.iter().any(|(own, names)| *own == section && names.contains(&name));
    let is_value = !LISTS.contains(&section) && !KNOWN.iter().any(|(own, _)| *own == path);
    if !known || !is_value {
        return Err(SettingsError::NoSuchSetting(path.to_owned()));
    }
    Settings::from_toml(file)?;
    let written = value.into().written();
    let changed = replaced(file, section, name, &written)
        .or_else(|| added(file, section, name, &written))
        .ok_or_else(|| SettingsError::NoSuchSetting(path.to_owned()))?;
    Settings::from_toml(&changed)?;
    Ok(changed)
}

/// The file with the bytes of one value replaced; `None` where that value is left out.
fn replaced(file: &str, section: &str, name: &str, written: &str) -> Option<String> {
    let document = Document::parse(file).ok()?;
    let table = if section.is_empty() { document.as_item() } else { document.get(section)? };
    let span = table.as_table_like()?.get(name)?.span()?;
    Some(format!("{}{written}{}", file.get(..span.start)?, file.get(span.end..)?))
}

/// The file with one setting added at the end of its table, or with its table at the end of the file.
fn added(file: &str, section: &str, name: &str, written: &str) -> Option<String> {
    let document = Document::parse(file).ok()?;
    let table = if section.is_empty() { Some(document.as_item()) } else { document.get(section) };
    let newline = if file.contains("\r\n") { "\r\n" } else { "\n" };
    match table {
        None => {
            let gap = if file.ends_with('\n') { "" } else { newline };
            Some(format!("{file}{gap}{newline}[{section}]{newline}{name} = {written}{newline}"))
        }
        Some(Item::Value(inline)) => {
            let inline = inline.as_inline_table()?;
            let last = last_value(inline);
            let at = last.or_else(|| Some(inline.span()?.start + 1))?;
            let comma = if last.is_some() { "," } else { "" };
            Some(format!("{}{comma} {name} = {written}{}", file.get(..at)?, file.get(at..)?))
        }
        Some(item) => {
            let table = item.as_table()?;
            let before = last_value(table).or_else(|| Some(table.span()?.start))?;
            let line = file.get(before..)?.find('\n').map_or(file.len(), |end| before + end + 1);
            let gap = if file.get(..line)?.ends_with('\n') { "" } else { newline };
            let dotted = if table.is_dotted() { format!("{section}.") } else { String::new() };
            let (above, below) = file.split_at_checked(line)?;
            Some(format!("{above}{gap}{dotted}{name} = {written}{newline}{below}"))
        }
    }
}

/// Where the last value that stands directly in a table ends.
fn last_value(table: &dyn TableLike) -> Option<usize> {
    let values = table.iter().filter(|(_, item)| item.is_value());
    values.filter_map(|(_, item)| Some(item.span()?.end)).max()
}

impl Settings {
    /// A new event.toml, with comments in the event's language for whoever edits it. Reads back as these settings.
    #[must_use]
    pub fn to_toml(&self) -> String {
        let words = Words::of(self.language.word());
        let tables = [
            self.head(&words),
            self.picture_table(&words),
            self.wall_table(&words) + &parts::written(&self.parts, &self.grid, &words),
            self.code_table(&words),
            self.print_table(&words),
            evening::written(&self.evening, &words),
            levels::written(&self.levels, &self.grid, &words),
        ];
        tables.join("\n")
    }

    fn head(&self, words: &Words) -> String {
        let choices = [("choices", quoted::<super::Language>().into())];
        let means = words.say("event-second-language", &[]);
        let second = match self.second_language {
            Some(language) => line("second_language", &text(language.word()), &means),
            None => {
                let other = super::Language::ALL.iter().rev().find(|(own, _)| *own != self.language);
                example("second_language", &text(other.map_or("", |(_, word)| word)), &means)
            }
        };
        [
            format!("# {}\n", words.say("event-head", &[])),
            format!("name = {}\n", text(&self.name)),
            line("tag", &text(&self.tag.to_string()), &words.say("event-tag", &[])),
            line("language", &text(self.language.word()), &words.say("event-language", &choices)),
            second,
        ]
        .concat()
    }

    fn picture_table(&self, words: &Words) -> String {
        let picture = &self.picture;
        let mut table = [
            "[picture]\n".to_owned(),
            line("file", &text(&picture.file), &words.say("event-file", &[])),
            line("colors", &picture.colours.to_string(), &words.say("event-colours", &[])),
        ]
        .concat();
        if let Some(credit) = &picture.credit {
            table += &line("credit", &text(credit), &words.say("event-credit", &[]));
        }
        for pencil in &picture.pencils {
            let (name, srgb) = (text(&pencil.name), pencil.hex());
            table += &format!("\n[[pencils]]\nname = {name}\nsrgb = \"{srgb}\"\n");
        }
        if picture.pencils.is_empty() {
            let (why, name) = (words.say("event-pencils", &[]), words.say("event-pencils-name", &[]));
            let name = text(&name);
            table += &format!("# {why}\n# [[pencils]]\n# name = {name}\n# srgb = \"#3a8f4d\"\n");
        }
        table
    }

    fn wall_table(&self, words: &Words) -> String {
        let grid = &self.grid;
        let say = |id: &str| words.say(id, &[]);
        let choices = [("choices", quoted::<crate::plan::RowsFrom>().into())];
        let border = match grid.border {
            true => line("border", "true", &say("event-border")),
            false => String::new(),
        };
        let free: Vec<String> = grid.kept_free.cells().map(|cell| text(&grid.label(cell))).collect();
        let kept_free = match free.as_slice() {
            [] => example("keep_free", &format!("[{}]", text("A1")), &say("event-keep-free")),
            free => line("keep_free", &format!("[{}]", free.join(", ")), &say("event-keep-free")),
        };
        [
            "[wall]\n".to_owned(),
            line("columns", &grid.columns.to_string(), &say("event-columns")),
            line("rows", &grid.rows.to_string(), &say("event-rows")),
            line("piece_mm", &number(grid.piece_mm), &say("event-piece-mm")),
            line("square_mm", &number(grid.square_mm), &say("event-square-mm")),
            line("rows_from", &text(grid.rows_from.word()), &words.say("event-rows-from", &choices)),
            border,
            kept_free,
        ]
        .concat()
    }

    fn code_table(&self, words: &Words) -> String {
        let code = &self.code;
        let usual = code.module_mm == CodeSettings::usual_module_mm(&self.grid);
        let module = number(code.module_mm);
        [
            "[code]\n".to_owned(),
            match usual {
                true => example("module_mm", &module, &words.say("event-module-mm-usual", &[])),
                false => line("module_mm", &module, &words.say("event-module-mm", &[])),
            },
            line("corner", &text(code.corner.word()), &quoted::<super::Corner>()),
            line("inset_mm", &number(code.inset_mm), &words.say("event-inset-mm", &[])),
        ]
        .concat()
    }

    fn print_table(&self, words: &Words) -> String {
        let print = &self.print;
        let flips = [("choices", quoted::<super::Flip>().into())];
        let units = [("choices", quoted::<super::Units>().into())];
        let joins = [("choices", quoted::<super::Join>().into())];
        [
            "[print]\n".to_owned(),
            line("paper", &text(print.paper.word()), &quoted::<super::Paper>()),
            line("flip", &text(print.flip.word()), &words.say("event-flip", &flips)),
            line("units", &text(print.units.word()), &words.say("event-units", &units)),
            line("join", &text(print.join.word()), &words.say("event-join", &joins)),
        ]
        .concat()
    }
}
