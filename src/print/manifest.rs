//! The manifest of a kit: every square and piece with its page and place, every card with its place on the wall.

use super::layout::Area;
use super::{PrintError, Sources, edge_cards, pieces, squares, strips};
use crate::plan::manifest::{
    FORMAT, ManifestCard, ManifestCode, ManifestEvent, ManifestGrid, ManifestPiece, ManifestSquare,
};
use crate::plan::settings::Join;
use crate::plan::{Manifest, PrintedSquare};

/// What a kit with these settings prints, and where.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares or pieces do not fit the paper.
pub(super) fn of(sources: &Sources) -> Result<Manifest, PrintError> {
    let printed = sources.printed;
    let (square_places, piece_places, turned) = fronts(sources)?;
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
        turned,
    })
}

/// The page, from 0, and the place of something printed.
type Front = (usize, Area);

/// Where squares and pieces with their borders lie, and whether they lie turned.
fn fronts(sources: &Sources) -> Result<(Vec<Front>, Vec<Front>, bool), PrintError> {
    let Sources { settings, printed, .. } = *sources;
    if settings.print.join == Join::Beside {
        let places = strips::places(&settings.print, printed, settings.code.corner)?;
        let fronts = strips::fronts(sources, &places).into_iter();
        let (squares, pieces) = fronts.map(|(page, [square, piece])| ((page, square), (page, piece))).unzip();
        return Ok((squares, pieces, places.turned));
    }
    let pieces = pieces::places(&settings.print, printed)?.fronts(printed.squares.len());
    Ok((squares::fronts(&settings.print, printed)?, pieces, false))
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
