"""Makes the typeface of prints from Atkinson Hyperlegible: python tools/plain_zero.py

Children learn their digits from what hangs in the room, and a zero there has no stroke. So the zero is plain, and the feature `zero` of
OpenType gives the one with a stroke, which labels need: O10 is not 010. The licence (src/print/fonts/OFL.txt) asks that a changed typeface
has another name. Needs Python 3.11 and fonttools; writes src/print/fonts/EverysquareSans-Regular.ttf and -Bold.ttf, the same bytes each time."""

from copy import deepcopy
from pathlib import Path

from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.pens.reverseContourPen import ReverseContourPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont
from fontTools.ttLib.tables import otTables as tables

FONTS = Path(__file__).resolve().parent.parent / "src" / "print" / "fonts"
NAME = "Everysquare Sans"
ZEROS = ("zero", "zero.tf")
NAMED = {1, 3, 4, 6, 16, 17, 21, 22, 25}  # what a font is called; whose work it is stays as it is said
WHEN = 3_800_000_000  # seconds since 1904; a font says when it was changed


def contours(font, name):
    """The contours of a glyph, each a list of what a pen is told."""
    pen = DecomposingRecordingPen(font.getGlyphSet())
    font.getGlyphSet()[name].draw(pen)
    found = []
    for step in pen.value:
        if step[0] == "moveTo":
            found.append([])
        found[-1].append(step)
    return found


def box(contour):
    points = [point for _, points in contour for point in points if point is not None]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)


def plain(font, name):
    """The outer contour, and within it the same one as large as what the stroke divides."""
    outer, *inner = contours(font, name)
    left, bottom, right, top = (edge(values) for edge, values in zip((min, min, max, max), zip(*map(box, inner))))
    x, y, far_x, far_y = box(outer)

    def scaled(point):
        return (
            round(left + (point[0] - x) * (right - left) / (far_x - x)),
            round(bottom + (point[1] - y) * (top - bottom) / (far_y - y)),
        )

    pen = TTGlyphPen(None)
    for step, points in outer:
        getattr(pen, step)(*points)
    # the other way round, so that it is a hole
    hole = TTGlyphPen(None)
    for step, points in outer:
        getattr(hole, step)(*[point if point is None else scaled(point) for point in points])
    reverse = ReverseContourPen(pen)
    hole.glyph().draw(reverse, None)
    return pen.glyph()


def main():
    for style in ("Regular", "Bold"):
        font = TTFont(FONTS / f"AtkinsonHyperlegible-{style}.ttf", recalcTimestamp=False)
        order = font.getGlyphOrder()
        glyphs = {name: plain(font, name) for name in ZEROS}
        for name in ZEROS:
            slashed = f"{name}.slash"
            order.append(slashed)
            font["glyf"].glyphs[slashed] = deepcopy(font["glyf"][name])
            font["hmtx"].metrics[slashed] = font["hmtx"].metrics[name]
            font["glyf"].glyphs[name] = glyphs[name]
        font.setGlyphOrder(order)
        font["glyf"].glyphOrder = order
        font["maxp"].numGlyphs = len(order)
        add_feature(font)
        for record in (own for own in font["name"].names if own.nameID in NAMED):
            said = record.toUnicode()
            for former in ("Atkinson Hyperlegible", "AtkinsonHyperlegible"):
                said = said.replace(former, NAME if " " in former else NAME.replace(" ", ""))
            record.string = said
        for table in ("fpgm", "prep", "cvt ", "DSIG"):
            if table in font:
                del font[table]  # instructions for the glyphs as they were
        for name in font.getGlyphOrder():
            font["glyf"][name].removeHinting()
        font["head"].modified = WHEN
        font.save(FONTS / f"EverysquareSans-{style}.ttf")


def add_feature(font):
    """Adds the feature `zero` to every script and language of the font."""
    gsub = font["GSUB"].table
    lookup, single = tables.Lookup(), tables.SingleSubst()
    single.mapping = {name: f"{name}.slash" for name in ZEROS}
    lookup.LookupType, lookup.LookupFlag, lookup.SubTable, lookup.SubTableCount = 1, 0, [single], 1
    gsub.LookupList.Lookup.append(lookup)
    gsub.LookupList.LookupCount += 1
    feature, record = tables.Feature(), tables.FeatureRecord()
    feature.FeatureParams, feature.LookupListIndex, feature.LookupCount = None, [gsub.LookupList.LookupCount - 1], 1
    record.FeatureTag, record.Feature = "zero", feature
    gsub.FeatureList.FeatureRecord.append(record)  # "zero" sorts last
    gsub.FeatureList.FeatureCount += 1
    last = gsub.FeatureList.FeatureCount - 1
    for script in gsub.ScriptList.ScriptRecord:
        systems = [script.Script.DefaultLangSys] + [own.LangSys for own in script.Script.LangSysRecord]
        for system in filter(None, systems):
            system.FeatureIndex.append(last)
            system.FeatureCount = len(system.FeatureIndex)


if __name__ == "__main__":
    main()
