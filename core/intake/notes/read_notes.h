// What scope of work do these walk notes ask for?
//
// Plain text as people produce it (dictated talk with or without time stamps, typed notes,
// shorthand lists) becomes a Draft: spaces in walking order, items, open alternates, facts of the
// deal, cautions, each with the sentence it came from. The stages and the tables they work from are
// told in core/intake/tables/README.md.
//
// Deterministic: no clock, no chance, no files.
// Threads: may be called from several threads.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/draft.h"
#include "core/intake/notes/own_word.h"
#include "core/model/result.h"

namespace ledgerboard::intake {

struct ReadOptions {
    bool explain = false;  // keep what each stage made of each sentence
    // Percent: items less sure than this are not made. What the tables say, where not given.
    std::optional<int> leastSure;
    // What the owner means by words of their own: these win over the tables.
    std::vector<OwnWord> ownWords;
    // Notes longer than this are refused.
    std::size_t mostBytes = 8u << 20;
};

// What one stage made of one sentence.
struct StageWords {
    std::string stage;  // "words", "where", "objects", "treatments", "amounts", "cues", "items", …
    std::string made;
};

struct ExplainedSentence {
    int line = 0;
    std::string sentence;
    std::vector<StageWords> stages;
};

// A sign of how an item came about, as core/intake/tables/sureness.tsv names it.
struct NamedSign {
    std::string name;   // "gap"
    std::string value;  // "2"
};

struct Reading {
    Draft draft;
    std::vector<ExplainedSentence> explained;   // empty unless asked for
    std::vector<std::vector<NamedSign>> signs;  // of each item of the draft, likewise
};

// Notes without any work in them give an empty draft.
// Errors: the notes are not text (binary data), are longer than `mostBytes`, or are in another
// language than English.
[[nodiscard]] model::Result<Reading> explainNotes(std::string_view notes,
                                                  const ReadOptions& options = {});
[[nodiscard]] model::Result<Draft> readNotes(std::string_view notes,
                                             const ReadOptions& options = {});

}  // namespace ledgerboard::intake
