//! Frames, and the points, vectors and lengths that live in one of them.

use std::cmp::Ordering;
use std::marker::PhantomData;
use std::ops::{Add, Div, Mul, Neg, Sub};

/// Coordinate frame: a place for an origin, two axes and a unit. Implemented by marker types only.
pub trait Frame: Copy + Clone + std::fmt::Debug + PartialEq + Default + Send + Sync + 'static {
    /// Name with its unit; for messages and debugging.
    const NAME: &'static str;
}

macro_rules! frames {
    ($($(#[$about:meta])* $name:ident = $said:literal;)*) => {$(
        $(#[$about])*
        #[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
        pub struct $name;
        impl Frame for $name {
            const NAME: &'static str = $said;
        }
    )*};
}

frames! {
    /// Millimetres on a printed page from its top left corner; x right, y down.
    SheetMm = "sheet mm";
    /// Millimetres on one square of paper, held upright, from its top left corner; x right, y down.
    SquareMm = "square mm";
    /// Millimetres on the wall from the top left corner of the cell in column 0, row 0; x right, y down.
    WallMm = "wall mm";
    /// Modules within one code from its outer top left corner, 0 … 21 both ways; x right, y down.
    Module = "modules";
    /// Pixels of the picture that is redrawn, from its top left corner; a pixel's centre at ½.
    PicturePx = "picture px";
    /// Pixels of the photo as its file stores it, before it is turned upright; a pixel's centre at ½.
    TakenPx = "taken px";
    /// Pixels of the photo turned upright as its EXIF orientation says; a pixel's centre at ½.
    PhotoPx = "photo px";
    /// Pixels of the upright photo with the lens's distortion removed; straight lines of the wall are straight.
    StraightPx = "straight px";
    /// Pixels of the straightened picture of the wall; a pixel's centre at ½.
    DisplayPx = "display px";
}

/// A place in frame `F`.
///
/// Points of two frames do not meet:
///
/// ```compile_fail
/// use everysquare::frame::{Point, SheetMm, WallMm};
/// let a = Point::<SheetMm>::new(1.0, 2.0);
/// let b = Point::<WallMm>::new(1.0, 2.0);
/// let _ = a - b; // a sheet is not a wall
/// ```
#[derive(Copy, Clone, Debug, PartialEq, Default)]
pub struct Point<F: Frame> {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
    frame: PhantomData<F>,
}

/// A step in frame `F`: the difference of two points.
///
/// ```compile_fail
/// use everysquare::frame::{PhotoPx, Point, StraightPx, Vector};
/// let _ = Point::<PhotoPx>::new(0.0, 0.0) + Vector::<StraightPx>::new(1.0, 0.0);
/// ```
#[derive(Copy, Clone, Debug, PartialEq, Default)]
pub struct Vector<F: Frame> {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
    frame: PhantomData<F>,
}

/// A distance in the unit of frame `F`.
///
/// ```compile_fail
/// use everysquare::frame::{Length, Module, WallMm};
/// let _ = Length::<WallMm>::new(3.0) + Length::<Module>::new(3.0); // millimetres are not modules
/// ```
#[derive(Copy, Clone, Debug, PartialEq, Default)]
pub struct Length<F: Frame> {
    value: f64,
    frame: PhantomData<F>,
}

impl<F: Frame> Point<F> {
    /// Whether it lies within a convex outline of four corners, in order around it.
    #[must_use]
    pub fn is_within(self, corners: &[Self; 4]) -> bool {
        let side = |i: usize| (corners[(i + 1) % 4] - corners[i]).cross(self - corners[i]) > 0.0;
        (1..4).all(|i| side(i) == side(0))
    }

    /// The point at (`x`, `y`).
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y, frame: PhantomData }
    }

    /// The frame's origin.
    #[must_use]
    pub const fn origin() -> Self {
        Self::new(0.0, 0.0)
    }

    /// Distance of two points of one frame.
    #[must_use]
    pub fn distance(self, other: Self) -> Length<F> {
        (self - other).length()
    }

    /// Linear interpolation: the point a share `t` of the way to `other`; ½ is the middle.
    #[must_use]
    pub fn towards(self, other: Self, t: f64) -> Self {
        self + (other - self) * t
    }

    /// Whether both coordinates are finite numbers.
    #[must_use]
    pub fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite()
    }
}

impl<F: Frame> Vector<F> {
    /// The step of `x` to the right and `y` down.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y, frame: PhantomData }
    }

    /// Its length.
    #[must_use]
    pub fn length(self) -> Length<F> {
        Length::new(self.x.hypot(self.y))
    }

    /// The scalar product.
    #[must_use]
    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// The z component of the cross product: positive where `other` lies clockwise of `self` as seen (y is down).
    #[must_use]
    pub fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    /// Vector turned clockwise, as seen, by an angle in radians.
    #[must_use]
    pub fn turned(self, radians: f64) -> Self {
        let (sin, cos) = radians.sin_cos();
        Self::new(self.x * cos - self.y * sin, self.x * sin + self.y * cos)
    }
}

impl<F: Frame> Length<F> {
    /// A length of `value` units of the frame.
    #[must_use]
    pub const fn new(value: f64) -> Self {
        Self { value, frame: PhantomData }
    }

    /// The number of units.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.value
    }
}

impl<F: Frame> Sub for Point<F> {
    type Output = Vector<F>;
    fn sub(self, other: Self) -> Vector<F> {
        Vector::new(self.x - other.x, self.y - other.y)
    }
}

impl<F: Frame> Add<Vector<F>> for Point<F> {
    type Output = Self;
    fn add(self, step: Vector<F>) -> Self {
        Self::new(self.x + step.x, self.y + step.y)
    }
}

impl<F: Frame> Sub<Vector<F>> for Point<F> {
    type Output = Self;
    fn sub(self, step: Vector<F>) -> Self {
        Self::new(self.x - step.x, self.y - step.y)
    }
}

impl<F: Frame> Add for Vector<F> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }
}

impl<F: Frame> Sub for Vector<F> {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y)
    }
}

impl<F: Frame> Neg for Vector<F> {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.x, -self.y)
    }
}

impl<F: Frame> Mul<f64> for Vector<F> {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self::new(self.x * factor, self.y * factor)
    }
}

impl<F: Frame> Div<f64> for Vector<F> {
    type Output = Self;
    fn div(self, divisor: f64) -> Self {
        Self::new(self.x / divisor, self.y / divisor)
    }
}

// Derived, it would ask for an order of frames.
impl<F: Frame> PartialOrd for Length<F> {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        self.value.partial_cmp(&other.value)
    }
}

impl<F: Frame> Add for Length<F> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.value + other.value)
    }
}

impl<F: Frame> Sub for Length<F> {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.value - other.value)
    }
}

impl<F: Frame> Mul<f64> for Length<F> {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self::new(self.value * factor)
    }
}

impl<F: Frame> Div for Length<F> {
    type Output = f64;
    fn div(self, other: Self) -> f64 {
        self.value / other.value
    }
}
