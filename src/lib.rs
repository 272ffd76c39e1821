//! Everysquare plans an evening where many visitors draw one big picture together, prints its kit, and reads a phone
//! photo of the wall.

pub mod check;
pub mod cli;
pub mod display;
pub mod frame;
pub mod judge;
pub mod photo;
pub mod picture;
pub mod plan;
pub mod print;
pub mod read;
pub mod rehearse;
pub mod report;
pub mod serve;
pub mod words;
