"""Runs a program's day while something goes wrong with its disk; what the tests of the command and both apps share."""
import json
import os
import pathlib
import shutil
import sqlite3
import subprocess
import tempfile
import unittest

KINDS = ("kill", "torn", "full", "error")
A_YEAR = 365 * 24 * 3600


def sampled(calls, most, shift):
    """Numbers of writes to be disturbed, spread over all of them from a part `shift` of the way to the second on; all of
    them with LAPWRIGHT_LONG=1."""
    if os.environ.get("LAPWRIGHT_LONG") or calls <= most:
        return range(1, calls + 1)
    return [1 + int(calls * (part + shift) / most) for part in range(most)]


class AppFaults(unittest.TestCase):
    """A test names PROGRAM and FAULTS, the library that is loaded ahead of it."""

    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.scratch = pathlib.Path(folder.name)
        self.folder = self.scratch / "day"
        self.folder.mkdir()

    def run_program(self, *arguments, fault=None):
        environment = dict(os.environ)
        if fault:
            environment |= {"LD_PRELOAD": str(self.FAULTS), "LAPWRIGHT_FAULTS": f"{fault}:{self.folder}",
                            "ASAN_OPTIONS": "verify_asan_link_order=0:detect_leaks=0"}
        return subprocess.run([self.PROGRAM, *map(str, arguments)], cwd=self.folder, env=environment, capture_output=True,
                              text=True, timeout=600)

    def done(self, *arguments, fault=None):
        """What the program says of work that goes well."""
        run = self.run_program(*arguments, fault=fault)
        self.assertEqual(run.returncode, 0, run.stdout + run.stderr)
        return run

    def writes_of(self, *arguments):
        return int(self.done(*arguments, fault="count:0").stderr.rsplit("faults: ", 1)[1].split()[0])

    def kept(self, name):
        """A copy of the folder."""
        return shutil.copytree(self.folder, self.scratch / name)

    def put_back(self, kept=None):
        """The folder as it was kept, or empty; the folder itself stays, on which a disk may be mounted."""
        for path in self.folder.iterdir():
            shutil.rmtree(path) if path.is_dir() else path.unlink()
        if kept:
            shutil.copytree(kept, self.folder, dirs_exist_ok=True)

    def copy_is_whole(self, path, what):
        connection = sqlite3.connect(path)
        self.assertEqual(connection.execute("PRAGMA integrity_check").fetchone(), ("ok",), what)
        connection.close()

    def documents_are_whole(self, what):
        for path in self.folder.glob("*.json"):
            try:
                json.loads(path.read_text())
            except ValueError as error:
                self.fail(f"{what}: {path.name} is half written: {error}")

    def disturb(self, kind, number, work, what, refusals=(3,)):
        """How work ended whose write of that number went wrong; `refusals` are the codes with which the program may end
        where its disk fails."""
        disturbed = self.run_program(*work, fault=f"{kind}:{number}")
        self.assertIn(disturbed.returncode, (0, *refusals) if kind in ("full", "error") else (0, -9),
                      what + "\n" + disturbed.stdout + disturbed.stderr)
        if disturbed.returncode == 3:
            self.assertNotEqual(disturbed.stderr.strip(), "", what + ": nothing was said")
        return disturbed
