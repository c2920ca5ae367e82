"""A day of the command, act by act, and what must hold of its shop. All data is invented."""
import json
import pathlib
import shutil
import sqlite3

from app_faults import AppFaults

CASES = pathlib.Path(__file__).parent.parent / "command" / "cases"
ACTS = {
    "receive": ["receive", "order.json"],
    "plan": ["plan", "--stock", "stock.json", "--time", "1"],
    "cut": ["made", "cut"],
    "fold": ["made", "folded"],
    "load": ["load", "-o", "load.json"],
    "receipt": ["receipt", "receipt.json"],
    "remake": ["remake"],
}


def work_of(act):
    return [*ACTS[act], "--db", "shop.db"]


class CommandDay(AppFaults):
    def begin_the_day(self):
        shutil.copy(CASES / "shop.stock.json", self.folder / "stock.json")
        self.done("takeoff", CASES / "alder.job.json", "-o", "order.json")

    def planned(self):
        self.begin_the_day()
        for act in ("receive", "plan"):
            self.done(*work_of(act))
        return self.state()

    def state(self):
        if not (self.folder / "shop.db").exists():
            return []
        connection = sqlite3.connect(self.folder / "shop.db")
        try:
            return sorted(connection.execute(
                "SELECT mark, state, SUM(count) FROM piece_counts WHERE count > 0 GROUP BY mark, state").fetchall())
        except sqlite3.OperationalError:
            return []  # killed before the schema was there
        finally:
            connection.close()

    def write_receipt(self):
        load = json.loads((self.folder / "load.json").read_text())
        marks = [(bundle["order"], piece["mark"]) for bundle in load["bundles"] for piece in bundle["pieces"]]
        (self.folder / "receipt.json").write_text(json.dumps({
            "format": "lapwright/receipt", "version": 1, "id": "00000000-0000-4000-8000-0000000000aa",
            "load": load["id"],
            "events": [{"id": f"00000000-0000-4000-8000-{number:012d}", "order": order, "mark": mark, "count": 1,
                        "found": "damaged" if number == 0 else "received", "at": "2026-01-06T09:00:00Z",
                        "person": "Cora"} for number, (order, mark) in enumerate(marks)]}))

    def sound(self, what):
        if not (self.folder / "shop.db").exists():
            return
        checked = self.run_program("check", "--db", "shop.db")
        if "a database with nothing in it" in checked.stderr and what.startswith("receive,"):
            return  # ended before the first table was there
        self.assertEqual(checked.returncode, 0, what + "\n" + checked.stdout + checked.stderr)
