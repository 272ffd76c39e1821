//! Alignment of a pose: Gauss–Newton on brightness, in the inverse compositional form
//! (S. Baker, I. Matthews: Lucas–Kanade 20 Years On, 2004), with gain and offset of the light taken out.

use std::borrow::Cow;

use nalgebra::{Cholesky, Matrix6, Matrix6x3, U3, U6, Vector6};

use super::codebook::Light;
use super::pose::Pose;
use super::template::{LATTICE, PLACES, dot, even_out, offset, single};
use crate::frame::{ceil_index, float};
use crate::photo::Luma;

/// Template with its derivatives by the six parameters of an affine pose.
#[derive(Debug)]
pub(super) struct Aligner<'a> {
    template: Cow<'a, [f32]>,
    light: Light,
    /// Derivatives of each place, row by row: by shift right, shift down, and the four entries of the matrix.
    steepest: Vec<[f32; 6]>,
    normal: Cholesky<f64, U6>,
    /// Normal equations for shifts and rotation only.
    rigid: Cholesky<f64, U3>,
}

/// Degrees of freedom of an alignment.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(super) enum Freedom {
    /// Shift and rotation. The size is known well from the camera, and a blur that is not the photo's would
    /// pull at it.
    Rigid,
    /// Shift, rotation, size, aspect and shear.
    Affine,
}

/// Basis of the rigid motions, six parameters × (shift right, shift down, rotation).
fn rigid_parts() -> Matrix6x3<f64> {
    let mut parts = Matrix6x3::zeros();
    parts[(0, 0)] = 1.0;
    parts[(1, 1)] = 1.0;
    parts[(3, 2)] = -1.0;
    parts[(4, 2)] = 1.0;
    parts
}

/// Unit of offsets from the centre, in modules, so that all six parameters have about the same weight.
const REACH: f64 = 8.0;
/// Ridge term for the four entries of the matrix, as a share of the template's own mean weight: keeps noise
/// from shearing a code that shows little.
const STIFFNESS: f64 = 0.02;
/// Minimum gain assumed in a step, as a correlation with the template: clean codes at the right pose have 0.6
/// to 0.8.
const FITTING: f32 = 0.7;
/// Maximum change of a parameter in one step, in modules.
const LONGEST_STEP: f64 = 0.8;

impl<'a> Aligner<'a> {
    /// Aligner for a template of length 1 on the lattice, made for samples prepared as `light` says. `None`
    /// where it is flat.
    pub(super) fn new(template: impl Into<Cow<'a, [f32]>>, light: Light) -> Option<Self> {
        let template = template.into();
        let at = |x: usize, y: usize| template[y * LATTICE + x];
        let mut normal = Matrix6::<f64>::zeros();
        let mut steepest = Vec::with_capacity(PLACES);
        let per_module = 2.0 * (offset(1) - offset(0));
        for y in 0..LATTICE {
            for x in 0..LATTICE {
                let slope = |a: f32, b: f32| f64::from(b - a) / per_module;
                let (left, right) = (x.saturating_sub(1), (x + 1).min(LATTICE - 1));
                let (above, below) = (y.saturating_sub(1), (y + 1).min(LATTICE - 1));
                let gx = slope(at(left, y), at(right, y));
                let gy = slope(at(x, above), at(x, below));
                let (dx, dy) = (offset(x) / REACH, offset(y) / REACH);
                let row = Vector6::new(gx, gy, gx * dx, gx * dy, gy * dx, gy * dy);
                normal += row * row.transpose();
                steepest.push(std::array::from_fn(|k| single(row[k])));
            }
        }
        let parts = rigid_parts();
        let rigid = (parts.transpose() * normal * parts).cholesky()?;
        let stiff = normal.trace() / 6.0 * STIFFNESS;
        for k in 2..6 {
            normal[(k, k)] += stiff;
        }
        Some(Self { template, light, steepest, normal: normal.cholesky()?, rigid })
    }

    /// Improves `pose` in at most `steps` steps; leaves the samples under the last pose in `seen`, row by
    /// row.
    pub(super) fn align(
        &self,
        luma: &Luma,
        pose: Pose,
        (freedom, steps): (Freedom, usize),
        seen: &mut Vec<f32>,
    ) -> Pose {
        let mut pose = pose;
        look(luma, &pose, self.light, seen);
        for _ in 0..steps {
            let Some((next, moved)) = self.step(seen, &pose, freedom) else { break };
            pose = next;
            look(luma, &pose, self.light, seen);
            if moved < 0.02 {
                break;
            }
        }
        pose
    }

    /// One step: the next pose, and the largest change of a parameter, in modules. `None` where nothing holds
    /// the pose.
    fn step(&self, seen: &[f32], pose: &Pose, freedom: Freedom) -> Option<(Pose, f64)> {
        let mean = seen.iter().sum::<f32>() / single(float(PLACES));
        let spread = (dot(seen, seen) - mean * mean * single(float(PLACES))).max(0.0).sqrt();
        // a template that lies askew finds little of itself; its gain when it fits is what the step must reckon with
        let gain = dot(seen, &self.template).max(FITTING * spread); // the template has no mean
        if gain <= f32::EPSILON {
            return None;
        }
        let mut right = [0.0_f32; 6];
        for ((s, t), row) in seen.iter().zip(self.template.iter()).zip(&self.steepest) {
            let error = (s - mean) / gain - t;
            for k in 0..6 {
                right[k] += row[k] * error;
            }
        }
        let right = Vector6::from_fn(|k, _| f64::from(right[k]));
        let change = match freedom {
            Freedom::Affine => self.normal.solve(&right),
            Freedom::Rigid => {
                let parts = rigid_parts();
                parts * self.rigid.solve(&(parts.transpose() * right))
            }
        };
        let longest = change.amax();
        let change = if longest > LONGEST_STEP { change * (LONGEST_STEP / longest) } else { change };
        let [dx, dy, a, b, c, d] = change.into();
        let by = 1.0 / REACH;
        let next = pose.undo([dx, dy], [[a * by, b * by], [c * by, d * by]])?;
        Some((next, change.amax()))
    }
}

/// Maximum distance of samples, in pixels: a coarser lattice takes the mean of several a place; and their
/// maximum number along each side of a place.
const FINE_PX: f64 = 1.2;
const MOST_SAMPLES: usize = 8;

/// Samples the lattice under a pose, row by row: where the photo is finer than the lattice, the mean around
/// each place.
fn look(luma: &Luma, pose: &Pose, light: Light, seen: &mut Vec<f32>) {
    let first = offset(0);
    let step = offset(1) - first;
    let finer = ceil_index(pose.px_per_module() * step / FINE_PX).clamp(1, MOST_SAMPLES);
    let fine = step / float(finer);
    let corner = first - (step - fine) / 2.0;
    let side = LATTICE * finer;
    luma.lattice(
        pose.centre + pose.u * corner + pose.v * corner,
        [pose.u * fine, pose.v * fine],
        [side, side],
        seen,
    );
    if finer > 1 {
        let scale = 1.0 / single(float(finer * finer));
        let mean = |place: usize| {
            let at = place / LATTICE * finer * side + place % LATTICE * finer;
            (0..finer).flat_map(|y| &seen[at + y * side..at + y * side + finer]).sum::<f32>() * scale
        };
        *seen = (0..PLACES).map(mean).collect();
    }
    if light == Light::Evened {
        even_out(seen);
    }
}
