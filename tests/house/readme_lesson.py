"""The lesson that the README shows is a lesson: the program named as argument must find no fault in it."""

import pathlib
import re
import subprocess
import sys
import tempfile

README = pathlib.Path(__file__).resolve().parents[2] / "README.md"


def main():
    blocks = re.findall(r"```json\n(.*?)```", README.read_text(encoding="utf-8"), re.DOTALL)
    if not blocks:
        sys.exit("README.md shows no lesson")
    for block in blocks:
        with tempfile.TemporaryDirectory() as folder:
            lesson = pathlib.Path(folder) / "readme.json"
            lesson.write_text(block, encoding="utf-8")
            subprocess.run([sys.argv[1], "check", str(lesson)], check=True)
            told = subprocess.run([sys.argv[1], "measure", str(lesson)], check=True, capture_output=True, text=True)
            # 4 triangles of 6 × 9 ÷ 2 and a square of 6 × 6; worked by hand.
            if "144 cm" not in told.stdout:
                sys.exit("the surface area of the first problem is not told:\n" + told.stdout)


if __name__ == "__main__":
    main()
