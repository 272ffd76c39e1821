"""Compares crowd and shapes with scipy, scikit-image and shapely: python tools/outside/crowd.py PROGRAM

PROGRAM is the built example `crowd` (cargo build --release --example crowd). Needs Python 3.11, numpy, scipy, scikit-image and
shapely. What is drawn by lot comes from a fixed seed. Ends with "N passed, M failed" and exits 1 where one failed.

Perimetric complexity: perimeter^2 / (4 pi area) (Attneave & Arnoult 1956; Pelli, Burns, Farell & Moore-Page 2006). Shapely has it
exactly from a polygon's corners; scikit-image estimates the perimeter from the same pixels as the program here."""

import json
import subprocess
import sys

import numpy
import shapely
from scipy import ndimage
from scipy.stats import binom
from skimage.measure import perimeter_crofton

NOBODY_WAITS = 0.95


class Tally:
    def __init__(self):
        self.passed = self.failed = 0

    def within(self, what, errors, most, unit, source):
        """One check a case: its error."""
        bad = sum(not error <= most for error in errors)
        self.passed += len(errors) - bad
        self.failed += bad if errors else 1
        worst = max(errors, default=float("nan"))
        print(f"{what}: {len(errors)} cases, worst {worst:.2g} {unit}, allowed {most:g}, {bad} FAILED  [{source}]")

    def equal(self, what, pairs, source):
        """One check a pair."""
        bad = [pair for pair in pairs if pair[0] != pair[1]]
        self.passed += len(pairs) - len(bad)
        self.failed += len(bad) if pairs else 1
        shown = f", first {bad[0]}" if bad else ""
        print(f"{what}: {len(pairs)} cases, {len(bad)} FAILED{shown}  [{source}]")


def ask(program, problems):
    lines = "".join(json.dumps(problem) + "\n" for problem in problems)
    answer = subprocess.run([program], input=lines, capture_output=True, text=True, timeout=300, check=True)
    answers = [json.loads(line) for line in answer.stdout.splitlines()]
    if len(answers) != len(problems):
        sys.exit(f"{len(problems)} problems, {len(answers)} answers")
    return answers


def check_binomial(tally, program, chance):
    """Chances and quantiles for up to 500 seats, ends included."""
    problems = []
    for n in [1, 2, 3, 7, 12, 30, 77, 120, 250, 499, 500]:
        for p in [0.0, 1e-9, 1e-4, 0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.999, 1.0, *chance.uniform(0, 1, 20)]:
            k = int(chance.integers(0, n + 1))
            for sure in [0.5, 0.95, 0.99, 1 - 0.05 / 24]:
                problems.append({"binomial": {"n": n, "p": float(p), "k": k, "sure": sure}})
    ours = ask(program, problems)
    asked = [problem["binomial"] for problem in problems]
    theirs = [binom.cdf(a["k"], a["n"], a["p"]) for a in asked]
    errors = [abs(o["cumulative"] - t) for o, t in zip(ours, theirs)]
    tally.within("binomial, chance of at most k", errors, 1e-11, "", "scipy.stats.binom.cdf")
    # scipy takes p = 0 for a distribution below 0: its quantile is -1
    pairs = [(o["quantile"], max(0, int(binom.ppf(a["sure"], a["n"], a["p"])))) for o, a in zip(ours, asked)]
    tally.equal("binomial, quantiles", pairs, "scipy.stats.binom.ppf")


def check_pencils(tally, program, chance):
    """Pencils of each colour; and that together they are enough, which a sum over the multinomial distribution tells."""
    problems = []
    for seats in [1, 5, 12, 30, 64, 150, 500]:
        for colours in [1, 2, 3, 6, 12, 24]:
            shares = chance.dirichlet(numpy.full(colours, 1.5))
            problems.append({"pencils": {"seats": seats, "chances": shares.tolist()}})
    ours = ask(program, problems)
    pairs, enough = [], []
    for answer, problem in zip(ours, problems):
        seats, chances = problem["pencils"]["seats"], numpy.array(problem["pencils"]["chances"])
        sure = 1 - (1 - NOBODY_WAITS) / len(chances)
        pairs.append((answer["counts"], numpy.maximum(binom.ppf(sure, seats, chances), 1).astype(int).tolist()))
        held = chance.multinomial(seats, chances, 20_000)
        enough.append(NOBODY_WAITS - (held <= answer["counts"]).all(axis=1).mean())
    tally.equal("pencils of each colour", pairs, "scipy.stats.binom.ppf")
    tally.within("moments in which somebody waits, beyond 5 %", enough, 0.005, "", "numpy's multinomial, 20,000 moments each")


def shapes_of(program, pictures):
    sized = [{"width": p.shape[1], "height": p.shape[0], "colours": p.ravel().tolist()} for p in pictures]
    return ask(program, [{"shapes": shapes} for shapes in sized])


def check_regions(tally, program, chance):
    """Connected regions of each colour, as sorted sizes."""
    pictures = [chance.integers(0, colours, size) for colours in (2, 3, 5) for size in [(1, 1), (1, 40), (23, 17), (64, 64)]]
    for _ in range(6):  # patches as of a drawing
        rough = ndimage.gaussian_filter(chance.normal(size=(96, 96)), 5)
        pictures.append(numpy.digitize(rough, numpy.quantile(rough, [0.3, 0.5, 0.8])))
    pairs = []
    for picture, answer in zip(pictures, shapes_of(program, pictures)):
        for colour in numpy.unique(picture):
            labels, _ = ndimage.label(picture == colour)
            theirs = sorted(numpy.bincount(labels.ravel())[1:].tolist())
            pairs.append((sorted(r["pixels"] for r in answer["regions"] if r["colour"] == colour), theirs))
    tally.equal("connected regions", pairs, "scipy.ndimage.label")


def star(chance, corners, radius):
    """A simple polygon with corners at even angles, in and out by up to a third."""
    angles = (numpy.arange(corners) + chance.uniform(-0.2, 0.2, corners)) * 2 * numpy.pi / corners + chance.uniform(0, 7)
    away = radius * chance.uniform(0.67, 1, corners)
    return numpy.column_stack([away * numpy.cos(angles), away * numpy.sin(angles)])


def raster(polygon, side):
    """The pixels of a square picture whose centres lie in a polygon."""
    y, x = numpy.mgrid[0:side, 0:side] + 0.5
    return shapely.contains_xy(polygon, x, y).astype(int)


def check_complexity(tally, program, chance):
    """Polygons whose area and perimeter are known, at any place and angle, in three sizes."""
    for radius, most in [(20, 0.06), (40, 0.03), (80, 0.025)]:
        side = 2 * radius + 16
        polygons = []
        for corners in [3, 4, 5, 6, 8, 12] * 8:
            regular = numpy.column_stack([numpy.cos(a := 2 * numpy.pi * numpy.arange(corners) / corners + chance.uniform(0, 7)), numpy.sin(a)])
            points = radius * regular if chance.uniform() < 0.5 or corners < 5 else star(chance, corners, radius)
            polygons.append(shapely.Polygon(points + side / 2 + chance.uniform(-0.5, 0.5, 2)))
        polygons += [shapely.Point(side / 2, side / 2 + chance.uniform()).buffer(radius, quad_segs=200) for _ in range(4)]
        pictures = [raster(polygon, side) for polygon in polygons]
        ours = [
            max((r for r in answer["regions"] if r["colour"] == 1), key=lambda r: r["pixels"])
            for answer in shapes_of(program, pictures)
        ]
        exact = [polygon.length**2 / (4 * numpy.pi * polygon.area) for polygon in polygons]
        off = [abs(o["complexity"] / e - 1) for o, e in zip(ours, exact)]
        tally.within(f"complexity of polygons {2 * radius} px wide", off, most, "of it", "shapely, exact")
        mean = abs(numpy.mean([o["complexity"] / e - 1 for o, e in zip(ours, exact)]))
        tally.within("  its mean over all of them", [mean], 0.01, "of it", "shapely, exact")
        # four directions see a straight edge 5 % short to 3 % long (the formula of Cauchy and Crofton with four angles)
        theirs = [perimeter_crofton(picture, 4) for picture in pictures]
        off = [abs(o["perimeter"] / t - 1) for o, t in zip(ours, theirs)]
        tally.within("  the same perimeters from the same pixels", off, 0.07, "of it", "skimage.measure.perimeter_crofton, 4 directions")


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    program, tally, chance = sys.argv[1], Tally(), numpy.random.default_rng(20)
    check_binomial(tally, program, chance)
    check_pencils(tally, program, chance)
    check_regions(tally, program, chance)
    check_complexity(tally, program, chance)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(tally.failed > 0)


if __name__ == "__main__":
    main()
