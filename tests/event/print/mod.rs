//! The kit on paper: what must hold for every paper, size and way to turn the paper over. The drawn pages themselves are
//! measured by `tools/outside/pdf.py`, with other people's readers.

mod sheets;
mod single;
mod strips;

use everysquare::frame::{Point, SheetMm, Vector};
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::crowd::evening;
use everysquare::plan::settings::{Choice, CodeSettings, Corner, Flip, Join, Language, Paper};
use everysquare::plan::{Grid, Modules, Printed, RowsFrom, Settings, Tag};
use everysquare::print::layout::{Area, Layout, MARGINS_MM, largest_mm};
use everysquare::print::marks::{Code, quarter_ticks, quiet_zone, rectangles, square_ticks};
use everysquare::print::{
    Document, Kit, Overrides, PIECE_BORDER_MM, PrintError, Sources, kit, names_of, part_of_kit,
};
use everysquare::words::Words;
use proptest::prelude::*;

const PAPERS: [Paper; 4] = [Paper::Letter, Paper::Tabloid, Paper::A4, Paper::A3];
const FLIPS: [Flip; 3] = [Flip::LongEdge, Flip::ShortEdge, Flip::None];

/// A picture of flat stripes whose pixels do not fall on the edges of pieces.
fn picture() -> Picture {
    let colours = [[200, 40, 40], [250, 220, 60], [30, 90, 160], [255, 255, 255]];
    let pixels = image::RgbImage::from_fn(403, 320, |x, y| {
        image::Rgb(colours[(x / 37 + y / 23) as usize % colours.len()])
    });
    Picture { pixels }
}

fn settings(columns: usize, rows: usize, square_mm: f64, paper: Paper, flip: Flip) -> Settings {
    let grid = Grid { square_mm, ..Grid::usual(columns, rows) };
    let mut settings = Settings::new("Harbour library open evening".into(), Tag::new("K7M").unwrap(), grid);
    settings.print.paper = paper;
    settings.print.flip = flip;
    settings
}

fn kit_of(settings: &Settings, printed: &Printed, picture: &Picture) -> Result<Kit, PrintError> {
    let few = FewColours::chosen(picture, &settings.picture);
    let facts = PictureFacts::of(&few, &settings.grid, &settings.levels);
    let (words, templates) = (Words::of(settings.language.word()), Overrides::default());
    let evening = evening(settings, &facts.work());
    kit(&Sources {
        settings,
        printed,
        picture,
        facts: &facts,
        words: &words,
        templates: &templates,
        evening: &evening,
    })
}

fn document<'a>(kit: &'a Kit, name: &str) -> &'a Document {
    kit.documents.iter().find(|document| document.name == format!("{name}.pdf")).unwrap()
}

fn print(settings: &Settings) -> Result<Kit, PrintError> {
    kit_of(settings, &settings.printed().unwrap(), &picture())
}

fn page(paper: Paper) -> Area {
    let (width, height) = paper.size_mm();
    Area::new(0.0, 0.0, width, height)
}

fn holds(outer: &Area, inner: &Area) -> bool {
    let (a, b) = (outer.bottom_right(), inner.bottom_right());
    let slack = 1e-3;
    inner.top_left.x > outer.top_left.x - slack
        && inner.top_left.y > outer.top_left.y - slack
        && b.x < a.x + slack
        && b.y < a.y + slack
}

#[test]
fn two_squares_fit_letter_and_a4_six_fit_tabloid_and_a3() {
    let fit = PAPERS.map(|paper| Layout::pack(paper, 127.0, 127.0).unwrap());
    assert_eq!(fit.each_ref().map(|layout| layout.spots.len()), [2, 6, 2, 6]);
    assert_eq!(fit.map(|layout| layout.margin_mm), [10.0; 4], "clear of a 10 mm edge");
}

#[test]
fn pieces_too_large_are_refused_with_the_largest_that_fits() {
    let with_pieces_of = |piece_mm: f64, flip: Flip| {
        let mut settings = settings(2, 2, 300.0, Paper::Letter, flip);
        settings.grid.piece_mm = piece_mm;
        print(&settings)
    };
    let refused = with_pieces_of(250.0, Flip::LongEdge).unwrap_err();
    let PrintError::TooLarge { side_mm, largest_mm, .. } = refused.clone() else { panic!("{refused:?}") };
    assert_eq!(side_mm, 250.0);
    assert!(refused.to_string().contains("a piece 250 mm wide doesn’t fit on letter paper"), "{refused}");
    assert!(refused.to_string().contains("The largest that fits is 195.2 mm"), "{refused}");
    for flip in FLIPS {
        assert!(with_pieces_of(largest_mm, flip).is_ok());
        assert!(with_pieces_of(largest_mm + 0.2, flip).is_err());
    }
}

#[test]
fn squares_larger_than_the_page_come_in_parts() {
    for (side, parts) in [(203.0, 1), (240.0, 2), (390.0, 4), (1_000.0, 24)] {
        for flip in [Flip::LongEdge, Flip::None] {
            let kit = print(&settings(2, 1, side, Paper::Letter, flip)).unwrap();
            let squares = document(&kit, "squares");
            assert_eq!(squares.sheets, 2 * parts, "{side} mm");
            let sides = if flip == Flip::None { 1 } else { 2 };
            let with_code = kit.manifest.squares.iter().map(|square| square.page).collect::<Vec<_>>();
            assert_eq!(with_code, [sides * (parts - 1) + 1, sides * (2 * parts - 1) + 1], "its last part");
            assert!(kit.manifest.squares.iter().all(|square| square.side_mm == side));
            let code = &kit.manifest.code;
            let printable = page(Paper::Letter).inside(MARGINS_MM[1]);
            for square in &kit.manifest.squares {
                let module = code.module_mm;
                let quiet = Area::new(
                    square.x_mm + code.x_mm - 4.0 * module,
                    square.y_mm + code.y_mm - 4.0 * module,
                    29.0 * module,
                    29.0 * module,
                );
                assert!(holds(&printable, &quiet), "the code lies on the page: {quiet:?}");
            }
        }
    }
}

#[test]
fn the_same_kit_has_the_same_bytes() {
    let settings = settings(5, 4, 127.0, Paper::A4, Flip::LongEdge);
    let (first, second) = (print(&settings).unwrap(), print(&settings).unwrap());
    assert!(first == second);
    for document in &first.documents {
        let holds = |needle: &[u8]| document.bytes.windows(needle.len()).any(|window| window == needle);
        assert!(holds(b"/PrintScaling/None"), "{}: no hint for the printer's dialogue", document.name);
        assert!(!holds(b"/CreationDate") && !holds(b"/ModDate"), "{}: a date", document.name);
    }
}

#[test]
fn the_manifest_is_read_back_as_what_was_printed() {
    for flip in FLIPS {
        let settings = settings(7, 3, 90.0, Paper::A3, flip);
        let printed = settings.printed().unwrap();
        let manifest = print(&settings).unwrap().manifest;
        let json = manifest.to_json().unwrap();
        let read = everysquare::plan::Manifest::from_json(&json).unwrap();
        assert_eq!(read.printed(RowsFrom::Bottom).unwrap(), printed);
    }
}

#[test]
fn a_sheet_is_two_pages_unless_the_printer_prints_one_side() {
    for (flip, pages) in FLIPS.into_iter().zip([12, 12, 6]) {
        let kit = print(&settings(4, 3, 127.0, Paper::Letter, flip)).unwrap();
        let made: Vec<String> = kit.documents.iter().map(|d| d.name.clone()).collect();
        assert_eq!(made, names_of(Join::Apart).map(|name| format!("{name}.pdf")).collect::<Vec<_>>());
        assert_eq!((document(&kit, "squares").pages, document(&kit, "squares").sheets), (pages, 6));
        assert_eq!(kit.manifest.squares[2].page, if flip == Flip::None { 3 } else { 5 });
    }
}

#[test]
fn small_squares_have_cards_too_until_no_code_fits() {
    let cards = |side| print(&settings(3, 2, side, Paper::A4, Flip::LongEdge)).unwrap().manifest.cards;
    assert_eq!(cards(60.0).len(), 3 + 2 + 4);
    assert_eq!(cards(35.0).iter().filter(|card| card.kind == "corner").count(), 4);
    assert_eq!(cards(35.0).len(), 4, "a code with its quiet zone is 43.5 mm wide");
}

#[test]
fn a_photo_as_picture_stays_a_small_file() {
    let noise = |x: u32, y: u32| (x.wrapping_mul(2_654_435_761) ^ y.wrapping_mul(40_503)).to_le_bytes();
    let pixels = image::RgbImage::from_fn(2_000, 1_600, |x, y| {
        let [a, b, c, _] = noise(x / 8, y / 8);
        image::Rgb([a, b, c])
    });
    let settings = settings(10, 8, 127.0, Paper::Letter, Flip::LongEdge);
    let printed = settings.printed().unwrap();
    let kit = kit_of(&settings, &printed, &Picture { pixels }).unwrap();
    for document in &kit.documents {
        assert!(document.bytes.len() < 3 << 20, "{}: {} bytes", document.name, document.bytes.len());
    }
}

#[test]
fn a_kit_of_any_shape_is_set_in_every_language() {
    for (columns, rows) in [(1, 1), (3, 2), (40, 1), (1, 30), (16, 12)] {
        for language in [Language::English, Language::BritishEnglish, Language::Spanish] {
            let mut settings = settings(columns, rows, 127.0, Paper::A4, Flip::None);
            settings.language = language;
            settings.print.join = if columns % 2 == 0 { Join::Beside } else { Join::Apart };
            let kit = print(&settings).unwrap();
            assert_eq!(kit.documents.len(), names_of(settings.print.join).count());
            assert!(
                kit.documents.iter().all(|document| document.pages > 0 && document.bytes.len() < 3 << 20)
            );
        }
    }
}

#[test]
fn a_part_of_the_kit_has_the_same_bytes_as_in_the_whole() {
    let settings = settings(5, 4, 127.0, Paper::Letter, Flip::ShortEdge);
    let whole = print(&settings).unwrap();
    let (printed, picture) = (settings.printed().unwrap(), picture());
    let few = FewColours::chosen(&picture, &settings.picture);
    let facts = PictureFacts::of(&few, &settings.grid, &settings.levels);
    let (words, templates) = (Words::english(), Overrides::default());
    let sources = Sources {
        settings: &settings,
        printed: &printed,
        picture: &picture,
        facts: &facts,
        words: &words,
        templates: &templates,
        evening: &evening(&settings, &facts.work()),
    };
    let part = part_of_kit(&sources, &["pieces".to_owned(), "checklist".to_owned()], &|| ()).unwrap();
    assert_eq!(part.documents, [document(&whole, "pieces").clone(), document(&whole, "checklist").clone()]);
    assert_eq!(part.manifest, whole.manifest);
    assert!(part.cuts.iter().all(|sheet| sheet.name.starts_with("pieces-")));
    let refused = part_of_kit(&sources, &["piece".to_owned()], &|| ()).unwrap_err().to_string();
    assert!(refused.contains("we don’t know a document “piece”. Do you mean pieces?"), "{refused}");
}

#[test]
fn labels_and_names_of_any_length_are_set() {
    let mut settings = settings(60, 50, 60.0, Paper::Tabloid, Flip::ShortEdge);
    settings.name =
        "Ñandú – une soirée très longue, with far more words than a strip on a sheet of paper holds".into();
    let kit = print(&settings).unwrap();
    assert_eq!(kit.manifest.squares.len(), 3_000);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn items_lie_apart_on_the_printable_part_and_beside_the_strip(
        paper in prop::sample::select(PAPERS.to_vec()), width in 10.0..300.0_f64, height in 10.0..300.0_f64,
    ) {
        let Some(layout) = Layout::pack(paper, width, height) else { return Ok(()) };
        let printable = page(paper).inside(layout.margin_mm);
        prop_assert!(layout.margin_mm >= MARGINS_MM[1]);
        prop_assert!(holds(&printable, &layout.strip.area));
        for (i, spot) in layout.spots.iter().enumerate() {
            prop_assert!(holds(&printable, spot), "{:?}", spot);
            prop_assert!(!spot.overlaps(&layout.strip.area), "{:?}", spot);
            prop_assert!(layout.spots[..i].iter().all(|other| !spot.overlaps(other)), "{:?}", spot);
        }
    }

    #[test]
    fn the_wide_margin_goes_only_where_that_saves_paper(
        paper in prop::sample::select(PAPERS.to_vec()), side in 30.0..197.0_f64,
    ) {
        let layout = Layout::pack(paper, side, side).unwrap();
        if layout.margin_mm < MARGINS_MM[0] {
            let wide = page(paper).inside(MARGINS_MM[0]).size;
            let most = (wide.x / side).floor() * (wide.y / side).floor();
            let room_for_strip = 13.0;
            let sure = ((wide.x - room_for_strip) / side).floor() * ((wide.y - room_for_strip) / side).floor();
            prop_assert!(sure < layout.spots.len() as f64 && most >= sure);
        }
    }

    #[test]
    fn sheets_cut_as_a_stack_give_piles_in_order(
        paper in prop::sample::select(PAPERS.to_vec()),
        side in 25.0..140.0_f64,
        items in 1_usize..300,
        flip in prop::sample::select(FLIPS.to_vec()),
    ) {
        let layout = Layout::pack(paper, side, side).unwrap();
        let sheets = layout.stacked(items);
        prop_assert_eq!(sheets.len(), layout.sheets(items));
        // the pile of each spot, from its top sheet down, one pile on the next
        let piles = (0..layout.spots.len()).flat_map(|spot| sheets.iter().filter_map(move |sheet| sheet.get(spot)));
        prop_assert_eq!(piles.copied().collect::<Vec<_>>(), (0..items).collect::<Vec<_>>());
        let sides = if flip == Flip::None { 1 } else { 2 };
        for (item, (page, area)) in layout.fronts(flip, items).into_iter().enumerate() {
            let spot = layout.spots.iter().position(|spot| *spot == area).unwrap();
            prop_assert_eq!(sheets[page / sides][spot], item);
        }
    }

    #[test]
    fn a_back_lies_behind_its_front(
        paper in prop::sample::select(PAPERS.to_vec()), side in 30.0..190.0_f64, x in 0.0..1.0_f64, y in 0.0..1.0_f64,
    ) {
        let layout = Layout::pack(paper, side, side).unwrap();
        let whole = page(paper);
        for spot in &layout.spots {
            // A pin through the paper at a point of the front comes out where the flipped page has it.
            let pin = spot.top_left + Vector::<SheetMm>::new(x * side, y * side);
            let through = |flip| match flip {
                Flip::LongEdge => Point::<SheetMm>::new(whole.size.x - pin.x, pin.y),
                Flip::ShortEdge => Point::new(pin.x, whole.size.y - pin.y),
                Flip::None => pin,
            };
            for flip in FLIPS {
                let back = spot.turned_over(flip, layout.page);
                let out = through(flip);
                let near = out - back.top_left;
                prop_assert!(near.x > -1e-3 && near.y > -1e-3 && near.x < side + 1e-3 && near.y < side + 1e-3);
                let again = back.turned_over(flip, layout.page);
                prop_assert!(again.top_left.distance(spot.top_left).value() < 1e-3);
                prop_assert!(!back.overlaps(&layout.strip.area.turned_over(flip, layout.page)));
                prop_assert!(holds(&whole.inside(layout.margin_mm), &back));
            }
        }
    }

    #[test]
    fn the_largest_square_fits_and_no_larger_one(paper in prop::sample::select(PAPERS.to_vec()), border in 0.0..10.0_f64) {
        let side = |piece: f64| piece + 2.0 * border;
        let largest = side(largest_mm(paper, border));
        prop_assert!(Layout::pack(paper, largest, largest).is_some());
        prop_assert!(Layout::pack(paper, largest + 0.11, largest + 0.11).is_none());
    }

    #[test]
    fn merged_modules_are_the_code(text in "[0-9A-Z]{3}[-/.][0-9A-Z]{1,6}") {
        let modules = Modules::encode(&text).unwrap();
        let mut covered = vec![0; 441];
        for [column, row, width, height] in rectangles(&modules) {
            for y in row..row + height {
                for x in column..column + width {
                    covered[y * 21 + x] += 1;
                }
            }
        }
        let dark: Vec<i32> = modules.as_slice().iter().map(|dark| i32::from(*dark)).collect();
        prop_assert_eq!(covered, dark, "each dark module once, no light one");
        let code = Code::centred(&modules, 2.0, 30.0, 30.0);
        prop_assert_eq!((code.x, code.y), (9.0, 9.0));
    }

    #[test]
    fn ticks_keep_out_of_the_quiet_zone_and_stand_at_the_quarters(
        side in 60.0..200.0_f64, module_mm in 0.5..1.2_f64, more in 0.0..6.0_f64, corner in 0_usize..4,
    ) {
        let corner = [Corner::TopLeft, Corner::TopRight, Corner::BottomRight, Corner::BottomLeft][corner];
        let code = CodeSettings { module_mm, corner, inset_mm: 4.0 * module_mm + more };
        let (x, y) = code.top_left_mm(side);
        let quiet = quiet_zone(Point::new(x, y), module_mm);
        let ticks = square_ticks(side, &quiet);
        let full = quarter_ticks(side, 0.0, 3.0);
        prop_assert!(ticks.len() >= 8, "at most the ticks of one corner go");
        for tick in &ticks {
            let middle = ((tick.x1 + tick.x2) / 2.0, (tick.y1 + tick.y2) / 2.0);
            let inside = |v: f64, from: f64| v > from && v < from + quiet.width;
            prop_assert!(!(inside(middle.0, quiet.x) && inside(middle.1, quiet.y)));
            prop_assert!(full.iter().any(|f| (f.x1 - tick.x1).abs() < 1e-9 && (f.y1 - tick.y1).abs() < 1e-9));
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(24) })]
    #[test]
    fn the_manifest_says_where_each_square_and_piece_lies(
        columns in 1_usize..12, rows in 1_usize..9, side in 60.0..197.0_f64,
        paper in prop::sample::select(PAPERS.to_vec()), flip in prop::sample::select(FLIPS.to_vec()),
    ) {
        let settings = settings(columns, rows, side, paper, flip);
        let kit = print(&settings).unwrap();
        let manifest = &kit.manifest;
        let squares = Layout::pack(paper, side, side).unwrap().fronts(flip, columns * rows);
        let bordered = 25.4 + 2.0 * PIECE_BORDER_MM;
        let with_back = if flip == Flip::None { 2.0 * bordered } else { bordered };
        let pieces = Layout::pack(paper, with_back, bordered).unwrap().fronts(flip, columns * rows);
        prop_assert_eq!(manifest.squares.len(), columns * rows);
        for (said, (page, area)) in manifest.squares.iter().zip(&squares) {
            prop_assert_eq!(said.page, page + 1);
            prop_assert!(Point::new(said.x_mm, said.y_mm).distance(area.top_left).value() < 1e-3);
            prop_assert!(said.page <= document(&kit, "squares").pages);
        }
        for (said, (page, area)) in manifest.pieces.iter().zip(&pieces) {
            prop_assert_eq!(said.page, page + 1);
            let corner = area.top_left + Vector::new(PIECE_BORDER_MM, PIECE_BORDER_MM);
            prop_assert!(Point::new(said.x_mm, said.y_mm).distance(corner).value() < 1e-3);
            prop_assert!((said.side_mm - 25.4).abs() < 1e-9);
        }
    }
}

/// Runs the program with these arguments, in silence; gives its exit code.
fn everysquare(arguments: &[&str]) -> u8 {
    use everysquare::cli::{Console, Screen, run};
    let argv = ["everysquare"].iter().chain(arguments).map(|argument| (*argument).into());
    let silent = || Box::new(std::io::sink());
    run(argv, &mut Console::new(silent(), silent(), Screen::plain()))
}

#[test]
fn parts_of_a_kit_are_printed_again_only_while_they_fit_the_rest() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    let root = folder.path().to_str().unwrap();
    assert_eq!(everysquare(&["print", root]), 2, "there is no event yet");

    let mut settings = settings(3, 2, 127.0, Paper::A4, Flip::LongEdge);
    std::fs::write(at("event.toml"), settings.to_toml()).unwrap();
    std::fs::write(at("picture.png"), picture().to_png().unwrap()).unwrap();
    assert_eq!(everysquare(&["print", root]), 0);
    let manifest = std::fs::read(at("print/manifest.json")).unwrap();
    for name in names_of(Join::Apart) {
        assert!(at(&format!("print/{name}.pdf")).exists(), "{name}");
    }
    assert!(at("plan.json").exists() && at("print/cuts/squares-3.svg").exists());
    std::fs::remove_file(at("print/edge-cards.pdf")).unwrap();
    std::fs::write(at("print/cuts/squares-4.svg"), "of a larger kit").unwrap();
    assert_eq!(everysquare(&["print", root, "squares", "posters"]), 2, "there is no such document");
    assert_eq!(everysquare(&["print", root, "squares"]), 0);
    assert!(!at("print/cuts/squares-4.svg").exists() && at("print/cuts/pieces-1.svg").exists());
    assert_eq!(everysquare(&["print", root, "edge-cards"]), 0);
    assert!(at("print/edge-cards.pdf").exists());

    settings.tag = Tag::new("ZZZ").unwrap();
    std::fs::write(at("event.toml"), settings.to_toml()).unwrap();
    assert_eq!(everysquare(&["print", root, "edge-cards"]), 2);
    assert_eq!(std::fs::read(at("print/manifest.json")).unwrap(), manifest, "nothing is lost");
    assert_eq!(everysquare(&["print", root]), 0);
}

/// The labels of an event's pieces of several colors.
fn drawn(folder: &std::path::Path) -> Vec<String> {
    let plan = std::fs::read_to_string(folder.join("plan.json")).unwrap();
    let plan: serde_json::Value = serde_json::from_str(&plan).unwrap();
    let pieces = plan["pieces"].as_array().unwrap().iter();
    let several = pieces.filter(|piece| piece["pencils"].as_array().unwrap().len() > 1);
    several.map(|piece| piece["label"].as_str().unwrap().to_owned()).collect()
}

#[test]
fn fillers_are_printed_for_what_the_newest_check_lacks() {
    let place = tempfile::tempdir().unwrap();
    let folder = crate::common::evening::event(place.path(), "F4L");
    let (at, kit) = (folder.to_str().unwrap(), std::fs::read(folder.join("print/manifest.json")).unwrap());
    let pdf = folder.join("print/fill.pdf");
    let (code, _, err) = crate::common::everysquare(&["print", at, "fill"]);
    assert_eq!((code, pdf.exists()), (2, false), "there is no check yet");
    assert!(err.contains("no check of this wall yet"), "{err}");

    let photo = crate::common::evening::photo(
        &folder,
        "4",
        &["--missing", "4", "--undrawn", "2", "--swaps", "1", "--turns", "0"],
    );
    crate::common::everysquare(&["check", at, &photo]);
    let (code, _, err) = crate::common::everysquare(&["print", at, "fill"]);
    assert_eq!(code, 2, "a wall that was made for practice has no gaps to fill: {err}");
    // the same photo without what says that it was made
    let pixels = image::open(&photo).unwrap().into_rgb8();
    let taken = place.path().join("taken.png");
    pixels.save(&taken).unwrap();
    let checked = crate::common::everysquare(&["check", at, taken.to_str().unwrap()]).1;
    assert!(checked.contains("2 are still white"), "{checked}");
    let (code, out, err) = crate::common::everysquare(&["print", at, "fill"]);
    assert_eq!((code, err.as_str()), (0, ""));
    assert!(
        out.contains("4 squares are missing") && out.contains("2 squares are up but still white"),
        "{out}"
    );
    let outlined = std::fs::read(&pdf).unwrap();
    assert_eq!(crate::common::everysquare(&["print", at, "fill", "--soft"]).0, 0);
    assert_ne!(std::fs::read(&pdf).unwrap(), outlined);
    assert_eq!(std::fs::read(folder.join("print/manifest.json")).unwrap(), kit, "the kit stays what it is");
}

#[test]
fn fillers_are_printed_for_named_spots_and_refused_for_others() {
    let place = tempfile::tempdir().unwrap();
    let folder = crate::common::evening::event(place.path(), "F2L");
    let at = folder.to_str().unwrap();
    let labels = drawn(&folder);
    let only = format!("{}, {}", labels[0].to_lowercase(), labels[1]);
    let (code, out, err) = crate::common::everysquare(&["print", at, "fill", "--only", &only]);
    assert_eq!((code, err.as_str()), (0, ""));
    assert!(out.contains("2 squares have outlines") && out.contains("1 page on 1 sheet"), "{out}");
    for (words, said) in [
        (vec!["fill", "--only", "Z9"], "no spot “Z9”. Its spots are A4 to E1"),
        (vec!["squares", "--soft"], "--soft goes with the document fill"),
        (vec!["guide", "--only", "A1"], "--only goes with squares, pieces, strips, fill, helped"),
        (vec!["lesson", "--only", "A1"], "--only goes with squares, pieces, strips, fill, helped"),
        (vec!["--only", "A9"], "no spot “A9”"),
    ] {
        let (code, _, err) = crate::common::everysquare(&[vec!["print", at], words].concat());
        assert_eq!(code, 2);
        assert!(err.contains(said), "{err}");
    }
    // what was printed has other codes than what the settings say now
    let toml = std::fs::read_to_string(folder.join("event.toml")).unwrap().replace("F2L", "F3L");
    std::fs::write(folder.join("event.toml"), toml).unwrap();
    let (code, _, err) = crate::common::everysquare(&["print", at, "fill", "--only", &only]);
    assert_eq!(code, 2);
    assert!(err.contains("Print the whole kit again"), "{err}");
}

#[test]
fn a_wall_is_shared_out_among_groups_and_each_is_told_how_far_it_is() {
    let place = tempfile::tempdir().unwrap();
    let folder = crate::common::evening::event(place.path(), "G2P");
    let at = folder.to_str().unwrap();
    let (code, _, err) = crate::common::everysquare(&["groups", at]);
    assert_eq!(code, 2);
    assert!(err.contains("isn’t shared out yet"), "{err}");
    for spread in [&[][..], &["--spread", "blocks"]] {
        let (code, out, err) =
            crate::common::everysquare(&[&["groups", at, "3A 12, 3B 9; club 4"], spread].concat());
        assert_eq!((code, err.as_str()), (0, ""));
        assert!(out.contains("groups.pdf: 6 pages on 6 sheets"), "{out}");
    }
    let before = std::fs::read(folder.join("print/groups.pdf")).unwrap();
    assert_eq!(crate::common::everysquare(&["print", at, "groups"]).0, 0);
    assert_eq!(std::fs::read(folder.join("print/groups.pdf")).unwrap(), before);
    let (code, out, _) = crate::common::everysquare(&["groups", at]);
    assert_eq!(code, 2);
    assert!(out.contains("no check of this wall yet"), "{out}");

    let photo =
        crate::common::evening::photo(&folder, "5", &["--missing", "3", "--swaps", "0", "--turns", "0"]);
    let (_, out, _) = crate::common::everysquare(&["check", at, &photo]);
    let told: Vec<&str> = out.lines().filter(|line| line.contains(" up")).collect();
    assert_eq!(told.len(), 3, "a line for each group: {out}");
    let missing = told.iter().filter_map(|line| line.split_once("Still to come: ")).map(|(_, labels)| labels);
    assert_eq!(missing.flat_map(|labels| labels.split(", ")).count(), 3, "{out}");
    for (typed, said) in [
        ("3A 12, 3B", "can’t read “3B” as a group"),
        ("3A 0", "can’t read “3A 0”"),
        ("3A 2, 3a 3", "two groups are called “3a”"),
        (",", "name at least one group"),
        (&(0..21).map(|i| format!("g{i} 2,")).collect::<String>(), "21 groups are too many"),
    ] {
        let (code, _, err) = crate::common::everysquare(&["groups", at, typed]);
        assert_eq!(code, 2);
        assert!(err.contains(said), "{err}");
    }
    std::fs::write(folder.join("groups.json"), "{").unwrap();
    let (code, _, err) = crate::common::everysquare(&["groups", at]);
    assert_eq!(code, 2);
    assert!(err.contains("groups.json doesn’t match this wall"), "{err}");
}

#[test]
fn a_lesson_has_four_pages_on_every_paper_in_every_language() {
    let place = tempfile::tempdir().unwrap();
    let folder = crate::common::evening::event(place.path(), "L2N");
    let at = folder.to_str().unwrap();
    let toml = std::fs::read_to_string(folder.join("event.toml")).unwrap();
    for paper in ["letter", "tabloid", "a4", "a3"] {
        for language in ["en", "en-GB", "es"] {
            let changed = toml
                .replace("paper = \"letter\"", &format!("paper = \"{paper}\""))
                .replace("language = \"en\"", &format!("language = \"{language}\""));
            std::fs::write(folder.join("event.toml"), changed).unwrap();
            let (code, out, err) = crate::common::everysquare(&["print", at, "lesson"]);
            assert_eq!((code, err.as_str()), (0, ""), "{paper} {language}");
            assert!(out.contains("4 pages on 4 sheets") || out.contains("4 páginas en 4 hojas"), "{out}");
        }
    }
}

#[test]
fn single_spots_are_printed_again_beside_the_kit() {
    let place = tempfile::tempdir().unwrap();
    let folder = crate::common::evening::event(place.path(), "A2N");
    let at = folder.to_str().unwrap();
    let files = || {
        let entries = std::fs::read_dir(folder.join("print")).unwrap();
        let mut all: Vec<String> =
            entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        all.sort();
        all
    };
    let (before, manifest) = (files(), std::fs::read(folder.join("print/manifest.json")).unwrap());
    let (code, out, err) = crate::common::everysquare(&["print", at, "squares", "--only", "b2"]);
    assert_eq!((code, err.as_str()), (0, ""));
    assert!(out.contains("squares-again.pdf: 1 page on 1 sheet, one-sided"), "{out}");
    assert!(!folder.join("print/pieces-again.pdf").exists());
    let (code, out, _) = crate::common::everysquare(&["print", at, "--only", "A1,C3,E4"]);
    assert_eq!(code, 0);
    assert!(
        out.contains("squares-again.pdf: 2 pages on 2 sheets") && out.contains("pieces-again.pdf: 1 page"),
        "{out}"
    );
    let after: Vec<String> = files().into_iter().filter(|name| !name.contains("-again")).collect();
    assert_eq!(after, before);
    assert_eq!(std::fs::read(folder.join("print/manifest.json")).unwrap(), manifest);
}
