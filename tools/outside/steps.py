"""Measures the standing card and the question cards, and works the answers out again, with other people's readers: python tools/outside/steps.py FOLDER

FOLDER is an event folder that was printed. Needs Python 3.11 and pdfplumber, pypdfium2. Each check names what it is
checked against; lengths within 0.1 mm. Ends with "N passed, M failed" and exits 1 where one failed."""

import json
import re
import sys
import tomllib
from collections import Counter
from pathlib import Path

from measure import MM_PER_POINT, Pdf, Rect
from pdf import PAPERS, SMALLEST_POINTS, TOLERANCE_MM, Tally, clear_of_edges, near, rulers_are_right

FOOT_MM = 27.0  # on letter and A4; longer on larger paper, as much as that is wider
OVERLAP_MM = 14.0
LETTER_WIDTH_MM = PAPERS["letter"][0]
CLEAR_OF_FOLD_MM = 2.0  # a fold that is so far off spares what is printed; the duplex slip that the design plans with
CARD_MM = (95.0, 60.0)
PANELS = 6


def turned_letters(page):
    """Every letter of 8 pt or more with its middle and whether it stands on its head, as its matrix says."""
    for char in page._plumbed.chars:
        x = (char["x0"] + char["x1"]) / 2 * MM_PER_POINT
        y = (char["top"] + char["bottom"]) / 2 * MM_PER_POINT
        yield char["text"], x, y, char["matrix"][0] < 0 and char["matrix"][3] < 0


def foot(width):
    return FOOT_MM * max(1.0, width / LETTER_WIDTH_MM)


def check_folds(tally, page, width, height):
    foot_mm, overlap_mm = foot(width), OVERLAP_MM * foot(width) / FOOT_MM
    wide = [line for line in page.lines if line.height < TOLERANCE_MM and line.width > width * 0.9]
    heights = sorted(line.y for line in wide)
    wanted = sorted((foot_mm - overlap_mm, foot_mm, height / 2, height - foot_mm))
    tally.check("steps: folds and the other foot's line", [
        ("number", len(heights) == len(wanted)),
        *((f"{want:.2f} mm", near(got, want)) for got, want in zip(heights, wanted)),
    ], "design: a foot, the ridge in the middle, a foot")
    if len(heights) == len(wanted):
        _, top, ridge, bottom = heights
        tally.check("steps: the card stands straight, faces and feet are equal", [
            ("faces", near(ridge - top, bottom - ridge)), ("feet", near(top, height - bottom)),
        ], "geometry: two equal sides over a base")
        # two feet over each other make the base; half of it over the side is the sine of the lean
        base = 2 * foot_mm - overlap_mm
        tally.check("steps: the base is wide enough not to fall over and narrow enough to stand up", [
            (f"{base:.0f} mm", 0.25 < base / (ridge - top) < 0.6),
        ], "common practice, no source")


def check_faces(tally, page, width, height):
    """Both faces are read upright when the card stands: seen flat, the upper one is the lower one turned by half."""
    letters, foot_mm = list(turned_letters(page)), foot(width)
    lower = [(t, x, y) for t, x, y, head in letters if not head and height / 2 < y < height - foot_mm]
    upper = [(t, x, y) for t, x, y, head in letters if head]
    face_words = [(t, x, y) for t, x, y in lower if y > height / 2 + CLEAR_OF_FOLD_MM]
    turned = Counter((t, round(width - x, 1), round(height - y, 1)) for t, x, y in upper)
    found = 0
    for text, x, y in upper:
        twin = (width - x, height - y)
        found += any(t == text and abs(a - twin[0]) < 0.2 and abs(b - twin[1]) < 0.2 for t, a, b in face_words)
    tally.check("steps: every letter of the upper face has its twin on the lower one, turned by half", [
        ("some", len(turned) > 40), ("all", found == len(upper)),
    ], "pdfplumber: the letters' matrices")
    tally.check("steps: all words of the upper face stand on their heads on the flat sheet", [
        ("in the face", all(foot_mm < y < height / 2 for _, _, y in upper)),
    ], "pdfplumber")
    numbers = Counter(t for t, _, _ in upper if t in "123456")
    tally.check("steps: six numbered steps on each face", (
        (n, numbers[str(n)] >= 1) for n in range(1, PANELS + 1)
    ), "design")


def check_clear_of_folds(tally, page, width, height):
    """Nothing but small words beside the fold lies on a fold."""
    raster_px = 6.0
    inked = page.raster(raster_px).min(axis=2) < 160
    results = []
    for fold in (foot(width), height / 2, height - foot(width)):
        for side in (-1, 1):
            row = round((fold + side * 0.8) * raster_px)
            results.append((f"{fold:.1f} {side:+d}", inked[row].mean() < 0.05))
    tally.check("steps: drawings keep clear of the folds", results, "PDFium")


def check_steps(tally, folder, paper):
    width, height, source = PAPERS[paper]
    pdf = Pdf(folder / "print" / "table-card.pdf")
    pages = list(enumerate(pdf.pages, start=1))
    tally.check(f"steps: pages are {paper}", (
        (n, near(p.size[0], width) and near(p.size[1], height)) for n, p in pages
    ), source)
    tally.check("steps: no ruler where nothing has its true size", ((n, not rulers_are_right(p)) for n, p in pages), "design")
    tally.check("steps: all cards are alike", (
        (n, re.sub(r"\d", "", p.all_words) == re.sub(r"\d", "", pages[0][1].all_words)) for n, p in pages
    ), "design")
    page = pdf.pages[0]
    check_folds(tally, page, width, height)
    check_faces(tally, page, width, height)
    check_clear_of_folds(tally, page, width, height)


def check_questions(tally, folder, paper):
    pdf = Pdf(folder / "print" / "questions.pdf")
    key, pages = pdf.pages[0], pdf.pages[1:]
    cards_of = lambda p: [r for r in p.outlines if near(r.width, CARD_MM[0]) and near(r.height, CARD_MM[1])]
    outlines = [cards_of(p) for p in pages]
    tally.check("questions: cards of 95 × 60 mm", (
        (n, len(cards) in range(4, 9)) for n, cards in enumerate(outlines, start=2)
    ), "design: four to eight cards of a rung")
    tally.check("questions: the key is a page of its own", [("no cards", not cards_of(key)), ("four rungs", len(pages) >= 4)], "design")
    inside, numbers, touching = [], [], []
    for page, cards in zip(pages, outlines):
        for card in cards:
            words = page.words_in(card)
            inside.append((words[:30], words.count("?") == 1))
            found = [c for c, r, _ in page.letters if r.x > card.x + card.width - 15 and r.y < card.y + 12
                     and card.holds(*r.centre)]
            numbers.append(int("".join(found)))
            white = Rect(card.x + 4, card.y + 4, card.width - 8, card.height - 8)
            touching.append((numbers[-1], all(white.holds(*r.centre) for _, r, _ in page.letters if card.holds(*r.centre))))
    tally.check("questions: every card asks one thing", inside, "pdfplumber")
    tally.check("questions: numbered without a gap", [("1 …", numbers == list(range(1, len(numbers) + 1)))], "design")
    tally.check("questions: words keep 4 mm from the cuts", touching, "pdfplumber; a cut 2 mm off spares them")
    for before, after in zip(outlines[0], outlines[0][1:]):
        neighbours = near(after.x, before.x + before.width) or near(after.y, before.y + before.height)
        tally.check("questions: neighbours share a cut", [("cut", neighbours)], "design")
    plan = json.loads((folder / "plan.json").read_text())
    check_key(tally, key, plan)
    check_answers(tally, list(answer_rows(Pdf(folder / "print" / "answers.pdf"))), numbers, plan)


def check_key(tally, key, plan):
    """Letters of columns above and below the picture, numbers of rows at both sides, each pencil's name."""
    letters, words = key.all_words, key.words
    names = Counter(text for text, _ in words)
    labels = {re.match(r"([A-Z]+)([0-9]+)", piece["label"]).groups() for piece in plan["pieces"]}
    columns, rows = ({label[part] for label in labels} for part in (0, 1))
    tally.check("questions: the key names columns and rows on both sides", (
        (name, names[name] >= 2) for name in columns | rows
    ), "plan.json, pdfplumber") if len(columns) <= 16 and len(rows) <= 16 else None
    tally.check("questions: the key names the pencils", (
        (pencil["name"], pencil["name"].replace(" ", "") in letters.replace(" ", "")) for pencil in plan["pencils"]
    ), "plan.json, pdfplumber")


def answer_rows(pdf):
    """Number, question, answer and working of each row of the answers, without spaces. The answer is set in bold."""
    for page in pdf.pages:
        bold = ["Bold" in char["fontname"] for char in page._plumbed.chars]
        letters = [(text, r, is_bold) for (text, r, _), is_bold in zip(page.letters, bold) if text.strip()]
        lines = sorted(line.y for line in page.lines if line.height < TOLERANCE_MM and line.width > page.size[0] * 0.8)
        for top, bottom in zip(lines, lines[1:]):
            row = [letter for letter in letters if top < letter[1].centre[1] < bottom]
            answer = [letter for letter in row if letter[2]]
            plain = [letter for letter in row if not letter[2]]
            if not answer or not plain:
                continue
            middle = answer[0][1].x
            number = [letter for letter in plain if letter[1].x + letter[1].width < QUESTIONS_FROM_MM]
            question = [letter for letter in plain if letter not in number and letter[1].x < middle]
            working = [letter for letter in plain if letter[1].x > middle]
            cells = ["".join(text for text, *_ in cell) for cell in (number, question, answer, working)]
            yield int(cells[0]), *cells[1:]


QUESTIONS_FROM_MM = 25.2  # where the answers' second column begins, whatever the language


UNITS = re.compile(r"mm²|mm|squareinches|squareinch|inches|inch|pulgadascuadradas|pulgadas|pulgada")


def equations(working):
    """Left and right sides of the sums in a working, as numbers."""
    plain = UNITS.sub("", re.sub(r"(?<=[0-9]),(?=[0-9]{3})", "", working))
    plain = re.sub(r"[^\W\d_]+", "", plain)
    for part in re.split(r"[:,;]|[.](?![0-9])", plain):
        for left, right in re.findall(r"([0-9.()×÷+−]+)=([0-9.]+%?)", part):
            code = left.translate(str.maketrans({"×": "*", "÷": "/", "−": "-"}))
            yield eval(code, {"__builtins__": {}}), float(right.rstrip("%")) / (100 if "%" in right else 1)


def named(question, pencils):
    """The numbers of the pencils that a question names: “dark blue” is not also “blue”."""
    found, rest = [], question
    for number, name in sorted(enumerate(pencils), key=lambda pair: -len(pair[1])):
        if name in rest:
            found.append(number)
            rest = rest.replace(name, "|")
    return found


def place(label):
    letters, number = re.fullmatch(r"([A-Z]+)([0-9]+)", label).groups()
    column = 0
    for letter in letters:
        column = column * 26 + ord(letter) - 64
    return column, int(number)


def check_answers(tally, rows, numbers, plan):
    tally.check("answers: one for each card", [("numbers", [row[0] for row in rows] == numbers)], "pdfplumber")
    sums = [(number, abs(left - right) < 1e-9) for number, *_, working in rows for left, right in equations(working)]
    tally.check("answers: every sum comes out", [("some", len(sums) >= 10), *sums], "Python's arithmetic")
    ends = []
    for number, _, answer, working in rows:
        *_, last = [None, *equations(working)]
        said = re.match(r"[0-9,]+", answer)
        if last and said and "%" not in answer:
            ends.append((number, last[1] == float(said[0].replace(",", ""))))
    tally.check("answers: the last sum is the answer", [("some", len(ends) >= 10), *ends], "Python's arithmetic")
    pencils = [pencil["name"].replace(" ", "") for pencil in plan["pencils"]]
    counted, plain = [], []
    for number, question, answer, _ in rows:
        wanted = named(question, pencils)
        ends = re.findall(r"(?<![A-Za-z])[A-Z]{1,2}[0-9]+", question.replace("from", " ").replace("to", " ").replace("dela", " ").replace("ala", " "))
        by_key = "picturekey" in question or "guíadelaimagen" in question
        if not wanted or not (by_key or len(ends) == 2):
            continue
        pieces = plan["pieces"]
        if len(ends) == 2:
            (first, row), (last, _) = map(place, ends)
            pieces = [p for p in pieces if place(p["label"])[1] == row and first <= place(p["label"])[0] <= last]
        holding = [p for p in pieces if all(pencil in p["pencils"] for pencil in wanted)]
        counted.append((number, str(len(holding)) == answer))
        plain += [(number, not 1e-4 < p["shares"][pencil] < 0.02) for p in pieces for pencil in wanted]
    tally.check("answers: colours counted on the card or on the key", [("some", len(counted) > 0), *counted], "plan.json")
    tally.check("answers: no colour that is asked for covers less than 2 % of a piece", plain, "plan.json")


def check_reading(tally, folder, paper):
    width, height, source = PAPERS[paper]
    for name in ("answers", "helpers", "guide", "questions", "table-card"):
        pages = list(enumerate(Pdf(folder / "print" / f"{name}.pdf").pages, start=1))
        tally.check(f"{name}: no words below 8 pt", (
            (n, all(size >= SMALLEST_POINTS - 1e-3 for _, _, size in p.letters)) for n, p in pages
        ), "design")
        tally.check(f"{name}: nothing in the unprintable edge", ((n, clear_of_edges(p)) for n, p in pages),
                    "6.35 mm: common practice, no source")
        tally.check(f"{name}: no letter that the typeface lacks, no sentence without its words or values", (
            (n, "\ufffd" not in p.all_words and "(cid:" not in p.all_words and "{" not in p.all_words
             and not re.search(r"\[[a-z]+-[a-z0-9-]+\]", p.all_words))
            for n, p in pages
        ), "pdfplumber")
    for name, most in (("helpers", 4), ("guide", 6)):
        count = len(Pdf(folder / "print" / f"{name}.pdf").pages)
        tally.check(f"{name}: one page a station or part", [(count, count == most)], "design")


def main(folder):
    folder = Path(folder)
    paper = tomllib.loads((folder / "event.toml").read_text()).get("print", {}).get("paper", "letter")
    tally = Tally()
    check_steps(tally, folder, paper)
    check_questions(tally, folder, paper)
    check_reading(tally, folder, paper)
    print(f"{tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    sys.exit(main(sys.argv[1]))
