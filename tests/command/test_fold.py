"""Guards: `lapwright fold` prints the steps or the reason and what would help, writes the ticket as whole SVG pages under
names of its own, and says what is wrong with bad input."""
import json
import unittest
import xml.etree.ElementTree

from program import Program


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

    def test_bad_input(self):
        angle = document([50, 50], [90])
        self.assertIn("long-folder-up", self.fold(angle, "--machine", "none", status=2).stderr)
        self.fold(document([50, 50], [200]), "--machine", "long-folder-up", status=2)
        self.fold(document([50] * 61, [90] * 60), "--machine", "long-folder-up", status=1)
        self.fold(angle, "--machine", "long-folder-up", "--svg", "profile.json", status=3)


if __name__ == "__main__":
    unittest.main()
