"""What lies on a PDF's page, in millimetres from its top left corner, as pdfplumber and PDFium see it."""

from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

import numpy
import pdfplumber
import pypdfium2

MM_PER_POINT = 25.4 / 72  # a point is 1/72 inch (ISO 32000-1), an inch 25.4 mm exactly


@dataclass(frozen=True)
class Rect:
    """An upright rectangle in mm."""

    x: float
    y: float
    width: float
    height: float

    @property
    def centre(self):
        return self.x + self.width / 2, self.y + self.height / 2

    def holds(self, x, y, slack=0.0):
        return (
            self.x - slack <= x <= self.x + self.width + slack
            and self.y - slack <= y <= self.y + self.height + slack
        )

    def near(self, other, tolerance):
        pairs = zip((self.x, self.y, self.width, self.height), (other.x, other.y, other.width, other.height))
        return all(abs(a - b) <= tolerance for a, b in pairs)


def rect(thing):
    """The rectangle around something that pdfplumber found."""
    x0, top, x1, bottom = (thing[key] * MM_PER_POINT for key in ("x0", "top", "x1", "bottom"))
    return Rect(x0, top, x1 - x0, bottom - top)


def is_rectangle(points):
    """Whether a path is an upright rectangle: pdfplumber takes one that was turned by a quarter for a curve, since the
    sine of a right angle is not quite 1."""
    if len(points) not in (4, 5):
        return False
    on_edge = lambda values: all(min(abs(v - min(values)), abs(v - max(values))) < 1e-3 for v in values)
    return all(on_edge(values) for values in zip(*points))


def is_picture(path):
    """Whether a path is an area of the picture: those are filled and outlined in one colour, and may be clipped."""
    return path["fill"] and path["stroke"] and path["stroking_color"] == path["non_stroking_color"]


def channels(colour):
    """A colour as pdfplumber gives it, as a tuple: a grey may be a number."""
    return tuple(colour) if isinstance(colour, (tuple, list)) else (colour,)


def pixels(bitmap):
    """A bitmap of PDFium's, which has red first, as it lies in memory."""
    return numpy.ascontiguousarray(bitmap.to_numpy()[:, :, :3])


class Page:
    """One page: its vector drawing, its words, and what it looks like."""

    def __init__(self, plumbed, rendered):
        self._plumbed = plumbed
        self._rendered = rendered

    @property
    def size(self):
        return self._plumbed.width * MM_PER_POINT, self._plumbed.height * MM_PER_POINT

    @cached_property
    def outlines(self):
        """Rectangles drawn as lines."""
        return [rect(r) for r in self._plumbed.rects if r["stroke"] and not r["fill"]]

    @cached_property
    def filled(self):
        """Rectangles filled with pure black: the modules of codes."""
        turned = [c for c in self._plumbed.curves if is_rectangle(c["pts"])]
        black = (0, 0.0, (0,), (0.0,))
        return [rect(r) for r in self._plumbed.rects + turned if r["fill"] and r["non_stroking_color"] in black]

    @cached_property
    def coloured(self):
        """Filled rectangles with an outline, with their colour as red, green, blue, 0 … 1: swatches of pencils."""
        turned = [c for c in self._plumbed.curves if is_rectangle(c["pts"]) and c["non_stroking_color"] != 1.0]
        both = [r for r in self._plumbed.rects + turned if r["stroke"] and r["fill"] and not is_picture(r)]
        return [(rect(r), channels(r["non_stroking_color"])) for r in both]

    @cached_property
    def fields(self):
        """Filled rectangles without an outline, with their colour, from the left: bands of colours."""
        plain = [r for r in self._plumbed.rects if r["fill"] and not r["stroke"]]
        return sorted(((rect(r), channels(r["non_stroking_color"])) for r in plain), key=lambda own: own[0].x)

    @cached_property
    def circles(self):
        """Round paths that are not polygons, with whether they are filled."""
        round_ = lambda c: any(step[0] == "c" for step in c.get("path", []))
        curves = [c for c in self._plumbed.curves if round_(c) and not is_picture(c)]
        return [(rect(c), bool(c["fill"])) for c in curves]

    @cached_property
    def words(self):
        """Every word, upright ones only, with its rectangle."""
        return [(w["text"], rect(w)) for w in self._plumbed.extract_words(keep_blank_chars=False) if w["upright"]]

    @cached_property
    def lines(self):
        """Straight lines."""
        return [rect(line) for line in self._plumbed.lines]

    @cached_property
    def shapes(self):
        """Every other path: arrows."""
        others = [c for c in self._plumbed.curves if not is_picture(c)]
        return [(rect(c), [(x * MM_PER_POINT, y * MM_PER_POINT) for x, y in c["pts"]]) for c in others]

    @cached_property
    def areas(self):
        """Areas of the picture, before they are clipped."""
        return [rect(c) for c in self._plumbed.curves + self._plumbed.rects if is_picture(c)]

    @cached_property
    def images(self):
        """Pictures, before they are clipped."""
        return [rect(image) for image in self._plumbed.images]

    @cached_property
    def letters(self):
        """Every letter with its rectangle and its size in points."""
        lies = lambda c: abs(c["matrix"][0]) > abs(c["matrix"][1])
        return [(c["text"], rect(c), c["height"] if lies(c) else c["width"]) for c in self._plumbed.chars]

    @cached_property
    def turned(self):
        """The letters that do not lie."""
        return [(text, r, size) for text, r, size in self.letters if abs(size - r.width / MM_PER_POINT) < abs(size - r.height / MM_PER_POINT)]

    def words_in(self, area):
        """The letters whose middle lies in a rectangle, in the order in which they were set."""
        return "".join(text for text, r, _ in self.letters if area.holds(*r.centre))

    @cached_property
    def all_words(self):
        return "".join(text for text, _, _ in self.letters)

    def raster(self, px_per_mm):
        """What PDFium shows, as red, green and blue."""
        return pixels(self._rendered.render(scale=px_per_mm * MM_PER_POINT, rev_byteorder=True))

    def part(self, area, px_per_mm):
        """What PDFium shows of a rectangle, to the nearest pixel."""
        scale, (width, height) = px_per_mm * MM_PER_POINT, self.size
        sides = (area.x, height - area.y - area.height, width - area.x - area.width, area.y)
        crop = tuple(side / MM_PER_POINT for side in sides)
        return pixels(self._rendered.render(scale=scale, crop=crop, rev_byteorder=True))


class Pdf:
    """A PDF file."""

    def __init__(self, path):
        self.path = Path(path)
        self._plumbed = pdfplumber.open(path)
        self._rendered = pypdfium2.PdfDocument(path)
        self.pages = [Page(p, self._rendered[i]) for i, p in enumerate(self._plumbed.pages)]

    @property
    def about(self):
        """Title, dates and the like."""
        return self._plumbed.metadata

    @property
    def viewer_preferences(self):
        found = self._plumbed.doc.catalog.get("ViewerPreferences", {})
        return {key: getattr(value, "name", value) for key, value in found.items()}


def modules_drawn(page, x, y, module_mm):
    """The 441 modules of the code with its outer corner at (x, y), out of the rectangles that are drawn: dark where the
    module's middle is covered. Also whether each rectangle's edges lie on the modules' grid."""
    side = 21 * module_mm
    code = Rect(x, y, side, side)
    mine = [r for r in page.filled if code.holds(*r.centre)]
    grid = numpy.zeros((21, 21), dtype=int)
    exact = bool(mine)
    for r in mine:
        edges = [(r.x - x) / module_mm, (r.y - y) / module_mm, r.width / module_mm, r.height / module_mm]
        column, row, columns, rows = (round(edge) for edge in edges)
        exact = exact and all(abs(edge - round(edge)) * module_mm < 0.01 for edge in edges)
        grid[max(row, 0) : row + rows, max(column, 0) : column + columns] += 1
    return grid, exact


def modules_of_hex(digits):
    """The 441 modules of a manifest's 111 hexadecimal digits."""
    bits = bin(int(digits, 16))[2:].zfill(444)
    return numpy.array([int(bit) for bit in bits[:441]]).reshape(21, 21)
