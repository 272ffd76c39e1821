//! Real photographs of printed codes: what of them is found, how exactly, and how small they may be.
//!
//! The photographs are other people's and lie beside the project in `../shared/real` or where `EVERYSQUARE_SHARED` says;
//! where they are not, these tests say so and check nothing. Corners were marked there by hand, to a pixel or two.

#![allow(clippy::cast_precision_loss, reason = "counts and draws are small")]
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::print_stdout,
    clippy::unwrap_used,
    reason = "a test fails by panicking"
)]

#[path = "real/lots.rs"]
mod lots;
#[path = "real/others.rs"]
mod others;
#[path = "real/set.rs"]
mod set;
#[path = "real/small.rs"]
mod small;
#[path = "real/smaller.rs"]
mod smaller;
