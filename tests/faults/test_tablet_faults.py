"""Guards: whenever the field app is killed, its disk is full or its disk fails, at any of its writes, what the person saw
done is there when the tablet starts again, its journal tells the same, no file is half written, and the next act goes
well. LAPWRIGHT_LONG=1 tries every write; otherwise some of the day. All data is invented."""
import pathlib
import sys
import unittest

from app_faults import A_YEAR, KINDS, sampled
from tablet_day import TabletDay


class TabletFaults(TabletDay):
    PROGRAM, FAULTS = (pathlib.Path(sys.argv.pop(1)).resolve() for _ in range(2))

    def test_every_act_of_a_day(self):
        work = ["work", self.folder]
        self.holds(self.done(*work).stdout, "undisturbed")
        self.put_back()
        calls = self.writes_of(*work)
        tried = 0
        for position, kind in enumerate(KINDS):
            for number in sampled(calls, 4, position / len(KINDS)):
                self.put_back()
                what = f"{kind} at write {number} of {calls}"
                self.holds(self.disturb(kind, number, work, what).stdout, what)
                tried += 1
        print(f"{tried} faults in a day of {calls} writes")

    def test_a_read_only_medium(self):
        told = self.done("work", self.folder).stdout
        refused = self.run_program("work", self.folder, fault="read:0")
        self.assertEqual((refused.returncode, refused.stdout), (3, ""))
        self.assertIn("tablet.db", refused.stderr)
        self.holds(told, "read-only")

    def test_a_clock_set_back_a_year(self):
        told = self.done("work", self.folder).stdout
        self.holds(told, "set back", fault=f"clock:{A_YEAR}")
        self.whole("put right")


if __name__ == "__main__":
    unittest.main()
