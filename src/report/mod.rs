//! The same facts several ways.
