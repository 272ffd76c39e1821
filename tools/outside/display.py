"""Compares the likeness of pictures with scikit-image: python tools/outside/display.py PROGRAM

PROGRAM is the built example `display` (cargo build --release --example display). Needs Python 3.11, numpy, pillow and scikit-image.
Pictures are drawn by lot from a fixed seed, and one is the sample's. Ends with "N passed, M failed" and exits 1 where one failed.

SSIM as in Wang, Bovik, Sheikh & Simoncelli, 2004, IEEE Transactions on Image Processing 13 (4): skimage.metrics.structural_similarity with
Gaussian weights, sigma 1.5, no sample covariance, K1 0.01, K2 0.03, of luma that is not rounded."""

import json
import subprocess
import sys

import numpy
from PIL import Image
from skimage.metrics import structural_similarity

ALLOWED = 1e-4


def ask(program, pairs):
    lines = ""
    for one, other in pairs:
        size = [one.shape[1], one.shape[0]]
        lines += json.dumps({"size": size, "one": one.flatten().tolist(), "other": other.flatten().tolist()}) + "\n"
    told = subprocess.run([program], input=lines, capture_output=True, text=True, check=True)
    return [json.loads(line) for line in told.stdout.splitlines()]


def luma(picture):
    return picture.astype(float) @ (0.299, 0.587, 0.114)


def theirs(one, other):
    return structural_similarity(
        luma(one), luma(other), data_range=255, gaussian_weights=True, sigma=1.5, use_sample_covariance=False, full=True
    )


def pairs(chance):
    sample = Image.open("samples/harbour-evening/picture.png").convert("RGB")

    def off(picture, deviation):
        return numpy.clip(picture + chance.normal(0, deviation, picture.shape), 0, 255).astype(numpy.uint8)

    for size in ((240, 192), (97, 61), (12, 11), (11, 40)):
        picture = numpy.asarray(sample.resize(size))
        yield f"sample {size[0]} x {size[1]}, noise", picture, off(picture, 20)
        yield f"sample {size[0]} x {size[1]}, turned", picture, picture[::-1, ::-1]
    picture = numpy.asarray(sample.resize((300, 240)))
    for deviation in (0.5, 5, 60):
        yield f"noise of {deviation}", picture, off(picture, deviation)
    yield "darker", picture, (picture * 0.7).astype(numpy.uint8)
    yield "shifted by 3 pixels", picture[:, 3:], picture[:, :-3]
    yield "noise and noise", off(numpy.full((80, 90, 3), 128.0), 50), off(numpy.full((80, 90, 3), 128.0), 50)
    yield "white and black", numpy.full((40, 50, 3), 255, numpy.uint8), numpy.zeros((40, 50, 3), numpy.uint8)
    yield "the same", picture, picture
    bright = numpy.clip(245 + chance.normal(0, 2, (60, 70, 3)), 0, 255).astype(numpy.uint8)
    yield "bright paper with a little grain", bright, off(bright, 2)


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    cases = list(pairs(numpy.random.default_rng(4)))
    ours = ask(sys.argv[1], [(one, other) for _, one, other in cases])
    passed = failed = 0
    for (name, one, other), own in zip(cases, ours, strict=True):
        mean, of_pixels = theirs(one, other)
        errors = (abs(own["ssim"] - mean), float(numpy.abs(numpy.reshape(own["map"], of_pixels.shape) - of_pixels).max()))
        good = max(errors) <= ALLOWED
        passed, failed = passed + good, failed + (not good)
        said = "" if good else " FAILED"
        print(f"SSIM, {name}: {own['ssim']:.4f}, mean off by {errors[0]:.1g}, a pixel by at most {errors[1]:.1g}{said}")
    print(f"allowed {ALLOWED:g}  [scikit-image structural_similarity; Wang et al. 2004]")
    print(f"{passed} passed, {failed} failed")
    sys.exit(failed > 0)


if __name__ == "__main__":
    main()
