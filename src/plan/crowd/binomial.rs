//! The binomial distribution: of `n` people each needs something with chance `p`, how many need it at once.
//!
//! Summed term by term in logarithms, so that neither tiny nor huge terms are lost; up to 500 people the error is below 10⁻¹².
//!
//! ```
//! use everysquare::plan::crowd::binomial::{cumulative, quantile};
//! assert!((cumulative(2, 0.5, 1) - 0.75).abs() < 1e-15);
//! assert_eq!(quantile(30, 0.2, 0.95), 10); // of 30 people, each with chance 1 in 5, more than 10 are rare
//! ```

use crate::frame::float;

/// The chance that at most `k` of `n` people need it, each with chance `p` (brought into 0 … 1).
#[must_use]
pub fn cumulative(n: usize, p: f64, k: usize) -> f64 {
    if k >= n {
        return 1.0;
    }
    terms(n, p).take(k + 1).sum::<f64>().min(1.0)
}

/// The smallest number of whom more need it with a chance of at most 1 − `sure`.
#[must_use]
pub fn quantile(n: usize, p: f64, sure: f64) -> usize {
    let mut sum = 0.0;
    for (k, term) in terms(n, p).enumerate() {
        sum += term;
        if sum >= sure {
            return k;
        }
    }
    n
}

/// The chances that exactly 0, 1, 2 … `n` people need it.
fn terms(n: usize, p: f64) -> impl Iterator<Item = f64> {
    let p = p.clamp(0.0, 1.0);
    let (ln_p, ln_rest) = (p.ln(), (-p).ln_1p());
    let mut ln_choose = 0.0;
    (0..=n).map(move |k| {
        if k > 0 {
            ln_choose += (float(n - k + 1) / float(k)).ln();
        }
        // 0 · ln 0 is 0: nobody of nobody
        let times = |count: usize, ln: f64| if count == 0 { 0.0 } else { float(count) * ln };
        (ln_choose + times(k, ln_p) + times(n - k, ln_rest)).exp()
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// By another way: Pascal's rule, one person after another.
    fn one_by_one(n: usize, p: f64) -> Vec<f64> {
        let mut chances = vec![1.0];
        for _ in 0..n {
            let mut next = vec![0.0; chances.len() + 1];
            for (k, chance) in chances.iter().enumerate() {
                next[k] += chance * (1.0 - p);
                next[k + 1] += chance * p;
            }
            chances = next;
        }
        chances
    }

    #[test]
    fn the_ends_are_exact() {
        assert_eq!((quantile(500, 0.0, 0.999), quantile(500, 1.0, 0.5), quantile(0, 0.3, 0.95)), (0, 500, 0));
        assert_eq!(
            (cumulative(500, 1.0, 499), cumulative(500, 0.0, 0), cumulative(7, 0.3, 7)),
            (0.0, 1.0, 1.0)
        );
    }

    proptest! {
        #[test]
        fn it_is_what_one_person_after_another_gives(n in 0_usize..=500, p in 0.0_f64..=1.0, k in 0_usize..=500) {
            let chances = one_by_one(n, p);
            let expected: f64 = chances.iter().take(k + 1).sum();
            prop_assert!((cumulative(n, p, k) - expected).abs() < 1e-11, "{} {expected}", cumulative(n, p, k));
        }

        #[test]
        fn a_quantile_is_the_first_that_is_sure_enough(n in 1_usize..=500, p in 0.001_f64..=0.999, sure in 0.01_f64..0.9999) {
            let k = quantile(n, p, sure);
            prop_assert!(cumulative(n, p, k) >= sure - 1e-12);
            prop_assert!(k == 0 || cumulative(n, p, k - 1) < sure + 1e-12);
        }

        #[test]
        fn more_people_more_chance_and_more_care_never_need_fewer(n in 1_usize..=499, p in 0.0_f64..=0.99, sure in 0.5_f64..0.99) {
            let k = quantile(n, p, sure);
            prop_assert!(quantile(n + 1, p, sure) >= k);
            prop_assert!(quantile(n, p + 0.01, sure) >= k);
            prop_assert!(quantile(n, p, sure + 0.009) >= k);
        }
    }
}
