"""A day of the shop app (shop_day.cpp), and what must hold of its shop. All data is invented."""
import pathlib
import sqlite3
import subprocess

from app_faults import AppFaults

CASES = pathlib.Path(__file__).parent.parent / "command" / "cases"
ACTS = ("stock", "order", "plan", "cut", "folded", "loaded", "received", "copied")
# What the shop said is done, and how much of it is there.
COUNTED = {
    "stock": "SELECT COUNT(*) FROM settings WHERE key = 'stock'",
    "order": "SELECT COUNT(*) FROM current_orders",
    "plan": "SELECT COUNT(*) FROM plans WHERE state <> 'replaced'",
    **{state: f"SELECT COALESCE(SUM(count), 0) FROM piece_events WHERE state = '{state}'"
       for state in ("cut", "folded", "loaded", "received", "damaged")},
}


class ShopDay(AppFaults):
    """A test names COMMAND too."""

    def setUp(self):
        super().setUp()
        self.orders = self.scratch / "orders"
        self.orders.mkdir()
        self.command("takeoff", CASES / "alder.job.json", "-o", self.orders / "alder.order.json")

    def command(self, *arguments):
        done = subprocess.run([self.COMMAND, *map(str, arguments)], capture_output=True, text=True, timeout=600)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def acts(self, *acts):
        return [self.folder, self.orders, *acts]

    def query(self, question):
        connection = sqlite3.connect(self.folder / "shop.db")
        try:
            return connection.execute(question).fetchone()[0]
        finally:
            connection.close()

    def counts(self):
        return {what: self.query(question) for what, question in COUNTED.items()}

    def nothing_is_lost(self, told, what):
        there = self.counts()
        for line in told.splitlines():
            act, count = line.split()
            if act in there:
                self.assertGreaterEqual(there[act], int(count), f"{what}: {act} is lost; {there}")
        self.documents_are_whole(what)
        if "copied" in told:
            self.copy_is_whole(self.folder / "copy.db", what)

    def there_is(self, told, what):
        """All that the shop said is done, and nothing is damaged."""
        self.nothing_is_lost(told, what)
        self.command("check", "--db", self.folder / "shop.db")
