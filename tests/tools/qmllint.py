"""qmllint over the files of one module: qmllint.py QMLLINT ARGUMENTS... FILES.... Any warning fails. Qt 6.4 calls it
unqualified when a delegate uses an id of its own file, and only later Qts can say that this is meant (pragma
ComponentBehavior); such accesses are let pass, every other one is not. So are ids inside deferred properties: they cost
an early creation, no more."""
import json
import re
import subprocess
import sys

command = sys.argv[1:]
answer = subprocess.run([*command, "--json", "-", "--deferred-property-id", "disable"], capture_output=True, text=True)
problems = []
for file in json.loads(answer.stdout)["files"]:
    with open(file["filename"], encoding="utf-8") as source:
        text = source.read()
    ids = set(re.findall(r"^\s*id:\s*(\w+)", text, re.MULTILINE))
    for warning in file["warnings"]:
        if warning["type"] == "info":
            continue
        start = warning.get("charOffset", 0)
        word = text[start:start + warning.get("length", 0)]
        if warning["message"] == "Unqualified access" and word in ids:
            continue
        problems.append(f"{file['filename']}:{warning.get('line')}:{warning.get('column')}: {warning['message']} ({word})")

print("\n".join(problems))
sys.exit(1 if problems else 0)
