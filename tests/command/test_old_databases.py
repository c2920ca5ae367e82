"""Guards: a shop's database of every earlier schema opens with this program: nothing of it is lost, its counts agree
with its log, and the day goes on. All data is invented."""
import contextlib
import json
import pathlib
import sqlite3
import unittest

from program import Program

KEPT = pathlib.Path(__file__).parent.parent / "storage" / "cases"


class OldDatabases(Program):
    def restore(self, version):
        connection = sqlite3.connect(self.folder / "shop.db")
        connection.executescript((KEPT / f"version-{version}.sql").read_text())
        kept = {table: connection.execute(f"SELECT COUNT(*) FROM {table}").fetchone()[0]
                for table in ("orders", "pieces", "piece_events", "plans", "loads", "quarantine")}
        connection.close()
        return kept

    def test_nothing_is_lost_and_the_day_goes_on(self):
        for version in sorted(int(path.stem.split("-")[1]) for path in KEPT.glob("version-*.sql")):
            with self.subTest(version=version):
                for left in self.folder.glob("shop.db*"):  # with what SQLite keeps beside it
                    left.unlink()
                kept = self.restore(version)
                health = json.loads(self.shop("check", "--json").stdout)[0]
                self.assertEqual((health["orders"], health["events"]), (kept["orders"], kept["piece_events"]))
                with contextlib.closing(sqlite3.connect(self.folder / "shop.db")) as connection:
                    for table, count in kept.items():
                        self.assertEqual(connection.execute(f"SELECT COUNT(*) FROM {table}").fetchone()[0], count, table)
                    load, = connection.execute("SELECT document FROM loads").fetchone()
                self.go_on(json.loads(load))

    def go_on(self, load):
        (self.folder / "load.json").write_text(json.dumps(load))
        status = self.shop("status").stdout
        self.assertIn("Alder House", status)
        self.assertIn("4 pieces loaded", status)
        events = [{"id": f"00000000-0000-4000-8000-00000000000{number}", "order": bundle["order"], "mark": piece["mark"],
                   "found": "damaged" if number == 0 else "received", "count": 1, "at": "2026-01-06T09:00:00Z",
                   "person": "Cora"}
                  for number, (bundle, piece) in enumerate(
                      (bundle, piece) for bundle in load["bundles"] for piece in bundle["pieces"])]
        receipt = {"format": "lapwright/receipt", "version": 1, "id": "00000000-0000-4000-8000-0000000000aa",
                   "load": load["id"], "events": events}
        (self.folder / "receipt.json").write_text(json.dumps(receipt))
        self.assertIn("3 pieces received, 1 short", self.shop("receipt", "receipt.json").stdout)
        self.shop("remake")
        self.shop("plan", "--time", "1")
        self.shop("made", "cut")
        self.assertIn("all agree", self.shop("check").stdout)


if __name__ == "__main__":
    unittest.main()
