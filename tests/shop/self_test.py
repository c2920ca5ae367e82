"""Guards: lapwright-shop shows every screen, empty and with a shop's work in every state, and
Qt warns of nothing; an order handed to it is taken in.
self_test.py LAPWRIGHT LAPWRIGHT_SHOP DEMO [--language LANGUAGE] [PICTURES]: with PICTURES the pictures of the screens
are kept there."""
import argparse
import pathlib
import sqlite3
import subprocess
import sys
import tempfile

parser = argparse.ArgumentParser()
for name in ("lapwright", "shop", "demo"):
    parser.add_argument(name)
parser.add_argument("pictures", nargs="?")
parser.add_argument("--language", default="en")
given = parser.parse_args()
lapwright, shop, demo = given.lapwright, given.shop, given.demo
spoken = ["--language", given.language]
pictures = ["--pictures", given.pictures] if given.pictures else []


def run(*command):
    """Runs it; a finding that blocks (status 1) is part of the day, anything worse is not."""
    answer = subprocess.run([str(part) for part in command], capture_output=True, text=True)
    if answer.returncode > 1:
        sys.exit(f"{command}: {answer.stderr}")


with tempfile.TemporaryDirectory() as scratch:
    folder = pathlib.Path(scratch)
    database = folder / "shop.db"
    for house in ("larkfield", "hollin", "depot"):
        run(lapwright, "takeoff", f"{demo}/{house}.job.json", "-o", folder / f"{house}.order.json")
    # One house has left on a truck and part of it came back wrong, one is cut, one is only planned.
    run(lapwright, "receive", folder / "hollin.order.json", "--db", database)
    run(lapwright, "plan", "--db", database, "--stock", f"{demo}/shop.stock.json", "--time", "1")
    run(lapwright, "made", "cut", "--db", database)
    run(lapwright, "made", "folded", "--db", database)
    run(lapwright, "load", "--db", database, "--truck", "truck 1", "-o", folder / "load.json")
    run(sys.executable, f"{demo}/crew_lead.py", folder / "load.json", folder / "receipt.json")
    run(lapwright, "receipt", folder / "receipt.json", "--db", database)
    run(lapwright, "receive", folder / "larkfield.order.json", "--db", database)
    run(lapwright, "plan", "--db", database, "--time", "1")
    run(lapwright, "made", "cut", "--db", database)
    run(lapwright, "receive", folder / "depot.order.json", "--db", database)
    run(lapwright, "plan", "--db", database, "--time", "1")
    for arguments in (["--self-test"], ["--self-test", "--db", database, *pictures]):
        answer = subprocess.run([shop, *spoken, *map(str, arguments)], capture_output=True, text=True)
        if answer.returncode != 0:
            sys.exit(f"lapwright-shop {arguments}: status {answer.returncode}\n{answer.stderr}")
    # An order that the desktop hands over is taken in.
    handed = folder / "handed.db"
    subprocess.run([shop, "--self-test", "--db", str(handed), str(folder / "depot.order.json")], capture_output=True)
    with sqlite3.connect(handed) as opened:
        if opened.execute("SELECT COUNT(*) FROM current_orders").fetchone() != (1,):
            sys.exit("an order named on the command line is not taken in")
print("Totals: 3 passed, 0 failed, 0 skipped")
