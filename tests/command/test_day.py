"""Guards: the shop's whole day through the real program and a real database, from two measured houses to a remake.
All data is invented."""
import json
import sqlite3
import unittest
import xml.dom.minidom

from program import CASES, Program

ORDERS = ("alder", "birch")


class Day(Program):
    def take_off(self):
        for name in ORDERS:
            self.run_program("takeoff", CASES / f"{name}.job.json", "-o", f"{name}.order.json")

    def test_a_measure_a_foot_off_is_found(self):
        report = json.loads(self.run_program("closure", CASES / "alder-a-foot-wrong.job.json", "--json", status=1).stdout)[0]
        self.assertFalse(report["closes"])
        # 1 ft = 304.8 mm; both sides of the rectangle that run this way explain it.
        self.assertAlmostEqual(report["misclosure_mm"], 304.8)
        self.assertEqual({one["run"]: one["would_be_mm"] for one in report["measure_again"]}, {"E2": 7315.2, "E4": 7620})
        self.run_program("closure", CASES / "alder.job.json")

    def test_pieces_by_hand(self):
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        order = json.loads((self.folder / "order.json").read_text())
        marks = [piece["mark"] for piece in order["pieces"]]
        # Folder 10 ft 6 in, lap 2 in: a 40 ft eave takes ceil((480 - 2) / (126 - 2)) = 4 pieces, a 24 ft one 3, the
        # 16 ft ridge 2 (arithmetic).
        self.assertEqual(len(marks), 2 * 4 + 2 * 3 + 2)
        lengths = [piece["length_mm"] for piece in order["pieces"] if piece["run"] == "E1"]
        self.assertAlmostEqual(sum(lengths), (480 + 3 * 2) * 25.4)
        why = self.run_program("takeoff", CASES / "alder.job.json", "--why", "E1.1").stdout
        self.assertIn("40'", why)

    def test_the_whole_day(self):
        self.take_off()
        files = [f"{name}.order.json" for name in ORDERS]
        taken = self.shop("receive", *files, files[0]).stdout
        self.assertEqual(taken.count("taken in"), 2)
        self.assertEqual(taken.count("already here"), 1)
        plan = self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "2").stdout
        batches = [line for line in plan.splitlines() if not line.startswith("schedule: ")]
        self.assertEqual(len(batches), 1, "one metal, gauge and colour is one batch")
        self.assertIn("32 pieces", plan)
        self.assertIn("proven", plan)
        self.shop("print", "-o", "tickets")
        for picture in (self.folder / "tickets").glob("*.svg"):
            xml.dom.minidom.parse(str(picture))
        self.assertIn("gauge", (self.folder / "tickets/fold-01.txt").read_text())
        self.shop("made", "cut")
        self.assertIn("32 pieces folded", self.shop("made", "folded").stdout)
        self.shop("load", "-o", "load.json")
        self.receive_and_remake(json.loads((self.folder / "load.json").read_text()))

    def test_each_act_answers_in_json_too(self):
        self.take_off()
        taken = json.loads(self.shop("receive", *[f"{name}.order.json" for name in ORDERS], "--json").stdout)
        self.assertEqual([one["outcome"] for one in taken], ["taken in", "taken in"])
        plan = json.loads(self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1", "--json").stdout)
        self.assertEqual([one["pieces"] for one in plan if "pieces" in one], [32])
        self.assertGreater(json.loads(self.shop("print", "-o", "tickets", "--json").stdout)[0]["files"], 0)
        self.assertEqual(len(json.loads(self.shop("made", "cut", "--json").stdout)), 1)
        self.assertEqual(json.loads(self.shop("made", "cut", "--json").stdout), [])
        self.assertEqual(json.loads(self.shop("made", "folded", "--json").stdout), [{"state": "folded", "count": 32}])
        self.assertIn({"state": "folded", "count": 32}, json.loads(self.shop("status", "--json").stdout))
        self.assertEqual(json.loads(self.shop("remake", "--json").stdout), [])

    def test_a_cut_list_to_length_first_gives_the_other_side(self):
        # 10 in of girth, 60 and 40 in long: cut to 60 in first, the strip is then cut by girth, and what is shorter once
        # more.
        problem = {"format": "lapwright/cut-problem", "version": 1,
                   "blanks": [{"key": "A", "girth_mm": 254, "length_mm": 1524, "count": 3},
                              {"key": "B", "girth_mm": 254, "length_mm": 1016, "count": 1}],
                   "stocks": [{"key": "sheet", "kind": "sheet", "width_mm": 1016, "length_mm": 1524}],
                   "rules": {"order": "lengths_first", "patterns": "non_exact"}}
        (self.folder / "problem.json").write_text(json.dumps(problem))
        said = self.run_program("cut", "problem.json").stdout
        self.assertIn("3 x A 10\";", said)
        self.assertIn("1 x B 10\", then cut to 3' 4\";", said)

    def test_what_the_stock_says_beyond_this_program_stays(self):
        self.take_off()
        self.shop("receive", "alder.order.json")
        stock = json.loads((CASES / "shop.stock.json").read_text())
        (self.folder / "stock.json").write_text(json.dumps({**stock, "racks_painted": "green"}))
        self.shop("plan", "--stock", "stock.json", "--time", "1")
        self.shop("made", "cut")
        connection = sqlite3.connect(self.folder / "shop.db")
        self.addCleanup(connection.close)
        kept = json.loads(connection.execute("SELECT value FROM settings WHERE key = 'stock'").fetchone()[0])
        self.assertEqual(kept["racks_painted"], "green")

    def test_the_stock_is_kept_only_when_it_can_be_used(self):
        self.take_off()
        self.shop("receive", "alder.order.json")
        stock = json.loads((CASES / "shop.stock.json").read_text())
        (self.folder / "bad.json").write_text(json.dumps({**stock, "machines": ["no-such-folder"]}))
        self.assertIn("no-such-folder", self.shop("plan", "--stock", "bad.json", status=2).stderr)
        self.assertIn("--stock", self.shop("plan", status=2).stderr)
        self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1")
        (self.folder / "other.json").write_text(json.dumps({**stock, "shop": "Another name"}))
        self.assertIn("is replaced by other.json", self.shop("plan", "--stock", "other.json", "--time", "1").stderr)

    def test_what_is_not_on_the_load_is_not_received(self):
        self.take_off()
        self.shop("receive", "alder.order.json")
        self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1")
        self.shop("made", "cut")
        self.shop("made", "folded", "--mark", "E1.1")
        self.shop("load", "-o", "first.json")
        self.shop("made", "folded")
        self.shop("load", "-o", "second.json")
        first = json.loads((self.folder / "first.json").read_text())
        other = json.loads((self.folder / "second.json").read_text())["bundles"][0]
        receipt = {"format": "lapwright/receipt", "version": 1, "id": "0b54c3f4-1a2b-4c3d-8e4f-00000000fffe",
                   "load": first["id"], "events": [
                       {"id": "0b54c3f4-1a2b-4c3d-8e4f-00000000fffd", "order": other["order"],
                        "mark": other["pieces"][0]["mark"], "found": "received", "count": 1,
                        "at": "2026-12-10T09:00:00Z"}]}
        (self.folder / "receipt.json").write_text(json.dumps(receipt))
        done = self.shop("receipt", "receipt.json", status=1)
        self.assertIn("0 pieces received", done.stdout)
        self.assertIn("not on the load", done.stderr)

    def receive_and_remake(self, load):
        pieces = [(bundle["order"], piece) for bundle in load["bundles"] for piece in bundle["pieces"]]
        self.assertEqual(sum(piece["count"] for _, piece in pieces), 32)
        events = [{"id": f"0b54c3f4-1a2b-4c3d-8e4f-{number:012d}", "order": order, "mark": piece["mark"],
                   "found": "damaged" if number == 0 else "received", "count": piece["count"],
                   "at": "2026-12-10T09:00:00Z"} for number, (order, piece) in enumerate(pieces)]
        receipt = {"format": "lapwright/receipt", "version": 1, "id": "0b54c3f4-1a2b-4c3d-8e4f-00000000ffff",
                   "load": load["id"], "events": events}
        (self.folder / "receipt.json").write_text(json.dumps(receipt))
        self.assertIn("31 pieces received, 1 short, damaged or wrong", self.shop("receipt", "receipt.json").stdout)
        self.assertIn("0 pieces received, 0 short", self.shop("receipt", "receipt.json").stdout)
        self.assertIn("remake 1 of " + events[0]["mark"], self.shop("remake").stdout)
        self.assertIn("nothing is waiting", self.shop("remake").stdout)
        self.assertIn(": 1 piece from", self.shop("plan", "--time", "1").stdout)


if __name__ == "__main__":
    unittest.main()
