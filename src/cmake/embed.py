#!/usr/bin/env python3
"""Writes a C++ source that holds the bytes of files: embed.py OUT.cpp LIST

LIST names one file a line. String literals compile far faster than lists of numbers.
"""
import pathlib
import sys

BYTES_A_LINE = 4096


def literal(data):
    """`data` as the inside of a C++ string literal. Octal escapes have three digits, so that none runs on."""
    plain = {byte: chr(byte) for byte in range(32, 127) if chr(byte) not in '"\\?'}
    return "".join(plain.get(byte) or f"\\{byte:03o}" for byte in data)


def main(target, list_file):
    paths = [pathlib.Path(line) for line in pathlib.Path(list_file).read_text().splitlines() if line]
    paths.sort(key=lambda path: path.name.encode())
    names = [path.name for path in paths]
    twice = sorted({name for name in names if names.count(name) > 1})
    if twice:
        sys.exit(f"two files to embed share the name {twice[0]}")
    out = ['#include "platform/asset_table.hpp"', "", "namespace fw::platform {", "namespace {", ""]
    for number, path in enumerate(paths):
        data = path.read_bytes()
        out.append(f"const char bytes_{number}[] =")
        chunks = [data[i : i + BYTES_A_LINE] for i in range(0, len(data), BYTES_A_LINE)] or [b""]
        out += [f'    "{literal(chunk)}"' for chunk in chunks]
        out[-1] += ";"
    out += ["", "}  // namespace", "", "const Asset asset_table[] = {"]
    out += [f'    {{"{path.name}", bytes_{i}, {path.stat().st_size}}},' for i, path in enumerate(paths)]
    out += ["};", f"const std::size_t asset_count = {len(paths)};", "", "}  // namespace fw::platform", ""]
    pathlib.Path(target).write_text("\n".join(out))


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(sys.argv[1], sys.argv[2])
