"""Guards, on a file system that really is full or read-only, mounted for this test alone: whenever the disk fills up in a
day of the command, the shop app or the field app, the program says so and ends; what it had acknowledged is there, no
document is half written, the shop is sound, and with room made the same act goes through. On a disk that is read-only it
says so and nothing changes. Skipped where the system lets nobody mount. All data is invented."""
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest

import command_day
import shop_day
from command_day import CASES, CommandDay, work_of
from shop_day import ShopDay
from tablet_day import TabletDay

COMMAND, SHOP, TABLET = (pathlib.Path(path).resolve() for path in sys.argv[1:4])
PLENTY = 64 << 20


def has_own_mounts():
    """Begins this test anew where what it mounts is nobody else's, and ends with it; false where that may not be."""
    if "LAPWRIGHT_OWN_MOUNTS" in os.environ:
        return True
    own = ["unshare", "--mount", *([] if os.geteuid() == 0 else ["--map-root-user"])]
    with tempfile.TemporaryDirectory() as folder:
        mounts = shutil.which("unshare") and subprocess.run([*own, "mount", "-t", "tmpfs", "tmpfs", folder],
                                                            capture_output=True).returncode == 0
    if mounts:
        os.execvpe(own[0], [*own, sys.executable, *sys.argv], os.environ | {"LAPWRIGHT_OWN_MOUNTS": "1"})
    return False


NEEDS_MOUNTS = unittest.skipUnless(has_own_mounts(), "this system lets nobody mount a file system of their own")


class OwnDisk:
    """Ahead of a program's day: its folder is a disk of its own."""

    def setUp(self):
        super().setUp()
        self.mount("-t", "tmpfs", "-o", f"size={PLENTY}", "tmpfs")
        self.addCleanup(subprocess.run, ["umount", self.folder], check=True)

    def mount(self, *how):
        # What the system says of it already is not said again: of a user of its own it would not be understood.
        subprocess.run(["mount", "--options-mode=ignore", *how, self.folder], check=True)

    def leave_room(self, room):
        disk = os.statvfs(self.folder)
        used = (disk.f_blocks - disk.f_bfree) * disk.f_frsize
        self.mount("-o", f"remount,size={max(used + room, disk.f_frsize)}")  # a size of 0 would be no limit

    def says_why(self, run, what, reason):
        """A sentence of the program's own, whose exit says that its disk would not."""
        said = f"{what}\n{run.stdout}{run.stderr}"
        self.assertEqual(run.returncode, 3, said)
        self.assertRegex(run.stderr, reason, said)

    def fill_up(self, work, what, before, growth=2):
        """Does the work on what was there before, with ever more room until it goes through. Each time that it does not:
        what it told, once there is room."""
        room, block = 0, os.statvfs(self.folder).f_frsize
        while True:
            self.put_back(before)
            self.leave_room(room)
            run = self.run_program(*work)
            self.leave_room(PLENTY)
            if run.returncode == 0:
                self.assertGreater(room, 0, what + " went through on a full disk")
                return
            with_room = f"{what}, with room for {room} bytes"
            self.says_why(run, with_room, "no room|No space left")
            self.documents_are_whole(with_room)
            yield run.stdout, with_room
            room = max(room + block, int(room * growth) // block * block)

    def changes_nothing_read_only(self, work, what):
        before = self.files()
        self.mount("-o", "remount,ro")
        run = self.run_program(*work)
        self.mount("-o", "remount,rw")
        self.says_why(run, what + ", read-only", "read-only")
        self.assertEqual((run.stdout, self.files()), ("", before), what + ", read-only")

    def empty(self):
        """A disk with nothing on it, to be filled up."""
        self.put_back()
        return self.kept("empty")

    def files(self):
        return {path: path.read_bytes() for path in self.folder.rglob("*") if path.is_file()}


@NEEDS_MOUNTS
class CommandsDisk(OwnDisk, CommandDay):
    PROGRAM = COMMAND

    def days_acts(self):
        """The work of each act, on what it finds."""
        self.begin_the_day()
        for act in command_day.ACTS:
            if act == "receipt":
                self.write_receipt()
            yield act, work_of(act)

    def test_a_disk_that_fills_up(self):
        refused = 0
        for act, work in self.days_acts():
            before, nothing_done = self.kept("before-" + act), self.state()
            self.done(*work)
            all_done = self.state()
            for _, what in self.fill_up(work, act, before):
                self.assertIn(self.state(), (nothing_done, all_done), what)
                self.sound(what)
                self.done(*work)
                self.assertEqual(self.state(), all_done, what)
                refused += 1
        print(f"the command's disk was full {refused} times")

    def test_papers_that_do_not_fit(self):
        for _, work in self.days_acts():
            self.done(*work)
        shop = self.kept("shop") / "shop.db"
        before, refused = self.empty(), 0
        for work in (["print", "--db", shop, "-o", "."], ["takeoff", CASES / "alder.job.json", "-o", "order.json"]):
            for _, what in self.fill_up(work, work[0], before):
                for paper in self.folder.glob("*.pdf"):
                    self.assertTrue(paper.read_bytes().endswith(b"%%EOF\n"), f"{what}: {paper.name} is half written")
                for drawing in self.folder.glob("*.svg"):
                    self.assertTrue(drawing.read_text().endswith("</svg>\n"), f"{what}: {drawing.name} is half written")
                refused += 1
        print(f"papers did not fit {refused} times")

    def test_a_read_only_disk(self):
        for act, work in self.days_acts():
            self.changes_nothing_read_only(work, act)
            self.done(*work)
            self.sound(act)


@NEEDS_MOUNTS
class ShopsDisk(OwnDisk, ShopDay):
    PROGRAM, COMMAND = SHOP, COMMAND

    def test_a_disk_that_fills_up(self):
        refused = 0
        for act in shop_day.ACTS:
            before = self.kept("before-" + act)
            self.done(*self.acts(act))
            after = self.counts()
            for told, what in self.fill_up(self.acts(act), act, before):
                if told:  # it was opened
                    self.assertIn("typed 1", told, what)
                    self.nothing_is_lost(told, what)
                self.there_is(self.done(*self.acts(act)).stdout, what + ", done again")
                self.assertEqual(self.counts(), after, what)
                refused += 1
        print(f"the shop's disk was full {refused} times")

    def test_a_read_only_disk(self):
        for act in shop_day.ACTS:
            self.changes_nothing_read_only(self.acts(act), act)
            self.there_is(self.done(*self.acts(act)).stdout, act)


@NEEDS_MOUNTS
class TabletsDisk(OwnDisk, TabletDay):
    PROGRAM = TABLET

    def test_a_disk_that_fills_up(self):
        refused = 0
        # In small steps, for it is one program from its first table to its last copy.
        for told, what in self.fill_up(["work", self.folder], "a day", self.empty(), growth=1.2):
            self.holds(told, what)
            refused += 1
        print(f"the tablet's disk was full {refused} times")

    def test_a_read_only_disk(self):
        work = ["work", self.folder]
        self.changes_nothing_read_only(work, "a first day")
        told = self.done(*work).stdout
        self.changes_nothing_read_only(work, "a second day")
        self.holds(told, "read-only")


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0], *sys.argv[4:]])
