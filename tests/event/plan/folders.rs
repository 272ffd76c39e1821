//! The event folder: whole files or none, and a sentence for each thing that can be wrong.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use everysquare::plan::Folder;
use everysquare::plan::folder::FolderError;

fn names(folder: &Path) -> BTreeSet<String> {
    let entries = fs::read_dir(folder).unwrap();
    entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect()
}

#[test]
fn a_file_is_replaced_whole_and_nothing_else_stays() {
    let place = tempfile::tempdir().unwrap();
    let path = place.path().join("print/deep/manifest.json");
    Folder::write_whole(&path, b"one").unwrap();
    Folder::write_whole(&path, b"two").unwrap();
    assert_eq!(fs::read(&path).unwrap(), b"two");
    assert_eq!(names(path.parent().unwrap()).len(), 1);
}

#[test]
fn a_file_that_cannot_be_written_leaves_nothing_behind() {
    let place = tempfile::tempdir().unwrap();
    let target = place.path().join("taken");
    fs::create_dir_all(target.join("inside")).unwrap();
    assert!(Folder::write_whole(&target, b"x").is_err(), "a folder stands there");
    assert_eq!(names(place.path()), BTreeSet::from(["taken".to_owned()]));

    fs::write(place.path().join("file"), "").unwrap();
    let error = Folder::write_whole(&place.path().join("file/event.toml"), b"x").unwrap_err();
    assert!(matches!(error, FolderError::Write { .. }), "{error}");
}

/// Root may write anywhere, so this looks only where the system keeps its word.
#[cfg(unix)]
#[test]
fn a_folder_that_is_read_only_is_named() {
    use std::os::unix::fs::PermissionsExt;
    let place = tempfile::tempdir().unwrap();
    fs::set_permissions(place.path(), fs::Permissions::from_mode(0o555)).unwrap();
    if fs::write(place.path().join("probe"), "").is_ok() {
        println!("skipped: this user may write in a read-only folder");
        return;
    }
    let error = Folder::write_whole(&place.path().join("event.toml"), b"x").unwrap_err();
    assert!(matches!(error, FolderError::ReadOnly { .. }), "{error}");
}

#[test]
fn a_check_appears_whole_or_not_at_all() {
    let place = tempfile::tempdir().unwrap();
    let folder = Folder::at(place.path());
    let dropped = folder.new_check_folder("2031-05-04T18-30-00").unwrap();
    dropped.write("report.json", b"{}").unwrap();
    assert!(!folder.checks().join("2031-05-04T18-30-00").exists(), "not before it is finished");
    drop(dropped);
    assert!(names(&folder.checks()).is_empty());

    for expected in ["2031-05-04T18-30-00", "2031-05-04T18-30-00-2", "2031-05-04T18-30-00-3"] {
        let check = folder.new_check_folder("2031-05-04T18-30-00").unwrap();
        check.write("report.json", b"{}").unwrap();
        check.write("wall.jpg", b"").unwrap();
        let path = check.finish().unwrap();
        assert_eq!(path, folder.checks().join(expected));
        assert_eq!(names(&path), BTreeSet::from(["report.json".to_owned(), "wall.jpg".to_owned()]));
    }
    assert_eq!(names(&folder.checks()).len(), 3);
    for name in ["../x", "", ".", "a/b", "/x"] {
        assert!(folder.new_check_folder(name).is_err(), "{name:?}");
    }
}

#[test]
fn what_is_missing_or_wrong_gets_one_sentence_with_what_to_do() {
    let place = tempfile::tempdir().unwrap();
    let folder = Folder::at(place.path());
    let said = |result: Result<_, FolderError>| match result {
        Ok(()) => panic!("this should be refused"),
        Err(error) => error.to_string(),
    };
    assert!(said(folder.settings().map(drop)).contains("everysquare new"));
    fs::write(folder.event_toml(), "name = \"x\"\ntag = \"K7M\"\n[wall]\ncolumns = 2\nrows = 2\n").unwrap();
    let settings = folder.settings().unwrap();
    assert!(said(folder.printed().map(drop)).contains("everysquare print"));
    assert!(said(folder.picture_bytes(&settings).map(drop)).contains("picture.png"));
    fs::create_dir_all(folder.print()).unwrap();
    fs::write(folder.manifest_json(), r#"{"format":9}"#).unwrap();
    assert!(said(folder.printed().map(drop)).contains("format 9"));
    fs::write(folder.event_toml(), b"name = \"\xff\"").unwrap();
    assert!(said(folder.settings().map(drop)).contains("UTF-8"));
    fs::write(folder.event_toml(), vec![b'#'; (1 << 20) + 1]).unwrap();
    assert!(said(folder.settings().map(drop)).contains("larger than 1 MB"));
    fs::remove_file(folder.event_toml()).unwrap();
    fs::create_dir(folder.event_toml()).unwrap();
    assert!(said(folder.settings().map(drop)).contains("we can’t read"));
}

#[test]
fn an_event_toml_that_was_changed_after_printing_is_noticed() {
    let place = tempfile::tempdir().unwrap();
    let folder = Folder::at(place.path());
    let event = "name = \"x\"\ntag = \"K7M\"\n[wall]\ncolumns = 3\nrows = 2\n";
    let write = |text: &str| fs::write(folder.event_toml(), text).unwrap();
    write(event);
    let printed = folder.settings().unwrap().printed().unwrap();
    let manifest = super::manifests::manifest(&printed).to_json().unwrap();
    Folder::write_whole(&folder.manifest_json(), &manifest).unwrap();
    assert_eq!(folder.printed().unwrap(), printed);

    write(&event.replace("\"x\"", "\"y\""));
    assert_eq!(folder.printed().unwrap().name, "y", "a name may change");
    for (old, new) in [
        ("columns = 3", "columns = 4"),
        ("rows = 2", "rows = 3"),
        ("K7M", "K7N"),
        ("[wall]", "[wall]\nsquare_mm = 100"),
    ] {
        write(&event.replace(old, new));
        let error = folder.printed().unwrap_err();
        assert!(matches!(error, FolderError::Changed { .. }), "{new}: {error}");
        assert!(error.to_string().contains("print the kit again"));
    }
    write(&event.replace("[wall]", "[wall]\nrows_from = \"top\""));
    assert!(folder.printed().unwrap_err().to_string().contains("rows_from"));
}
