//! An event's files as somebody may send them who means no good: one sentence each, no panic, no run without end.

use std::path::{Path, PathBuf};

use crate::common::everysquare;
use everysquare::cli::sample;

/// A small event, printed.
fn event(place: &Path) -> PathBuf {
    let picture = place.join("balloons.png");
    std::fs::write(&picture, sample::PICTURE_PNG).unwrap();
    let folder = place.join("evening");
    let (at, picture) = (folder.to_str().unwrap(), picture.to_str().unwrap());
    let new =
        everysquare(&["new", at, "--picture", picture, "--columns", "3", "--rows", "2", "--tag", "K7M"]);
    assert_eq!(new.0, 0, "{}", new.2);
    let print = everysquare(&["print", at]);
    assert_eq!(print.0, 0, "{}", print.2);
    folder
}

/// Puts `text` into a file of the event, runs `words`, and sees that it is refused in one line that names the file.
fn refused(folder: &Path, name: &str, text: &[u8], words: &[&str]) {
    let path = folder.join(name);
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    let before = std::fs::read(&path).ok();
    std::fs::write(&path, text).unwrap();
    let shown: String = String::from_utf8_lossy(text).chars().take(60).collect();
    let (code, _, said) = everysquare(words);
    let file = name.rsplit('/').next().unwrap();
    let named = said.contains(file)
        || (file == "manifest.json" && ["manifest", "kit"].iter().any(|word| said.contains(word)));
    assert_eq!(code, 2, "{name} with {shown}: {said}");
    assert!(said.trim_end().lines().count() == 1 && named, "{name} with {shown}: {said}");
    assert!(
        !said.contains("[error") && !said.chars().any(|c| c.is_control() && c != '\n'),
        "{shown}: {said:?}"
    );
    assert!(said.len() < 600, "{name} with {shown}: {} bytes", said.len());
    match before {
        Some(before) => std::fs::write(&path, before).unwrap(),
        None => std::fs::remove_file(&path).unwrap(),
    }
}

#[test]
fn hostile_event_files_are_refused() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let good = std::fs::read_to_string(folder.join("event.toml")).unwrap();
    let deep =
        |open: &str, close: &str| format!("{good}\nx = {}{}\n", open.repeat(50_000), close.repeat(50_000));
    let long = "a".repeat(100_000);
    let texts = [
        deep("[", "]"),
        deep("[", ""),
        deep("{a=", "}"),
        format!("{good}\n[{}]\n", "a.".repeat(50_000) + "a"),
        format!("{good}\n{long} = 1\n"),
        format!("{good}\n\"\\u001b[31mred\" = 1\n"),
        good.replace("columns = 3", "columns = 9223372036854775807"),
        good.replace("columns = 3", "columns = -3"),
        good.replace("columns = 3", "columns = 3e300"),
        good.replace("columns = 3", &format!("columns = {}", "9".repeat(50_000))),
        good.replace("tag = \"K7M\"", "tag = \"K7M\\u0000\""),
        good.replace("tag = \"K7M\"", &format!("tag = \"{long}\"")),
        good.replace("picture.png", "../../../../etc/hostname"),
        good.replace("columns = 3", "columns = 3\ncolumns = 3"),
        "\u{feff}\u{feff}".to_owned(),
        "=".to_owned(),
        "name = \"\u{202e}\"".to_owned(),
    ];
    for text in texts {
        refused(&folder, "event.toml", text.as_bytes(), &["print", folder.to_str().unwrap()]);
    }
    refused(&folder, "event.toml", b"name = \"\xff\xfe\"", &["print", folder.to_str().unwrap()]);
    refused(&folder, "event.toml", &vec![b'#'; 2 << 20], &["print", folder.to_str().unwrap()]);
}

#[test]
fn hostile_manifests_are_refused() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let good = std::fs::read_to_string(folder.join("print/manifest.json")).unwrap();
    let module = good.lines().find(|line| line.contains("\"module_mm\"")).unwrap();
    let texts = [
        "[".repeat(200_000),
        "{\"format\":1,\"event\":".repeat(50_000),
        format!("{{\"format\":1,\"x\":{}", "[".repeat(200_000)),
        good.replacen("\"format\": 1", "\"format\": 18446744073709551616", 1),
        good.replacen("\"format\": 1", "\"format\": 1, \"format\": 2", 1),
        good.replacen("\"columns\": 3", "\"columns\": 1e400", 1),
        good.replacen("\"columns\": 3", "\"columns\": 18446744073709551615", 1),
        good.replacen(module, "    \"module_mm\": 1e-300,", 1),
        good.replacen(module, "    \"module_mm\": 0.001,", 1),
        good.replacen("\"square_mm\": ", "\"square_mm\": 1e308, \"squar\": ", 1),
        good.replacen("\"label\": \"A2\"", &format!("\"label\": \"{}\"", "A".repeat(100_000)), 1),
        good.replacen("\"label\": \"A2\"", "\"label\": \"\\u001b[2J\"", 1),
        good.replacen("\"kind\": \"column\"", "\"kind\": \"\\u0007\"", 1),
        good.replacen("\"modules\": \"", "\"modules\": \"\u{1f388}", 1),
        good.replacen("\"modules\": \"", &format!("\"modules\": \"{}", "f".repeat(100_000)), 1),
        "\u{feff}{}".to_owned(),
        "null".to_owned(),
    ];
    for text in texts {
        assert_ne!(text, good, "each changes something");
        refused(
            &folder,
            "print/manifest.json",
            text.as_bytes(),
            &["check", folder.to_str().unwrap(), "x.jpg"],
        );
    }
    refused(&folder, "print/manifest.json", b"\xff\xfe{}", &["check", folder.to_str().unwrap(), "x.jpg"]);
}

#[test]
fn hostile_words_and_templates_are_refused() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let print = ["print", folder.to_str().unwrap()];
    for text in [
        "print-squares = { print-squares }\n".to_owned(),
        "print-squares = { print-pieces }\nprint-pieces = { print-squares }\n".to_owned(),
        format!("print-squares = {}", "{ \"".repeat(5_000)),
        format!("print-squares = {{ $x }}{}", "a".repeat(100_000)),
        format!("{} = x\n", "a".repeat(100_000)),
        "print-squares = \u{1b}[31mred\n".to_owned(),
        "print-squares = { NUMBER($count, minimumFractionDigits: 2000000000) }\n".to_owned(),
        "-term = x\n".to_owned(),
    ] {
        refused(&folder, "templates/words.ftl", text.as_bytes(), &print);
    }
    for text in [
        "#while true {}".to_owned(),
        "#let f(x) = f(x)\n#f(1)".to_owned(),
        "#let f(x) = [#x #f(x)]\n#f([a])".to_owned(),
        "#read(\"/etc/hostname\")".to_owned(),
        "#read(\"../event.toml\")".to_owned(),
        "#import \"@preview/example:0.1.0\": *".to_owned(),
        "#include \"cards.txt\"".to_owned(),
        "#image(\"picture.png\")".to_owned(),
        "#plugin(\"x.wasm\")".to_owned(),
        "#panic(\"\\u{1b}[31m\")".to_owned(),
        format!("#{}1", "(".repeat(20_000)),
        format!("{}x", "#[".repeat(20_000)),
        format!("${}$", "(".repeat(20_000)),
    ] {
        refused(&folder, "templates/cards.typ", text.as_bytes(), &print);
    }
}
