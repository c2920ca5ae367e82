#!/usr/bin/env python3
"""Every phrase of the core that reaches a screen of the field app, and whether a translation says them all.

    core_phrases.py                  prints them as a source file for lupdate, beside mobile/
    core_phrases.py LUPDATE TS...    fails on texts of mobile/ or of the core that a .ts does not say, on those it
                                     says and nobody asks for, and on values and plurals that differ

A phrase is looked up whole; one that the core puts together is looked up part by part (mobile/model/spoken.cpp),
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

# Where sentences for the field app are made. The rest of the core speaks to the shop.
speaking = [core / folder for folder in ("measure", "site", "trim", "pieces", "rules")]
speaking_files = [core / name for name in ("rules/facts.h", "documents/revisions.cpp", "documents/differences.cpp",
                                           "drawing/plan_sketch.cpp", "drawing/profile_frame.cpp",
                                           "drawing/profile_picture.cpp")]
library = {"trim-library": ("name", "note", "label"), "rule-sets": ("name", "caution", "statement", "remedy"),
           "metal-library": ("name",)}

literal = r'"(?:[^"\\\n]|\\.)*"'
text_of_literals = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
# Names of a single word: what a function names, what an accessory or a changed member is called.
named = re.compile(r'(?:\breturn|\badd\(|\bchanged\(place, |\bcompare\("\w+", |\bcompareHems\(|\bcompareEnds\(|'
                   r'explainEnd\(|\? |: )\s*("[a-z][a-z_, -]+")')
# Citations and units, which are the same in every language, and codes.
no_sentence = re.compile(r"^(UFGS|IRC|IBC|ISO|DIN|Kalpakjian|range of temperature)|\\u|"
                         r"^[a-z_.-]*[_.][a-z_.-]*$|^ (kg|lb|mm)$|^id of ")
# Too short to be found by its looks: the article of "{article} {kind}" (site/run_checks.cpp).
articles = ["a"]


def has_words(text):
    """Whether anything is left to be said without the placeholders and signs."""
    return re.search(r"[A-Za-z]{2}", re.sub(r"\{[^}]*\}|\\x\w\w", "", text)) is not None


def as_looked_up(text):
    """Without the placeholders cut in two and the spaces and marks at its ends, if it is part of a sentence."""
    whole = re.sub(r"\{[\w.]*$", "", re.sub(r"^\w*\}", "", text))
    trimmed = whole.lstrip(" .,;:=(").rstrip(" ,;:=(")
    is_part = whole != text or text != text.strip() or text[-1:] in ";:=,"
    return trimmed if is_part else text


def phrases_of_source(path):
    source = re.sub(r"^\s*#.*$|//.*$|static_assert.*$", "", path.read_text(), flags=re.M)
    for match in re.finditer(r"(?:" + literal + r"\s*)+", source):
        text = "".join(text_of_literals.findall(match.group(0))).replace('\\"', '"').replace("\\xC2\\xB0", "°")
        if " " in text.strip() or "{" in text or text != text.strip():
            yield text
    for match in named.finditer(source):
        name = match.group(1).strip('"')
        yield name.replace("_", " ") if path.name == "run_kind.cpp" else name


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


def phrases():
    """Each once, in the order of the files."""
    found = {text: None for text in articles}
    sources = [path for folder in speaking for path in sorted(folder.glob("*.cpp"))] + speaking_files
    for path in sources:
        for text in phrases_of_source(path):
            key = as_looked_up(text)
            if not no_sentence.search(text) and has_words(key):
                found[key] = None
    for folder, members in library.items():
        for path in sorted((core / folder).glob("*.json")):
            for text in phrases_of_data(json.loads(path.read_text()), members):
                found[text] = None
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


def check(lupdate, path, folder):
    """The .ts brought up to date in a folder of its own, and what is wrong with it."""
    asked = folder / "core_phrases.cpp"
    asked.write_text(source_for_lupdate())
    copy = folder / path.name
    copy.write_bytes(path.read_bytes())
    subprocess.run([lupdate, "-silent", root / "mobile", asked, "-ts", copy], check=True)
    return [f"{path.name}: {context.findtext('name')}: {message.findtext('source')!r}: {fault}"
            for context in ElementTree.parse(copy).getroot().findall("context")
            for message in context.findall("message") for fault in faults_of(message)]


def main():
    if len(sys.argv) < 3:
        print(source_for_lupdate(), end="")
        return 0
    with tempfile.TemporaryDirectory() as folder:
        faults = [fault for name in sys.argv[2:]
                  for fault in check(sys.argv[1], pathlib.Path(name), pathlib.Path(folder))]
    print("\n".join(faults) if faults else "every text is translated")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
