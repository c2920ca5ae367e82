"""Guards: `lapwright check` says of a sound shop that it is sound, and finds what is not as it was written: a count, a
document, an event, a page of the file. Counts are mended from the log; nothing else is touched. All data is
invented."""
import json
import sqlite3
import unittest

from program import CASES, Program


class Check(Program):
    def setUp(self):
        super().setUp()
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        self.shop("receive", "order.json")
        self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1")

    def tamper(self, statement):
        connection = sqlite3.connect(self.folder / "shop.db")
        with connection:
            self.assertGreater(connection.execute(statement).rowcount, 0)
        connection.close()

    def found(self, **expected):
        return json.loads(self.shop("check", "--json", **expected).stdout)[0]

    def test_a_day_leaves_a_sound_shop(self):
        self.assertIn("all agree", self.shop("check").stdout)
        self.shop("made", "cut")
        self.shop("made", "folded")
        self.shop("load", "-o", "load.json")
        health = self.found()
        self.assertEqual((health["damage"], health["miscounts"]), ([], []))
        self.assertGreater(health["events"], 0)

    def test_counts_are_made_anew_from_the_log(self):
        before = self.found()
        for table in ("piece_counts", "order_counts", "shop_counts"):
            self.tamper(f"UPDATE {table} SET count = count + 3 WHERE state = 'ordered'")
        self.tamper("UPDATE current_orders SET unfinished = 1")
        health = self.found(status=1)
        self.assertEqual(health["damage"], [])
        self.assertIn("unfinished", " ".join(one["place"] for one in health["miscounts"]))
        self.assertIn("--rebuild", self.shop("check", status=1).stderr)
        self.assertEqual(self.found(status=1), health, "looking changes nothing")
        self.assertIn("made anew", self.shop("check", "--rebuild").stderr)
        self.assertEqual(self.found(), before)

    def test_a_document_that_was_changed_is_found(self):
        self.tamper("UPDATE orders SET document = replace(document, '\"customer\"', '\"customer_\"')")
        damage = self.found(status=1)["damage"]
        self.assertTrue(any("hash" in one["found"] for one in damage), damage)
        self.tamper("UPDATE orders SET derived = '{'")
        self.assertTrue(any("as derived" in one["place"] for one in self.found(status=1)["damage"]))

    def test_a_log_that_lost_an_event_is_found(self):
        self.tamper("DELETE FROM piece_events WHERE seq = 1")
        health = self.found(status=1)
        self.assertTrue(any("as its order wants" in one["expected"] for one in health["damage"]), health)

    def test_plans_that_take_too_much_are_found(self):
        self.tamper("UPDATE plan_pieces SET count = count + 1000")
        self.assertTrue(any("plan again" in one["expected"] for one in self.found(status=1)["damage"]))

    def test_a_page_that_was_overwritten_is_found_or_refused(self):
        connection = sqlite3.connect(self.folder / "shop.db")
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        root, size = (connection.execute(query).fetchone()[0] for query in (
            "SELECT rootpage FROM sqlite_master WHERE name = 'piece_events_by_piece'", "PRAGMA page_size"))
        connection.close()
        with open(self.folder / "shop.db", "r+b") as file:
            file.seek(root * size - 300)
            file.write(b"\xff" * 300)
        self.assertTrue(any(one["place"] == "database" for one in self.found(status=1)["damage"]))

    def test_the_installation_can_be_looked_at(self):
        rows = json.loads(self.run_program("check", "--install", "--json").stdout)
        self.assertIn("SQLite driver of Qt", [row["what"] for row in rows if row["there"]])
        self.assertIn("found no --db", self.run_program("check", status=2).stderr)


if __name__ == "__main__":
    unittest.main()
