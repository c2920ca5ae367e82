"""Guards: `lapwright fold` prints the steps or the reason and what would help, writes the ticket as whole SVG pages under
names of its own, and says what is wrong with bad input."""
import json
import pathlib
import re
import unittest
import xml.etree.ElementTree

from program import Program

MACHINES = pathlib.Path(__file__).resolve().parents[2] / "shared-core" / "machines"


def document(lengths, turns, hems=()):
    profile = {"name": "Trim", "colour_face": "left",
               "legs": [{"name": f"leg {i + 1}", "length_mm": length} for i, length in enumerate(lengths)],
               "bends": [{"turn_degrees": turn, "inside_radius_mm": 0.55} for turn in turns]}
    for end in hems:
        profile[end] = {"kind": "closed", "flat_mm": 12.7, "side": "right", "inside_radius_mm": 0}
    return {"format": "lapwright/profile", "version": 1, "length_mm": 3000, "profile": profile,
            "material": {"metal": "galvanised-steel", "gauge": "26 ga", "colour": "Slate"}}


class Fold(Program):
    def fold(self, profile, *options, status=0):
        (self.folder / "profile.json").write_text(json.dumps(profile))
        return self.run_program("fold", "profile.json", *options, status=status)

    def test_a_coping_is_planned_and_drawn(self):
        coping = document([25, 75, 250, 75, 25], [35, -90, -90, 35], ["start_hem", "end_hem"])
        done = self.fold(coping, "--machine", "long-folder-up", "--json", "--svg", "ticket")
        steps = json.loads(done.stdout)["steps"]
        self.assertEqual(len(steps), 8)
        self.assertEqual(steps[0]["action"], "pre-bend")
        self.assertEqual({step["line"] for step in steps}, set(range(6)))
        pages = sorted(path.name for path in (self.folder / "ticket").iterdir())
        self.assertEqual(pages, [f"fold-{i + 1:02}.svg" for i in range(len(pages))])
        self.assertGreater(len(pages), 4)
        for page in pages:
            xml.etree.ElementTree.parse(self.folder / "ticket" / page)

    def test_a_closed_box_is_refused_with_help(self):
        done = self.fold(document([20, 80, 60, 80, 20], [90] * 4), "--machine", "long-folder-up", status=1)
        self.assertIn("in the way is the clamp, by", done.stdout)
        self.assertIn("Split in leg 3", done.stdout)

    def machine_of_the_shop(self, name, **changes):
        """A library folder whose only machine is a shipped one with some things changed."""
        machine = json.loads((MACHINES / f"{name}.json").read_text())
        machine.update(changes)
        folder = self.folder / "library" / "machines"
        folder.mkdir(parents=True, exist_ok=True)
        (folder / f"{name}.json").write_text(json.dumps(machine))
        return "library"

    def test_a_machine_document_of_its_own(self):
        machine = json.loads((MACHINES / "long-folder-up.json").read_text())
        machine.update(id="bench-folder", name="Bench folder", largest_fold_angle_degrees=100)
        (self.folder / "bench.json").write_text(json.dumps(machine))
        angle = document([50, 50], [90])
        self.assertIn("machine bench-folder, handling", self.fold(angle, "--machine", "bench.json").stdout)
        steep = self.fold(document([50, 50], [120]), "--machine", "bench.json", status=1)
        self.assertIn("Bend line 1, between leg 1 and leg 2, cannot be folded: the clamp nose stops it 2", steep.stdout)
        self.assertIn("Long folder, up and down, 21 ft can fold it.", steep.stdout)
        machine["clamp"] = machine["clamp"][:2]
        (self.folder / "bench.json").write_text(json.dumps(machine))
        self.assertIn("bench.json/clamp", self.fold(angle, "--machine", "bench.json", status=2).stderr)

    def test_a_profile_through_itself(self):
        done = self.fold(document([100, 40, 50, 80], [90, 90, 90]), "--machine", "long-folder-up", status=1)
        self.assertIn("leg 1 and leg 4 run through each other", done.stdout)

    def test_the_shops_own_springback_wins_and_is_added_once(self):
        angle = document([50, 50], [90])
        plain = json.loads(self.fold(angle, "--machine", "long-folder-up", "--json").stdout)["steps"][0]
        self.assertEqual(plain["fold_degrees"], 90)
        self.assertTrue(90 < plain["set_degrees"] < 92)
        tried = [{"metal": "galvanised-steel", "gauge": "26 ga", "fold_degrees": 90, "set_degrees": 93.5}]
        library = self.machine_of_the_shop("long-folder-up", measured_springback=tried)
        own = json.loads(self.fold(angle, "--machine", "long-folder-up", "--json", "--library", library).stdout)["steps"][0]
        self.assertEqual(own["fold_degrees"], 90)
        self.assertAlmostEqual(own["set_degrees"], 93.5, 9)
        # Another angle of the same metal is not in the table.
        other = json.loads(self.fold(document([50, 50], [45]), "--machine", "long-folder-up", "--json", "--library",
                                     library).stdout)["steps"][0]
        self.assertTrue(45 < other["set_degrees"] < 46)
        tried[0]["set_degrees"] = 180
        self.machine_of_the_shop("long-folder-up", measured_springback=tried)
        done = self.fold(angle, "--machine", "long-folder-up", "--library", library, status=2)
        self.assertIn("measured_springback", done.stderr)

    def test_angles_as_the_reader_chose(self):
        kick = document([50, 50], [35])
        fold = self.fold(kick, "--machine", "long-folder-up", "--svg", "fold").stdout
        self.assertIn("fold 35\u00b0", fold)
        included = self.fold(kick, "--machine", "long-folder-up", "--angles", "included", "--svg", "included").stdout
        self.assertIn("fold 145\u00b0 included", included)
        pages = "".join(path.read_text() for path in (self.folder / "included").iterdir())
        pages = re.sub("<desc>.*?</desc>", "", pages, flags=re.DOTALL)  # says which angle it means
        self.assertIn("145\u00b0", pages)
        self.assertNotIn("35\u00b0", pages.replace("145\u00b0", ""))
        self.fold(kick, "--angles", "outside", status=2)

    def test_the_ticket_says_what_the_gauge_touches(self):
        drip = document([50.8, 38.1, 38.1], [-90, 35], ["end_hem"])
        steps = json.loads(self.fold(drip, "--machine", "long-folder-up", "--json", "--svg", "ticket").stdout)["steps"]
        self.assertEqual(steps[0]["gauge_touches"], "raw edge")
        hemmed = document([50.8, 200], [90], ["start_hem", "end_hem"])
        done = self.fold(hemmed, "--machine", "long-folder-up", "--svg", "hemmed")
        self.assertIn("from the hem fold, fold 90", done.stdout)
        pages = "".join(path.read_text() for path in (self.folder / "hemmed").iterdir())
        self.assertIn("from the hem fold", pages)

    def test_every_machine_is_asked_where_none_is_named(self):
        short = document([60, 80, 60], [90, -90])
        short["length_mm"] = 1000
        lines = self.fold(short).stdout.splitlines()
        self.assertIn("machine long-folder-up-down, handling ", lines[0])  # up, then down, as it lies
        times = [int(line.split("handling ")[1].split(" ")[0]) for line in lines if "handling " in line]
        self.assertEqual(len(times), 4)
        self.assertEqual(times, sorted(times))
        long = document([60, 80, 60], [90, -90])
        long["length_mm"] = 6000
        self.assertIn("not on long-folder-up: The piece is", self.fold(long).stdout)
        closed = document([20, 80, 60, 80, 20], [90] * 4)
        closed["length_mm"] = 1000
        box = self.fold(closed, status=1).stdout
        self.assertEqual(box.count("in the way is the clamp"), 4)

    def test_a_rib_in_two_goes(self):
        valley = document([304.8, 30.16, 30.16, 304.8], [78.43, -120, 78.43])
        done = self.fold(valley, "--machine", "long-folder-up", "--svg", "ticket")
        self.assertIn("fold partly, to 60", done.stdout)
        self.assertIn("finish the fold to 78.43", done.stdout)
        pages = "".join(path.read_text() for path in (self.folder / "ticket").iterdir())
        for wanted in ("Fold up, partly", "Finish the fold up", "in two goes"):
            self.assertIn(wanted, pages)

    def test_bad_input(self):
        angle = document([50, 50], [90])
        self.assertIn("long-folder-up", self.fold(angle, "--machine", "none", status=2).stderr)
        self.fold(document([50, 50], [200]), "--machine", "long-folder-up", status=2)
        many = self.fold(document([50] * 61, [90] * 60), "--machine", "long-folder-up", status=1)
        self.assertIn("60 bends and hem edges are more than the 16", many.stdout)
        panel = self.fold(document([50] * 21, [20, -20] * 10), "--machine", "long-folder-up", status=1)
        self.assertIn("Split into 2 pieces", panel.stdout)
        self.fold(angle, "--machine", "long-folder-up", "--svg", "profile.json", status=3)
        # A number that is none, a leg that is not there, a nose that crosses itself, a sheet without thickness.
        self.assertIn("profile.json", self.fold(document([float("nan"), 50], [90]), status=2).stderr)
        self.fold(document([0.5, 50], [90]), "--machine", "long-folder-up", status=2)
        clamp = json.loads((MACHINES / "long-folder-up.json").read_text())["clamp"]
        clamp[2], clamp[9] = clamp[9], clamp[2]
        library = self.machine_of_the_shop("long-folder-up", clamp=clamp)
        crossing = self.fold(angle, "--machine", "long-folder-up", "--library", library, status=2)
        self.assertIn("/clamp", crossing.stderr)
        self.assertIn("cross", crossing.stderr)
        metal = json.loads((MACHINES.parent / "metal-library" / "galvanised-steel.json").read_text())
        metal["sheets"][10]["thickness_mm"] = 0
        (self.folder / "metals" / "metal-library").mkdir(parents=True)
        (self.folder / "metals" / "metal-library" / "galvanised-steel.json").write_text(json.dumps(metal))
        self.assertIn("thickness_mm", self.fold(angle, "--library", "metals", status=2).stderr)


if __name__ == "__main__":
    unittest.main()
