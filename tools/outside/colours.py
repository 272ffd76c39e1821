"""Compares colours and SVG drawings with other libraries: python tools/outside/colours.py PROGRAM

PROGRAM is the built example `colour` (cargo build --release --example colour). Needs Python 3.11, numpy, colour-science,
webcolors, matplotlib, cairosvg (and Cairo) and pillow. Colours are drawn by lot from a fixed seed. Ends with "N passed, M failed" and exits 1
where one failed.

Oklab, CIELAB and CIEDE2000 are compared with colour-science, CIEDE2000 also with the 34 pairs published with the formula's
implementation notes (Sharma, Wu & Dalal, 2005, Color Research & Application 30:21-30, table 1); named colours with
webcolors' list of CSS (HTML 4, CSS 2, 3) and, for rebeccapurple, with Pillow's; names of the colour survey with Matplotlib's copy of it; drawings with CairoSVG."""

import io
import json
import subprocess
import sys

import cairosvg
import colour
import numpy
import webcolors
from matplotlib.colors import XKCD_COLORS
from PIL import Image, ImageColor

COLOURS = 500

# L, a, b of one, of the other, CIEDE2000
PUBLISHED = """
50.0000 2.6772 -79.7751 50.0000 0.0000 -82.7485 2.0425
50.0000 3.1571 -77.2803 50.0000 0.0000 -82.7485 2.8615
50.0000 2.8361 -74.0200 50.0000 0.0000 -82.7485 3.4412
50.0000 -1.3802 -84.2814 50.0000 0.0000 -82.7485 1.0000
50.0000 -1.1848 -84.8006 50.0000 0.0000 -82.7485 1.0000
50.0000 -0.9009 -85.5211 50.0000 0.0000 -82.7485 1.0000
50.0000 0.0000 0.0000 50.0000 -1.0000 2.0000 2.3669
50.0000 -1.0000 2.0000 50.0000 0.0000 0.0000 2.3669
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0009 7.1792
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0010 7.1792
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0011 7.2195
50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0012 7.2195
50.0000 -0.0010 2.4900 50.0000 0.0009 -2.4900 4.8045
50.0000 -0.0010 2.4900 50.0000 0.0010 -2.4900 4.8045
50.0000 -0.0010 2.4900 50.0000 0.0011 -2.4900 4.7461
50.0000 2.5000 0.0000 50.0000 0.0000 -2.5000 4.3065
50.0000 2.5000 0.0000 73.0000 25.0000 -18.0000 27.1492
50.0000 2.5000 0.0000 61.0000 -5.0000 29.0000 22.8977
50.0000 2.5000 0.0000 56.0000 -27.0000 -3.0000 31.9030
50.0000 2.5000 0.0000 58.0000 24.0000 15.0000 19.4535
50.0000 2.5000 0.0000 50.0000 3.1736 0.5854 1.0000
50.0000 2.5000 0.0000 50.0000 3.2972 0.0000 1.0000
50.0000 2.5000 0.0000 50.0000 1.8634 0.5757 1.0000
50.0000 2.5000 0.0000 50.0000 3.2592 0.3350 1.0000
60.2574 -34.0099 36.2677 60.4626 -34.1751 39.4387 1.2644
63.0109 -31.0961 -5.8663 62.8187 -29.7946 -4.0864 1.2630
61.2901 3.7196 -5.3901 61.4292 2.2480 -4.9620 1.8731
35.0831 -44.1164 3.7933 35.0232 -40.0716 1.5901 1.8645
22.7233 20.0904 -46.6940 23.0331 14.9730 -42.5619 2.0373
36.4612 47.8580 18.3852 36.2715 50.5065 21.2231 1.4146
90.8027 -2.0831 1.4410 91.1528 -1.6435 0.0447 1.4441
90.9257 -0.5406 -0.9208 88.6381 -0.8985 -0.7239 1.5381
6.7747 -0.2908 -2.4247 5.8714 -0.0985 -2.2286 0.6377
2.0776 0.0795 -1.1350 0.9033 -0.0636 -0.5514 0.9082
"""

DRAWINGS = {
    "boat": """<rect width='500' height='400' fill='#a6d8ee'/><rect y='262' width='500' height='138' fill='#2f6f86'/>
        <path d='M90 300 h190 l-34 44 h-124 z' fill='#8e3b2e'/><path d='M180 290 V110 L270 280 Z' fill='#fbf4e2'/>
        <circle cx='370' cy='130' r='58' fill='#ffd75e' stroke='#22242c' stroke-width='6'/>""",
    "gradients": """<defs><linearGradient id='l' x2='0' y2='1'><stop stop-color='#274b8f'/><stop offset='1' stop-color='#f4b37a'/>
        </linearGradient><radialGradient id='r'><stop stop-color='#fff'/><stop offset='1' stop-color='#3d5a3a'/></radialGradient></defs>
        <rect width='500' height='400' fill='url(#l)'/><ellipse cx='250' cy='220' rx='190' ry='120' fill='url(#r)'/>""",
    "groups": """<g id='tree' transform='translate(80 90) rotate(20) scale(1.5)'><path d='M0 100 q40 -160 80 0 z' fill='#3f9658'/>
        <rect x='34' y='100' width='12' height='40' fill='#5e4033'/></g><use href='#tree' x='200' y='-60'/>
        <g opacity='0.5'><rect x='20' y='220' width='460' height='120' fill='#d2473c'/><circle cx='250' cy='280' r='80' fill='#1f4e8c'/></g>
        <polyline points='20,380 120,340 220,380 320,340 480,380' fill='none' stroke='#22242c' stroke-width='9' stroke-linejoin='round'
        stroke-dasharray='40 12'/>""",
    "clear": """<circle cx='250' cy='200' r='150' fill='#f7bc3b' fill-opacity='0.4'/>
        <path fill-rule='evenodd' d='M100 100 h300 v200 h-300 z M150 150 v100 h200 v-100 z' fill='#1f4e8c'/>""",
}
SHOWN = (125, 100)


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


def far(ours, theirs):
    return [float(numpy.abs(numpy.asarray(a) - b).max()) for a, b in zip(ours, theirs)]


def check_spaces(tally, program, chance):
    srgb = numpy.vstack([chance.integers(0, 256, (COLOURS, 3)), [(0, 0, 0), (255, 255, 255), (1, 0, 0), (0, 0, 255)]])
    ours = ask(program, [{"srgb": own.tolist()} for own in srgb])
    # colour-science rounds the matrix from sRGB to XYZ to four digits by default; the standard's own primaries give it exactly
    space = colour.RGB_COLOURSPACES["sRGB"]
    space.use_derived_transformation_matrices(True)
    xyz = colour.RGB_to_XYZ(srgb / 255, space, apply_cctf_decoding=True)
    oklab = colour.XYZ_to_Oklab(xyz)
    cielab = colour.XYZ_to_Lab(xyz, space.whitepoint)
    source = "colour-science XYZ_to_Oklab; Ottosson 2020"
    tally.within("sRGB to Oklab", far([own["oklab"] for own in ours], oklab), 1e-3, "of 1", source)
    source = "colour-science XYZ_to_Lab, D65"
    tally.within("sRGB to CIELAB", far([own["cielab"] for own in ours], cielab), 0.02, "of 100", source)
    again = far([own["again"] for own in ours], srgb)
    tally.within("sRGB to what is seen and back", again, 1, "levels", "the same colours")
    distances = [[float(own) for own in colour.delta_E(lab, list(css_labs().values()), method="CIE 2000")] for lab in cielab]
    names = list(css_labs())
    lead = [own[names.index(told["name"])] - min(own) for told, own in zip(ours, distances)]
    tally.within("nearest named colour", lead, 0.02, "CIEDE2000", "colour-science delta_E over webcolors' names")


def css_values():
    names = {name: tuple(webcolors.name_to_rgb(name)) for name in webcolors.names("css3")}
    names["rebeccapurple"] = ImageColor.getrgb("rebeccapurple")  # CSS 4 added this one; webcolors stops at CSS 3
    return {name: value for name, value in names.items() if "grey" not in name}


def css_labs():
    space = colour.RGB_COLOURSPACES["sRGB"]
    xyz = {n: colour.RGB_to_XYZ(numpy.array(v) / 255, space, apply_cctf_decoding=True) for n, v in css_values().items()}
    return {name: colour.XYZ_to_Lab(own, space.whitepoint) for name, own in xyz.items()}


def check_names(tally, program):
    ours = ask(program, [{"named": True}])[0]["names"]
    theirs = css_values()
    every = sorted(set(ours) | set(theirs))
    wrong = [float(tuple(ours.get(name, ())) != theirs.get(name)) for name in every]
    tally.within("named colours of CSS", wrong, 0, "wrong", "webcolors css3, Pillow for rebeccapurple")


def check_survey(tally, program):
    ours = ask(program, [{"named": True}])[0]["survey"]
    theirs = {name.removeprefix("xkcd:"): value for name, value in XKCD_COLORS.items()}
    wrong = [float("#%02x%02x%02x" % tuple(value) != theirs.get(name)) for name, value in ours.items()]
    tally.within("colours of the colour survey", wrong, 0, "wrong", "Munroe 2010, as Matplotlib has them")


def check_differences(tally, program, chance):
    published = numpy.array([line.split() for line in PUBLISHED.split("\n") if line], float)
    ours = ask(program, [{"pair": [p[:3].tolist(), p[3:6].tolist()]} for p in published])
    errors = far([own["ciede2000"] for own in ours], published[:, 6])
    tally.within("CIEDE2000, published pairs", errors, 5.1e-5, "", "Sharma, Wu & Dalal 2005, table 1: four decimals")
    theirs = colour.delta_E(published[:, :3], published[:, 3:6], method="CIE 2000")
    tally.within("the table above against another library", far(theirs, published[:, 6]), 5.1e-5, "", "colour-science delta_E")
    pairs = chance.uniform((0, -90, -90, 0, -90, -90), (100, 90, 90, 100, 90, 90), (COLOURS, 6))
    ours = ask(program, [{"pair": [p[:3].tolist(), p[3:].tolist()]} for p in pairs])
    theirs = colour.delta_E(pairs[:, :3], pairs[:, 3:], method="CIE 2000")
    # where hues lie opposite each other the last digits decide the sign of the rotation; the table has four decimals too
    tally.within("CIEDE2000, pairs by lot", far([own["ciede2000"] for own in ours], theirs), 1e-4, "", "colour-science delta_E")


def check_drawings(tally, program):
    for name, inside in DRAWINGS.items():
        svg = f"<svg xmlns='http://www.w3.org/2000/svg' width='500' height='400' viewBox='0 0 500 400'>{inside}</svg>"
        ours = numpy.array(ask(program, [{"svg": svg, "size": SHOWN}])[0]["pixels"], float).reshape(SHOWN[1], SHOWN[0], 3)
        png = cairosvg.svg2png(bytestring=svg.encode(), output_width=1000, output_height=800, background_color="white")
        picture = Image.open(io.BytesIO(png)).convert("RGB").resize(SHOWN, Image.Resampling.BILINEAR)
        apart = numpy.abs(ours - numpy.asarray(picture, float)).max(axis=2)
        source = "CairoSVG"
        tally.within(f"drawing “{name}”, mean of all pixels", [float(apart.mean())], 1.5, "levels", source)
        tally.within("  pixels that are quite another colour", [float((apart > 60).mean() * 100)], 0.5, "%", source)


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    program, tally, chance = sys.argv[1], Tally(), numpy.random.default_rng(21)
    check_spaces(tally, program, chance)
    check_names(tally, program)
    check_survey(tally, program)
    check_differences(tally, program, chance)
    check_drawings(tally, program)
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(tally.failed > 0)


if __name__ == "__main__":
    main()
