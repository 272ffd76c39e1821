//! `everysquare new FOLDER --picture FILE`: makes an event folder: the picture in a few pencil colours, a picture of it with the
//! grid on it, and event.toml. With several pictures it makes only a page that shows them side by side.

mod explain;
mod several;
mod trial;

use std::io::{self, IsTerminal};
use std::ops::RangeInclusive;
use std::path::{Path, PathBuf};

use super::crowd::{CrowdArgs, question};
use super::mistyped::{Refused, within};
use super::{CliError, Console, Outcome};
use crate::display::{PREVIEW, preview};
use crate::frame::Point;
use crate::picture::area::LEAST_PERCENT;
use crate::picture::from_paper::Corners;
use crate::picture::warnings::colour_warnings;
use crate::picture::{Area, Fit, Pencils, Picture, PictureFacts, Proposal, Reduced};
use crate::plan::crowd::{self, Given, Range};
use crate::plan::lengths::both;
use crate::plan::settings::{
    ACROSS, COLOURS, Choice, CodeSettings, DEFAULT_PIECE_MM, DEFAULT_SQUARE_MM, EveningSettings, Flip, Join,
    Language, MOST_CELLS, NAME_LENGTH, PIECE_MM, Paper, Pencil, SQUARE_MM, Units,
};
use crate::plan::{Folder, Grid, KeptFree, RowsFrom, Settings, Tag};
use crate::words::{Sentence, Words};

use explain::{Made, explain};
use trial::{Asked, Source, Trial};

/// What is typed after `everysquare new`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// Where the event folder is made.
    #[arg(value_name = "FOLDER")]
    folder: PathBuf,
    /// The picture, or several to choose from.
    #[arg(long = "picture", value_name = "FILE", required = true)]
    pictures: Vec<PathBuf>,
    /// The part of the picture that is drawn.
    #[arg(long, value_name = "PART", value_parser = area)]
    area: Option<Area>,
    /// The picture is a photo of a drawing on paper.
    #[arg(long)]
    from_paper: bool,
    /// Where the paper's corners are in the photo.
    #[arg(long, value_name = "POINTS", requires = "from_paper", value_parser = corners)]
    corners: Option<Corners>,
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
    /// Whose picture it is.
    #[arg(long, value_name = "TEXT", value_parser = name)]
    credit: Option<String>,
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

/// Makes the folder: the pictures first, event.toml last, so that there is no event without a picture. With several pictures, shows them.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    refuse_taken(&folder)?;
    match args.pictures.as_slice() {
        [picture] => make(args, &folder, picture, console),
        pictures => several::show(args, &folder, pictures, console),
    }
}

/// Makes the event of one picture.
fn make(args: &Args, folder: &Folder, picture: &Path, console: &mut Console) -> Result<Outcome, CliError> {
    let pencils = pencils(args)?;
    let source = Source::open(args, picture)?;
    let asked = Asked { args, pencils, evening: evening_of(args, console)? };
    let trial = Trial::of(&asked, &source, args.area.unwrap_or(Area::WHOLE), console)?;
    let closer = trial.closer(&asked, &source, console);
    let Trial { mut settings, proposal, grid, mut reduced, mut facts, .. } = trial;
    if args.border {
        reduced.few = reduced.few.with_border(&grid, reduced.piece_px);
        facts = PictureFacts::of(&reduced.few, &settings.grid, &settings.levels);
    }
    if settings.picture.credit.is_none() && asks(args, console) {
        settings.picture.credit = question(console, &mut io::stdin().lock(), "new-ask-credit", name);
    }
    let written = settings.to_toml();
    Settings::from_toml(&written)?; // what is written is read again by every other command
    let drawing = args.from_paper.then(|| free_name(folder.root(), STRAIGHTENED));
    write(folder, &settings, &reduced, drawing.as_deref().map(|file| (file, &source.picture)), &written)?;
    let warnings = colour_warnings(&facts);
    let is_known = settings.evening.visitors.is_some();
    let told = is_known.then(|| crowd::evening(&settings, &facts.work()).told(console.words()));
    let (settings, proposal, reduced) = (&settings, &proposal, &reduced);
    let text_in_our_font = source.text_in_our_font;
    let made = Made { args, settings, proposal, reduced, warnings, text_in_our_font, drawing, closer, told };
    explain(&made, console);
    Ok(Outcome::Right)
}

/// What is known of the evening: what was typed, or what is asked for where a person watches and has decided nothing yet.
fn evening_of(args: &Args, console: &mut Console) -> Result<EveningSettings, CliError> {
    let mut evening = EveningSettings::default();
    if asks(args, console) {
        CrowdArgs::asked(console, &mut io::stdin().lock()).override_in(&mut evening);
    } else {
        args.crowd.check(&evening)?;
        args.crowd.override_in(&mut evening);
    }
    Ok(evening)
}

/// Whether a person watches who has decided nothing yet.
fn asks(args: &Args, console: &Console) -> bool {
    let is_open =
        args.crowd.is_empty() && args.columns.is_none() && args.rows.is_none() && args.squares.is_none();
    is_open && console.screen().terminal && io::stdin().is_terminal()
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
        kept_free: KeptFree::NONE,
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

/// Names of the files, without `.png`, of the picture and of a photographed drawing that was straightened and its light evened.
const PICTURE: &str = "picture";
const STRAIGHTENED: &str = "drawing";

/// Writes all files, or leaves nothing behind.
fn write(
    folder: &Folder,
    settings: &Settings,
    reduced: &Reduced,
    drawing: Option<(&str, &Picture)>,
    event: &str,
) -> Result<(), CliError> {
    let shown = Picture { pixels: preview(&reduced.few, &settings.grid, &reduced.before) };
    let mut files = vec![
        (folder.picture_file(settings), reduced.few.to_picture().to_png()?),
        (folder.root().join(PREVIEW), shown.to_png()?),
    ];
    if let Some((file, picture)) = drawing {
        files.push((folder.root().join(file), picture.to_png()?));
    }
    files.push((folder.event_toml(), event.as_bytes().to_vec()));
    let is_new = !folder.root().exists();
    let written = files.iter().try_for_each(|(path, bytes)| Folder::write_whole(path, bytes));
    if written.is_err() {
        // Whatever fails here, the first error is the one to tell. A folder that is not empty stays.
        files.iter().for_each(|(path, _)| {
            let _ = std::fs::remove_file(path);
        });
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
        kept_free: KeptFree::NONE,
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
    settings.picture.file = free_name(folder.root(), PICTURE);
    settings.picture.credit.clone_from(&args.credit);
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

/// A name such as `picture.png`, or with a number where the folder has one already.
fn free_name(folder: &Path, stem: &str) -> String {
    let numbered = (2..1000).map(|number| format!("{stem}-{number}.png"));
    let names = std::iter::once(format!("{stem}.png")).chain(numbered);
    names
        .into_iter()
        .find(|name| !folder.join(name).exists())
        .unwrap_or_else(|| format!("{stem}-of-event.png"))
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

/// Numbers between commas or spaces.
fn numbers(text: &str) -> Option<Vec<f64>> {
    let parts = text.split([',', ' ']).filter(|part| !part.is_empty());
    parts
        .map(|part| part.trim_end_matches('%').parse().ok().filter(|number: &f64| number.is_finite()))
        .collect()
}

fn area(text: &str) -> Result<Area, Refused> {
    let area = numbers(text).and_then(|own| <[f64; 4]>::try_from(own).ok()).and_then(Area::of_percent);
    area.ok_or_else(|| Refused::new(Sentence::new("typed-area").with("least", LEAST_PERCENT.to_string())))
}

fn corners(text: &str) -> Result<Corners, Refused> {
    let all = numbers(text).filter(|own| own.len() == 8);
    let points = all.map(|own| [0, 1, 2, 3].map(|i| Point::new(own[2 * i], own[2 * i + 1])));
    points.ok_or_else(|| Refused::new(Sentence::new("typed-corners")))
}

fn millimetres(text: &str, range: &RangeInclusive<f64>) -> Result<f64, Refused> {
    within("typed-millimetres-from", text, range)
}

fn choice<T: Choice>(text: &str) -> Result<T, Refused> {
    T::named(&text.to_lowercase()).ok_or_else(Refused::choice::<T>)
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
