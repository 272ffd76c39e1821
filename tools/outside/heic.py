"""Compares HEIC and wide-gamut photos as this program opens them with libheif's and LittleCMS's pixels: python tools/outside/heic.py PROGRAM FOLDER

PROGRAM is the built example `photo` (cargo build --release --example photo); files are left in FOLDER. Needs Python 3.11, numpy, pillow and
pillow-heif (libheif with x265 and libde265). Pictures are drawn by lot from a fixed seed and written by libheif: 8 and 10 bits, chroma
4:2:0, 4:2:2 and 4:4:4, grey, with a thumbnail, with alpha, turned and mirrored by irot and imir (EXIF orientations 1 to 8), several in one file.
Brightness (ITU-R BT.601) is compared: with chroma of half the size, decoders spread colours differently, and the reader looks at brightness.
Damaged files get a sentence. Photos in Display P3, as phones store them (JPEG, PNG, WebP, TIFF with an ICC profile), are compared with what
LittleCMS makes of them in sRGB. Ends with "N passed, M failed" and exits 1 where one failed."""

import io
import pathlib
import struct
import subprocess
import sys

import numpy
import pillow_heif
from PIL import Image, ImageCms

SIZE = (643, 481)
# Grey levels, mean and 999 of 1000. Where chroma is as fine as brightness, nothing but rounding is left. Where it is coarser, decoders spread
# it differently, and colours that leave the range are cut off at the edges of strong colours: few pixels, and the mean stays small.
FINE_MEAN, FINE_MOST = 0.01, 1.0
COARSE_MEAN, COARSE_MOST = 0.6, 12.0
FINE = ("8 bits, 4:4:4", "grey")


def drawing(chance):
    """Strokes and areas in a few colours, a checkerboard as fine as a code's modules."""
    picture = numpy.full((SIZE[1], SIZE[0], 3), 235, numpy.uint8)
    y, x = numpy.mgrid[: SIZE[1], : SIZE[0]]
    for _ in range(40):
        cx, cy, r = chance.uniform((0, 0, 10), (SIZE[0], SIZE[1], 90))
        picture[(x - cx) ** 2 + (y - cy) ** 2 < r * r] = chance.integers(20, 240, 3)
    board = ((x // 3 + y // 3) % 2 * 200 + 25).astype(numpy.uint8)
    picture[300:400, 400:520] = board[300:400, 400:520, None]
    return Image.fromarray(picture)


def oriented(picture, orientation, path):
    exif = Image.Exif()
    exif[0x0112] = orientation
    picture.save(path, quality=90, exif=exif.tobytes())


def files(folder, chance):
    """Name and path of every file."""
    picture = drawing(chance)
    path = lambda name: folder / f"{name}.heic"
    picture.save(path("plain"), quality=90)
    yield "8 bits, 4:2:0", path("plain")
    for chroma in (422, 444):
        picture.save(path(f"chroma-{chroma}"), quality=90, chroma=chroma)
        yield f"8 bits, {chroma // 100}:{chroma // 10 % 10}:{chroma % 10}", path(f"chroma-{chroma}")
    picture.convert("L").save(path("grey"), quality=90)
    yield "grey", path("grey")
    wide = (numpy.asarray(picture).astype(numpy.uint16) * 257).tobytes()
    pillow_heif.from_bytes(mode="RGB;16", size=picture.size, data=wide).save(path("ten"), quality=90)
    yield "10 bits", path("ten")
    alpha = picture.copy()
    alpha.putalpha(255)
    alpha.save(path("alpha"), quality=90)
    yield "with alpha", path("alpha")
    thumbnail = pillow_heif.from_pillow(picture)
    thumbnail.info["thumbnails"] = [128]
    thumbnail.save(path("thumbnail"), quality=90)
    yield "with a thumbnail", path("thumbnail")
    several = pillow_heif.from_pillow(picture)
    several.add_from_pillow(drawing(chance))
    several.save(path("several"), quality=90, primary_index=1)
    yield "two pictures, the second one the primary", path("several")
    for orientation in range(1, 9):
        oriented(picture, orientation, path(f"turned-{orientation}"))
        yield f"orientation {orientation}", path(f"turned-{orientation}")


def display_p3():
    """A matrix profile (ICC.1:2022) with the primaries of SMPTE EG 432-1 adapted to D50 by Bradford, and sRGB's curve."""
    fixed = lambda *values: b"".join(struct.pack(">i", round(value * 65536)) for value in values)
    xyz = lambda *values: b"XYZ \0\0\0\0" + fixed(*values)
    curve = b"para\0\0\0\0" + struct.pack(">HH", 3, 0) + fixed(2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045)
    text = lambda words: b"mluc\0\0\0\0" + struct.pack(">II2s2sII", 1, 12, b"en", b"US", 2 * len(words), 28) + words.encode("utf-16-be")
    tags = [
        (b"desc", text("wide gamut")),
        (b"cprt", text("none")),
        (b"wtpt", xyz(0.9642, 1.0, 0.8249)),
        (b"rXYZ", xyz(0.51512, 0.24120, -0.00105)),
        (b"gXYZ", xyz(0.29198, 0.69225, 0.04189)),
        (b"bXYZ", xyz(0.15710, 0.06657, 0.78407)),
        *((name, curve) for name in (b"rTRC", b"gTRC", b"bTRC")),
    ]
    at = 128 + 4 + 12 * len(tags)
    table, body = struct.pack(">I", len(tags)), b""
    for name, data in tags:
        data += bytes(-len(data) % 4)
        table += name + struct.pack(">II", at + len(body), len(data))
        body += data
    head = struct.pack(">I4sI4s4s4s", at + len(body), b"none", 0x04300000, b"mntr", b"RGB ", b"XYZ ")
    head += struct.pack(">6H4s", 2026, 1, 1, 0, 0, 0, b"acsp") + bytes(28) + fixed(0.9642, 1.0, 0.8249)
    return head + bytes(128 - len(head)) + table + body


def wide_gamut(folder):
    """Name and path of photos in Display P3, and the sRGB pixels that LittleCMS makes of them."""
    profile = display_p3()
    picture = drawing(numpy.random.default_rng(432))
    p3, srgb = ImageCms.ImageCmsProfile(io.BytesIO(profile)), ImageCms.createProfile("sRGB")
    for ending, more in (("jpg", {"quality": 92, "subsampling": 0}), ("png", {}), ("webp", {"lossless": True}), ("tif", {})):
        path = folder / f"wide.{ending}"
        picture.save(path, icc_profile=profile, **more)
        yield f"Display P3 in {ending}", path, ImageCms.profileToProfile(Image.open(path).convert("RGB"), p3, srgb, ImageCms.Intent.RELATIVE_COLORIMETRIC)


def brightness(picture):
    return numpy.asarray(picture.convert("RGB")).astype(float) @ (0.299, 0.587, 0.114)


def libheif(path):
    """The primary picture, turned by irot and imir as libheif does it."""
    file = pillow_heif.open_heif(path, convert_hdr_to_8bit=True)
    return file[file.primary_index].to_pillow()


def main(program, folder):
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    passed = failed = 0

    def check(name, holds, seen=""):
        nonlocal passed, failed
        passed, failed = passed + bool(holds), failed + (not holds)
        print(f"{'ok    ' if holds else 'FAILED'} {name}{'' if holds else f': {seen}'}")

    opened = lambda path: subprocess.run(
        [program, path, path.with_suffix(".png")], capture_output=True, text=True, timeout=60, check=True
    ).stdout.strip()
    for name, path in files(folder, numpy.random.default_rng(23008)):
        said = opened(path)
        other = libheif(path)
        if said != f"{other.width} {other.height}":
            check(f"{name}: the size is libheif's", False, f"{said}, {other.size}")
            continue
        away = numpy.abs(brightness(Image.open(path.with_suffix(".png"))) - brightness(other))
        mean, most = away.mean(), numpy.percentile(away, 99.9)
        mean_most, most_most = (FINE_MEAN, FINE_MOST) if name in FINE else (COARSE_MEAN, COARSE_MOST)
        check(f"{name}: {mean:.3f} grey levels from libheif, {most:.2f} at most in 999 of 1000", mean <= mean_most and most <= most_most, f"{mean}, {most}")

    for name, path, other in wide_gamut(folder):
        into = folder / f"{path.name}-opened.png"
        subprocess.run([program, path, into], check=True, capture_output=True)
        seen = Image.open(into)
        away = numpy.abs(numpy.asarray(seen).astype(float) - numpy.asarray(other))
        plain = numpy.abs(numpy.asarray(Image.open(path).convert("RGB")).astype(float) - numpy.asarray(other)).mean()
        mean, most = away.mean(), numpy.percentile(away, 99.9)
        check(f"{name}: {mean:.3f} levels from LittleCMS, {most:.2f} at most in 999 of 1000 ({plain:.1f} as it is coded)", mean <= 0.6 and most <= 2 and plain > 2, f"{mean}, {most}")

    whole = (folder / "plain.heic").read_bytes()
    damaged = folder / "damaged.heic"
    cuts = (("cut in the middle", len(whole) // 2, "end of this photo"), ("cut in the container", 200, "end of this photo"), ("only its name", 24, "damaged"))
    for name, end, wanted in cuts:
        damaged.write_bytes(whole[:end])
        said = opened(damaged)
        check(f"{name}: {said}", wanted in said, wanted)
    drawing(numpy.random.default_rng(1)).save(folder / "other.avif")
    check("AVIF is named", "AVIF" in opened(folder / "other.avif"))
    print(f"{passed} passed, {failed} failed")
    return failed == 0


if __name__ == "__main__":
    pillow_heif.register_heif_opener()
    sys.exit(0 if main(*sys.argv[1:]) else 1)
