//! The plan: event.toml, codes, manifest, event folder.

#[path = "plan/codes.rs"]
mod codes;
#[path = "plan/folders.rs"]
mod folders;
#[path = "plan/manifests.rs"]
mod manifests;
#[path = "plan/settings.rs"]
mod settings;
