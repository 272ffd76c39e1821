"""Moves a mural as rehang.pdf says, square by square: python tools/outside/rehang.py EVERYSQUARE FOLDER

Makes events on the sample's picture in FOLDER, has the way to another place printed, and does what its two tables say with a wall of
labels: takes each pile down, lays each square on the one before, hangs each pile from its top. Shares nothing with the program but its
files. Needs what tools/outside/requirements.txt lists. Ends with "N passed, M failed" and exits 1 where one failed."""

import re
import subprocess
import sys
import tomllib
from pathlib import Path

import pdfplumber

from pdf import Tally

PICTURE = Path(__file__).parents[2] / "samples/harbour-evening/picture.png"
LINE = re.compile(r"^(\d+) (\d+) (.*?) ([A-Z]+)(\d+) ([A-Z]+)(\d+)$")
ENDS = re.compile(r"([A-Z]+)(\d+) to ([A-Z]+)(\d+)")
# grid, the place today, the place there; papers in turn
MOVES = [
    ((10, 8), None, "3x4ft, door, 3x4ft"),
    ((10, 8), "3x4ft, 3x4ft", "8x6ft"),
    ((12, 9), "4x6ft, 4x6ft", "3x6ft, pillar, 3x6ft, 3x6ft"),
    ((16, 12), "5x6ft, 5x6ft", "3x6ft, 3x6ft, door, 5x6ft"),
    ((40, 24), None, "6x4m, stairs, 6x4m"),
    ((5, 4), "3x4ft", "8x6ft"),
]


def number(letters):
    """Column of its letters, from 1."""
    value = 0
    for letter in letters:
        value = value * 26 + ord(letter) - 64
    return value


def tables(path):
    """The piles of both tables, in their order: number, count, part, first, last."""
    with pdfplumber.open(path) as pdf:
        text = "\n".join(page.extract_text() for page in pdf.pages)
    down, _, up = text.partition("\nPutting it up\n")
    found = []
    for part in (down, up):
        lines = (LINE.match(line) for line in part.splitlines())
        found.append([(int(m[1]), int(m[2]), m[3], (number(m[4]), int(m[5])), (number(m[6]), int(m[7]))) for m in lines if m])
    return found


def rectangles(parts, columns, rows):
    """The parts of event.toml as columns and rows."""
    label = re.compile(r"([A-Z]+)(\d+)")
    ends = [[(number(m[1]), int(m[2])) for m in (label.fullmatch(part[key]) for key in ("from", "to"))] for part in parts]
    return [(range(a, c + 1), range(min(b, d), max(b, d) + 1)) for (a, b), (c, d) in ends] or [(range(1, columns + 1), range(1, rows + 1))]


def move(tally, program, folder, grid, today, there):
    columns, rows = grid
    new = [program, "new", folder, "--picture", PICTURE, "--columns", columns, "--rows", rows, "--tag", "K7M"]
    run = lambda *words: subprocess.run([str(word) for word in words], check=True, capture_output=True)
    run(*new)
    if today:
        run(program, "rehang", folder, "--wall", today, "--save")
    parts = lambda: rectangles(tomllib.loads((folder / "event.toml").read_text()).get("parts", []), columns, rows)
    before = parts()
    run(program, "rehang", folder, "--wall", there, "--save")
    after = parts()
    down, up = tables(folder / "print" / "rehang.pdf")
    name = f"{columns} x {rows}, {len(before)} to {len(after)} parts"

    wall = {(column, row) for column in range(1, columns + 1) for row in range(1, rows + 1)}
    piles, high, whole = {}, [], []
    for pile, count, _, (right, top), (left, bottom) in down:
        # from right to left, then the row below
        taken = [(column, row) for row in range(top, bottom - 1, -1) for column in range(right, left - 1, -1)]
        high.append((pile, len(taken) == count and all(spot in wall for spot in taken)))
        # nothing that still hangs in the same part is higher
        for spot in taken:
            own = next(p for p in before if spot[0] in p[0] and spot[1] in p[1])
            above = {s for s in wall if s[0] in own[0] and s[1] in own[1] and s[1] > spot[1] and left <= s[0] <= right}
            whole.append((spot, not above))
            wall.discard(spot)
        piles[pile] = taken
    tally.check(f"{name}: each pile has what the table says, and it hangs", high, "the table")
    tally.check(f"{name}: nothing comes down below what still hangs", whole, "common sense")
    tally.check(f"{name}: nothing is left", [(len(wall), not wall)], "the grid")

    hung, wrong = set(), []
    for pile, count, _, (left, bottom), (right, top) in up:
        for spot in [(column, row) for row in range(bottom, top + 1) for column in range(left, right + 1)]:
            square = piles[pile].pop() if piles.get(pile) else None
            wrong.append((spot, square == spot))
            hung.add(spot)
        inside = any(left in p[0] and right in p[0] and top in p[1] and bottom in p[1] for p in after)
        wrong.append((f"pile {pile} in one part", inside))
    tally.check(f"{name}: the top of the pile is always the square that is next", wrong, "a stack")
    tally.check(f"{name}: all hang again", [(len(hung), len(hung) == columns * rows and not any(piles.values()))], "the grid")


def main():
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    program, place, tally = Path(sys.argv[1]).resolve(), Path(sys.argv[2]), Tally()
    place.mkdir(parents=True, exist_ok=True)
    for at, (grid, today, there) in enumerate(MOVES):
        folder = place / str(at)
        subprocess.run(["rm", "-rf", folder], check=True)
        move(tally, program, folder, grid, today, there)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(tally.failed > 0)


if __name__ == "__main__":
    main()
