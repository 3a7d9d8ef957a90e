#!/usr/bin/env python3
"""Puts the page together: page.py ROOM PROGRAM.js OUT.html FOLDER

ROOM holds page.html, page.css, page.js and what goes with them; beside PROGRAM.js lies its .wasm. OUT.html is the page as one
file, which asks for nothing from outside: its content security policy lets run only what is in it, known by the hashes of
its texts. FOLDER gets the same page for a web server: its program in a file of its own, and kept by the browser for days
without a network.
"""
import base64
import gzip
import hashlib
import pathlib
import sys


def quoted_hash(text):
    return "'sha256-" + base64.b64encode(hashlib.sha256(text.encode()).digest()).decode() + "'"


def put_in(page, parts):
    for mark, text in parts.items():
        if page.count(mark) != 1:
            sys.exit(f"page.html should have {mark} once")
        before, after = page.split(mark)
        page = before + text + after
    return page


def write(path, text):
    path.write_text(text, encoding="utf-8", newline="\n")


def main(room, program, out, folder):
    room, program, folder = pathlib.Path(room), pathlib.Path(program), pathlib.Path(folder)
    page = (room / "page.html").read_text(encoding="utf-8")
    style = (room / "page.css").read_text(encoding="utf-8")
    scripts = [program.read_text(encoding="utf-8"), (room / "page.js").read_text(encoding="utf-8")]
    for script in scripts:
        if "</script" in script or "<!--" in script:  # HTML: the second one hides the end of a script
            sys.exit("a script of the page would end too early, or not at all")
    wasm = program.with_suffix(".wasm").read_bytes()
    policy = ("default-src 'none'; img-src blob: data:; script-src 'wasm-unsafe-eval' " +
              " ".join(quoted_hash(script) for script in scripts) + "; style-src " + quoted_hash(style))
    parts = {"@STYLE@": style, "@RUNTIME@": scripts[0], "@PAGE@": scripts[1]}
    packed = base64.b64encode(gzip.compress(wasm, 9, mtime=0)).decode()
    write(pathlib.Path(out), put_in(page, {**parts, "@POLICY@": policy, "@MANIFEST@": "", "@PROGRAM@": packed}))

    folder.mkdir(parents=True, exist_ok=True)
    hosted = put_in(page, {
        **parts, "@PROGRAM@": "", "@MANIFEST@": '<link rel="manifest" href="foldwright.webmanifest">',
        "@POLICY@": policy + "; connect-src 'self'; manifest-src 'self'; worker-src 'self'"})
    write(folder / "index.html", hosted)
    (folder / "foldwright.wasm").write_bytes(wasm)
    manifest = (room / "foldwright.webmanifest").read_text(encoding="utf-8")
    write(folder / "foldwright.webmanifest", manifest)
    build = hashlib.sha256(wasm + (hosted + manifest).encode()).hexdigest()[:16]
    write(folder / "offline.js", put_in((room / "offline.js").read_text(encoding="utf-8"), {"@BUILD@": build}))


if __name__ == "__main__":
    if len(sys.argv) != 5:
        sys.exit(__doc__)
    main(*sys.argv[1:])
