"""Guards: whenever the shop app is killed, its disk is full or its disk fails, at any write of any act of a day, while its
medium is read-only, while another program holds its database, or with its clock set back a year: it says so, what a
person has typed stays, what it said is done is there, no file is half written, the database is sound, and doing the act
again ends where an undisturbed one ends. Each kind of fault disturbs one write of each act, another one each;
LAPWRIGHT_LONG=1 disturbs every write in every way. All data is invented."""
import pathlib
import shutil
import sqlite3
import sys
import tempfile
import unittest

from app_faults import A_YEAR, KINDS, sampled
from shop_day import ACTS, ShopDay


class ShopFaults(ShopDay):
    PROGRAM, COMMAND, FAULTS = (pathlib.Path(sys.argv.pop(1)).resolve() for _ in range(3))
    PLANNED = None

    def planned(self):
        """A shop with a plan that waits to be cut; looked for once."""
        if ShopFaults.PLANNED is None:
            folder = tempfile.TemporaryDirectory()
            self.addClassCleanup(folder.cleanup)
            self.done(*self.acts("stock", "order", "plan"))
            ShopFaults.PLANNED = shutil.copytree(self.folder, pathlib.Path(folder.name) / "planned")
        self.put_back(ShopFaults.PLANNED)

    def disturb_act(self, act, before, after):
        """How often, and of how many writes."""
        self.put_back(before)
        calls = self.writes_of(*self.acts(act))
        tried = 0
        for position, kind in enumerate(KINDS):
            for number in sampled(calls, 1, (position + ACTS.index(act)) % len(KINDS) / len(KINDS)):
                self.put_back(before)
                what = f"{act}, {kind} at write {number} of {calls}"
                told = self.disturb(kind, number, self.acts(act), what).stdout
                if told:  # it was opened
                    self.nothing_is_lost(told, what)
                again = self.done(*self.acts(act)).stdout
                self.assertEqual(self.counts(), after, what)
                self.there_is(again, what + ", done again")
                tried += 1
        return tried, calls

    def test_every_act_of_a_day(self):
        faults = writes = 0
        for act in ACTS:
            before = self.kept("before-" + act)
            self.there_is(self.done(*self.acts(act)).stdout, act)
            done = self.kept("done-" + act)
            tried, calls = self.disturb_act(act, before, self.counts())
            faults, writes = faults + tried, writes + calls
            self.put_back(done)
        self.assertEqual(self.counts()["received"] + self.counts()["damaged"], self.counts()["loaded"])
        print(f"{faults} faults in a day of {writes} writes")

    def test_what_is_typed_outlives_a_full_disk(self):
        self.planned()
        opened = self.writes_of(*self.acts("stock"))
        full = self.run_program(*self.acts("cut"), fault=f"full:{opened + 1}")
        self.assertEqual(full.returncode, 3, full.stdout)
        self.assertNotIn("cut", full.stdout)
        self.assertIn("typed 1", full.stdout)
        self.there_is(full.stdout, "full")
        self.there_is(self.done(*self.acts("cut")).stdout, "full, done again")

    def test_a_read_only_medium(self):
        self.planned()
        before = self.counts()
        refused = self.run_program(*self.acts("cut"), fault="read:0")
        self.assertEqual((refused.returncode, refused.stdout), (3, ""))
        self.assertIn("shop.db", refused.stderr)
        self.assertEqual(self.counts(), before)
        self.there_is(self.done(*self.acts("cut")).stdout, "read-only, done again")

    def test_another_program_holds_the_database(self):
        self.planned()
        other = sqlite3.connect(self.folder / "shop.db", isolation_level=None)
        other.execute("BEGIN IMMEDIATE")
        held = self.run_program(*self.acts("cut"))
        other.execute("ROLLBACK")
        other.close()
        self.assertEqual(held.returncode, 3, held.stdout)
        self.assertIn("another program holds the database", held.stderr)
        self.assertNotIn("cut", held.stdout)
        self.assertIn("typed 1", held.stdout)
        self.there_is(held.stdout, "held")
        self.there_is(self.done(*self.acts("cut")).stdout, "held, done again")

    def test_a_clock_set_back_a_year(self):
        self.planned()
        self.done(*self.acts("cut"))
        back = self.done(*self.acts(*ACTS[4:]), fault=f"clock:{A_YEAR}")
        cut, folded = (self.query(f"SELECT MAX(at) FROM piece_events WHERE state = '{state}'") for state in ("cut", "folded"))
        self.assertLess(folded, cut, "the clock was set back")
        self.there_is(back.stdout, "set back")
        self.assertEqual(self.counts()["folded"], self.counts()["cut"])
        self.there_is(self.done(*self.acts()).stdout, "with the clock put right")


if __name__ == "__main__":
    unittest.main()
