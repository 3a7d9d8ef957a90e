#!/usr/bin/env python3
"""Puts the page into one HTML file: page.py ROOM PROGRAM.js OUT.html

ROOM holds page.html, page.css and page.js; beside PROGRAM.js lies its .wasm. The page asks for nothing from outside: its
content security policy lets run only what is in it, known by the hashes of its texts.
"""
import base64
import gzip
import hashlib
import pathlib
import sys


def quoted_hash(text):
    return "'sha256-" + base64.b64encode(hashlib.sha256(text.encode()).digest()).decode() + "'"


def main(room, program, out):
    room, program = pathlib.Path(room), pathlib.Path(program)
    style = (room / "page.css").read_text(encoding="utf-8")
    scripts = [program.read_text(encoding="utf-8"), (room / "page.js").read_text(encoding="utf-8")]
    for script in scripts:
        if "</script" in script or "<!--" in script:  # HTML: the second one hides the end of a script
            sys.exit("a script of the page would end too early, or not at all")
    wasm = gzip.compress(program.with_suffix(".wasm").read_bytes(), 9, mtime=0)
    policy = ("default-src 'none'; img-src blob: data:; script-src 'wasm-unsafe-eval' " +
              " ".join(quoted_hash(script) for script in scripts) + "; style-src " + quoted_hash(style))
    page = (room / "page.html").read_text(encoding="utf-8")
    parts = {"@POLICY@": policy, "@STYLE@": style, "@RUNTIME@": scripts[0], "@PAGE@": scripts[1],
             "@PROGRAM@": base64.b64encode(wasm).decode()}
    for mark, text in parts.items():
        if page.count(mark) != 1:
            sys.exit(f"page.html should have {mark} once")
        before, after = page.split(mark)
        page = before + text + after
    pathlib.Path(out).write_text(page, encoding="utf-8", newline="\n")


if __name__ == "__main__":
    if len(sys.argv) != 4:
        sys.exit(__doc__)
    main(*sys.argv[1:])
