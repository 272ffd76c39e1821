//! The order of handing out, on the sample's picture.

use std::path::Path;

use everysquare::picture::order::Band;
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::{Folder, Level};

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
