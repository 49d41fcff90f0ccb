"""A language that is nobody's: every text to translate put in brackets and made longer by a third, as a wordy language
would.  What the window then shows without brackets was not translated; what is cut short has no room."""

import os
import re
import subprocess

OPEN, CLOSE = "⟦", "⟧"
KEEP = re.compile(r"(%[-+ 0#']*\d*(?:\.\d+)?(?:l{0,2}|z)[a-zA-Z%]|\{[^}]*\}|<[^>]*>|&\w+;|\\n|\\\")")


def longer(text):
    """Every other vowel doubled; placeholders and markup as they are."""
    start, text, end = re.fullmatch(r"((?:\\n)*)(.*?)((?:\\n)*)", text, re.S).groups()
    parts = KEEP.split(text)
    for i in range(0, len(parts), 2):
        parts[i] = re.sub(r"([aeiou])(.?.?)", r"\1\1\2", parts[i])
    return start + OPEN + "".join(parts) + CLOSE + end


def strings(lines):
    """The text of a keyword's strings."""
    return "".join(line[line.index('"') + 1:line.rindex('"')] for line in lines)


def catalogue(root, folder):
    """Writes folder/LOCALE/LC_MESSAGES/rimwright.mo for de; returns folder."""
    pot = os.path.join(folder, "rimwright.pot")
    subprocess.run(["xgettext", "--files-from", os.path.join(root, "po/POTFILES.in"), "--directory", root,
                    "--from-code=UTF-8", "--add-comments", "-k_", "-kN_", "-kC_:1c,2", "-kNC_:1c,2", "-kngettext:1,2",
                    "-o", pot], check=True, stderr=subprocess.DEVNULL)
    with open(pot, encoding="utf-8") as file:
        entries = file.read().split("\n\n")
    out = ['msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\nPlural-Forms: nplurals=2; plural=n != 1;\\n"\n']
    for entry in entries[1:]:
        fields = dict(re.findall(r'^(msgctxt|msgid|msgid_plural) ((?:"(?:[^"\\]|\\.)*"\n?)+)', entry, re.M))
        if "msgid" not in fields:
            continue
        text = {key: strings(value.strip().split("\n")) for key, value in fields.items()}
        lines = ['msgctxt "%s"' % text["msgctxt"]] if "msgctxt" in text else []
        lines.append('msgid "%s"' % text["msgid"])
        if "msgid_plural" in text:
            lines += ['msgid_plural "%s"' % text["msgid_plural"], 'msgstr[0] "%s"' % longer(text["msgid"]),
                      'msgstr[1] "%s"' % longer(text["msgid_plural"])]
        else:
            lines.append('msgstr "%s"' % longer(text["msgid"]))
        out.append("\n".join(lines) + "\n")
    target = os.path.join(folder, "de", "LC_MESSAGES")
    os.makedirs(target)
    po = os.path.join(folder, "pseudo.po")
    with open(po, "w", encoding="utf-8") as file:
        file.write("\n".join(out))
    subprocess.run(["msgfmt", "-o", os.path.join(target, "rimwright.mo"), po], check=True)
    return folder


def outside(text):
    """The words of three letters and more that no brackets hold.  Texts put into others bring brackets of their own; an
    ellipsis may have taken those that close, and a line may go on from elsewhere, without those that open."""
    depth, bare = 0, ""
    for letter in text:
        if letter == CLOSE and depth == 0:
            bare = bare[:bare.rfind("\n") + 1]
        depth = 0 if letter == "…" else max(0, depth + (letter == OPEN) - (letter == CLOSE))
        bare += " " if depth or letter in CLOSE + "…" else letter
    return re.findall(r"[^\W\d_]{3,}", bare)
