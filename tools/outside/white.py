"""Has squares found that nobody has drawn on, beside Otsu's threshold: python tools/outside/white.py PROGRAM PICTURE OUT [WALLS]

PROGRAM is everysquare, PICTURE the picture to make an event of; what is made lies in OUT. Needs Python 3.11 and numpy,
opencv-python-headless, scikit-image. Photos are made by the program's own `rehearse`, in light of every kind; which squares are white stands in
their answer keys. The baseline knows where each square hangs, straightens it with OpenCV, takes the distance of its pixels from the
photo's white in CIELAB, divides the pixels of all squares by the threshold of N. Otsu ("A threshold selection method from gray-level
histograms", 1979), by scikit-image, and calls a square white of whose pixels hardly any lie above. A white square whose piece is pale all over asks for nothing: of such
nothing is said on purpose, and they are counted apart. Ends with "N passed, M failed" and exits 1 where one failed."""

import json
import subprocess
import sys
from pathlib import Path

import cv2
import numpy
from skimage.color import rgb2lab
from skimage.filters import threshold_otsu

from pdf import Tally

PATCH = 96
CLEAR = slice(12, 84)  # of a patch: tape and neighbors lie over the edges
CODE = slice(60, 96)  # of a patch, both ways: the code and its label
TELLING = 80  # levels from white, in RGB, at which a pencil tells white from drawn
ASKS = 0.15  # share of a piece that such pencils cover, from which on its square is asked about
SPECKS = 0.05  # share of a white square's pixels above the baseline's threshold, at most
FOUND = 0.9  # share of the white ones that are asked about that have to be found


def run(program, *words):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True)
    return done.returncode, done.stdout + done.stderr


def asks(plan):
    """Labels of pieces that somebody has to draw something on."""
    away = [numpy.linalg.norm(255.0 - numpy.array([int(pencil["srgb"][i : i + 2], 16) for i in (1, 3, 5)])) for pencil in plan["pencils"]]
    share = lambda piece: sum(part for part, far in zip(piece["shares"], away) if far >= TELLING)
    return {piece["label"] for piece in plan["pieces"] if share(piece) >= ASKS}


def by_otsu(photo, cells):
    """Labels of the spots whose squares the baseline calls white."""
    lab = lambda patch: rgb2lab(patch[:, :, ::-1] / 255.0)
    white = numpy.percentile(lab(photo[::8, ::8]).reshape(-1, 3)[:, 0], 97)
    marks = {}
    for cell in cells:
        corners = numpy.float32(cell["corners_px"])
        to = numpy.float32([[0, 0], [PATCH, 0], [PATCH, PATCH], [0, PATCH]])
        patch = lab(cv2.warpPerspective(photo, cv2.getPerspectiveTransform(corners, to), (PATCH, PATCH), flags=cv2.INTER_AREA))
        away = numpy.linalg.norm(patch - numpy.array([white, 0.0, 0.0]), axis=2)
        away[CODE, CODE] = numpy.nan
        marks[cell["label"]] = away[CLEAR, CLEAR][~numpy.isnan(away[CLEAR, CLEAR])]
    threshold = threshold_otsu(numpy.concatenate(list(marks.values())))
    return {label for label, mark in marks.items() if numpy.mean(mark > threshold) < SPECKS}


def upright(path):
    return cv2.imread(str(path))  # OpenCV turns a photo as its EXIF orientation says


def main():
    program, picture, out = Path(sys.argv[1]).resolve(), Path(sys.argv[2]), Path(sys.argv[3])
    walls = int(sys.argv[4]) if len(sys.argv) > 4 else 8
    tally, folder = Tally(), out / "white"
    if not (folder / "event.toml").exists():
        code, said = run(program, "new", folder, "--picture", picture, "--columns", 10, "--rows", 8, "--tag", "K7M")
        assert code == 0, said
        code, said = run(program, "print", folder)
        assert code == 0, said
    asked = asks(json.loads((folder / "plan.json").read_text()))
    counts = {who: [0, 0, 0] for who in ("everysquare", "Otsu")}  # white and asked found, drawn ones called white, pale ones told
    truth = [0, 0, 0]
    for number in range(walls):
        seed = 3101 + number
        undrawn = (0, 5, 10, 20, 40)[number % 5]
        for old in folder.glob(f"rehearsals/{seed}*"):
            old.unlink()
        code, said = run(program, "rehearse", folder, "--seed", seed, "--undrawn", undrawn, "--swaps", 1, "--turns", 1,
                         "--misdrawn", number % 3, "--width", 2800, "--height", 2100)
        assert code == 0, said
        key = json.loads((folder / f"rehearsals/{seed}.answers.json").read_text())
        before = set(folder.glob("checks/*"))
        run(program, "check", folder, folder / f"rehearsals/{seed}.jpg")
        report = json.loads((max(set(folder.glob("checks/*")) - before) / "report.json").read_text())
        named = [cell for cell in report["cells"] if cell["found"] and cell["corners_px"]]
        white = {cell["label"] for cell in key["cells"] if cell.get("undrawn")}
        found = {cell["label"]: cell["found"] for cell in named}
        told = {"everysquare": set(report.get("white", [])), "Otsu": by_otsu(upright(folder / f"rehearsals/{seed}.jpg"), named)}
        for label, home in found.items():
            kind = (0 if home in asked else 2) if label in white else 1
            truth[kind] += 1
            for who, labels in told.items():
                counts[who][kind] += label in labels
    print(f"{walls} walls, {sum(truth)} squares named: {truth[0]} white, {truth[2]} white whose piece is pale all over, {truth[1]} drawn")
    for who, (right, wrong, pale) in counts.items():
        print(f"{who}: {right} of {truth[0]} white ones told, {pale} of {truth[2]} pale ones, {wrong} drawn ones called white")
    right, wrong, _ = counts["everysquare"]
    source = "made walls with answer keys; Otsu 1979 by scikit-image"
    tally.check("no drawn square is called white", [(f"{wrong} are", wrong == 0)], source)
    tally.check("white squares are told", [(f"{right} of {truth[0]}", right >= FOUND * truth[0])], source)
    tally.check("white squares were there", [(f"{truth[0]}", truth[0] >= 5 * walls)], source)
    tally.check("the walls are not easy", [("Otsu calls no drawn square white", counts["Otsu"][1] > 0)], source)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(1 if tally.failed else 0)


if __name__ == "__main__":
    main()
