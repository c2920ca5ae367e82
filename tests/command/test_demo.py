"""Guards: the figures of the demo's day. Each expected value is worked out here by hand, with plain arithmetic and none
of the program's formulas' code. All data is invented."""
import collections
import csv
import json
import math
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest
import xml.dom.minidom

from program import PROGRAM, Program

DEMO = pathlib.Path(__file__).resolve().parents[2] / "demo"
INCH = 25.4

# Galvanised steel, 24 ga: T 0.0276 in (mill table), inside radius one thickness and K 0.44 as kept with the metal.
T, R, K = 0.0276, 0.0276, 0.44
SLOPE = math.degrees(math.atan(6 / 12))


def deduction(angle, radius=R):
    """2 OSSB - BA in inches; a hem edge is a half turn about radius 0 with OSSB = R + T."""
    a = math.radians(angle)
    setback = (radius + T) * (1 if angle == 180 else math.tan(a / 2))
    return 2 * setback - a * (radius + K * T)


CLOSED_HEM = deduction(180, 0)


class Demo(Program):
    def order(self, house):
        self.run_program("takeoff", DEMO / f"{house}.job.json", "-o", f"{house}.order.json")
        return json.loads((self.folder / f"{house}.order.json").read_text())


class Measuring(Demo):
    def closure(self, house, status):
        report = json.loads(self.run_program("closure", DEMO / f"{house}.job.json", "--json", status=status).stdout)
        return next(chain for chain in report if chain["chain"] == "roof")

    def test_closure_finds_the_foot(self):
        wrong = self.closure("larkfield-first-measure", 1)
        self.assertFalse(wrong["closes"])
        # The three sides that run north or south; each a foot off in its direction explains the gap.
        self.assertEqual({one["run"]: round(one["would_be_mm"] / INCH / 12, 6) for one in wrong["measure_again"]},
                         {"E1": 28, "E2": 17, "W1": 47})
        self.assertAlmostEqual(wrong["misclosure_mm"] / INCH, 12, delta=0.06)
        right = self.closure("larkfield", 0)
        self.assertTrue(right["closes"])
        # 44 + 28 + 24 + 18 + 20 + 46 ft; one rake is taped 1/16 in long, which the plan sees too.
        self.assertAlmostEqual(right["perimeter_mm"] / INCH, 180 * 12, delta=0.1)

    def test_the_house_is_what_the_demo_says(self):
        job = json.loads((DEMO / "larkfield.job.json").read_text())
        runs = [run for chain in job["chains"] for run in chain["runs"]]
        self.assertGreaterEqual(len(runs), 25)
        kinds = {run["kind"] for run in runs}
        self.assertLessEqual({"eave", "rake", "ridge", "hip", "valley", "sidewall", "headwall", "opening_head"}, kinds)
        self.assertEqual({(run["slope"]["rise"], run["slope"]["run"]) for run in runs if "slope" in run}, {(6, 12), (3, 12)})
        roof = next(chain for chain in job["chains"] if chain["id"] == "roof")
        self.assertEqual([corner["kind"] for corner in roof["corners"]].count("square_inside"), 1)


class Order(Demo):
    @classmethod
    def setUpClass(cls):
        with tempfile.TemporaryDirectory() as folder:
            subprocess.run([PROGRAM, "takeoff", DEMO / "larkfield.job.json", "-o", "order.json"], cwd=folder, check=True,
                           capture_output=True)
            cls.larkfield = json.loads((pathlib.Path(folder) / "order.json").read_text())

    def profile(self, name):
        return next(one for one in self.larkfield["profiles"] if one["profile"]["name"] == name)

    def turns(self, name):
        return [bend["turn_degrees"] for bend in self.profile(name)["profile"]["bends"]]

    def inches(self, run, mark=""):
        return [piece["blank_length_mm"] / INCH for piece in self.larkfield["pieces"]
                if piece["run"] == run and piece["mark"].startswith(mark)]

    def test_angles(self):
        # Eave: 90 less the slope; then the kick.
        self.assertAlmostEqual(self.turns("Eave drip edge")[0], -(90 - SLOPE), places=4)
        # Ridge of two equal slopes: both of them. Hip at a square corner: cos = cos² θ = 0.8.
        self.assertAlmostEqual(self.turns("Ridge cap")[0], -2 * SLOPE, places=4)
        self.assertAlmostEqual(self.turns("Hip cap")[0], -math.degrees(math.acos(0.8)), places=4)

    def test_girths(self):
        drip = 2.5 + 2 + 0.5 + 0.375 - deduction(90 - SLOPE) - deduction(35) - CLOSED_HEM
        fascia = 7.25 + 1.25 + 0.5 - deduction(90) - CLOSED_HEM
        ridge = 6 + 6 + 2 * 0.5 - deduction(2 * SLOPE) - 2 * CLOSED_HEM
        for name, girth in (("Eave drip edge", drip), ("Fascia cover", fascia), ("Ridge cap", ridge)):
            self.assertAlmostEqual(self.profile(name)["girth_mm"] / INCH, girth, places=3, msg=name)
        self.assertAlmostEqual(drip, 5.323, places=3)
        self.assertAlmostEqual(ridge, 12.948, places=3)

    def test_lengths_from_the_level_run(self):
        # 6 in 12 at square corners: hip and valley are 1.5 times their common run, sqrt(2 + 0.25). Caps lap
        # 4 in, the valley 8 in.
        for run, common, lap in (("H1", 14, 4), ("H2", 14, 4), ("H3", 14, 4), ("H4", 4, 4), ("V1", 10, 8)):
            pieces = self.inches(run)
            self.assertAlmostEqual(sum(pieces), common * 12 * 1.5 + (len(pieces) - 1) * lap, places=3, msg=run)
        # Rake: 120 in level, times sqrt(1 + 1/4); mitred at the peak, so its longest point is not the line's.
        why = self.run_program("takeoff", DEMO / "larkfield.job.json", "--why", "G1.1").stdout
        self.assertIn("11' 2 3/16\"", why)  # 134.16 in

    def test_pieces_of_the_mitred_eave(self):
        # The kick's tip stands 0.5 sin 35° in outside the line: an outside corner adds that. The deck edge stands
        # 2.5 cos θ inside: an inside corner adds that.
        tip, deck = 0.5 * math.sin(math.radians(35)), 2.5 * math.cos(math.radians(SLOPE))
        for run, line, ends, count in (("S1", 44, 2 * tip, 5), ("E1", 28, 2 * tip, 3), ("N1", 24, tip + deck, 3),
                                       ("E2", 18, deck, 2), ("W1", 46, tip, 5)):
            pieces = self.inches(run, run + "a.")
            self.assertEqual(len(pieces), count, run)
            self.assertAlmostEqual(sum(pieces) - (count - 1) * 2, line * 12 + ends, places=2, msg=run)
            self.assertLessEqual(max(pieces), 126.0001)

    def test_courses_and_fasteners(self):
        # 74 1/4 in at 5 in a course: 15 courses and the starter, each 5 in and 2 in head lap.
        steps = next(piece for piece in self.larkfield["pieces"] if piece["mark"] == "P1a.1")
        self.assertEqual(steps["count"], 16)
        self.assertAlmostEqual(steps["blank_length_mm"] / INCH, 7)
        fasteners = next(one for one in self.larkfield["accessories"]
                         if one["run"] == "S1" and one["name"] == "fastener" and one["trim"] == "eave-drip-edge")
        self.assertEqual(fasteners["count"], 44 + 1)  # at most 12 in apart, both ends too


class Readme(Demo):
    def test_the_picture_is_what_the_program_draws(self):
        self.run_program("girth", DEMO / "eave-drip-edge.profile.json", "--svg", "eave.svg")
        self.assertEqual((self.folder / "eave.svg").read_text(), (DEMO / "pictures" / "eave-drip-edge.svg").read_text())


class Shop(Demo):
    def test_the_whole_day(self):
        orders = {house: self.order(house) for house in ("larkfield", "hollin", "depot")}
        pieces = sum(piece.get("count", 1) for order in orders.values() for piece in order["pieces"])
        files = [f"{house}.order.json" for house in orders]
        self.assertIn("already here", self.shop("receive", *files, files[0]).stdout)
        plans = self.shop("plan", "--stock", DEMO / "shop.stock.json", "--floor", DEMO / "shop.floor.json", "--time",
                          "5").stdout.splitlines()
        self.assertEqual(len([line for line in plans if not line.startswith("schedule: ")]), 3, "one batch for each metal, gauge and colour")
        self.shop("print", "-o", "tickets")
        self.tickets(orders, pieces)
        self.shop("made", "cut")
        self.assertIn(f"{pieces} pieces folded", self.shop("made", "folded").stdout)
        self.shop("load", "-o", "load.json")
        subprocess.run([sys.executable, DEMO / "crew_lead.py", "load.json", "receipt.json"], cwd=self.folder, check=True,
                       capture_output=True)
        self.assertIn(f"{pieces - 2} pieces received, 2 short", self.shop("receipt", "receipt.json").stdout)
        self.assertEqual(self.shop("remake").stdout.count("remake 1 of"), 2)
        again = self.shop("plan", "--time", "1").stdout
        self.assertEqual(again.count("1 piece from"), 2)
        self.shop("print", "-o", "again")
        with open(self.folder / "again" / "labels.csv", newline="") as file:
            self.assertEqual(len(list(csv.DictReader(file))), 2, "only what is made again")
        self.assertEqual(len(list((self.folder / "again").glob("fold-??.txt"))), 2)

    def tickets(self, orders, pieces):
        tickets = self.folder / "tickets"
        for picture in tickets.glob("*.svg"):
            xml.dom.minidom.parse(str(picture))
        profiles = sum(len(order["profiles"]) for order in orders.values())
        self.assertEqual(len(list(tickets.glob("fold-??.txt"))), profiles)
        self.assertEqual(len(list(tickets.glob("fold-??-page-1.svg"))), profiles)
        self.assertEqual(len(list(tickets.glob("plan-??.svg"))), len(orders))
        with open(tickets / "labels.csv", newline="") as file:
            labels = list(csv.DictReader(file))
        self.assertEqual(len(labels), pieces)
        marks = {(label["job"], label["mark"]) for label in labels}
        self.assertIn(("Larkfield House", "H1.1"), marks)
        # Every piece is cut, as often as it is ordered: "3 x A R1.1 5' 10"", the letter only where houses share.
        cut = "\n".join(ticket.read_text() for ticket in tickets.glob("cut-??.txt"))
        counted = collections.Counter()
        sheets = 1
        for line in cut.splitlines():
            if times := re.match(r"(\d+) x .* by ", line):
                sheets = int(times[1])
            for count, mark in re.findall(r" (\d+) x (?:[A-Z] )?([A-Z]\w*\.\d+) ", line):
                counted[mark] += sheets * int(count)
        wanted = collections.Counter()
        for order in orders.values():
            for piece in order["pieces"]:
                wanted[piece["mark"]] += piece.get("count", 1)
        self.assertEqual(counted, wanted)


if __name__ == "__main__":
    unittest.main()
