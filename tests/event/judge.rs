//! The judge: states, and the fewest fixes against a full search and an independent hand at the wall.

use std::collections::{HashMap, VecDeque};

use everysquare::frame::{Map, Point};
use everysquare::judge::{Act, Advice, Fix, Judgement, Outcome, Part, Side, State, advise, fixes, judge};
use everysquare::plan::{Cell, Grid, KeptFree, Turn};
use everysquare::read::lens::Lens;
use everysquare::read::{Apart, Camera, CellReading, PhotoReading, Sight, WallReading};
use proptest::prelude::*;

/// What hangs in a cell. Cells and squares are numbers here, in the order of the grid.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Hash)]
enum Hung {
    Nothing,
    Foreign,
    Square(usize, u32),
}

/// What the photo shows of it.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
enum Shown {
    Clearly,
    Unreadable,
    NotAtAll,
}

fn photo(cells: Vec<CellReading>) -> PhotoReading {
    let camera = Camera {
        wall_to_straight: Map::scale_then_shift(2.0, 100.0, 100.0),
        lens: Lens::straight(4000.0, 3000.0),
    };
    PhotoReading {
        photo: 0,
        width: 4000,
        height: 3000,
        codes_read: 0,
        camera,
        mirrored: false,
        px_per_module: 2.0,
        worst_shift_mm: 1.0,
        cells,
        apart: Apart::default(),
    }
}

fn reading(grid: &Grid, hung: &[Hung], shown: &[Shown]) -> WallReading {
    let sight = |number: usize| match (shown[number], hung[number]) {
        (Shown::NotAtAll, _) => Sight::Unseen,
        (Shown::Unreadable, _) => Sight::Unread,
        (_, Hung::Nothing) => Sight::Empty,
        (_, Hung::Foreign) => Sight::Stranger { text: "QQQ-A1".into(), turn: Turn::None },
        (_, Hung::Square(home, quarters)) => {
            Sight::Square { home: grid.at(home), turn: Turn::from_quarters(quarters) }
        }
    };
    let corners = Some([Point::new(0.0, 0.0); 4]);
    let cells: Vec<CellReading> = (0..grid.count())
        .map(|n| CellReading { cell: grid.at(n), sight: sight(n), certainty: 0.9, corners, photo: 0 })
        .collect();
    WallReading {
        photos: vec![photo(cells.clone())],
        cells,
        contradictions: Vec::new(),
        apart: Apart::default(),
    }
}

fn judged(grid: &Grid, hung: &[Hung]) -> Judgement {
    judge(&reading(grid, hung, &vec![Shown::Clearly; hung.len()]), grid)
}

/// A person at the wall who does exactly what is written and nothing else. Refuses what cannot be done.
fn obey(grid: &Grid, wall: &mut [Hung], fix: &Fix) {
    let upright = |hung: Hung| match hung {
        Hung::Square(home, _) => Hung::Square(home, 0),
        other => other,
    };
    match fix {
        Fix::Turn { cell, by } => {
            let Hung::Square(home, quarters) = wall[grid.index(*cell)] else { panic!("nothing to turn") };
            wall[grid.index(*cell)] = Hung::Square(home, (quarters + by.quarters()) % 4);
        }
        Fix::Swap { cells: [a, b], upright: turned } => {
            assert_ne!(wall[grid.index(*a)], Hung::Nothing, "nothing hangs at {a:?}");
            assert_ne!(wall[grid.index(*b)], Hung::Nothing, "nothing hangs at {b:?}");
            wall.swap(grid.index(*a), grid.index(*b));
            for cell in turned {
                wall[grid.index(*cell)] = upright(wall[grid.index(*cell)]);
            }
        }
        Fix::Move { from, to, upright: turn } => {
            assert_eq!(wall[grid.index(*to)], Hung::Nothing, "{to:?} is not empty");
            assert_ne!(wall[grid.index(*from)], Hung::Nothing, "nothing hangs at {from:?}");
            wall.swap(grid.index(*from), grid.index(*to));
            if *turn {
                wall[grid.index(*to)] = upright(wall[grid.index(*to)]);
            }
        }
        Fix::Remove { cell, .. } => {
            assert_ne!(wall[grid.index(*cell)], Hung::Nothing, "nothing to take down");
            wall[grid.index(*cell)] = Hung::Nothing;
        }
        Fix::Fetch { square, .. } => {
            let home = grid.index(*square);
            assert_eq!(wall[home], Hung::Nothing, "{square:?} is not empty");
            assert!(!wall.iter().any(|h| matches!(h, Hung::Square(s, _) if *s == home)), "it hangs already");
            wall[home] = Hung::Square(home, 0);
        }
        Fix::Look { .. } | Fix::LookBeyond { .. } => {}
    }
}

/// A wall of which some is not seen (0) or cannot be read (1), and what is judged of it.
fn partly_seen(grid: &Grid, wall: &[Hung], shown: &[u8]) -> (Vec<Hung>, Judgement) {
    // Which of two copies is to spare may depend on what nobody can see: no square hangs twice here.
    let first = |n: usize| {
        let square = |m: usize| if let Hung::Square(home, _) = wall[m] { Some(home) } else { None };
        square(n).is_none() || (0..n).all(|m| square(m) != square(n))
    };
    let wall: Vec<Hung> = (0..grid.count()).map(|n| if first(n) { wall[n] } else { Hung::Foreign }).collect();
    let shown: Vec<Shown> = (0..grid.count())
        .map(|n| match (shown[n], wall[n]) {
            (0, _) => Shown::NotAtAll,
            (1, hung) if hung != Hung::Nothing => Shown::Unreadable, // unread means that something hangs there
            _ => Shown::Clearly,
        })
        .collect();
    let seen = judge(&reading(grid, &wall, &shown), grid);
    (wall, seen)
}

fn all_right(wall: &[Hung]) -> bool {
    wall.iter().enumerate().all(|(n, hung)| *hung == Hung::Square(n, 0))
}

/// Fewest moves from each wall of `cells` cells to the right one, by breadth-first search from there over
/// undone moves. Squares turn upright whenever they are moved, for nothing; turned ones are told apart if
/// `turning`.
fn fewest_moves(cells: usize, turning: bool) -> HashMap<Vec<Hung>, usize> {
    let right: Vec<Hung> = (0..cells).map(|n| Hung::Square(n, 0)).collect();
    let mut steps = HashMap::from([(right.clone(), 0)]);
    let mut queue = VecDeque::from([right]);
    let turns: &[u32] = if turning { &[0, 1, 2, 3] } else { &[0] };
    while let Some(wall) = queue.pop_front() {
        let so_far = steps[&wall];
        for before in undone(&wall, turns) {
            steps.entry(before.clone()).or_insert_with(|| {
                queue.push_back(before);
                so_far + 1
            });
        }
    }
    steps
}

/// Every wall from which one move leads to this one.
fn undone(wall: &[Hung], turns: &[u32]) -> Vec<Vec<Hung>> {
    let mut walls = Vec::new();
    let with = |n: usize, hung: Hung| {
        let mut before = wall.to_vec();
        before[n] = hung;
        before
    };
    let as_turned = |hung: Hung| match hung {
        Hung::Square(home, _) => turns.iter().map(|t| Hung::Square(home, *t)).collect(),
        other => vec![other],
    };
    for a in 0..wall.len() {
        for b in 0..a {
            for to_a in as_turned(wall[b]) {
                for to_b in as_turned(wall[a]) {
                    let mut before = with(a, to_a);
                    before[b] = to_b;
                    walls.push(before);
                }
            }
        }
        walls.extend(as_turned(wall[a]).into_iter().map(|hung| with(a, hung)));
        match wall[a] {
            Hung::Nothing => {
                walls.push(with(a, Hung::Foreign));
                for home in 0..wall.len() {
                    walls.extend(turns.iter().map(|t| with(a, Hung::Square(home, *t))));
                }
            }
            Hung::Square(home, 0) => {
                let once = wall.iter().filter(|h| matches!(h, Hung::Square(s, _) if *s == home)).count() == 1;
                if once {
                    walls.push(with(a, Hung::Nothing));
                }
            }
            _ => {}
        }
    }
    walls
}

fn check_all(columns: usize, rows: usize, turning: bool) -> usize {
    let grid = Grid::usual(columns, rows);
    let steps = fewest_moves(grid.count(), turning);
    for (wall, fewest) in &steps {
        let plan = fixes(&judged(&grid, wall));
        assert_eq!(plan.len(), *fewest, "{wall:?}: {plan:?}");
        let mut done = wall.clone();
        plan.iter().for_each(|fix| obey(&grid, &mut done, fix));
        assert!(all_right(&done), "{wall:?} became {done:?} by {plan:?}");
    }
    steps.len()
}

#[test]
fn no_plan_is_shorter_on_any_wall_of_five_cells() {
    // each of 5 cells: nothing, a foreign square, or any of 5 squares, copies included
    assert_eq!(check_all(5, 1, false), 7_usize.pow(5));
}

#[test]
fn no_plan_is_shorter_on_any_wall_of_three_cells_with_turns() {
    assert_eq!(check_all(3, 1, true), 14_usize.pow(3));
}

/// All orders of `n` things, with the number of their cycles counted in the plainest way.
fn orders(n: usize) -> Vec<Vec<usize>> {
    if n == 0 {
        return vec![Vec::new()];
    }
    let mut all = Vec::new();
    for shorter in orders(n - 1) {
        for at in 0..n {
            let mut order = shorter.clone();
            order.insert(at, n - 1);
            all.push(order);
        }
    }
    all
}

fn cycles(order: &[usize]) -> usize {
    let smallest_of_its_cycle = |start: usize| {
        let mut at = order[start];
        while at != start {
            if at < start {
                return false;
            }
            at = order[at];
        }
        true
    };
    (0..order.len()).filter(|n| smallest_of_its_cycle(*n)).count()
}

#[test]
fn swaps_are_squares_minus_cycles_for_every_order_of_seven() {
    // Cayley distance: A. Cayley, "Note on the theory of permutations", 1849 (from memory)
    let grid = Grid::usual(7, 1);
    for order in orders(7) {
        let wall: Vec<Hung> = order.iter().map(|home| Hung::Square(*home, 0)).collect();
        let plan = fixes(&judged(&grid, &wall));
        assert_eq!(plan.len(), 7 - cycles(&order), "{order:?}");
        assert!(plan.iter().all(|fix| fix.act() == Act::Swap));
    }
}

/// A wall put up right, then upset.
fn upset() -> impl Strategy<Value = (Grid, Vec<Hung>)> {
    (1_usize..9, 1_usize..7).prop_flat_map(|(columns, rows)| {
        let n = columns * rows;
        let events = prop::collection::vec((0_u8..6, 0..n, 0..n, 0_u32..4), 0..30);
        events.prop_map(move |events| {
            let mut wall: Vec<Hung> = (0..n).map(|home| Hung::Square(home, 0)).collect();
            for (what, a, b, quarters) in events {
                match (what, wall[a]) {
                    (0 | 1, _) => wall.swap(a, b),
                    (2, Hung::Square(home, _)) => wall[a] = Hung::Square(home, quarters),
                    (3, _) => wall[a] = Hung::Nothing,
                    (4, _) => wall[a] = Hung::Foreign,
                    (_, hung) => wall[b] = hung,
                }
            }
            (Grid::usual(columns, rows), wall)
        })
    })
}

proptest! {
    #[test]
    fn doing_the_fixes_in_order_puts_all_right((grid, wall) in upset()) {
        let plan = fixes(&judged(&grid, &wall));
        let mut done = wall.clone();
        plan.iter().for_each(|fix| obey(&grid, &mut done, fix));
        prop_assert!(all_right(&done), "{:?} by {:?}", done, plan);
        prop_assert_eq!(judged(&grid, &done).outcome(), Outcome::AllRight);
    }

    /// What is done before the unknown cells are known is never a step too many.
    #[test]
    fn what_can_be_done_blindly_costs_nothing(
        (grid, wall) in upset(),
        shown in prop::collection::vec(0_u8..10, 63),
    ) {
        let (wall, seen) = partly_seen(&grid, &wall, &shown);
        let plan: Vec<Fix> = fixes(&seen).into_iter()
            .filter(|fix| !matches!(fix, Fix::Fetch { perhaps_on_wall: true, .. })) // those wait until somebody has looked
            .collect();
        let steps = plan.iter().filter(|fix| fix.act() != Act::Look).count();
        let mut done = wall.clone();
        plan.iter().for_each(|fix| obey(&grid, &mut done, fix));
        let rest = fixes(&judged(&grid, &done)).len();
        prop_assert_eq!(steps + rest, fixes(&judged(&grid, &wall)).len());
    }

    /// What needs no look stands alone: whatever else is left out, each fix brings its square home, and none is a step too many.
    #[test]
    fn what_is_known_can_be_done_without_the_rest(
        (grid, wall) in upset(),
        shown in prop::collection::vec(0_u8..10, 63),
    ) {
        let (wall, seen) = partly_seen(&grid, &wall, &shown);
        let plan: Vec<Fix> = fixes(&seen).into_iter().filter(|fix| fix.is_known(&seen)).collect();
        let mut done = wall.clone();
        for fix in &plan {
            obey(&grid, &mut done, fix);
            let home = |cell: &Cell| done[grid.index(*cell)] == Hung::Square(grid.index(*cell), 0);
            prop_assert!(fix.act() == Act::Remove || fix.cells().iter().any(home), "{:?} in {:?}", fix, plan);
        }
        let rest = fixes(&judged(&grid, &done)).len();
        prop_assert_eq!(plan.len() + rest, fixes(&judged(&grid, &wall)).len());
    }

    #[test]
    fn every_unread_cell_is_looked_at_and_every_lost_square_named((grid, wall) in upset()) {
        let shown: Vec<Shown> =
            wall.iter().map(|h| if *h == Hung::Foreign { Shown::Unreadable } else { Shown::Clearly }).collect();
        let seen = judge(&reading(&grid, &wall, &shown), &grid);
        let looked: Vec<Cell> =
            fixes(&seen).iter().filter(|f| f.act() == Act::Look).flat_map(Fix::cells).collect();
        for at in &seen.cells {
            let times = looked.iter().filter(|cell| **cell == at.cell).count();
            prop_assert_eq!(times, usize::from(at.state == State::Unread));
        }
        for n in 0..grid.count() {
            let hangs = wall.iter().any(|h| matches!(h, Hung::Square(s, _) if *s == n));
            prop_assert_eq!(seen.missing.contains(&grid.at(n)), !hangs);
        }
    }

    #[test]
    fn the_summary_adds_up_and_only_its_own_upright_square_is_right((grid, wall) in upset()) {
        let seen = judged(&grid, &wall);
        let s = seen.summary;
        prop_assert_eq!(s.right + s.wrong + s.turned + s.empty + s.unread + s.unseen, s.cells);
        for (n, at) in seen.cells.iter().enumerate() {
            prop_assert_eq!(at.state == State::Right, wall[n] == Hung::Square(n, 0));
        }
    }
}

proptest! {
    /// Whatever hangs of a border in reserve, nobody is sent for the rest of it, and what is said puts all else right.
    #[test]
    fn a_border_in_reserve_is_no_fault_where_it_is_away(
        (grid, mut wall) in upset(),
        away in prop::collection::vec(any::<bool>(), 63),
    ) {
        prop_assume!(grid.columns >= 3 && grid.rows >= 3);
        let grid = Grid { border: true, ..grid };
        for n in 0..grid.count() {
            if away[n] && grid.in_border(grid.at(n)) && wall[n] == Hung::Square(n, 0) {
                wall[n] = Hung::Nothing;
            }
        }
        let seen = judged(&grid, &wall);
        let s = seen.summary;
        prop_assert_eq!(s.right + s.wrong + s.turned + s.empty + s.unread + s.unseen, s.cells);
        let free = (0..grid.count()).filter(|n| grid.in_border(grid.at(*n)) && wall[*n] == Hung::Nothing);
        prop_assert_eq!(s.cells, grid.count() - free.count());
        prop_assert!(seen.missing.iter().all(|home| !grid.in_border(*home)));
        let plan = fixes(&seen);
        plan.iter().for_each(|fix| obey(&grid, &mut wall, fix));
        for (n, hung) in wall.iter().enumerate() {
            let is_free = grid.in_border(grid.at(n)) && *hung == Hung::Nothing;
            prop_assert!(is_free || *hung == Hung::Square(n, 0), "{:?} by {:?}", wall, plan);
        }
        prop_assert_eq!(judged(&grid, &wall).outcome(), Outcome::AllRight);
    }

    /// Whatever hangs, also over a spot that is kept free and of a square without a spot: what is said ends with all others right and
    /// nothing there.
    #[test]
    fn spots_that_are_kept_free_are_free_in_the_end(
        (grid, mut wall) in upset(),
        free in prop::collection::vec(0_usize..63, 0..4),
    ) {
        let cells: Vec<Cell> = free.iter().filter(|n| **n < grid.count()).map(|n| grid.at(*n)).collect();
        let grid = Grid { kept_free: KeptFree::of(&cells).unwrap(), ..grid };
        let seen = judged(&grid, &wall);
        let s = seen.summary;
        prop_assert_eq!(s.right + s.wrong + s.turned + s.empty + s.unread + s.unseen, s.cells);
        let is_told = |cell: &&Cell| wall[grid.index(**cell)] == Hung::Nothing;
        prop_assert_eq!(s.cells, grid.count() - grid.kept_free.cells().collect::<Vec<_>>().iter().filter(is_told).count());
        prop_assert!(seen.missing.iter().all(|home| grid.asks_for(*home)));
        let plan = fixes(&seen);
        plan.iter().for_each(|fix| obey(&grid, &mut wall, fix));
        for (n, hung) in wall.iter().enumerate() {
            let wanted = if grid.is_kept_free(grid.at(n)) { Hung::Nothing } else { Hung::Square(n, 0) };
            prop_assert_eq!(*hung, wanted, "{:?} by {:?}", &wall, &plan);
        }
        prop_assert_eq!(judged(&grid, &wall).outcome(), Outcome::AllRight);
    }

    /// A border of which nothing hangs leaves everything that is said as it is for the picture alone.
    #[test]
    fn a_border_in_reserve_says_nothing_of_what_lies_within(
        (inner, wall) in upset(),
        shown in prop::collection::vec(0_u8..10, 63),
        around in 0_u8..3,
    ) {
        let (wall, alone) = partly_seen(&inner, &wall, &shown);
        let grid = inner.with_border();
        let within = |n: usize| {
            let cell = inner.at(n);
            grid.index(Cell { row: cell.row + 1, column: cell.column + 1 })
        };
        let mut all = vec![Hung::Nothing; grid.count()];
        let nothing = [Shown::Clearly, Shown::Unreadable, Shown::NotAtAll][usize::from(around)];
        let mut seen = vec![nothing; grid.count()];
        for (n, hung) in wall.iter().enumerate() {
            all[within(n)] = match hung {
                Hung::Square(home, quarters) => Hung::Square(within(*home), *quarters),
                other => *other,
            };
            seen[within(n)] = match alone.cells[n].state {
                State::Unseen => Shown::NotAtAll,
                State::Unread => Shown::Unreadable,
                _ => Shown::Clearly,
            };
        }
        let with = judge(&reading(&grid, &all, &seen), &grid);
        prop_assert_eq!((with.summary, with.border_up()), (alone.summary, 0));
        let acts = |seen: &Judgement| fixes(seen).iter().map(Fix::act).collect::<Vec<Act>>();
        prop_assert_eq!(acts(&with), acts(&alone));
        for (n, at) in alone.cells.iter().enumerate() {
            prop_assert_eq!(with.cells[within(n)].state, at.state);
        }
    }
}

#[test]
fn a_square_that_hangs_twice_is_named_and_stays_right_in_its_own_cell() {
    let grid = Grid::usual(3, 1);
    let seen = judged(&grid, &[Hung::Square(0, 0), Hung::Square(0, 0), Hung::Square(2, 0)]);
    assert_eq!(seen.cells[0].state, State::Right);
    assert_eq!(seen.cells[1].state, State::Wrong);
    assert_eq!(seen.twice, [grid.at(0)]);
    assert_eq!(seen.missing, [grid.at(1)]);
    let (b1, a1) = (grid.at(1), grid.at(0));
    assert_eq!(
        fixes(&seen),
        [Fix::Remove { cell: b1, square: Some(a1) }, Fix::Fetch { square: b1, perhaps_on_wall: false }]
    );
}

#[test]
fn where_two_photos_disagree_nothing_is_called_right() {
    let grid = Grid::usual(2, 1);
    let mut wall = reading(&grid, &[Hung::Square(0, 0), Hung::Square(1, 0)], &[Shown::Clearly; 2]);
    wall.contradictions.push(grid.at(1));
    let seen = judge(&wall, &grid);
    assert_eq!(seen.cells[1].state, State::Unread);
    assert_eq!(seen.outcome(), Outcome::CannotTell);
    assert!(matches!(&fixes(&seen)[..], [Fix::Look { moved_between: true, .. }]));
    assert!(matches!(&advise(&wall, &seen)[0], Advice::Contradiction { .. }));
}

#[test]
fn outcomes_have_the_exit_codes_of_check() {
    let grid = Grid::usual(2, 1);
    let code =
        |hung: [Hung; 2], shown: [Shown; 2]| judge(&reading(&grid, &hung, &shown), &grid).outcome().code();
    let right = [Hung::Square(0, 0), Hung::Square(1, 0)];
    let clear = [Shown::Clearly; 2];
    assert_eq!(code(right, clear), 0);
    assert_eq!(code([Hung::Square(0, 0), Hung::Square(1, 2)], clear), 1);
    assert_eq!(code([Hung::Square(0, 0), Hung::Nothing], clear), 1);
    assert_eq!(code([Hung::Square(0, 0), Hung::Foreign], clear), 1);
    assert_eq!(code(right, [Shown::Clearly, Shown::Unreadable]), 2);
    assert_eq!(code(right, [Shown::Clearly, Shown::NotAtAll]), 2);
    assert_eq!(code([Hung::Nothing, Hung::Square(1, 0)], [Shown::Clearly, Shown::NotAtAll]), 1);
}

#[test]
fn the_part_outside_the_photo_is_named() {
    let grid = Grid::usual(9, 4);
    let wall: Vec<Hung> = (0..36).map(|n| Hung::Square(n, 0)).collect();
    let mut shown = vec![Shown::Clearly; 36];
    for row in 0..4 {
        for column in 6..9 {
            shown[row * 9 + column] = Shown::NotAtAll;
        }
    }
    shown[9 + 2] = Shown::NotAtAll; // somebody stands before C3
    let reading = reading(&grid, &wall, &shown);
    let advice = advise(&reading, &judge(&reading, &grid));
    assert_eq!(advice[0], Advice::StepBack { side: Side::Right, part: Part::Third, strips: 3 });
    assert_eq!(advice[1], Advice::Hidden { cells: vec![Cell { row: 1, column: 2 }] });
    assert_eq!(judge(&reading, &grid).surely_missing(), 0);
    assert_eq!(advice[2], Advice::MayHangUnseen { missing: 13, unknown: 13 });
}

#[test]
fn few_pixels_a_module_are_the_reason_where_there_are_few() {
    let grid = Grid::usual(3, 1);
    let wall: Vec<Hung> = (0..3).map(|n| Hung::Square(n, 0)).collect();
    let shown = [Shown::Clearly, Shown::Unreadable, Shown::Unreadable];
    let mut reading = reading(&grid, &wall, &shown);
    let seen = judge(&reading, &grid);
    assert_eq!(advise(&reading, &seen)[0], Advice::Uncover { unread: 2 });
    reading.photos[0].px_per_module = 0.6;
    assert_eq!(advise(&reading, &seen)[0], Advice::GoCloser { photo: 0, px_per_module: 0.6, unread: 2 });
}

#[test]
fn where_a_small_photo_hides_much_it_is_what_is_wrong_and_nothing_is_to_be_looked_up() {
    let grid = Grid::usual(5, 4);
    let wall: Vec<Hung> = (0..20).map(|n| Hung::Square(n ^ usize::from(n < 2), 0)).collect();
    let mut shown = vec![Shown::Clearly; 20];
    shown[10..17].fill(Shown::Unreadable);
    let mut reading = reading(&grid, &wall, &shown);
    let seen = judge(&reading, &grid);
    assert_eq!(advise(&reading, &seen)[0], Advice::Uncover { unread: 7 });
    reading.photos[0].px_per_module = 0.6;
    let advice = advise(&reading, &seen);
    assert_eq!(advice[0], Advice::TooSmall { unread: 7, cells: 20 });
    assert!(advice.iter().all(|one| !matches!(one, Advice::GoCloser { .. })));
    let known: Vec<bool> = fixes(&seen).iter().map(|fix| fix.is_known(&seen)).collect();
    assert!(known[0] && known.iter().filter(|known| **known).count() == 1, "{known:?}");
}

#[test]
fn a_wall_that_hangs_one_column_over_is_seen_as_a_whole() {
    let grid = Grid::usual(4, 2);
    let wall: Vec<Hung> =
        (0..8).map(|n| if n % 4 == 0 { Hung::Nothing } else { Hung::Square(n - 1, 0) }).collect();
    let reading = reading(&grid, &wall, &[Shown::Clearly; 8]);
    let seen = judge(&reading, &grid);
    assert_eq!(advise(&reading, &seen)[0], Advice::Shifted { right: 1, down: 0 });
}

#[test]
fn a_cell_that_the_reading_leaves_out_is_unseen() {
    let grid = Grid::usual(2, 2);
    let reading = WallReading {
        photos: Vec::new(),
        cells: Vec::new(),
        contradictions: Vec::new(),
        apart: Apart::default(),
    };
    let seen = judge(&reading, &grid);
    assert_eq!(seen.summary.unseen, 4);
    assert_eq!(seen.outcome(), Outcome::CannotTell);
}

#[test]
fn a_square_on_spare_paper_is_looked_at_and_neither_missing_nor_guessed() {
    let grid = Grid::usual(2, 2);
    let wall: [Hung; 4] = std::array::from_fn(|n| Hung::Square(n, 0));
    let [b2, c] = [grid.at(1), grid.at(2)];
    let shown = [Shown::Clearly, Shown::Unreadable, Shown::Clearly, Shown::Clearly];
    let reading = reading(&grid, &wall, &shown);
    let seen = judge(&reading, &grid).with_spares(&[b2, c]);
    assert_eq!(
        (seen.spare.clone(), seen.missing.clone()),
        (vec![b2], Vec::new()),
        "{c:?} was read: it is no spare"
    );
    assert_eq!((fixes(&seen), seen.outcome()), (Vec::new(), Outcome::CannotTell));
    assert_eq!(advise(&reading, &seen), [Advice::OnSpare { cells: vec![b2] }]);
    let bare = [wall[0], Hung::Nothing, wall[2], wall[3]];
    let gone = judged(&grid, &bare).with_spares(&[b2]);
    assert_eq!(
        (gone.spare, gone.missing),
        (Vec::new(), vec![b2]),
        "it does not hang: it is missing like any other"
    );
}

#[test]
fn what_comes_out_of_an_unread_cell_is_hung_upright() {
    // found by `what_can_be_done_blindly_costs_nothing`: A1's square hung turned in the unread C1, C1's in A1; after the swap
    // a turn was left over, which the swap could have done on the way
    let grid = Grid::usual(3, 1);
    let wall = [Hung::Square(2, 0), Hung::Square(1, 0), Hung::Square(0, 1)];
    let shown = [Shown::Clearly, Shown::Clearly, Shown::Unreadable];
    let plan = fixes(&judge(&reading(&grid, &wall, &shown), &grid));
    let (a1, c1) = (grid.at(0), grid.at(2));
    assert_eq!(plan[0].act(), Act::Look);
    assert_eq!(plan[1], Fix::Swap { cells: [a1, c1], upright: vec![a1] });
    assert_eq!(plan.len(), 2);
}
