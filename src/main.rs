//! The program: argv in, exit code out.

fn main() {}
