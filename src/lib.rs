//! Everysquare plans an evening where many visitors draw one big picture together, prints its kit, and reads a phone
//! photo of the wall.
//!
//! # An evening, module by module
//!
//! An organiser has a picture. [`picture`] brings it to a few pencil colours that lie in a box, proposes a grid for it and says of
//! every piece how hard it is; what she decides stands in a [`plan::Settings`], the file `event.toml` of a [`plan::Folder`].
//! From it follows everything else: [`plan::Settings::printed`] gives each square its code and each card its place, and
//! [`plan::crowd`] plays the evening five hundred times to say how many helpers it takes and whether the picture gets whole.
//!
//! The day before, [`print`](mod@print) makes the kit: [`print::kit`] sets every document and keeps in a [`plan::Manifest`] what was
//! printed, module by module. [`rehearse`] makes photos of a wall that never was, to practise with.
//!
//! Doors open. Squares go up, some in the wrong place, some upside down. A helper photographs the wall, and [`photo`] makes upright
//! pixels of whatever the phone sends. [`read`] finds the squares again by what was printed: a [`read::Reader`] knows the manifest,
//! looks for it in the photo and says cell by cell what hangs there and how surely. [`judge`] compares that with the plan, in
//! sentences somebody can act on: swap, turn, find. [`check`] does both for a command or a page, and [`report`] tells the facts as
//! a file, as a page and in the terminal; [`serve`] is that page on the helper's phone and the growing picture on the room's wall.
//!
//! The wall is full. [`display`] straightens its photo and lays each drawing beside its piece; [`gallery`] keeps what stays, the
//! prints of enlarged against original first, and [`print::rehang`] moves the mural to the corridor.
//!
//! Underneath lie [`frame`], which keeps millimetres of the wall from pixels of a photo, and [`words`], where every sentence is,
//! in every language. [`cli`] is all of this at a prompt.
//!
//! # Parts
//!
//! Features build less: without any there are [`frame`], [`words`], [`plan`], [`photo`] and [`read`]; `kit` adds what makes pictures and
//! prints, `pages` adds [`serve`], `program` adds [`cli`] and the command itself. Each has those before it.

#![cfg_attr(not(feature = "program"), allow(dead_code, reason = "what uses the rest is left out"))]

pub mod frame;
pub mod photo;
pub mod plan;
pub mod read;
pub mod words;

#[cfg(feature = "kit")]
pub mod check;
#[cfg(feature = "kit")]
pub mod display;
#[cfg(feature = "kit")]
pub mod gallery;
#[cfg(feature = "kit")]
pub mod judge;
#[cfg(feature = "kit")]
pub mod picture;
#[cfg(feature = "kit")]
pub mod print;
#[cfg(feature = "kit")]
pub mod rehearse;
#[cfg(feature = "kit")]
pub mod report;

#[cfg(feature = "pages")]
pub mod serve;

#[cfg(feature = "program")]
pub mod cli;
