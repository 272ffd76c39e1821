//! The program, run as a test runs it, and pictures for it.

#![allow(dead_code, reason = "no test needs all of it")]

pub mod evening;
pub mod scenes;
pub mod shared;

use std::cell::RefCell;
use std::ffi::OsString;
use std::io::{self, Write};
use std::rc::Rc;

use everysquare::cli::{Console, Screen, run};

/// What was written.
#[derive(Clone, Default)]
pub struct Kept(Rc<RefCell<Vec<u8>>>);

impl Write for Kept {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        self.0.borrow_mut().write(bytes)
    }
    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}

impl Kept {
    /// As text.
    pub fn text(&self) -> String {
        String::from_utf8(self.0.borrow().clone()).unwrap()
    }
}

/// Exit code, standard output, standard error.
pub fn everysquare(words: &[&str]) -> (u8, String, String) {
    let (out, err) = (Kept::default(), Kept::default());
    let mut console = Console::new(Box::new(out.clone()), Box::new(err.clone()), Screen::plain());
    let argv = std::iter::once("everysquare").chain(words.iter().copied()).map(OsString::from);
    let code = run(argv, &mut console);
    (code, out.text(), err.text())
}
