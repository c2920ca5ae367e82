"""A day of the field app (tablet_day.cpp), and what must hold of its tablet. All data is invented."""
import json
import zipfile

from app_faults import AppFaults

# What the person saw, and how much of it must be there.
COUNTED = ("job", "run", "closed", "trim", "photo", "sent", "load", "counted")


class TabletDay(AppFaults):
    def files_are_whole(self, what):
        self.documents_are_whole(what)
        for path in self.folder.glob("*.zip"):
            self.assertIsNone(zipfile.ZipFile(path).testzip(), what)
        for path in self.folder.glob("lapwright-backup-*.db"):
            self.copy_is_whole(path, what)

    def whole(self, what, fault=None):
        """What is there; the check of it does one more act."""
        there = json.loads(self.done("check", self.folder, fault=fault).stdout)
        self.assertTrue(there["sound"] and there["goes_on"], f"{what}: {there}")
        return there

    def holds(self, told, what, fault=None):
        done = told.split()
        there = self.whole(what, fault)
        for act in COUNTED:
            self.assertGreaterEqual(there.get(act, 0), done.count(act), f"{what}: {act} is lost; {there}")
        self.files_are_whole(what)
        if "receipt" in done:
            self.assertTrue(list(self.folder.glob("receipt-*.json")), what)
        if "backup" in done:
            self.assertTrue(list(self.folder.glob("lapwright-backup-*.db")), what)
