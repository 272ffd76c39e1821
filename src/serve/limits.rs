//! The largest photo that is taken.

/// Bytes of a photo that is sent: phones write 3 to 40 MB.
pub const MOST_BYTES: usize = 48 << 20;
/// The most pixels of a photo that is sent: 50 megapixels, the most that phones take unasked, and a few for odd shapes. One of them
/// takes half a gigabyte while it is read.
pub const MOST_PIXELS: u64 = 51_000_000;
