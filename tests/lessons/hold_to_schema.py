"""Holds lesson files to the JSON Schema: hold_to_schema.py SCHEMA LESSON...

Prints each break with the file and the place in it. Exit status 0 when all lessons keep to the schema, else 1.
"""
import json
import sys

import jsonschema


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    status = 0
    for path in sys.argv[2:]:
        with open(path, encoding="utf-8") as file:
            lesson = json.load(file)
        for error in validator.iter_errors(lesson):
            status = 1
            place = "/".join(str(part) for part in error.absolute_path)
            print(f"{path}: {place}: {error.message}")
    return status


if __name__ == "__main__":
    sys.exit(main())
