//! `[[parts]]`: the rectangles of spots that hang by themselves, where the wall is several boards or has a door in it.

use toml_edit::DocumentMut;

use super::Settings;
use super::error::{SettingsError, missing, syntax};
use super::evening::Room;
use super::section::Section;
use super::toml::{example, line, number, text};
use crate::frame::{Vector, WallMm, float};
use crate::plan::cell::{Cell, Grid};
use crate::words::{Sentence, Words};

/// Characters of a place's name: more do not fit beside a part on the wall map.
pub const PLACE_LENGTH: usize = 40;
/// Height of a part's lower edge above the floor, in mm.
pub const BOTTOM_MM: std::ops::RangeInclusive<f64> = 0.0..=10_000.0;

/// Part of the wall: a rectangle of cells that hangs by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct WallPart {
    /// Its top left cell.
    pub first: Cell,
    /// Its bottom right cell.
    pub last: Cell,
    /// What people call the place where it hangs.
    pub place: Option<String>,
    /// Height of its lower edge above the floor, in mm.
    pub bottom_mm: Option<f64>,
    /// The board that it hangs on.
    pub board: Option<Room>,
}

impl WallPart {
    /// The wall in one piece.
    #[must_use]
    pub fn whole(grid: &Grid, bottom_mm: f64) -> Self {
        let last = Cell { row: grid.rows.saturating_sub(1), column: grid.columns.saturating_sub(1) };
        Self { first: Cell { row: 0, column: 0 }, last, place: None, bottom_mm: Some(bottom_mm), board: None }
    }

    /// Whether a cell is one of it.
    #[must_use]
    pub fn holds(&self, cell: Cell) -> bool {
        (self.first.row..=self.last.row).contains(&cell.row)
            && (self.first.column..=self.last.column).contains(&cell.column)
    }

    /// Number of its columns.
    #[must_use]
    pub fn columns(&self) -> usize {
        self.last.column - self.first.column + 1
    }

    /// Number of its rows.
    #[must_use]
    pub fn rows(&self) -> usize {
        self.last.row - self.first.row + 1
    }

    /// Its size on the wall.
    #[must_use]
    pub fn size(&self, grid: &Grid) -> Vector<WallMm> {
        Vector::new(float(self.columns()) * grid.square_mm, float(self.rows()) * grid.square_mm)
    }

    /// Labels of the two opposite corners that people count from and to.
    #[must_use]
    pub fn ends(&self, grid: &Grid) -> (String, String) {
        let (top, bottom) = (self.first.row, self.last.row);
        let from_below = grid.row_number(top) > grid.row_number(bottom);
        let (near, far) = if from_below { (bottom, top) } else { (top, bottom) };
        let label = |row, column| grid.label(Cell { row, column });
        (label(near, self.first.column), label(far, self.last.column))
    }
}

/// Reads the parts; none where the wall is one piece. Together they have every cell once.
pub(super) fn read(top: &Section, grid: &Grid) -> Result<Vec<WallPart>, SettingsError> {
    let mut parts: Vec<WallPart> = Vec::new();
    for (section, number) in top.list("parts")?.iter().zip(1_usize..) {
        let part = one(section, number, grid)?;
        let shared = grid.cells().find(|cell| part.holds(*cell) && parts.iter().any(|own| own.holds(*cell)));
        if let Some(cell) = shared {
            let allowed = Sentence::new("error-settings-parts-share").with("label", grid.label(cell));
            return Err(section.refuse("to", allowed));
        }
        parts.push(part);
    }
    let left_out = grid.cells().find(|cell| !parts.iter().any(|part| part.holds(*cell)));
    match left_out {
        Some(cell) if !parts.is_empty() => {
            let allowed = Sentence::new("error-settings-parts-lack").with("label", grid.label(cell));
            Err(top.refuse("parts", allowed))
        }
        _ => Ok(parts),
    }
}

/// One `[[parts]]`.
fn one(section: &Section, number: usize, grid: &Grid) -> Result<WallPart, SettingsError> {
    let spot = |name: &str| {
        let allowed = Sentence::new("error-settings-spot").with("last", grid.label(grid.last()));
        section.text(name, allowed, |label| grid.cell(label))?.ok_or_else(|| {
            let which =
                Sentence::new("error-settings-of-part").with("name", name).with("number", number.to_string());
            missing(which, Sentence::new("error-settings-part-example"))
        })
    };
    let (from, to) = (spot("from")?, spot("to")?);
    let place = section.text(
        "place",
        Sentence::new("error-settings-place").with("most", PLACE_LENGTH.to_string()),
        |place| {
            let fits = (1..=PLACE_LENGTH).contains(&place.chars().count()) && place.trim() == place;
            (fits && !place.chars().any(char::is_control)).then(|| place.to_owned())
        },
    )?;
    let part = WallPart {
        first: Cell { row: from.row.min(to.row), column: from.column.min(to.column) },
        last: Cell { row: from.row.max(to.row), column: from.column.max(to.column) },
        place,
        bottom_mm: section.millimetres("bottom_mm", &BOTTOM_MM)?,
        board: section.text("board", Room::allowed(), Room::read)?,
    };
    let size = part.size(grid);
    if part.board.is_some_and(|board| !board.holds(size.x, size.y)) {
        let needs = Room { width_mm: size.x, height_mm: size.y }.written();
        return Err(section.refuse("board", Sentence::new("error-settings-board").with("needs", needs)));
    }
    Ok(part)
}

/// Puts the parts into an event.toml, in place of those that it has; keeps its comments.
///
/// # Errors
/// [`SettingsError`] where the file, or what comes of it, is refused.
pub fn set_parts(file: &str, parts: &[WallPart], words: &Words) -> Result<String, SettingsError> {
    let settings = Settings::from_toml(file)?;
    let mut document: DocumentMut = file.parse().map_err(|error| syntax(file, &error))?;
    let before = document.get("parts").and_then(|list| list.as_array_of_tables()?.get(0)).and_then(|first| {
        Some(first.decor().prefix()?.as_str()?.trim().to_owned()) // what somebody wrote above the list
    });
    document.remove("parts");
    let mut text = document.to_string();
    if let Some(before) = before.filter(|before| !before.is_empty()) {
        text = format!("{}\n\n{before}\n", text.trim_end());
    }
    if !parts.is_empty() {
        text = format!("{}\n{}", text.trim_end(), written(parts, &settings.grid, words));
    }
    Settings::from_toml(&text)?;
    Ok(text)
}

/// The list as event.toml has it; where the wall is one piece, how it would look.
pub(super) fn written(parts: &[WallPart], grid: &Grid, words: &Words) -> String {
    let say = |id: &str| words.say(id, &[]);
    if parts.is_empty() {
        let mut half = WallPart::whole(grid, 0.0);
        half.last.column = (grid.columns / 2).saturating_sub(1);
        let (from, to) = half.ends(grid);
        return [
            format!("# {}\n# [[parts]]\n", say("event-parts")),
            format!("# from = {}\n", text(&from)),
            example("to", &text(&to), &say("event-part-to")),
        ]
        .concat();
    }
    let mut list = String::new();
    for (index, part) in parts.iter().enumerate() {
        let (from, to) = part.ends(grid);
        list += &format!("\n[[parts]]\nfrom = {}\n", text(&from));
        list += &match index {
            0 => line("to", &text(&to), &say("event-part-to")),
            _ => format!("to = {}\n", text(&to)),
        };
        if let Some(place) = &part.place {
            list += &line("place", &text(place), &say("event-part-place"));
        }
        if let Some(bottom) = part.bottom_mm {
            list += &line("bottom_mm", &number(bottom), &say("event-part-bottom"));
        }
        if let Some(board) = &part.board {
            list += &line("board", &text(&board.written()), &say("event-part-board"));
        }
    }
    list
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEAD: &str =
        "name = \"Boards\"\ntag = \"K7M\"\n[wall]\ncolumns = 6 # as wide as the hall\nrows = 4\n";

    fn read(parts: &str) -> Result<Vec<WallPart>, String> {
        let settings = Settings::from_toml(&format!("{HEAD}{parts}"));
        settings.map(|settings| settings.parts).map_err(|error| error.to_string())
    }

    #[test]
    fn two_opposite_corners_make_a_part() {
        let both = "[[parts]]\nfrom = \"A4\"\nto = \"C1\"\nplace = \"by the door\"\n[[parts]]\nfrom = \"D1\"\nto = \"F4\"\nbottom_mm = 700\n";
        let parts = read(both).unwrap();
        assert_eq!(
            (parts[0].columns(), parts[0].rows(), parts[0].place.as_deref()),
            (3, 4, Some("by the door"))
        );
        assert_eq!((parts[1].first, parts[1].bottom_mm), (Cell { row: 0, column: 3 }, Some(700.0)));
        assert_eq!(parts[0].ends(&Grid::usual(6, 4)), ("A1".to_owned(), "C4".to_owned()));
        assert!(read("").unwrap().is_empty());
    }

    #[test]
    fn parts_that_overlap_or_leave_spots_out_are_refused() {
        let part = |from: &str, to: &str| format!("[[parts]]\nfrom = \"{from}\"\nto = \"{to}\"\n");
        let said = |parts: &[String]| read(&parts.concat()).unwrap_err();
        assert!(said(&[part("A1", "C4"), part("C1", "F4")]).contains("another part already has C4"));
        assert!(said(&[part("A1", "C4"), part("D2", "F4")]).contains("no part has D1"));
        assert!(said(&[part("A1", "G4")]).contains("line 8: to = \"G4\""));
        assert!(
            said(&["[[parts]]\nfrom = \"A1\"\n".to_owned()]).contains("to for number 1 of the [[parts]]")
        );
        assert!(said(&[format!("{}width = 3\n", part("A1", "F4"))]).contains("width"));
        // a board has room for its part; it is kept as it was written
        let on = |board: &str| format!("{}board = \"{board}\"\n{}", part("A1", "C4"), part("D1", "F4"));
        assert!(said(&[on("14x20in")]).contains("15x20in"), "{}", said(&[on("14x20in")]));
        assert_eq!(read(&on("15x20in")).unwrap()[0].board, Room::read("381x508mm"));
        assert!(said(&[on("wide")]).contains("line 9: board = \"wide\""));
        // one square is a part as well
        assert_eq!(read(&[part("A1", "A1"), part("A2", "A4"), part("B1", "F4")].concat()).unwrap().len(), 3);
    }

    #[test]
    fn parts_are_put_into_a_file_in_place_of_others_and_comments_stay() {
        let words = Words::english();
        let parts =
            read("[[parts]]\nfrom = \"A1\"\nto = \"C4\"\n[[parts]]\nfrom = \"D1\"\nto = \"F4\"\n").unwrap();
        let once = set_parts(HEAD, &parts, &words).unwrap();
        assert!(once.starts_with(HEAD.trim_end()) && once.contains("from = \"D1\"\nto = \"F4\""), "{once}");
        let again = set_parts(&once, &parts[..0], &words).unwrap();
        assert_eq!(again.trim_end(), HEAD.trim_end());
        assert_eq!(Settings::from_toml(&set_parts(&once, &parts, &words).unwrap()).unwrap().parts, parts);
    }
}
