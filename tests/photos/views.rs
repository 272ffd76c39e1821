//! Walls as nobody would choose to photograph them: from far aside, half of them outside, of a single row, through a wide lens, in front of a
//! crowd. What is in sight is named, and nothing else.
//!
//! The photos are made by `rehearse`; they have no cards unless it is said.

use everysquare::frame::{float, floor_index};
use everysquare::photo::{Luma, Photo};
use everysquare::picture::Picture;
use everysquare::plan::{Grid, Printed, Settings, Tag};
use everysquare::read::{Reader, Sight};
use everysquare::rehearse::{Backing, Cards, Faults, Options, make};

/// Pixels that a module has at least, where the wall is farthest.
const PX: f64 = 1.6;

fn printed(columns: usize, rows: usize) -> Printed {
    let grid = Grid::usual(columns, rows);
    Settings::new("Views".to_owned(), Tag::new("V3W").unwrap(), grid).printed().unwrap()
}

/// Makes the wall, reads it, and tells how many codes are to be seen, how many were named, and how many wrongly.
fn read_as(what: &str, size: (usize, usize), with: impl Fn(&mut Options)) -> [usize; 3] {
    read_part(what, size, 1.0, with)
}

/// The same of the photo's left part.
fn read_part(
    what: &str,
    (columns, rows): (usize, usize),
    part: f64,
    with: impl Fn(&mut Options),
) -> [usize; 3] {
    let printed = printed(columns, rows);
    let mut options = Options::varied(5);
    (options.width, options.height) = (640, 480);
    (options.min_px_per_module, options.cards, options.backing) = (Some(PX), Cards::None, Backing::Grey);
    options.faults = Faults { swaps: 1, turns: 1, missing: 1, ..Faults::default() };
    with(&mut options);
    let picture = Picture::open(include_bytes!("../../samples/harbour-evening/picture.png")).unwrap();
    let made = make(&printed, &picture, &options).unwrap();
    let whole = Photo::open(&made.jpeg).unwrap();
    let width = floor_index(part * float(whole.luma.width));
    let colour =
        image::imageops::crop_imm(&whole.colour, 0, 0, u32::try_from(width).unwrap(), whole.colour.height());
    let colour = colour.to_image();
    let photo = Photo { luma: Luma::of(&colour), colour, ..whole };
    let reading = Reader::new(&printed).read(&photo).unwrap();
    let (mut readable, mut named, mut wrong) = (0, 0, 0);
    for (truth, cell) in made.truth.cells.iter().zip(&reading.cells) {
        let told = match &cell.sight {
            Sight::Square { home, turn } => Some((printed.grid.label(*home), turn.degrees())),
            _ => None,
        };
        let right = told == truth.hung.clone().map(|hung| (hung, truth.hung_turn));
        let inside = truth.code_px.iter().flatten().all(|[x, _]| *x < float(width));
        readable += usize::from(truth.readable && inside);
        named += usize::from(truth.readable && inside && told.is_some() && right);
        wrong += usize::from(told.is_some() && !right);
    }
    println!("{what}: {named} of {readable} named, {wrong} wrongly");
    [readable, named, wrong]
}

/// At most so many readable codes are missed.
fn assert_read([readable, named, wrong]: [usize; 3], missed: usize) {
    assert!(wrong == 0 && named + missed >= readable && named > 0, "{named} of {readable}, {wrong} wrongly");
}

#[test]
fn a_wall_from_sixty_degrees_aside() {
    for yaw in [-60.0, 60.0] {
        let read = read_as("60 degrees aside", (4, 3), |o| {
            (o.pose.yaw_degrees, o.pose.fill, o.cards) = (yaw, 0.7, Cards::Corners);
        });
        assert_read(read, 1);
    }
}

#[test]
fn walls_of_a_single_row_and_of_a_single_column() {
    assert_read(read_as("a single row", (12, 1), |_| ()), 0);
    assert_read(read_as("a single column", (1, 7), |_| ()), 0);
    assert_read(read_as("two squares", (2, 1), |o| o.faults = Faults::default()), 0);
}

#[test]
fn half_a_wall() {
    let cards = |cards: Cards| move |o: &mut Options| o.cards = cards;
    assert_read(read_part("half a wall", (10, 6), 0.5, cards(Cards::None)), 0);
    assert_read(read_part("half a wall with cards", (10, 6), 0.5, cards(Cards::All)), 0);
    assert_read(read_part("half a wall with corner cards", (10, 6), 0.5, cards(Cards::Corners)), 0);
}

#[test]
fn a_wide_lens_people_and_a_ladder() {
    let wide = |o: &mut Options| (o.pose.view_degrees, o.pose.k1, o.pose.k2) = (95.0, -0.12, 0.02);
    assert_read(read_as("a wide lens", (10, 8), wide), 1);
    let crowd = |o: &mut Options| (o.people, o.ladder) = (3, true);
    assert_read(read_as("people and a ladder", (10, 8), crowd), 1);
}

#[test]
fn squares_far_off_their_places_and_askew() {
    let loose = |o: &mut Options| (o.hanging.misplacement_mm, o.hanging.askew_degrees) = (8.0, 3.0);
    assert_read(read_as("loosely hung", (10, 8), loose), 1);
}
