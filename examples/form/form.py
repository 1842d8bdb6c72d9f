#!/usr/bin/env python3
"""Draws the field list of an entry form and asks an open process for verdicts.

Reads only the bundle of schemas and the catalog that the program prints; knows no rule.
Needs Python 3.8 or newer and nothing beside it.
"""

import argparse
import json
import subprocess
import sys
import textwrap
import time

WIDTH = 120


class Schemas:
    """The bundle: each schema by the name of its file."""

    def __init__(self, path):
        with open(path, encoding="utf-8") as file:
            self.files = json.load(file)["$defs"]

    def find(self, file, reference):
        """What a reference of a file names, and the file that it stands in."""
        other, _, pointer = reference.partition("#")
        file = other or file
        node = self.files[file]
        for step in pointer.strip("/").split("/"):
            node = node[step] if step else node
        return file, node

    def resolved(self, file, node):
        while "$ref" in node:
            file, node = self.find(file, node["$ref"])
        return file, node

    def kind(self, file, node):
        """How a field is entered, in words."""
        file, node = self.resolved(file, node)
        if "enum" in node:
            return "one of " + ", ".join(node["enum"])
        if node.get("type") == "array":
            return "several: " + self.kind(file, node["items"])
        if node.get("type") == "boolean":
            return "yes or no"
        if "allOf" in node:
            return self.kind(file, node["allOf"][0])
        return node.get("description", node.get("type", "text"))

    def fields(self, file, node, indent="  ", shown=None):
        """A line for each field of an object, and for those of the objects in it, each once."""
        shown = {} if shown is None else shown
        file, node = self.resolved(file, node)
        for name, field in node.get("properties", {}).items():
            needed = "*" if name in node.get("required", []) else " "
            inner_file, inner = self.resolved(file, field)
            if id(inner) in shown:
                yield f"{indent}{needed} {name}: the same fields as {shown[id(inner)]}"
            elif inner.get("type") == "object" and "properties" in inner:
                shown[id(inner)] = name
                yield f"{indent}{needed} {name}"
                yield from self.fields(inner_file, inner, indent + "  ", shown)
            else:
                yield f"{indent}{needed} {name}: {self.kind(file, field)}"


class Catalog:
    """What can be entered, and the words for its codes."""

    def __init__(self, text):
        self.tree = json.loads(text)

    def label(self, kind, code):
        return self.tree["words"][kind][code]["label"]

    def site(self, code):
        part, _, layer = code.partition("@")
        of = " of the " + self.label("layerKind", layer) if layer else ""
        return self.label("part", part) + of

    def element(self, kind, use):
        return next(e for e in self.tree["elements"] if (e["kind"], e["use"]) == (kind, use))

    def measure(self, defect):
        """How a defect is measured, and in what."""
        how = defect["measured"]
        if how == "GRADE":
            return "one of " + ", ".join(self.label("grade", g) for g in defect["grades"])
        if how in self.tree["units"]:
            return how.lower() + " in " + ", ".join(self.tree["units"][how])
        return {"COUNT": "how many", "PRESENCE": "yes or no"}[how]


def say(text, indent=""):
    print(textwrap.fill(text, WIDTH, subsequent_indent=indent, break_on_hyphens=False))


def draw(schemas, catalog, kind, use):
    """The field list of the form of an element."""
    element = catalog.element(kind, use)
    name = f"{catalog.label('use', use)} {catalog.label('elementKind', kind)}"
    print(f"FORM: {name}   (* must be filled in)")
    file = "assessment.schema.json"
    print("ELEMENT")
    for line in schemas.fields(file, schemas.files[file]["properties"]["element"]):
        say(line, " " * 8)
    if element["layers"]:
        layers = [catalog.label("layerKind", layer) for layer in element["layers"]]
        say("    layers that it can have: " + ", ".join(layers), " " * 8)
    print(f"FINDINGS at {len(element['sites'])} places, and how each is measured")
    for site in element["sites"]:
        fields = {}
        for defect in site["defects"]:
            label = catalog.label("defectKind", defect["defect"])
            fields.setdefault(catalog.measure(defect), []).append(label)
        presence = catalog.label("presence", site["presence"])
        say(f"  {catalog.site(site['site'])} ({presence})", " " * 4)
        for how, defects in fields.items():
            say(f"    [{how}] " + ", ".join(defects), " " * 6)
    for inspection, criteria in element["inspections"].items():
        if criteria:
            label = catalog.label("inspectionKind", inspection).upper()
            print(f"{label} INSPECTION, {len(criteria)} criteria")
            say("  each: " + schemas.kind(file, {"$ref": "record.schema.json#/$defs/outcome"}))
            for criterion in criteria:
                say(f"  {criterion['criterion'].split('/')[0]}: {criterion['way']}", " " * 4)
    print()


def ask(program, lines):
    """Sends lines to a process that stays open, and reads each answer before the next is sent."""
    with subprocess.Popen(
        program + ["assess", "-", "--json"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        encoding="utf-8",
    ) as process:
        for line in lines:
            begun = time.perf_counter()
            process.stdin.write(line + "\n")
            process.stdin.flush()
            answer = json.loads(process.stdout.readline())
            yield answer, (time.perf_counter() - begun) * 1000
        process.stdin.close()


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--schemas", required=True, help="the file bundle.schema.json")
    parser.add_argument("--element", action="append", default=[], help="as in COAT:STRUCTURAL")
    parser.add_argument("program", nargs="+", help="the program, after --")
    given = parser.parse_args()
    schemas = Schemas(given.schemas)

    def printed(*command):
        return subprocess.run(
            given.program + list(command), check=True, capture_output=True, encoding="utf-8"
        ).stdout

    catalog = Catalog(printed("catalog"))
    for element in given.element or ["COAT:STRUCTURAL", "HELMET:STRUCTURAL"]:
        draw(schemas, catalog, *element.split(":"))
    asked = printed("sample", "assess").splitlines()
    wrong = asked[0].replace('"kind":"COAT"', '"kind":"COTA"')
    print("VERDICTS of an open process")
    for answer, took in ask(given.program, asked + [wrong] + asked):
        where = f"  line {answer['line']}, {answer.get('id', '?')}, {took:.0f} ms: "
        if "answer" in answer:
            verdict = answer["answer"]
            say(where + verdict["service"] + " " + verdict["words"]["verdict"], " " * 4)
        else:
            for fault in answer["faults"]:
                say(where + json.dumps(fault), " " * 4)
    return 0


if __name__ == "__main__":
    sys.exit(main())
