//! Straight pictures of the wall, and the marked photo.
