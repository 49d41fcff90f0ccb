#!/usr/bin/python3
"""test_papers_language.py RIMWRIGHT: papers from the command line, in a language that is nobody's.

Every word on them must have come through the catalogue; figures have the locale's decimal mark, while what programs
read, and what is said on the command line, is as ever.  Runs without a display.
"""

import os
import re
import subprocess
import sys
import tempfile
import unittest

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(HERE, "..", "support"))
import pseudo  # noqa: E402

PROGRAM = sys.argv.pop(1)
UNITS = {"cent", "min", "mm²"}


def run(*words, **variables):
    return subprocess.run([PROGRAM, *words], capture_output=True, check=False, timeout=120, text=True,
                          env={**os.environ, **variables})


class Language(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.place = tempfile.TemporaryDirectory()
        folder = cls.place.name
        cls.pseudo = {"RIMWRIGHT_LOCALE_DIR": pseudo.catalogue(os.path.join(HERE, "..", ".."), folder),
                      "LC_ALL": "de_DE.UTF-8", "LANGUAGE": "de"}
        cls.into = os.path.join(folder, "papers")
        cls.done = run("papers", "--svg", "--into", cls.into, **cls.pseudo)
        cls.text = subprocess.run(["pdftotext", "-raw", os.path.join(cls.into, "papers.pdf"), "-"], check=True,
                                  capture_output=True, text=True).stdout

    @classmethod
    def tearDownClass(cls):
        cls.place.cleanup()

    def test_written(self):
        self.assertEqual((self.done.returncode, self.done.stderr), (0, ""))
        self.assertGreater(self.text.count(pseudo.OPEN), 500)

    def test_every_word_is_translated(self):
        left = {word for page in self.text.split("\f") for word in pseudo.outside(page)}
        self.assertEqual(left - UNITS, set())

    def test_figures_have_a_comma(self):
        self.assertRegex(self.text, r"\d,\d")
        self.assertEqual(re.findall(r".*\b\d+\.\d+ mm.*", self.text), [])

    def test_pictures_have_points(self):
        names = [name for name in os.listdir(self.into) if name.endswith(".svg")]
        self.assertTrue(names)
        for name in names:
            with open(os.path.join(self.into, name), encoding="utf-8") as file:
                self.assertRegex(file.read(), r'width="[\d.]+mm" height="[\d.]+mm"')

    def test_files_have_the_same_names(self):
        plain = os.path.join(self.place.name, "plain")
        self.assertEqual(run("papers", "--svg", "--into", plain, LC_ALL="C").returncode, 0)
        self.assertEqual(sorted(os.listdir(plain)), sorted(os.listdir(self.into)))

    def test_complaints_are_english(self):
        for words in (("--only", "nothing"), ("no.rimwright",)):
            words = ("papers", "--into", self.into, *words)
            self.assertEqual(run(*words, **self.pseudo).stderr, run(*words, LC_ALL="C").stderr)


if __name__ == "__main__":
    unittest.main()
