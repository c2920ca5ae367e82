#!/usr/bin/env python3
"""Every phrase of the core that reaches a screen or a paper, and whether the translations say them all.

    core_phrases.py                       prints them as a source file for lupdate, beside mobile/
    core_phrases.py LUPDATE TS SHOP_TS    fails on texts of mobile/ or of the core that TS does not say, on texts of
                                          shop/ that SHOP_TS does not say, on those they say and nobody asks for, and
                                          on values and plurals that differ

A phrase is looked up whole; one that the core puts together is looked up part by part (mobile/speech/spoken.cpp),
so its parts are listed as that looks them up.
"""
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

root = pathlib.Path(__file__).resolve().parents[2]
core = root / "shared-core"

# Where sentences for the field app are made.
speaking = [core / folder for folder in ("measure", "site", "trim", "pieces", "rules")]
speaking_files = [core / name for name in ("rules/facts.h", "documents/revisions.cpp", "documents/differences.cpp",
                                           "drawing/plan_sketch.cpp", "drawing/profile_frame.cpp",
                                           "drawing/profile_picture.cpp", "storage/database.h")]
# What the shop hears besides: screens, papers and drawings. What is wrong inside a file, and what only a fault of the
# program can say (the checkers, SQL), stays English: it is for whoever mends the file or the program.
shop_speaking = [core / "drawing", core / "fold", core / "cutting", core / "schedule", root / "shop/acts",
                 root / "shop/print"]
unheard = {"svg.cpp", "text.cpp", "marks.cpp", "blank.cpp", "check.cpp", "check_ways.cpp", "machine.cpp", "settings.cpp",
           "checker.cpp", "certificate_check.cpp", "every_plan_check.cpp", "instance.cpp", "watch.cpp",
           "problem_checks.cpp", "pdf_finish.cpp", "pdf.cpp", "label_stock.cpp", "label_text.cpp", "search_control.cpp",
           "identity.cpp"}
library = {"machines": ("name", "note", "metal"), "help": ("reason", "remedy"), "trim-library": ("name", "note", "label"), "rule-sets": ("name", "caution", "statement", "remedy"),
           "metal-library": ("name",)}
# What the shop app's forms say of their fields, and what is wrong with what is typed into them.
form_schemas = [core / "schemas" / (name + ".schema.json") for name in ("machine", "trim", "rules", "floor", "rates", "stock-item")]
form_sources = [core / "documents" / (name + ".cpp") for name in ("form_text", "schema", "trim", "rules", "schedule", "rates", "shop")]

literal = r'"(?:[^"\\\n]|\\.)*"'
text_of_literals = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
# Names of a single word: what a function names, what an accessory or a changed member is called.
named = re.compile(r'(?:\breturn|\badd\(|\bchanged\(place, |\bcompare\("\w+", |\bcompareHems\(|\bcompareEnds\(|'
                   r'explainEnd\(|\? |: )\s*("[a-z][a-z_, -]+")')
# Citations and units, which are the same in every language, and codes.
no_sentence = re.compile(r"^(UFGS|IRC|IBC|ISO|DIN|Kalpakjian|range of temperature)|\\u|"
                         r"^[a-z_.-]*[_.][a-z_.-]*$|^ (kg|lb|mm|ms|min|h)$|^\d+ mm$|^yyyy|^id of |^--|^64 hexa")
# Too short to be found by its looks: the article of "{article} {kind}" (site/run_checks.cpp).
articles = ["a"]
# Put together from tables of names: days and months as schedules write them, the states of a piece, what touches
# the gauge.
days = "Monday Tuesday Wednesday Thursday Friday Saturday Sunday".split()
months = "January February March April May June July August September October November December".split()
tables = (days + months + [name[:3] for name in days + months] +
          "ordered cut folded bundled loaded received short damaged wrong".split() +
          ["labour", "tax"] + ["from the " + what for what in ("raw edge", "hem fold", "folded corner", "folded leg")])
# The words between which a form says what was typed and what it wants (measure/result.h, documents/schema.cpp).
of_errors = ["found", "expected", "characters", "members"]
# What is asked for by name in the shop: one word of its own, or counted.
asked = re.compile(r'(?:spoken|said|translated|entry)\(("[^"]+")[),]|(?:spoken|said|translated)\([^"?;]*\? ("[^"]+") : |'
                   r'emplace_back\(("[a-z][a-z ]*"),')
# Names in the tables of two drawings: {"throat", length(...)} and {10.0, "gauge"}.
tabled = {"machine_picture.cpp": re.compile(r'\{("[a-z][a-z ]*"), '),
          "fold_ticket.cpp": re.compile(r'\{[0-9.]+, ("[a-z][a-z, ]*")\}')}
counted = re.compile(r'counted\([^"]*, ("[a-z ]+")')


def has_words(text):
    """Whether anything is left to be said without the placeholders and signs."""
    return re.search(r"[A-Za-z]{2}", re.sub(r"\{[^}]*\}|\\x\w\w", "", text)) is not None


def as_looked_up(text):
    """Without the marks before it, since a look-up begins with a word, and without the placeholders cut in two and the
    spaces and marks at its ends, if it is part of a sentence."""
    text = re.sub(r"^(?:[,;:)%·]|\.(?= ))+ ", " ", text)
    whole = re.sub(r"\{[\w.]*$", "", re.sub(r"^\w*\}", "", text))
    trimmed = whole.lstrip(" .,;:=(·").rstrip(" ,;:=(·")
    is_part = whole != text or text != text.strip() or text[-1:] in ";:=,"
    return trimmed if is_part else text


def phrases_of_source(path):
    source = re.sub(r"^\s*#.*$|//.*$|static_assert.*$", "", path.read_text(), flags=re.M)
    for match in re.finditer(r"(?:" + literal + r"\s*)+", source):
        text = "".join(text_of_literals.findall(match.group(0))).replace('\\"', '"').replace("\\n", " ")
        for escape, sign in (("\\xC2\\xB0", "°"), ("\\xC2\\xB2", "²"), ("\\xC2\\xB7", "·")):
            text = text.replace(escape, sign)
        if " " in text.strip() or "{" in text or text != text.strip():
            yield text
    for match in named.finditer(source):
        name = match.group(1).strip('"')
        yield name.replace("_", " ") if path.name == "run_kind.cpp" else name


def counted_in(source):
    for match in counted.finditer(source):
        yield match.group(1).strip('"')
        yield match.group(1).strip('"') + "s"


def phrases_of_shop(path):
    yield from phrases_of_source(path)
    source = path.read_text()
    for match in asked.finditer(source):
        yield next(group for group in match.groups() if group).strip('"')
    yield from counted_in(source)
    for match in tabled[path.name].finditer(source) if path.name in tabled else ():
        yield match.group(1).strip('"')


def phrases_of_data(value, members):
    if isinstance(value, dict):
        for key, member in value.items():
            is_identifier = key == "name" and re.fullmatch(r"[a-z_]+", str(member))
            if key in members and isinstance(member, str) and not is_identifier:
                yield member
            yield from phrases_of_data(member, members)
    elif isinstance(value, list):
        for entry in value:
            yield from phrases_of_data(entry, members)


def names_of_data(folder, data):
    """Identifiers that papers write with spaces: a metal's, those of a trim's legs; gauges named by inches."""
    if folder == "metal-library":
        yield data["id"].replace("-", " ")
        yield from (sheet["gauge"] for sheet in data["sheets"] if sheet["gauge"].endswith(" in"))
    if folder == "trim-library":
        yield from (leg["name"].replace("_", " ") for leg in data["legs"])


def phrases():
    """Each once, in the order of the files."""
    found = {text: None for text in articles}
    sources = [path for folder in speaking for path in sorted(folder.glob("*.cpp"))] + speaking_files
    for path in sources:
        for text in phrases_of_source(path):
            key = as_looked_up(text)
            if not no_sentence.search(text) and has_words(key):
                found[key] = None
    for path in [path for folder in shop_speaking for path in sorted(folder.glob("*.cpp"))]:
        for text in phrases_of_shop(path) if path.name not in unheard else ():
            key = as_looked_up(text)
            if not no_sentence.search(text) and has_words(key):
                found[key] = None
    for path in sorted((root / "shop/model").glob("*.cpp")) + sorted((root / "shop/app").glob("*.qml")):
        found.update(dict.fromkeys(counted_in(path.read_text())))
    found.update(dict.fromkeys(tables + of_errors))
    for folder, members in library.items():
        for path in sorted((core / folder).glob("*.json")):
            data = json.loads(path.read_text())
            found.update(dict.fromkeys(phrases_of_data(data, members)))
            found.update(dict.fromkeys(names_of_data(folder, data)))
    for path in form_sources:
        keys = (as_looked_up(text) for text in phrases_of_source(path))
        found.update((key, None) for key in keys if has_words(key) and " " in key and not key.endswith(' "'))
    for path in form_schemas:
        # The description of the document itself stands in no form.
        found.update(dict.fromkeys(phrases_of_data(list(json.loads(path.read_text()).values()), ("description",))))
    made_with = json.loads((root / "mobile/look/made_with.json").read_text())
    found.update((library["use"], None) for library in made_with)
    return list(found)


def source_for_lupdate():
    lines = ['QT_TRANSLATE_NOOP("core", %s)' % json.dumps(text, ensure_ascii=False) for text in phrases()]
    return "const char* const texts[] = {\n    " + ",\n    ".join(lines) + "};\n"


def placeholders(text):
    return sorted(set(re.findall(r"\{[^}]*\}|%\d|%n", text)))


def faults_of(message):
    """What is wrong with one translation; it may leave %n out of the form for one."""
    source, translation = message.findtext("source"), message.find("translation")
    if translation.get("type") == "vanished":
        yield "nobody asks for it any more"
        return
    forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
    if not all(forms) or translation.get("type") == "unfinished":
        yield "not translated"
        return
    for number, form in enumerate(forms):
        optional = {"%n"} if len(forms) > 1 and number == 0 else set()
        if set(placeholders(source)) - optional != set(placeholders(form)) - optional:
            yield f"its values are others: {form!r}"


def check(lupdate, path, sources, folder):
    """The .ts brought up to date in a folder of its own, and what is wrong with it."""
    copy = folder / path.name
    copy.write_bytes(path.read_bytes())
    subprocess.run([lupdate, "-silent", *sources, "-ts", copy], check=True)
    return [f"{path.name}: {context.findtext('name')}: {message.findtext('source')!r}: {fault}"
            for context in ElementTree.parse(copy).getroot().findall("context")
            for message in context.findall("message") for fault in faults_of(message)]


def main():
    if len(sys.argv) < 4:
        print(source_for_lupdate(), end="")
        return 0
    lupdate, of_both, of_shop = sys.argv[1:4]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        asked = folder / "core_phrases.cpp"
        asked.write_text(source_for_lupdate())
        faults = (check(lupdate, pathlib.Path(of_both), [root / "mobile", asked], folder) +
                  check(lupdate, pathlib.Path(of_shop), [root / "shop"], folder))
    print("\n".join(faults) if faults else "every text is translated")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
