//! A picture tried: its grid, its pencils, its pieces, before anything is written.

use std::path::{Path, PathBuf};

use super::{Args, CliError, pencils, settings, sides, suiting};
use crate::cli::{Console, progress};
use crate::frame::float;
use crate::picture::closer::{self, unsuited};
use crate::picture::from_paper::from_paper;
use crate::picture::{
    Area, FewColours, Fit, Opened, Picture, PictureFacts, Proposal, Reduced, Wanted, Wish, propose, reduce,
};
use crate::plan::settings::{EveningSettings, LevelSettings};
use crate::plan::{Folder, Grid, Level, Settings};
use crate::words::Words;

/// A picture as it came.
pub(super) struct Source {
    pub path: PathBuf,
    picture: Picture,
    pub text_in_our_font: bool,
    /// The drawing that a photo of paper showed.
    pub sheet: Option<Picture>,
}

impl Source {
    /// Opens a file; with `--from-paper`, takes the drawing out of the photo.
    pub fn open(args: &Args, path: &Path) -> Result<Self, CliError> {
        let bytes = Folder::read_picture(path)?;
        let Opened { picture, text_in_our_font } =
            Opened::from(&bytes).map_err(|error| CliError::about(path, error))?;
        let mut source = Self { path: path.to_owned(), picture, text_in_our_font, sheet: None };
        if args.from_paper {
            let found = from_paper(&source.picture.pixels, args.corners);
            source.picture = found.map_err(|error| CliError::about(path, error))?.picture;
            source.sheet = Some(source.picture.clone());
        }
        Ok(source)
    }
}

/// What a picture makes.
pub(super) struct Trial {
    pub settings: Settings,
    pub proposal: Proposal,
    pub reduced: Reduced,
    /// Of the whole wall, with a border in reserve where one is asked for.
    pub facts: PictureFacts,
    pub own: Own,
}

/// The picture's own part of the wall, without a border.
pub(super) struct Own {
    pub few: FewColours,
    pub grid: Grid,
    pub facts: PictureFacts,
    /// The part of the file's picture that the grid shows; `None` where something was added around it.
    area: Option<Area>,
}

/// Tries a picture, or the part of it that `area` names.
pub(super) fn of(
    args: &Args,
    source: &Source,
    area: Option<Area>,
    evening: &EveningSettings,
    console: &Console,
) -> Result<Trial, CliError> {
    let area = area.or(args.area).unwrap_or(Area::WHOLE);
    let picture = source.picture.area(area);
    let size = picture.size();
    let square_mm = sides(args, console.words()).square_mm;
    let suits = suiting(evening, square_mm);
    let wish = Wish { columns: args.columns, rows: args.rows, cells: args.squares, suits };
    let proposal = propose(size, square_mm, wish)?;
    let mut settings = settings(args, &Folder::at(&args.folder), &proposal, console.words())?;
    settings.evening = evening.clone();
    settings.language = console.language();
    let grid = settings.grid.within_border();
    let crop = picture.crop(&grid);
    let wanted = Wanted { grid: &grid, fit: args.fit, pencils: pencils(args)? };
    let wait = progress::wait(console, "new-working");
    let reduced = reduce(picture, &wanted, console.words());
    wait.finish_and_clear();
    let mut reduced = reduced.map_err(|error| CliError::about(&source.path, error))?;
    let few = reduced.few.clone();
    if args.border {
        reduced.few = reduced.few.with_border(&grid, reduced.piece_px);
    }
    settings.picture.pencils.clone_from(&reduced.few.pencils);
    settings.picture.colours = reduced.few.pencils.len();
    let facts = PictureFacts::of(&reduced.few, &settings.grid, &settings.levels);
    let own = Own {
        facts: if args.border { PictureFacts::of(&few, &grid, &settings.levels) } else { facts.clone() },
        area: (args.fit == Fit::Crop).then(|| area.within(Area::of_crop(&crop, size))),
        few,
        grid,
    };
    Ok(Trial { settings, proposal, reduced, facts, own })
}

/// A part of the picture that gives more people something to draw.
pub(super) struct Closer {
    pub area: Area,
    /// Numbers of plain and of hard pieces without and with it.
    pub before: [usize; 2],
    pub now: [usize; 2],
    pub pieces: usize,
}

/// Looks for such a part, and tries it as it would be typed. One that cannot be drawn is none.
pub(super) fn closer(
    args: &Args,
    source: &Source,
    own: &Own,
    evening: &EveningSettings,
    console: &Console,
) -> Option<Closer> {
    let part = closer::closer(&own.few, &own.grid, &own.facts, &LevelSettings::default())?;
    let area = Area::of_percent(own.area?.within(part).percent().map(float))?;
    let tried = of(args, source, Some(area), evening, console).ok()?.own;
    let counts = |facts: &PictureFacts| [Level::Plain, Level::Hard].map(|level| facts.count(level));
    let share = |own: &Own| float(unsuited(&own.facts)) / float(own.grid.count().max(1));
    (share(&tried) < share(own)).then(|| Closer {
        area,
        before: counts(&own.facts),
        now: counts(&tried.facts),
        pieces: tried.grid.count(),
    })
}

impl Closer {
    /// Which part it is, and what changes.
    pub fn said(&self, words: &Words) -> String {
        let [left, top, width, height] = self.area.percent();
        let counts = [
            ("area", format!("{left},{top},{width},{height}").into()),
            ("plain", self.before[0].into()),
            ("hard", self.before[1].into()),
            ("then-plain", self.now[0].into()),
            ("then-hard", self.now[1].into()),
            ("pieces", self.pieces.into()),
        ];
        words.say("new-closer", &counts)
    }
}
