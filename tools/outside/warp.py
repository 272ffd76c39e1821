"""Compares the straight picture of a wall with OpenCV's: python tools/outside/warp.py PROGRAM FOLDER

PROGRAM is the built example `warp` (cargo build --release --example warp); pictures are left in FOLDER. Needs Python 3.11, numpy and
opencv-python-headless. Photos and cameras are drawn by lot from a fixed seed. Without a lens the other side is cv2.warpPerspective,
with one cv2.initUndistortRectifyMap and cv2.remap, both with INTER_LINEAR. OpenCV rounds places to 1/32 pixel, this program lays straight
lines between the corners of blocks of 16 pixels: so the differences in grey levels are small but not none. Ends with
"N passed, M failed" and exits 1 where one failed."""

import json
import pathlib
import subprocess
import sys

import cv2
import numpy

SIZE = (1600, 1200)
SCALE = numpy.hypot(*SIZE) / 2
CENTRE = (SIZE[0] / 2, SIZE[1] / 2)
GRID = (5, 4, 127.0)
CASES = 8
# Grey levels: rounding to whole ones alone makes one of some pixels.
MEAN_MOST, P99_MOST = 0.05, 1.0


def photo(chance):
    """Strokes and areas with the grain of a crayon, as sharp as a phone shows them."""
    picture = numpy.full((SIZE[1], SIZE[0], 3), 200, numpy.uint8)
    for _ in range(140):
        colour = tuple(int(level) for level in chance.integers(30, 240, 3))
        at = tuple(int(place) for place in chance.uniform((0, 0), SIZE))
        cv2.circle(picture, at, int(chance.integers(8, 120)), colour, -1, cv2.LINE_AA)
    grain = chance.normal(0, 5, picture.shape)
    return numpy.clip(cv2.GaussianBlur(picture + grain, (0, 0), 1.0), 0, 255).astype(numpy.uint8)


def seen(chance):
    """Where the wall's corners are seen: tilted, inside the frame."""
    corners = numpy.array([(260, 200), (1340, 200), (1340, 1010), (260, 1010)], float)
    return corners + chance.uniform(-120, 120, corners.shape)


def shift(right, down):
    return numpy.array([[1, 0, right], [0, 1, down], [0, 0, 1]], float)


def straightened(source, wall, corners, k1, k2, px_per_mm):
    """The same by OpenCV, whose pixels have their centres at whole numbers."""
    to_straight, _ = cv2.findHomography(wall, corners, 0)
    display_to_wall = numpy.diag([1 / px_per_mm, 1 / px_per_mm, 1.0]) @ shift(0.5, 0.5)
    size = tuple(round(count * GRID[2] * px_per_mm) for count in GRID[:2])
    if k1 == 0 and k2 == 0:
        to_photo = shift(-0.5, -0.5) @ to_straight @ display_to_wall
        return cv2.warpPerspective(source, to_photo, size, flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP)
    camera = numpy.array([[SCALE, 0, CENTRE[0]], [0, SCALE, CENTRE[1]], [0, 0, 1]])
    rays = numpy.linalg.inv(camera) @ to_straight @ display_to_wall
    across, down = cv2.initUndistortRectifyMap(
        camera, numpy.array([k1, k2, 0, 0]), None, numpy.linalg.inv(rays), size, cv2.CV_32FC1
    )
    return cv2.remap(source, across - 0.5, down - 0.5, cv2.INTER_LINEAR)


def main(program, folder):
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    chance = numpy.random.default_rng(20)
    wall = numpy.array([(0, 0), (GRID[0] * GRID[2], 0), (GRID[0] * GRID[2], GRID[1] * GRID[2]), (0, GRID[1] * GRID[2])])
    problems, others = [], []
    for case in range(CASES):
        source, corners = photo(chance), seen(chance)
        k1, k2 = (0.0, 0.0) if case % 2 == 0 else (float(chance.uniform(-0.12, 0.06)), float(chance.uniform(-0.02, 0.03)))
        px_per_mm = float(chance.uniform(1.8, 2.4))  # about as fine as the photo: nothing is thinned
        name = str(folder / f"photo-{case}.png")
        cv2.imwrite(name, source)
        problems.append(
            dict(photo=name, into=str(folder / f"straight-{case}.png"), wall=wall.tolist(), seen=corners.tolist(), k1=k1, k2=k2,
                 columns=GRID[0], rows=GRID[1], square_mm=GRID[2], px_per_mm=px_per_mm)
        )
        others.append(straightened(source, wall, corners, k1, k2, px_per_mm))
    lines = "".join(json.dumps(problem) + "\n" for problem in problems)
    told = subprocess.run([program], input=lines, capture_output=True, text=True, check=True).stdout.splitlines()
    passed = failed = 0
    for problem, other, name in zip(problems, others, told, strict=True):
        own = cv2.imread(json.loads(name))
        if own is None or own.shape != other.shape:
            failed += 1
            print(f"{name}: {None if own is None else own.shape} instead of {other.shape} FAILED")
            continue
        inside = numpy.abs(own.astype(int) - other.astype(int))[8:-8, 8:-8]
        mean, high = float(inside.mean()), float(numpy.percentile(inside, 99))
        good = mean <= MEAN_MOST and high <= P99_MOST
        passed, failed = passed + good, failed + (not good)
        peer = "initUndistortRectifyMap, remap" if problem["k1"] else "warpPerspective"
        print(
            f"straightened, k1 {problem['k1']:.3f}: {mean:.3f} grey levels in the mean (allowed {MEAN_MOST}), "
            f"{high:.1f} for 99 of 100 (allowed {P99_MOST}), worst {inside.max()}{'' if good else ' FAILED'}  [OpenCV, {peer}]"
        )
    print(f"{passed} passed, {failed} failed")
    return failed > 0 or passed == 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2]))
