"""Measures fillers and hangs them on a made wall: python tools/outside/fill.py PROGRAM FOLDER OUT

FOLDER is an event folder that was printed. Needs Python 3.11 and numpy, opencv-python-headless, pdfplumber, pypdfium2, scipy,
scikit-image, zxing-cpp. Each check names what it is checked against. Ends with "N passed, M failed" and exits 1 where one failed."""

import json
import subprocess
import sys
import tomllib
from pathlib import Path

import cv2
import numpy
import zxingcpp
from scipy.ndimage import distance_transform_edt
from skimage.color import rgb2lab

from measure import Pdf
from pdf import TOLERANCE_MM, Tally, near

SOFT = 0.45  # the part of a color in soft color; the rest is white
PX_PER_MM = 300 / 25.4
WALL_PX_PER_MM = 4.0
EDGE_PX = 2.5  # so far from an edge a renderer mixes colors
MEDIAN_MM, WORST_MM = 0.15, 0.4  # how far an edge may be off on a piece


class Event:
    def __init__(self, folder):
        self.folder = folder
        self.manifest = json.loads((folder / "print" / "manifest.json").read_text())
        self.settings = tomllib.loads((folder / "event.toml").read_text())
        self.plan = json.loads((folder / "plan.json").read_text())
        grid = self.manifest["grid"]
        self.columns, self.rows = grid["columns"], grid["rows"]
        self.square_mm, self.piece_mm = grid["square_mm"], grid["piece_mm"]
        self.labels = [square["label"] for square in self.manifest["squares"]]
        self.code = self.manifest["code"]
        self.texts = {square["text"]: square for square in self.manifest["squares"]}


def fill(program, event, more):
    subprocess.run([program, "print", str(event.folder), "fill", *more], check=True, capture_output=True)
    return Pdf(event.folder / "print" / "fill.pdf")


def codes(page):
    """Every code on a page as zxing-cpp reads it: its text, and its upper left corner in mm."""
    image = numpy.ascontiguousarray(page.raster(PX_PER_MM))
    found = zxingcpp.read_barcodes(image, formats=zxingcpp.BarcodeFormat.QRCode)
    return [(code.text, code.position.top_left.x / PX_PER_MM, code.position.top_left.y / PX_PER_MM) for code in found]


def squares_of(event, pdf):
    """Every filler: its label, its page, and the outline of the square around its code."""
    for page in pdf.pages:
        outlines = [o for o in page.outlines if near(o.width, event.square_mm) and near(o.height, event.square_mm)]
        for text, x, y in codes(page):
            around = [o for o in outlines if o.holds(x, y)]
            if around:
                yield event.texts[text]["label"], page, around[0], (x - around[0].x, y - around[0].y)


def shown(page, outline, px_per_mm):
    """What is printed within an outline."""
    image = page.raster(px_per_mm)
    left, top = round(outline.x * px_per_mm), round(outline.y * px_per_mm)
    side = round(outline.width * px_per_mm)
    return image[top : top + side, left : left + side]


def check_sizes(tally, event, pdf, wanted, plain):
    found = list(squares_of(event, pdf))
    labels = sorted(label for label, *_ in found)
    tally.check("fill: each square once, with its own code", [("labels", labels == sorted(wanted))], "zxing-cpp")
    tally.check("fill: squares have the squares' side", (
        (label, near(outline.width, event.square_mm) and near(outline.height, event.square_mm)) for label, _, outline, _ in found
    ), f"pdfplumber, within {TOLERANCE_MM} mm")
    tally.check("fill: the code is where the kit's is", (
        (label, abs(x - event.code["x_mm"]) < 0.3 and abs(y - event.code["y_mm"]) < 0.3) for label, _, _, (x, y) in found
    ), "PDFium and zxing-cpp: its corner, within 0.3 mm")
    glued = [text for page in pdf.pages for text, *_ in codes(page) if event.texts[text]["label"] in plain]
    tally.check("fill: a code to glue for each square of one color", [("all", len(set(glued)) == len(plain) == len(glued))], "zxing-cpp")
    words = " ".join(page.all_words for page in pdf.pages)
    tally.check("fill: each says for whom its spot is kept", ((label, f"kept for whoever draws {label}" in words) for label in wanted), "pdfplumber")


def labels_of_picture(event):
    """The picture in its pencils' numbers, and where its grid begins."""
    picture = cv2.cvtColor(cv2.imread(str(event.folder / event.settings["picture"]["file"])), cv2.COLOR_BGR2RGB)
    colours = [tuple(int(pencil["srgb"][i : i + 2], 16) for i in (1, 3, 5)) for pencil in event.plan["pencils"]]
    numbers = numpy.full(picture.shape[:2], -1)
    for number, colour in enumerate(colours):
        numbers[(picture == colour).all(axis=2)] = number
    height, width = numbers.shape
    side = min(width / event.columns, height / event.rows)
    return colours, numbers, side, ((width - side * event.columns) / 2, (height - side * event.rows) / 2)


def check_edges(tally, event, pdf):
    """Soft colors against the picture's pixels: how far the edges are apart, on the piece."""
    colours, numbers, side, (left, top) = labels_of_picture(event)
    tally.check("fill: the picture is in its pencils' colors", [("all", (numbers >= 0).all())], "OpenCV")
    soft = numpy.array([[255 - (255 - c) * SOFT for c in colour] for colour in colours])
    lab = rgb2lab(soft[numpy.newaxis] / 255)[0]
    off, strange, seen = [], 0, 0
    for label, page, outline, _ in list(squares_of(event, pdf))[::2]:
        image = shown(page, outline, PX_PER_MM)
        square = event.texts[f"{event.manifest['event']['tag']}-{label}"]
        n = image.shape[0]
        at = (numpy.arange(n) + 0.5) / n * side
        rows = numpy.clip((top + square["row"] * side + at).astype(int), 0, numbers.shape[0] - 1)
        across = numpy.clip((left + square["column"] * side + at).astype(int), 0, numbers.shape[1] - 1)
        truth = numbers[numpy.ix_(rows, across)]
        apart = numpy.linalg.norm(rgb2lab(image / 255)[:, :, None, :] - lab[None, None], axis=3)
        own, sure = apart.argmin(axis=2), apart.min(axis=2) < 4
        inner = numpy.ones_like(sure)
        clear = round(1.0 * PX_PER_MM)
        inner[:clear] = inner[-clear:] = inner[:, :clear] = inner[:, -clear:] = False
        # the code, its label and the line beneath stand on white
        code = event.code
        y = round((code["y_mm"] - 6 * code["module_mm"]) * PX_PER_MM)
        inner[y:, round((code["x_mm"] - 45) * PX_PER_MM) :] = False
        scale = event.piece_mm / event.square_mm / PX_PER_MM
        for number in range(len(colours)):
            wrong = inner & sure & (own == number) & (truth != number)
            if wrong.any() and (truth == number).any():
                off.extend(distance_transform_edt(truth != number)[wrong] * scale)
            elif wrong.any():
                strange += int(wrong.sum())
        strange += int((inner & ~sure & (edge_distance(own) > EDGE_PX)).sum())
        seen += int(inner.sum())
        off.extend([0.0] * int((inner & (edge_distance(truth) <= 1.5) & (own == truth)).sum()))
    off = numpy.array(off or [0.0])
    print(f"fill: edges off the picture's pixels, on the piece: median {numpy.median(off):.3f} mm, "
          f"99 % {numpy.quantile(off, 0.99):.3f} mm, worst {off.max():.3f} mm; {strange} of {seen} pixels of no pencil's color")
    tally.check("fill: edges are where the picture has them", [
        (f"median {numpy.median(off):.3f}", numpy.median(off) <= MEDIAN_MM), (f"worst {off.max():.3f}", off.max() <= WORST_MM),
        (f"{strange} strange", strange == 0),
    ], f"PDFium at 300 ppi against the picture's pixels: {MEDIAN_MM} and {WORST_MM} mm")


def edge_distance(labels):
    """How far each pixel is from the nearest of another label, in pixels."""
    same = numpy.ones(labels.shape, dtype=bool)
    same[:, 1:] &= labels[:, 1:] == labels[:, :-1]
    same[1:] &= labels[1:] == labels[:-1]
    return distance_transform_edt(same)


def check_names(tally, event, pdf):
    """Every name of a color stands in an area of that color."""
    colours, numbers, side, (left, top) = labels_of_picture(event)
    names = [pencil["name"] for pencil in event.plan["pencils"]]
    results = []
    for label, page, outline, _ in squares_of(event, pdf):
        square = event.texts[f"{event.manifest['event']['tag']}-{label}"]
        lines = {}
        for text, r, _ in page.letters:
            if outline.holds(*r.centre):
                lines.setdefault(round(r.y, 1), []).append((r.x, text, r))
        for line in lines.values():
            line.sort()
            words = "".join(text for _, text, _ in line)
            for name in sorted(names, key=len, reverse=True):
                at = words.find(name)
                while at >= 0:
                    first, last = line[at][2], line[at + len(name) - 1][2]
                    spots = [(first.x, first.y), (last.x + last.width, last.y + last.height)]
                    own = []
                    for x, y in spots:
                        u = (x - outline.x) / outline.width * side + left + square["column"] * side
                        v = (y - outline.y) / outline.height * side + top + square["row"] * side
                        own.append(numbers[int(v), int(u)] == names.index(name))
                    results.append((f"{label} {name}", all(own)))
                    words = words[:at] + "\0" * len(name) + words[at + len(name) :]
                    at = words.find(name)
    tally.check("fill: names of colors stand within their areas", results, "pdfplumber against the picture's pixels")


def hang(event, pdf, out, away=()):
    """A made photo of a wall: what a document has in its spots, nothing in those of `away`, the kit's blank squares in all others. Made, not
    taken."""
    squares = Pdf(event.folder / "print" / "squares.pdf")
    fillers = {label: shown(page, outline, WALL_PX_PER_MM) for label, page, outline, _ in squares_of(event, pdf)}
    side, edge = round(event.square_mm * WALL_PX_PER_MM), round(80 * WALL_PX_PER_MM)
    wall = numpy.full((event.rows * side + 2 * edge, event.columns * side + 2 * edge, 3), (198, 190, 176), dtype=numpy.uint8)
    for square in event.manifest["squares"]:
        if square["label"] in away:
            continue
        if square["label"] in fillers:
            image = cv2.resize(fillers[square["label"]], (side, side), interpolation=cv2.INTER_AREA)
        else:
            raster = squares.pages[square["page"] - 1].raster(WALL_PX_PER_MM)
            x, y = round(square["x_mm"] * WALL_PX_PER_MM), round(square["y_mm"] * WALL_PX_PER_MM)
            image = raster[y : y + side, x : x + side]
        x, y = edge + square["column"] * side, edge + square["row"] * side
        wall[y : y + image.shape[0], x : x + image.shape[1]] = image
    height, width = wall.shape[:2]
    seen = numpy.float32([[0.02, 0.05], [0.97, 0.0], [1.0, 1.0], [0.0, 0.96]]) * numpy.float32([width, height])
    flat = numpy.float32([[0, 0], [width, 0], [width, height], [0, height]])
    photo = cv2.warpPerspective(wall, cv2.getPerspectiveTransform(flat, seen), (width, height), borderValue=(198, 190, 176))
    scale = min(1.0, 4032 / width)
    photo = cv2.resize(photo, None, fx=scale, fy=scale, interpolation=cv2.INTER_AREA)
    photo = cv2.GaussianBlur(photo, (0, 0), 0.8).astype(float)
    photo += numpy.random.default_rng(7).normal(0, 5, photo.shape)
    photo = numpy.clip(photo, 0, 255).astype(numpy.uint8)
    path = out / "wall.jpg"
    cv2.imwrite(str(path), cv2.cvtColor(photo, cv2.COLOR_RGB2BGR), [cv2.IMWRITE_JPEG_QUALITY, 88])
    return path, scale * WALL_PX_PER_MM * event.code["module_mm"]


def check_read(tally, program, event, pdf, filled, out, look):
    path, px = hang(event, pdf, out)
    subprocess.run([program, "check", str(event.folder), str(path)], capture_output=True)
    newest = max((event.folder / "checks").iterdir())
    report = json.loads((newest / "report.json").read_text())
    states = {cell["label"]: cell["state"] for cell in report["cells"]}
    tally.check(f"fill: {look} fillers on a made wall are read as right ({px:.1f} px a module)", (
        (label, states[label] == "right") for label in filled
    ), "this program's own check; squares rendered by PDFium, photo by OpenCV")
    for name in newest.iterdir():
        name.unlink()
    newest.rmdir()


def main():
    program, folder, out = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])
    out.mkdir(parents=True, exist_ok=True)
    tally = Tally()
    event = Event(folder)
    plain = [piece["label"] for piece in event.plan["pieces"] if len(piece["pencils"]) < 2]
    drawn = [piece["label"] for piece in event.plan["pieces"] if len(piece["pencils"]) >= 2]
    wanted = drawn[::6]
    only = ["--only", ",".join(wanted + plain)]
    outlined = fill(program, event, only)
    check_sizes(tally, event, outlined, wanted, plain)
    check_names(tally, event, outlined)
    check_read(tally, program, event, outlined, wanted, out, "outlined")
    soft = fill(program, event, [*only, "--soft"])
    check_sizes(tally, event, soft, wanted, plain)
    check_edges(tally, event, soft)
    check_read(tally, program, event, soft, wanted, out, "colored")
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(1 if tally.failed else 0)


if __name__ == "__main__":
    main()
