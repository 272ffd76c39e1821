"""Measures the pieces' curves against the picture's pixels: python tools/outside/drawn.py FOLDER

FOLDER is an event folder that was printed. Needs Python 3.11 and numpy, opencv-python-headless, pypdfium2, scipy, scikit-image. Each check
names what it is checked against. Ends with "N passed, M failed" and exits 1 where one failed."""

import sys
from pathlib import Path

import numpy
from scipy.ndimage import distance_transform_edt

from fill import MEDIAN_MM, WORST_MM, Event, edge_distance, labels_of_picture
from measure import Pdf, Rect
from pdf import Tally

PX_PER_MM = 600 / 25.4
EDGE_PX = 2.5  # so far from an edge a renderer mixes colors
MEETS_MM = 0.05  # how far lines may miss each other across a cut
CLOSE_PX_PER_MM = 2400 / 25.4
INSIDE_MM = (0.06, 0.14)  # where lines are looked at beside a cut
STEEP = 1.5  # a line that runs along a cut crosses it nowhere in particular


def pieces(event):
    """Each piece's label with its pixels at 600 ppi, without the border."""
    pdf = Pdf(event.folder / "print" / "pieces.pdf")
    rasters = {}
    for piece in event.manifest["pieces"]:
        page = piece["page"]
        if page not in rasters:
            rasters = {page: pdf.pages[page - 1].raster(PX_PER_MM)}
        x, y, side = (round(piece[key] * PX_PER_MM) for key in ("x_mm", "y_mm", "side_mm"))
        yield piece, rasters[page][y : y + side, x : x + side]


def close(event):
    """The same at 2,400 ppi."""
    pdf = Pdf(event.folder / "print" / "pieces.pdf")
    for piece in event.manifest["pieces"]:
        area = Rect(piece["x_mm"], piece["y_mm"], piece["side_mm"], piece["side_mm"])
        yield piece, pdf.pages[piece["page"] - 1].part(area, CLOSE_PX_PER_MM)


def nearest(image, colours):
    apart = numpy.abs(image[:, :, None, :].astype(int) - numpy.array(colours)[None, None]).sum(axis=3)
    return apart.argmin(axis=2), apart.min(axis=2)


def crossings(column, colours):
    """Where a line of pixels changes from one pencil to another, in pixels and as that pair; a mixed pixel tells how far."""
    numbers, off = nearest(column[None], colours)
    numbers, off = numbers[0], off[0]
    pure = numpy.flatnonzero(off <= 6)
    found = []
    for a, b in zip(pure, pure[1:]):
        if numbers[a] != numbers[b] and b - a <= 3:
            first, second = (numpy.array(colours[numbers[i]], dtype=float) for i in (a, b))
            mixed = column[a + 1 : b].astype(float)
            share = ((mixed - second) @ (first - second) / ((first - second) @ (first - second))).clip(0, 1).sum()
            found.append((a + 1 + share, (int(numbers[a]), int(numbers[b]))))
    return found


def at_the_edge(image, side, colours):
    """Where edges of areas cross a side of a piece, in mm along it, with how steeply."""
    turned = {"right": image[:, ::-1], "left": image, "top": image.transpose(1, 0, 2), "bottom": image[::-1].transpose(1, 0, 2)}[side]
    at = [round(mm * CLOSE_PX_PER_MM) for mm in INSIDE_MM]
    near, far = (crossings(turned[:, column], colours) for column in at)
    inside, span = (at[0] + 0.5) / CLOSE_PX_PER_MM, (at[1] - at[0]) / CLOSE_PX_PER_MM
    for y, pair in near:
        same = [other for other, own in far if own == pair]
        if not same:
            continue
        other = min(same, key=lambda other: abs(other - y))
        slope = (y - other) / CLOSE_PX_PER_MM / span
        if abs(slope) <= STEEP:
            yield y / CLOSE_PX_PER_MM + slope * inside, pair, slope


def check_edges(tally, event, shown, colours, numbers, side, left, top):
    off, strange, seen = [], 0, 0
    for piece, image in shown:
        n = image.shape[0]
        at = (numpy.arange(n) + 0.5) / n * side
        rows = numpy.clip((top + piece["row"] * side + at).astype(int), 0, numbers.shape[0] - 1)
        across = numpy.clip((left + piece["column"] * side + at).astype(int), 0, numbers.shape[1] - 1)
        truth = numbers[numpy.ix_(rows, across)]
        own, apart = nearest(image, colours)
        sure = apart <= 6
        inner = numpy.zeros_like(sure)
        inner[3:-3, 3:-3] = True
        scale = event.piece_mm / n
        for number in range(len(colours)):
            wrong = inner & sure & (own == number) & (truth != number)
            if wrong.any():
                # where the color is in the next piece only, its pixels are looked for there
                r0, c0 = int(top + piece["row"] * side), int(left + piece["column"] * side)
                grown = numbers[max(r0 - 3, 0) : r0 + round(side) + 3, max(c0 - 3, 0) : c0 + round(side) + 3]
                if (truth == number).any():
                    off.extend(distance_transform_edt(truth != number)[wrong] * scale)
                elif not (grown == number).any():
                    strange += int(wrong.sum())
        strange += int((inner & ~sure & (edge_distance(own) > EDGE_PX)).sum())
        seen += int(inner.sum())
        off.extend([0.0] * int((inner & (edge_distance(truth) <= 1.5) & (own == truth)).sum()))
    off = numpy.array(off or [0.0])
    print(f"pieces: edges off the picture's pixels: median {numpy.median(off):.3f} mm, 99 % {numpy.quantile(off, 0.99):.3f} mm, "
          f"worst {off.max():.3f} mm; {strange} of {seen} pixels of no pencil's color or where it is not")
    tally.check("pieces: edges are where the picture has them", [
        (f"median {numpy.median(off):.3f}", numpy.median(off) <= MEDIAN_MM), (f"worst {off.max():.3f}", off.max() <= WORST_MM),
        (f"{strange} strange", strange == 0),
    ], f"PDFium at 600 ppi against the picture's pixels: {MEDIAN_MM} and {WORST_MM} mm")


def check_cuts(tally, shown, colours):
    """Lines that cross a cut meet."""
    sides = ("left", "right", "top", "bottom")
    met = {(p["column"], p["row"]): {side: list(at_the_edge(image, side, colours)) for side in sides} for p, image in shown}
    results, missed = [], []
    for column, row in met:
        for other, own_side, other_side in (((column + 1, row), "right", "left"), ((column, row + 1), "bottom", "top")):
            if other not in met:
                continue
            own, theirs = met[column, row][own_side], met[other][other_side]
            for y, pair, _ in own:
                same = [z for z, p, _ in theirs if p == pair]
                if same:
                    apart = min(abs(z - y) for z in same)
                    if apart < 0.5:  # farther away it is another line
                        missed.append(apart)
                        results.append((f"{column},{row} {own_side}: {apart:.3f} mm", apart <= MEETS_MM))
    print(f"pieces: {len(missed)} lines that cross a cut miss each other by {numpy.median(missed):.3f} mm, {max(missed):.3f} mm at most")
    tally.check("pieces: lines that cross a cut meet", results, f"PDFium at 2,400 ppi: within {MEETS_MM} mm")


def main():
    event = Event(Path(sys.argv[1]))
    tally = Tally()
    colours, numbers, side, (left, top) = labels_of_picture(event)
    tally.check("pieces: the picture is in its pencils' colors", [("all", (numbers >= 0).all())], "OpenCV")
    shown = list(pieces(event))
    check_edges(tally, event, shown, colours, numbers, side, left, top)
    check_cuts(tally, close(event), colours)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(1 if tally.failed else 0)


if __name__ == "__main__":
    main()
