//! `everysquare plan`: what it says and writes, what it keeps, what it refuses.

use std::path::{Path, PathBuf};

use crate::common::everysquare;
use everysquare::cli::sample;
use everysquare::plan::settings::{Visitors, WallPart};
use everysquare::plan::{Folder, Settings};

/// The sample's folder.
fn event(place: &Path) -> PathBuf {
    let folder = place.join("event");
    sample::write_to(&Folder::at(&folder)).unwrap();
    folder
}

fn read(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap()
}

#[test]
fn the_plan_is_said_in_80_columns_and_written_whole() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let before = read(&folder.join("event.toml"));
    let at = folder.to_str().unwrap();
    let typed = [
        ["plan", at, "--visitors", "80-120", "--start", "6:30 pm", "--end", "20:00"],
        ["--seats", "30", "--arrivals", "drifting", "--wall", "2.4x1.8m", "--each", "1"],
    ]
    .concat();
    let (code, out, err) = everysquare(&typed);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    assert!(!out.contains("[plan-"), "every sentence has its words: {out}");
    for line in out.lines().filter(|line| !line.contains(at)) {
        assert!(line.chars().count() <= 80, "{line}");
    }
    for said in [
        "80–120 visitors drift in and draw one piece each. 30 people can draw at once",
        "From 6:30 PM to 8:00 PM.",
        "Helpers",
        "handing out",
        "level",
        "pencils in all",
        "sheets of letter paper",
        "of tape",
        "fire",
    ] {
        assert!(out.contains(said), "{said} in {out}");
    }
    assert!(!out.contains("Assumed"), "{out}");
    assert_eq!(read(&folder.join("event.toml")), before, "only --save changes it");
    let plan: serde_json::Value = serde_json::from_str(&read(&folder.join("plan.json"))).unwrap();
    assert_eq!((plan["format"].as_u64(), plan["evening"]["seats"].as_u64()), (Some(2), Some(30)));
    let pieces = plan["pieces"].as_array().unwrap();
    assert_eq!((pieces.len(), plan["pencils"].as_array().unwrap().len()), (80, 6));
    // counts agree with the pieces that are listed
    for level in plan["levels"].as_array().unwrap() {
        let listed = pieces.iter().filter(|piece| piece["level"] == level["level"]).count() as u64;
        assert_eq!(level["pieces"].as_u64(), Some(listed), "{level}");
    }
    for (number, pencil) in plan["pencils"].as_array().unwrap().iter().enumerate() {
        let needs = |piece: &&serde_json::Value| {
            piece["pencils"].as_array().unwrap().iter().any(|own| *own == number)
        };
        assert_eq!(pencil["pieces"].as_u64(), Some(pieces.iter().filter(needs).count() as u64), "{pencil}");
    }
    let sheets = plan["supplies"]["sheets"].as_array().unwrap();
    let squares = sheets.iter().find(|sheet| sheet["document"] == "squares").unwrap();
    assert_eq!(squares["sheets"].as_u64(), Some(40), "two squares a sheet of letter paper");
    let again = read(&folder.join("plan.json"));
    assert_eq!(everysquare(&typed).0, 0);
    assert_eq!(read(&folder.join("plan.json")), again, "the same input gives the same bytes");
}

#[test]
fn what_is_saved_is_kept_with_all_comments() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let at = folder.to_str().unwrap();
    let file = folder.join("event.toml");
    std::fs::write(&file, format!("{}\n# ours: keep\n", read(&file))).unwrap();
    let before = read(&file);
    let saved =
        ["plan", at, "--visitors", "70-90", "--seats", "20", "--wall", "8x6ft", "--hang", "600", "--save"];
    let (code, out, err) = everysquare(&saved);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    let after = read(&file);
    let mut lines = after.lines();
    for line in before.lines() {
        assert!(lines.any(|own| own == line), "{line:?} is lost in {after}");
    }
    let evening = Settings::from_toml(&after).unwrap().evening;
    assert_eq!(
        (evening.visitors, evening.minutes, evening.seats, evening.hang_mm),
        (Visitors::new(70, 90), None, Some(20), Some(600.0))
    );
    assert_eq!(evening.wall.unwrap().width_mm, 2_438.4);
    assert!(after.contains("wall = \"8x6ft\"\n"), "in the unit that was typed: {after}");
    let (_, out, _) = everysquare(&["plan", at]);
    assert!(out.contains("70–90 visitors drift in") && out.contains("You didn’t give minutes, so"), "{out}");
}

#[test]
fn a_wall_is_cut_for_boards_and_the_parts_are_kept() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let at = folder.to_str().unwrap();
    let file = folder.join("event.toml");
    std::fs::write(&file, format!("{}\n# ours: keep\n", read(&file))).unwrap();
    let (code, out, err) = everysquare(&["plan", at, "--wall", "3x6ft, door, 4x6ft"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    assert!(out.contains("The wall hangs in 2 parts.") && out.contains("Add --save"), "{out}");
    assert!(Settings::from_toml(&read(&file)).unwrap().parts.is_empty());
    let (code, _, err) = everysquare(&["plan", at, "--wall", "3x6ft, door, 4x6ft", "--save"]);
    assert_eq!((code, err.as_str()), (0, ""));
    let after = read(&file);
    let settings = Settings::from_toml(&after).unwrap();
    assert!(after.contains("# ours: keep"), "{after}");
    let widths: Vec<usize> = settings.parts.iter().map(WallPart::columns).collect();
    assert_eq!((widths.len(), widths.iter().sum::<usize>()), (2, settings.grid.columns));
    assert!(widths.iter().all(|width| (3..=9).contains(width)), "{widths:?}");
    // what a rule against fire asks for is said of each board
    let line = out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(line.contains("% of the board for A1 to") && !line.contains("of the space you gave"), "{out}");
    let sizes: Vec<String> = settings.parts.iter().filter_map(|part| Some(part.board?.written())).collect();
    assert_eq!(sizes, ["3x6ft", "4x6ft"]);
    // and they count from then on
    let (_, out, _) = everysquare(&["plan", at]);
    assert!(out.contains("The wall hangs in 2 parts."), "{out}");
    assert_eq!(out.matches("age 5+").count(), 1, "parts that hang level have one table: {out}");
    // one of them half a meter higher: each has its own heights
    let higher = after.replacen("\n[[parts]]", "\n[[parts]]\nbottom_mm = 1400", 1);
    std::fs::write(&file, higher).unwrap();
    let (_, out, _) = everysquare(&["plan", at]);
    assert_eq!(out.matches("age 5+").count(), 2, "{out}");
    assert!(
        out.contains("Part 1:") && out.contains("Part 2:") && out.contains("(1.4 m) above the floor"),
        "{out}"
    );
}

#[test]
fn a_mistake_is_one_sentence_and_changes_nothing() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let at = folder.to_str().unwrap();
    let before = read(&folder.join("event.toml"));
    let refused: [(&[&str], &str); 26] = [
        (&["--seats", "0"], "must be a whole number from 1 to 500"),
        (&["--seats", "501"], "must be a whole number from 1 to 500"),
        (&["--seats", "many"], "must be a whole number from 1 to 500"),
        (&["--visitors", "0"], "use a whole number such as 80, or a range"),
        (&["--visitors", "99999999999999999999999"], "use a whole number such as 80, or a range"),
        (&["--visitors", "120-60"], "with the smaller number first"),
        (&["--arrivals", "sometimes"], "at-once, drifting or in-classes"),
        (&["--each", "0"], "must be a number from 0.1 to 5"),
        (&["--giving-out", "0"], "must be a whole number from 1 to 50"),
        (&["--hanging", "0"], "must be a whole number from 1 to 50"),
        (&["--start", "25:00"], "use a time such as"),
        (&["--end", "20:00"], "--end needs a start"),
        (&["--start", "20:00", "--end", "20:00"], "at least 5 minutes after the start"),
        (&["--start", "18:00", "--end", "20:00", "--minutes", "90"], "--end"),
        (&["--minutes", "0"], "must be a number from 5 to 1440"),
        (&["--minutes", "nan"], "must be a number from 5 to 1440"),
        (&["--minutes", "1e300"], "must be a number from 5 to 1440"),
        (&["--wall", "3"], "write the size as"),
        (&["--wall", "0x0m"], "write the size as"),
        (&["--wall", "1e9x2m"], "write the size as"),
        (&["--wall", "4x6ft, door, 5x"], "write the size as"),
        (&["--wall", "2x3ft, door, 2x3ft"], "boards take this many columns"),
        (&["--hang", "-5"], "must be a number from 0 to 3000"),
        (&["--hang", "inf"], "must be a number from 0 to 3000"),
        (&["--save"], "--save needs numbers to keep"),
        (&["--seats", "20", "--save", "extra"], "extra"),
    ];
    for (more, sentence) in refused {
        let words = [["plan", at].as_slice(), more].concat();
        let (code, out, err) = everysquare(&words);
        assert_eq!((code, out.as_str()), (2, ""), "{words:?}");
        assert!(err.starts_with("everysquare: ") && err.contains(sentence), "{words:?}: {err}");
        assert_eq!(err.lines().count(), 1, "one sentence: {err}");
        assert!(!folder.join("plan.json").exists(), "{words:?} leaves nothing behind");
    }
    assert_eq!(read(&folder.join("event.toml")), before);
    let (code, _, err) = everysquare(&["plan", place.path().join("none").to_str().unwrap()]);
    assert_eq!((code, err.lines().count()), (2, 1), "{err}");
}

#[test]
fn levels_are_named_decided_and_shown_as_event_toml_says() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let at = folder.to_str().unwrap();
    let file = folder.join("event.toml");
    // as many bounds as the sample has, but all below every score
    let text = read(&file);
    let text = text.split("[levels]").next().unwrap();
    let levels = "[levels]\nnames = [\"sky\", \"calm\", \"lively\", \"wild\"]\nbounds = [0.1, 0.2, 0.3]\n[[pieces]]\nlabel = \"A6\"\nlevel = \"wild\"\n";
    std::fs::write(&file, format!("{text}\n{levels}")).unwrap();
    let (code, out, err) = everysquare(&["plan", at]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    let spaced = out.split_whitespace().collect::<Vec<_>>().join(" ");
    for said in ["sky . 2 ", "wild # 78 ", "1 piece has the level that event.toml gives it"] {
        assert!(spaced.contains(said), "{said} in {out}");
    }
}

#[test]
fn names_are_taken_as_files_are_called_and_an_event_beside_is_proposed() {
    let place = tempfile::tempdir().unwrap();
    let folder = place.path().join("library-night");
    sample::write_to(&Folder::at(&folder)).unwrap();
    let at = folder.to_str().unwrap();
    assert_eq!(everysquare(&["print", at, "wall-map.pdf"]).0, 0);
    let wrong = place.path().join("library-nite");
    for (typed, meant) in [(wrong, "library-night"), (folder.join("print"), "library-night")] {
        let (code, _, err) = everysquare(&["plan", typed.to_str().unwrap()]);
        assert!(code == 2 && err.contains("Do you mean") && err.contains(meant), "{err}");
    }
    let (_, _, err) = everysquare(&["plan", place.path().join("summer-fair").to_str().unwrap()]);
    assert!(err.contains("Create one with"), "{err}");
    let (code, _, err) = everysquare(&["plan", at, "--start", "8pm", "--end", "6:30pm"]);
    assert!(code == 2 && err.contains("swapped"), "{err}");
}
