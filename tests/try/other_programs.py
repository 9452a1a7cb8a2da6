#!/usr/bin/python3
"""Do programs that are not ours read in the demo's files what ours reads, or says with --json?

Usage: other_programs.py PROGRAM FOLDER DOWNLOAD   (FOLDER holds quince-row.book of the demo)
The calendar is read by the icalendar library, the workbooks by openpyxl, the bank's download by
ofxparse; totals are added up again here, in cents, from the cells that the formulas name.
"""
import csv
import datetime
import hashlib
import io
import json
import pathlib
import re
import subprocess
import sys
import zipfile
from decimal import Decimal

import icalendar
import ofxparse
import openpyxl

PROGRAM, FOLDER, DOWNLOAD = sys.argv[1:4]
BASE = [PROGRAM, "--book", FOLDER + "/quince-row.book", "--as-of", "2026-05-22"]


def give(*words):
    path = FOLDER + "/given-" + words[0] + "." + words[1]
    subprocess.run(BASE + ["give", *words[:2], path, *words[2:]], check=True, capture_output=True)
    return path


def asked(*words, base=None):
    return json.loads(subprocess.run((base or BASE) + ["--json", *words], check=True,
                                     capture_output=True).stdout)


def cents(cell):
    return Decimal(str(cell)).quantize(Decimal("0.01"))


def same(what, ours, theirs):
    if isinstance(ours, dict):
        for key in ours:
            same(f"{what}, {key}", ours[key], theirs.get(key))
    if ours != theirs:
        sys.exit(f"{what}: {str(ours)[:900]} by --json, {str(theirs)[:900]} by the other program")


def totals(path, sheet=None):
    """Heading -> total, where a last row has a formula; each checked against its column."""
    formulas = openpyxl.load_workbook(path)
    values = openpyxl.load_workbook(path, data_only=True)
    name = sheet or formulas.sheetnames[0]
    page, read = formulas[name], values[name]
    found = {}
    for column in range(1, page.max_column + 1):
        text = page.cell(page.max_row, column).value
        if not isinstance(text, str) or not text.startswith("=SUM("):
            continue
        first, last = re.fullmatch(r"=SUM\([A-Z]+(\d+):[A-Z]+(\d+)\)", text).groups()
        assert (int(first), int(last)) == (2, page.max_row - 1), text
        added = sum(cents(read.cell(row, column).value or 0)
                    for row in range(int(first), int(last) + 1))
        total = cents(read.cell(page.max_row, column).value)
        heading = page.cell(1, column).value
        same(f"{path}, total of {heading}", total, added)
        found[heading] = total
    assert page.freeze_panes == "A2", page.freeze_panes
    assert page.print_title_rows, "headings are not repeated on printed pages"
    return found, read


def check_workbooks():
    week = asked("week")
    trades, _ = totals(give("week", "xlsx"), "Money by trade")
    for heading, key in [("Budget now", "budget_now"), ("Committed", "committed"),
                         ("Billed", "billed"), ("Held", "held"), ("Paid", "paid"),
                         ("Forecast", "forecast")]:
        same("week, " + heading, cents(week["total"][key]), trades[heading])
    same("week, Over", cents(week["total"]["forecast"]) - cents(week["total"]["budget_now"]),
         trades["Over"])

    scope, read = totals(give("scope", "xlsx"))
    lines = [item["figures"] for item in asked("list", "scope")["items"] if "figures" in item]
    for heading, key in [("Budget now", "budget_now"), ("Earned", "earned"), ("Billed", "billed"),
                         ("Forecast", "forecast")]:
        same("scope, " + heading, sum(cents(line[key]) for line in lines), scope[heading])

    spend, read = totals(give("spend", "xlsx"))
    same("spend, rows", len(asked("list", "spend")["spends"]), read.max_row - 2)
    day = read.cell(2, [cell.value for cell in read[1]].index("Date") + 1).value
    assert isinstance(day, datetime.datetime), "a date is not a date"

    draw, _ = totals(give("draw", "xlsx"))
    same("draw, This draw", cents(asked("draw")["total"]), draw["This draw"])


def check_calendar():
    def events(path):
        with open(path, "rb") as file:
            calendar = icalendar.Calendar.from_ical(file.read())
        return {str(event["UID"]): event for event in calendar.walk("VEVENT")}

    # RFC 7986: what a whole calendar says of itself; 5.3: the same UID for the same calendar.
    with open(give("schedule", "ics"), "rb") as file:
        calendar = icalendar.Calendar.from_ical(file.read())
    job = asked("list", "jobs")["jobs"][0]
    same("calendar, UID", job["id"], str(calendar["UID"]))
    same("calendar, NAME", job["name"], str(calendar["NAME"]))
    assert str(calendar["DESCRIPTION"]).startswith("Work, deliveries"), calendar["DESCRIPTION"]
    interval = calendar["REFRESH-INTERVAL"]
    same("calendar, REFRESH-INTERVAL", ("DURATION", "P1D"),
         (interval.params["VALUE"], interval if isinstance(interval, str)
          else interval.to_ical().decode()))
    assert re.fullmatch(r"\d{8}T\d{6}Z", calendar["LAST-MODIFIED"].to_ical().decode()
                        if hasattr(calendar["LAST-MODIFIED"], "to_ical")
                        else calendar["LAST-MODIFIED"])
    for name in ("NAME", "UID", "LAST-MODIFIED", "REFRESH-INTERVAL"):
        assert not isinstance(calendar[name], list), f"{name} stands twice"

    whole = events(give("schedule", "ics"))
    again = events(give("schedule", "ics"))
    same("calendar, entries after a second export", sorted(whole), sorted(again))
    planned = {}
    for item in asked("plan")["items"]:
        if item["start_on"] and item["finish_on"] and item.get("has_days", True):
            planned[item["item"]] = (item["start_on"], item["finish_on"])
    work = 0
    for uid, event in whole.items():
        if not uid.endswith("-work"):
            continue
        name = re.sub(r" \([^()]*\)$", "", str(event["SUMMARY"]))
        start, end = event["DTSTART"].dt, event["DTEND"].dt - datetime.timedelta(days=1)
        same("calendar, " + name, planned[name], (start.isoformat(), end.isoformat()))
        work += 1
    assert work > 40, work
    crew = events(give("schedule", "ics", "--crew", "Tile crew"))
    assert 0 < len(crew) < len(whole) and set(crew) <= set(whole)


def check_bank():
    with open(DOWNLOAD, "rb") as file:
        account = ofxparse.OfxParser.parse(file).account
    theirs = [(line.id, line.date.date().isoformat(), cents(line.amount), line.payee)
              for line in account.statement.transactions]
    ours = [(line["bank_id"], line["date"], cents(line["amount"]), line["payee"])
            for line in asked("bring", "spend", DOWNLOAD, "--try", base=BASE[:3])["lines"]]
    same("bank lines", ours, theirs)
    assert len(ours) == 10, ours


def check_job_file():
    """The zip as Python's zipfile reads it; and brought into an empty book it is the same job."""
    path = FOLDER + "/given-job.zip"
    subprocess.run(BASE[:3] + ["give", "job", "zip", path], check=True, capture_output=True)
    with zipfile.ZipFile(path) as archive:
        assert archive.testzip() is None
        records = json.loads(archive.read("job.json"))["records"]
        for name in archive.namelist():
            if name.startswith("photos/"):
                digest = hashlib.sha256(archive.read(name)).hexdigest()
                same(name, name, f"photos/{digest}.jpg")
        rows = csv.DictReader(io.StringIO(archive.read("csv/spends.csv").decode()))
        same("spends.csv, sum", sum(cents(spend.get("amount", "0")) for spend in records["spends"]),
             sum(cents(row["Amount"] or "0") for row in rows))
    for name in ("brought.book", "brought.book-wal", "brought.book-shm"):
        pathlib.Path(FOLDER, name).unlink(missing_ok=True)
    other = [PROGRAM, "--book", FOLDER + "/brought.book"]
    subprocess.run(other + ["start", "Another house"], check=True, capture_output=True)
    subprocess.run(other + ["bring", "job", path], check=True, capture_output=True)
    job = asked("list", "jobs")["jobs"][0]["name"]
    for verb in (["week"], ["list", "scope"], ["deal"]):
        theirs = asked(*verb, base=other + ["--as-of", "2026-05-22", "--job", job])
        same("brought into another book, " + verb[0], asked(*verb), theirs)


check_workbooks()
check_calendar()
check_bank()
check_job_file()
print("icalendar, openpyxl, ofxparse and zipfile read what --json says")
