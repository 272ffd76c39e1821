//! The templates that come with the program.

/// Each with its name: that of its document, or that under which others import it.
const BUILT_IN: [(&str, &str); 39] = [
    ("answers", include_str!("templates/answers.typ")),
    ("blocks", include_str!("templates/blocks.typ")),
    ("edge-cards", include_str!("templates/edge-cards.typ")),
    ("common", include_str!("templates/common.typ")),
    ("drawings", include_str!("templates/drawings.typ")),
    ("enlarged", include_str!("templates/enlarged.typ")),
    ("exhibits", include_str!("templates/exhibits.typ")),
    ("fill", include_str!("templates/fill.typ")),
    ("from-home", include_str!("templates/from-home.typ")),
    ("groups", include_str!("templates/groups.typ")),
    ("guide", include_str!("templates/guide.typ")),
    ("helpers", include_str!("templates/helpers.typ")),
    ("helped", include_str!("templates/helped.typ")),
    ("home", include_str!("templates/home.typ")),
    ("checklist", include_str!("templates/checklist.typ")),
    ("large", include_str!("templates/large.typ")),
    ("lesson", include_str!("templates/lesson.typ")),
    ("levels", include_str!("templates/levels.typ")),
    ("making-of", include_str!("templates/making-of.typ")),
    ("math-page", include_str!("templates/math-page.typ")),
    ("pairs", include_str!("templates/pairs.typ")),
    ("pencils", include_str!("templates/pencils.typ")),
    ("pictures", include_str!("templates/pictures.typ")),
    ("poster", include_str!("templates/poster.typ")),
    ("rehang", include_str!("templates/rehang.typ")),
    ("questions", include_str!("templates/questions.typ")),
    ("side-by-side", include_str!("templates/side-by-side.typ")),
    ("signs", include_str!("templates/signs.typ")),
    ("spare", include_str!("templates/spare.typ")),
    ("strips", include_str!("templates/strips.typ")),
    ("squares", include_str!("templates/squares.typ")),
    ("table-card", include_str!("templates/table-card.typ")),
    ("take-home", include_str!("templates/take-home.typ")),
    ("giving-back", include_str!("templates/giving-back.typ")),
    ("test-page", include_str!("templates/test-page.typ")),
    ("pieces", include_str!("templates/pieces.typ")),
    ("true-scale", include_str!("templates/true-scale.typ")),
    ("wall-map", include_str!("templates/wall-map.typ")),
    ("walls", include_str!("templates/walls.typ")),
];

/// The text of a template; empty for a name that there is not, which a test rules out.
pub(super) fn built_in(name: &str) -> &'static str {
    BUILT_IN.iter().find(|(own, _)| *own == name).map_or("", |(_, text)| text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_name_has_its_template() {
        let names = crate::print::template_names();
        assert_eq!(names.len(), BUILT_IN.len());
        assert!(names.iter().all(|name| built_in(name).len() > 100));
    }
}
