//! What lies on phones' tables: of each phone the squares that its photos showed, and the last photo's picture. In memory alone.

use std::collections::VecDeque;
use std::sync::{Mutex, PoisonError};

use crate::check::lying::Seen;
use crate::plan::Cell;

use super::together::Who;

/// Maximum number of phones whose tables are remembered; the one that was silent longest is forgotten first.
const MOST_TABLES: usize = 16;
/// Maximum number of photos of one table; a hundred squares need ten.
const MOST_PHOTOS: usize = 40;

/// Tables of all phones, the one that changed last at the end.
#[derive(Debug, Default)]
pub struct Tables(Mutex<Known>);

#[derive(Debug, Default)]
struct Known {
    tables: VecDeque<Table>,
    photos: u64,
}

#[derive(Debug)]
struct Table {
    who: Who,
    photos: VecDeque<Vec<Cell>>,
    /// Number and picture of the last photo.
    number: u64,
    picture: Vec<u8>,
}

impl Tables {
    /// Adds a photo to a phone's table; tells the photo's number, and what each photo of the table shows.
    pub(super) fn add(&self, who: Who, first: bool, seen: Seen) -> (u64, Vec<Vec<Cell>>) {
        let mut known = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        known.photos += 1;
        let number = known.photos;
        let before = known.tables.iter().position(|table| table.who == who);
        let before = before.and_then(|at| known.tables.remove(at)).filter(|_| !first);
        let mut photos = before.map(|table| table.photos).unwrap_or_default();
        photos.push_back(seen.homes);
        if photos.len() > MOST_PHOTOS {
            photos.pop_front();
        }
        let shown = photos.iter().cloned().collect();
        known.tables.push_back(Table { who, photos, number, picture: seen.picture });
        if known.tables.len() > MOST_TABLES {
            known.tables.pop_front();
        }
        (number, shown)
    }

    /// Picture of a photo that is the last one of its table.
    pub(super) fn picture(&self, number: u64) -> Option<Vec<u8>> {
        let known = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        known.tables.iter().find(|table| table.number == number).map(|table| table.picture.clone())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn phone(letter: char) -> Who {
        Who::try_from(letter.to_string().repeat(12)).unwrap()
    }

    fn seen(columns: &[usize]) -> Seen {
        let homes = columns.iter().map(|column| Cell { column: *column, row: 0 }).collect();
        Seen { homes, picture: vec![u8::try_from(columns[0]).unwrap()], small: false }
    }

    #[test]
    fn each_phone_has_its_own_table_until_it_begins_another() {
        let tables = Tables::default();
        assert_eq!(tables.add(phone('a'), false, seen(&[1])).1.len(), 1);
        assert_eq!(tables.add(phone('b'), false, seen(&[2])).1.len(), 1);
        let (number, photos) = tables.add(phone('a'), false, seen(&[3, 4]));
        assert_eq!(photos.iter().map(Vec::len).collect::<Vec<_>>(), [1, 2]);
        assert_eq!(tables.picture(number), Some(vec![3]));
        assert_eq!(tables.picture(number - 1), Some(vec![2]));
        assert_eq!(tables.picture(number - 2), None, "only a table's last picture is kept");
        assert_eq!(tables.add(phone('a'), true, seen(&[5])).1.len(), 1);
    }

    #[test]
    fn what_is_remembered_has_a_limit() {
        let tables = Tables::default();
        for letter in ('a'..='z').chain('0'..='9') {
            tables.add(phone(letter), false, seen(&[1]));
        }
        assert_eq!(tables.0.lock().unwrap().tables.len(), MOST_TABLES);
        for _ in 0..2 * MOST_PHOTOS {
            tables.add(phone('a'), false, seen(&[1]));
        }
        let (_, photos) = tables.add(phone('a'), false, seen(&[1]));
        assert_eq!(photos.len(), MOST_PHOTOS);
    }
}
