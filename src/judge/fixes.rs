//! The fewest moves that put the wall right, in an order that a person on a step stool can follow.
//!
//! Draw an arrow from each cell to the cell where its square belongs. No cell has two arrows out, and once
//! spare copies are set aside no cell has two in, so the arrows make **cycles** and **chains**:
//!
//! ```text
//!   cycle     A ─▶ B ─▶ C ─▶ A       k squares: k − 1 swaps
//!   chain     A ─▶ B ─▶ ▢            k squares, then a cell without a square of use: k moves, the last square first
//! ```
//!
//! *Why no plan is shorter.* Give every cell without a square a blank; a move is then a swap with a blank. A
//! swap splits one cycle of a permutation in two at best, so a permutation of n things with c cycles needs n
//! − c swaps (A. Cayley, "Note on the theory of permutations", 1849, from memory). Blanks are alike, so each
//! may be taken to belong wherever is best: at the start of its own chain, which gives the most cycles, and
//! the sum above. Every square in its own cell but turned costs a turn, every spare or foreign square a
//! removal, every square that hangs nowhere a fetch; none of these can spare a swap. A square that comes home
//! by a move is turned upright on the way. `tests/event/judge.rs` compares with a full search over all small walls.
//!
//! *Squares without a spot.* One whose own cell is kept free comes down, like a foreign one.
//!
//! *Spare copies.* Of a square that hangs more than once, the copy that lies on a cycle (its own cell counts
//! as one) stays in use: each cell has one arrow out, so no two cycles compete for it. If none does, the copy
//! nearest to home is used.
//!
//! *Cells nobody could read.* Something hangs in an `unread` cell; putting its own square there by a swap is
//! never a step too many, whatever comes down. Look first, then swap. Whether an `unseen` cell is empty
//! nobody knows: what belongs there waits, its chain closes up behind it, and the fix says where to look.

use serde::{Deserialize, Serialize};

use crate::plan::{Cell, Grid, Turn};

use super::states::{JudgedCell, Judgement, State};

/// Kind of a fix.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Act {
    /// Two squares change places.
    Swap,
    /// A square is turned where it hangs.
    Turn,
    /// A square goes into an empty cell.
    Move,
    /// A square that hangs nowhere is found and put up.
    Fetch,
    /// A square comes down and stays down.
    Remove,
    /// Somebody goes and looks.
    Look,
}

impl Act {
    /// Name in `report.json`, and the end of its sentences' ids in `words`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Swap => "swap",
            Self::Turn => "turn",
            Self::Move => "move",
            Self::Fetch => "fetch",
            Self::Remove => "remove",
            Self::Look => "look",
        }
    }
}

/// Fix: one thing to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fix {
    /// Turn the square that hangs in its own cell.
    Turn {
        /// Cell where it hangs.
        cell: Cell,
        /// Turn clockwise until it is upright.
        by: Turn,
    },
    /// Let what hangs in two cells change places.
    Swap {
        /// Cells of the two; the square from the first comes home to the second.
        cells: [Cell; 2],
        /// Cells of the two into which a square comes that has to be turned upright on the way.
        upright: Vec<Cell>,
    },
    /// Put a square into an empty cell, where it belongs.
    Move {
        /// Where it hangs.
        from: Cell,
        /// Where it belongs.
        to: Cell,
        /// Whether it has to be turned upright on the way.
        upright: bool,
    },
    /// Take down what does not belong on the wall.
    Remove {
        /// Where it hangs.
        cell: Cell,
        /// The square: a spare copy, or one whose spot is kept free; `None` for one of another event.
        square: Option<Cell>,
    },
    /// Look what hangs in cells that could not be read.
    Look {
        /// Cells to look at, all in one row.
        cells: Vec<Cell>,
        /// Whether two photos contradict each other about them.
        moved_between: bool,
        /// Squares seen nowhere: what may hang there.
        unaccounted: Vec<Cell>,
    },
    /// Look at a cell that is in no photo, because a square waits to go there.
    LookBeyond {
        /// Cell to look at, where the square belongs.
        cell: Cell,
        /// Cell where the square waits, once the fixes before this one are done.
        waits_at: Cell,
    },
    /// Find a square that was seen nowhere and put it up.
    Fetch {
        /// Square, by the cell where it belongs.
        square: Cell,
        /// Whether some cells could not be told, so that it may hang in one of them.
        perhaps_on_wall: bool,
    },
}

impl Fix {
    /// Kind of the fix.
    #[must_use]
    pub fn act(&self) -> Act {
        match self {
            Self::Turn { .. } => Act::Turn,
            Self::Swap { .. } => Act::Swap,
            Self::Move { .. } => Act::Move,
            Self::Remove { .. } => Act::Remove,
            Self::Look { .. } | Self::LookBeyond { .. } => Act::Look,
            Self::Fetch { .. } => Act::Fetch,
        }
    }

    /// Whether nothing has to be looked up for it: every cell of it was seen and could be told, and the square is on the wall.
    #[must_use]
    pub fn is_known(&self, judgement: &Judgement) -> bool {
        let told = |cell: &Cell| {
            judgement.at(*cell).is_some_and(|at| !matches!(at.state, State::Unread | State::Unseen))
        };
        // cells to look at are such as could not be told
        self.act() != Act::Fetch && self.cells().iter().all(told)
    }

    /// Cells where it is done; where something goes from one to another, in that order.
    #[must_use]
    pub fn cells(&self) -> Vec<Cell> {
        match self {
            Self::Turn { cell, .. } | Self::Remove { cell, .. } => vec![*cell],
            Self::Swap { cells, .. } => cells.to_vec(),
            Self::Move { from, to, .. } => vec![*from, *to],
            Self::Look { cells, .. } => cells.clone(),
            Self::LookBeyond { cell, waits_at } => vec![*cell, *waits_at],
            Self::Fetch { square, .. } => vec![*square],
        }
    }

    /// Square that it is done with, by the cell where it belongs, if it is known.
    #[must_use]
    pub fn square(&self) -> Option<Cell> {
        match self {
            Self::Turn { cell, .. } | Self::LookBeyond { cell, .. } => Some(*cell),
            Self::Move { to, .. } => Some(*to),
            Self::Remove { square, .. } => *square,
            Self::Fetch { square, .. } => Some(*square),
            Self::Swap { .. } | Self::Look { .. } => None,
        }
    }

    /// Angle to turn it clockwise, in degrees, if it is a turn.
    #[must_use]
    pub fn degrees(&self) -> Option<u32> {
        if let Self::Turn { by, .. } = self { Some(by.degrees()) } else { None }
    }
}

/// Fixes in order: turns, swaps of two, chains, longer cycles, what comes down, where to look, what to find.
///
/// Within a kind from the top row down and from the left.
#[must_use]
pub fn fixes(judgement: &Judgement) -> Vec<Fix> {
    let arrows = Arrows::draw(judgement);
    let mut plan = turns(judgement);
    let (short, long): (Vec<_>, Vec<_>) = arrows.cycles().into_iter().partition(|cycle| cycle.len() == 2);
    plan.extend(short.iter().flat_map(|cycle| arrows.unwind_cycle(cycle)));
    let chains = arrows.chains();
    plan.extend(chains.iter().flat_map(|chain| arrows.unwind_chain(chain)));
    plan.extend(long.iter().flat_map(|cycle| arrows.unwind_cycle(cycle)));
    plan.extend(arrows.removals());
    plan.extend(arrows.looks());
    plan.extend(arrows.fetches(&chains));
    plan
}

fn turns(judgement: &Judgement) -> Vec<Fix> {
    let turned = judgement.cells.iter().filter(|at| at.state == State::Turned);
    let back = |turn: Turn| Turn::from_quarters(4 - turn.quarters());
    turned.map(|at| Fix::Turn { cell: at.cell, by: back(at.turn) }).collect()
}

/// Whether what hangs at `at` is a spare copy, of a square that hangs elsewhere to better use.
#[must_use]
pub fn is_spare(judgement: &Judgement, at: &JudgedCell) -> bool {
    at.found
        .is_some_and(|home| judgement.twice.contains(&home) && used_copy(judgement, home) != Some(at.cell))
}

/// Cell of the copy of a square that stays in use.
fn used_copy(judgement: &Judgement, home: Cell) -> Option<Cell> {
    let copies = || judgement.cells.iter().filter(move |at| at.found == Some(home)).map(|at| at.cell);
    copies()
        .find(|cell| on_cycle(judgement, *cell))
        .or_else(|| copies().min_by_key(|cell| apart(*cell, home)))
}

/// Whether following the arrows from a cell leads back to it.
fn on_cycle(judgement: &Judgement, from: Cell) -> bool {
    let next = |cell: Cell| judgement.at(cell).and_then(|at| at.found);
    let mut at = from;
    for _ in 0..judgement.cells.len() {
        match next(at) {
            Some(home) if home == from => return true,
            Some(home) => at = home,
            None => return false,
        }
    }
    false
}

/// Squared distance between two cells, in cells.
fn apart(a: Cell, b: Cell) -> usize {
    a.row.abs_diff(b.row).pow(2) + a.column.abs_diff(b.column).pow(2)
}

/// Chain of squares: the square in each cell belongs in the next.
struct Chain {
    /// Cells in order, at least one, each with a square.
    cells: Vec<Cell>,
    /// Cell where the last square belongs, without a square of use.
    end: Cell,
}

/// Graph of moves: an arrow from each cell whose square belongs elsewhere to the cell where it belongs.
struct Arrows<'a> {
    judgement: &'a Judgement,
    grid: Grid,
    /// Target of each cell's arrow, row by row.
    out: Vec<Option<Cell>>,
    /// Source of the arrow into each cell, row by row.
    into: Vec<Option<Cell>>,
    /// Whether each cell has a square that is spare, foreign or without a spot, row by row.
    useless: Vec<bool>,
}

impl<'a> Arrows<'a> {
    fn draw(judgement: &'a Judgement) -> Self {
        let grid = judgement.grid;
        let mut out = vec![None; grid.count()];
        let mut into = vec![None; grid.count()];
        let mut useless = vec![false; grid.count()];
        for at in &judgement.cells {
            let here = grid.index(at.cell);
            let has_no_spot = at.found.is_none_or(|home| grid.is_kept_free(home));
            useless[here] = (at.state == State::Wrong && has_no_spot) || is_spare(judgement, at);
            if let Some(home) = at.found
                && home != at.cell
                && !useless[here]
            {
                out[here] = Some(home);
                into[grid.index(home)] = Some(at.cell);
            }
        }
        Self { judgement, grid, out, into, useless }
    }

    fn next(&self, cell: Cell) -> Option<Cell> {
        self.out[self.grid.index(cell)]
    }

    fn awaited(&self, cell: Cell) -> bool {
        self.into[self.grid.index(cell)].is_some()
    }

    fn state(&self, cell: Cell) -> State {
        self.judgement.at(cell).map_or(State::Unseen, |at| at.state)
    }

    /// Whether the square that hangs there has to be turned to hang upright.
    fn askew(&self, cell: Cell) -> bool {
        self.judgement.at(cell).is_some_and(|at| at.turn != Turn::None)
    }

    /// Chains, by their first cell from the top left.
    fn chains(&self) -> Vec<Chain> {
        let starts = self.grid.cells().filter(|cell| self.next(*cell).is_some() && !self.awaited(*cell));
        starts
            .map(|start| {
                let mut cells = vec![start];
                let mut at = start;
                while let Some(next) = self.next(at) {
                    if self.next(next).is_some() {
                        cells.push(next);
                    }
                    at = next;
                }
                Chain { cells, end: at }
            })
            .collect()
    }

    /// Cycles, shortest first, then from the top left; each begins with the cell from which the others are
    /// nearest.
    fn cycles(&self) -> Vec<Vec<Cell>> {
        let mut walked = vec![false; self.grid.count()];
        for chain in self.chains() {
            chain.cells.iter().for_each(|cell| walked[self.grid.index(*cell)] = true);
        }
        let mut cycles = Vec::new();
        for start in self.grid.cells() {
            let mut cycle = Vec::new();
            let mut at = start;
            while let Some(next) = self.next(at)
                && !walked[self.grid.index(at)]
            {
                walked[self.grid.index(at)] = true;
                cycle.push(at);
                at = next;
            }
            if !cycle.is_empty() {
                cycles.push(from_the_middle(cycle));
            }
        }
        cycles.sort_by_key(Vec::len);
        cycles
    }

    /// Swaps that undo a cycle: each takes what hangs in the first cell home; the last brings the first cell
    /// its own.
    fn unwind_cycle(&self, cycle: &[Cell]) -> Vec<Fix> {
        let Some((pivot, others)) = cycle.split_first() else { return Vec::new() };
        let mut hung = *pivot; // where the square that is now in the first cell hung at the beginning
        let mut swaps = Vec::new();
        for (i, to) in others.iter().enumerate() {
            let mut upright = Vec::new();
            if self.askew(hung) {
                upright.push(*to);
            }
            if i + 1 == others.len() && self.askew(*to) {
                upright.push(*pivot);
            }
            swaps.push(Fix::Swap { cells: [*pivot, *to], upright });
            hung = *to;
        }
        swaps
    }

    fn unwind_chain(&self, chain: &Chain) -> Vec<Fix> {
        match self.state(chain.end) {
            State::Unseen => self.wait_for(chain),
            State::Unread => {
                let look = self.look(vec![chain.end]);
                let swaps = backwards(chain).map(|[from, to]| self.swap_home(from, to));
                std::iter::once(look).chain(swaps).collect()
            }
            _ => {
                let removed = self.useless[self.grid.index(chain.end)].then(|| self.removal(chain.end));
                let moves =
                    backwards(chain).map(|[from, to]| Fix::Move { from, to, upright: self.askew(from) });
                removed.into_iter().chain(moves).collect()
            }
        }
    }

    /// Fixes of a chain that ends in an unseen cell: all but its last square come home; the last takes the
    /// first one's place and waits.
    fn wait_for(&self, chain: &Chain) -> Vec<Fix> {
        let mut fixes: Vec<Fix> =
            backwards(chain).skip(1).map(|[from, to]| self.swap_home(from, to)).collect();
        fixes.extend(
            chain.cells.first().map(|waits_at| Fix::LookBeyond { cell: chain.end, waits_at: *waits_at }),
        );
        fixes
    }

    /// Swap that brings a square home; what comes out of a cell that could not be read is hung upright in any
    /// case.
    fn swap_home(&self, from: Cell, to: Cell) -> Fix {
        let mut upright = Vec::new();
        if self.askew(from) {
            upright.push(to);
        }
        if self.state(to) == State::Unread {
            upright.push(from);
        }
        Fix::Swap { cells: [from, to], upright }
    }

    fn removal(&self, cell: Cell) -> Fix {
        Fix::Remove { cell, square: self.judgement.at(cell).and_then(|at| at.found) }
    }

    /// Removals from cells where nothing waits to go.
    fn removals(&self) -> Vec<Fix> {
        let useless = |cell: &Cell| self.useless[self.grid.index(*cell)] && !self.awaited(*cell);
        self.grid.cells().filter(useless).map(|cell| self.removal(cell)).collect()
    }

    fn look(&self, cells: Vec<Cell>) -> Fix {
        let moved_between = cells.iter().any(|cell| self.judgement.contradictions.contains(cell));
        Fix::Look { cells, moved_between, unaccounted: self.judgement.missing.clone() }
    }

    /// Looks at unread cells besides those where a chain ends: a row at a time, contradictions apart.
    fn looks(&self) -> Vec<Fix> {
        let mut looks = Vec::new();
        for row in 0..self.grid.rows {
            for contradicted in [true, false] {
                let cells: Vec<Cell> = (0..self.grid.columns)
                    .map(|column| Cell { row, column })
                    .filter(|cell| self.state(*cell) == State::Unread && !self.awaited(*cell))
                    .filter(|cell| self.judgement.contradictions.contains(cell) == contradicted)
                    .filter(|cell| !self.judgement.spare.contains(cell))
                    .collect();
                if !cells.is_empty() {
                    looks.push(self.look(cells));
                }
            }
        }
        looks
    }

    /// Fetches of missing squares whose cells are empty by then.
    fn fetches(&self, chains: &[Chain]) -> Vec<Fix> {
        let leaves_empty = |cell: Cell| {
            let here = self.state(cell) == State::Empty || self.useless[self.grid.index(cell)];
            let end = chains.iter().find(|chain| chain.cells.first() == Some(&cell)).map(|chain| chain.end);
            here || end.is_some_and(|end| !matches!(self.state(end), State::Unread | State::Unseen))
        };
        let perhaps_on_wall = self.judgement.summary.unknown() > 0;
        let missing = self.judgement.missing.iter().copied();
        missing
            .filter(|cell| leaves_empty(*cell))
            .map(|square| Fix::Fetch { square, perhaps_on_wall })
            .collect()
    }
}

/// Steps of a chain, the last first, each from a cell to the next.
fn backwards(chain: &Chain) -> impl Iterator<Item = [Cell; 2]> {
    let to = chain.cells.iter().skip(1).copied().chain(std::iter::once(chain.end));
    let mut steps: Vec<[Cell; 2]> =
        chain.cells.iter().copied().zip(to).map(|(from, to)| [from, to]).collect();
    steps.reverse();
    steps.into_iter()
}

/// Cycle begun at the cell whose squared distances to the others are smallest in sum.
fn from_the_middle(mut cycle: Vec<Cell>) -> Vec<Cell> {
    let sum = |middle: Cell| cycle.iter().map(|cell| apart(*cell, middle)).sum::<usize>();
    let best = (0..cycle.len()).min_by_key(|i| (sum(cycle[*i]), *i)).unwrap_or(0);
    cycle.rotate_left(best);
    cycle
}
