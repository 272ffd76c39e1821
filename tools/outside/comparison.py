"""Measures the comparison prints with other people's readers: python tools/outside/comparison.py COMPARISON FOLDER OUT

COMPARISON is the built example of that name, FOLDER an event folder, OUT where the prints go. Needs what pdf.py needs. Each check names
what it is checked against; lengths within 0.1 mm. Ends with "N passed, M failed" and exits 1 where one failed."""

import re
import subprocess
import sys
import tomllib
from pathlib import Path

import pikepdf
from PIL import Image, ImageSequence

from measure import Pdf
from pdf import PAPERS, SMALLEST_POINTS, Tally, clear_of_edges, letters_apart, near, rulers_are_right

DOCUMENTS = ("side-by-side", "true-scale", "pairs", "take-home", "giving-back", "making-of", "math-page", "poster")
SLIP_MM = (94.0, 119.0)  # a slip to take home
TRUE_SIZE = ("true-scale", "take-home", "giving-back", "poster")  # what is cut out or measured: the ruler stands beside it
BOX_MM = 3.6  # a box to check, beside a square to give back
SHARED_MM = 10.0  # what neighbours of a poster share
SCREEN_PX = 1600
GIF_BYTES = 5_000_000


def check_pages(tally, name, pdf, paper):
    width, height, source = PAPERS[paper]
    pages = list(enumerate(pdf.pages, start=1))
    tally.check(f"{name}: pages are {paper}", (
        (n, near(p.size[0], width) and near(p.size[1], height)) for n, p in pages
    ), source)
    if name in TRUE_SIZE:
        tally.check(f"{name}: rulers of 100 mm and 4 in", ((n, rulers_are_right(p)) for n, p in pages),
                    "millimetre: ISO 80000-3; inch: 25.4 mm exactly")
        tally.check(f"{name}: “100%” on the page", ((n, "100%" in p.all_words.replace(" ", "")) for n, p in pages), "design")
    else:
        tally.check(f"{name}: no ruler where nothing has its true size", ((n, not rulers_are_right(p)) for n, p in pages), "design")
    tally.check(f"{name}: nothing in the unprintable edge", ((n, clear_of_edges(p)) for n, p in pages),
                "6.35 mm: common practice, no source")
    tally.check(f"{name}: no words below 8 pt", (
        (n, all(size >= SMALLEST_POINTS - 1e-3 for _, _, size in p.letters)) for n, p in pages
    ), "design")
    tally.check(f"{name}: no letter beyond the page, none upon another", ((n, letters_apart(p)) for n, p in pages), "pdfplumber")
    tally.check(f"{name}: a made picture is called made", (
        (n, "practice picture" in p.all_words or "imagen de práctica" in p.all_words) for n, p in pages if n == 1 or name == "poster"
    ), "design")


def check_tags(tally, name, path):
    with pikepdf.open(path) as pdf:
        root = pdf.Root
        tally.check(f"{name}: tagged, with a language and figures that say what they show", [
            ("tags", bool(root.MarkInfo.Marked) and "/StructTreeRoot" in root),
            ("language", "/Lang" in root),
            ("alt", any(alternatives(root.StructTreeRoot))),
        ], "ISO 14289-1")


def alternatives(node, depth=0):
    """The texts that stand for figures."""
    if isinstance(node, pikepdf.Array):
        for child in node:
            yield from alternatives(child, depth + 1)
    elif isinstance(node, pikepdf.Dictionary) and depth < 60:
        if "/Alt" in node:
            yield str(node.Alt)
        if "/K" in node:
            yield from alternatives(node.K, depth + 1)


def whole_cells(length, side):
    """How many sides a length is, 0 where it is no whole number of them."""
    count = round(length / side)
    return count if count > 0 and near(length, count * side) else 0


def check_true_scale(tally, pdf, wall):
    page = pdf.pages[0]
    piece, square = wall["piece_mm"], wall["square_mm"]
    cells = lambda side: [
        (whole_cells(r.width, side), whole_cells(r.height, side), r) for r in page.outlines
        if whole_cells(r.width, side) and whole_cells(r.height, side)
    ]
    squares = cells(square)
    pieces = [c for c in cells(piece) if c[0] <= wall["columns"] and c[1] <= wall["rows"]]
    tally.check("true-scale: whole pieces and whole squares at 1 : 1", [
        ("squares", len(squares) >= 1),
        ("pieces", any(c[0] * c[1] > 1 for c in pieces)),
        # the framed pieces are as many as the squares
        ("frame", any(c[:2] == s[:2] for c in pieces for s in squares)),
    ], "event.toml, pdfplumber")
    # the drawing of both outlines: the smaller one inside the larger, by the scale factor
    scale = square / piece
    nested = [
        (a, b) for a in page.outlines for b in page.outlines
        if a.width > b.width and near(a.width, scale * b.width) and near(a.height, scale * b.height)
        and near(a.x, b.x) and near(a.y + a.height, b.y + b.height)
    ]
    tally.check("true-scale: the original in the wall's outline, by the scale factor", [("nested", bool(nested))], "event.toml, pdfplumber")


def check_side_by_side(tally, pdf, wall, unit_mm):
    page = pdf.pages[0]
    frames = [o for o in page.outlines if o.width > 30]
    pictures = sorted({(round(r.width, 2), round(r.height, 2)) for r in frames})
    # the original is drawn in curves, which may reach beyond and are cut; the wall is a photo
    drawn = page.areas
    holds = lambda frame: any(frame.near(i, 0.1) for i in page.images) or any(frame.holds(*d.centre) for d in drawn)
    ratio = wall["rows"] / wall["columns"]
    tally.check("side-by-side: both as large, in the wall's shape", [
        ("two", len(frames) == 2 and all(map(holds, frames))),
        ("a photo and a drawing", len(page.images) == 1 and bool(drawn)),
        ("one size", len(pictures) == 1),
        ("shape", near(pictures[0][1], pictures[0][0] * ratio)),
    ], "pdfplumber")
    # bars: level lines with two upright ends of 2 mm; each is a whole number of units in its own scale
    width = pictures[0][0]
    ends = [line for line in page.lines if near(line.height, 2.0) and line.width < 0.01]
    bars = [
        line for line in page.lines
        if line.height < 0.01 and sum(near(end.y + 1, line.y) and (near(end.x, line.x) or near(end.x, line.x + line.width)) for end in ends) == 2
    ]
    true = [bar.width / width * wall["columns"] * side for bar, side in zip(sorted(bars, key=lambda b: (b.y, b.x)), (wall["piece_mm"], wall["square_mm"]))]
    tally.check("side-by-side: bars in the true scale of each", [
        (f"{length:.2f} mm", whole_cells(length, unit_mm) > 0) for length in true
    ] + [("two", len(true) == 2)], "pdfplumber")


def check_poster(tally, pdf, wall):
    """The pictures of all pages, put together with the strips that neighbours share, have the wall's shape."""
    parts = []
    for page in pdf.pages[1:]:
        marks = [line for line in page.lines if near(max(line.width, line.height), 3.0)]
        level = sorted({round(line.y, 1) for line in marks if line.width > line.height})
        upright = sorted({round(line.x, 1) for line in marks if line.height > line.width})
        parts.append((upright[-1] - upright[0], level[-1] - level[0]))
        here = [r for r in page.images if r.width > 5]
        tally.check("poster: the picture fills what is cut out", [
            (r, r.x <= upright[0] + 0.1 and r.x + r.width >= upright[-1] - 0.1
             and r.y <= level[0] + 0.1 and r.y + r.height >= level[-1] - 0.1) for r in here
        ], "pdfplumber")
    across = next(n for n in range(1, len(parts) + 1) if n == len(parts) or parts[n][0] > parts[n - 1][0] + 0.1 or n == 3)
    width = sum(p[0] for p in parts[:across]) - SHARED_MM * (across - 1)
    rows = parts[::across]
    height = sum(p[1] for p in rows) - SHARED_MM * (len(rows) - 1)
    tally.check("poster: all pages together have the wall's shape", [
        (f"{width:.1f} × {height:.1f} mm", abs(height / width - wall["rows"] / wall["columns"]) < 1e-3),
    ], "pdfplumber")


def check_take_home(tally, pdf, wall):
    """Each slip's label against the spot that is lit: by its outline, and by how much darker it is than what is veiled around it."""
    columns, rows = wall["columns"], wall["rows"]
    labels, places, lit = [], [], []
    for page in pdf.pages:
        image = page.raster(6)
        level = lambda r: float(image[round(r.y * 6) + 2 : round((r.y + r.height) * 6) - 2, round(r.x * 6) + 2 : round((r.x + r.width) * 6) - 2].mean())
        for slip in (o for o in page.outlines if near(o.width, SLIP_MM[0]) and near(o.height, SLIP_MM[1])):
            inside = [o for o in page.outlines if slip.holds(*o.centre) and o.width < slip.width - 1]
            mural = max(inside, key=lambda o: o.width * o.height)
            cell = (mural.width / columns, mural.height / rows)
            spots = [o for o in inside if near(o.width, cell[0]) and near(o.height, cell[1])]
            words = "".join(text for text, r, _ in page.letters if slip.holds(*r.centre))
            label = re.search(r"(?:Square|Cuadro) ?([A-Z]+)([0-9]+),", words)
            labels.append(label.group(0) if label else words)
            if len(spots) != 1 or not label:
                places.append((words, False))
                continue
            column, up = ord(label.group(1)) - ord("A"), int(label.group(2)) - 1
            row = rows - 1 - up if wall["rows_from"] == "bottom" else up
            spot = spots[0]
            places.append((label.group(0), near(spot.x, mural.x + column * cell[0]) and near(spot.y, mural.y + row * cell[1])))
            lit.append((label.group(0), level(spot)))
    tally.check("take-home: a slip for every square, once", [
        (f"{len(labels)}, {len(set(labels))}", len(labels) == len(set(labels)) == columns * rows),
    ], "pdfplumber")
    tally.check("take-home: the spot that is lit is the square's own", places, "pdfplumber, the grid in event.toml")
    mean = sum(own for _, own in lit) / max(len(lit), 1)
    veiled = [float(page.raster(6).mean()) for page in pdf.pages]
    tally.check("take-home: what is lit stands out from what is veiled", [(f"{mean:.0f}, {min(veiled):.0f}", len(lit) == columns * rows and mean < min(veiled) - 15)], "PDFium, means of levels")


def check_giving_back(tally, pdf, wall):
    """Every label once, beneath its own picture, with a box beside it."""
    columns, rows = wall["columns"], wall["rows"]
    labels, boxes = [], 0
    for page in pdf.pages:
        labels += re.findall(r"\b[A-Z]+[0-9]+\b", " ".join(text for text, r in page.words if text.strip() and not text.startswith("K7M")))
        boxes += sum(1 for o in page.outlines if near(o.width, BOX_MM) and near(o.height, BOX_MM))
    wanted = columns * rows
    tally.check("giving-back: every label once, a box for each", [
        (f"{len(labels)} labels", len(labels) == len(set(labels)) == wanted),
        (f"{boxes} boxes", boxes == wanted),
    ], "pdfplumber, the grid in event.toml")


def check_screens(tally, out):
    pictures = [Image.open(out / f"{name}.jpg") for name in DOCUMENTS]
    tally.check("pictures for a screen", [(p.filename, max(p.size) == SCREEN_PX and not p.getexif()) for p in pictures], "Pillow")
    moving = Image.open(out / "filling.gif")
    shown = [frame.info["duration"] for frame in ImageSequence.Iterator(moving)]
    tally.check("filling.gif: a second a check, four for the last", [
        ("times", shown[-1] == 4000 and set(shown[:-1]) == {1000}),
        ("width", moving.size[0] <= 640),
        ("again", moving.info.get("loop") == 0),
        ("size", (out / "filling.gif").stat().st_size <= GIF_BYTES),
    ], "Pillow; GIF89a")


def main():
    program, folder, out = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])
    wall = tomllib.loads((folder / "event.toml").read_text())["wall"]
    tally = Tally()
    for paper, language in (("letter", "en"), ("a4", "es"), ("tabloid", "es"), ("a3", "en")):
        here = out / f"{paper}-{language}"
        print(f"--- {paper}, {language}")
        subprocess.run([program, folder, here, paper, language], check=True)
        pdfs = {name: Pdf(here / f"{name}.pdf") for name in DOCUMENTS}
        for name, pdf in pdfs.items():
            check_pages(tally, name, pdf, paper)
            check_tags(tally, name, here / f"{name}.pdf")
        check_true_scale(tally, pdfs["true-scale"], wall)
        check_side_by_side(tally, pdfs["side-by-side"], wall, 10.0 if paper.startswith("a") else 25.4)
        check_poster(tally, pdfs["poster"], wall)
        check_take_home(tally, pdfs["take-home"], wall)
        check_giving_back(tally, pdfs["giving-back"], wall)
        check_screens(tally, here)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(1 if tally.failed else 0)


if __name__ == "__main__":
    main()
