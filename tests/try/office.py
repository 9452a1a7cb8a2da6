#!/usr/bin/python3
"""Do the demo's workbooks give the same totals once another program has worked their formulas out?

Usage: office.py PROGRAM FOLDER   (FOLDER holds quince-row.book of the demo; needs LibreOffice Calc)
The values that stand beside the formulas are taken out first, so that nothing but the formulas can
say them; LibreOffice works them out and the totals are compared, to the cent, with --json and with
what stood there.
"""
import pathlib
import re
import shutil
import subprocess
import sys
import zipfile
from decimal import Decimal

import openpyxl

PROGRAM, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])
BASE = [PROGRAM, "--book", str(FOLDER / "quince-row.book"), "--as-of", "2026-05-22"]


def cents(cell):
    return Decimal(str(cell)).quantize(Decimal("0.01"))


def without_values(path, bare):
    """A copy in which every cell with a formula has lost its value."""
    with zipfile.ZipFile(path) as read, zipfile.ZipFile(bare, "w") as write:
        for name in read.namelist():
            data = read.read(name)
            if name.startswith("xl/worksheets/"):
                data, count = re.subn(rb"(</f>)<v>[^<]*</v>", rb"\1<v></v>", data)
            write.writestr(name, data)


def formulas(path):
    book = openpyxl.load_workbook(path)
    return {(sheet.title, cell.coordinate) for sheet in book for row in sheet.iter_rows()
            for cell in row if isinstance(cell.value, str) and cell.value.startswith("=")}


work = FOLDER / "office"
shutil.rmtree(work, ignore_errors=True)
(work / "bare").mkdir(parents=True)
compared = 0
for what in ("week", "scope", "spend", "draw"):
    given = work / f"{what}.xlsx"
    subprocess.run(BASE + ["give", what, "xlsx", str(given)], check=True, capture_output=True)
    bare = work / "bare" / given.name
    without_values(given, bare)
    subprocess.run(["soffice", "--headless", f"-env:UserInstallation=file://{work.resolve()}/profile",
                    "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", str(work / "out"),
                    str(bare)], check=True, capture_output=True, timeout=120)
    ours = openpyxl.load_workbook(given, data_only=True)
    theirs = openpyxl.load_workbook(work / "out" / given.name, data_only=True)
    for sheet, place in sorted(formulas(given)):
        mine, other = ours[sheet][place].value, theirs[sheet][place].value
        if other is None or cents(mine) != cents(other):
            sys.exit(f"{what}, {sheet}!{place}: {mine} by us, {other} worked out by LibreOffice")
        compared += 1
assert compared > 100, compared
print(f"{compared} formulas worked out by LibreOffice, each the same to the cent")
