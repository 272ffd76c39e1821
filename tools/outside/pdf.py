"""Measures a printed kit with other people's readers: python tools/outside/pdf.py FOLDER

FOLDER is an event folder that was printed. Needs Python 3.11 and what tools/outside/requirements.txt lists. Each check names what it is checked against; lengths within 0.1 mm. Ends with
"N passed, M failed" and exits 1 where one failed."""

import json
import math
import sys
import tomllib
from collections import Counter, defaultdict
from fractions import Fraction
from pathlib import Path

import cv2
import numpy
import pikepdf
import svgelements
import zxingcpp
from PIL import Image

from measure import MM_PER_POINT, Pdf, Rect, modules_drawn, modules_of_hex

TOLERANCE_MM = 0.1
INCH_MM = 25.4  # exactly (international inch, 1959)
PAPERS = {
    "letter": (8.5 * INCH_MM, 11 * INCH_MM, "ANSI/ASME Y14.1, size A"),
    "tabloid": (11 * INCH_MM, 17 * INCH_MM, "ANSI/ASME Y14.1, size B"),
    "a4": (210.0, 297.0, "ISO 216"),
    "a3": (297.0, 420.0, "ISO 216"),
}
READING = ("guide", "helpers", "checklist", "pencils", "wall-map", "answers")  # pages to read: nothing on them has a true size
NOT_MEASURED = ("levels", "questions", "table-card")  # what lies on them has its place, and no size that matters
PIECE_BORDER_MM = 4.0
CARD_MM = 60.0
LONGEST_CARD_MM = 190.0
SLIP_MM = 2.0  # how far a printer may let the back slip: 1 mm by a maker's own tolerance, doubled
MOST_BYTES = 3 << 20
SMALLEST_POINTS = 8.0
UNPRINTABLE_MM = 6.35  # a quarter inch; common practice, no source
PX_PER_MM = 300 / INCH_MM  # 7 to a module of 0.6 mm
PIECE_PX_PER_MM = 20.0  # PDFium puts the edges of pictures on whole pixels: a twentieth of a millimetre


class Tally:
    """Counts checks; says those that fail, and each kind of check once."""

    def __init__(self):
        self.passed = self.failed = 0

    def check(self, what, things, source):
        """`things`: pairs of a name and whether it holds."""
        things = list(things)
        bad = [str(name) for name, holds in things if not holds]
        self.passed += len(things) - len(bad)
        self.failed += len(bad) or (not things)
        said = f"{len(bad)} FAILED: {', '.join(bad[:8])}" if bad else ("NONE FOUND" if not things else "ok")
        print(f"{what}: {len(things)} checked, {said}  [{source}]")


class Kit:
    """A printed folder."""

    def __init__(self, folder):
        folder = Path(folder)
        self.folder = folder
        self.settings = tomllib.loads((folder / "event.toml").read_text())
        self.manifest = json.loads((folder / "print" / "manifest.json").read_text())
        self.plan = json.loads((folder / "plan.json").read_text())
        self.documents = {path.stem: Pdf(path) for path in sorted((folder / "print").glob("*.pdf"))}
        self.squares, self.cards, self.pieces = (self.documents[name] for name in ("squares", "edge-cards", "pieces"))
        printing = self.settings.get("print", {})
        self.paper = printing.get("paper", "letter")
        self.flip = printing.get("flip", "long-edge")

    @property
    def piece_levels(self):
        """The bag of each piece: that of its level, or of the border in reserve."""
        bag = lambda piece: "reserve" if piece["band"] == "reserve" else piece["level"]
        return {piece["label"]: bag(piece) for piece in self.plan["pieces"]}

    def mirrored(self, r):
        """Where a rectangle of the front comes out on the back."""
        width, height, _ = PAPERS[self.paper]
        if self.flip == "long-edge":
            return Rect(width - r.x - r.width, r.y, r.width, r.height)
        return Rect(r.x, height - r.y - r.height, r.width, r.height)


def near(a, b):
    return abs(a - b) <= TOLERANCE_MM


def outlined(page, wanted):
    return any(r.near(wanted, TOLERANCE_MM) for r in page.outlines)


def check_pages(tally, kit):
    width, height, source = PAPERS[kit.paper]
    for name, pdf in kit.documents.items():
        pages = list(enumerate(pdf.pages, start=1))
        tally.check(f"{name}: pages are {kit.paper}", (
            (n, near(p.size[0], width) and near(p.size[1], height)) for n, p in pages
        ), source)
        if name in (*READING, *NOT_MEASURED):
            tally.check(f"{name}: event and page at the foot, no ruler", (
                (n, footed(p, kit, n, len(pages)) and not rulers_are_right(p)) for n, p in pages
            ), "design")
        if name in READING:
            tally.check(f"{name}: the picture's colours at the top, as wide as their parts", (
                (n, banded(p, kit)) for n, p in pages
            ), "plan.json")
        elif name not in NOT_MEASURED:
            tally.check(f"{name}: rulers of 100 mm and 4 in", ((n, rulers_are_right(p)) for n, p in pages),
                        "millimetre: ISO 80000-3; inch: 25.4 mm exactly")
            tally.check(f"{name}: “100%” on the page", (
                (n, "100%" in p.all_words.replace(" ", "")) for n, p in pages
            ), "design")
        tally.check(f"{name}: nothing in the unprintable edge", ((n, clear_of_edges(p)) for n, p in pages),
                    "6.35 mm: common practice, no source")
        tally.check(f"{name}: no words below 8 pt", (
            (n, all(size >= SMALLEST_POINTS - 1e-3 for _, _, size in p.letters)) for n, p in pages
        ), "design")
        wanted = {"long-edge": "DuplexFlipLongEdge", "short-edge": "DuplexFlipShortEdge", "none": "Simplex"}[kit.flip]
        if name not in ("squares", "pieces"):
            wanted = "Simplex"
        tally.check(f"{name}: hints for the dialogue, title, no dates", [
            ("PrintScaling", pdf.viewer_preferences.get("PrintScaling") == "None"),
            ("Duplex", pdf.viewer_preferences.get("Duplex") == wanted),
            ("Title", kit.manifest["event"]["name"] in pdf.about.get("Title", "")),
            ("dates", not {"CreationDate", "ModDate"} & pdf.about.keys()),
        ], "ISO 32000-1, table 150")


        tally.check(f"{name}: no letter beyond the page, none upon another", (
            (n, letters_apart(p)) for n, p in pages
        ), "pdfplumber")


def letters_apart(page):
    """Whether all letters lie on the page and no two share a quarter of the smaller one's ink: taken as the middle two fifths
    of the rectangle's height, or, of letters that are read from the bottom up, of its width. A letter with an outline is there twice."""
    width, height = page.size
    inked = set()
    for text, r, size in page.letters:
        if text.strip():
            lies = abs(size - r.height / MM_PER_POINT) < abs(size - r.width / MM_PER_POINT)
            dx, dy = (0, 0.3 * r.height) if lies else (0.3 * r.width, 0)
            inked.add(tuple(round(v, 3) for v in (r.x + dx, r.y + dy, r.x + r.width - dx, r.y + r.height - dy)))
    boxes = numpy.array(sorted(inked))
    if not len(boxes):
        return True
    inside = (boxes[:, :2] >= 0).all() and (boxes[:, 2] <= width).all() and (boxes[:, 3] <= height).all()
    areas = (boxes[:, 2] - boxes[:, 0]) * (boxes[:, 3] - boxes[:, 1])
    for i, (left, top, right, bottom) in enumerate(boxes):
        last = numpy.searchsorted(boxes[:, 0], right)
        others = boxes[i + 1 : last]
        across = numpy.minimum(others[:, 2], right) - others[:, 0]
        down = numpy.minimum(others[:, 3], bottom) - numpy.maximum(others[:, 1], top)
        shared = numpy.clip(across, 0, None) * numpy.clip(down, 0, None)
        if (shared > 0.25 * numpy.minimum(areas[i], areas[i + 1 : last])).any():
            return False
    return bool(inside)


def check_files(tally, kit):
    """The files as files: valid, tagged, small, with their typefaces in them."""
    for name, pdf in kit.documents.items():
        with pikepdf.open(pdf.path) as opened:
            root, faults = opened.Root, opened.check_pdf_syntax()
            tree = root.get("/StructTreeRoot")
            kinds = kinds_of_tags(tree) if tree is not None else Counter()
            metadata = opened.open_metadata()
            tally.check(f"{name}: valid, at most 3 MB", [
                ("syntax: " + "; ".join(faults[:2]), not faults), ("size", pdf.path.stat().st_size <= MOST_BYTES),
            ], "qpdf, by pikepdf")
            tally.check(f"{name}: tagged, with language and title; says that it is PDF/UA-1", [
                ("MarkInfo", bool(root.get("/MarkInfo", {}).get("/Marked", False))),
                ("Lang", str(root.get("/Lang", "")) == kit.settings.get("language", "en")),
                ("DisplayDocTitle", bool(root.ViewerPreferences.get("/DisplayDocTitle", False))),
                ("pdfuaid:part", metadata.get("pdfuaid:part") == "1"),
                ("heading", kinds["/H1"] >= 1),
                ("figures have words", kinds["/Figure"] == kinds["with words"]),
                ("tables have heads", kinds["/Table"] == 0 or kinds["/TH"] > 0),
            ], "ISO 14289-1, by pikepdf")
            fonts = [f for f in opened.objects if isinstance(f, pikepdf.Dictionary) and f.get("/Type") == "/FontDescriptor"]
            tally.check(f"{name}: typefaces are in the file", (
                (str(f.get("/FontName")), any(key in f for key in ("/FontFile", "/FontFile2", "/FontFile3"))) for f in fonts
            ), "ISO 32000-1, table 122")


def kinds_of_tags(tree):
    """How often each kind of tag occurs, and how many figures have words in their place."""
    kinds, open_nodes = Counter(), [tree]
    while open_nodes:
        node = open_nodes.pop()
        if isinstance(node, pikepdf.Array):
            open_nodes.extend(n for n in node if isinstance(n, (pikepdf.Array, pikepdf.Dictionary)))
            continue
        if "/S" in node:
            kinds[str(node.S)] += 1
            kinds["with words"] += node.S == "/Figure" and bool(str(node.get("/Alt", "")))
        if "/K" in node and isinstance(node.K, (pikepdf.Array, pikepdf.Dictionary)):
            open_nodes.append(node.K)
    return kinds


def footed(page, kit, number, count):
    """Whether the event and the page's number stand below everything else."""
    foot = "".join(text for text, r, _ in page.letters if r.y > page.size[1] - 15).replace(" ", "")
    return kit.manifest["event"]["name"].replace(" ", "") in foot and f"{number}of{count}" in foot.replace("de", "of")


def banded(page, kit):
    """Whether the fields at the top have the pencils' colours and the parts of the picture that they cover."""
    fields = [(r, colour) for r, colour in page.fields if r.y < 16 and near(r.height, 3.0)]
    width = sum(r.width for r, _ in fields)
    wanted = [(pencil["srgb"], pencil["share"]) for pencil in kit.plan["pencils"] if pencil["share"] > 0]
    return near(width, page.size[0] - 34) and len(fields) == len(wanted) and all(
        same_colour(colour, srgb) and abs(r.width / width - share) < 0.002
        for (r, colour), (srgb, share) in zip(fields, wanted)
    )


def same_colour(drawn, srgb):
    channels = [int(srgb[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    return len(drawn) == 3 and all(abs(a - b) < 0.01 for a, b in zip(drawn, channels))


def small_walls(page, columns, rows):
    """Walls in small: where each is, out of its lines, from the top and from the left; and its marked spots, with the part
    of the cell's side that is filled and the colour."""
    upright, found = defaultdict(list), []
    for line in page.lines:
        if line.width < 0.01 and line.height > rows:
            upright[round(line.y, 1), round(line.height, 1)].append(line.x)
    for (top, high), across in sorted(upright.items()):
        across.sort()
        for at in range(0, len(across) - columns, columns + 1):
            left, right = across[at], across[at + columns]
            cell = (right - left) / columns
            if not near(cell * rows, high):
                continue
            marks = {}
            for r, colour in page.coloured:
                x, y = r.centre
                if left < x < right and top < y < top + high:
                    marks[int((x - left) / cell), int((y - top) / cell)] = (round(r.width / cell, 2), colour)
            found.append(marks)
    return found


def inches(mm):
    """A length as a tape shows it: whole inches and eighths, in lowest terms."""
    eighths = Fraction(math.floor(mm / INCH_MM * 8 + 0.5), 8)
    whole, part = divmod(eighths, 1)
    return " ".join(str(n) for n in (whole, part) if n) or "0"


def rulers_are_right(page):
    lengths = [max(line.width, line.height) for line in page.lines]
    there = lambda wanted: any(near(length, wanted) for length in lengths)
    words = page.all_words
    return there(100.0) and there(4 * INCH_MM) and "100 mm" in words and "4 in" in words


def clear_of_edges(page):
    """Whether the raster's rim is white."""
    px_per_mm = 5.0
    shown, rim = page.raster(px_per_mm), int(UNPRINTABLE_MM * px_per_mm)
    return min(side.min() for side in (shown[:rim], shown[-rim:], shown[:, :rim], shown[:, -rim:])) >= 250


def tick_lines(page, x, y, side, start):
    """For each of the 12 quarter points: whether a short line meets it at a right angle, `start` mm from the edge."""
    found = []
    for part in (0.25, 0.5, 0.75):
        along = part * side
        for dx, dy in ((along, -start), (side + start, along), (along, side + start), (-start, along)):
            upright = dy in (-start, side + start)
            found.append(any(
                (near(line.x, x + dx) and line.width < TOLERANCE_MM and line.height > 0.45 if upright
                 else near(line.y, y + dy) and line.height < TOLERANCE_MM and line.width > 0.45)
                and line.holds(x + dx, y + dy, TOLERANCE_MM)
                for line in page.lines
            ))
    return found


def in_parts(kit):
    """Whether squares are larger than the page and come in parts."""
    per_page = Counter(s["page"] for s in kit.manifest["squares"])
    sides = 1 if kit.flip == "none" else 2
    return len(per_page) * sides < len(kit.squares.pages)


def check_parts(tally, kit):
    """Squares in parts: those of one square, less their strips for glue, are as wide and as high as the square."""
    glue, side = 10.0, kit.manifest["grid"]["square_mm"]
    fronts = kit.squares.pages[:: 1 if kit.flip == "none" else 2]
    cut = [r for page in fronts for r in page.outlines if r.width > 60 and r.height > 60]
    sizes = {(round(r.width, 2), round(r.height, 2)) for r in cut}
    count = len(cut) / len(kit.manifest["squares"])
    whole = lambda part: (side - glue) / (part - glue)  # how many parts that overlap make the side
    tally.check("squares: all parts alike, and together the square", [
        (sizes, len(sizes) == 1 and all(
            abs(whole(w) - round(whole(w))) < 1e-3 and abs(whole(h) - round(whole(h))) < 1e-3
            and round(whole(w)) * round(whole(h)) == count for w, h in sizes
        ))
    ], "design: strips of 10 mm for glue")


def check_spots(tally, kit):
    """Each square's back shows the wall in small with the square's spot, seen from the front."""
    grid, found = kit.manifest["grid"], []
    columns, rows, side = grid["columns"], grid["rows"], grid["square_mm"]
    if kit.flip == "none" or in_parts(kit):
        return
    places = {page: [] for page in {s["page"] for s in kit.manifest["squares"]}}
    for page in places:
        places[page] = small_walls(kit.squares.pages[page], columns, rows)
    on_pages = Counter()
    for s in kit.manifest["squares"]:
        on_pages[s["page"]] += 1
        spot = (s["column"], s["row"])
        wanted = spot if kit.flip == "long-edge" else (columns - 1 - spot[0], rows - 1 - spot[1])
        found.append((s["label"], any(set(marks) == {wanted} for marks in places[s["page"]])))
    tally.check("squares: the back shows the spot on the wall", found, "manifest.json")
    tally.check("squares: a wall on each back", [
        (page, len(places[page]) == count) for page, count in on_pages.items()
    ], "manifest.json")


def check_squares(tally, kit):
    code, found, parts = kit.manifest["code"], [], in_parts(kit)
    if parts:
        check_parts(tally, kit)
    for s in kit.manifest["squares"]:
        page = kit.squares.pages[s["page"] - 1]
        x, y, side, module = s["x_mm"], s["y_mm"], s["side_mm"], code["module_mm"]
        cx, cy = x + code["x_mm"], y + code["y_mm"]
        quiet = Rect(cx - 4 * module, cy - 4 * module, 29 * module, 29 * module)
        drawn, exact = modules_drawn(page, cx, cy, module)
        ticks = tick_lines(page, x, y, side, 0.0)
        intruders = [r for r in page.filled + page.lines + [r for _, r, _ in page.letters]
                     if quiet.holds(*r.centre, -0.05) and not Rect(cx, cy, 21 * module, 21 * module).holds(*r.centre)]
        found.append((s["label"], {
            "outline": parts or outlined(page, Rect(x, y, side, side)),
            "side": side == kit.manifest["grid"]["square_mm"],
            "ticks": parts or sum(ticks) == 12 or sum(ticks) >= 8 and module > 0.6,
            "modules": exact and (drawn == modules_of_hex(s["modules"])).all(),
            "quiet": outlined(page, quiet) and not intruders,
            "label": page.words_in(Rect(x, y, side, side)) == s["label"],
        }))
    said = {
        "outline": ("cut line at the manifest's place, exact side", "manifest.json"),
        "side": ("side is the grid's", "manifest.json"),
        "ticks": ("tick marks at the quarter points of every side", "design"),
        "modules": ("modules drawn are the manifest's, to 0.01 mm", "manifest.json"),
        "quiet": ("quiet zone of 4 modules outlined and empty", "ISO/IEC 18004"),
        "label": ("the label, and no other word, on the square", "manifest.json"),
    }
    for key, (what, source) in said.items():
        tally.check(f"squares: {what}", ((label, facts[key]) for label, facts in found), source)


def check_backs(tally, kit, name, items, border):
    """Each back's label lies in the middle of where its front comes out, and its arrow points to the front's top."""
    if kit.flip == "none" or in_parts(kit):
        return
    middles, ways, offsets = [], [], []
    for s in items:
        page = kit.documents[name].pages[s["page"]]
        side = s["side_mm"] + 2 * border
        back = kit.mirrored(Rect(s["x_mm"] - border, s["y_mm"] - border, side, side))
        largest = max((size for _, r, size in page.letters if back.holds(*r.centre)), default=0)
        big = [(text, r) for text, r, size in page.letters if size > largest - 0.01 and back.holds(*r.centre)]
        left, right = min((r.x for _, r in big), default=0), max((r.x + r.width for _, r in big), default=0)
        right_word = "".join(t for t, _ in big) == s["label"]
        middles.append((s["label"], right_word and near((left + right) / 2, back.centre[0])))
        arrow = [(r, points) for r, points in page.shapes if back.holds(*r.centre) and len(points) >= 7]
        r, points = arrow[0] if arrow else (Rect(0, 0, 0, 0), [(0, 0)])
        widest = max(points, key=lambda p: abs(p[0] - r.centre[0]))
        tip = min(points, key=lambda p: abs(p[0] - r.centre[0]))
        up = tip[1] < widest[1] - 0.1
        ways.append((s["label"], near(r.centre[0], back.centre[0]) and up == (kit.flip == "long-edge")))
        offsets.append(r.y - back.y if up else back.y + back.height - r.y - r.height)
    how = "columns" if kit.flip == "long-edge" else "rows"
    tally.check(f"{name}: label in the middle of its front's back ({how} mirrored)", middles, "geometry of turning a sheet")
    tally.check(f"{name}: arrow to the front's top", ways, "geometry of turning a sheet")
    tally.check(f"{name}: all backs equally far from their fronts' tops", [
        ("spread", max(offsets) - min(offsets) <= TOLERANCE_MM)
    ], "geometry of turning a sheet")


def check_pieces(tally, kit):
    pieces = kit.manifest["pieces"]
    page_of = lambda t: kit.pieces.pages[t["page"] - 1]
    bordered = lambda t: Rect(*(t[k] - PIECE_BORDER_MM for k in ("x_mm", "y_mm")), *[t["side_mm"] + 2 * PIECE_BORDER_MM] * 2)
    cut = lambda t: bordered(t)
    if beside(kit):
        cut = lambda t: Rect(bordered(t).x, bordered(t).y, 2 * bordered(t).width, bordered(t).height)
        tally.check("pieces: a fold in the middle between piece and back", (
            (t["label"], any(
                near(line.x, bordered(t).x + bordered(t).width) and line.width < TOLERANCE_MM
                and near(line.y, bordered(t).y) and near(line.height, bordered(t).height) for line in page_of(t).lines
            )) for t in pieces
        ), "manifest.json")
    tally.check("pieces: cut line around piece and border", ((t["label"], outlined(page_of(t), cut(t))) for t in pieces),
                "manifest.json")
    tally.check("pieces: tick marks at the quarter points of every side", (
        (t["label"], all(tick_lines(page_of(t), t["x_mm"], t["y_mm"], t["side_mm"], 0.3))) for t in pieces
    ), "design")
    tally.check("pieces: label on the border", (
        (t["label"], page_of(t).words_in(bordered(t)) == t["label"]) for t in pieces
    ), "manifest.json")
    rasters, shown = {}, []
    picture = numpy.asarray(Image.open(kit.folder / kit.settings.get("picture", {}).get("file", "picture.png")).convert("RGB"))
    for t in pieces:
        raster = rasters.setdefault(t["page"], page_of(t).raster(PIECE_PX_PER_MM))
        shown.append((t["label"], shows_its_part(raster, picture, t, kit.manifest["grid"])))
    tally.check("pieces: the picture's own part at exact size, white around it", shown, "picture, rasterised by PDFium")


def beside(kit):
    """Whether pieces have their backs beside them: single-sided, and there is a second piece's width of paper."""
    return kit.flip == "none" and len(kit.pieces.pages) < 2 * len({t["page"] for t in kit.manifest["pieces"]})


def check_piece_backs(tally, kit):
    """Each piece's back lies where its front comes out, 2 mm from the cut at least, and says what plan.json says."""
    levels, pencils = ["plain", "easy", "medium", "hard"], kit.plan["pencils"]
    inside, said, marked, coloured, ways = [], [], [], [], []
    places = Counter()
    for t, planned in zip(kit.manifest["pieces"], kit.plan["pieces"]):
        side = t["side_mm"] + 2 * PIECE_BORDER_MM
        front = Rect(t["x_mm"] - PIECE_BORDER_MM, t["y_mm"] - PIECE_BORDER_MM, side, side)
        if kit.flip == "none":
            page, back = kit.pieces.pages[t["page"] - 1], Rect(front.x + side, front.y, side, side)
            if not beside(kit):
                page, back = kit.pieces.pages[t["page"]], front
        else:
            page, back = kit.pieces.pages[t["page"]], kit.mirrored(front)
        label = t["label"]
        on_it = lambda things: [thing for thing in things if back.holds(*thing[0].centre)]
        letters = on_it([(r, text, size) for text, r, size in page.letters])
        swatches, marks = on_it(page.coloured), on_it(page.circles)
        arrows = on_it([(r, points) for r, points in page.shapes if len(points) >= 7 and not any(r == m[0] for m in marks)])
        clear = Rect(back.x + SLIP_MM, back.y + SLIP_MM, side - 2 * SLIP_MM, side - 2 * SLIP_MM)
        everything = [thing[0] for thing in letters + swatches + marks + arrows]
        # a letter's rectangle is as high as its line: its ink is lower, from the middle by half of its size at most
        inside.append((label, bool(everything) and all(
            clear.holds(r.x, r.centre[1]) and clear.holds(r.x + r.width, r.centre[1]) for r in everything
        ) and all(clear.holds(r.x, r.y) and clear.holds(r.x + r.width, r.y + r.height) for r, *_ in swatches + marks + arrows)))
        largest = max((size for *_, size in letters), default=0)
        said.append((label, "".join(text for _, text, size in letters if size > largest - 0.01) == label))
        marked.append((label, len(marks) == 4 and sum(filled for _, filled in marks) == levels.index(planned["level"]) + 1))
        needed = [tuple(int(pencils[p]["srgb"][i : i + 2], 16) / 255 for i in (1, 3, 5)) for p in planned["pencils"]]
        shown = [colour for _, colour in swatches]
        same = all(max(abs(a - b) for a, b in zip(one, other)) < 0.01 for one, other in zip(shown, needed))
        more = len(needed) - len(shown)
        words = "".join(text for _, text, _ in letters)
        coloured.append((label, bool(shown) and same and (more == 0 or words.endswith(f"+ {more}") or words.endswith(f"+{more}"))))
        if arrows:
            r, points = arrows[0]
            widest = max(points, key=lambda p: abs(p[0] - r.centre[0]))
            tip = min(points, key=lambda p: abs(p[0] - r.centre[0]))
            up = tip[1] < widest[1] - 0.1
            ways.append((label, up == (kit.flip != "short-edge")))
            x, y = (r.x - back.x, r.y - back.y) if up else (back.x + side - r.x - r.width, back.y + side - r.y - r.height)
            places[round(x / TOLERANCE_MM), round(y / TOLERANCE_MM)] += 1
    tally.check("pieces: backs 2 mm or more inside the cut, behind their fronts", inside, "geometry of turning a sheet")
    tally.check("pieces: all backs the same way in their pieces", [("places", len(places) == 1)], "geometry of turning a sheet")
    tally.check("pieces: arrow to the front's top", ways, "geometry of turning a sheet")
    tally.check("pieces: label in the largest letters of the back", said, "manifest.json")
    tally.check("pieces: marks of the level", marked, "plan.json")
    tally.check("pieces: swatches are the piece's pencils, the largest area first; those left out counted", coloured, "plan.json")


def check_cuts(tally, kit):
    """The lines for cutting machines: each edge of each item once, in mm, in the page's own places."""
    width, height, source = PAPERS[kit.paper]
    for name, border in (("pieces", PIECE_BORDER_MM), ("squares", 0.0)):
        items = kit.manifest[name]
        pages = len(kit.documents[name].pages)
        fronts = sorted({p["page"] for p in items})
        per_sheet = 2 if pages > len(fronts) and kit.flip != "none" else 1
        if name == "pieces" and kit.flip == "none" and not beside(kit):
            per_sheet = 2
        parts = name == "squares" and in_parts(kit)
        sheets = sorted((kit.folder / "print" / "cuts").glob(f"{name}-*.svg"))
        tally.check(f"cuts: {name}: a file a sheet", [(len(sheets), len(sheets) == -(-pages // per_sheet))], "manifest.json")
        right, edges, once = [], [], []
        for path in sheets:
            number = int(path.stem.rsplit("-", 1)[1])
            page_mm, lines = svg_lines(path)
            right.append((path.name, near(page_mm[0], width) and near(page_mm[1], height)))
            cut = [line for group, line in lines if group == "cut"]
            once.append((path.name, bool(cut) and all_once([line for _, line in lines])))
            if parts:
                continue
            wide = 2 if name == "pieces" and beside(kit) else 1
            areas = [Rect(p["x_mm"] - border, p["y_mm"] - border, wide * (p["side_mm"] + 2 * border), p["side_mm"] + 2 * border)
                     for p in items if (p["page"] - 1) // per_sheet + 1 == number]
            wanted = {e for r in areas for e in edges_of(r)}
            whole = all(any(covers(line, e) for line in cut) for e in wanted)
            total = sum(abs(x2 - x1) + abs(y2 - y1) for x1, y1, x2, y2 in cut)
            edges.append((path.name, bool(areas) and whole and near(total, length_of_union(wanted))))
        tally.check(f"cuts: {name}: page in mm", right, f"svgelements; {source}")
        tally.check(f"cuts: {name}: no stretch twice", once, "svgelements")
        if not parts:
            tally.check(f"cuts: {name}: all edges of all items, and nothing else", edges, "svgelements and manifest.json")


def svg_lines(path):
    """The page's width and height in mm, and every line with its group, in mm."""
    svg = svgelements.SVG.parse(path, ppi=25.4)  # a user unit of the viewport is a millimetre then
    lines = []
    for group in svg:
        for shape in group if isinstance(group, svgelements.Group) else []:
            start, end = shape.first_point, shape.current_point
            lines.append((group.id, (start.x, start.y, end.x, end.y)))
    return (float(svg.width), float(svg.height)), lines


def edges_of(r):
    x, y, far_x, far_y = (round(v, 3) for v in (r.x, r.y, r.x + r.width, r.y + r.height))
    return [(x, y, far_x, y), (x, far_y, far_x, far_y), (x, y, x, far_y), (far_x, y, far_x, far_y)]


def covers(line, edge):
    """Whether a level or upright line holds all of an edge."""
    x1, y1, x2, y2 = line
    a, b, c, d = edge
    slack = 0.01
    if abs(b - d) < slack:
        return abs(y1 - b) < slack and abs(y2 - b) < slack and min(x1, x2) <= a + slack and max(x1, x2) >= c - slack
    return abs(x1 - a) < slack and abs(x2 - a) < slack and min(y1, y2) <= b + slack and max(y1, y2) >= d - slack


def on_one_line(lines):
    """Level and upright lines by where they lie, each as from and to."""
    found = {}
    for x1, y1, x2, y2 in lines:
        key, stretch = (("y", round(y1, 2)), (x1, x2)) if abs(y1 - y2) < 0.01 else (("x", round(x1, 2)), (y1, y2))
        found.setdefault(key, []).append(tuple(sorted(stretch)))
    return found


def all_once(lines):
    for stretches in on_one_line(lines).values():
        stretches.sort()
        if any(end > start + 0.01 for (_, end), (start, _) in zip(stretches, stretches[1:])):
            return False
    return True


def length_of_union(edges):
    total = 0.0
    for stretches in on_one_line(edges).values():
        reached = float("-inf")
        for start, end in sorted(stretches):
            total += max(0.0, end - max(start, reached))
            reached = max(reached, end)
    return total


def check_lists(tally, kit):
    """Every piece stands once where it belongs: on its level's label, in the checklist with two boxes, on the map."""
    labels = [t["label"] for t in kit.manifest["pieces"]]
    bags = ("plain", "easy", "medium", "hard", "reserve")
    present = [level for level in bags if level in kit.piece_levels.values()]
    rows, columns = (1 + max(square[key] for square in kit.manifest["squares"]) for key in ("row", "column"))
    outermost = {
        square["label"] for square in kit.manifest["squares"]
        if square["row"] in (0, rows - 1) or square["column"] in (0, columns - 1)
    }
    reserve = {label for label, level in kit.piece_levels.items() if level == "reserve"}
    tally.check("a border in reserve is the outermost ring or there is none", [(
        len(reserve), reserve in (set(), outermost)
    )], "plan.json, manifest.json")
    spot = {square["label"]: (square["column"], square["row"]) for square in kit.manifest["squares"]}
    walls = [wall for page in kit.documents["levels"].pages for wall in small_walls(page, columns, rows)]
    for level, marks in zip(present, walls, strict=True):
        own = {spot[label] for label, own_level in kit.piece_levels.items() if own_level == level}
        tally.check(f"levels: {level}, the spots of its pieces are filled, no others", [
            (len(own ^ marks.keys()), marks.keys() == own and all(part == 1 for part, _ in marks.values()))
        ], "plan.json")
    checklist = kit.documents["checklist"].pages
    listed = Counter(text for page in checklist for text, _ in page.words)
    boxes = [r for page in checklist for r in page.outlines if near(r.width, r.height) and 2.9 < r.width < 4.3]
    sides = Counter(round(r.width, 2) for r in boxes)
    tally.check("checklist: every piece once", ((label, listed[label] == 1) for label in labels), "manifest.json")
    tally.check("checklist: three boxes a piece, all alike", [(sides, sum(sides.values()) == 3 * len(labels) and len(sides) == 1)],
                "manifest.json")
    wanted = {row["row"]: (round(row["lower_mm"]), round(row["upper_mm"])) for row in kit.plan["wall"]["rows"]}
    said = inches if kit.settings["print"].get("units", "inch") == "inch" else lambda mm: str(round(mm))
    page = kit.documents["wall-map"].pages[0]
    words = f" {' '.join(text for text, _ in page.words)} "
    heights = {h for row in kit.plan["wall"]["rows"] for h in (row["lower_mm"], row["upper_mm"])}
    tally.check("wall-map: one page; heights of every row", [("pages", len(kit.documents["wall-map"].pages) == 1)] + [
        (said(h), f" {said(h)} " in words) for h in heights
    ], "plan.json")
    grid = kit.manifest["grid"]
    turned = defaultdict(str)
    for text, r, _ in sorted(page.turned, key=lambda own: -own[1].y):
        turned[round(r.centre[0])] += text.strip()
    distances = [said(column * grid["square_mm"]).replace(" ", "") for column in range(grid["columns"] + 1)]
    tally.check("wall-map: distances of every column", ((d, d in turned.values()) for d in distances), "manifest.json")
    drawn = Counter(round(r.width, 1) for r in kit.documents["wall-map"].pages[0].outlines if near(r.width, r.height))
    count = grid["columns"] * grid["rows"]
    tally.check("wall-map: squares are drawn square and alike", [(drawn, count in (n - 4 * (n > count) for n in drawn.values()))],
                "manifest.json")
    walls = [wall for page in kit.documents["pencils"].pages for wall in small_walls(page, columns, rows)]
    for (number, pencil), marks in zip(enumerate(kit.plan["pencils"]), walls, strict=True):
        needing = {
            spot[piece["label"]]: 1.0 if piece["pencils"][0] == number else 0.5
            for piece in kit.plan["pieces"] if number in piece["pencils"]
        }
        tally.check(f"pencils: {pencil['name']}, its spots are filled in its colour, mostly or in part", [(
            len(needing.items() ^ {at: part for at, (part, _) in marks.items()}.items()),
            needing == {at: part for at, (part, _) in marks.items()}
            and all(same_colour(colour, pencil["srgb"]) for _, colour in marks.values()),
        )], "plan.json")


def shows_its_part(raster, picture, piece, grid):
    """Compares the raster with the picture: each pixel's colour lies between the darkest and the lightest that the
    picture has within 0.1 mm of it (30 of 255 more for JPEG and colour management); around the piece it is white."""
    height, width, _ = picture.shape
    side = min(width / grid["columns"], height / grid["rows"])
    left = (width - side * grid["columns"]) / 2 + piece["column"] * side
    top = (height - side * grid["rows"]) / 2 + piece["row"] * side
    x0, y0, count = (round(piece[key] * PIECE_PX_PER_MM) for key in ("x_mm", "y_mm", "side_mm"))
    middles = numpy.arange(1, count - 1) + 0.5
    steps = (-TOLERANCE_MM, 0.0, TOLERANCE_MM)

    def near_by(first, edge_mm, start, most):
        mm = (middles + first) / PIECE_PX_PER_MM - edge_mm
        return [numpy.clip(start + (mm + d) * side / piece["side_mm"], 0, most - 1).astype(int) for d in steps]

    columns, rows = near_by(x0, piece["x_mm"], left, width), near_by(y0, piece["y_mm"], top, height)
    wanted = numpy.stack([picture[numpy.ix_(ys, xs)] for ys in rows for xs in columns]).astype(int)
    printed = raster[y0 + 1 : y0 + count - 1, x0 + 1 : x0 + count - 1].astype(int)
    same = (printed >= wanted.min(axis=0) - 30) & (printed <= wanted.max(axis=0) + 30)
    out = round(0.25 * PIECE_PX_PER_MM)  # beyond the hairline around the piece, before the tick marks
    rim = [raster[y0 - out, x0 : x0 + count], raster[y0 + count + out - 1, x0 : x0 + count],
           raster[y0 : y0 + count, x0 - out], raster[y0 : y0 + count, x0 + count + out - 1]]
    return same.all(axis=2).mean() > 0.995 and (numpy.concatenate(rim).min(axis=1) > 200).mean() > 0.95


def check_cards(tally, kit):
    grid = kit.manifest["grid"]
    wall_height = grid["rows"] * grid["square_mm"]
    placed = []
    for card in kit.manifest["cards"]:
        spots = [(p, r) for p in kit.cards.pages for r in code_places(p, card)]
        if len(spots) != 1:
            placed.append((card["text"], False))
            continue
        page, (r, turned) = spots[0]
        cell = grid["square_mm"]
        side = min(cell, LONGEST_CARD_MM)
        own = lambda along: along % cell - (cell - side) / 2
        along = {"column": own(card["wall_x_mm"]), "row": own(card["wall_y_mm"]), "corner": CARD_MM / 2}[card["kind"]]
        across = {"column": card["wall_y_mm"] - wall_height, "row": card["wall_x_mm"] + CARD_MM, "corner": CARD_MM / 2}[card["kind"]]
        lying = (side, CARD_MM, along, across)
        standing = (CARD_MM, side, across, along)
        strip = 8.0
        top = card["wall_y_mm"] < 0
        corner = (CARD_MM, CARD_MM + strip, CARD_MM / 2, CARD_MM / 2 + (strip if top else 0))
        w, h, cx, cy = {"corner": corner, "column": lying, "row": standing}[card["kind"]]
        if turned:
            w, h, cx, cy = h, w, h - cy, cx
        x, y = r.centre
        placed.append((card["text"], outlined(page, Rect(x - cx, y - cy, w, h))))
    tally.check("cards: each code once, its modules the manifest's, centred where the card's place on the wall says",
                placed, "manifest.json and the ring of cards in the design")


def code_places(page, card):
    """Where on a page the card's code is drawn, and whether it is turned by a quarter."""
    module = card["module_mm"]
    wanted = modules_of_hex(card["modules"])
    finders = [r for r in page.filled if near(r.width, 7 * module) and near(r.height, module)]
    finders += [r for r in page.filled if near(r.height, 7 * module) and near(r.width, module)]
    for x, y in sorted({(round(r.x, 3), round(r.y, 3)) for r in finders}):
        drawn, exact = modules_drawn(page, x, y, module)
        for turned in (False, True):
            if exact and (numpy.rot90(drawn, -1 if not turned else 0) == numpy.rot90(wanted, -1)).all():
                yield Rect(x, y, 21 * module, 21 * module), turned


def check_decoding(tally, kit):
    """Every code as a phone would read it, out of the rasterised page."""
    for name, pdf, wanted in (
        ("squares", kit.squares, [s["text"] for s in kit.manifest["squares"]]),
        ("cards", kit.cards, [c["text"] for c in kit.manifest["cards"]]),
    ):
        by_zxing, by_opencv, levels = Counter(), Counter(), []
        for page in pdf.pages:
            raster = page.raster(PX_PER_MM)
            for found in zxingcpp.read_barcodes(raster, formats=zxingcpp.BarcodeFormat.QRCode):
                by_zxing[found.text] += 1
                levels.append((found.text, found.ec_level == "H"))
                by_opencv[opencv_reads(raster, found.position)] += 1
        source = "ISO/IEC 18004, read at 300 dots an inch"
        tally.check(f"{name}: every code once by zxing-cpp", ((t, by_zxing[t] == 1) for t in wanted), source)
        tally.check(f"{name}: no other code", [(sum(by_zxing.values()), sum(by_zxing.values()) == len(wanted))], source)
        tally.check(f"{name}: every code once by OpenCV", ((t, by_opencv[t] == 1) for t in wanted), source)
        tally.check(f"{name}: error correction H", levels, "ISO/IEC 18004, by zxing-cpp")
        tally.check(f"{name}: at most 10 characters", ((t, len(t) <= 10) for t in wanted),
                    "ISO/IEC 18004, capacity of version 1-H, alphanumeric")


def opencv_reads(raster, position):
    """OpenCV is given one code at a time, with its quiet zone, enlarged: its search for many takes minutes."""
    corners = [position.top_left, position.top_right, position.bottom_right, position.bottom_left]
    xs, ys = [p.x for p in corners], [p.y for p in corners]
    white = round((max(xs) - min(xs)) * 4 / 21 * 0.9)
    part = raster[max(min(ys) - white, 0) : max(ys) + white, max(min(xs) - white, 0) : max(xs) + white]
    for factor in (1, 2, 3, 1.5, 2.5, 4, 1.25, 1.75, 3.5, 5):
        large = cv2.resize(part, None, fx=factor, fy=factor, interpolation=cv2.INTER_CUBIC)
        text, *_ = cv2.QRCodeDetector().detectAndDecode(cv2.cvtColor(large, cv2.COLOR_RGB2BGR))
        if text:
            return text
    return None


def check_trade(tally, kit):
    """What the ruler is for: printed “fit to page”, an inch is no inch, and the ruler shows it."""
    grid = kit.manifest["grid"]
    factor = grid["square_mm"] / grid["piece_mm"]
    usual = grid["piece_mm"] == INCH_MM and grid["square_mm"] == 5 * INCH_MM
    if usual:
        tally.check("an inch redrawn on five: scale factor 5, area 25 times", [
            (factor, abs(factor - 5) < 1e-9), (factor**2, abs(factor**2 - 25) < 1e-9)
        ], "common practice, no source")
    width, height, _ = PAPERS[kit.paper]
    fit = min((width - 2 * UNPRINTABLE_MM) / width, (height - 2 * UNPRINTABLE_MM) / height)
    page = kit.pieces.pages[0]
    found = {ratio: longest_dark_run(page, ratio) for ratio in (1.0, fit)}
    tally.check(f"printed at {fit:.1%} (“fit to page”), the 4 in ruler shows it", [
        (f"100 %: {found[1.0]:.1f} mm", abs(found[1.0] - 4 * INCH_MM) <= 0.3),
        (f"fit: {found[fit]:.1f} mm", 4 * INCH_MM - found[fit] > 2.0),
    ], "common practice, no source; rasterised by PDFium")


def longest_dark_run(page, ratio):
    """Length of the longer ruler on paper in mm when the page is printed at a ratio: its line, looked for in the strip."""
    px_per_mm = 10.0
    ink = page.raster(px_per_mm * ratio).max(axis=2) < 140
    rulers = [line for line in page.lines if near(max(line.width, line.height), 4 * INCH_MM)]
    if not rulers:
        return 0.0
    ruler = rulers[0]
    x, y = (round(c * ratio * px_per_mm) for c in ruler.centre)
    lines = ink[y - 3 : y + 4].any(axis=0) if ruler.width > ruler.height else ink[:, x - 3 : x + 4].any(axis=1)
    best = run = 0
    for dark in lines:
        run = run + 1 if dark else 0
        best = max(best, run)
    return best / px_per_mm


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    kit, tally = Kit(sys.argv[1]), Tally()
    check_files(tally, kit)
    check_pages(tally, kit)
    check_squares(tally, kit)
    check_backs(tally, kit, "squares", kit.manifest["squares"], 0.0)
    check_spots(tally, kit)
    check_pieces(tally, kit)
    check_piece_backs(tally, kit)
    check_cuts(tally, kit)
    check_lists(tally, kit)
    check_cards(tally, kit)
    check_decoding(tally, kit)
    check_trade(tally, kit)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(tally.failed > 0)


if __name__ == "__main__":
    main()
