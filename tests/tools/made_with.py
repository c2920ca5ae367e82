#!/usr/bin/env python3
"""Guards: README.md names the same libraries, uses and licences as the programs' own About part
(mobile/look/made_with.json), and beside them only what the tests use."""
import json
import pathlib
import re
import sys

root = pathlib.Path(__file__).resolve().parents[2]
told = {tuple(cell.strip() for cell in row)
        for row in re.findall(r"^\|([^|]+)\|([^|]+)\|([^|]+)\|$", (root / "README.md").read_text().split("## Made with")[1], re.M)}
told -= {("library", "for", "licence"), ("---", "---", "---")}
shown = {(library["name"], library["use"], library["licence"])
         for library in json.loads((root / "mobile/look/made_with.json").read_text())}
faults = [f"README.md does not name {row}" for row in sorted(shown - told)]
faults += [f"the programs do not name {row}" for row in sorted(told - shown) if row[1] != "tests only"]
print("\n".join(faults) if faults else f"Totals: {len(shown)} passed, 0 failed, 0 skipped")
sys.exit(1 if faults else 0)
