#!/usr/bin/env bash
# Protects: the manual can be followed word for word. Runs every command in its boxes marked sh, page
# after page, in a copy of the demo's files; each must succeed.
#
# Usage: manual.sh PROGRAM MANUAL DEMO FOLDER   (FOLDER is made anew)
set -euo pipefail

program=$(realpath "$1")
manual=$(realpath "$2")
demo=$(realpath "$3")
folder=$4

rm -rf "$folder"
mkdir -p "$folder"
cp -r "$demo"/*.csv "$demo"/*.txt "$demo"/*.ofx "$folder"
cd "$folder"
PATH=$(dirname "$program"):$PATH
unset LEDGERBOARD_BOOK
said=0
for page in "$manual"/README.md "$manual"/[0-9]*.md; do
    while IFS= read -r command; do
        if ! bash -c "$command" >said.txt 2>&1; then
            printf '%s: this fails:\n  %s\n' "${page##*/}" "$command"
            tail -20 said.txt
            exit 1
        fi
        said=$((said + 1))
    done < <(sed -n '/^```sh$/,/^```$/p' "$page" | grep -v '^```')
done
[[ $said -gt 40 ]]
echo "$said commands of the manual, each did what it was to do"
