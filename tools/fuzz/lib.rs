//! The modules of the program that read other people's files, built alone.

#![allow(dead_code, reason = "the modules that use the rest are left out")]

#[path = "../../src/frame/mod.rs"]
pub mod frame;
#[path = "../../src/photo/mod.rs"]
pub mod photo;
#[path = "../../src/plan/mod.rs"]
pub mod plan;
#[path = "../../src/read/mod.rs"]
pub mod read;
#[path = "../../src/words/mod.rs"]
pub mod words;
