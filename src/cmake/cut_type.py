#!/usr/bin/env python3
"""Cuts a font to the characters that the program shows: cut_type.py FONT OUT FONTS.CPP

The characters stand in FONTS.CPP as pairs of first and last. A font that was changed may not carry the reserved name of
the original (SIL Open Font License 1.1, condition 3), so it gets a name of its own; author and license stay in it.
"""
import pathlib
import re
import sys

from fontTools import subset, ttLib
from fontTools.ttLib.tables._c_m_a_p import CmapSubtable

OUR_NAME = "Foldwright Type"
# Of the table name: what the font calls itself. Source: the OpenType specification, name IDs.
NAMING = {1, 3, 4, 6, 16, 18, 21, 25}


def shown_characters(source):
    body = re.search(r"shown_characters\(\) \{(.*?)\n\}", source, re.DOTALL).group(1)
    pairs = re.findall(r"\{(0x[0-9A-Fa-f]+), (0x[0-9A-Fa-f]+)\}", body)
    return [code for first, last in pairs for code in range(int(first, 16), int(last, 16) + 1)]


def add_whole_map(font):
    """Cutting leaves no map of format 12 where it is not needed; pages to print read that one (src/paper/font.cpp)."""
    if any(map.format == 12 for map in font["cmap"].tables):
        return
    whole = CmapSubtable.newSubtable(12)
    whole.platformID, whole.platEncID, whole.language = 3, 10, 0
    whole.format, whole.reserved, whole.length, whole.nGroups = 12, 0, 0, 0
    whole.cmap = dict(font.getBestCmap())
    font["cmap"].tables.append(whole)


def main(font_path, out_path, source_path):
    font = ttLib.TTFont(font_path)
    options = subset.Options(layout_features=[], hinting=False, name_IDs=["*"], notdef_outline=True)
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=shown_characters(pathlib.Path(source_path).read_text(encoding="utf-8")))
    cutter.subset(font)
    add_whole_map(font)
    for record in font["name"].names:
        if record.nameID in NAMING:
            text = OUR_NAME.replace(" ", "") if record.nameID == 6 else OUR_NAME
            font["name"].setName(text, record.nameID, record.platformID, record.platEncID, record.langID)
    pathlib.Path(out_path).parent.mkdir(parents=True, exist_ok=True)
    font.save(out_path)


if __name__ == "__main__":
    if len(sys.argv) != 4:
        sys.exit(__doc__)
    main(*sys.argv[1:])
