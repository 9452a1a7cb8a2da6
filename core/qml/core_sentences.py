#!/usr/bin/env python3
"""Prints what core says to who looks at a screen, as a source that lupdate reads.

That is every sentence written out in a call of saying(), of cannotBeMet(), wrongUse() and damaged(),
in an OverflowError and in the table of the peer's refusals, and the names of the catalog: its kinds,
fields and words. Usage, from the root of the checkout: core/qml/core_sentences.py [--list]
With --list, one sentence a line, as core/qml/sentences.txt has them.
"""
import pathlib
import re
import sys

FOLDERS = ("core", "sync/link", "sync/identity", "sync/exchange", "sync/wire", "mobile",
           "desktop/client")
# What only a server says.
NOT = ("core/store/postgres",)
LITERALS = r'((?:"(?:[^"\\]|\\.)*"\s*)+)'
SAYING = re.compile(r"\bsaying\(\s*" + LITERALS)
ERROR = re.compile(r"\b(?:cannotBeMet|wrongUse|damaged|OverflowError)\(\s*" + LITERALS + r"\)")
REFUSAL = re.compile(r'\{Refusal::\w+, "[^"]*", \d+,\s*' + LITERALS + r"\}")


def joined(literals):
    return "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', literals))


def sentences():
    for folder in FOLDERS:
        for path in sorted(pathlib.Path(folder).rglob("*")):
            if path.suffix not in (".h", ".cpp") or str(path).startswith(NOT):
                continue
            text = re.sub(r"^\s*//.*$", "", path.read_text(), flags=re.M)
            for pattern in (SAYING, ERROR, REFUSAL):
                for found in pattern.finditer(text):
                    yield joined(found.group(1))


def names():
    catalog = pathlib.Path("core/model/catalog.def").read_text()
    # KIND(Name, number, table, "title", "also"), and FIELD, REF, WORDS(…, "Heading", "What it says")
    for line in catalog.splitlines():
        quoted = re.findall(r'"((?:[^"\\]|\\.)*)"', line)
        if re.match(r"KIND\s*\(", line):
            yield quoted[0]
        elif re.match(r"[A-Z]+\s*\(", line) and len(quoted) >= 2:
            yield quoted[-2]
    words = pathlib.Path("core/model/words.h").read_text()
    for body in re.findall(r"std::array<std::string_view, \d+> k\w+ = \{(.*?)\};", words, re.S):
        yield from re.findall(r'"([^"]*)"', body)


def main():
    seen = set()
    for sentence in [*sentences(), *names()]:
        plain = re.sub(r"%[1-9]", "", sentence)
        if sentence and sentence not in seen and re.search(r"[A-Za-z]", plain):
            seen.add(sentence)
            plainly = sentence.replace('\\"', '"')
            print(plainly if "--list" in sys.argv else f'QT_TRANSLATE_NOOP("Core", "{sentence}")')


main()
