//! Names of folders as sentences show them in commands, read back by a POSIX shell.

use std::path::Path;
use std::process::Command;

use proptest::prelude::*;

use everysquare::words::as_typed;

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
