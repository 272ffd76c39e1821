//! Judgement of a test page: what is right about the print, and what to choose otherwise before the rest is printed.

use crate::frame::Vector;
use crate::picture::colour::{ciede2000, cielab};
use crate::plan::marks::{INKS, TestSide};
use crate::plan::settings::{Choice, Paper};
use crate::read::test_page::TestPage;

/// Maximum error of the scale that is none, as a share: half a millimetre on 100 mm; paper is cut to a third of that.
const SAME_SCALE: f64 = 0.005;
/// Minimum difference, as a share, between the ratio of a sheet's sides and that of the paper that was meant, for it to be another paper.
const OTHER_PAPER: f64 = 0.025;
/// Maximum distance of the print from the middle of its sheet, in mm: a duplex printer's slip, from memory.
const MOST_SHIFT_MM: f64 = 3.0;
/// Maximum angle of the print on its sheet, in degrees: 2 mm over a page's width.
const MOST_ASKEW_DEGREES: f64 = 0.6;
/// Maximum level, of paper's 255, of what an ink takes away from white: cyan takes red, magenta green, yellow blue, black all of it.
const INK: u8 = 190;
/// Maximum chroma, in CIELAB, of the inks of a page printed in black alone; that of the palest, yellow, is above 60.
const GREY: f64 = 14.0;
/// Two pencils look alike on paper below the first difference, CIEDE2000, and should not above the second.
const ALIKE: [f64; 2] = [5.0, 12.0];
/// Maximum difference of a page's turn from upright, or from upside down, in degrees, with which it can be told which way it is turned.
const TURNED_DEGREES: f64 = 35.0;

/// What a photo of a test page tells.
#[derive(Clone, Debug, PartialEq)]
pub enum Finding {
    /// The size is right: the scale, 1 as meant.
    Size(f64),
    /// The size is wrong: the scale, 1 as meant.
    Scale(f64),
    /// The sides have different scales, across and down.
    Uneven([f64; 2]),
    /// The sheet has the sides of another paper.
    OtherPaper(Paper),
    /// The print lies beside the middle of its sheet: right and down, in mm of paper.
    Shift([f64; 2]),
    /// The print lies askew on its sheet, in degrees clockwise.
    Askew(f64),
    /// The printer left out what is nearest to these edges: top, right, bottom, left.
    Cut([bool; 4]),
    /// These inks are missing: their places in [`INKS`].
    Inks(Vec<usize>),
    /// All is printed in black alone.
    Black,
    /// Pairs of pencils that look alike on this paper, by their numbers.
    Alike(Vec<[usize; 2]>),
    /// The back is the right way up behind its front: how far they are apart, in mm.
    Back(f64),
    /// The back is the right way up, but too far from its front, in mm.
    Slip(f64),
    /// The back is upside down: the other edge has to be chosen.
    UpsideDown,
    /// It cannot be told which way up the back is: the two photos were not taken the same way.
    Sideways,
}

impl Finding {
    /// Whether this has to be put right before the rest is printed.
    #[must_use]
    pub fn is_fault(&self) -> bool {
        !matches!(self, Self::Size(_) | Self::Back(_) | Self::Alike(_) | Self::Sideways)
    }
}

/// Findings about one side: where and how large it is printed.
#[must_use]
pub fn of_page(page: &TestPage, paper: Paper) -> Vec<Finding> {
    let mut found = Vec::new();
    let ratio = page.sheet_mm[1] / page.sheet_mm[0];
    if let Some(other) = other_paper(ratio, paper) {
        return vec![Finding::OtherPaper(other)];
    }
    let (width, height) = paper.size_mm();
    let [across, down] = [width / page.sheet_mm[0], height / page.sheet_mm[1]];
    let scale = (across * down).sqrt();
    found.push(match () {
        () if (across / down - 1.0).abs() > 2.0 * SAME_SCALE => Finding::Uneven([across, down]),
        () if (scale - 1.0).abs() > SAME_SCALE => Finding::Scale(scale),
        () => Finding::Size(scale),
    });
    let shift = shift(page, scale);
    if shift.iter().any(|by| by.abs() > MOST_SHIFT_MM) {
        found.push(Finding::Shift(shift));
    }
    if page.askew_degrees.abs() > MOST_ASKEW_DEGREES {
        found.push(Finding::Askew(page.askew_degrees));
    }
    if page.missing.contains(&true) {
        found.push(Finding::Cut(page.missing));
    }
    found
}

/// The print's distance from the middle of its sheet, right and down, in mm of paper.
fn shift(page: &TestPage, scale: f64) -> [f64; 2] {
    let Vector { x, y, .. } = page.middle_mm * -scale;
    [x, y]
}

/// The paper whose sides are as these, if it is another than was meant.
fn other_paper(ratio: f64, paper: Paper) -> Option<Paper> {
    let off = |paper: Paper| {
        let (width, height) = paper.size_mm();
        (ratio * width / height).ln().abs()
    };
    if off(paper) < OTHER_PAPER {
        return None;
    }
    let others = Paper::ALL.iter().map(|(own, _)| *own);
    others
        .min_by(|a, b| off(*a).total_cmp(&off(*b)))
        .filter(|other| off(*other) < OTHER_PAPER && *other != paper)
}

/// Findings about colours: those of the patches as they came out, and the pencils as they were meant.
#[must_use]
pub fn of_colours(patches: &[[u8; 3]], pencils: &[[u8; 3]]) -> Vec<Finding> {
    let Some((inks, own)) = patches.split_at_checked(INKS.len()) else { return Vec::new() };
    let taken = |k: &usize| inks[*k].get(*k).or(inks[*k].first()).copied().unwrap_or_default();
    let missing: Vec<usize> = (0..inks.len()).filter(|k| taken(k) > INK).collect();
    let chroma = |srgb: [u8; 3]| {
        let [_, a, b] = cielab(srgb);
        a.hypot(b)
    };
    if pencils.iter().all(|pencil| chroma(*pencil) < GREY) {
        return Vec::new(); // a kit in grey needs no colour
    }
    if inks.iter().all(|ink| chroma(*ink) < GREY) && taken(&0) < INK {
        return vec![Finding::Black];
    }
    let mut found = Vec::new();
    if !missing.is_empty() {
        found.push(Finding::Inks(missing));
    }
    let pairs = (0..own.len()).flat_map(|a| (a + 1..own.len()).map(move |b| [a, b]));
    let alike = |[a, b]: &[usize; 2]| {
        let meant = pencils.get(*a).zip(pencils.get(*b)).map_or(0.0, |(a, b)| ciede2000(*a, *b));
        ciede2000(own[*a], own[*b]) < ALIKE[0] && meant > ALIKE[1]
    };
    let alike: Vec<[usize; 2]> = pairs.filter(alike).collect();
    if !alike.is_empty() {
        found.push(Finding::Alike(alike));
    }
    found
}

/// Finding about a back, from photos of both sides that were taken the same way, the sheet turned like the page of a book.
#[must_use]
pub fn of_back(front: &TestPage, back: &TestPage, paper: Paper) -> Finding {
    let turned = (back.up_degrees - front.up_degrees).rem_euclid(360.0);
    let from_upright = turned.min(360.0 - turned);
    if (180.0 - from_upright).abs() < TURNED_DEGREES {
        return Finding::UpsideDown;
    }
    if from_upright > TURNED_DEGREES {
        return Finding::Sideways;
    }
    let scale = |page: &TestPage| paper.size_mm().0 / page.sheet_mm[0];
    let ([x, y], [back_x, back_y]) = (shift(front, scale(front)), shift(back, scale(back)));
    // what lies right of the middle on one side lies left of it, seen from the other
    let apart = (x + back_x).hypot(y - back_y);
    if apart > MOST_SHIFT_MM { Finding::Slip(apart) } else { Finding::Back(apart) }
}

/// Fronts and backs among pages, in the order given: the first of each.
#[must_use]
pub fn sides(pages: &[TestPage]) -> [Option<&TestPage>; 2] {
    [TestSide::Front, TestSide::Back].map(|side| pages.iter().find(|page| page.side == side))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::{Map, PhotoPx, SheetMm};
    use proptest::prelude::*;

    fn page(side: TestSide, sheet_mm: [f64; 2]) -> TestPage {
        TestPage {
            side,
            sheet_mm,
            middle_mm: Vector::new(0.0, 0.0),
            askew_degrees: 0.0,
            up_degrees: 0.0,
            missing: [false; 4],
            page_to_photo: Map::<SheetMm, PhotoPx>::scale_then_shift(10.0, 0.0, 0.0),
        }
    }

    proptest! {
        #[test]
        fn every_scale_is_told_and_a_right_one_is_no_fault(scale in 0.5..1.2_f64, paper in prop::sample::select(vec![Paper::Letter, Paper::A4, Paper::Tabloid, Paper::A3])) {
            let (width, height) = paper.size_mm();
            let found = of_page(&page(TestSide::Front, [width / scale, height / scale]), paper);
            let [one] = found.as_slice() else { panic!("{found:?}") };
            let (Finding::Size(told) | Finding::Scale(told)) = one else { panic!("{one:?}") };
            prop_assert!((told - scale).abs() < 1e-9);
            prop_assert_eq!(one.is_fault(), (scale - 1.0).abs() > SAME_SCALE);
        }
    }

    #[test]
    fn another_paper_is_told_from_a_wrong_scale() {
        let found = of_page(&page(TestSide::Front, [210.0, 297.0]), Paper::Letter);
        assert!(matches!(found.as_slice(), [Finding::OtherPaper(Paper::A4 | Paper::A3)]), "{found:?}");
        let found = of_page(&page(TestSide::Front, [215.9, 290.0]), Paper::Letter);
        assert!(matches!(found.as_slice(), [Finding::OtherPaper(_) | Finding::Uneven(_)]), "{found:?}");
    }

    #[test]
    fn a_back_is_judged_by_the_way_it_is_turned_and_by_its_place() {
        let front = page(TestSide::Front, [215.9, 279.4]);
        let back = |up_degrees: f64, x: f64, y: f64| TestPage {
            up_degrees,
            middle_mm: Vector::new(x, y),
            ..page(TestSide::Back, [215.9, 279.4])
        };
        assert_eq!(of_back(&front, &back(5.0, 0.0, 0.0), Paper::Letter), Finding::Back(0.0));
        assert_eq!(of_back(&front, &back(-178.0, 0.0, 0.0), Paper::Letter), Finding::UpsideDown);
        assert_eq!(of_back(&front, &back(90.0, 0.0, 0.0), Paper::Letter), Finding::Sideways);
        assert_eq!(of_back(&front, &back(0.0, 3.0, 4.0), Paper::Letter), Finding::Slip(5.0));
        let shifted = TestPage { middle_mm: Vector::new(-3.0, 4.0), ..front.clone() };
        assert_eq!(of_back(&shifted, &back(0.0, 3.0, 4.0), Paper::Letter), Finding::Back(0.0));
    }

    #[test]
    fn inks_that_are_missing_are_named_and_grey_is_told_from_that() {
        let pencils = [[200, 40, 40], [40, 160, 60]];
        let all = |inks: [[u8; 3]; 4]| [inks.as_slice(), &pencils].concat();
        assert_eq!(of_colours(&all(INKS), &pencils), []);
        let [cyan, magenta, _, black] = INKS;
        assert_eq!(
            of_colours(&all([cyan, magenta, [255, 222, 252], black]), &pencils),
            [Finding::Inks(vec![2])]
        );
        let greys = [[150; 3], [110; 3], [215; 3], [25; 3]];
        assert_eq!(
            of_colours(&[greys.as_slice(), &[[90; 3], [130; 3]]].concat(), &pencils),
            [Finding::Black]
        );
        let blurred = [INKS.as_slice(), &[[120, 100, 50], [122, 101, 52]]].concat();
        assert_eq!(of_colours(&blurred, &pencils), [Finding::Alike(vec![[0, 1]])]);
    }
}
