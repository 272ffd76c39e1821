//! The plan: event.toml, codes, manifest, event folder.

#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::panic,
    clippy::print_stdout,
    clippy::cast_possible_truncation
)]

#[path = "plan/codes.rs"]
mod codes;
#[path = "plan/folders.rs"]
mod folders;
#[path = "plan/manifests.rs"]
mod manifests;
#[path = "plan/settings.rs"]
mod settings;
