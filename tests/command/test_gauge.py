"""Guards: what people call a sheet is one sheet of one metal with its thickness, or every metal it might be of is named;
a thickness that was measured finds its gauge."""
import json
import unittest

from program import Program


class Gauge(Program):
    def test_what_people_say_is_one_sheet(self):
        for words, metal, gauge in [("26 ga galvanized", "galvanised-steel", "26 ga"), ("16 oz copper", "copper", "16 oz"),
                                    ("0.032 in aluminum", "aluminium-3105", "0.032 in")]:
            found, = json.loads(self.run_program("gauge", words, "--json").stdout)
            self.assertEqual((found["metal"], found["gauge"]), (metal, gauge))
        # 26 gauge galvanised is 0.0217 in: greaseralley.com/2010/12/09/sheet-metal-gauge-chart.
        self.assertIn('galvanised-steel, 26 ga: 0.0217" thick', self.run_program("gauge", "galv 26").stdout)

    def test_a_number_without_a_metal_names_those_it_can_be_of(self):
        self.assertIn("expected only one of", self.run_program("gauge", "24 ga", status=2).stderr)
        self.assertIn("found", self.run_program("gauge", "as thick as it gets", status=2).stderr)

    def test_a_measured_thickness_finds_its_gauge(self):
        self.assertIn("aluminium-3105, 0.050 in", self.run_program("gauge", "aluminium-3105", "--thickness", "1.28 mm").stdout)
        # Neighbouring gauges of coated sheet overlap within what a mill may deliver.
        self.assertIn("26 ga", self.run_program("gauge", "galvanised-steel", "--thickness", '0.0215"', status=2).stderr)
        self.assertIn("metal: found tin", self.run_program("gauge", "tin", "--thickness", "1 mm", status=2).stderr)


if __name__ == "__main__":
    unittest.main()
