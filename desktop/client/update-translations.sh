#!/usr/bin/env bash
# Brings new words of the pages into the translation files: desk_es.ts has all of them, desk_en.ts
# only those that have a plural. Then translate what is marked unfinished. What the phone says as well
# is brought by core/qml/update-translations.sh.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
sources=(desktop/client)
"$lupdate" -silent -I . -locations none -no-obsolete "${sources[@]}" -ts desktop/client/desk_es.ts
"$lupdate" -silent -I . -locations none -no-obsolete -pluralonly "${sources[@]}" -ts desktop/client/desk_en.ts
