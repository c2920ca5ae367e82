"""Guards: whenever the command is killed, its disk is full or its disk fails, at any of its writes, nothing that it had
acknowledged is lost and no document is half written: the shop is sound afterwards, and doing the act again ends where
an undisturbed day ends. So it does on a read-only medium and with the clock set back a year; and it waits where another
program holds the database. LAPWRIGHT_LONG=1 tries every write; otherwise some of each act. All data is invented."""
import pathlib
import sqlite3
import subprocess
import sys
import time
import unittest

from app_faults import A_YEAR, KINDS, sampled
from command_day import ACTS, CASES, CommandDay, work_of


class Faults(CommandDay):
    PROGRAM, FAULTS = (pathlib.Path(sys.argv.pop(1)).resolve() for _ in range(2))

    def disturb_act(self, act, before, after):
        """The folder as it stood before the act, the act disturbed, and done again; how often."""
        self.put_back(before)
        calls = self.writes_of(*work_of(act))
        self.assertGreater(calls, 0)
        tried = 0
        for kind in KINDS:
            for number in sampled(calls, 2, 0):
                self.put_back(before)
                what = f"{act}, {kind} at write {number} of {calls}"
                disturbed = self.disturb(kind, number, work_of(act), what, refusals=(2, 3))
                self.documents_are_whole(what)
                self.sound(what)
                if disturbed.returncode == 0:
                    self.assertEqual(self.state(), after, what + ": what was acknowledged is lost")
                again = self.run_program(*work_of(act))
                self.assertEqual(again.returncode, 0, what + ", again\n" + again.stdout + again.stderr)
                self.sound(what + ", again")
                self.assertEqual(self.state(), after, what)
                tried += 1
        return tried

    def test_every_act_of_a_day(self):
        self.begin_the_day()
        tried = 0
        for act in ACTS:
            if act == "receipt":
                self.write_receipt()
            before = self.kept("before-" + act)
            self.done(*work_of(act))
            done = self.kept("done-" + act)
            tried += self.disturb_act(act, before, self.state())
            self.put_back(done)
        print(f"{tried} faults in {len(ACTS)} acts")

    def test_a_document_is_written_whole_or_not_at_all(self):
        takeoff, order = ["takeoff", CASES / "alder.job.json", "-o", "order.json"], self.folder / "order.json"
        calls = self.writes_of(*takeoff)
        whole = order.read_text()
        for kind in KINDS:
            for number in range(1, calls + 1):
                order.unlink(missing_ok=True)
                disturbed = self.run_program(*takeoff, fault=f"{kind}:{number}")
                if disturbed.returncode == 0 or order.exists():
                    self.assertEqual(order.read_text(), whole, f"{kind} at write {number}")

    def test_a_read_only_medium(self):
        before = self.planned()
        refused = self.run_program(*work_of("cut"), fault="read:0")
        self.assertEqual((refused.returncode, refused.stdout), (3, ""))
        self.assertIn("shop.db", refused.stderr)
        self.assertEqual(self.state(), before)
        self.done(*work_of("cut"))
        self.sound("read-only, again")

    def test_a_clock_set_back_a_year(self):
        self.planned()
        self.done(*work_of("cut"))
        for act in ("fold", "load"):
            self.done(*work_of(act), fault=f"clock:{A_YEAR}")
        connection = sqlite3.connect(self.folder / "shop.db")
        cut, folded = (connection.execute("SELECT MAX(at), SUM(count) FROM piece_events WHERE state = ?", (state,)).fetchone()
                       for state in ("cut", "folded"))
        connection.close()
        self.assertLess(folded[0], cut[0], "the clock was set back")
        self.assertEqual(folded[1], cut[1])
        self.sound("set back")

    def test_another_program_holds_the_database(self):
        self.planned()
        other = sqlite3.connect(self.folder / "shop.db", isolation_level=None)
        other.execute("BEGIN IMMEDIATE")
        waits = subprocess.Popen([self.PROGRAM, *work_of("cut")], cwd=self.folder, stdout=subprocess.DEVNULL)
        time.sleep(1)
        self.assertIsNone(waits.poll(), "it did not wait")
        other.execute("ROLLBACK")
        other.close()
        self.assertEqual(waits.wait(timeout=120), 0)
        self.sound("held")


if __name__ == "__main__":
    unittest.main()
