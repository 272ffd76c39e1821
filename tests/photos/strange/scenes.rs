//! Made walls, and what may be done to their photos: joined, kinked, printed small, shown on a screen.
//!
//! Whatever is done, the truth goes along: where in the new photo each square comes to lie.

use everysquare::frame::{PhotoPx, Point};
use everysquare::photo::{Luma, Photo};
use everysquare::picture::Picture;
use everysquare::plan::{Grid, Printed, Settings, Tag};
use everysquare::read::{PhotoReading, Sight};
use everysquare::rehearse::{Cards, Faults, Options, make};
use image::{Rgb, RgbImage};

use super::textures::byte;

/// What really hangs somewhere in a photo.
#[derive(Clone, Debug)]
pub struct Hung {
    /// The cell's middle.
    pub at: [f64; 2],
    /// Half the cell's width there.
    pub reach: f64,
    /// What people call the cell.
    pub cell: String,
    /// The square of the event `tag` that hangs there.
    pub square: Option<String>,
    /// How far it is turned, in degrees.
    pub turn: u32,
    /// Whose wall it is.
    pub tag: String,
}

/// A photo with its truth.
#[derive(Clone)]
pub struct Scene {
    pub picture: RgbImage,
    pub hung: Vec<Hung>,
}

/// What an event of so many cells has printed.
pub fn printed(tag: &str, columns: usize, rows: usize) -> Printed {
    let grid = Grid::usual(columns, rows);
    let mut settings = Settings::new("Strange".to_owned(), Tag::new(tag).unwrap(), grid);
    settings.code.module_mm = 1.2;
    settings.printed().unwrap()
}

/// A made wall with a few faults.
pub fn wall(printed: &Printed, seed: u64, width: usize, height: usize, cards: Cards) -> Scene {
    let picture = Picture::open(include_bytes!("../../../samples/harbour-evening/picture.png")).unwrap();
    let faults = Faults { swaps: 2, turns: 2, missing: 2, duplicates: 1, ..Faults::default() };
    let mut options = Options { width, height, cards, faults, ..Options::varied(seed) };
    options.pose.yaw_degrees /= 2.0;
    let made = make(printed, &picture, &options).unwrap();
    let hung = made.truth.cells.iter().filter_map(|cell| {
        let [a, b, c, d] = cell.cell_px?;
        let mean = |k: usize| (a[k] + b[k] + c[k] + d[k]) / 4.0;
        Some(Hung {
            at: [mean(0), mean(1)],
            reach: (b[0] - a[0]).hypot(b[1] - a[1]) / 2.0,
            cell: cell.label.clone(),
            square: cell.hung.clone().filter(|_| cell.stranger.is_none()),
            turn: cell.hung_turn,
            tag: printed.tag.clone(),
        })
    });
    Scene { picture: made.image, hung: hung.collect() }
}

impl Scene {
    /// As the reader gets it.
    pub fn photo(&self) -> Photo {
        photo(&self.picture)
    }

    /// The picture drawn anew: `back` leads from a place of the new one to one of the old, `there` the other way.
    pub fn redrawn(
        &self,
        width: u32,
        height: u32,
        back: impl Fn(f64, f64) -> (f64, f64),
        there: impl Fn(f64, f64) -> (f64, f64),
    ) -> Self {
        let picture = RgbImage::from_fn(width, height, |x, y| {
            let (x, y) = back(f64::from(x) + 0.5, f64::from(y) + 0.5);
            Rgb(sample(&self.picture, x, y).map(byte))
        });
        Self { picture, hung: self.moved(there) }
    }

    fn moved(&self, there: impl Fn(f64, f64) -> (f64, f64)) -> Vec<Hung> {
        let moved = |hung: &Hung| {
            let [x, y] = hung.at;
            let (right, _) = there(x + hung.reach, y);
            let (x, y) = there(x, y);
            Hung { at: [x, y], reach: right - x, ..hung.clone() }
        };
        self.hung.iter().map(moved).collect()
    }

    /// A smaller copy, each pixel the mean of those it stands for.
    pub fn shrunk(&self, by: f64) -> Self {
        let side = |n: u32| (f64::from(n) / by).floor() as u32;
        let (width, height) = (side(self.picture.width()), side(self.picture.height()));
        let fine = 3_u32;
        let picture = RgbImage::from_fn(width, height, |x, y| {
            let mut sum = [0.0; 3];
            for k in 0..fine * fine {
                let part = |at: u32, k: u32| (f64::from(at) + (f64::from(k) + 0.5) / f64::from(fine)) * by;
                let own = sample(&self.picture, part(x, k % fine), part(y, k / fine));
                sum = [0, 1, 2].map(|c| sum[c] + own[c] / f64::from(fine * fine));
            }
            Rgb(sum.map(byte))
        });
        Self { picture, hung: self.moved(|x, y| (x / by, y / by)) }
    }

    /// Another scene laid over this one with its top left corner at a place; what lies under it is gone.
    pub fn with(mut self, over: &Self, x: u32, y: u32) -> Self {
        image::imageops::replace(&mut self.picture, &over.picture, i64::from(x), i64::from(y));
        let (fx, fy) = (f64::from(x), f64::from(y));
        let (w, h) = (f64::from(over.picture.width()), f64::from(over.picture.height()));
        self.hung.retain(|hung| {
            let [hx, hy] = hung.at;
            !((fx..fx + w).contains(&hx) && (fy..fy + h).contains(&hy))
        });
        self.hung.extend(over.moved(|x, y| (x + fx, y + fy)));
        self
    }

    /// Nothing hangs there: a picture of something else.
    pub fn of(picture: RgbImage) -> Self {
        Self { picture, hung: Vec::new() }
    }

    /// Every pixel changed.
    pub fn changed(mut self, change: impl Fn(u32, u32, [u8; 3]) -> [u8; 3]) -> Self {
        for (x, y, pixel) in self.picture.enumerate_pixels_mut() {
            pixel.0 = change(x, y, pixel.0);
        }
        self
    }
}

/// A picture as the reader gets it.
pub fn photo(picture: &RgbImage) -> Photo {
    Photo { luma: Luma::of(picture), colour: picture.clone(), taken: None, made: false }
}

/// The colour between pixels; white beyond the edge.
fn sample(picture: &RgbImage, x: f64, y: f64) -> [f64; 3] {
    let (x, y) = (x - 0.5, y - 0.5);
    let (i, j) = (x.floor(), y.floor());
    let at = |di: f64, dj: f64| -> [f64; 3] {
        let (px, py) = (i + di, j + dj);
        let inside =
            px >= 0.0 && py >= 0.0 && px < f64::from(picture.width()) && py < f64::from(picture.height());
        if inside { picture.get_pixel(px as u32, py as u32).0.map(f64::from) } else { [240.0; 3] }
    };
    let (a, b, c, d) = (at(0.0, 0.0), at(1.0, 0.0), at(0.0, 1.0), at(1.0, 1.0));
    let (fx, fy) = (x - i, y - j);
    [0, 1, 2].map(|k| {
        let (top, bottom) = (a[k] + (b[k] - a[k]) * fx, c[k] + (d[k] - c[k]) * fx);
        top + (bottom - top) * fy
    })
}

/// What a screen makes of a picture: every pixel of it three stripes, red, green and blue, with a dark gap below, seen by a
/// camera to which one of its pixels is `size` px wide, turned by a few degrees.
pub fn on_a_screen(scene: &Scene, size: f64, degrees: f64) -> Scene {
    let (sine, cosine) = degrees.to_radians().sin_cos();
    let (w, h) = (f64::from(scene.picture.width()), f64::from(scene.picture.height()));
    let (width, height) = ((w * size * 1.05) as u32, (h * size * 1.05) as u32);
    let middle = (f64::from(width) / 2.0, f64::from(height) / 2.0);
    let back = |x: f64, y: f64| {
        let (x, y) = ((x - middle.0) / size, (y - middle.1) / size);
        (w / 2.0 + x * cosine + y * sine, h / 2.0 - x * sine + y * cosine)
    };
    let there = |x: f64, y: f64| {
        let (x, y) = (x - w / 2.0, y - h / 2.0);
        (middle.0 + (x * cosine - y * sine) * size, middle.1 + (x * sine + y * cosine) * size)
    };
    let fine = 5_u32;
    let picture = RgbImage::from_fn(width, height, |px, py| {
        let mut sum = [0.0; 3];
        for k in 0..fine * fine {
            let part = |at: u32, k: u32| f64::from(at) + (f64::from(k) + 0.5) / f64::from(fine);
            let (x, y) = back(part(px, k % fine), part(py, k / fine));
            if x < 0.0 || y < 0.0 || x >= w || y >= h || y.fract() > 0.8 {
                continue;
            }
            let stripe = (x.fract() * 3.0) as usize;
            let own = f64::from(scene.picture.get_pixel(x as u32, y as u32).0[stripe.min(2)]);
            sum[stripe.min(2)] += own * 3.0 / 0.8 / f64::from(fine * fine);
        }
        Rgb(sum.map(byte))
    });
    Scene { picture, hung: scene.moved(there) }
}

/// How many squares a reading names, and what it says that is not so.
pub fn wrong(printed: &Printed, scene: &Scene, reading: &PhotoReading) -> (usize, Vec<String>) {
    let mut named = 0;
    let mut wrong = Vec::new();
    for cell in &reading.cells {
        let Sight::Square { home, turn } = &cell.sight else { continue };
        named += 1;
        let own = printed.grid.label(cell.cell);
        let (home, degrees) = (printed.grid.label(*home), turn.degrees());
        let corners = cell.corners.unwrap();
        let middle = corners[0].towards(corners[2], 0.5);
        let away = |hung: &&Hung| {
            middle.distance(Point::<PhotoPx>::new(hung.at[0], hung.at[1])).value() / hung.reach
        };
        let nearest = scene.hung.iter().min_by(|a, b| away(a).total_cmp(&away(b)));
        let right = nearest.is_some_and(|hung| {
            let there = away(&hung) < 1.0 && hung.tag == printed.tag;
            there && hung.square.as_ref() == Some(&home) && hung.turn == degrees && hung.cell == own
        });
        if !right {
            let truth = nearest.map(|hung| format!("{hung:?}, {:.2} away", away(&hung)));
            wrong.push(format!(
                "{own}: {home} {degrees}, certainty {:.4}; in truth {truth:?}",
                cell.certainty
            ));
        }
    }
    (named, wrong)
}
