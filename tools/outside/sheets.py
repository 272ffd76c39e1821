"""Photographs the test page and pages to draw at home: python tools/outside/sheets.py PROGRAM PICTURE OUT

PROGRAM is everysquare, PICTURE the picture to make events of; what is made lies in OUT. Needs Python 3.11 and numpy, opencv-python-headless,
pdfplumber, pypdfium2, scipy, scikit-image, zxing-cpp. Each photo is made: PDFium draws a page on its paper, printed at a known scale and place, OpenCV's camera sees it from
a known pose, a lamp lights it from one side, the sensor adds noise, a JPEG is kept. What the program says is then compared with what is
known. Each check names what it is checked against. Ends with "N passed, M failed" and exits 1 where one failed."""

import json
import re
import subprocess
import sys
from pathlib import Path

import cv2
import numpy
import pypdfium2
import zxingcpp

from fill import Event, hang
from measure import Pdf
from pdf import PAPERS as KNOWN
from pdf import Tally

PAPERS = {name: size[:2] for name, size in KNOWN.items()}

PX_PER_MM = 10
SCALE_ERROR = 0.3  # per cent, that the program may be off
RNG = numpy.random.default_rng(20261130)


def run(program, *words):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True)
    return done.returncode, done.stdout + done.stderr


def drawn(pdf, page):
    """A page as PDFium draws it, in BGR."""
    image = pypdfium2.PdfDocument(pdf)[page].render(scale=PX_PER_MM * 25.4 / 72).to_numpy()[:, :, :3]
    return numpy.ascontiguousarray(image)


def on_paper(image, paper_mm, scale=1.0, shift=(0.0, 0.0), askew=0.0, cut_mm=0.0):
    """A page printed on a sheet: smaller or larger, beside the middle, askew, without what is nearest to the edges."""
    width, height = (round(side * PX_PER_MM) for side in paper_mm)
    high, wide = image.shape[:2]
    turn = cv2.getRotationMatrix2D((wide / 2, high / 2), -askew, scale)
    turn[:, 2] += [width / 2 - wide / 2 + shift[0] * PX_PER_MM, height / 2 - high / 2 + shift[1] * PX_PER_MM]
    sheet = cv2.warpAffine(image, turn, (width, height), flags=cv2.INTER_AREA, borderMode=cv2.BORDER_CONSTANT, borderValue=(255, 255, 255))
    edge = round(cut_mm * PX_PER_MM)
    if edge:
        kept = numpy.full_like(sheet, 255)
        kept[edge:-edge, edge:-edge] = sheet[edge:-edge, edge:-edge]
        sheet = kept
    return sheet


def photo(sheet, paper_mm, turn=0.0, tilt=(0.0, 0.0), size=(3024, 4032), table=70, blur=1.0, noise=2.5, quality=88, lamp=0.35, fill=0.82):
    """A sheet on a table, seen by a pinhole camera: a BGR picture and the pose as OpenCV has it (rotation, translation, matrix)."""
    wide, high = size
    focal = 1.1 * max(size)
    matrix = numpy.array([[focal, 0, wide / 2], [0, focal, high / 2], [0, 0, 1]], float)
    rotation = cv2.Rodrigues(numpy.radians([tilt[0], tilt[1], 0.0]))[0] @ cv2.Rodrigues(numpy.radians([0.0, 0.0, turn]))[0]
    corners = numpy.array([[x, y, 0] for x in (-0.5, 0.5) for y in (-0.5, 0.5)]) * [*paper_mm, 0] @ rotation.T
    away = focal * max(numpy.ptp(corners[:, 0]) / wide, numpy.ptp(corners[:, 1]) / high) / fill
    translation = numpy.array([0.0, 0.0, away])
    to_middle = numpy.array([[1 / PX_PER_MM, 0, -paper_mm[0] / 2], [0, 1 / PX_PER_MM, -paper_mm[1] / 2], [0, 0, 1]])
    homography = matrix @ numpy.column_stack([rotation[:, 0], rotation[:, 1], translation]) @ to_middle
    grain = RNG.normal(table, 4, (high // 8, wide // 8)).astype(numpy.float32)
    mask = cv2.warpPerspective(numpy.ones(sheet.shape[:2], numpy.float32), homography, size, flags=cv2.INTER_AREA)
    shrunk = cv2.GaussianBlur(sheet, (0, 0), 0.35 * PX_PER_MM * away / focal + 0.3)
    seen = cv2.warpPerspective(shrunk, homography, size, flags=cv2.INTER_LINEAR).astype(numpy.float32)
    seen *= mask[:, :, None]
    seen += (cv2.resize(grain, (wide, high)) * (1 - mask))[:, :, None]
    along, down = (numpy.linspace(-0.5, 0.5, side, dtype=numpy.float32) for side in (wide, high))
    seen *= ((0.9 - lamp * along)[None, :] - (0.4 * lamp * down)[:, None])[:, :, None]
    seen *= numpy.float32([0.86, 0.95, 1.0])  # warm light
    seen = cv2.GaussianBlur(seen, (0, 0), blur)
    seen += RNG.standard_normal(seen.shape, dtype=numpy.float32) * numpy.float32(noise)
    levels = numpy.clip(seen, 0, 255, out=seen).astype(numpy.uint8)
    image = cv2.imdecode(cv2.imencode(".jpg", levels, [cv2.IMWRITE_JPEG_QUALITY, quality])[1], 1)
    return image, homography @ numpy.diag([PX_PER_MM, PX_PER_MM, 1.0])


def kept(out, name, image, quality=88):
    path = out / f"{name}.jpg"
    cv2.imwrite(str(path), image, [cv2.IMWRITE_JPEG_QUALITY, quality])
    return path


def event(program, picture, folder, paper, *more):
    if not folder.exists():
        code, said = run(program, "new", folder, "--picture", picture, "--columns", "6", "--rows", "5", "--paper", paper, *more)
        assert code == 0, said
    code, said = run(program, "print", folder)
    assert code == 0, said
    return folder


def percent(said):
    found = re.search(r"(\d+(?:\.\d+)?)%", said)
    return float(found.group(1)) if found else float("nan")


def check_scales(tally, program, folder, paper, out):
    run(program, "print", folder, "test-page")
    page = drawn(folder / "print" / "test-page.pdf", 0)
    exact, verdicts, worst = [], [], 0.0
    for number, scale in enumerate([0.85, 0.9, 0.932, 0.94, 0.96, 0.97, 0.984, 0.992, 1.0, 1.0, 1.0, 1.02, 0.5]):
        sheet = on_paper(page, PAPERS[paper], scale, RNG.uniform(-1.5, 1.5, 2), RNG.uniform(-0.3, 0.3))
        turn, tilt = RNG.uniform(-25, 25), RNG.uniform(-18, 18, 2)
        size = (1512, 2016) if number % 4 == 3 else (3024, 4032)
        image, _ = photo(sheet, PAPERS[paper], turn, tilt, size, table=RNG.choice([30, 70, 120]), blur=0.8 if size[0] < 2000 else 1.3)
        path = kept(out, f"{paper}-{number}-{scale}", image)
        code, said = run(program, "test-page", folder, path)
        told = percent(said)
        worst = max(worst, abs(told - 100 * scale))
        exact.append((f"{path.name}: {told}", abs(told - 100 * scale) <= SCALE_ERROR))
        verdicts.append((f"{path.name}: exit {code}: {said.strip()}", code == (2 if abs(scale - 1) < 0.005 else 1)))  # 2: the other side is still to be looked at
    print(f"test page on {paper}: scale told, at most {worst:.2f} per cent off")
    tally.check(f"{paper}: the scale within {SCALE_ERROR} per cent", exact, "the scale at which it was drawn, from poses by OpenCV")
    tally.check(f"{paper}: a wrong scale is a fault, a right one is none", verdicts, "the scale at which it was drawn")


def check_faults(tally, program, folder, paper, flip, out):
    front = drawn(folder / "print" / "test-page.pdf", 0)
    back = drawn(folder / "print" / "test-page.pdf", 1)
    if flip == "short-edge":
        back = back[::-1, ::-1].copy()  # as it lies on the sheet, which is then turned like the page of a book
    size = PAPERS[paper]

    def shot(name, sheet, paper_mm=size, **how):
        return kept(out, f"{paper}-{name}", photo(sheet, paper_mm, **{"turn": 4.0, "tilt": (6.0, -5.0), **how})[0])

    right = shot("front", on_paper(front, size))
    said = {
        "right, both sides": ([right, shot("back", on_paper(back, size, shift=(1.0, 0.6)), turn=-3.0)], 0, "right way up"),
        "back upside down": ([right, shot("back-down", on_paper(back, size)[::-1, ::-1].copy())], 1, "upside down"),
        "back too far off": ([right, shot("back-off", on_paper(back, size, shift=(4.0, 3.0)))], 1, "off its front"),
        "photos held differently": ([right, shot("back-side", on_paper(back, size), turn=92.0, size=(4032, 3024))], 0, "hold the phone"),
        "beside the middle": ([shot("shifted", on_paper(front, size, shift=(5.5, 0.0)))], 1, "off the middle"),
        "crooked": ([shot("askew", on_paper(front, size, askew=1.4))], 1, "crooked"),
        "edges left out": ([shot("cut", on_paper(front, size, cut_mm=9.0))], 1, "closest to the edge"),
        "in black": ([shot("grey", on_paper(cv2.cvtColor(cv2.cvtColor(front, cv2.COLOR_BGR2GRAY), cv2.COLOR_GRAY2BGR), size))], 1, "black only"),
        "no yellow": ([shot("no-yellow", on_paper(without(front, 0), size))], 1, "yellow"),
        "no magenta": ([shot("no-magenta", on_paper(without(front, 1), size))], 1, "magenta"),
        "no cyan": ([shot("no-cyan", on_paper(without(front, 2), size))], 1, "cyan"),
        "on a white table": ([shot("white", on_paper(front, size), table=246, lamp=0.0)], 2, "something dark"),
        "a mark under a cup": ([shot("cup", covered(on_paper(front, size)))], 2, "black marks"),
        "half the page": ([kept(out, f"{paper}-half", photo(on_paper(front, size), size)[0][:1900])], 2, ""),
        "a photo of nothing": ([kept(out, f"{paper}-nothing", RNG.normal(90, 20, (900, 700, 3)).clip(0, 255).astype(numpy.uint8))], 2, "code of a test page"),
    }
    other = "a4" if paper == "letter" else "letter"
    fitted = min(1.0, *(own / meant for own, meant in zip(PAPERS[other], size)))
    said["on other paper"] = ([shot("other", on_paper(front, PAPERS[other], fitted), PAPERS[other])], 1, f"This is {PAPER_NAMES[other]} paper")
    results = []
    for what, (photos, code, words) in said.items():
        own, told = run(program, "test-page", folder, *photos)
        results.append((f"{what}: exit {own}: {told.strip()}", own == code and words.lower() in told.lower()))
    tally.check(f"{paper}: each fault is told, and nothing else is called one", results, "what was done to the page")


PAPER_NAMES = {"letter": "letter", "a4": "A4"}


def without(image, channel):
    """A page printed without one ink: it takes away blue (yellow ink), green (magenta) or red (cyan)."""
    lacking = image.copy()
    lacking[:, :, channel] = 255
    return lacking


def covered(sheet):
    cup = sheet.copy()
    cv2.circle(cup, (round(20 * PX_PER_MM), round(20 * PX_PER_MM)), round(14 * PX_PER_MM), (90, 60, 30), -1)
    return cup


def drawing(side):
    """What somebody draws: areas of colour, strokes, a white rest."""
    canvas = numpy.full((side, side, 3), 255, numpy.uint8)
    for _ in range(6):
        points = RNG.uniform(0.05, 0.95, (5, 2)) * side
        cv2.fillPoly(canvas, [points.astype(numpy.int32)], RNG.integers(40, 230, 3).tolist(), cv2.LINE_AA)
    for _ in range(5):
        a, b = (RNG.uniform(0.05, 0.95, 2) * side).astype(int), (RNG.uniform(0.05, 0.95, 2) * side).astype(int)
        cv2.line(canvas, tuple(map(int, a)), tuple(map(int, b)), RNG.integers(0, 120, 3).tolist(), round(side / 60), cv2.LINE_AA)
    return canvas


def squares_on(image, side_mm):
    """The place of the square on a page to draw at home, in mm: between the four marks."""
    grey = cv2.cvtColor(image, cv2.COLOR_BGR2GRAY)
    dark = (grey < 60).astype(numpy.uint8)
    count, _, stats, centres = cv2.connectedComponentsWithStats(dark)
    rings = [centres[k] for k in range(1, count) if abs(stats[k, 2] - 10.5 * PX_PER_MM) < 3 and abs(stats[k, 3] - 10.5 * PX_PER_MM) < 3]
    assert len(rings) == 4, rings
    left, top = numpy.min(rings, axis=0)
    right, bottom = numpy.max(rings, axis=0)
    beside = ((right - left) / PX_PER_MM - side_mm) / 2
    assert abs((bottom - top) / PX_PER_MM - side_mm - 2 * beside) < 0.25, (left, right, top, bottom)
    return left / PX_PER_MM + beside, top / PX_PER_MM + beside


def check_home(tally, program, folder, paper, out, side_mm):
    labels = ["A1", "C3", "F5", "B2"]
    code, said = run(program, "print", folder, "home", "--only", ",".join(labels))
    tally.check(f"{paper}: pages to draw at home are printed", [(said, code == 0)], "exit code")
    pdf = folder / "print" / "home.pdf"
    order = [re.findall(r"\b([A-F][1-5])\b", page.get_textpage().get_text_range())[0] for page in pypdfium2.PdfDocument(pdf)]
    off, places, photos = [], [], []
    truths = {}
    for number, label in enumerate(order):
        page = drawn(pdf, number)
        x, y = squares_on(page, side_mm)
        side = round(side_mm * PX_PER_MM)
        left, top = round(x * PX_PER_MM), round(y * PX_PER_MM)
        own = page[top : top + side, left : left + side]
        art = cv2.multiply(drawing(side), own, scale=1 / 255)
        art[round(side * 0.8) :, round(side * 0.75) :] = own[round(side * 0.8) :, round(side * 0.75) :]
        page[top : top + side, left : left + side] = art
        truths[label] = art
        scan = number == 3
        how = {"turn": 0.4, "tilt": (0, 0), "table": 250, "lamp": 0.0, "noise": 1.0, "fill": 0.98} if scan else {"turn": RNG.uniform(-180, 180), "tilt": RNG.uniform(-20, 20, 2), "lamp": 0.5}
        size = [(3024, 4032), (1200, 1600), (3024, 4032), (2480, 3508)][number]
        image, homography = photo(page, PAPERS[paper], size=size, blur=0.7 if size[0] < 2000 else 1.2, **how)
        photos.append(kept(out, f"home-{paper}-{label}", image))
        places.append(homography)
    code, said = run(program, "receive", folder, *photos)
    tally.check(f"{paper}: all come back", [(said, code == 0), *((label, (folder / "from-home" / f"{label}.png").exists()) for label in labels)], "exit code")
    for label, truth in truths.items():
        path = folder / "from-home" / f"{label}.png"
        if not path.exists():
            continue
        came = cv2.imread(str(path)).astype(numpy.float32)
        wanted = cv2.resize(truth, came.shape[1::-1], interpolation=cv2.INTER_AREA).astype(numpy.float32)
        grey = [cv2.GaussianBlur(cv2.cvtColor(i.astype(numpy.uint8), cv2.COLOR_BGR2GRAY), (0, 0), 2).astype(numpy.float32) for i in (came, wanted)]
        (dx, dy), _ = cv2.phaseCorrelate(grey[0], grey[1], cv2.createHanningWindow(grey[0].shape[::-1], cv2.CV_32F))
        mm = side_mm / came.shape[0]
        white = came[(cv2.erode(wanted.min(axis=2), numpy.ones((9, 9))) > 250)]
        off.append((f"{label}: {numpy.hypot(dx, dy) * mm:.2f} mm", numpy.hypot(dx, dy) * mm < 0.5))
        off.append((f"{label}: {numpy.abs(grey[0] - grey[1]).mean():.1f} levels", numpy.abs(grey[0] - grey[1]).mean() < 16))
        spread = numpy.percentile(white, 95, axis=0) - numpy.percentile(white, 5, axis=0)
        off.append((f"{label}: white {white.mean(axis=0).round()} ± {spread.round()}", white.mean() > 232 and numpy.ptp(white.mean(axis=0)) < 8 and spread.max() < 22))
    tally.check(f"{paper}: squares are straight, upright, and white where the paper is", off, "what was drawn on the page; OpenCV's phase correlation")
    check_hung(tally, program, folder, paper, labels, truths, out)
    code, said = run(program, "receive", folder, photos[0])
    tally.check(f"{paper}: one that comes again takes the place of the one before", [(said, code == 0 and "again" in said)], "what was given")
    bad(tally, program, folder, paper, out, cv2.imread(str(photos[0])), places[0], side_mm, drawn(pdf, 0))


def check_hung(tally, program, folder, paper, labels, truths, out):
    """The squares that came back: their sheets, hung on a made wall and checked, and in the keepsakes while they do not hang."""
    event = Event(folder)
    pdf = Pdf(folder / "print" / "from-home.pdf")
    code = event.code
    wall, px = hang(event, pdf, out)
    exit_code, said = run(program, "check", folder, wall)
    newest = max((folder / "checks").iterdir())
    states = {cell["label"]: cell["state"] for cell in json.loads((newest / "report.json").read_text())["cells"]}
    tally.check(f"{paper}: hung on a made wall they are read as right ({px:.1f} px a module)", (
        (f"{label} {state}", state == "right") for label, state in states.items()
    ), "squares rendered by PDFium, photo by OpenCV")
    wall, _ = hang(event, pdf, out, labels)
    exit_code, said = run(program, "display", folder, wall, "--missing", "open", "--only", "side-by-side")
    told = re.search(r"Drawn at home[^:]*: (.*)\.", said)
    picture = cv2.imread(str(max((folder / "display").iterdir()) / "wall.jpg"))
    side = picture.shape[0] / event.rows
    shown = [("told", told is not None and set(told.group(1).split(", ")) == set(labels))]
    for square in event.manifest["squares"]:
        if square["label"] in labels:
            x, y = round(square["column"] * side), round(square["row"] * side)
            own = picture[y : y + round(side), x : x + round(side)].astype(float)
            wanted = cv2.resize(truths[square["label"]], own.shape[1::-1], interpolation=cv2.INTER_AREA).astype(float)
            away = numpy.abs(cv2.GaussianBlur(own, (0, 0), 2) - cv2.GaussianBlur(wanted, (0, 0), 2)).mean()
            shown.append((f"{square['label']}: {away:.1f} levels", away < 20))
    tally.check(f"{paper}: while they do not hang the keepsakes show them in their places", shown, "what was drawn")
    results = []
    document = pypdfium2.PdfDocument(folder / "print" / "from-home.pdf")
    for number in range(len(document)):
        image = drawn(folder / "print" / "from-home.pdf", number)
        for found in zxingcpp.read_barcodes(image):
            label = found.text.split("-")[-1]
            corner = [found.position.top_left.x / PX_PER_MM, found.position.top_left.y / PX_PER_MM]
            wide = (found.position.top_right.x - found.position.top_left.x) / PX_PER_MM
            results.append((f"{label} {corner}", abs(wide - 21 * code["module_mm"]) < 0.4))
            labels = [own for own in labels if own != label]
    results.append((f"missing: {labels}", not labels))
    tally.check(f"{paper}: what is printed to hang has each square's code in its size", results, "zxing-cpp on PDFium's picture")


def bad(tally, program, folder, paper, out, image, homography, side_mm, page):
    def at(x, y):
        p = homography @ [x, y, 1]
        return tuple(int(round(v)) for v in p[:2] / p[2])

    x, y = squares_on(page, side_mm)
    code = at(x + side_mm - 14, y + side_mm - 14)
    mark = at(x - 9, y - 9)
    radius = round(numpy.hypot(*(numpy.array(at(x + 11, y)) - at(x, y))))
    thumb, under = image.copy(), image.copy()
    cv2.circle(thumb, code, radius, (120, 150, 205), -1)
    cv2.circle(under, mark, radius, (120, 150, 205), -1)
    other = event(program, out / "picture.png", out / f"other-{paper}", paper, "--square-mm", "127", "--piece-mm", "25.4", "--tag", "Q9X", "--name", "Another evening")
    run(program, "print", other, "home", "--only", "A1")
    foreign = photo(drawn(other / "print" / "home.pdf", 0), PAPERS[paper], 5.0, (4.0, 4.0))[0]
    results = []
    for what, picture, words in (("thumb on the code", thumb, "finger"), ("thumb on a mark", under, "black marks"), ("another event's page", foreign, "Q9X")):
        code, said = run(program, "receive", folder, kept(out, f"home-{paper}-{what.replace(' ', '-')}", picture))
        results.append((f"{what}: exit {code}: {said.strip()}", code == 2 and words in said))
    tally.check(f"{paper}: what cannot be taken in is refused with its reason", results, "what was done to the photo")


def main():
    program, picture, out = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])
    out.mkdir(parents=True, exist_ok=True)
    (out / "picture.png").write_bytes(picture.read_bytes())
    tally = Tally()
    for paper, flip in (("letter", "long-edge"), ("a4", "short-edge")):
        folder = event(program, picture, out / f"event-{paper}", paper, "--flip", flip, "--square-mm", "127", "--piece-mm", "25.4", "--tag", "K7M", "--name", "Sheets")
        check_scales(tally, program, folder, paper, out)
        check_faults(tally, program, folder, paper, flip, out)
        check_home(tally, program, folder, paper, out, 127.0)
    large = out / "event-large"
    folder = event(program, picture, large, "letter", "--square-mm", "160", "--tag", "L7M", "--name", "Large")
    code, said = run(program, "print", folder, "home", "--only", "A1")
    tally.check("letter: squares of 160 mm are refused for home pages, with the largest that fits", [(said, code == 2 and "143.8" in said)], "the page's measures")
    print(f"{tally.passed} passed, {tally.failed} failed")
    return int(tally.failed > 0)


if __name__ == "__main__":
    sys.exit(main())
