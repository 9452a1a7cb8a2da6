// The part of the reader that shows what each stage made of a sentence.
#include <span>
#include <string>

#include "core/intake/notes/reader.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

using model::Treatment;

namespace {

// All but those that stand everywhere.
std::string cuesIn(const Sentence& sentence, const Spots& spots) {
    std::string cues;
    for (const CueSpot& spot : spots.cues) {
        const bool plain = spot.cue == Cue::Small || spot.cue == Cue::Move ||
                           spot.cue == Cue::Turn || spot.cue == Cue::Landmark ||
                           spot.cue == Cue::Passive;
        if (!plain) {
            cues += (cues.empty() ? "" : ", ") + std::string(cueName(spot.cue)) + " (" +
                    writtenAs(std::span(sentence.tokens)
                                  .subspan(spot.span.begin, spot.span.end - spot.span.begin)) +
                    ")";
        }
    }
    return cues;
}

}  // namespace

void Reader::explain(const Sentence& sentence, const Spots& spots, const Placed& placed,
                     const Linked& linked, std::size_t foundBefore) {
    ExplainedSentence told;
    told.line = sentence.line;
    told.sentence = sourceOf(sentence);
    const auto words = [&](const Span& span) {
        return writtenAs(std::span(sentence.tokens).subspan(span.begin, span.end - span.begin));
    };
    std::string where;
    for (const std::string& key : walk_.current()) {
        where += (where.empty() ? "" : ", ") + key;
    }
    for (const Placing& part : placed.parts) {
        where += "; here";
        for (const std::string& key : part.keys) {
            where += " " + key + ",";
        }
    }
    told.stages.push_back({"where", where});
    std::string objects;
    for (const ObjectSpot& spot : spots.objects) {
        objects += (objects.empty() ? "" : ", ") + tables().objects[spot.object].name + " (" +
                   words(spot.span) + (spot.landmark ? ", only a landmark" : "") + ")";
    }
    told.stages.push_back({"objects", objects});
    std::string acts;
    for (const ActSpot& spot : spots.acts) {
        const ActRow& row = tables().acts[spot.row];
        acts +=
            (acts.empty() ? "" : ", ") +
            std::string(
                row.fresh ? "new"
                          : model::wordsOf<Treatment>()[static_cast<std::size_t>(row.treatment)]) +
            " (" + row.phrase + (spot.negated ? ", negated" : "") + ")";
    }
    told.stages.push_back({"treatments", acts});
    if (!owner_.here.empty()) {
        std::string own;
        for (const std::size_t used : owner_.here) {
            own += (own.empty() ? "" : ", ") + saidOf(owner_.words.all()[used]);
        }
        told.stages.push_back({"owner's words", own});
    }
    told.stages.push_back({"cues", cuesIn(sentence, spots)});
    std::string amounts;
    for (const Amount& amount : spots.amounts) {
        amounts += (amounts.empty() ? "" : ", ") + words({amount.begin, amount.end});
    }
    told.stages.push_back({"amounts", amounts});
    std::string links;
    for (const Said& said : linked.said) {
        links += (links.empty() ? "" : ", ") + tables().acts[spots.acts[said.act].row].phrase +
                 " > " + tables().objects[said.object].name;
    }
    told.stages.push_back({"links", links});
    if (choice_.chance > 0) {
        told.stages.push_back({"choice open", std::to_string(choice_.chance) + " %"});
    }
    std::string items;
    for (std::size_t i = foundBefore; i < found_.size(); ++i) {
        items += (items.empty() ? "" : ", ") + found_[i].place + ": " +
                 std::string(
                     model::wordsOf<Treatment>()[static_cast<std::size_t>(found_[i].treatment)]) +
                 " " + tables().objects[found_[i].object].name;
    }
    told.stages.push_back({"items", items});
    reading_.explained.push_back(std::move(told));
}

}  // namespace ledgerboard::intake
