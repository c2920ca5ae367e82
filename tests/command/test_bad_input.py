"""Guards: bad input to any subcommand names file, place and what was expected, ends with the exit status the design
gives it, and leaves nothing half-written. All data is invented."""
import copy
import json
import resource
import subprocess
import time
import unittest

from program import CASES, PROGRAM, Program

DOCUMENTS = CASES.parents[1] / "documents" / "cases"
JOB = json.loads((CASES / "alder.job.json").read_text())


def first_run(job):
    return job["chains"][0]["runs"][0]


def set_length(millimetres, entered=""):
    return lambda job: first_run(job)["lengths"][0].update(mm=millimetres, entered=entered)


def u_shape(job):
    """A house like a U whose notch, 25 ft deep, goes through the 20 ft deep back: it closes, and crosses itself."""
    feet = [30, 20, 10, 25, 10, 25, 10, 20]
    inside = {3, 4}
    job["chains"] = [{
        "id": "u", "closed": True,
        "runs": [{**copy.deepcopy(first_run(JOB)), "id": f"U{i}", "lengths": [{"mm": 304.8 * length}]}
                 for i, length in enumerate(feet)],
        "corners": [{"kind": "square_inside" if i in inside else "square_outside"} for i in range(len(feet))]}]


class BadInput(Program):
    def written(self, name, change):
        job = copy.deepcopy(JOB)
        change(job)
        (self.folder / name).write_text(json.dumps(job))
        return name

    def refused(self, *arguments, says):
        """Ends with 2, names what it should on standard error, writes nothing."""
        before = sorted(self.folder.iterdir())
        done = self.run_program(*arguments, status=2)
        for words in says:
            self.assertIn(words, done.stderr)
        self.assertEqual(done.stdout, "")
        self.assertEqual(sorted(self.folder.iterdir()), before, "nothing is left behind")

    def test_texts_that_are_no_documents(self):
        for content, *says in [
                (b"", "line 1, column 1", "found the end of the text", "expected JSON"),
                (b'{"format": ', "line 1", "expected JSON"),
                (b'{"format": "lapwright/job", "version": 1,\n "id": 1, "id": 2}', "line 2", "/id", "each member once"),
                (b"\xff\xfe{", "line 1, column 1", "UTF-8"),
                (b"[" * 100_000, "more than 64 deep"),
                (b"[1, 2]", "an object with member"),
                (b'{"a": 1}', "/format", "no such member")]:
            (self.folder / "bad.json").write_bytes(content)
            self.refused("takeoff", "bad.json", "-o", "order.json", says=["bad.json", *says])
            self.refused("closure", "bad.json", says=["bad.json", *says])

    def test_a_gigabyte_is_refused_for_less_than_a_gigabyte(self):
        with open(self.folder / "bad.json", "wb") as file:
            file.truncate(1 << 30)
        self.refused("takeoff", "bad.json", "-o", "order.json", says=["bad.json: found more than 256 MiB"])
        (self.folder / "bad.json").unlink()
        piped = subprocess.run(["sh", "-c", f"head -c 1073741824 /dev/zero | '{PROGRAM}' takeoff -"], cwd=self.folder,
                               capture_output=True, text=True)
        self.assertEqual(piped.returncode, 2, piped.stderr)
        self.assertIn("standard input: found more than 256 MiB", piped.stderr)
        self.assertLess(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss, 1 << 20, "kilobytes")

    def test_versions_and_formats(self):
        for change, *says in [
                (lambda job: job.update(version=9, program="3.1.0"), "/version", "version 9", "Lapwright 3.1.0 or later"),
                (lambda job: job.update(version=0), "/version", "a whole number from 1 to 1"),
                (lambda job: job.pop("version"), "/version", "no such member"),
                (lambda job: job.update(format="lapwright/load"), "/format", '"lapwright/load"', '"lapwright/job"')]:
            name = self.written("bad.json", change)
            self.refused("takeoff", name, "-o", "order.json", says=["bad.json", *says])

    def test_a_name_does_not_steer_the_terminal(self):
        # Clear the screen, C1's own opening of such a sequence, a right-to-left override, a carriage return.
        name = "Alder \x1b[2J\x9b1m\u202egnirts\rHouse"
        job = self.written("bad.json", lambda job: (job.update(name=name), job["chains"][0].update(name=name)))
        self.run_program("takeoff", job, "-o", "order.json")
        for said in (self.run_program("takeoff", job), self.run_program("closure", job),
                     self.shop("receive", "order.json"), self.shop("status")):
            self.assertIn("Alder", said.stdout)
            for steering in "\x1b\x9b\u202e\r":
                self.assertNotIn(steering, said.stdout + said.stderr)
        kept = json.loads(self.run_program("takeoff", job, "--json").stdout)
        self.assertEqual(kept["job"]["name"], name, "the document says what it said")
        coloured = self.written("bad.json", lambda job: job["material"].update(colour="Slate\x1b[2J"))
        mark = json.loads(self.run_program("takeoff", coloured, "--json").stdout)["pieces"][0]["mark"]
        why = self.run_program("takeoff", coloured, "--why", mark).stdout
        self.assertIn("Slate", why)
        self.assertNotIn("\x1b", why)

    def test_breaches_of_the_schema(self):
        place = "bad.json/chains/0/runs/0"
        for change, *says in [
                (lambda job: first_run(job).update(kind="eaves"), place + "/kind", '"eaves"', '"eave" or "rake"'),
                (set_length("40'"), place + "/lengths/0/mm", 'found "40\'"', "expected a number (millimetres)"),
                (set_length(-1), place + "/lengths/0/mm", "found -1", "at least 0 (millimetres)"),
                (set_length(1e12), place + "/lengths/0/mm", "at most 1000000000"),
                (lambda job: first_run(job).update(slope={"rise": 6, "run": 0}), place + "/slope/run", "more than 0"),
                (lambda job: first_run(job).update(slope="6/12"), place + "/slope", "an object"),
                (lambda job: first_run(job).pop("id"), place, 'no member "id"'),
                (lambda job: job["chains"][0]["runs"][1].update(id="E1"), "/chains/0/runs/1/id", '"E1" again'),
                (lambda job: job["chains"][0]["corners"].pop(), "/chains/0/corners", "3 corners", "4 between 4 runs"),
                (lambda job: job.update(id="not a UUID"), "bad.json/id", "a UUID"),
                (lambda job: job.update(spares=1.5), "bad.json/spares", "a whole number")]:
            name = self.written("bad.json", change)
            self.refused("takeoff", name, "-o", "order.json", says=says)

    def test_what_cannot_be_right_blocks_and_is_named(self):
        """Sound documents of a house that cannot be: exit 1, with the file, the run and what would help."""
        for change, *says in [
                (set_length(0), "run E1: the length is 0", "enter the measured length"),
                (set_length(274320, "900'"), "run E1: 900' 0\" is longer than any run may be, 400' 0\"", "check the unit"),
                (lambda job: first_run(job).pop("lengths"), "run E1: this eave has no length", "measure it"),
                (lambda job: first_run(job).pop("slope"), "run E1", "needs the slope"),
                (u_shape, "chain u", "cross"),
                (lambda job: job["chains"][0].update(corners=[{"kind": "angle", "degrees": 30}] * 4),
                 "chain House eave", "the interior angles add up to 120°", "measure the corners again"),
                (lambda job: first_run(job)["trims"][0].update(trim="ridge-cap"),
                 "run E1: Ridge cap does not suit this kind of run, eave", "choose a trim that suits"),
                (lambda job: first_run(job)["trims"][0].update(trim="no-such"),
                 "run E1: the trim no-such is not in the library"),
                (lambda job: job.update(limits={"folding_length_mm": 40}),
                 "run E1, Eave drip edge: 40' 0\" needs several pieces", "allow longer pieces"),
                (lambda job: job.update(limits={"folding_length_mm": 300, "shortest_piece_mm": 299}),
                 "run E1, Eave drip edge: 40' 0\" cannot be divided", "allow shorter or longer pieces"),
                (lambda job: job["material"].update(metal="tin"), "the metal tin", "choose a metal of the library"),
                (lambda job: job["material"].update(gauge="99 ga"), "not sold as 99 ga", "26 ga"),
                (lambda job: job.update(rule_sets=["no-such"]), "the rule set no-such")]:
            name = self.written("bad.json", change)
            told = self.run_program("takeoff", name, status=1).stderr
            for words in ("bad.json: findings: ", "BLOCKS", *says):
                self.assertIn(words, told)

    def test_a_slip_of_unit_is_told(self):
        told = self.run_program("takeoff", self.written("bad.json", set_length(40, "40'")), "-o", "order.json").stderr
        self.assertIn("warns   run E1: 40' was entered, and the value beside it is 1 9/16\"", told)
        order = json.loads((self.folder / "order.json").read_text())
        self.assertIn("documents.entered", [finding["code"] for finding in order["findings"]])
        self.assertIn("bad.json: findings: 0 that block, 1 that warn", self.run_program("closure", "bad.json", status=1).stderr)
        self.assertIn("warns   run E1: 40' was entered", self.shop("receive", "order.json").stderr)

    def test_an_order_with_blocking_findings_is_not_taken_in(self):
        self.written("bad.json", set_length(0))
        self.run_program("takeoff", "bad.json", "-o", "order.json", status=1)
        told = self.shop("receive", "order.json", status=1).stderr
        for words in ("order.json: findings: 1 that block", "run E1", "order.json: not taken in"):
            self.assertIn(words, told)
        self.assertEqual(self.shop("status").stdout, "")

    def test_each_subcommand_names_the_document_it_wants(self):
        load = DOCUMENTS / "first.load.json"
        for wanted, arguments in [
                ("job", ["takeoff", load]), ("job", ["closure", load]), ("profile", ["girth", load]),
                ("profile", ["fold", load, "--machine", "long-folder-up"]), ("cut-problem", ["cut", load]),
                ("order", ["takeoff", CASES / "alder.job.json", "-o", load])]:
            self.refused(*arguments, says=["first.load.json/format", '"lapwright/load"', f'"lapwright/{wanted}"'])
        self.empty_shop()
        for wanted, arguments in [("order", ["receive", load]), ("receipt", ["receipt", load]),
                                  ("stock", ["plan", "--stock", load])]:
            self.refused(*arguments, "--db", "shop.db", says=["first.load.json/format", f'"lapwright/{wanted}"'])

    def test_standard_input_is_named(self):
        done = self.run_program("takeoff", "-", status=2, text='{"format": "lapwright/job"}')
        self.assertIn("standard input/version: found no such member", done.stderr)
        self.run_program("takeoff", "-", text=json.dumps(JOB))

    def test_usage(self):
        for arguments, says in [
                (["takeoff"], "takeoff takes JOB"),
                (["takeoff", "a.json", "b.json"], "takeoff takes JOB"),
                (["no-such-thing"], "no subcommand no-such-thing"),
                (["takeoff", CASES / "alder.job.json", "--colour"], "colour"),
                (["takeoff", CASES / "alder.job.json", "--units", "miles"], "--units is miles, expected ft, in or mm"),
                (["takeoff", CASES / "alder.job.json", "--why", "X9"], "no piece X9"),
                (["takeoff", CASES / "alder.job.json", "--library", "nowhere"], "nowhere: found no such folder"),
                (["takeoff", CASES / "alder.job.json", "--library", CASES], "in it one of metal-library, trim-library"),
                (["takeoff", "missing.json"], "missing.json: found"),
                (["takeoff", "."], ".: found a folder, expected a file"),
                (["made", "eaten", "--db", "shop.db"], "made eaten, expected cut or folded"),
                (["print", "--db", "shop.db"], "found no -o"),
                (["receive", ".", "--db", "shop.db", "--watch", "1", "--json"], "--watch: found with --json"),
                (["plan", "--db", "shop.db", "--time", "soon"], "--time: found soon, expected seconds from 0 to 86400"),
                (["plan", "--db", "shop.db", "--time", "-1"], "--time: found -1"),
                (["plan", "--db", "shop.db", "--time", "nan"], "--time: found nan"),
                (["cut", DOCUMENTS / "two-girths.cut-problem.json", "--time", "1h"], "--time: found 1h"),
                (["fold", DOCUMENTS / "gutter-hook.profile.json", "--machine", "x"], "--machine: found x")]:
            self.refused(*arguments, says=[says])

    def test_a_cutting_problem_without_blanks_or_stock_says_so(self):
        sheet = {"key": "sheets", "kind": "sheet", "width_mm": 1219.2, "length_mm": 3048}
        blank = {"key": "A", "girth_mm": 254, "length_mm": 1524, "count": 1}
        for blanks, stocks, says in [([], [sheet], "/blanks: found nothing to cut, expected at least one blank"),
                                     ([blank], [], "problem.json: There is no stock to cut from")]:
            problem = {"format": "lapwright/cut-problem", "version": 1, "blanks": blanks, "stocks": stocks, "rules": {}}
            (self.folder / "problem.json").write_text(json.dumps(problem))
            self.refused("cut", "problem.json", says=[says])

    def test_no_database_is_usage_and_a_bad_one_is_not(self):
        receipt = DOCUMENTS / "first.receipt.json"
        for arguments in (["receive", receipt], ["plan"], ["print", "-o", "tickets"], ["made", "cut"], ["load"],
                          ["receipt", receipt], ["remake"], ["status"]):
            self.refused(*arguments, says=["found no --db, expected --db with the shop's database"])
            self.run_program(*arguments, "--db", self.folder / "nowhere" / "shop.db", status=3)
            self.run_program(*arguments, "--db", receipt, status=3)
        self.assertEqual(list(self.folder.iterdir()), [])

    def test_a_place_that_cannot_be_written(self):
        for place in ("nowhere/order.json", "."):
            done = self.run_program("takeoff", CASES / "alder.job.json", "-o", place, status=2 if place == "." else 3)
            self.assertIn(place + ": found", done.stderr)
        self.assertEqual(list(self.folder.iterdir()), [])

    def test_a_full_disk_leaves_what_was_there(self):
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        before = (self.folder / "order.json").read_bytes()
        name = self.written("longer.json", set_length(12497, ""))
        done = self.run_program("takeoff", name, "-o", "order.json", status=3, largest_file=2_000)
        self.assertIn("order.json: found", done.stderr)
        self.assertEqual((self.folder / "order.json").read_bytes(), before)
        self.assertEqual(sorted(file.name for file in self.folder.iterdir()), ["longer.json", "order.json"])
        self.empty_shop()
        self.assertIn("disk I/O error", self.shop("receive", "order.json", status=3, largest_file=40_000).stderr)
        self.assertEqual(self.shop("status").stdout, "", "the order is not half there")
        self.assertIn("taken in", self.shop("receive", "order.json").stdout)

    def test_results_that_do_not_get_out_are_no_success(self):
        for arguments in (["takeoff", CASES / "alder.job.json"], ["takeoff", CASES / "alder.job.json", "-o", "-"],
                          ["closure", CASES / "alder.job.json"], ["--help"]):
            with open("/dev/full", "w") as full:
                done = subprocess.run([PROGRAM, *map(str, arguments)], stdout=full, stderr=subprocess.PIPE, text=True)
            self.assertEqual(done.returncode, 3, done.stderr)
            self.assertIn("standard output: found", done.stderr)

    def test_killed_at_any_instant_leaves_one_whole_order(self):
        jobs = []
        for number, feet in enumerate((40, 41)):
            job = copy.deepcopy(JOB)
            job["chains"] = []
            for house in range(60):
                for chain in copy.deepcopy(JOB["chains"]):
                    chain["id"] += str(house)
                    for run in chain["runs"]:
                        run["id"] += f"h{house}"
                    job["chains"].append(chain)
            job["chains"][0]["runs"][0]["lengths"][0].update(mm=304.8 * feet, entered="")
            jobs.append(self.folder / f"{number}.job.json")
            jobs[-1].write_text(json.dumps(job))
        order = self.folder / "order.json"
        self.run_program("takeoff", jobs[0], "-o", order)
        started = time.monotonic()
        self.run_program("takeoff", jobs[1], "-o", self.folder / "other.json")
        whole_run = time.monotonic() - started
        killed = 0
        for attempt in range(12):
            process = subprocess.Popen([PROGRAM, "takeoff", jobs[attempt % 2], "-o", order],
                                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            time.sleep(whole_run * (0.4 + 0.06 * attempt))
            process.kill()
            killed += process.wait() != 0
            json.loads(order.read_text())
        self.assertGreater(killed, 0)
        self.run_program("takeoff", jobs[0], "-o", order)

    def test_an_order_that_is_there_outlives_a_bad_job(self):
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        before = (self.folder / "order.json").read_bytes()
        self.refused("takeoff", self.written("bad.json", set_length("40'")), "-o", "order.json", says=["bad.json"])
        self.run_program("takeoff", CASES / "birch.job.json", "-o", "order.json", status=2)
        self.assertEqual((self.folder / "order.json").read_bytes(), before)

    def test_a_bad_stock_leaves_the_old_one(self):
        self.run_program("takeoff", CASES / "alder.job.json", "-o", "order.json")
        self.shop("receive", "order.json")
        self.shop("plan", "--stock", CASES / "shop.stock.json", "--time", "1")
        stock = json.loads((CASES / "shop.stock.json").read_text())
        stock["items"].append(stock["items"][0])
        (self.folder / "bad.json").write_text(json.dumps(stock))
        self.assertIn("bad.json/items/", self.shop("plan", "--stock", "bad.json", status=2).stderr)
        self.shop("plan", "--time", "1")

    def test_a_bad_order_in_a_folder_stops_none_of_the_others(self):
        orders = self.folder / "orders"
        orders.mkdir()
        self.run_program("takeoff", CASES / "alder.job.json", "-o", orders / "b.json")
        (orders / "a.json").write_text("{")
        (orders / "c.json").write_text("{}")
        done = self.shop("receive", orders, status=2)
        self.assertIn("a.json: line 1, column 2", done.stderr)
        self.assertIn("c.json/format: found no such member", done.stderr)
        self.assertIn("Alder House, revision 1: taken in", done.stdout)
        empty = self.folder / "empty"
        empty.mkdir()
        self.assertIn("expected orders", self.shop("receive", empty).stderr)

    def test_a_receipt_for_another_shop(self):
        self.empty_shop()
        told = self.shop("receipt", DOCUMENTS / "first.receipt.json", status=2).stderr
        self.assertIn("first.receipt.json/load: found 0d9a3f34", told)
        self.assertIn("expected a load of this shop", told)


if __name__ == "__main__":
    unittest.main()
