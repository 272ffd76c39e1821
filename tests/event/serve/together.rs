//! What helpers share: ticks, claims, pieces, undo.

use everysquare::plan::Folder;
use everysquare::serve::Evening;
use everysquare::words::Words;
use serde_json::Value;

use super::running::{Running, clock, event, photo, states};

const ONE: &str = "aaaabbbb1111";
const OTHER: &str = "ccccdddd2222";

/// A step as a phone marks it.
fn mark(step: &Value, state: &str) -> String {
    serde_json::json!({ "key": step["key"], "seen": step["seen"], "state": state }).to_string()
}

#[test]
fn phones_share_one_list_that_survives_a_restart_and_falls_with_a_newer_photo() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let photo = photo(&folder, "3", &["--swaps", "2", "--missing", "3"]);
    let since = Some("2027-01-15_00.00.00");
    let server = Running::start(&folder, since, false);
    let wall = server.send(&photo, "").json();
    let (step, piece) = (&wall["steps"][0], &wall["missing"][0]["pieces"][0]);
    assert_eq!(wall["steps"].as_array().unwrap().len(), 2);

    assert_eq!(server.post("step", ONE, &mark(step, "mine")).json()["steps"][0]["state"], "mine");
    assert_eq!(server.wall_of(OTHER)["steps"][0]["state"], "theirs");
    assert!(
        !server
            .get(&format!("/{}/wall.json", server.helpers))
            .body
            .windows(12)
            .any(|part| part == ONE.as_bytes()),
        "nobody is told who"
    );
    let second = server.post("step", OTHER, &mark(step, "mine"));
    assert_eq!(second.status, 409);
    assert!(second.say().contains("Another phone"), "{}", second.say());

    let out = serde_json::json!({ "place": piece, "state": "out" }).to_string();
    let both: Vec<u16> = std::thread::scope(|scope| {
        let asked = [ONE, OTHER].map(|who| scope.spawn(|| server.post("piece", who, &out).status));
        asked.map(|one| one.join().unwrap()).to_vec()
    });
    assert_eq!(both.iter().filter(|status| **status == 200).count(), 1, "{both:?}");
    assert_eq!(both.iter().filter(|status| **status == 409).count(), 1, "{both:?}");

    let both: Vec<u16> = std::thread::scope(|scope| {
        let done = mark(&wall["steps"][1], "done");
        let asked = [ONE, OTHER].map(|who| {
            let (server, done) = (&server, done.clone());
            scope.spawn(move || server.post("step", who, &done).status)
        });
        asked.map(|one| one.join().unwrap()).to_vec()
    });
    assert_eq!(both, [200, 200], "two that tick the same step at once are both right");
    let kept = server.wall_of(ONE);
    drop(server);
    let again = Running::start(&folder, since, false);
    let wall = again.wall_of(ONE);
    assert_eq!((&wall["steps"], &wall["out"]), (&kept["steps"], &kept["out"]), "after a restart");
    assert_eq!(wall["steps"][1]["state"], "done");
    assert_eq!(again.get(&format!("/{}/marked.jpg", again.helpers)).status, 200, "and the photo is there");

    // another photo shows the same faults: what was ticked was not done
    let after = again.send(&photo, "").json();
    assert_eq!(after["steps"][1]["state"], "open");
    assert_eq!(again.wall_of(ONE)["steps"][0]["state"], "mine", "who is on the way stays on the way");
    let old = again.post("step", ONE, &mark(&wall["steps"][1], "done"));
    assert_eq!((old.status, old.say().contains("new")), (409, true), "a tick for a list of before");
}

#[test]
fn marks_that_are_no_marks_change_nothing() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let photo = photo(&folder, "3", &["--swaps", "1", "--missing", "1"]);
    let server = Running::start(&folder, None, false);
    let wall = server.send(&photo, "").json();
    let step = &wall["steps"][0];
    let long = format!("{{\"key\":\"{}\",\"seen\":1,\"state\":\"done\"}}", "a".repeat(5_000));
    let cases = [
        ("step", ONE, "", 400),
        ("step", ONE, "[]", 400),
        ("step", ONE, "{\"key\":\"x\"}", 400),
        ("step", ONE, &mark(step, "finished"), 400),
        ("step", "", &mark(step, "done"), 400),
        ("step", "AAAABBBB1111", &mark(step, "done"), 400),
        ("step", "<script>alert", &mark(step, "done"), 400),
        ("step", ONE, &long, 413),
        ("step", ONE, "{\"key\":\"swap:A1,B1\",\"seen\":1,\"state\":\"mine\",\"more\":1}", 400),
        ("step", ONE, "{\"key\":\"../../x\",\"seen\":1,\"state\":\"mine\"}", 409),
        ("piece", ONE, "{\"place\":-1,\"state\":\"out\"}", 400),
        ("piece", ONE, "{\"place\":18446744073709551615,\"state\":\"out\"}", 409),
        ("piece", ONE, "{\"place\":20,\"state\":\"back\"}", 409),
        ("undo", ONE, "{\"number\":17}", 409),
        ("undo", ONE, "{\"number\":0}", 409),
        ("undo", ONE, "null", 400),
    ];
    for (path, who, body, status) in cases {
        assert_eq!(server.post(path, who, body).status, status, "{path} {body}");
    }
    let after = server.wall();
    assert_eq!((&after["list"], &after["out"]), (&wall["list"], &wall["out"]));
    assert_eq!(after["steps"][0]["state"], "open");
}

#[test]
fn a_damaged_list_is_put_aside_and_the_evening_goes_on() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let list = folder.join(".helpers-list.json");
    for damaged in [&b"{\"format\":1,\"tag\""[..], b"\xff\xfe", b"", &vec![b' '; 2 << 20]] {
        std::fs::write(&list, damaged).unwrap();
        let open =
            || Evening::open(Folder::at(&folder), Words::english(), clock(), Some("2027"), false).unwrap();
        assert!(open().set_aside());
        assert!(!list.exists() && folder.join(".helpers-list-damaged.json").exists());
        assert!(!open().set_aside(), "said once");
    }
}

#[test]
fn the_last_photo_is_taken_back_once() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let (good, bad) =
        (photo(&folder, "3", &["--swaps", "1", "--missing", "2"]), photo(&folder, "4", &["--swaps", "4"]));
    let since = Some("2027-01-15_00.00.00");
    let server = Running::start(&folder, since, false);
    let nothing = server.wall();
    let before = server.send(&good, "").json();
    let after = server.send(&bad, "").json();
    assert_ne!(states(&before), states(&after));
    let undo = format!("{{\"number\":{}}}", after["number"]);
    let both: Vec<u16> = std::thread::scope(|scope| {
        let asked = [ONE, OTHER].map(|who| scope.spawn(|| server.post("undo", who, &undo).status));
        asked.map(|one| one.join().unwrap()).to_vec()
    });
    assert_eq!(both.iter().filter(|status| **status == 200).count(), 1, "{both:?}");
    let back = server.wall();
    assert_eq!(
        (states(&back), &back["steps"], &back["check"]),
        (states(&before), &before["steps"], &before["check"])
    );
    drop(server);
    let again = Running::start(&folder, since, false);
    assert_eq!(states(&again.wall()), states(&before), "the photo that was taken back is not gone on from");
    let number = again.wall()["number"].to_string();
    let first = again.post("undo", ONE, &format!("{{\"number\":{number}}}"));
    assert_eq!(
        (first.status, states(&first.json())),
        (200, states(&nothing)),
        "the one before, from the folder"
    );
    let number = again.wall()["number"].to_string();
    assert!(again.post("undo", ONE, &format!("{{\"number\":{number}}}")).say().contains("no photo"));
}
