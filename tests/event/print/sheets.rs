//! Sheets, cuts and rulers of a kit.

use everysquare::plan::settings::{Flip, Paper};
use everysquare::print::Document;

use super::{document, print, settings};

#[test]
fn what_is_small_shares_its_sheets() {
    let pages = |columns: usize, name: &str| {
        let kit = print(&settings(columns, 8, 127.0, Paper::Letter, Flip::LongEdge)).unwrap();
        document(&kit, name).pages
    };
    assert_eq!(
        pages(10, "edge-cards"),
        4,
        "18 cards fill three sheets of six; the corners have one of their own"
    );
    assert_eq!(pages(12, "edge-cards"), 4, "of 20 cards two are left over, and the corners lie beside them");
    assert_eq!(pages(12, "levels"), 1);
}

#[test]
fn only_what_is_cut_out_takes_cuts_and_only_what_is_measured_has_a_ruler() {
    let kit = print(&settings(10, 8, 127.0, Paper::Letter, Flip::LongEdge)).unwrap();
    let named = |of: fn(&Document) -> bool| -> Vec<&str> {
        kit.documents.iter().filter(|own| of(own)).map(|own| own.name.trim_end_matches(".pdf")).collect()
    };
    assert_eq!(named(|own| own.cuts > 0), ["squares", "edge-cards", "pieces", "levels", "questions"]);
    assert_eq!(named(|own| own.true_size), ["squares", "edge-cards", "pieces"]);
    // two squares a sheet: two long cuts and three across, through four stacks of ten
    assert_eq!(document(&kit, "squares").cuts, 4 * 5);
}
