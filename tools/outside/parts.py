"""Hangs walls on several boards and has them checked: python tools/outside/parts.py PROGRAM PICTURE OUT [WALLS] [FIRST SEED]

PROGRAM is everysquare, PICTURE the picture to make an event of; what is made lies in OUT. Needs Python 3.11 and numpy,
opencv-python-headless, pypdfium2. Photos are made: the program's own squares as PDFium draws them, drawn on, hung on 2 to 6 boards that
stand at angles of up to 40 degrees, with gaps and at other heights, seen by OpenCV's camera, blurred, with noise, as JPEG; some squares
are away, some swapped, some turned. Each wall is checked from one photo of all boards or from one of each, with [[parts]] in event.toml
and without. Ends with "N passed, M failed" and exits 1 where one failed."""

import json
import subprocess
import sys
from pathlib import Path

import cv2
import numpy

from pdf import Tally
from scattered import drawn_on, squares_of

COLUMNS, ROWS, SIDE, MODULE = 8, 5, 127.0, 1.0
SIZE = numpy.array((4032, 3024))
FINER = 2
FOCAL = 3100.0
SHARES = {"one photo": 0.95, "a photo each": 0.99, "one board": 0.99}  # of readable squares to be named; boards that a photo shows from far aside lack some
READABLE = 1.5  # pixels a module, along the side that the board's turn makes narrower
TURN, AWAY = 3.0, 0.02  # of a board's pose, in degrees and of its distance: squares hang up to 1.5 mm and a degree askew
BOARDS = {"cork": (110, 150, 190), "green": (88, 120, 78), "grey": (150, 150, 148), "white": (214, 216, 218), "blue": (150, 110, 70)}
WALLS = {"plaster": (205, 212, 216), "brick": (84, 96, 150), "panel": (120, 140, 160)}
LETTERS = "ABCDEFGH"


class Noted:
    """Checks of one kind from many walls, told together."""

    def __init__(self):
        self.kinds = {}

    def check(self, what, holds, name, source):
        self.kinds.setdefault((what, source), []).append((name, bool(holds)))

    def told(self):
        tally = Tally()
        for (what, source), things in self.kinds.items():
            tally.check(what, things, source)
        return tally


def run(program, *words):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True)
    return done.returncode, done.stdout + done.stderr


def label(column, row):
    """Row 0 is the top; row 1 of the labels is the lowest."""
    return f"{LETTERS[column]}{ROWS - row}"


def event(program, picture, folder):
    folder.parent.mkdir(parents=True, exist_ok=True)
    code, said = run(program, "new", folder, "--picture", picture, "--columns", COLUMNS, "--rows", ROWS, "--name", "Boards", "--tag", "P4R")
    assert code == 0, said
    toml = folder / "event.toml"
    text = toml.read_text()
    lines = [f"module_mm = {MODULE}" if line.lstrip("# ").startswith("module_mm") else line for line in text.splitlines()]
    toml.write_text("\n".join(lines) + "\n")
    code, said = run(program, "print", folder)
    assert code == 0, said


def cuts_of(rng):
    """The columns after which the wall is cut, and whether each strip is cut again between its rows."""
    count = int(rng.integers(2, 5))
    cuts = sorted(rng.choice(numpy.arange(1, COLUMNS), count - 1, replace=False).tolist())
    edges = [0, *cuts, COLUMNS]
    parts = []
    for left, right in zip(edges, edges[1:]):
        if right - left >= 2 and len(parts) < 5 and rng.uniform() < 0.15:
            row = int(rng.integers(2, ROWS - 1))
            parts += [(left, 0, right, row), (left, row, right, ROWS)]
        else:
            parts.append((left, 0, right, ROWS))
    return [part for part in parts if (part[2] - part[0]) * (part[3] - part[1]) >= 4] if all(
        (part[2] - part[0]) * (part[3] - part[1]) >= 4 for part in parts
    ) else cuts_of(rng)


def hung(rng):
    """What hangs where: by place (column, row) the label and the quarter turns; places that are bare are left out."""
    places = [(column, row) for row in range(ROWS) for column in range(COLUMNS)]
    hangs = {place: (label(*place), 0) for place in places}
    for _ in range(int(rng.integers(0, 4))):
        a, b = rng.choice(len(places), 2, replace=False)
        hangs[places[a]], hangs[places[b]] = hangs[places[b]], hangs[places[a]]
    for at in rng.choice(len(places), int(rng.integers(0, 3)), replace=False):
        hangs[places[at]] = (hangs[places[at]][0], int(rng.integers(1, 4)))
    for at in rng.choice(len(places), int(rng.integers(0, 8)), replace=False):
        hangs.pop(places[at], None)
    return hangs


def texture(part, hangs, images, rng, colour, margin):
    """One board with its squares, in BGR, and the size in mm; 4 px a mm."""
    per = 4
    left, top, right, bottom = part
    size = numpy.array([(right - left) * SIDE + 2 * margin, (bottom - top) * SIDE + 2 * margin])
    board = numpy.empty((round(size[1] * per), round(size[0] * per), 3), numpy.float32)
    board[:] = BOARDS[colour]
    grain = rng.normal(0, 6, (board.shape[0] // 8 + 1, board.shape[1] // 8 + 1)).astype(numpy.float32)
    board += cv2.resize(grain, board.shape[1::-1])[:, :, None]
    places = {}
    for column in range(left, right):
        for row in range(top, bottom):
            if (column, row) not in hangs:
                continue
            name, quarters = hangs[column, row]
            image = numpy.rot90(images[name], -quarters)
            askew, shift = rng.normal(0, 0.8), rng.normal(0, 1.5, 2)
            middle = numpy.array([(column - left + 0.5) * SIDE + margin, (row - top + 0.5) * SIDE + margin]) + shift
            cos, sin = numpy.cos(numpy.radians(askew)), numpy.sin(numpy.radians(askew))
            to_mm = numpy.array([[cos, -sin, middle[0]], [sin, cos, middle[1]], [0, 0, 1]]) @ numpy.array([[1, 0, -SIDE / 2], [0, 1, -SIDE / 2], [0, 0, 1.0]])
            shown = numpy.diag([per, per, 1.0]) @ to_mm @ numpy.diag([SIDE / image.shape[1], SIDE / image.shape[0], 1.0])
            warped = cv2.warpPerspective(image, shown, board.shape[1::-1], flags=cv2.INTER_AREA)
            mask = cv2.warpPerspective(numpy.ones(image.shape[:2], numpy.float32), shown, board.shape[1::-1], flags=cv2.INTER_LINEAR)
            shadow = cv2.GaussianBlur(mask, (0, 0), 5)[:, :, None]
            board *= 1 - 0.2 * shadow * (1 - mask[:, :, None])
            board[:] = board * (1 - mask[:, :, None]) + warped.astype(numpy.float32) * mask[:, :, None]
            places[column, row] = to_mm
    return board, size, places


def stand(parts, rng, sizes, close):
    """Where each board's top left corner is in the room, and its yaw in radians: strips from left to right, parts of a strip below each other."""
    poses, x = {}, 0.0
    lefts = sorted({part[0] for part in parts})
    for left in lefts:
        yaw = numpy.radians(rng.uniform(-40, 40) if rng.uniform() < 0.6 else 0.0)
        own = [part for part in parts if part[0] == left]
        lower, y = rng.uniform(-300, 300), 0.0
        for part in own:
            poses[part] = (numpy.array([x, lower + y, 0.0]), yaw)
            y += sizes[part][1] + rng.uniform(20, 200)
        x += sizes[own[0]][0] * numpy.cos(yaw) + (rng.uniform(0, 120) if close else rng.uniform(0, 600))
    return poses


def project(points, pose, camera):
    """Pixels of places on a board (mm), by OpenCV."""
    at, yaw = pose
    rotation = numpy.array([[numpy.cos(yaw), 0, numpy.sin(yaw)], [0, 1, 0], [-numpy.sin(yaw), 0, numpy.cos(yaw)]])
    board = numpy.column_stack([points, numpy.zeros(len(points))])
    room = board @ rotation.T + at
    rvec, tvec, matrix, lens = camera
    return cv2.projectPoints(room, rvec, tvec, matrix, lens)[0][:, 0]


def camera_for(corners, rng):
    """A camera that sees all these places of the room: rotation, translation, matrix, lens."""
    lens = numpy.array([rng.uniform(-0.03, 0.03), 0, 0, 0])
    matrix = numpy.array([[FOCAL, 0, SIZE[0] / 2], [0, FOCAL, SIZE[1] / 2], [0, 0, 1]])
    rvec = numpy.array([rng.uniform(-0.06, 0.06), rng.uniform(-0.1, 0.1), rng.uniform(-0.03, 0.03)])
    rotation = cv2.Rodrigues(rvec)[0]
    middle = (corners.min(axis=0) + corners.max(axis=0)) / 2
    for distance in numpy.arange(600, 9000, 40.0):
        tvec = -rotation @ middle + numpy.array([0, 0, distance])
        depth = (corners @ rotation.T + tvec)[:, 2]
        if depth.min() < 200:
            continue
        seen = cv2.projectPoints(corners, rvec, tvec, matrix, lens)[0][:, 0]
        if (seen > 60).all() and (seen < SIZE - 60).all():
            return rvec, tvec, matrix, lens
    raise ValueError("no camera sees it")


def room_corners(parts, poses, sizes):
    corners = []
    for part in parts:
        at, yaw = poses[part]
        for x, y in ((0, 0), (1, 0), (1, 1), (0, 1)):
            along, down = x * sizes[part][0], y * sizes[part][1]
            corners.append(at + numpy.array([along * numpy.cos(yaw), down, -along * numpy.sin(yaw)]))
    return numpy.array(corners)


def photo(shown, boards, poses, sizes, camera, rng, wall):
    """The photo as JPEG, with the boards in it drawn twice as fine and averaged; the lens is put in by remapping."""
    rvec, tvec, matrix, lens = camera
    fine = SIZE * FINER
    frame = numpy.empty((int(SIZE[1]), int(SIZE[0]), 3), numpy.float32)
    frame[:] = WALLS[wall]
    frame += cv2.resize(rng.normal(0, 5, (int(SIZE[1]) // 5, int(SIZE[0]) // 5)).astype(numpy.float32), tuple(map(int, SIZE)))[:, :, None]
    straight = (rvec, tvec, matrix, None)
    for part in shown:
        size, board = sizes[part], boards[part]
        corners = numpy.float64([(0, 0), (size[0], 0), (size[0], size[1]), (0, size[1])])
        to = project(corners, poses[part], straight)
        pixels = numpy.float64([(0, 0), (board.shape[1], 0), (board.shape[1], board.shape[0]), (0, board.shape[0])])
        homography = cv2.getPerspectiveTransform((pixels - 0.5).astype(numpy.float32), (to * FINER + (FINER - 1) / 2).astype(numpy.float32))
        warped = cv2.warpPerspective(board, homography, tuple(map(int, fine)), flags=cv2.INTER_AREA)
        mask = cv2.warpPerspective(numpy.ones(board.shape[:2], numpy.float32), homography, tuple(map(int, fine)), flags=cv2.INTER_LINEAR)
        warped = cv2.resize(warped, tuple(map(int, SIZE)), interpolation=cv2.INTER_AREA)
        mask = cv2.resize(mask, tuple(map(int, SIZE)), interpolation=cv2.INTER_AREA)[:, :, None]
        frame = frame * (1 - mask) + warped * mask
    grid = numpy.stack(numpy.meshgrid(numpy.arange(SIZE[0]), numpy.arange(SIZE[1])), axis=-1).astype(numpy.float64).reshape(-1, 1, 2)
    source = cv2.undistortPoints(grid[::1], matrix, lens, P=matrix).reshape(int(SIZE[1]), int(SIZE[0]), 2).astype(numpy.float32)
    frame = cv2.remap(frame, source, None, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    along, down = (numpy.linspace(-1, 1, side, dtype=numpy.float32) * numpy.float32(rng.uniform(-by, by)) for side, by in zip(SIZE, (0.12, 0.08)))
    frame *= (numpy.float32(0.88) + along[None, :] + down[:, None])[:, :, None]
    noise = rng.standard_normal(frame.shape[:2], dtype=numpy.float32) * numpy.float32(0.03 * 255)
    frame = cv2.GaussianBlur(frame, (0, 0), rng.uniform(0.6, 0.9)) + noise[:, :, None]
    data = cv2.imencode(".jpg", numpy.clip(frame, 0, 255, out=frame).astype(numpy.uint8), [cv2.IMWRITE_JPEG_QUALITY, 85])[1]
    return data.tobytes()


def with_parts(folder, parts):
    """event.toml with the parts listed, or without where there are none."""
    toml = folder / "event.toml"
    text = toml.read_text().split("\n[[parts]]")[0]
    for left, top, right, bottom in parts:
        text += f'\n[[parts]]\nfrom = "{label(left, bottom - 1)}"\nto = "{label(right - 1, top)}"\n'
    toml.write_text(text)


def module_px(to_mm, pose, camera, code):
    """Least side of a code's module in pixels, along either of its sides."""
    x, y, side = code["x_mm"], code["y_mm"], 21 * MODULE
    corners = cv2.perspectiveTransform(numpy.float64([[(x, y), (x + side, y), (x + side, y + side), (x, y + side)]]), to_mm)[0]
    seen = project(corners, pose, camera)
    return min(numpy.linalg.norm(seen[1] - seen[0]), numpy.linalg.norm(seen[3] - seen[0])) / 21, seen


def check_pose(tally, where, part, report, places, pose, camera):
    """A board's pose from the corners that the program gives, by OpenCV's solvePnP, against the one it stands in."""
    room, seen = [], []
    for cell in report["cells"]:
        place = (cell["column"], cell["row"])
        if place not in places or cell["state"] != "right" or not cell["corners_px"]:
            continue
        corners = numpy.float64([[(0, 0), (SIDE, 0), (SIDE, SIDE), (0, SIDE)]])
        room += cv2.perspectiveTransform(corners, places[place])[0].tolist()
        seen += cell["corners_px"]
    # a single column tells the turn about itself by its squares' own width alone
    if len(room) < 16 or part[2] - part[0] < 2:
        return
    _, _, matrix, lens = camera
    board = numpy.column_stack([numpy.array(room), numpy.zeros(len(room))])
    _, rvec, tvec = cv2.solvePnP(board, numpy.array(seen), matrix, lens)
    at, yaw = pose
    turned = numpy.array([[numpy.cos(yaw), 0, numpy.sin(yaw)], [0, 1, 0], [-numpy.sin(yaw), 0, numpy.cos(yaw)]])
    rotation = cv2.Rodrigues(camera[0])[0] @ turned
    off = cv2.Rodrigues(cv2.Rodrigues(rvec)[0] @ rotation.T)[0]
    degrees = numpy.degrees(numpy.linalg.norm(off))
    away = numpy.linalg.norm(tvec[:, 0] - (cv2.Rodrigues(camera[0])[0] @ at + camera[1]))
    distance = numpy.linalg.norm(tvec)
    tally.check("a board's pose from its squares", degrees < TURN and away < AWAY * distance, f"{where} {part}: {degrees:.2f} degrees, {away:.0f} of {distance:.0f} mm", "OpenCV solvePnP")


def judged(tally, where, report, hangs, px, counts, seen_parts):
    """What a report says of a wall against what hangs there."""
    for cell in report["cells"]:
        place = (cell["column"], cell["row"])
        is_seen = any(left <= place[0] < right and top <= place[1] < bottom for left, top, right, bottom in seen_parts)
        truth = hangs.get(place)
        if truth is None:
            counts["bare"] += is_seen
            counts["bare told"] += is_seen and cell["state"] == "empty"
            tally.check("nothing is named where nothing hangs", cell["found"] is None, f"{where} {cell['label']}: {cell['found']}", "what was hung")
            continue
        tally.check("no square is called empty", cell["state"] != "empty", f"{where} {cell['label']}", "what was hung")
        if cell["found"] is not None:
            tally.check("no wrong name", cell["found"] == truth[0], f"{where} {cell['label']}: {cell['found']} for {truth[0]}", "what was hung")
            tally.check("its turn", cell["turn_degrees"] == 90 * truth[1], f"{where} {cell['label']}", "what was hung")
        if is_seen and px[place] >= READABLE:
            counts["readable"] += 1
            counts["read"] += cell["found"] == truth[0]
            if cell["found"] is None:
                print(f"not read: {where} {cell['label']} at {px[place]:.2f} px: {cell['state']}")


def newest(folder):
    return json.loads((max((folder / "checks").iterdir()) / "report.json").read_text())


def wall(tally, program, folder, images, code, out, seed, counts):
    rng = numpy.random.default_rng(seed)
    hangs, parts = hung(rng), cuts_of(rng)
    colours = {part: str(rng.choice(list(BOARDS))) for part in parts}
    margins = {part: rng.uniform(5, 90) for part in parts}
    made = {part: texture(part, hangs, images, rng, colours[part], margins[part]) for part in parts}
    boards, sizes = {part: one[0] for part, one in made.items()}, {part: one[1] for part, one in made.items()}
    close = len(parts) > 3
    poses = stand(parts, rng, sizes, close)
    behind = str(rng.choice(list(WALLS)))
    camera = camera_for(room_corners(parts, poses, sizes), rng)
    px = {}
    for part in parts:
        for place, to_mm in made[part][2].items():
            px[place] = module_px(to_mm, poses[part], camera, code)[0]
    together = out / f"{seed}.jpg"
    together.write_bytes(photo(parts, boards, poses, sizes, camera, rng, behind))
    apart, near = [], {}
    for number, part in enumerate(parts):
        own = camera_for(room_corners([part], poses, sizes), rng)
        file = out / f"{seed}-{number}.jpg"
        file.write_bytes(photo(parts, boards, poses, sizes, own, rng, behind))
        apart.append(file)
        near.update({place: module_px(to_mm, poses[part], own, code)[0] for place, to_mm in made[part][2].items()})
    rng.shuffle(apart)
    for listed in ([], parts):
        with_parts(folder, listed)
        where = f"{seed} ({len(parts)} boards{', listed' if listed else ''})"
        status, said = run(program, "check", folder, together)
        if "report.html" in said:
            report = newest(folder)
            judged(tally, f"{where}, one photo", report, hangs, px, counts["one photo"], parts)
            tally.check("one photo is one photo", len(report["photos"]) == 1, where, "its own")
            for part in parts if listed else []:
                check_pose(tally, where, part, report, made[part][2], poses[part], camera)
        else:
            counts["one photo"]["readable"] += sum(1 for value in px.values() if value >= READABLE)
            print(f"not checked: {where}: {said.strip().splitlines()[-1]}")
        status, said = run(program, "check", folder, *apart)
        tally.check("nothing is said to have moved", "moved" not in said, where, "what was hung")
        judged(tally, f"{where}, a photo each", newest(folder), hangs, near, counts["a photo each"], parts)
        # the first board's photo alone says nothing of the others
        if listed:
            alone = parts[0]
            own = out / f"{seed}-0.jpg"
            status, said = run(program, "check", folder, own)
            if "report.html" in said:
                report = newest(folder)
                judged(tally, f"{where}, first board", report, hangs, near, counts["one board"], [alone])


def main():
    program, picture, out = sys.argv[1], sys.argv[2], Path(sys.argv[3])
    walls = int(sys.argv[4]) if len(sys.argv) > 4 else 3
    first = int(sys.argv[5]) if len(sys.argv) > 5 else 9100
    out.mkdir(parents=True, exist_ok=True)
    folder = out / "event"
    subprocess.run(["rm", "-rf", str(folder)], check=True)
    event(program, picture, folder)
    images, manifest = squares_of(folder)
    rng = numpy.random.default_rng(5)
    images = {name: drawn_on(cv2.resize(image, None, fx=0.6, fy=0.6, interpolation=cv2.INTER_AREA), rng) for name, image in images.items()}
    tally = Noted()
    counts = {name: {"readable": 0, "read": 0, "bare": 0, "bare told": 0} for name in ("one photo", "a photo each", "one board")}
    for seed in range(first, first + walls):
        wall(tally, program, folder, images, manifest["code"], out, seed, counts)
    for name, own in counts.items():
        print(f"{name}: {own['read']} of {own['readable']} readable squares named, {own['bare told']} of {own['bare']} bare places told empty")
        tally.check("readable squares are named", own["read"] >= SHARES[name] * own["readable"], f"{name}: {own}", "what was hung")
    told = tally.told()
    print(f"{told.passed} passed, {told.failed} failed")
    sys.exit(1 if told.failed else 0)


if __name__ == "__main__":
    main()
