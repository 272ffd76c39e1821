//! The names of event.toml.

/// Every name that event.toml may hold, with the table it stands in.
pub(super) const KNOWN: [(&str, &[&str]); 10] = [
    (
        "",
        &[
            "name",
            "tag",
            "language",
            "second_language",
            "picture",
            "pencils",
            "wall",
            "parts",
            "code",
            "print",
            "levels",
            "pieces",
            "evening",
        ],
    ),
    ("picture", &["file", "credit", "colours"]),
    ("pencils", &["name", "srgb"]),
    ("wall", &["columns", "rows", "piece_mm", "square_mm", "rows_from", "border", "keep_free"]),
    ("parts", &["from", "to", "place", "bottom_mm", "board"]),
    ("code", &["module_mm", "corner", "inset_mm"]),
    ("print", &["paper", "flip", "units", "join"]),
    ("levels", &["names", "bounds", "balanced"]),
    ("pieces", &["label", "level"]),
    (
        "evening",
        &[
            "visitors",
            "arrivals",
            "pieces_each",
            "start",
            "end",
            "minutes",
            "seats",
            "giving_out",
            "hanging",
            "giving_out_seconds",
            "hanging_seconds",
            "hang_mm",
            "wall",
            "minutes_a_piece",
        ],
    ),
];

/// The names of [`KNOWN`] that are lists of tables, `[[…]]`.
pub(super) const LISTS: [&str; 3] = ["pencils", "parts", "pieces"];
