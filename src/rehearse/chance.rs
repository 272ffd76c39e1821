//! Chance from a seed: one stream a purpose, so that asking more of one thing leaves all others as they were.

use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

pub(super) use crate::plan::crowd::normal;

/// What a stream of chance decides.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(super) enum Purpose {
    Options = 1,
    Faults = 2,
    Hanging = 3,
    Tape = 4,
    Cards = 5,
    Front = 6,
    Light = 7,
    Noise = 8,
    Grain = 9,
    Paper = 10,
    Drawings = 11,
    Clothes = 12,
    Boards = 13,
    Begun = 14,
}

/// The stream of a purpose.
pub(super) fn stream(seed: u64, purpose: Purpose) -> ChaCha8Rng {
    stream_of(seed, purpose, 0)
}

/// The stream of a purpose for one of many things, counted from 1; 0 is the purpose's own.
pub(super) fn stream_of(seed: u64, purpose: Purpose, which: u64) -> ChaCha8Rng {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    rng.set_stream(which.wrapping_mul(64) + purpose as u64);
    rng
}

/// A normal deviate of a standard deviation, cut off at `limit` on both sides.
pub(super) fn spread(rng: &mut ChaCha8Rng, deviation: f64, limit: f64) -> f64 {
    (normal(rng) * deviation).clamp(-limit, limit)
}
