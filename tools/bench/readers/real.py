"""What general readers find on real photographs of printed codes, beside tests/photos/real/mod.rs: real.py FOLDER.

FOLDER holds sets of photographs with an index.json each, in which corners were marked by hand (BoofCV's detection set, P. Abeles). A code is found
where all four corners lie nearer than 12 % of its side to the marked ones, in whatever order. Needs zxing-cpp and OpenCV
(tools/bench/readers/requirements.txt); zxing-cpp is asked for codes that it cannot decode too, OpenCV only for places.
"""

import json
import math
import statistics
import sys
from pathlib import Path

import cv2
import zxingcpp

SETS = ["nominal", "perspective", "glare", "shadows", "curved", "blurred", "damaged"]
THERE = 0.12


def off(corners, marked):
    """How far the corners lie from the marked ones, in the order and direction that suit best."""
    orders = [[(i + k) % 4 for i in range(4)] for k in range(4)]
    orders += [[(k - i) % 4 for i in range(4)] for k in range(4)]
    return min(([math.dist(corners[i], marked[order[i]]) for i in range(4)] for order in orders), key=max)


def by_zxing(picture):
    for code in zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode, return_errors=True):
        at = code.position
        corners = [at.top_left, at.top_right, at.bottom_right, at.bottom_left]
        yield [(p.x, p.y) for p in corners], code.valid


def by_opencv(picture):
    found, places = cv2.QRCodeDetector().detectMulti(picture)
    for corners in places if found else []:
        yield [tuple(map(float, p)) for p in corners], False


def main(folder):
    for name in SETS:
        index = json.loads((folder / name / "index.json").read_text())
        marked, told = 0, {reader: [0, 0, []] for reader in (by_zxing, by_opencv)}
        for photo in index["photos"]:
            picture = cv2.imread(
                str(folder / name / photo["file"]), cv2.IMREAD_GRAYSCALE | cv2.IMREAD_IGNORE_ORIENTATION
            )
            seen = {reader: list(reader(picture)) for reader in told}
            for corners in photo["corners_px"]:
                marked += 1
                side = sum(math.dist(corners[k], corners[(k + 1) % 4]) for k in range(4)) / 4
                for reader, codes in seen.items():
                    best = min(((off(code, corners), valid) for code, valid in codes), default=None, key=lambda c: sum(c[0]))
                    if best and max(best[0]) < THERE * side:
                        told[reader][0] += 1
                        told[reader][1] += best[1]
                        told[reader][2] += [px / side for px in best[0]]
        for reader, (found, valid, away) in told.items():
            middle = f"{100 * statistics.median(away):.2f} % of the side" if away else "-"
            print(f"{name}, {reader.__name__[3:]}: {found} of {marked} found, {valid} decoded, corners off by {middle} (median)")


if __name__ == "__main__":
    main(Path(sys.argv[1]))
