//! What an old printer makes of a code: ink that runs, pale toner, streaks, draft mode.
//!
//! ```text
//!   ink runs    every dark module grows by so many mm, a little more here than there
//!   pale        ink is so much lighter than black
//!   streaks     in bands along the paper's way through the printer hardly any toner sticks
//!   draft       dots in every second row only, and some of those missing
//! ```
//!
//! How far ink runs and how pale toner gets are common practice, no source; a row of dots is 1/150 inch high.

use serde::{Deserialize, Serialize};

use super::grain::Grain;
use crate::frame::{float, floor_index, narrow};
use crate::plan::Modules;
use crate::plan::code::SIDE;

/// How well the printer prints; by default as it should.
#[derive(Copy, Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Printer {
    /// How far ink runs beyond each dark module, in mm, 0 … 0.2.
    pub ink_runs_mm: f64,
    /// How dark ink is against good black, 0.1 … 1.
    pub density: f64,
    /// How much of the toner is missing in streaks, 0 … 1.
    pub streaks: f64,
    /// How much of the ink is left out between the rows of dots, 0 … 1.
    pub draft: f64,
}

impl Default for Printer {
    fn default() -> Self {
        Self { ink_runs_mm: 0.0, density: 1.0, streaks: 0.0, draft: 0.0 }
    }
}

/// How much the ink's way varies from place to place, as a part of it.
const UNEVEN: f64 = 0.5;
/// Height of a row of dots in draft mode, in mm.
const DOTS_MM: f64 = 25.4 / 150.0;
/// Part of a streak's neighbourhood that it takes: where the broad carpet, −1 … 1, is below this, toner is missing.
const STREAKY: f32 = -0.3;
/// Steps of the broad carpet a mm across streaks: its hills, some 16 steps wide, become 1.6 mm.
const STREAK_MM: f64 = 10.0;
/// Part of the dots that draft mode drops by chance.
const DROPPED: f32 = 0.25;

impl Printer {
    /// Toner that runs out.
    pub const PALE: Self = Self { ink_runs_mm: 0.0, density: 0.22, streaks: 0.0, draft: 0.0 };
    /// A drum with streaks.
    pub const STREAKY: Self = Self { ink_runs_mm: 0.0, density: 0.8, streaks: 0.8, draft: 0.0 };
    /// Draft mode, to save ink.
    pub const DRAFT: Self = Self { ink_runs_mm: 0.02, density: 0.6, streaks: 0.0, draft: 0.9 };
    /// Ink that runs on soft paper.
    pub const RUNNY: Self = Self { ink_runs_mm: 0.12, density: 0.9, streaks: 0.0, draft: 0.0 };

    /// Whether it prints as it should; such options are left out of files.
    pub(super) fn is_good(&self) -> bool {
        *self == Self::default()
    }

    /// How far from a code's outer modules its ink may lie, in mm.
    pub(super) fn reach_mm(&self) -> f64 {
        self.ink_runs_mm * (1.0 + UNEVEN)
    }

    /// How much ink lies at a place of a code with modules of a side, in mm from its outer top left; 0 … 1. `sheet` is the
    /// paper's number, so that no two look alike.
    pub(super) fn ink(
        &self,
        code: &Modules,
        [x, y]: [f64; 2],
        module: f64,
        sheet: usize,
        grain: &Grain,
    ) -> f32 {
        let off = 37.0 * float(sheet);
        let reach = self.ink_runs_mm * (1.0 + UNEVEN * grain.wave(6.0 * x + off, 6.0 * y));
        if !is_inked(code, [x, y], module, reach) {
            return 0.0;
        }
        let mut ink = narrow(self.density);
        if self.streaks > 0.0 && grain.broad(STREAK_MM * x + 3.0 * off, 0.15 * y + off) < STREAKY {
            ink *= 1.0 - narrow(self.streaks);
        }
        if self.draft > 0.0 {
            let row = floor_index((y + 1000.0) / DOTS_MM);
            let dot = floor_index((x + 1000.0) / DOTS_MM);
            let dropped = grain.fine(float(dot) + off, float(row)) < 2.0 * DROPPED - 1.0;
            if row % 2 == 1 || dropped {
                ink *= 1.0 - narrow(self.draft);
            }
        }
        ink
    }
}

/// Whether a dark module lies at a place or no farther from it than `reach`, in mm.
fn is_inked(code: &Modules, [x, y]: [f64; 2], module: f64, reach: f64) -> bool {
    let last = float(SIDE) * module;
    let near = |at: f64| {
        let cell = |at: f64| (at >= 0.0 && at < last).then(|| floor_index(at / module));
        [cell(at - reach), cell(at), cell(at + reach)]
    };
    let (columns, rows) = (near(x), near(y));
    rows.iter().flatten().any(|row| columns.iter().flatten().any(|column| code.dark(*column, *row)))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Mean ink over a code, and over its light modules alone.
    fn means(printer: &Printer) -> [f32; 2] {
        let (code, grain) = (Modules::encode("K7M-D7").unwrap(), Grain::new(3));
        let (mut all, mut light, mut lights) = (0.0, 0.0, 0.0);
        let side = 210;
        for i in 0..side * side {
            let at = [i % side, i / side].map(|k| (float(k) + 0.5) * 0.06);
            let ink = printer.ink(&code, at, 0.6, 5, &grain);
            all += ink;
            if !code.dark(i % side / 10, i / side / 10) {
                light += ink;
                lights += 1.0;
            }
        }
        [all / narrow(float(side * side)), light / lights]
    }

    #[test]
    fn each_fault_does_what_it_says() {
        let [good, on_light] = means(&Printer::default());
        assert!((0.4..0.6).contains(&good) && on_light == 0.0);
        let [pale, _] = means(&Printer::PALE);
        assert!((pale - 0.22 * good).abs() < 0.01, "{pale}");
        let [runny, on_light] = means(&Printer::RUNNY);
        assert!(on_light > 0.3 && runny > good, "{runny} {on_light}");
        for printer in [Printer::STREAKY, Printer::DRAFT] {
            let [less, _] = means(&printer);
            assert!((0.2..0.8).contains(&(less / good)), "{printer:?}: {less} of {good}");
        }
    }
}
