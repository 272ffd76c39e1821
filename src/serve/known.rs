//! The wall as it is known: what each cell last showed, photo after photo, from however many phones.
//!
//! ```text
//!   PhotoReading, when it was taken ─▶ add ─▶ Known ─▶ reading ─▶ WallReading, for the judge
//! ```
//!
//! Promised:
//! - The newest photo of a cell wins, whoever took it and in whatever order photos arrive.
//! - A photo that does not show a cell takes nothing away. One that shows it without making out its code does not either, while
//!   what was read there is not older than [`RECENT_S`]: a reflection is likelier than another square.
//! - A square that a newer photo shows elsewhere is not believed at its old cell any more; there nobody knows what hangs now.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use crate::frame::Map;
use crate::plan::{Cell, Grid, Turn};
use crate::read::lens::Lens;
use crate::read::{Apart, Camera, CellReading, PhotoReading, Sight, WallReading, together};
use crate::report::Report;

/// For so many seconds a code that cannot be read any more still counts: half an hour, in which a wall is photographed many times.
/// Common sense, no source. Much shorter, and each reflection would undo what was known; much longer, and a square that was
/// painted over would never be looked at.
pub const RECENT_S: u64 = 1_800;

/// What is known of one cell.
#[derive(Clone, Debug, PartialEq)]
struct Seen {
    reading: CellReading,
    /// When that was seen, in seconds since 1970; 0 for never.
    at: u64,
    /// Whether the square there was still white.
    white: bool,
}

/// The wall as it is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Known {
    grid: Grid,
    cells: Vec<Seen>,
    /// The photos that cells come from, without what they say of cells.
    photos: Vec<PhotoReading>,
    /// Where those are from, in the same order.
    origins: Vec<Origin>,
    /// How many photos were added.
    count: usize,
    /// For each square, by the place where it belongs, the place where it was last seen on the wall.
    been: Vec<Option<usize>>,
}

/// Where a photo is from.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Origin {
    /// Counted from 1 at the beginning of the evening; given by [`Known::add`].
    pub number: usize,
    /// When it was taken, by its camera's clock.
    pub taken: Option<String>,
    /// Whether it says that it is a made picture.
    pub made: bool,
}

/// When cells were seen: kept beside a check's report.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Times {
    /// Always 1.
    pub format: u64,
    /// For each cell, row by row from the top, seconds since 1970; 0 for never.
    pub seen: Vec<u64>,
    /// How many photos the evening has had.
    pub photos: usize,
    /// Where the photos in the report are from.
    pub origins: Vec<Origin>,
    /// For each square, by the place where it belongs, the place where it was last seen on the wall.
    #[serde(default)]
    pub been: Vec<Option<usize>>,
}

impl Known {
    /// A wall of which nothing is known.
    #[must_use]
    pub fn nothing(grid: &Grid) -> Self {
        let unseen = |cell| Seen { reading: unseen(cell), at: 0, white: false };
        Self {
            grid: *grid,
            cells: grid.cells().map(unseen).collect(),
            photos: Vec::new(),
            origins: Vec::new(),
            count: 0,
            been: vec![None; grid.count()],
        }
    }

    /// How many photos were added so far.
    #[must_use]
    pub fn count(&self) -> usize {
        self.count
    }

    /// Whether anything is known.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.cells.iter().all(|seen| seen.at == 0)
    }

    /// When each cell was seen, row by row from the top.
    pub fn times(&self) -> impl Iterator<Item = u64> {
        self.cells.iter().map(|seen| seen.at)
    }

    /// What is kept beside the report of this wall.
    #[must_use]
    pub fn kept(&self) -> Times {
        Times {
            format: 1,
            seen: self.times().collect(),
            photos: self.count,
            origins: self.origins.clone(),
            been: self.been.clone(),
        }
    }

    /// Squares, by the places where they belong, that were on the wall, hang nowhere now, and whose last place has been looked at
    /// since: they fell off, or somebody took them down. Where the code at the last place cannot be read, the square may hang there
    /// still.
    #[must_use]
    pub fn fallen(&self) -> Vec<usize> {
        let mut hangs = vec![false; self.cells.len()];
        self.hanging().iter().for_each(|(home, _)| hangs[*home] = true);
        let looked_at = |place: usize| self.cells.get(place).is_some_and(|seen| tells(&seen.reading.sight));
        let gone =
            (0..).zip(&self.been).filter(|(square, last)| last.is_some_and(looked_at) && !hangs[*square]);
        gone.map(|(square, _)| square).collect()
    }

    /// Every square that hangs, by the place where it belongs, and where.
    fn hanging(&self) -> Vec<(usize, usize)> {
        let named = (0..).zip(&self.cells).filter_map(|(place, seen)| match &seen.reading.sight {
            Sight::Square { home, .. } => Some((self.grid.index(*home), place)),
            _ => None,
        });
        named.collect()
    }

    fn remember(&mut self) {
        for (home, place) in self.hanging() {
            if let Some(last) = self.been.get_mut(home) {
                *last = Some(place);
            }
        }
    }

    /// Where the photos that cells come from are from.
    #[must_use]
    pub fn origins(&self) -> &[Origin] {
        &self.origins
    }

    /// Adds the readings of a photo taken at `at`, seconds since 1970, in which the squares in the cells `white` were still white. Says
    /// which number it has in [`Known::reading`], and of which cells it shows the newest look.
    pub fn add(&mut self, photo: Vec<PhotoReading>, white: &[Cell], origin: Origin, at: u64) -> Added {
        let (first, number) = (self.photos.len(), self.origins.len());
        let mut newest = vec![false; self.cells.len()];
        let photo = together(vec![photo]);
        let on_wall = photo.cells.into_iter().filter(|own| self.grid.holds(own.cell));
        let fresh: Vec<CellReading> =
            on_wall.map(|own| CellReading { photo: first + own.photo, ..own }).collect();
        for own in &fresh {
            let place = self.grid.index(own.cell);
            newest[place] = own.sight != Sight::Unseen && at >= self.cells[place].at;
            if replaces(&self.cells[place], own, at) {
                self.cells[place] = Seen { reading: own.clone(), at, white: white.contains(&own.cell) };
            }
        }
        for own in &fresh {
            self.forget_elsewhere(own, &fresh, at);
        }
        self.remember();
        let taken = self.cells.iter().map(|seen| seen.at > 0 && seen.reading.photo >= first).collect();
        let parts = photo.photos.into_iter();
        self.photos.extend(parts.map(|part| PhotoReading { photo: number, cells: Vec::new(), ..part }));
        self.count += 1;
        self.origins.push(Origin { number: self.count, ..origin });
        Added { photo: self.tidy(number), newest, taken }
    }

    /// Where this photo names a square, no older sight of it elsewhere holds.
    fn forget_elsewhere(&mut self, own: &CellReading, fresh: &[CellReading], at: u64) {
        let Sight::Square { home, .. } = &own.sight else { return };
        if self.cells[self.grid.index(own.cell)].reading != *own {
            return; // something newer is known here
        }
        for other in fresh.iter().filter(|other| other.cell != own.cell && !tells(&other.sight)) {
            let seen = &mut self.cells[self.grid.index(other.cell)];
            let same = matches!(&seen.reading.sight, Sight::Square { home: there, .. } if there == home);
            if same && seen.at < at {
                *seen = Seen { reading: other.clone(), at, white: false };
            }
        }
    }

    /// Drops photos that no cell comes from any more, except the newest, and gives that one's new number.
    fn tidy(&mut self, newest: usize) -> usize {
        let shown = |seen: &Seen| self.photos.get(seen.reading.photo).map(|reading| reading.photo);
        let mut used: BTreeSet<usize> =
            self.cells.iter().filter(|seen| seen.at > 0).filter_map(shown).collect();
        used.insert(newest);
        let place = |old: usize| used.iter().position(|photo| *photo == old).unwrap_or(0);
        let kept: Vec<usize> =
            (0..self.photos.len()).filter(|index| used.contains(&self.photos[*index].photo)).collect();
        for seen in &mut self.cells {
            seen.reading.photo = kept.iter().position(|old| *old == seen.reading.photo).unwrap_or(0);
        }
        let reading = |index: &usize| {
            let old = self.photos.get(*index)?;
            Some(PhotoReading { photo: place(old.photo), ..old.clone() })
        };
        self.photos = kept.iter().filter_map(reading).collect();
        self.origins = used.iter().filter_map(|photo| self.origins.get(*photo).cloned()).collect();
        place(newest)
    }

    /// Cells whose squares nobody has drawn on yet.
    #[must_use]
    pub fn white(&self) -> Vec<Cell> {
        self.cells.iter().filter(|seen| seen.white).map(|seen| seen.reading.cell).collect()
    }

    /// The wall for the judge. Nothing contradicts itself: what is older has given way.
    #[must_use]
    pub fn reading(&self) -> WallReading {
        let cells: Vec<CellReading> = self.cells.iter().map(|seen| seen.reading.clone()).collect();
        let newest = self.photos.last().map(|newest| newest.photo);
        let parts = self.photos.iter().filter(|part| Some(part.photo) == newest);
        let apart = Apart::together(parts.map(|part| &part.apart), &cells);
        WallReading { photos: self.photos.clone(), cells, contradictions: Vec::new(), apart }
    }

    /// The wall as a check has told it; `None` where that check is of another wall. Without its times, as if all had been seen
    /// at `now`.
    #[must_use]
    pub fn from_report(report: &Report, times: Option<&Times>, grid: &Grid, now: u64) -> Option<Self> {
        if report.cells.len() != grid.count() {
            return None;
        }
        let mut known = Self::nothing(grid);
        let times = times
            .filter(|times| times.seen.len() == grid.count() && times.origins.len() == report.photos.len());
        for (place, told) in report.cells.iter().enumerate() {
            let cell = grid.cell(&told.label)?;
            if grid.index(cell) != place {
                return None;
            }
            let sight = sight(report, place, grid)?;
            let at = if sight == Sight::Unseen {
                0
            } else {
                times.map_or(now, |times| times.seen[place].min(now))
            };
            let certainty = told.certainty;
            let white = report.white.contains(&told.label);
            let photo = told.photo.min(report.photos.len().saturating_sub(1));
            known.cells[place] =
                Seen { reading: CellReading { cell, sight, certainty, corners: None, photo }, at, white };
        }
        known.photos = report
            .photos
            .iter()
            .zip(0..)
            .map(|(own, photo)| PhotoReading {
                photo,
                ..told_photo(report, own.width, own.height, own.codes_read)
            })
            .collect();
        known.count = times.map_or(report.photos.len(), |times| times.photos);
        known.origins = times.map_or_else(|| told_origins(report), |times| times.origins.clone());
        let fits = |been: &Vec<Option<usize>>| {
            been.len() == grid.count() && been.iter().flatten().all(|place| *place < grid.count())
        };
        if let Some(been) = times.map(|times| &times.been).filter(|been| fits(been)) {
            known.been.clone_from(been);
        }
        known.remember();
        Some(known)
    }
}

/// What adding a photo did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Added {
    /// The photo's number in [`Known::reading`].
    pub photo: usize,
    /// For each cell whether this photo shows it, and none shows it later.
    pub newest: Vec<bool>,
    /// For each cell whether what is known of it now comes from this photo.
    pub taken: Vec<bool>,
}

fn unseen(cell: Cell) -> CellReading {
    CellReading { cell, sight: Sight::Unseen, certainty: 0.0, corners: None, photo: 0 }
}

/// Whether a sight says what hangs there, or that nothing does.
fn tells(sight: &Sight) -> bool {
    !matches!(sight, Sight::Unread | Sight::Unseen)
}

/// Whether what a photo taken at `at` shows of a cell takes the place of what is known.
fn replaces(seen: &Seen, own: &CellReading, at: u64) -> bool {
    let named = |sight: &Sight| matches!(sight, Sight::Square { .. } | Sight::Stranger { .. });
    let near = seen.at.abs_diff(at) <= RECENT_S;
    match (&seen.reading.sight, &own.sight) {
        (_, Sight::Unseen) => false,
        _ if seen.at == 0 => true,
        (old, Sight::Unread) if named(old) && near => false,
        // where the squares of a photo end, the wall may go on elsewhere
        (old, _) if *old != Sight::Unseen && near && own.is_beyond() => false,
        (Sight::Unread, new) if named(new) && near => true,
        _ => at >= seen.at,
    }
}

/// What a report's cell says was seen; `None` where it names a square that the wall does not have.
fn sight(report: &Report, place: usize, grid: &Grid) -> Option<Sight> {
    use crate::judge::State;
    let told = report.cells.get(place)?;
    let turn = Turn::from_quarters(told.turn_degrees / 90);
    Some(match (told.state, &told.found) {
        (State::Right | State::Wrong | State::Turned, Some(found)) => {
            Sight::Square { home: grid.cell(found)?, turn }
        }
        (State::Right | State::Wrong | State::Turned, None) => {
            let stranger = report.strangers.iter().find(|stranger| stranger.cell == told.label);
            Sight::Stranger { text: stranger.map(|stranger| stranger.text.clone()).unwrap_or_default(), turn }
        }
        (State::Empty, _) => Sight::Empty,
        (State::Unread, _) => Sight::Unread,
        (State::Unseen | State::Reserve | State::Free, _) => Sight::Unseen,
    })
}

/// Where photos are from, as far as a report alone tells.
fn told_origins(report: &Report) -> Vec<Origin> {
    let origin =
        |number| Origin { number, taken: report.taken.clone().filter(|_| number == 1), made: report.made };
    (1..=report.photos.len()).map(origin).collect()
}

/// A photo of which only its report is left. Nothing is drawn with its camera.
fn told_photo(report: &Report, width: usize, height: usize, codes_read: usize) -> PhotoReading {
    use crate::frame::float;
    PhotoReading {
        photo: 0,
        width,
        height,
        codes_read,
        camera: Camera {
            wall_to_straight: Map::scale_then_shift(1.0, 0.0, 0.0),
            lens: Lens::straight(float(width), float(height)),
        },
        mirrored: false,
        px_per_module: report.wall.photo_px_per_module,
        worst_shift_mm: report.wall.worst_shift_mm,
        cells: Vec::new(),
        apart: Apart::default(),
    }
}

/// Photos that show what a test says, of a wall of one row.
#[cfg(test)]
pub(super) mod made {
    use super::*;

    pub fn photo(sights: &[Sight]) -> PhotoReading {
        let cells = (0..).zip(sights).map(|(column, sight)| CellReading {
            sight: sight.clone(),
            certainty: 0.95,
            ..unseen(Cell { row: 0, column })
        });
        PhotoReading {
            photo: 0,
            width: 100,
            height: 100,
            codes_read: 0,
            camera: Camera {
                wall_to_straight: Map::scale_then_shift(1.0, 0.0, 0.0),
                lens: Lens::straight(100.0, 100.0),
            },
            mirrored: false,
            px_per_module: 2.0,
            worst_shift_mm: 0.0,
            cells: cells.collect(),
            apart: Apart::default(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const GRID: Grid = Grid::usual(4, 1);
    const NOON: u64 = 1_800_000_000;

    fn square(column: usize) -> Sight {
        Sight::Square { home: Cell { row: 0, column }, turn: Turn::None }
    }

    fn photo(sights: [Sight; 4]) -> Vec<PhotoReading> {
        vec![made::photo(&sights)]
    }

    fn sights(known: &Known) -> Vec<Sight> {
        known.reading().cells.into_iter().map(|cell| cell.sight).collect()
    }

    use Sight::{Empty, Unread, Unseen};

    #[test]
    fn a_white_square_is_white_until_a_photo_shows_it_drawn() {
        let mut known = Known::nothing(&GRID);
        let [a, b] = [0, 1].map(|column| Cell { row: 0, column });
        let both = || photo([square(0), square(1), Empty, Unseen]);
        known.add(both(), &[a, b], Origin::default(), NOON);
        assert_eq!(known.white(), [a, b]);
        known.add(photo([Unseen, square(1), Empty, Unseen]), &[], Origin::default(), NOON + 60);
        assert_eq!(known.white(), [a]);
        known.add(photo([Unread, square(1), Empty, Unseen]), &[], Origin::default(), NOON + 90);
        assert_eq!(known.white(), [a], "what cannot be read says nothing");
    }

    #[test]
    fn a_bare_wall_beyond_the_squares_of_a_photo_takes_no_square_away() {
        let mut known = Known::nothing(&GRID);
        known.add(photo([square(0), square(1), square(2), square(3)]), &[], Origin::default(), NOON);
        let mut part = photo([square(0), square(1), Empty, Empty]);
        part[0].cells[2].certainty = 0.6;
        known.add(part, &[], Origin::default(), NOON + 60);
        assert_eq!(sights(&known), [square(0), square(1), square(2), Empty]);
    }

    #[test]
    fn an_unseen_or_unread_cell_takes_nothing_away() {
        let mut known = Known::nothing(&GRID);
        known.add(photo([square(0), square(1), Empty, Unseen]), &[], Origin::default(), NOON);
        known.add(photo([Unseen, Unread, Unread, Unread]), &[], Origin::default(), NOON + 60);
        assert_eq!(sights(&known), [square(0), square(1), Unread, Unread]);
        known.add(photo([Unread, Unread, Unread, Unread]), &[], Origin::default(), NOON + RECENT_S + 120);
        assert_eq!(sights(&known), [Unread, Unread, Unread, Unread], "after a while nobody knows any more");
    }

    #[test]
    fn a_square_that_moved_is_not_believed_at_its_old_cell() {
        let mut known = Known::nothing(&GRID);
        known.add(photo([square(1), square(0), square(2), Empty]), &[], Origin::default(), NOON);
        known.add(photo([Unread, square(1), Unseen, square(2)]), &[], Origin::default(), NOON + 60);
        assert_eq!(sights(&known), [Unread, square(1), Unseen, square(2)]);
    }

    #[test]
    fn two_copies_that_one_photo_shows_stay_two() {
        let mut known = Known::nothing(&GRID);
        known.add(photo([square(0), square(0), Empty, Empty]), &[], Origin::default(), NOON);
        assert_eq!(sights(&known)[..2], [square(0), square(0)]);
    }

    #[test]
    fn an_older_photo_that_comes_late_fills_gaps_only() {
        let mut known = Known::nothing(&GRID);
        known.add(photo([square(0), Empty, Unread, Unseen]), &[], Origin::default(), NOON);
        let added =
            known.add(photo([square(3), square(1), square(2), square(3)]), &[], Origin::default(), NOON - 60);
        assert_eq!(sights(&known), [square(0), Empty, square(2), square(3)]);
        assert_eq!(added.newest, [false, false, false, true]);
    }

    #[test]
    fn photos_that_no_cell_comes_from_are_dropped_and_numbers_go_on() {
        let mut known = Known::nothing(&GRID);
        for minute in 0..50 {
            let added = known.add(
                photo([square(0), square(1), Empty, Empty]),
                &[],
                Origin::default(),
                NOON + minute * 60,
            );
            assert_eq!(added.photo + 1, known.reading().photo_count());
        }
        assert_eq!((known.reading().photos.len(), known.origins()[0].number, known.count()), (1, 50, 50));
    }

    #[test]
    fn only_what_is_now_known_from_a_photo_is_taken_from_it() {
        let mut known = Known::nothing(&GRID);
        known.add(photo([square(0), square(1), Empty, Unseen]), &[], Origin::default(), NOON);
        let added = known.add(photo([Unread, square(1), Unseen, Unread]), &[], Origin::default(), NOON + 60);
        assert_eq!(
            added.taken,
            [false, true, false, true],
            "A is cut by the edge: what it showed before stays"
        );
    }

    #[test]
    fn a_square_that_fell_off_is_noticed_and_so_is_its_return() {
        let mut known = Known::nothing(&GRID);
        known.add(photo([square(0), square(1), square(3), Empty]), &[], Origin::default(), NOON);
        assert_eq!(known.fallen(), [0_usize; 0]);
        known.add(photo([Empty, square(1), square(2), Unread]), &[], Origin::default(), NOON + 60);
        assert_eq!(sights(&known), [Empty, square(1), square(2), Unread], "an empty place wins at once");
        assert_eq!(known.fallen(), [0, 3]);
        known.add(photo([Unseen, Unread, Unread, square(3)]), &[], Origin::default(), NOON + 120);
        assert_eq!(known.fallen(), [0], "what cannot be read may hang there still");
        known.add(photo([square(0), Unseen, Unseen, Unseen]), &[], Origin::default(), NOON + 180);
        assert_eq!(known.fallen(), [0_usize; 0]);
    }

    fn any_sight() -> impl Strategy<Value = Sight> {
        prop_oneof![(0_usize..4).prop_map(square), Just(Empty), Just(Unread), Just(Unseen)]
    }

    proptest! {
        #[test]
        fn what_the_newest_photo_surely_shows_is_what_is_known(
            photos in proptest::collection::vec((proptest::array::uniform4(any_sight()), 0_u64..4_000), 1..8),
        ) {
            let mut known = Known::nothing(&GRID);
            for (sights, after) in &photos {
                known.add(photo(sights.clone()), &[], Origin::default(), NOON + after);
            }
            let last = photos.iter().rev().max_by_key(|(_, after)| *after).unwrap();
            let first_of_equals = photos.iter().filter(|(_, after)| after == &last.1).count() == 1;
            for (place, sight) in last.0.iter().enumerate().filter(|(_, sight)| first_of_equals && tells(sight)) {
                prop_assert_eq!(&sights(&known)[place], sight);
            }
            let reading = known.reading();
            prop_assert!(reading.cells.iter().all(|cell| cell.photo < reading.photos.len()));
        }
    }
}
