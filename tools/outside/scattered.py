"""Scatters squares over a table and has them found: python tools/outside/scattered.py PROGRAM PICTURE OUT [WALLS]

PROGRAM is everysquare, PICTURE the picture to make an event of; what is made lies in OUT. Needs Python 3.11 and numpy,
opencv-python-headless, pypdfium2, zxing-cpp; zbar is asked too where pyzbar is installed. Photos are made: the program's own squares as
PDFium draws them, drawn on, thrown on a table at any turn, some over others, seen by OpenCV's camera from aside, blurred, with noise, as
JPEG. A square counts as readable where 98 % of its code are in sight. Ends with "N passed, M failed" and exits 1 where one failed."""

import json
import re
import subprocess
import sys
import time
from pathlib import Path

import cv2
import numpy
import pypdfium2
import zxingcpp

from pdf import Tally

SQUARE_PX_PER_MM = 12
SIZE = (4032, 3024)
FINER = 4
SHARES = {1.5: 0.6, 2.0: 0.98, 2.5: 0.98, 3.0: 0.98}  # of readable squares that have to be found, by pixels a module
TABLE = {"wood": (70, 105, 150), "dark": (45, 40, 38), "white": (236, 238, 240), "green": (60, 95, 70)}


def run(program, *words):
    done = subprocess.run([program, *map(str, words)], capture_output=True, text=True)
    return done.returncode, done.stdout + done.stderr


def squares_of(folder):
    """Each square as PDFium draws it, in BGR, by label."""
    manifest = json.loads((folder / "print" / "manifest.json").read_text())
    pdf = pypdfium2.PdfDocument(folder / "print" / "squares.pdf")
    squares, pages = {}, {}
    for square in manifest["squares"]:
        number = square["page"] - 1
        if number not in pages:
            pages = {number: pdf[number].render(scale=SQUARE_PX_PER_MM * 25.4 / 72).to_numpy()[:, :, :3]}
        side = round(square["side_mm"] * SQUARE_PX_PER_MM)
        x, y = (round(square[key] * SQUARE_PX_PER_MM) for key in ("x_mm", "y_mm"))
        squares[square["label"]] = numpy.ascontiguousarray(pages[number][y : y + side, x : x + side])
    return squares, manifest


def drawn_on(image, rng):
    """What somebody draws, the code's box left white."""
    side = image.shape[0]
    canvas = image.copy()
    for _ in range(rng.integers(2, 6)):
        points = (rng.uniform(0.03, 0.97, (5, 2)) * side).astype(numpy.int32)
        cv2.fillPoly(canvas, [points], rng.integers(30, 235, 3).tolist(), cv2.LINE_AA)
    for _ in range(rng.integers(2, 9)):
        a, b = (tuple(map(int, rng.uniform(0.03, 0.97, 2) * side)) for _ in range(2))
        cv2.line(canvas, a, b, rng.integers(0, 140, 3).tolist(), int(side / rng.uniform(25, 70)), cv2.LINE_AA)
    canvas[round(0.83 * side) :, round(0.8 * side) :] = image[round(0.83 * side) :, round(0.8 * side) :]
    return canvas


def thrown(squares, manifest, px, rng, table, soft):
    """A photo of squares on a table, the labels whose codes are in sight, and all that lie there."""
    code, side_mm = manifest["code"], manifest["grid"]["square_mm"]
    per_mm = px / code["module_mm"]
    room = numpy.array(SIZE) / per_mm
    labels = list(squares)
    count = min(len(labels) * 7 // 10, int(0.75 * room[0] * room[1] / side_mm**2))
    chosen = rng.choice(labels, max(3, count), replace=False).tolist()
    photo = numpy.empty((SIZE[1], SIZE[0], 3), numpy.float32)
    photo[:] = TABLE[table]
    photo += cv2.resize(rng.normal(0, 7, (SIZE[1] // 6, SIZE[0] // 30)).astype(numpy.float32), SIZE)[:, :, None]
    tilt = rng.uniform(-0.11, 0.11, 2)
    seen = numpy.array([[per_mm, 0, 0], [0, per_mm, 0], [0, 0, 1.0]])
    middle = room / 2
    away = numpy.array([[1, 0, 0], [0, 1, 0], [tilt[0] / middle[0], tilt[1] / middle[1], 1.0]])
    shift = numpy.array([[1, 0, -middle[0]], [0, 1, -middle[1]], [0, 0, 1.0]])
    camera = seen @ numpy.linalg.inv(shift) @ away @ shift
    owner = numpy.zeros((SIZE[1], SIZE[0]), numpy.uint16)
    polygons = []
    size_mm = 21 * code["module_mm"]
    kept = []
    for number, label in enumerate(chosen, 1):
        for _ in range(60):
            at, turn = rng.uniform(0.55 * side_mm, room - 0.55 * side_mm), rng.uniform(0, 2 * numpy.pi)
            if all(numpy.hypot(*(at - other)) > rng.uniform(0.62, 0.95) * side_mm for other in kept):
                break
        kept.append(at)
        cos, sin = numpy.cos(turn), numpy.sin(turn)
        place = numpy.array([[cos, -sin, at[0]], [sin, cos, at[1]], [0, 0, 1.0]]) @ numpy.array([[1, 0, -side_mm / 2], [0, 1, -side_mm / 2], [0, 0, 1.0]])
        map_mm = camera @ place
        image = squares[label] if rng.uniform() < 0.4 else drawn_on(squares[label], rng)
        per = image.shape[0] / side_mm
        homography = map_mm @ numpy.diag([1 / per, 1 / per, 1.0])
        corners = cv2.perspectiveTransform(numpy.float64([[[0, 0]], [[side_mm, 0]], [[side_mm, side_mm]], [[0, side_mm]]]), map_mm)[:, 0]
        left, top = numpy.maximum(numpy.floor(corners.min(axis=0)).astype(int) - 3, 0)
        right, bottom = numpy.minimum(numpy.ceil(corners.max(axis=0)).astype(int) + 4, SIZE)
        if right <= left or bottom <= top:
            continue
        # drawn four times as fine and averaged, so that only the lens blurs
        middle_of = (FINER - 1) / 2
        local = numpy.array([[FINER, 0, middle_of - FINER * left], [0, FINER, middle_of - FINER * top], [0, 0, 1.0]]) @ homography
        box = (int(right - left), int(bottom - top))
        fine = (FINER * box[0], FINER * box[1])
        warped = cv2.resize(cv2.warpPerspective(image, local, fine, flags=cv2.INTER_LINEAR), box, interpolation=cv2.INTER_AREA).astype(numpy.float32)
        mask = cv2.resize(cv2.warpPerspective(numpy.ones(image.shape[:2], numpy.float32), local, fine, flags=cv2.INTER_LINEAR), box, interpolation=cv2.INTER_AREA)
        shadow = cv2.GaussianBlur(mask, (0, 0), 4)[:, :, None]
        view = photo[top:bottom, left:right]
        view *= 1 - 0.25 * shadow * (1 - mask[:, :, None])
        view[:] = view * (1 - mask[:, :, None]) + warped
        owner[top:bottom, left:right][mask > 0.5] = number
        x, y = code["x_mm"], code["y_mm"]
        quad = cv2.perspectiveTransform(numpy.float64([[[x, y]], [[x + size_mm, y]], [[x + size_mm, y + size_mm]], [[x, y + size_mm]]]), map_mm)[:, 0]
        polygons.append((number, label, quad))
    readable, there = set(), set()
    for number, label, quad in polygons:
        corner = numpy.maximum(numpy.floor(quad.min(axis=0)).astype(int) - 1, 0)
        end = numpy.maximum(numpy.ceil(quad.max(axis=0)).astype(int) + 2, corner)
        near = owner[corner[1] : end[1], corner[0] : end[0]]
        mask = numpy.zeros(near.shape, numpy.uint8)
        if mask.size:
            cv2.fillConvexPoly(mask, numpy.round(quad - corner).astype(numpy.int32), 1)
        area = cv2.contourArea(quad.astype(numpy.float32))
        share = float((near[mask > 0] == number).sum()) / max(area, 1)
        there.add(label)
        if share >= 0.98 and quad.min() > 6 * px and (quad < numpy.array(SIZE) - 6 * px).all():
            readable.add(label)
    along, down = (numpy.linspace(-0.5, 0.5, side, dtype=numpy.float32) * numpy.float32(rng.uniform(-by, by)) for side, by in zip(SIZE, (0.5, 0.4)))
    photo *= (numpy.float32(0.85) - along[None, :] - down[:, None])[:, :, None]
    blur, noise, quality = (1.0, 0.05, 75) if soft else (0.7, 0.03, 85)
    photo = cv2.GaussianBlur(photo, (0, 0), blur)
    photo += (rng.standard_normal(photo.shape[:2], dtype=numpy.float32) * numpy.float32(noise * 255))[:, :, None]
    data = cv2.imencode(".jpg", numpy.clip(photo, 0, 255, out=photo).astype(numpy.uint8), [cv2.IMWRITE_JPEG_QUALITY, quality])[1]
    return data.tobytes(), readable, there


def told(said, labels):
    """The labels that the program says are here."""
    lacking = set()
    for line in said.splitlines():
        if line.startswith("Not here"):
            lacking = set(re.findall(r"\b[A-Z]+\d+\b", line.split(":", 1)[1]))
    counted = re.search(r"(\d+) of \d+ squares|All (\d+) squares", said)
    here = set(labels) - lacking if counted else set()
    count = int(counted.group(1) or counted.group(2)) if counted else 0
    return here if len(here) == count else None


def peers(data, tag):
    grey = cv2.imdecode(numpy.frombuffer(data, numpy.uint8), cv2.IMREAD_GRAYSCALE)
    found = {"zxing-cpp": {code.text for code in zxingcpp.read_barcodes(grey, formats=zxingcpp.BarcodeFormat.QRCode)}}
    try:
        from pyzbar import pyzbar

        found["zbar"] = {code.data.decode("latin-1") for code in pyzbar.decode(grey, symbols=[pyzbar.ZBarSymbol.QRCODE])}
    except ImportError:
        pass
    # in a process of its own: it may crash, or take minutes
    script = "import sys,cv2,numpy;g=cv2.imdecode(numpy.frombuffer(sys.stdin.buffer.read(),numpy.uint8),0);ok,t,_,_=cv2.QRCodeDetector().detectAndDecodeMulti(g);print('\\n'.join(t))"
    try:
        done = subprocess.run([sys.executable, "-c", script], input=data, capture_output=True, timeout=60)
        found["OpenCV"] = set(done.stdout.decode().split("\n"))
    except subprocess.TimeoutExpired:
        found["OpenCV"] = set()
    return {peer: {text.removeprefix(f"{tag}-") for text in texts if text.startswith(f"{tag}-")} for peer, texts in found.items()}


def main():
    program, picture, out = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])
    walls = int(sys.argv[4]) if len(sys.argv) > 4 else 2
    out.mkdir(parents=True, exist_ok=True)
    folder = out / "event"
    if not folder.exists():
        for words in (["new", folder, "--picture", picture, "--columns", "10", "--rows", "6", "--tag", "K7M", "--name", "Scattered"], ["print", folder]):
            code, said = run(program, *words)
            assert code == 0, said
    squares, manifest = squares_of(folder)
    tally, wrong, rows = Tally(), [], []
    for soft in (False, True):
        for px in (1.0, 1.25, 1.5, 2.0, 2.5, 3.0):
            sums = {"readable": 0, "own": 0, "seconds": 0.0}
            others = {}
            for number in range(walls):
                rng = numpy.random.default_rng([51, int(100 * px), int(soft), number])
                table = list(TABLE)[(number + int(4 * px)) % len(TABLE)]
                data, readable, there = thrown(squares, manifest, px, rng, table, soft)
                path = out / f"{'soft' if soft else 'sharp'}-{px}-{number}.jpg"
                path.write_bytes(data)
                start = time.monotonic()
                _, said = run(program, "find", folder, path)
                sums["seconds"] = max(sums["seconds"], time.monotonic() - start)
                here = told(said, squares)
                here = set() if here is None and "squares are here" not in said else here
                wrong.append((f"{path.name}: {said}" if here is None else f"{path.name}: {sorted(here - there)}", here is not None and not here - there))
                sums["readable"] += len(readable)
                sums["own"] += len((here or set()) & readable)
                if number == 0:
                    for peer, labels in peers(data, "K7M").items():
                        others[peer] = f"{len(labels & readable)} of {len(readable)}" + (f", {len(labels - there)} wrong" if labels - there else "")
            rows.append((soft, px, sums, others))
            print(f"{'soft ' if soft else 'sharp'} {px:4.2f} px a module: {sums['own']} of {sums['readable']} readable squares found, {sums['seconds']:.1f} s at most; others, first photo: {others}", flush=True)
    tally.check("scattered squares: none is named that is not there", wrong, "what was thrown")
    tally.check("scattered squares: 98 % of the readable ones are found from 2 px a module on, and many from 1.5", (
        (f"{px}: {own} of {all_of}", own >= SHARES[px] * all_of) for px in SHARES
        for own, all_of in [[sum(sums[key] for _, size, sums, _ in rows if size == px) for key in ("own", "readable")]]
    ), "what was thrown; beside zxing-cpp, OpenCV and, where it is installed, zbar on the same pictures")
    print(f"{tally.passed} passed, {tally.failed} failed")
    return int(tally.failed > 0)


if __name__ == "__main__":
    sys.exit(main())
