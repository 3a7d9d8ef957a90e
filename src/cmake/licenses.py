#!/usr/bin/env python3
"""Writes our license and those of all that becomes part of the program into one text: licenses.py OUT LICENSE

The program may be copied anywhere, without the packages whose texts these are. Of Boost, whose page lists two million
bytes for every library of it, the one license of its headers is taken.
"""
import pathlib
import sys

PACKAGES = ["libglfw3-dev", "libimgui-dev", "libglm-dev", "libboost1.74-dev", "nlohmann-json3-dev", "libcli11-dev",
            "libcairo2-dev", "fonts-sil-andika", "python3-glad"]
LARGEST = 100_000


def own_part(text):
    """A long page's paragraph of the Boost Software License; a short page whole."""
    if len(text) < LARGEST:
        return text
    paragraph, found = [], False
    for line in text.splitlines():
        found = found or line == "License: BSL-1.0"
        if found and paragraph and not line.startswith(" "):
            if len(paragraph) > 5:
                break
            paragraph, found = [], line == "License: BSL-1.0"
        if found:
            paragraph.append(line)
    return "\n".join(paragraph) + "\n"


def main(target, ours):
    out = ["Foldwright\n==========\n\n" + pathlib.Path(ours).read_text(encoding="utf-8")]
    for package in PACKAGES:
        page = pathlib.Path("/usr/share/doc", package, "copyright")
        if page.exists():
            text = own_part(page.read_text(encoding="utf-8"))
        else:
            print(f"warning: the license of {package} was not found; foldwright --licenses will say so", file=sys.stderr)
            text = f"The license is in the package {package}; it was not there when this program was built.\n"
        out.append(f"{package}\n{'=' * len(package)}\n\n{text}")
    pathlib.Path(target).write_text("\n\n".join(out), encoding="utf-8")


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(sys.argv[1], sys.argv[2])
