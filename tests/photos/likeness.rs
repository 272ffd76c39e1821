//! Drawings on the wrong paper: found on made walls, and nothing said where nothing can be told. The long figures are printed by
//! `tools/likeness/main.rs`.

#[allow(dead_code, reason = "shared with the example")]
#[path = "../../tools/likeness/tally.rs"]
mod tally;
#[allow(dead_code, reason = "shared with the example")]
#[path = "../../tools/likeness/walls.rs"]
mod walls;

use everysquare::display::likeness::{Belongs, Likeness, Pieces, about, about_unread};
use everysquare::picture::FewColours;
use everysquare::plan::{Cell, Grid, Printed, Settings, Tag, Turn};
use everysquare::rehearse::{Faults, Options};
use everysquare::words::Words;
use image::imageops::{FilterType, resize, rotate90, rotate180, rotate270};
use image::{Rgb, RgbImage};
use tally::{Tally, count};

fn printed(columns: usize, rows: usize) -> Printed {
    let grid = Grid::usual(columns, rows);
    Settings::new("Made".to_owned(), Tag::new("K7M").unwrap(), grid).printed().unwrap()
}

fn balloons() -> (FewColours, Printed, Pieces) {
    let printed = printed(10, 8);
    let few = walls::picture("balloons", &printed.grid).unwrap();
    let pieces = Pieces::of(&few, &printed);
    (few, printed, pieces)
}

fn turned(picture: &RgbImage, turn: Turn) -> RgbImage {
    match turn {
        Turn::None => picture.clone(),
        Turn::Quarter => rotate90(picture),
        Turn::Half => rotate180(picture),
        Turn::ThreeQuarters => rotate270(picture),
    }
}

/// The piece as it is, of another size.
fn clean(few: &FewColours, printed: &Printed, cell: Cell, side: u32) -> RgbImage {
    resize(&few.to_picture().piece(&printed.grid, cell).pixels, side, side, FilterType::Triangle)
}

#[test]
fn clean_drawings_on_any_paper_are_told_in_all_turns_and_sizes() {
    let (few, printed, pieces) = balloons();
    let cells: Vec<Cell> = printed.grid.cells().collect();
    let mut told = 0;
    for (i, piece) in cells.iter().enumerate() {
        let turn = Turn::ALL[i % 4];
        let drawing = turned(&clean(&few, &printed, *piece, [48, 96, 131][i % 3]), turn);
        for paper in [cells[(i * 7 + 3) % cells.len()], *piece] {
            let judged = pieces.judge(&drawing, paper);
            match judged {
                Belongs::Elsewhere(Likeness { piece: found, turn: as_turned, .. }) => {
                    assert!(
                        !pieces.distinct((found, as_turned), (*piece, turn)),
                        "{piece:?} {turn:?} on {paper:?}: {judged:?}"
                    );
                    told += 1;
                }
                Belongs::Here => {
                    assert!(
                        !pieces.distinct((paper, Turn::None), (*piece, turn)),
                        "{piece:?} {turn:?} on {paper:?}: {judged:?}"
                    );
                }
                Belongs::CannotTell => {}
            }
        }
    }
    assert!(told > 90, "{told} of 140 that are on the wrong paper or turned");
}

#[test]
fn plain_drawings_say_nothing_whatever_their_colour() {
    let (_, printed, pieces) = balloons();
    for colour in [[245; 3], [170, 216, 236], [30, 80, 140], [210, 70, 60], [120, 120, 120], [0; 3]] {
        let drawing = RgbImage::from_pixel(80, 80, Rgb(colour));
        for cell in printed.grid.cells() {
            let judged = pieces.judge(&drawing, cell);
            assert!(!matches!(judged, Belongs::Elsewhere(_)), "{colour:?} on {cell:?}: {judged:?}");
        }
        let all: Vec<Cell> = printed.grid.cells().collect();
        assert_eq!(pieces.suggest(&drawing, &all), None, "{colour:?}");
    }
}

#[test]
fn what_is_drawn_into_the_code_s_box_does_not_count() {
    let (few, printed, pieces) = balloons();
    for cell in printed.grid.cells() {
        let drawing = clean(&few, &printed, cell, 127);
        let mut boxed = drawing.clone();
        let (from, to) = (printed.code_top_left.x - 3.0, printed.code_top_left.x + 16.0);
        for (x, y, pixel) in boxed.enumerate_pixels_mut() {
            let inside = |at: u32| f64::from(at) > from && f64::from(at) < to;
            if inside(x) && inside(y) {
                *pixel = Rgb([if (x + y) % 3 == 0 { 20 } else { 250 }; 3]);
            }
        }
        assert_eq!(pieces.closest(&boxed, cell), pieces.closest(&drawing, cell), "{cell:?}");
    }
}

/// On made walls, with hands as usual and twice as untrue, pencils off by 15 levels. No false alarm is allowed here.
#[test]
fn drawings_on_the_wrong_paper_are_found_on_made_walls() {
    let mut all = Tally::default();
    for (scene, seed, unsteady) in [("balloons", 501, 1.0), ("quilt", 502, 1.0), ("harbour", 503, 2.0)] {
        let faults = Faults { misdrawn: 14, drawn_turned: 8, ..Faults::default() };
        let options = Options { width: 1400, height: 1050, faults, unsteady, ..Options::varied(seed) };
        let wall = walls::wall(scene, (10, 8), &options, 15).unwrap();
        let found = Tally::of(&wall);
        assert!(found.wrong.len() >= 8 && found.sound.len() >= 50, "{scene}: a wall with something to find");
        let wrongly = (count(&found.wrong, 1.0, Some(false)), count(&found.sound, 1.0, None));
        assert_eq!(wrongly, (0, 0), "{scene}: {}", found.short());
        let unread = (count(&found.unread, 1.0, Some(false)), count(&found.unread_plain, 1.0, None));
        assert_eq!(unread, (0, 0), "{scene}: wrong suggestions");
        all.add(&found);
    }
    let right = count(&all.wrong, 1.0, Some(true));
    assert!(right * 100 >= 88 * all.wrong.len(), "{}", all.short());
    let suggested = count(&all.unread, 1.0, Some(true));
    assert!(suggested * 2 > all.unread.len(), "{suggested} of {} are suggested", all.unread.len());
}

#[test]
fn what_is_said_names_squares_and_asks_to_look() {
    let grid = printed(10, 8).grid;
    let (e4, d4) = (grid.cell("E4").unwrap(), grid.cell("D4").unwrap());
    let said = |piece, turn| {
        let belongs = Belongs::Elsewhere(Likeness { piece, turn, lead: 2.0 });
        about(belongs, e4, &grid).unwrap().tell(&Words::english())
    };
    assert_eq!(said(d4, Turn::None), "The drawing on square E4 looks like piece D4. Take a look.");
    assert_eq!(
        said(d4, Turn::Half),
        "The drawing on square E4 looks like piece D4, turned 180° clockwise. Take a look."
    );
    assert_eq!(
        said(e4, Turn::Quarter),
        "The drawing on square E4 looks turned 90° clockwise on its paper. Take a look."
    );
    assert_eq!(about(Belongs::Here, e4, &grid), None);
    assert_eq!(about(Belongs::CannotTell, e4, &grid), None);
    let unread = about_unread(Likeness { piece: d4, turn: Turn::None, lead: 1.0 }, e4, &grid);
    assert_eq!(
        unread.tell(&Words::english()),
        "We can’t read the square in E4. Its drawing looks like piece D4. Take a look."
    );
}
