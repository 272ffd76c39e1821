//! What hangs in which cell: the faults that were asked for, dealt out over the wall by chance.

use rand::RngExt;
use rand::seq::SliceRandom;
use rand_chacha::ChaCha8Rng;

use super::RehearseError;
use super::chance::{Purpose, stream};
use super::hung::{Condition, Hung};
use super::options::Faults;
use crate::plan::{Cell, Modules, Printed, Tag, Turn};

/// One entry a cell, in the order of the cells; `None` where nothing hangs.
pub(super) fn plot(
    printed: &Printed,
    faults: &Faults,
    seed: u64,
) -> Result<Vec<Option<Hung>>, RehearseError> {
    let cells: Vec<Cell> = printed.grid.cells().collect();
    if printed.squares.len() != cells.len() {
        return Err(RehearseError::Printed { squares: printed.squares.len(), cells: cells.len() });
    }
    let singles = [
        faults.turns,
        faults.missing,
        faults.scribbled,
        faults.covered,
        faults.torn,
        faults.duplicates,
        faults.strangers,
        faults.misdrawn,
        faults.drawn_turned,
        faults.undrawn,
        faults.stubs,
        faults.begun,
    ];
    let moved = faults.swaps.saturating_mul(2).saturating_add(faults.cycles.saturating_mul(3));
    let asked = singles.into_iter().fold(moved, usize::saturating_add);
    let grid = &printed.grid;
    let hangs = |cell: &Cell| grid.asks_for(*cell) || faults.border && !grid.is_kept_free(*cell);
    let hanging: Vec<usize> = (0..cells.len()).filter(|i| hangs(&cells[*i])).collect();
    if asked > hanging.len() {
        return Err(RehearseError::TooManyFaults { asked, cells: hanging.len() });
    }
    if faults.permute_all && faults.swaps + faults.cycles > 0 {
        return Err(RehearseError::PermutedAndSwapped);
    }
    let mut rng = stream(seed, Purpose::Faults);
    let mut dealt = hanging;
    dealt.shuffle(&mut rng);
    let own = |cell: &Cell| hangs(cell).then(|| Hung::own(*cell));
    let mut hung: Vec<Option<Hung>> = cells.iter().map(own).collect();
    let foreign = Deal::out(&mut dealt, faults);
    foreign.missing.iter().for_each(|i| hung[*i] = None);
    for i in &foreign.strangers {
        hung[*i] = Some(stranger(printed, cells[*i], &mut rng)?);
    }
    let own: Vec<usize> = (0..cells.len()).filter(|i| hangs(&cells[*i]) && !foreign.holds(*i)).collect();
    copies(&mut hung, &foreign.duplicates, &own, &mut rng)?;
    foreign.swaps.chunks_exact(2).for_each(|pair| hung.swap(pair[0], pair[1]));
    for three in foreign.cycles.chunks_exact(3) {
        hung.swap(three[0], three[1]);
        hung.swap(three[1], three[2]);
    }
    if faults.permute_all {
        derange(&mut hung, &own, &mut rng)?;
    }
    conditions(&mut hung, &foreign, &mut rng);
    drawings(&mut hung, &foreign, &cells, seed);
    Ok(hung)
}

/// Which cells get which fault.
struct Deal {
    missing: Vec<usize>,
    strangers: Vec<usize>,
    duplicates: Vec<usize>,
    swaps: Vec<usize>,
    cycles: Vec<usize>,
    turns: Vec<usize>,
    conditions: [(Condition, Vec<usize>); 4],
    misdrawn: Vec<usize>,
    drawn_turned: Vec<usize>,
    undrawn: Vec<usize>,
    begun: Vec<usize>,
}

impl Deal {
    fn out(cells: &mut Vec<usize>, faults: &Faults) -> Self {
        let mut take = |count: usize| cells.split_off(cells.len() - count);
        Self {
            missing: take(faults.missing),
            strangers: take(faults.strangers),
            duplicates: take(faults.duplicates),
            swaps: take(2 * faults.swaps),
            cycles: take(3 * faults.cycles),
            turns: take(faults.turns),
            conditions: [
                (Condition::Scribbled, take(faults.scribbled)),
                (Condition::Covered, take(faults.covered)),
                (Condition::Torn, take(faults.torn)),
                (Condition::Stub, take(faults.stubs)),
            ],
            misdrawn: take(faults.misdrawn),
            drawn_turned: take(faults.drawn_turned),
            undrawn: take(faults.undrawn),
            begun: take(faults.begun),
        }
    }

    /// Whether the cell's own square does not hang on the wall.
    fn holds(&self, i: usize) -> bool {
        [&self.missing, &self.strangers, &self.duplicates].iter().any(|list| list.contains(&i))
    }
}

fn stranger(printed: &Printed, home: Cell, rng: &mut ChaCha8Rng) -> Result<Hung, RehearseError> {
    let tag = loop {
        let tag = Tag::from_number(rng.random());
        if tag.to_string() != printed.tag {
            break tag;
        }
    };
    let text = tag.square(&printed.grid.label(home));
    let modules = Modules::encode(&text)?;
    Ok(Hung { stranger: Some((text, modules)), ..Hung::own(home) })
}

/// Hangs a second copy of one of the `own` squares, each at most once, in every cell of `into`.
fn copies(
    hung: &mut [Option<Hung>],
    into: &[usize],
    own: &[usize],
    rng: &mut ChaCha8Rng,
) -> Result<(), RehearseError> {
    let mut originals = own.to_vec();
    originals.shuffle(rng);
    if originals.len() < into.len() {
        return Err(RehearseError::NothingTwice);
    }
    for (i, from) in into.iter().zip(originals) {
        hung[*i].clone_from(&hung[from].clone());
    }
    Ok(())
}

/// Puts every square of the cells `own` into another of them: one round through all, in an order by chance.
fn derange(hung: &mut [Option<Hung>], own: &[usize], rng: &mut ChaCha8Rng) -> Result<(), RehearseError> {
    if own.len() < 2 {
        return Err(RehearseError::TooFewToPermute { squares: own.len() });
    }
    let mut round = own.to_vec();
    round.shuffle(rng);
    // One round through all cells moves each square; its cycles need no more variety than its order has.
    for pair in round.windows(2) {
        hung.swap(pair[0], pair[1]);
    }
    Ok(())
}

fn conditions(hung: &mut [Option<Hung>], deal: &Deal, rng: &mut ChaCha8Rng) {
    for i in &deal.turns {
        if let Some(square) = &mut hung[*i] {
            square.turn = Turn::from_quarters(rng.random_range(1..4));
        }
    }
    for (condition, cells) in &deal.conditions {
        for i in cells {
            if let Some(square) = &mut hung[*i] {
                square.condition = *condition;
            }
        }
    }
}

/// Puts other pieces, or turned ones, on papers that are otherwise right; chance of its own leaves all else as it was.
fn drawings(hung: &mut [Option<Hung>], deal: &Deal, cells: &[Cell], seed: u64) {
    let mut rng = stream(seed, Purpose::Drawings);
    for i in &deal.misdrawn {
        let others = cells.len().saturating_sub(1);
        if let (Some(Hung { drawn: Some((piece, _)), .. }), true) = (&mut hung[*i], others > 0) {
            // Any other cell: as far on as chance says, round the end.
            *piece = cells[(*i + 1 + rng.random_range(0..others)) % cells.len()];
        }
    }
    for i in &deal.drawn_turned {
        if let Some(Hung { drawn: Some((_, turn)), .. }) = &mut hung[*i] {
            *turn = Turn::from_quarters(rng.random_range(1..4));
        }
    }
    for i in &deal.undrawn {
        if let Some(square) = &mut hung[*i] {
            square.drawn = None;
        }
    }
    for i in &deal.begun {
        if let Some(square) = &mut hung[*i] {
            square.begun = true;
        }
    }
}
