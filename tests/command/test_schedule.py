"""Guards: planning schedules what is to be cut and folded on the shop's floor, says what it comes to against the order
of arrival, keeps floor and pins, and prints each day. All data is invented."""
import json
import sqlite3
import unittest
import xml.dom.minidom

from program import CASES, Program

ORDERS = ("alder", "birch")
MONDAY = "2026-12-07T07:00"


class Schedule(Program):
    def setUp(self):
        super().setUp()
        for name in ORDERS:
            self.run_program("takeoff", CASES / f"{name}.job.json", "-o", f"{name}.order.json")
        self.shop("receive", *[f"{name}.order.json" for name in ORDERS])

    def plan(self, *more, **expected):
        return self.shop("plan", "--time", "1", *more, **expected)

    def first_plan(self, *more, **expected):
        return self.plan("--stock", CASES / "shop.stock.json", "--floor", CASES / "shop.floor.json", "--from", MONDAY, *more,
                         **expected)

    def printed(self):
        self.shop("print", "-o", "tickets")
        return json.loads((self.folder / "tickets" / "schedule.json").read_text())

    def test_a_day_is_scheduled_and_printed(self):
        done = self.first_plan()
        self.assertNotIn("no floor is known", done.stderr)
        lines = [line for line in done.stdout.splitlines() if line.startswith("schedule: ")]
        self.assertIn("all done Mon 7 Dec", lines[0])
        self.assertIn("0 of 2 orders late", lines[1])
        self.assertIn("against the order of arrival", lines[2])
        schedule = self.printed()
        self.assertEqual({machine["id"] for machine in schedule["machines"]}, {"shear", "north", "south"})
        folded = sum(task["units"] for task in schedule["tasks"] if "order" in task)
        self.assertEqual(folded, 32, "every piece is folded once")
        for task in schedule["tasks"]:
            self.assertGreaterEqual(task["setup_from"], MONDAY)
            self.assertLessEqual(task["end"], "2026-12-07T15:30")
        picture = self.folder / "tickets" / "schedule-01.svg"
        xml.dom.minidom.parse(str(picture))
        self.assertIn("Monday 7 December 2026", picture.read_text())

    def test_the_same_in_json(self):
        schedule = json.loads(self.first_plan("--json").stdout)[-1]["schedule"]
        self.assertEqual((schedule["from"], schedule["late_orders"]), (MONDAY, 0))
        self.assertLessEqual(schedule["makespan_bound_seconds"], schedule["makespan_seconds"])
        self.assertLessEqual(schedule["makespan_seconds"], schedule["first_come"]["makespan_seconds"])
        self.assertEqual(schedule["late"], [])

    def test_a_pin_is_kept_until_it_is_taken_away(self):
        self.first_plan()
        schedule = self.printed()
        lot = next(task for task in schedule["tasks"] if "order" in task)
        schedule["pins"] = [{"task": lot["key"], "machine": "south", "start": "2026-12-07T13:00"}]
        (self.folder / "pinned.json").write_text(json.dumps(schedule))
        self.plan("--from", MONDAY, "--pins", "pinned.json")
        for _ in range(2):
            where = next(task for task in self.printed()["tasks"] if task["key"] == lot["key"])
            self.assertEqual((where["machine"], where["start"], where["pinned"]), ("south", "2026-12-07T13:00", True))
            self.plan("--from", MONDAY)
        schedule["pins"][0]["start"] = "2026-12-08T09:00"
        (self.folder / "closed.json").write_text(json.dumps(schedule))
        told = self.plan("--from", MONDAY, "--pins", "closed.json", status=1).stderr
        self.assertIn("BLOCKS", told)
        self.assertIn("when no machine that can make it works", told)
        self.assertNotIn("pins", self.printed())

    def test_what_is_late_says_why(self):
        done = self.first_plan("--from", "2026-12-09T15:00")
        self.assertIn("2 of 2 orders late", done.stdout)
        self.assertIn("due Thu 10 Dec 07:00: ", done.stdout)
        self.assertIn("LATE", (self.tickets() / "schedule-01.svg").read_text())

    def test_the_priority_a_person_gives_weighs_what_is_late(self):
        def lateness():
            done = self.first_plan("--from", "2026-12-09T15:00", "--json")
            return json.loads(done.stdout)[-1]["schedule"]["weighted_lateness_seconds"]
        usual = lateness()
        for name in ORDERS:
            self.shop("order", "priority", json.loads((self.folder / f"{name}.order.json").read_text())["id"], "3")
        # The floor's weights are 1 and, from priority 1 on, 5.
        self.assertEqual(lateness(), 5 * usual)

    def test_stations_that_watch_hear_of_a_schedule(self):
        def version():
            connection = sqlite3.connect(self.folder / "shop.db")
            try:
                return connection.execute("SELECT version FROM data_version").fetchone()[0]
            finally:
                connection.close()
        self.first_plan()
        self.shop("made", "cut")
        before = version()
        self.plan("--from", MONDAY)
        self.assertEqual(version(), before + 2, "the plans, then the schedule made after them")

    def tickets(self):
        self.printed()
        return self.folder / "tickets"

    def test_what_is_cut_is_still_to_be_folded(self):
        self.first_plan()
        self.shop("made", "cut")
        again = self.plan("--from", MONDAY).stdout
        self.assertIn("nothing to cut", again)
        self.assertIn("schedule: all done", again)
        self.assertTrue(all("order" in task for task in self.printed()["tasks"]))
        self.shop("made", "folded")
        self.assertNotIn("schedule:", self.plan("--from", MONDAY).stdout)
        self.assertEqual(self.printed()["tasks"], [])
        self.assertFalse((self.folder / "tickets" / "schedule-01.svg").exists())

    def test_floors_and_times_that_cannot_be(self):
        self.assertIn("no floor is known", self.plan("--stock", CASES / "shop.stock.json", "--from", MONDAY).stderr)
        floor = json.loads((CASES / "shop.floor.json").read_text())
        floor["machines"][1]["model"] = "no-such-folder"
        (self.folder / "bad.json").write_text(json.dumps(floor))
        self.assertIn("no-such-folder", self.plan("--floor", "bad.json", "--from", MONDAY, status=2).stderr)
        floor["machines"][1]["id"] = "shear"
        (self.folder / "bad.json").write_text(json.dumps(floor))
        self.assertIn("bad.json/machines/1/id: found shear again", self.plan("--floor", "bad.json", status=2).stderr)
        self.assertIn("--from: found \"soon\"", self.plan("--from", "soon", status=2).stderr)
        self.assertIn("no floor is known", self.plan("--from", MONDAY).stderr, "a floor that cannot be is not kept")


if __name__ == "__main__":
    unittest.main()
