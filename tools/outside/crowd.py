"""Compares crowd and shapes with scipy, scikit-image, shapely and SimPy: python tools/outside/crowd.py PROGRAM

PROGRAM is the built example `crowd` (cargo build --release --example crowd). Needs Python 3.11, numpy, scipy, scikit-image,
shapely and simpy. What is drawn by lot comes from a fixed seed. Ends with "N passed, M failed" and exits 1 where one failed.

Perimetric complexity: perimeter^2 / (4 pi area) (Attneave & Arnoult 1956; Pelli, Burns, Farell & Moore-Page 2006). Shapely has it
exactly from a polygon's corners; scikit-image estimates the perimeter from the same pixels as the program here.

The evening is played by SimPy on the same times, and in its limiting cases by the formulas of A. K. Erlang (1917) for M/M/c with and
without a line, whose own code here is first held against tables of his functions."""

import json
import subprocess
import sys

import numpy
import shapely
import simpy
from scipy import integrate, ndimage
from scipy.stats import binom, gamma, poisson
from skimage.measure import perimeter_crofton
from skimage.metrics import structural_similarity

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


def erlang_b(offered, servers):
    """Chance that all servers are busy when nobody waits, by the recursion over the number of servers."""
    chance = 1.0
    for n in range(1, servers + 1):
        chance = offered * chance / (n + offered * chance)
    return chance


def erlang_c(offered, servers):
    """Chance of having to wait where all do."""
    blocked = erlang_b(offered, servers)
    return servers * blocked / (servers - offered * (1 - blocked))


def times(chance, mean, count):
    return chance.exponential(mean, count).tolist()


def evening(chance, visitors, a_minute, **stations):
    """An evening on which everything takes no time and has room enough, but for what is given."""
    comes = numpy.cumsum(chance.exponential(1 / a_minute, visitors)).tolist()
    patience = stations.pop("patience", None)
    usual = {"giving_out": 10**6, "seats": 10**6, "hanging": 10**6, "pieces": visitors, "giving_out_times": [0.0],
             "drawing_times": [0.0], "hanging_times": [0.0], "stays": []}
    return {**usual, **stations, "visitors": [[minute, patience] for minute in comes]}


def batches(values, count=40):
    """Mean of a correlated series and its standard error, from the means of batches."""
    means = numpy.array([part.mean() for part in numpy.array_split(numpy.asarray(values, float), count)])
    return means.mean(), means.std(ddof=1) / numpy.sqrt(count)


def check_erlang(tally, program, chance):
    """Stations in their limiting cases: M/M/c with a line (giving out, seats, hanging) and without one (nobody waits)."""
    # offered traffic at which 1 % and 5 % are blocked, to two decimals: the tables of Erlang's loss formula (from memory)
    table = [(5, 0.01, 1.36), (10, 0.01, 4.46), (20, 0.01, 12.03), (5, 0.05, 2.22), (10, 0.05, 6.22)]
    tally.within("Erlang B, by servers", [abs(erlang_b(a, n) - b) / b for n, b, a in table], 0.015, "of it", "published tables, from memory")
    # a single server waits with the chance that it is busy (M/M/1)
    tally.within("Erlang C of one server", [abs(erlang_c(a, 1) - a) for a in (0.1, 0.5, 0.9)], 1e-12, "", "M/M/1: C = rho")
    visitors, off = 40_000, []
    for station, waits in [("giving_out", "given_out"), ("seats", "given_out"), ("hanging", "taken_to_hang")]:
        name = {"giving_out": "giving_out_times", "seats": "drawing_times", "hanging": "hanging_times"}[station]
        for servers, busy in [(1, 0.6), (3, 0.75), (8, 0.8)]:
            mean = 2.0
            asked = evening(chance, visitors, servers * busy / mean, **{station: servers, name: times(chance, mean, visitors)})
            answer = numpy.array(ask(program, [{"evening": asked}])[0][waits])
            minutes = answer[:, 1] - answer[:, 0]
            waits_at_all = erlang_c(servers * busy, servers)
            for ours, theirs in [(minutes > 1e-9, waits_at_all), (minutes, waits_at_all * mean / (servers * (1 - busy)))]:
                found, error = batches(ours)
                off.append(abs(found - theirs) / error)
    tally.within("waits of M/M/c: chance and mean", off, 4.0, "standard errors", "Erlang C")
    off = []
    for servers, offered in [(1, 0.5), (3, 3.0), (10, 7.0), (24, 20.0)]:
        asked = evening(chance, visitors, offered / 5.0, seats=servers, drawing_times=times(chance, 5.0, visitors), patience=0.0)
        answer = ask(program, [{"evening": asked}])[0]
        # to a thousandth of a second, for a number that is written and read again may differ in its last bit
        left = {round(since, 5) for since, _ in answer["left"]}
        found, error = batches([round(comes, 5) in left for comes, _ in asked["visitors"]])
        off.append(abs(found - erlang_b(offered, servers)) / error)
    tally.within("visitors who find no seat and do not wait", off, 4.0, "standard errors", "Erlang B")


class Evening:
    """The same evening in SimPy: the head of the line holds `front` until a seat and a helper are free."""

    def __init__(self, asked):
        self.asked, self.env = asked, simpy.Environment()
        self.front = simpy.Resource(self.env, 1)
        self.helpers, self.seats = simpy.Resource(self.env, asked["giving_out"]), simpy.Resource(self.env, asked["seats"])
        self.hangers = simpy.Resource(self.env, asked["hanging"])
        self.over = self.env.event()
        self.given_out, self.left, self.sent_away, self.taken_to_hang, self.up, self.drawn = [], [], [], [], [], 0
        for comes, patience in asked["visitors"]:
            self.env.process(self.visitor(comes, patience))
        self.env.run()

    def visitor(self, comes, patience):
        yield self.env.timeout(comes)
        yield from self.line(comes, patience)

    def line(self, comes, patience, again=False):
        """Whoever stays for another piece is patient, and is no visitor who goes without one."""
        env = self.env
        ends = env.event() if patience is None else env.timeout(patience)
        held = []
        if self.over.triggered:
            return None if again else self.sent_away.append([comes, env.now])
        for resource in (self.front, self.seats, self.helpers):
            request = resource.request()
            yield request | ends | self.over
            if not request.triggered:
                request.cancel()
                for other, own in held:
                    other.release(own)
                gone = self.sent_away if self.over.triggered else self.left
                return None if again else gone.append([comes, env.now])
            held.append((resource, request))
        (_, front), (_, seat), (_, helper) = held
        service = len(self.given_out)
        self.given_out.append([comes, env.now])
        if len(self.given_out) == self.asked["pieces"]:
            self.over.succeed()
        self.front.release(front)
        yield env.timeout(self.asked["giving_out_times"][service])
        self.helpers.release(helper)
        yield env.timeout(self.asked["drawing_times"][service])
        self.seats.release(seat)
        stays = self.asked["stays"][self.drawn]
        self.drawn += 1
        if stays:
            env.process(self.line(env.now, None, again=True))
        env.process(self.hang(env.now))

    def hang(self, since):
        with self.hangers.request() as helper:
            yield helper
            service = len(self.taken_to_hang)
            self.taken_to_hang.append([since, self.env.now])
            yield self.env.timeout(self.asked["hanging_times"][service])
        self.up.append(self.env.now)


def check_evening(tally, program, chance):
    """Whole evenings on the same times: each wait and each square that comes up."""
    problems = []
    for _ in range(120):
        count = int(chance.integers(10, 120))
        problems.append({
            "giving_out": int(chance.integers(1, 4)), "seats": int(chance.integers(2, 30)), "hanging": int(chance.integers(1, 4)),
            "pieces": int(chance.integers(5, 150)),
            "visitors": [[float(comes), None if chance.uniform() < 0.3 else float(chance.lognormal(2.5, 0.6))] for comes in numpy.sort(chance.beta(2, 3, count) * 90)],
            "giving_out_times": chance.lognormal(0.1, 0.4, 200).tolist(), "drawing_times": chance.lognormal(2.5, 0.5, 200).tolist(),
            "hanging_times": chance.lognormal(0.1, 0.4, 200).tolist(), "stays": (chance.uniform(size=400) < 0.2).tolist(),
        })
    for name in ("given_out", "left", "sent_away", "taken_to_hang", "up"):
        errors = []
        for answer, problem in zip(ask(program, [{"evening": problem} for problem in problems]), problems):
            ours, theirs = numpy.sort(numpy.array(answer[name]), 0), numpy.sort(numpy.array(getattr(Evening(problem), name)), 0)
            errors.append(numpy.abs(ours - theirs).max(initial=0.0) if ours.shape == theirs.shape else numpy.inf)
        tally.within(f"whole evenings, {name.replace('_', ' ')}", errors, 1e-6, "minutes", "SimPy on the same times")


SCENES = [
    {"visitors": [60, 120], "arrivals": "drifting", "seats": 30, "minutes": 90, "giving_out": 2, "hanging": 2, "pieces": [10, 30, 30, 10]},
    {"visitors": [90, 90], "arrivals": "drifting", "seats": 24, "minutes": 120, "giving_out": 2, "hanging": 3, "pieces": [15, 40, 35, 18]},
    {"visitors": [100, 160], "arrivals": "drifting", "seats": 24, "minutes": 90, "giving_out": 1, "hanging": 2, "pieces": [0, 60, 48, 0]},
]
LEVEL_MINUTES, HELPER_MINUTES = [6, 10, 15, 22], 1.2


def other_evening(chance, scene):
    """An evening by other laws than the program's: a triangle of arrivals, gamma times, exponential patience, its own pace."""
    minutes, (least, most) = scene["minutes"], scene["visitors"]
    visitors = int(round(chance.uniform(least, most) * chance.uniform(0.7, 1.3)))
    pace, hands = chance.uniform(0.75, 1.3), chance.uniform(0.7, 1.4)
    levels = [minute for count, minute in reversed(list(zip(scene["pieces"], LEVEL_MINUTES))) for _ in range(count)]
    comes = numpy.sort(chance.triangular(0, minutes * chance.uniform(0.2, 0.45), minutes, visitors))
    # nothing is handed out that could not be up at the end
    comes = comes[comes < minutes - 2 * HELPER_MINUTES - LEVEL_MINUTES[0]]
    service = lambda mean, count: (mean * chance.gamma(6, 1 / 6, count)).tolist()
    return {
        "giving_out": scene["giving_out"], "seats": scene["seats"], "hanging": scene["hanging"], "pieces": len(levels),
        "visitors": [[float(minute), float(chance.exponential(20))] for minute in comes],
        "giving_out_times": service(HELPER_MINUTES * hands, len(levels)), "hanging_times": service(HELPER_MINUTES * hands, len(levels)),
        "drawing_times": (numpy.array(levels) * pace * chance.gamma(6, 1 / 6, len(levels))).tolist(), "stays": [False] * len(levels),
    }


def check_forecast(tally, program, chance):
    """Nine evenings in ten end within the range that is told while they run; and the rate is the posterior's mean."""
    inside, rates = [], []
    for scene in SCENES:
        ups = [numpy.sort(Evening(other_evening(chance, scene)).up) for _ in range(250)]
        end = numpy.array([(up <= scene["minutes"]).sum() for up in ups])
        for part in (0.35, 0.5, 0.65, 0.8):
            minute = part * scene["minutes"]
            now = [int((up <= minute).sum()) for up in ups]
            answer = ask(program, [{"forecast": {**scene, "minute": minute, "up": now}}])[0]
            low, usual, high = numpy.array(answer["forecasts"]).T
            inside.append((low <= end) & (end <= high))
            print(f"  {scene['visitors']} at {part:.0%}: {inside[-1].mean():.3f} inside, {numpy.mean(high - low):.1f} wide, {numpy.mean(usual - end):+.1f} off, plan worth {answer['strength']:g}")
            for n in (0, 5, now[0], 60):
                k, m = answer["strength"], answer["up"]
                likely = lambda rate: gamma.pdf(rate, k, scale=1 / k) * poisson.pmf(n, rate * m)
                ours, wide = (k + n) / (k + m), (k + n) ** 0.5 / (k + m)
                around = max(0.0, ours - 15 * wide), ours + 25 * wide
                most = likely(ours)  # so that small chances do not vanish
                whole = [integrate.quad(lambda rate, power=power: rate**power * likely(rate) / most, *around, points=[ours], limit=400)[0] for power in (0, 1)]
                rates.append(abs(whole[1] / whole[0] / ours - 1))
    tally.within("posterior rate", rates, 1e-4, "of it", "scipy: gamma prior times Poisson likelihood, integrated")
    inside = numpy.concatenate(inside).mean()
    tally.within("evenings that end within the range of 90 %, beyond 88 to 92 %", [abs(inside - 0.9)], 0.02, "", f"another simulator, {inside:.3f} inside")


def drawn(chance, columns, rows, kind):
    """A picture of few colours, 16 pixels to a piece: a sun over hills, stripes, blobs, small dots."""
    height, width = 16 * rows, 16 * columns
    y, x = numpy.mgrid[0:height, 0:width]
    colours = chance.integers(0, 256, (5, 3))
    colours[0] = 255
    if kind == "hills":
        index = numpy.where(y > height * (0.6 + 0.2 * numpy.sin(x / 23)), 1, numpy.where((x - width / 3) ** 2 + (y - height / 4) ** 2 < 300, 2, 3))
    elif kind == "stripes":
        index = (x + 2 * y) // 40 % 5
    elif kind == "blobs":
        index = numpy.digitize(rough := ndimage.gaussian_filter(chance.normal(size=(height, width)), 9), numpy.quantile(rough, [0.2, 0.4, 0.6, 0.8]))
    else:
        index = numpy.where((x % 16 - 8) ** 2 + (y % 16 - 8) ** 2 < (x / width * 8) ** 2, 4, 0)
    return colours[index].astype(numpy.uint8)


def check_losses(tally, program, chance):
    """What is lost when a piece is missing: leave one out, and look at the whole picture each time."""
    grey = lambda picture: picture.astype(float) @ [0.299, 0.587, 0.114]
    alike = lambda one, other: structural_similarity(one, other, gaussian_weights=True, sigma=1.5, use_sample_covariance=False, data_range=255)
    for kind, columns, rows in [("hills", 10, 8), ("stripes", 6, 9), ("blobs", 12, 9), ("dots", 7, 5)]:
        picture = drawn(chance, columns, rows, kind)
        ours = ask(program, [{"losses": {"width": 16 * columns, "columns": columns, "rgb": picture.ravel().tolist()}}])[0]["losses"]
        errors = []
        for piece, own in enumerate(ours):
            row, column = divmod(piece, columns)
            without = picture.copy()
            without[16 * row : 16 * row + 16, 16 * column : 16 * column + 16] = 255
            errors.append(abs(own - (1 - alike(grey(picture), grey(without)))))
        tally.within(f"what a missing piece costs, {kind}", errors, 1e-6, "", "skimage.metrics.structural_similarity, one left out")


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    program, tally, chance = sys.argv[1], Tally(), numpy.random.default_rng(20)
    check_binomial(tally, program, chance)
    check_pencils(tally, program, chance)
    check_regions(tally, program, chance)
    check_complexity(tally, program, chance)
    check_erlang(tally, program, chance)
    check_evening(tally, program, chance)
    check_forecast(tally, program, chance)
    check_losses(tally, program, chance)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(tally.failed > 0)


if __name__ == "__main__":
    main()
