#!/usr/bin/env python3
"""Checks the catalogues: complete, and each translation with the marks of its text.

translations.py ROOT.  A text to translate may hold directives of printf, marks for numbers ("{1 mm}") and a
mnemonic; its translation must hold the same, in any order.
"""

import re
import subprocess
import sys
import tempfile
from pathlib import Path

STRING = r'(?:"(?:[^"\\]|\\.)*"\s*)+'
FIELD = re.compile(r"^(msgctxt|msgid|msgid_plural|msgstr(?:\[\d\])?) (%s)" % STRING, re.M)
MARK = re.compile(r"%(?:\d+\$)?([-+ 0#']*\d*(?:\.(?:\d+|\*))?(?:ll?|z)?[a-zA-Z])|(\{[^}]*\})")
KEYWORDS = ["_", "N_", "C_:1c,2", "NC_:1c,2", "ngettext:1,2", "g_dcgettext:2", "g_dngettext:2,3", "g_dpgettext2:2c,3"]


def entries(path):
    """(context, text) -> fields, of a catalogue."""
    found = {}
    for block in path.read_text(encoding="utf-8").split("\n\n"):
        if block.lstrip().startswith("#~"):
            continue
        fields = {name: "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', text)) for name, text in FIELD.findall(block)}
        if fields.get("msgid"):
            found[fields.get("msgctxt"), fields["msgid"]] = dict(fields, fuzzy="#, fuzzy" in block)
    return found


def marks(text):
    return sorted(a or b for a, b in MARK.findall(text.replace("%%", "")))


def mnemonics(text):
    """Ids have underscores too, but inside."""
    return len(re.findall(r"(?<!\w)_(?=\w)", text))


def faults_of(key, fields):
    """What is wrong with one translation."""
    translations = {name: text for name, text in fields.items() if name.startswith("msgstr")}
    if fields["fuzzy"] or not all(translations.values()):
        yield "is not translated"
        return
    for name, text in translations.items():
        of = fields["msgid_plural"] if "msgid_plural" in fields and name != "msgstr[0]" else key[1]
        singular = name == "msgstr[0]" and marks(text) == marks(fields["msgid_plural"])
        if marks(text) != marks(of) and not singular:
            yield "has other marks than its translation: %s, %s" % (marks(of), marks(text))
        if mnemonics(of) and "_" not in text:
            yield "has a mnemonic, and its translation has none"


def template(root, folder):
    pot = Path(folder) / "rimwright.pot"
    subprocess.run(["xgettext", "--files-from", root / "po/POTFILES.in", "--directory", root, "--from-code=UTF-8",
                    "-o", pot] + ["-k" + keyword for keyword in KEYWORDS], check=True, stderr=subprocess.DEVNULL)
    return entries(pot)


def main():
    root = Path(sys.argv[1])
    languages = (root / "po/LINGUAS").read_text(encoding="utf-8").split()
    faults = []
    with tempfile.TemporaryDirectory() as folder:
        wanted = template(root, folder)
    for language in languages:
        have = entries(root / "po" / (language + ".po"))
        faults += ["%s: “%s” is missing" % (language, key[1]) for key in wanted if key not in have]
        for key, fields in have.items():
            faults += ["%s: “%s” %s" % (language, key[1], fault) for fault in faults_of(key, fields)]
    print("\n".join(faults) or "%d texts in %d languages" % (len(wanted), len(languages)))
    return 1 if faults or not wanted else 0


sys.exit(main())
