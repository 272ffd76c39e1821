//! Progress bars, where a person waits.

use std::time::Duration;

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

use super::Console;

/// Time between two pictures of a sign that turns.
const TICK: Duration = Duration::from_millis(120);

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

/// A sign that something goes on whose end is not known, with the words `id`: on a terminal; nothing elsewhere.
pub(super) fn wait(console: &Console, id: &str) -> ProgressBar {
    let target =
        if console.screen().terminal { ProgressDrawTarget::stderr() } else { ProgressDrawTarget::hidden() };
    let sign = ProgressBar::with_draw_target(None, target);
    let style = ProgressStyle::with_template("{spinner} {msg}");
    sign.set_style(style.unwrap_or_else(|_| ProgressStyle::default_spinner()));
    sign.set_message(console.words().say(id, &[]));
    sign.enable_steady_tick(TICK);
    sign
}
