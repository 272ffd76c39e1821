//! `everysquare new FOLDER --picture FILE`: makes an event folder: the picture in a few pencil colours, a picture of it with the
//! grid on it, and event.toml.

mod explain;

use std::io::{self, IsTerminal};
use std::ops::RangeInclusive;
use std::path::{Path, PathBuf};

use super::crowd::CrowdArgs;
use super::mistyped::{Refused, within};
use super::{CliError, Console, Outcome, progress};
use crate::display::{PREVIEW, preview};
use crate::picture::warnings::colour_warnings;
use crate::picture::{
    Fit, Opened, Pencils, Picture, PictureFacts, Proposal, Reduced, Wanted, Wish, propose, reduce,
};
use crate::plan::crowd::{self, Given, Range};
use crate::plan::lengths::both;
use crate::plan::settings::{
    ACROSS, COLOURS, Choice, CodeSettings, DEFAULT_PIECE_MM, DEFAULT_SQUARE_MM, EveningSettings, Flip, Join,
    Language, MOST_CELLS, NAME_LENGTH, PIECE_MM, Paper, Pencil, SQUARE_MM, Units,
};
use crate::plan::{Folder, Grid, RowsFrom, Settings, Tag};
use crate::words::{Sentence, Words};

use explain::{Made, explain};

/// What is typed after `everysquare new`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// Where the event folder is made.
    #[arg(value_name = "FOLDER")]
    folder: PathBuf,
    /// The picture.
    #[arg(long, value_name = "FILE")]
    picture: PathBuf,
    /// Squares side by side.
    #[arg(long, value_name = "N")]
    columns: Option<usize>,
    /// Squares one above the other.
    #[arg(long, value_name = "N")]
    rows: Option<usize>,
    /// About how many squares.
    #[arg(long, value_name = "N", conflicts_with_all = ["columns", "rows"])]
    squares: Option<usize>,
    /// The crowd and the time.
    #[command(flatten)]
    crowd: CrowdArgs,
    /// What the evening is called.
    #[arg(long, value_name = "NAME", value_parser = name)]
    name: Option<String>,
    /// The tag in every code.
    #[arg(long, value_name = "TAG", value_parser = tag)]
    tag: Option<Tag>,
    /// A border in reserve.
    #[arg(long)]
    border: bool,
    /// Pencil colours.
    #[arg(long = "colors", alias = "colours", value_name = "N", value_parser = colours)]
    colours: Option<usize>,
    /// A file with the organiser's own pencils.
    #[arg(long, value_name = "FILE", conflicts_with_all = ["colours", "black_and_white"])]
    pencils: Option<PathBuf>,
    /// Greys only.
    #[arg(long)]
    black_and_white: bool,
    /// What happens to a picture of another shape than the grid's.
    #[arg(long, value_name = "HOW", value_parser = choice::<Fit>, default_value = "crop")]
    fit: Fit,
    /// Side of a square.
    #[arg(long, value_name = "MM", value_parser = |text: &str| millimetres(text, &SQUARE_MM))]
    square_mm: Option<f64>,
    /// Side of a piece.
    #[arg(long, value_name = "MM", value_parser = |text: &str| millimetres(text, &PIECE_MM))]
    piece_mm: Option<f64>,
    /// The paper in the printer.
    #[arg(long, value_name = "PAPER", value_parser = choice::<Paper>)]
    paper: Option<Paper>,
    /// How the printer turns the paper over.
    #[arg(long, value_name = "HOW", value_parser = choice::<Flip>, default_value = "long-edge")]
    flip: Flip,
    /// Whether a piece and its square are one strip.
    #[arg(long, value_name = "HOW", value_parser = choice::<Join>, default_value = "apart")]
    join: Join,
    /// What people read.
    #[arg(long, value_name = "UNIT", value_parser = choice::<Units>)]
    units: Option<Units>,
}

impl Args {
    /// Whether the picture itself decides how many pencils it is drawn with.
    fn chooses_itself(&self) -> bool {
        self.colours.is_none() && self.pencils.is_none() && !self.black_and_white
    }
}

/// Pieces of each level, the easiest first, of a picture that is not known yet. Common practice, no source.
const USUAL_MIX: [usize; 4] = [10, 35, 40, 15];
/// Number of greys where none is asked for: paper, two greys that can be told apart in pencil, black.
const USUAL_GREYS: usize = 4;
/// Sides of squares and pieces where people read millimetres.
const METRIC_SQUARE_MM: f64 = 125.0;
const METRIC_PIECE_MM: f64 = 25.0;

/// Makes the folder: the pictures first, event.toml last, so that there is no event without a picture.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    refuse_taken(&folder)?;
    let pencils = pencils(args)?;
    let bytes = Folder::read_picture(&args.picture)?;
    let Opened { picture, text_in_our_font } =
        Opened::from(&bytes).map_err(|error| CliError::about(&args.picture, error))?;
    let evening = evening_of(args, console)?;
    let square_mm = sides(args, console.words()).square_mm;
    let suits = suiting(&evening, square_mm);
    let wish = Wish { columns: args.columns, rows: args.rows, cells: args.squares, suits };
    let proposal = propose(picture.size(), square_mm, wish)?;
    let mut settings = settings(args, &folder, &proposal, console.words())?;
    settings.evening = evening;
    settings.language = console.language();
    let of_picture = settings.grid.within_border();
    let wanted = Wanted { grid: &of_picture, fit: args.fit, pencils };
    let wait = progress::wait(console, "new-working");
    let reduced = reduce(picture, &wanted, console.words());
    wait.finish_and_clear();
    let mut reduced = reduced.map_err(|error| CliError::about(&args.picture, error))?;
    if args.border {
        reduced.few = reduced.few.with_border(&of_picture, reduced.piece_px);
    }
    settings.picture.pencils.clone_from(&reduced.few.pencils);
    settings.picture.colours = reduced.few.pencils.len();
    let written = settings.to_toml();
    Settings::from_toml(&written)?; // what is written is read again by every other command
    write(&folder, &settings, &reduced, &written)?;
    let facts = PictureFacts::of(&reduced.few, &settings.grid, &settings.levels);
    let warnings = colour_warnings(&facts);
    let (settings, proposal, reduced) = (&settings, &proposal, &reduced);
    let is_known = settings.evening.visitors.is_some();
    let told = is_known.then(|| crowd::evening(settings, &facts.work()).told(console.words()));
    explain(&Made { args, settings, proposal, reduced, warnings, text_in_our_font, told }, console);
    Ok(Outcome::Right)
}

/// What is known of the evening: what was typed, or what is asked for where a person watches and has decided nothing yet.
fn evening_of(args: &Args, console: &mut Console) -> Result<EveningSettings, CliError> {
    let mut evening = EveningSettings::default();
    let is_open =
        args.crowd.is_empty() && args.columns.is_none() && args.rows.is_none() && args.squares.is_none();
    if is_open && console.screen().terminal && io::stdin().is_terminal() {
        CrowdArgs::asked(console, &mut io::stdin().lock()).override_in(&mut evening);
    } else {
        args.crowd.check(&evening)?;
        args.crowd.override_in(&mut evening);
    }
    Ok(evening)
}

/// How many pieces suit the visitors, where it is known how many come; of the usual mix of levels, as long as the picture's own is not
/// known.
fn suiting(evening: &EveningSettings, square_mm: f64) -> Option<Range> {
    let visitors = evening.visitors?;
    let grid = Grid {
        columns: visitors.most(),
        rows: 1,
        square_mm,
        piece_mm: square_mm,
        rows_from: RowsFrom::default(),
        border: false,
    };
    let mut settings = Settings::new(String::new(), Tag::from_number(0), grid);
    settings.evening = evening.clone();
    let (scene, _) = crowd::scene(&settings, &Given::of(&settings), USUAL_MIX);
    Some(crowd::range(&scene))
}

/// Which pencils were asked for.
fn pencils(args: &Args) -> Result<Pencils, CliError> {
    let Some(path) = &args.pencils else {
        return Ok(match (args.black_and_white, args.colours) {
            (true, greys) => Pencils::Greys(greys.unwrap_or(USUAL_GREYS)),
            (false, Some(colours)) => Pencils::Chosen(colours),
            (false, None) => Pencils::Fitting,
        });
    };
    let text = Folder::read_settings(path)?;
    let own = Pencil::list_from_toml(&text).map_err(|error| CliError::about(path, error))?;
    Ok(Pencils::Own(own))
}

/// Writes all files, or leaves nothing behind.
fn write(folder: &Folder, settings: &Settings, reduced: &Reduced, event: &str) -> Result<(), CliError> {
    let picture = reduced.few.to_picture().to_png()?;
    let shown = Picture { pixels: preview(&reduced.few, &settings.grid, &reduced.before) }.to_png()?;
    let is_new = !folder.root().exists();
    let (file, preview) = (folder.picture_file(settings), folder.root().join(PREVIEW));
    let written = Folder::write_whole(&file, &picture)
        .and_then(|()| Folder::write_whole(&preview, &shown))
        .and_then(|()| Folder::write_whole(&folder.event_toml(), event.as_bytes()));
    if written.is_err() {
        // Whatever fails here, the first error is the one to tell. A folder that is not empty stays.
        let _ = std::fs::remove_file(&file);
        let _ = std::fs::remove_file(&preview);
        if is_new {
            let _ = std::fs::remove_dir(folder.root());
        }
    }
    Ok(written?)
}

fn refuse_taken(folder: &Folder) -> Result<(), CliError> {
    let root = folder.root();
    if root.exists() && !root.is_dir() {
        return Err(CliError::new(Sentence::new("error-new-file").with("path", root)));
    }
    if folder.event_toml().exists() {
        return Err(CliError::new(Sentence::new("error-new-taken").with("path", root)));
    }
    Ok(())
}

fn settings(args: &Args, folder: &Folder, proposal: &Proposal, words: &Words) -> Result<Settings, CliError> {
    let Sides { square_mm, piece_mm } = sides(args, words);
    if piece_mm > square_mm {
        let length = |mm| both(mm, units(args, words), words);
        return Err(CliError::new(
            Sentence::new("error-new-piece")
                .with("piece", length(piece_mm))
                .with("square", length(square_mm)),
        ));
    }
    let grid = Grid {
        columns: proposal.columns,
        rows: proposal.rows,
        square_mm,
        piece_mm,
        rows_from: RowsFrom::default(),
        border: false,
    };
    let grid = if args.border { grid.with_border() } else { grid };
    let across = *ACROSS.end();
    if grid.columns > across || grid.rows > across || grid.count() > MOST_CELLS {
        let asked = Sentence::new("error-new-border").with("columns", grid.columns).with("rows", grid.rows);
        return Err(CliError::new(asked.with("squares", MOST_CELLS)));
    }
    let name = args.name.clone().unwrap_or_else(|| name_of(&args.folder, words));
    let mut settings =
        Settings::new(name, args.tag.unwrap_or_else(|| Tag::from_number(rand::random())), grid);
    settings.picture.file = free_name(folder.root());
    settings.code = CodeSettings::usual(&grid);
    settings.print.paper = paper(args, words);
    settings.print.flip = args.flip;
    settings.print.join = args.join;
    settings.print.units = units(args, words);
    Ok(settings)
}

/// Sides of squares and pieces.
struct Sides {
    square_mm: f64,
    piece_mm: f64,
}

/// As asked, or five inches and one; where people read millimetres, the nearest that are whole: then every length they work out is.
fn sides(args: &Args, words: &Words) -> Sides {
    let usual = match units(args, words) {
        Units::Inch => Sides { square_mm: DEFAULT_SQUARE_MM, piece_mm: DEFAULT_PIECE_MM },
        Units::Mm => Sides { square_mm: METRIC_SQUARE_MM, piece_mm: METRIC_PIECE_MM },
    };
    Sides {
        square_mm: args.square_mm.unwrap_or(usual.square_mm),
        piece_mm: args.piece_mm.unwrap_or(usual.piece_mm),
    }
}

/// The paper: as asked, or as is usual where the language is spoken.
fn paper(args: &Args, words: &Words) -> Paper {
    let usual = if words.language() == Language::BritishEnglish.word() { Paper::A4 } else { Paper::Letter };
    args.paper.unwrap_or(usual)
}

/// What people read: as asked, or as is usual where such paper is.
fn units(args: &Args, words: &Words) -> Units {
    args.units.unwrap_or(match paper(args, words) {
        Paper::Letter | Paper::Tabloid => Units::Inch,
        Paper::A4 | Paper::A3 => Units::Mm,
    })
}

/// `picture.png`, or with a number where the folder has one already.
fn free_name(folder: &Path) -> String {
    let numbered = (2..1000).map(|number| format!("picture-{number}.png"));
    let names = std::iter::once("picture.png".to_owned()).chain(numbered);
    names
        .into_iter()
        .find(|name| !folder.join(name).exists())
        .unwrap_or_else(|| "picture-of-event.png".to_owned())
}

/// A name for the evening out of its folder's: `open-evening` becomes `Open evening`.
fn name_of(folder: &Path, words: &Words) -> String {
    let own = folder.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let spaced: String =
        own.chars().map(|c| if "-_".contains(c) || c.is_control() { ' ' } else { c }).collect();
    let mut letters = spaced.trim().chars().take(NAME_LENGTH);
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).take(NAME_LENGTH).collect(),
        None => words.say("new-usual-name", &[]),
    }
}

fn name(text: &str) -> Result<String, Refused> {
    let fits =
        !text.trim().is_empty() && text.chars().count() <= NAME_LENGTH && !text.chars().any(char::is_control);
    let allowed = || Sentence::new("typed-name").with("most", NAME_LENGTH.to_string());
    fits.then(|| text.to_owned()).ok_or_else(|| Refused::new(allowed()))
}

fn tag(text: &str) -> Result<Tag, Refused> {
    let allowed = || Sentence::new("typed-tag").with("letters", crate::plan::code::TAG_ALPHABET);
    Tag::new(text).ok_or_else(|| Refused::new(allowed()))
}

fn colours(text: &str) -> Result<usize, Refused> {
    within("typed-whole-from", text, &COLOURS)
}

fn millimetres(text: &str, range: &RangeInclusive<f64>) -> Result<f64, Refused> {
    within("typed-millimetres-from", text, range)
}

fn choice<T: Choice>(text: &str) -> Result<T, Refused> {
    T::named(text).ok_or_else(Refused::choice::<T>)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folders_name_makes_a_name() {
        assert_eq!(name_of(Path::new("/x/open-evening"), &Words::english()), "Open evening");
        assert_eq!(name_of(Path::new("élan_vital/"), &Words::english()), "Élan vital");
        assert_eq!(name_of(Path::new("."), &Words::english()), "Library night");
    }
}
