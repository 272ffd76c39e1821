#!/usr/bin/env bash
# Makes the pages' letters anew, from any folder: Atkinson Hyperlegible of src/print/fonts, cut down to the letters and signs of
# the languages that the pages speak, as WOFF 2 (10 kB each instead of 54, without hinting, which screens of today do not need). The licence (src/print/fonts/OFL.txt) allows that; the
# notices stay in the files. Needs Python 3; fonttools and brotli are put into an environment of their own under target/.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
venv=target/letters-venv
[ -x "$venv/bin/pyftsubset" ] || {
    python3 -m venv "$venv"
    "$venv/bin/python" -m pip install --quiet fonttools==4.68.0 brotli==1.2.1
}
# ASCII, Latin-1, œ and its like, dashes, quotation marks, dots, minutes and seconds, arrows, minus
letters="U+0020-007E,U+00A0-00FF,U+0131,U+0152-0153,U+2010-2015,U+2018-201D,U+2022,U+2026,U+2032-2033,U+2190-2193,U+2212"
for weight in Regular Bold; do
    "$venv/bin/pyftsubset" "src/print/fonts/AtkinsonHyperlegible-$weight.ttf" --unicodes="$letters" --layout-features='*' --no-hinting \
        --name-IDs='0,1,2,3,4,5,6,13,14' --flavor=woff2 --output-file="src/report/letters/${weight,,}.woff2"
done
