//! Pieces of a group next to each other: connected parts of the wall.
//!
//! The wall is first cut along a path to and fro, which makes connected parts of the right sizes. Then neighbouring groups trade a piece for
//! a piece wherever both parts stay connected, at random, less and less often for the worse (simulated annealing, always from the same
//! seed): first until the busiest has as little to draw as can be found, then, without losing that, until the parts have short borders.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

use crate::frame::float;
use crate::plan::{Grid, Level};

/// Trades that are tried in each of the two stages.
const TRADES: u32 = 30_000;
/// How much worse a trade may make things at first, as a part of the mean; at last a hundredth of that.
const WARM: f64 = 0.05;
/// How much more than the least that was found the busiest may draw, where that shortens borders.
const SLACK: f64 = 1.02;
/// Weight of an even share beside the largest one.
const EVEN: f64 = 0.3;

/// The group of each piece.
pub(super) fn owners(
    grid: &Grid,
    levels: &[Level],
    minutes: [f64; 4],
    people: &[usize],
    quotas: &[usize],
) -> Vec<usize> {
    let minutes: Vec<f64> = levels.iter().map(|level| minutes[level.index()]).collect();
    let starts = [true, false].map(|by_rows| Wall::new(grid, &minutes, people, path(grid, by_rows), quotas));
    let best = starts.into_iter().map(settled).min_by(|a, b| a.1.total_cmp(&b.1));
    best.map_or_else(Vec::new, |(wall, _)| wall.owners)
}

/// Both stages; the wall, and how good it is.
fn settled(mut wall: Wall) -> (Wall, f64) {
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    wall.trade(&mut rng, |wall| wall.uneven());
    let bound = wall.most() * SLACK;
    let borders = |wall: &Wall| {
        if wall.most() > bound { f64::INFINITY } else { wall.borders() / float(wall.owners.len()) }
    };
    wall.trade(&mut rng, borders);
    let good = wall.most() / wall.mean + 0.2 * borders(&wall);
    (wall, good)
}

/// The cells along a path to and fro, by rows or by columns.
fn path(grid: &Grid, by_rows: bool) -> Vec<usize> {
    let (long, short) = if by_rows { (grid.columns, grid.rows) } else { (grid.rows, grid.columns) };
    let cell = |line: usize, i: usize| {
        let i = if line.is_multiple_of(2) { i } else { long - 1 - i };
        if by_rows { line * grid.columns + i } else { i * grid.columns + line }
    };
    (0..short).flat_map(|line| (0..long).map(move |i| (line, i))).map(|(line, i)| cell(line, i)).collect()
}

/// A wall that is shared out.
#[derive(Clone)]
struct Wall {
    columns: usize,
    minutes: Vec<f64>,
    people: Vec<f64>,
    owners: Vec<usize>,
    /// Minutes of each group.
    sums: Vec<f64>,
    /// Minutes for each of all people.
    mean: f64,
}

impl Wall {
    fn new(grid: &Grid, minutes: &[f64], people: &[usize], path: Vec<usize>, quotas: &[usize]) -> Self {
        let of_path = quotas.iter().enumerate().flat_map(|(group, quota)| std::iter::repeat_n(group, *quota));
        let mut owners = vec![0; path.len()];
        path.into_iter().zip(of_path).for_each(|(cell, group)| owners[cell] = group);
        let mut sums = vec![0.0; quotas.len()];
        owners.iter().zip(minutes).for_each(|(group, minutes)| sums[*group] += minutes);
        let people: Vec<f64> = people.iter().map(|people| float(*people)).collect();
        let mean = minutes.iter().sum::<f64>() / people.iter().sum::<f64>();
        Self { columns: grid.columns, minutes: minutes.to_vec(), people, owners, sums, mean: mean.max(1e-9) }
    }

    /// The most that the people of a group draw, each.
    fn most(&self) -> f64 {
        self.sums.iter().zip(&self.people).map(|(sum, people)| sum / people).fold(0.0, f64::max)
    }

    /// How uneven shares are: the largest, and a little of how far all are off the mean.
    fn uneven(&self) -> f64 {
        let off =
            self.sums.iter().zip(&self.people).map(|(sum, people)| (sum / people / self.mean - 1.0).powi(2));
        self.most() / self.mean + EVEN * (off.sum::<f64>() / float(self.sums.len())).sqrt()
    }

    /// Neighbours that belong to two groups.
    fn borders(&self) -> f64 {
        let differs = |cell: usize, other: usize| self.owners[cell] != self.owners[other];
        let own = |cell: usize| {
            beside(cell, self.columns, self.owners.len()).filter(|other| differs(cell, *other)).count()
        };
        float((0..self.owners.len()).map(own).sum::<usize>()) / 2.0
    }

    /// Trades pieces while `cost` says what is better, and leaves the best that was met.
    fn trade(&mut self, rng: &mut ChaCha8Rng, cost: impl Fn(&Self) -> f64) {
        let mut now = cost(self);
        let mut best = (now, self.owners.clone(), self.sums.clone());
        for trade in 0..TRADES {
            let warm = WARM * 0.01_f64.powf(f64::from(trade) / f64::from(TRADES));
            let Some((a, b)) = self.pair(rng) else { continue };
            self.swap(a, b);
            let then = cost(self);
            let takes = then <= now || rng.random::<f64>() < ((now - then) / warm).exp();
            if takes && self.connected(self.owners[a], a) && self.connected(self.owners[b], b) {
                now = then;
                if now < best.0 - 1e-12 {
                    best = (now, self.owners.clone(), self.sums.clone());
                }
            } else {
                self.swap(a, b);
            }
        }
        (_, self.owners, self.sums) = best;
    }

    /// Two cells of two neighbouring groups, each beside the other group.
    fn pair(&self, rng: &mut ChaCha8Rng) -> Option<(usize, usize)> {
        let count = self.owners.len();
        let a = rng.random_range(0..count);
        let around: Vec<usize> =
            beside(a, self.columns, count).filter(|cell| self.owners[*cell] != self.owners[a]).collect();
        let other = self.owners[*around.get(rng.random_range(0..around.len().max(1)))?];
        let touches =
            |cell: usize| beside(cell, self.columns, count).any(|near| self.owners[near] == self.owners[a]);
        let theirs: Vec<usize> =
            (0..count).filter(|cell| self.owners[*cell] == other && touches(*cell)).collect();
        Some((a, *theirs.get(rng.random_range(0..theirs.len().max(1)))?))
    }

    fn swap(&mut self, a: usize, b: usize) {
        let (one, other) = (self.owners[a], self.owners[b]);
        let difference = self.minutes[a] - self.minutes[b];
        self.sums[one] -= difference;
        self.sums[other] += difference;
        self.owners.swap(a, b);
    }

    /// Whether all cells of a group are reached from one of them.
    fn connected(&self, group: usize, start: usize) -> bool {
        let mut seen = vec![false; self.owners.len()];
        let (mut open, mut count) = (vec![start], 1);
        seen[start] = true;
        while let Some(cell) = open.pop() {
            for near in beside(cell, self.columns, self.owners.len()) {
                if self.owners[near] == group && !seen[near] {
                    seen[near] = true;
                    count += 1;
                    open.push(near);
                }
            }
        }
        count == self.owners.iter().filter(|owner| **owner == group).count()
    }
}

/// The cells left, right, above and below.
fn beside(cell: usize, columns: usize, count: usize) -> impl Iterator<Item = usize> {
    let column = cell % columns;
    [
        (column > 0).then(|| cell - 1),
        (column + 1 < columns).then_some(cell + 1),
        cell.checked_sub(columns),
        (cell + columns < count).then_some(cell + columns),
    ]
    .into_iter()
    .flatten()
}
