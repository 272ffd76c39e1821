//! What planning and drawing cost: `tools/bench/run plan`. Each figure is the median of some rounds; the peak of memory is that of all of it.

use everysquare::cli::sample;
use everysquare::picture::{FewColours, Outlines, Picture, PictureFacts};
use everysquare::plan::crowd::{Given, evening, scene};
use everysquare::plan::groups::{Spread, divide, read};
use everysquare::plan::settings::Visitors;
use everysquare::plan::{Grid, Level, Settings, Tag};

use super::Outcome;
use super::table::{Told, timed};

/// How often each is timed.
const ROUNDS: usize = 9;
/// The wall: 108 pieces.
const WALL: (usize, usize) = (12, 9);

/// Times 500 evenings, the whole plan, the curves of the picture and a wall shared out.
pub fn work() -> Outcome<Told> {
    let (columns, rows) = WALL;
    let grid = Grid::usual(columns, rows);
    let mut settings = Settings::new("Bench".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
    settings.evening.visitors = Visitors::new(60, 60);
    settings.evening.seats = Some(24);
    let picture = Picture::open(sample::PICTURE_PNG)?;
    let few = FewColours::chosen(&picture, &settings.picture);
    let facts = PictureFacts::of(&few, &grid, &settings.levels);
    let (levels, minutes) = (
        facts.pieces.iter().map(|piece| piece.level).collect::<Vec<Level>>(),
        settings.evening.minutes_a_piece,
    );
    let pieces = facts.work().pieces;
    let (scene, _) = scene(&settings, &Given::of(&settings), pieces);
    let members = read("3A 26, 3B 24, club 12")?;
    let (played, _) = timed(ROUNDS, || scene.expected());
    let (planned, _) = timed(ROUNDS, || evening(&settings, &facts.work()));
    let (traced, _) = timed(ROUNDS, || Outlines::of(&few));
    let (scattered, _) = timed(ROUNDS, || divide(&grid, &levels, minutes, &members, Spread::Scattered));
    let (blocks, _) = timed(ROUNDS, || divide(&grid, &levels, minutes, &members, Spread::Blocks));
    let seconds = [
        ("500 evenings, 60 visitors, 24 seats", played),
        ("the plan, with helpers and other grids", planned),
        ("the sample's picture in curves", traced),
        ("three groups, scattered", scattered),
        ("three groups, in blocks", blocks),
    ];
    let seconds = seconds.map(|(name, seconds)| (name.to_owned(), seconds));
    Ok(Told::now(
        seconds.into(),
        vec![format!("{columns} x {rows} pieces, {} threads", rayon::current_num_threads())],
    ))
}

/// Prints the figures of a process of its own.
pub fn show() -> Outcome<()> {
    let told = super::table::ask_words(&["plan-work".to_owned()], std::time::Duration::MAX)?;
    told.remarks.iter().for_each(|remark| println!("{remark}, median of {ROUNDS}"));
    for (name, seconds) in &told.seconds {
        println!("{name:42} {:9.1} ms", seconds * 1e3);
    }
    if let Some(peak) = told.peak_mib {
        println!("{:42} {peak:9.0} MiB", "peak of memory");
    }
    Ok(())
}
