//! What a picture keeps: as many pencils as it needs, what fewer would lose, white as paper, greys from paper to black.

use everysquare::picture::colour::ciede2000;
use everysquare::picture::fit::Fit;
use everysquare::picture::loss::{APART, FITTING, SHARE_TO_SHOW};
use everysquare::picture::warnings::{ColourWarning, colour_warnings};
use everysquare::picture::{Pencils, Picture, PictureFacts, Reduced, Wanted, reduce};
use everysquare::plan::crowd;
use everysquare::plan::settings::{LevelSettings, Pencil};
use everysquare::plan::{Grid, Settings, Tag};
use everysquare::words::Words;
use image::imageops::{FilterType, resize};
use image::{Rgb, RgbImage};

use crate::common::scenes;

fn reduced(pixels: RgbImage, pencils: Pencils) -> Reduced {
    let grid = Grid::usual(5, 4);
    let wanted = Wanted { grid: &grid, fit: Fit::Crop, pencils };
    reduce(Picture { pixels }, &wanted, &Words::english()).unwrap()
}

/// Hills, a river, a balloon: columns of flat colours as wide as their shares, 500 × 400 pixels.
fn columns(colours: &[([u8; 3], u32)]) -> RgbImage {
    let ends: Vec<(u32, [u8; 3])> = colours
        .iter()
        .scan(0, |end, (colour, share)| {
            *end += share * 5;
            Some((*end, *colour))
        })
        .collect();
    RgbImage::from_fn(500, 400, |x, _| Rgb(ends.iter().find(|(end, _)| x < *end).unwrap().1))
}

/// Two greens of hills among seven colours, the darker on 9 % of the picture.
const HILLS: [([u8; 3], u32); 7] = [
    ([118, 184, 228], 40),
    ([150, 178, 108], 18),
    ([78, 142, 76], 9),
    ([48, 74, 142], 9),
    ([214, 66, 60], 8),
    ([248, 196, 64], 8),
    ([244, 246, 248], 8),
];

#[test]
fn a_picture_decides_itself_how_many_pencils_it_needs() {
    let all = reduced(columns(&HILLS), Pencils::Fitting);
    assert_eq!((all.few.pencils.len(), all.not_shown.len(), all.keeps), (7, 0, None));
    // enlarged, so that no pixel at an edge has a colour of its own: no exact picture any more
    let large = resize(&columns(&HILLS), 777, 622, FilterType::CatmullRom);
    let all = reduced(large, Pencils::Fitting);
    assert_eq!((all.few.pencils.len(), all.not_shown.len()), (7, 0), "{:?}", all.few.pencils);
    for (colour, _) in HILLS {
        let nearest =
            all.few.pencils.iter().map(|pencil| ciede2000(pencil.srgb, colour)).fold(99.0, f64::min);
        assert!(nearest < 3.0, "{colour:?} is off by {nearest}");
    }
    let photo = reduced(scenes::photo(1000, 800), Pencils::Fitting);
    assert!(FITTING.contains(&photo.few.pencils.len()));
    assert!(photo.not_shown.is_empty(), "{:?}", photo.not_shown);
}

#[test]
fn what_fewer_pencils_lose_is_told_with_the_number_that_keeps_it() {
    let fewer = reduced(columns(&HILLS), Pencils::Chosen(6));
    let [lost] = fewer.not_shown.as_slice() else { panic!("{:?}", fewer.not_shown) };
    assert_eq!(fewer.keeps, Some(7));
    assert!(
        lost.apart > APART && lost.share > SHARE_TO_SHOW && (lost.share - 0.09).abs() < 0.002,
        "{lost:?}"
    );
    assert_eq!(lost.srgb, [78, 142, 76]);
    let own = |srgb: [u8; 3]| Pencil { name: format!("{srgb:?}"), srgb };
    let two = vec![own([118, 184, 228]), own([214, 66, 60])];
    let few = reduced(columns(&HILLS), Pencils::Own(two));
    assert!(few.not_shown.len() >= 3 && few.keeps.is_none(), "{:?}", few.not_shown);
    assert!(few.not_shown.windows(2).all(|pair| pair[0].share >= pair[1].share), "the largest first");
}

#[test]
fn the_number_is_the_smallest_that_will_do() {
    for pixels in
        [columns(&HILLS), scenes::photo(600, 480), resize(&columns(&HILLS), 640, 512, FilterType::Triangle)]
    {
        let own = reduced(pixels.clone(), Pencils::Fitting);
        let fewer = own.few.pencils.len() - 1;
        if own.not_shown.is_empty() && FITTING.contains(&fewer) {
            assert!(!reduced(pixels, Pencils::Chosen(fewer)).not_shown.is_empty(), "{fewer} would do");
        }
    }
}

#[test]
fn white_is_the_paper() {
    let white = |srgb| Pencil { name: String::new(), srgb }.is_paper();
    for (srgb, paper) in
        [([255; 3], true), ([244, 246, 248], true), ([255, 243, 214], false), ([225; 3], false)]
    {
        assert_eq!(white(srgb), paper, "{srgb:?}");
    }
    // the last of five columns of pieces is white all over
    let few = reduced(
        columns(&[([30, 60, 140], 30), ([214, 66, 60], 50), ([250, 250, 250], 20)]),
        Pencils::Fitting,
    )
    .few;
    let grid = Grid::usual(5, 4);
    let facts = PictureFacts::of(&few, &grid, &LevelSettings::default());
    let paper = few.pencils.iter().position(Pencil::is_paper).unwrap();
    assert_eq!((facts.pieces_with(paper), facts.left_white()), (4, 4));
    assert!(colour_warnings(&facts).contains(&ColourWarning::LeftWhite { pieces: 4 }));
    let settings = Settings::new("White".to_owned(), Tag::from_number(1), grid);
    let supplies = crowd::evening(&settings, &facts.work()).supplies;
    for (number, need) in supplies.pencils.iter().enumerate() {
        assert_eq!(need.count == 0, number == paper, "{:?}", supplies.pencils);
    }
    assert!((supplies.pencils.iter().map(|need| need.chance).sum::<f64>() - 1.0).abs() < 1e-9);
}

#[test]
fn greys_reach_from_paper_to_black() {
    let few = reduced(scenes::photo(1000, 800), Pencils::Greys(4)).few;
    let levels: Vec<u8> = few.pencils.iter().map(|pencil| pencil.srgb[0]).collect();
    assert!(levels.iter().any(|level| *level < 40) && few.pencils.iter().any(Pencil::is_paper), "{levels:?}");
}

#[test]
fn the_picture_before_is_kept_in_the_grids_shape() {
    for (width, height) in [(1000, 500), (5000, 4000), (60, 48)] {
        let before = reduced(scenes::photo(width, height), Pencils::Fitting).before;
        let shape = f64::from(before.width()) / f64::from(before.height());
        assert!(
            (shape - 1.25).abs() < 0.03 && before.width() <= 3000,
            "{width} × {height}: {:?}",
            before.dimensions()
        );
    }
}
