"""The files of the house, read once, and their C++ taken apart into code, text and comments."""

import functools
import pathlib
import re

ROOT = pathlib.Path(__file__).resolve().parents[2]

_PIECES = re.compile(
    r'//[^\n]*|/\*.*?\*/'                                   # comments
    r'|R"(?P<mark>[^()\s]{0,16})\(.*?\)(?P=mark)"'          # raw strings
    r'|"(?:[^"\\\n]|\\.)*"'                                 # strings
    r"|(?<![0-9A-Fa-f])'(?:[^'\\\n]|\\.)+'",                # characters, but not the digit separator of 1'000
    re.DOTALL)


@functools.lru_cache(maxsize=None)
def read(path):
    return path.read_text(encoding="utf-8")


def relative(path):
    return path.relative_to(ROOT).as_posix()


def files(*patterns, under="."):
    """Files below `under` whose name matches one of the patterns, in a fixed order."""
    base = ROOT / under
    found = {p for pattern in patterns for p in base.rglob(pattern) if p.is_file() and "__pycache__" not in p.parts}
    return sorted(found)


def sources(under="src"):
    return files("*.cpp", "*.hpp", under=under)


def room_of(path):
    return path.relative_to(ROOT / "src").parts[0]


def _keep_lines(text):
    return "\n" * text.count("\n")


def code_of(path):
    """The C++ without comments and without what stands in quotes; line numbers are kept."""
    return _PIECES.sub(lambda m: " " + _keep_lines(m.group()), read(path))


@functools.lru_cache(maxsize=None)
def without_comments(path):
    """The C++ with what stands in quotes, but without comments; line numbers are kept."""
    return _PIECES.sub(lambda m: " " + _keep_lines(m.group()) if m.group().startswith("/") else m.group(), read(path))


def strings_of(path):
    """(line, text) of every string literal outside comments."""
    text = read(path)
    for match in _PIECES.finditer(text):
        if match.group().startswith('"'):
            yield text.count("\n", 0, match.start()) + 1, match.group()[1:-1]


def includes_of(path):
    """(line, name, quoted) of every include."""
    for number, line in enumerate(read(path).splitlines(), start=1):
        match = re.match(r'\s*#\s*include\s*(?:"([^"]+)"|<([^>]+)>)', line)
        if match:
            yield number, match.group(1) or match.group(2), match.group(1) is not None


@functools.lru_cache(maxsize=None)
def included_through(path):
    """The names of all headers that a file includes, itself or through headers of ours."""
    found = set()
    for _, name, quoted in includes_of(path):
        found.add(name)
        if quoted and (ROOT / "src" / name).is_file():
            found |= included_through(ROOT / "src" / name)
    return found


@functools.lru_cache(maxsize=None)
def rooms():
    """Each room with the rooms that it names in CMakeLists.txt, in the order in which they stand there."""
    text = read(ROOT / "CMakeLists.txt")
    found = {}
    for name, rest in re.findall(r"^add_room\((\w+)([^)]*)\)", text, re.MULTILINE):
        uses = re.search(r"USES((?:\s+[a-z]+)*)", rest)
        found[name] = uses.group(1).split() if uses else []
    return found


def seen_from(room):
    """The room itself and all rooms below that it may include."""
    seen, waiting = {room}, [room]
    while waiting:
        for below in rooms()[waiting.pop()]:
            if below not in seen:
                seen.add(below)
                waiting.append(below)
    return seen


def matches_in(path, pattern, text=None, flags=0):
    """"file:line: what" for every match of `pattern`."""
    text = read(path) if text is None else text
    for match in re.finditer(pattern, text, flags):
        line = text.count("\n", 0, match.start()) + 1
        yield f"{relative(path)}:{line}: {match.group().strip()}"
