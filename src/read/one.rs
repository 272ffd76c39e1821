//! Reading one photo: the stages in their order.
//!
//! In: an upright photo, what was printed, and the book of its codes. Out: a [`PhotoReading`] with one sight for each cell, or a
//! [`ReadError`] that says why there is none. Starts from the cards where three agree, else from the lattice that squares make,
//! else from a single card; what hangs apart from the lattice is told by `apart`, what is bare by `behind`.

use std::collections::{BTreeMap, BTreeSet};

use super::behind::Behind;
use super::book::{Book, Match, Whose};
use super::camera::Anchor;
use super::doubt::Doubt;
use super::finders::Finder;
use super::hunt::{Bounds, Hunt, Known, centre};
use super::identify::{Found, INK, Identifier};
use super::lattice::{self, Member};
use super::lens::Lens;
use super::locate::locate;
use super::place::{Layout, Site, card_corners, median, site_of};
use super::pose::Pose;
use super::reading::{Apart, BEYOND_CERTAINTY, Camera, CellReading, PhotoReading, ReadError, Sight};
use super::resolve::{Placing, Vote, resolve};
use super::seek::Sought;
use super::{apart, faint, finders, group, start, stranger};
use crate::frame::{Point, float};
use crate::photo::{Luma, Photo};
use crate::plan::{Cell, Grid, Printed};

/// Minimum number of agreeing cards that fix the wall's place without a square.
const ENOUGH_CARDS: usize = 3;
/// Votes that a card in its place adds to a placing of the lattice.
const CARD_VOTES: f64 = 6.0;

/// The codes of the event in a photo, by the place where they hang.
#[derive(Clone, Debug)]
pub struct Wall {
    /// Wall to photo.
    pub camera: Camera,
    /// Squares, by place.
    pub squares: BTreeMap<Site, Sought>,
    /// Codes without a name, by place.
    pub nameless: BTreeMap<Site, Sought>,
    /// Number of cards that were read.
    pub cards: usize,
    /// Places where the camera is not known well enough to say what hangs there.
    pub doubtful: BTreeSet<Site>,
    /// What hangs apart.
    pub apart: Apart,
}

/// Reads a photo of an event's wall; `book` holds the codes of `printed`.
///
/// # Errors
/// A [`ReadError`] where no code of the event is seen, or not enough to say which cell is which.
pub fn photo(photo: &Photo, printed: &Printed, book: &Book) -> Result<PhotoReading, ReadError> {
    let wall = codes(&photo.luma, printed, book)?;
    let layout = Layout::of(printed);
    let read: Vec<(Cell, Pose)> =
        wall.squares.iter().filter_map(|(site, seen)| Some((cell_at(*site)?, seen.found.pose))).collect();
    let behind = Behind::new(&photo.colour, &wall.camera, printed.grid, &read, wall.cards > 0);
    let cells: Vec<CellReading> = printed
        .grid
        .cells()
        .map(|cell| cell_reading(photo, printed, &layout, &wall, &behind, cell))
        .collect();
    Ok(PhotoReading {
        width: photo.luma.width,
        height: photo.luma.height,
        codes_read: wall.cards + wall.squares.len(),
        camera: wall.camera,
        mirrored: mirrored(&wall.camera, &printed.grid),
        px_per_module: median(wall.squares.values().map(|seen| seen.found.pose.px_per_module()).collect()),
        worst_shift_mm: wall
            .squares
            .iter()
            .map(|(site, seen)| shift_mm(&wall.camera, &layout, *site, seen))
            .fold(0.0, f64::max),
        cells,
        apart: wall.apart,
    })
}

/// Whether a camera shows the wall as in a mirror: its right and its down are then seen anticlockwise.
fn mirrored(camera: &Camera, grid: &Grid) -> bool {
    let size = grid.size();
    let [right, down] = camera.wall_to_straight.steps_at(Point::new(size.x / 2.0, size.y / 2.0));
    right.cross(down) < 0.0
}

fn cell_reading(
    photo: &Photo,
    printed: &Printed,
    layout: &Layout,
    wall: &Wall,
    behind: &Behind<'_>,
    cell: Cell,
) -> CellReading {
    let site = site_of(cell);
    let reading = |sight, certainty, corners| CellReading { cell, sight, certainty, corners, photo: 0 };
    if let Some(seen) = wall.squares.get(&site)
        && let Some(home) = seen.found.home()
    {
        let certainty = seen.found.matched.certainty(printed.squares.len() + printed.cards.len());
        return reading(
            Sight::Square { home, turn: seen.turn },
            certainty,
            Some(layout.paper_corners(&seen.found.pose)),
        );
    }
    if let Some(seen) = wall.nameless.get(&site) {
        let text = stranger::text(&photo.luma, &seen.found.pose);
        if let Some(text) = text.filter(|text| printed.squares.iter().all(|s| s.text != *text)) {
            let corners = layout.paper_corners(&seen.found.pose);
            return reading(Sight::Stranger { text, turn: seen.turn }, STRANGER_CERTAINTY, Some(corners));
        }
    }
    if wall.apart.cells.binary_search(&cell).is_ok() {
        return reading(Sight::Unseen, DOUBTFUL_CERTAINTY, None);
    }
    if wall.doubtful.contains(&site) {
        return reading(Sight::Unread, DOUBTFUL_CERTAINTY, None);
    }
    let (sight, certainty) = match behind.judge(cell) {
        // a wall without a square shows nothing that is half a code
        (Sight::Empty, _)
            if wall.nameless.get(&site).is_some_and(|seen| half_a_code(&seen.found.matched)) =>
        {
            (Sight::Unread, 0.8)
        }
        judged => judged,
    };
    let corners = printed.grid.corners(cell).map(|p| wall.camera.wall_to_photo(p));
    let seen = sight != Sight::Unseen && corners.iter().all(|c| c.is_finite());
    let beyond = sight == Sight::Empty && wall.cards < ENOUGH_CARDS && wall.ends_before(site);
    reading(sight, if beyond { certainty.min(BEYOND_CERTAINTY) } else { certainty }, seen.then_some(corners))
}

/// Whether what was compared is a code of which a part shows.
fn half_a_code(matched: &Match) -> bool {
    matched.explained() > HALF_A_CODE
        && matched.weight.is_some_and(|weight| INK.contains(&weight.ink))
        && matched.evidence() > HALF_EVIDENCE
}

/// Minimum share that the best code explains of half a code, on made walls.
const HALF_A_CODE: f32 = 0.48;
/// Minimum evidence for the best code where half of it shows; bare walls have less.
const HALF_EVIDENCE: f32 = 1.0;
/// Certainty reported for a cell whose position in the photo is uncertain.
const DOUBTFUL_CERTAINTY: f64 = 0.3;
/// Certainty of a code that was decoded: error correction leaves little doubt.
const STRANGER_CERTAINTY: f64 = 0.99;

fn cell_at(site: Site) -> Option<Cell> {
    Some(Cell { row: usize::try_from(site.row).ok()?, column: usize::try_from(site.column).ok()? })
}

/// Distance of a square's middle from that of its cell, in mm.
fn shift_mm(camera: &Camera, layout: &Layout, site: Site, seen: &Sought) -> f64 {
    let middle = camera.photo_to_wall(layout.paper_middle(&seen.found.pose));
    middle.map_or(0.0, |middle| middle.distance(centre(site, layout.side)).value())
}

/// Finds the wall of an event in a photo and the squares on it.
///
/// # Errors
/// A [`ReadError`] where no code of the event is seen, or not enough to say which cell is which.
pub fn codes(luma: &Luma, printed: &Printed, book: &Book) -> Result<Wall, ReadError> {
    let identifier = Identifier::new(book);
    let patterns = finders::find(luma);
    let crossed = group::group(luma, &patterns, &identifier);
    let small =
        |found: &[Found]| median(named(found).map(|code| code.pose.px_per_module()).collect()) < SMALL_PX;
    let first = wall(luma, printed, &identifier, crossed.clone());
    if !small(&crossed) || first.as_ref().is_ok_and(|wall| !wall.thin(luma, printed)) {
        return first;
    }
    let places = faint::find(luma, &identifier);
    let faint = group::looked_at(luma, (&places, faint::MOST_NAMELESS), &identifier);
    if named(&faint).next().is_some() {
        let second = wall(luma, printed, &identifier, group::together(crossed.clone(), faint));
        let read = |wall: &Result<Wall, ReadError>| wall.as_ref().map_or(0, |wall| wall.squares.len());
        if read(&second) > read(&first) {
            return second;
        }
    }
    // why nothing is known is worked out last: it takes longest where there is least to see
    if named(&crossed).next().is_none() {
        Err(nothing_known(luma, printed, &patterns, &crossed))
    } else {
        first
    }
}

/// Codes of the event.
fn named(found: &[Found]) -> impl Iterator<Item = &Found> {
    found.iter().filter(|code| code.whose.is_some())
}

/// Maximum size of a module, in pixels, at which finder patterns may be missed by the scan.
const SMALL_PX: f64 = 2.2;
/// Minimum share of the cells in sight in which squares were read; below it there may be more to see.
const THIN: f64 = 0.5;

impl Wall {
    /// Whether a place lies beyond the outermost squares that were read.
    fn ends_before(&self, site: Site) -> bool {
        let beyond = |of: fn(&Site) -> i64| {
            let all = || self.squares.keys().map(of);
            all().max().is_none_or(|last| of(&site) > last)
                || all().min().is_none_or(|first| of(&site) < first)
        };
        beyond(|site| site.row) || beyond(|site| site.column)
    }

    /// Whether so little was read, with no card to say where all squares hang, that it may be the reader's fault.
    fn thin(&self, luma: &Luma, printed: &Printed) -> bool {
        let in_sight = printed
            .grid
            .cells()
            .filter(|cell| luma.holds(self.camera.wall_to_photo(printed.grid.centre(*cell)), 0.0));
        self.cards < ENOUGH_CARDS && float(self.squares.len()) < THIN * float(in_sight.count())
    }
}

/// The wall that codes belong to, and the rest of its squares.
fn wall(
    luma: &Luma,
    printed: &Printed,
    identifier: &Identifier<'_>,
    mut codes: Vec<Found>,
) -> Result<Wall, ReadError> {
    if named(&codes).next().is_none() {
        return Err(ReadError::NoCodes);
    }
    one_sided(&mut codes);
    let (cards, loose) = split(printed, &codes);
    let hunt = Hunt { luma, identifier, layout: Layout::of(printed), loose: &loose };
    let known = from_cards(&hunt, printed, &cards, false)
        .map_or_else(|| from_squares(&hunt, printed, &cards), Ok)
        .or_else(|error| from_cards(&hunt, printed, &cards, true).ok_or(error))?;
    let bounds = wall_bounds(printed);
    let mut known = hunt.finish(known, &bounds);
    let apart = apart::take_out(&hunt, &mut known, &bounds, printed);
    let doubt = Doubt::of(&known.camera, &hunt.anchors(&known));
    let doubtful = bounds.sites().filter(|site| !hunt.sure_of(&doubt, *site)).collect();
    let Known { camera, cards, squares, nameless, .. } = known;
    Ok(Wall { camera, squares, nameless, cards: cards.len(), doubtful, apart })
}

/// A photo shows all its codes as they are or all as in a mirror: the fewer are dropped.
fn one_sided(codes: &mut Vec<Found>) {
    let named = codes.iter().filter(|c| c.whose.is_some());
    let (mirrored, all) = named.fold((0, 0), |(m, n), c| (m + usize::from(c.pose.mirrored()), n + 1));
    codes.retain(|c| c.pose.mirrored() == (mirrored * 2 > all));
}

/// Cards with their places, and the codes that are not cards.
fn split(printed: &Printed, codes: &[Found]) -> (Vec<Anchor>, Vec<Found>) {
    let (mut cards, mut loose) = (Vec::new(), Vec::new());
    for code in codes {
        match code.whose {
            Some(Whose::Card(at)) => {
                let wall = card_corners(&printed.cards[at]);
                cards.push(Anchor { wall, photo: code.pose.corners() });
            }
            _ => loose.push(*code),
        }
    }
    (cards, loose)
}

fn wall_bounds(printed: &Printed) -> Bounds {
    let last = |n: usize| i64::try_from(n).unwrap_or(i64::MAX) - 1;
    let last = Site { row: last(printed.grid.rows), column: last(printed.grid.columns) };
    Bounds { first: Site { row: 0, column: 0 }, last }
}

/// Starts from the cards. `None` where too few agree; with `few`, one is enough.
fn from_cards(hunt: &Hunt<'_>, printed: &Printed, cards: &[Anchor], few: bool) -> Option<Known> {
    let (camera, agreeing) = start::consensus(cards, lens(hunt.luma))?;
    if agreeing.len() < ENOUGH_CARDS && !few {
        return None;
    }
    let known = Known { cards: agreeing, ..Known::new(camera) };
    Some(hunt.go_on(known, |_| wall_bounds(printed)))
}

fn lens(luma: &Luma) -> Lens {
    Lens::straight(float(luma.width), float(luma.height))
}

/// Starts from the lattice that the squares make, and finds out which cell is which afterwards.
fn from_squares(hunt: &Hunt<'_>, printed: &Printed, cards: &[Anchor]) -> Result<Known, ReadError> {
    let members = lattice::largest(&hunt.layout, hunt.loose);
    let anchor = |m: &Member| Anchor {
        wall: hunt.layout.code_corners(m.site, m.turn),
        photo: hunt.loose[m.code].pose.corners(),
    };
    let anchors: Vec<Anchor> = members.iter().map(anchor).collect();
    let (camera, start) = start::consensus(&anchors, lens(hunt.luma)).ok_or(ReadError::NoCodes)?;
    let none = Known { start, ..Known::new(camera) };
    let sites: BTreeSet<Site> = members.iter().map(|m| m.site).collect();
    let bounds = |known: &Known| floating_bounds(printed, &sites, known);
    let mut floating = hunt.go_on(none, bounds);
    let mut placing = place(printed, &floating, cards);
    if placing.is_none() {
        floating = hunt.go_on_harder(floating, bounds);
        placing = place(printed, &floating, cards);
    }
    let placing = placing.ok_or(ReadError::CannotPlace)?;
    Ok(settle(hunt, printed, &floating, placing, cards))
}

/// One ring of cells around what is known, as long as that is no larger than the wall may be.
fn floating_bounds(printed: &Printed, sites: &BTreeSet<Site>, known: &Known) -> Bounds {
    let most = i64::try_from(printed.grid.columns.max(printed.grid.rows)).unwrap_or(i64::MAX);
    let all = || sites.iter().chain(known.squares.keys());
    let span = |of: fn(&Site) -> i64| {
        let (low, high) = (all().map(of).min().unwrap_or(0), all().map(of).max().unwrap_or(0));
        let ring = i64::from(high - low + 1 < most);
        (low - ring, high + ring)
    };
    let ((top, bottom), (left, right)) = (span(|s| s.row), span(|s| s.column));
    Bounds { first: Site { row: top, column: left }, last: Site { row: bottom, column: right } }
}

/// Which cell is which.
fn place(printed: &Printed, floating: &Known, cards: &[Anchor]) -> Option<Placing> {
    let votes: Vec<Vote> = floating
        .squares
        .iter()
        .map(|(site, seen)| Vote { site: *site, turn: seen.turn, home: seen.found.home() })
        .collect();
    let side = printed.grid.square_mm;
    resolve(&printed.grid, &votes, |placing| {
        let to_lattice = placing.wall_to_lattice(side);
        let in_place = |card: &&Anchor| {
            let wall = card.wall.map(|p| to_lattice.apply(p));
            floating.camera.shift(&Anchor { wall, ..**card }) < 0.4 * side
        };
        CARD_VOTES * float(cards.iter().filter(in_place).count())
    })
}

/// Moves all that is known from the floating lattice to the wall, and hunts on there.
fn settle(hunt: &Hunt<'_>, printed: &Printed, floating: &Known, placing: Placing, cards: &[Anchor]) -> Known {
    let to_lattice = placing.wall_to_lattice(printed.grid.square_mm);
    let wall_to_straight = to_lattice.then(&floating.camera.wall_to_straight);
    let camera = Camera { wall_to_straight, ..floating.camera };
    let moved = |all: &BTreeMap<Site, Sought>| {
        let turned = |seen: &Sought| Sought { turn: placing.turn(seen.turn), ..*seen };
        all.iter().map(|(site, seen)| (placing.site(*site), turned(seen))).collect()
    };
    let cards = cards.iter().filter(|c| camera.shift(c) < 25.0).copied().collect();
    let (squares, nameless) = (moved(&floating.squares), moved(&floating.nameless));
    let known = Known { cards, squares, nameless, ..Known::new(camera) };
    hunt.go_on(known, |_| wall_bounds(printed))
}

/// Why nothing of this event is seen: nothing at all, or another event's codes.
fn nothing_known(luma: &Luma, printed: &Printed, patterns: &[Finder], codes: &[Found]) -> ReadError {
    let foreign = |texts: &BTreeSet<String>| -> BTreeSet<String> {
        let tags = texts.iter().filter_map(|text| stranger::tag(text).map(str::to_owned));
        tags.filter(|tag| *tag != printed.tag).collect()
    };
    let mut texts: BTreeSet<String> =
        codes.iter().filter_map(|code| stranger::text(luma, &code.pose)).collect();
    let mut tags = foreign(&texts);
    if tags.is_empty() {
        // codes with more modules than an event's are told from nothing at all
        texts.extend(locate(luma, patterns).into_iter().filter_map(|code| code.text));
        tags = foreign(&texts);
    }
    if !tags.is_empty() {
        return ReadError::Foreign(tags.into_iter().collect());
    }
    texts.retain(|text| stranger::tag(text) != Some(printed.tag.as_str()));
    if !texts.is_empty() {
        let short = |text: String| text.chars().take(LONGEST_TEXT).collect();
        return ReadError::Other(texts.into_iter().take(MOST_TEXTS).map(short).collect());
    }
    let brightness: f64 = luma.grey.iter().step_by(97).map(|g| f64::from(*g)).sum();
    let mean = brightness / float(luma.grey.len().div_ceil(97).max(1));
    if mean < 28.0 { ReadError::TooDark } else { ReadError::NoCodes }
}

/// Maximum number of foreign texts that are reported, and the length to which each is cut: enough to know a poster by.
const MOST_TEXTS: usize = 3;
const LONGEST_TEXT: usize = 40;
