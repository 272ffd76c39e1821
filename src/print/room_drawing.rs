//! The room as it is drawn: places in mm on the page, and words beside them.

use serde::Serialize;

use super::room::{Place, Room};

/// The drawing's height at most, in mm: the text around it fits the page then.
const MOST_HIGH_MM: f64 = 95.0;
/// Room around the room, in mm: for the words of the wall above it and of the doors beside it.
const MARGIN_MM: [f64; 4] = [7.0, 30.0, 8.0, 2.0];

/// What the template draws, in mm from the drawing's top left corner.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub(super) struct RoomDrawing {
    width: f64,
    height: f64,
    room: Place,
    wall: [f64; 2],
    phone: [f64; 2],
    tables: Vec<Place>,
    seats: Vec<Place>,
    hand_out: Place,
    doors: Vec<Place>,
    ways: Vec<Place>,
    /// The length of the scale's bar.
    bar: f64,
    words: Said,
}

/// The words in the drawing.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct Said {
    wall: String,
    phone: String,
    hand_out: String,
    exit: String,
    entrance: String,
    bar: String,
    size: String,
}

impl RoomDrawing {
    /// The width of a room that is drawn as large as can be, as a part of its depth, where the page has `width_mm`.
    pub fn shape(width_mm: f64) -> f64 {
        let [_, right, _, left] = MARGIN_MM;
        (width_mm - left - right) / MOST_HIGH_MM
    }

    /// As large as fits `width_mm`; `bar_m` is the length that the scale's bar shows; `say` gives the words of a part and a
    /// length in mm.
    pub fn of(room: &Room, width_mm: f64, bar_m: f64, say: impl Fn(&str, f64) -> String) -> Self {
        let [top, right, bottom, left] = MARGIN_MM;
        let mm_a_metre = ((width_mm - left - right) / room.width).min(MOST_HIGH_MM / room.depth);
        let on_page = |place: &Place| Place {
            x: left + place.x * mm_a_metre,
            y: top + place.y * mm_a_metre,
            width: place.width * mm_a_metre,
            height: place.height * mm_a_metre,
        };
        let x = |metres: f64| left + metres * mm_a_metre;
        let all = |places: &[Place]| places.iter().map(on_page).collect::<Vec<_>>();
        let whole = Place { x: 0.0, y: 0.0, width: room.width, height: room.depth };
        Self {
            width: left + room.width * mm_a_metre + right,
            height: top + room.depth * mm_a_metre + bottom,
            room: on_page(&whole),
            wall: room.wall.map(x),
            phone: [x(room.phone[0]), top + room.phone[1] * mm_a_metre],
            tables: all(&room.tables),
            seats: all(&room.seats),
            hand_out: on_page(&room.hand_out),
            doors: all(&room.doors),
            ways: all(&room.ways),
            bar: bar_m * mm_a_metre,
            words: Said {
                wall: say("wall", (room.wall[1] - room.wall[0]) * 1e3),
                phone: say("phone", room.phone[1] * 1e3),
                hand_out: say("hand-out", 0.0),
                exit: say("exit", 0.0),
                entrance: say("entrance", 0.0),
                bar: say("bar", bar_m * 1e3),
                size: say("size", room.width * 1e3),
            },
        }
    }
}
