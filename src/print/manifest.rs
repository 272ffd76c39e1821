//! The manifest of a kit: every square and piece with its page and place, every card with its place on the wall.

use super::layout::Area;
use super::{PrintError, edge_cards, pieces, squares};
use crate::plan::manifest::{
    FORMAT, ManifestCard, ManifestCode, ManifestEvent, ManifestGrid, ManifestPiece, ManifestSquare,
};
use crate::plan::settings::PrintSettings;
use crate::plan::{Manifest, Printed, PrintedSquare};

/// What a kit with these settings prints, and where.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares or pieces do not fit the paper.
pub(super) fn of(settings: &PrintSettings, printed: &Printed) -> Result<Manifest, PrintError> {
    let count = printed.squares.len();
    let square_places = squares::fronts(settings, printed)?;
    let piece_places = pieces::places(settings, printed)?.fronts(count);
    let squares = printed.squares.iter().zip(square_places).map(square).collect();
    let pieces = printed.squares.iter().zip(piece_places).map(piece).collect();
    let grid = &printed.grid;
    Ok(Manifest {
        format: FORMAT,
        event: ManifestEvent { name: printed.name.clone(), tag: printed.tag.clone() },
        grid: ManifestGrid {
            columns: grid.columns,
            rows: grid.rows,
            square_mm: grid.square_mm,
            piece_mm: grid.piece_mm,
        },
        code: ManifestCode {
            module_mm: printed.module_mm,
            x_mm: tidy(printed.code_top_left.x),
            y_mm: tidy(printed.code_top_left.y),
        },
        squares,
        pieces,
        cards: edge_cards::printable(printed).map(ManifestCard::from).collect(),
    })
}

fn square((square, (page, area)): (&PrintedSquare, (usize, Area))) -> ManifestSquare {
    ManifestSquare {
        label: square.label.clone(),
        column: square.cell.column,
        row: square.cell.row,
        text: square.text.clone(),
        modules: square.modules.to_hex(),
        page: page + 1,
        x_mm: tidy(area.top_left.x),
        y_mm: tidy(area.top_left.y),
        side_mm: tidy(area.size.x),
    }
}

fn piece((square, (page, bordered)): (&PrintedSquare, (usize, Area))) -> ManifestPiece {
    let area = bordered.inside(pieces::BORDER_MM);
    ManifestPiece {
        label: square.label.clone(),
        column: square.cell.column,
        row: square.cell.row,
        page: page + 1,
        x_mm: tidy(area.top_left.x),
        y_mm: tidy(area.top_left.y),
        side_mm: tidy(area.size.x),
    }
}

/// A length rounded to a tenth of a micrometre, so that files hold 44.45 and not 44.449999999999996.
fn tidy(mm: f64) -> f64 {
    (mm * 1e4).round() / 1e4
}
