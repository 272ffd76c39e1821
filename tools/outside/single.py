"""Measures squares with help, large pieces and spare squares: python tools/outside/single.py PROGRAM FOLDER

FOLDER is an event folder that was printed. Needs Python 3.11 and numpy, opencv-python-headless, pdfplumber, pypdfium2, scipy,
scikit-image, zxing-cpp. Each check names what it is checked against. Ends with "N passed, M failed" and exits 1 where one failed."""

import subprocess
import sys
from pathlib import Path

import numpy
from scipy.ndimage import binary_dilation, distance_transform_edt

from fill import PX_PER_MM, WORST_MM, Event, check_names, codes, edge_distance, labels_of_picture, shown, squares_of
from measure import Pdf
from pdf import Tally, near

TIMES = 3  # a large piece's side over a piece's
INK = 200  # darker than this is ink
CONTRAST = 4.5  # WCAG 2.2, success criterion 1.4.3


def printed(program, event, *words):
    subprocess.run([program, "print", str(event.folder), *words], check=True, capture_output=True)
    return Pdf(event.folder / "print" / f"{words[0]}.pdf")


def truth_of(event, square, count):
    """The numbers of the pencils of a piece, in so many pixels a side."""
    _, numbers, side, (left, top) = labels_of_picture(event)
    at = (numpy.arange(count) + 0.5) / count * side
    rows = numpy.clip((top + square["row"] * side + at).astype(int), 0, numbers.shape[0] - 1)
    across = numpy.clip((left + square["column"] * side + at).astype(int), 0, numbers.shape[1] - 1)
    return numbers[numpy.ix_(rows, across)]


def free(event, count):
    """What of a square is neither its rim with ticks nor its code and label."""
    inner = numpy.zeros((count, count), bool)
    rim = round(4 * PX_PER_MM)
    inner[rim:-rim, rim:-rim] = True
    code = event.code
    y = round((code["y_mm"] - 6 * code["module_mm"]) * PX_PER_MM)
    inner[y:, round((code["x_mm"] - 20) * PX_PER_MM) :] = False
    return inner


def check_squares(tally, event, pdf, wanted, what):
    found = list(squares_of(event, pdf))
    tally.check(f"{what}: each square once, with its own code", [("labels", sorted(label for label, *_ in found) == sorted(wanted))], "zxing-cpp")
    tally.check(f"{what}: the code is where the kit's is", (
        (label, abs(x - event.code["x_mm"]) < 0.3 and abs(y - event.code["y_mm"]) < 0.3) for label, _, _, (x, y) in found
    ), "PDFium and zxing-cpp: its corner, within 0.3 mm")
    ticks = []
    for label, page, outline, _ in found:
        image = shown(page, outline, PX_PER_MM).min(axis=2)
        at, reach = round(event.square_mm / 4 * PX_PER_MM), round(0.4 * PX_PER_MM)
        row = image[round(1.5 * PX_PER_MM), at - reach : at + reach]
        ticks.append((label, row.min() < INK))
    tally.check(f"{what}: a tick mark at the first quarter of the top", ticks, "PDFium")
    return found


def check_dots(tally, event, found):
    """Dotted outlines against the picture's edges: ink lies on edges, and edges have ink."""
    off, bare = [], []
    scale = event.piece_mm / event.square_mm / PX_PER_MM
    for label, page, outline, _ in found:
        ink = shown(page, outline, PX_PER_MM).min(axis=2) < INK
        inner = free(event, len(ink))
        edges = edge_distance(truth_of(event, event.texts[f"{event.manifest['event']['tag']}-{label}"], len(ink))) <= 1
        if not (edges & inner).any():
            continue
        off.extend((distance_transform_edt(~edges)[ink & inner] * scale).tolist())
        near_ink = binary_dilation(ink, iterations=round(2.5 * PX_PER_MM))
        bare.append((label, float(near_ink[edges & inner].mean())))
    off = numpy.array(off or [9.0])
    print(f"helped: dotted lines off the picture's edges, on the piece: median {numpy.median(off):.3f} mm, worst {off.max():.3f} mm")
    tally.check("helped: dots lie on the picture's edges", [(f"worst {off.max():.3f}", off.max() <= WORST_MM)],
                f"PDFium at 300 ppi against the picture's pixels: {WORST_MM} mm on the piece")
    tally.check("helped: all edges are dotted", ((f"{label} {share:.3f}", share > 0.97) for label, share in bare), "the picture's pixels")


def check_lines(tally, event, found):
    results = []
    for label, page, outline, _ in found:
        ink = shown(page, outline, PX_PER_MM).min(axis=2) < INK
        inner = free(event, len(ink))
        wanted = numpy.zeros_like(ink)
        for part in (0.25, 0.5, 0.75):
            at = round(part * len(ink))
            wanted[at - 3 : at + 4] = wanted[:, at - 3 : at + 4] = True
        lines = [ink[round(part * len(ink)) - 3 : round(part * len(ink)) + 4].any(axis=0)[inner.all(axis=0) | inner[len(ink) // 4]].mean() for part in (0.25, 0.5)]
        results.append((label, not (ink & inner & ~wanted).any() and min(lines) > 0.98))
    tally.check("helped: faint lines join opposite tick marks, and there is nothing else", results, "PDFium")


def luminance(colour):
    """Relative luminance (WCAG 2.2)."""
    part = [c / 255 / 12.92 if c / 255 <= 0.04045 else ((c / 255 + 0.055) / 1.055) ** 2.4 for c in colour]
    return 0.2126 * part[0] + 0.7152 * part[1] + 0.0722 * part[2]


def check_large(tally, event, pdf, wanted):
    colours, *_ = labels_of_picture(event)
    pieces = {piece["label"]: piece for piece in event.plan["pieces"]}
    side = TIMES * event.piece_mm
    seen, colors, letters, contrast, lists = [], [], [], [], []
    for page in pdf.pages:
        frames = [o for o in page.outlines if o.width > side + 10]
        pictures = [o for o in page.outlines if near(o.width, side) and near(o.height, side)]
        for picture in pictures:
            frame = next(o for o in frames if o.holds(*picture.centre))
            inside = [(text, r) for text, r, _ in page.letters if frame.holds(*r.centre)]
            label = "".join(text for text, r in sorted(inside, key=lambda one: one[1].x) if r.y + r.height < picture.y)
            seen.append(label)
            square = event.texts[f"{event.manifest['event']['tag']}-{label}"]
            image = shown(page, picture, PX_PER_MM)
            truth = truth_of(event, square, len(image))
            apart = numpy.abs(image[:, :, None, :].astype(int) - numpy.array(colours)[None, None]).sum(axis=3)
            clear = (edge_distance(truth) > 0.6 * PX_PER_MM) & (apart.min(axis=2) < 12)
            colors.append((label, clear.any() and (apart.argmin(axis=2) == truth)[clear].mean() > 0.999))
            for text, r in inside:
                if not picture.holds(*r.centre):
                    continue
                x, y = ((c - o) * PX_PER_MM for c, o in zip(r.centre, (picture.x, picture.y)))
                number = truth[int(y), int(x)]
                letters.append((f"{label} {text}", ord(text) - ord("A") == number))
                glyph = image[int((r.y - picture.y) * PX_PER_MM) : int((r.y + r.height - picture.y) * PX_PER_MM),
                              int((r.x - picture.x) * PX_PER_MM) : int((r.x + r.width - picture.x) * PX_PER_MM)].reshape(-1, 3)
                own = luminance(colours[number])
                ratios = [(max(own, luminance(c)) + 0.05) / (min(own, luminance(c)) + 0.05) for c in (glyph.min(axis=0), glyph.max(axis=0))]
                contrast.append((f"{label} {text} {max(ratios):.1f}", max(ratios) >= CONTRAST))
            words = page.words_in(frame)
            names = [event.plan["pencils"][number]["name"] for number in pieces[label]["pencils"]]
            lists.append((f"{label} {words}", all(name in words for name in names)))
    tally.check("large: each piece once, three times as large", [("labels", sorted(seen) == sorted(wanted))], "pdfplumber")
    tally.check("large: areas have their pencils' colors", colors, "PDFium against the picture's pixels")
    tally.check("large: letters stand in areas of their pencils", letters, "pdfplumber against the picture's pixels")
    tally.check(f"large: letters have a contrast of {CONTRAST}", contrast, "WCAG 2.2, PDFium")
    tally.check("large: the list names the piece's pencils", lists, "plan.json, pdfplumber")


def main():
    program, event = sys.argv[1], Event(Path(sys.argv[2]))
    tally = Tally()
    drawn = [piece["label"] for piece in event.plan["pieces"] if len(piece["pencils"]) > 1]
    wanted = drawn[:: max(1, len(drawn) // 16)]
    only = ("--only", ",".join(wanted))
    pdf = printed(program, event, "helped", *only)
    check_squares(tally, event, pdf, wanted, "helped, names")
    check_names(tally, event, pdf)
    check_dots(tally, event, check_squares(tally, event, printed(program, event, "helped", *only, "--with", "dots"), wanted, "helped, dots"))
    check_lines(tally, event, check_squares(tally, event, printed(program, event, "helped", *only, "--with", "lines"), wanted, "helped, lines"))
    check_large(tally, event, printed(program, event, "large", *only), wanted)
    spare = printed(program, event, "spare")
    page = spare.pages[0]
    squares = [o for o in page.outlines if near(o.width, event.square_mm)]
    box = 29 * event.code["module_mm"]
    tally.check("spare: one page of squares without codes, each with a box for its label", [
        ("pages", len(spare.pages) == 1), ("squares", len(squares) >= 1), ("codes", not codes(page)),
        ("boxes", sum(near(o.width, box) for o in page.outlines) == len(squares)),
    ], "pdfplumber, zxing-cpp")
    print(f"{tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    sys.exit(main())
