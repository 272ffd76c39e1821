//! Trial.
#![allow(clippy::all, clippy::print_stdout, clippy::unwrap_used)]
use everysquare::frame::*;
use everysquare::photo::Photo;
use everysquare::plan::*;
use everysquare::read::*;
fn printed(folder: &str) -> Printed {
    let m: Manifest =
        serde_json::from_slice(&std::fs::read(format!("{folder}/print/manifest.json")).unwrap()).unwrap();
    let grid = Grid {
        columns: m.grid.columns,
        rows: m.grid.rows,
        square_mm: m.grid.square_mm,
        tile_mm: m.grid.tile_mm,
        rows_from: RowsFrom::Bottom,
    };
    let mut squares: Vec<_> = m
        .squares
        .iter()
        .map(|s| PrintedSquare {
            cell: Cell { row: s.row, column: s.column },
            label: s.label.clone(),
            text: s.text.clone(),
            modules: Modules::from_hex(&s.modules).unwrap(),
        })
        .collect();
    squares.sort_by_key(|s| s.cell);
    let cards = m
        .cards
        .iter()
        .map(|c| Card {
            kind: match c.kind.as_str() {
                "column" => CardKind::Column,
                "row" => CardKind::Row,
                _ => CardKind::Corner,
            },
            name: c.name.clone(),
            text: c.text.clone(),
            modules: Modules::from_hex(&c.modules).unwrap(),
            module_mm: c.module_mm,
            centre: Point::new(c.wall_x_mm, c.wall_y_mm),
        })
        .collect();
    Printed {
        name: m.event.name,
        tag: m.event.tag,
        grid,
        module_mm: m.code.module_mm,
        code_top_left: Point::new(m.code.x_mm, m.code.y_mm),
        squares,
        cards,
    }
}
fn main() {
    let a: Vec<String> = std::env::args().collect();
    let p = printed(&a[1]);
    for f in &a[2..] {
        let photo = Photo::open(&std::fs::read(f).unwrap()).unwrap();
        let t = std::time::Instant::now();
        let book = book::Book::new(&p);
        let wall = match one::codes(&photo.luma, &p, &book) {
            Ok(w) => w,
            Err(e) => {
                println!("{f}: {e}");
                continue;
            }
        };
        let t = t.elapsed();
        let truth: serde_json::Value =
            serde_json::from_slice(&std::fs::read(f.replace(".jpg", ".truth.json")).unwrap()).unwrap();
        let reading = everysquare::read::photo(&photo, &p, &book).unwrap();
        let untagged = !truth["tagged"].as_bool().unwrap();
        for (c, r) in truth["cells"].as_array().unwrap().iter().zip(&reading.cells) {
            let state = match r.sight.clone() {
                Sight::Square { home, turn } => {
                    if home == r.cell {
                        if turn == Turn::None { "right" } else { "turned" }
                    } else {
                        "wrong"
                    }
                }
                Sight::Stranger { .. } => "stranger",
                Sight::Empty => "empty",
                Sight::Unread => "unread",
                Sight::Unseen => "unseen",
            };
            let ok = c["state"] == state || c["accept"].as_array().unwrap().iter().any(|a| a == state);
            if !ok {
                println!("   STATE {} {} truth {} readable {}", c["label"], state, c["state"], c["readable"]);
            }
        }
        let _ = untagged;
        let (mut right, mut wrong, mut readable, mut extra) = (0, 0, 0, 0);
        let mut missed = Vec::new();
        let mut err = Vec::new();
        for c in truth["cells"].as_array().unwrap() {
            let site = place::Site { row: c["row"].as_i64().unwrap(), column: c["column"].as_i64().unwrap() };
            let label = c["label"].as_str().unwrap();
            let r = c["readable"].as_bool().unwrap();
            readable += usize::from(r);
            let cellpx: Vec<Point<PhotoPx>> = c["cell_px"]
                .as_array()
                .into_iter()
                .flatten()
                .map(|q| Point::new(q[0].as_f64().unwrap(), q[1].as_f64().unwrap()))
                .collect();
            let q = Cell { row: site.row as usize, column: site.column as usize };
            for (w, px) in p.grid.corners(q).iter().zip(&cellpx) {
                if let Some(b) = wall.camera.photo_to_wall(*px) {
                    err.push(b.distance(*w).value());
                }
            }
            match wall.squares.get(&site) {
                Some(s) => {
                    let book::Whose::Square(h) = s.found.whose.unwrap() else {
                        println!("card in cell");
                        continue;
                    };
                    let found = p.squares[p.grid.index(h)].label.clone();
                    if c["hung"].as_str() == Some(&found)
                        && c["hung_turn"].as_u64().unwrap_or(0) == u64::from(s.turn.degrees())
                    {
                        if r {
                            right += 1
                        } else {
                            extra += 1
                        }
                        let m = s.found.matched;
                        if std::env::var("STATS").is_ok() {
                            println!(
                                "STAT {r} {:.3} {:.3} {:.3} {:.1} {:.3} {:.3}",
                                m.score,
                                m.second,
                                m.shared,
                                m.likelier(),
                                m.strength,
                                m.explained()
                            );
                        }
                    } else {
                        wrong += 1;
                        println!(
                            "   WRONG {label}: {found} {:?} hung {} {} score {:.2} {:?}",
                            s.turn,
                            c["hung"],
                            c["hung_turn"],
                            s.found.matched.score,
                            (s.found.matched.likelier(), s.found.matched.strength, s.found.matched.shared)
                        );
                    }
                }
                None => {
                    if r {
                        missed.push(format!(
                            "{label} {:?}",
                            wall.nameless.get(&site).map(|s| (
                                s.found.matched.score,
                                (
                                    s.found.matched.likelier(),
                                    s.found.matched.strength,
                                    s.found.matched.shared
                                )
                            ))
                        ));
                    }
                }
            }
        }
        err.sort_by(f64::total_cmp);
        println!(
            "{f}: {t:?} readable {readable} right {right} extra {extra} wrong {wrong} cards {} corners mm median {:.2} max {:.1} k {:.3} {:.3} px/mod {:.2} missed {missed:?}",
            wall.cards,
            err[err.len() / 2],
            err[err.len() - 1],
            wall.camera.lens.k1,
            wall.camera.lens.k2,
            truth["px_per_module"]["median"]
        );
    }
}
