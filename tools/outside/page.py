"""Opens a check's report.html in Chromium: python tools/outside/page.py CHROMIUM CHECK_FOLDER PICTURES_FOLDER

Needs Python 3.11, numpy and pillow, and no network. On a phone's and on a laptop's screen: every sentence of report.json is
on the page, every picture shows, nothing is loaded from elsewhere, nothing sticks out sideways. What was seen is kept in
PICTURES_FOLDER. Ends with "N passed, M failed" and exits 1 where one failed."""

import html
import json
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy
from PIL import Image

SCREENS = {"phone": (390, 844), "laptop": (1280, 900)}
FLAGS = """--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking
    --disable-component-update --disable-sync --hide-scrollbars""".split()
PATIENCE_S = 90
# A window cannot be as narrow as a phone's; a frame in a wider one can.
FRAME = """<!DOCTYPE html><body style="margin:0"><iframe src="{page}" style="border:0;width:{width}px;height:{height}px"></iframe>
<script>addEventListener("message", (e) => {{ document.body.dataset.told = e.data; }});</script>"""
MARGIN_PX = 400
# Appended to a copy of the page: tells the frame around it what the browser measured.
PROBE = """<script>
addEventListener("load", () => {
  const wide = document.documentElement.clientWidth;
  const inside = (e) => e.closest(".scroll") || e.classList.contains("hidden") || e.tagName === "use";
  const out = [...document.body.querySelectorAll("*")].filter((e) => !inside(e) && e.getBoundingClientRect().right > wide + 1);
  const told = {
    wide, page: document.documentElement.scrollWidth, out: out.map((e) => e.tagName),
    pictures: [...document.images].map((i) => i.naturalWidth).concat([...document.querySelectorAll("svg image")].map((i) => i.getBBox().width)), loaded: performance.getEntriesByType("resource").map((r) => r.name),
  };
  parent.postMessage(JSON.stringify({ ...told, dom: document.documentElement.outerHTML.replace(/base64,[^"]*/g, "") }), "*");
});
</script>"""


class Tally:
    def __init__(self):
        self.passed = self.failed = 0

    def check(self, what, things):
        """`things`: pairs of a name and whether it holds."""
        things = list(things)
        bad = [str(name) for name, holds in things if not holds]
        self.passed += len(things) - len(bad)
        self.failed += len(bad) or (not things)
        said = f"{len(bad)} FAILED: {'; '.join(bad[:5])}" if bad else ("NONE FOUND" if not things else "ok")
        print(f"{what}: {len(things)} checked, {said}")


def browse(chromium, page, size, *what):
    """Chromium's standard output for a page in a frame of a size. It is begun anew each time: it keeps nothing."""
    with tempfile.TemporaryDirectory() as profile:
        frame = Path(profile) / "frame.html"
        frame.write_text(FRAME.format(page=page.resolve().as_uri(), width=size[0], height=size[1]), encoding="utf-8")
        window = f"--window-size={size[0] + MARGIN_PX},{size[1] + MARGIN_PX}"
        command = [chromium, *FLAGS, f"--user-data-dir={profile}/profile", window, *what, frame.as_uri()]
        return subprocess.run(command, capture_output=True, text=True, timeout=PATIENCE_S, check=True).stdout


def words(dom):
    """What a reader reads: the page without its tags."""
    body = re.sub(r"<(style|script)\b.*?</\1>", " ", dom, flags=re.S)
    return " ".join(html.unescape(re.sub(r"<[^>]*>", " ", body)).split())


def outward(page):
    """Addresses on the page that a browser would fetch, but for pictures and letters inside it."""
    found = re.findall(r"""(?:\b(?:src|href|srcset|action|poster|data)\s*=\s*["']?|url\(\s*["']?|@import\s*["']?)([^"'\s>)]+)""", page)
    return [address for address in found if not address.startswith(("data:image/", "data:font/", "#"))]


def check_words(tally, report, dom):
    said = words(dom)
    fixes = [(" ".join(fix["say"].split()), fix) for fix in report["fixes"]]
    # many squares to fetch are one step and a list
    listed = said.partition("Not seen anywhere:")[2]
    there = [(say, say in said or (fix["do"] == "fetch" and f" {fix['square']}" in listed)) for say, fix in fixes]
    tally.check("fixes in words", there)
    tally.check("cells", [(c["label"], re.search(rf"\b{c['label']}\b", said)) for c in report["cells"]])
    tally.check("the evening's name", [(report["event"]["name"], report["event"]["name"] in said)])


def check_screen(tally, chromium, page, pictures, name, size):
    probed = pictures / f"probed-{name}.html"
    probed.write_text(page.read_text(encoding="utf-8") + PROBE, encoding="utf-8")
    dom = browse(chromium, probed, size, "--dump-dom", "--virtual-time-budget=20000")
    probed.unlink()
    told = re.search(r'data-told="([^"]*)"', dom)
    told = json.loads(html.unescape(told[1])) if told else {}
    loaded = [url for url in told.get("loaded", ["nothing told"]) if not url.startswith("data:")]
    tally.check(f"{name}, measured by the browser", [
        (f"window {told.get('wide')} px wide", told.get("wide") == size[0]),
        (f"page {told.get('page')} px wide", told.get("page", 1e9) <= size[0]),
        (f"sticking out: {told.get('out')}", told.get("out") == []),
        (f"pictures {told.get('pictures')}", len(told.get("pictures", [])) >= 2 and all(told["pictures"])),
        (f"loaded {loaded}", not loaded),
    ])
    shot = pictures / f"{name}.png"
    browse(chromium, page, size, f"--screenshot={shot.resolve()}")
    seen = Image.open(shot).convert("RGB").crop((0, 0, *size))
    seen.save(shot)
    check_shot(tally, name, numpy.asarray(seen.convert("L")))
    return told.get("dom", "")


def check_shot(tally, name, grey):
    paper = numpy.median(grey)
    ink = numpy.abs(grey.astype(float) - paper) > 60
    bands = [band.any() for band in numpy.array_split(ink, 8)]
    tally.check(f"{name}, as seen", [
        (f"ink on {ink.mean():.1%}", 0.005 < ink.mean() < 0.6),
        ("ink in every eighth of its height", all(bands)),
        ("clear right edge", not ink[:, -4:].any()),
    ])


def main():
    if len(sys.argv) != 4:
        sys.exit(__doc__)
    chromium, check, pictures = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3])
    pictures.mkdir(parents=True, exist_ok=True)
    page, tally = check / "report.html", Tally()
    report = json.loads((check / "report.json").read_text(encoding="utf-8"))
    source = page.read_text(encoding="utf-8")
    tally.check("nothing from elsewhere", [(f"addresses {outward(source)[:3]}", not outward(source))])
    tally.check("no scripts", [("script", "<script" not in source.lower())])
    for name, size in SCREENS.items():
        dom = check_screen(tally, chromium, page, pictures, name, size)
        check_words(tally, report, dom)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(tally.failed > 0)


if __name__ == "__main__":
    main()
