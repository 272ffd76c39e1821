//! Which of the parts that are listed a wall has.

use std::collections::BTreeMap;

use super::place::{Site, cell_at, site_of};
use super::seek::CellDetection;
use crate::plan::settings::WallPart;

/// One of so many squares in the places of a part has to hang at home for the part to be a wall's own: another board may stand so that its
/// squares all but fit the lattice, some columns away.
const AT_HOME: usize = 4;

/// Parts that are listed and of which squares hang at home in a wall, more than by chance.
#[derive(Debug)]
pub(super) struct OwnParts<'a>(Vec<&'a WallPart>);

impl<'a> OwnParts<'a> {
    /// Those of a wall with such squares.
    pub fn of(squares: &BTreeMap<Site, CellDetection>, declared: &'a [WallPart]) -> Self {
        let is_own = |part: &&WallPart| {
            let hanging = squares.iter().filter(|(site, _)| is_in(part, **site));
            let (all, at_home) = hanging.fold((0, 0), |(all, at_home), (site, seen)| {
                (all + 1, at_home + usize::from(seen.found.home().map(site_of) == Some(*site)))
            });
            at_home > 0 && at_home >= all / AT_HOME
        };
        Self(declared.iter().filter(is_own).collect())
    }

    /// Whether a place may be one of the wall's: it is in one of its parts, or none is known to be its own.
    pub fn may_hold(&self, site: Site) -> bool {
        self.0.is_empty() || self.0.iter().any(|part| is_in(part, site))
    }
}

fn is_in(part: &WallPart, site: Site) -> bool {
    cell_at(site).is_some_and(|cell| part.holds(cell))
}
