//! `everysquare check` and `everysquare tour`: right answers, and one clear sentence for whatever cannot be read.

use std::path::{Path, PathBuf};

use crate::common::evening::{event, photo};
use crate::common::everysquare;
use everysquare::cli::sample;
use everysquare::plan::{Folder, Settings};
use everysquare::rehearse::{Hanging, Options, Truth, make};
use everysquare::report::Report;
use everysquare::report::json::ReportBorder;
use image::{ExtendedColorType, ImageEncoder, RgbImage};

fn check(folder: &Path, photos: &[&str]) -> (u8, String, String) {
    everysquare(&[&["check", folder.to_str().unwrap()], photos].concat())
}

/// The files of the only check.
fn checked(folder: &Path) -> (Vec<String>, PathBuf) {
    let checks: Vec<PathBuf> =
        std::fs::read_dir(folder.join("checks")).unwrap().map(|entry| entry.unwrap().path()).collect();
    assert_eq!(checks.len(), 1, "{checks:?}");
    let mut names: Vec<String> = std::fs::read_dir(&checks[0])
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    (names, checks[0].clone())
}

#[test]
fn a_wall_with_faults_is_told_drawn_and_written() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "3", &["--swaps", "1", "--turns", "1", "--missing", "1"]);
    let (code, out, err) = check(&folder, &[&photo]);
    assert_eq!((code, err.as_str()), (1, ""), "{out}");
    for said in ["Swap ", "Turn ", "practice picture"] {
        assert!(out.contains(said), "{said} in {out}");
    }
    assert!(!out.contains("[check") && !out.contains('\u{1b}'), "words for all, no colours in a file: {out}");
    let (names, at) = checked(&folder);
    assert_eq!(names, ["marked.jpg", "report.html", "report.json", "wall.jpg"]);
    let report = Report::from_json(&std::fs::read_to_string(at.join("report.json")).unwrap()).unwrap();
    assert!(report.made);
    assert_eq!((report.summary.wrong, report.summary.turned, report.summary.empty), (2, 1, 1));
    for picture in ["marked.jpg", "wall.jpg"] {
        let bytes = std::fs::read(at.join(picture)).unwrap();
        assert!(!bytes.windows(4).any(|four| four == b"Exif"), "{picture} has metadata");
    }
}

#[test]
fn a_border_in_reserve_may_hang_or_not() {
    let place = tempfile::tempdir().unwrap();
    let picture = place.path().join("balloons.png");
    std::fs::write(&picture, sample::PICTURE_PNG).unwrap();
    let folder = place.path().join("evening");
    let (at, picture) = (folder.to_str().unwrap(), picture.to_str().unwrap());
    let named = ["--columns", "5", "--rows", "4", "--border", "--tag", "K7M", "--visitors", "20-60"];
    let (code, out, err) = everysquare(&[&["new", at, "--picture", picture], named.as_slice()].concat());
    assert_eq!(code, 0, "{err}");
    for said in
        ["20 squares, as you asked", "With the 22 pieces of the border", "The whole wall is then 7 × 6"]
    {
        assert!(out.contains(said), "{said} in {out}");
    }
    assert_eq!(everysquare(&["print", at]).0, 0);
    let settings = Folder::at(&folder).settings().unwrap();
    assert_eq!((settings.grid.count(), settings.grid.border_count()), (42, 22));
    let told = |seed: &str, more: &[&str]| {
        let photo = photo(&folder, seed, &[more, &["--min-px-per-module", "1.6"]].concat());
        let (_, out, err) = check(&folder, &[&photo]);
        assert_eq!(err, "", "{out}");
        let (_, at) = checked(&folder);
        let report = Report::from_json(&std::fs::read_to_string(at.join("report.json")).unwrap()).unwrap();
        std::fs::remove_dir_all(folder.join("checks")).unwrap();
        let key = std::fs::read_to_string(folder.join(format!("rehearsals/{seed}.answers.json"))).unwrap();
        let key: Truth = serde_json::from_str(&key).unwrap();
        for (cell, truth) in report.cells.iter().zip(&key.cells) {
            assert!(
                cell.state == truth.state || truth.accept.contains(&cell.state),
                "{} in {out}",
                cell.label
            );
        }
        (report, out)
    };
    let (away, out) = told("11", &["--swaps", "1", "--missing", "1"]);
    assert_eq!((away.summary.cells, away.border), (20, Some(ReportBorder { up: 0, squares: 22 })), "{out}");
    assert_eq!((away.summary.empty, away.missing.len()), (1, 1), "{out}");
    assert!(out.contains("Border in reserve: 0 of 22 squares are up"), "{out}");
    let (hangs, out) = told("12", &["--border", "--missing", "6"]);
    // six of the 42 are away: those of the picture leave empty spots, those of the border nothing that counts
    let (border, all) = (hangs.border.unwrap(), hangs.summary);
    assert!(border.up > 0 && border.up < 22 && all.empty < 6, "{out}");
    assert_eq!(all.cells, 36 + all.empty, "{out}");
}

#[test]
fn a_spot_that_is_kept_free_asks_for_nothing() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let (at, file) = (folder.to_str().unwrap(), folder.join("event.toml"));
    let toml = std::fs::read_to_string(&file).unwrap();
    let keep = |list: &str| {
        let free = toml.replace("# keep_free = [\"A1\"]", &format!("keep_free = {list}"));
        std::fs::write(&file, free).unwrap();
    };
    keep("[\"B2\", \"A3\"]");
    let (code, plan, _) = everysquare(&["plan", at]);
    assert!(code == 0 && plan.contains("/ stays free: A3, B2."), "{plan}");
    assert_eq!(everysquare(&["print", at]).0, 0);
    let grid = Folder::at(&folder).settings().unwrap().grid;
    let manifest = Folder::at(&folder).manifest().unwrap();
    let is_printed = |label: &str| manifest.squares.iter().any(|square| square.label == label);
    assert_eq!((manifest.squares.len(), manifest.pieces.len()), (grid.count() - 2, grid.count() - 2));
    assert!(is_printed("A1") && !is_printed("B2") && !is_printed("A3"));
    let photo = photo(&folder, "3", &["--swaps", "1", "--min-px-per-module", "1.6"]);
    let (code, out, err) = check(&folder, &[&photo]);
    assert_eq!(code, 1, "{err}");
    let (_, checked) = checked(&folder);
    let report = Report::from_json(&std::fs::read_to_string(checked.join("report.json")).unwrap()).unwrap();
    let state = |label: &str| report.cells.iter().find(|cell| cell.label == label).unwrap().state.name();
    assert_eq!((state("B2"), state("A3"), report.summary.cells), ("free", "free", grid.count() - 2), "{out}");
    assert!(report.missing.is_empty() && report.fixes.len() == 1, "{out}");
    assert!(out.contains("/      stays free: nothing goes here"), "{out}");
    // a square of a spot that is free no longer was never printed
    keep("[\"B2\"]");
    let (code, _, err) = check(&folder, &[&photo]);
    assert_eq!(code, 2);
    assert!(err.contains("event.toml asks for A3, but that wasn’t printed"), "{err}");
    for wrong in ["[\"B2\", \"Z9\"]", "\"B2\"", "[2]"] {
        keep(wrong);
        let (code, _, err) = everysquare(&["plan", at]);
        assert!(code == 2 && err.contains("use a list of up to"), "{err}");
    }
    // one that is to stay free after all is no fault where it hangs no longer
    keep("[\"B2\", \"A3\", \"C1\"]");
    let (_, out, err) = check(&folder, &[&photo]);
    assert!(out.contains("Take down C1") && out.contains("Its spot on the wall stays free"), "{out}{err}");
}

#[test]
fn a_wall_without_faults_is_all_right() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let settings = Settings::from_toml(&std::fs::read_to_string(folder.join("event.toml")).unwrap()).unwrap();
    let picture = everysquare::picture::Picture::open(sample::PICTURE_PNG).unwrap();
    // hung with care, so that no neighbour and no tape lies over a code
    let hanging = Hanging { misplacement_mm: 1.0, askew_degrees: 0.5, tape: false, ..Hanging::default() };
    let options = Options { width: 2400, height: 1800, hanging, ..Options::default() };
    let made = make(&settings.printed().unwrap(), &picture, &options).unwrap();
    let photo = place.path().join("right.jpg");
    std::fs::write(&photo, made.jpeg).unwrap();
    let (code, out, err) = check(&folder, &[photo.to_str().unwrap()]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
}

#[test]
fn photos_of_parts_make_one_report_and_a_bad_one_is_told() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let whole = photo(&folder, "4", &["--swaps", "1"]);
    let picture = image::open(&whole).unwrap().to_rgb8();
    let (width, height) = picture.dimensions();
    let part = |name: &str, x: u32, wide: u32| {
        let path = place.path().join(name);
        image::imageops::crop_imm(&picture, x, 0, wide, height).to_image().save(&path).unwrap();
        path.to_str().unwrap().to_owned()
    };
    let bad = place.path().join("bad.jpg");
    std::fs::write(&bad, b"no picture").unwrap();
    // the crop drops the orientation tag too: each part lies as the file had it
    let (one, two) = (part("one.png", 0, width * 6 / 10), part("two.png", width * 4 / 10, width * 6 / 10));
    let (code, out, err) = check(&folder, &[&one, bad.to_str().unwrap(), &two]);
    assert_eq!(code, 1, "{out}{err}");
    assert!(out.contains("Swap ") && err.contains("bad.jpg: this is not a photo"), "{out}{err}");
    let (names, at) = checked(&folder);
    assert_eq!(names, ["marked-1.jpg", "marked-2.jpg", "report.html", "report.json", "wall.jpg"]);
    let report = Report::from_json(&std::fs::read_to_string(at.join("report.json")).unwrap()).unwrap();
    assert_eq!((report.photos.len(), report.summary.unseen), (2, 0));
}

/// A PNG that says it has 30000 × 30000 pixels, in a few bytes.
fn bomb() -> Vec<u8> {
    let mut bytes = Vec::new();
    let small = RgbImage::new(1, 1);
    image::codecs::png::PngEncoder::new(&mut bytes)
        .write_image(small.as_raw(), 1, 1, ExtendedColorType::Rgb8)
        .unwrap();
    let side = 30_000_u32.to_be_bytes();
    bytes[16..20].copy_from_slice(&side);
    bytes[20..24].copy_from_slice(&side);
    let sum = crc32(&bytes[12..29]);
    bytes[29..33].copy_from_slice(&sum.to_be_bytes());
    bytes
}

/// The check sum of a PNG chunk (ISO 3309, as in the PNG specification's annex).
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0_u32, |sum, byte| {
        (0..8).fold(sum ^ u32::from(*byte), |sum, _| (sum >> 1) ^ if sum & 1 == 1 { 0xedb8_8320 } else { 0 })
    })
}

fn png(picture: &RgbImage) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    picture.write_to(&mut bytes, image::ImageFormat::Png).unwrap();
    bytes.into_inner()
}

#[test]
fn whatever_is_no_photo_of_this_wall_gets_one_sentence_and_leaves_nothing() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let other = event(place.path(), "H4X");
    let good = std::fs::read(photo(&folder, "5", &[])).unwrap();
    let mut heic = b"\0\0\0\x18ftypheic".to_vec();
    heic.extend([0; 64]);
    let noise = RgbImage::from_fn(800, 600, |x, y| image::Rgb([((x * 37) ^ (y * 91)).to_le_bytes()[0]; 3]));
    let cases: [(&str, Vec<u8>, &str); 12] = [
        ("empty", Vec::new(), "the file is empty"),
        ("text", b"Dear helper".to_vec(), "not a photo"),
        ("cut", good[..good.len() / 3].to_vec(), "the end of this photo is missing"),
        ("head", good[..40].to_vec(), "the end of this photo is missing"),
        ("tiny", png(&RgbImage::new(1, 1)), "only 1 × 1 pixels"),
        (
            "blank",
            png(&RgbImage::from_pixel(900, 700, image::Rgb([200; 3]))),
            "couldn’t find any of this event’s codes",
        ),
        ("dark", png(&RgbImage::from_pixel(900, 700, image::Rgb([6, 5, 7]))), "too dark"),
        ("noise", png(&noise), "couldn’t find any of this event’s codes"),
        ("bomb", bomb(), "30000 × 30000"),
        ("heic", heic, "damaged"),
        ("film", b"\0\0\0\x10ftypqt  \0\0\0\0".to_vec(), "this is a video"),
        ("foreign", std::fs::read(photo(&other, "6", &[])).unwrap(), "another event (tag H4X)"),
    ];
    for (name, bytes, said) in cases {
        let path = place.path().join(format!("{name}.jpg"));
        std::fs::write(&path, bytes).unwrap();
        let (code, out, err) = check(&folder, &[path.to_str().unwrap()]);
        assert_eq!((code, out.as_str()), (2, ""), "{name}: {err}");
        assert!(err.contains(said) && err.lines().count() == 1, "{name}: {err}");
        assert!(!folder.join("checks").exists(), "{name} left something");
    }
    let (code, _, err) = check(&folder, &[place.path().join("missing.jpg").to_str().unwrap()]);
    assert!(code == 2 && err.contains("no such file"), "{err}");
    let (code, _, err) = check(&folder, &[place.path().to_str().unwrap()]);
    assert!(code == 2 && err.contains("this is a folder"), "{err}");
}

#[test]
fn a_folder_that_cannot_be_used_gets_one_sentence() {
    let place = tempfile::tempdir().unwrap();
    let empty = place.path().join("empty");
    std::fs::create_dir(&empty).unwrap();
    let (code, _, err) = check(&empty, &["x.jpg"]);
    assert!(code == 2 && err.contains("no event in") && err.lines().count() == 1, "{err}");

    let unprinted = place.path().join("unprinted");
    sample::write_to(&Folder::at(&unprinted)).unwrap();
    let (code, _, err) = check(&unprinted, &["x.jpg"]);
    assert!(code == 2 && err.contains("everysquare print"), "{err}");

    let folder = event(place.path(), "K7M");
    let manifest = folder.join("print/manifest.json");
    let text = std::fs::read_to_string(&manifest).unwrap();
    std::fs::write(&manifest, text.replacen("\"format\": 1", "\"format\": 2", 1)).unwrap();
    let (code, _, err) = check(&folder, &["x.jpg"]);
    assert!(code == 2 && err.contains("format 2"), "{err}");
    std::fs::write(&manifest, &text[..text.len() / 2]).unwrap();
    assert_eq!(check(&folder, &["x.jpg"]).0, 2);
}

#[test]
fn where_nothing_can_be_written_the_answer_is_told_all_the_same() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "7", &["--swaps", "1"]);
    // a file stands where the folder of checks should be: this holds for every user, a read-only folder not for root
    std::fs::write(folder.join("checks"), b"").unwrap();
    let (code, out, err) = check(&folder, &[&photo]);
    assert_eq!(code, 2, "{out}");
    assert!(out.contains("Swap ") && err.lines().count() == 1, "{out}{err}");
}

#[test]
fn the_tour_shows_a_whole_evening_twice_and_spares_other_events() {
    let place = tempfile::tempdir().unwrap();
    let at = place.path().join("tour");
    for _ in 0..2 {
        let (code, out, err) = everysquare(&["tour", at.to_str().unwrap()]);
        assert_eq!((code, err.as_str()), (0, ""), "{out}");
        assert!(out.contains("matches the answer key in 80 of 80 spots"), "{out}");
        assert!(!out.contains("[tour-") && !out.contains("[help"), "{out}");
    }
    let other = event(place.path(), "H4X");
    let (code, _, err) = everysquare(&["tour", other.to_str().unwrap()]);
    assert!(code == 2 && err.contains("event of its own"), "{err}");
}
