"""Guards: `lapwright cut` repeats a plan byte for byte, says where the metal goes, takes remnants where they pay, keeps
what is cut when the rest is planned again, and names what it cannot cut."""
import json
import unittest

from program import Program

SHEET = {"key": "sheet", "kind": "sheet", "width_mm": 1220, "length_mm": 3050}


def blank(key, girth, length, count, **more):
    return {"key": key, "girth_mm": girth, "length_mm": length, "count": count, **more}


class Cut(Program):
    def problem(self, blanks, stocks=(SHEET,), name="problem.json", **rules):
        problem = {"format": "lapwright/cut-problem", "version": 1, "blanks": blanks, "stocks": list(stocks), "rules": rules}
        (self.folder / name).write_text(json.dumps(problem))
        return name

    def plan(self, *arguments, name="plan.json", **expected):
        done = self.run_program("cut", *arguments, "--json", **expected)
        (self.folder / name).write_text(done.stdout)
        return json.loads(done.stdout), done.stderr

    @staticmethod
    def cut_of(document):
        """How often each blank is cut."""
        counts = {one["key"]: 0 for one in document["problem"]["blanks"]}
        for pattern in document["plan"]["patterns"]:
            for strip in pattern["strips"]:
                for crosscut in strip["crosscuts"]:
                    key = document["problem"]["blanks"][crosscut["blank"]]["key"]
                    counts[key] += crosscut["count"] * pattern["count"]
        return counts

    def test_the_same_steps_give_the_same_plan_with_any_number_of_threads(self):
        blanks = [blank(f"B{n}", 100 + 17 * (n % 7), 400 + 53 * n, 1 + n % 5) for n in range(40)]
        for patterns in ("exact", "non_exact"):
            name = self.problem(blanks, patterns=patterns)
            one, two, again = (self.run_program("cut", name, "--work", "60", "--threads", threads, "--json").stdout
                               for threads in (1, 2, 2))
            self.assertEqual(one, two)
            self.assertEqual(two, again)

    def test_it_says_where_the_metal_goes_and_what_would_be_free(self):
        # Two lie side by side in a sheet of 1220 and two more would: 3050 holds one length of 2000 and one of 1000.
        said = self.run_program("cut", self.problem([blank("A", 600, 2000, 2), blank("B", 600, 1000, 1)])).stdout
        self.assertIn("1 of sheet sheet, proven least", said)
        self.assertIn("Of the metal taken 80.6 % is blanks", said)
        self.assertIn("1 more of B, ", said)

    def test_a_remnant_goes_first_where_it_pays(self):
        remnant = {"key": "R7", "kind": "remnant", "width_mm": 300, "length_mm": 2100}
        document, _ = self.plan(self.problem([blank("A", 280, 2000, 1)], [SHEET, remnant]))
        self.assertEqual([document["problem"]["stocks"][one["stock"]]["key"] for one in document["plan"]["patterns"]], ["R7"])
        # Where a sheet is wanted anyway and has room, the remnant stays on its shelf.
        document, _ = self.plan(self.problem([blank("A", 280, 2000, 1), blank("B", 900, 3000, 1)], [SHEET, remnant]))
        self.assertEqual([document["problem"]["stocks"][one["stock"]]["key"] for one in document["plan"]["patterns"]],
                         ["sheet"])

    def test_what_is_cut_stays_when_the_rest_is_planned_again(self):
        name = self.problem([blank("A", 400, 2900, 7)], least_remnant_width_mm=300, least_remnant_length_mm=500)
        before, _ = self.plan(name)
        self.assertEqual(self.cut_of(before), {"A": 7})
        self.assertEqual(sum(one["count"] for one in before["plan"]["patterns"]), 3)
        whole = max(range(len(before["plan"]["patterns"])), key=lambda at: before["plan"]["patterns"][at]["count"])
        self.assertEqual(before["plan"]["patterns"][whole]["count"], 2)
        rush = self.problem([blank("R", 500, 1000, 1)], [], name="rush.json")
        after, said = self.plan("plan.json", "--done", f"{whole + 1}=1", "--scrapped", "A=2", "--rush", rush, name="next.json")
        # Three of seven are cut, two of them spoiled: six are left, and what was rushed in.
        self.assertEqual(self.cut_of(after), {"A": 6, "R": 1})
        self.assertIn("2 of blank A will be cut again", said)
        self.assertIn("1 of blank R came in", said)
        self.assertIn("of stock sheet will be cut", said)

    def test_all_cut_leaves_nothing(self):
        document, _ = self.plan(self.problem([blank("A", 400, 2900, 3)]))
        self.assertEqual(len(document["plan"]["patterns"]), 1)
        self.assertIn("nothing is left to cut", self.run_program("cut", "plan.json", "--done", "1").stderr)

    def test_remnants_made_are_stock_of_the_next_plan(self):
        name = self.problem([blank("A", 700, 1800, 4)], least_remnant_width_mm=300, least_remnant_length_mm=500)
        before, _ = self.plan(name)
        labels = {one["label"] for one in before["plan"]["remnants"]}
        self.assertTrue(labels)
        after, _ = self.plan("plan.json", "--done", "1=1", name="next.json")
        keys = [one["key"] for one in after["problem"]["stocks"]]
        self.assertEqual(len(keys), len(set(keys)))
        self.assertTrue(any(key.split(".")[0] in labels for key in keys))

    def test_a_report_that_cannot_be_right_is_refused(self):
        self.plan(self.problem([blank("A", 400, 2900, 3)]))
        for arguments, says in [(["--done", "2"], "--done: found 2, expected a pattern from 1 to 1"),
                                (["--done", "1=0"], "--done: found 1=0, expected a count of 1 or more"),
                                (["--done", "1=5"], "no more than the plan has"),
                                (["--scrapped", "Q"], "--scrapped: found Q"),
                                (["--scrapped", "A=1"], "no more than were cut"),
                                (["--rush", "nowhere.json"], "nowhere.json"),
                                (["--work", "-1"], "--work: found -1"),
                                (["--threads", "none"], "--threads: found none")]:
            self.assertIn(says, self.run_program("cut", "plan.json", *arguments, status=2).stderr)

    def test_what_cannot_be_cut_is_named_and_the_rest_is_planned(self):
        blanks = [blank("good", 400, 2900, 3), blank("wide", 1300, 2900, 1), blank("none", 400, 2900, 0),
                  blank("many", 400, 2900, 1_000_000_000), blank("flat", 400, 0, 1)]
        document, said = self.plan(self.problem(blanks), status=1)
        self.assertEqual(self.cut_of(document), {"good": 3})
        for key in ("wide", "none", "many", "flat"):
            self.assertIn(key, said)
        # What is no length at all is no document either.
        below = self.problem([blank("minus", -400, 2900, 1)])
        self.assertIn("/blanks/0/girth_mm: found -400", self.run_program("cut", below, status=2).stderr)


if __name__ == "__main__":
    unittest.main()
