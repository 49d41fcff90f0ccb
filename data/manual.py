#!/usr/bin/env python3
"""manual.py RIMWRIGHT: writes the manual page of the command from what the program says of itself."""

import re
import subprocess
import sys

HEAD = r""".TH RIMWRIGHT 1 "" "rimwright %(version)s" "User commands"
.SH NAME
rimwright \- design open\-back banjos, part fitted to part
.SH SYNOPSIS
.B rimwright
.RI [ FILE ]
.br
.B rimwright
.I COMMAND
.RI [ OPTION \&...]
.SH DESCRIPTION
Without a command a window opens, with
.I FILE
in it if one is given.
With one, the same computation answers without a display.
A project file is readable JSON with all lengths in millimetres; where none is given, commands take the
built\-in build, and
.B \-
is standard input.
"""
TAIL = r""".SH EXIT STATUS
.TP
.B 0
Done; for
.BR check :
nothing stops the build.
.TP
.B 1
For
.BR check :
something stops the build; for
.BR what\-if :
no value gives what is wanted.
.TP
.B 2
Not done: one sentence on standard error says why.
.SH FILES
.TP
.I FILE~
The version before the last save from the window.
.TP
.I $XDG_STATE_HOME/rimwright/drafts
Unsaved work, offered again after a crash.
.TP
.I $XDG_CONFIG_HOME/rimwright
What the window remembers.
.SH EXAMPLES
.nf
rimwright list \-\-set rim.outer_diameter=\(dq11 in\(dq \-\-units fraction
rimwright check my\-banjo.rimwright
rimwright papers my\-banjo.rimwright \-\-into papers
.fi
"""


def escape(text):
    return text.replace("\\", "\\e").replace("-", "\\-").replace("'", "\\(aq").replace('"', "\\(dq")


def ask(program, *words):
    return subprocess.run([program, *words], check=True, capture_output=True, text=True,
                          env={"LC_ALL": "C.UTF-8"}).stdout


def commands(program):
    return re.findall(r"^  ([a-z-]+)  +(\S.*)$", ask(program, "--help").partition("Commands:")[2], re.M)


def options(text):
    """What --help lists: the option with its argument, and what it does, which may go on on further lines."""
    listed = []
    for line in text.splitlines():
        start = re.match(r"^  (-\S.*?)(?:  +(\S.*))?$", line)
        if start:
            listed.append([start[1], start[2] or ""])
        elif listed and re.match(r"^ {10,}\S", line):
            listed[-1][1] += " " + line.strip()
        elif not line.strip():
            continue
    return listed


def main():
    program = sys.argv[1]
    version = ask(program, "--version").split()[-1]
    page = [HEAD % {"version": version}, ".SH COMMANDS\n"]
    for name, summary in commands(program):
        page.append(".SS %s\n%s\n" % (name, escape(summary)))
        for option, words in options(ask(program, name, "--help")):
            page.append(".TP\n.B %s\n%s\n" % (escape(option), escape(words) or "\\&"))
    page.append(TAIL)
    sys.stdout.write("".join(page))


main()
