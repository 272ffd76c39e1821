//! The order of handing out, on the sample's picture.

use std::path::Path;

use everysquare::picture::order::Band;
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::{Folder, Grid, KeptFree, Level};

#[test]
fn half_of_the_pieces_are_most_of_the_picture_and_plain_ones_come_last() {
    let folder = Folder::at(Path::new("samples/harbour-evening"));
    let settings = folder.settings().unwrap();
    let picture = Picture::open(&folder.picture_bytes(&settings).unwrap()).unwrap();
    let facts =
        PictureFacts::of(&FewColours::chosen(&picture, &settings.picture), &settings.grid, &settings.levels);
    let half = facts.order.len() / 2;
    let part = |of: fn(&everysquare::picture::PieceFacts) -> f64, pieces: &[usize]| {
        pieces.iter().map(|piece| of(&facts.pieces[*piece])).sum::<f64>()
            / facts.pieces.iter().map(of).sum::<f64>()
    };
    let mut best: Vec<usize> = (0..facts.order.len()).collect();
    best.sort_by(|a, b| facts.pieces[*b].loss.total_cmp(&facts.pieces[*a].loss));
    let most = part(|piece| piece.loss, &best[..half]);
    let (edges, losses) =
        (part(|piece| piece.edge, &facts.order[..half]), part(|piece| piece.loss, &facts.order[..half]));
    println!(
        "the first half has {edges:.3} of the outlines and {losses:.3} of what is lost, of {most:.3} that half can have"
    );
    assert!(losses > most - 0.02 && edges > 0.5, "{edges} {losses} {most}");
    for own in &facts.pieces {
        assert!(own.level != Level::Plain || own.band == Band::Last);
    }
    let first: Vec<Level> =
        facts.order[..half * 2 / 3].iter().map(|piece| facts.pieces[*piece].level).collect();
    assert!(first.is_sorted_by(|a, b| a >= b), "the long ones first");
}

#[test]
fn a_border_is_handed_out_last_from_below_and_leaves_the_picture_its_levels_and_bands() {
    let folder = Folder::at(Path::new("samples/harbour-evening"));
    let settings = folder.settings().unwrap();
    let picture = Picture::open(&folder.picture_bytes(&settings).unwrap()).unwrap();
    let few = FewColours::chosen(&picture, &settings.picture);
    let grid = &settings.grid;
    let alone = PictureFacts::of(&few, grid, &settings.levels);
    let piece_px = usize::try_from(few.size().0).unwrap() / grid.columns;
    let (whole, all) = (few.with_border(grid, piece_px), grid.with_border());
    let facts = PictureFacts::of(&whole, &all, &settings.levels);
    let within: Vec<_> = all.cells().filter(|cell| !all.in_border(*cell)).collect();
    for (own, cell) in alone.pieces.iter().zip(&within) {
        let same = &facts.pieces[all.index(*cell)];
        assert_eq!((same.level, same.regions, &same.pencils), (own.level, own.regions, &own.pencils));
    }
    assert!((facts.shape - alone.shape).abs() < 1e-12);
    let (work, without) = (facts.work(), alone.work());
    assert_eq!((work.pieces, work.reserve.iter().sum::<usize>()), (without.pieces, all.border_count()));
    let last: Vec<usize> = facts.in_reserve().collect();
    assert_eq!(last, facts.order[facts.order.len() - all.border_count()..]);
    assert!(last.iter().all(|piece| all.in_border(facts.pieces[*piece].cell)));
    let rows: Vec<usize> = last.iter().map(|piece| facts.pieces[*piece].cell.row).collect();
    assert!(rows.is_sorted_by(|a, b| a >= b), "from the lowest row up: {rows:?}");
    for band in Band::ALL {
        let of = |facts: &PictureFacts| facts.own().filter(|piece| piece.band == band).count();
        assert_eq!(of(&facts), of(&alone), "{band:?}");
    }
}

#[test]
fn a_piece_whose_spot_is_kept_free_is_handed_out_to_nobody() {
    let folder = Folder::at(Path::new("samples/harbour-evening"));
    let settings = folder.settings().unwrap();
    let picture = Picture::open(&folder.picture_bytes(&settings).unwrap()).unwrap();
    let few = FewColours::chosen(&picture, &settings.picture);
    let free = [settings.grid.cell("D4").unwrap(), settings.grid.cell("J8").unwrap()];
    let grid = Grid { kept_free: KeptFree::of(&free).unwrap(), ..settings.grid };
    let [with, all] = [grid, settings.grid].map(|grid| PictureFacts::of(&few, &grid, &settings.levels));
    assert_eq!((with.order.len(), all.order.len()), (78, 80));
    for (piece, own) in with.pieces.iter().enumerate() {
        let is_free = grid.is_kept_free(own.cell);
        assert_eq!(with.order.contains(&piece), !is_free);
        assert_eq!(own.band == Band::Never, is_free);
        assert_eq!(own.level, all.pieces[piece].level, "levels stay");
    }
    assert_eq!(with.work().pieces.iter().sum::<usize>(), 78);
}
