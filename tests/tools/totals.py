"""Adds up what the test programs counted: prints "passed failed skipped" from CTest's log."""
import re
import sys

passed = failed = skipped = 0
with open(sys.argv[1], encoding="utf-8", errors="replace") as log:
    programs = re.split(r"^\d+/\d+ Testing: ", log.read(), flags=re.MULTILINE)[1:]
for program in programs:
    totals = re.findall(r"^Totals: (\d+) passed, (\d+) failed, (\d+) skipped", program, flags=re.MULTILINE)
    ended_well = re.search(r"^Test Passed\.", program, flags=re.MULTILINE)
    passed += sum(int(t[0]) for t in totals)
    failed += sum(int(t[1]) for t in totals)
    skipped += sum(int(t[2]) for t in totals)
    if not totals:
        if ended_well:
            passed += 1
        else:
            failed += 1
    elif not ended_well and not any(int(t[1]) for t in totals):
        failed += 1
print(passed, failed, skipped)
