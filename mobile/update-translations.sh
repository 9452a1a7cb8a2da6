#!/usr/bin/env bash
# Brings new words of the screens, and those of the core that a crew lead meets, into the translation
# files: phone_es.ts has all of them, phone_en.ts only those that have a plural. Then translate what
# is marked unfinished.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)

# The cautions stand in a table of macros, which lupdate does not read: as a source that it does.
cautions=$(mktemp -d)
trap 'rm -rf "$cautions"' EXIT
{
    g++ -E -P -x c++ - <<'END'
#define RULE(key, about, alsoCalled, builtBefore, where, treatments, objects, trades, words, text, \
             source, consequence)                                                                 \
    QT_TRANSLATE_NOOP("Caution", about)                                                            \
    QT_TRANSLATE_NOOP("Caution", text)                                                             \
    QT_TRANSLATE_NOOP("Caution", consequence)
#include "core/compute/cautions.def"
END
} | sed 's/QT_TRANSLATE_NOOP/\n&/g' >"$cautions/cautions.cpp"
grep -q 'QT_TRANSLATE_NOOP' "$cautions/cautions.cpp"

sources=(core/qml mobile "$cautions")
"$lupdate" -silent -I . -locations none -no-obsolete "${sources[@]}" -ts mobile/phone_es.ts
"$lupdate" -silent -I . -locations none -no-obsolete -pluralonly "${sources[@]}" -ts mobile/phone_en.ts
