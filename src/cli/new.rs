//! `everysquare new FOLDER --picture FILE`: makes an event folder.

use std::ops::RangeInclusive;
use std::path::{Path, PathBuf};

use super::{CliError, Console, Outcome};
use crate::frame::MM_PER_INCH;
use crate::picture::grid::{Cut, Reason};
use crate::picture::{Picture, Proposal, Wish, propose};
use crate::plan::settings::{
    COLOURS, Choice, CodeSettings, DEFAULT_COLOURS, DEFAULT_SQUARE_MM, DEFAULT_TILE_MM, Flip, NAME_LENGTH,
    Paper, SQUARE_MM, TILE_MM, Units,
};
use crate::plan::{Folder, Grid, RowsFrom, Settings, Tag};

/// Pixels along a tile's side below which a visitor sees steps: 60 an inch. Common practice, no source.
const CLEAR_TILE_PX: f64 = 60.0;

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
    /// What the evening is called.
    #[arg(long, value_name = "NAME", value_parser = name)]
    name: Option<String>,
    /// The tag in every code.
    #[arg(long, value_name = "TAG", value_parser = tag)]
    tag: Option<Tag>,
    /// Pencil colours.
    #[arg(long, value_name = "N", value_parser = colours, default_value_t = DEFAULT_COLOURS)]
    colours: usize,
    /// Side of a square.
    #[arg(long, value_name = "MM", value_parser = |text: &str| millimetres(text, &SQUARE_MM), default_value_t = DEFAULT_SQUARE_MM)]
    square_mm: f64,
    /// Side of a tile.
    #[arg(long, value_name = "MM", value_parser = |text: &str| millimetres(text, &TILE_MM), default_value_t = DEFAULT_TILE_MM)]
    tile_mm: f64,
    /// The paper in the printer.
    #[arg(long, value_name = "PAPER", value_parser = choice::<Paper>, default_value = "letter")]
    paper: Paper,
    /// How the printer turns the paper over.
    #[arg(long, value_name = "HOW", value_parser = choice::<Flip>, default_value = "long-edge")]
    flip: Flip,
    /// What people read.
    #[arg(long, value_name = "UNIT", value_parser = choice::<Units>)]
    units: Option<Units>,
}

/// Makes the folder: the picture first, event.toml last, so that there is no event without a picture.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    refuse_taken(&folder)?;
    let bytes = Folder::read_picture(&args.picture)?;
    let picture = Picture::open(&bytes).map_err(|error| CliError::about(&args.picture, &error))?;
    let wish = Wish { columns: args.columns, rows: args.rows, cells: args.squares };
    let proposal = propose(picture.size(), args.square_mm, wish)?;
    let mut settings = settings(args, &folder, &proposal)?;
    settings.language = console.language();
    let written = settings.to_toml();
    Settings::from_toml(&written)?; // what is written is read again by every other command
    write(&folder, &settings, &picture.to_png()?, &written)?;
    explain(args, &settings, &proposal, &picture, console);
    Ok(Outcome::Right)
}

/// Writes both files, or leaves nothing behind.
fn write(folder: &Folder, settings: &Settings, picture: &[u8], event: &str) -> Result<(), CliError> {
    let is_new = !folder.root().exists();
    let file = folder.picture_file(settings);
    let written = Folder::write_whole(&file, picture)
        .and_then(|()| Folder::write_whole(&folder.event_toml(), event.as_bytes()));
    if written.is_err() {
        // Whatever fails here, the first error is the one to tell. A folder that is not empty stays.
        let _ = std::fs::remove_file(&file);
        if is_new {
            let _ = std::fs::remove_dir(folder.root());
        }
    }
    Ok(written?)
}

fn refuse_taken(folder: &Folder) -> Result<(), CliError> {
    let root = folder.root();
    if root.exists() && !root.is_dir() {
        return Err(CliError::new(format!("{} is a file: give the name of a folder", root.display())));
    }
    if folder.event_toml().exists() {
        return Err(CliError::new(format!(
            "{} holds an event already and is left as it is: change its event.toml, or choose another folder",
            root.display()
        )));
    }
    Ok(())
}

fn settings(args: &Args, folder: &Folder, proposal: &Proposal) -> Result<Settings, CliError> {
    if args.tile_mm > args.square_mm {
        let (tile, square) = (args.tile_mm, args.square_mm);
        return Err(CliError::new(format!(
            "a tile of {tile} mm is larger than its square of {square} mm: choose a smaller --tile-mm or a larger --square-mm"
        )));
    }
    let grid = Grid {
        columns: proposal.columns,
        rows: proposal.rows,
        square_mm: args.square_mm,
        tile_mm: args.tile_mm,
        rows_from: RowsFrom::default(),
    };
    let name = args.name.clone().unwrap_or_else(|| name_of(&args.folder));
    let mut settings =
        Settings::new(name, args.tag.unwrap_or_else(|| Tag::from_number(rand::random())), grid);
    settings.picture.file = free_name(folder.root());
    settings.picture.colours = args.colours;
    settings.code = CodeSettings::usual(&grid);
    settings.print.paper = args.paper;
    settings.print.flip = args.flip;
    settings.print.units = args.units.unwrap_or(match args.paper {
        Paper::Letter | Paper::Tabloid => Units::Inch,
        Paper::A4 | Paper::A3 => Units::Mm,
    });
    Ok(settings)
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
fn name_of(folder: &Path) -> String {
    let own = folder.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let spaced: String =
        own.chars().map(|c| if "-_".contains(c) || c.is_control() { ' ' } else { c }).collect();
    let mut letters = spaced.trim().chars().take(NAME_LENGTH);
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).take(NAME_LENGTH).collect(),
        None => "Open evening".to_owned(),
    }
}

/// Says what was chosen, why, and what comes next.
fn explain(args: &Args, settings: &Settings, proposal: &Proposal, picture: &Picture, console: &mut Console) {
    let folder = args.folder.display().to_string();
    let tag = settings.tag.to_string();
    console.say(
        "new-made",
        &[
            ("folder", folder.as_str().into()),
            ("name", settings.name.as_str().into()),
            ("tag", tag.into()),
            ("file", settings.picture.file.as_str().into()),
        ],
    );
    let why = match proposal.reason {
        Reason::Given => "new-grid-given",
        Reason::RowsFollow => "new-grid-rows-follow",
        Reason::ColumnsFollow => "new-grid-columns-follow",
        Reason::NearCount => "new-grid-near-count",
        Reason::FitsBest => "new-grid-fits-best",
    };
    let squares = console.words().say("new-squares", &[("count", proposal.cells().into())]);
    console.say(
        why,
        &[
            ("columns", proposal.columns.into()),
            ("rows", proposal.rows.into()),
            ("squares", squares.into()),
            ("wished", args.squares.unwrap_or(0).into()),
        ],
    );
    let lost = match proposal.cut {
        Cut::Nothing => "new-nothing-lost",
        Cut::Sides => "new-lost-sides",
        Cut::TopAndBottom => "new-lost-top-and-bottom",
    };
    console.say(lost, &[("percent", percent(proposal.lost).into())]);
    let units = settings.print.units;
    console.say(
        "new-wall",
        &[
            ("width", length(proposal.width_mm, units).into()),
            ("height", length(proposal.height_mm, units).into()),
        ],
    );
    let tile_px = picture.crop(&settings.grid).tile.value();
    if tile_px < CLEAR_TILE_PX {
        console.say("new-coarse", &[("pixels", format!("{tile_px:.0}").into())]);
    }
    console.say("new-next", &[("folder", folder.into())]);
}

/// A part as a percentage, never rounded down to nothing.
fn percent(part: f64) -> String {
    match part * 100.0 {
        small if small < 1.0 => "less than 1".to_owned(),
        more => format!("{more:.0}"),
    }
}

/// A length on the wall, as people say it.
fn length(mm: f64, units: Units) -> String {
    match units {
        Units::Mm => format!("{:.2} m", mm / 1000.0),
        Units::Inch => {
            let inches = (mm / MM_PER_INCH).round();
            format!("{} ft {} in", (inches / 12.0).floor(), inches.rem_euclid(12.0))
        }
    }
}

fn name(text: &str) -> Result<String, String> {
    let fits =
        !text.trim().is_empty() && text.chars().count() <= NAME_LENGTH && !text.chars().any(char::is_control);
    fits.then(|| text.to_owned())
        .ok_or_else(|| format!("1 to {NAME_LENGTH} characters on one line are allowed"))
}

fn tag(text: &str) -> Result<Tag, String> {
    let alphabet = crate::plan::code::TAG_ALPHABET;
    Tag::new(text).ok_or_else(|| format!("3 characters of {alphabet} are allowed"))
}

fn colours(text: &str) -> Result<usize, String> {
    let read = text.parse().ok().filter(|count| COLOURS.contains(count));
    read.ok_or_else(|| format!("a whole number from {} to {} is allowed", COLOURS.start(), COLOURS.end()))
}

fn millimetres(text: &str, range: &RangeInclusive<f64>) -> Result<f64, String> {
    let read = text.parse().ok().filter(|mm| range.contains(mm));
    read.ok_or_else(|| {
        format!("a number of millimetres from {} to {} is allowed", range.start(), range.end())
    })
}

fn choice<T: Choice>(text: &str) -> Result<T, String> {
    T::named(text).ok_or_else(|| format!("{} is allowed", T::words()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folders_name_makes_a_name() {
        assert_eq!(name_of(Path::new("/x/open-evening")), "Open evening");
        assert_eq!(name_of(Path::new("élan_vital/")), "Élan vital");
        assert_eq!(name_of(Path::new(".")), "Open evening");
    }

    #[test]
    fn lengths_are_said_as_people_say_them() {
        assert_eq!(length(1270.0, Units::Inch), "4 ft 2 in");
        assert_eq!(length(1016.0, Units::Mm), "1.02 m");
        assert_eq!(length(25.4 * 23.8, Units::Inch), "2 ft 0 in");
    }
}
