//! Many single codes, a third of them none of the event's: how sure the reader is, and how often it is right.

use std::collections::{BTreeMap, BTreeSet};

use everysquare::frame::{float, round_signed};
use everysquare::photo::Luma;
use everysquare::plan::{Grid, Modules, Printed, Settings, Tag, Turn};
use everysquare::read::Camera;
use everysquare::read::camera::Correspondence;
use everysquare::read::codebook::{Light, Owner};
use everysquare::read::decision::FEATURES;
use everysquare::read::identify::{Detection, Identifier};
use everysquare::read::lens::Lens;
use everysquare::read::place::{Layout, Site};
use everysquare::read::pose::Pose;
use everysquare::read::seek::{THOROUGH, seek};
use rayon::prelude::*;

use super::patch::{Chance, Over, Phone, Print, Scene, Sensor, pose, rough};
use super::{Outcome, ideal};

/// What hangs there.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// A square of the event, all of its code to be seen.
    Own,
    /// The same, a part hidden, torn off or drawn over.
    Partly,
    /// A square of another event: the same label, the tag differs in one character or in all.
    Other,
    /// Half a square of another event.
    OtherPartly,
    /// A drawing that looks like a code: its finder patterns, and what chance puts between them.
    Drawing,
    /// Nothing.
    Nothing,
}

impl Kind {
    pub const ALL: [Self; 6] =
        [Self::Own, Self::Partly, Self::Other, Self::OtherPartly, Self::Drawing, Self::Nothing];

    /// Two thirds are the event's own.
    fn drawn(chance: &mut Chance) -> Self {
        match chance.pick(30) {
            0..15 => Self::Own,
            15..20 => Self::Partly,
            20..26 => Self::Other,
            26 => Self::OtherPartly,
            27..29 => Self::Drawing,
            _ => Self::Nothing,
        }
    }
}

/// One code looked at.
pub struct Trial {
    pub kind: Kind,
    pub px: f64,
    /// Whether the best guess is what hangs there; whether it was named.
    pub right: bool,
    pub named: bool,
    pub certainty: f64,
    /// Whether a reader that is told all but the code names it rightly; only where that was asked for.
    pub ideal: bool,
    pub found: Option<Detection>,
    pub sensor: Sensor,
    pub print: Print,
}

impl Trial {
    /// Size and blur, in hundredths.
    fn condition(&self) -> (i64, i64) {
        (round_signed(100.0 * self.px), round_signed(100.0 * self.sensor.blur_px))
    }
}

/// The event that is looked for, and all that is needed to look.
pub struct Event {
    pub printed: Printed,
    pub identifier: Identifier,
}

fn printed(tag: Tag) -> Outcome<Printed> {
    let grid = Grid::usual(16, 12);
    Ok(Settings::new("Limit".to_owned(), tag, grid).printed()?)
}

/// The number of the event's tag.
const OWN: u64 = 7919;

impl Event {
    pub fn new() -> Outcome<Self> {
        let printed = printed(Tag::from_number(OWN))?;
        Ok(Self { identifier: Identifier::new(&printed), printed })
    }

    /// What is seen near a rough pose; with `harder`, sought as in a cell where nothing was found.
    fn look(&self, luma: &Luma, rough: Pose, harder: bool) -> Option<Detection> {
        let identifier = &self.identifier;
        let found = identifier.identify(luma, rough, Light::AsSeen);
        if !harder || found.is_some_and(|found| found.owner.is_some()) {
            return found;
        }
        let (layout, site) = (Layout::of(&self.printed), Site { row: 0, column: 0 });
        let anchor = Correspondence { wall: layout.code_corners(site, Turn::None), photo: rough.corners() };
        let camera = Camera::from_one(&anchor, Lens::straight(float(luma.width), float(luma.height)))?;
        let sought = seek(luma, identifier, &camera, &layout, site, &THOROUGH).map(|sought| sought.found);
        // a better guess only where it is a name: what lies beside the code is no part of the trial
        sought.filter(|sought| sought.owner.is_some()).or(found)
    }

    /// The same square of another event.
    fn other(&self, at: usize, chance: &mut Chance) -> Outcome<Modules> {
        let other = u64::try_from(1 + chance.pick(31))?;
        let shift = 5 * u64::try_from(chance.pick(3))?;
        let number = if chance.pick(2) == 0 {
            OWN ^ (other << shift)
        } else {
            OWN + 1 + u64::try_from(chance.pick(32_000))?
        };
        let text = Tag::from_number(number).square(&self.printed.squares[at].label);
        Ok(Modules::encode(&text)?)
    }
}

/// Something that hides a part.
fn over(chance: &mut Chance) -> Over {
    let towards = chance.between(0.0, std::f64::consts::TAU);
    if chance.pick(4) == 0 {
        return Over::Strokes { towards, apart: chance.between(5.0, 12.0), wide: chance.between(0.5, 2.0) };
    }
    Over::Edge { towards, at: chance.between(-2.0, 8.0), level: chance.between(0.1, 0.9) }
}

/// Finder patterns and timing of a code, and chance between them.
fn drawing(code: &Modules, chance: &mut Chance) -> Outcome<Modules> {
    let shared =
        |x: usize, y: usize| (x < 9 && !(9..13).contains(&y)) || (x > 12 && y < 9) || x == 6 || y == 6;
    let dark: Vec<bool> = (0..444)
        .map(|i| {
            i < 441 && if shared(i % 21, i / 21) { code.dark(i % 21, i / 21) } else { chance.pick(2) == 0 }
        })
        .collect();
    let digit = |four: &[bool]| four.iter().fold(0, |value, dark| value << 1 | u32::from(*dark));
    let hex: String = dark.chunks(4).filter_map(|four| char::from_digit(digit(four), 16)).collect();
    Ok(Modules::from_hex(&hex)?)
}

/// Keeps the chance of the printers apart from all other chance.
const PRINTERS: u64 = 0x5bd1_e995_0000_0000;

/// Keeps the chance of the phones apart.
const PHONES: u64 = 0x0000_0000_c2b2_ae35;

/// Makes a code with a module of so many pixels and looks at it.
pub fn trial(event: &Event, seed: u64, px: f64, sensor: Sensor, clear: bool) -> Outcome<Trial> {
    let mut chance = Chance(seed);
    let kind = if clear { Kind::Own } else { Kind::drawn(&mut chance) };
    let at = chance.pick(event.printed.squares.len());
    let own = &event.printed.squares[at];
    let code = match kind {
        Kind::Own | Kind::Partly => Some(own.modules.clone()),
        Kind::Other | Kind::OtherPartly => Some(event.other(at, &mut chance)?),
        Kind::Drawing => Some(drawing(&own.modules, &mut chance)?),
        Kind::Nothing => None,
    };
    let hidden = matches!(kind, Kind::Partly | Kind::OtherPartly);
    let print = if clear { Print::Good } else { Print::drawn(&mut Chance(seed ^ PRINTERS)) };
    let scene = Scene {
        code,
        print,
        over: if hidden { over(&mut chance) } else { Over::Nothing },
        white: chance.between(0.5, 5.0),
        around: (chance.between(2.0, 12.0), seed),
        light: (
            if chance.pick(12) == 0 { chance.between(0.9, 1.3) } else { chance.between(0.35, 0.9) },
            [chance.between(-0.3, 0.3), chance.between(-0.3, 0.3)],
        ),
    };
    let truth = pose(px, &mut chance);
    let phone = if clear { Phone::NONE } else { Phone::drawn(&mut Chance(seed ^ PHONES)) };
    let luma = scene.photo(&truth, sensor, phone, &mut chance)?;
    let found = event.look(
        &luma,
        rough(&truth, &mut chance),
        matches!(kind, Kind::Own | Kind::Partly) || seed.is_multiple_of(8),
    );
    let best = found.map(|found| event.identifier.owner(found.evidence.compared.best));
    let turned = found.is_some_and(|found| found.pose.u.dot(truth.u) > 0.0);
    let right = matches!(kind, Kind::Own | Kind::Partly) && best == Some(Owner::Square(own.cell)) && turned;
    let named = found.is_some_and(|found| found.owner.is_some());
    let codes = event.printed.squares.len() + event.printed.cards.len();
    let certainty = found.map_or(0.0, |found| found.evidence.certainty(codes));
    let ideal = clear && ideal::best(&event.printed, &scene, (&truth, sensor.blur_px), &luma) == Some(at);
    Ok(Trial { kind, px, right, named, certainty, ideal, found, sensor, print })
}

/// So many trials a size and camera.
pub fn trials(
    event: &Event,
    first: u64,
    count: u64,
    sizes: &[f64],
    sensors: &[Sensor],
    clear: bool,
) -> Outcome<Vec<Trial>> {
    let mut all = Vec::new();
    for px in sizes {
        for sensor in sensors {
            let each: Outcome<Vec<Trial>> = (first..first + count)
                .into_par_iter()
                .map(|seed| trial(event, seed, *px, *sensor, clear))
                .collect();
            all.extend(each?);
        }
    }
    Ok(all)
}

/// Bins of certainty: their lower ends.
const BINS: [f64; 9] = [0.0, 0.1, 0.5, 0.8, 0.9, 0.95, 0.98, 0.99, 0.999];

/// Says for each bin of certainty how many best guesses were right, and of each kind how many were named.
pub fn say(trials: &[Trial]) {
    println!("{} codes looked at", trials.len());
    for (at, low) in BINS.iter().enumerate() {
        let high = BINS.get(at + 1).copied().unwrap_or(f64::INFINITY);
        let of: Vec<&Trial> = trials
            .iter()
            .filter(|t| t.found.is_some() && t.certainty >= *low && t.certainty < high)
            .collect();
        let right = of.iter().filter(|t| t.right).count();
        let mean = of.iter().map(|t| t.certainty).sum::<f64>() / float(of.len().max(1));
        let share = float(right) / float(of.len().max(1));
        println!("  certainty from {low}: {} guesses, {mean:.4} on the average, {share:.4} right", of.len());
    }
    let sizes: BTreeSet<(i64, i64)> = trials.iter().map(Trial::condition).collect();
    for condition in sizes {
        let of: Vec<&Trial> =
            trials.iter().filter(|t| t.kind == Kind::Own && t.condition() == condition).collect();
        let named = of.iter().filter(|t| t.named && t.right).count();
        if let Some(first) = of.first() {
            let (px, blur) = (first.px, first.sensor.blur_px);
            println!("  {px} px a module, blur {blur} px: {named} of {} clear codes named", of.len());
        }
    }
    for (at, printer) in Print::NAMES.iter().enumerate() {
        let of: Vec<&Trial> =
            trials.iter().filter(|t| t.kind == Kind::Own && t.px >= 1.0 && t.print.kind() == at).collect();
        let named = of.iter().filter(|t| t.named && t.right).count();
        let mut why: BTreeMap<String, usize> = BTreeMap::new();
        for trial in of.iter().filter(|t| !t.named) {
            let reason = trial.found.and_then(|found| found.evidence.why_not());
            *why.entry(reason.map_or("nothing seen".to_owned(), |reason| format!("{reason:?}")))
                .or_default() += 1;
        }
        println!(
            "  {printer}, from 1 px a module: {named} of {} clear codes named; why not: {why:?}",
            of.len()
        );
    }
    for kind in Kind::ALL {
        let of: Vec<&Trial> = trials.iter().filter(|t| t.kind == kind).collect();
        let named = of.iter().filter(|t| t.named).count();
        let wrong = of.iter().filter(|t| t.named && !t.right).count();
        println!("  {kind:?}: {named} of {} named, {wrong} wrongly", of.len());
    }
}

/// Prints a line for each code that was fitted: what it is, whether the guess is right, and what the decision goes by.
pub fn features(trials: &[Trial]) {
    println!("kind,printer,px,right,named,{}", FEATURES.join(","));
    for trial in trials {
        let Some(found) = trial.found else { continue };
        let Some(values) = found.evidence.features() else { continue };
        let values: Vec<String> = values.iter().map(f32::to_string).collect();
        let (printer, right, named) =
            (Print::NAMES[trial.print.kind()], u8::from(trial.right), u8::from(trial.named));
        println!("{:?},{printer},{},{right},{named},{}", trial.kind, trial.px, values.join(","));
    }
}

/// Sizes between which the least is looked for that 99 of 100 codes need, in pixels a module.
const STEPS: [f64; 14] = [0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 1.0, 1.1, 1.2];
const ENOUGH: f64 = 0.99;

/// Says how large modules must be for the reader, and for one that is told all but the code.
pub fn compare(first: u64, count: u64, sensors: &[Sensor]) -> Outcome<()> {
    let event = Event::new()?;
    for sensor in sensors {
        let mut least: [Option<f64>; 2] = [None; 2];
        for px in STEPS {
            let all = trials(&event, first, count, &[px], &[*sensor], true)?;
            let named = all.iter().filter(|t| t.named && t.right).count();
            let ideal = all.iter().filter(|t| t.ideal).count();
            println!(
                "blur {} px, {px} px a module, {count} codes: {named} named, {ideal} by the ideal",
                sensor.blur_px
            );
            for (least, right) in least.iter_mut().zip([named, ideal]) {
                let enough = float(right) >= ENOUGH * float(all.len());
                *least = least.filter(|_| enough).or(enough.then_some(px));
            }
            if least.iter().all(Option::is_some) {
                break;
            }
        }
        if let [Some(reader), Some(ideal)] = least {
            println!(
                "99 of 100 from {reader} px a module, the ideal from {ideal}: {:.2} times",
                reader / ideal
            );
        }
    }
    Ok(())
}
