#!/usr/bin/env bash
# Brings the words that both clients say, and those of core that reach their screens, into the
# translation files: shared_es.ts has all of them, shared_en.ts only those that have a plural. Then
# translate what is marked unfinished.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)

# The cautions stand in a table of macros, which lupdate does not read: as a source that it does.
said=$(mktemp -d)
trap 'rm -rf "$said"' EXIT
{
    g++ -E -P -x c++ - <<'END'
#define RULE(key, about, alsoCalled, builtBefore, where, treatments, objects, trades, words, text, \
             source, consequence)                                                                 \
    QT_TRANSLATE_NOOP("Caution", about)                                                            \
    QT_TRANSLATE_NOOP("Caution", text)                                                             \
    QT_TRANSLATE_NOOP("Caution", source)                                                           \
    QT_TRANSLATE_NOOP("Caution", consequence)
#include "core/compute/cautions.def"
END
} | sed 's/QT_TRANSLATE_NOOP/\n&/g' >"$said/cautions.cpp"
grep -q 'QT_TRANSLATE_NOOP' "$said/cautions.cpp"
# Those that the reader of walk notes gives stand in a table of its own.
awk -F '\t' '!/^#/ && NF == 6 { for (i = 2; i <= 6; i += 4) printf "QT_TRANSLATE_NOOP(\"Caution\", \"%s\")\n", $i }' \
    core/intake/tables/cautions.tsv >"$said/walk.cpp"
grep -q 'QT_TRANSLATE_NOOP' "$said/walk.cpp"
core/qml/core_sentences.py >"$said/sentences.cpp"
core/qml/core_sentences.py --list >core/qml/sentences.txt

sources=(core/qml "$said")
"$lupdate" -silent -I . -locations none -no-obsolete "${sources[@]}" -ts core/qml/shared_es.ts
"$lupdate" -silent -I . -locations none -no-obsolete -pluralonly "${sources[@]}" -ts core/qml/shared_en.ts
