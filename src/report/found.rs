//! Sentences about squares that lie anywhere: how many of the event's are here, which are not, of which there are two, whose they are.

use crate::judge::found::Found;
use crate::plan::groups::{Group, Groups};
use crate::plan::{Cell, Grid};
use crate::words::Words;

/// Number of labels up to which what is lacking is listed; beyond, a list says nothing that its number does not.
const MOST_LISTED: usize = 60;

/// How many squares are here.
#[must_use]
pub fn how_many(found: &Found, words: &Words) -> String {
    let all = found.here.len() + found.lacking.len();
    let id = if found.lacking.is_empty() { "find-all" } else { "find-here" };
    words.say(id, &[("count", found.here.len().into()), ("all", all.into())])
}

/// Which squares are here, where all are not; which are not, and of which there are two.
#[must_use]
pub fn amiss(found: &Found, grid: &Grid, words: &Words) -> Vec<String> {
    let say = |id: &str, cells: &[Cell]| {
        words.say(id, &[("count", cells.len().into()), ("labels", listed(cells, grid).into())])
    };
    let few = |cells: &[Cell]| (1..=MOST_LISTED).contains(&cells.len());
    let here = (few(&found.here) && !found.lacking.is_empty()).then(|| say("find-list", &found.here));
    let lacking = few(&found.lacking).then(|| say("find-lacking", &found.lacking));
    let twice = (!found.twice.is_empty()).then(|| say("find-twice", &found.twice));
    here.into_iter().chain(lacking).chain(twice).collect()
}

/// Which squares belong to which group; groups that have none here are left out.
#[must_use]
pub fn of_groups(found: &Found, shared: &Groups, grid: &Grid, words: &Words) -> Vec<String> {
    let cells: Vec<Cell> = grid.cells().collect();
    let of_group = |group: &Group| {
        let own: Vec<Cell> = group.pieces.iter().filter_map(|piece| cells.get(*piece).copied()).collect();
        let here: Vec<Cell> = found.here.iter().copied().filter(|home| own.contains(home)).collect();
        let told = [
            ("name", group.members.name.as_str().into()),
            ("count", here.len().into()),
            ("labels", listed(&here, grid).into()),
        ];
        (!here.is_empty()).then(|| words.say("find-group", &told))
    };
    shared.groups.iter().filter_map(of_group).collect()
}

/// Labels in one line.
#[must_use]
pub fn listed(cells: &[Cell], grid: &Grid) -> String {
    cells.iter().map(|cell| grid.label(*cell)).collect::<Vec<_>>().join(", ")
}
