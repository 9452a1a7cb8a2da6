#!/usr/bin/env bash
# Protects: what bash offers to complete is what the program understands, place by place; the scripts
# for other shells and the manual page name every verb.
#
# Usage: completion.sh PROGRAM
set -euo pipefail
program=$1

# shellcheck disable=SC1090
source <("$program" completion bash)

offers() {
    local wanted=$1
    shift
    COMP_WORDS=("$@")
    COMP_CWORD=$(($# - 1))
    COMPREPLY=()
    _ledgerboard || true  # compgen fails where it offers nothing
    if [[ ${COMPREPLY[*]} != "$wanted" ]]; then
        printf '%s: "%s" is offered, "%s" was wanted\n' "$*" "${COMPREPLY[*]}" "$wanted" >&2
        exit 1
    fi
}

offers "week" ledgerboard we
offers "spend" ledgerboard --book some.book bring sp
offers "ics" ledgerboard give schedule i
offers "--try" ledgerboard bring --t
offers "earned-schedule earned-value" ledgerboard work ea
offers "--as-of" ledgerboard --a
offers "" ledgerboard bring spend some-f

verbs=$("$program" --help | sed -n '/^Verbs:/,/^$/s/^  \([a-z-]*\) .*/\1/p')
[[ $(wc -l <<<"$verbs") -gt 30 ]]
for verb in $verbs; do
    for words in "completion bash" "completion zsh" "completion fish" manual-page; do
        # shellcheck disable=SC2086
        grep -qF -- "$verb" < <("$program" $words | sed 's/\\-/-/g') ||
            { echo "$words does not name $verb" >&2; exit 1; }
    done
done
echo "$(wc -l <<<"$verbs") verbs, each in every script"
