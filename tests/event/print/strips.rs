//! A piece and its square in one strip: where they lie, and what that takes.

use everysquare::plan::manifest::{ManifestPiece, ManifestSquare};
use everysquare::plan::settings::{CodeSettings, Corner, Flip, Join};
use everysquare::print::layout::Area;
use everysquare::print::{PrintError, effort, names_of};

use super::{FLIPS, PAPERS, document, holds, page, print, settings};

/// Strips on every paper, of squares from 80 mm to 10 inches, with the code in any corner.
#[test]
fn strips_lie_apart_on_their_pages_and_keep_piece_and_square_level() {
    for (paper, side) in
        PAPERS.into_iter().flat_map(|paper| [80.0, 101.6, 127.0, 180.0, 254.0].map(|side| (paper, side)))
    {
        for corner in [Corner::BottomRight, Corner::TopLeft] {
            let mut settings = settings(5, 4, side, paper, Flip::None);
            settings.print.join = Join::Beside;
            settings.code.corner = corner;
            let kit = match print(&settings) {
                Ok(kit) => kit,
                Err(PrintError::TooLarge { largest_mm, .. }) => {
                    assert!(largest_mm < side, "{paper:?} {side} {largest_mm}");
                    settings.grid.square_mm = largest_mm;
                    settings.code = CodeSettings { corner, ..CodeSettings::usual(&settings.grid) };
                    print(&settings).unwrap()
                }
                Err(other) => panic!("{other:?}"),
            };
            let names: Vec<&str> = kit.documents.iter().map(|d| d.name.trim_end_matches(".pdf")).collect();
            assert_eq!(names, names_of(Join::Beside).collect::<Vec<_>>());
            let manifest = &kit.manifest;
            let page = page(paper).inside(6.0);
            let square =
                |own: &ManifestSquare| (own.page, Area::new(own.x_mm, own.y_mm, own.side_mm, own.side_mm));
            let piece =
                |own: &ManifestPiece| (own.page, Area::new(own.x_mm, own.y_mm, own.side_mm, own.side_mm));
            let squares = manifest.squares.iter().map(square);
            for (own, (number, area)) in squares.clone().zip(manifest.pieces.iter().map(piece)) {
                assert_eq!(own.0, number);
                assert!(holds(&page, &own.1) && holds(&page, &area), "{paper:?} {side}");
                let off = own.1.centre() - area.centre();
                let off = if manifest.turned { off.x } else { off.y };
                assert!(off.abs() < 1e-3, "{paper:?} {side}: {off}");
            }
            let all: Vec<(usize, Area)> = squares.chain(manifest.pieces.iter().map(piece)).collect();
            for (at, (number, one)) in all.iter().enumerate() {
                let others = all[at + 1..].iter().filter(|(other, _)| other == number);
                assert!(others.into_iter().all(|(_, other)| !one.overlaps(other)), "{paper:?} {side}");
            }
        }
    }
}

#[test]
fn what_it_takes_is_what_is_printed() {
    for (paper, flip) in PAPERS.into_iter().flat_map(|paper| FLIPS.map(|flip| (paper, flip))) {
        let mut settings = settings(7, 5, 127.0, paper, flip);
        for join in [Join::Apart, Join::Beside] {
            settings.print.join = join;
            let kit = print(&settings).unwrap();
            let own = effort(&settings, &settings.printed().unwrap(), join).unwrap();
            let sheets = |names: &[&str]| names.iter().map(|name| document(&kit, name).sheets).sum::<usize>();
            let (all, color) = match join {
                Join::Apart => (sheets(&["squares", "pieces"]), sheets(&["pieces"])),
                Join::Beside => (sheets(&["strips"]), sheets(&["strips"])),
            };
            assert_eq!((own.sheets, own.in_colour), (all, color), "{paper:?} {flip:?} {join:?}");
        }
    }
}

#[test]
fn a_single_strip_is_printed_again_and_what_a_kit_lacks_is_refused() {
    let place = tempfile::tempdir().unwrap();
    let root = place.path().to_str().unwrap();
    let mut own = settings(3, 2, 127.0, everysquare::plan::settings::Paper::Letter, Flip::LongEdge);
    own.print.join = Join::Beside;
    std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
    std::fs::write(place.path().join("picture.png"), super::picture().to_png().unwrap()).unwrap();
    assert_eq!(super::everysquare(&["print", root]), 0);
    let made = |name: &str| place.path().join("print").join(name).exists();
    assert!(made("strips.pdf") && made("cuts/strips-3.svg"));
    assert!(!made("squares.pdf") && !made("pieces.pdf") && !made("checklist.pdf"));
    let manifest = std::fs::read(place.path().join("print/manifest.json")).unwrap();
    assert_eq!(super::everysquare(&["print", root, "--only", "B1"]), 0);
    assert!(made("strips-again.pdf") && !made("squares-again.pdf"));
    assert_eq!(super::everysquare(&["print", root, "squares"]), 2, "this kit has none");
    assert_eq!(super::everysquare(&["print", root, "squares", "--only", "B1"]), 2, "nor again");
    assert_eq!(std::fs::read(place.path().join("print/manifest.json")).unwrap(), manifest);
}
