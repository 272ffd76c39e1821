//! The middle of some values.

use std::cmp::Ordering;

/// Median; of an even number of values the upper of the two in the middle; `None` of nothing.
#[must_use]
pub fn median(values: Vec<f64>) -> Option<f64> {
    median_by(values, f64::total_cmp)
}

/// The same of values of any kind, in an order.
#[must_use]
pub fn median_by<T: Copy>(mut values: Vec<T>, order: fn(&T, &T) -> Ordering) -> Option<T> {
    let middle = values.len() / 2;
    (!values.is_empty()).then(|| *values.select_nth_unstable_by(middle, order).1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn it_is_what_stands_in_the_middle_of_the_sorted_values(values in proptest::collection::vec(-1e9_f64..1e9, 0..40)) {
            let mut sorted = values.clone();
            sorted.sort_by(f64::total_cmp);
            prop_assert_eq!(median(values), sorted.get(sorted.len() / 2).copied());
        }
    }
}
