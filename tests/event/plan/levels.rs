//! Scores to levels.

use everysquare::plan::Level;
use everysquare::plan::settings::LevelSettings;
use proptest::prelude::*;

fn settings(balanced: bool, bounds: [f64; 3]) -> LevelSettings {
    LevelSettings { bounds, balanced, ..LevelSettings::default() }
}

#[test]
fn a_level_begins_at_its_bound() {
    let levels = settings(false, [1.0, 2.0, 3.0]).levels_of(&[0.0, 0.99, 1.0, 1.99, 2.0, 2.99, 3.0, 1e9]);
    let expected = [
        Level::Plain,
        Level::Plain,
        Level::Easy,
        Level::Easy,
        Level::Medium,
        Level::Medium,
        Level::Hard,
        Level::Hard,
    ];
    assert_eq!(levels, expected);
}

#[test]
fn balance_is_only_on_request_and_leaves_plain_pieces_plain() {
    let scores = [0.0, 0.0, 0.0, 20.0, 21.0, 22.0, 23.0, 24.0, 25.0];
    let bounded = LevelSettings::default().levels_of(&scores);
    assert_eq!(bounded.iter().filter(|level| **level == Level::Hard).count(), 6);
    let balanced = settings(true, [0.5, 3.0, 6.0]).levels_of(&scores);
    for level in [Level::Easy, Level::Medium, Level::Hard] {
        assert_eq!(balanced.iter().filter(|own| **own == level).count(), 2, "{level:?}");
    }
    assert!(balanced[..3].iter().all(|level| *level == Level::Plain));
}

proptest! {
    #[test]
    fn a_higher_score_never_has_a_lower_level(
        mut scores in proptest::collection::vec(0_u32..60, 0..120), balanced: bool, first in 0.1_f64..3.0, more in 0.1_f64..9.0,
    ) {
        scores.sort_unstable();
        let scores: Vec<f64> = scores.into_iter().map(|tenth| f64::from(tenth) / 4.0).collect();
        let levels = settings(balanced, [first, first + more, first + 2.0 * more]).levels_of(&scores);
        prop_assert!(levels.is_sorted());
        for (pair, level) in scores.windows(2).zip(levels.windows(2)) {
            prop_assert!(pair[0] != pair[1] || level[0] == level[1], "equal scores, equal levels");
        }
    }

    #[test]
    fn balanced_parts_differ_by_one_where_scores_do_not_repeat(count in 0_usize..100) {
        let scores: Vec<f64> = (0..count).map(|i| 1.0 + i as f64 / 7.0).collect();
        let levels = settings(true, [0.5, 3.0, 6.0]).levels_of(&scores);
        let parts = [Level::Easy, Level::Medium, Level::Hard].map(|level| levels.iter().filter(|own| **own == level).count());
        prop_assert_eq!(parts.iter().sum::<usize>(), count);
        prop_assert!(parts.iter().max().unwrap() - parts.iter().min().unwrap() <= 1, "{:?}", parts);
    }
}
