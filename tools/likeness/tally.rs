//! What is counted.

use std::fmt;

use everysquare::display::likeness::Pieces;
use everysquare::frame::float;
use everysquare::plan::{Cell, Turn};
use image::RgbImage;

use super::walls::Wall;

/// Leads that the curves are told for, as multiples of the module's own.
const LEADS: [f64; 10] = [0.1, 0.25, 0.5, 0.7, 0.85, 1.0, 1.2, 1.5, 2.0, 4.0];
/// Part of the squares of a wall in a room that are on the wrong paper, for precision. Assumed.
const RARE: f64 = 0.01;

/// One drawing: how far what it looks like leads, if anything, and whether that is right.
#[derive(Copy, Clone, Debug)]
pub struct Found {
    lead: f64,
    right: bool,
}

/// Drawings by what they are.
#[derive(Clone, Debug, Default)]
pub struct Tally {
    /// On their own paper, upright.
    pub sound: Vec<Found>,
    /// On another piece's paper or turned, and such that it can be told.
    pub wrong: Vec<Found>,
    /// On another piece's paper or turned, plain or like the paper's own.
    pub alike: Vec<Found>,
    /// Right ones, given without their code, turned, among a tenth of the wall that is missing.
    pub unread: Vec<Found>,
    /// Of those the ones whose piece is plain.
    pub unread_plain: Vec<Found>,
}

impl Tally {
    /// All drawings of a wall.
    pub fn of(wall: &Wall) -> Self {
        let squares: Vec<(Cell, &RgbImage)> = wall.drawn.iter().map(|own| (own.paper, &own.pixels)).collect();
        let (pieces, _) = Pieces::of(&wall.few, &wall.printed).on_this_wall(&squares);
        let mut tally = Self::default();
        for own in &wall.drawn {
            let truth = (own.piece, own.turn);
            let closest = pieces.closest(&own.pixels, own.paper);
            let found = closest.map_or(Found { lead: 0.0, right: false }, |closest| Found {
                lead: closest.lead,
                right: !pieces.distinct((closest.piece, closest.turn), truth),
            });
            let sound = truth == (own.paper, Turn::None);
            let told = !pieces.is_plain(own.piece) && pieces.distinct(truth, (own.paper, Turn::None));
            match (sound, told) {
                (true, _) => tally.sound.push(found),
                (false, true) => tally.wrong.push(found),
                (false, false) => tally.alike.push(found),
            }
        }
        tally.without_codes(wall, &pieces);
        tally
    }

    /// Every tenth right square as if its code could not be read and it hung turned, the others seen.
    fn without_codes(&mut self, wall: &Wall, pieces: &Pieces) {
        let sound: Vec<_> =
            wall.drawn.iter().filter(|own| own.piece == own.paper && own.turn == Turn::None).collect();
        for first in 0..10 {
            let missing: Vec<Cell> = sound.iter().skip(first).step_by(10).map(|own| own.paper).collect();
            for (i, own) in sound.iter().enumerate().skip(first).step_by(10) {
                let turn = Turn::ALL[i / 10 % 4];
                let hung = match turn {
                    Turn::None => own.pixels.clone(),
                    Turn::Quarter => image::imageops::rotate90(&own.pixels),
                    Turn::Half => image::imageops::rotate180(&own.pixels),
                    Turn::ThreeQuarters => image::imageops::rotate270(&own.pixels),
                };
                let closest = pieces.closest_of(&hung, &missing);
                let found = closest.map_or(Found { lead: 0.0, right: false }, |closest| Found {
                    lead: closest.lead,
                    right: !pieces.distinct((closest.piece, closest.turn), (own.paper, turn))
                        && closest.piece == own.paper,
                });
                let kind = if pieces.is_plain(own.paper) { &mut self.unread_plain } else { &mut self.unread };
                kind.push(found);
            }
        }
    }

    pub fn add(&mut self, other: &Self) {
        self.sound.extend(&other.sound);
        self.wrong.extend(&other.wrong);
        self.alike.extend(&other.alike);
        self.unread.extend(&other.unread);
        self.unread_plain.extend(&other.unread_plain);
    }

    pub fn short(&self) -> String {
        let most = self.sound.iter().map(|found| found.lead).fold(0.0, f64::max);
        format!(
            "found {} of {}, {} of {} right ones (highest lead {most:.2})",
            count(&self.wrong, 1.0, Some(true)),
            self.wrong.len(),
            count(&self.sound, 1.0, None),
            self.sound.len()
        )
    }
}

/// How many lead so far, and are right or wrong where that is asked.
pub fn count(found: &[Found], lead: f64, right: Option<bool>) -> usize {
    found.iter().filter(|own| own.lead >= lead && right.is_none_or(|right| own.right == right)).count()
}

fn percent(part: f64, of: f64) -> f64 {
    if of > 0.0 { 100.0 * part / of } else { f64::NAN }
}

impl fmt::Display for Tally {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (sound, wrong) = (float(self.sound.len()), float(self.wrong.len()));
        writeln!(
            f,
            "{sound} right drawings, {wrong} wrong ones that can be told, {} that cannot",
            self.alike.len()
        )?;
        writeln!(
            f,
            "  lead   found   misnamed  false alarms  of those that cannot  precision as made  at 1 in 100"
        )?;
        for lead in LEADS {
            let named = float(count(&self.wrong, lead, Some(true)));
            let misnamed = float(count(&self.wrong, lead, Some(false)));
            let alarms = float(count(&self.sound, lead, None));
            let (hit, miss, alarm) = (named / wrong, misnamed / wrong, alarms / sound);
            let rare = percent(RARE * hit, RARE * (hit + miss) + (1.0 - RARE) * alarm);
            writeln!(
                f,
                "  {lead:4.2}  {:5.1} %  {misnamed:8}  {alarms:12}  {:20}  {:15.2} %  {rare:8.2} %",
                percent(named, wrong),
                count(&self.alike, lead, None),
                percent(named, named + misnamed + alarms)
            )?;
        }
        let (unread, plain) = (float(self.unread.len()), self.unread_plain.len());
        writeln!(
            f,
            "{unread} without a code, and {plain} plain ones\n  lead   named   misnamed  plain ones named  precision"
        )?;
        for lead in LEADS {
            let named = float(count(&self.unread, lead, Some(true)));
            let misnamed = float(count(&self.unread, lead, Some(false)));
            let plain = float(count(&self.unread_plain, lead, None));
            writeln!(
                f,
                "  {lead:4.2}  {:5.1} %  {misnamed:8}  {plain:16}  {:7.2} %",
                percent(named, unread),
                percent(named, named + misnamed + plain)
            )?;
        }
        Ok(())
    }
}
