//! Walls in parts, as `rehearse` makes them: boards beside each other, gaps by chance, all in one photo, at less than a pixel a module to a
//! little more than one. With the parts listed and without: every readable square is named, nothing is said that is not so.

use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::settings::CodeSettings;
use everysquare::plan::{Grid, Printed, Settings, Tag, boards};
use everysquare::read::{Reader, Sight, together};
use everysquare::rehearse::{Cards, Faults, Options, State, make};

/// How much of some walls was read.
#[derive(Debug, Default)]
struct Score {
    readable: usize,
    named: usize,
    /// Named otherwise than what hangs there.
    wrong: usize,
    /// Said to be empty though a square hangs there.
    falsely_empty: usize,
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
        assert_eq!((score.wrong, score.falsely_empty), (0, 0), "{score:?}");
        assert!(score.named * 100 >= score.readable * 99 && score.readable > 200, "{score:?}");
    }
}
