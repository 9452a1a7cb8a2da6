#!/usr/bin/env bash
# Two devices and a peer on the demo house, each a program of its own: a phone marks and photographs
# while it is cut off, the laptop goes on meanwhile, and after two meetings both agree. Then a crew
# lead's phone, which gets its work and no money, and is shut out.
#
# Usage: scripts/try-devices.sh PROGRAM PEER FOLDER
#   PROGRAM, PEER  the built ledgerboard and ledgerboard-peer
#   FOLDER         with quince-row.book, as scripts/try-demo.sh leaves it
# Stops at the first thing that is not as it should be, with exit status 1.
set -uo pipefail

if (($# != 3)); then
    sed -n '2,9s/^# \{0,1\}//p' "$0" >&2
    exit 2
fi
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
program=$(cd "$(dirname "$1")" && pwd)/$(basename "$1")
peer=$(cd "$(dirname "$2")" && pwd)/$(basename "$2")
folder=$(cd "$3" && pwd)
cd "$root" || exit 1
export LC_ALL=C.UTF-8
short=${folder#"$root/"}
unset LEDGERBOARD_JOB LEDGERBOARD_BOOK
said=$folder/last-command.txt
peer_process=

laptop=$short/quince-row.book
phone=$short/phone.book
lead=$short/crew-lead.book
for file in "$phone" "$lead" "$short/peer"; do
    if [[ -e $file ]]; then
        echo "try-devices: there is something at $file already: name a fresh folder" >&2
        exit 1
    fi
done
mkdir -p "$short/peer" "$short/visit"

chapter() { printf '\n%s\n' "$*"; }

stop_peer() {
    if [[ -n $peer_process ]]; then
        kill "$peer_process" 2>/dev/null
        wait "$peer_process" 2>/dev/null
        peer_process=
    fi
}
trap stop_peer EXIT

wrong() {
    printf '\ntry-devices: %s\n' "$*" >&2
    exit 1
}

# start_peer: on the port it had, once it has one; what it prints goes to peer/out.
port=0
start_peer() {
    "$peer" --book "$short/peer/house.book" --port "$port" \
        >"$short/peer/out" 2>"$short/peer/log" </dev/null &
    peer_process=$!
    local count
    for ((count = 0; count < 600; ++count)); do
        port=$(sed -n 's/.*"event":"started","address":"127.0.0.1:\([0-9]*\)".*/\1/p' \
            "$short/peer/log")
        if [[ -n $port ]]; then
            return
        fi
        kill -0 "$peer_process" 2>/dev/null || break
        sleep 0.1
    done
    cat "$short/peer/log" >&2
    wrong "the peer does not start"
}

# on BOOK STATUS ARGUMENTS...: runs the program quietly and expects that exit status.
on() {
    local book=$1 expected=$2 status=0
    shift 2
    "$program" --book "$book" "$@" >"$said" 2>&1 </dev/null || status=$?
    if ((status != expected)); then
        cat "$said"
        wrong "'ledgerboard $*' ended with exit status $status, not $expected"
    fi
}

# show BOOK STATUS LINES ARGUMENTS...: the same, with the command and the first lines it said.
show() {
    local book=$1 expected=$2 lines=$3 argument
    shift 3
    printf '\n  $ ledgerboard --book %s' "$book"
    for argument in "$@"; do
        if [[ $argument =~ ^[A-Za-z0-9_./,:=@%+-]+$ ]]; then
            printf ' %s' "$argument"
        else
            printf ' "%s"' "$argument"
        fi
    done
    printf '\n'
    on "$book" "$expected" "$@"
    head -n "$lines" "$said" | sed 's/^/    /'
}

# A value of the JSON that was said last, by its key.
value_of() {
    sed -n "s/^ *\"$1\": \"\(.*\)\",\{0,1\}$/\1/p" "$said" | head -n 1
}

# What a device holds of the house, as text: every row of every list, and the photos' bytes.
state_of() {
    local book=$1 kind
    for kind in scope spaces marks spend photos punch changes draws contracts crews people; do
        "$program" --book "$book" list "$kind" --csv </dev/null || return 1
    done
    (cd "$book.photos" && find . -path './??/*' -type f -exec sha256sum {} + | sort -k 2) || return 1
}

# A small picture: $1 is what tells it from the others (a note behind its end).
picture() {
    base64 -d <<'END'
/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAA0JCgsKCA0LCgsODg0PEyAVExISEyccHhcgLikxMC4pLSwzOko+MzZGNywtQFdB
RkxOUlNSMj5aYVpQYEpRUk//wAALCAAQABABAREA/8QAFQABAQAAAAAAAAAAAAAAAAAAAAH/xAAUEAEAAAAAAAAAAAAAAAAA
AAAA/9oACAEBAAA/AIA//9k=
END
    printf '%s' "$1"
}

chapter "1. A peer, and the laptop with the house joins it"
start_peer
code=$(sed -n 's/^  code *//p' "$short/peer/out")
show "$laptop" 0 8 join "127.0.0.1:$port" "$code" --called "Wren's laptop"

chapter "2. A phone of the same owner, by an invitation that the laptop asks for"
on "$laptop" 0 --json invite owner
invitation=$(value_of picture)
show "$phone" 0 8 join "$invitation" --called "Wren's phone"

chapter "3. Cut off: the phone marks and photographs, the laptop goes on at the desk"
stop_peer
show "$phone" 0 2 mark "dining room/wood floor" 75 --at 2026-05-23 --note "boards down, edges to do"
on "$phone" 0 mark bathroom/vanity 100 --at 2026-05-23
picture "dining room from the door" >"$short/visit/dining.jpg"
picture "the tub, caulked" >"$short/visit/tub.jpg"
cat >"$short/visit/photos.csv" <<'END'
File,Space,Item,Stage,Taken at,Caption
dining.jpg,Dining room,,during,2026-05-23T14:05:00Z,Boards down
tub.jpg,Bathroom,,after,2026-05-23T14:20:00Z,Caulked
END
show "$phone" 0 2 bring photos "$short/visit"
show "$phone" 1 6 sync
show "$laptop" 0 2 set "dining room/wood floor" Instructions "the board by the window is loose"
on "$laptop" 0 set "dining room/wood floor" Note "ask for two more boards"

chapter "4. The peer is back: each meets it, the phone once more, and both agree"
start_peer
show "$phone" 0 6 sync
show "$laptop" 0 6 sync
show "$phone" 0 6 sync
state_of "$laptop" >"$short/laptop-holds.txt" || wrong "the laptop's book cannot be listed"
state_of "$phone" >"$short/phone-holds.txt" || wrong "the phone's book cannot be listed"
if ! cmp -s "$short/laptop-holds.txt" "$short/phone-holds.txt"; then
    diff "$short/laptop-holds.txt" "$short/phone-holds.txt" | head -n 20
    wrong "the laptop and the phone hold different things"
fi
grep -q "boards down, edges to do" "$short/laptop-holds.txt" || wrong "the mark is not there"
grep -q "two more boards" "$short/phone-holds.txt" || wrong "the note is not there"
printf '\n  Laptop and phone hold the same %s lines, photos by their digests included.\n' \
    "$(wc -l <"$short/laptop-holds.txt")"
on "$laptop" 0 verify
on "$phone" 0 verify

chapter "5. A crew lead's phone: the work, and no money"
on "$laptop" 0 add scope Space=Bathroom Treatment=refinish "Object=wood floor" "Crew=Tile crew"
on "$laptop" 0 --json invite crew-lead "Tile crew" --name "Robin"
show "$lead" 0 8 join "127.0.0.1:$(value_of address | sed 's/.*://')" "$(value_of code)" \
    --called "Robin's phone"
show "$lead" 0 8 list scope
on "$lead" 0 list spend
if grep -qE '[0-9],[0-9]{3}' "$said"; then
    wrong "a crew lead's phone lists spend"
fi
on "$lead" 1 mark "bathroom/wood floor" 20
grep -q "ledgerboard acknowledge" "$said" || wrong "a caution holds nothing up on a crew lead's phone"
show "$lead" 0 2 acknowledge "bathroom/wood floor" fumes --result "windows open"
on "$lead" 0 acknowledge "bathroom/wood floor" silica --result "no dry sanding"
show "$lead" 0 2 mark "bathroom/wood floor" 20 --note "first coat"
show "$lead" 0 4 sync
grep -q "Set aside" "$said" && wrong "what a crew lead acknowledged and marked was set aside"
on "$laptop" 0 sync
on "$laptop" 0 cautions "bathroom/wood floor"
grep -q "windows open" "$said" || wrong "the owner does not see what the crew acknowledged"
on "$laptop" 0 list marks
grep -q "first coat" "$said" || wrong "the owner does not see the crew's mark"
show "$laptop" 0 8 devices

chapter "6. That phone is lost: shut out, refused, and its copy wiped when it calls"
show "$laptop" 0 2 revoke "Robin's phone"
show "$lead" 1 4 sync
if [[ -e $lead || -e $lead.photos ]]; then
    wrong "the copy of a device that was shut out is still there"
fi
stop_peer
rm -f "$said"
printf '\nTwo devices agree after two meetings each; the peer kept its copy in %s\n' "$short/peer"
