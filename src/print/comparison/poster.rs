//! `poster.pdf`: the wall, and if it is asked for the original, over many pages that are glued to one picture; before them a map.
//!
//! ```text
//!   ┌ ─ ─ ─ ─ ─ ─ ┐        ┌─────────┬╌┬─────────┐
//!     ╵         ╵          │         ┊ ┊         │     neighbours share 10 mm: each page is cut along its marks and glued
//!    ╶┌─────────┐╴         │  1, 1   ┊ ┊  1, 2   │     over the strip of the one before it
//!   │ │         │ │        │         ┊ ┊         │
//!     │         │          ├╌╌╌╌╌╌╌╌╌┼╌┼╌╌╌╌╌╌╌╌╌┤
//!   │╶└─────────┘╴│        │  2, 1   ┊ ┊  2, 2   │
//!   └ ╵─ ruler ─╵ ┘        └─────────┴╌┴─────────┘
//! ```

use rayon::prelude::*;
use serde::Serialize;

use super::exhibit::Exhibit;
use crate::frame::{ceil_index, float};
use crate::plan::settings::Units;
use crate::print::PrintError;
use crate::print::cut_out::Part;
use crate::print::layout::{Area, Layout};
use crate::print::lengths::one;
use crate::print::marks::{Box, Line};
use crate::print::numbers::FEET2_A_M2;
use crate::print::page::{Heading, Page, Set, Sheets, Sides};
use crate::print::typeset::Image;

/// How much of the poster two neighbouring pages share, in mm: room for glue, and for a knife that strays. Common practice, no
/// source.
const SHARED_MM: f64 = 10.0;
/// White around the picture on its page, in mm, where the marks stand.
const MARKS_MM: f64 = 4.0;
/// From where to where outside the picture a mark reaches, in mm.
const MARK_MM: [f64; 2] = [0.8, 3.8];
/// Pages side by side, where nothing else is asked for.
const USUAL_ACROSS: usize = 3;
/// Most pages where nothing else is asked for, and most at all: an afternoon of glueing.
const USUAL_PAGES: usize = 12;
const MOST_PAGES: usize = 100;
/// Part of its width that a poster keeps for a row of pages less. Chosen by looking.
const NEARLY: f64 = 0.85;
/// The narrowest poster, in mm.
const LEAST_MM: f64 = 50.0;
/// Height of the map, as the largest part of its page.
const MAP_HIGH: f64 = 0.55;

/// What all pages share.
#[derive(Serialize)]
struct Shared {}

/// What lies on a page.
#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
enum Item {
    /// The map of the pages, and what to do.
    Map(Map),
    /// A part of the poster.
    Part(PartItem),
}

#[derive(Serialize)]
struct Map {
    /// Where all of it lies.
    area: Box,
    title: String,
    event: String,
    made: Option<String>,
    size: String,
    /// Width and height of the poster on the map.
    width: f64,
    height: f64,
    /// Each page on the map, and what it is called.
    pages: Vec<(Box, String)>,
    steps: Vec<String>,
    caution: String,
}

#[derive(Serialize)]
struct PartItem {
    /// Where the picture lies on the page.
    area: Box,
    picture: usize,
    /// Where its pixels lie, from the area's corner.
    lies: Box,
    /// Where to cut.
    marks: Vec<Line>,
    /// Where the neighbours' edges come to lie.
    joints: Vec<Line>,
}

/// The poster's size and its pages.
#[derive(Copy, Clone, Debug, PartialEq)]
struct Tiling {
    /// Width and height of the poster, in mm.
    size: [f64; 2],
    /// Width and height that one page shows at most, in mm.
    page: [f64; 2],
    across: usize,
    down: usize,
}

impl Tiling {
    /// The pages of a poster so wide, whose height is `ratio` times its width.
    fn of(width: f64, ratio: f64, page: [f64; 2]) -> Self {
        let size = [width, width * ratio];
        let count = |at: usize| ceil_index((size[at] - SHARED_MM) / (page[at] - SHARED_MM) - 1e-9).max(1);
        Self { size, page, across: count(0), down: count(1) }
    }

    fn pages(&self) -> usize {
        self.across * self.down
    }

    /// As wide as usual: as many pages across as usual, fewer where the poster would be more than usual, less than one where
    /// it is very tall. Where a little less width spares a row of pages that hold hardly more than a strip, it is as wide as that.
    fn usual(ratio: f64, page: [f64; 2]) -> Self {
        let along = |count: usize, side: f64| float(count) * (side - SHARED_MM) + SHARED_MM;
        let some = (1..=USUAL_ACROSS).rev().map(|across| {
            let full = Self::of(along(across, page[0]), ratio, page);
            let rows = full.down.saturating_sub(1).max(1);
            let filled = Self::of((along(rows, page[1]) / ratio).min(full.size[0]), ratio, page);
            let spares = filled.pages() < full.pages() && filled.size[0] >= NEARLY * full.size[0];
            if spares { filled } else { full }
        });
        let tall = || Self::of(along(USUAL_PAGES, page[1]) / ratio, ratio, page);
        some.into_iter().find(|tiling| tiling.pages() <= USUAL_PAGES).unwrap_or_else(tall)
    }

    /// The widest with not more than [`MOST_PAGES`].
    fn widest(ratio: f64, page: [f64; 2]) -> f64 {
        let (mut fits, mut beyond) = (0.0, 1e6);
        while beyond - fits > 0.5 {
            let middle = (fits + beyond) / 2.0;
            let few = Self::of(middle, ratio, page).pages() <= MOST_PAGES;
            *(if few { &mut fits } else { &mut beyond }) = middle;
        }
        fits
    }

    /// The part of the poster on the page of a row and a column, in mm from its top left corner.
    fn part(&self, row: usize, column: usize) -> Part {
        let [width, height] = self.size;
        let [across, down] = self.page;
        let (left, top) = (float(column) * (across - SHARED_MM), float(row) * (down - SHARED_MM));
        Part { left, top, width: across.min(width - left), height: down.min(height - top) }
    }

    /// Rows and columns of all pages, from the top left.
    fn places(&self) -> impl Iterator<Item = (usize, usize)> + use<> {
        let Self { across, down, .. } = *self;
        (0..down).flat_map(move |row| (0..across).map(move |column| (row, column)))
    }
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Poster`] for a width that cannot be printed; [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let layout = Layout::whole(sources.settings.print.paper);
    let page = layout
        .spots
        .first()
        .map_or([0.0; 2], |spot| [spot.size.x - 2.0 * MARKS_MM, spot.size.y - 2.0 * MARKS_MM]);
    let tiling = tiling(exhibit, float(grid.rows) / float(grid.columns), page)?;
    let copies: &[bool] = if exhibit.input.poster.original { &[false, true] } else { &[false] };
    let count = tiling.pages() * copies.len() + 1;
    let heading = Heading::new(sources, "poster", Some(count), Sides::One);
    let corner = layout.spots.first().map(|spot| spot.inside(MARKS_MM).top_left).unwrap_or_default();
    let mut pages = vec![map_page(exhibit, &tiling, &heading, &layout)];
    let mut pictures = vec![exhibit.wall.clone()];
    for &of_original in copies {
        let places: Vec<_> = tiling.places().collect();
        let cut = |(row, column): &(usize, usize)| {
            let part = tiling.part(*row, *column);
            (part, cut(exhibit, &tiling, part, of_original))
        };
        let parts: Vec<_> = places.par_iter().map(cut).collect();
        for ((row, column), (part, (picture, lies))) in places.into_iter().zip(parts) {
            pictures.push(picture);
            let area = Area::new(corner.x, corner.y, part.width, part.height).into();
            let item = PartItem {
                area,
                picture: pictures.len() - 1,
                lies,
                marks: marks(&area),
                joints: joints(&area, &tiling, row, column),
            };
            let number = [pages.len() + 1, count];
            let said = named(exhibit, &tiling, [row, column], number, of_original);
            let mut strip = heading.strip(&layout, pages.len() + 1, false);
            strip.lines[1].clone_from(&said);
            if let Some(made) = exhibit.made() {
                strip.lines[2] = made;
            }
            pages.push(Page { strip, about: said, back: false, items: vec![Item::Part(item)] });
        }
    }
    Sheets { name: "poster", shared: Shared {}, pages, pictures, two_sided: false }.set(sources)
}

/// The poster that is asked for.
fn tiling(exhibit: &Exhibit, ratio: f64, page: [f64; 2]) -> Result<Tiling, PrintError> {
    let Some(width) = exhibit.input.poster.width_mm else { return Ok(Tiling::usual(ratio, page)) };
    let most_mm = Tiling::widest(ratio, page);
    if (LEAST_MM..=most_mm).contains(&width) {
        return Ok(Tiling::of(width, ratio, page));
    }
    Err(PrintError::Poster { read_mm: width, least_mm: LEAST_MM, most_mm })
}

/// The pixels of a part of the poster, and where they lie.
fn cut(exhibit: &Exhibit, tiling: &Tiling, part: Part, of_original: bool) -> (Image, Box) {
    let grid = exhibit.grid();
    let (across, down) = (float(grid.columns) / tiling.size[0], float(grid.rows) / tiling.size[1]);
    let cells = Part {
        left: part.left * across,
        top: part.top * down,
        width: part.width * across,
        height: part.height * down,
    };
    let mm = [part.width, part.height];
    if of_original { exhibit.original_part(cells, mm) } else { exhibit.wall_part(cells, mm) }
}

/// “Our wall: row 1, column 2 of 2 × 3”, with the page's number behind it.
fn named(
    exhibit: &Exhibit,
    tiling: &Tiling,
    [row, column]: [usize; 2],
    [page, pages]: [usize; 2],
    of_original: bool,
) -> String {
    let what = exhibit.say(if of_original { "comparison-original" } else { "comparison-wall" });
    let said = [
        ("what", what.into()),
        ("row", (row + 1).to_string().into()),
        ("column", (column + 1).to_string().into()),
        ("rows", tiling.down.to_string().into()),
        ("columns", tiling.across.to_string().into()),
        ("page", page.to_string().into()),
        ("pages", pages.to_string().into()),
    ];
    exhibit.sources().words.say("comparison-poster-page", &said)
}

/// Two short lines outside each corner, in line with the edges.
fn marks(area: &Box) -> Vec<Line> {
    let [near, far] = MARK_MM;
    let (left, top) = (area.x, area.y);
    let (right, bottom) = (left + area.width, top + area.height);
    let level = |y: f64| {
        [
            Line { x1: left - far, y1: y, x2: left - near, y2: y },
            Line { x1: right + near, y1: y, x2: right + far, y2: y },
        ]
    };
    let upright = |x: f64| {
        [
            Line { x1: x, y1: top - far, x2: x, y2: top - near },
            Line { x1: x, y1: bottom + near, x2: x, y2: bottom + far },
        ]
    };
    [level(top), level(bottom), upright(left), upright(right)].concat()
}

/// Two short lines where the next page's edge comes to lie, for each next page.
fn joints(area: &Box, tiling: &Tiling, row: usize, column: usize) -> Vec<Line> {
    let [near, far] = MARK_MM;
    let (right, bottom) = (area.x + area.width, area.y + area.height);
    let (x, y) = (right - SHARED_MM, bottom - SHARED_MM);
    let mut lines = Vec::new();
    if column + 1 < tiling.across {
        lines.push(Line { x1: x, y1: area.y - far, x2: x, y2: area.y - near });
        lines.push(Line { x1: x, y1: bottom + near, x2: x, y2: bottom + far });
    }
    if row + 1 < tiling.down {
        lines.push(Line { x1: area.x - far, y1: y, x2: area.x - near, y2: y });
        lines.push(Line { x1: right + near, y1: y, x2: right + far, y2: y });
    }
    lines
}

/// The first page: the poster with its pages' edges, and what to do.
fn map_page(exhibit: &Exhibit, tiling: &Tiling, heading: &Heading, layout: &Layout) -> Page<Item> {
    let (sources, words) = (exhibit.sources(), exhibit.sources().words);
    let area =
        layout.spots.first().map_or_else(|| Area::new(0.0, 0.0, 1.0, 1.0), |spot| spot.inside(MARKS_MM));
    let [width, height] = tiling.size;
    let scale = (area.size.x / width).min(area.size.y * MAP_HIGH / height);
    let page = |(row, column): (usize, usize)| {
        let part = tiling.part(row, column);
        let on_map = Box {
            x: part.left * scale,
            y: part.top * scale,
            width: part.width * scale,
            height: part.height * scale,
        };
        (on_map, format!("{}, {}", row + 1, column + 1))
    };
    let size = [
        ("width", one(sources, width).into()),
        ("height", one(sources, height).into()),
        ("pages", tiling.pages().into()),
        ("rows", tiling.down.into()),
        ("columns", tiling.across.to_string().into()),
    ];
    let size = words.say("comparison-poster-size", &size);
    let shared = [("shared", one(sources, SHARED_MM).into())];
    let steps: Vec<String> =
        (1..=4).map(|step| words.say(&format!("comparison-poster-{step}"), &shared)).collect();
    let caution = caution(exhibit, tiling);
    let about = [
        ("size", size.as_str().into()),
        ("steps", steps.join(" ").into()),
        ("caution", caution.as_str().into()),
    ];
    let about = words.say("comparison-poster-about", &about);
    let map = Map {
        area: area.into(),
        title: exhibit.say("print-poster"),
        event: sources.settings.name.clone(),
        made: exhibit.made(),
        size,
        width: width * scale,
        height: height * scale,
        pages: tiling.places().map(page).collect(),
        steps,
        caution,
    };
    Page { strip: heading.strip(layout, 1, false), about, back: false, items: vec![Item::Map(map)] }
}

/// Whom to ask before so much paper goes up.
fn caution(exhibit: &Exhibit, tiling: &Tiling) -> String {
    let copies = if exhibit.input.poster.original { 2.0 } else { 1.0 };
    let m2 = tiling.size[0] * tiling.size[1] * copies / 1e6;
    let id = match exhibit.sources().settings.print.units {
        Units::Mm => "comparison-poster-fire-m2",
        Units::Inch => "comparison-poster-fire-ft2",
    };
    let said = [("area", format!("{m2:.2}").into()), ("feet", format!("{:.1}", m2 * FEET2_A_M2).into())];
    exhibit.sources().words.say(id, &said)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_row_that_would_hold_a_strip_is_spared() {
        // 9 × 12 squares on letter: a fourth row would be 40 mm of paper three times
        let page = [187.0, 238.0];
        let usual = Tiling::usual(12.0 / 9.0, page);
        assert_eq!((usual.across, usual.down), (3, 3));
        let full = Tiling::of(3.0 * (page[0] - SHARED_MM) + SHARED_MM, 12.0 / 9.0, page);
        assert_eq!(full.pages(), 12);
        assert!(usual.size[0] > NEARLY * full.size[0] && (usual.size[1] - (3.0 * 228.0 + 10.0)).abs() < 1e-9);
        // 10 × 8: three rows are filled as they are
        let full = Tiling::of(3.0 * (page[0] - SHARED_MM) + SHARED_MM, 0.8, page);
        assert_eq!(Tiling::usual(0.8, page), full);
    }

    proptest! {
        #[test]
        fn pages_cover_the_poster_and_neighbours_share_a_strip(
            width in 50.0_f64..3000.0, ratio in 0.02_f64..30.0, page in (150.0_f64..280.0, 200.0_f64..400.0),
        ) {
            let page = [page.0, page.1];
            let tiling = Tiling::of(width, ratio, page);
            for (row, column) in tiling.places() {
                let part = tiling.part(row, column);
                prop_assert!(part.width > 0.0 && part.width <= page[0] + 1e-9);
                prop_assert!(part.height > 0.0 && part.height <= page[1] + 1e-9);
                if column + 1 < tiling.across {
                    let next = tiling.part(row, column + 1);
                    prop_assert!((part.left + part.width - next.left - SHARED_MM).abs() < 1e-6);
                } else {
                    prop_assert!((part.left + part.width - width).abs() < 1e-6);
                }
                if row + 1 == tiling.down {
                    prop_assert!((part.top + part.height - width * ratio).abs() < 1e-6);
                }
            }
            let usual = Tiling::usual(ratio, page);
            prop_assert!(usual.pages() <= USUAL_PAGES);
            let widest = Tiling::widest(ratio, page);
            prop_assert!(Tiling::of(widest, ratio, page).pages() <= MOST_PAGES);
            prop_assert!(Tiling::of(widest + 1.0, ratio, page).pages() > MOST_PAGES);
        }
    }
}
