"""Photos of drawings on paper, made here, and what the program takes out of them: python tools/outside/paper.py PROGRAM EXAMPLE FOLDER [PHOTOS]

EXAMPLE is `paper` of tools/examples. Needs Python 3.11 and numpy, opencv-python-headless, scikit-image, scipy. The camera, the light and the tables are this script's own. Places
are measured by the sheet's corners and by four dots in each drawing; beside that stands what the usual way of OpenCV (Canny, findContours,
approxPolyDP) makes of the same photos. Ends with "N passed, M failed" and exits 1 where one failed."""

import subprocess
import sys
from pathlib import Path

import cv2
import numpy
from scipy.ndimage import gaussian_filter
from skimage.color import deltaE_ciede2000, rgb2lab
from skimage.morphology import disk

from pdf import Tally

DRAWN_PX = 1200  # longer side of a drawing
FIRST = 9000
PHOTO = (2016, 1512)
RIM = 0.012  # of the shorter side, which the program leaves out
DOT = (225, 30, 130)
DOT_AT = 0.12  # from each edge, in parts of the sides
PLACE = 0.004  # of the longer side: how far a dot may be off; 1 mm on letter paper
SHAPE = 0.012
WHITE = 0.97  # part of the bare paper that comes out white
COLOUR = 7.0  # CIEDE2000 of an area's median to what was drawn
PAPERS = {"letter": 11 / 8.5, "A4": 2**0.5, "square": 1.0, "3:2": 1.5}
PENCILS = [(205, 60, 50), (55, 105, 175), (70, 150, 75), (245, 195, 60), (120, 75, 45), (40, 40, 45), (235, 130, 50)]


def linear(srgb):
    x = numpy.asarray(srgb, dtype=float) / 255
    return numpy.where(x <= 0.04045, x / 12.92, ((x + 0.055) / 1.055) ** 2.4)


def encoded(light):
    x = numpy.clip(light, 0, 1)
    return 255 * numpy.where(x <= 0.0031308, x * 12.92, 1.055 * x ** (1 / 2.4) - 0.055)


def drawing(rng, ratio):
    """A drawing on white, the number of the area of each pixel (0 paper, 255 dots), and the areas' colors."""
    size = (DRAWN_PX, round(DRAWN_PX / ratio)) if rng.random() < 0.5 else (round(DRAWN_PX / ratio), DRAWN_PX)
    wide, high = size
    areas = numpy.zeros((high, wide), numpy.uint8)
    colours = [(255, 255, 255)]

    def add(paint):
        colours.append(PENCILS[rng.integers(len(PENCILS))])
        paint(len(colours) - 1)

    if rng.random() < 0.4:  # a meadow up to the lower edge
        add(lambda n: cv2.rectangle(areas, (0, int(high * 0.75)), (wide, high), n, -1))
    for _ in range(rng.integers(4, 8)):
        x, y = rng.uniform(0.2, 0.8) * wide, rng.uniform(0.2, 0.8) * high
        r = rng.uniform(0.06, 0.16) * min(size)
        kind = rng.integers(3)
        corners = numpy.array([(x - r, y + r), (x + r, y + r), (x, y - r)], int)
        add(lambda n: cv2.circle(areas, (int(x), int(y)), int(r), n, -1) if kind == 0 else
            cv2.rectangle(areas, (int(x - r), int(y - r)), (int(x + r), int(y + r)), n, -1) if kind == 1 else
            cv2.fillPoly(areas, [corners], n))
    if rng.random() < 0.3:  # a frame near the paper's edge
        inset = int(0.03 * min(size))
        add(lambda n: cv2.rectangle(areas, (inset, inset), (wide - inset, high - inset), n, 5))
    for sx in (DOT_AT, 1 - DOT_AT):
        for sy in (DOT_AT, 1 - DOT_AT):
            cv2.circle(areas, (int(sx * wide), int(sy * high)), int(0.035 * min(size)), 0, -1)
            cv2.circle(areas, (int(sx * wide), int(sy * high)), int(0.016 * min(size)), 255, -1)
    palette = numpy.zeros((256, 3))
    palette[: len(colours)] = colours
    palette[255] = DOT
    return palette[areas], areas, colours


def table(rng, size):
    wide, high = size
    base = numpy.array([(110, 74, 48), (60, 62, 66), (150, 112, 70), (70, 90, 110), (165, 160, 150)][rng.integers(5)], float)
    texture = rng.normal(0, 1, (high, wide))
    kind = rng.integers(3)
    if kind == 0:  # wood: long grain
        texture = gaussian_filter(texture, (1.2, 60)) * 60
    elif kind == 1:
        texture = gaussian_filter(texture, 2) * 12
    else:  # woven cloth
        y, x = numpy.mgrid[0:high, 0:wide]
        texture = 6 * (numpy.sin(x / 3.1) * numpy.sin(y / 3.1)) + gaussian_filter(texture, 9) * 30
    return numpy.clip(base + texture[..., None], 0, 255)


def photo(rng, drawn):
    """The photo and the sheet's corners in it, clockwise from the drawing's top left."""
    wide, high = PHOTO
    h, w = drawn.shape[:2]
    longer = max(w, h)
    sheet = numpy.array([(-w, -h), (w, -h), (w, h), (-w, h)], float) / (2 * longer)
    focal = rng.uniform(0.68, 0.85) * wide
    while True:
        tilt, turn, roll = rng.uniform(-0.55, 0.55), rng.uniform(-0.4, 0.4), rng.uniform(-0.4, 0.4)
        if h > w:
            roll += numpy.pi / 2 * rng.choice([-1, 1]) if rng.random() < 0.3 else 0
        rotation, _ = cv2.Rodrigues(numpy.array([tilt, 0, 0]))
        rotation = cv2.Rodrigues(numpy.array([0, turn, 0]))[0] @ rotation @ cv2.Rodrigues(numpy.array([0, 0, roll]))[0]
        at = numpy.array([rng.uniform(-0.08, 0.08), rng.uniform(-0.06, 0.06), rng.uniform(1.0, 1.7)])
        seen = (rotation @ numpy.c_[sheet, numpy.zeros(4)].T).T + at
        corners = focal * seen[:, :2] / seen[:, 2:] + numpy.array([wide / 2, high / 2])
        inside = (corners > 25).all() and (corners[:, 0] < wide - 25).all() and (corners[:, 1] < high - 25).all()
        if inside and cv2.contourArea(corners.astype(numpy.float32)) > 0.22 * wide * high:
            break
    scale = 2
    warp = cv2.getPerspectiveTransform(
        numpy.array([(0, 0), (w, 0), (w, h), (0, h)], numpy.float32), (corners * scale).astype(numpy.float32))
    size = (wide * scale, high * scale)
    paper = cv2.warpPerspective((linear(drawn) * 0.86).astype(numpy.float32), warp, size, flags=cv2.INTER_AREA)
    covers = cv2.warpPerspective(numpy.ones((h, w), numpy.float32), warp, size)
    shrink = lambda x: cv2.resize(x, PHOTO, interpolation=cv2.INTER_AREA)
    paper, covers = shrink(paper), shrink(covers)[..., None]
    shadow = gaussian_filter(numpy.roll(covers[..., 0], (6, 5), (0, 1)), 4)[..., None]
    light = linear(table(rng, PHOTO)) * (1 - 0.45 * shadow) * (1 - covers) + paper
    y, x = numpy.mgrid[0:high, 0:wide] / wide
    lamp = rng.uniform(-0.3, 1.3, 2) * [1, high / wide]
    field = 1 / (1 + ((x - lamp[0]) ** 2 + (y - lamp[1]) ** 2) / rng.uniform(0.5, 1.6))
    if rng.random() < 0.5:  # the photographer's shadow
        angle = rng.uniform(0, 2 * numpy.pi)
        across = (x - rng.uniform(0.3, 0.7)) * numpy.cos(angle) + (y - 0.37) * numpy.sin(angle)
        field *= 1 - rng.uniform(0.15, 0.35) / (1 + numpy.exp(-across / rng.uniform(0.02, 0.06)))
    tint = numpy.array([(1, 1, 1), (1, 0.86, 0.62), (0.92, 0.97, 1)][rng.integers(3)])
    shown = light * field[..., None] * tint
    white = (0.86 * field[..., None] * tint * (covers > 0.5)).max()
    shown = shown / white * rng.uniform(0.6, 0.88)
    shown = numpy.stack([gaussian_filter(shown[..., i], rng.uniform(0.5, 1.2)) for i in range(3)], axis=2)
    image = encoded(shown) + rng.normal(0, 3, shown.shape)
    thumb = None
    if rng.random() < 0.3:
        edge = rng.integers(4)
        at = corners[edge] + rng.uniform(0.35, 0.65) * (corners[(edge + 1) % 4] - corners[edge])
        thumb = (int(at[0]), int(at[1]))
        cv2.ellipse(image, thumb, (45, 80), float(rng.uniform(0, 180)), 0, 360, (196, 140, 112), -1)
    return numpy.clip(image, 0, 255).astype(numpy.uint8), corners, thumb


def by_contours(image):
    """The sheet as OpenCV's tutorials find one: edges, contours, the largest with four corners."""
    grey = cv2.GaussianBlur(cv2.cvtColor(image, cv2.COLOR_RGB2GRAY), (5, 5), 0)
    edges = cv2.dilate(cv2.Canny(grey, 50, 150), numpy.ones((3, 3)))
    contours, _ = cv2.findContours(edges, cv2.RETR_LIST, cv2.CHAIN_APPROX_SIMPLE)
    for contour in sorted(contours, key=cv2.contourArea, reverse=True)[:8]:
        corners = cv2.approxPolyDP(contour, 0.02 * cv2.arcLength(contour, True), True)
        if len(corners) == 4 and cv2.contourArea(corners) > 0.1 * image.shape[0] * image.shape[1]:
            return corners[:, 0].astype(float)
    return None


def dots(image):
    """Middles of the four dots, from the top left, row by row; None where there are not four."""
    lab = rgb2lab(image)
    near = deltaE_ciede2000(lab, rgb2lab(numpy.array([[DOT]], numpy.uint8))) < 12
    count, _, stats, middles = cv2.connectedComponentsWithStats(near.astype(numpy.uint8))
    blobs = sorted(range(1, count), key=lambda i: -stats[i, cv2.CC_STAT_AREA])[:4]
    if len(blobs) < 4:
        return None
    middles = middles[blobs] + 0.5
    order = sorted(range(4), key=lambda i: (middles[i][1] > image.shape[0] / 2, middles[i][0]))
    return middles[order]


def turned(image, areas_shape):
    """Quarter turns of a straightened sheet against its drawing: the photographer may have turned the phone."""
    high, wide = areas_shape
    own = image.shape[1] > image.shape[0]
    return [0, 2] if own == (wide > high) or abs(wide - high) < 3 else [1, 3]


def run(program, *args):
    return subprocess.run([program, *map(str, args)], capture_output=True, text=True, timeout=120)


def compared(result, drawn, areas):
    """Largest error of a dot in parts of the longer side, error of the shape, and the result as large as the drawing, turned."""
    best = None
    wide = areas.shape[1]
    for turn in turned(result, areas.shape):
        image = numpy.rot90(result, turn)
        found = dots(image)
        if found is None:
            continue
        inset = RIM * min(image.shape[:2]) / (1 - 2 * RIM)
        full = numpy.array([image.shape[1] + 2 * inset, image.shape[0] + 2 * inset])
        places = (found + inset) / full
        truth = numpy.array([(x, y) for y in (DOT_AT, 1 - DOT_AT) for x in (DOT_AT, 1 - DOT_AT)])
        off = numpy.abs((places - truth) * full).max() / full.max()
        shape = abs(full[0] / full[1] / (wide / areas.shape[0]) - 1)
        rim = round(RIM * min(areas.shape))
        inner = (slice(rim, areas.shape[0] - rim), slice(rim, areas.shape[1] - rim))
        laid = cv2.resize(image.copy(), (areas[inner].shape[1], areas[inner].shape[0]), interpolation=cv2.INTER_AREA)
        like = numpy.abs(laid.astype(float) - drawn[inner]).mean()
        if best is None or like < best[0]:
            best = (like, off, shape, laid, areas[inner])
    return best and best[1:]


def whites_and_colours(laid, areas, colours, hidden):
    """Part of the bare paper that is white, and each area's color difference to what was drawn."""
    inner = lambda mask: cv2.erode(mask.astype(numpy.uint8), disk(9)) > 0
    bare = inner((areas == 0) & ~hidden)
    white = (laid[bare].min(axis=1) >= 250).mean()
    apart = []
    for number, colour in enumerate(colours[1:], 1):
        own = inner((areas == number) & ~hidden)
        if own.sum() > 800:
            median = numpy.median(laid[own], axis=0)
            apart.append(float(deltaE_ciede2000(rgb2lab(median / 255), rgb2lab(numpy.array(colour) / 255))))
    return white, max(apart, default=0.0)


SOURCE = "photos made here, by numpy and OpenCV's perspective"


class Checks:
    """Checks of a kind together."""

    def __init__(self):
        self.kinds = {}

    def add(self, kind, name, holds):
        self.kinds.setdefault(kind, []).append((name, holds))

    def told(self):
        tally = Tally()
        for kind, things in self.kinds.items():
            tally.check(kind, things, SOURCE)
        print(f"{tally.passed} passed, {tally.failed} failed")
        return tally.failed > 0


def main(program, example, out, count):
    checks = Checks()
    out.mkdir(parents=True, exist_ok=True)
    rows, by_others = [], []
    for seed in range(count):
        rng = numpy.random.default_rng(FIRST + seed)
        paper = list(PAPERS)[seed % len(PAPERS)]
        drawn, areas, colours = drawing(rng, PAPERS[paper])
        image, corners, thumb = photo(rng, drawn)
        name = out / f"photo-{seed}.jpg"
        cv2.imwrite(str(name), image[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, 88])
        own = out / f"drawing-{seed}.png"
        own.unlink(missing_ok=True)
        told = run(example, name, own)
        words = told.stdout.split()
        ok = own.exists() and len(words) == 5
        checks.add("the sheet is found", f"photo {seed} ({paper}, {told.stdout.strip()})", ok)
        longer = max(numpy.linalg.norm(corners - numpy.roll(corners, 1, axis=0), axis=1))
        off_by = lambda found: max(numpy.linalg.norm(found - corner, axis=1).min() for corner in corners) / longer
        other = by_contours(image)
        if other is not None:
            by_others.append(off_by(other))
        if not ok:
            continue
        off = off_by(numpy.array([[float(x) for x in word.split(",")] for word in words[:4]]))
        checks.add("corners lie where they are", f"photo {seed} ({paper}, {100 * off:.2f} %)", off <= PLACE)
        measured = compared(cv2.imread(str(own))[..., ::-1], drawn, areas)
        checks.add("all four dots are on it", f"photo {seed}", measured is not None)
        if measured is None:
            continue
        dots_off, shape, laid, inner = measured
        checks.add("dots lie where they were drawn", f"photo {seed} ({paper}, {100 * dots_off:.2f} %)", dots_off <= PLACE)
        hidden = numpy.zeros(inner.shape, bool)
        if thumb:  # what a thumb hides, about where it lies
            hidden = (deltaE_ciede2000(rgb2lab(laid), rgb2lab(numpy.array([[(196, 140, 112)]], numpy.uint8))) < 25) & (inner == 0)
            hidden = cv2.dilate(hidden.astype(numpy.uint8), disk(25)) > 0
        white, apart = whites_and_colours(laid, inner, colours, hidden)
        rows.append((off, shape, white, apart))
        if paper in ("letter", "A4"):
            checks.add("the sheet has its shape", f"photo {seed} ({paper}, {100 * shape:.2f} %)", shape <= SHAPE)
        checks.add("bare paper is white", f"photo {seed} ({100 * white:.1f} %)", white >= WHITE)
        checks.add("colors are those that were drawn", f"photo {seed} ({apart:.1f})", apart <= COLOUR)
    table_only = table(numpy.random.default_rng(1), PHOTO).astype(numpy.uint8)
    cv2.imwrite(str(out / "no-sheet.jpg"), table_only[..., ::-1])
    cut = cv2.imread(str(out / "photo-0.jpg"))
    rng = numpy.random.default_rng(FIRST)
    drawn, areas, colours = drawing(rng, PAPERS["letter"])
    _, corners, _ = photo(rng, drawn)
    cv2.imwrite(str(out / "cut-off.jpg"), cut[:, int(corners[:, 0].min() + 120):])
    for name in ("no-sheet", "cut-off"):
        told = run(program, "new", out / f"event-{name}", "--picture", out / f"{name}.jpg", "--from-paper")
        checks.add("what shows no whole sheet is refused", f"{name} ({told.returncode}, {told.stderr.strip()})", told.returncode == 2 and "four edges" in told.stderr)
        checks.add("no folder is left behind", name, not (out / f"event-{name}").exists())
    by_hand = " ".join(f"{x:.0f},{y:.0f}" for x, y in corners[[2, 0, 3, 1]])
    folder = out / "event-by-hand"
    subprocess.run(["rm", "-rf", str(folder)], check=True)
    told = run(program, "new", folder, "--picture", out / "photo-0.jpg", "--from-paper", "--corners", by_hand)
    checks.add("corners by hand are taken", told.stderr.strip(), told.returncode == 0)
    if told.returncode == 0:
        measured = compared(cv2.imread(str(folder / "drawing.png"))[..., ::-1], drawn, areas)
        checks.add("corners by hand put dots where they were drawn", "photo 0", measured is not None and measured[0] <= PLACE)
    if rows:
        off, shape, white, apart = (numpy.array(column) for column in zip(*rows))
        print(f"corners off by {100 * numpy.median(off):.2f} % of the longer side in the median, {100 * off.max():.2f} % at most; "
              f"white: {100 * numpy.median(white):.1f} %, at least {100 * white.min():.1f} %; colors off by {numpy.median(apart):.1f}, at most {apart.max():.1f}")
    near = sum(off <= PLACE for off in by_others)
    print(f"OpenCV's contours: {len(by_others)} of {count} sheets with four corners, {near} of them as near as is asked for here")
    sys.exit(checks.told())


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], Path(sys.argv[3]), int(sys.argv[4]) if len(sys.argv) > 4 else 24)
