//! One table of event.toml, read setting by setting; every refusal names its line.

use std::ops::RangeInclusive;

use toml_edit::{Item, TableLike, Value};

use super::choice::Choice;
use super::coming::Visitors;
use super::error::{SettingsError, line_of, shortened};
use super::known::{KNOWN, LISTS};
use crate::plan::clock::Clock;
use crate::words::{Sentence, nearest};

/// Settings with a second spelling: the name used here, and what a file may say instead.
const SPELLINGS: [(&str, &str); 2] = [("colours", "colors"), ("piece_mm", "tile_mm")];

/// One table and where it stands.
#[derive(Copy, Clone)]
pub(super) struct Section<'a> {
    /// The whole file.
    text: &'a str,
    /// The table's name; empty for the top of the file.
    name: &'a str,
    /// `None` where the table is left out.
    table: Option<&'a dyn TableLike>,
}

impl<'a> Section<'a> {
    /// The top of the file, or one element of a list.
    pub fn new(text: &'a str, name: &'a str, table: &'a dyn TableLike) -> Self {
        Self { text, name, table: Some(table) }
    }

    /// The table `name` within this one.
    pub fn section(&self, name: &'a str) -> Result<Self, SettingsError> {
        let table = match self.item(name) {
            None => None,
            Some(item) => Some(item.as_table_like().ok_or_else(|| {
                self.refuse(name, Sentence::new("error-settings-table").with("name", name))
            })?),
        };
        Ok(Self { text: self.text, name, table })
    }

    /// The list of tables `name`; empty where it is left out.
    pub fn list(&self, name: &'a str) -> Result<Vec<Section<'a>>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(Vec::new()) };
        let refuse = || self.refuse(name, Sentence::new("error-settings-list").with("name", name));
        let tables: Vec<&dyn TableLike> = if let Some(tables) = item.as_array_of_tables() {
            tables.iter().map(|table| table as &dyn TableLike).collect()
        } else {
            let values = item.as_array().ok_or_else(refuse)?;
            let tables =
                values.iter().map(|value| value.as_inline_table().map(|table| table as &dyn TableLike));
            tables.collect::<Option<_>>().ok_or_else(refuse)?
        };
        Ok(tables.into_iter().map(|table| Self::new(self.text, name, table)).collect())
    }

    /// Refuses every name that is not in `known`, the first in the file first.
    pub fn only(&self, known: &[&str]) -> Result<(), SettingsError> {
        let Some(table) = self.table else { return Ok(()) };
        // a second spelling beside the first one is refused as well: one of them would count for nothing
        let is_known = |name: &str| {
            known.contains(&name)
                || SPELLINGS.iter().any(|(first, second)| {
                    *second == name && known.contains(first) && !table.contains_key(first)
                })
        };
        let unknown = table.iter().map(|(name, _)| name).filter(|name| !is_known(name));
        match unknown.min_by_key(|name| self.line(name)) {
            None => Ok(()),
            Some(name) => Err(SettingsError::Unknown {
                line: self.line(name),
                read: shortened(name),
                section: self.name.to_owned(),
                hint: hint(name, known),
            }),
        }
    }

    /// A whole number within `range`.
    pub fn whole(&self, name: &str, range: &RangeInclusive<usize>) -> Result<Option<usize>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        let value = item.as_integer().and_then(|value| usize::try_from(value).ok());
        match value.filter(|value| range.contains(value)) {
            Some(value) => Ok(Some(value)),
            None => {
                let (least, most) = (range.start().to_string(), range.end().to_string());
                let allowed = Sentence::new("error-settings-whole").with("least", least).with("most", most);
                Err(self.refuse(name, allowed))
            }
        }
    }

    /// A number of visitors or a range of it.
    pub fn visitors(&self, name: &str) -> Result<Option<Visitors>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        let whole = || item.as_integer().and_then(|value| usize::try_from(value).ok());
        let read = item.as_str().and_then(Visitors::read);
        let read = read.or_else(|| whole().and_then(|only| Visitors::new(only, only)));
        read.map(Some).ok_or_else(|| self.refuse(name, Visitors::allowed()))
    }

    /// A time of day, as a text or as TOML has it.
    pub fn clock(&self, name: &str) -> Result<Option<Clock>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        let timed = |time: &toml_edit::Time| Clock::new(time.hour.into(), time.minute.into());
        let read = item.as_str().and_then(Clock::read);
        let read = read.or_else(|| match item.as_datetime() {
            Some(toml_edit::Datetime { date: None, time: Some(time), offset: None }) => timed(time),
            _ => None,
        });
        read.map(Some).ok_or_else(|| self.refuse(name, Sentence::new("error-settings-clock")))
    }

    /// A number of millimetres within `range`.
    pub fn millimetres(&self, name: &str, range: &RangeInclusive<f64>) -> Result<Option<f64>, SettingsError> {
        self.number(name, range, "error-settings-millimetres")
    }

    /// A number within `range`; `allowed` is the sentence that names its unit.
    pub fn number(
        &self,
        name: &str,
        range: &RangeInclusive<f64>,
        allowed: &'static str,
    ) -> Result<Option<f64>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        match item.as_value().and_then(real).filter(|value| range.contains(value)) {
            Some(value) => Ok(Some(value)),
            None => {
                let (least, most) = (*range.start(), *range.end());
                Err(self.refuse(name, Sentence::new(allowed).with("least", least).with("most", most)))
            }
        }
    }

    /// A list of `N` numbers that `fits`, such as `[1, 2.5]`.
    pub fn numbers<const N: usize>(
        &self,
        name: &str,
        allowed: Sentence,
        fits: impl Fn(&[f64; N]) -> bool,
    ) -> Result<Option<[f64; N]>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        let read = || item.as_array()?.iter().map(real).collect::<Option<Vec<f64>>>()?.try_into().ok();
        read().filter(fits).map(Some).ok_or_else(|| self.refuse(name, allowed))
    }

    /// A list of `N` texts that `fits`, such as `["a", "b"]`.
    pub fn texts<const N: usize>(
        &self,
        name: &str,
        allowed: Sentence,
        fits: impl Fn(&[String; N]) -> bool,
    ) -> Result<Option<[String; N]>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        let own = |value: &Value| value.as_str().map(str::to_owned);
        let read = || item.as_array()?.iter().map(own).collect::<Option<Vec<String>>>()?.try_into().ok();
        read().filter(fits).map(Some).ok_or_else(|| self.refuse(name, allowed))
    }

    /// A list of texts that `meant` makes something of; empty where it is left out.
    pub fn all_texts<T>(
        &self,
        name: &str,
        allowed: Sentence,
        meant: impl Fn(&str) -> Option<T>,
    ) -> Result<Vec<T>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(Vec::new()) };
        let read = || item.as_array()?.iter().map(|value| meant(value.as_str()?)).collect::<Option<Vec<T>>>();
        read().ok_or_else(|| self.refuse(name, allowed))
    }

    /// `true` or `false`.
    pub fn yes_or_no(&self, name: &str) -> Result<Option<bool>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        item.as_bool().map(Some).ok_or_else(|| self.refuse(name, Sentence::new("error-settings-yes-or-no")))
    }

    /// One of a few words.
    pub fn choice<T: Choice>(&self, name: &str) -> Result<Option<T>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        match item.as_str().and_then(T::named) {
            Some(choice) => Ok(Some(choice)),
            None => {
                Err(self.refuse(name, Sentence::new("error-settings-choice").with("choices", T::listed())))
            }
        }
    }

    /// A text that `meant` makes something of.
    pub fn text<T>(
        &self,
        name: &str,
        allowed: Sentence,
        meant: impl Fn(&str) -> Option<T>,
    ) -> Result<Option<T>, SettingsError> {
        let Some(item) = self.item(name) else { return Ok(None) };
        item.as_str().and_then(meant).map(Some).ok_or_else(|| self.refuse(name, allowed))
    }

    /// The error that the setting `name`, as it stands, is refused with.
    pub fn refuse(&self, name: &str, allowed: Sentence) -> SettingsError {
        let value =
            self.item(name).and_then(Item::span).and_then(|span| self.text.get(span)).unwrap_or_default();
        let first_line = value.lines().next().unwrap_or_default().trim();
        let read = if value.is_empty() || first_line.starts_with('[') && self.is_table(name) {
            name.to_owned()
        } else {
            format!("{} = {}", self.spelled(name), shortened(first_line))
        };
        SettingsError::Refused { line: self.line(name), read, allowed }
    }

    fn is_table(&self, name: &str) -> bool {
        self.item(name).is_some_and(|item| item.is_table() || item.is_array_of_tables())
    }

    fn item(&self, name: &str) -> Option<&'a Item> {
        self.table?.get(self.spelled(name))
    }

    /// The spelling of a setting's name that this table uses.
    pub fn spelled<'b>(&self, name: &'b str) -> &'b str {
        let has = |name: &str| self.table.is_some_and(|table| table.contains_key(name));
        let second = SPELLINGS.iter().find(|(first, second)| *first == name && has(second));
        second.filter(|_| !has(name)).map_or(name, |(_, second)| second)
    }

    /// The line of a setting.
    fn line(&self, name: &str) -> usize {
        let found = self.table.and_then(|table| table.get_key_value(self.spelled(name)));
        line_of(self.text, found.and_then(|(key, item)| key.span().or_else(|| item.span())))
    }
}

/// A number with or without decimals.
fn real(value: &Value) -> Option<f64> {
    let whole = || value.as_integer().and_then(|value| i32::try_from(value).ok()).map(f64::from);
    value.as_float().or_else(whole)
}

/// Where the name belongs, or the known name that is meant, if one is near; all of them otherwise.
fn hint(name: &str, known: &[&str]) -> Sentence {
    match KNOWN.iter().find(|(_, names)| names.contains(&name)) {
        Some(("", _)) => return Sentence::new("error-settings-belongs-top"),
        Some((section, _)) => {
            let listed = LISTS.contains(section);
            let named = if listed { format!("[{section}]") } else { (*section).to_owned() };
            return Sentence::new("error-settings-belongs").with("section", named);
        }
        None => {}
    }
    // of two spellings, the one that is written today
    let known: Vec<&str> = known.iter().map(|own| if *own == "colours" { "colors" } else { own }).collect();
    match nearest(name, known.iter().copied()) {
        Some(near) => Sentence::new("error-settings-near").with("near", near),
        None => Sentence::new("error-settings-known").with("known", known.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::in_english;

    #[test]
    fn a_typing_error_is_guessed_and_nonsense_is_not() {
        let known = ["columns", "rows", "piece_mm"];
        assert_eq!(in_english(&hint("colums", &known)), "Do you mean columns?");
        assert_eq!(in_english(&hint("sheet", &known)), "You can use columns, rows, piece_mm");
        assert_eq!(in_english(&hint("colurs", &["file", "colours"])), "Do you mean colors?");
        assert_eq!(in_english(&hint("paper", &known)), "It belongs under [print]");
        assert_eq!(in_english(&hint("bottom_mm", &known)), "It belongs under [[parts]]");
        assert_eq!(
            in_english(&hint("tag", &known)),
            "It belongs at the top of the file, above the first [table]"
        );
    }

    #[test]
    fn a_setting_is_read_in_either_spelling_and_not_in_both() {
        let read = |text: &str| {
            let file = toml_edit::Document::parse(text).unwrap();
            let section = Section::new(text, "picture", file.as_table());
            section.only(&["colours"]).map_err(|error| error.to_string())?;
            section.whole("colours", &(2..=12)).map_err(|error| error.to_string())
        };
        assert_eq!((read("colours = 5"), read("colors = 6")), (Ok(Some(5)), Ok(Some(6))));
        assert!(read("colors = 60").unwrap_err().contains("colors = 60"));
        assert!(read("colours = 5\ncolors = 6").unwrap_err().contains("line 2"));
    }
}
