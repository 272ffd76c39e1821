//! The plan: event.toml, codes, manifest, event folder.

#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::panic,
    clippy::print_stdout,
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss
)]

#[path = "plan/codes.rs"]
mod codes;
#[path = "plan/crowd.rs"]
mod crowd;
#[path = "plan/folders.rs"]
mod folders;
#[path = "plan/levels.rs"]
mod levels;
#[path = "plan/manifests.rs"]
mod manifests;
#[path = "plan/settings.rs"]
mod settings;
#[path = "plan/simulated.rs"]
mod simulated;
