//! From an upright photo to what hangs in which cell, and how surely.

pub mod lens;
pub mod reading;

pub use reading::{Camera, CellReading, PhotoReading, Sight, WallReading};
