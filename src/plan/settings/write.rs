//! Settings to event.toml, and one setting changed within it.

use toml_edit::{Document, Item, TableLike, Value};

use super::choice::Choice;
use super::error::SettingsError;
use super::read::{KNOWN, LISTS};
use super::{CodeSettings, Settings, evening, levels};

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

pub(super) fn text(value: &str) -> String {
    Value::from(value).to_string()
}

pub(super) fn number(value: f64) -> String {
    format!("{value:?}")
}

impl Settings {
    /// A new event.toml, with comments for whoever edits it. Reads back as these settings.
    #[must_use]
    pub fn to_toml(&self) -> String {
        let tables = [
            self.head(),
            self.picture_table(),
            self.wall_table(),
            self.code_table(),
            self.print_table(),
            evening::written(&self.evening),
            levels::written(&self.levels, &self.grid),
        ];
        tables.join("\n")
    }

    fn head(&self) -> String {
        format!(
            "# What the evening is. Change what you like, then run the command again; whatever follows a # is for people.\n\
             name = {}\n\
             tag = {}   # in every code of this event; once the squares are printed, leave it\n\
             language = {}   # of all that is printed and shown: {}\n",
            text(&self.name),
            text(&self.tag.to_string()),
            text(self.language.word()),
            quoted::<super::Language>(),
        )
    }

    fn picture_table(&self) -> String {
        let mut table = format!(
            "[picture]\n\
             file = {}   # in this folder\n\
             colours = {}   # how many pencils each table needs\n",
            text(&self.picture.file),
            self.picture.colours,
        );
        for pencil in &self.picture.pencils {
            let [red, green, blue] = pencil.srgb;
            let name = text(&pencil.name);
            table += &format!("\n[[pencils]]\nname = {name}\nsrgb = \"#{red:02x}{green:02x}{blue:02x}\"\n");
        }
        if self.picture.pencils.is_empty() {
            table += "# Your own pencils instead: leave colours out and list each one at the end of this file, like this:\n\
                      # [[pencils]]\n\
                      # name = \"leaf green\"\n\
                      # srgb = \"#3a8f4d\"\n";
        }
        table
    }

    fn wall_table(&self) -> String {
        let grid = &self.grid;
        format!(
            "[wall]\n\
             columns = {}   # side by side, lettered from the left\n\
             rows = {}   # one above the other\n\
             tile_mm = {}   # side of the piece of the picture that a visitor is given\n\
             square_mm = {}   # side of the paper it is redrawn on\n\
             rows_from = {}   # where row 1 is: {}\n",
            grid.columns,
            grid.rows,
            number(grid.tile_mm),
            number(grid.square_mm),
            text(grid.rows_from.word()),
            quoted::<crate::plan::RowsFrom>(),
        )
    }

    fn code_table(&self) -> String {
        let code = &self.code;
        let usual = code.module_mm == CodeSettings::usual_module_mm(&self.grid);
        let module = if usual {
            format!(
                "# module_mm = {}   # left out: as small as a phone can read on a wall of this size\n",
                number(code.module_mm)
            )
        } else {
            format!(
                "module_mm = {}   # leave it out for as small as a phone can read on a wall of this size\n",
                number(code.module_mm)
            )
        };
        format!(
            "[code]\n\
             {module}\
             corner = {}   # {}\n\
             inset_mm = {}   # from the cut edges to the code; neighbours and tape cover the edges first\n",
            text(code.corner.word()),
            quoted::<super::Corner>(),
            number(code.inset_mm),
        )
    }

    fn print_table(&self) -> String {
        let print = &self.print;
        format!(
            "[print]\n\
             paper = {}   # {}\n\
             flip = {}   # how the printer turns the paper over: {} (single-sided)\n\
             units = {}   # what people read: {}; this file is always in mm\n",
            text(print.paper.word()),
            quoted::<super::Paper>(),
            text(print.flip.word()),
            quoted::<super::Flip>(),
            text(print.units.word()),
            quoted::<super::Units>(),
        )
    }
}

/// All words of a choice, as they are typed.
pub(super) fn quoted<T: Choice>() -> String {
    let words: Vec<String> = T::ALL.iter().map(|(_, word)| format!("\"{word}\"")).collect();
    words.join(", ")
}
