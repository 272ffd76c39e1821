//! `everysquare rehearse FOLDER`: makes a photo of a wall that never was, for practice.

use std::path::PathBuf;

use super::mistyped::Refused;
use super::{CliError, Console, Outcome, progress};
use crate::frame::{float, round_index};
use crate::picture::Picture;
use crate::plan::Folder;
use crate::rehearse::{Cards, Faults, Made, Options, Printer, State, make_watched};
use crate::words::{Sentence, as_typed, one_of};

/// Steps of the progress bar.
const STEPS: u64 = 100;

/// What is typed after `everysquare rehearse`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// Where all chance comes from.
    #[arg(long, value_name = "N")]
    seed: Option<u64>,
    /// Pairs exchanged.
    #[arg(long, value_name = "N")]
    swaps: Option<usize>,
    /// Threes exchanged.
    #[arg(long, value_name = "N")]
    cycles: Option<usize>,
    /// Squares turned.
    #[arg(long, value_name = "N")]
    turns: Option<usize>,
    /// Empty cells.
    #[arg(long, value_name = "N")]
    missing: Option<usize>,
    /// Codes painted over.
    #[arg(long, value_name = "N")]
    scribbled: Option<usize>,
    /// Codes half under tape.
    #[arg(long, value_name = "N")]
    covered: Option<usize>,
    /// Corners torn off.
    #[arg(long, value_name = "N")]
    torn: Option<usize>,
    /// Second copies.
    #[arg(long, value_name = "N")]
    duplicates: Option<usize>,
    /// Squares of another event.
    #[arg(long = "other-event", value_name = "N")]
    strangers: Option<usize>,
    /// Squares with another piece's drawing.
    #[arg(long, value_name = "N")]
    misdrawn: Option<usize>,
    /// Squares with a turned drawing.
    #[arg(long, value_name = "N")]
    drawn_turned: Option<usize>,
    /// Squares without a drawing.
    #[arg(long, value_name = "N")]
    undrawn: Option<usize>,
    /// Squares with a part of their drawing.
    #[arg(long, value_name = "N")]
    begun: Option<usize>,
    /// Every square in a wrong cell.
    #[arg(long)]
    permute_all: bool,
    /// Stubs left on.
    #[arg(long, value_name = "N")]
    stubs: Option<usize>,
    /// The border hangs too.
    #[arg(long)]
    border: bool,
    /// Which cards hang.
    #[arg(long, value_name = "WHICH", value_parser = cards, default_value = "all")]
    cards: Cards,
    /// How well the codes were printed.
    #[arg(long, value_name = "WHICH", value_parser = printer, default_value = "good")]
    printer: Printer,
    #[command(flatten)]
    photo: PhotoArgs,
}

/// How the photo is taken; what is left out is drawn from the seed.
#[derive(Debug, clap::Args)]
struct PhotoArgs {
    /// Width in pixels.
    #[arg(long, value_name = "PX", default_value_t = 4032)]
    width: usize,
    /// Height in pixels.
    #[arg(long, value_name = "PX", default_value_t = 3024)]
    height: usize,
    /// The least pixels a module.
    #[arg(long, value_name = "PX")]
    min_px_per_module: Option<f64>,
    /// Part of the frame that the wall fills.
    #[arg(long, value_name = "PART")]
    fill: Option<f64>,
    /// To the right.
    #[arg(long, value_name = "DEGREES", allow_negative_numbers = true)]
    yaw: Option<f64>,
    /// Upwards.
    #[arg(long, value_name = "DEGREES", allow_negative_numbers = true)]
    pitch: Option<f64>,
    /// Clockwise.
    #[arg(long, value_name = "DEGREES", allow_negative_numbers = true)]
    roll: Option<f64>,
    /// Boards at angles.
    #[arg(long, value_name = "DEGREES", default_value_t = 0.0)]
    board_angle: f64,
    /// EXIF orientation.
    #[arg(long, value_name = "N")]
    orientation: Option<u16>,
    /// A mirror image.
    #[arg(long)]
    mirrored: bool,
    /// People in front.
    #[arg(long, value_name = "N", default_value_t = 0)]
    people: usize,
    /// A ladder in front.
    #[arg(long)]
    ladder: bool,
}

/// Makes the photo and writes it, its answer key first, so that there is no practice photo without one.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let settings = folder.settings()?;
    let printed = folder.printed()?;
    let bytes = folder.picture_bytes(&settings)?;
    let picture =
        Picture::open(&bytes).map_err(|error| CliError::about(&folder.picture_file(&settings), error))?;
    // Seeds that people read and type again stay short.
    let seed = args.seed.unwrap_or_else(|| rand::random::<u64>() % 100_000);
    let options = options(args, seed, printed.grid.asked());
    let bar = progress::bar(console, STEPS, "rehearse-working");
    let watch = |part: f64| bar.set_position(u64::try_from(round_index(part * float(100))).unwrap_or(STEPS));
    let made = make_watched(&printed, &picture, &options, &watch);
    bar.finish_and_clear();
    let made = made?;
    let [photo, truth] = names(&folder, seed, &made);
    let mut json = serde_json::to_vec_pretty(&made.truth)?;
    json.push(b'\n');
    Folder::write_whole(&truth, &json)?;
    Folder::write_whole(&photo, &made.jpeg)?;
    explain(args, &made, &[photo, truth], console);
    Ok(Outcome::Right)
}

/// Where a practice photo and its answer key go: `7.jpg` and `7.answers.json`, or with a second number where another photo lies there.
fn names(folder: &Folder, seed: u64, made: &Made) -> [PathBuf; 2] {
    let named = |name: String| {
        ["jpg", "answers.json"].map(|ending| folder.rehearsals().join(format!("{name}.{ending}")))
    };
    let is_free =
        |[photo, _]: &[PathBuf; 2]| std::fs::read(photo).map_or(!photo.exists(), |own| own == made.jpeg);
    let numbered = (2..1000).map(|number| named(format!("{seed}-{number}")));
    std::iter::once(named(seed.to_string()))
        .chain(numbered)
        .find(is_free)
        .unwrap_or_else(|| named(seed.to_string()))
}

impl Args {
    /// Whether any number of faults was typed: 0 means none, and a wall without faults can be wished for.
    fn says_faults(&self) -> bool {
        let counts = [
            self.swaps,
            self.cycles,
            self.turns,
            self.missing,
            self.scribbled,
            self.covered,
            self.torn,
            self.duplicates,
            self.strangers,
            self.misdrawn,
            self.drawn_turned,
            self.undrawn,
            self.begun,
            self.stubs,
        ];
        self.permute_all || counts.iter().any(Option::is_some)
    }
}

fn options(args: &Args, seed: u64, cells: usize) -> Options {
    let asked = Faults {
        swaps: args.swaps.unwrap_or(0),
        cycles: args.cycles.unwrap_or(0),
        turns: args.turns.unwrap_or(0),
        missing: args.missing.unwrap_or(0),
        scribbled: args.scribbled.unwrap_or(0),
        covered: args.covered.unwrap_or(0),
        torn: args.torn.unwrap_or(0),
        duplicates: args.duplicates.unwrap_or(0),
        strangers: args.strangers.unwrap_or(0),
        misdrawn: args.misdrawn.unwrap_or(0),
        drawn_turned: args.drawn_turned.unwrap_or(0),
        undrawn: args.undrawn.unwrap_or(0),
        begun: args.begun.unwrap_or(0),
        stubs: args.stubs.unwrap_or(0),
        permute_all: args.permute_all,
        border: args.border,
    };
    let faults =
        if args.says_faults() { asked } else { Faults { border: args.border, ..some_faults(cells) } };
    let photo = &args.photo;
    let mut options = Options::varied(seed);
    options.faults = faults;
    options.cards = args.cards;
    options.printer = args.printer;
    (options.width, options.height) = (photo.width, photo.height);
    options.min_px_per_module = photo.min_px_per_module;
    let pose = &mut options.pose;
    pose.fill = photo.fill.unwrap_or(pose.fill);
    pose.yaw_degrees = photo.yaw.unwrap_or(pose.yaw_degrees);
    pose.pitch_degrees = photo.pitch.unwrap_or(pose.pitch_degrees);
    pose.roll_degrees = photo.roll.unwrap_or(pose.roll_degrees);
    let sensor = &mut options.sensor;
    sensor.orientation = photo.orientation.unwrap_or(sensor.orientation);
    sensor.mirrored = photo.mirrored;
    options.boards.angle_degrees = photo.board_angle;
    options.people = photo.people;
    options.ladder = photo.ladder;
    options
}

/// Where nothing was said of faults: about one cell in ten, so that there is something to find.
fn some_faults(cells: usize) -> Faults {
    Faults {
        swaps: cells.div_ceil(40).min(cells / 4),
        turns: cells / 40,
        missing: cells / 40,
        ..Faults::default()
    }
}

/// Says what was made, how many faults it has without saying where, and what comes next.
fn explain(args: &Args, made: &Made, [made_at, truth]: &[PathBuf; 2], console: &mut Console) {
    let photo = made_at.display().to_string();
    let cells = &made.truth.cells;
    let count = |state: State| cells.iter().filter(|cell| cell.state == state).count();
    let hanging = cells.len() - count(State::Reserve) - count(State::Free);
    console.say("rehearse-made", &[("photo", photo.as_str().into()), ("cells", hanging.into())]);
    let counted = [
        ("right", State::Right),
        ("wrong", State::Wrong),
        ("turned", State::Turned),
        ("empty", State::Empty),
        ("unread", State::Unread),
        ("unseen", State::Unseen),
    ]
    .map(|(name, state)| (name, count(state).into()));
    console.say("rehearse-states", &counted);
    console.say("rehearse-truth", &[("truth", truth.display().to_string().into())]);
    let typed =
        [("folder", &args.folder), ("photo", made_at)].map(|(name, path)| (name, as_typed(path).into()));
    console.say("rehearse-next", &typed);
}

fn cards(text: &str) -> Result<Cards, Refused> {
    choice(text, &[("all", Cards::All), ("corners", Cards::Corners), ("none", Cards::None)])
}

fn printer(text: &str) -> Result<Printer, Refused> {
    let printers = [
        ("good", Printer::default()),
        ("pale", Printer::PALE),
        ("streaks", Printer::STREAKY),
        ("draft", Printer::DRAFT),
        ("runny", Printer::RUNNY),
    ];
    choice(text, &printers)
}

/// What a word stands for among those that may be typed.
fn choice<T: Copy>(text: &str, all: &[(&str, T)]) -> Result<T, Refused> {
    let words: Vec<&str> = all.iter().map(|(word, _)| *word).collect();
    let meant = all.iter().find(|(word, _)| *word == text).map(|(_, meant)| *meant);
    meant.ok_or_else(|| Refused::new(Sentence::new("typed-choice").with("choices", one_of(&words))))
}
