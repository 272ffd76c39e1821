//! Coefficients of the decision about a name; written by `tools/bench/limit/fit.py`.
//!
//! Fitted on 37876 single made codes, 35166 of them right guesses. The likeliest wrong guess among them had
//! log odds of 5.4; among 13296 held out, 6.6.

/// Log odds without any evidence.
pub(super) const INTERCEPT: f32 = -6.8;
/// Weights, in the order of `decision::FEATURES`, then of the products of each two of them.
pub(super) const COEFFICIENTS: [f32; 90] = [
    -0.01149, 0.1163, -0.1302, 7.195, -7.433, 3.036, -0.8537, -2.432, -2.604, 0.4153, 0.5299, 0.08327,
    0.0001535, -0.01261, 0.05008, 0.01962, -0.01142, 0.009451, 0.04881, -0.004319, 0.02968, 0.001868,
    0.001707, 0.01715, 0.004585, -0.2028, 0.3241, -0.8118, -0.3497, -1.477, -0.695, 2.526, 0.5546, -0.173,
    -0.6093, -0.1302, -6.794, -1.666, 2.414, -0.8874, -1.914, -1.666, 2.414, -0.8874, -1.914, -1.292, 0.1891,
    -1.814, -1.059, -4.463, 4.512, -0.09853, -1.129, 3.936, 1.901, -0.7259, -0.02741, 5.545, -4.142, -0.3793,
    -0.8715, -9.316, 0.04512, -0.7021, -0.02987, 1.078, 0.1115, -0.2026, 0.3914, 0.2168, 2.498, -1.724,
    -0.3862, -0.583, -3.891, 1.998, 0.2512, 0.3214, -4.375, -3.124, 0.7442, 0.3127, -5.028, 3.851, 0.469,
    -0.443, -0.2671, 2.615, 1.626, 0.9748,
];
/// Minimum log odds for a name.
pub(super) const SURELY: f32 = 8.0;
