#!/usr/bin/env bash
# Brings new words of the screens into the translation files: phone_es.ts has all of them, phone_en.ts
# only those that have a plural. Then translate what is marked unfinished. What the desktop says as
# well is brought by core/qml/update-translations.sh.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)

sources=(mobile)
"$lupdate" -silent -I . -locations none -no-obsolete "${sources[@]}" -ts mobile/phone_es.ts
"$lupdate" -silent -I . -locations none -no-obsolete -pluralonly "${sources[@]}" -ts mobile/phone_en.ts
