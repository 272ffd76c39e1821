//! Figures as a drawing: each panel a line of seconds and one of memory over what was varied, both axes logarithmic, so that what
//! grows in proportion rises by one in one.

use std::fmt::Write as _;

use super::table::Told;

const PANEL: f64 = 420.0;
const EDGE: f64 = 60.0;

/// One panel a series: what was varied, and the figures.
pub fn svg(panels: &[(&str, &[(f64, Told)])]) -> String {
    let (width, height) = (PANEL * 2.0, PANEL);
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" font-family=\"sans-serif\" \
         font-size=\"12\"><rect width=\"{width}\" height=\"{height}\" fill=\"white\"/>\n"
    );
    let mut left = 0.0;
    for (name, series) in panels {
        panel(&mut out, left, name, series);
        left += PANEL;
    }
    out.push_str("</svg>\n");
    out
}

/// The stage that says what all of it took, and what the process held.
fn figures(told: &Told) -> [Option<f64>; 2] {
    let whole = |name: &str| name == "read" || name == "checked";
    [told.seconds.iter().find(|(name, _)| whole(name)).map(|(_, seconds)| *seconds), told.peak_mib]
}

fn panel(out: &mut String, left: f64, name: &str, series: &[(f64, Told)]) {
    let lines = [0, 1].map(|which| -> Vec<(f64, f64)> {
        series.iter().filter_map(|(at, told)| Some((*at, figures(told)[which]?))).collect()
    });
    let range = |values: &mut dyn Iterator<Item = f64>| {
        values.fold((f64::INFINITY, 0.0_f64), |(low, high), v| (low.min(v), high.max(v)))
    };
    let (first, last) = range(&mut series.iter().map(|(at, _)| *at));
    let size = PANEL - 2.0 * EDGE;
    let x = |at: f64| left + EDGE + size * (at / first).ln() / (last / first).ln().max(1e-9);
    for (values, colour, unit, along) in
        [(&lines[0], "#1f4e8c", "s of work", 0.0), (&lines[1], "#d2473c", "MiB at most", size)]
    {
        let (low, high) = range(&mut values.iter().map(|(_, v)| *v));
        // one in one: the same share of the axis for the same factor as along x
        let y = |v: f64| {
            let share = (v / low).ln() / (last / first).max(high / low).ln().max(1e-9);
            PANEL - EDGE - size * share
        };
        let points: Vec<String> =
            values.iter().map(|(at, v)| format!("{:.1},{:.1}", x(*at), y(*v))).collect();
        let _ = writeln!(
            out,
            "<polyline fill=\"none\" stroke=\"{colour}\" stroke-width=\"2\" points=\"{}\"/>",
            points.join(" ")
        );
        for (at, v) in values {
            let _ = writeln!(
                out,
                "<circle cx=\"{0:.1}\" cy=\"{1:.1}\" r=\"3\" fill=\"{colour}\"/><text x=\"{0:.1}\" y=\"{2:.1}\" \
                 fill=\"{colour}\" text-anchor=\"end\">{3}</text>",
                x(*at) - 1.0,
                y(*v),
                y(*v) - 6.0,
                short(*v)
            );
        }
        let _ = writeln!(
            out,
            "<text x=\"{}\" y=\"{}\" fill=\"{colour}\">{unit}</text>",
            left + EDGE + along * 0.7,
            EDGE - 30.0
        );
    }
    for (at, _) in series {
        let _ = writeln!(
            out,
            "<text x=\"{:.1}\" y=\"{}\" text-anchor=\"middle\">{at}</text>",
            x(*at),
            PANEL - EDGE + 18.0
        );
    }
    let _ = writeln!(
        out,
        "<text x=\"{}\" y=\"{}\" text-anchor=\"middle\">{name}</text>",
        left + PANEL / 2.0,
        PANEL - 14.0
    );
}

fn short(value: f64) -> String {
    if value >= 10.0 { format!("{value:.0}") } else { format!("{value:.2}") }
}
