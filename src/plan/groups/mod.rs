//! A wall shared out among groups: school classes, a club, two schools with one picture.
//!
//! ```text
//!   "3A 26, 3B 24, club 12" ──▶ Members ──▶ quotas ──▶ scattered   every level in the same parts, spread over the wall
//!                               who comes    pieces  └▶ blocks      connected parts, so that each group sees its own part grow
//! ```
//!
//! Every group gets pieces in proportion to its people, to the nearest whole one, and at least one. Scattered, a group has of each level
//! the pieces that its part comes to, rounded up or down; of all ways to round, the one is taken in which the busiest group has least to
//! draw for each of its people. In blocks, neighbouring groups trade pieces until nothing gets better; levels are as even as a connected
//! part allows.
//!
//! ```
//! use everysquare::plan::groups::{Spread, divide, read};
//! use everysquare::plan::{Grid, Level};
//!
//! let grid = Grid::usual(4, 3);
//! let levels = [Level::Easy, Level::Hard, Level::Medium].repeat(4);
//! let groups = divide(&grid, &levels, [4.0, 8.0, 12.0, 16.0], &read("3A 8, club 4")?, Spread::Scattered)?;
//! assert_eq!(groups.groups.iter().map(|group| group.pieces.len()).collect::<Vec<_>>(), [8, 4]);
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod blocks;
mod scattered;

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::settings::Choice;
use super::{Grid, Level};
use crate::frame::{float, floor_index};
use crate::words::{Sentence, Tell, told_in_english};

/// Maximum number of groups; a school has fewer classes.
pub const MOST_GROUPS: usize = 60;
/// Maximum number of people in a group.
pub const MOST_PEOPLE: usize = 9_999;
/// Maximum number of characters of a group's name: what fits the title of a page.
pub const MOST_NAME: usize = 30;
/// Format of `groups.json`.
const FORMAT: u64 = 1;

/// Name and size of a group.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Members {
    /// What it is called.
    pub name: String,
    /// How many people draw.
    pub people: usize,
}

/// How the pieces of a group lie.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Spread {
    /// All over the wall.
    #[default]
    Scattered,
    /// Next to each other.
    Blocks,
}

impl Choice for Spread {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Scattered, "scattered"), (Self::Blocks, "blocks")];
}

/// A group and its share.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Group {
    /// Who it is.
    pub members: Members,
    /// Its pieces, by their place in the grid's order of cells, in that order.
    pub pieces: Vec<usize>,
}

/// A wall shared out: every piece of the picture has one group.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Groups {
    /// How pieces lie.
    pub spread: Spread,
    /// The groups, in the order in which they were named.
    pub groups: Vec<Group>,
}

/// Groups that cannot be.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum GroupsError {
    /// No group at all.
    Nobody,
    /// What does not end in a number of people.
    Unreadable {
        /// What was read.
        read: String,
    },
    /// Two of the same name.
    Twice {
        /// The name.
        name: String,
    },
    /// More groups than pieces, or than there may be.
    Many {
        /// How many groups.
        groups: usize,
        /// How many there can be.
        most: usize,
    },
    /// `groups.json` is damaged, or of another wall.
    File,
}

told_in_english!(GroupsError);

impl Tell for GroupsError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Nobody => Sentence::new("error-groups-nobody"),
            Self::Unreadable { read } => {
                let sentence = Sentence::new("error-groups-unreadable").with("read", read.as_str());
                sentence.with("most", MOST_PEOPLE).with("letters", MOST_NAME)
            }
            Self::Twice { name } => Sentence::new("error-groups-twice").with("name", name.as_str()),
            Self::Many { groups, most } => {
                Sentence::new("error-groups-many").with("groups", *groups).with("most", *most)
            }
            Self::File => Sentence::new("error-groups-file"),
        }
    }
}

/// Reads groups as they are typed: a name and how many people, with commas, semicolons or new lines between them.
///
/// # Errors
/// [`GroupsError`] with the first that cannot be.
pub fn read(typed: &str) -> Result<Vec<Members>, GroupsError> {
    let mut all: Vec<Members> = Vec::new();
    for one in typed.split([',', ';', '\n']).map(str::trim).filter(|one| !one.is_empty()) {
        let members = members(one).ok_or_else(|| GroupsError::Unreadable { read: one.to_owned() })?;
        if all.iter().any(|other| other.name.to_lowercase() == members.name.to_lowercase()) {
            return Err(GroupsError::Twice { name: members.name });
        }
        all.push(members);
    }
    if all.is_empty() {
        return Err(GroupsError::Nobody);
    }
    Ok(all)
}

fn members(one: &str) -> Option<Members> {
    let (name, people) = one.rsplit_once(char::is_whitespace)?;
    let name = name.trim().trim_end_matches([':', '=']).trim();
    let fits = (1..=MOST_NAME).contains(&name.chars().count()) && !name.chars().any(char::is_control);
    let people = people.parse().ok().filter(|people| (1..=MOST_PEOPLE).contains(people))?;
    fits.then(|| Members { name: name.to_owned(), people })
}

/// Shares a wall out. `levels` are those of the pieces in the grid's order of cells, `minutes` how long a piece of each level takes.
///
/// # Errors
/// [`GroupsError::Many`] where there are more groups than pieces.
pub fn divide(
    grid: &Grid,
    levels: &[Level],
    minutes: [f64; 4],
    members: &[Members],
    spread: Spread,
) -> Result<Groups, GroupsError> {
    // a border in reserve is nobody's share
    let whole = grid;
    let own: Vec<usize> = within_border(grid).collect();
    let (inner, levels) =
        (grid.within_border(), own.iter().map(|piece| levels[*piece]).collect::<Vec<Level>>());
    let (grid, levels) = (&inner, &levels[..]);
    let most = whole.asked().min(MOST_GROUPS);
    if members.is_empty() {
        return Err(GroupsError::Nobody);
    }
    if members.len() > most {
        return Err(GroupsError::Many { groups: members.len(), most });
    }
    let people: Vec<usize> = members.iter().map(|group| group.people).collect();
    let quotas = quotas(&people, levels.len());
    let owners = match spread {
        Spread::Scattered => scattered::owners(grid, levels, minutes, &people, &quotas),
        Spread::Blocks => blocks::owners(grid, levels, minutes, &people, &quotas),
    };
    let pieces = |group: usize| -> Vec<usize> {
        own.iter().zip(&owners).filter(|(_, owner)| **owner == group).map(|(piece, _)| *piece).collect()
    };
    let groups = members.iter().enumerate();
    let mut groups: Vec<Group> =
        groups.map(|(number, members)| Group { members: members.clone(), pieces: pieces(number) }).collect();
    without_kept_free(&mut groups, whole);
    Ok(Groups { spread, groups })
}

/// Takes the pieces of cells that are kept free out of all groups; a group that had no others gets one of the largest group.
fn without_kept_free(groups: &mut [Group], grid: &Grid) {
    for group in groups.iter_mut() {
        group.pieces.retain(|piece| !grid.is_kept_free(grid.at(*piece)));
    }
    while let Some(poor) = groups.iter().position(|group| group.pieces.is_empty()) {
        let rich = groups.iter_mut().max_by_key(|group| group.pieces.len());
        match rich.filter(|rich| rich.pieces.len() > 1).and_then(|rich| rich.pieces.pop()) {
            Some(piece) => groups[poor].pieces.push(piece),
            None => return,
        }
    }
}

/// The pieces within a border in reserve by their place in the grid's order of cells, in that order.
fn within_border(grid: &Grid) -> impl Iterator<Item = usize> {
    grid.cells().enumerate().filter(|(_, cell)| !grid.in_border(*cell)).map(|(piece, _)| piece)
}

/// Pieces of each group, in proportion to its people by the method of largest remainders, each at least one.
fn quotas(people: &[usize], pieces: usize) -> Vec<usize> {
    let all = float(people.iter().sum::<usize>().max(1));
    let exact: Vec<f64> = people.iter().map(|people| float(*people) / all * float(pieces)).collect();
    let mut quotas: Vec<usize> = exact.iter().map(|exact| floor_index(*exact).max(1)).collect();
    let behind = |quotas: &[usize], group: usize| exact[group] - float(quotas[group]);
    while quotas.iter().sum::<usize>() < pieces {
        let Some(next) = (0..quotas.len())
            .max_by(|a, b| behind(&quotas, *a).total_cmp(&behind(&quotas, *b)).then(b.cmp(a)))
        else {
            break;
        };
        quotas[next] += 1;
    }
    while quotas.iter().sum::<usize>() > pieces {
        let ahead = (0..quotas.len()).filter(|group| quotas[*group] > 1);
        let Some(next) = ahead.min_by(|a, b| behind(&quotas, *a).total_cmp(&behind(&quotas, *b))) else {
            break;
        };
        quotas[next] -= 1;
    }
    quotas
}

/// `groups.json`: `{"format":1, "spread":"scattered|blocks", "groups":[{"name","people","squares":["A1",…]}]}`.
#[derive(Serialize, Deserialize)]
struct File {
    format: u64,
    spread: String,
    groups: Vec<FileGroup>,
}

#[derive(Serialize, Deserialize)]
struct FileGroup {
    name: String,
    people: usize,
    squares: Vec<String>,
}

impl Groups {
    /// The text of `groups.json`.
    #[must_use]
    pub fn to_json(&self, grid: &Grid) -> String {
        let cells: Vec<_> = grid.cells().collect();
        let squares = |group: &Group| group.pieces.iter().map(|piece| grid.label(cells[*piece])).collect();
        let groups = self.groups.iter().map(|group| FileGroup {
            name: group.members.name.clone(),
            people: group.members.people,
            squares: squares(group),
        });
        let file = File { format: FORMAT, spread: self.spread.word().to_owned(), groups: groups.collect() };
        serde_json::to_string_pretty(&file).unwrap_or_default() + "\n" // a struct with text keys always serializes
    }

    /// Reads `groups.json`.
    ///
    /// # Errors
    /// [`GroupsError::File`] where it is no such file, or does not share out exactly this grid.
    pub fn from_json(text: &str, grid: &Grid) -> Result<Self, GroupsError> {
        let file: File = serde_json::from_str(text).map_err(|_| GroupsError::File)?;
        let spread =
            Spread::named(&file.spread).filter(|_| file.format == FORMAT).ok_or(GroupsError::File)?;
        let mut taken = vec![false; grid.count()];
        let mut groups = Vec::new();
        for group in file.groups {
            let mut pieces = Vec::new();
            for label in &group.squares {
                let place = grid.cell(label).map(|cell| grid.index(cell)).ok_or(GroupsError::File)?;
                if std::mem::replace(&mut taken[place], true) {
                    return Err(GroupsError::File);
                }
                pieces.push(place);
            }
            pieces.sort_unstable();
            groups.push(Group { members: Members { name: group.name, people: group.people }, pieces });
        }
        let is_whole = grid.cells().all(|cell| taken[grid.index(cell)] || !grid.asks_for(cell));
        if is_whole { Ok(Self { spread, groups }) } else { Err(GroupsError::File) }
    }

    /// The group of a piece.
    #[must_use]
    pub fn of_piece(&self, piece: usize) -> Option<usize> {
        self.groups.iter().position(|group| group.pieces.binary_search(&piece).is_ok())
    }
}

impl Group {
    /// How many of its pieces have each level, the easiest first.
    #[must_use]
    pub fn of_levels(&self, levels: &[Level]) -> [usize; 4] {
        let mut counts = [0; 4];
        for piece in &self.pieces {
            counts[levels[*piece].index()] += 1;
        }
        counts
    }

    /// Minutes of drawing for each of its people.
    #[must_use]
    pub fn minutes_each(&self, levels: &[Level], minutes: [f64; 4]) -> f64 {
        let all: f64 = self.pieces.iter().map(|piece| minutes[levels[*piece].index()]).sum();
        all / float(self.members.people.max(1))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn grid(columns: usize, rows: usize) -> Grid {
        Grid::usual(columns, rows)
    }

    fn crowd(people: &[usize]) -> Vec<Members> {
        people
            .iter()
            .enumerate()
            .map(|(i, people)| Members { name: format!("group {i}"), people: *people })
            .collect()
    }

    #[test]
    fn groups_are_read_as_they_are_typed() {
        let all = read(" 3A 26, Mrs. B’s class: 24;\nclub 12,").unwrap();
        let told: Vec<(&str, usize)> = all.iter().map(|group| (group.name.as_str(), group.people)).collect();
        assert_eq!(told, [("3A", 26), ("Mrs. B’s class", 24), ("club", 12)]);
        assert_eq!(read(" , "), Err(GroupsError::Nobody));
        for bad in ["3A", "26", "3A 0", "3A -4", "3A 26.5", "3A 99999", "3A many"] {
            assert!(matches!(read(bad), Err(GroupsError::Unreadable { .. })), "{bad}");
        }
        assert_eq!(read("3A 2, 3a 5"), Err(GroupsError::Twice { name: "3a".to_owned() }));
    }

    #[test]
    fn more_groups_than_pieces_are_refused() {
        let levels = [Level::Easy; 4];
        let many = divide(&grid(2, 2), &levels, [1.0; 4], &crowd(&[1; 5]), Spread::Blocks);
        assert_eq!(many, Err(GroupsError::Many { groups: 5, most: 4 }));
    }

    #[test]
    fn the_file_is_read_back_and_one_of_another_wall_is_refused() {
        let (grid, levels) = (grid(4, 3), [Level::Easy; 12]);
        let groups = divide(&grid, &levels, [1.0; 4], &crowd(&[5, 7]), Spread::Blocks).unwrap();
        let text = groups.to_json(&grid);
        assert_eq!(Groups::from_json(&text, &grid), Ok(groups));
        for (text, grid) in [
            (text.clone(), Grid { columns: 5, ..grid }),
            (text.clone(), Grid { rows: 2, ..grid }),
            (text.replacen("\"A1\"", "\"B1\"", 1), grid),
            (text.replace("\"format\": 1", "\"format\": 2"), grid),
            (text.replace("blocks", "stripes"), grid),
            (text[..text.len() / 2].to_owned(), grid),
        ] {
            assert_eq!(Groups::from_json(&text, &grid), Err(GroupsError::File), "{text}");
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(40))]
        #[test]
        fn every_piece_has_one_group_and_every_group_its_part(
            columns in 1_usize..9,
            rows in 1_usize..9,
            seed in proptest::collection::vec(0_usize..4, 64),
            people in proptest::collection::vec(1_usize..40, 1..7),
            blocks in any::<bool>(),
        ) {
            let grid = grid(columns, rows);
            prop_assume!(people.len() <= grid.count());
            let levels: Vec<Level> = seed[..grid.count()].iter().map(|i| Level::ALL[*i]).collect();
            let spread = if blocks { Spread::Blocks } else { Spread::Scattered };
            let groups = divide(&grid, &levels, [3.0, 7.0, 12.0, 20.0], &crowd(&people), spread).unwrap();
            let mut all: Vec<usize> = groups.groups.iter().flat_map(|group| group.pieces.clone()).collect();
            all.sort_unstable();
            prop_assert_eq!(all, (0..grid.count()).collect::<Vec<_>>());
            let everybody = float(people.iter().sum());
            for group in &groups.groups {
                let exact = float(group.members.people) / everybody * float(grid.count());
                let got = group.pieces.len();
                prop_assert!(got >= 1);
                if people.iter().all(|people| float(*people) / everybody * float(grid.count()) >= 1.0) {
                    prop_assert!((float(got) - exact).abs() < 1.0, "{got} for {exact}");
                }
                if blocks {
                    prop_assert!(connected(&grid, &group.pieces), "{:?}", group.pieces);
                } else {
                    for (level, count) in group.of_levels(&levels).into_iter().enumerate() {
                        let all = levels.iter().filter(|own| own.index() == level).count();
                        let part = float(all) * float(got) / float(grid.count());
                        prop_assert!((float(count) - part).abs() < 1.0, "level {level}: {count} for {part}");
                    }
                }
            }
        }
    }

    #[test]
    fn a_border_in_reserve_is_nobodys_share() {
        let inner = grid(5, 4);
        let with = inner.with_border();
        let own: Vec<usize> = within_border(&with).collect();
        let level = |place: usize| Level::ALL[place % 4];
        let mut levels = vec![Level::Easy; with.count()];
        own.iter().enumerate().for_each(|(place, piece)| levels[*piece] = level(place));
        let alone: Vec<Level> = (0..inner.count()).map(level).collect();
        let people = read("3A 7, 3B 5").unwrap();
        for spread in [Spread::Scattered, Spread::Blocks] {
            let shared = divide(&with, &levels, [6.0, 10.0, 15.0, 22.0], &people, spread).unwrap();
            let expected = divide(&inner, &alone, [6.0, 10.0, 15.0, 22.0], &people, spread).unwrap();
            for (group, alone) in shared.groups.iter().zip(&expected.groups) {
                assert_eq!(group.pieces, alone.pieces.iter().map(|place| own[*place]).collect::<Vec<_>>());
            }
            assert_eq!(Groups::from_json(&shared.to_json(&with), &with), Ok(shared));
        }
    }

    /// Whether pieces hang together, side by side.
    fn connected(grid: &Grid, pieces: &[usize]) -> bool {
        let mut open = vec![pieces[0]];
        let mut seen = vec![pieces[0]];
        while let Some(at) = open.pop() {
            let (row, column) = (at / grid.columns, at % grid.columns);
            for other in pieces {
                let apart = (other / grid.columns).abs_diff(row) + (other % grid.columns).abs_diff(column);
                if apart == 1 && !seen.contains(other) {
                    seen.push(*other);
                    open.push(*other);
                }
            }
        }
        seen.len() == pieces.len()
    }
}
