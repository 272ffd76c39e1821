//! Ids that the program puts together, with all that can come of it.

use everysquare::judge::State;
use everysquare::plan::Level;
use everysquare::plan::settings::{Choice, Paper};

/// A text in the sources with a gap, and what can stand in the gap.
pub fn composed() -> Vec<(&'static str, Vec<String>)> {
    let owned = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect::<Vec<_>>();
    let states = || State::ALL.iter().map(|state| state.name().to_owned()).collect::<Vec<_>>();
    vec![
        ("cell-{}", states()),
        ("report-count-{}", states()),
        ("print-paper-{}", Paper::ALL.iter().map(|(_, word)| (*word).to_owned()).collect()),
        ("print-card-corner-{}", owned(&["1", "2", "3", "4"])),
        ("print-{}", everysquare::print::names().map(str::to_owned).collect()),
        ("level-{}", Level::ALL.iter().map(|level| Choice::word(*level).to_owned()).collect()),
        // what a value of an option is called: looked at beside the help itself
        ("help-value-{}", Vec::new()),
    ]
}
