//! A path as it is typed in a command that a sentence shows, so that the command works when it is pasted.

use std::path::Path;

/// Characters, beside letters and digits of any script, that no shell reads as anything but themselves.
const HARMLESS: &str = "/._-+,:@%=";

/// One word of a command line for a POSIX shell, and on Windows for `PowerShell` and cmd: as it is where that is safe, in double
/// quotes where those do, in single quotes where a shell would read something into double ones (`$`, a backtick, `!`, `"`, `\`).
/// A name that begins with a dash, which would be an option, gets `./` before it.
///
/// ```
/// use everysquare::words::as_typed;
/// use std::path::Path;
/// assert_eq!(as_typed(Path::new("library-night")), "library-night");
/// assert_eq!(as_typed(Path::new("Library Night")), "\"Library Night\"");
/// assert_eq!(as_typed(Path::new("-dash")), "./-dash");
/// ```
#[must_use]
pub fn as_typed(path: &Path) -> String {
    let shown = path.display().to_string();
    let word = if shown.starts_with('-') { format!("./{shown}") } else { shown };
    let is_harmless = |c: char| c.is_alphanumeric() || HARMLESS.contains(c) || (cfg!(windows) && c == '\\');
    if !word.is_empty() && word.chars().all(is_harmless) {
        return word;
    }
    if cfg!(windows) {
        // no name there holds a double quote; a backslash before the closing one would escape it
        let end = if word.ends_with('\\') { "\\" } else { "" };
        return format!("\"{word}{end}\"");
    }
    if word.contains(['$', '`', '!', '"', '\\']) {
        format!("'{}'", word.replace('\'', r"'\''"))
    } else {
        format!("\"{word}\"")
    }
}
