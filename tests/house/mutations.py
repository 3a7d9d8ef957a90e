"""Makes small changes at places drawn by a seed and sees whether the quick tests catch them.

    python3 tests/house/mutations.py --seed 1 --count 20
    python3 tests/house/mutations.py --seed 1 --count 20 --rooms nets solids
    python3 tests/house/mutations.py --seed 1 --count 20 --own      only the tests of the changed room itself
    python3 tests/house/mutations.py --seed 1 --count 20 --list     only says what would be changed

A change stands in a copy of the tree in build/mutations, which is built there and restored after each change; the tree
itself is only read. The tests of the changed room come first, then those of the rooms above that reach it, until one
fails: caught. What opens a window is left out, since no quick test does.
"""

import argparse
import os
import pathlib
import random
import re
import shutil
import signal
import subprocess
import sys
import time

from source_tree import ROOT, code_of, read, relative, room_of, rooms, seen_from, sources

COPIED = ["src", "shaders", "tests", "third_party", "demo_scenes", "CMakeLists.txt", "CMakePresets.json", "LICENSE"]
UNTESTED = ("src/window/", "src/web/", "/main")  # no quick test reaches them
COMPARISONS = {"<": "<=", "<=": "<", ">": ">=", ">=": ">", "==": "!=", "!=": "=="}
ARITHMETIC = {"+": "-", "-": "+", "*": "/", "/": "*", "+=": "-=", "-=": "+="}
SECONDS_MORE = 60  # than ten times what the tests of a room take as they stand; a change that needs them is caught


def changed_number(text, dice):
    """A number beside the one written: one more or less, a tenth of a large one, twice or half a broken one."""
    if "." in text:
        return repr(float(text) * dice.choice((0.5, 2))) if float(text) else "1.0"
    number = int(text)
    return str(dice.choice([number + 1, abs(number - 1)] + ([number // 10] if number >= 100 else [])))


def swapped(match, _):
    return f"{match.group(1)}({match.group(3)}, {match.group(2)})"


# kind: (what is looked for in the code of a line, what stands there instead). Binary signs have spaces round them, as
# clang-format sets them; brackets of templates have none.
KINDS = {
    "comparison": (r"(?<= )(?:[<>]=?|[=!]=)(?= )", lambda m, _: COMPARISONS[m.group()]),
    "constant": (r"(?<![\w.'])\d+(?:\.\d+)?(?![\w.'])", lambda m, dice: changed_number(m.group(), dice)),
    "negation": (r"(?<=if \()(.+)(?=\) \{$)|(?<=[(\s])!(?=\w)|(?<= )(?:&&|\|\|)(?= )|\b(?:true|false)\b",
                 lambda m, _: {"!": "", "&&": "||", "||": "&&", "true": "false", "false": "true"}.get(
                     m.group(), f"!({m.group()})")),
    "dropped": (r"(?<=  )(?!return|throw|if|for|while|else)[a-z_][\w.:>\[\]*-]*(?:\(.*\)| [-+*/|&]?= .*);$",
                lambda m, _: "{}"),
    # What gives the same either way round is no change.
    "swapped": (r"\b(?!(?:min|max|gcd|lcm|hypot|dot|distance)\()([a-z_]\w+)\(([a-z_][\w.]*), ([a-z_][\w.]*)\)", swapped),
    "arithmetic": (r"(?<= )[-+*/]=?(?= )", lambda m, _: ARITHMETIC.get(m.group(), m.group())),
}


def places(chosen):
    """kind: all (file, line number, match) of it in the chosen rooms."""
    found = {kind: [] for kind in KINDS}
    for path in sources():
        if room_of(path) not in chosen or any(part in relative(path) for part in UNTESTED):
            continue
        lines = read(path).splitlines()
        code = code_of(path).splitlines()
        for number, line in enumerate(lines):
            # What stands in quotes or behind // is no code; such lines are passed over whole.
            if number >= len(code) or code[number] != line or re.match(r"\s*(#|static_assert|template|using|enum)", line):
                continue
            for kind, (pattern, _) in KINDS.items():
                found[kind] += [(path, number, match) for match in re.finditer(pattern, line)]
    return found


def drawn(chosen, seed, count):
    """Yields (kind, file, line number, new line): each kind as often as any other, no line twice."""
    dice = random.Random(seed)
    found = places(chosen)
    used = set()
    for _ in range(50 * count):
        if len(used) == count:
            return
        kind = dice.choice(sorted(KINDS))
        if not found[kind]:
            continue
        path, number, match = dice.choice(found[kind])
        new = match.string[:match.start()] + KINDS[kind][1](match, dice) + match.string[match.end():]
        if new != match.string and (path, number) not in used:
            used.add((path, number))
            yield kind, path, number, new


def rooms_with_tests():
    """Each folder of tests with the room that it sees, in the order in which they stand in tests/CMakeLists.txt."""
    text = read(ROOT / "tests" / "CMakeLists.txt")
    return re.findall(r"^add_room_tests\((\w+)[^)]*USES (\w+)", text, re.MULTILINE)


class Copy:
    """The copy of the tree, its build and its tests."""

    def __init__(self, folder, jobs):
        self.folder, self.jobs = folder, str(jobs)
        self.log = (folder / "mutations.log")
        self.seconds = {}  # what the tests of a room may take

    def run(self, *command, seconds=None):
        """Whether the command succeeds in time; what it started ends with it."""
        with self.log.open("a", encoding="utf-8") as log:
            process = subprocess.Popen(command, cwd=self.folder, stdout=log, stderr=log, start_new_session=True)
            try:
                return process.wait(seconds) == 0
            except subprocess.TimeoutExpired:
                return False
            finally:
                if process.poll() is None:
                    os.killpg(process.pid, signal.SIGKILL)
                    process.wait()

    def bring_up_to_date(self):
        """Files that did not change keep their times, so that they are not compiled again."""
        for name in COPIED:
            here = ROOT / name
            wanted = {path for path in here.rglob("*") if path.is_file() and "__pycache__" not in path.parts} \
                if here.is_dir() else {here}
            for path in wanted:
                there = self.folder / path.relative_to(ROOT)
                if not there.is_file() or there.read_bytes() != path.read_bytes():
                    there.parent.mkdir(parents=True, exist_ok=True)
                    shutil.copyfile(path, there)
            gone = {path for path in (self.folder / name).rglob("*")
                    if path.is_file() and ROOT / path.relative_to(self.folder) not in wanted}
            for path in gone:
                path.unlink()

    def build(self, *targets):
        return self.run("cmake", "--build", "--preset", "grouped", "-j", self.jobs, "--target", *targets)

    def tests_pass(self, name, seed):
        """Quick tests alone; properties take their chance from the seed, so that the same draw is judged alike."""
        begin = time.monotonic()
        passed = self.run("env", f"RC_PARAMS=seed={seed}", "LIBGL_ALWAYS_SOFTWARE=1", "ctest", "--test-dir",
                          "build/grouped", "-R", rf"^{name}\.", "-LE", "slow|display|house", "-j", self.jobs,
                          "--stop-on-failure", "--no-tests=error", seconds=self.seconds.get(name))
        self.seconds.setdefault(name, 10 * (time.monotonic() - begin) + SECONDS_MORE)
        return passed

    def judge(self, room, tests, seed):
        """"caught by ROOM", "lived" or "did not compile"."""
        if not self.build(f"fw_{room}"):
            return "did not compile"
        for name in tests:
            # A room above may use what a header no longer gives.
            if not self.build(f"test_{name}"):
                return "did not compile"
            if not self.tests_pass(name, seed):
                return f"caught by {name}"
        return "lived"


def tests_of(room, own):
    """The folders of tests that a change in the room can reach, its own first."""
    reached = [name for name, seen in rooms_with_tests() if room in seen_from(seen) and name != "window"]
    return [name for name in sorted(reached, key=lambda name: name != room) if name == room or not own]


def told(kind, path, number, new):
    old = read(path).splitlines()[number].strip()
    return f"{relative(path)}:{number + 1}: {kind}\n    - {old}\n    + {new.strip()}"


def measure(options, chosen):
    folder = pathlib.Path(options.folder).resolve()
    folder.mkdir(parents=True, exist_ok=True)
    copy = Copy(folder, options.jobs)
    copy.bring_up_to_date()
    if not copy.run("cmake", "--preset", "grouped"):
        sys.exit(f"the tree cannot be configured: {copy.log}")
    for name in sorted({name for room in chosen for name in tests_of(room, options.own)}):
        if not copy.build(f"test_{name}") or not copy.tests_pass(name, options.seed):
            sys.exit(f"the tests of {name} fail as they stand: {copy.log}")
    begin = time.monotonic()
    verdicts = []
    for kind, path, number, new in drawn(chosen, options.seed, options.count):
        if options.minutes and time.monotonic() - begin > 60 * options.minutes:
            break
        there = folder / path.relative_to(ROOT)
        lines = read(path).splitlines(keepends=True)
        try:
            there.write_text("".join(lines[:number] + [new + "\n"] + lines[number + 1:]), encoding="utf-8")
            room = room_of(path)
            verdicts.append(copy.judge(room, tests_of(room, options.own), options.seed))
        finally:
            there.write_text(read(path), encoding="utf-8")
        print(f"{len(verdicts)}. {verdicts[-1]}: {told(kind, path, number, new)}", flush=True)
    compiled = [verdict for verdict in verdicts if verdict != "did not compile"]
    caught = sum(verdict.startswith("caught") for verdict in compiled)
    print(f"seed {options.seed}: {caught} of {len(compiled)} caught, {len(compiled) - caught} lived, "
          f"{len(verdicts) - len(compiled)} did not compile")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--seed", type=int, default=1, help="of the draw")
    parser.add_argument("--count", type=int, default=100, help="changes")
    parser.add_argument("--rooms", nargs="+", default=list(rooms()), help="where; all rooms if left out")
    parser.add_argument("--minutes", type=float, default=0, help="ends after so many, with what was drawn until then")
    parser.add_argument("--jobs", type=int, default=2, help="at a time, of compiler and tests")
    parser.add_argument("--folder", default=str(ROOT / "build" / "mutations"), help="of the copy; kept for the next time")
    parser.add_argument("--own", action="store_true", help="only run the tests of the changed room: less than there is")
    parser.add_argument("--list", action="store_true", help="only say what would be changed")
    options = parser.parse_args()
    unknown = set(options.rooms) - set(rooms())
    if unknown:
        sys.exit("there is no room " + ", ".join(sorted(unknown)))
    if options.list:
        changes = list(drawn(options.rooms, options.seed, options.count))
        for change in changes:
            print(told(*change))
        lacking = set(KINDS) - {change[0] for change in changes}
        if len(changes) < options.count or (options.count >= 10 * len(KINDS) and lacking):
            sys.exit(f"only {len(changes)} places were found, and none to be " + ", ".join(sorted(lacking)))
    else:
        measure(options, options.rooms)


if __name__ == "__main__":
    main()
