//! The plan: event.toml, codes, manifest, event folder.

mod codes;
mod crowd;
mod folders;
mod levels;
mod manifests;
mod settings;
mod simulated;
