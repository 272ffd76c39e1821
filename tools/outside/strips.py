"""Measures strips of a piece and its square: python tools/outside/strips.py PROGRAM PICTURE OUT

Makes small events on every paper with squares of several sizes and prints them. Needs Python 3.11 and numpy, pdfplumber, pypdfium2, scipy,
Pillow, zxing-cpp. Each check names what it is checked against. Ends with "N passed, M failed" and exits 1 where one failed."""

import re
import shutil
import subprocess
import sys
from pathlib import Path

import numpy
import zxingcpp
from PIL import Image
from scipy.ndimage import label as components

from fill import Event
from measure import Pdf, Rect, modules_of_hex
from pdf import Tally

PX_PER_MM = 600 / 25.4
IN_LINE_MM = 0.1
COLUMNS, ROWS = 3, 2
KITS = [
    ("letter", 80, "bottom-right"),
    ("letter", 127, "bottom-right"),
    ("letter", 254, "bottom-left"),
    ("a4", 101.6, "bottom-left"),
    ("a4", 127, "top-left"),
    ("tabloid", 180, "bottom-right"),
    ("tabloid", 254, "top-right"),
    ("a3", 127, "top-right"),
    ("a3", 254, "bottom-left"),
]


def made(program, picture, folder, paper, side, corner):
    """An event of strips, and the side of its squares: the largest that fits where the program refused the one that was asked for."""
    shutil.rmtree(folder, ignore_errors=True)
    new = [program, "new", str(folder), "--picture", str(picture), "--columns", str(COLUMNS), "--rows", str(ROWS), "--tag", "K7M"]
    new += ["--paper", paper, "--square-mm", str(side), "--join", "beside"]
    subprocess.run(new, check=True, capture_output=True)
    settings = folder / "event.toml"
    settings.write_text(settings.read_text().replace('corner = "bottom-right"', f'corner = "{corner}"'))
    printed = subprocess.run([program, "print", str(folder)], capture_output=True, text=True)
    if printed.returncode == 0:
        return side, None
    largest = float(re.search(r"fits is ([0-9.]+) mm", printed.stderr).group(1))
    return made(program, picture, folder, paper, largest, corner)[0], largest


class Strip:
    """A strip as it is read: turned upright where it lies on its side on the page. Lengths in mm from the page's corner as it is read."""

    def __init__(self, event, number, page, raster):
        manifest = event.manifest
        self.square, self.piece = manifest["squares"][number], manifest["pieces"][number]
        self.turned = manifest.get("turned", False)
        self.image = numpy.rot90(raster, 1) if self.turned else raster
        self.width = page.size[0]
        self.square_area, self.piece_area = self.upright(self.square), self.upright(self.piece)

    def upright(self, place):
        x, y, side = place["x_mm"], place["y_mm"], place["side_mm"]
        return Rect(y, self.width - x - side, side, side) if self.turned else Rect(x, y, side, side)

    def part(self, x, y, width, height):
        left, top, right, bottom = (round(mm * PX_PER_MM) for mm in (x, y, x + width, y + height))
        return self.image[top:bottom, left:right]

    @property
    def stub(self):
        """Left edge, top and width of the stub; as wide on either side of the piece."""
        s, p = self.square_area, self.piece_area
        is_right = p.x > s.x
        inner = s.x + s.width if is_right else s.x
        half = abs(p.x + p.width / 2 - inner)
        return (inner if is_right else inner - 2 * half), s.y, 2 * half

    def dark_rows(self, x, y, reach):
        """The middle of what is dark in a line of pixels, at `x`, within `reach` of `y`."""
        column = self.part(x, y - reach, 1 / PX_PER_MM, 2 * reach)[:, 0].min(axis=1)
        ink = 255.0 - column
        ink[ink < 40] = 0
        rows = numpy.arange(len(ink)) + 0.5
        return y - reach + float((ink * rows).sum() / ink.sum()) / PX_PER_MM if ink.sum() > 0 else None


def modules(event, strip):
    code, s = event.code, strip.square_area
    module = code["module_mm"]
    drawn = numpy.zeros((21, 21), bool)
    for row in range(21):
        for column in range(21):
            middle = strip.part(
                s.x + code["x_mm"] + (column + 0.35) * module, s.y + code["y_mm"] + (row + 0.35) * module, 0.3 * module, 0.3 * module
            )
            drawn[row, column] = middle.mean() < 128
    return drawn


def quiet_is_white(event, strip):
    code, s = event.code, strip.square_area
    module = code["module_mm"]
    zone = strip.part(s.x + code["x_mm"] - 3.7 * module, s.y + code["y_mm"] - 3.7 * module, 28.4 * module, 28.4 * module).min(axis=2).copy()
    inner = round(3.4 * module * PX_PER_MM)
    zone[inner:-inner, inner:-inner] = 255
    return bool((zone > 245).all())


def ticks_in_line(strip):
    """How far the piece's middle tick toward the square is off the square's own, in mm."""
    s, p = strip.square_area, strip.piece_area
    is_right = p.x > s.x
    on_square = strip.dark_rows(s.x + s.width - 1.0 if is_right else s.x + 1.0, s.y + s.height / 2, 3)
    on_stub = strip.dark_rows(p.x - 1.3 if is_right else p.x + p.width + 1.3, p.y + p.height / 2, 3)
    return None if on_square is None or on_stub is None else abs(on_square - on_stub)


def differs(event, strip, original):
    """Share of the piece's pixels that are far from the picture's, edges among them."""
    p = strip.piece_area
    shown = strip.part(p.x, p.y, p.width, p.height).astype(int)
    side = original.width / event.columns
    left, top = strip.piece["column"] * side, strip.piece["row"] * side
    own = original.crop((round(left), round(top), round(left + side), round(top + side))).resize(shown.shape[1::-1], Image.NEAREST)
    return float((numpy.abs(shown - numpy.array(own).astype(int)).sum(axis=2) > 60).mean())


def spot(event, strip):
    """Column and row of the black cell on the small wall."""
    x, y, width = strip.stub
    top = strip.part(x + 0.54 * width, y + 1, 0.46 * width - 1, strip.piece_area.y - y - 6).min(axis=2)
    lines = numpy.argwhere(top < 225)
    (first_row, first_column), (last_row, last_column) = lines.min(axis=0), lines.max(axis=0) + 1
    numbered, count = components(top < 60)
    sizes = [(numbered == number).sum() for number in range(1, count + 1)]
    black = numpy.argwhere(numbered == 1 + int(numpy.argmax(sizes))).mean(axis=0) + 0.5
    row = (black[0] - first_row) / (last_row - first_row) * event.rows
    column = (black[1] - first_column) / (last_column - first_column) * event.columns
    return int(column), int(row)


def swatches(event, strip):
    """The numbers of the pencils whose color is shown below the piece; of those that differ from paper."""
    x, y, width = strip.stub
    from_y = strip.piece_area.y + strip.piece_area.height + 4.5
    below = strip.part(x + 1, from_y, width - 2, y + strip.square_area.height - from_y - 1).astype(int)
    shown = set()
    for number, pencil in enumerate(event.plan["pencils"]):
        colour = [int(pencil["srgb"][i : i + 2], 16) for i in (1, 3, 5)]
        close = numpy.abs(below - numpy.array(colour)).sum(axis=2) < 9
        if close.sum() > (2.5 * PX_PER_MM) ** 2:
            shown.add(number)
    return shown


def check(tally, event, original, name):
    pdf = Pdf(event.folder / "print" / "strips.pdf")
    rasters = {}
    facts = {"modules": [], "decoded": [], "quiet": [], "in line": [], "piece": [], "spot": [], "pencils": [], "words": []}
    levels = {piece["label"]: piece for piece in event.plan["pieces"]}
    for number, square in enumerate(event.manifest["squares"]):
        page = pdf.pages[square["page"] - 1]
        if square["page"] not in rasters:
            rasters[square["page"]] = page.raster(PX_PER_MM)
        strip = Strip(event, number, page, rasters[square["page"]])
        at, label = f"{name} {square['label']}", square["label"]
        facts["modules"].append((at, bool((modules(event, strip) == modules_of_hex(square["modules"])).all())))
        s = strip.square_area
        read = zxingcpp.read_barcodes(numpy.ascontiguousarray(strip.part(s.x, s.y, s.width, s.height)))
        facts["decoded"].append((at, [code.text for code in read] == [square["text"]]))
        facts["quiet"].append((at, quiet_is_white(event, strip)))
        off = ticks_in_line(strip)
        facts["in line"].append((f"{at} {off}", off is not None and off <= IN_LINE_MM))
        off = differs(event, strip, original)
        facts["piece"].append((f"{at} {off:.3f}", off < 0.06))
        facts["spot"].append((at, spot(event, strip) == (square["column"], square["row"])))
        wanted = set(levels[label]["pencils"])
        shown = swatches(event, strip)
        facts["pencils"].append((f"{at} {shown} {wanted}", shown == wanted))
        if not strip.turned:
            x, y, width = strip.stub
            words = page.words_in(Rect(x, y, width, s.height))
            slip = f"column {re.match('[A-Z]+', label).group()}, row {re.search('[0-9]+', label).group()}"
            facts["words"].append((f"{at} {words}", label in words and slip in words))
    said = {
        "modules": ("modules drawn are the manifest's", "manifest.json, PDFium"),
        "decoded": ("the square's code and no other is read on it", "zxing-cpp"),
        "quiet": ("nothing in the quiet zone", "ISO/IEC 18004, PDFium"),
        "in line": (f"the piece's middle tick is in line with the square's within {IN_LINE_MM} mm", "PDFium"),
        "piece": ("the piece shows its part of the picture", "the picture's pixels, PDFium"),
        "spot": ("the small wall marks the square's spot", "manifest.json, PDFium"),
        "pencils": ("swatches are the piece's pencils", "plan.json, PDFium"),
        "words": ("stubs that lie upright say label, column and row", "pdfplumber"),
    }
    for key, (what, source) in said.items():
        if key == "words" and event.manifest.get("turned", False):
            continue
        tally.check(f"strips, {name}: {what}", facts[key], source)


def check_cuts(tally, event, name):
    """Lines to cut and to fold, for a machine: each strip's outline is there, and one fold a strip."""
    for number, cut in enumerate(sorted((event.folder / "print" / "cuts").glob("strips-*.svg"), key=lambda path: int(path.stem.split("-")[1])), 1):
        text = cut.read_text()
        folds = text.split('id="fold"')[1].count("<path")
        strips = sum(square["page"] == number for square in event.manifest["squares"])
        tally.check(f"strips, {name}: folds on sheet {number}", [(f"{folds} of {strips}", 1 <= folds <= strips)], "SVG")


def main():
    program, picture, out = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])
    tally = Tally()
    for paper, side, corner in KITS:
        name = f"{paper} {side} {corner}"
        folder = out / name.replace(" ", "-")
        got, largest = made(program, picture, folder, paper, side, corner)
        if largest is not None:
            tally.check(f"strips, {name}: refused with a smaller size that fits", [(largest, largest < side and got == largest)], "the program")
        event = Event(folder)
        original = Image.open(folder / event.settings["picture"]["file"]).convert("RGB")
        check(tally, event, original, name)
        check_cuts(tally, event, name)
    print(f"{tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    sys.exit(main())
