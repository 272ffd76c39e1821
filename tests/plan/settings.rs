//! event.toml: written, read back, edited, refused.

use everysquare::plan::settings::{
    Choice, CodeSettings, Corner, Flip, NewValue, Paper, Pencil, Settings, SettingsError, Units, set,
};
use everysquare::plan::{Grid, RowsFrom, Tag};
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
tile_mm = 25.4
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
        rows_from in choice::<RowsFrom>(),
    ) -> Grid {
        Grid { columns, rows, square_mm, tile_mm: (square_mm * part).clamp(5.0, 300.0), rows_from }
    }
}

prop_compose! {
    fn any_settings()(
        name in "[^\\x00-\\x1f\\x7f-\\x9f]{0,60}x", tag in "[2-9A-HJ-NP-Z]{3}", grid in any_grid(),
        module in proptest::option::of(0.3_f64..=1.9), part in 0.0_f64..=1.0, corner in choice::<Corner>(),
        paper in choice::<Paper>(), flip in choice::<Flip>(), units in choice::<Units>(), colours in 2_usize..=24,
        own in proptest::collection::vec(("[a-z \"\\\\é#]{0,9}x", any::<[u8; 3]>()), 0..8),
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
        let mut text = Settings { code: usual, ..settings.clone() }.to_toml();
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
        "event.toml, line 7: colours = 6: 2 [[pencils]] are listed: 2 is allowed, or leave colours out"
    );
}

/// What is put in place of what in [`FULL`], and the sentence that follows.
const REFUSED: [(&str, &str, &str); 25] = [
    (
        "columns = 10",
        "columns = 0",
        "event.toml, line 9: columns = 0: a whole number from 1 to 702 is allowed",
    ),
    (
        "columns = 10",
        "columns = -3",
        "event.toml, line 9: columns = -3: a whole number from 1 to 702 is allowed",
    ),
    (
        "columns = 10",
        "columns = \"10\"",
        "event.toml, line 9: columns = \"10\": a whole number from 1 to 702 is allowed",
    ),
    (
        "columns = 10",
        "columns = 10.5",
        "event.toml, line 9: columns = 10.5: a whole number from 1 to 702 is allowed",
    ),
    (
        "columns = 10",
        "colums = 10",
        "event.toml, line 9: colums is not a setting of [wall]: do you mean columns?",
    ),
    ("columns = 10", "", "event.toml has no columns: add columns = 10 under [wall]"),
    ("columns = 10", "columns = 10\ncolumns = 11", "event.toml, line 10: "),
    ("columns = 10", "columns 10", "event.toml, line 9: "),
    (
        "rows = 8",
        "rows = 301",
        "event.toml, line 10: rows = 301: with 10 columns at most 300 rows are allowed",
    ),
    ("tile_mm = 25.4", "tile_mm = 1", "event.toml, line 11: tile_mm = 1: a number from 5 to 300 is allowed"),
    (
        "tile_mm = 25.4",
        "tile_mm = 130",
        "event.toml, line 11: tile_mm = 130: at most square_mm is allowed, which is 127",
    ),
    (
        "square_mm = 127.0",
        "square_mm = nan",
        "event.toml, line 12: square_mm = nan: a number from 30 to 1000 is allowed",
    ),
    (
        "\"bottom\" ",
        "\"left\" ",
        "event.toml, line 13: rows_from = \"left\": bottom or top is allowed, in quotes",
    ),
    (
        "inset_mm = 8.0",
        "inset_mm = 1",
        "event.toml, line 18: inset_mm = 1: a number from 2.4 to 112 is allowed",
    ),
    ("module_mm = 0.6", "module_mm = 5", "event.toml, line 16: module_mm = 5: the code and 4 modules"),
    (
        "\"letter\"",
        "\"legal\"",
        "event.toml, line 21: paper = \"legal\": letter, tabloid, a4 or a3 is allowed",
    ),
    ("\"K7M\"", "\"K7O\"", "event.toml, line 2: tag = \"K7O\": 3 characters of"),
    ("\"K7M\"", "\"K7\"", "event.toml, line 2: tag = \"K7\": 3 characters of"),
    (
        "\"Harbour library open evening\"",
        "\"\"",
        "event.toml, line 1: name = \"\": a text in quotes is allowed",
    ),
    (
        "\"picture.png\"",
        "\"../picture.png\"",
        "event.toml, line 5: file = \"../picture.png\": the name of a file within",
    ),
    (
        "\"picture.png\"",
        "\"/etc/hosts\"",
        "event.toml, line 5: file = \"/etc/hosts\": the name of a file within",
    ),
    ("\"picture.png\"", "\"C:/picture.png\"", "event.toml, line 5: file = \"C:/picture.png\": the name"),
    ("[print]", "[printer]", "event.toml, line 20: printer is not a setting: do you mean print?"),
    ("[code]\n", "[[code]]\n", "event.toml, line 15: code: a table is expected here"),
    ("colours = 6", "colours = 1", "event.toml, line 6: colours = 1: a whole number from 2 to 24 is allowed"),
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
    assert_eq!(refused, "event.toml, line 9: columns = 0: a whole number from 1 to 702 is allowed");
    for path in ["wall", "wall.colums", "pencils", "pencils.name", "colums", "wall.columns.x", "", "."] {
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
            ("picture.file", "tiles/other.png".into()),
            ("wall.tile_mm", 30.0.into()),
            ("wall.rows_from", "top".into()),
            ("code.corner", "top-left".into()),
            ("print.units", "mm".into()),
        ] {
            let edited = set(text, path, value).unwrap();
            assert_ne!(Settings::from_toml(&edited), Settings::from_toml(text), "{path} in {text}");
        }
    }
}
