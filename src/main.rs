//! The program: argv in, exit code out.

use std::process::ExitCode;

use everysquare::cli::{Console, run, without_panic};

fn main() -> ExitCode {
    ExitCode::from(without_panic(|| run(std::env::args_os(), &mut Console::standard())))
}
