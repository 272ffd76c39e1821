//! The program: argv in, exit code out.

use std::process::ExitCode;

use everysquare::cli::{Console, run};

fn main() -> ExitCode {
    ExitCode::from(run(std::env::args_os(), &mut Console::standard()))
}
