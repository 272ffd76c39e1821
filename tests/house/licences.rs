//! Every package that is linked in may be passed on under MIT or Apache 2.0 terms: permissive licences only.
//!
//! Licences are named as in the SPDX list, version 3; in older packages `/` stands for OR.

use std::process::Command;

use super::{none, root};

/// Licences that ask for no more than their text and a name.
const PERMISSIVE: [&str; 13] = [
    "0BSD",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "IJG", // the Independent JPEG Group: asks that it be named
    "ISC",
    "MIT",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Whether a licence expression leaves a permissive choice: OR of ANDs of names and brackets.
fn permissive(expression: &str) -> bool {
    let spaced = expression.replace('/', " OR ").replace('(', " ( ").replace(')', " ) ");
    let words: Vec<&str> = spaced.split_whitespace().collect();
    let mut at = 0;
    let fits = any(&words, &mut at);
    fits && at == words.len()
}

fn any(words: &[&str], at: &mut usize) -> bool {
    let mut fits = all(words, at);
    while words.get(*at) == Some(&"OR") {
        *at += 1;
        fits |= all(words, at);
    }
    fits
}

fn all(words: &[&str], at: &mut usize) -> bool {
    let mut fits = one(words, at);
    while words.get(*at) == Some(&"AND") {
        *at += 1;
        fits &= one(words, at);
    }
    fits
}

fn one(words: &[&str], at: &mut usize) -> bool {
    if words.get(*at) == Some(&"(") {
        *at += 1;
        let fits = any(words, at);
        let closed = words.get(*at) == Some(&")");
        *at += 1;
        return fits && closed;
    }
    let Some(name) = words.get(*at) else { return false };
    let mut name = (*name).to_owned();
    *at += 1;
    if words.get(*at) == Some(&"WITH") {
        name = format!("{name} WITH {}", words.get(*at + 1).unwrap_or(&""));
        *at += 2;
    }
    PERMISSIVE.contains(&name.as_str())
}

/// What Cargo knows of the packages that a build for this machine needs.
fn metadata() -> serde_json::Value {
    let version =
        Command::new(std::env::var("RUSTC").unwrap_or_else(|_| "rustc".to_owned())).arg("-vV").output();
    let version = String::from_utf8(version.unwrap().stdout).unwrap();
    let host = version.lines().find_map(|line| line.strip_prefix("host: ")).unwrap();
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned());
    let told = Command::new(cargo)
        .current_dir(root())
        .args(["metadata", "--format-version", "1", "--locked", "--offline", "--filter-platform", host])
        .output()
        .unwrap();
    assert!(told.status.success(), "{}", String::from_utf8_lossy(&told.stderr));
    serde_json::from_slice(&told.stdout).unwrap()
}

#[test]
fn every_package_may_be_passed_on() {
    let metadata = metadata();
    let packages = metadata["packages"].as_array().unwrap();
    assert!(packages.len() > 50, "{} packages only", packages.len());
    let complaints: Vec<String> = packages
        .iter()
        .filter_map(|package| {
            let licence = package["license"].as_str().unwrap_or("none said");
            (!permissive(licence)).then(|| format!("{} {}: {licence}", package["name"], package["version"]))
        })
        .collect();
    none(&complaints);
}

#[test]
fn the_texts_of_our_own_licences_and_of_the_fonts_are_there() {
    assert!(super::file("LICENSE-MIT").contains("Permission is hereby granted"));
    assert!(super::file("LICENSE-APACHE").contains("Version 2.0, January 2004"));
    let fonts = super::texts().into_iter().map(|text| text.path).filter(|path| path.contains("/fonts/"));
    assert_eq!(fonts.count(), 2, "one licence beside each family of fonts");
}

#[test]
fn a_licence_that_asks_for_more_is_seen() {
    for good in [
        "MIT",
        "MIT OR Apache-2.0",
        "MIT/Apache-2.0",
        "Apache-2.0 OR GPL-2.0-only",
        "(MIT OR Apache-2.0) AND Unicode-3.0",
        "Apache-2.0 WITH LLVM-exception OR GPL-3.0",
    ] {
        assert!(permissive(good), "{good}");
    }
    for bad in [
        "GPL-3.0-only",
        "AGPL-3.0-or-later OR Commercial",
        "MIT AND GPL-2.0-only",
        "(MIT OR Apache-2.0) AND AGPL-3.0",
        "none said",
        "GPL-2.0 WITH Classpath-exception-2.0",
        "",
        "(MIT",
    ] {
        assert!(!permissive(bad), "{bad}");
    }
}
