//! `everysquare new`: the folder it makes, what it says, what it refuses.

use std::ffi::OsString;
use std::io::{self, Write};
use std::path::Path;

use crate::common::{Kept, everysquare, scenes};
use everysquare::cli::{Console, Screen, run, sample};
use everysquare::picture::Picture;
use everysquare::plan::settings::{Language, Paper, Units};
use everysquare::plan::{Folder, Settings};

fn saved(place: &Path, name: &str, bytes: &[u8]) -> String {
    let path = place.join(name);
    std::fs::write(&path, bytes).unwrap();
    path.to_str().unwrap().to_owned()
}

fn sample_picture(place: &Path) -> String {
    let path = place.join("balloons.png");
    std::fs::write(&path, sample::PICTURE_PNG).unwrap();
    path.to_str().unwrap().to_owned()
}

#[test]
fn a_picture_becomes_an_event() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let folder = place.path().join("open-evening");
    let (code, out, err) =
        everysquare(&["new", folder.to_str().unwrap(), "--picture", &picture, "--paper", "a4"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    for said in ["Open evening", "10 × 8, 80 squares", "whole picture", "1.25 m wide", "everysquare print"] {
        assert!(out.contains(said), "{said} in {out}");
    }
    assert!(!out.contains("[new-"), "every sentence has its words: {out}");
    let event = Folder::at(&folder);
    let settings = event.settings().unwrap();
    assert_eq!((settings.print.paper, settings.print.units), (Paper::A4, Units::Mm));
    assert_eq!((settings.grid.square_mm, settings.grid.piece_mm), (125.0, 25.0), "whole where mm are read");
    let copied = Picture::open(&event.picture_bytes(&settings).unwrap()).unwrap();
    assert_eq!(copied, Picture::open(sample::PICTURE_PNG).unwrap());
    let names = std::fs::read_dir(&folder).unwrap().count();
    assert_eq!(names, 3, "event.toml, the picture and its preview, nothing else");
}

/// The command that `new` shows is one that a shell reads: pasted, its folder is the one that was meant.
#[cfg(unix)]
#[test]
fn the_command_that_is_shown_works_when_it_is_pasted() {
    use std::process::Command;
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let program = env!("CARGO_BIN_EXE_everysquare");
    for name in ["Library Night", "Ana's night", "./-dash", "feria \"niños\"", "año nuevo", "$5 `now`"] {
        let made = Command::new(program)
            .current_dir(place.path())
            .args(["new", name, "--picture", &picture, "--squares", "12", "--colours", "4"])
            .output()
            .unwrap();
        assert_eq!(made.status.code(), Some(0), "{name}: {}", String::from_utf8_lossy(&made.stderr));
        let said = String::from_utf8(made.stdout).unwrap();
        let shown = said.trim_end().rsplit_once("everysquare print ").unwrap().1;
        let pasted = format!("'{program}' plan {}", shown.split_whitespace().collect::<Vec<_>>().join(" "));
        let run = Command::new("sh").current_dir(place.path()).arg("-c").arg(&pasted).output().unwrap();
        assert_eq!(run.status.code(), Some(0), "{pasted}: {}", String::from_utf8_lossy(&run.stderr));
        assert!(place.path().join(name).join("plan.json").exists(), "{pasted}");
    }
}

#[test]
fn the_sample_is_what_new_makes_of_its_picture() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let folder = place.path().join("x");
    let named = ["--name", "Harbor Library Open Night", "--tag", "K7M"];
    let words = [["new", folder.to_str().unwrap(), "--picture", &picture].as_slice(), &named].concat();
    assert_eq!(everysquare(&words).0, 0);
    assert_eq!(std::fs::read_to_string(folder.join("event.toml")).unwrap(), sample::EVENT_TOML);
    let written = place.path().join("sample");
    sample::write_to(&Folder::at(&written)).unwrap();
    assert_eq!(Folder::at(written).settings().unwrap(), Settings::from_toml(sample::EVENT_TOML).unwrap());
}

#[test]
fn every_way_to_a_grid_says_why() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let said = [
        (vec!["--columns", "1"], "1 × 1, 1 square. Of all grids that wide, it"),
        (vec!["--columns", "5"], "5 × 4, 20 squares. Of all grids that wide, it"),
        (vec!["--rows", "6"], "8 × 6, 48 squares. Of all grids that tall, it"),
        (vec!["--columns", "8", "--rows", "8"], "8 × 8, 64 squares, as you asked"),
        (vec!["--squares", "20"], "5 × 4, 20 squares. That’s close to the 20 you asked for"),
        (vec!["--columns", "8", "--rows", "8"], "20% of the picture is cut off, half on the left"),
        (vec!["--columns", "10", "--rows", "4"], "50% of the picture is cut off, half at the top"),
        (vec!["--columns", "40"], "only 24 pixels wide"),
    ];
    for (i, (more, sentence)) in said.iter().enumerate() {
        let folder = place.path().join(i.to_string());
        let words = [["new", folder.to_str().unwrap(), "--picture", &picture].as_slice(), more].concat();
        let (code, out, err) = everysquare(&words);
        assert_eq!(code, 0, "{err}");
        assert!(out.contains(sentence), "{sentence} in {out}");
    }
}

#[test]
fn nothing_is_overwritten_and_a_mistake_is_one_sentence() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let folder = place.path().join("x");
    let at = folder.to_str().unwrap();
    assert_eq!(everysquare(&["new", at, "--picture", &picture, "--tag", "K7M"]).0, 0);
    let before = std::fs::read(folder.join("event.toml")).unwrap();
    let text = place.path().join("text");
    std::fs::write(&text, "hello").unwrap();
    let (text, fresh) = (text.to_str().unwrap(), place.path().join("fresh"));
    let fresh = fresh.to_str().unwrap();
    let plain = Picture { pixels: image::RgbImage::new(40, 30) }.to_png().unwrap();
    let plain = saved(place.path(), "plain.png", &plain);
    let beside = "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><image href='cat.png'/></svg>";
    let beside = saved(place.path(), "beside.svg", beside.as_bytes());
    let refused: [(&[&str], &str); 13] = [
        (&["new", fresh, "--picture", &plain], "plain.png: the picture is one color all over"),
        (&["new", fresh, "--picture", &beside], "cat.png, and we never load that"),
        (&["new", at, "--picture", &picture], "already holds an event"),
        (&["new", text, "--picture", &picture], "is a file. Give the name of a folder"),
        (&["new", fresh, "--picture", text], "no picture in a format that is read here"),
        (&["new", fresh, "--picture", "/no/such.png"], "there’s no picture /no/such.png"),
        (&["new", fresh, "--picture", place.path().to_str().unwrap()], "it’s a folder"),
        (&["new", fresh, "--picture", &picture, "--columns", "0"], "0 columns won’t work. Use 1 to 702"),
        (&["new", fresh, "--picture", &picture, "--columns", "600", "--rows", "600"], "make 360000 squares"),
        (&["new", fresh, "--picture", &picture, "--paper", "legal"], "use letter, tabloid, a4 or a3"),
        (&["new", fresh, "--picture", &picture, "--piece-mm", "200"], "is larger than its square"),
        (&["new", fresh, "--picture", &picture, "--tag", "K1M"], "3 characters from"),
        (&["new", fresh], "--picture"),
    ];
    for (words, sentence) in refused {
        let (code, out, err) = everysquare(words);
        assert_eq!((code, out.as_str()), (2, ""), "{words:?}");
        assert!(err.starts_with("everysquare: ") && err.contains(sentence), "{words:?}: {err}");
        assert_eq!(err.lines().count(), 1, "one sentence: {err}");
        assert!(!Path::new(fresh).exists(), "{words:?} leaves nothing behind");
    }
    assert_eq!(std::fs::read(folder.join("event.toml")).unwrap(), before);
}

#[test]
fn a_picture_that_lies_in_the_folder_stays_as_it_is() {
    let place = tempfile::tempdir().unwrap();
    let own = place.path().join("picture.png");
    std::fs::write(&own, sample::PICTURE_PNG).unwrap();
    let (code, out, _) =
        everysquare(&["new", place.path().to_str().unwrap(), "--picture", own.to_str().unwrap()]);
    assert_eq!(code, 0);
    assert!(out.contains("picture-2.png"), "{out}");
    assert_eq!(std::fs::read(own).unwrap(), sample::PICTURE_PNG);
}

/// A photo, a clean drawing and an SVG, each by a newcomer's way.
#[test]
fn three_kinds_of_pictures_become_events_in_few_colours() {
    let place = tempfile::tempdir().unwrap();
    let png = |pixels| Picture { pixels }.to_png().unwrap();
    let sources = [
        ("photo.png", png(scenes::photo(900, 720)), vec!["--paper", "a4"]),
        ("drawing.png", png(scenes::drawing(900, 720, 4)), vec!["--colours", "7", "--language", "es"]),
        ("boat.svg", scenes::SVG.into(), vec!["--colours", "8"]),
    ];
    for (name, bytes, more) in sources {
        let picture = saved(place.path(), name, &bytes);
        let folder = place.path().join(name.replace('.', "-"));
        let words = [["new", folder.to_str().unwrap(), "--picture", &picture].as_slice(), &more].concat();
        let (code, out, err) = everysquare(&words);
        assert_eq!((code, err.as_str()), (0, ""), "{name}");
        let pencils = if name == "drawing.png" { "lápices: azul claro" } else { "pencils: " };
        assert!(out.contains(pencils) && !out.contains('['), "{out}");
        assert_eq!(out.contains("own font"), name == "boat.svg", "{out}");
        let event = Folder::at(&folder);
        let settings = event.settings().unwrap();
        assert_eq!(settings.language == Language::Spanish, name == "drawing.png");
        let reduced = Picture::open(&event.picture_bytes(&settings).unwrap()).unwrap();
        let known: Vec<_> = settings.picture.pencils.iter().map(|pencil| pencil.srgb).collect();
        assert!(
            reduced.pixels.pixels().all(|pixel| known.contains(&pixel.0)),
            "{name}: only its pencils' colours"
        );
        assert_eq!(reduced.crop(&settings.grid).lost, 0.0, "{name}: the grid's shape exactly");
        let preview = image::open(folder.join("picture-preview.png")).unwrap().into_rgb8();
        assert!(
            known.iter().all(|colour| preview.pixels().any(|pixel| pixel.0 == *colour)),
            "{name}: shown with its pencils"
        );
        assert!(preview.width() > 1200 && preview.height() > 960, "{name}: large enough for labels");
    }
}

#[test]
fn own_pencils_come_from_a_list_or_from_another_event() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let list = "[[pencils]]\nname = \"ink\"\nsrgb = \"#101020\"\n[[pencils]]\nname = \"sky\"\nsrgb = \"#a0d0f0\"\n[[pencils]]\nname = \"plum\"\nsrgb = \"#803060\"\n";
    let list = saved(place.path(), "mine.toml", list.as_bytes());
    let event = saved(place.path(), "other.toml", sample::EVENT_TOML.as_bytes());
    for (file, names) in [
        (list, vec!["ink", "sky", "plum"]),
        (event, vec!["light blue", "dark blue", "cream", "red", "yellow", "green"]),
    ] {
        let folder = place.path().join(names[0]);
        let (code, out, err) =
            everysquare(&["new", folder.to_str().unwrap(), "--picture", &picture, "--pencils", &file]);
        assert_eq!((code, err.as_str()), (0, ""), "{out}");
        let settings = Folder::at(&folder).settings().unwrap();
        let read: Vec<_> = settings.picture.pencils.iter().map(|pencil| pencil.name.as_str()).collect();
        assert_eq!(read, names);
    }
    let none = saved(place.path(), "none.toml", b"[picture]\ncolours = 4\n");
    let one = saved(place.path(), "one.toml", b"[[pencils]]\nname = \"ink\"\nsrgb = \"#101020\"\n");
    let odd = saved(place.path(), "odd.toml", b"[[pencils]]\nname = \"ink\"\nsrgb = \"black\"\n");
    let binary = saved(place.path(), "binary.toml", &[0xff, 0xfe, 0]);
    let fresh = place.path().join("fresh");
    let fresh = fresh.to_str().unwrap();
    let refused = [
        (vec!["--pencils", &none], "[[pencils]]"),
        (vec!["--pencils", &one], "use 2 to 24"),
        (vec!["--pencils", &odd], "write a color like"),
        (vec!["--pencils", &binary], "isn’t plain text"),
        (vec!["--pencils", "/no/such.toml"], "/no/such.toml"),
        (vec!["--pencils", &none, "--colours", "4"], "not both"),
        (vec!["--pencils", &none, "--black-and-white"], "not both"),
        (vec!["--fit", "squeeze"], "use crop or pad"),
        (vec!["--language", "latin"], "use en, en-GB or es"),
    ];
    for (more, sentence) in refused {
        let (code, out, err) =
            everysquare(&[["new", fresh, "--picture", &picture].as_slice(), &more].concat());
        assert_eq!((code, out.as_str(), err.lines().count()), (2, "", 1), "{more:?}: {err}");
        assert!(err.contains(sentence), "{more:?}: {err}");
        assert!(!Path::new(fresh).exists(), "{more:?} leaves nothing behind");
    }
}

#[test]
fn shape_greys_and_cautions_are_said() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let said = |name: &str, picture: &str, more: &[&str]| {
        let folder = place.path().join(name);
        let (code, out, err) =
            everysquare(&[["new", folder.to_str().unwrap(), "--picture", picture].as_slice(), more].concat());
        assert_eq!((code, err.as_str()), (0, ""), "{out}");
        (out, Folder::at(&folder).settings().unwrap())
    };
    let (out, _) = said("pad", &picture, &["--columns", "10", "--rows", "4", "--fit", "pad"]);
    assert!(out.contains("on the left and right (50% of the mural)"), "{out}");
    let (out, _) = said("high", &picture, &["--columns", "8", "--rows", "8", "--fit", "pad"]);
    assert!(out.contains("at the top and bottom (20% of the mural)"), "{out}");
    let (out, settings) = said("greys", &picture, &["--black-and-white", "--colours", "4"]);
    assert!(settings.picture.pencils.iter().all(|pencil| pencil.srgb[0] == pencil.srgb[2]), "{out}");
    let mut bare = image::RgbImage::from_pixel(1000, 800, image::Rgb([250, 240, 210]));
    for (x, y, pixel) in bare.enumerate_pixels_mut() {
        if x.abs_diff(50) < 30 && y.abs_diff(50) < 30 {
            pixel.0 = if x < 50 { [30, 60, 140] } else { [30, 66, 150] };
        }
    }
    let bare = saved(place.path(), "bare.png", &Picture { pixels: bare }.to_png().unwrap());
    let (out, _) = said("bare", &bare, &[]);
    for caution in [
        "look almost the same",
        "only 1 piece needs very dark blue",
        "79 pieces are one color all over, and only 1",
    ] {
        assert!(out.contains(caution), "{caution} in {out}");
    }
}

/// A place that takes no byte.
struct Gone(io::ErrorKind);

impl Write for Gone {
    fn write(&mut self, _: &[u8]) -> io::Result<usize> {
        Err(self.0.into())
    }
    fn flush(&mut self) -> io::Result<()> {
        Err(self.0.into())
    }
}

#[test]
fn a_reader_that_went_away_is_no_error_and_a_full_disk_is() {
    for (kind, code) in [(io::ErrorKind::BrokenPipe, 0), (io::ErrorKind::StorageFull, 2)] {
        let err = Kept::default();
        let mut console = Console::new(Box::new(Gone(kind)), Box::new(err.clone()), Screen::plain());
        let argv = ["everysquare", "--help"].map(OsString::from);
        assert_eq!(run(argv, &mut console), code);
        assert_eq!(err.text().is_empty(), code == 0);
    }
}

/// Several pictures are shown side by side, and nothing else is made: also where one of them cannot be used.
#[test]
fn several_pictures_are_compared_and_none_is_chosen() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let shore =
        saved(place.path(), "shore.png", &Picture { pixels: scenes::drawing(900, 600, 2) }.to_png().unwrap());
    let folder = place.path().join("choice");
    let typed = |pictures: &[&str], more: &[&str]| {
        let mut words = vec!["new", folder.to_str().unwrap()];
        pictures.iter().for_each(|own| words.extend(["--picture", own]));
        everysquare(&[words.as_slice(), more].concat())
    };
    let (code, out, err) = typed(&[&picture, &shore], &["--visitors", "80"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    for said in [
        "balloons.png",
        "shore.png",
        "one color all over",
        "pencils",
        "squares.",
        "side by side",
        "--picture",
    ] {
        assert!(out.contains(said), "{said} in {out}");
    }
    assert!(!out.contains("[pictures-"), "every sentence has its words: {out}");
    let names: Vec<_> = std::fs::read_dir(&folder).unwrap().map(|file| file.unwrap().file_name()).collect();
    assert_eq!(names, ["pictures.pdf"], "no event yet");
    assert!(std::fs::read(folder.join("pictures.pdf")).unwrap().starts_with(b"%PDF"));

    let text = saved(place.path(), "letter.txt", b"Dear library");
    let (code, out, err) = typed(&[&picture, &text], &[]);
    assert_eq!(code, 2);
    assert!(out.contains("balloons.png") && err.contains("letter.txt"), "{out}{err}");
    let (code, _, err) = typed(&[&text, &text], &[]);
    assert_eq!((code, err.lines().count()), (2, 2), "{err}");
    let (code, _, err) = typed(&[&picture, &shore], &["--area", "0,0,50,50"]);
    assert_eq!(code, 2);
    assert!(err.contains("one picture"), "{err}");
    let (code, _, err) = typed(&[&picture], &[]);
    assert_eq!((code, err.as_str()), (0, ""), "the same folder then takes the event");
}

/// A part of the picture is what the event has, a closer one is proposed where many pieces are plain, and what it would be is true.
#[test]
fn a_part_of_the_picture_is_drawn_and_a_closer_one_proposed() {
    let place = tempfile::tempdir().unwrap();
    let ball = image::RgbImage::from_fn(1_200, 900, |x, y| {
        let r = (f64::from(x) - 500.0).hypot(f64::from(y) - 430.0);
        let ring = ((r / 38.0).floor() as i32) % 3;
        image::Rgb(if r > 230.0 {
            [244, 238, 220]
        } else {
            [[200, 50, 40], [40, 80, 160], [240, 190, 60]][ring as usize]
        })
    });
    let picture = saved(place.path(), "ball.png", &Picture { pixels: ball }.to_png().unwrap());
    let made = |name: &str, more: &[&str]| {
        let folder = place.path().join(name);
        let (code, out, err) = everysquare(
            &[
                ["new", folder.to_str().unwrap(), "--picture", &picture, "--columns", "12", "--rows", "9"]
                    .as_slice(),
                more,
            ]
            .concat(),
        );
        assert_eq!((code, err.as_str()), (0, ""), "{out}");
        (out, folder)
    };
    let (out, _) = made("whole", &[]);
    let (said, area) = out
        .lines()
        .collect::<Vec<_>>()
        .join(" ")
        .split_once("--area ")
        .map(|(said, area)| (said.to_owned(), area.split_whitespace().next().unwrap().to_owned()))
        .unwrap();
    let promised = said.rsplit_once("A closer crop").unwrap().1;
    let numbers: Vec<usize> =
        promised.split(|c: char| !c.is_ascii_digit()).filter_map(|number| number.parse().ok()).collect();
    let [pieces, plain, hard, plain_now, hard_now] = numbers[..] else { panic!("{promised}") };
    assert_eq!(pieces, 108);
    assert!(plain + hard < plain_now + hard_now);
    let (_, folder) = made("closer", &["--area", &area]);
    let event = Folder::at(&folder);
    let settings = event.settings().unwrap();
    let few = everysquare::picture::FewColours::chosen(
        &Picture::open(&event.picture_bytes(&settings).unwrap()).unwrap(),
        &settings.picture,
    );
    let facts = everysquare::picture::PictureFacts::of(&few, &settings.grid, &settings.levels);
    let count = |level| facts.count(level);
    assert_eq!(
        [count(everysquare::plan::Level::Plain), count(everysquare::plan::Level::Hard)],
        [plain, hard],
        "as it was promised"
    );

    for wrong in ["10,10", "0,0,100,101", "60,0,60,50", "0,0,2,50", "a,b,c,d", "nan,0,50,50"] {
        let (code, _, err) = everysquare(&["new", "/nowhere", "--picture", &picture, "--area", wrong]);
        assert_eq!(code, 2, "{wrong}");
        assert!(err.contains("four numbers in percent"), "{wrong}: {err}");
    }
}

/// Whose picture it is stands in event.toml, and where nobody said, a sentence asks.
#[test]
fn whose_picture_it_is_is_kept() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let folder = place.path().join("x");
    let words = [
        "new",
        folder.to_str().unwrap(),
        "--picture",
        &picture,
        "--credit",
        "Drawn by Ana, with her permission",
    ];
    let (code, out, _) = everysquare(&words);
    assert_eq!(code, 0);
    assert!(!out.contains("Whose picture"), "{out}");
    let settings = Folder::at(&folder).settings().unwrap();
    assert_eq!(settings.picture.credit.as_deref(), Some("Drawn by Ana, with her permission"));
    let (_, out, _) = everysquare(&["new", place.path().join("y").to_str().unwrap(), "--picture", &picture]);
    assert!(out.contains("Whose picture is it?"), "{out}");
}

/// A photo of a drawing on a table becomes the drawing: no table, no lamp, and its own colours.
#[test]
fn a_drawing_on_paper_is_taken_from_its_photo() {
    use imageproc::geometric_transformations::{Border, Interpolation, Projection, warp_into};
    let place = tempfile::tempdir().unwrap();
    let drawn = Picture::open(sample::PICTURE_PNG).unwrap().pixels;
    let (wide, high) = (drawn.width() + 120, drawn.height() + 120);
    let mut sheet = image::RgbImage::from_pixel(wide, high, image::Rgb([255; 3]));
    image::imageops::replace(&mut sheet, &drawn, 60, 60);
    let [width, height] = [wide, high].map(|side| f32::from(u16::try_from(side).unwrap()));
    let from = [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)];
    let to = [(310.0, 120.0), (1_290.0, 190.0), (1_370.0, 1_040.0), (200.0, 960.0)];
    let mut photo = image::RgbImage::from_pixel(1_600, 1_200, image::Rgb([96, 66, 44]));
    let bent = Projection::from_control_points(from, to).unwrap();
    warp_into(&sheet, bent, Interpolation::Bilinear, Border::Constant(image::Rgb([96, 66, 44])), &mut photo);
    for (x, y, pixel) in photo.enumerate_pixels_mut() {
        let lamp = 0.95 - 0.3 * f64::from(x) / 1_600.0 - 0.1 * f64::from(y) / 1_200.0;
        let tint = [1.0, 0.93, 0.8];
        pixel.0 = [0, 1, 2].map(|i| (f64::from(pixel.0[i]) * lamp * tint[i]).round() as u8);
    }
    let photo = saved(place.path(), "table.png", &Picture { pixels: photo }.to_png().unwrap());
    let made = |name: &str, more: &[&str]| {
        let folder = place.path().join(name);
        let words = ["new", folder.to_str().unwrap(), "--picture", &photo, "--columns", "10", "--rows", "8"];
        (everysquare(&[words.as_slice(), more].concat()), folder)
    };
    let ((code, out, err), folder) = made("drawing", &["--from-paper"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    assert!(out.contains("drawing.png") && out.contains("light blue"), "{out}");
    let straight = image::open(folder.join("drawing.png")).unwrap().to_rgb8();
    let rim = 12 * high / 1_000;
    let inner = image::imageops::crop_imm(&sheet, rim, rim, wide - 2 * rim, high - 2 * rim).to_image();
    let (inner_wide, inner_high) = inner.dimensions();
    let laid =
        image::imageops::resize(&straight, inner_wide, inner_high, image::imageops::FilterType::Triangle);
    let unlike = laid
        .pixels()
        .zip(inner.pixels())
        .filter(|(own, truth)| own.0.iter().zip(truth.0).any(|(own, truth)| own.abs_diff(truth) > 60));
    let unlike = unlike.count() as f64 / f64::from(inner_wide * inner_high);
    assert!(unlike < 0.03, "{:.1} % of the pixels are of another colour", 100.0 * unlike);
    let by_hand = "310,120 1290,190 1370,1040 200,960";
    let ((code, _, err), _) = made("by-hand", &["--from-paper", "--corners", by_hand]);
    assert_eq!((code, err.as_str()), (0, ""));
    for (name, corners, said) in [
        ("beyond", "310,120 1290,190 9000,1040 200,960", "aren’t the corners"),
        ("line", "0,0 100,100 200,200 300,300", "aren’t the corners"),
        ("three", "310,120 1290,190 1370,1040", "in quotes"),
    ] {
        let ((code, _, err), folder) = made(name, &["--from-paper", "--corners", corners]);
        assert_eq!(code, 2, "{name}");
        assert!(err.contains(said), "{name}: {err}");
        assert!(!folder.exists());
    }
    let ((code, _, err), _) = made("alone", &["--corners", by_hand]);
    assert_eq!(code, 2);
    assert!(err.contains("--from-paper"), "{err}");
}

/// A photo that lies in the folder under the drawing's name stays as it is.
#[test]
fn a_photo_named_as_the_drawing_is_not_overwritten() {
    let place = tempfile::tempdir().unwrap();
    let photo = image::RgbImage::from_fn(800, 600, |x, y| {
        image::Rgb(match (x, y) {
            (300..=420, 200..=380) => [190, 50, 40],
            (100..=700, 80..=520) => [225, 222, 214],
            _ => [96, 66, 44],
        })
    });
    let photo = saved(place.path(), "drawing.png", &Picture { pixels: photo }.to_png().unwrap());
    let before = std::fs::read(&photo).unwrap();
    let folder = place.path().to_str().unwrap();
    let (code, out, err) = everysquare(&["new", folder, "--picture", &photo, "--from-paper"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    assert!(out.contains("drawing-2.png") && place.path().join("drawing-2.png").exists(), "{out}");
    assert_eq!(std::fs::read(&photo).unwrap(), before);
}

/// A picture with much that is exactly white and grain in all else keeps its colours: it is no drawing of one colour.
#[test]
fn pure_white_around_grainy_colours_is_no_drawing_in_white() {
    let place = tempfile::tempdir().unwrap();
    let pixels = image::RgbImage::from_fn(900, 720, |x, y| {
        let grain = ((x * 31 + y * 17) % 13) as u8;
        let own = |rgb: [u8; 3]| image::Rgb(rgb.map(|level| level + grain));
        match (x, y) {
            (100..=400, 150..=420) => own([190, 50, 40]),
            (500..=800, 300..=600) => own([50, 90, 160]),
            _ => image::Rgb([255; 3]),
        }
    });
    let picture = saved(place.path(), "grain.png", &Picture { pixels }.to_png().unwrap());
    let folder = place.path().join("x");
    let (code, out, err) = everysquare(&["new", folder.to_str().unwrap(), "--picture", &picture]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    let pencils = Folder::at(&folder).settings().unwrap().picture.pencils;
    for colour in [[196, 56, 46], [56, 96, 166]] {
        let near = pencils.iter().any(|own| own.srgb.iter().zip(colour).all(|(a, b)| a.abs_diff(b) < 16));
        assert!(near, "{colour:?} in {pencils:?}");
    }
}
