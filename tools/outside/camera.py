"""Compares maps, lens and camera with OpenCV: python tools/outside/camera.py PROGRAM

PROGRAM is the built example `camera` (cargo build --release --example camera). Needs Python 3.11, numpy and
opencv-python-headless. The points are drawn by lot from a fixed seed. Ends with "N passed, M failed" and exits 1 where one
failed.

OpenCV's model (its documentation, module calib3d): x' = X/Z, r^2 = x'^2 + y'^2, u = f x' (1 + k1 r^2 + k2 r^4) + cx. The lens here
has the same form with r = 1 at half the photo's diagonal, `scale`. With f = scale the coefficients are the same numbers; with
another f, k1 = k1_opencv (scale/f)^2 and k2 = k2_opencv (scale/f)^4."""

import json
import subprocess
import sys

import cv2
import numpy

SIZE = (4032.0, 3024.0)
CENTRE = (SIZE[0] / 2, SIZE[1] / 2)
SCALE = numpy.hypot(*SIZE) / 2
WALL_MM = (1270.0, 1016.0)
SIDE_MM, CODE_MM, CODE_AT_MM = 127.0, 12.6, 106.4
CASES = 50


class Tally:
    def __init__(self):
        self.passed = self.failed = 0

    def within(self, what, errors, most, unit, source):
        """One check a case: its largest error."""
        bad = sum(not error <= most for error in errors)
        self.passed += len(errors) - bad
        self.failed += bad if errors else 1
        worst = max(errors, default=float("nan"))
        print(f"{what}: {len(errors)} cases, worst {worst:.2g} {unit}, allowed {most:g}, {bad} FAILED  [{source}]")


def ask(program, problems):
    lines = "".join(json.dumps(problem) + "\n" for problem in problems)
    told = subprocess.run([program], input=lines, capture_output=True, text=True, check=True)
    return [json.loads(line) for line in told.stdout.splitlines()]


def far(a, b):
    """The largest distance between partners."""
    difference = numpy.asarray(a, float).reshape(-1, 2) - numpy.asarray(b, float).reshape(-1, 2)
    return float(numpy.hypot(*difference.T).max())


def opencv_camera(focal):
    return numpy.array([[focal, 0, CENTRE[0]], [0, focal, CENTRE[1]], [0, 0, 1]])


def places(chance, count=40):
    return chance.uniform((0, 0), WALL_MM, (count, 2))


def check_maps(tally, program, chance):
    wall = numpy.array([(0, 0), (WALL_MM[0], 0), WALL_MM, (0, WALL_MM[1])], float)
    frame = numpy.array([(500, 400), (3500, 400), (3500, 2600), (500, 2600)], float)
    problems, theirs = [], []
    for _ in range(CASES):
        to = frame + chance.integers((-300, -220), (300, 220), (4, 2))  # findHomography takes single precision
        at = places(chance)
        homography, _ = cv2.findHomography(wall, to, 0)
        theirs.append((cv2.perspectiveTransform(at[None], homography)[0], at))
        problems.append({"map": {"from": wall.tolist(), "to": to.tolist(), "at": at.tolist()}})
    ours = ask(program, problems)
    source = "OpenCV findHomography, perspectiveTransform"
    tally.within("map through four points", [far(o["there"], t[0]) for o, t in zip(ours, theirs)], 1e-4, "px", source)
    tally.within("and back", [far(o["back"], t[1]) for o, t in zip(ours, theirs)], 1e-6, "mm", "the same points")


def check_lens(tally, program, chance):
    problems, theirs = [], []
    for _ in range(CASES):
        k1, k2 = chance.uniform(-0.1, 0.1), chance.uniform(-0.03, 0.03)
        at = CENTRE + 0.9 * (chance.uniform((0, 0), SIZE, (40, 2)) - CENTRE)  # the strongest barrel shows no corners
        normal = (at - CENTRE) / SCALE
        solid = numpy.column_stack([normal, numpy.ones(len(at))])
        camera, distortion = opencv_camera(SCALE), numpy.array([k1, k2, 0, 0])
        bent, _ = cv2.projectPoints(solid, numpy.zeros(3), numpy.zeros(3), camera, distortion)
        until = (cv2.TERM_CRITERIA_COUNT | cv2.TERM_CRITERIA_EPS, 1000, 1e-12)
        straight = cv2.undistortPoints(at[:, None], camera, distortion, None, None, camera, until)
        theirs.append((bent, straight))
        problems.append({"lens": {"size": SIZE, "k1": k1, "k2": k2, "at": at.tolist()}})
    ours = ask(program, problems)
    tally.within("lens", [far(o["bent"], t[0]) for o, t in zip(ours, theirs)], 1e-6, "px", "OpenCV projectPoints")
    errors = [far(o["straight"], t[1]) for o, t in zip(ours, theirs)]
    tally.within("lens removed", errors, 1e-3, "px", "OpenCV undistortPoints, 1000 steps")


def code_corners(columns=10, rows=8):
    """Of every square's code, on the wall, in mm."""
    corner = numpy.array([(0, 0), (1, 0), (1, 1), (0, 1)]) * CODE_MM + CODE_AT_MM
    grid = [(column, row) for row in range(rows) for column in range(columns)]
    return numpy.array([corner + numpy.array(at) * SIDE_MM for at in grid])


def check_camera(tally, program, chance):
    """A pinhole camera that stands in a room sees a wall; from 80 codes the camera here must see the rest of it alike."""
    codes = code_corners()
    problems, theirs = [], []
    for _ in range(CASES):
        focal = chance.uniform(2800, 3800)
        camera = opencv_camera(focal)
        distortion = numpy.array([chance.uniform(-0.1, 0.1), chance.uniform(-0.05, 0.05), 0, 0])
        turn = chance.uniform(-0.25, 0.25, 3) * (1, 1, 0.3)
        away = focal * WALL_MM[0] / (0.75 * SIZE[0])
        middle = numpy.array([*WALL_MM, 0]) / 2
        shift = numpy.array([0, 0, away]) - cv2.Rodrigues(turn)[0] @ middle

        def see(flat):
            flat = numpy.asarray(flat).reshape(-1, 2)
            solid = numpy.column_stack([flat, numpy.zeros(len(flat))])
            return cv2.projectPoints(solid, turn, shift, camera, distortion)[0].reshape(-1, 2)

        at = chance.uniform(codes.reshape(-1, 2).min(axis=0), codes.reshape(-1, 2).max(axis=0), (40, 2))
        theirs.append((see(at), distortion[:2] * [(SCALE / focal) ** 2, (SCALE / focal) ** 4]))
        seen = see(codes).reshape(-1, 4, 2)
        camera_problem = {"size": SIZE, "wall": codes.tolist(), "photo": seen.tolist(), "at": at.tolist()}
        problems.append({"camera": camera_problem})
    ours = ask(program, problems)
    errors = [far(o["seen"], t[0]) for o, t in zip(ours, theirs)]
    # what is usual of phones counts for a little even against exact points: not 0
    tally.within("camera fitted to 80 codes, between them", errors, 0.5, "px", "OpenCV projectPoints with a pose in a room")
    lens = [abs(o["k1"] - t[1][0]) for o, t in zip(ours, theirs)]
    tally.within("its k1", lens, 0.01, "", "the same, k1 (scale/f)^2")


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    program, tally, chance = sys.argv[1], Tally(), numpy.random.default_rng(20)
    check_maps(tally, program, chance)
    check_lens(tally, program, chance)
    check_camera(tally, program, chance)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(tally.failed > 0)


if __name__ == "__main__":
    main()
