//! The helper's page, in this process, over real connections of this computer with itself.

mod prints;
mod running;
mod table;
mod together;

use std::io::{Read, Write};
use std::net::{Ipv4Addr, TcpStream};
use std::path::Path;
use std::time::Duration;

use crate::common::everysquare;
use everysquare::judge::Act;
use everysquare::plan::code::LinkCode;
use everysquare::report::Report;
use running::{Running, answer, as_real, checks, event, photo, practice_photo, states};

#[test]
fn without_the_secret_there_is_nothing_and_with_it_only_what_is_asked_properly() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let server = Running::start(&folder, None, false);
    let (helpers, room) = (&server.helpers, &server.room);
    let wrong = "a".repeat(helpers.len());
    let mut bodies = Vec::new();
    let paths = [
        "/".to_owned(),
        "/favicon.ico".to_owned(),
        format!("/{wrong}/"),
        format!("/{}/", &helpers[1..]),
        format!("/x/{helpers}/"),
        format!("//{helpers}/"),
        "/../../../etc/passwd".to_owned(),
    ];
    let behind = [
        format!("/{helpers}/../event.toml"),
        format!("/{helpers}/%2e%2e/event.toml"),
        format!("/{helpers}/cell/80"),
        format!("/{helpers}/cell/-1"),
        format!("/{helpers}/piece/..%2f..%2fevent.toml"),
        format!("/{helpers}/code.svg"),
        format!("/{helpers}/marked.jpg"),
        format!("/{helpers}/marked-large.jpg"),
        format!("/{room}/cell/3"),
        format!("/{room}/code.svg"),
        format!("/{room}/marked.jpg"),
        format!("/{room}/accent.css"),
    ];
    for path in paths.iter().chain(&behind) {
        let answer = server.get(path);
        assert_eq!(answer.status, 404, "{path}");
        for header in [
            "content-security-policy: default-src 'none'",
            "x-frame-options: deny",
            "referrer-policy: no-referrer",
            "cache-control: no-store",
        ] {
            assert!(answer.head.contains(header), "{path}: {}", answer.head);
        }
        bodies.push(answer.body);
    }
    let (nowhere, nothing) = bodies.split_at(paths.len());
    assert!(
        nowhere.iter().all(|body| *body == nowhere[0]),
        "without the secret the answer is always the same"
    );
    let said = String::from_utf8(nowhere[0].clone()).unwrap();
    assert!(
        said.contains("Scan the QR code") && said.contains("Escanee") && !said.contains("Wall of"),
        "{said}"
    );
    assert!(nothing.iter().all(Vec::is_empty));
    for (secret, page) in [(helpers, "phone.js"), (room, "room.js")] {
        let answer = server.get(&format!("/{secret}/"));
        assert_eq!(answer.status, 200);
        assert!(String::from_utf8(answer.body).unwrap().contains(page));
        assert_eq!(server.get(&format!("/{secret}/{page}")).status, 200);
    }
    assert!(checks(&folder).is_empty());
}

#[test]
fn with_the_secret_host_and_origin_have_to_be_the_pages_own() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let server = Running::start(&folder, None, false);
    let (helpers, room, at) = (&server.helpers, &server.room, server.at);
    let wrong = "a".repeat(helpers.len());
    let slashless = server.get(&format!("/{helpers}"));
    assert_eq!(slashless.status, 308);
    assert!(slashless.head.contains(&format!("location: /{helpers}/")), "{}", slashless.head);
    assert_eq!(server.ask(&format!("GET /{helpers} HTTP/1.1\r\nhost: example.org"), b"").status, 421);
    assert_eq!(server.ask(&format!("GET /{helpers}/ HTTP/1.1\r\nhost: example.org"), b"").status, 421);
    assert_eq!(server.ask(&format!("GET /{helpers}/ HTTP/1.1\r\nhost: {at}\r\nhost: {at}"), b"").status, 421);
    assert_eq!(server.ask(&format!("GET /{wrong}/ HTTP/1.1\r\nhost: example.org"), b"").status, 404);
    let post = |path: &str, origin: &str| {
        server.ask(&format!("POST /{path} HTTP/1.1\r\nhost: {at}{origin}"), b"no photo").status
    };
    assert_eq!(post(&format!("{helpers}/photo"), ""), 403);
    assert_eq!(post(&format!("{helpers}/photo"), "\r\norigin: http://example.org"), 403);
    assert_eq!(post(&format!("{helpers}/photo"), "\r\norigin: null"), 403);
    assert_eq!(post(&format!("{room}/photo"), &format!("\r\norigin: http://{at}")), 404);
    assert_eq!(post(&format!("{wrong}/photo"), &format!("\r\norigin: http://{at}")), 404);
    for path in ["step", "piece", "undo"] {
        let body = br#"{"number":0}"#;
        let post = |secret: &str, origin: &str| {
            server.ask(&format!("POST /{secret}/{path} HTTP/1.1\r\nhost: {at}{origin}"), body).status
        };
        let own = format!("\r\norigin: http://{at}");
        assert_eq!(
            (post(helpers, ""), post(helpers, "\r\norigin: http://example.org")),
            (403, 403),
            "{path}"
        );
        assert_eq!((post(room, &own), post(&wrong, &own)), (404, 404), "{path}");
        assert_eq!(post(helpers, &own), 400, "{path}: no token");
    }
    assert!(checks(&folder).is_empty());
}

#[test]
fn a_photo_gives_the_check_that_the_command_gives_and_keeps_nothing_of_the_camera() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let faults = ["--swaps", "1", "--turns", "1", "--missing", "2", "--orientation", "6"];
    let photo = practice_photo(&folder, "3", &faults);
    let path = folder.join("rehearsals/3.jpg");
    everysquare(&["check", folder.to_str().unwrap(), path.to_str().unwrap()]);
    let of_command = checks(&folder).pop().unwrap();
    let server = Running::start(&folder, None, true);
    assert_eq!(server.wall()["began"], false);
    let answer = server.send(&photo, "");
    assert_eq!(answer.status, 200, "{}", String::from_utf8_lossy(&answer.body));
    let of_page = folder.join("checks").join(answer.json()["check"].as_str().unwrap());
    let read = |check: &Path| {
        Report::from_json(&std::fs::read_to_string(check.join("report.json")).unwrap()).unwrap()
    };
    let (command, page) = (read(&of_command), read(&of_page));
    assert_eq!((&command.cells, &command.fixes, &command.summary), (&page.cells, &page.fixes, &page.summary));
    assert_eq!(command.taken, page.taken);
    let steps = page.fixes.iter().filter(|fix| fix.act != Act::Fetch).count();
    assert!(steps >= 2);
    assert_eq!(answer.json()["steps"].as_array().unwrap().len(), steps, "what is missing is no step");
    assert_eq!(answer.json()["missing"][0]["pieces"].as_array().unwrap().len(), page.missing.len());
    let files = ["marked.jpg", "photo.jpg", "report.html", "report.json", "seen.json", "wall.jpg"];
    let mut names: Vec<String> = std::fs::read_dir(&of_page)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    assert_eq!(names, files);
    for name in ["photo.jpg", "wall.jpg", "marked.jpg"] {
        let bytes = std::fs::read(of_page.join(name)).unwrap();
        assert!(!bytes.windows(4).any(|four| four == b"Exif"), "{name} holds what the camera wrote");
    }
    let picture = server.get(&format!("/{}/cell/7", server.helpers));
    assert_eq!((picture.status, &picture.body[..2]), (200, &[0xff, 0xd8][..]));
    assert_eq!(server.get(&format!("/{}/wall.jpg", server.room)).status, 200);
    let room = server.get(&format!("/{}/wall.json", server.room)).json();
    assert_eq!(room["count"], 20 - page.summary.empty - page.summary.unseen);
    assert!(room.get("steps").is_none() && room.get("cells").is_none());
}

#[test]
fn what_cannot_be_read_is_told_and_nothing_is_written() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let photo = photo(&folder, "3", &[]);
    let server = Running::start(&folder, None, false);
    let grey = image::RgbImage::from_pixel(400, 300, image::Rgb([120, 130, 140]));
    let mut png = std::io::Cursor::new(Vec::new());
    grey.write_to(&mut png, image::ImageFormat::Png).unwrap();
    let cases: [(&[u8], &str); 6] = [
        (b"a letter, no photo", "this file as a photo"),
        (&photo[..photo.len() / 2], "cut off"),
        (b"\0\0\0\x18ftypheic\0\0\0\0mif1", "cut off"),
        (b"\0\0\0\x14ftypqt  \0\0\0\0qt  \0\0\0\x08free", "video"),
        (png.get_ref(), "small copy"),
        (&[0xff, 0xd8, 0xff, 0xe0, 1], "cut off"),
    ];
    for (bytes, wanted) in cases {
        let answer = server.send(bytes, "");
        assert_eq!(answer.status, 422);
        assert!(answer.say().contains(wanted), "{} for {wanted}", answer.say());
    }
    let (helpers, at) = (&server.helpers, server.at);
    let empty = server.ask(
        &format!("POST /{helpers}/photo HTTP/1.1\r\nhost: {at}\r\norigin: http://{at}\r\ncontent-length: 0"),
        b"",
    );
    assert!(empty.say().contains("empty"));
    let large = server.send(&vec![0; 50 << 20], "");
    assert_eq!(large.status, 413);
    assert!(large.say().contains("48 MB"));
    let mut chunked = server.connect();
    let head = format!(
        "POST /{helpers}/photo HTTP/1.1\r\nhost: {at}\r\norigin: http://{at}\r\ntransfer-encoding: chunked\r\nconnection: close\r\n\r\n"
    );
    chunked.write_all(head.as_bytes()).unwrap();
    for _ in 0..50 {
        chunked.write_all(b"100000\r\n").unwrap();
        chunked.write_all(&vec![7; 1 << 20]).unwrap();
        chunked.write_all(b"\r\n").unwrap();
    }
    chunked.write_all(b"0\r\n\r\n").unwrap();
    assert_eq!(answer(chunked).status, 413);
    assert!(checks(&folder).is_empty());
    assert_eq!(server.wall()["number"], 0);
}

#[test]
fn parts_of_a_wall_become_one_and_a_restart_goes_on_from_there() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let whole = photo(&folder, "3", &["--swaps", "1", "--missing", "3"]);
    let part = photo(&folder, "4", &["--turns", "1", "--fill", "1.5"]);
    let server = Running::start(&folder, Some("2027-01-15_00.00.00"), false);
    assert_eq!(server.send(&whole, "").status, 200);
    let after_whole = server.wall();
    let answer = server.send(&part, "").json();
    let mixed = states(&answer);
    assert_ne!(mixed, states(&after_whole));
    assert!(answer["cells"].as_array().unwrap().iter().all(|cell| cell["state"] != "unseen"));
    assert_eq!(checks(&folder).len(), 2);
    let late = server.send(&whole, "\r\nx-photo-age: 3600").json();
    assert!(late["note"].as_str().unwrap().contains("older"));
    assert_eq!(states(&late), mixed);
    drop(server);

    // a check that somebody spoiled, and one in the making, are passed over
    let name = "2027-01-15_08.00.01";
    std::fs::create_dir(folder.join("checks").join(name)).unwrap();
    std::fs::write(folder.join("checks").join(name).join("report.json"), "{").unwrap();
    std::fs::create_dir(folder.join("checks/.writing-x")).unwrap();
    let again = Running::start(&folder, Some("2027-01-15_00.00.00"), false);
    let wall = again.wall();
    assert_eq!((states(&wall), &wall["steps"], &wall["missing"]), (mixed, &late["steps"], &late["missing"]));
    assert_eq!(wall["check"], late["check"]);
    assert_eq!(again.send(&part, "").status, 200);
    let fresh = Running::start(&folder, None, false);
    assert_eq!(fresh.wall()["began"], false);
    let tomorrow = Running::start(&folder, Some("2027-01-16_00.00.00"), false);
    assert_eq!(tomorrow.wall()["began"], false);
}

#[test]
fn an_answer_that_cannot_be_kept_is_given_all_the_same() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let photo = photo(&folder, "3", &[]);
    std::fs::write(folder.join("checks"), "in the way").unwrap();
    let server = Running::start(&folder, None, false);
    let answer = server.send(&photo, "");
    assert_eq!(answer.status, 200);
    assert!(answer.json()["unkept"].as_str().unwrap().contains("couldn’t be saved"));
    assert_eq!(server.wall()["began"], true);
}

#[test]
fn too_many_at_once_are_asked_to_come_again_and_a_page_is_told_live() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let photo = photo(&folder, "3", &[]);
    let server = Running::start(&folder, None, false);
    let (helpers, at) = (&server.helpers, server.at);
    let mut live = server.connect();
    live.write_all(format!("GET /{helpers}/live HTTP/1.1\r\nhost: {at}\r\n\r\n").as_bytes()).unwrap();
    let head = format!(
        "POST /{helpers}/photo HTTP/1.1\r\nhost: {at}\r\norigin: http://{at}\r\ncontent-length: {}\r\nconnection: close\r\n\r\n",
        photo.len()
    );
    let waiting: Vec<TcpStream> = (0..12)
        .map(|_| {
            let mut stream = server.connect();
            stream.write_all(head.as_bytes()).unwrap();
            stream.write_all(&photo[..1000]).unwrap();
            stream
        })
        .collect();
    std::thread::sleep(Duration::from_millis(300));
    let refused = server.send(&photo, "");
    assert_eq!(refused.status, 503);
    assert!(refused.head.contains("retry-after: 5"), "{}", refused.head);
    // all send the rest at once: on a slow machine the last would be idle for too long while the others are read
    std::thread::scope(|scope| {
        let sent: Vec<_> = waiting
            .into_iter()
            .map(|mut stream| {
                let rest = &photo[1000..];
                scope.spawn(move || {
                    stream.write_all(rest).unwrap();
                    answer(stream).status
                })
            })
            .collect();
        for status in sent {
            assert_eq!(status.join().unwrap(), 200);
        }
    });
    assert_eq!(server.send(&photo, "").status, 200);
    let mut told = String::new();
    let mut part = [0; 4096];
    while !told.contains("data: 13") {
        let read = live.read(&mut part).unwrap();
        assert!(read > 0, "{told}");
        told.push_str(&String::from_utf8_lossy(&part[..read]));
    }
    assert!(told.contains("text/event-stream") && told.contains("data: 0"));
    assert_eq!(checks(&folder).len(), 13);
}

#[test]
fn the_code_says_the_link_and_shows_on_this_computer_where_phones_are_let_in() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let here = Running::start(&folder, None, false);
    assert_eq!(here.get(&format!("/{}/wall.json", here.room)).json()["code"], false);
    drop(here);
    let outer = Running::start_at(&folder, Some(Ipv4Addr::new(127, 0, 0, 2)), None, false);
    assert_eq!(outer.get(&format!("/{}/wall.json", outer.room)).json()["code"], true);
    let drawn = String::from_utf8(outer.get(&format!("/{}/code.svg", outer.room)).body).unwrap();
    let link = format!("http://{}/{}/", outer.at, outer.helpers);
    let code = LinkCode::new(&link).unwrap();
    let modules = drawn.split("h1v1h-1z").count() - 1;
    let dark = |x: usize, y: usize| code.dark(x.wrapping_sub(4), y.wrapping_sub(4));
    let side = code.side() + 8;
    assert_eq!(modules, (0..side * side).filter(|at| dark(at % side, at / side)).count());
    let grey = |x: usize, y: usize| if dark(x / 5, y / 5) { 20 } else { 240 };
    let mut read = rqrr::PreparedImage::prepare_from_greyscale(side * 5, side * 5, grey);
    assert_eq!(read.detect_grids()[0].decode().unwrap().1, link);
    let own = outer.get(&format!("/{}/code.svg", outer.helpers));
    assert_eq!((own.status, String::from_utf8(own.body).unwrap()), (200, drawn), "for the next helper");
    assert_eq!(outer.wall()["code"], true);
}

#[test]
fn a_small_copy_is_told_to_be_one() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let whole = photo(&folder, "3", &["--swaps", "1"]);
    let server = Running::start(&folder, None, false);
    let opened = image::load_from_memory(&whole).unwrap();
    let mut small = std::io::Cursor::new(Vec::new());
    opened.thumbnail(320, 320).write_to(&mut small, image::ImageFormat::Jpeg).unwrap();
    let told = server.send(small.get_ref(), "");
    assert!(told.say().contains("original") && told.say().contains("320"), "{}", told.say());
}

#[test]
fn a_slow_beginning_and_an_endless_one_are_cut_off() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let server = Running::start(&folder, None, false);
    let mut slow = server.connect();
    slow.write_all(b"GET / HT").unwrap();
    let mut rest = Vec::new();
    let begun = std::time::Instant::now();
    let _ = slow.read_to_end(&mut rest);
    assert!((8..20).contains(&begun.elapsed().as_secs()), "{:?}", begun.elapsed());
    let mut endless = server.connect();
    let _ = endless.write_all(b"GET /");
    let _ = (0..64).try_for_each(|_| endless.write_all(&[b'a'; 1024]));
    rest.clear();
    let _ = endless.read_to_end(&mut rest);
    assert!(rest.is_empty() || rest.starts_with(b"HTTP/1.1 4"), "{}", String::from_utf8_lossy(&rest));
    let many: Vec<TcpStream> = (0..60).map(|_| server.connect()).collect();
    std::thread::sleep(Duration::from_millis(200));
    drop(many);
    std::thread::sleep(Duration::from_millis(200));
    assert_eq!(server.get(&format!("/{}/", server.helpers)).status, 200, "and others still get in");
}

#[test]
fn what_keeps_the_command_from_serving_is_one_sentence() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let at = folder.to_str().unwrap();
    let nowhere = place.path().join("nowhere");
    let taken = std::net::TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).unwrap();
    let port = taken.local_addr().unwrap().port().to_string();
    let cases: [(&[&str], &str); 4] = [
        (&["serve", nowhere.to_str().unwrap()], "there’s no event in"),
        (&["serve", at, "--no-browser", "--port", &port], "is taken"),
        (&["serve", at, "--no-browser", "--address", "8.8.8.8"], "room’s own network"),
        (&["serve", at, "--no-browser", "--address", "10.255.255.254"], "not this laptop’s address"),
    ];
    for (words, wanted) in cases {
        let (code, out, err) = everysquare(words);
        assert_eq!(code, 2, "{out}");
        assert!(err.contains(wanted) && err.trim_end().lines().count() == 1, "{err}");
    }
    std::fs::remove_file(folder.join("print/manifest.json")).unwrap();
    let (code, _, err) = everysquare(&["serve", at]);
    assert!(code == 2 && err.contains("First run: everysquare print"), "{err}");
}

#[test]
fn practice_is_shown_and_never_counts_as_the_event() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let practice = practice_photo(&folder, "3", &["--missing", "2"]);
    let real = as_real(&practice_photo(&folder, "4", &["--missing", "12"]));
    let count = |server: &Running, state: &str| {
        let wall = server.wall();
        wall["cells"].as_array().unwrap().iter().filter(|cell| cell["state"] == state).count()
    };
    {
        let server = Running::start(&folder, Some(""), false);
        assert_eq!(server.send(&practice, "").status, 200);
        assert!(count(&server, "right") >= 12, "a practice photo is answered");
    }
    {
        let server = Running::start(&folder, Some(""), false);
        assert_eq!(server.wall()["began"], false, "nothing goes on from practice");
        assert_eq!(server.send(&practice, "").status, 200);
        // the first real photo ends the practice
        assert_eq!(server.send(&real, "").status, 200);
        assert!(count(&server, "right") <= 8, "what only practice showed hangs nowhere");
        let refused = server.send(&practice, "");
        assert_eq!(refused.status, 422);
        assert!(refused.say().contains("practice photo"), "{}", refused.say());
        assert!(count(&server, "right") <= 8);
    }
    let server = Running::start(&folder, Some(""), false);
    assert!((1..=8).contains(&count(&server, "right")), "the event goes on from its own last check");
}

#[test]
fn a_border_in_reserve_is_handed_out_and_never_asked_for() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let toml = folder.join("event.toml");
    let text = std::fs::read_to_string(&toml).unwrap();
    std::fs::write(&toml, text.replace("[wall]\n", "[wall]\nborder = true\n")).unwrap();
    let whole = photo(&folder, "3", &["--missing", "1"]);
    let server = Running::start(&folder, Some("2027-01-15_00.00.00"), false);
    let wall = server.send(&whole, "").json();
    let reserve = states(&wall).iter().filter(|state| state.contains("reserve")).count();
    assert_eq!(reserve, 5 * 4 - 3 * 2);
    let groups = wall["missing"].as_array().unwrap();
    let pieces = |name: &str| {
        let own = groups.iter().find(|group| group["level"] == name);
        own.map_or(0, |group| group["pieces"].as_array().unwrap().len())
    };
    assert_eq!(pieces("border in reserve"), 14, "{groups:?}");
    let say = wall["missing_say"].as_str().unwrap();
    assert!(say.starts_with("1 square"), "{say}");
    let room = server.get(&format!("/{}/wall.json", server.room)).json();
    assert_eq!(room["reserve"].as_array().unwrap().len(), 14);
    assert_eq!((room["count"].as_u64(), room["complete"].as_bool()), (Some(5), Some(false)));
    drop(server);
    let again = Running::start(&folder, Some("2027-01-15_00.00.00"), false);
    assert_eq!(states(&again.wall()), states(&wall));
}
