#!/usr/bin/python3
"""Do the PDFs say what --json says, as poppler reads them, and do they keep to their sheets?

Usage: papers.py PROGRAM FOLDER   (FOLDER holds quince-row.book of the demo, of which a copy is used;
       needs poppler-utils)
Protects: every figure of the week and the draw; fonts embedded; the same bytes twice; no price in
a scope to bid on or a punch sheet; nothing beyond the margins, however long a word; a misuse gives
an error that says what is wrong and leaves no file.
"""
import json
import pathlib
import re
import shutil
import subprocess
import sys
from decimal import ROUND_HALF_UP, Decimal

PROGRAM, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])
PAPERS = FOLDER / "papers"
BOOK = PAPERS / "quince-row.book"
BASE = [PROGRAM, "--book", str(BOOK)]
DAY = ["--as-of", "2026-05-22"]


def give(what, *words, day=DAY, name=None, base=BASE):
    path = PAPERS / f"{name or what}.pdf"
    subprocess.run(base + day + ["give", what, "pdf", str(path), *words], check=True,
                   capture_output=True)
    return path


def asked(*words, day=DAY):
    return json.loads(subprocess.run(BASE + day + ["--json", *words], check=True,
                                     capture_output=True).stdout)


def poppler(program, *words):
    return subprocess.run([program, *words], check=True, capture_output=True, text=True).stdout


def make_book():
    """A copy of the demo's, with three photos of its own: pages of a paper, as pictures."""
    shutil.rmtree(PAPERS, ignore_errors=True)
    (PAPERS / "photos").mkdir(parents=True)
    for path in FOLDER.glob("quince-row.book*"):
        if path.is_file():
            shutil.copy(path, PAPERS)
    bids = give("bids")
    rows = ["File,Space,Item,Stage,Taken at,Caption,For the lender"]
    for page, item in enumerate(("Bathroom/shower tile", "Kitchen/countertop", "Entry/wood floor"), 1):
        poppler("pdftoppm", "-jpeg", "-r", str(40 + page), "-f", str(page), "-singlefile", str(bids),
                str(PAPERS / "photos" / f"{page}"))
        space = item.split("/")[0]
        rows.append(f"{page}.jpg,{space},{item},during,2026-05-2{page - 1}T15:00:00Z,seen,yes")
    (PAPERS / "photos" / "photos.csv").write_text("\n".join(rows) + "\n")
    subprocess.run(BASE + ["bring", "photos", str(PAPERS / "photos")], check=True,
                   capture_output=True)


def text_of(path, *words):
    return poppler("pdftotext", *words, str(path), "-")


def flat(text):
    return " ".join(text.split())


def pages_of(path):
    return int(re.search(r"Pages:\s+(\d+)", poppler("pdfinfo", str(path))).group(1))


def fail(*words):
    sys.exit(": ".join(str(word) for word in words))


def whole(amount):
    """Whole dollars, half away from zero, as the page shows them."""
    rounded = Decimal(amount).quantize(Decimal(1), rounding=ROUND_HALF_UP)
    return f"{rounded:,}".replace("-", "\u2212")


def signed(amount):
    text = whole(amount)
    return text if text == "0" or text[0] == "\u2212" else "+" + text


def cents(amount):
    return f"{Decimal(amount):,.2f}"


def need(text, figure, where):
    if not re.search(r"(?<![\d,.])" + re.escape(figure) + r"(?![\d]|[,.]\d)", text):
        fail(where, f"{figure} by --json is not on the paper")


def row(text, *cells):
    """A line of the laid-out text that has these cells in this order."""
    # How wide a gap is seen as a space is for poppler to say.
    pattern = r"\s+".join(re.escape(cell).replace(r"\ ", r"\s*") for cell in cells)
    if not re.search(r"(?m)^\s*(\S.*\s)?" + pattern + r"(\s|$)", text):
        fail("no such row on the paper", cells)


def check_sheets(path, size=(612, 792)):
    """Fonts embedded, every word within the margins, no page empty."""
    fonts = poppler("pdffonts", str(path)).splitlines()[2:]
    for font in fonts:
        if font.split()[-5:-2] != ["yes", "yes", "yes"]:
            fail(path, "a font is not embedded", font)
    boxes = text_of(path, "-bbox")
    for page in boxes.split("<page ")[1:]:
        words = re.findall(r'xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)"',
                           page)
        assert len(words) > 3, f"{path}: an empty page"
        for word in words:
            left, top, right, bottom = map(float, word)
            if left < 33 or top < 30 or right > size[0] - 33 or bottom > size[1] - 33:
                fail(path, "a word runs over the margin", word)
    assert re.search(r"Page 1 of " + str(pages_of(path)), text_of(path)), path


def check_week():
    path = give("week")
    check_sheets(path)
    assert pages_of(path) == 2, "the week is one sheet, two sides"
    week, text = asked("week"), text_of(path, "-layout")
    for name, amount in [("will cost", week["will_cost"]["forecast"]),
                         ("over", week["will_cost"]["over"]),
                         ("will earn", week["will_earn"]["profit"]),
                         ("cash lowest", week["cash_lowest"]["lowest"]),
                         ("contingency", week["contingency"]["left"]),
                         ("if signed", week["if_signed"])]:
        need(text, whole(amount), name)
    for trade in week["by_trade"] + [dict(week["total"], trade="All")]:
        row(text, trade["trade"], *(whole(trade[key]) for key in
            ("budget_now", "committed", "billed", "held", "paid", "forecast")))
    for mover in week["movers"]["largest"]:
        row(text, mover["what"], signed(mover["amount"]))
    row(text, "Since Fri 15 May", signed(week["movers"]["total"]))
    for room in week["by_room"]:
        done = room["done_percent"]
        shown = "none" if not room["items"] else "done" if done == 100 else \
            f"{Decimal(str(done)).quantize(Decimal(1), rounding=ROUND_HALF_UP)} %"
        row(text, room["space"], shown)
        need(text, signed(room["over"]), room["space"])
    for event in week["next_14_days"]:
        if event["amount"]:
            need(text, whole(event["amount"]), event["what"])
    for todo in week["on_monday"][:8]:
        assert todo["what"] in flat(text_of(path)), todo["what"]
    images = poppler("pdfimages", "-list", str(path)).splitlines()[2:]
    assert len(images) == 3 and all(" jpeg " in image for image in images), images
    return path


def check_draw():
    path = give("draw")
    check_sheets(path)
    draw, text = asked("draw"), text_of(path, "-layout")
    for line in draw["lines"]:
        row(text, line["lender_line"], cents(line["amount"]), f"{line['share_lent']} %",
            f"{line['seen']} %", cents(line["held_back"]), cents(line["paid_before"]),
            cents(line["draw"]))
    row(text, "All", cents(sum(Decimal(line["amount"]) for line in draw["lines"])),
        cents(draw["held_back"]), cents(draw["paid_before"]), cents(draw["total"]))
    need(text, cents(draw["net"]), "net of the fee")
    pictures = poppler("pdfimages", "-list", str(path)).splitlines()[2:]
    assert pictures and all(" jpeg " in picture for picture in pictures), "the draw has no photos"

    # Draw 3 as it was asked for on 20 May, at the percents of demo-data/draw-lines.csv: for each
    # line amount x asked % x 90 %, less what draws 1 and 2 paid on it. Carpentry
    # 13,000 x 88 % x 90 % = 10,296, less 13,000 x 78 % x 90 % = 9,126, is 1,170; Floors
    # 4,000 x 77 % x 90 % = 2,772.
    other = text_of(give("draw", day=["--as-of", "2026-05-20"], name="draw-3"), "-layout")
    assert "Draw request 3" in other
    row(other, "Carpentry", "13,000.00", "100 %", "88 %", "1,144.00", "9,126.00", "1,170.00")
    row(other, "Floors", "4,000.00", "100 %", "77 %", "308.00", "0.00", "2,772.00")
    return path


def amounts_of_scope():
    for item in asked("list", "scope")["items"]:
        for key in ("lump_sum", "unit_cost_material", "unit_cost_labour", "cost_low", "cost_high"):
            if Decimal(item.get(key) or 0) >= 1000:
                yield item[key]
        for amount in item.get("figures", {}).values():
            if re.fullmatch(r"\d+\.\d\d", str(amount)) and Decimal(amount) >= 1000:
                yield amount


def no_price(text, where):
    assert not re.search(r"\d[.,]\d\d\b|[$\u20ac]", text), (where, "looks like a price")
    for amount in set(amounts_of_scope()):
        for shown in (whole(amount), cents(amount), amount, str(int(Decimal(amount)))):
            if re.search(r"(?<![\d,.])" + re.escape(shown) + r"(?![\d,.])", text):
                fail(where, f"{shown} is one of the owner's amounts")


def check_bids():
    path = give("bids")
    check_sheets(path)
    text = flat(text_of(path))
    bare = text
    for item in asked("list", "scope")["items"]:
        if item.get("quantity"):  # a size may be as large as some amount
            bare = bare.replace(f"{item['quantity']} {item.get('unit', '')}", "")
    no_price(bare, "bids")
    counted = [item for item in asked("list", "scope")["items"]
               if item["treatment"] != "keep" and item.get("figures", {}).get("to_go_by") !=
               "not counted"]
    assert len(counted) > 40, len(counted)
    for item in counted:
        assert f"{item['treatment']} {item['object']}" in text, item["object"]
    tile = flat(text_of(give("bids", "--crew", "Tile crew", name="bids-tile")))
    assert "replace shower tile" in tile and "Tile crew" in tile
    assert "replace gutters" not in tile, "another crew's work"
    return path


def check_punch():
    path = give("punch")
    check_sheets(path)
    punch = asked("punch")
    assert pages_of(path) == len(punch["crews"]), "a page for each crew"
    text = flat(text_of(path))
    no_price(text, "punch")
    what = {punch_item["what"] for punch_item in asked("list", "punch")["punches"]}
    shown = [name for name in what if name in text]
    assert len(shown) == punch["open"], (len(shown), punch["open"])
    tile = text_of(give("punch", "--crew", "Tile crew", name="punch-tile"))
    assert "Tile crew" in tile and tile.count("\f") == 1, "one page"


def check_forms():
    for what, title in [("change", "Change order"), ("waiver", "Lien waiver")]:
        path = give(what)
        check_sheets(path)
        for page in text_of(path).split("\f")[:-1]:
            assert title in page and "Check with local law" in flat(page), (what, page)
            assert not re.search(r"\d[.,]\d\d\b", page), "a blank form has no figures"


def check_sizes_and_bytes():
    for what in ("week", "draw", "bids", "punch", "change", "waiver"):
        one = give(what, name="one").read_bytes()
        assert one == give(what, name="other").read_bytes(), f"{what}: not the same bytes twice"
    path = give("week", "--paper", "a4", name="week-a4")
    assert "595.28 x 841.89" in poppler("pdfinfo", str(path))
    check_sheets(path, (595, 842))


def check_a_hard_book():
    """Words without end, letters of other scripts, work longer than a sheet."""
    book = PAPERS / "hard.book"
    base = [PROGRAM, "--book", str(book)]

    def run(*words):
        subprocess.run(base + list(words), check=True, capture_output=True)

    run("start", "W" * 200, "--begin", "2026-04-06", "--budget", "9000000000000.00")
    run("add", "space", "Name=" + "K" * 300)
    run("add", "crew", "Name=\u041f\u043b\u0438\u0442\u043e\u0447\u043d\u0438\u043a\u0438 \u4e2d\u6587")
    run("add", "scope", "Space=" + "K" * 300, "Treatment=replace", "Object=" + "o" * 400,
        "Instructions=" + "measure twice and cut once, " * 700, "Lump sum=900000000000.55")
    for number in range(90):
        run("add", "scope", f"Object=window {number}", "Treatment=repair", "Lump sum=1.00")
    for what in ("week", "bids", "punch", "change", "waiver"):
        path = give(what, day=["--as-of", "2026-05-22"], base=base, name="hard-" + what)
        check_sheets(path)
    bids = PAPERS / "hard-bids.pdf"
    text = text_of(bids)
    assert len(re.findall(r"measure\s+twice\s+and\s+cut\s+once", text)) == 700
    pages = text.split("\f")[:-1]
    assert len(pages) > 4
    # A table that goes on to the next sheet has its headings there again.
    for page in pages[:-1]:
        assert "Work" in page and "Price" in page, page[:300]
    # An empty job has its papers too, and they say what to do.
    empty = [PROGRAM, "--book", str(PAPERS / "empty.book")]
    subprocess.run(empty + ["start", "Nothing yet"], check=True, capture_output=True)
    for what in ("week", "bids", "punch"):
        said = flat(text_of(give(what, day=[], base=empty, name="empty-" + what)))
        assert re.search(r"no work to bid on|Nothing is left|nothing|nothing in it|read ", said,
                         re.I), said


def check_misuse():
    """Each: what is typed, the exit status, what the message must say."""
    out = PAPERS / "misuse.pdf"
    folder = PAPERS / "a-folder.pdf"
    folder.mkdir()
    empty = [PROGRAM, "--book", str(PAPERS / "empty.book")]
    cases = [
        (BASE + ["give", "week", "pdf"], 2, "FILE"),
        (BASE + ["give", "scope", "pdf", out], 2, "csv, json or xlsx"),
        (BASE + ["give", "schedule", "pdf", out], 2, "given as ics"),
        (BASE + ["give", "weather", "pdf", out], 2, "WHAT"),
        (BASE + ["give", "week", "pfd", out], 2, "html, json, pdf or xlsx"),
        (BASE + ["give", "week", "pdf", out, "--paper", "a5"], 2, "letter nor a4"),
        (BASE + ["give", "week", "html", out, "--paper", "a4"], 2, "--paper goes with pdf"),
        (BASE + ["give", "week", "pdf", out, "--crew", "Tile crew"], 2, "--crew"),
        (BASE + ["give", "punch", "pdf", out, "--crew", "Nobody"], 1, "--crew"),
        (BASE + ["--job", "No such house", "give", "week", "pdf", out], 1, "No such house"),
        (BASE + ["--as-of", "2026-13-40", "give", "draw", "pdf", out], 2, "--as-of"),
        (BASE + ["give", "bids", "pdf", PAPERS / "no" / "folder.pdf"], 1, "cannot be written"),
        (BASE + ["give", "bids", "pdf", folder], 1, "is a folder"),
        (BASE + ["give", "bids", "pdf", BOOK], 1, "database"),
        (empty + ["give", "draw", "pdf", out], 1, "no loan"),
        ([PROGRAM, "--book", PAPERS / "none.book", "give", "week", "pdf", out], 3, "none.book"),
    ]
    before = (BOOK).read_bytes()
    files = sorted(PAPERS.rglob("*"))
    for words, status, says in cases:
        done = subprocess.run([str(word) for word in words], capture_output=True, text=True)
        if done.returncode != status or says not in done.stderr:
            fail(" ".join(map(str, words[3:])), done.returncode, done.stderr)
    assert sorted(PAPERS.rglob("*")) == files, "a misuse left a file behind"
    assert (BOOK).read_bytes() == before
    return len(cases)


make_book()
check_week()
check_draw()
check_bids()
check_punch()
check_forms()
check_sizes_and_bytes()
check_a_hard_book()
misused = check_misuse()
print(f"poppler reads on the papers what --json says; {misused} misuses, each with its error")
