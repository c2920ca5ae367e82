"""Guards: whenever the field app is killed, its disk is full or its disk fails, at any of its writes, what the person saw
done is there when the tablet starts again, its journal tells the same, no file is half written, and the next act goes
well. LAPWRIGHT_LONG=1 tries every write; otherwise some of the day. All data is invented."""
import json
import os
import pathlib
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import unittest
import zipfile

PROGRAM, FAULTS = (pathlib.Path(sys.argv.pop(1)).resolve() for _ in range(2))
MOST = 10**9 if os.environ.get("LAPWRIGHT_LONG") else 4
# What the person saw, and how much of it must be there.
COUNTED = ("job", "run", "closed", "trim", "photo", "sent", "load", "counted")


class TabletFaults(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name) / "tablet"
        self.folder.mkdir()

    def run_program(self, what, fault=None):
        environment = dict(os.environ)
        if fault:
            environment |= {"LD_PRELOAD": str(FAULTS), "LAPWRIGHT_FAULTS": f"{fault}:{self.folder}",
                            "ASAN_OPTIONS": "verify_asan_link_order=0:detect_leaks=0"}
        return subprocess.run([PROGRAM, what, self.folder], env=environment, capture_output=True, text=True, timeout=120)

    def fresh(self):
        shutil.rmtree(self.folder)
        self.folder.mkdir()

    def files_are_whole(self, what):
        for path in self.folder.iterdir():
            if path.suffix == ".json":
                json.loads(path.read_text())
            elif path.suffix == ".zip":
                self.assertIsNone(zipfile.ZipFile(path).testzip(), what)
            elif path.suffix == ".db" and path.name.startswith("lapwright-backup-"):
                connection = sqlite3.connect(path)
                self.assertEqual(connection.execute("PRAGMA integrity_check").fetchone(), ("ok",), what)
                connection.close()

    def holds(self, done, what):
        checked = self.run_program("check")
        self.assertEqual(checked.returncode, 0, what + "\n" + checked.stdout + checked.stderr)
        there = json.loads(checked.stdout)
        self.assertTrue(there["sound"] and there["goes_on"], f"{what}: {there}")
        for act in COUNTED:
            self.assertGreaterEqual(there.get(act, 0), done.count(act), f"{what}: {act} is lost; {there}")
        self.files_are_whole(what)
        if "receipt" in done:
            self.assertTrue(list(self.folder.glob("receipt-*.json")), what)
        if "backup" in done:
            self.assertTrue(list(self.folder.glob("lapwright-backup-*.db")), what)

    def test_every_act_of_a_day(self):
        counted = self.run_program("work", fault="count:0")
        self.assertEqual(counted.returncode, 0, counted.stderr)
        calls = int(counted.stderr.rsplit("faults: ", 1)[1].split()[0])
        self.holds(counted.stdout.split(), "undisturbed")
        numbers = sorted({1 + calls * part // MOST for part in range(MOST)}) if calls > MOST else range(1, calls + 1)
        tried = 0
        for kind in ("kill", "torn", "full", "error"):
            for number in numbers:
                self.fresh()
                what = f"{kind} at write {number} of {calls}"
                disturbed = self.run_program("work", fault=f"{kind}:{number}")
                self.assertIn(disturbed.returncode, (0, 3) if kind in ("full", "error") else (0, -9),
                              what + "\n" + disturbed.stdout + disturbed.stderr)
                self.holds(disturbed.stdout.split(), what)
                tried += 1
        print(f"{tried} faults in a day of {calls} writes")


if __name__ == "__main__":
    unittest.main()
