//! Names that sentences once had, for words files that were written then.

/// Parts of names that changed wherever they stood: before, now.
const PARTS: [(&str, &str); 3] = [("tiles", "pieces"), ("tile", "piece"), ("ledger", "checklist")];

/// Names that changed otherwise: before, now. A name that is given up later is added here.
const NAMES: [(&str, &str); 0] = [];

/// The name that the sentence `id` has now, if it had another and the program knows the new one.
pub(super) fn renamed(id: &str, is_known: impl Fn(&str) -> bool) -> Option<String> {
    let by_list = NAMES.iter().find(|(before, _)| *before == id).map(|(_, now)| (*now).to_owned());
    let now = by_list.unwrap_or_else(|| id.split('-').map(part_now).collect::<Vec<_>>().join("-"));
    (now != id && is_known(&now)).then_some(now)
}

/// A part of a name as it is now.
fn part_now(part: &str) -> &str {
    PARTS.iter().find(|(before, _)| *before == part).map_or(part, |(_, now)| now)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_former_name_leads_to_the_one_of_today() {
        let known = |id: &str| ["print-checklist", "print-pieces", "event-piece-mm"].contains(&id);
        assert_eq!(renamed("print-ledger", known).as_deref(), Some("print-checklist"));
        assert_eq!(renamed("print-tiles", known).as_deref(), Some("print-pieces"));
        assert_eq!(renamed("event-tile-mm", known).as_deref(), Some("event-piece-mm"));
        assert_eq!(renamed("print-pieces", known), None);
        assert_eq!(renamed("tile-of-nothing", known), None);
    }

    #[test]
    fn every_name_in_the_list_leads_to_a_sentence() {
        let english = super::super::LANGUAGES[0].1;
        for (before, now) in NAMES {
            assert!(!english.contains(&format!("\n{before} =")), "{before} is still there");
            assert!(english.contains(&format!("\n{now} =")), "{now} is not there");
        }
    }
}
