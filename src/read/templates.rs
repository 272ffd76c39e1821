//! Templates of all codes of an event in one view, and the comparison of a sampled place with them.

use super::decision::{Compared, RANKED};
use super::template::{
    LATTICE, PLACES, dot, draw, even_out, normalise, offset, project_out, single, weights,
};
use crate::frame::float;
use crate::plan::Modules;
use crate::plan::code::SIDE;

/// One way a photo may show a code.
#[derive(Copy, Clone, Debug, PartialEq)]
pub(super) struct Rendering {
    /// Standard deviation of the blur, in modules.
    pub(super) blur: f64,
    /// Darkness below which nothing shows, as a share of full dark.
    pub(super) drowned: f32,
    /// Whether light and contrast are locally normalised before comparing.
    pub(super) evened: bool,
}

/// Templates of all codes of an event in one view.
#[derive(Debug)]
pub(super) struct Templates {
    view: Rendering,
    weights: Vec<[f32; SIDE]>,
    light: LightBasis,
    /// Shared part: what all codes have in common, light projected out, of length 1; one template.
    pub(super) shared: Vec<f32>,
    /// Own parts: codes × places, light and shared part projected out, each of length 1.
    own: Vec<f32>,
    /// Own parts summed to one place a module: codes × `COARSE`, not normalised.
    coarse: Vec<f32>,
    /// Ratio of each code's own part to its shared part, in length.
    strength: Vec<f32>,
}

impl Templates {
    pub(super) fn new(view: Rendering, codes: &[Modules]) -> Self {
        let weights = weights(view.blur);
        let light = LightBasis::new(&view, &weights);
        let mut own: Vec<f32> = Vec::with_capacity(codes.len() * PLACES);
        let mut shared = vec![0.0; PLACES];
        for code in codes {
            let drawn = view.draw(code, &weights);
            shared.iter_mut().zip(&drawn).for_each(|(s, d)| *s += d);
            own.extend(drawn);
        }
        let mut sheet =
            Self { view, weights, light, shared, own: Vec::new(), coarse: Vec::new(), strength: Vec::new() };
        let mut shared = std::mem::take(&mut sheet.shared);
        let sums = LineSums::of(&shared);
        sheet.darken(&mut shared, &sums);
        normalise(&mut shared);
        let mut strength = Vec::with_capacity(codes.len());
        for code in own.chunks_exact_mut(PLACES) {
            let sums = LineSums::of(code);
            sheet.darken(code, &sums);
            let common = dot(code, &shared).max(f32::MIN_POSITIVE);
            project_out(code, &shared);
            strength.push(dot(code, code).sqrt() / common);
            normalise(code);
        }
        let coarse = own.chunks_exact(PLACES).flat_map(a_place_a_module).collect();
        Self { shared, own, coarse, strength, ..sheet }
    }

    /// Template of a code in this view, light projected out, of length 1.
    pub(super) fn drawn(&self, code: &Modules) -> Vec<f32> {
        let mut drawn = self.view.draw(code, &self.weights);
        let sums = LineSums::of(&drawn);
        self.darken(&mut drawn, &sums);
        normalise(&mut drawn);
        drawn
    }

    /// Projects the light out of levels with these sums.
    fn darken(&self, levels: &mut [f32], sums: &LineSums) {
        let [across, down] = self.light.project(sums);
        for (line, down) in levels.chunks_exact_mut(LATTICE).zip(down) {
            line.iter_mut().zip(&across).for_each(|(level, across)| *level -= across + down);
        }
    }

    /// Correlation of what is seen with the shared part, light projected out.
    pub(super) fn shared_fit(&self, seen: &Seen<'_>) -> f32 {
        let power = seen.power - self.light.power(&seen.sums);
        if power <= 0.0 { 0.0 } else { dot(seen.levels, &self.shared) / power.sqrt() }
    }

    /// Compares what is seen with the codes at these indices of the codebook.
    pub(super) fn compare(&self, seen: &Seen<'_>, among: &[usize]) -> Compared {
        let mut rest = seen.levels.to_vec();
        self.darken(&mut rest, &seen.sums);
        let power = dot(&rest, &rest).sqrt().max(f32::MIN_POSITIVE);
        let common = dot(&rest, &self.shared);
        project_out(&mut rest, &self.shared);
        let left = dot(&rest, &rest).sqrt().max(f32::MIN_POSITIVE);
        let mut ranked = [(-1.0_f32, 0); RANKED];
        for at in self.likeliest(&rest, among.iter().copied(), IN_FULL) {
            let own = &self.own[at * PLACES..(at + 1) * PLACES];
            let score = dot(&rest, own) / left;
            if let Some(place) = ranked.iter().position(|(other, _)| score > *other) {
                ranked[place..].rotate_right(1);
                ranked[place] = (score, at);
            }
        }
        let [(score, best), (second, _), ..] = ranked;
        let expected = common * self.strength.get(best).copied().unwrap_or(1.0);
        Compared {
            best,
            score,
            second,
            shared: common / power,
            bleached: self.view.drowned > 0.3,
            strength: score * left / expected.max(f32::MIN_POSITIVE),
            ranked: ranked.map(|(_, at)| at),
        }
    }
}

/// Maximum number of codes compared at full resolution: those most alike at one place a module.
///
/// Blur leaves little more than that to be seen, so the best and the second best are among them by far;
/// common practice, no source.
const IN_FULL: usize = 24;
/// Number of codes that stay in the running at one place after the first coarse comparison.
///
/// A place is compared a dozen times, ever closer; with all codes only once, or 3,000 cells would cost much
/// more each than 200.
const SHORTLIST: usize = 64;

impl Templates {
    /// Indices of the codes of the whole event that are most like what is seen, in ascending order.
    pub(super) fn shortlist(&self, seen: &Seen<'_>) -> Vec<usize> {
        let mut rest = seen.levels.to_vec();
        self.darken(&mut rest, &seen.sums);
        project_out(&mut rest, &self.shared);
        self.likeliest(&rest, 0..self.strength.len(), SHORTLIST)
    }

    /// Indices of the `most` codes among these that are most like `rest`, in ascending order.
    fn likeliest(&self, rest: &[f32], among: impl Iterator<Item = usize>, most: usize) -> Vec<usize> {
        let rest: Vec<f32> = a_place_a_module(rest).collect();
        let alike = |at: usize| dot(&rest, &self.coarse[at * COARSE..(at + 1) * COARSE]);
        let mut ranked: Vec<(f32, usize)> = among.map(|at| (alike(at), at)).collect();
        if ranked.len() > most {
            ranked.select_nth_unstable_by(most, |a, b| b.0.total_cmp(&a.0));
            ranked.truncate(most);
        }
        let mut likeliest: Vec<usize> = ranked.into_iter().map(|(_, at)| at).collect();
        likeliest.sort_unstable();
        likeliest
    }
}

/// Length of a template with one place a module, padded to a multiple of eight.
const COARSE: usize = (SIDE * SIDE).next_multiple_of(8);

/// Sums over the four places of each module, row by row, padded with zeros to `COARSE`.
fn a_place_a_module(levels: &[f32]) -> impl Iterator<Item = f32> {
    let module = |i: usize| {
        let at = i / SIDE * 2 * LATTICE + i % SIDE * 2;
        levels[at] + levels[at + 1] + levels[at + LATTICE] + levels[at + LATTICE + 1]
    };
    (0..COARSE).map(move |i| if i < SIDE * SIDE { module(i) } else { 0.0 })
}

impl Rendering {
    fn draw(&self, code: &Modules, weights: &[[f32; SIDE]]) -> Vec<f32> {
        let mut drawn = draw(code, weights, self.drowned);
        if self.evened {
            even_out(&mut drawn);
        }
        drawn
    }
}

/// What is seen under a pose, one level a place, row by row, with the sums that every view asks for.
pub(super) struct Seen<'a> {
    levels: &'a [f32],
    sums: LineSums,
    /// Sum of squares.
    power: f32,
}

impl<'a> Seen<'a> {
    pub(super) fn of(levels: &'a [f32]) -> Self {
        Self { levels, sums: LineSums::of(levels), power: dot(levels, levels) }
    }
}

/// Sums of levels, column by column and row by row.
struct LineSums {
    columns: [f32; LATTICE],
    rows: [f32; LATTICE],
}

impl LineSums {
    fn of(levels: &[f32]) -> Self {
        let mut sums = Self { columns: [0.0; LATTICE], rows: [0.0; LATTICE] };
        for (row, line) in sums.rows.iter_mut().zip(levels.chunks_exact(LATTICE)) {
            sums.columns.iter_mut().zip(line).for_each(|(sum, level)| *sum += level);
            *row = line.iter().sum();
        }
        sums
    }
}

/// Orthonormal basis of the light: constant, slope along x, slope along y, and in views neither bleached nor normalised what the blur
/// lets in from the four sides around the code, whatever is drawn there.
///
/// Each is a template that changes along one axis only, so that it is kept as one line, and what is seen is projected onto it by the
/// sums of its columns or rows.
#[derive(Debug)]
struct LightBasis {
    /// Lines along x, the constant first.
    across: Vec<[f32; LATTICE]>,
    /// Lines along y, each with a sum of 0.
    down: Vec<[f32; LATTICE]>,
}

impl LightBasis {
    fn new(view: &Rendering, weights: &[[f32; SIDE]]) -> Self {
        let mut lines = vec![[1.0; LATTICE], std::array::from_fn(|place| single(offset(place)))];
        if !view.evened && view.drowned == 0.0 {
            // what of a place's surroundings lies beyond the code, before its first module or after its last
            for before in [true, false] {
                lines.push(std::array::from_fn(|place| {
                    let near = (place < LATTICE / 2) == before;
                    if near { 1.0 - weights[place].iter().sum::<f32>() } else { 0.0 }
                }));
            }
        }
        let mut across: Vec<[f32; LATTICE]> = Vec::with_capacity(lines.len());
        for mut line in lines {
            across.iter().for_each(|other| project_out(&mut line, other));
            normalise(&mut line);
            across.push(line);
        }
        // of length 1 as a line; as a template each is repeated on every other line
        let side = single(float(LATTICE)).sqrt();
        across.iter_mut().flatten().for_each(|level| *level /= side);
        let down = across.get(1..).unwrap_or_default().to_vec();
        Self { across, down }
    }

    /// Components of what is seen along the lines across and down.
    fn components<'a>(&'a self, sums: &'a LineSums) -> [impl Iterator<Item = (f32, &'a [f32; LATTICE])>; 2] {
        let along = |lines: &'a [[f32; LATTICE]], sums: &'a [f32; LATTICE]| {
            lines.iter().map(move |line| (dot(line, sums), line))
        };
        [along(&self.across, &sums.columns), along(&self.down, &sums.rows)]
    }

    /// Sum of squares of what is seen of the light.
    fn power(&self, sums: &LineSums) -> f32 {
        self.components(sums).into_iter().flatten().map(|(along, _)| along * along).sum()
    }

    /// Projection of what is seen onto the light: what it adds to each column and to each row.
    fn project(&self, sums: &LineSums) -> [[f32; LATTICE]; 2] {
        self.components(sums).map(|lines| {
            let mut all = [0.0; LATTICE];
            for (along, line) in lines {
                all.iter_mut().zip(line).for_each(|(sum, level)| *sum += along * level);
            }
            all
        })
    }
}
