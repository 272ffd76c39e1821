//! event.toml to settings.

use std::path::{Component, Path};

use toml_edit::Document;

use super::error::{SettingsError, missing, syntax};
use super::known::{KNOWN, LISTS};
use super::section::Section;
use super::{
    ACROSS, COLOURS, CodeSettings, DEFAULT_COLOURS, DEFAULT_PICTURE, DEFAULT_PIECE_MM, DEFAULT_SQUARE_MM,
    LEAST_WITH_BORDER, Language, MODULE_MM, MOST_CELLS, NAME_LENGTH, PIECE_MM, Pencil, PictureSettings,
    PrintSettings, SQUARE_MM, Settings,
};
use super::{evening, levels, parts};
use crate::plan::cell::Grid;
use crate::plan::code::{TAG_ALPHABET, Tag};
use crate::plan::kept_free::{KeptFree, MOST_KEPT_FREE};
use crate::words::Sentence;

impl Settings {
    /// Reads an event.toml.
    ///
    /// # Errors
    /// [`SettingsError`] with the line of what is unknown, of the wrong kind or out of range, what was read there and what is
    /// allowed. Nothing is ever taken for something else.
    pub fn from_toml(text: &str) -> Result<Self, SettingsError> {
        let document = Document::parse(text).map_err(|error| syntax(text, &error))?;
        let top = Section::new(text, "", document.as_table());
        refuse_unknown(&top)?;
        let grid = grid(&top.section("wall")?)?;
        let language: Language = top.choice("language")?.unwrap_or_default();
        let second_language = top.choice("second_language")?;
        if second_language == Some(language) {
            return Err(top.refuse("second_language", Sentence::new("error-settings-second-language")));
        }
        Ok(Self {
            name: line_of_text(&top, "name")?
                .ok_or_else(|| missing(Sentence::given("name"), top_example("name = \"Open evening\"")))?,
            tag: tag(&top)?.ok_or_else(|| missing(Sentence::given("tag"), top_example("tag = \"K7M\"")))?,
            picture: picture(&top)?,
            grid,
            parts: parts::read(&top, &grid)?,
            code: code(&top.section("code")?, &grid)?,
            print: print(&top.section("print")?)?,
            levels: levels::read(&top, &grid)?,
            evening: evening::read(&top.section("evening")?)?,
            language,
            second_language,
        })
    }
}

impl Pencil {
    /// Reads the `[[pencils]]` of an event.toml, or of a file that holds nothing else.
    ///
    /// # Errors
    /// [`SettingsError`] where there are none, too few, too many, or where one is refused.
    pub fn list_from_toml(text: &str) -> Result<Vec<Self>, SettingsError> {
        let document = Document::parse(text).map_err(|error| syntax(text, &error))?;
        let top = Section::new(text, "", document.as_table());
        refuse_unknown(&top)?;
        let pencils = pencils(&top)?;
        if pencils.is_empty() {
            return Err(missing(
                Sentence::given("[[pencils]]"),
                Sentence::new("error-settings-pencils-example"),
            ));
        }
        Ok(pencils)
    }
}

fn refuse_unknown(top: &Section) -> Result<(), SettingsError> {
    for (name, known) in KNOWN {
        match name {
            "" => top.only(known)?,
            list if LISTS.contains(&list) => top.list(name)?.iter().try_for_each(|one| one.only(known))?,
            _ => top.section(name)?.only(known)?,
        }
    }
    Ok(())
}

fn line_of_text(section: &Section, name: &'static str) -> Result<Option<String>, SettingsError> {
    let allowed = Sentence::new("error-settings-name").with("most", NAME_LENGTH.to_string());
    section.text(name, allowed, |text| {
        let fits = !text.trim().is_empty() && text.chars().count() <= NAME_LENGTH;
        (fits && !text.chars().any(char::is_control)).then(|| text.to_owned())
    })
}

fn tag(top: &Section) -> Result<Option<Tag>, SettingsError> {
    top.text("tag", Sentence::new("error-settings-tag").with("letters", TAG_ALPHABET), Tag::new)
}

fn picture(top: &Section) -> Result<PictureSettings, SettingsError> {
    let section = top.section("picture")?;
    let allowed = Sentence::new("error-settings-file");
    let file = section.text("file", allowed, |text| stays_inside(text).then(|| text.to_owned()))?;
    let colours = section.whole("colours", &COLOURS)?;
    let pencils = pencils(top)?;
    if !pencils.is_empty() && colours.is_some_and(|colours| colours != pencils.len()) {
        let allowed = Sentence::new("error-settings-colours")
            .with("count", pencils.len().to_string())
            .with("name", section.spelled("colours"));
        return Err(section.refuse("colours", allowed));
    }
    let counted = if pencils.is_empty() { DEFAULT_COLOURS } else { pencils.len() };
    Ok(PictureSettings {
        file: file.unwrap_or_else(|| DEFAULT_PICTURE.to_owned()),
        credit: line_of_text(&section, "credit")?,
        colours: colours.unwrap_or(counted),
        pencils,
    })
}

fn pencils(top: &Section) -> Result<Vec<Pencil>, SettingsError> {
    let listed = top.list("pencils")?;
    let pencils = listed.iter().zip(1..).map(|(own, number)| pencil(own, number));
    let pencils = pencils.collect::<Result<Vec<_>, _>>()?;
    let (least, most) = (COLOURS.start(), COLOURS.end());
    if !pencils.is_empty() && !COLOURS.contains(&pencils.len()) {
        let allowed = Sentence::new("error-settings-pencils")
            .with("count", pencils.len().to_string())
            .with("least", least.to_string())
            .with("most", most.to_string());
        return Err(top.refuse("pencils", allowed));
    }
    Ok(pencils)
}

fn pencil(section: &Section, number: usize) -> Result<Pencil, SettingsError> {
    let lacking = |name: &str| {
        let which =
            Sentence::new("error-settings-of-pencil").with("name", name).with("number", number.to_string());
        missing(which, Sentence::new("error-settings-pencil-example"))
    };
    Ok(Pencil {
        name: line_of_text(section, "name")?.ok_or_else(|| lacking("name"))?,
        srgb: section
            .text("srgb", Sentence::new("error-settings-colour"), colour)?
            .ok_or_else(|| lacking("srgb"))?,
    })
}

/// Reads `#rrggbb`.
fn colour(text: &str) -> Option<[u8; 3]> {
    let digits = text.strip_prefix('#').filter(|digits| digits.len() == 6)?;
    if !digits.bytes().all(|byte| byte.is_ascii_hexdigit()) {
        return None;
    }
    let [_, red, green, blue] = u32::from_str_radix(digits, 16).ok()?.to_be_bytes();
    Some([red, green, blue])
}

/// Whether a file name leads to no place outside the folder it is joined to, on any system.
fn stays_inside(text: &str) -> bool {
    let plain = !text.is_empty() && text.len() <= 255 && !text.contains(['\\', ':']);
    plain
        && !text.chars().any(char::is_control)
        && Path::new(text).components().all(|part| matches!(part, Component::Normal(_)))
}

fn grid(wall: &Section) -> Result<Grid, SettingsError> {
    let columns = wall
        .whole("columns", &ACROSS)?
        .ok_or_else(|| missing(Sentence::given("columns"), wall_example("columns = 10")))?;
    let rows = wall
        .whole("rows", &ACROSS)?
        .ok_or_else(|| missing(Sentence::given("rows"), wall_example("rows = 8")))?;
    if columns * rows > MOST_CELLS {
        let most = MOST_CELLS / columns;
        let allowed = Sentence::new("error-settings-rows")
            .with("columns", columns)
            .with("most", most.to_string())
            .with("squares", MOST_CELLS.to_string());
        return Err(wall.refuse("rows", allowed));
    }
    let square_mm = wall.millimetres("square_mm", &SQUARE_MM)?.unwrap_or(DEFAULT_SQUARE_MM);
    let piece_mm = wall.millimetres("piece_mm", &PIECE_MM)?;
    if piece_mm.is_some_and(|piece_mm| piece_mm > square_mm) {
        return Err(wall.refuse("piece_mm", Sentence::new("error-settings-piece").with("square", square_mm)));
    }
    let border = wall.yes_or_no("border")?.unwrap_or(false);
    if border && columns.min(rows) < LEAST_WITH_BORDER {
        let allowed = Sentence::new("error-settings-border").with("least", LEAST_WITH_BORDER);
        return Err(wall.refuse("border", allowed));
    }
    let grid = Grid {
        columns,
        rows,
        square_mm,
        piece_mm: piece_mm.unwrap_or_else(|| DEFAULT_PIECE_MM.min(square_mm)),
        rows_from: wall.choice("rows_from")?.unwrap_or_default(),
        border,
        kept_free: KeptFree::NONE,
    };
    Ok(Grid { kept_free: kept_free(wall, &grid)?, ..grid })
}

/// The cells where nothing hangs: at most half of the picture's.
fn kept_free(wall: &Section, grid: &Grid) -> Result<KeptFree, SettingsError> {
    let most = MOST_KEPT_FREE.min(grid.within_border().count() / 2);
    let allowed = || {
        let last = grid.label(grid.last());
        Sentence::new("error-settings-keep-free").with("most", most.to_string()).with("last", last)
    };
    let cells = wall.all_texts("keep_free", allowed(), |label| grid.cell(label))?;
    let free = KeptFree::of(&cells).filter(|free| free.count() <= most);
    free.ok_or_else(|| wall.refuse("keep_free", allowed()))
}

fn code(section: &Section, grid: &Grid) -> Result<CodeSettings, SettingsError> {
    let given = section.millimetres("module_mm", &MODULE_MM)?;
    let module_mm = given.unwrap_or_else(|| CodeSettings::usual_module_mm(grid));
    let least = CodeSettings::least_inset_mm(module_mm);
    let most = CodeSettings::most_inset_mm(module_mm, grid.square_mm);
    if most < least {
        let allowed = Sentence::new("error-settings-module").with("square", grid.square_mm);
        return Err(section.refuse("module_mm", allowed));
    }
    let inset_mm = section.millimetres("inset_mm", &(least..=most))?;
    Ok(CodeSettings {
        module_mm,
        corner: section.choice("corner")?.unwrap_or_default(),
        inset_mm: inset_mm.unwrap_or_else(|| CodeSettings::usual_inset_mm(module_mm).min(most)),
    })
}

fn print(section: &Section) -> Result<PrintSettings, SettingsError> {
    Ok(PrintSettings {
        paper: section.choice("paper")?.unwrap_or_default(),
        flip: section.choice("flip")?.unwrap_or_default(),
        units: section.choice("units")?.unwrap_or_default(),
        join: section.choice("join")?.unwrap_or_default(),
    })
}

fn top_example(line: &str) -> Sentence {
    Sentence::new("error-settings-top-example").with("line", line)
}

fn wall_example(line: &str) -> Sentence {
    Sentence::new("error-settings-wall-example").with("line", line)
}
