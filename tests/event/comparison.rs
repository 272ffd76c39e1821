//! The comparison prints: what must hold for every paper, language and shape of wall, and where something is missing. The drawn
//! pages themselves are measured by `tools/outside/comparison.py`, with other people's readers.

use everysquare::display::measure::{Between, Measured, Quantity, Run};
use everysquare::display::{FillingError, MOST_BYTES, Moment, filling};
use everysquare::judge::Summary;
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::crowd::evening;
use everysquare::plan::settings::{Choice, Language, Paper, Pencil};
use everysquare::plan::{Cell, Grid, KeptFree, RowsFrom, Settings, Tag};
use everysquare::print::comparison::{
    Comparison, Lacking, ON_REQUEST, Pair, PastCheck, Poster, Print, comparison, known, names,
};
use everysquare::print::{Overrides, PrintError, Sources, template_names};
use everysquare::words::Words;
use image::{Rgb, RgbImage};

/// A picture of a few flat colours with a slope and circles in it.
fn scene(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let (x, y) = (f64::from(x) / f64::from(width), f64::from(y) / f64::from(height));
        match () {
            () if (x - 0.7).hypot(y - 0.3) < 0.15 => Rgb([247, 188, 59]),
            () if y > 0.75 - 0.2 * x => Rgb([63, 150, 88]),
            () if (x - 0.3).hypot(y - 0.5) < 0.12 => Rgb([210, 71, 60]),
            () => Rgb([166, 216, 238]),
        }
    })
}

/// Crayon on paper: paler, with grain; nobody drew it.
fn drawn(picture: &RgbImage) -> RgbImage {
    let mut wall = picture.clone();
    for (x, y, pixel) in wall.enumerate_pixels_mut() {
        let grain = (x.wrapping_mul(2_654_435_761) ^ y.wrapping_mul(40_503)).to_be_bytes()[1] / 8;
        *pixel = Rgb(pixel.0.map(|level| 40 + level / 4 * 3 - grain));
    }
    wall
}

/// All that a comparison is made from, owned.
struct Evening {
    settings: Settings,
    picture: Picture,
    facts: PictureFacts,
    wall: RgbImage,
    measured: Option<Measured>,
    pairs: Vec<Pair>,
    kept: Vec<Pair>,
    checks: Vec<PastCheck>,
    right: usize,
    poster: Poster,
    made: bool,
    templates: Overrides,
}

impl Evening {
    fn of(columns: usize, rows: usize, paper: Paper, language: Language) -> Self {
        let grid = Grid::usual(columns, rows);
        Self::on(grid, paper, language)
    }

    fn on(grid: Grid, paper: Paper, language: Language) -> Self {
        let mut settings =
            Settings::new("Harbour library open evening".into(), Tag::new("K7M").unwrap(), grid);
        settings.print.paper = paper;
        settings.language = language;
        settings.picture.pencils = [[247, 188, 59], [63, 150, 88], [210, 71, 60], [166, 216, 238]]
            .map(|srgb| Pencil { name: format!("pencil {}", srgb[0]), srgb })
            .into();
        let side = (800 / grid.columns.max(grid.rows)).clamp(8, 60) as u32;
        let (width, height) = (side * grid.columns as u32, side * grid.rows as u32);
        let picture = Picture { pixels: scene(width, height) };
        let few = FewColours::chosen(&picture, &settings.picture);
        let facts = PictureFacts::of(&few, &settings.grid, &settings.levels);
        let wall = drawn(&picture.pixels);
        let cells: Vec<Cell> = grid.cells().collect();
        let pair = |cell: &Cell| Pair { cell: *cell, square: drawn(&scene(60, 60)) };
        let pairs = cells.iter().step_by(cells.len().div_ceil(6)).map(pair).collect();
        let kept = cells.iter().map(pair).collect();
        let checks = (0..5).map(|at| check(&wall, grid.count(), at)).collect();
        Self {
            measured: Some(measured(&grid)),
            right: grid.count(),
            poster: Poster::default(),
            made: false,
            templates: Overrides::default(),
            settings,
            picture,
            facts,
            wall,
            pairs,
            kept,
            checks,
        }
    }

    fn print(&self, wanted: &[&str]) -> Result<Vec<Print>, PrintError> {
        let words = Words::of(self.settings.language.word());
        let printed = self.settings.printed().unwrap();
        let cells = self.settings.grid.count();
        let sources = Sources {
            settings: &self.settings,
            printed: &printed,
            picture: &self.picture,
            facts: &self.facts,
            words: &words,
            templates: &self.templates,
            evening: &evening(&self.settings, &self.facts.work()),
        };
        let input = Comparison {
            sources,
            wall: &self.wall,
            overlap: &self.wall,
            measured: self.measured.as_ref(),
            counts: Summary { right: self.right, empty: cells - self.right, cells, ..Summary::default() },
            pairs: &self.pairs,
            kept: &self.kept,
            date: Some("2027-03-11".to_owned()),
            checks: &self.checks,
            poster: self.poster,
            made: self.made,
        };
        let wanted: Vec<String> = wanted.iter().map(|name| (*name).to_owned()).collect();
        comparison(&input, &wanted, &|| ())
    }

    fn pages(&self, name: &str) -> usize {
        self.print(&[name]).unwrap()[0].document.pages
    }
}

fn check(wall: &RgbImage, cells: usize, at: usize) -> PastCheck {
    let right = cells * at / 4;
    PastCheck {
        when: format!("18:{:02}", 10 * at),
        minutes: 10.0 * everysquare::frame::float(at),
        summary: Summary { right, empty: cells - right, cells, ..Summary::default() },
        picture: Some(image::imageops::thumbnail(wall, 200, 200 * wall.height() / wall.width().max(1) + 1)),
    }
}

fn about(value: f64, within: f64) -> Quantity {
    Quantity { value, within }
}

fn measured(grid: &Grid) -> Measured {
    let run = |index: usize| Run { index, squares: 4, drift: about(-6.0, 0.8), lean: about(7.5, 1.1) };
    Measured {
        squares: grid.count(),
        pitch: about(grid.square_mm + 0.6, 0.2),
        scale_factor: about(5.02, 0.01),
        width: about(grid.size().x + 5.0, 2.1),
        height: about(grid.size().y + 4.0, 1.9),
        rows: (0..grid.rows).map(run).collect(),
        columns: (0..grid.columns).map(run).collect(),
        widest_gap: Some(Between {
            cells: [Cell { row: 0, column: 0 }, Cell { row: 0, column: 1 }],
            mm: about(5.3, 0.6),
        }),
        largest_overlap: None,
    }
}

/// The prints that are made where none is named.
fn unasked() -> impl Iterator<Item = &'static str> {
    names().filter(|name| !ON_REQUEST.contains(name))
}

fn named(prints: &[Print]) -> Vec<String> {
    prints.iter().map(|print| print.document.name.trim_end_matches(".pdf").to_owned()).collect()
}

fn every_name() -> Vec<String> {
    unasked().map(str::to_owned).collect()
}

#[test]
fn every_print_is_made_on_every_paper_in_every_language() {
    for (paper, word) in Paper::ALL {
        for (language, code) in Language::ALL {
            let mut evening = Evening::of(10, 8, *paper, *language);
            evening.made = true; // the frame that says so takes room
            let prints = evening.print(&[]).unwrap();
            assert_eq!(named(&prints), every_name(), "{word} {code}");
            for Print { document, screen, screen_name } in &prints {
                assert!(document.bytes.starts_with(b"%PDF"), "{}", document.name);
                assert!(document.bytes.len() < 3 << 20, "{}: {} bytes", document.name, document.bytes.len());
                assert_eq!(*screen_name, document.name.replace(".pdf", ".jpg"));
                let screen = image::load_from_memory(screen).unwrap();
                assert_eq!(screen.width().max(screen.height()), 1600, "{screen_name}");
            }
            let pages: Vec<usize> = prints.iter().map(|print| print.document.pages).collect();
            assert_eq!(pages[..5], [1, 1, 1, 1, 2], "{word} {code}: {:?}", named(&prints));
        }
    }
}

#[test]
fn the_same_comparison_has_the_same_bytes() {
    let evening = Evening::of(5, 4, Paper::A4, Language::Spanish);
    assert!(evening.print(&[]).unwrap() == evening.print(&[]).unwrap());
}

#[test]
fn only_what_is_named_is_made_and_nothing_else_is_known() {
    let evening = Evening::of(5, 4, Paper::Letter, Language::English);
    assert_eq!(named(&evening.print(&["poster", "pairs"]).unwrap()), ["pairs", "poster"]);
    let said = evening.print(&["postr"]).unwrap_err().to_string();
    assert!(said.contains("Do you mean poster?") && said.contains("side-by-side"), "{said}");
    assert!(known(&["true-scale".to_owned()]).is_ok() && known(&["squares".to_owned()]).is_err());
}

#[test]
fn walls_of_any_shape_have_their_prints() {
    for (columns, rows) in [(1, 1), (2, 1), (12, 1), (1, 12), (60, 50), (40, 2), (16, 12)] {
        for paper in [Paper::Letter, Paper::A3] {
            let evening = Evening::of(columns, rows, paper, Language::English);
            let prints = evening.print(&[]).unwrap();
            assert_eq!(named(&prints), every_name(), "{columns} x {rows}");
            for Print { document, .. } in prints {
                let most = if document.name == "poster.pdf" { 13 } else { 2 };
                assert!(document.pages <= most, "{columns} x {rows}: {}: {}", document.name, document.pages);
            }
        }
    }
}

#[test]
fn pieces_and_squares_of_any_size_are_shown_or_a_part_of_them() {
    for (piece_mm, square_mm) in
        [(5.0, 127.0), (25.4, 25.4), (40.0, 100.0), (30.0, 400.0), (190.0, 1_000.0), (33.3, 127.0)]
    {
        let grid = Grid {
            columns: 6,
            rows: 4,
            square_mm,
            piece_mm,
            rows_from: RowsFrom::Top,
            border: false,
            kept_free: KeptFree::NONE,
        };
        for paper in [Paper::Letter, Paper::A3] {
            let pages = Evening::on(grid, paper, Language::Spanish).pages("true-scale");
            assert!((1..=2).contains(&pages), "{piece_mm} {square_mm}: {pages}");
        }
    }
}

#[test]
fn what_was_not_measured_read_or_checked_is_left_out() {
    let mut evening = Evening::of(6, 4, Paper::Letter, Language::English);
    evening.measured = None;
    evening.pairs.clear();
    evening.checks.clear();
    evening.right = 0;
    let prints = evening.print(&[]).unwrap();
    assert_eq!(named(&prints), ["side-by-side", "true-scale", "math-page", "poster"]);
    for (name, lacking) in [("pairs", Lacking::Pairs), ("making-of", Lacking::Checks)] {
        let error = evening.print(&[name]).unwrap_err();
        assert_eq!(error, PrintError::Nothing(lacking));
        assert!(error.to_string().contains("photo"), "{error}");
    }
    evening.wall = RgbImage::new(0, 0);
    assert_eq!(evening.print(&[]).unwrap_err(), PrintError::Nothing(Lacking::Wall));
}

#[test]
fn numbers_that_are_none_and_cells_that_are_not_do_no_harm() {
    let mut evening = Evening::of(3, 2, Paper::A4, Language::English);
    let mut odd = measured(&evening.settings.grid);
    odd.rows[0].lean = about(f64::NAN, 0.5);
    evening.measured = Some(odd);
    evening.pairs = vec![
        Pair { cell: Cell { row: 9, column: 9 }, square: RgbImage::new(9, 9) },
        Pair { cell: Cell { row: 0, column: 0 }, square: RgbImage::new(0, 4) },
    ];
    evening.checks[1].minutes = f64::NAN;
    evening.checks[2].minutes = f64::NEG_INFINITY;
    evening.checks[3].picture = Some(RgbImage::new(0, 0));
    evening.checks[4].summary.right = 1_000;
    let prints = evening.print(&[]).unwrap();
    assert_eq!(named(&prints), ["side-by-side", "true-scale", "making-of", "math-page", "poster"]);

    let mut beyond = measured(&evening.settings.grid);
    beyond.rows[0].index = 70;
    beyond.columns[0].index = 80;
    beyond.widest_gap = Some(Between { cells: [Cell { row: 7, column: 7 }; 2], mm: about(3.0, 0.1) });
    evening.measured = Some(beyond);
    assert_eq!(evening.pages("math-page"), 2);
}

#[test]
fn a_long_name_takes_no_other_page() {
    for paper in [Paper::Letter, Paper::Tabloid] {
        let mut evening = Evening::of(10, 8, paper, Language::English);
        let pages = |evening: &Evening| {
            evening.print(&[]).unwrap().iter().map(|print| print.document.pages).collect::<Vec<_>>()
        };
        let usual = pages(&evening);
        evening.settings.name = "The long evening of the harbour library and all of its friends ".repeat(4);
        assert_eq!(pages(&evening), usual);
    }
}

#[test]
fn one_check_or_hundreds_make_a_few_pages() {
    let mut evening = Evening::of(10, 8, Paper::Letter, Language::Spanish);
    let one = evening.checks[4].clone();
    for (count, most) in [(1, 1), (2, 1), (8, 1), (400, 3)] {
        evening.checks = vec![one.clone(); count];
        let pages = evening.pages("making-of");
        assert!(pages <= most, "{count} checks: {pages} pages");
    }
    evening.checks.iter_mut().for_each(|check| check.picture = None);
    assert!(evening.pages("making-of") <= 2);
}

#[test]
fn a_poster_has_the_width_that_was_asked_for_or_says_which_it_may_have() {
    let mut evening = Evening::of(10, 8, Paper::Letter, Language::English);
    assert_eq!(evening.pages("poster"), 1 + 3 * 2, "three pages across");
    evening.poster.original = true;
    assert_eq!(evening.pages("poster"), 1 + 2 * 3 * 2);
    evening.poster = Poster { width_mm: Some(150.0), original: false };
    assert_eq!(evening.pages("poster"), 2, "it fits one page");
    for width in [f64::NAN, -3.0, 0.0, 49.0, 1e9] {
        evening.poster.width_mm = Some(width);
        let PrintError::Poster { least_mm, most_mm, .. } = evening.print(&["poster"]).unwrap_err() else {
            panic!("{width}")
        };
        assert!(least_mm == 50.0 && most_mm > 1_000.0, "{most_mm}");
        if width > 50.0 {
            evening.poster.width_mm = Some(most_mm);
            assert!(evening.pages("poster") <= 101);
        }
    }
}

#[test]
fn an_organisers_own_template_takes_the_place_of_the_programs() {
    let mut evening = Evening::of(4, 3, Paper::A4, Language::English);
    let own = |text: &str| {
        Overrides::new([("pairs".to_owned(), text.to_owned())].into(), &template_names()).unwrap()
    };
    evening.templates = own("#import \"common.typ\": *\n#show: reading-page\n= Ours\n#pagebreak()\n= Too");
    assert_eq!(evening.pages("pairs"), 2);
    evening.templates = own("#data.content.nothing");
    assert!(matches!(evening.print(&["pairs"]), Err(PrintError::Template(_))));
}

/// Grainy pictures of one size, which no encoder makes small.
fn grainy(count: usize, width: u32, height: u32) -> Vec<RgbImage> {
    let noise = |at: usize, x: u32, y: u32| {
        let seed = (x ^ (y << 13)).wrapping_add(at as u32 * 7_919).wrapping_mul(2_654_435_761);
        (seed ^ (seed >> 15)).wrapping_mul(2_246_822_519).to_be_bytes()
    };
    let picture = |at| {
        RgbImage::from_fn(width, height, |x, y| {
            let [red, green, blue, _] = noise(at, x, y);
            Rgb([red, green, blue])
        })
    };
    (0..count).map(picture).collect()
}

fn moments(pictures: &[RgbImage]) -> Vec<Moment<'_>> {
    let all = pictures.len();
    pictures
        .iter()
        .enumerate()
        .map(|(right, picture)| Moment { when: "18:30", right, cells: all, picture })
        .collect()
}

/// Delays of a GIF's frames, in hundredths of a second, and its size.
fn read(file: &[u8]) -> (Vec<u16>, [u16; 2]) {
    let mut decoder = gif::DecodeOptions::new().read_info(file).unwrap();
    let size = [decoder.width(), decoder.height()];
    let mut delays = Vec::new();
    while let Some(frame) = decoder.read_next_frame().unwrap() {
        delays.push(frame.delay);
    }
    (delays, size)
}

#[test]
fn the_moving_picture_shows_each_check_a_second_and_the_last_one_longer() {
    let words = Words::of("es");
    let wall = drawn(&scene(1_000, 800));
    let pictures = vec![wall; 5];
    let file = filling(&moments(&pictures), &words).unwrap();
    assert_eq!(read(&file), (vec![100, 100, 100, 100, 400], [640, 512]));
    assert!(file == filling(&moments(&pictures), &words).unwrap());
}

#[test]
fn the_moving_picture_is_small_enough_to_mail_whatever_it_shows() {
    let words = Words::english();
    let pictures = grainy(60, 700, 900);
    let file = filling(&moments(&pictures), &words).unwrap();
    let (delays, [width, height]) = read(&file);
    assert!(file.len() <= MOST_BYTES, "{} bytes", file.len());
    assert_eq!(delays.len(), 24);
    assert!(width > 60 && height > width, "{width} x {height}");
}

#[test]
fn odd_pictures_move_or_say_why_not() {
    let words = Words::english();
    assert_eq!(filling(&[], &words), Err(FillingError::Nothing));
    assert_eq!(filling(&moments(&[RgbImage::new(0, 5)]), &words), Err(FillingError::Nothing));
    for (width, height) in [(1, 1), (1, 900), (900, 1)] {
        let pictures = [RgbImage::new(width, height), RgbImage::new(3, 3), RgbImage::new(width, height)];
        assert_eq!(read(&filling(&moments(&pictures), &words).unwrap()).0, [100, 100, 400]);
    }
}

#[test]
fn slips_to_take_home_are_made_where_they_are_asked_for() {
    let mut evening = Evening::of(4, 3, Paper::Letter, Language::Spanish);
    let slips = evening.print(&["take-home"]).unwrap();
    assert_eq!((slips[0].document.name.as_str(), slips[0].document.pages), ("take-home.pdf", 3));
    evening.settings.second_language = Some(Language::English);
    assert!(evening.print(&["take-home"]).unwrap()[0].document.bytes != slips[0].document.bytes);
    evening.kept.clear();
    assert!(matches!(evening.print(&["take-home"]), Err(PrintError::Nothing(_))));
}

#[test]
fn squares_to_give_back_stand_by_label_with_a_box_each() {
    let mut evening = Evening::of(10, 8, Paper::Letter, Language::English);
    let pages = evening.print(&["giving-back"]).unwrap();
    // the first place of each page has the words
    assert_eq!(
        (pages[0].document.name.as_str(), pages[0].document.pages),
        ("giving-back.pdf", 80_usize.div_ceil(29))
    );
    evening.kept.clear();
    assert!(matches!(evening.print(&["giving-back"]), Err(PrintError::Nothing(_))));
}
