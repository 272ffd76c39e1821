//! Walls in parts, as `rehearse` makes them: boards beside each other, gaps by chance, all in one photo, at less than a pixel a module to a
//! little more than one, in one plane and at angles. With the parts listed and without: every readable square is named, nothing is said that
//! is not so.

use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::settings::CodeSettings;
use everysquare::plan::{Grid, Printed, Settings, Tag, boards};
use everysquare::read::{Reader, Sight, together};
use everysquare::rehearse::{BoardOptions, Cards, Faults, Options, State, make};

/// How much of some walls was read.
#[derive(Debug, Default)]
struct Score {
    readable: usize,
    named: usize,
    /// Named otherwise than what hangs there.
    wrong: usize,
    /// Said to be empty though a square hangs there.
    falsely_empty: usize,
    /// Said to have moved between two photos, of which there is one.
    moved: usize,
}

/// A wall of boards that take so many columns each.
fn printed(seed: u64, widths: &[usize], rows: usize) -> Printed {
    let grid = Grid::usual(widths.iter().sum(), rows);
    let mut settings = Settings::new(format!("Boards {seed}"), Tag::from_number(seed * 7919), grid);
    settings.code = CodeSettings { module_mm: 0.9, ..CodeSettings::usual(&grid) };
    settings.parts = boards::parts(&grid, widths);
    settings.printed().unwrap()
}

fn read(printed: &Printed, photo: &Photo, truth: &everysquare::rehearse::Truth, score: &mut Score) {
    let walls = Reader::new(printed).read_parts(photo).unwrap();
    let reading = together(vec![walls]);
    score.moved += reading.contradictions.len();
    for (cell, own) in truth.cells.iter().zip(&reading.cells) {
        assert_eq!(cell.label, printed.grid.label(own.cell));
        let found = match own.sight {
            Sight::Square { home, .. } => Some(printed.grid.label(home)),
            _ => None,
        };
        score.readable += usize::from(cell.readable);
        score.named += usize::from(cell.readable && found.is_some());
        score.wrong += usize::from(found.is_some() && found != cell.hung);
        score.falsely_empty += usize::from(own.sight == Sight::Empty && cell.state != State::Empty);
    }
}

#[test]
fn boards_in_one_photo_are_read_whatever_their_lattices() {
    let picture = Picture { pixels: image::RgbImage::from_pixel(60, 40, image::Rgb([150, 190, 220])) };
    let [mut listed, mut unlisted] = [Score::default(), Score::default()];
    for (seed, widths, rows, width) in [
        (301, [5, 4, 3].as_slice(), 6, 2600),
        (302, &[6, 4], 7, 2300),
        (303, &[3, 3, 3, 3], 5, 2800),
        (304, &[7, 5], 6, 2600),
    ] {
        let printed = printed(seed, widths, rows);
        let mut options = Options::varied(seed);
        (options.width, options.height) = (width, width * 3 / 4);
        options.cards = [Cards::All, Cards::Corners, Cards::None][usize::try_from(seed % 3).unwrap()];
        // without a card the first board's lattice has to be found by itself
        options.min_px_per_module = Some(if options.cards == Cards::None { 1.3 } else { 0.95 });
        options.faults = Faults { swaps: 2, turns: 1, missing: 2, ..Faults::default() };
        let made = make(&printed, &picture, &options).unwrap();
        let photo = Photo::open(&made.jpeg).unwrap();
        read(&printed, &photo, &made.truth, &mut listed);
        let whole = Printed { parts: Vec::new(), ..printed };
        read(&whole, &photo, &made.truth, &mut unlisted);
        println!("{seed}: {:?} px, {listed:?}, {unlisted:?}", made.truth.px_per_module.median);
    }
    for score in [listed, unlisted] {
        assert_eq!((score.wrong, score.falsely_empty, score.moved), (0, 0, 0), "{score:?}");
        assert!(score.named * 100 >= score.readable * 99 && score.readable > 200, "{score:?}");
    }
}

/// Least size of a module, in px, of squares on a board at an angle that are counted as readable: below, the lattice of one without cards of
/// its own is not always found.
const LEAST_PX: f64 = 1.2;

/// A made wall whose boards stand at angles.
struct Angled<'a> {
    seed: u64,
    widths: &'a [usize],
    rows: usize,
    boards: BoardOptions,
    cards: Cards,
    px_per_module: f64,
}

impl Angled<'_> {
    /// Reads it with the parts listed and without.
    fn read(&self, scores: &mut [Score; 2]) {
        let picture = Picture { pixels: image::RgbImage::from_pixel(60, 40, image::Rgb([150, 190, 220])) };
        let mut printed = printed(self.seed, self.widths, self.rows);
        for (place, part) in printed.parts.iter_mut().enumerate() {
            part.bottom_mm = Some([700.0, 1000.0, 400.0, 850.0, 550.0, 900.0][place]);
        }
        let mut options = Options::varied(self.seed);
        (options.boards, options.cards) = (self.boards, self.cards);
        (options.width, options.height) = (3200, 2400);
        options.min_px_per_module = Some(self.px_per_module);
        options.faults = Faults { swaps: 2, turns: 1, missing: 2, ..Faults::default() };
        let mut made = make(&printed, &picture, &options).unwrap();
        for cell in &mut made.truth.cells {
            cell.readable &= cell.px_per_module.is_some_and(|px| px >= LEAST_PX);
        }
        let photo = Photo::open(&made.jpeg).unwrap();
        read(&printed, &photo, &made.truth, &mut scores[0]);
        let whole = Printed { parts: Vec::new(), ..printed };
        read(&whole, &photo, &made.truth, &mut scores[1]);
        println!("{}: {:?} px, {scores:?}", self.seed, made.truth.px_per_module.median);
    }
}

/// Boards that stand at angles of up to 40° to either side, with up to two metres between them, as much as 300 mm higher or lower.
#[test]
fn boards_at_angles_are_read_each_with_a_camera_of_its_own() {
    let mut scores = [Score::default(), Score::default()];
    for (seed, widths, rows, angle_degrees, gap_mm) in [
        (401, [5, 4].as_slice(), 6, 40.0, [0.0, 300.0]),
        (402, &[4, 3, 4], 6, 25.0, [300.0, 800.0]),
        (403, &[6, 5], 6, 40.0, [1200.0, 2000.0]),
        (404, &[3, 3, 3, 3], 5, 15.0, [0.0, 500.0]),
        (405, &[3, 3, 3, 3, 3], 5, 30.0, [200.0, 600.0]),
        (406, &[3, 3, 3, 3, 3, 3], 4, 10.0, [200.0, 500.0]),
        // the lattice that is read first seems to be the whole wall, if no parts are listed
        (537, &[4, 3, 4, 3], 4, 20.0, [0.0, 300.0]),
    ] {
        let cards = [Cards::All, Cards::Corners, Cards::None][usize::try_from(seed % 3).unwrap()];
        let boards = BoardOptions { gap_mm, angle_degrees };
        Angled { seed, widths, rows, boards, cards, px_per_module: if seed > 500 { 1.3 } else { 1.4 } }
            .read(&mut scores);
    }
    for score in scores {
        assert_eq!((score.wrong, score.falsely_empty, score.moved), (0, 0, 0), "{score:?}");
        assert!(score.named * 100 >= score.readable * 99 && score.readable > 250, "{score:?}");
    }
}
