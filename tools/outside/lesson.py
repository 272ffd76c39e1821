"""Works every number of the lesson out again: python tools/outside/lesson.py PROGRAM OUT

Needs Python 3.11 and pdfplumber, pypdfium2. From plan.json it takes the grid and each piece's level; from event.toml the unit. Ends with
"N passed, M failed" and exits 1 where one failed."""

import json
import re
import shutil
import subprocess
import sys
from fractions import Fraction
from pathlib import Path

from measure import Pdf
from pdf import Tally

PICTURE = "samples/harbour-evening/picture.png"
INCH = Fraction(254, 10)
# columns, rows, side of a piece and of a square in mm, units, paper
EVENTS = [
    (10, 8, "25.4", "127", "inch", "letter"),
    (6, 5, "25.4", "101.6", "inch", "letter"),
    (10, 8, "20", "105", "inch", "a4"),
    (10, 8, "25", "125", "mm", "a4"),
]


def length(mm, inches):
    """Whole eighths of an inch where it is so exactly, else millimetres to a tenth."""
    eighths = mm / INCH * 8
    if inches and eighths.denominator == 1:
        whole, part = divmod(int(eighths), 8)
        fraction = Fraction(part, 8)
        said = f"{fraction.numerator}/{fraction.denominator}" if part else ""
        return " ".join(word for word in (str(whole) if whole or not part else "", said) if word) + " in"
    tenths = Fraction(round(float(mm) * 10), 10)
    return f"{float(tenths):.1f}".removesuffix(".0") + " mm"


def number(value):
    return f"{float(value):.2f}".rstrip("0").rstrip(".")


def event(program, out, columns, rows, piece, square, units, paper):
    folder = out / f"{columns}x{rows}-{piece}-{square}-{units}"
    shutil.rmtree(folder, ignore_errors=True)
    typed = ["new", str(folder), "--picture", PICTURE, "--columns", str(columns), "--rows", str(rows), "--name", "Harbour week",
             "--tag", "K7M", "--paper", paper]
    subprocess.run([program, *typed], check=True, capture_output=True)
    toml = (folder / "event.toml").read_text()
    for key, value in (("piece_mm", piece), ("square_mm", square), ("units", f'"{units}"')):
        toml, count = re.subn(rf"(?m)^{key} = .*$", f"{key} = {value}", toml)
        assert count == 1, (key, toml)
    (folder / "event.toml").write_text(toml)
    subprocess.run([program, "print", str(folder)], check=True, capture_output=True)
    subprocess.run([program, "print", str(folder), "lesson"], check=True, capture_output=True)
    return folder


def check(tally, folder, columns, rows, piece, square, inches):
    plan = json.loads((folder / "plan.json").read_text())
    levels = [p["level"] for p in plan["pieces"]]
    minutes = {level["level"]: level["minutes_a_piece"] for level in plan["levels"]}
    scale, squares = square / piece, columns * rows
    say = lambda mm: length(mm, inches)
    line, other = (INCH / 2, INCH * 3 / 4) if inches else (Fraction(10), Fraction(15))
    count = lambda *own: sum(level in own for level in levels)
    in_time = sum(minutes[level] <= 20 for level in levels)
    wanted = [
        f"cut into {squares} pieces, {say(piece)} on each side",
        f"on a square {say(square)} on each side. The scale factor is {number(scale)}.",
        f"times {number(scale)} and divided by {number(scale)}",
        f"lengths become {number(scale)} times as long, and areas {number(scale * scale)} times as large",
        f"{columns} columns and {rows} rows: {squares} pieces",
        f"{number(scale)}: {say(piece)} becomes {say(square)}",
        f"piece {say(4 * piece)}, square {say(4 * square)}: {number(scale)} times as long",
        f"a square has {number(scale * scale)} times the area of its piece",
        f"one square is 1/{squares} of the mural",
        f"one color and easy: {count('plain', 'easy')}",
        f"medium: {count('medium')}",
        f"hard: {count('hard')}",
        f"A line on a piece is {say(line)} long.",
        f"Another line is {say(other * scale)} long on the square.",
        f"Answer: {say(line * scale)} on the square, because {say(line)} × {number(scale)}. "
        f"{say(other)} on the piece, because {say(other * scale)} ÷ {number(scale)}.",
        f"{number(scale * scale)}, because {number(scale)} × {number(scale)} = {number(scale * scale)}.",
        f"{say(4 * piece)} and {say(4 * square)}.",
        f"1/{squares}, because there are {squares} squares.",
        f"{say(columns * square)} wide and {say(rows * square)} tall.",
        f"Its side becomes {say(3 * piece)}, its area 9 times as large.",
        f"There are {in_time} of them." if in_time > 1 else "take longer than 20 minutes",
    ]
    pdf = Pdf(folder / "print" / "lesson.pdf")
    tally.check(f"lesson: four pages ({folder.name})", [("pages", len(pdf.pages) == 4)], "design")
    # words of a table's cells wrap: blanks say nothing
    said = re.sub(r"\s", "", "".join(page.all_words for page in pdf.pages))
    tally.check(f"lesson: every number ({folder.name})", ((want, re.sub(r"\s", "", want) in said) for want in wanted),
                "worked out anew with fractions")


def main():
    program, out = sys.argv[1], Path(sys.argv[2])
    out.mkdir(parents=True, exist_ok=True)
    tally = Tally()
    for columns, rows, piece, square, units, paper in EVENTS:
        folder = event(program, out, columns, rows, piece, square, units, paper)
        check(tally, folder, columns, rows, Fraction(piece), Fraction(square), units == "inch")
    print(f"{tally.passed} passed, {tally.failed} failed")
    sys.exit(1 if tally.failed else 0)


if __name__ == "__main__":
    main()
