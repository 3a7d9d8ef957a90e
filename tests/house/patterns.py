"""The patterns of all messages, collected from the sources as an extractor of texts to translate does.

Print them, sorted by room:  python3 tests/house/patterns.py
"""

import re

from source_tree import ROOT, files, read, relative, room_of, sources, without_comments

# The rooms in which all sentences are messages, with all folders of theirs; the others still put some together with +.
MOVED = ["base", "words", "solids", "lessons", "figures", "reasoning", "practice", "tasks", "paper", "theme", "bench"]
# What these put together are the files of a format, and no sentences.
FORMATS = {"src/paper/pdf_file.cpp", "src/paper/svg_file.cpp"}
CALL = re.compile(r"(?<![\w.>])message\(")
# Patterns of a table, which are said later: of the number {n}.
ROW = re.compile(r"(?<![\w.>])(?:Saying|Pattern)\((?=\s*\")")
LITERAL = r'"(?:[^"\\\n]|\\.)*"'
FORMS = {"", "a", "A", "s", "up", "and", "or", ",", ";", ", or", "then"}
DECLARED_IN = "src/words/message.hpp"


class Pattern:
    """A call of message(): where it stands, its pattern, and the names of the arguments that it is given."""

    def __init__(self, path, text, start, row=False):
        self.room, self.place = room_of(path), f"{relative(path)}:{text.count(chr(10), 0, start) + 1}"
        literal = re.compile(rf"\s*((?:{LITERAL}\s*)+)").match(text, start)
        self.text = "".join(one[1:-1] for one in re.findall(LITERAL, literal.group(1))) if literal else None
        self.end = literal.end() if literal else start
        self.given = {"n"} & set(re.findall(r"\{(n)\}", self.text)) if row else set(_names_given(text, self.end))

    def faults(self):
        if self.text is None:
            return ["the pattern has to stand in the call, as text in quotes"]
        found = []
        if not re.fullmatch(r"(?:[^{}]|\{[^{}]*\})*", self.text):
            found.append("a place is not closed, or was not opened")
        named = set()
        for name, mark, form in re.findall(r"\{([^{}:#]*)([:#]?)([^{}]*)\}", self.text):
            named |= {name} | ({form} if mark == "#" else set())
            if not re.fullmatch("[a-z_]+", name) or (mark != "#" and form not in FORMS and "|" not in form):
                found.append(f"{{{name}{mark}{form}}} is no place")
        found += [f"{{{name}}} has no argument" for name in sorted(named - self.given)]
        found += [f"the argument {name} has no place" for name in sorted(self.given - named)]
        return [f'{fault}: "{self.text}"' for fault in found]


def _names_given(text, at):
    """The names in {{"name", value}, ...} of a call whose pattern ends at `at`; calls inside of the values are left out."""
    brackets = braces = 0
    for match in re.compile(LITERAL + r"|[(){}]").finditer(text, at):
        sign = match.group()
        brackets += {"(": 1, ")": -1}.get(sign, 0)
        braces += {"{": 1, "}": -1}.get(sign, 0)
        if brackets < 0:
            return
        if sign.startswith('"') and braces == 2 and brackets == 0 and text[:match.start()].rstrip().endswith("{"):
            yield sign[1:-1]


def _of_rows(path):
    text = without_comments(path)
    for match in ROW.finditer(text):
        at = match
        while at:
            pattern = Pattern(path, text, at.end(), row=True)
            yield pattern
            at = re.compile(r'\s*,(?=\s*")').match(text, pattern.end)


def patterns():
    paths = [path for path in sources() if relative(path) != DECLARED_IN]
    said_at_once = [Pattern(path, without_comments(path), match.end()) for path in paths
                    for match in CALL.finditer(without_comments(path))]
    return said_at_once + [pattern for path in paths for pattern in _of_rows(path)]


def _without_made_up(path):
    """A source without what it says in problems that it makes up: their prompts are data, as those of any lesson are."""
    made_up = re.compile(r"// ---- made up ----.*?^}  // namespace", re.DOTALL | re.MULTILINE)
    marks = [read(path)[:match.start()].count("\n") for match in made_up.finditer(read(path))]
    lines = without_comments(path).split("\n")
    for mark in marks:
        end = next(number for number in range(mark, len(lines)) if lines[number].startswith("}  "))
        lines[mark:end] = [""] * (end - mark)
    return "" if path.stem.endswith("_made") else "\n".join(lines)


def joined_sentences(rooms):
    """"file:line: text" for every text with a word and a blank that is joined by +."""
    for path in sources():
        if room_of(path) in rooms and relative(path) not in FORMATS:
            text = _without_made_up(path)
            for match in re.finditer(rf"'(?:[^'\\\n]|\\.)+'|{LITERAL}", text):
                is_joined = re.search(r"\+=?\s*$", text[:match.start()]) or re.match(r"\s*\+", text[match.end():])
                words = re.sub(r"\\.", "", match.group()[1:-1])
                if is_joined and re.search(r"[a-z]", words) and " " in words:
                    yield f'{relative(path)}:{text.count(chr(10), 0, match.start()) + 1}: "{words}"'


def failures_of_text(rooms):
    """"file:line" of every failure that tells its reason as a text: a Result would take it for a message."""
    for path in sources():
        if room_of(path) in rooms:
            text = without_comments(path)
            for match in re.finditer(r'\bfailure\(\s*(?:"|std::string\()', text):
                yield f"{relative(path)}:{text.count(chr(10), 0, match.start()) + 1}"


def translated():
    """(place, pattern) of every pattern that a language file has words for."""
    for path in files("*.words"):
        for number, line in enumerate(read(path).splitlines(), start=1):
            if line.startswith("say "):
                yield f"{relative(path)}:{number}", line[4:].strip()[1:-1]


def main():
    room = None
    for pattern in sorted(patterns(), key=lambda one: (one.room, one.text, one.place)):
        if pattern.room != room:
            room = pattern.room
            print(f"{room}:")
        print(f"  {pattern.text}    [{pattern.place.removeprefix('src/' + room + '/')}]")


if __name__ == "__main__":
    main()
