"""Checks the spelling of all sentences for people with Hunspell: python tools/outside/spelling.py PROGRAM

PROGRAM is the built example `sentences` (cargo build --release --example sentences). Needs Python 3.11 and Debian's hunspell with
hunspell-en-us, hunspell-en-gb and hunspell-es. English is read against en_US, British English (en-GB) against en_GB, Spanish against es_MX,
because its words are Mexico's, or es_ES where that is all there is. Ends with "N passed, M failed" and exits 1 where one failed.

Passed over by rule: the program's name, codes of languages, options, names of files and addresses, settings, what has a figure in it
(labels, sizes, hexadecimal numbers), single capitals, names with a capital inside (WebP), and in a translation what stands in the English
sentence of the same id as well (commands, values of options, abbreviations). Spanish imperatives with a pronoun (escríbala), which the
dictionary lacks, are taken apart. Everything else that a dictionary does not know stands in spelling-exceptions.txt with its reason; an
exception that nothing needs fails."""

import json
import re
import subprocess
import sys
from collections import Counter
from pathlib import Path

DICTIONARIES = {"en": ["en_US"], "en-GB": ["en_GB"], "es": ["es_MX", "es_ES"]}
MISSPELT = {"en": "recieve", "en-GB": "recieve", "es": "imajen"}
EXCEPTIONS = Path(__file__).with_name("spelling-exceptions.txt")

BETWEEN = re.compile(r"[\s“”\"(),;:!?¡¿…×÷→=|·%☐±²−–]+")
AT_ENDS = ".'-[]*{}$+<>/\\#°✕↻↺"
PRONOUN = re.compile(r"(?:se|me|nos)?(?:me|nos|lo|la|los|las|le|les)$")
ACCENTS = str.maketrans("áéíóú", "aeiou")


def is_name(word):
    """Whether a word is typed or read as it is: an option, a file, an address, a setting, a label, a number, an identifier."""
    return (
        word == "everysquare"
        or word in DICTIONARIES
        or "--" in word
        or any(sign in word for sign in "/\\_@")
        or re.search(r"\w[.]\w|\d", word)
        or re.fullmatch(r"[A-Z]", word)
        or re.search(r"[a-z][A-Z]", word)
    )


def words(text):
    text = re.sub(r"https?://\S+", " ", text.replace("’", "'"))
    found = (word.strip(AT_ENDS) for word in BETWEEN.split(text) if not word.startswith("--"))
    return [word for word in found if re.search(r"[^\W\d]", word) and not is_name(word)]


def unknown(dictionary, some):
    """Which of some words a dictionary does not know. Parts of a word with a hyphen are looked up one by one."""
    parts = {part for word in some for part in word.split("-") if part}
    asked = "\n".join(sorted(parts))
    said = subprocess.run(["hunspell", "-i", "utf-8", "-d", dictionary, "-l"], input=asked, capture_output=True, text=True, timeout=300, check=True)
    wrong = set(said.stdout.split("\n"))
    return {word for word in some if any(part in wrong for part in word.split("-"))}


def stem_of_imperative(word):
    """The verb of an imperative with a pronoun, if the accent is where these have it: escríbala, pídaselo; but delo."""
    pronoun = PRONOUN.search(word)
    stem = word[: pronoun.start()] if pronoun else ""
    # said on the last syllable but one of the stem, which is the third of the word or further from its end: so it has an accent
    return stem.translate(ACCENTS) if re.search(r"[áéíóú][^áéíóú]*[aeiou]n?$", stem) else None


def installed():
    said = subprocess.run(["hunspell", "-D"], stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=60)
    return {Path(line.strip()).name for line in (said.stdout + said.stderr).splitlines()}


def exceptions():
    """By language, the words with their reasons."""
    own = {}
    for number, line in enumerate(EXCEPTIONS.read_text(encoding="utf-8").splitlines(), 1):
        if not line or line.startswith("#"):
            continue
        parts = line.split(None, 2)
        if len(parts) < 3:
            sys.exit(f"{EXCEPTIONS.name}, line {number}: a language, a word and the reason")
        own.setdefault(parts[0], {})[parts[1]] = parts[2]
    return own


def plain_forms(some):
    return {form for word in some for form in (word, word.lower())}


def check(language, lines, dictionary, excepted):
    """Looks up a language's words; gives its checks and which exceptions were needed."""
    counted, where = Counter(), {}
    for line in lines:
        for word in words(line["text"]):
            if language == "en" or language.startswith("en-") or word not in line["english"]:
                counted[word] += 1
                where.setdefault(word, line)
    wrong = unknown(dictionary, set(counted))
    needed = {word for word in excepted if word in plain_forms(wrong)}
    wrong = {word for word in wrong if not plain_forms([word]) & needed}
    if language == "es":
        stems = {word: stem_of_imperative(word.lower()) for word in wrong}
        unknown_stems = unknown(dictionary, {stem for stem in stems.values() if stem})
        wrong = {word for word, stem in stems.items() if not stem or stem in unknown_stems}
    verdict = f", {len(wrong)} FAILED" if wrong else ""
    print(f"{language} against {dictionary}: {len(counted)} words, {sum(counted.values())} times, {len(needed)} exceptions{verdict}  [hunspell]")
    for word in sorted(wrong):
        print(f"    {word}: {where[word]['id']}: {where[word]['text']}")
    missed = unknown(dictionary, {MISSPELT[language]}) == {MISSPELT[language]}
    return [(f"{language}: {word}", word not in wrong) for word in counted] + [(f"{language}: a misspelt word is found", missed)], needed


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    said = subprocess.run([sys.argv[1]], capture_output=True, text=True, timeout=300, check=True).stdout
    lines = [json.loads(line) for line in said.splitlines()]
    english = {}
    for line in lines:
        if line["language"] == "en":
            english.setdefault(line["id"], set()).update(words(line["text"]))
    checks, own, there, needed = [], exceptions(), installed(), {}
    for language in dict.fromkeys(line["language"] for line in lines):
        dictionary = next((name for name in DICTIONARIES.get(language, []) if name in there), None)
        if not dictionary:
            print(f"{language}: no dictionary of {DICTIONARIES.get(language, 'this language')} is installed  FAILED")
            checks.append((language, False))
            continue
        of_language = [line | {"english": english.get(line["id"], set())} for line in lines if line["language"] == language]
        # British English may need what American English needs
        lists = [name for name in own if language == name or language.startswith(name + "-")]
        more, used = check(language, of_language, dictionary, {word for name in lists for word in own[name]})
        checks += more
        for name in lists:
            needed.setdefault(name, set()).update(used & own[name].keys())
    for name, some in own.items():
        for word in some:
            is_needed = word in needed.get(name, set())
            checks.append((f"{EXCEPTIONS.name}: {name} {word}", is_needed))
            if not is_needed:
                print(f"{EXCEPTIONS.name}: {name} {word}: nothing needs this any more  FAILED")
    failed = sum(not holds for _, holds in checks)
    print(f"{len(checks) - failed} passed, {failed} failed")
    sys.exit(failed > 0)


if __name__ == "__main__":
    main()
