//! A file of words, taken apart.

use std::collections::{BTreeMap, BTreeSet};

use everysquare::words::whole;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Variant, VariantKey};
use fluent_syntax::parser::parse;

/// One sentence of a file.
#[derive(Debug, Default)]
pub struct Message {
    /// The heading above it.
    pub group: String,
    /// What the program fills in.
    pub variables: BTreeSet<String>,
    /// For each that chooses between variants, the keys of these; the usual one with a `*`.
    pub choices: BTreeMap<String, BTreeSet<String>>,
    /// Its words alone, without what is filled in; a choice's variants one after another.
    pub text: String,
    /// Each way the sentence may run, with what is filled in as `{}`.
    pub ways: Vec<String>,
}

/// A language's sentences in the order of its file.
pub fn messages(code: &str) -> Vec<(String, Message)> {
    let text = whole(code).expect("a language of the program");
    read(code, &text)
}

/// The sentences of a file's text.
pub fn read(code: &str, text: &str) -> Vec<(String, Message)> {
    let file = parse(text).unwrap_or_else(|(_, faults)| panic!("{code}.ftl: {faults:?}"));
    let mut messages = Vec::new();
    let mut group = String::new();
    for entry in file.body {
        match entry {
            Entry::Message(message) => {
                assert!(message.attributes.is_empty(), "{}: attributes are never said", message.id.name);
                let pattern = message.value.unwrap_or_else(|| panic!("{} is empty", message.id.name));
                let mut own = Message { group: group.clone(), ..Message::default() };
                own.ways = own.of(&pattern);
                messages.push((message.id.name.to_owned(), own));
            }
            Entry::Term(term) => panic!("{code}.ftl: -{}: terms are not used", term.id.name),
            Entry::Junk { content } => panic!("{code}.ftl: {content}"),
            Entry::GroupComment(heading) => group = heading.content.join(" "),
            Entry::Comment(_) | Entry::ResourceComment(_) => {}
        }
    }
    messages
}

/// The same by id.
pub fn by_id(code: &str) -> BTreeMap<String, Message> {
    messages(code).into_iter().collect()
}

impl Message {
    /// Adds what a pattern holds; gives the ways it may run.
    fn of(&mut self, pattern: &Pattern<&str>) -> Vec<String> {
        let mut ways = vec![String::new()];
        for element in &pattern.elements {
            let parts = match element {
                PatternElement::TextElement { value } => {
                    self.text.push_str(value);
                    vec![(*value).to_owned()]
                }
                PatternElement::Placeable { expression } => self.expression(expression),
            };
            ways = ways.iter().flat_map(|way| parts.iter().map(move |part| format!("{way}{part}"))).collect();
        }
        ways
    }

    fn expression(&mut self, expression: &Expression<&str>) -> Vec<String> {
        match expression {
            Expression::Inline(InlineExpression::VariableReference { id }) => {
                self.variables.insert(id.name.to_owned());
                self.text.push(' ');
                vec!["{}".to_owned()]
            }
            Expression::Inline(InlineExpression::StringLiteral { value }) => vec![(*value).to_owned()],
            Expression::Select { selector: InlineExpression::VariableReference { id }, variants } => {
                self.variables.insert(id.name.to_owned());
                let keys = variants.iter().map(key);
                self.choices.entry(id.name.to_owned()).or_default().extend(keys);
                variants.iter().flat_map(|variant| self.of(&variant.value)).collect()
            }
            other => panic!("this is not used in the program's words: {other:?}"),
        }
    }
}

fn key(variant: &Variant<&str>) -> String {
    let name = match variant.key {
        VariantKey::Identifier { name } => name,
        VariantKey::NumberLiteral { value } => value,
    };
    if variant.default { format!("*{name}") } else { name.to_owned() }
}
