#!/usr/bin/python3
"""Does every book that an earlier version wrote open in this one, whole, and say the same?

Usage: upgrade.py PROGRAM FOLDER   (FOLDER is made anew)
books/ holds, for each version that was given away (or by day), a small book and
what that version said of it with --json. Asked again: the same rows with the same values (a newer
version may say more), figures the same; the book verifies, can be written to, and takes undo. The
file itself is copied first: opening may add tables.
"""
import json
import pathlib
import shutil
import subprocess
import sys

PROGRAM = sys.argv[1]
FOLDER = pathlib.Path(sys.argv[2])
BOOKS = pathlib.Path(__file__).parent / "books"


def run(book, *words):
    return subprocess.run([PROGRAM, "--book", str(book), *words], check=True,
                          capture_output=True, text=True).stdout


def covered(old, new, place):
    """Everything that was said is said still."""
    if isinstance(old, dict):
        for key, value in old.items():
            if key not in new:
                sys.exit(f"{place}: {key} is not said any more")
            covered(value, new[key], f"{place}, {key}")
    elif isinstance(old, list):
        if len(old) != len(new):
            sys.exit(f"{place}: {len(old)} rows then, {len(new)} now")
        for number, (one, other) in enumerate(zip(old, new)):
            covered(one, other, f"{place}, row {number + 1}")
    elif old != new:
        sys.exit(f"{place}: {old} then, {new} now")


shutil.rmtree(FOLDER, ignore_errors=True)
FOLDER.mkdir(parents=True)
books = sorted(BOOKS.glob("*.book"))
assert books, "no book is kept"
for kept in books:
    book = FOLDER / kept.name
    shutil.copy(kept, book)
    for verb, words in (("scope", ["list", "scope"]), ("spend", ["list", "spend"]),
                        ("deal", ["deal"])):
        then = json.loads((BOOKS / f"{kept.stem}.{verb}.json").read_text())
        now = json.loads(run(book, "--as-of", "2026-04-10", "--json", *words))
        covered(then, now, f"{kept.name}, {verb}")
    assert "all of it holds" in run(book, "verify"), kept
    run(book, "add", "space", "Space=Pantry")
    assert "Undone: " in run(book, "undo"), kept
    assert "Undone: " in run(book, "undo"), "what the earlier version did can be undone"
    assert "all of it holds" in run(book, "verify"), kept
print(f"{len(books)} books of earlier versions: opened, read, written to")
