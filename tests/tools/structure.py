"""The house rules that a compiler does not check: which folder may include which, no Qt in the core outside storage,
no files or clocks in the core, and every header opening with #pragma once. Exits 1 with each place that breaks one."""
import re
import subprocess
import sys

MAY_INCLUDE = {
    "measure": set(),
    "rules": {"measure"},
    "metal": {"measure", "rules"},
    "site": {"measure", "rules"},
    "trim": {"measure", "rules", "metal", "site"},
    "pieces": {"measure", "rules", "metal", "site", "trim"},
    "fold": {"measure", "rules", "metal", "trim"},
    "cutting": {"measure", "rules"},
    "schedule": {"measure", "rules", "metal", "site", "trim", "pieces", "fold", "cutting"},
}
CORE = set(MAY_INCLUDE)
MAY_INCLUDE["documents"] = CORE
MAY_INCLUDE["parcel"] = CORE | {"documents"}
MAY_INCLUDE["drawing"] = CORE | {"documents"}
MAY_INCLUDE["storage"] = CORE | {"documents"}

problems = []
files = subprocess.run(["git", "ls-files", "--", "shared-core/*.h", "shared-core/*.cpp"],
                       capture_output=True, text=True, check=True).stdout.split()
for path in files:
    folder = path.split("/")[1]
    allowed = MAY_INCLUDE[folder] | {folder}
    with open(path, encoding="utf-8") as source:
        lines = source.read().splitlines()
    if path.endswith(".h") and (not lines or lines[0] != "#pragma once"):
        problems.append(f"{path}:1: a header opens with #pragma once")
    for number, line in enumerate(lines, 1):
        place = f"{path}:{number}"
        quoted = re.match(r'#include "([a-z_]+)/', line)
        if quoted and quoted[1] not in allowed:
            problems.append(f"{place}: {folder} must not include {quoted[1]}")
        angled = re.match(r"#include <([^>]+)>", line)
        if angled and folder != "storage":
            header = angled[1]
            if header.startswith("Q"):
                problems.append(f"{place}: only storage may include Qt")
            if header in ("fstream", "filesystem", "iostream", "cstdlib") or header.startswith("nlohmann") and folder in CORE:
                problems.append(f"{place}: {folder} must not include <{header}>")
            if header in ("chrono", "ctime") and folder != "cutting":
                # cutting/ stops at a time limit handed in by its caller; its decisions never depend on the clock.
                problems.append(f"{place}: {folder} must not read a clock")

# Whoever writes a document chooses its names, and could choose 100 000 that the standard library hashes alike: what looks
# a text up by hash would then look at all of them, for each. So texts are looked up in order everywhere. Qt's tables start
# from a number that each run draws anew, and are let be.
BY_HASH = re.compile(r"unordered_(multi)?(map|set)<\s*(const\s+)?std::(basic_)?string|std::hash<\s*std::(basic_)?string")
for path in subprocess.run(["git", "ls-files", "--"] + [f"{folder}/*.{end}" for folder in ("shared-core", "shop", "mobile")
                                                        for end in ("h", "cpp")],
                           capture_output=True, text=True, check=True).stdout.split():
    with open(path, encoding="utf-8") as source:
        text = source.read()
    for found in BY_HASH.finditer(text):
        problems.append(f"{path}:{text.count(chr(10), 0, found.start()) + 1}: texts are looked up in order, not by hash")

# What a shop does is the same behind the command, the screens and the papers: it asks no options, prints nothing.
for path in subprocess.run(["git", "ls-files", "--", "shop/acts/*.h", "shop/acts/*.cpp"],
                           capture_output=True, text=True, check=True).stdout.split():
    with open(path, encoding="utf-8") as source:
        for number, line in enumerate(source, 1):
            if re.match(r"#include <(QCommandLine|QGui|QQuick|QWidget|QPainter|cstdio|iostream)", line):
                problems.append(f"{path}:{number}: shop/acts must not include this")
            if re.match(r'#include "(command|print|app)/', line):
                problems.append(f"{path}:{number}: shop/acts must not include what stands before it")

# What both apps share knows neither of them, and no database.
SHARED_BY_APPS = {"mobile/paint": CORE | {"documents", "drawing", "paint"},
                  "mobile/speech": {"measure", "speech"},
                  "mobile/look": CORE | {"documents", "drawing", "paint", "speech", "look"}}
for folder, allowed in SHARED_BY_APPS.items():
    for path in subprocess.run(["git", "ls-files", "--", f"{folder}/*.h", f"{folder}/*.cpp"],
                               capture_output=True, text=True, check=True).stdout.split():
        with open(path, encoding="utf-8") as source:
            for number, line in enumerate(source, 1):
                quoted = re.match(r'#include "([a-z_]+)/', line)
                if quoted and quoted[1] not in allowed:
                    problems.append(f"{path}:{number}: {folder} must not include {quoted[1]}")

# The shop's desks know no screen, and neither desks nor screens know the command or the papers' program.
for path in subprocess.run(["git", "ls-files", "--", "shop/model/*.h", "shop/model/*.cpp", "shop/app/*.h", "shop/app/*.cpp"],
                           capture_output=True, text=True, check=True).stdout.split():
    barred = "command" if path.startswith("shop/app/") else "command|app"
    with open(path, encoding="utf-8") as source:
        for number, line in enumerate(source, 1):
            if re.match(rf'#include "({barred})/', line) or (path.startswith("shop/model/") and "#include <QQuickWindow>" in line):
                problems.append(f"{path}:{number}: {path.rsplit('/', 1)[0]} must not include this")

for problem in problems:
    print(problem)
sys.exit(1 if problems else 0)
