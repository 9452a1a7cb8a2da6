#include "core/intake/notes/link_rules.h"

#include <algorithm>
#include <string_view>
#include <vector>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

// By trade: what paint, stain, polish or glaze can go on.
bool canBeRefinished(const ObjectRow& object) {
    static const std::vector<std::string_view> kNever = {
        "electrical", "appliances", "insulation", "landscaping", "pest",
        "survey",     "septic",     "demolition", "glass",       "cleaning"};
    if (isOneOf(object.trade, kNever)) {
        return false;
    }
    if (object.trade == "flooring") {
        return object.name == "wood floor" || object.name == "floor" || object.name == "cork floor";
    }
    if (object.trade == "plumbing") {
        return object.name == "bathtub" || object.name == "sink" || object.name == "tub and shower";
    }
    if (object.trade == "heating") {
        return object.name == "radiators" || object.name == "registers";
    }
    return true;
}

// Tokens that are neither marks nor figures: "18 feet, new quartz" has two.
std::size_t wordsBetween(const Sentence& sentence, const Spots& spots, std::size_t begin,
                         std::size_t end) {
    std::size_t count = 0;
    for (std::size_t i = begin; i < end; ++i) {
        const bool figure =
            std::any_of(spots.amounts.begin(), spots.amounts.end(),
                        [&](const Amount& amount) { return amount.begin <= i && i < amount.end; });
        count += figure || sentence.tokens[i].kind == TokenKind::Mark ? 0 : 1;
    }
    return count;
}

// Words that are no object, treatment, figure or joint.
std::size_t otherWords(const Sentence& sentence, const Spots& spots, std::size_t begin,
                       std::size_t end) {
    std::size_t count = 0;
    const auto in = [](const auto& list, std::size_t at) {
        return std::any_of(list.begin(), list.end(),
                           [&](const auto& one) { return one.span.holds(at); });
    };
    for (std::size_t i = begin; i < end; ++i) {
        const bool figure =
            std::any_of(spots.amounts.begin(), spots.amounts.end(),
                        [&](const Amount& amount) { return amount.begin <= i && i < amount.end; });
        const bool joint = wordIs(sentence, i, "and") || wordIs(sentence, i, "with") ||
                           sentence.tokens[i].kind == TokenKind::Mark;
        const bool known = in(spots.objects, i) || in(spots.acts, i) || figure || joint;
        count += known ? 0 : 1;
    }
    return count;
}

namespace {

// "The swing stays": whether a word that no table knows as a thing is what the clause speaks of.
bool hasUnknownSubject(const Sentence& sentence, const Spots& spots, const ActSpot& act,
                       const std::vector<std::string_view>& before) {
    std::size_t at = act.span.begin;
    while (at > 0 && sentence.tokens[at - 1].kind == TokenKind::Word &&
           (spots.endOf(Cue::Passive, at - 1) == at ||
            tables().looseness(sentence.tokens[at - 1].word) == kStresses)) {
        --at;
    }
    if (at < 2 || sentence.tokens[at - 1].kind != TokenKind::Word) {
        return false;
    }
    const bool known = std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& cue) {
        return cue.span.holds(at - 1) && (cue.cue == Cue::Pronoun || cue.cue == Cue::Small);
    });
    const bool article = wordIs(sentence, at - 2, "the") || wordIs(sentence, at - 2, "my") ||
                         wordIs(sentence, at - 2, "a") || wordIs(sentence, at - 2, "their");
    const bool named = isOneOf(sentence.tokens[at - 1].text, before);
    return article && !known && !named;
}

}  // namespace

// "take down the dead ash": a thing no table knows is not the one spoken of before.
bool namesUnknown(const Sentence& sentence, const Spots& spots, const ActSpot& act,
                  const std::vector<std::string_view>& before) {
    if (tables().acts[act.row].side == Side::Before || act.passive) {
        return hasUnknownSubject(sentence, spots, act, before);
    }
    if (tables().acts[act.row].side != Side::After ||
        tables().acts[act.row].treatment == model::Treatment::Keep) {
        return false;
    }
    std::size_t at = act.span.end;
    bool article = false;
    while (at < sentence.tokens.size() && spots.endOf(Cue::Small, at) > at) {
        article = article || wordIs(sentence, at, "the") || wordIs(sentence, at, "a") ||
                  wordIs(sentence, at, "an") || wordIs(sentence, at, "my") ||
                  wordIs(sentence, at, "their");
        at = spots.endOf(Cue::Small, at);
    }
    // "carry out forty years of jars"
    if (!article && at < sentence.tokens.size() &&
        tables().number(sentence.tokens[at].word).kind != NumberKind::None &&
        wordIs(sentence, at + 2, "of")) {
        article = true;
        at += 3;
    }
    if (!article || at >= sentence.tokens.size() || sentence.tokens[at].kind != TokenKind::Word) {
        return false;
    }
    const bool cue = std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& spot) {
        return spot.span.begin <= at && at < spot.span.end && spot.cue != Cue::Move;
    });
    static const std::vector<WordId> kParts = [] {
        std::vector<WordId> parts;
        for (const std::string_view stem :
             {"whole", "rest", "lot",  "thing",  "crack", "hole",  "piec",   "corner",
              "end",   "side", "top",  "bottom", "gap",   "patch", "spot",   "stain",
              "leak",  "edg",  "part", "place",  "room",  "hous",  "surfac", "section"}) {
            parts.push_back(tables().id(stem));
        }
        return parts;
    }();
    const WordId next = sentence.tokens[at].word;
    return !cue &&
           (next == kUnknown || std::find(kParts.begin(), kParts.end(), next) == kParts.end());
}

}  // namespace ledgerboard::intake
