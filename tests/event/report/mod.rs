//! The report's four ways of saying the same: fields, terminal, page.

use everysquare::frame::{Map, Point};
use everysquare::judge::{Outcome, advise, fixes, judge};
use everysquare::plan::{Cell, Grid, Printed, Turn};
use everysquare::read::lens::Lens;
use everysquare::read::{Apart, Camera, CellReading, PhotoReading, Sight, WallReading};
use everysquare::report::html::Straight;
use everysquare::report::{Occasion, Pictures, Report, html, terminal};
use everysquare::words::Words;
use proptest::prelude::*;

fn grid(columns: usize, rows: usize) -> Grid {
    Grid::usual(columns, rows)
}

fn printed(grid: Grid, name: &str) -> Printed {
    Printed {
        name: name.into(),
        tag: "K7M".into(),
        units: everysquare::plan::settings::Units::default(),
        grid,
        parts: Vec::new(),
        stub_mm: None,
        module_mm: 0.6,
        code_top_left: Point::new(106.4, 106.4),
        squares: Vec::new(),
        cards: Vec::new(),
    }
}

fn reading(grid: &Grid, sight: impl Fn(&str) -> Option<Sight>) -> WallReading {
    let camera = Camera {
        wall_to_straight: Map::scale_then_shift(2.0, 150.0, 150.0),
        lens: Lens::straight(4000.0, 3000.0),
    };
    let cells: Vec<CellReading> = grid
        .cells()
        .map(|cell| CellReading {
            cell,
            sight: sight(&grid.label(cell)).unwrap_or(Sight::Square { home: cell, turn: Turn::None }),
            certainty: 0.987_654,
            corners: Some(grid.corners(cell).map(|corner| camera.wall_to_photo(corner))),
            photo: 0,
        })
        .collect();
    let photo = PhotoReading {
        photo: 0,
        width: 4000,
        height: 3000,
        codes_read: 17,
        camera,
        mirrored: false,
        px_per_module: 1.234_5,
        worst_shift_mm: 4.56,
        cells: cells.clone(),
        apart: Apart::default(),
    };
    WallReading { photos: vec![photo], cells, contradictions: Vec::new(), apart: Apart::default() }
}

fn report(grid: &Grid, name: &str, sight: impl Fn(&str) -> Option<Sight>) -> Report {
    let reading = reading(grid, sight);
    let judgement = judge(&reading, grid);
    let (fixes, advice) = (fixes(&judgement), advise(&reading, &judgement));
    let occasion =
        Occasion { taken: Some("2026-03-14T18:05:00".into()), made: true, files: vec!["wall.jpg".into()] };
    let words = Words::english();
    Report::new((&reading, &judgement), (&fixes, &advice), &printed(*grid, name), &occasion, &words)
}

fn square(grid: &Grid, label: &str, quarters: u32) -> Sight {
    Sight::Square {
        home: grid.cell(label).expect("a label of this wall"),
        turn: Turn::from_quarters(quarters),
    }
}

/// Everything that can be the matter, on 5 × 4 cells.
fn troubled() -> Report {
    let g = grid(5, 4);
    report(&g, "Owls & larks <evening> \"one\"", |label| match label {
        "B3" => Some(square(&g, "C3", 0)),
        "C3" => Some(square(&g, "B3", 2)),
        "D2" => Some(square(&g, "D2", 1)),
        "E4" => Some(Sight::Empty),
        "A1" => Some(square(&g, "E4", 0)),
        "A4" => Some(Sight::Stranger { text: "QQQ-<b>".into(), turn: Turn::None }),
        "E1" => Some(square(&g, "D1", 0)),
        "C1" => Some(Sight::Unread),
        "A2" => Some(Sight::Unseen),
        _ => None,
    })
}

fn lines_fit(text: &str) {
    for line in text.lines() {
        assert!(line.chars().count() <= 80, "{} characters: {line}", line.chars().count());
        assert_eq!(line.trim_end(), line);
    }
}

#[test]
fn the_terminal_shows_the_wall_the_marks_and_what_to_do() {
    let text = terminal(&troubled(), &Words::english(), false, 80);
    lines_fit(&text);
    assert_eq!(text, include_str!("troubled.txt"), "\n{text}");
}

#[test]
fn a_wall_that_is_right_says_so_in_few_words() {
    let g = grid(3, 2);
    let text = terminal(&report(&g, "Small", |_| None), &Words::english(), false, 80);
    assert_eq!(text, include_str!("right.txt"), "\n{text}");
}

#[test]
fn twenty_columns_fit_side_by_side_in_eighty_characters() {
    for columns in [1, 12, 14, 15, 20, 25, 30, 60] {
        let g = grid(columns, 14);
        let report = report(&g, "Wide", |label| match label {
            "A14" => Some(square(&g, "A13", 1)),
            "A13" => Some(square(&g, "A14", 0)),
            _ => None,
        });
        let text = terminal(&report, &Words::english(), false, 80);
        lines_fit(&text);
        let headers = text.lines().filter(|line| line.trim_start().starts_with("A ") || line.trim() == "A");
        assert_eq!(headers.count(), 1, "{text}");
        if columns <= 20 {
            assert_eq!(text.lines().filter(|line| line.trim_start().starts_with("14 ")).count(), 1, "{text}");
        }
    }
}

#[test]
fn colour_adds_nothing_but_colour() {
    let report = troubled();
    let plain = terminal(&report, &Words::english(), false, 80);
    let coloured = terminal(&report, &Words::english(), true, 80);
    assert_ne!(plain, coloured);
    let mut bare = String::new();
    let mut rest = coloured.as_str();
    while let Some(at) = rest.find('\u{1b}') {
        bare.push_str(&rest[..at]);
        rest = rest[at..].split_once('m').expect("a sequence ends").1;
    }
    bare.push_str(rest);
    let trimmed: Vec<&str> = bare.lines().map(str::trim_end).collect();
    assert_eq!(trimmed, plain.lines().collect::<Vec<_>>());
}

#[test]
fn a_name_cannot_steer_the_terminal() {
    let g = grid(2, 1);
    let report = report(&g, "bell\u{7} \u{1b}[2Jclear\nsecond", |label| {
        (label == "A1").then(|| Sight::Stranger { text: "\u{1b}[31m".into(), turn: Turn::None })
    });
    let text = terminal(&report, &Words::english(), false, 80);
    assert!(text.chars().all(|c| c == '\n' || !c.is_control()), "{text:?}");
}

#[test]
fn report_json_has_the_fields_of_format_1_in_their_order() {
    let text = troubled().to_json();
    let keys_of = |value: &serde_json::Value| -> Vec<String> {
        value.as_object().expect("an object").keys().cloned().collect()
    };
    let value: serde_json::Value = serde_json::from_str(&text).unwrap();
    let sorted = |names: &[&str]| {
        let mut names: Vec<String> = names.iter().map(|n| (*n).to_owned()).collect();
        names.sort();
        names
    };
    let same = |value: &serde_json::Value, names: &[&str]| {
        let mut keys = keys_of(value);
        keys.sort();
        assert_eq!(keys, sorted(names));
    };
    let top = [
        "format",
        "event",
        "made",
        "taken",
        "photos",
        "summary",
        "cells",
        "fixes",
        "missing",
        "twice",
        "strangers",
        "wall",
        "advice",
    ];
    same(&value, &top);
    same(&value["event"], &["name", "tag"]);
    same(&value["photos"][0], &["file", "width", "height", "codes_read"]);
    same(&value["summary"], &["right", "wrong", "turned", "empty", "unread", "unseen", "cells"]);
    let cell =
        ["label", "column", "row", "state", "found", "turn_degrees", "certainty", "corners_px", "photo"];
    same(&value["cells"][0], &cell);
    same(&value["fixes"][0], &["do", "cells", "square", "degrees", "say"]);
    same(&value["strangers"][0], &["text", "cell"]);
    let wall = ["scale_factor", "width_mm", "height_mm", "worst_shift_mm", "photo_px_per_module"];
    same(&value["wall"], &wall);
    let mut at = 0; // and in this order in the text
    for name in top {
        let found = text[at..].find(&format!("\n  \"{name}\"")).unwrap_or_else(|| panic!("{name}"));
        at += found + 1;
    }
}

#[test]
fn report_json_says_what_was_found() {
    let report = troubled();
    let value: serde_json::Value = serde_json::from_str(&report.to_json()).unwrap();
    let cell = |label: &str| {
        value["cells"].as_array().unwrap().iter().find(|cell| cell["label"] == label).unwrap().clone()
    };
    assert_eq!(cell("C3")["state"], "wrong");
    assert_eq!(cell("C3")["found"], "B3");
    assert_eq!(cell("C3")["turn_degrees"], 180);
    assert_eq!(cell("D2")["state"], "turned");
    assert_eq!(cell("D2")["certainty"], 0.988);
    assert_eq!(cell("A4")["found"], serde_json::Value::Null);
    assert_eq!(cell("B4")["corners_px"][0], serde_json::json!([404.0, 150.0]));
    assert_eq!(
        value["fixes"][0],
        serde_json::json!({"do": "turn", "cells": ["D2"], "square": "D2", "degrees": 270,
        "say": "Turn the square in D2 a quarter turn to the left (counterclockwise)."})
    );
    assert_eq!(value["wall"]["scale_factor"], 5.0);
    assert_eq!(value["wall"]["width_mm"], 635.0);
    assert_eq!(value["made"], true);
}

/// Each tag closes, in order; what is between tags holds no bare `<` or `&`.
fn well_formed(page: &str) {
    const VOID: [&str; 4] = ["meta", "img", "input", "!DOCTYPE"];
    let mut open: Vec<String> = Vec::new();
    let mut rest = page;
    while let Some(at) = rest.find('<') {
        let (text, tag) = rest.split_at(at);
        if open.last().map(String::as_str) != Some("style") {
            for (i, _) in text.match_indices('&') {
                let end = text[i..].find(';').expect("an entity ends");
                assert!(["&amp;", "&lt;", "&gt;", "&quot;", "&#39;"].contains(&&text[i..=i + end]));
            }
        }
        let end = tag.find('>').expect("a tag ends");
        let inner = &tag[1..end];
        assert!(!inner.contains('<'), "{inner}");
        let name = inner.split_whitespace().next().expect("a name").to_owned();
        if let Some(closed) = name.strip_prefix('/') {
            assert_eq!(open.pop().as_deref(), Some(closed));
        } else if !VOID.contains(&name.as_str()) {
            open.push(name);
        }
        rest = &tag[end + 1..];
    }
    assert!(open.is_empty(), "{open:?}");
}

#[test]
fn the_page_is_well_formed_and_stands_alone() {
    let words = Words::english();
    let marked = vec![vec![0xff, 0xd8, 0xff, 0xd9]];
    let page = html(
        &troubled(),
        &words,
        Pictures {
            marked: &marked,
            straight: Some(Straight { jpeg: &marked[0], margin_mm: 20.0 }),
            accent: "",
        },
    );
    well_formed(&page);
    assert!(page.contains("<h1>Owls &amp; larks &lt;evening&gt; &quot;one&quot;</h1>"));
    assert!(page.contains("QQQ-&lt;b&gt;"));
    assert!(page.contains("lang=\"en\""));
    assert!(page.contains("practice picture"));
    for request in ["http:", "https:", "//", "@import", "url(", "<script", "<link", "<iframe", "wall.jpg"] {
        let outside_pictures: String =
            page.split("base64,").map(|part| part.split_once('"').map_or(part, |p| p.1)).collect();
        // the letters lie inside the page as well
        let looked = match request {
            "//" => outside_pictures,
            "url(" => page.replace("url(\"data:font/woff2;base64,", ""),
            _ => page.clone(),
        };
        assert!(!looked.contains(request), "{request}");
    }
    assert!(
        !page.contains("[report-") && !page.contains("[fix-") && !page.contains("[cell-"),
        "a word is missing"
    );
}

#[test]
fn every_cell_of_the_page_says_its_state_in_words() {
    let report = troubled();
    let page = html(&report, &Words::english(), Pictures::default());
    for cell in &report.cells {
        assert!(page.contains(&format!("<span class=\"hidden\">{}: ", cell.label)), "{}", cell.label);
    }
    assert_eq!(page.matches("<td ").count(), 20);
}

#[test]
fn a_wall_that_is_still_empty_makes_one_step_not_eighty() {
    let g = grid(10, 8);
    let report = report(&g, "Early", |label| (label != "A1").then_some(Sight::Empty));
    assert_eq!(report.fixes.len(), 79);
    assert_eq!(report.outcome(), Outcome::Fix);
    let text = terminal(&report, &Words::english(), false, 80);
    assert!(text.contains("  1. Find the 79 squares"), "{text}");
    assert!(!text.contains("  2. "), "{text}");
    lines_fit(&text);
}

proptest! {
    #[test]
    fn any_report_is_read_back_drawn_and_laid_out(
        columns in 1_usize..31, rows in 1_usize..8, name in "[^{\\[]{0,40}", sights in prop::collection::vec((0_u8..9, 0_usize..240, 0_u32..4), 240),
    ) {
        let g = grid(columns, rows);
        let report = report(&g, &name, |label| {
            let cell = g.cell(label).expect("its own label");
            let (what, home, quarters) = sights[g.index(cell)];
            let home = home % g.count();
            let turn = Turn::from_quarters(quarters);
            Some(match what {
                0 => Sight::Empty,
                1 => Sight::Unread,
                2 => Sight::Unseen,
                3 => Sight::Stranger { text: "A<B".into(), turn },
                4 => Sight::Square { home: Cell { row: home / columns, column: home % columns }, turn },
                5 => Sight::Square { home: cell, turn },
                _ => return None,
            })
        });
        let text = report.to_json();
        prop_assert_eq!(&Report::from_json(&text).unwrap(), &report);
        let words = Words::english();
        let drawn = terminal(&report, &words, false, 80);
        prop_assert!(!drawn.contains("[fix-") && !drawn.contains("{$") && !drawn.contains("{ $"), "{}", drawn);
        well_formed(&html(&report, &words, Pictures::default()));
    }
}

/// Pages to look at, in the target folder.
#[test]
fn sample_pages_are_left_to_look_at() {
    let words = Words::english();
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR"));
    let g = grid(20, 14);
    let wide = report(&g, "A wide wall", |label| match label {
        "T1" => Some(square(&g, "T2", 0)),
        "T2" => Some(square(&g, "T1", 0)),
        "K7" => Some(Sight::Empty),
        label if label.starts_with(['Q', 'R', 'S']) => Some(Sight::Unseen),
        _ => None,
    });
    std::fs::write(folder.join("troubled.html"), html(&troubled(), &words, Pictures::default())).unwrap();
    std::fs::write(folder.join("wide.html"), html(&wide, &words, Pictures::default())).unwrap();
    std::fs::write(folder.join("wide.txt"), terminal(&wide, &words, false, 80)).unwrap();
}

#[test]
fn what_to_expect_stands_on_the_page_and_in_the_file() {
    let g = grid(3, 2);
    let none = report(&g, "Small", |_| None);
    let told = Report { forecast: Some("At this pace 5 <of> 6".to_owned()), ..none.clone() };
    let page = |report: &Report| html(report, &Words::english(), Pictures::default());
    assert!(page(&told).contains("<p class=\"forecast\">At this pace 5 &lt;of&gt; 6</p>"));
    assert!(!page(&none).contains("class=\"forecast\"") && !none.to_json().contains("forecast"));
    assert_eq!(Report::from_json(&told.to_json()).unwrap().forecast, told.forecast);
}
