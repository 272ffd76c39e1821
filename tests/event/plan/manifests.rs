//! manifest.json: what this program writes, and what another printer wrote.

use everysquare::plan::manifest::{
    Manifest, ManifestCard, ManifestCode, ManifestError, ManifestEvent, ManifestGrid, ManifestSquare,
};
use everysquare::plan::settings::Settings;
use everysquare::plan::{Folder, Grid, Printed, RowsFrom, Tag};

use crate::common::shared::shared;

fn event(columns: usize, rows: usize) -> (Settings, Printed) {
    let grid = Grid::usual(columns, rows);
    let settings = Settings::new("x".to_owned(), Tag::new("K7M").unwrap(), grid);
    let printed = settings.printed().unwrap();
    (settings, printed)
}

/// The manifest of a kit of which every square lies on one page.
pub fn manifest(printed: &Printed) -> Manifest {
    let square = |square: &everysquare::plan::PrintedSquare| ManifestSquare {
        label: square.label.clone(),
        column: square.cell.column,
        row: square.cell.row,
        text: square.text.clone(),
        modules: square.modules.to_hex(),
        page: 1,
        x_mm: 10.0,
        y_mm: 10.0,
        side_mm: printed.grid.square_mm,
    };
    Manifest {
        format: 1,
        event: ManifestEvent { name: printed.name.clone(), tag: printed.tag.clone() },
        grid: ManifestGrid {
            columns: printed.grid.columns,
            rows: printed.grid.rows,
            square_mm: printed.grid.square_mm,
            piece_mm: printed.grid.piece_mm,
        },
        code: ManifestCode {
            module_mm: printed.module_mm,
            x_mm: printed.code_top_left.x,
            y_mm: printed.code_top_left.y,
        },
        squares: printed.squares.iter().map(square).collect(),
        pieces: Vec::new(),
        cards: printed.cards.iter().map(ManifestCard::from).collect(),
        turned: false,
    }
}

#[test]
fn what_was_printed_reads_back() {
    let (_, printed) = event(28, 7);
    let written = manifest(&printed).to_json().unwrap();
    let read = Manifest::from_json(&written).unwrap();
    assert_eq!(read.printed(RowsFrom::Bottom).unwrap(), printed);
    assert_eq!(read.to_json().unwrap(), written, "the same bytes again");
}

#[test]
fn another_format_is_named_whatever_else_stands_there() {
    for text in [r#"{"format":2}"#, r#"{"squares":7,"format":2,"event":[]}"#] {
        assert_eq!(Manifest::from_json(text.as_bytes()), Err(ManifestError::Format(2)));
    }
    for text in ["", "{}", "[]", r#"{"format":"1"}"#, r#"{"format":1}"#, r#"{"format":1,"#, "\u{0}"] {
        let error = Manifest::from_json(text.as_bytes()).unwrap_err();
        assert!(matches!(error, ManifestError::Json(_)), "{text}: {error}");
    }
}

#[test]
fn what_makes_no_wall_is_refused() {
    let (_, printed) = event(4, 3);
    let good = manifest(&printed);
    let refuse = |change: fn(&mut Manifest), word: &str| {
        let mut bad = good.clone();
        change(&mut bad);
        let said = bad.printed(RowsFrom::Bottom).unwrap_err().to_string();
        assert!(said.contains(word), "{said} should speak of {word}");
    };
    refuse(|m| m.grid.columns = 0, "0 columns");
    refuse(|m| m.grid.columns = usize::MAX, "at most 3000");
    refuse(|m| m.grid.rows = 4, "12 squares are listed");
    refuse(|m| m.grid.square_mm = f64::NAN, "squares of NaN mm");
    refuse(|m| m.grid.piece_mm = -1.0, "pieces of -1 mm");
    refuse(|m| m.grid.square_mm = 1e300, "must be 1 to 10000 mm");
    refuse(|m| m.code.module_mm = f64::INFINITY, "block of a code is inf mm");
    refuse(|m| m.code.module_mm = 0.0, "block of a code is 0 mm");
    refuse(|m| m.code.module_mm = 1e-9, "must be 0.1 to 100 mm");
    refuse(|m| m.code.module_mm = 6.5, "isn’t inside its square");
    refuse(|m| m.code.x_mm = 120.0, "isn’t inside its square");
    refuse(|m| m.squares[3].row = 3, "outside the grid");
    refuse(|m| m.squares[3] = m.squares[4].clone(), "listed twice");
    refuse(|m| m.squares[3].modules = m.squares[4].modules.clone(), "have the same code");
    refuse(|m| m.squares[3].modules = "zz".to_owned(), "111 hexadecimal digits");
    refuse(|m| m.cards[0].kind = "edge".to_owned(), "column, row or corner");
    refuse(|m| m.cards[0].wall_x_mm = f64::NAN, "no position");
    refuse(|m| m.cards[0].wall_y_mm = 1e300, "no position");
    refuse(|m| m.cards[0].module_mm = 1e-9, "no size");
    let said = good.printed(RowsFrom::Top).unwrap_err().to_string();
    assert!(said.contains("rows_from"), "{said}");
}

#[test]
#[ignore = "needs ../shared/walls"]
fn kits_of_another_printer_are_read() {
    let walls = shared("walls");
    for (name, cells, cards) in [("heron-10x8", 80, 22), ("tram-12x9", 108, 0), ("lighthouse-16x12", 192, 32)]
    {
        let printed = Folder::at(walls.join(name)).printed().unwrap();
        assert_eq!((printed.squares.len(), printed.cards.len()), (cells, cards), "{name}");
        let texts = printed.squares.iter().map(|square| (&square.text, square.modules.text()));
        let cards = printed.cards.iter().map(|card| (&card.text, card.modules.text()));
        for (text, decoded) in texts.chain(cards) {
            assert_eq!(Some(text), decoded.as_ref(), "{name}: our decoder reads another encoder's code");
        }
    }
}
