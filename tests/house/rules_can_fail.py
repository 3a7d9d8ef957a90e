"""Breaks every house rule on purpose in a copy of the tree and sees that its test fails and names the place: a rule
that cannot fail is no rule.
"""

import pathlib
import shutil
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
COPIED = ["src", "shaders", "tests", "third_party", "demo_scenes", "CMakeLists.txt", "CMakePresets.json", "README.md",
          "DEVELOPERS.md", "LICENSE", ".ci", ".clang-format", ".clang-tidy", ".editorconfig", ".gitattributes",
          ".gitignore"]
RULES = "tests/house/house_rules.py"

# rule: (file, what is put at its end, what the rule must then name if not the file); a file that is not there is made,
# in a folder that is. Instead of a text, a function gives the file's new text.
BREAKS = {
    "includes_run_downward": [("src/exact/broken.cpp", '#include "solids/solid.hpp"\n')],
    "system_headers_stay_in_their_rooms": [
        ("src/exact/broken.cpp", "#include <chrono>\n"),
        ("src/reasoning/broken.cpp", "#include <GLFW/glfw3.h>\n"),
        ("src/nets/broken.cpp", "void f() { std::srand(1); }\n"),
        ("src/platform/broken.cpp", "#include <strange/library.h>\n"),
    ],
    "imgui_calls_stay_in_their_files": [("src/panels/broken.cpp", "void f() { ImGui::Text(0); }\n")],
    "kinds_are_named_in_solids_alone": [
        ("src/reasoning/broken.cpp", 'const char* kind = "pyramid";\n'),
        ("src/nets/broken.cpp", "bool is_right_prism();\n"),
        ("src/practice/broken.cpp", "void f() { if (figure.bases == 2) g(); }\n"),
        ("src/practice/broken.cpp", "void f() { figure.bases += face.role == FaceRole::Base ? 1U : 0U; }\n"),
        ("src/reasoning/broken.cpp", "bool f() { return faces_of_role(solid, FaceRole::Base).size() == 1; }\n"),
        ("src/practice/broken.cpp", "void f() { for (const solids::Kind& kind : solids::kinds()) g(kind); }\n"),
        ("src/lessons/broken.cpp", 'bool f() { return description.fields.count("lies") > 0; }\n'),
        ("src/lessons/broken.cpp", 'auto f() { return edge_named(solid, "width"); }\n'),
    ],
    "a_solid_is_asked_through_its_body": [
        ("src/practice/broken.cpp", "bool is_convex(const geometry::Polyhedron& polyhedron);\n"),
        ("src/figures/broken.cpp", "auto corners(const solids::Solid& solid) { return solid.body().facets().vertices(); }\n"),
        ("src/render/broken.cpp", '#include "geometry/polyhedron.hpp"\n'),
    ],
    "files_are_short": [
        ("src/nets/broken.cpp", "// line\n" * 501),
        ("src/nets/broken.cpp", "// " + "x" * 120 + "\n"),
    ],
    "code_is_formatted": [("src/nets/broken.cpp", "int   f( );\n")],
    "folders_are_small": [("src/nets/crowd", None)],
    "shaders_have_no_version": [("shaders/broken.frag", "#version 330 core\n")],
    "opengl_calls_are_in_both_dialects": [
        ("src/render/gl/broken.cpp", "void f() { glPolygonMode(1, 2); }\n"),
        ("src/panels/broken.cpp", "void f() { glClear(1); }\n"),
    ],
    "headers_include_what_they_name": [
        ("src/nets/broken.hpp", "#pragma once\n#include <string>\nstd::vector<int> all();\n"),
        ("src/nets/broken.hpp", "#pragma once\nstd::no_such_name f();\n"),
    ],
    "headers_begin_with_pragma_once": [("src/nets/broken.hpp", "int f();\n")],
    "no_order_is_taken_from_hashes": [
        ("src/nets/broken.cpp", "void f(std::unordered_map<int, int> seen) { for (auto& s : seen) g(s); }\n")],
    "the_portable_language": [
        ("src/nets/broken.cpp", "#include <format>\nauto f() { return std::format(0); }\n"),
        ("src/nets/broken.hpp", "#pragma once\nusing namespace fw;\n"),
    ],
    "american_spelling": [("README.md", "\nThe col" + "our of the cen" + "tre.\n")],
    "top_level_is_known": [("notes.txt", "a note\n")],
    "nothing_is_left_to_do": [("src/nets/broken.cpp", "// TO" + "DO: more\n")],
    "documents_name_what_exists": [("DEVELOPERS.md", "\nSee `src/nets/no_such_file.hpp`.\n")],
    "documents_name_presets_that_exist": [("DEVELOPERS.md", "\n    cmake --preset nosuch\n", "nosuch")],
    "rules_name_what_exists": [
        (RULES, '\nGONE = ["src/no_such_room/*"]\n', "src/no_such_room/*"),
        (RULES, lambda text: text.replace("OUTWARD = {", 'OUTWARD = {"no_such_room", '), "no_such_room"),
        (RULES, lambda text: text.replace('"fstream": [', '"fstream": ["src/exact/*"'), "src/exact/* includes <fstream"),
    ],
    "patterns_are_well_formed": [
        ("src/solids/broken.cpp", 'auto m = message("it has {count");\n'),
        ("src/solids/broken.cpp", 'auto m = message("it has {count} faces");\n'),
        ("src/solids/broken.cpp", 'auto m = message("it has {count:an} faces", {{"count", 4}});\n'),
        ("src/nets/broken.cpp", 'auto m = words::message("it has faces", {{"count", said(message("{n}", {{"n", 4}}))}});\n'),
        ("src/nets/broken.cpp", "auto m = message(sentence);\n"),
        ("src/practice/broken.cpp", 'Row row{"A1", way, Saying("{n} would be all.", "Which {face} is it?")};\n'),
        ("tests/words/broken.words", 'say "nobody says this"\nas "NIEMAND"\n'),
    ],
    "sentences_are_messages": [
        ("src/solids/broken.cpp", 'auto m = "it has " + count;\n'),
        ("src/solids/broken.cpp", 'text += " faces";\n'),
        ("src/lessons/broken.cpp", 'return failure("there is no such face");\n'),
        ("tests/house/patterns.py", lambda text: text.replace("MOVED = [", 'MOVED = ["no_such_room", '), "no_such_room"),
    ],
    "sentences_sound_like_class": [
        ("src/solids/broken.cpp", 'auto m = message("Asked is the volume.");\n'),
        ("src/tasks/broken.cpp", 'auto m = message("Take {n} from both sides.", {{"n", n}});\n'),
        ("src/tasks/broken.cpp", 'auto m = message("It is no net.");\n'),
    ],
    "loops_run_over_what_lives": [
        ("src/solids/broken.cpp", "Result<Solid, Fault> made();\nvoid f() { for (const Face& face : made()->list) g(face); }\n"),
        ("src/tasks/broken.cpp", "std::optional<Rows> made();\nvoid f() { for (const Row& row : made().value()) g(row); }\n"),
        ("tests/nets/broken.cpp", "std::optional<Rows> made();\nvoid f() { for (const Row& row : *made()) g(row); }\n"),
    ],
    "packages_are_documented": [("third_party/packages.txt", "build libnosuch-dev # nothing\n", "libnosuch-dev")],
}


def fails(tree, rule, naming):
    done = subprocess.run([sys.executable, "-B", str(tree / RULES), f"HouseRules.test_{rule}"], capture_output=True,
                          text=True, check=False)
    return done.returncode != 0 and naming in done.stderr


def break_file(path, change):
    if change is None:
        path.mkdir()
        for number in range(40):
            (path / f"file_{number}.cpp").write_text("\n", encoding="utf-8")
    else:
        old = path.read_text(encoding="utf-8") if path.is_file() else ""
        path.write_text(change(old) if callable(change) else old + change, encoding="utf-8")


def main():
    holes = []
    with tempfile.TemporaryDirectory() as folder:
        tree = pathlib.Path(folder) / "house"
        tree.mkdir()
        for name in COPIED:
            source = ROOT / name
            if source.is_dir():
                shutil.copytree(source, tree / name, ignore=shutil.ignore_patterns("__pycache__", "corpus"))
            else:
                shutil.copy(source, tree / name)
        for rule, breaks in BREAKS.items():
            for name, change, *named in breaks:
                path = tree / name
                if not path.parent.is_dir():
                    holes.append(f"{rule}: there is no folder for {name}")
                    continue
                old = path.read_text(encoding="utf-8") if path.is_file() else None
                break_file(path, change)
                if not fails(tree, rule, *named or [name]):
                    holes.append(f"{rule} does not see what was put into {name}")
                if path.is_dir():
                    shutil.rmtree(path)
                elif old is None:
                    path.unlink()
                else:
                    path.write_text(old, encoding="utf-8")
    unbroken = set(sys.argv[1:]) - set(BREAKS)
    if unbroken:
        holes.append("never broken: " + ", ".join(sorted(unbroken)))
    if holes:
        sys.exit("\n".join(holes))


if __name__ == "__main__":
    main()
