//! A room to scale in which the evening can be held: the wall, tables for all seats, the place to hand pieces out, the place
//! for the phone, ways out kept free. Not the organiser's room, but how much space it takes and what lies beside what.
//!
//! ```text
//!   ┌──────═══════ wall ═══════──────┐
//!   │            ◇ phone             │ exit, its way kept free
//!   │  ┌──────┐  ┌──────┐  ┌──────┐  │
//!   │  └──────┘  └──────┘  └──────┘  │      tables with three seats on either side
//!   │  ┌──────┐  ┌──────┐  ┌──────┐  │
//!   │  └──────┘  └──────┘  └──────┘  │
//!   │       ┌──────────┐             │
//!   │       │ hand-out │             │ entrance
//!   └────────────────────────────────┘
//! ```
//!
//! All sizes are common practice, no source. Lengths in metres, origin top left, y down (away from the wall).

use crate::frame::float;

/// A table, long and short side.
const TABLE_M: [f64; 2] = [1.8, 0.75];
/// Seats at a table, half of them on either side. A table keeps a set of pencils of its own.
pub(super) const SEATS_A_TABLE: usize = 6;
/// Room for a chair and whoever sits on it.
const CHAIR_M: f64 = 0.55;
/// A way between tables for people to pass, wide enough for a wheelchair: 4 feet. Common practice; 36 inches is the least (2010 ADA
/// Standards for Accessible Design, 403.5.1). To turn it takes more, which the space before the wall has.
const WAY_M: f64 = 1.2;
/// Between the phone and the first chairs.
const BEHIND_PHONE_M: f64 = 1.0;
/// The table at which pieces are handed out.
const HAND_OUT_M: [f64; 2] = [1.8, 0.75];
/// From the last chairs to the far side of the room.
const ENTRANCE_M: f64 = 3.0;
/// A door.
const DOOR_M: f64 = 1.0;
/// Wall to the left and right of the picture.
const BESIDE_WALL_M: f64 = 0.8;
/// A chair as it is drawn.
const SEAT_M: f64 = 0.4;

/// An upright rectangle.
#[derive(Copy, Clone, Debug, PartialEq, serde::Serialize)]
pub(super) struct Place {
    pub x: f64,
    pub y: f64,
    pub width: f64,
    pub height: f64,
}

impl Place {
    fn centred(x: f64, y: f64, [width, height]: [f64; 2]) -> Self {
        Self { x: x - width / 2.0, y: y - height / 2.0, width, height }
    }

    /// Whether two share more than an edge.
    #[cfg(test)]
    fn meets(&self, other: &Self) -> bool {
        let apart =
            |a: f64, a_size: f64, b: f64, b_size: f64| a + a_size <= b + 1e-9 || b + b_size <= a + 1e-9;
        !apart(self.x, self.width, other.x, other.width) && !apart(self.y, self.height, other.y, other.height)
    }
}

/// The room.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Room {
    pub width: f64,
    pub depth: f64,
    /// Left and right end of the wall with its cards.
    pub wall: [f64; 2],
    /// Where the phone is.
    pub phone: [f64; 2],
    pub tables: Vec<Place>,
    /// Where the seats are; as many as were asked for.
    pub seats: Vec<Place>,
    pub hand_out: Place,
    /// Doors on the right side: the exit near the wall, the entrance at the far end.
    pub doors: [Place; 2],
    /// What stays free: the ways to the doors.
    pub ways: [Place; 2],
}

impl Room {
    /// A room for a wall with its cards, a phone so far from it and so many seats; of all ways to set the tables one
    /// that takes little space and is drawn large where its width is to be at most `shape` times its depth.
    pub fn of(wall_m: f64, phone_m: f64, seats: usize, shape: f64) -> Self {
        let tables = seats.max(1).div_ceil(SEATS_A_TABLE);
        let rooms = (1..=tables).map(|across| Self::with_tables(wall_m, phone_m, seats, across));
        let size = |room: &Self| room.width * room.depth * (room.width / shape).max(room.depth);
        let smallest = rooms.min_by(|a, b| size(a).total_cmp(&size(b)));
        smallest.unwrap_or_else(|| Self::with_tables(wall_m, phone_m, seats, 1))
    }

    /// The room with so many tables side by side.
    fn with_tables(wall_m: f64, phone_m: f64, seats: usize, across: usize) -> Self {
        let tables = seats.max(1).div_ceil(SEATS_A_TABLE);
        let (step_x, step_y) = (TABLE_M[0] + WAY_M, TABLE_M[1] + 2.0 * CHAIR_M + WAY_M);
        let down = tables.div_ceil(across.max(1));
        let across = tables.div_ceil(down); // as full in the last row as can be
        let width = (float(across) * step_x + WAY_M)
            .max(wall_m + 2.0 * BESIDE_WALL_M)
            .max(HAND_OUT_M[0] + 3.0 * WAY_M);
        let front = phone_m.max(WAY_M) + BEHIND_PHONE_M;
        let depth = front + float(down) * step_y - WAY_M + ENTRANCE_M;
        let middle = width / 2.0;
        let left = middle - float(across) * step_x / 2.0 + step_x / 2.0;
        let table = |n: usize| {
            let (column, row) = (n % across, n / across);
            let y = front + CHAIR_M + TABLE_M[1] / 2.0 + float(row) * step_y;
            Place::centred(left + float(column) * step_x, y, TABLE_M)
        };
        let tables: Vec<Place> = (0..tables).map(table).collect();
        let door = |y: f64| Place { x: width, y, width: 0.0, height: DOOR_M };
        let way = |y: f64| Place { x: width - WAY_M, y, width: WAY_M, height: DOOR_M };
        let (exit, entrance) = (front - BEHIND_PHONE_M - DOOR_M, depth - 0.3 - DOOR_M);
        Self {
            width,
            depth,
            wall: [middle - wall_m / 2.0, middle + wall_m / 2.0],
            phone: [middle, phone_m],
            seats: tables.iter().flat_map(seats_at).take(seats).collect(),
            tables,
            hand_out: Place::centred(middle, depth - ENTRANCE_M + WAY_M + HAND_OUT_M[1] / 2.0, HAND_OUT_M),
            doors: [door(exit.max(0.1)), door(entrance)],
            ways: [way(exit.max(0.1)), way(entrance)],
        }
    }
}

/// The seats of a table: first both sides' middles, then their ends, so that a table that is not full looks shared.
fn seats_at(table: &Place) -> Vec<Place> {
    let (middle, step) = (table.x + table.width / 2.0, table.width / float(SEATS_A_TABLE / 2));
    let sides = [table.y - CHAIR_M / 2.0, table.y + table.height + CHAIR_M / 2.0];
    let along = [0.0, -step, step];
    along.into_iter().flat_map(|dx| sides.map(|y| Place::centred(middle + dx, y, [SEAT_M, SEAT_M]))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The circle in which a wheelchair turns: 60 inches (2010 ADA Standards for Accessible Design, 304.3.1).
    const TURN_M: f64 = 1.524;

    proptest! {
        #[test]
        fn everything_fits_and_nothing_stands_in_the_way(wall in 0.2_f64..8.0, phone in 0.3_f64..6.0, seats in 1_usize..=500) {
            let room = Room::of(wall, phone, seats, 1.5);
            prop_assert_eq!(room.seats.len(), seats);
            let all: Vec<Place> = room.tables.iter().chain(&room.seats).chain([&room.hand_out]).copied().collect();
            for (at, one) in all.iter().enumerate() {
                prop_assert!(one.x > 0.0 && one.x + one.width < room.width && one.y > 0.0 && one.y + one.height < room.depth);
                prop_assert!(all[at + 1..].iter().all(|other| !one.meets(other)), "{one:?}");
                prop_assert!(room.ways.iter().all(|way| !one.meets(way)), "{one:?} stands in a way out");
                prop_assert!(one.y > phone, "nobody sits before the phone");
                prop_assert!(one.y > TURN_M, "a wheelchair can turn before the wall");
            }
            prop_assert!(room.wall[0] > 0.0 && room.wall[1] < room.width);
            prop_assert!(room.doors.iter().all(|door| door.y >= 0.0 && door.y + door.height <= room.depth));
            prop_assert!(!room.ways[0].meets(&room.ways[1]));
        }
    }
}
