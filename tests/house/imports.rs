//! Imports run one way, and a dependency has one home.

use std::collections::{BTreeMap, BTreeSet};

use super::paths::paths;
use super::{Text, file, none, sources};

/// Each module with those it may import. `{frame, words} ← plan ← photo ← {picture, read} ← judge ← {report, display,
/// rehearse} ← print ← check ← gallery ← {serve, cli}`.
const MAY_IMPORT: &[(&str, &[&str])] = &[
    ("frame", &[]),
    ("words", &[]),
    ("plan", &["frame", "words"]),
    ("picture", &["frame", "words", "plan", "photo"]),
    ("photo", &["frame", "words", "plan"]),
    ("read", &["frame", "words", "plan", "photo"]),
    ("judge", &["frame", "words", "plan", "picture", "photo", "read"]),
    ("report", &["frame", "words", "plan", "picture", "photo", "read", "judge"]),
    ("display", &["frame", "words", "plan", "picture", "photo", "read", "judge"]),
    ("print", &["frame", "words", "plan", "picture", "photo", "read", "judge", "display"]),
    // whoever makes the truth shares nothing with whoever reads it
    ("rehearse", &["frame", "words", "plan", "picture", "photo", "judge"]),
    ("check", &["frame", "words", "plan", "picture", "photo", "read", "judge", "report", "display", "print"]),
    (
        "gallery",
        &[
            "frame", "words", "plan", "picture", "photo", "read", "judge", "report", "display", "print",
            "check",
        ],
    ),
    ("serve", ALL),
    ("cli", ALL),
];

const ALL: &[&str] = &[
    "frame", "words", "plan", "picture", "photo", "read", "judge", "report", "display", "print", "rehearse",
    "check", "gallery", "serve", "cli",
];

/// Each dependency, under the name that the code uses, with the modules that may use it; none means any.
const HOMES: &[(&str, &[&str])] = &[
    ("ab_glyph", &["display"]),
    ("axum", &["serve"]),
    ("base64", &["report"]),
    ("clap", &["cli"]),
    ("comemo", &["print"]),
    ("exif", &["photo"]),
    ("flate2", &["serve"]),
    ("fluent_bundle", &["words"]),
    ("fluent_syntax", &["words"]),
    ("gif", &["display"]),
    ("http_body_util", &["serve"]),
    ("heifer", &["photo"]),
    ("maud", &["report", "serve"]),
    ("moxcms", &["photo"]),
    ("hyper", &["serve"]),
    ("hyper_util", &["serve"]),
    ("if_addrs", &["serve"]),
    ("image", &[]),
    ("imageproc", &["display", "picture"]),
    ("indicatif", &["cli"]),
    ("jiff", &["cli"]),
    ("jpeg_encoder", &["display"]),
    ("nalgebra", &["display", "frame", "picture", "read"]),
    ("palette", &["picture"]),
    ("qrcode", &["plan"]),
    ("rand", &["plan", "rehearse", "serve", "cli"]),
    ("rand_chacha", &["plan", "rehearse"]),
    (
        "rayon",
        &[
            "plan", "picture", "photo", "read", "display", "print", "rehearse", "check", "gallery", "serve",
            "cli",
        ],
    ),
    ("resvg", &["picture"]),
    ("rqrr", &["plan"]),
    ("serde", &[]),
    ("serde_json", &[]),
    ("strsim", &["words"]),
    ("subtle", &["serve"]),
    ("tempfile", &["plan"]),
    ("terminal_size", &["cli"]),
    ("thiserror", &[]),
    ("tokio", &["serve", "cli"]),
    ("tokio_stream", &["serve"]),
    ("toml_edit", &["plan"]),
    ("tower", &["serve"]),
    ("typst", &["print"]),
    ("typst_layout", &["print"]),
    ("typst_pdf", &["print"]),
    ("typst_render", &["print"]),
    ("unic_langid", &["words"]),
    ("zune_jpeg", &["photo"]),
];

/// Crates whose name in the code is another than in `Cargo.toml`.
const OTHER_NAMES: &[(&str, &str)] = &[("kamadak-exif", "exif")];

/// The library's modules that a file of module `path` uses, with the line where it does.
fn internal(source: &Text) -> Vec<(usize, String)> {
    let here = module_path(&source.path);
    let absolute = |parts: &[String]| -> Option<Vec<String>> {
        let mut at = here.clone();
        let mut rest = parts;
        match rest.first()?.as_str() {
            "crate" => at.clear(),
            "self" => {}
            "super" => {
                while rest.first().is_some_and(|part| part == "super") {
                    // the module of unit tests is one more below its file; taking it for the file only shortens the way
                    at.pop();
                    rest = &rest[1..];
                }
                at.extend(rest.iter().cloned());
                return Some(at);
            }
            _ => return None,
        }
        at.extend(rest[1..].iter().cloned());
        Some(at)
    };
    let known = |module: &String| MAY_IMPORT.iter().any(|(name, _)| name == module);
    paths(&source.text)
        .iter()
        .filter_map(|path| Some((path.line, absolute(&path.parts)?.first()?.clone())))
        .filter(|(_, module)| known(module))
        .collect()
}

/// `src/plan/code/mod.rs` is `plan, code`; `src/plan/cell.rs` is `plan, cell`.
fn module_path(path: &str) -> Vec<String> {
    let inner = path.trim_start_matches("src/").trim_end_matches(".rs").trim_end_matches("/mod");
    inner.split('/').map(str::to_owned).collect()
}

/// The top module that a file belongs to; `None` for `lib.rs` and `main.rs`, which may see all.
pub fn home(path: &str) -> Option<String> {
    let first = module_path(path).first()?.clone();
    (!["lib", "main"].contains(&first.as_str())).then_some(first)
}

/// Imports against the stream.
fn against_the_stream(source: &Text) -> Vec<String> {
    let Some(home) = home(&source.path) else { return Vec::new() };
    let Some((_, allowed)) = MAY_IMPORT.iter().find(|(module, _)| *module == home) else {
        return vec![format!("{}: module {home} has no place in the order of imports", source.path)];
    };
    let strange = |module: &String| *module != home && !allowed.contains(&module.as_str());
    internal(source)
        .into_iter()
        .filter(|(_, module)| strange(module))
        .map(|(line, module)| format!("{}:{line}: {home} may not import {module}", source.path))
        .collect()
}

/// Dependencies used outside their home.
fn away_from_home(source: &Text) -> Vec<String> {
    let Some(home) = home(&source.path) else { return Vec::new() };
    paths(&source.text)
        .iter()
        .filter_map(|path| {
            let (name, homes) = HOMES.iter().find(|(name, _)| path.parts[0] == *name)?;
            let fits = homes.is_empty() || homes.contains(&home.as_str());
            (!fits).then(|| format!("{}:{}: {name} belongs to {}", source.path, path.line, homes.join(", ")))
        })
        .collect()
}

/// The dependencies of a `Cargo.toml`, under the names that the code uses.
fn dependencies(manifest: &str) -> BTreeSet<String> {
    let section = manifest.split("\n[dependencies]\n").nth(1).unwrap_or_default();
    let section = section.split("\n[").next().unwrap_or_default();
    section
        .lines()
        .filter_map(|line| Some(line.split_once('=')?.0.trim()))
        .map(|name| {
            OTHER_NAMES.iter().find(|(crate_name, _)| *crate_name == name).map_or(name, |(_, code)| code)
        })
        .map(|name| name.replace('-', "_"))
        .collect()
}

/// Dependencies without a home, homes without a dependency, dependencies that nobody uses.
fn homeless(manifest: &str, sources: &[Text]) -> Vec<String> {
    let dependencies = dependencies(manifest);
    let homes: BTreeSet<String> = HOMES.iter().map(|(name, _)| (*name).to_owned()).collect();
    let mut used: BTreeMap<String, usize> = BTreeMap::new();
    for source in sources {
        for path in paths(&source.text) {
            *used.entry(path.parts[0].clone()).or_default() += 1;
        }
    }
    let mut complaints: Vec<String> =
        dependencies.difference(&homes).map(|name| format!("{name} has no home: give it one here")).collect();
    complaints.extend(
        homes.difference(&dependencies).map(|name| format!("{name} has a home, but is no dependency")),
    );
    let idle = dependencies.iter().filter(|name| !used.contains_key(*name));
    complaints.extend(idle.map(|name| format!("{name} is a dependency that nobody uses")));
    complaints
}

#[test]
fn imports_run_one_way() {
    none(&sources().iter().flat_map(against_the_stream).collect::<Vec<_>>());
}

#[test]
fn dependencies_stay_at_home() {
    none(&sources().iter().flat_map(away_from_home).collect::<Vec<_>>());
}

#[test]
fn every_dependency_has_a_home_and_is_used() {
    none(&homeless(&file("Cargo.toml"), &sources()));
}

/// The forward model of made photos is its own: not even the maps between frames are shared.
#[test]
fn made_photos_share_no_mathematics_with_reading() {
    none(&sources().iter().flat_map(shared_mathematics).collect::<Vec<_>>());
}

fn shared_mathematics(source: &Text) -> Vec<String> {
    if home(&source.path).is_none_or(|home| home != "rehearse") {
        return Vec::new();
    }
    let maps = |parts: &[String]| parts.starts_with(&["crate".into(), "frame".into(), "Map".into()]);
    let written = paths(&source.text);
    let shared = written.iter().filter(|path| maps(&path.parts));
    shared.map(|path| format!("{}:{}: rehearse has maps of its own", source.path, path.line)).collect()
}

fn source(path: &str, text: &str) -> Text {
    Text { path: path.to_owned(), text: text.to_owned() }
}

#[test]
fn an_import_against_the_stream_is_seen() {
    let bad = |path, text| assert_eq!(against_the_stream(&source(path, text)).len(), 1, "{path}: {text}");
    bad("src/plan/cell.rs", "use crate::read::Sight;");
    bad("src/plan/cell.rs", "use super::super::judge::State;");
    bad("src/plan/mod.rs", "use super::judge::State;");
    bad("src/judge/mod.rs", "fn f() { crate::report::json() }");
    bad("src/report/html.rs", "use crate::{frame::Point, display::marked};");
    bad("src/rehearse/wall/hang.rs", "use crate::read::lens::Lens;");
    bad("src/read/reader.rs", "use crate::picture::Picture;");
    bad("src/novel/mod.rs", "");
    let good = |path, text| none(&against_the_stream(&source(path, text)));
    good("src/read/reader.rs", "use crate::photo::Photo; use super::lens::Lens; // crate::cli");
    good("src/cli/check.rs", "use crate::{judge::{self, fixes}, report::html};");
    good("src/lib.rs", "pub use crate::cli::run;");
}

#[test]
fn a_dependency_away_from_home_is_seen() {
    assert_eq!(away_from_home(&source("src/read/reader.rs", "use qrcode::bits::Bits;")).len(), 1);
    assert_eq!(away_from_home(&source("src/judge/mod.rs", "let m: nalgebra::Matrix3<f64>;")).len(), 1);
    none(&away_from_home(&source("src/plan/code/encode.rs", "use qrcode::bits::Bits; use image::Rgb;")));
}

#[test]
fn a_dependency_without_a_home_or_a_use_is_seen() {
    let manifest = "[package]\nname = \"x\"\n\n[dependencies]\nclap = \"4\"\nnew-thing = { version = \"1\" }\n\n[lints]\na = 1\n";
    assert_eq!(dependencies(manifest).into_iter().collect::<Vec<_>>(), ["clap", "new_thing"]);
    let complaints = homeless(manifest, &[source("src/cli/mod.rs", "use clap::Parser;")]);
    assert!(complaints.contains(&"new_thing has no home: give it one here".to_owned()));
    assert!(complaints.contains(&"new_thing is a dependency that nobody uses".to_owned()));
    assert!(complaints.contains(&"rqrr has a home, but is no dependency".to_owned()));
    assert!(!complaints.iter().any(|complaint| complaint.starts_with("clap")));
}

#[test]
fn a_shared_map_is_seen() {
    assert_eq!(
        shared_mathematics(&source("src/rehearse/camera.rs", "use crate::frame::{Map, Point};")).len(),
        1
    );
    none(&shared_mathematics(&source("src/display/marked.rs", "use crate::frame::Map;")));
}
