//! What pages to read are made of: headings, paragraphs, lists, tables. `templates/blocks.typ` sets them.

use serde::Serialize;

use super::Sources;
use crate::plan::settings::Join;
use crate::words::FluentValue;

/// A part of a page to read.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub(super) enum Block {
    /// The title of a page; all but the first begin a new one.
    Title { text: String },
    /// The heading of a part.
    Heading { text: String },
    /// A paragraph.
    Text { text: String },
    /// A paragraph in a frame: what matters most.
    Note { text: String },
    /// Points.
    List { items: Vec<String> },
    /// Things to do, one after the other.
    Steps { items: Vec<String> },
    /// Things to tick off.
    Boxes { items: Vec<String> },
    /// A table. The columns' widths are parts of what the narrow ones leave; 0 for a narrow one. The first column is bold.
    Table { heads: Vec<String>, widths: Vec<f64>, rows: Vec<Vec<String>> },
    /// A drawing that the template makes, with what it shows in words.
    Drawing { about: String },
    /// The same with room to write in by hand.
    Form { heads: Vec<String>, widths: Vec<f64>, rows: Vec<Vec<String>> },
    /// A small wall: how many columns, and row by row from the top each spot's label and whether it is marked.
    Wall { about: String, columns: usize, spots: Vec<(String, bool)> },
}

/// What fills the gaps of a sentence.
pub(super) type Values<'a> = [(&'a str, FluentValue<'a>)];

/// Words for blocks: the sentences of one document with the same values for all of them.
pub(super) struct Writer<'a> {
    pub sources: &'a Sources<'a>,
    /// What every sentence may name.
    pub values: Vec<(&'static str, FluentValue<'static>)>,
}

/// The id of a sentence as it is said where pieces and squares are joined so.
pub(super) fn joined(id: &str, join: Join) -> &str {
    if join == Join::Apart {
        return id;
    }
    match id {
        "guide-hours-3" => "guide-hours-3-strip",
        "guide-paper-amount" => "guide-paper-amount-strip",
        "guide-pieces-1" => "guide-pieces-1-strip",
        "guide-pieces-2" => "guide-pieces-2-strip",
        "guide-pieces-3" => "guide-pieces-3-strip",
        "guide-pieces-4" => "guide-pieces-4-strip",
        "guide-printer-amount" => "guide-printer-amount-strip",
        "guide-running-1" => "guide-running-1-strip",
        "guide-running-3" => "guide-running-3-strip",
        "guide-running-4" => "guide-running-4-strip",
        "guide-week-3" => "guide-week-3-strip",
        "guide-week-5" => "guide-week-5-strip",
        "guide-week-6" => "guide-week-6-strip",
        "helpers-check-empty" => "helpers-check-empty-strip",
        "helpers-each-1" => "helpers-each-1-strip",
        "helpers-each-2" => "helpers-each-2-strip",
        "helpers-each-3" => "helpers-each-3-strip",
        "helpers-each-5" => "helpers-each-5-strip",
        "helpers-hand-out-intro" => "helpers-hand-out-intro-strip",
        "helpers-hang-3" => "helpers-hang-3-strip",
        "helpers-hang-5" => "helpers-hang-5-strip",
        "helpers-if-1" => "helpers-if-1-strip",
        "helpers-if-4" => "helpers-if-4-strip",
        "helpers-order-1" => "helpers-order-1-strip",
        "helpers-order-border" => "helpers-order-border-strip",
        "helpers-sort-1" => "helpers-sort-1-strip",
        "steps-1" => "steps-1-strip",
        "steps-6" => "steps-6-strip",
        other => other,
    }
}

impl Writer<'_> {
    /// A sentence.
    pub fn say(&self, id: &str) -> String {
        self.sources.words.say(joined(id, self.sources.settings.print.join), &self.values)
    }

    /// A sentence with values of its own besides.
    pub fn say_with(&self, id: &str, more: &Values) -> String {
        let values: Vec<(&str, FluentValue)> = self
            .values
            .iter()
            .map(|(name, value)| (*name, value.clone()))
            .chain(more.iter().cloned())
            .collect();
        self.sources.words.say(joined(id, self.sources.settings.print.join), &values)
    }

    /// The sentences `id-1`, `id-2` … as many as there are to be.
    pub fn all(&self, id: &str, count: usize) -> Vec<String> {
        (1..=count).map(|number| self.say(&format!("{id}-{number}"))).collect()
    }

    /// A title.
    pub fn title(&self, id: &str) -> Block {
        Block::Title { text: self.say(id) }
    }

    /// A heading.
    pub fn heading(&self, id: &str) -> Block {
        Block::Heading { text: self.say(id) }
    }

    /// A paragraph.
    pub fn text(&self, id: &str) -> Block {
        Block::Text { text: self.say(id) }
    }

    /// A paragraph in a frame.
    pub fn note(&self, id: &str) -> Block {
        Block::Note { text: self.say(id) }
    }

    /// Points.
    pub fn list(&self, id: &str, count: usize) -> Block {
        Block::List { items: self.all(id, count) }
    }

    /// Things to do, one after the other.
    pub fn steps(&self, id: &str, count: usize) -> Block {
        Block::Steps { items: self.all(id, count) }
    }

    /// Things to tick off.
    pub fn boxes(&self, id: &str, count: usize) -> Block {
        Block::Boxes { items: self.all(id, count) }
    }

    /// The heads of a table.
    pub fn heads(&self, ids: &[&str]) -> Vec<String> {
        ids.iter().map(|id| self.say(id)).collect()
    }
}
