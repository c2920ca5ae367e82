"""Guards: dropping a file into a folder of the shop's own is all it takes to add a trim, a rule, a metal or a machine
(DEVELOPERS.md, "To add"): nothing is built, no list is kept. Each case copies the nearest of ours, as told there, and
uses what it added. All data is invented."""
import json
import pathlib
import unittest

from program import Program

CORE = pathlib.Path(__file__).resolve().parents[2] / "shared-core"
DEMO = CORE.parent / "demo"


def ours(folder, name):
    return json.loads((CORE / folder / f"{name}.json").read_text())


class OwnLibrary(Program):
    def add(self, folder, document):
        """Drops it into the shop's folder, which is all that is done."""
        place = self.folder / "own" / folder
        place.mkdir(parents=True, exist_ok=True)
        (place / f"{document['id']}.json").write_text(json.dumps(document))

    def job(self, change):
        job = json.loads((DEMO / "hollin.job.json").read_text())
        change(job)
        (self.folder / "house.job.json").write_text(json.dumps(job))

    def order(self, status=0):
        """What the take-off says, and its order."""
        done = self.run_program("takeoff", "house.job.json", "--library", "own", "--json", status=status)
        return done.stderr, json.loads(done.stdout)

    def test_a_trim(self):
        trim = ours("trim-library", "ridge-cap")
        trim.update(id="tall-ridge", name="Tall ridge")
        for leg in trim["legs"]:
            leg["length"]["constant_mm"] = 200
        self.add("trim-library", trim)
        self.job(lambda job: job["chains"][1]["runs"][0].update(trims=[{"trim": "tall-ridge"}]))
        [profile] = [one["profile"] for one in self.order()[1]["profiles"] if one["profile"]["name"].startswith("Tall ridge")]
        self.assertEqual([leg["length_mm"] for leg in profile["legs"]], [200, 200])

    def test_a_metal(self):
        metal = ours("metal-library", "zinc")
        metal.update(id="our-zinc", name="Our zinc")
        metal["sheets"] = [{"gauge": "0.9 mm", "thickness_mm": 0.9, "kilograms_per_square_metre": 6.48}]
        self.add("metal-library", metal)
        self.job(lambda job: job.update(material={"metal": "our-zinc", "gauge": "0.9 mm", "colour": "Grey"}))
        profiles = self.order()[1]["profiles"]
        self.assertTrue(profiles)
        self.assertEqual({profile["thickness_mm"] for profile in profiles}, {0.9})

    def test_a_rule(self):
        self.add("rule-sets", {
            "format": "lapwright/rules", "version": 1, "id": "our-rules", "name": "Our own", "edition": "2026",
            "caution": "The shop decides.",
            "clauses": [{"number": "Ours 1", "edition": "2026", "source": "common practice, no source",
                         "applies": [{"fact": "trim", "is": "equal", "value": "ridge-cap"}],
                         "demands": [{"fact": "lap", "is": "at_least", "value": 300}],
                         "statement": "The ridge laps {lap}; we ask for {demanded}", "remedy": "Lap it further."}]})
        self.job(lambda job: job.update(rule_sets=["our-rules"]))
        said, order = self.order()
        self.assertIn("The ridge laps 4\"; we ask for 11 13/16\"", said)
        self.assertIn("[Ours 1, 2026]", said)
        self.assertIn("rules.our-rules.Ours-1.lap", [finding["code"] for finding in order["findings"]])

    def test_a_machine(self):
        machine = ours("machines", "long-folder-up-down")
        machine.update(id="our-folder", name="Our folder")
        self.add("machines", machine)
        said = self.run_program("fold", DEMO / "eave-drip-edge.profile.json", "--machine", "our-folder", "--library",
                                "own").stdout
        self.assertIn("our-folder", said)

    def test_what_contradicts_itself_is_named(self):
        trim = ours("trim-library", "ridge-cap")
        trim.update(id="no-turn", legs=trim["legs"][:1])
        self.add("trim-library", trim)
        self.job(lambda job: job["chains"][1]["runs"][0].update(trims=[{"trim": "no-turn"}]))
        done = self.run_program("takeoff", "house.job.json", "--library", "own", status=2)
        self.assertIn("no-turn.json", done.stderr)


if __name__ == "__main__":
    unittest.main()
