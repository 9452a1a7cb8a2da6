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

#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/draft.h"
#include "core/model/result.h"

namespace ledgerboard::intake {

struct ReadOptions {
    bool explain = false;  // keep what each stage made of each sentence
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

struct Reading {
    Draft draft;
    std::vector<ExplainedSentence> explained;  // empty unless asked for
};

// Notes without any work in them give an empty draft.
// Errors: the notes are not text (binary data), are longer than `mostBytes`, or are in another
// language than English.
[[nodiscard]] model::Result<Reading> explainNotes(std::string_view notes,
                                                  const ReadOptions& options = {});
[[nodiscard]] model::Result<Draft> readNotes(std::string_view notes,
                                             const ReadOptions& options = {});

}  // namespace ledgerboard::intake
