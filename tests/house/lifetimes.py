"""Loops over what a temporary holds and that is gone with it before the loop begins: for (x : made()->items),
made().value(), *made().

A range-for keeps the value of its range alive, and with made().items the whole of what was made; but not what a call
or an operator refers to in a temporary (until C++23).
"""

import re

from source_tree import code_of, files, relative

# Of a container, a Result or an optional: a reference into it.
INTO = {"value", "error", "front", "back", "at", "first", "second"}
TYPE = r"(?:[\w:]+(?:<(?:[^<>;{}()]|<(?:[^<>;{}()]|<[^<>;{}()]*>)*>)*>)?)"
DECLARED = re.compile(rf"(?:^|[;{{}}\]>]|\b(?:virtual|static|inline|constexpr))\s*(?:const\s+)?({TYPE})\s*([&*]?)\s+([&*]?)"
                      rf"(?:\w+::)*(\w+)\(", re.MULTILINE)
KEYWORDS = {"return", "else", "new", "throw", "case", "delete", "co_return", "operator", "void", "if", "for", "while", "switch"}
LOOP = re.compile(r"\bfor\s*\(")


def returned():
    """Names of functions that return a value, and of those that return a reference or a pointer, by all declarations."""
    values, references = set(), set()
    for path in files("*.hpp", "*.cpp", under="src") + files("*.hpp", "*.cpp", under="tests"):
        for kind, before, after, name in DECLARED.findall(code_of(path)):
            if kind not in KEYWORDS and name not in KEYWORDS:
                (references if before or after else values).add(name)
    return values, references


def closing(text, at):
    """Behind the bracket that closes the one at `at`."""
    depth = 0
    for place in range(at, len(text)):
        depth += {"(": 1, "[": 1, "{": 1, ")": -1, "]": -1, "}": -1}.get(text[place], 0)
        if depth == 0:
            return place + 1
    return len(text)


def ranges(text):
    """(place, range) of every range-for."""
    for match in LOOP.finditer(text):
        inside = text[match.end():closing(text, match.end() - 1) - 1]
        depth = 0
        for place, sign in enumerate(inside):
            depth += {"(": 1, "[": 1, "{": 1, ")": -1, "]": -1, "}": -1}.get(sign, 0)
            is_colon = sign == ":" and depth == 0 and inside[place - 1] != ":" and inside[place + 1:place + 2] != ":"
            if sign == ";" and depth == 0 or is_colon and "?" in inside[:place]:
                break
            if is_colon:
                yield match.start(), inside[place + 1:].strip()
                break


def is_gone(expression, values, references):
    """Whether the range lies in a temporary and is gone with it, as far as its names tell."""
    rest = expression.lstrip("*&( ")
    reads_through = "*" in expression[:len(expression) - len(rest)]
    temporary = is_part = False
    while step := re.match(r"[\s)]*(\.|->)?\s*(?:\w+::)*(\w+)\s*", rest):
        name, rest = step.group(2), rest[step.end():]
        is_part = is_part or (temporary and step.group(1) == "->")
        if rest.startswith("("):
            rest = rest[closing(rest, 0):]
            if name in INTO:
                is_part = is_part or temporary
            elif name in values and name not in references:
                temporary, is_part = True, False
            else:
                is_part = is_part or (temporary and name in references)
                temporary = temporary and is_part
        while rest.startswith("["):
            is_part, rest = is_part or temporary, rest[closing(rest, 0):]
    return temporary and (is_part or reads_through) and not rest.lstrip(") ")


def loops_over_what_is_gone():
    """"file:line: range" of each."""
    values, references = returned()
    for path in files("*.hpp", "*.cpp", under="src") + files("*.hpp", "*.cpp", under="tests"):
        text = code_of(path)
        for at, expression in ranges(text):
            if is_gone(expression, values, references):
                yield f"{relative(path)}:{text.count(chr(10), 0, at) + 1}: {' '.join(expression.split())}"
