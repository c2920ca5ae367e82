"""Guards: orders and their revisions, taken in through the real program in any sequence and any number of times, end
in the same state; a revision shows what it changes and what is already made, and asks before that becomes scrap; a
claimed number that does not follow from the runs is shown. All data is invented."""
import copy
import itertools
import json
import sqlite3
import unittest

from program import CASES, Program

JOB = json.loads((CASES / "alder.job.json").read_text())


def longer(job, feet):
    job["chains"][1]["runs"][0]["lengths"][0].update(mm=304.8 * feet, entered=f"{feet}'")


class Revisions(Program):
    def revisions(self):
        """Three revisions of one order: the ridge is 16 ft, then 30 ft, then 12 ft and in another note."""
        for number, feet in enumerate((16, 30, 12), 1):
            job = copy.deepcopy(JOB)
            longer(job, feet)
            (self.folder / "job.json").write_text(json.dumps(job))
            self.run_program("takeoff", "job.json", "-o", "order.json")
            (self.folder / f"revision-{number}.json").write_bytes((self.folder / "order.json").read_bytes())
        return [f"revision-{number}.json" for number in (1, 2, 3)]

    def state(self, database):
        connection = sqlite3.connect(self.folder / database)
        self.addCleanup(connection.close)
        return [connection.execute(query).fetchall() for query in (
            "SELECT id, revision, hash, previous_hash, document, derived FROM orders ORDER BY id, revision",
            "SELECT order_id, mark, length_nm, girth_nm, make, count FROM pieces WHERE withdrawn = 0 ORDER BY mark",
            "SELECT mark, state, count FROM piece_counts WHERE count > 0 ORDER BY mark, state",
            "SELECT * FROM quarantine")]

    def test_a_job_taken_off_again_is_the_same_revision(self):
        self.revisions()
        before = (self.folder / "order.json").read_bytes()
        self.run_program("takeoff", "job.json", "-o", "order.json")
        self.assertEqual((self.folder / "order.json").read_bytes(), before)
        order = json.loads(before)
        self.assertEqual(order["revision"], 3)
        self.assertEqual(len(order["previous_hash"]), 64)

    def test_what_only_a_later_program_understands_stays(self):
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        order = json.loads((self.folder / "order.json").read_text())
        order["photos"] = 12
        order["pieces"][0]["chalk"] = "see sketch"
        (self.folder / "order.json").write_text(json.dumps(order))
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        self.assertEqual(json.loads((self.folder / "order.json").read_text()), order)
        job = copy.deepcopy(JOB)
        longer(job, 12)
        job["weather"] = "dry"
        (self.folder / "job.json").write_text(json.dumps(job))
        self.run_program("takeoff", "job.json", "-o", "order.json")
        again = json.loads((self.folder / "order.json").read_text())
        self.assertEqual((again["revision"], again["photos"], again["job"]["weather"]), (2, 12, "dry"))
        self.assertEqual(again["pieces"][0]["chalk"], "see sketch")

    def test_any_sequence_any_number_of_times_ends_the_same(self):
        files = self.revisions()
        self.run_program("receive", *files, "--db", "wanted.db")
        wanted = self.state("wanted.db")
        self.assertEqual([row[1] for row in wanted[0]], [1, 2, 3])
        self.assertEqual(wanted[0][1][3], wanted[0][0][2], "revision 2 carries the hash of revision 1")
        self.assertEqual(wanted[3], [])
        for number, sequence in enumerate(itertools.permutations(files)):
            database = f"{number}.db"
            self.run_program("receive", *sequence, sequence[0], sequence[1], "--db", database)
            self.run_program("receive", ".", "--db", database, status=2)  # job.json is no order
            self.assertEqual(self.state(database), wanted, sequence)

    def test_a_revision_takes_back_the_plan_that_held_its_pieces(self):
        files = self.revisions()
        self.shop("receive", files[0])
        self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1")
        self.assertIn("taken back; plan again", self.shop("receive", files[1]).stderr)
        self.assertIn("no plan waits to be cut", self.shop("made", "cut").stdout)
        self.shop("plan", "--time", "1")
        self.shop("print", "-o", "tickets")
        self.assertTrue((self.folder / "tickets" / "cut-01.txt").exists())
        self.shop("made", "cut")
        self.shop("print", "-o", "tickets")
        self.assertFalse((self.folder / "tickets" / "cut-01.txt").exists(), "a ticket that is cut is taken away")

    def test_a_revision_says_what_it_changes(self):
        files = self.revisions()
        self.shop("receive", files[0])
        told = self.shop("receive", files[1]).stderr
        for words in ("from revision 1 to 2:", "run R1: length was 16' 0\", is now 30' 0\"", "mark R1.3: is new"):
            self.assertIn(words, told)
        self.assertNotIn("E1", told)

    def test_a_revision_after_cutting_asks(self):
        files = self.revisions()
        self.shop("receive", files[0])
        self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1")
        self.shop("made", "cut")
        told = self.shop("receive", files[1], status=1)
        self.assertIn("revision 2: waits for a person", told.stdout)
        for words in ("R1.2 changes: 1 wanted before, 1 now; 1 cut; 1 becomes scrap", "R1.2 changes, but 1 of it is cut or folded and would be scrap", "--accept"):
            self.assertIn(words, told.stderr)
        before = self.state("shop.db")
        self.shop("receive", files[1], status=1)
        self.assertEqual(self.state("shop.db")[:3], before[:3])
        self.assertIn("taken in", self.shop("receive", files[1], "--accept").stdout)
        self.assertIn("already here", self.shop("receive", files[1]).stdout)

    def test_what_a_revision_does_to_each_mark_can_be_read_by_a_program(self):
        files = self.revisions()
        self.shop("receive", files[0])
        self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1")
        self.shop("made", "cut")
        marks = json.loads(self.shop("receive", files[1], "--json", status=1).stdout)[0]["marks"]
        self.assertIn({"mark": "R1.2", "wanted_before": 1, "wanted": 1, "made_alike": False, "made": {"cut": 1},
                       "scrap": 1}, marks)
        self.assertIn({"mark": "R1.3", "wanted_before": 0, "wanted": 1, "made_alike": False, "made": {}, "scrap": 0},
                      marks)

    def test_an_order_is_cancelled_by_its_next_revision(self):
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        self.shop("receive", "order.json")
        self.assertIn("found no -o", self.run_program("takeoff", CASES / "alder.job.json", "--cancel", status=2).stderr)
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json", "--cancel")
        cancelled = json.loads((self.folder / "order.json").read_text())
        self.assertEqual((cancelled["revision"], cancelled["cancelled"]), (2, True))
        told = self.shop("receive", "order.json")
        self.assertIn("revision 2, which cancels it: taken in", told.stdout)
        self.assertIn("cancelled was no, is now yes", told.stderr)
        self.assertEqual(self.state("shop.db")[2], [], "nothing of it is left to make")
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        self.assertIn("revision 3: taken in", self.shop("receive", "order.json").stdout)
        self.assertTrue(self.state("shop.db")[2], "it is wanted again")

    def test_two_tablets_at_one_house_make_one_job(self):
        other = copy.deepcopy(JOB)
        other["id"] = "7d1f8d2a-55a1-4f53-9a0e-3c0c2b1f0e11"
        longer(other, 16.02)  # the same ridge by another tape
        (self.folder / "other.json").write_text(json.dumps(other))
        self.run_program("takeoff", "other.json", "-o", "other.order.json")
        told = self.run_program("merge", CASES / "alder.job.json", "other.order.json", "-o", "both.json", status=1)
        self.assertIn("kept once", told.stderr)
        self.assertIn("perhaps one edge measured twice", told.stderr)
        both = json.loads((self.folder / "both.json").read_text())
        self.assertEqual(both["id"], JOB["id"])
        runs = [run["id"] for chain in both["chains"] for run in chain["runs"]]
        self.assertEqual(len(runs), len(set(runs)))
        self.assertEqual(len(runs), sum(len(chain["runs"]) for chain in JOB["chains"]) + len(JOB["chains"][1]["runs"]))
        self.run_program("takeoff", "both.json", "-o", "both.order.json")

    def test_once_a_tablet_is_paired_others_wait(self):
        key = "3b" * 32
        self.empty_shop()
        self.assertIn("no tablet is paired", self.shop("tablet", "list").stdout)
        paired = json.loads(self.shop("tablet", "pair", key, "Ann's tablet", "--json").stdout)[0]
        self.assertRegex(paired["code"], "^[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4}$")
        self.assertIn("Ann's tablet", self.shop("tablet", "list").stdout)
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        self.assertIn("no tablet signed it", self.shop("receive", "order.json", status=1).stderr)
        self.assertIn("taken in", self.shop("receive", "order.json", "--accept").stdout)
        self.assertIn("trusted no longer", self.shop("tablet", "revoke", paired["code"]).stdout)
        self.assertIn("not trusted as it is", self.shop("tablet", "revoke", key, status=2).stderr)
        self.assertIn("no tablet of this code", self.shop("tablet", "revoke", "0000-0000-0000", status=2).stderr)
        self.assertIn("tablet takes list, pair", self.shop("tablet", "pair", key, status=2).stderr)

    def test_another_content_of_a_revision_waits(self):
        files = self.revisions()
        self.shop("receive", files[0])
        forged = json.loads((self.folder / files[0]).read_text())
        forged["job"]["customer"] = "Somebody else"
        (self.folder / "forged.json").write_text(json.dumps(forged))
        self.assertIn("revision 1 is here with another content",
                      self.shop("receive", "forged.json", "--accept", status=1).stderr)
        second = json.loads((self.folder / files[1]).read_text())
        second["previous_hash"] = "0" * 64
        (self.folder / "stray.json").write_text(json.dumps(second))
        self.assertIn("was made from another revision 1 than the one that is here",
                      self.shop("receive", "stray.json", status=1).stderr)

    def test_claimed_numbers_are_derived_again(self):
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        order = json.loads((self.folder / "order.json").read_text())
        order["pieces"][0]["blank_length_mm"] += 25.4
        order["profiles"][0]["profile"]["bends"][0]["turn_degrees"] = 12
        order["profiles"][0]["girth_mm"] -= 25.4
        (self.folder / "claims.json").write_text(json.dumps(order))
        told = self.shop("receive", "claims.json").stderr
        for words in ("claims.json and what the shop derives", "mark E1.1: length of the blank: the order says",
                      "turn of bend 1: the order says 12°", "girth: the order says"):
            self.assertIn(words, told)
        made = sqlite3.connect(self.folder / "shop.db").execute("SELECT length_nm FROM pieces WHERE mark = 'E1.1'").fetchone()
        self.assertEqual(made[0], round(1e6 * (order["pieces"][0]["blank_length_mm"] - 25.4)))


if __name__ == "__main__":
    unittest.main()
