//! The words: every language has every sentence with the same things filled in, every sentence is used, and every one that is
//! asked for is there.

mod british;
mod composed;
mod file;
mod filled;
mod languages;
mod literals;
mod plain;
mod program;
mod used;
mod values;
