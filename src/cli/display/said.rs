//! What is told of a wall that was shown: its measures, what to tape anew, what to look at.

use super::Told;
use crate::cli::Console;
use crate::display::assemble::Arrangement;
use crate::display::retape::SEEN_MM;
use crate::frame::float;
use crate::gallery::View;
use crate::plan::lengths::{both, one};
use crate::plan::{Printed, Turn};

/// Tells everything but where it was written.
pub(super) fn tell(told: &Told<'_>, printed: &Printed, view: View, console: &mut Console) {
    let squares = &told.shown.hanging.squares;
    let counted = [("squares", squares.len().into()), ("cells", told.cells.into())];
    console.say("display-squares", &counted);
    measures(told, printed, console);
    let astray = squares.iter().filter(|hung| hung.home != hung.at || hung.turn != Turn::None).count();
    if astray > 0 && view != View::Put(Arrangement::InOrder) {
        console.say("display-mixed", &[("squares", astray.into())]);
    }
    let suggestions: Vec<String> =
        told.compared.suggestions.iter().map(|suggestion| suggestion.said.tell(console.words())).collect();
    if !suggestions.is_empty() {
        console.say("display-suggestions", &[("squares", suggestions.len().into())]);
    }
    suggestions.iter().for_each(|suggestion| console.line(&format!("  {suggestion}")));
}

fn measures(told: &Told<'_>, printed: &Printed, console: &mut Console) {
    let Some(measured) = &told.shown.measured else { return };
    let factor = measured.scale_factor;
    let digits = |value: f64| format!("{value:.2}").into();
    let said = [
        ("factor", digits(factor.value)),
        ("within", digits(factor.within)),
        ("planned", digits(printed.grid.square_mm / printed.grid.piece_mm)),
    ];
    console.say("display-scale", &said);
    let [width, height] =
        [measured.width, measured.height].map(|length| both(length.value, told.units, console.words()));
    console.say("display-size", &[("width", width.into()), ("height", height.into())]);
    if told.retape.is_empty() && squares_enough(told) {
        let length = one(SEEN_MM, told.units, console.words());
        console.say("display-straight", &[("length", length.into())]);
    }
    told.retape.iter().for_each(|sentence| console.line(sentence));
}

/// Whether enough of the wall was seen to say that nothing hangs askew: three quarters.
fn squares_enough(told: &Told<'_>) -> bool {
    float(told.shown.hanging.squares.len()) >= 0.75 * float(told.cells)
}
