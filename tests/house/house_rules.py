"""The house rules of DEVELOPERS.md that a program can check: one test a rule.

Run one:  python3 tests/house/house_rules.py HouseRules.test_files_are_short
Run all:  python3 tests/house/house_rules.py
"""

import ast
import fnmatch
import json
import re
import subprocess
import sys
import tempfile
import pathlib
import unittest

from lifetimes import loops_over_what_is_gone
from patterns import MOVED, failures_of_text, joined_sentences, patterns, translated
from source_tree import (ROOT, code_of, files, includes_of, included_through, matches_in, read, relative, room_of, rooms, seen_from,
                         sources, strings_of)

TOP_LEVEL = {
    "CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "src", "shaders", "tests",
    "third_party", "demo_scenes", ".ci", ".clang-format", ".clang-tidy", ".editorconfig", ".gitattributes",
    ".gitignore",
}
# Rooms that may touch the clock, the files and the standard streams; every other room is mathematics.
OUTWARD = {"platform", "render", "theme", "state", "bench", "ui", "panels", "window", "web", "cli"}
# What an include of a library or of the system begins with, and the files that may have it.
SYSTEM_HEADERS = {
    "GLFW/": ["src/window/*"],
    "glad/": ["src/render/gl/loader.hpp"],
    "GL/": [],
    "EGL/": ["src/render/gl/*"],
    "imgui": ["src/ui/*", "src/window/*"],
    "backends/": [],
    "GLES3/": ["src/render/gl/loader.hpp"],
    "emscripten/": ["src/web/*"],
    "cairo": ["src/cli/*"],
    "boost/": ["src/exact/*", "src/web/no_exceptions.cpp"],
    "glm/": ["src/geometry/vectors.hpp"],
    "nlohmann/": ["src/lessons/*", "src/practice/progress_text.*", "src/state/keeping*", "src/cli/*",
                  "src/web/*"],
    "CLI/": ["src/cli/*"],
    "filesystem": ["src/platform/*"],
    "fstream": [],
    "chrono": ["src/platform/*"],
    "ctime": ["src/platform/*"],
    "random": [],
    "unistd.h": ["src/platform/*"],
    "fcntl.h": ["src/platform/*"],
    "sys/": ["src/platform/*"],
    "iostream": ["src/cli/*"],
    "thread": ["src/platform/*"],
    "mutex": [],
    "future": [],
}
# What names of the standard library a header may use, by the headers that give them.
STANDARD_NAMES = {
    "string": {"string", "u32string", "to_string"},
    "string_view string": {"string_view"},
    "vector": {"vector"},
    "deque": {"deque"},
    "optional": {"optional", "nullopt", "nullopt_t"},
    "map": {"map"},
    "set": {"set"},
    "array": {"array"},
    "bitset": {"bitset"},
    "memory": {"shared_ptr", "unique_ptr", "make_shared", "make_unique", "weak_ptr"},
    "functional": {"function", "less", "hash", "negate"},
    "utility": {"pair", "move", "swap", "forward", "exchange", "in_place_index"},
    "variant": {"variant", "visit", "get", "holds_alternative"},
    "algorithm": {"max", "min", "clamp", "find", "any_of", "all_of", "none_of", "sort", "transform"},
    "cmath": {"sin", "cos", "abs", "sqrt", "cbrt", "pow", "isfinite", "llround"},
    "limits": {"numeric_limits"},
    "type_traits": {"is_same_v", "is_integral_v", "decay_t", "enable_if_t", "is_base_of_v", "is_convertible_v"},
    "initializer_list": {"initializer_list"},
    "streambuf": {"streambuf"},
    "ostream iosfwd iostream": {"ostream"},
    "cstddef string vector array string_view": {"size_t", "ptrdiff_t"},
    "cstdint": {"uint8_t", "uint16_t", "uint32_t", "uint64_t", "int64_t", "int32_t"},
}
# Words that no teacher says to a class; "there is no" is fine, "it is no" is not.
UNLIKE_CLASS = re.compile(
    r"\bAsked\b|\bPut (?:in|the numbers)\b|\b[Tt]ake .* from both sides|[Ss]omebody|\balike\b|goes into|\btwins?\b|in sight|"
    r"(?<!there )\b(?:is|are) no (?!telling)\w|\bmade up\b|way round|[Tt]urn the equation|\bworked out\b|cannot stand|"
    r"asked for\b|parted|\bcard\b|take off|[Hh]ow often")
IMGUI_FILES = SYSTEM_HEADERS["imgui"]
KIND_KEYS = {"cube", "rectangular prism", "prism", "pyramid", "regular polyhedron"}
KIND_WORDS = {"cube", "cuboid", "prism", "pyramid", "tetrahedron", "octahedron", "dodecahedron", "icosahedron"}
# A kind told by other signs than its name, in code whose texts are left out: by how many bases it has, by a search
# through the table of kinds (a lesson is read by all their names), by which fields it has.
KIND_SIGNS = {
    r"\b(?:\w+_)?(?:bases|ends|(?:base|end)_(?:faces|count))\b(?:(?:\.\w+)?\.size\(\)|\(\))?"
    r"\s*(?:[=!]=|[<>]=?)\s*\d|"
    r"\bFaceRole::Base\)\s*\.\s*(?:empty\(\)|size\(\)\s*(?:[=!]=|[<>]=?)\s*\d)|"
    r"\bFaceRole::Base\s*\?\s*1|\bcount_if\([^;]*\bFaceRole::Base\b": "read the traits that its kind states",
    r"^(?:(?!\bnamed_row\().)*\bkinds\(\)": "ask kind_for() or find_kind()",
    r"\bfields\s*\.\s*(?:count|find)\s*\(\s*\)": "read the traits that its kind states",
}
FIELDS_OF_ONE_KIND = "length|width|lies"
# Rooms that may name polyhedra; every other room asks a solid's body.
HOME_OF_POLYHEDRA = {"geometry", "nets", "solids"}
LINES_AT_MOST = 500
ENTRIES_AT_MOST = 25
COLUMNS_AT_MOST = 120

# British on the left of each alternative's stem; whole words are found by their beginning.
BRITISH = re.compile(
    r"\b(?:(?:milli|centi|kilo|deci)?(?:metre|litre)|colour|centre|grey|behaviour|neighbour|favour|honour|analyse|"
    r"catalogue|modell(?:ed|ing)|travell|cancell(?:ed|ing)|licence|practise|fulfil\b|artefact|programme\b|defence|"
    r"(?:organ|recogn|normal|initial|optim|minim|maxim|summar|general|special|real|emphas|visual)is(?:e|ed|es|ing)\b)"
    r"\w*", re.IGNORECASE)


def allowed(path, patterns):
    return any(fnmatch.fnmatch(relative(path), pattern) for pattern in patterns)


def table_row_of(header):
    """The beginning in SYSTEM_HEADERS that an include <header> falls under, or None for the standard library's rest."""
    for beginning in SYSTEM_HEADERS:
        if header.startswith(beginning) if beginning in ("imgui", "cairo") or "/" in beginning else header == beginning:
            return beginning
    return None


def paths_written_in(script):
    """(line, text) of every string of a Python file that is a path from the tree's root, or a pattern of such paths."""
    for node in ast.walk(ast.parse(read(script))):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and \
                re.match(r"(?:src|tests|shaders|third_party|demo_scenes)/\S*$", node.value):
            yield node.lineno, node.value


def written_by_us():
    """Every text file that people read or write, wherever it stands."""
    return (files("*.cpp", "*.hpp", "*.cmake", "*.txt", "*.py", "*.sh", under="src") +
            files("*.cpp", "*.hpp", "*.cmake", "*.txt", "*.py", "*.sh", under="tests") +
            files("*", under="shaders") + files("*.sh", "*.cmake", "*.md", under="third_party") +
            [ROOT / "README.md", ROOT / "DEVELOPERS.md", ROOT / "CMakeLists.txt", ROOT / ".ci" / "run"])


class HouseRules(unittest.TestCase):
    longMessage = False

    def none(self, findings, rule):
        findings = list(findings)
        self.assertFalse(findings, f"{rule}\n  " + "\n  ".join(findings))

    def test_includes_run_downward(self):
        table = rooms()
        self.assertGreaterEqual(len(table), 15, "the table of rooms in CMakeLists.txt could not be read")
        order = list(table)
        self.none((f"{room} uses {below}, which stands above it" for room in table for below in table[room]
                   if below not in order[:order.index(room)]), "a room uses only rooms that stand before it")
        wrong = []
        for path in sources():
            room = room_of(path)
            for line, name, quoted in includes_of(path):
                if quoted and name.split("/")[0] not in seen_from(room):
                    wrong.append(f"{relative(path)}:{line}: {name} cannot be seen from {room}")
                if not quoted and name.split("/")[0] in table:
                    wrong.append(f"{relative(path)}:{line}: <{name}> is ours: use quotes")
        self.none(wrong, 'includes are "room/file.hpp" of the room itself or of a room below')

    def test_system_headers_stay_in_their_rooms(self):
        wrong = []
        for path in sources():
            for line, name, quoted in includes_of(path):
                if quoted:
                    continue
                row = table_row_of(name)
                if row is None and re.search(r"[/.]", name):
                    wrong.append(f"{relative(path)}:{line}: <{name}> has no row in SYSTEM_HEADERS of the house rules")
                if row is not None and not allowed(path, SYSTEM_HEADERS[row]):
                    wrong.append(f"{relative(path)}:{line}: <{name}> belongs to {SYSTEM_HEADERS[row] or 'no file'}")
            if room_of(path) not in OUTWARD:
                wrong += matches_in(path, r"\bstd::(?:rand|srand|time|clock|getenv|system|fopen|cin|cout|cerr)\b",
                                    code_of(path))
        self.none(wrong, "libraries and the system are touched only where the table says")

    def test_imgui_calls_stay_in_their_files(self):
        self.none((hit for path in sources() if not allowed(path, IMGUI_FILES)
                   for hit in matches_in(path, r"\b(?:ImGui::|Im(?:Vec[24]|DrawList|Font|U32)\b|IM_COL32)",
                                         code_of(path))),
                  f"the panels' toolkit is called only in {IMGUI_FILES}")

    def test_kinds_are_named_in_solids_alone(self):
        wrong = []
        for path in sources():
            if room_of(path) == "solids":
                continue
            wrong += [f'{relative(path)}:{line}: "{text}"' for line, text in strings_of(path) if text in KIND_KEYS]
            code = code_of(path)
            for match in re.finditer(r"\b[A-Za-z_]\w*\b", code):
                if "cube_root" in match.group():  # arithmetic, not a solid
                    continue
                words = re.findall(r"[A-Z]?[a-z]+", match.group())
                if any(word.lower().rstrip("s") in KIND_WORDS for word in words):
                    wrong.append(f"{relative(path)}:{code.count(chr(10), 0, match.start()) + 1}: {match.group()}")
            for pattern, instead in KIND_SIGNS.items():
                wrong += [f"{hit}: {instead}" for hit in matches_in(path, pattern, code, re.MULTILINE)]
            wrong += list(matches_in(path, rf'\bsolid(?:\(\))?, "(?:{FIELDS_OF_ONE_KIND})"'))
        self.none(wrong, "a kind of solid is known in src/solids/ alone; elsewhere read its statement")

    def test_a_solid_is_asked_through_its_body(self):
        wrong = []
        for path in sources():
            if room_of(path) not in HOME_OF_POLYHEDRA:
                wrong += matches_in(path, r"\b[Pp]olyhedr(?:on|a)\b|\bfacets\s*\(", code_of(path))
                wrong += [f"{relative(path)}:{line}: {name}" for line, name, _ in includes_of(path)
                          if name == "geometry/polyhedron.hpp"]
        self.none(wrong, f"only {sorted(HOME_OF_POLYHEDRA)} know polyhedra; elsewhere ask solids::Body")

    def test_files_are_short(self):
        wrong = []
        for path in written_by_us():
            lines = read(path).splitlines()
            if len(lines) > LINES_AT_MOST:
                wrong.append(f"{relative(path)}: {len(lines)} lines")
            if path.suffix in (".cpp", ".hpp"):
                wrong += [f"{relative(path)}:{number}: {len(line)} columns"
                          for number, line in enumerate(lines, start=1)
                          if len(line) > COLUMNS_AT_MOST and "http" not in line]
        self.none(wrong, f"a file has at most {LINES_AT_MOST} lines and C++ at most {COLUMNS_AT_MOST} columns")

    def test_code_is_formatted(self):
        done = subprocess.run(["clang-format", "--dry-run", "-Werror", *map(str, sources("src") + sources("tests"))],
                              cwd=ROOT, capture_output=True, text=True, check=False)
        wrong = sorted({pathlib.Path(line.split(":")[0]) for line in done.stderr.splitlines() if "[-Wclang" in line})
        self.none(map(relative, wrong), "clang-format -i these files")
        self.assertEqual(done.returncode, 0, done.stderr)

    def test_folders_are_small(self):
        wrong = []
        for top in ("src", "shaders", "tests", "third_party", "demo_scenes"):
            folders = [ROOT / top] + [p for p in sorted((ROOT / top).rglob("*")) if p.is_dir()]
            for folder in folders:
                if "corpus" in relative(folder).split("/") or folder.name == "__pycache__":
                    continue
                # A header and its source are one entry: they are read as one.
                entries = {entry.stem for entry in folder.iterdir() if entry.name != "__pycache__"}
                if len(entries) > ENTRIES_AT_MOST:
                    wrong.append(f"{relative(folder)}: {len(entries)} entries")
        self.none(wrong, f"a folder has at most {ENTRIES_AT_MOST} entries; make a subfolder by topic")

    def test_shaders_have_no_version(self):
        shaders = files("*", under="shaders")
        self.assertTrue(shaders, "there are no shaders to look at")
        self.none((hit for path in shaders for hit in matches_in(path, r"#\s*version\b.*")),
                  "the version is put before a shader when it is compiled, for OpenGL and for OpenGL ES")

    def test_opengl_calls_are_in_both_dialects(self):
        def functions(api):
            with tempfile.TemporaryDirectory() as folder:
                subprocess.run(["glad", "--reproducible", "--quiet", "--api", api, "--extensions", "", "--out-path",
                                folder, "c"], check=True)
                headers = list(pathlib.Path(folder).rglob("*.h"))
                return {name for header in headers
                        for name in re.findall(r"#define (gl[A-Z]\w*) glad_gl", header.read_text(encoding="utf-8"))}

        common = functions("gl:core=3.3") & functions("gles2=3.0")
        self.assertGreater(len(common), 200, "the lists of OpenGL functions could not be read")
        wrong = []
        for path in sources("src"):
            code = code_of(path)
            for match in re.finditer(r"(?<![\w:])gl[A-Z]\w*(?=\s*\()", code):
                place = f"{relative(path)}:{code.count(chr(10), 0, match.start()) + 1}: {match.group()}"
                if not relative(path).startswith("src/render/gl/"):
                    wrong.append(place + " outside src/render/gl/")
                elif match.group() not in common:
                    wrong.append(place + " is not in OpenGL ES 3.0")
        self.none(wrong, "OpenGL is called in src/render/gl/ alone, and only what OpenGL ES 3.0 has too")

    def test_headers_begin_with_pragma_once(self):
        self.none((relative(path) for path in files("*.hpp", under="src") + files("*.hpp", under="tests")
                   if not re.match(r"(?:\s*//[^\n]*\n)*\s*#pragma once\n", read(path))),
                  "a header begins with #pragma once, after comments at most")

    def test_headers_include_what_they_name(self):
        wrong = []
        for path in files("*.hpp", under="src"):
            included = included_through(path)
            code = code_of(path)
            for name in sorted(set(re.findall(r"\bstd::(\w+)", code))):
                headers = next((headers for headers, names in STANDARD_NAMES.items() if name in names), None)
                if headers is None:
                    wrong.append(f"{relative(path)}: name the header of std::{name} in STANDARD_NAMES of the house rules")
                elif not included & set(headers.split()):
                    wrong.append(f"{relative(path)}: std::{name} without <{headers.split()[0]}>")
            if "glm::" in code and not any(name.startswith("glm/") for name in included):
                wrong.append(f"{relative(path)}: glm:: without a header of GLM or of geometry")
        self.none(wrong, "a header includes the standard headers whose names it uses, itself or through others of ours")

    def test_no_order_is_taken_from_hashes(self):
        wrong = []
        for path in sources():
            code = code_of(path)
            names = set(re.findall(r"unordered_(?:map|set)<[^;{}()]*>&?\s+(\w+)", code))
            for name in names:
                wrong += matches_in(path, rf"for\s*\([^;()]*:\s*{name}\s*\)|\b{name}\.begin\(", code)
        self.none(wrong, "the order of a hash table differs between libraries: do not go through one")

    def test_the_portable_language(self):
        forbidden = (r"\bstd::(?:format|expected|jthread|print(?:ln)?|ranges::|views::|source_location)\b|"
                     r"<(?:format|expected|ranges|coroutine|source_location|stop_token)>|\bco_(?:await|yield|return)\b|"
                     r"\busing namespace std\b|\b-ffast-math\b")
        wrong = [hit for path in sources() for hit in matches_in(path, forbidden, code_of(path))]
        wrong += [hit for path in files("*.hpp", under="src")
                  for hit in matches_in(path, r"\busing namespace\b.*", code_of(path))]
        self.none(wrong, "only what g++ 12, clang 14 and Emscripten 3.1.6 all compile; no using namespace in headers")

    def test_american_spelling(self):
        paths = [p for p in written_by_us()
                 if not relative(p).startswith(("tests/house/", "tests/units/", "src/units/"))]
        paths += files("*.json", under="demo_scenes")
        wrong = [hit for path in paths for hit in matches_in(path, BRITISH)]
        self.none(wrong, "American spelling everywhere, but for the unit names that are read")

    def test_top_level_is_known(self):
        ignored = [line.strip().strip("/") for line in read(ROOT / ".gitignore").splitlines() if line.strip()]
        names = {p.name for p in ROOT.iterdir() if p.name != ".git"}
        names = {name for name in names if not any(fnmatch.fnmatch(name, pattern) for pattern in ignored)}
        self.none(sorted(names - TOP_LEVEL), "the top level holds nothing but what DEVELOPERS.md lists")
        self.none(sorted(TOP_LEVEL - names), "the top level lacks")

    def test_nothing_is_left_to_do(self):
        # Written so that the rule does not find itself.
        self.none((hit for path in written_by_us() for hit in matches_in(path, r"\b(?:TO[D]O|FIX[M]E|X{3}|HAC[K])\b")),
                  "what is left to do stands in an issue, not in the files")

    def test_documents_name_what_exists(self):
        wrong = []
        for document in (ROOT / "README.md", ROOT / "DEVELOPERS.md", ROOT / "third_party" / "README.md"):
            text = read(document)
            named = re.findall(r"`((?:src|tests|shaders|third_party|demo_scenes|\.ci)/[^`\s]*)`", text)
            named += re.findall(r"\bsh (third_party/\S+\.sh)", text)
            named += re.findall(r"\]\(((?!https?:|#)[^)\s]+)\)", text)
            for name in sorted(set(named)):
                pattern = re.sub(r"[A-Z]{4,}", "*", name).rstrip("/")
                if not list(ROOT.glob(pattern)):
                    wrong.append(f"{relative(document)}: {name}")
        self.none(wrong, "a file that a document names must exist")

    def test_documents_name_presets_that_exist(self):
        presets = json.loads(read(ROOT / "CMakePresets.json"))
        known = {p["name"] for group in presets if group.endswith("Presets") for p in presets[group]}
        used = set()
        for path in (ROOT / "README.md", ROOT / "DEVELOPERS.md", ROOT / ".clang-tidy"):
            used |= set(re.findall(r"--preset[= ]([a-z]+)", read(path)))
        self.assertTrue(used, "no document names a preset")
        self.none(sorted(used - known), "these presets are named in a document and are not in CMakePresets.json")

    def test_rules_name_what_exists(self):
        everything = [relative(path) for path in files("*", under="src") + files("*", under="tests") +
                      files("*", under="shaders") + files("*", under="third_party") + files("*", under="demo_scenes")]
        script = pathlib.Path(__file__)
        wrong = [f"{relative(script)}:{line}: nothing matches {path}" for line, path in paths_written_in(script)
                 if not fnmatch.filter(everything, path + "*" if path.endswith("/") else path)]
        wrong += [f"there is no room {room}" for room in sorted((OUTWARD | HOME_OF_POLYHEDRA) - set(rooms()))]
        users = {row: [] for row in SYSTEM_HEADERS}
        for path in sources():
            for _, name, quoted in includes_of(path):
                if not quoted and table_row_of(name):
                    users[table_row_of(name)].append(relative(path))
        wrong += [f"nothing in {pattern} includes <{row}…>: it needs no permission" for row in SYSTEM_HEADERS
                  for pattern in SYSTEM_HEADERS[row] if not fnmatch.filter(users[row], pattern)]
        self.none(wrong, "a rule names only files and rooms that are there, and permits only what is used")

    def test_patterns_are_well_formed(self):
        everything = patterns()
        self.assertGreater(len(everything), 100, "the patterns of messages could not be read")
        self.none((f"{one.place}: {fault}" for one in everything for fault in one.faults()),
                  "a message gives an argument to each place of its pattern, and no other")
        known = {one.text for one in everything}
        self.none((f"{place}: {text}" for place, text in translated() if text not in known),
                  "a language has words for patterns that are said")

    def test_sentences_are_messages(self):
        self.none((f"there is no room {room}" for room in MOVED if not (ROOT / "src" / room).is_dir()),
                  "rooms are those of the house")
        self.none(joined_sentences(MOVED), "a sentence is a message with its arguments; + puts none together")
        self.none(failures_of_text(MOVED), "why something failed is a message")

    def test_sentences_sound_like_class(self):
        self.none((f'{pattern.place}: "{pattern.text}"' for pattern in patterns()
                   if pattern.text and UNLIKE_CLASS.search(pattern.text)),
                  "a sentence says it as a US textbook does: substitute, subtract from, congruent, find, a student got")

    def test_loops_run_over_what_lives(self):
        self.none(loops_over_what_is_gone(),
                  "a loop runs over what outlives it: give the temporary a name before the loop")

    def test_packages_are_documented(self):
        listed = re.findall(r"^(?:build|test|web|webtest|debian|package)\s+(\S+)", read(ROOT / "third_party" / "packages.txt"), re.MULTILINE)
        self.assertEqual(len(listed), len(set(listed)), "a package is listed twice in packages.txt")
        documented = read(ROOT / "third_party" / "README.md")
        self.none((name for name in listed if f"`{name}`" not in documented),
                  "third_party/README.md states the license of every package of packages.txt")


def expect(listed):
    """Fails unless the rules named by the build are exactly those of this file."""
    here = {name[len("test_"):] for name in dir(HouseRules) if name.startswith("test_")}
    difference = here ^ set(listed)
    if difference:
        sys.exit("listed in tests/house/CMakeLists.txt or written here, but not both: " + ", ".join(sorted(difference)))


if __name__ == "__main__":
    if len(sys.argv) > 1 and sys.argv[1] == "--expect":
        expect(sys.argv[2:])
    else:
        unittest.main()
