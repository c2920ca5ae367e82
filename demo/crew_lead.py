"""Stands in for the crew lead: checks a load list off against what came and writes the receipt. The first piece of the
load is short, the last one damaged, everything else came."""
import json
import pathlib
import sys
import uuid

load_path, receipt_path = map(pathlib.Path, sys.argv[1:3])
load = json.loads(load_path.read_text())
ordered = [(bundle["order"], piece["mark"], piece["count"]) for bundle in load["bundles"] for piece in bundle["pieces"]]

events = []


def found(what, order, mark, count, note=""):
    """Adds one event; its identity is made from what it says, so that the receipt is the same each time."""
    name = f"{load['id']} {order} {mark} {what}"
    events.append({"id": str(uuid.uuid5(uuid.NAMESPACE_OID, name)), "order": order, "mark": mark, "found": what,
                   "count": count, "at": "2026-12-10T09:30:00Z", "person": "crew lead", "note": note})


for number, (order, mark, count) in enumerate(ordered):
    wrong = {0: "short", len(ordered) - 1: "damaged"}.get(number)
    if wrong:
        found(wrong, order, mark, 1, "not on the truck" if wrong == "short" else "bent in two")
        print(f"{mark}: 1 {wrong}")
    received = count - (1 if wrong else 0)
    if received:
        found("received", order, mark, received)

receipt = {"format": "lapwright/receipt", "version": 1, "id": str(uuid.uuid5(uuid.NAMESPACE_OID, load["id"])),
           "load": load["id"], "events": events}
receipt_path.write_text(json.dumps(receipt, indent=2) + "\n")
print(f"{sum(event['count'] for event in events)} pieces checked")
