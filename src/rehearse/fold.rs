//! A wall whose boards stand at angles, like a folding screen: from the wall laid flat into the room, and back.
//!
//! ```text
//!   laid flat    ├──── board ────┤ gap ├──── board ────┤        everything that hangs is worked out here: right, down, into the wall
//!                                   │ fold
//!   from above   ╲                  ▼           ╱
//!                  ╲_______________ · _________╱                  and stands so in the room
//! ```
//!
//! Folds are upright lines in the middle of the gaps; a wall in one plane has none, and nothing is moved.

use super::camera::Room;

/// Strip of the wall between two folds, in mm on the wall laid flat.
#[derive(Clone, Debug)]
struct Leaf {
    /// Where it begins; the first has no beginning.
    from: f64,
    /// Where it ends; the last has no end.
    to: f64,
    /// A place on it, laid flat.
    at: f64,
    /// Where that place is in the room: right, and into the wall.
    stands: [f64; 2],
    /// Cosine and sine of the angle by which it is turned away on its right.
    turned: [f64; 2],
}

/// All folds of a wall.
#[derive(Clone, Debug, Default)]
pub(super) struct Fold {
    leaves: Vec<Leaf>,
}

impl Fold {
    /// A wall with folds at places from left to right and the angles, in radians, of the leaves between them; the place `middle` stays
    /// where it is.
    pub fn of(folds: &[f64], angles: &[f64], middle: f64) -> Self {
        let mut leaves: Vec<Leaf> = Vec::new();
        for (number, angle) in angles.iter().enumerate() {
            let from = number.checked_sub(1).map_or(f64::NEG_INFINITY, |before| folds[before]);
            let to = folds.get(number).copied().unwrap_or(f64::INFINITY);
            let at = if from.is_finite() { from } else { to.min(middle) };
            let stands = leaves.last().map_or([at, 0.0], |before| before.room(at, 0.0));
            leaves.push(Leaf { from, to, at, stands, turned: [angle.cos(), angle.sin()] });
        }
        let mut fold = Self { leaves };
        let [x, _, z] = fold.room([middle, 0.0, 0.0]);
        for leaf in &mut fold.leaves {
            leaf.stands = [leaf.stands[0] + middle - x, leaf.stands[1] - z];
        }
        fold
    }

    /// Whether the wall is in one plane.
    pub fn is_flat(&self) -> bool {
        self.leaves.is_empty()
    }

    /// Number of the leaf with a place, laid flat.
    pub fn leaf(&self, x: f64) -> usize {
        self.leaves.iter().position(|leaf| x < leaf.to).unwrap_or(0)
    }

    /// A place of the wall laid flat, in the room.
    pub fn room(&self, place: Room) -> Room {
        let Some(leaf) = self.leaves.get(self.leaf(place[0])) else { return place };
        let [x, z] = leaf.room(place[0], place[2]);
        [x, place[1], z]
    }

    /// A place and a direction in the room as each leaf has them, laid flat, with the leaf's beginning and end.
    pub fn flat(&self, place: Room, along: Room) -> impl Iterator<Item = (Room, Room, [f64; 2])> {
        self.leaves.iter().map(move |leaf| {
            let [cos, sin] = leaf.turned;
            let back = |[x, y, z]: Room| [x * cos + z * sin, y, z * cos - x * sin];
            let off = back([place[0] - leaf.stands[0], place[1], place[2] - leaf.stands[1]]);
            ([off[0] + leaf.at, off[1], off[2]], back(along), [leaf.from, leaf.to])
        })
    }
}

impl Leaf {
    /// Right and into the wall in the room, of a place laid flat.
    fn room(&self, x: f64, z: f64) -> [f64; 2] {
        let ([cos, sin], along) = (self.turned, x - self.at);
        [self.stands[0] + along * cos - z * sin, self.stands[1] + along * sin + z * cos]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn what_stands_in_the_room_lies_flat_where_it_was(
            folds in proptest::collection::vec(300.0_f64..900.0, 1..5),
            angles in proptest::collection::vec(-0.7_f64..0.7, 6),
            x in -500.0_f64..4000.0, z in -80.0_f64..0.0,
        ) {
            let folds: Vec<f64> = folds.iter().scan(0.0, |sum, wide| { *sum += wide; Some(*sum) }).collect();
            let fold = Fold::of(&folds, &angles[..=folds.len()], 1000.0);
            let middle = fold.room([1000.0, 5.0, 0.0]);
            prop_assert!((middle[0] - 1000.0).abs() < 1e-9 && middle[2].abs() < 1e-9);
            let own = fold.flat(fold.room([x, 7.0, z]), [0.0, 0.0, 1.0]).nth(fold.leaf(x)).unwrap();
            prop_assert!((own.0[0] - x).abs() < 1e-9 && (own.0[2] - z).abs() < 1e-9);
            // a fold tears nothing
            for at in &folds {
                let [before, behind] = [at - 1e-7, at + 1e-7].map(|x| fold.room([x, 0.0, 0.0]));
                prop_assert!((before[0] - behind[0]).hypot(before[2] - behind[2]) < 1e-6);
            }
            // lengths stay along a leaf
            let [one, other] = [x, x + 1e-3].map(|x| fold.room([x, 0.0, 0.0]));
            if fold.leaf(x) == fold.leaf(x + 1e-3) {
                prop_assert!(((one[0] - other[0]).hypot(one[2] - other[2]) - 1e-3).abs() < 1e-9);
            }
        }
    }
}
