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

#[cfg(all(test, unix))]
mod tests {
    use std::process::Command;

    use proptest::prelude::*;

    use super::*;

    /// What a POSIX shell makes of a word.
    fn read_by_a_shell(word: &str) -> String {
        let read = Command::new("sh").arg("-c").arg(format!("printf %s {word}")).output().unwrap();
        assert!(read.status.success(), "{word}");
        String::from_utf8(read.stdout).unwrap()
    }

    #[test]
    fn a_shell_reads_the_name_that_was_meant() {
        for (name, typed) in [
            ("library-night", "library-night"),
            ("Library Night", "\"Library Night\""),
            ("Ana's night", "\"Ana's night\""),
            ("feria \"niños\"", "'feria \"niños\"'"),
            ("año nuevo", "\"año nuevo\""),
            ("año", "año"),
            ("Ana's \"$5\" night", r#"'Ana'\''s "$5" night'"#),
            ("a;b", "\"a;b\""),
            ("~", "\"~\""),
        ] {
            assert_eq!(as_typed(Path::new(name)), typed);
            assert_eq!(read_by_a_shell(typed), name);
        }
        assert_eq!(read_by_a_shell(&as_typed(Path::new("-dash"))), "./-dash");
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(40))]
        #[test]
        fn any_name_is_read_back(name in "[a-zñ \"'$`\\\\!~*?;&|<>(){}#\\[\\]%-]{1,12}") {
            let typed = as_typed(Path::new(&name));
            let read = read_by_a_shell(&typed);
            prop_assert_eq!(read.strip_prefix("./").filter(|_| name.starts_with('-')).unwrap_or(&read), name);
        }
    }
}
