"""Shares small walls out and compares with the optimum: python tools/outside/groups.py PROGRAM OUT

Needs Python 3.11 and numpy, pdfplumber, pypdfium2, scipy. Each check names what it is checked against. Ends with "N passed, M failed" and
exits 1 where one failed."""

import json
import math
import re
import shutil
import subprocess
import sys
from collections import Counter
from pathlib import Path

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp

from measure import Pdf
from pdf import Tally

PICTURE = "samples/harbour-evening/picture.png"
LEVELS = ["plain", "easy", "medium", "hard"]
BLOCKS_WORSE = 1.05  # what the busiest of a block may draw more than the optimum, for short borders


class Wall:
    def __init__(self, folder):
        self.folder = folder
        plan = json.loads((folder / "plan.json").read_text())
        self.columns, self.rows = plan["grid"]["columns"], plan["grid"]["rows"]
        self.level = {piece["label"]: LEVELS.index(piece["level"]) for piece in plan["pieces"]}
        self.cell = {piece["label"]: piece["row"] * self.columns + piece["column"] for piece in plan["pieces"]}
        self.minutes = [level["minutes_a_piece"] for level in plan["levels"]]

    def divide(self, program, groups, spread):
        subprocess.run([program, "groups", str(self.folder), groups, "--spread", spread], check=True, capture_output=True)
        return json.loads((self.folder / "groups.json").read_text())["groups"]

    def busiest(self, groups):
        each = [sum(self.minutes[self.level[label]] for label in group["squares"]) / group["people"] for group in groups]
        return max(each)

    def counts(self, group):
        counts = Counter(self.level[label] for label in group["squares"])
        return [counts[level] for level in range(4)]


def quotas(people, pieces):
    """The method of largest remainders, worked out anew; every group at least one."""
    exact = [p / sum(people) * pieces for p in people]
    got = [max(1, math.floor(e + 1e-9)) for e in exact]
    for group in sorted(range(len(people)), key=lambda g: (got[g] - exact[g], g)):
        if sum(got) < pieces:
            got[group] += 1
    return got


def scattered_optimum(wall, sizes, people):
    """Least minutes of the busiest, where every group has of each level its part, rounded up or down."""
    groups, all_levels = len(sizes), [sum(level == own for level in wall.level.values()) for own in range(4)]
    count = groups * 4 + 1
    low, high = numpy.zeros(count), numpy.full(count, numpy.inf)
    for g in range(groups):
        for level in range(4):
            exact = all_levels[level] * sizes[g] / sum(sizes)
            low[g * 4 + level], high[g * 4 + level] = math.floor(exact + 1e-9), math.ceil(exact - 1e-9)
    rows, least, most = [], [], []
    for g in range(groups):
        row = numpy.zeros(count)
        row[g * 4 : g * 4 + 4] = 1
        rows.append(row), least.append(sizes[g]), most.append(sizes[g])
        row = numpy.zeros(count)
        row[g * 4 : g * 4 + 4] = numpy.array(wall.minutes) / people[g]
        row[-1] = -1
        rows.append(row), least.append(-numpy.inf), most.append(0)
    for level in range(4):
        row = numpy.zeros(count)
        row[level:-1:4] = 1
        rows.append(row), least.append(all_levels[level]), most.append(all_levels[level])
    goal = numpy.zeros(count)
    goal[-1] = 1
    whole = numpy.ones(count)
    whole[-1] = 0
    found = milp(goal, constraints=LinearConstraint(numpy.array(rows), least, most), integrality=whole, bounds=Bounds(low, high))
    return found.fun


def beside(wall, cell):
    row, column = divmod(cell, wall.columns)
    near = [(row - 1, column), (row + 1, column), (row, column - 1), (row, column + 1)]
    return [r * wall.columns + c for r, c in near if 0 <= r < wall.rows and 0 <= c < wall.columns]


def blocks_optimum(wall, sizes, people):
    """Least minutes of the busiest over all connected parts of these sizes: a flow from one cell reaches every other of its group."""
    cells, groups = wall.columns * wall.rows, len(sizes)
    level = {wall.cell[label]: own for label, own in wall.level.items()}
    arcs = [(a, b) for a in range(cells) for b in beside(wall, a)]
    own = lambda c, g: c * groups + g
    root = lambda c, g: cells * groups + c * groups + g
    flow = lambda a, g: 2 * cells * groups + a * groups + g
    count = 2 * cells * groups + len(arcs) * groups + 1
    rows, least, most = [], [], []

    def add(entries, low, high):
        row = numpy.zeros(count)
        for at, value in entries:
            row[at] += value
        rows.append(row), least.append(low), most.append(high)

    for c in range(cells):
        add([(own(c, g), 1) for g in range(groups)], 1, 1)
    for g, size in enumerate(sizes):
        add([(own(c, g), 1) for c in range(cells)], size, size)
        add([(root(c, g), 1) for c in range(cells)], 1, 1)
        add([(own(c, g), wall.minutes[level[c]] / people[g]) for c in range(cells)] + [(count - 1, -1)], -numpy.inf, 0)
        for c in range(cells):
            add([(root(c, g), 1), (own(c, g), -1)], -numpy.inf, 0)
            into = [(flow(a, g), 1) for a, (_, head) in enumerate(arcs) if head == c]
            out = [(flow(a, g), -1) for a, (tail, _) in enumerate(arcs) if tail == c]
            add(into + out + [(own(c, g), -1), (root(c, g), size)], 0, 0)
            for at, _ in into:
                add([(at, 1), (own(c, g), -size)], -numpy.inf, 0)
    goal = numpy.zeros(count)
    goal[-1] = 1
    whole = numpy.zeros(count)
    whole[: 2 * cells * groups] = 1
    high = numpy.full(count, numpy.inf)
    high[: 2 * cells * groups] = 1
    found = milp(goal, constraints=LinearConstraint(numpy.array(rows), least, most), integrality=whole,
                 bounds=Bounds(numpy.zeros(count), high), options={"time_limit": 60})
    return found.fun if found.status == 0 else None


def connected(wall, labels):
    cells = {wall.cell[label] for label in labels}
    seen, open_ = set(), [next(iter(cells))]
    while open_:
        cell = open_.pop()
        if cell not in seen:
            seen.add(cell)
            open_.extend(near for near in beside(wall, cell) if near in cells)
    return seen == cells


def event(program, out, columns, rows):
    folder = out / f"{columns}x{rows}"
    shutil.rmtree(folder, ignore_errors=True)
    typed = ["new", str(folder), "--picture", PICTURE, "--columns", str(columns), "--rows", str(rows), "--name", "Harbour week", "--tag", "K7M"]
    subprocess.run([program, *typed], check=True, capture_output=True)
    subprocess.run([program, "print", str(folder)], check=True, capture_output=True)
    return Wall(folder)


def check_pages(tally, wall, groups):
    """The cover sheets and lists name just the squares of their group."""
    pdf = Pdf(wall.folder / "print" / "groups.pdf")
    label = re.compile(r"(?<![A-Za-z0-9])[A-Z]{1,2}[0-9]{1,2}(?![A-Za-z0-9])")
    results = []
    for number, group in enumerate(groups):
        for page in pdf.pages[2 * number : 2 * number + 2]:
            said = {text for word, _ in page.words for text in label.findall(word)} - {"K7M"}
            results.append((group["name"], said == set(group["squares"])))
    tally.check("groups: a cover sheet and a list for each group, with its own squares", [("pages", len(pdf.pages) == 2 * len(groups)), *results], "pdfplumber")


def main():
    program, out = sys.argv[1], Path(sys.argv[2])
    out.mkdir(parents=True, exist_ok=True)
    tally = Tally()
    lists = ["3A 26, 3B 24", "3A 26, 3B 24, club 12", "reds 9, blues 9, greens 9, golds 9", "one 1, many 40", "a 3, b 5, c 7, d 11, e 2"]
    exact, parts, sizes_right, worse, hang = [], [], [], [], []
    for columns, rows in [(4, 3), (5, 4), (10, 8)]:
        wall = event(program, out, columns, rows)
        for groups in lists:
            people = [int(one.split()[-1]) for one in groups.split(",")]
            name = f"{columns} × {rows}, {groups}"
            shared = wall.divide(program, groups, "scattered")
            sizes = [len(group["squares"]) for group in shared]
            sizes_right.append((name, sizes == quotas(people, columns * rows)))
            best = scattered_optimum(wall, sizes, people)
            exact.append((f"{name}: {wall.busiest(shared):.3f} for {best:.3f}", abs(wall.busiest(shared) - best) < 1e-6))
            blocks = wall.divide(program, groups, "blocks")
            hang.extend((f"{name}: {group['name']}", connected(wall, group["squares"])) for group in blocks)
            if columns * rows <= 20:
                best = blocks_optimum(wall, sizes, people)
                if best is not None:
                    ratio = wall.busiest(blocks) / best
                    parts.append(ratio)
                    worse.append((f"{name}: {ratio:.3f}", ratio <= BLOCKS_WORSE))
        check_pages(tally, wall, blocks)
    tally.check("groups: pieces in proportion to people", sizes_right, "method of largest remainders, worked out anew")
    tally.check("groups: scattered, the busiest has least to draw", exact, "SciPy milp: the optimum")
    tally.check("groups: blocks are connected", hang, "search from cell to cell")
    print(f"groups: in blocks the busiest draws {max(parts):.3f} times the optimum at most, {numpy.mean(parts):.3f} times on the mean of {len(parts)}")
    tally.check("groups: in blocks the busiest has hardly more than the least to draw", worse, f"SciPy milp with a flow through each part: {BLOCKS_WORSE}")
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(1 if tally.failed else 0)


if __name__ == "__main__":
    main()
