#!/usr/bin/env python3
"""Makes a language in which every text is its English a third longer and with accents on it.

    pseudo_language.py LUPDATE LRELEASE OUT.qm

Shown at the smallest size it tells where a language with longer words would be cut off, and every word without
an accent is one that no translator can reach.
"""
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

import core_phrases

accented = str.maketrans("aeiounAEIOUNcyYC", "áéíóúñÁÉÍÓÚÑçýÝÇ")
longest_word = 9
kept = re.compile(r"(\{[^}]*\}|%\d|%n)")


def stretched(text):
    """A third longer: a word by letters of its own, a sentence by words of them. {values} and %1 stay."""
    letters = [character for character in kept.sub("", text) if character.isalpha()]
    more = "".join(letters[:-(-len(letters) // 3)]) if len(letters) > 3 else ""
    if " " in text.strip():
        more = "".join(" " + more[at:at + longest_word] for at in range(0, len(more), longest_word))
    words = "".join(part if kept.fullmatch(part) else part.translate(accented) for part in kept.split(text))
    return words + more.lower().translate(accented)


def write(lupdate, path):
    """The .ts, beside the source of the core's phrases."""
    asked = path.with_name("core_phrases.cpp")
    asked.write_text(core_phrases.source_for_lupdate())
    subprocess.run([lupdate, "-silent", "-locations", "none", "-source-language", "en", "-target-language", "eo",
                    core_phrases.root / "mobile", core_phrases.root / "shop", asked, "-ts", path], check=True)
    tree = ElementTree.parse(path)
    for message in tree.getroot().iter("message"):
        translation = message.find("translation")
        translation.attrib.pop("type", None)
        text = stretched(message.findtext("source"))
        forms = translation.findall("numerusform")
        for place in forms or [translation]:
            place.text = text
    tree.write(path, encoding="utf-8", xml_declaration=True)


def main():
    lupdate, lrelease, out = sys.argv[1:4]
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "pseudo.ts"
        write(lupdate, path)
        subprocess.run([lrelease, "-silent", path, "-qm", out], check=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
