//! `everysquare rehearse`: what it writes, what it says, what it refuses.

use std::path::Path;

use crate::common::everysquare;
use everysquare::cli::sample;
use everysquare::plan::cards::all_cards;
use everysquare::plan::manifest::{
    FORMAT, Manifest, ManifestCard, ManifestCode, ManifestEvent, ManifestGrid, ManifestSquare,
};
use everysquare::plan::{Folder, Modules};
use everysquare::rehearse::Truth;

/// The sample event with a manifest, as if its kit were printed.
fn event(place: &Path) -> Folder {
    let folder = Folder::at(place);
    sample::write_to(&folder).unwrap();
    let settings = folder.settings().unwrap();
    let (grid, tag) = (settings.grid, settings.tag);
    let (x_mm, y_mm) = settings.code.top_left_mm(grid.square_mm);
    let square = |cell| {
        let label = grid.label(cell);
        let text = tag.square(&label);
        let modules = Modules::encode(&text).unwrap().to_hex();
        let (column, row) = (cell.column, cell.row);
        let side_mm = grid.square_mm;
        ManifestSquare { label, column, row, text, modules, page: 1, x_mm: 10.0, y_mm: 10.0, side_mm }
    };
    let manifest = Manifest {
        format: FORMAT,
        event: ManifestEvent { name: settings.name, tag: tag.to_string() },
        grid: ManifestGrid {
            columns: grid.columns,
            rows: grid.rows,
            square_mm: grid.square_mm,
            piece_mm: grid.piece_mm,
        },
        code: ManifestCode { module_mm: settings.code.module_mm, x_mm, y_mm },
        squares: grid.cells().map(square).collect(),
        pieces: Vec::new(),
        cards: all_cards(&grid, tag).unwrap().iter().map(ManifestCard::from).collect(),
        turned: false,
    };
    Folder::write_whole(&folder.manifest_json(), &manifest.to_json().unwrap()).unwrap();
    folder
}

#[test]
fn a_rehearsal_lies_in_the_folder_with_its_truth() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let path = place.path().to_str().unwrap();
    let typed = ["rehearse", path, "--seed", "42", "--swaps", "3", "--turns", "2", "--missing", "4"];
    let (code, out, err) = everysquare(&[&typed[..], &["--width", "640", "--height", "480"]].concat());
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    let photo = folder.rehearsals().join("42.jpg");
    let truth = std::fs::read(folder.rehearsals().join("42.answers.json")).unwrap();
    let truth: Truth = serde_json::from_slice(&truth).unwrap();
    assert_eq!(truth.cells.iter().filter(|cell| cell.hung.is_none()).count(), 4);
    assert_eq!(truth.cells.iter().filter(|cell| cell.hung_turn != 0).count(), 2);
    assert_eq!(image::open(&photo).unwrap().to_rgb8().len(), 640 * 480 * 3);
    for said in ["a practice photo", "with 80 spots", "4 empty", "42.answers.json", "everysquare check"] {
        assert!(out.contains(said), "{said} in {out}");
    }
    assert!(!out.contains("[rehearse-"), "every sentence has its words: {out}");
}

#[test]
fn without_a_wish_there_still_is_something_to_find() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let path = place.path().to_str().unwrap();
    let (code, ..) = everysquare(&["rehearse", path, "--width", "320", "--height", "240", "--seed", "7"]);
    assert_eq!(code, 0);
    let truth = std::fs::read(folder.rehearsals().join("7.answers.json")).unwrap();
    let truth: Truth = serde_json::from_slice(&truth).unwrap();
    assert!(truth.options.faults.swaps > 0 && truth.options.faults.missing > 0);
}

#[test]
fn what_cannot_be_made_writes_nothing() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let path = place.path().to_str().unwrap();
    for (typed, said) in [
        (["--missing", "81"], "the wall has 80. Ask for fewer"),
        (["--fill", "9"], "it must be 0.05 to 4"),
        (["--width", "9"], "it must be 64 to 8000 px"),
        (["--cards", "some"], "use all, corners or none"),
    ] {
        let (code, _, err) = everysquare(&[&["rehearse", path][..], &typed].concat());
        assert_eq!(code, 2);
        assert!(err.contains(said), "{said} in {err}");
        assert_eq!(err.lines().count(), 1, "{err}");
    }
    assert!(!folder.rehearsals().exists());
    std::fs::remove_file(folder.manifest_json()).unwrap();
    let (code, _, err) = everysquare(&["rehearse", path]);
    assert!(code == 2 && err.contains("print"), "{err}");
}

#[test]
fn a_wall_without_faults_can_be_wished_for_and_no_photo_is_replaced() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let path = place.path().to_str().unwrap();
    let typed = |more: &[&str]| {
        let words = ["rehearse", path, "--width", "320", "--height", "240", "--seed", "7"];
        assert_eq!(everysquare(&[&words[..], more].concat()).0, 0);
    };
    let key = |name: &str| {
        let text = std::fs::read(folder.rehearsals().join(name)).unwrap();
        serde_json::from_slice::<Truth>(&text).unwrap()
    };
    typed(&["--missing", "0"]);
    assert!(key("7.answers.json").cells.iter().all(|cell| cell.hung.is_some()));
    typed(&["--missing", "0"]);
    assert!(!folder.rehearsals().join("7-2.jpg").exists(), "the same photo is not kept twice");
    typed(&["--missing", "3"]);
    assert_eq!(key("7-2.answers.json").cells.iter().filter(|cell| cell.hung.is_none()).count(), 3);
    assert!(key("7.answers.json").cells.iter().all(|cell| cell.hung.is_some()), "the first one is as it was");
}
