//! One evening at its stations, event by event (discrete-event simulation).
//!
//! ```text
//!             ┌─ leaves when her patience is over
//!  arrivals ──┴▶ line ──▶ giving out ──▶ a seat, drawing ──▶ to be hung ──▶ hanging ──▶ up
//!                 ▲      (helper, seat)                  │    (helper)
//!                 └──── stays for another piece ─────────┘
//! ```
//!
//! The line is first come, first served. A piece is given out when a helper and a seat are free, a piece is left and its last call
//! is not over; the seat is taken from then on. Times belong to a station's k-th service and not to a visitor: so with a helper or a
//! seat more every k-th service begins no later, and no evening has fewer squares up at any minute. That holds where some leave the
//! line (whoever is served earlier makes room) and where some stay for another piece; where both happen it holds on the average:
//! one who stays may be in line before one who would not have left.

use std::cmp::Reverse;
use std::collections::{BinaryHeap, VecDeque};

use crate::frame::float;

/// Number of helpers at a station over time.
///
/// ```
/// use everysquare::plan::crowd::Staff;
/// let staff = Staff::changing(&[(0.0, 1), (20.0, 2), (50.0, 1)]);
/// assert_eq!([staff.at(0.0), staff.at(20.0), staff.at(49.9), staff.at(90.0)], [1, 2, 2, 1]);
/// assert_eq!(staff.most(), 2);
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Staff {
    /// From which minute on how many, ascending; the first from the beginning.
    shifts: Vec<(f64, usize)>,
}

impl From<usize> for Staff {
    fn from(helpers: usize) -> Self {
        Self::always(helpers)
    }
}

impl Staff {
    /// The same number all the time.
    #[must_use]
    pub fn always(helpers: usize) -> Self {
        Self { shifts: vec![(0.0, helpers)] }
    }

    /// From each minute on so many; the minutes ascend.
    #[must_use]
    pub fn changing(shifts: &[(f64, usize)]) -> Self {
        Self { shifts: shifts.to_vec() }
    }

    /// How many at a minute.
    #[must_use]
    pub fn at(&self, minute: f64) -> usize {
        self.shifts.iter().rev().find(|(from, _)| *from <= minute).map_or(0, |(_, helpers)| *helpers)
    }

    /// The most at any time.
    #[must_use]
    pub fn most(&self) -> usize {
        self.shifts.iter().map(|(_, helpers)| *helpers).max().unwrap_or(0)
    }

    /// One fewer all the time, but at least one.
    #[must_use]
    pub fn one_fewer(&self) -> Self {
        Self { shifts: self.shifts.iter().map(|(from, helpers)| (*from, (helpers - 1).max(1))).collect() }
    }

    /// From which minute on how many.
    #[must_use]
    pub fn shifts(&self) -> &[(f64, usize)] {
        &self.shifts
    }
}

/// What there is at an evening.
#[derive(Clone, Debug, PartialEq)]
pub struct Stations {
    /// Helpers who hand out pieces.
    pub giving_out: Staff,
    /// Seats to draw at.
    pub seats: usize,
    /// Helpers who hang squares.
    pub hanging: Staff,
    /// For each piece, in the order in which they are given out, the last minute at which it is; never falling.
    pub last_calls: Vec<f64>,
}

/// What chance decides: times in minutes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Trace {
    /// When each visitor comes, ascending, and how long she waits for a piece before she leaves.
    pub visitors: Vec<(f64, f64)>,
    /// How long giving out takes, by service.
    pub giving_out: Vec<f64>,
    /// How long drawing takes, by service.
    pub drawing: Vec<f64>,
    /// How long hanging takes, by service.
    pub hanging: Vec<f64>,
    /// Whether somebody stays for another piece after a drawing, by finished drawing.
    pub stays: Vec<bool>,
}

/// What happened, in minutes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Happened {
    /// When each piece was given out, and since when its visitor had waited.
    pub given_out: Vec<Wait>,
    /// Who left without a piece because her patience was over: when she went, and since when she had waited.
    pub left: Vec<Wait>,
    /// Who was sent away, when she was and since when she had waited: no piece was left, or it was too late for one.
    pub sent_away: Vec<Wait>,
    /// When each square came to the wall and since when it had waited for a helper.
    pub taken_to_hang: Vec<Wait>,
    /// When each square was up, ascending.
    pub up: Vec<f64>,
    /// The most seats that were taken at once.
    pub seats_taken: usize,
    /// Visitors who got a piece.
    pub served: usize,
    /// Visitors who waited, added up over time, in visitors times minutes.
    pub waited: f64,
}

/// A wait in a line.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Wait {
    /// When it began.
    pub since: f64,
    /// When it ended.
    pub until: f64,
}

impl Happened {
    /// How many squares are up at a minute.
    #[must_use]
    pub fn up_by(&self, minute: f64) -> usize {
        self.up.partition_point(|up| *up <= minute)
    }
}

impl Wait {
    /// How long it was.
    #[must_use]
    pub fn minutes(&self) -> f64 {
        self.until - self.since
    }
}

/// A minute that has an order.
#[derive(Copy, Clone, Debug, PartialEq)]
struct Minute(f64);

impl Eq for Minute {}

impl PartialOrd for Minute {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Minute {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        self.0.total_cmp(&other.0)
    }
}

/// What happens at a minute; of what happens at once, the first here comes first.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Event {
    /// Another number of helpers, or the end of a last call.
    Shift,
    /// A square is up.
    Hung,
    /// A drawing is finished.
    Drawn,
    /// A piece is given out, and drawing begins.
    GivenOut(usize),
    /// A visitor comes.
    Comes(usize),
    /// A visitor's patience is over.
    Leaves(usize),
}

/// Who waits for a piece.
#[derive(Copy, Clone, Debug)]
struct Waiting {
    since: f64,
    /// Which visitor; `None` for one who stays for another piece.
    visitor: Option<usize>,
}

/// The evening as it goes.
struct Evening<'a> {
    stations: &'a Stations,
    trace: &'a Trace,
    events: BinaryHeap<Reverse<(Minute, Event)>>,
    line: VecDeque<Waiting>,
    /// How many of the line have not left.
    waiting: usize,
    /// For each visitor, whether her patience was over before she got a piece.
    has_left: Vec<bool>,
    giving_out: usize,
    seats: usize,
    drawn: usize,
    to_hang: VecDeque<f64>,
    hanging: usize,
    happened: Happened,
}

/// Plays an evening to its end: until all are served or gone, and all squares are up.
#[must_use]
pub fn play(stations: &Stations, trace: &Trace) -> Happened {
    let mut events = BinaryHeap::with_capacity(2 * trace.visitors.len());
    for (visitor, (comes, _)) in trace.visitors.iter().enumerate() {
        events.push(Reverse((Minute(*comes), Event::Comes(visitor))));
    }
    for (from, _) in stations.giving_out.shifts().iter().chain(stations.hanging.shifts()) {
        events.push(Reverse((Minute(*from), Event::Shift)));
    }
    let mut last_calls = stations.last_calls.clone();
    last_calls.dedup();
    for last_call in last_calls.into_iter().filter(|last_call| last_call.is_finite()) {
        events.push(Reverse((Minute(last_call.next_up().max(0.0)), Event::Shift)));
    }
    let mut evening = Evening {
        stations,
        trace,
        events,
        line: VecDeque::new(),
        waiting: 0,
        has_left: vec![false; trace.visitors.len()],
        giving_out: 0,
        seats: 0,
        drawn: 0,
        to_hang: VecDeque::new(),
        hanging: 0,
        happened: Happened::default(),
    };
    let mut last = 0.0;
    while let Some(Reverse((Minute(now), event))) = evening.events.pop() {
        evening.happened.waited += float(evening.waiting) * (now - last);
        last = now;
        evening.happens(now, event);
        evening.give_out(now);
        evening.hang(now);
    }
    evening.happened
}

impl Evening<'_> {
    fn later(&mut self, minute: f64, event: Event) {
        self.events.push(Reverse((Minute(minute), event)));
    }

    fn happens(&mut self, now: f64, event: Event) {
        match event {
            Event::Shift => {}
            Event::Hung => {
                self.hanging -= 1;
                self.happened.up.push(now);
            }
            Event::Drawn => {
                self.seats -= 1;
                self.to_hang.push_back(now);
                if self.trace.stays.get(self.drawn).copied().unwrap_or(false) {
                    self.stands_in_line(Waiting { since: now, visitor: None });
                }
                self.drawn += 1;
            }
            Event::GivenOut(service) => {
                self.giving_out -= 1;
                self.later(now + of(&self.trace.drawing, service), Event::Drawn);
            }
            Event::Comes(visitor) => {
                self.stands_in_line(Waiting { since: now, visitor: Some(visitor) });
                let (_, patience) = self.trace.visitors[visitor];
                if patience.is_finite() {
                    self.later(now + patience, Event::Leaves(visitor));
                }
            }
            Event::Leaves(visitor) => {
                if let Some(since) = self.still_waits(visitor) {
                    self.has_left[visitor] = true;
                    self.waiting -= 1;
                    self.happened.left.push(Wait { since, until: now });
                }
            }
        }
    }

    fn stands_in_line(&mut self, one: Waiting) {
        self.line.push_back(one);
        self.waiting += 1;
    }

    /// Since when a visitor waits, where she still does.
    fn still_waits(&self, visitor: usize) -> Option<f64> {
        // those in front have waited longest, so that a visitor's place is found by when she came
        let (comes, _) = self.trace.visitors[visitor];
        let from = self.line.partition_point(|one| one.since < comes);
        let here = self.line.range(from..).take_while(|one| one.since <= comes);
        here.into_iter().any(|one| one.visitor == Some(visitor)).then_some(comes)
    }

    /// The first of the line; those who have left are passed over.
    fn next_in_line(&mut self) -> Option<Waiting> {
        loop {
            let one = self.line.pop_front()?;
            if one.visitor.is_none_or(|visitor| !self.has_left[visitor]) {
                self.waiting -= 1;
                return Some(one);
            }
        }
    }

    fn give_out(&mut self, now: f64) {
        let service = self.happened.given_out.len();
        if self.stations.last_calls.get(service).is_none_or(|last_call| now > *last_call) {
            return self.send_away(now);
        }
        if self.giving_out >= self.stations.giving_out.at(now) || self.seats >= self.stations.seats {
            return;
        }
        let Some(one) = self.next_in_line() else { return };
        self.happened.given_out.push(Wait { since: one.since, until: now });
        self.happened.served += usize::from(one.visitor.is_some());
        self.giving_out += 1;
        self.seats += 1;
        self.happened.seats_taken = self.happened.seats_taken.max(self.seats);
        self.later(now + of(&self.trace.giving_out, service), Event::GivenOut(service));
        self.give_out(now);
    }

    /// No piece is given out any more: whoever waits goes.
    fn send_away(&mut self, now: f64) {
        while let Some(one) = self.next_in_line() {
            if one.visitor.is_some() {
                self.happened.sent_away.push(Wait { since: one.since, until: now });
            }
        }
    }

    fn hang(&mut self, now: f64) {
        while self.hanging < self.stations.hanging.at(now) {
            let Some(since) = self.to_hang.pop_front() else { break };
            let service = self.happened.taken_to_hang.len();
            self.happened.taken_to_hang.push(Wait { since, until: now });
            self.hanging += 1;
            self.later(now + of(&self.trace.hanging, service), Event::Hung);
        }
    }
}

/// The time of a service; the last known one where there are more services than times.
fn of(times: &[f64], service: usize) -> f64 {
    times.get(service).or(times.last()).copied().unwrap_or(0.0)
}
