"""Guards: an order comes in with its photos as one ZIP or as the plain document, and the shop says which photo did not
come; a ZIP that is no order costs an error and leaves nothing behind. All data is invented."""
import hashlib
import json
import time
import subprocess
import unittest
import zipfile

from program import CASES, PROGRAM, Program

PHOTOS = [b"a chimney", b"a gutter"]


def hash_of(photo):
    return hashlib.sha256(photo).hexdigest()


class Photos(Program):
    def setUp(self):
        super().setUp()
        job = json.loads((CASES / "alder.job.json").read_text())
        job["photos"] = [{"sha256": hash_of(PHOTOS[0]), "place": "run E1"},
                         {"sha256": hash_of(PHOTOS[1]), "place": "run E2", "code": "site.run.repeats"}]
        (self.folder / "alder.job.json").write_text(json.dumps(job))
        self.run_program("takeoff", "alder.job.json", "-o", "alder.order.json")
        self.order = (self.folder / "alder.order.json").read_bytes()

    def zipped(self, name, files):
        with zipfile.ZipFile(self.folder / name, "w", zipfile.ZIP_DEFLATED) as made:
            for inside, content in files:
                made.writestr(inside, content)
        return name

    def with_photos(self, name, photos):
        return self.zipped(name, [("order.json", self.order)]
                           + [(f"photos/{hash_of(photo)}.jpg", photo) for photo in photos])

    def test_order_with_its_photos(self):
        done = self.shop("receive", self.with_photos("alder.zip", PHOTOS), "--json")
        taken = json.loads(done.stdout)[0]
        self.assertEqual((taken["outcome"], taken["photos"]), ("taken in", 2))
        self.assertNotIn("photo", done.stderr)
        again = self.shop("receive", "alder.order.json")
        self.assertIn("already here", again.stdout)
        self.assertEqual(again.stderr.count("a photo did not come"), 2, "the plain document has none of them")

    def test_photo_that_did_not_come(self):
        done = self.shop("receive", self.with_photos("alder.zip", PHOTOS[:1]))
        self.assertIn("taken in", done.stdout)
        self.assertIn("run E2", done.stderr)
        self.assertEqual(done.stderr.count("a photo did not come"), 1)

    def test_altered_photo_is_missing(self):
        name = self.zipped("alder.zip", [("order.json", self.order), (f"photos/{hash_of(PHOTOS[0])}.jpg", PHOTOS[1])])
        self.assertEqual(self.shop("receive", name).stderr.count("a photo did not come"), 2)

    def test_no_order_inside(self):
        for files, says in [([("../x", b"harm"), ("order.json", self.order)], '"../x"'),
                            ([("order.json", self.order), ("/etc/x", b"harm")], '"/etc/x"'),
                            ([(f"photos/{hash_of(PHOTOS[0])}.jpg", PHOTOS[0])], "no order.json"),
                            ([("order.json", b"{}")], "/format"),
                            ([("order.json", b" " * (65 << 20))], "64 MiB")]:
            name = self.zipped("bad.zip", files)
            done = self.shop("receive", name, status=2)
            self.assertIn("bad.zip", done.stderr)
            self.assertIn(says, done.stderr)

    def test_folder_of_both(self):
        folder = self.folder / "came"
        folder.mkdir()
        (folder / "plain.json").write_bytes(self.order)
        (self.folder / self.with_photos("alder.zip", PHOTOS)).rename(folder / "alder.zip")
        done = self.shop("receive", folder)
        self.assertIn("taken in", done.stdout)
        self.assertIn("already here", done.stdout)

    def test_watched_folder(self):
        folder = self.folder / "watched"
        folder.mkdir()
        whole = (self.folder / self.with_photos("alder.zip", PHOTOS)).read_bytes()
        watch = subprocess.Popen([PROGRAM, "receive", "--watch", "0.1", str(folder), "--db", "shop.db"], cwd=self.folder,
                                 stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
        self.addCleanup(watch.communicate)
        self.addCleanup(watch.terminate)
        (folder / "alder.zip").write_bytes(whole[:-30])
        time.sleep(1)
        (folder / "alder.zip").write_bytes(whole)
        self.assertIn("taken in", watch.stdout.readline())


if __name__ == "__main__":
    unittest.main()
