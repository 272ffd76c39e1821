//! The photographs, what is marked in them, and the codes of the sheets.

use std::path::Path;

use everysquare::frame::{PhotoPx, Point};
use everysquare::photo::{Luma, Photo};
use everysquare::plan::{Cell, Grid, KeptFree, Modules, Printed, PrintedSquare, RowsFrom};
use qrcode::QrCode;
use qrcode::types::{Color, EcLevel, Version};
use serde_json::Value;

/// A code marked by hand: its corners, and what it says, where somebody wrote that down.
#[derive(Clone, Debug)]
pub struct Marked {
    pub corners: [Point<PhotoPx>; 4],
    pub text: Option<String>,
}

/// One photograph.
pub struct Shot {
    pub name: String,
    pub luma: Luma,
    pub marked: Vec<Marked>,
}

fn json(path: &Path) -> Value {
    serde_json::from_slice(&std::fs::read(path).unwrap()).unwrap()
}

fn corners(value: &Value) -> [Point<PhotoPx>; 4] {
    let at = |k: usize| Point::new(value[k][0].as_f64().unwrap(), value[k][1].as_f64().unwrap());
    [at(0), at(1), at(2), at(3)]
}

/// The photographs of one set, one after the other: each holds 12 megapixels.
pub fn shots(set: &Path) -> impl Iterator<Item = Shot> + use<> {
    let index = json(&set.join("index.json"));
    let set = set.to_path_buf();
    index["photos"].as_array().unwrap().clone().into_iter().map(move |photo| {
        let file = photo["file"].as_str().unwrap();
        let marked = match (photo["codes"].as_array(), photo["corners_px"].as_array()) {
            (Some(codes), _) => codes
                .iter()
                .map(|code| Marked {
                    corners: corners(&code["corners_px"]),
                    text: code["text"].as_str().map(str::to_owned),
                })
                .collect(),
            (_, Some(all)) => all.iter().map(|c| Marked { corners: corners(c), text: None }).collect(),
            _ => Vec::new(),
        };
        let luma = Photo::open(&std::fs::read(set.join(file)).unwrap()).unwrap().luma;
        Shot { name: file.to_owned(), luma, marked }
    })
}

/// So many codes are told apart, those of the sheets included: as many as a wall of 16 × 12 has.
const CODES: usize = 192;

/// The 14 codes of the sheets, and decoys: other words, encoded like them (version 1, level M), by another encoder.
pub fn sheets(set: &Path) -> Printed {
    let known = json(&set.join("codes.json"));
    let mut codes: Vec<(String, Modules)> = known["codes"]
        .as_array()
        .unwrap()
        .iter()
        .map(|code| {
            let text = |key: &str| code[key].as_str().unwrap().to_owned();
            (text("text"), Modules::from_hex(&text("modules")).unwrap())
        })
        .collect();
    let decoys = (0..).map(decoy).filter(|word| codes.iter().all(|(text, _)| text != word));
    let decoys: Vec<String> = decoys.take(CODES - codes.len()).collect();
    codes.extend(decoys.into_iter().map(|word| (word.clone(), encoded(&word))));
    let grid = Grid {
        columns: 16,
        rows: 12,
        square_mm: 63.0,
        piece_mm: 25.4,
        rows_from: RowsFrom::Bottom,
        border: false,
        kept_free: KeptFree::NONE,
    };
    let squares = codes.into_iter().zip(grid.cells()).map(|((text, modules), cell)| PrintedSquare {
        cell,
        label: grid.label(cell),
        text,
        modules,
    });
    // the code fills its square, so that no turn of the square moves it
    Printed {
        parts: Vec::new(),
        stub_mm: None,
        name: "sheets".to_owned(),
        tag: String::new(),
        units: everysquare::plan::settings::Units::default(),
        grid,
        module_mm: 3.0,
        code_top_left: Point::new(0.0, 0.0),
        squares: squares.collect(),
        cards: Vec::new(),
    }
}

/// A word of three to seven letters that means nothing.
fn decoy(number: usize) -> String {
    const PARTS: [&str; 12] = ["ba", "Ker", "lo", "Mi", "sun", "te", "vor", "xi", "Qua", "ne", "dol", "pin"];
    let part = |k: usize| PARTS[number / 12_usize.pow(u32::try_from(k).unwrap()) % 12];
    format!("{}{}{}", part(0), part(1), if number.is_multiple_of(5) { part(2) } else { "" })
}

fn encoded(word: &str) -> Modules {
    let code = QrCode::with_version(word, Version::Normal(1), EcLevel::M).unwrap();
    let mut bits: Vec<bool> = code.to_colors().into_iter().map(|c| c == Color::Dark).collect();
    bits.resize(444, false);
    let digit = |four: &[bool]| {
        let value = four.iter().fold(0, |value, dark| value << 1 | u32::from(*dark));
        char::from_digit(value, 16).unwrap()
    };
    Modules::from_hex(&bits.chunks(4).map(digit).collect::<String>()).unwrap()
}

/// The text of a code of the sheets.
pub fn text(printed: &Printed, cell: Cell) -> &str {
    &printed.squares[printed.grid.index(cell)].text
}
