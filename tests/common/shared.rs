//! Pictures that other people or programs made; they are no part of the project. Tests that need them are ignored, so that a run without
//! them counts them as such; `tools/check` runs them where the folder is there.

use std::path::{Path, PathBuf};

/// A folder of `../shared`, or of what the environment variable `EVERYSQUARE_SHARED` names.
///
/// # Panics
/// Where it is not there.
pub fn shared(part: &str) -> PathBuf {
    let all = std::env::var_os("EVERYSQUARE_SHARED")
        .map_or_else(|| Path::new(env!("CARGO_MANIFEST_DIR")).join("../shared"), PathBuf::from);
    let folder = all.join(part);
    assert!(folder.is_dir(), "{} is not here; EVERYSQUARE_SHARED names its parent", folder.display());
    folder
}
