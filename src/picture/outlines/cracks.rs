//! From pixels to arcs: chains of cracks from junction to junction, and the rings that they make around areas.

use std::collections::BTreeMap;

use crate::picture::raster::Raster;

/// A chain of cracks with the same colour on either side all along.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Arc {
    /// The corners of pixels that it runs through, one step apart; the first again at the end of a closed one.
    pub corners: Vec<(usize, usize)>,
    /// Whether it has no junction.
    pub closed: bool,
    /// The colours on its right and on its left; nothing outside the picture.
    pub sides: [Option<u8>; 2],
}

/// The way from a corner of pixels to the next, clockwise by a quarter turn each.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Way {
    Right,
    Down,
    Left,
    Up,
}

impl Way {
    const ALL: [Self; 4] = [Self::Right, Self::Down, Self::Left, Self::Up];

    /// So many quarter turns clockwise from here.
    fn turned(self, quarters: usize) -> Self {
        Self::ALL[(Self::ALL.iter().position(|way| *way == self).unwrap_or(0) + quarters) % 4]
    }

    fn back(self) -> Self {
        self.turned(2)
    }

    /// The corner one step on; it must be there.
    fn from(self, (x, y): (usize, usize)) -> (usize, usize) {
        match self {
            Self::Right => (x + 1, y),
            Self::Down => (x, y + 1),
            Self::Left => (x.saturating_sub(1), y),
            Self::Up => (x, y.saturating_sub(1)),
        }
    }
}

/// The labels, seen from their corners.
struct Plane<'a> {
    labels: &'a Raster<u8>,
    width: usize,
    height: usize,
}

impl Plane<'_> {
    /// The label of the pixel whose lower right corner is here.
    fn above_left(&self, (x, y): (usize, usize)) -> Option<u8> {
        let inside = (1..=self.width).contains(&x) && (1..=self.height).contains(&y);
        inside.then(|| self.labels.values[(y - 1) * self.width + x - 1])
    }

    /// The labels on the right and on the left of the way from a corner.
    fn sides(&self, (x, y): (usize, usize), way: Way) -> [Option<u8>; 2] {
        let around = |dx: usize, dy: usize| self.above_left((x + dx, y + dy));
        match way {
            Way::Right => [around(1, 1), around(1, 0)],
            Way::Down => [around(0, 1), around(1, 1)],
            Way::Left => [around(0, 0), around(0, 1)],
            Way::Up => [around(1, 0), around(0, 0)],
        }
    }

    /// Whether a crack leads that way from a corner.
    fn leads(&self, corner: (usize, usize), way: Way) -> bool {
        let [right, left] = self.sides(corner, way);
        right != left
    }

    fn ways(&self, corner: (usize, usize)) -> impl Iterator<Item = Way> {
        Way::ALL.into_iter().filter(move |way| self.leads(corner, *way))
    }

    fn is_junction(&self, corner: (usize, usize)) -> bool {
        !matches!(self.ways(corner).count(), 0 | 2)
    }

    fn corners(&self) -> impl Iterator<Item = (usize, usize)> + use<> {
        let (width, height) = (self.width, self.height);
        (0..=height).flat_map(move |y| (0..=width).map(move |x| (x, y)))
    }

    /// The arc that leaves a corner one way, to the next junction or around to where it began.
    fn arc(&self, start: (usize, usize), way: Way) -> Arc {
        let (mut at, mut way, sides) = (start, way, self.sides(start, way));
        let mut corners = vec![start];
        loop {
            at = way.from(at);
            corners.push(at);
            if at == start || self.is_junction(at) {
                break;
            }
            let Some(next) = self.ways(at).find(|next| *next != way.back()) else { break };
            way = next;
        }
        Arc { corners, closed: at == start && !self.is_junction(start), sides }
    }
}

/// The way of a step between two corners.
fn way_between(from: (usize, usize), to: (usize, usize)) -> Way {
    Way::ALL.into_iter().find(|way| way.from(from) == to && from != to).unwrap_or(Way::Right)
}

/// The ways by which an arc leaves its first corner and by which it comes to its last one.
fn ends(arc: &Arc) -> Option<(Way, Way)> {
    let (first, last) = (arc.corners.get(..2)?, arc.corners.len().checked_sub(2)?);
    Some((way_between(first[0], first[1]), way_between(arc.corners[last], arc.corners[last + 1])))
}

/// All arcs of a picture: those between junctions, then the closed ones.
pub(super) fn arcs(labels: &Raster<u8>) -> Vec<Arc> {
    let plane = Plane { labels, width: labels.width, height: labels.height() };
    let mut passed = vec![false; (plane.width + 1) * (plane.height + 1) * 2];
    // each crack by its upper or left end: even numbers for those to the right, odd ones for those down
    let number = |corner: (usize, usize), way: Way| {
        let (x, y) = if matches!(way, Way::Left | Way::Up) { way.from(corner) } else { corner };
        (y * (plane.width + 1) + x) * 2 + usize::from(matches!(way, Way::Down | Way::Up))
    };
    let mut arcs = Vec::new();
    for junctions in [true, false] {
        for corner in plane.corners().filter(|corner| plane.is_junction(*corner) == junctions) {
            for way in plane.ways(corner) {
                if passed[number(corner, way)] {
                    continue;
                }
                let arc = plane.arc(corner, way);
                for step in arc.corners.windows(2) {
                    passed[number(step[0], way_between(step[0], step[1]))] = true;
                }
                arcs.push(arc);
            }
        }
    }
    arcs
}

/// Every ring around an area: its colour, and its arcs by number, each with whether it is run backwards so that the colour is on the
/// right. Areas that touch at a corner only are two.
pub(super) fn rings(labels: &Raster<u8>, arcs: &[Arc]) -> Vec<(u8, Vec<(usize, bool)>)> {
    let plane = Plane { labels, width: labels.width, height: labels.height() };
    let mut leaving = BTreeMap::new();
    for (number, arc) in arcs.iter().enumerate().filter(|(_, arc)| !arc.closed) {
        let (Some((out, into)), [first, .., last]) = (ends(arc), &arc.corners[..]) else { continue };
        leaving.insert((*first, out), (number, false));
        leaving.insert((*last, into.back()), (number, true));
    }
    let next = |(number, backwards): (usize, bool)| {
        let arc = &arcs[number];
        let (out, into) = ends(arc)?;
        let (corner, way) =
            if backwards { (*arc.corners.first()?, out.back()) } else { (*arc.corners.last()?, into) };
        // around the pixel on the right: to the right where that is a crack, else straight on, else to the left
        let ways = [1, 0, 3].map(|quarters| way.turned(quarters));
        let way = ways.into_iter().find(|way| plane.leads(corner, *way))?;
        leaving.get(&(corner, way)).copied()
    };
    let mut done = vec![[false; 2]; arcs.len()];
    let mut rings = Vec::new();
    for (number, arc) in arcs.iter().enumerate() {
        for backwards in [false, true] {
            let Some(colour) = arc.sides[usize::from(backwards)] else { continue };
            if done[number][usize::from(backwards)] {
                continue;
            }
            let mut ring = Vec::new();
            let mut at = Some((number, backwards));
            while let Some((own, turned)) = at.filter(|(own, turned)| !done[*own][usize::from(*turned)]) {
                done[own][usize::from(turned)] = true;
                ring.push((own, turned));
                at = if arcs[own].closed { None } else { next((own, turned)) };
            }
            rings.push((colour, ring));
        }
    }
    rings
}

#[cfg(test)]
mod tests {
    use super::*;

    fn labels(width: usize, text: &str) -> Raster<u8> {
        Raster { width, values: text.bytes().filter(u8::is_ascii_digit).map(|digit| digit - b'0').collect() }
    }

    #[test]
    fn two_halves_have_one_edge_between_them_and_two_around() {
        let arcs = arcs(&labels(4, "0011 0011 0011"));
        let between: Vec<_> = arcs.iter().filter(|arc| arc.sides.iter().all(Option::is_some)).collect();
        assert_eq!(arcs.len(), 3);
        assert_eq!(between.len(), 1);
        assert_eq!(between[0].corners, [(2, 0), (2, 1), (2, 2), (2, 3)]);
        assert_eq!(between[0].sides, [Some(0), Some(1)], "going down, the left half is on the right");
    }

    #[test]
    fn an_island_has_a_closed_edge_and_its_sea_a_hole() {
        let sea = labels(4, "0000 0110 0110 0000");
        let arcs = arcs(&sea);
        assert_eq!(arcs.iter().filter(|arc| arc.closed).count(), 2, "the island's, and the picture's own");
        let of = |colour| rings(&sea, &arcs).iter().filter(|(own, _)| *own == colour).count();
        assert_eq!((of(0), of(1)), (2, 1));
    }

    #[test]
    fn areas_that_touch_at_a_corner_are_two() {
        let board = labels(2, "01 10");
        let of = |colour| rings(&board, &arcs(&board)).iter().filter(|(own, _)| *own == colour).count();
        assert_eq!((of(0), of(1)), (2, 2));
    }
}
