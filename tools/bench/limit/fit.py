"""Fits the decision about a name (`src/read/decision.rs`) on made single codes, and writes `src/read/coefficients.rs`.

    cargo run --release --example limit features 10001 3500 > train.csv
    cargo run --release --example limit features 20001 1200 > held-out.csv
    python tools/bench/limit/fit.py train.csv held-out.csv

A logistic regression on the features and their products (Newton's method, ridge), and a minimum of the log odds for a name: that of the likeliest wrong guess among the
codes fitted on, and MARGIN more. What it does is told on the codes held out. The same files give the same coefficients.
"""

import csv
import sys
from pathlib import Path

import numpy as np

# Log odds beyond the likeliest wrong guess: a calibrated model leaves a tenth of such guesses for each 2.3 more.
MARGIN = 2.6
# Ridge, in units of a feature's own spread.
RIDGE = 0.3
OUT = Path(__file__).parents[3] / "src/read/coefficients.rs"


def read(path):
    with open(path, newline="") as file:
        rows = list(csv.reader(file))
    names, rows = rows[0], rows[1:]
    labels = {"kind": np.array([row[0] for row in rows]), "printer": np.array([row[1] for row in rows])}
    numbers = np.array([[float(value) for value in row[2:]] for row in rows])
    right, features = numbers[:, 1] == 1, numbers[:, 3:]
    return names[5:], labels, numbers[:, 0], right, products(features)


def products(features):
    """The features, and the product of each two, each with itself too, in the order in which the program has them."""
    count = features.shape[1]
    pairs = [features[:, i] * features[:, j] for i in range(count) for j in range(i, count)]
    return np.column_stack([features, *pairs])


def fit(features, right):
    mean, spread = features.mean(0), features.std(0)
    spread[spread == 0] = 1
    scaled = np.column_stack([np.ones(len(features)), (features - mean) / spread])
    ridge = RIDGE * np.eye(scaled.shape[1])
    ridge[0, 0] = 0
    weights = np.zeros(scaled.shape[1])
    for _ in range(100):
        chance = 1 / (1 + np.exp(-np.clip(scaled @ weights, -40, 40)))
        hessian = (scaled * (chance * (1 - chance))[:, None]).T @ scaled + ridge
        step = np.linalg.solve(hessian, scaled.T @ (right - chance) - ridge @ weights)
        weights += step
        if np.abs(step).max() < 1e-9:
            break
    own = weights[1:] / spread
    return weights[0] - own @ mean, own


def main():
    names, labels, px, right, features = read(sys.argv[1])
    intercept, weights = fit(features, right)
    odds = intercept + features @ weights
    wrong = np.sort(odds[~right])[::-1]
    surely = round(float(wrong[0]) + MARGIN, 1)
    rounded = [float(f"{weight:.4g}") for weight in weights]
    _, held, held_px, held_right, held_features = read(sys.argv[2])
    held_odds = intercept + held_features @ np.array(rounded)
    held_wrong = np.sort(held_odds[~held_right])[::-1]
    print(f"fitted on {len(right)} codes, {int(right.sum())} of them right guesses; held out {len(held_right)}")
    print(f"likeliest wrong guesses: {wrong[:4].round(1)}, held out {held_wrong[:4].round(1)}; a name from {surely}")
    for printer in sorted(set(held["printer"])):
        own = (held["printer"] == printer) & held_right & (held["kind"] == "Own") & (held_px >= 1.0)
        print(f"  {printer}: {int((held_odds[own] >= surely).sum())} of {int(own.sum())} right guesses from 1 px a module")
    for least in range(4, 12):
        print(f"  from {least}: {int((held_odds[held_right] >= least).sum())} of {int(held_right.sum())}, {int((held_wrong >= least).sum())} wrong")
    chance = np.clip(1 / (1 + np.exp(-np.clip(held_odds, -40, 40))), 1e-12, 1 - 1e-12)
    for low, high in [(0, 0.1), (0.1, 0.5), (0.5, 0.9), (0.9, 0.99), (0.99, 1.1)]:
        among = (chance >= low) & (chance < high)
        if among.any():
            print(f"  said {chance[among].mean():.4f}: right {held_right[among].mean():.4f} of {int(among.sum())}")
    lines = [
        "//! Coefficients of the decision about a name; written by `tools/bench/limit/fit.py`.",
        "//!",
        f"//! Fitted on {len(right)} single made codes, {int(right.sum())} of them right guesses. The likeliest wrong guess among them had",
        f"//! log odds of {wrong[0]:.1f}; among {len(held_right)} held out, {held_wrong[0]:.1f}.",
        "",
        "/// Log odds without any evidence.",
        f"pub(super) const INTERCEPT: f32 = {intercept:.4};",
        "/// Weights, in the order of `decision::FEATURES`, then of the products of each two of them.",
        f"pub(super) const COEFFICIENTS: [f32; {len(rounded)}] = [",
        *[f"    {', '.join(repr(weight) for weight in rounded[at:at + 6])}," for at in range(0, len(rounded), 6)],
        "];",
        "/// Minimum log odds for a name.",
        f"pub(super) const SURELY: f32 = {surely};",
    ]
    OUT.write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
