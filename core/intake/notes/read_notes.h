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
    // Only what the rules make of phrases they know, whatever the weights say; `sure` is then 0.
    bool rulesAlone = false;
    // Things stay where the rules put them, whatever the weights of places say. Notes that these
    // were made with are placed better than a stranger's: what else is weighed must not see that.
    bool placesAsRuled = false;
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

// A thing in a place with all that bears on its treatment, as core/intake/tables/leanings.tsv
// names it.
struct NamedThing {
    std::string space;
    std::string object;
    std::vector<std::string> clues;                  // of the thing itself
    std::vector<std::vector<std::string>> mentions;  // of each time it was named
    std::vector<std::string> made;                   // the treatments that the rules made
};

// A place that a thing may be in, with all that bears on it as core/intake/tables/places.tsv names
// it.
struct NamedPlace {
    std::string space;
    std::vector<std::string> clues;
};

// A thing where it is named, where the rules put it and the places it may be in, that of the rules
// first; none where it stays there whatever the clues say.
struct NamedWhereabouts {
    std::string object;
    std::vector<std::string> ruled;
    std::vector<NamedPlace> places;
};

// A sentence, and all that bears on whether a choice is left open in it.
struct NamedChoice {
    std::string space;
    std::string sentence;
    std::vector<std::string> clues;  // as core/intake/tables/openings.tsv names them
};

struct Reading {
    Draft draft;
    std::vector<ExplainedSentence> explained;   // empty unless asked for
    std::vector<NamedThing> things;             // likewise, whether made items or not
    std::vector<NamedWhereabouts> whereabouts;  // likewise
    std::vector<NamedChoice> choices;           // likewise, whether made alternates or not
};

// Notes without any work in them give an empty draft.
// Errors: the notes are not text (binary data), are longer than `mostBytes`, or are in another
// language than English.
[[nodiscard]] model::Result<Reading> explainNotes(std::string_view notes,
                                                  const ReadOptions& options = {});
[[nodiscard]] model::Result<Draft> readNotes(std::string_view notes,
                                             const ReadOptions& options = {});

}  // namespace ledgerboard::intake
