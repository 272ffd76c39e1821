//! Squares that lie somewhere, found from the helpers' page.

use std::path::Path;

use image::GenericImageView;
use serde_json::Value;

use super::running::{Answer, Running, as_real, event, photo};
use crate::common::everysquare;

const PHONE: &str = "\r\nx-helper: aaaaaaaaaaaa";
const OTHER: &str = "\r\nx-helper: bbbbbbbbbbbb";

/// The left or the right half of a made photo, as a JPEG file that passes for a real one.
fn half(whole: &[u8], right: bool) -> Vec<u8> {
    let photo = image::load_from_memory(whole).unwrap();
    let (width, height) = photo.dimensions();
    let part = photo.crop_imm(if right { width / 2 } else { 0 }, 0, width / 2, height);
    let mut bytes = std::io::Cursor::new(Vec::new());
    part.write_to(&mut bytes, image::ImageFormat::Jpeg).unwrap();
    bytes.into_inner()
}

fn send(running: &Running, secret: &str, file: &[u8], headers: &str) -> Answer {
    let at = running.at;
    running.ask(&format!("POST /{secret}/table HTTP/1.1\r\nhost: {at}\r\norigin: http://{at}{headers}"), file)
}

fn told(running: &Running, file: &[u8], headers: &str) -> Value {
    let answer = send(running, &running.helpers, file, headers);
    assert_eq!(answer.status, 200, "{}", String::from_utf8_lossy(&answer.body));
    serde_json::from_slice(&answer.body).unwrap()
}

fn here(told: &Value) -> usize {
    told["here"].as_array().unwrap().len()
}

#[test]
fn photos_of_a_table_count_together_for_each_phone_and_change_nothing_on_the_wall() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let running = Running::start(&folder, None, false);
    let whole = photo(&folder, "31", &[]);
    let [left, right] = [false, true].map(|side| half(&whole, side));
    let first = told(&running, &left, PHONE);
    let both = told(&running, &right, PHONE);
    let alone = told(&running, &right, OTHER);
    assert!(here(&first) >= 6 && here(&both) > here(&first).max(here(&alone)), "{first} {both} {alone}");
    assert_eq!(both["photos"], "Seen in 2 photos together");
    let again = told(&running, &left, &format!("{PHONE}\r\nx-table: first"));
    assert_eq!(again["here"], first["here"]);
    assert!(again["say"].as_str().unwrap().ends_with("of 20 squares are here."), "{again}");
    let picture = running.get(&format!("/{}/table/{}", running.helpers, again["number"]));
    let drawn = image::load_from_memory(&picture.body).unwrap();
    let sent = image::load_from_memory(&left).unwrap();
    assert_eq!((picture.status, drawn.dimensions()), (200, sent.dimensions()));
    assert_eq!(running.wall()["began"], false, "nothing is said of the wall");
    assert!(!folder.join("checks").exists() && !folder.join("found").exists());
}

#[test]
fn what_is_no_photo_of_this_event_s_squares_is_said_and_the_room_has_no_table() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path());
    let running = Running::start(&folder, None, false);
    let post = |secret: &str, file: &[u8], headers: &str| {
        let answer = send(&running, secret, file, headers);
        (answer.status, String::from_utf8_lossy(&answer.body).into_owned())
    };
    let helpers = running.helpers.as_str();
    let blank = {
        let mut bytes = std::io::Cursor::new(Vec::new());
        let grey = image::RgbImage::from_fn(900, 700, |x, y| {
            image::Rgb([120 + u8::try_from((x * 7 + y * 13) % 90).unwrap(); 3])
        });
        grey.write_to(&mut bytes, image::ImageFormat::Jpeg).unwrap();
        bytes.into_inner()
    };
    let (status, said) = post(helpers, &blank, PHONE);
    assert!(status == 422 && said.contains("any of this event’s squares"), "{status} {said}");
    let (status, said) = post(helpers, b"Dear helper, this is no photo.", PHONE);
    assert!(status == 422 && said.contains("as a photo"), "{status} {said}");
    let other = strangers(place.path());
    let (status, said) = post(helpers, &other, PHONE);
    assert!(status == 422 && said.contains("another event (tag H4B)"), "{status} {said}");
    assert_eq!(post(helpers, &other, "").0, 400, "a phone without a token has no table");
    assert_eq!(post(&running.room, b"x", PHONE).0, 404);
    for path in ["table/1", "table/x", "table/-1", "table/99999999999999999999"] {
        assert_eq!(running.get(&format!("/{helpers}/{path}")).status, 404, "{path}");
    }
}

/// A made photo of the wall of another event.
fn strangers(place: &Path) -> Vec<u8> {
    let (folder, picture) = (place.join("other"), place.join("balloons.png"));
    let at = folder.to_str().unwrap();
    let words =
        ["new", at, "--picture", picture.to_str().unwrap(), "--columns", "5", "--rows", "4", "--tag", "H4B"];
    assert_eq!(everysquare(&words).0, 0);
    assert_eq!(everysquare(&["print", at]).0, 0);
    let size = ["--width", "2400", "--height", "1800"];
    assert_eq!(everysquare(&[&["rehearse", at, "--seed", "4"][..], &size].concat()).0, 0);
    as_real(&std::fs::read(folder.join("rehearsals/4.jpg")).unwrap())
}
