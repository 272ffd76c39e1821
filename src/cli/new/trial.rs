//! A picture tried: its grid, its pencils, its pieces, before anything is written.

use std::path::{Path, PathBuf};

use super::{Args, CliError, settings, sides, suiting};
use crate::cli::{Console, progress};
use crate::frame::float;
use crate::picture::closer::{closer, unsuited};
use crate::picture::from_paper::from_paper;
use crate::picture::{
    Area, Fit, Opened, Pencils, Picture, PictureFacts, Proposal, Reduced, Wanted, Wish, propose, reduce,
};
use crate::plan::settings::EveningSettings;
use crate::plan::{Folder, Grid, Level, Settings};
use crate::words::Words;

/// What was asked for, the same for every picture.
pub(super) struct Asked<'a> {
    pub args: &'a Args,
    pub pencils: Pencils,
    pub evening: EveningSettings,
}

/// A picture as it came; with `--from-paper` the drawing that the photo showed.
pub(super) struct Source {
    pub path: PathBuf,
    pub picture: Picture,
    pub text_in_our_font: bool,
}

impl Source {
    /// Opens a file.
    pub fn open(args: &Args, path: &Path) -> Result<Self, CliError> {
        let bytes = Folder::read_picture(path)?;
        let Opened { mut picture, text_in_our_font } =
            Opened::from(&bytes).map_err(|error| CliError::about(path, error))?;
        if args.from_paper {
            let found = from_paper(&picture.pixels, args.corners);
            picture = found.map_err(|error| CliError::about(path, error))?.picture;
        }
        Ok(Self { path: path.to_owned(), picture, text_in_our_font })
    }
}

/// What a picture makes, without a border in reserve.
pub(super) struct Trial {
    /// Of the whole wall.
    pub settings: Settings,
    pub proposal: Proposal,
    /// Grid of the picture.
    pub grid: Grid,
    pub reduced: Reduced,
    pub facts: PictureFacts,
    /// The part of the file's picture that the grid shows; `None` where something was added around it.
    shown: Option<Area>,
}

impl Trial {
    /// Tries a part of a picture.
    pub fn of(asked: &Asked, source: &Source, area: Area, console: &Console) -> Result<Self, CliError> {
        let Asked { args, pencils, evening } = asked;
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
        let wanted = Wanted { grid: &grid, fit: args.fit, pencils: pencils.clone() };
        let wait = progress::wait(console, "new-working");
        let reduced = reduce(picture, &wanted, console.words());
        wait.finish_and_clear();
        let reduced = reduced.map_err(|error| CliError::about(&source.path, error))?;
        settings.picture.pencils.clone_from(&reduced.few.pencils);
        settings.picture.colours = reduced.few.pencils.len();
        let facts = PictureFacts::of(&reduced.few, &grid, &settings.levels);
        let shown = (args.fit == Fit::Crop).then(|| area.within(Area::of_crop(&crop, size)));
        Ok(Self { settings, proposal, grid, reduced, facts, shown })
    }

    /// Looks for a part of the picture that suits more people, and tries it as it would be typed. One that cannot be drawn is none.
    pub fn closer(&self, asked: &Asked, source: &Source, console: &Console) -> Option<Closer> {
        let part = closer(&self.reduced.few, &self.grid, &self.facts, &self.settings.levels)?;
        let area = Area::of_percent(self.shown?.within(part).percent().map(float))?;
        let tried = Self::of(asked, source, area, console).ok()?;
        let counts = |of: &Self| [Level::Plain, Level::Hard].map(|level| of.facts.count(level));
        let share = |of: &Self| float(unsuited(&of.facts)) / float(of.grid.count().max(1));
        (share(&tried) < share(self)).then(|| Closer {
            area,
            before: counts(self),
            now: counts(&tried),
            pieces: tried.grid.count(),
        })
    }
}

/// A part of the picture that gives more people something to draw.
pub(super) struct Closer {
    pub area: Area,
    /// Numbers of plain and of hard pieces without and with it.
    pub before: [usize; 2],
    pub now: [usize; 2],
    pub pieces: usize,
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
