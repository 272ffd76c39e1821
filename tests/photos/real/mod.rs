//! Real photographs of printed codes: what of them is found, how exactly, and how small they may be.
//!
//! The photographs are other people's and lie beside the project in `../shared/real` or where `EVERYSQUARE_SHARED` says;
//! where they are not, these tests say so and check nothing. Corners were marked there by hand, to a pixel or two.

mod lots;
mod others;
mod set;
mod small;
mod smaller;
