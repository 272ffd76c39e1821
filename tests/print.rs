//! The kit on paper.

#[test]
fn look() {
    use everysquare::picture::Picture;
    use everysquare::plan::settings::{Flip, Paper};
    use everysquare::plan::{Grid, RowsFrom, Settings, Tag};
    let grid = Grid { columns: 10, rows: 8, square_mm: 127.0, tile_mm: 25.4, rows_from: RowsFrom::Bottom };
    let mut settings = Settings::new("Harbour library open evening".into(), Tag::new("K7M").unwrap(), grid);
    for (paper, flip, name) in [
        (Paper::Letter, Flip::LongEdge, "letter"),
        (Paper::A3, Flip::ShortEdge, "a3"),
        (Paper::A4, Flip::None, "a4"),
        (Paper::Tabloid, Flip::LongEdge, "tabloid"),
    ] {
        settings.print.paper = paper;
        settings.print.flip = flip;
        let picture = Picture {
            pixels: image::RgbImage::from_fn(1003, 800, |x, y| {
                image::Rgb(match (x / 37 + y / 53) % 4 {
                    0 => [200, 40, 40],
                    1 => [250, 220, 60],
                    2 => [30, 90, 160],
                    _ => [255, 255, 255],
                })
            }),
        };
        let before = std::time::Instant::now();
        let kit = everysquare::print::kit(
            &settings,
            &settings.printed().unwrap(),
            &picture,
            &everysquare::words::Words::english(),
        )
        .unwrap();
        println!("{name} {:?}", before.elapsed());
        let folder = std::path::PathBuf::from(format!("/tmp/look/{name}"));
        std::fs::create_dir_all(&folder).unwrap();
        for d in &kit.documents {
            println!("{} {} pages {} sheets {} bytes", d.name, d.pages, d.sheets, d.bytes.len());
            std::fs::write(folder.join(&d.name), &d.bytes).unwrap();
        }
        std::fs::write(folder.join("manifest.json"), kit.manifest.to_json().unwrap()).unwrap();
    }
}
