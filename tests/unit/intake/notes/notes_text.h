// Drafts as plain lines, so that a test reads like the notes and the list beside them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/read_notes.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/tables.h"

namespace ledgerboard::intake {

// As they are cut, before anything is made of them.
inline std::vector<std::string> sentencesOf(std::string_view notes) {
    std::vector<std::string> sentences;
    Speller speller(tables().lexicon);
    eachSentence(notes, speller,
                 [&](Sentence& sentence) { sentences.push_back(writtenAs(sentence.tokens)); });
    return sentences;
}

// What the rules make: they are tried here, not the weights.
inline Draft draftOf(std::string_view notes) {
    ReadOptions options;
    options.rulesAlone = true;
    auto draft = readNotes(notes, options);
    return draft.ok() ? draft.value() : Draft{};
}

// What each stage made of them, the weights with the rules.
inline auto explained(std::string_view notes) {
    ReadOptions options;
    options.explain = true;
    return explainNotes(notes, options);
}

// "kitchen: replace sink", in the draft's order.
inline std::vector<std::string> itemsOf(std::string_view notes) {
    std::vector<std::string> items;
    for (const DraftItem& item : draftOf(notes).items) {
        items.push_back(item.space + ": " + item.treatment + " " + item.object);
    }
    return items;
}

// "built 1926", in the draft's order.
inline std::vector<std::string> factsOf(std::string_view notes) {
    std::vector<std::string> facts;
    for (const DraftFact& fact : draftOf(notes).facts) {
        facts.push_back(fact.name + " " + fact.value);
    }
    return facts;
}

}  // namespace ledgerboard::intake
