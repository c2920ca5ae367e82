"""Guards: what `lapwright print` writes as PDF on the demo's day: every paper is there, true to size, with its page
number, job, revision and time on every page; every mark is on its label, its ticket, its confirmation and its check
sheet as often as it should be; the cost is the shop's own. All data is invented."""
import collections
import datetime
import json
import os
import pathlib
import re
import subprocess
import unittest
import xml.etree.ElementTree as ElementTree

from program import Program

os.environ["TZ"] = "<-06>6"  # a shop six hours west of Greenwich
DEMO = pathlib.Path(__file__).resolve().parents[2] / "demo"
SPANISH = DEMO.parent / "mobile/app/lapwright_es.ts"
HOUSES = ("larkfield", "hollin", "depot")
LETTER, A4 = (612.0, 792.0), (595.276, 841.89)


def words(pdf):
    """The text of each page, as Poppler reads it."""
    text = subprocess.run(["pdftotext", "-layout", pdf, "-"], check=True, capture_output=True, text=True).stdout
    return text.split("\f")[:-1]


def translations():
    """The core's phrases of two words or more without values, and what they are in Spanish."""
    phrases = ElementTree.parse(SPANISH).getroot().find("context[name='core']").findall("message")
    pairs = ((message.findtext("source"), message.findtext("translation")) for message in phrases)
    return {source: translation for source, translation in pairs
            if re.fullmatch(r"[A-Za-z,;.:' -]+ [A-Za-z,;.:' -]+", source) and len(source) > 8}


def marks_in(text):
    return collections.Counter(re.findall(r"(?<![\w.])[A-Z]\w*\.\d+(?![\w.])", text))


def facts(pdf):
    lines = subprocess.run(["pdfinfo", pdf], check=True, capture_output=True, text=True).stdout.splitlines()
    return {line.split(":", 1)[0]: line.split(":", 1)[1].strip() for line in lines}


class Papers(Program):
    def setUp(self):
        super().setUp()
        self.orders = {}
        for house in HOUSES:
            self.run_program("takeoff", DEMO / f"{house}.job.json", "-o", f"{house}.order.json")
            self.orders[house] = json.loads((self.folder / f"{house}.order.json").read_text())
        self.shop("receive", *[f"{house}.order.json" for house in HOUSES])
        self.shop("plan", "--stock", DEMO / "shop.stock.json", "--time", "1")
        self.marks = {order["job"]["name"]: {piece["mark"]: piece.get("count", 1) for piece in order["pieces"]}
                      for order in self.orders.values()}

    def pdfs(self, folder, kind):
        return sorted((self.folder / folder).glob(f"{kind}-??.pdf"))

    def is_whole(self, pdf, size):
        """Size, title, and what stands at the foot of every page."""
        said = facts(pdf)
        width, height = re.match(r"([\d.]+) x ([\d.]+)", said["Page size"]).groups()
        self.assertAlmostEqual(float(width), size[0], delta=0.02, msg=pdf.name)
        self.assertAlmostEqual(float(height), size[1], delta=0.02, msg=pdf.name)
        self.assertTrue(said["Title"])
        pages = words(pdf)
        self.assertEqual(len(pages), int(said["Pages"]))
        for number, page in enumerate(pages, 1):
            self.assertIn(f"page {number} of {len(pages)}", page, pdf.name)
            self.assertRegex(page, r"printed 20\d\d-\d\d-\d\d \d\d:\d\d", pdf.name)
            self.assertRegex(page, r"revision 1", pdf.name)
            self.assertTrue(any(job in page for job in self.marks), pdf.name)
        return "\n".join(pages)

    def test_before_the_machines(self):
        self.shop("print", "-o", "tickets", "--rates", DEMO / "shop.rates.json")
        profiles = sum(len(order["profiles"]) for order in self.orders.values())
        for kind, count in (("cut", 3), ("fold", profiles), ("order", 3), ("quality", 3), ("labels", 3)):
            self.assertEqual(len(self.pdfs("tickets", kind)), count, kind)
        cut = "\n".join(self.is_whole(pdf, LETTER) for pdf in self.pdfs("tickets", "cut"))
        folds = "\n".join(self.is_whole(pdf, LETTER) for pdf in self.pdfs("tickets", "fold"))
        wanted = {mark for marks in self.marks.values() for mark in marks}
        self.assertLessEqual(wanted, set(marks_in(cut)))
        self.assertLessEqual(wanted, set(marks_in(folds)))
        self.assertRegex(cut, "proven|could be saved")
        for order, quality, labels in zip(*(self.pdfs("tickets", kind) for kind in ("order", "quality", "labels"))):
            confirmed = self.is_whole(order, LETTER)
            job = next(job for job in self.marks if job in confirmed)
            self.assertRegex(confirmed, rf"pieces +{sum(self.marks[job].values())}\b")
            self.assertIn("together", confirmed)
            measured = self.is_whole(quality, LETTER)
            self.assertEqual(set(marks_in(measured)), set(self.marks[job]))
            self.assertIn("± 1/16\"", measured)
            self.assertEqual(marks_in("\n".join(words(labels))), collections.Counter(self.marks[job].keys()))

    def test_behind_the_machines(self):
        self.shop("made", "cut")
        self.shop("made", "folded")
        self.shop("load", "-o", "load.json", "--truck", "truck 1")
        load = json.loads((self.folder / "load.json").read_text())
        self.shop("print", "-o", "papers", "--units", "mm", "--labels", "100x50")
        self.assertEqual(self.pdfs("papers", "cut") + self.pdfs("papers", "fold") + self.pdfs("papers", "quality"), [])
        loaded = collections.Counter()
        for bundle in load["bundles"]:
            loaded.update(piece["mark"] for piece in bundle["pieces"])
        [load_list], [check], [bundles] = (self.pdfs("papers", kind) for kind in ("load", "check", "bundles"))
        # Marks repeat from house to house; together they are as many as the load has.
        self.assertEqual(marks_in(self.is_whole(load_list, A4)), loaded)
        self.assertEqual(marks_in(self.is_whole(check, A4)), loaded)
        made = datetime.datetime.fromisoformat(load["made_at"].replace("Z", "")) - datetime.timedelta(hours=6)
        self.assertIn(made.strftime("%Y-%m-%d %H:%M"), words(load_list)[0].split("made up")[1])
        pages = words(bundles)
        self.assertEqual(len(pages), len(load["bundles"]), "a label for each bundle")
        for bundle, page in zip(load["bundles"], pages):
            self.assertRegex(page, rf"\b{bundle['label']}\b")
            self.assertIn(f"{sum(piece['count'] for piece in bundle['pieces'])} piece", page)
            self.assertEqual("TWO PEOPLE" in page, bundle.get("two_people", False))
        self.assertEqual(facts(bundles)["Page size"].split(" pts")[0], "283.465 x 141.732")

    def test_papers_in_spanish_say_nothing_in_english(self):
        """Every phrase of two words or more that stands on an English paper is another one on the Spanish one, but for
        the names that people gave their chains."""
        self.shop("print", "-o", "english", "--rates", DEMO / "shop.rates.json")
        self.shop("print", "-o", "spanish", "--rates", DEMO / "shop.rates.json", "--language", "es")
        written = " ".join(chain["name"] for order in self.orders.values() for chain in order["job"]["chains"]).lower()
        spanish_of = {phrase: said for phrase, said in translations().items() if phrase.lower() not in written}
        seen, left = set(), set()
        for pdf in sorted((self.folder / "english").glob("*.pdf")):
            english = " ".join(" ".join(words(pdf)).split())
            spanish = " ".join(" ".join(words(self.folder / "spanish" / pdf.name)).split())
            for phrase, translation in spanish_of.items():
                if phrase in english and phrase != translation:
                    seen.add(phrase)
                    left |= {(pdf.name, phrase)} if phrase in spanish else set()
        self.assertEqual(left, set())
        self.assertGreater(len(seen), 60, "the papers say next to nothing")
        for said in ("Confirmación de pedido", "Hoja de corte", "Hoja de doblez", "Hoja de calidad", "página 1 de"):
            self.assertTrue(any(said in " ".join(words(pdf)) for pdf in (self.folder / "spanish").glob("*.pdf")), said)

    def test_what_cannot_be_printed_is_said(self):
        for option, value, expected in (("--language", "tlh", "one of en, es"), ("--paper", "a5", "letter or a4"), ("--labels", "huge", "100x50, 4x2 or sheet"),
                                        ("--rates", "none.json", "none.json")):
            self.assertIn(expected, self.shop("print", "-o", "tickets", option, value, status=2).stderr)
        self.assertFalse((self.folder / "tickets").exists())
        rates = json.loads((DEMO / "shop.rates.json").read_text())
        rates["materials"] = rates["materials"][:2]
        (self.folder / "few.json").write_text(json.dumps(rates))
        said = self.shop("print", "-o", "tickets", "--rates", "few.json", status=1).stderr
        self.assertIn("0.040 in aluminium-3105, Bronze: found no rate", said)
        self.assertEqual(len(self.pdfs("tickets", "order")), 3)


if __name__ == "__main__":
    unittest.main()
