//! event.toml: written, read back, edited, refused.

use everysquare::plan::settings::{
    Arrivals, Choice, CodeSettings, Corner, EveningSettings, Flip, LevelSettings, NewValue, Paper, Pencil,
    Room, Settings, SettingsError, Units, Visitors, set,
};
use everysquare::plan::{Cell, Clock, Grid, KeptFree, Level, RowsFrom, Tag};
use proptest::prelude::*;

/// The design's own example.
const FULL: &str = r##"name = "Harbour library open evening"
tag = "K7M"                     # in every code of this event

[picture]
file = "picture.png"
colours = 6                     # or a list

[wall]
columns = 10
rows = 8
piece_mm = 25.4
square_mm = 127.0
rows_from = "bottom"            # row 1 is the lowest

[code]
module_mm = 0.6                 # left out: as small as the wall allows
corner = "bottom-right"
inset_mm = 8.0

[print]
paper = "letter"                # letter, tabloid, a4, a3
flip = "long-edge"
units = "inch"
"##;

const SHORT: &str = "name = \"x\"\ntag = \"K7M\"\n[wall]\ncolumns = 10\nrows = 8\n";

fn choice<T: Choice + std::fmt::Debug>() -> impl Strategy<Value = T> {
    (0..T::ALL.len()).prop_map(|i| T::ALL[i].0)
}

prop_compose! {
    fn any_grid()(
        columns in 1_usize..=60, rows in 1_usize..=50, square_mm in 60.0_f64..=400.0, part in 0.1_f64..=0.99,
        rows_from in choice::<RowsFrom>(), free in proptest::collection::vec(0_usize..3000, 0..5),
    ) -> Grid {
        let piece_mm = (square_mm * part).clamp(5.0, 300.0);
        let grid = Grid { square_mm, piece_mm, rows_from, ..Grid::usual(columns, rows) };
        let cells: Vec<Cell> = free.iter().map(|n| grid.at(n % grid.count())).take(grid.count() / 2).collect();
        Grid { kept_free: KeptFree::of(&cells).unwrap(), ..grid }
    }
}

prop_compose! {
    /// Any levels; of the pieces at these places, those that a grid has.
    fn any_levels()(
        names in proptest::option::of(proptest::sample::select(vec![
            ["one", "two", "three", "four"], ["leicht", "mittel", "schwer \"!\"", "ü # 4"], ["plain", "easy", "Medium", "hard"],
        ])),
        first in 0.0_f64..300.0, more in 0.001_f64..300.0, balanced: bool,
        decided in proptest::collection::btree_map((0_usize..60, 0_usize..50), choice::<Level>(), 0..5),
    ) -> LevelSettings {
        let decided = decided.into_iter().map(|((column, row), level)| (Cell { row, column }, level)).collect();
        let bounds = [first, first + more, first + 2.0 * more];
        LevelSettings { names: names.map(|names| names.map(str::to_owned)), bounds, balanced, decided }
    }
}

prop_compose! {
    fn any_evening()(
        visitors in proptest::option::of((1_usize..=10_000, 0_usize..=5_000)), arrivals in proptest::option::of(choice::<Arrivals>()),
        pieces_each in proptest::option::of(0.1_f64..=5.0), start in proptest::option::of((0_usize..24, 0_usize..60)),
        helpers in proptest::option::of((1_usize..=50, 1_usize..=50)), seconds in (5_usize..=900, 5_usize..=900),
        minutes in proptest::option::of(5.0_f64..=1_440.0),
        seats in proptest::option::of(1_usize..=500), hang_mm in proptest::option::of(0.0_f64..=3_000.0),
        sides in proptest::option::of((2_000_u32..500_000, 2_000_u32..500_000)), first in 0.5_f64..60.0, more in 0.0_f64..60.0,
    ) -> EveningSettings {
        let tenth = |side| f64::from(side) / 10.0;
        let wall = sides.map(|(width, height)| Room { width_mm: tenth(width), height_mm: tenth(height) });
        let minutes_a_piece = [first, first + more, first + 2.0 * more, first + 3.0 * more];
        EveningSettings {
            visitors: visitors.map(|(least, more)| Visitors::new(least, (least + more).min(10_000)).unwrap()),
            arrivals,
            pieces_each,
            start: start.and_then(|(hour, minute)| Clock::new(hour, minute)),
            minutes,
            seats,
            giving_out: helpers.map(|(giving_out, _)| giving_out),
            hanging: helpers.map(|(_, hanging)| hanging),
            giving_out_seconds: seconds.0,
            hanging_seconds: seconds.1,
            hang_mm,
            wall,
            minutes_a_piece,
        }
    }
}

prop_compose! {
    fn any_settings()(
        name in "[^\\x00-\\x1f\\x7f-\\x9f]{0,60}x", tag in "[2-9A-HJ-NP-Z]{3}", grid in any_grid(),
        module in proptest::option::of(0.3_f64..=1.9), part in 0.0_f64..=1.0, corner in choice::<Corner>(),
        paper in choice::<Paper>(), flip in choice::<Flip>(), units in choice::<Units>(), colours in 2_usize..=24,
        own in proptest::collection::vec(("[a-z \"\\\\é#]{0,9}x", any::<[u8; 3]>()), 0..8),
        levels in any_levels(), evening in any_evening(),
    ) -> Settings {
        let mut settings = Settings::new(name, Tag::new(&tag).unwrap(), grid);
        let module_mm = module.unwrap_or_else(|| CodeSettings::usual_module_mm(&grid));
        let (least, most) =
            (CodeSettings::least_inset_mm(module_mm), CodeSettings::most_inset_mm(module_mm, grid.square_mm));
        settings.code = CodeSettings { module_mm, corner, inset_mm: least + (most - least) * part };
        settings.print.paper = paper;
        settings.print.flip = flip;
        settings.print.units = units;
        settings.picture.colours = colours;
        settings.evening = evening;
        settings.levels = levels;
        settings.levels.decided.retain(|(cell, _)| grid.holds(*cell));
        if own.len() >= 2 {
            settings.picture.colours = own.len();
            settings.picture.pencils = own.into_iter().map(|(name, srgb)| Pencil { name, srgb }).collect();
        }
        settings
    }
}

proptest! {
    #[test]
    fn what_is_written_reads_back_equal(settings in any_settings()) {
        let text = settings.to_toml();
        prop_assert_eq!(Settings::from_toml(&text), Ok(settings), "{}", text);
    }

    #[test]
    fn an_edit_keeps_every_other_byte(settings in any_settings(), columns in 1_usize..=60, windows: bool) {
        let usual = CodeSettings::usual(&settings.grid); // fits a wall of any width
        let no_pieces = LevelSettings { decided: Vec::new(), ..settings.levels.clone() }; // they may lie outside the changed wall
        let grid = Grid { kept_free: KeptFree::NONE, ..settings.grid }; // as may they
        let mut text = Settings { code: usual, levels: no_pieces, grid, ..settings.clone() }.to_toml();
        if windows {
            text = text.replace('\n', "\r\n");
        }
        let edited = set(&text, "wall.columns", columns).unwrap();
        let old = format!("columns = {} ", settings.grid.columns);
        let new = format!("columns = {columns} ");
        prop_assert_eq!(&edited, &text.replacen(&old, &new, 1));
        let back = set(&edited, "wall.columns", settings.grid.columns).unwrap();
        prop_assert_eq!(back, text);
    }

    #[test]
    fn a_setting_that_was_left_out_is_added_and_all_lines_stay(settings in any_settings(), windows: bool) {
        let mut text = settings.to_toml().replace("flip = ", "# flip = ").replace("[picture]", "[picture] # ours");
        if windows {
            text = text.replace('\n', "\r\n");
        }
        let edited = set(&text, "print.flip", "none").unwrap();
        prop_assert_eq!(Settings::from_toml(&edited).unwrap().print.flip, Flip::None);
        let mut lines = edited.split_inclusive('\n');
        for line in text.split_inclusive('\n') {
            prop_assert!(lines.any(|own| own == line), "{line:?} is lost in {edited}");
        }
    }

    #[test]
    fn no_text_makes_it_panic(text in "[\\[\\]a-z_=\"0-9.#\\n{},é-]{0,200}") {
        let _ = Settings::from_toml(&text);
        let _ = Settings::from_toml(&format!("{SHORT}{text}"));
        let _ = set(&format!("{SHORT}{text}"), "print.paper", "a4");
    }
}

#[test]
fn the_designs_example_is_read() {
    let settings = Settings::from_toml(FULL).unwrap();
    assert_eq!(settings.name, "Harbour library open evening");
    assert_eq!(settings.tag.to_string(), "K7M");
    assert_eq!(settings.grid.size().x, 1270.0);
    assert_eq!(settings.code, CodeSettings { module_mm: 0.6, corner: Corner::BottomRight, inset_mm: 8.0 });
    assert_eq!((settings.print.paper, settings.print.flip), (Paper::Letter, Flip::LongEdge));
}

#[test]
fn what_is_left_out_is_the_usual() {
    let short = Settings::from_toml(SHORT).unwrap();
    let full = Settings::from_toml(FULL).unwrap();
    assert_eq!(short, Settings { name: "x".to_owned(), ..full });
    let large = set(SHORT, "code.module_mm", 3.0).unwrap();
    assert_eq!(Settings::from_toml(&large).unwrap().code.inset_mm, 12.0, "four modules of white at least");
}

#[test]
fn pencils_count_as_colours() {
    let two = "[[pencils]]\nname = \"leaf green\"\nsrgb = \"#3a8f4d\"\n[[pencils]]\nname = \"sky\"\nsrgb = \"#8FB0DE\"\n";
    let settings = Settings::from_toml(&format!("{SHORT}{two}")).unwrap();
    assert_eq!(settings.picture.colours, 2);
    assert_eq!(settings.picture.pencils[1], Pencil { name: "sky".to_owned(), srgb: [0x8f, 0xb0, 0xde] });
    let counted = format!("{SHORT}[picture]\ncolours = 6\n{two}");
    assert_eq!(
        Settings::from_toml(&counted).unwrap_err().to_string(),
        "event.toml, line 7: colours = 6: there are 2 [[pencils]] in the list, so use 2, or leave out colours"
    );
}

/// What is put in place of what in [`FULL`], and the sentence that follows.
const REFUSED: [(&str, &str, &str); 28] = [
    ("columns = 10", "columns = 0", "event.toml, line 9: columns = 0: must be a whole number from 1 to 702"),
    (
        "columns = 10",
        "columns = -3",
        "event.toml, line 9: columns = -3: must be a whole number from 1 to 702",
    ),
    (
        "columns = 10",
        "columns = \"10\"",
        "event.toml, line 9: columns = \"10\": must be a whole number from 1 to 702",
    ),
    (
        "columns = 10",
        "columns = 10.5",
        "event.toml, line 9: columns = 10.5: must be a whole number from 1 to 702",
    ),
    (
        "columns = 10",
        "colums = 10",
        "event.toml, line 9: colums isn’t a setting of [wall]. Do you mean columns?",
    ),
    ("columns = 10", "", "columns is missing from event.toml. Add columns = 10 under [wall]"),
    (
        "columns = 10",
        "columns = 10\ncolumns = 11",
        "event.toml, line 10: columns = 11: this name is here twice",
    ),
    ("columns = 10", "columns 10", "event.toml, line 9: columns 10: we can’t read this line ("),
    (
        "\"letter\" ",
        "a4 ",
        "event.toml, line 21: paper = a4                # letter, tabloid, a4, a3: put words in quotes",
    ),
    (
        "columns = 10",
        "paper = \"a4\"",
        "event.toml, line 9: paper isn’t a setting of [wall]. It belongs under [print]",
    ),
    (
        "columns = 10",
        "tag = \"K7M\"",
        "event.toml, line 9: tag isn’t a setting of [wall]. It belongs at the top of the file",
    ),
    ("rows = 8", "rows = 301", "event.toml, line 10: rows = 301: with 10 columns use at most 300 rows"),
    ("piece_mm = 25.4", "piece_mm = 1", "event.toml, line 11: piece_mm = 1: must be a number from 5 to 300"),
    (
        "piece_mm = 25.4",
        "piece_mm = 130",
        "event.toml, line 11: piece_mm = 130: must be at most square_mm, which is 127",
    ),
    (
        "square_mm = 127.0",
        "square_mm = nan",
        "event.toml, line 12: square_mm = nan: must be a number from 30 to 1000",
    ),
    ("\"bottom\" ", "\"left\" ", "event.toml, line 13: rows_from = \"left\": use bottom or top, in quotes"),
    ("inset_mm = 8.0", "inset_mm = 1", "event.toml, line 18: inset_mm = 1: must be a number from 2.4 to 112"),
    ("module_mm = 0.6", "module_mm = 5", "event.toml, line 16: module_mm = 5: the code and the white margin"),
    ("\"letter\"", "\"legal\"", "event.toml, line 21: paper = \"legal\": use letter, tabloid, a4 or a3"),
    ("\"K7M\"", "\"K7O\"", "event.toml, line 2: tag = \"K7O\": use 3 characters from"),
    ("\"K7M\"", "\"K7\"", "event.toml, line 2: tag = \"K7\": use 3 characters from"),
    ("\"Harbour library open evening\"", "\"\"", "event.toml, line 1: name = \"\": must be text in quotes"),
    (
        "\"picture.png\"",
        "\"../picture.png\"",
        "event.toml, line 5: file = \"../picture.png\": use the name of a file in",
    ),
    (
        "\"picture.png\"",
        "\"/etc/hosts\"",
        "event.toml, line 5: file = \"/etc/hosts\": use the name of a file in",
    ),
    ("\"picture.png\"", "\"C:/picture.png\"", "event.toml, line 5: file = \"C:/picture.png\": use the name"),
    ("[print]", "[printer]", "event.toml, line 20: printer isn’t a setting. Do you mean print?"),
    ("[code]\n", "[[code]]\n", "event.toml, line 15: code: this must be a table"),
    ("colours = 6", "colours = 1", "event.toml, line 6: colours = 1: must be a whole number from 2 to 24"),
];

#[test]
fn what_cannot_be_is_refused_with_its_line() {
    for (old, new, sentence) in REFUSED {
        let text = FULL.replacen(old, new, 1);
        assert_ne!(text, FULL, "{old:?} is in the example");
        let said = Settings::from_toml(&text).unwrap_err().to_string();
        assert!(said.starts_with(sentence), "{new:?}:\n{said}\nshould begin\n{sentence}");
        assert!(!said.contains('\n'), "{said:?} is one line");
    }
}

#[test]
fn an_edit_is_refused_like_a_file() {
    let refused = set(FULL, "wall.columns", 0).unwrap_err().to_string();
    assert_eq!(refused, "event.toml, line 9: columns = 0: must be a whole number from 1 to 702");
    for path in [
        "wall",
        "wall.colums",
        "pencils",
        "pencils.name",
        "pieces",
        "pieces.label",
        "evening",
        "levels.level",
        "colums",
        "wall.columns.x",
        "",
        ".",
    ] {
        assert_eq!(set(FULL, path, 3), Err(SettingsError::NoSuchSetting(path.to_owned())));
    }
}

#[test]
fn edits_reach_every_kind_of_table() {
    let inline = "name = \"x\"\ntag = \"K7M\"\nwall = { columns = 10, rows = 8 } # small\n";
    assert_eq!(set(inline, "wall.rows", 9).unwrap(), inline.replace("rows = 8", "rows = 9"));
    let dotted = "name = \"x\"\ntag = \"K7M\"\nwall.columns = 10\nwall.rows = 8\n";
    assert_eq!(set(dotted, "wall.rows", 9).unwrap(), dotted.replace("rows = 8", "rows = 9"));
    for text in [inline, dotted, SHORT, FULL] {
        for (path, value) in [
            ("name", NewValue::from("a \"quoted\" name, ümlaut # and all")),
            ("picture.file", "pieces/other.png".into()),
            ("wall.piece_mm", 30.0.into()),
            ("wall.rows_from", "top".into()),
            ("code.corner", "top-left".into()),
            ("print.units", "mm".into()),
            ("evening.visitors", 120.into()),
            ("evening.wall", "8x6ft".into()),
        ] {
            let edited = set(text, path, value).unwrap();
            assert_ne!(Settings::from_toml(&edited), Settings::from_toml(text), "{path} in {text}");
        }
    }
}

#[test]
fn an_evening_has_minutes_or_an_end_also_over_midnight() {
    let read = |more: &str| Settings::from_toml(&format!("{SHORT}[evening]\n{more}")).unwrap().evening;
    let evening = read(
        "visitors = \"60-120\"\narrivals = \"in-classes\"\nstart = \"10:30 pm\"\nend = \"0:15\"\ngiving_out = 2",
    );
    assert_eq!((evening.start, evening.minutes), (Clock::new(22, 30), Some(105.0)));
    assert_eq!((evening.visitors, evening.arrivals), (Visitors::new(60, 120), Some(Arrivals::InClasses)));
    assert_eq!((evening.giving_out, evening.hanging), (Some(2), None));
    assert_eq!(read("start = 18:30:00\nminutes = 45").start, Clock::new(18, 30), "as TOML writes a time");
}

#[test]
fn levels_and_the_evening_are_read() {
    let more = "[levels]\nnames = [\"sky\", \"easy\", \"tricky\", \"hard\"]\nbounds = [1, 4.5, 8]\nbalanced = true\n\
                [[pieces]]\nlabel = \"A8\"\nlevel = \"tricky\"\n[[pieces]]\nlabel = \"b1\"\nlevel = \"plain\"\n\
                [evening]\nvisitors = 120\nminutes = 90\nseats = 30\nhang_mm = 600\nwall = \"2.4 x 1.8 m\"\nminutes_a_piece = [5, 8, 12.5, 20]\n";
    let settings = Settings::from_toml(&format!("{SHORT}{more}")).unwrap();
    let levels = &settings.levels;
    assert_eq!((levels.bounds, levels.balanced), ([1.0, 4.5, 8.0], true));
    let (a8, b1) = (Cell { row: 0, column: 0 }, Cell { row: 7, column: 1 });
    assert_eq!(
        levels.decided,
        [(a8, Level::Medium), (b1, Level::Plain)],
        "own names count, and so do the usual ones"
    );
    let words = everysquare::words::Words::english();
    assert_eq!(
        (levels.word(Level::Plain, &words), LevelSettings::default().word(Level::Plain, &words)),
        ("sky".into(), "one color".into())
    );
    let evening = &settings.evening;
    assert_eq!(
        (evening.visitors, evening.minutes, evening.seats, evening.hang_mm),
        (Visitors::new(120, 120), Some(90.0), Some(30), Some(600.0))
    );
    assert_eq!(evening.wall, Some(Room { width_mm: 2_400.0, height_mm: 1_800.0 }));
    assert_eq!(evening.minutes_a_piece, [5.0, 8.0, 12.5, 20.0]);
}

#[test]
fn rooms_are_read_in_every_unit_and_nonsense_is_not() {
    for (written, width_mm, height_mm) in [
        ("2.4x1.8m", 2_400.0, 1_800.0),
        ("240 X 180 cm", 2_400.0, 1_800.0),
        ("2400×1800 mm", 2_400.0, 1_800.0),
        ("8x6ft", 2_438.4, 1_828.8),
        ("96x72in", 2_438.4, 1_828.8),
        ("2,4 x 1,8 m", 2_400.0, 1_800.0),
        ("2.4 m por 1.8 m", 2_400.0, 1_800.0),
    ] {
        let room = Room { width_mm, height_mm };
        assert_eq!(Room::read(written), Some(room), "{written}");
        assert_eq!(Room::read(&room.written()), Some(room));
    }
    for written in [
        "",
        "3",
        "3m",
        "x",
        "xm",
        "2.4x",
        "2.4xm",
        "0x0m",
        "2.4x1.8",
        "2.4x1.8x1m",
        "-2x3m",
        "1e9x2m",
        "nanxinfm",
        "99999x2m",
        "2.4x1.8km",
        "8x6ftm",
        "5'6\"x6ft",
        "2.4x1.8m2",
        "0.1x2m",
    ] {
        assert_eq!(Room::read(written), None, "{written:?}");
    }
}

/// What is added to [`SHORT`], and the sentence that follows. Its own 5 lines come before.
const REFUSED_EVENINGS: [(&str, &str); 28] = [
    (
        "[levels]\nbounds = [3, 2, 1]",
        "event.toml, line 7: bounds = [3, 2, 1]: use three rising numbers from 0 to 1000",
    ),
    ("[levels]\nbounds = [1, 1, 2]", "event.toml, line 7: bounds = [1, 1, 2]: use three rising"),
    ("[levels]\nbounds = [1, 2]", "event.toml, line 7: bounds = [1, 2]: use three rising"),
    ("[levels]\nbounds = [1, 2, nan]", "event.toml, line 7: bounds = [1, 2, nan]: use three rising"),
    ("[levels]\nbounds = 3", "event.toml, line 7: bounds = 3: use three rising"),
    (
        "[levels]\nnames = [\"a\", \"b\", \"A\", \"d\"]",
        "event.toml, line 7: names = [\"a\", \"b\", \"A\", \"d\"]: use four different names",
    ),
    (
        "[levels]\nnames = [\"a\", \"b\", \"c\"]",
        "event.toml, line 7: names = [\"a\", \"b\", \"c\"]: use four different names",
    ),
    (
        "[levels]\nnames = [\"a\", \"b\", \"\", \"d\"]",
        "event.toml, line 7: names = [\"a\", \"b\", \"\", \"d\"]: use four different names",
    ),
    (
        "[levels]\nnames = [\"hard\", \"b\", \"c\", \"d\"]",
        "event.toml, line 7: names = [\"hard\", \"b\", \"c\", \"d\"]: use four different names",
    ),
    ("[levels]\nbalanced = \"yes\"", "event.toml, line 7: balanced = \"yes\": use true or false"),
    (
        "[levels]\nbound = [1, 2, 3]",
        "event.toml, line 7: bound isn’t a setting of [levels]. Do you mean bounds?",
    ),
    (
        "[[pieces]]\nlabel = \"K1\"\nlevel = \"hard\"",
        "event.toml, line 7: label = \"K1\": use the label of a piece, columns A to J and rows 1 to 8",
    ),
    (
        "[[pieces]]\nlabel = \"A1\"\nlevel = \"fierce\"",
        "event.toml, line 8: level = \"fierce\": use plain, easy, medium or hard",
    ),
    (
        "[[pieces]]\nlabel = \"A1\"",
        "level for number 1 of the [[pieces]] is missing from event.toml. Add label =",
    ),
    (
        "[[pieces]]\nlabel = \"A1\"\nlevel = \"hard\"\n[[pieces]]\nlabel = \"a1\"\nlevel = \"easy\"",
        "event.toml, line 10: label = \"a1\": this piece is in the list twice",
    ),
    (
        "[pieces]\nlabel = \"A1\"",
        "event.toml, line 6: pieces: this must be a list, with one [[pieces]] for each",
    ),
    ("[evening]\nseats = 0", "event.toml, line 7: seats = 0: must be a whole number from 1 to 500"),
    (
        "[evening]\nvisitors = 99999999999",
        "event.toml, line 7: visitors = 99999999999: use a whole number such as 80, or a range such as",
    ),
    (
        "[evening]\nvisitors = \"120-60\"",
        "event.toml, line 7: visitors = \"120-60\": use a whole number such as 80, or a range such as",
    ),
    ("[evening]\ngiving_out = 0", "event.toml, line 7: giving_out = 0: must be a whole number from 1 to 50"),
    (
        "[evening]\nstart = \"half past six\"",
        "event.toml, line 7: start = \"half past six\": use a time such as",
    ),
    ("[evening]\nstart = 2027-01-01", "event.toml, line 7: start = 2027-01-01: use a time such as"),
    ("[evening]\nend = \"20:00\"", "event.toml, line 7: end = \"20:00\": Give start as well"),
    (
        "[evening]\nstart = \"18:30\"\nend = \"20:00\"\nminutes = 90",
        "event.toml, line 8: end = \"20:00\": Give either end or minutes, not both",
    ),
    (
        "[evening]\nstart = \"18:30\"\nend = \"18:30\"",
        "event.toml, line 8: end = \"18:30\": must be at least 5 minutes after start",
    ),
    (
        "[evening]\nminutes = 0",
        "event.toml, line 7: minutes = 0: must be a number from 5 to 1440, in minutes",
    ),
    ("[evening]\nwall = \"3\"", "event.toml, line 7: wall = \"3\": write it like"),
    (
        "[evening]\nminutes_a_piece = [9, 8, 7, 6]",
        "event.toml, line 7: minutes_a_piece = [9, 8, 7, 6]: use four numbers from 0.5 to 240",
    ),
];

#[test]
fn impossible_levels_and_evenings_are_refused_with_their_line() {
    for (added, sentence) in REFUSED_EVENINGS {
        let said = Settings::from_toml(&format!("{SHORT}{added}\n")).unwrap_err().to_string();
        assert!(said.starts_with(sentence), "{added:?}:\n{said}\nshould begin\n{sentence}");
        assert!(!said.contains('\n'), "{said:?} is one line");
    }
}
