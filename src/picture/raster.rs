//! A value for every pixel, row by row.

/// A value for every pixel of a rectangle, row by row.
#[derive(Clone, Debug, PartialEq)]
pub struct Raster<T> {
    /// Pixels side by side.
    pub width: usize,
    /// The values, row by row; as many as width times height.
    pub values: Vec<T>,
}

impl<T: Copy> Raster<T> {
    /// Pixels one above the other.
    pub fn height(&self) -> usize {
        self.values.len() / self.width.max(1)
    }

    /// The same shape with a value worked out from each one.
    pub fn map<U>(&self, value: impl FnMut(T) -> U) -> Raster<U> {
        Raster { width: self.width, values: self.values.iter().copied().map(value).collect() }
    }

    /// The value at a place; outside, that of the nearest place inside.
    pub fn near(&self, x: Option<usize>, y: Option<usize>) -> Option<T> {
        let x = x.unwrap_or(0).min(self.width.checked_sub(1)?);
        let y = y.unwrap_or(0).min(self.height().checked_sub(1)?);
        self.values.get(y * self.width + x).copied()
    }

    /// The places of the neighbours of a place, left, right, above and below, as far as there are any.
    pub fn beside(&self, place: usize) -> impl Iterator<Item = usize> + use<T> {
        let (width, count, x) = (self.width, self.values.len(), place % self.width);
        [
            (x > 0).then(|| place - 1),
            (x + 1 < width).then_some(place + 1),
            place.checked_sub(width),
            (place + width < count).then_some(place + width),
        ]
        .into_iter()
        .flatten()
    }

    /// The places of the neighbours that touch a place at a corner only.
    pub fn aslant(&self, place: usize) -> impl Iterator<Item = usize> + use<T> {
        let (width, count, x) = (self.width, self.values.len(), place % self.width);
        let (left, right) = (x > 0, x + 1 < width);
        let (above, below) = (place >= width, place + width < count);
        [
            (left && above).then(|| place - width - 1),
            (right && above).then(|| place - width + 1),
            (left && below).then(|| place + width - 1),
            (right && below).then(|| place + width + 1),
        ]
        .into_iter()
        .flatten()
    }

    /// The two places that two neighbours aslant of each other share.
    pub fn corners(&self, one: usize, other: usize) -> [usize; 2] {
        let (row_of_one, row_of_other) = (one - one % self.width, other - other % self.width);
        [row_of_one + other % self.width, row_of_other + one % self.width]
    }
}
