//! The words: every language has every sentence with the same things filled in, every sentence is used, and every one that is
//! asked for is there.

#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    clippy::cast_precision_loss,
    reason = "a test fails by panicking"
)]

#[path = "words/british.rs"]
mod british;
#[path = "words/composed.rs"]
mod composed;
#[path = "words/file.rs"]
mod file;
#[path = "words/filled.rs"]
mod filled;
#[path = "words/languages.rs"]
mod languages;
#[path = "words/literals.rs"]
mod literals;
#[path = "words/plain.rs"]
mod plain;
#[path = "words/program.rs"]
mod program;
#[path = "words/used.rs"]
mod used;
#[path = "words/values.rs"]
mod values;

#[path = "common/mod.rs"]
mod common;
