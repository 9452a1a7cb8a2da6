#!/usr/bin/env bash
# The whole job on the demo house, through the real program: each command is printed, then run, then
# the first lines of what it said.
#
# Usage: scripts/try-demo.sh PROGRAM FOLDER
#   PROGRAM  the built ledgerboard
#   FOLDER   where the book and the pages go; no book may be in it yet
# Stops at the first command that fails, with all that it said and its exit status.
set -uo pipefail

if (($# != 2)); then
    sed -n '2,8s/^# \{0,1\}//p' "$0" >&2
    exit 2
fi
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
program=$(cd "$(dirname "$1")" && pwd)/$(basename "$1")
mkdir -p "$2"
folder=$(cd "$2" && pwd)
said=$folder/last-command.txt
cd "$root" || exit 1
export LC_ALL=C.UTF-8
# Inside the checkout the commands name files from its root, so that they can be typed there.
short=${folder#"$root/"}
export LEDGERBOARD_BOOK=$short/quince-row.book
unset LEDGERBOARD_JOB

if [[ -e $LEDGERBOARD_BOOK ]]; then
    echo "try-demo: there is a book at $LEDGERBOARD_BOOK already: name an empty folder" >&2
    exit 1
fi

chapter() { printf '\n%s\n' "$*"; }

# An argument as it would be typed.
typed() {
    if [[ $1 =~ ^[A-Za-z0-9_./,:=@%+-]+$ ]]; then
        printf '%s' "$1"
    else
        printf '"%s"' "$1"
    fi
}

# quietly ARGUMENTS...: runs the program. Where it fails, shows all that it said and stops.
quietly() {
    local status=0
    "$program" "$@" >"$said" 2>&1 </dev/null || status=$?
    if ((status != 0)); then
        cat "$said"
        printf '\ntry-demo: the command above failed with exit status %d\n' "$status" >&2
        exit "$status"
    fi
}

print_command() {
    local argument
    printf '\n  $ ledgerboard'
    for argument in "$@"; do
        printf ' %s' "$(typed "$argument")"
    done
    printf '\n'
}

# show LINES ARGUMENTS...: prints the command, runs it, prints at most LINES lines of what it said.
show() {
    local lines=$1 count
    shift
    print_command "$@"
    quietly "$@"
    count=$(wc -l <"$said")
    head -n "$lines" "$said" | sed 's/^/    /'
    if ((count > lines)); then
        printf '    (and %d lines more)\n' "$((count - lines))"
    fi
}

# The settings of the job: one field a row, under the catalog's headings.
set_job_fields() {
    local field value count=0
    while IFS=, read -r field value || [[ -n $field ]]; do
        value=${value%$'\r'}
        if [[ $field == Field ]]; then
            continue
        fi
        if [[ $value == \"*\" ]]; then
            value=${value:1:-1}
        fi
        count=$((count + 1))
        if ((count <= 3)); then
            show 2 set job "$field" "$value"
        else
            quietly set job "$field" "$value"
        fi
    done <demo-data/job.csv
    printf '\n  and so on for all %d fields of demo-data/job.csv\n' "$count"
}

# Drops what the draft has and the decided scope has not: a draft is there to be corrected.
strike_out() {
    local name count=0
    quietly list scope --csv
    # Space, treatment and object stand first in both files and have no commas in them; names are
    # compared as the program does, without case and spaces.
    awk -F, 'function key() { k = tolower($1 FS $2 FS $3); gsub(/[ _-]/, "", k); return k }
             NR == FNR { decided[key()]; next }
             FNR > 1 && !(key() in decided) { print $1 "/" $2 " " $3 }' \
        demo-data/scope.csv "$said" >"$folder/struck-out.txt"
    while IFS= read -r name; do
        count=$((count + 1))
        if ((count <= 2)); then
            show 2 drop "$name"
        else
            quietly drop "$name"
        fi
    done <"$folder/struck-out.txt"
    printf '\n  %d draft lines in all are not in the decided scope and are struck out\n' "$count"
    rm -f "$folder/struck-out.txt"
}

printf 'Commands are run in %s\n' "$root"
printf 'The book is %s\n' "$LEDGERBOARD_BOOK"

chapter "1. A new book and a new job"
show 4 start "14 Quince Row" --owner "Wren" --begin 2026-04-06 --finish 2026-05-29
set_job_fields

chapter "2. The price book, the crews, the contracts, the lender's lines"
show 6 bring prices demo-data/prices.csv
show 6 bring crews demo-data/crews.csv
show 6 bring contracts demo-data/contracts.csv
show 4 bring lender-lines demo-data/lender-lines.csv

chapter "3. Walk notes become a draft scope, each line with the sentence it came from"
show 24 read demo-data/walk-notes.txt
print_command read demo-data/walk-notes.txt --keep
quietly read demo-data/walk-notes.txt --keep
sed -n '/^Kept:/,$p' "$said" | head -n 12 | sed 's/^/    /'

chapter "4. The draft corrected: the scope as it was decided, priced and planned; then frozen"
show 8 bring scope demo-data/scope.csv
strike_out
show 16 list scope
show 8 baseline --on 2026-04-03

chapter "5. Cautions: what a house of 1936 brings with it, and what was done about each"
show 24 cautions --as-of 2026-04-02
show 2 acknowledge "kitchen/vinyl floor" --at 2026-04-07
show 2 acknowledge "kitchen/vinyl floor" asbestos \
    --result "positive on 9 April; a licensed firm takes it out"
show 2 acknowledge asbestos --all --at 2026-04-02 \
    --result "survey of 2 April: none found in plaster, roof, flue or attic"
show 2 acknowledge "lead paint" --all --at 2026-04-02 \
    --result "not tested, treated as lead; the firms are certified"
quietly acknowledge "work at height" --all --at 2026-04-06 --result "harness and tied ladders"
quietly acknowledge structure --all --at 2026-04-10 --result "engineer looked on 9 April"
quietly acknowledge "electrical work" --all --at 2026-04-10 --result "licensed crew, permit posted"
quietly acknowledge "dust of brick, tile and stone" --all --at 2026-04-10 --result "wet saw, masks"
quietly acknowledge "floor finishes and strippers" --all --at 2026-05-08
quietly acknowledge stairs/railing --at 2026-05-08 --result "height and gaps asked on 7 May"
quietly acknowledge "basement/water heater" gas --at 2026-05-15
printf '\n  and so on; the range and the yard are not begun yet, so theirs stay open\n'

chapter "6. Seven weeks on site: changes, spend, progress, draws, punch items"
show 5 bring changes demo-data/changes.csv
show 5 bring spend demo-data/spend.csv
show 5 bring marks demo-data/marks.csv
show 5 bring draws demo-data/draws.csv
show 4 bring draw-lines demo-data/draw-lines.csv
show 5 bring punch demo-data/punch.csv
if [[ -f $short/photos/photos.csv ]]; then
    show 4 bring photos "$short/photos"
fi
printf '\n  The same file a second time adds nothing:\n'
show 2 bring spend demo-data/spend.csv

chapter "7. The week's page: first the Friday before, kept to compare with, then this Friday"
print_command week --as-of 2026-05-15 --keep
quietly week --as-of 2026-05-15 --keep
show 60 week --as-of 2026-05-22
show 3 give week html "$short/week.html" --as-of 2026-05-22
printf '\n  Why it ends when it does:\n'
show 70 plan --as-of 2026-05-22

chapter "8. The choices the walk left open: one decided, one compared"
show 2 set "open up the wall" Days 4
quietly set "open up the wall" "Value low" 2000
quietly set "open up the wall" Value 5500
quietly set "open up the wall" "Value high" 8000
show 4 choose "Dining room/walls" leave --why "it may carry the bathroom, and buyers like the room"
show 2 set "a stacked laundry in the hall closet" Days 3
quietly set "a stacked laundry in the hall closet" "Value low" 2000
quietly set "a stacked laundry in the hall closet" Value 4500
quietly set "a stacked laundry in the hall closet" "Value high" 7000
show 2 set closet Carried "leave the laundry in the basement where it is"
show 2 set closet "Decide by" 2026-05-26
show 60 choose --as-of 2026-05-22 --chance 80

chapter "9. What is left, and what stands between this job and finished"
show 10 punch --crew "Tile crew" --as-of 2026-05-22
show 16 close --as-of 2026-05-22
show 14 taught --as-of 2026-05-22

chapter "10. What the bank says: its download brought in, each line with what it is for"
show 12 bring spend demo-data/bank-may.ofx
show 12 bank
show 5 bank bk-0523-1 --not-ours
printf '\n  A download that overlaps adds nothing twice:\n'
show 2 bring spend demo-data/bank-may.ofx

chapter "11. The deal, how sure it is, the cash and the draw, and the book checked from end to end"
show 42 deal --as-of 2026-05-22
show 32 risk --as-of 2026-05-22
show 44 cash --as-of 2026-05-22
show 28 draw --as-of 2026-05-22
show 5 verify
rm -f "$said"
