//! Progress bars, where a person waits.

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

use super::Console;

/// A bar of `steps` steps with the words `id` before it: on a terminal; nothing elsewhere.
pub(super) fn bar(console: &Console, steps: u64, id: &str) -> ProgressBar {
    let target =
        if console.screen().terminal { ProgressDrawTarget::stderr() } else { ProgressDrawTarget::hidden() };
    let bar = ProgressBar::with_draw_target(Some(steps), target);
    let style = ProgressStyle::with_template("{msg} {bar:30} {percent} %");
    bar.set_style(style.unwrap_or_else(|_| ProgressStyle::default_bar()));
    bar.set_message(console.words().say(id, &[]));
    bar
}
