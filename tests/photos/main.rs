//! What is read in photos, and drawn from them: made walls, walls of another simulator, real photographs, strange ones.

#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    clippy::unwrap_used,
    reason = "a test fails by panicking; its counts and draws are small; it says how much it found"
)]

#[path = "../common/mod.rs"]
mod common;

mod apart;
mod bare;
mod boards;
mod display;
mod heic;
mod likeness;
mod locate;
mod made;
mod people;
mod real;
mod straight;
mod strange;
mod views;
mod walls;
mod white;

use common::scenes;
