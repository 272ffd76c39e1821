//! The house keeps its order: what imports what, what touches the world outside, documents that name what exists, licences.
//!
//! Each rule is a function from text to complaints, so that each is also shown to complain.

#![allow(
    clippy::cast_precision_loss,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test fails by panicking"
)]

#[path = "../common/mod.rs"]
mod common;

mod documents;
mod files;
mod imports;
mod licences;
mod outside;
mod paths;
mod words;

use std::path::{Path, PathBuf};

/// A text file of the project: its path from the project's root, with `/`, and what is in it.
struct Text {
    path: String,
    text: String,
}

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// Every text file of the project, sorted by path: what lies at its top, and all below the folders that hold its sources.
fn texts() -> Vec<Text> {
    let mut files = Vec::new();
    let top = |name: &str| root().join(name);
    for folder in ["src", "tests", "tools", "samples", ".ci"] {
        collect(&top(folder), &mut files);
    }
    let here = std::fs::read_dir(root()).unwrap().map(|entry| entry.unwrap().path());
    files.extend(here.filter(|path| path.is_file() && !path.ends_with(".git")));
    files.sort();
    let named = |path: &PathBuf| {
        let parts: Vec<_> = path
            .strip_prefix(root())
            .unwrap()
            .iter()
            .map(|part| part.to_string_lossy().into_owned())
            .collect();
        parts.join("/")
    };
    let text = |path: &PathBuf| {
        let text = String::from_utf8(std::fs::read(path).unwrap()).ok()?;
        Some(Text { path: named(path), text })
    };
    files.iter().filter_map(text).collect()
}

/// Files below a folder, without what programs leave behind there.
fn collect(folder: &Path, files: &mut Vec<PathBuf>) {
    const LEFT_BEHIND: [&str; 3] = ["target", "__pycache__", ".venv"];
    for entry in std::fs::read_dir(folder).into_iter().flatten() {
        let path = entry.unwrap().path();
        if !path.is_dir() {
            files.push(path);
        } else if !LEFT_BEHIND.iter().any(|name| path.ends_with(name)) {
            collect(&path, files);
        }
    }
}

/// The library's sources.
fn sources() -> Vec<Text> {
    texts().into_iter().filter(|file| file.path.starts_with("src/") && file.path.ends_with(".rs")).collect()
}

fn file(path: &str) -> String {
    std::fs::read_to_string(root().join(path)).unwrap()
}

fn none(complaints: &[String]) {
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}
