//! From an upright photo to what hangs in which cell, and how surely.

mod align;
pub mod book;
pub mod camera;
mod draw;
pub mod finders;
pub mod group;
pub mod hunt;
pub mod identify;
pub mod lattice;
pub mod lens;
pub mod one;
pub mod place;
pub mod pose;
pub mod reading;
pub mod resolve;
pub mod seek;
pub mod start;
mod sheet;
pub mod stranger;

pub use reading::{Camera, CellReading, PhotoReading, Sight, WallReading};
