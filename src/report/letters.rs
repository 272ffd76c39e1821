//! The letters of pages on a screen: Atkinson Hyperlegible, cut down to what the program's languages need (`tools/letters.sh`; licence
//! in `src/report/letters/OFL.txt`).

/// Regular and bold: a name for a link, and a WOFF 2 file (W3C Recommendation, 2022).
pub const LETTERS: [(&str, &[u8]); 2] = [
    ("letters-regular.woff2", include_bytes!("letters/regular.woff2")),
    ("letters-bold.woff2", include_bytes!("letters/bold.woff2")),
];
