"""Runs the built program in a folder of its own; what the tests of the command share. All data is invented."""
import pathlib
import resource
import signal
import subprocess
import sys
import tempfile
import unittest

PROGRAM = pathlib.Path(sys.argv.pop(1)).resolve()
CASES = pathlib.Path(__file__).parent / "cases"


class Program(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def run_program(self, *arguments, status=0, text=None, largest_file=None):
        """`largest_file`: bytes a file may grow to, as on a disk that fills up."""
        def fill_up():
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (largest_file, largest_file))
        done = subprocess.run([PROGRAM, *map(str, arguments)], cwd=self.folder, input=text, capture_output=True,
                              text=True, timeout=300, preexec_fn=None if largest_file is None else fill_up)
        self.assertEqual(done.returncode, status, done.stdout + done.stderr)
        return done

    def shop(self, *arguments, **expected):
        return self.run_program(*arguments, "--db", "shop.db", **expected)

    def empty_shop(self):
        """The database of a shop that nothing came to yet."""
        (self.folder / "nothing-came").mkdir(exist_ok=True)
        self.shop("receive", self.folder / "nothing-came")
