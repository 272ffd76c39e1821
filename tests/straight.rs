//! The straight picture of the wall against the truth of made photos.

#![allow(clippy::expect_used, clippy::panic, clippy::unwrap_used, reason = "a test fails by panicking")]

mod common;

use common::scenes;
use everysquare::display::hung::Hanging;
use everysquare::frame::{Map, PhotoPx, Point, SquareMm};
use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::{Grid, Printed, RowsFrom, Settings, Tag};
use everysquare::read::book::Book;
use everysquare::read::{self, Camera};
use everysquare::rehearse::{CellTruth, Made, Options, make};

fn printed(columns: usize, rows: usize) -> Printed {
    let grid = Grid { columns, rows, square_mm: 127.0, tile_mm: 25.4, rows_from: RowsFrom::Bottom };
    Settings::new("Made wall".to_owned(), Tag::from_number(77), grid).printed().unwrap()
}

fn paper_to_photo(truth: &CellTruth, side: f64) -> Map<SquareMm, PhotoPx> {
    let corners = truth.corners_px.unwrap().map(|[x, y]| Point::new(x, y));
    let paper = [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)].map(|(x, y)| Point::new(x, y));
    Map::from_four(paper, corners).unwrap()
}

#[test]
fn squares_lie_where_they_lie() {
    for (columns, rows) in [(10, 8)] {
        let printed = printed(columns, rows);
        let picture = Picture { pixels: scenes::drawing(1500, 1200, 1) };
        for seed in 1..7 {
            let options = if seed == 1 { Options::default() } else { Options::varied(seed) };
            let Made { jpeg, truth, .. } = make(&printed, &picture, &options).unwrap();
            let photo = Photo::open(&jpeg).unwrap();
            let reading = read::photo(&photo, &printed, &Book::new(&printed)).unwrap();
            let cameras: Vec<&Camera> = vec![&reading.camera];
            let hanging = Hanging::of(&reading.cells, &cameras, &printed);
            let (mut errors, mut mids) = (Vec::new(), Vec::new());
            for hung in &hanging.squares {
                let truth =
                    truth.cells.iter().find(|t| t.row == hung.at.row && t.column == hung.at.column).unwrap();
                let photo_to_paper = paper_to_photo(truth, 127.0).inverse().unwrap();
                for i in 0..11 {
                    for j in 0..11 {
                        let p = Point::<SquareMm>::new(f64::from(i) * 12.7, f64::from(j) * 12.7);
                        let seen = reading.camera.wall_to_photo(hung.square_to_wall.apply(p));
                        let e = photo_to_paper.apply(seen).distance(p).value();
                        errors.push(e);
                        if i == 5 && j == 5 {
                            mids.push(e);
                        }
                    }
                }
            }
            let code = 21.0 * printed.module_mm;
            let mut scales: Vec<f64> = truth
                .cells
                .iter()
                .filter_map(|t| t.code_px)
                .filter_map(|c| {
                    let w: Vec<_> = c
                        .iter()
                        .filter_map(|[x, y]| reading.camera.photo_to_wall(Point::new(*x, *y)))
                        .collect();
                    (w.len() == 4).then(|| {
                        (0..4).map(|i| w[i].distance(w[(i + 1) % 4]).value()).sum::<f64>() / 4.0 / code
                    })
                })
                .collect();
            scales.sort_by(f64::total_cmp);
            let mut own: Vec<f64> = hanging.squares.iter().map(|h| h.own_scale).collect();
            own.sort_by(f64::total_cmp);
            println!(
                "true codes' scale {:.5} ({:.5} .. {:.5}), own {:.5} .. {:.5}, sensor {:?} yaw {} pitch {}",
                scales[scales.len() / 2],
                scales[scales.len() / 4],
                scales[scales.len() * 3 / 4],
                own[own.len() / 4],
                own[own.len() * 3 / 4],
                options.sensor,
                options.pose.yaw_degrees,
                options.pose.pitch_degrees
            );
            errors.sort_by(f64::total_cmp);
            mids.sort_by(f64::total_cmp);
            let at = |e: &[f64], part: f64| e[((e.len() - 1) as f64 * part) as usize];
            println!(
                "{columns}x{rows} seed {seed}: {} squares, px {:.2}, scale {:.5}, median {:.2} p99 {:.2} max {:.2}; middles {:.2} {:.2}; bend {} ",
                hanging.squares.len(),
                reading.px_per_module,
                hanging.scale,
                at(&errors, 0.5),
                at(&errors, 0.99),
                at(&errors, 1.0),
                at(&mids, 0.5),
                at(&mids, 0.99),
                options.hanging.bend_mm
            );
        }
    }
}
