//! Makes what the fuzz targets begin with: `target/release/examples/fuzz-seeds FOLDER`, as `tools/fuzz/run` calls it.
//!
//! A folder a target, small files: made photos of four squares in each format, the sample's files, single sentences.

use std::error::Error;
use std::io::Cursor;
use std::path::Path;

use everysquare::cli::sample;
use everysquare::picture::Picture;
use everysquare::plan::manifest::{
    Manifest, ManifestCard, ManifestCode, ManifestEvent, ManifestGrid, ManifestSquare,
};
use everysquare::plan::{Grid, KeptFree, Printed, PrintedSquare, RowsFrom, Settings, Tag};
use everysquare::rehearse::{Cards, Faults, Options, make};
use everysquare::words::LANGUAGES;
use image::{DynamicImage, ImageFormat};

type Outcome<T> = Result<T, Box<dyn Error>>;

fn main() -> Outcome<()> {
    let folder = std::env::args().nth(1).ok_or("say where to put the seeds")?;
    let folder = Path::new(&folder);
    for target in ["photo", "manifest", "event", "words"] {
        std::fs::create_dir_all(folder.join(target))?;
    }
    let grid = Grid {
        columns: 2,
        rows: 2,
        square_mm: 60.0,
        piece_mm: 20.0,
        rows_from: RowsFrom::Bottom,
        border: false,
        kept_free: KeptFree::NONE,
    };
    let settings = Settings::new("Fuzz".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
    let printed = settings.printed()?;
    photos(&printed, folder)?;
    std::fs::write(folder.join("manifest/small.json"), manifest(&printed).to_json()?)?;
    let short = "name = \"x\"\ntag = \"K7M\"\n[wall]\ncolumns = 2\nrows = 2\n";
    std::fs::write(folder.join("event/short.toml"), short)?;
    std::fs::write(folder.join("event/written.toml"), settings.to_toml())?;
    std::fs::write(folder.join("event/inline.toml"), "name='x'\ntag='K7M'\nwall={columns=2,rows=2}\r\n")?;
    for (code, text) in LANGUAGES {
        let entries = text.split("\n\n").filter(|entry| entry.contains(" =")).enumerate();
        for (number, entry) in entries.step_by(8) {
            std::fs::write(folder.join(format!("words/{code}-{number}.ftl")), entry)?;
        }
    }
    Ok(())
}

/// The same four squares as JPEG, PNG, WebP and uncompressed TIFF; with faults, mirrored, with an orientation.
fn photos(printed: &Printed, folder: &Path) -> Outcome<()> {
    let picture = Picture::open(sample::PICTURE_PNG)?;
    for seed in 1..=4_u64 {
        let faults =
            Faults { turns: usize::from(seed == 2), missing: usize::from(seed == 3), ..Faults::default() };
        let mut options =
            Options { width: 320, height: 240, cards: Cards::Corners, faults, ..Options::varied(seed) };
        options.sensor.mirrored = seed == 4;
        options.people = 0;
        let made = make(printed, &picture, &options)?;
        let at = |ending: &str| folder.join(format!("photo/{seed}.{ending}"));
        std::fs::write(at("jpg"), &made.jpeg)?;
        if seed == 1 {
            std::fs::write(folder.join("manifest.jpg"), &made.jpeg)?;
        }
        let grey = DynamicImage::from(made.image).into_luma8();
        for (ending, format) in
            [("png", ImageFormat::Png), ("webp", ImageFormat::WebP), ("tif", ImageFormat::Tiff)]
        {
            let mut bytes = Cursor::new(Vec::new());
            grey.write_to(&mut bytes, format)?;
            std::fs::write(at(ending), bytes.into_inner())?;
        }
    }
    Ok(())
}

/// The manifest of a kit of which every square lies on one page.
fn manifest(printed: &Printed) -> Manifest {
    let Grid { columns, rows, square_mm, piece_mm, .. } = printed.grid;
    let square = |square: &PrintedSquare| ManifestSquare {
        label: square.label.clone(),
        column: square.cell.column,
        row: square.cell.row,
        text: square.text.clone(),
        modules: square.modules.to_hex(),
        page: 1,
        x_mm: 10.0,
        y_mm: 10.0,
        side_mm: square_mm,
    };
    let at = printed.code_top_left;
    Manifest {
        format: 1,
        event: ManifestEvent { name: printed.name.clone(), tag: printed.tag.clone() },
        grid: ManifestGrid { columns, rows, square_mm, piece_mm },
        code: ManifestCode { module_mm: printed.module_mm, x_mm: at.x, y_mm: at.y },
        squares: printed.squares.iter().map(square).collect(),
        pieces: Vec::new(),
        cards: printed.cards.iter().map(ManifestCard::from).collect(),
        turned: false,
    }
}
