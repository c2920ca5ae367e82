#!/usr/bin/env python3
"""Guards: whoever asks about a finding is told why it matters and what to do. Every kind of finding in the sources and
every fact that a clause of the shipped rule sets demands has its entry in shared-core/help/findings.json, and no entry
is of a kind that is not there. (That both languages have the words, core_phrases.py sees.)"""
import json
import pathlib
import re
import sys

root = pathlib.Path(__file__).resolve().parents[2]
code = re.compile(r'"((?:site|trim|pieces|schedule|arrival)(?:\.(?!json)[a-z_-]+)+)"')
merging = re.compile(r'tell\(\s*rules::Weight::\w+, "([a-z]+)"')

kinds = {"rules.unchecked", "rules.clause"}
for folder in ("shared-core", "shop"):
    for path in sorted((root / folder).rglob("*.cpp")):
        kinds.update(code.findall(path.read_text()))
kinds.update("site.merge." + name for name in merging.findall((root / "shared-core/site/merge.cpp").read_text()))
for path in sorted((root / "shared-core/rule-sets").glob("*.json")):
    for clause in json.loads(path.read_text())["clauses"]:
        kinds.update("rules." + demand["fact"] for demand in clause["demands"])

help_texts = json.loads((root / "shared-core/help/findings.json").read_text())
faults = [f"{kind}: nothing helps with it" for kind in sorted(kinds - help_texts.keys())]
faults += [f"{kind}: no finding is of this kind" for kind in sorted(help_texts.keys() - kinds)]
for kind, texts in help_texts.items():
    for member in ("reason", "remedy"):
        text = texts.get(member, "")
        if not re.fullmatch(r"[A-Z].{10,180}\.", text):
            faults.append(f"{kind}: {member} is {text!r}, expected a sentence of at most 180 characters")
print("\n".join(faults) if faults else f"Totals: {len(kinds)} passed, 0 failed, 0 skipped")
sys.exit(1 if faults else 0)
