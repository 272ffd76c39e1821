"""General readers of codes on made walls, against this program: tools/bench/peers runs it.

  readers.py FOLDER READERS [PEER…]  has every reader read every photo of FOLDER and prints the tables; READERS is the Rust program.
                                     Where readers are named, only these read, and nothing is printed
  readers.py --one PEER PHOTO SHEET  one reader, one photo: a line of JSON for each way of looking

Every reader gets the photo whole, then in tiles two cells wide that overlap by half, then each cell cut out, each plain and enlarged
2, 3 and 4 times (cubic) as long as a module does not grow beyond 6 pixels. What was read stays read, and only tiles and cells with a code that is still missing are looked at: that
spares time and takes nothing from anybody. A reader has PATIENCE seconds of work a photo, in a process of its own.
"""

import collections
import json
import pathlib
import resource
import signal
import subprocess
import sys
import time

PEERS = ["zxing-cpp", "zbar", "OpenCV", "rqrr", "rxing"]
IN_RUST = ["rqrr", "rxing"]
PATIENCE = 120  # seconds of work, not by the clock
MODULE_PX = 6.2
NEEDED = 0.99


def bounds(code):
    xs, ys = zip(*code["cell"])
    return min(xs), min(ys), max(xs), max(ys)


def ways(width, height, codes):
    """The parts of the photo that are looked at: x, y, width, height."""
    side = sum(bounds(c)[2] - bounds(c)[0] for c in codes) / len(codes)
    tile = min(int(2.2 * side), width, height)

    def starts(length):
        at, all_starts = 0, []
        while at + tile // 2 < length:
            all_starts.append(min(at, length - tile))
            at += tile // 2
        return all_starts

    tiles = [(x, y, tile, tile) for y in starts(height) for x in starts(width)]
    cells = []
    for code in codes:
        left, top, right, bottom = bounds(code)
        m = 0.06 * side
        x, y = int(max(left - m, 0)), int(max(top - m, 0))
        cells.append((x, y, int(min(right + m, width)) - x, int(min(bottom + m, height)) - y))
    return [("whole", [(0, 0, width, height)]), ("tiles", tiles), ("cell", cells)]


def reader(peer):
    """A function from a grey picture to texts, with the reader's best settings."""
    if peer == "zxing-cpp":
        import zxingcpp

        def read(grey, single):
            texts = []
            # the usual way of telling dark from light, and where that reads little, the other that suits photos
            for binarizer in [zxingcpp.Binarizer.LocalAverage, zxingcpp.Binarizer.GlobalHistogram]:
                found = zxingcpp.read_barcodes(
                    grey, formats=zxingcpp.BarcodeFormat.QRCode, try_rotate=True, try_downscale=True, try_invert=False, binarizer=binarizer
                )
                texts += [f.text for f in found]
            return texts

        return read
    if peer == "zbar":
        from pyzbar import pyzbar

        return lambda grey, single: [f.data.decode("latin-1") for f in pyzbar.decode(grey, symbols=[pyzbar.ZBarSymbol.QRCODE])]
    import cv2

    detector = cv2.QRCodeDetector()

    def read(grey, single):
        found = list(detector.detectAndDecodeMulti(grey)[1])
        if single and not any(found):
            found.append(detector.detectAndDecode(grey)[0])
        return [text for text in found if text]

    return read


def one(peer, photo, sheet):
    import cv2

    read = reader(peer)
    grey = cv2.imread(photo, cv2.IMREAD_GRAYSCALE)
    sheet = json.loads(pathlib.Path(sheet).read_text())
    codes = sheet["codes"]
    missing = {code["text"] for code in codes}

    def middle(code):
        left, top, right, bottom = bounds(code)
        return (left + right) / 2, (top + bottom) / 2

    for way, parts in ways(grey.shape[1], grey.shape[0], codes):
        for times in [1, 2, 3, 4]:
            if times > 1 and times * sheet["px_per_module"] > MODULE_PX:
                continue
            texts, crashes = [], 0
            for x, y, w, h in parts:
                if not any(c["text"] in missing and x <= middle(c)[0] < x + w and y <= middle(c)[1] < y + h for c in codes):
                    continue
                own = grey[y : y + h, x : x + w].copy()
                if times > 1:
                    own = cv2.resize(own, None, fx=times, fy=times, interpolation=cv2.INTER_CUBIC)
                try:
                    texts += read(own, way == "cell")
                except Exception:  # whatever a reader throws: it has read nothing, and is counted
                    crashes += 1
                missing -= set(texts)
            print(json.dumps({"way": way, "times": times, "texts": texts, "crashes": crashes}), flush=True)


def ask(peer, photo, sheet, readers):
    """What a reader read of a photo, by way of looking; whether it was ended or crashed."""
    command = [readers, peer] if peer in IN_RUST else [sys.executable, __file__, "--one", peer]

    def limited():
        resource.setrlimit(resource.RLIMIT_CPU, (PATIENCE, PATIENCE + 5))

    child = subprocess.run([*command, str(photo), str(sheet)], capture_output=True, text=True, preexec_fn=limited)
    out, troubles = child.stdout, collections.Counter()
    if child.returncode == -signal.SIGXCPU:
        troubles["ended after %d s" % PATIENCE] += 1
    elif child.returncode:
        troubles["crashed"] += 1
    lines = []
    for line in out.splitlines():
        try:
            lines.append(json.loads(line))
        except ValueError:
            pass  # the line it was writing when it was ended
    return lines, troubles


def compare(folder, readers, peers):
    walls = [p for p in sorted(folder.glob("*.json")) if p.name.startswith(("sharp", "soft")) and not p.name.endswith(".own.json")]
    # every fineness once before any a second time, the middle ones first: where a run is ended early, those matter
    walls.sort(key=lambda p: (p.stem[-1], abs(float(p.stem.split("-")[1]) - 1.9), p.stem))
    results = {}
    for peer in peers or PEERS:
        kept = folder / f"peer-{peer}.json"
        own = json.loads(kept.read_text()) if kept.exists() else {}
        for path in walls:
            key = f"{peer} {path.stem}"
            if key in own:
                continue
            begin = time.time()
            lines, troubles = ask(peer, path.with_suffix(".jpg"), path, readers)
            own[key] = {"lines": lines, "troubles": troubles, "seconds": time.time() - begin}
            kept.write_text(json.dumps(own))
            print(f"{key}: {sum(len(l['texts']) for l in lines)} texts, {time.time() - begin:.1f} s", file=sys.stderr, flush=True)
        results |= own
    if not peers:
        table(walls, results)
        phones(folder)


def table(walls, results):
    """Shares read of the codes in sight, by camera and fineness, and what each reader needs."""
    cumulative = {"whole": ["whole"], "and tiled": ["whole", "tiles"], "and each cell cut out": ["whole", "tiles", "cell"]}
    loaded = {path: json.loads(path.read_text()) for path in walls}
    for camera, described in [("sharp", "sharp: blur 0.7 px, noise 3 %, JPEG 85"), ("soft", "soft: blur 1.0 px, noise 5 %, JPEG 75")]:
        groups = collections.defaultdict(list)
        for path, sheet in loaded.items():
            if sheet["camera"] == camera:
                groups[float(path.stem.split("-")[1])].append(path)
        finenesses = sorted(groups)
        print(f"\n{described}; per cent of the codes in sight that were read")
        print("| reader | " + " | ".join(f"{f:g} px" for f in finenesses) + " | needs for 99 % | codes a column |")
        print("|---|" + "---|" * (len(finenesses) + 2))

        def row(name, texts_of):
            shares, counts = [], []
            for f in finenesses:
                right = of = 0
                for path in groups[f]:
                    wanted = {code["text"] for code in loaded[path]["codes"]}
                    texts = texts_of(path)
                    if texts is None:
                        continue
                    right += len(wanted & texts)
                    of += len(wanted)
                shares.append(right / of if of else None)
                counts.append(of)
            enough = [f for k, f in enumerate(finenesses) if all(s is not None and s >= NEEDED for s in shares[k:])]
            need = f"{enough[0]:g} px" if enough else f"more than {finenesses[-1]:g} px"
            if enough and enough[0] == finenesses[0]:
                need += " or less"
            if None in shares[-1:]:
                need = "not tried"

            def shown(share):
                return "–" if share is None else "100" if share > 0.9995 else f"{100 * share:.3g}"

            print(
                f"| {name} | "
                + " | ".join(shown(share) for share in shares)
                + f" | {need} | {min((n for n in counts if n), default=0)} |"
            )

        def own(path):
            kept = path.with_name(path.stem + ".own.json")
            return set(json.loads(kept.read_text())["texts"]) if kept.exists() else None

        row("Everysquare, whole photo", own)
        for peer in PEERS:
            for name, used in cumulative.items():

                def texts(path):
                    result = results.get(f"{peer} {path.stem}")
                    return None if result is None else {t for l in result["lines"] if l["way"] in used for t in l["texts"]}

                row(f"{peer}, {name}", texts)
    print("\ntroubles:")
    for peer in PEERS:
        troubles = collections.Counter()
        for path in walls:
            result = results.get(f"{peer} {path.stem}")
            if result is None:
                continue
            troubles["photos"] += 1
            troubles.update(result["troubles"])
            troubles["calls that threw or panicked"] += sum(l["crashes"] for l in result["lines"])
        print(f"- {peer}: " + ", ".join(f"{what}: {n}" for what, n in troubles.items()))


def phones(folder):
    """zxing-cpp's time on the two photos of 12 megapixels, plain and tiled at twice the size."""
    import cv2

    read = reader("zxing-cpp")
    print("\nzxing-cpp on a made photo of 12 megapixels (processor's seconds)")
    print("| photo | codes in sight | whole: read | s | tiles, 2 times: read | s | Everysquare: read | s |")
    print("|---|---|---|---|---|---|---|---|")
    for path in sorted(folder.glob("phone-*.json")):
        if path.name.endswith(".own.json"):
            continue
        sheet = json.loads(path.read_text())
        grey = cv2.imread(str(path.with_suffix(".jpg")), cv2.IMREAD_GRAYSCALE)
        wanted = {code["text"] for code in sheet["codes"]}
        begin = time.process_time()
        whole = set(read(grey, False))
        first = time.process_time() - begin
        begin, tiled = time.process_time(), set()
        for x, y, w, h in ways(grey.shape[1], grey.shape[0], sheet["codes"])[1][1]:
            tiled |= set(read(cv2.resize(grey[y : y + h, x : x + w], None, fx=2, fy=2, interpolation=cv2.INTER_CUBIC), False))
        second = time.process_time() - begin
        own = json.loads(path.with_name(path.stem + ".own.json").read_text())
        print(
            f"| {path.stem[6:]}, {sheet['px_per_module']:.2f} px a module | {len(wanted)} | {len(wanted & whole)} | {first:.2f} "
            f"| {len(wanted & tiled)} | {second:.2f} | {len(wanted & set(own['texts']))} | {own['seconds']:.2f} |"
        )


if __name__ == "__main__":
    if sys.argv[1] == "--one":
        one(*sys.argv[2:])
    else:
        compare(pathlib.Path(sys.argv[1]), sys.argv[2], sys.argv[3:])
