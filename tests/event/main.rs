//! The event from its plan to what is kept: files, picture, prints, judgement, report, commands, the helper's page.

#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_possible_wrap,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    clippy::unwrap_used,
    missing_docs,
    reason = "a test fails by panicking; its counts and draws are small; it says how much it found"
)]

#[path = "../common/mod.rs"]
mod common;

mod check;
mod comparison;
mod display_command;
mod frame;
mod judge;
mod levels;
mod new;
mod picture;
mod plan;
mod plan_command;
mod print;
mod questions;
mod rehang;
mod rehearse;
mod report;
mod serve;
mod terminal;
