#include "core/intake/notes/clause_rules.h"

#include <algorithm>
#include <string_view>

#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kAdjectives = 5;  // between "new" and its object
constexpr std::size_t kReach = 11;      // between an order and its object

}  // namespace

const ActRow& ClauseRules::row(std::size_t act) const {
    return tables().acts[spots_.acts[act].row];
}

bool ClauseRules::reaches(std::size_t begin, std::size_t end) const {
    for (std::size_t i = begin; i < end; ++i) {
        if (spots_.endOf(Cue::Locus, i) > i || spots_.endOf(Cue::Landmark, i) > i ||
            wordIs(sentence_, i, "across") || wordIs(sentence_, i, "is")) {
            return true;
        }
    }
    return false;
}

std::size_t ClauseRules::reachOf(std::size_t act) const {
    return row(act).phrase == "new" ? kAdjectives : row(act).fresh ? kAdjectives + 2 : kReach;
}

bool ClauseRules::fits(std::size_t act, std::size_t thing) const {
    return row(act).treatment != model::Treatment::Refinish || row(act).fresh ||
           canBeRefinished(tables().objects[spots_.objects[thing].object]);
}

bool ClauseRules::isDoing(std::size_t act) const {
    const ActSpot& spot = spots_.acts[act];
    const std::string_view last = sentence_.tokens[spot.span.end - 1].text;
    return row(act).side == Side::After && !spot.passive && last.ends_with('s') &&
           !last.ends_with("ss") && spot.span.end == spot.span.begin + 1;
}

bool ClauseRules::wantsPart(std::size_t act) const {
    const ActSpot& spot = spots_.acts[act];
    const std::string_view phrase = row(act).phrase;
    const bool wants = phrase.starts_with("get") || phrase.starts_with("need") ||
                       phrase.starts_with("want") || phrase.starts_with("could use") ||
                       phrase.starts_with("take");
    if (!wants || !row(act).fresh || row(act).side != Side::After || spot.passive) {
        return false;
    }
    for (std::size_t i = spot.span.end; i < spot.span.end + 4 && i < sentence_.tokens.size(); ++i) {
        const Token& token = sentence_.tokens[i];
        if (token.kind != TokenKind::Word || spots_.endOf(Cue::Pronoun, i) > i) {
            return false;
        }
        const auto holds = [&](const auto& list) {
            return std::any_of(list.begin(), list.end(),
                               [&](const auto& one) { return one.span.holds(i); });
        };
        if (token.word == kUnknown ||
            (!holds(spots_.acts) && !holds(spots_.objects) && !holds(spots_.cues))) {
            return true;
        }
    }
    return false;
}

bool ClauseRules::newPart(std::size_t act) const {
    const ActSpot& spot = spots_.acts[act];
    const std::size_t at = spot.span.end;
    if (!row(act).fresh || row(act).side != Side::After || spot.passive ||
        !wordIs(sentence_, at - 1, "new") || at >= sentence_.tokens.size() ||
        sentence_.tokens[at].kind != TokenKind::Word) {
        return false;
    }
    const auto holds = [&](const auto& list, std::size_t i) {
        return std::any_of(list.begin(), list.end(),
                           [&](const auto& one) { return one.span.holds(i); });
    };
    const bool known = holds(spots_.acts, at) || holds(spots_.objects, at) ||
                       holds(spots_.cues, at) || holds(spots_.spaces, at);
    const std::size_t end = at + 1;
    const bool closes = end >= sentence_.tokens.size() ||
                        sentence_.tokens[end].kind == TokenKind::Mark ||
                        wordIs(sentence_, end, "for") || wordIs(sentence_, end, "on") ||
                        wordIs(sentence_, end, "in") || wordIs(sentence_, end, "and");
    return !known && closes;
}

bool ClauseRules::newAllRound(std::size_t act) const {
    const std::size_t end = spots_.acts[act].span.end;
    for (const std::string_view word :
         {"throughout", "all", "there", "here", "everywher", "instead", "pleas"}) {
        if (wordIs(sentence_, end, word)) {
            return true;
        }
    }
    return false;
}

bool ClauseRules::isHad(std::size_t subject, std::size_t thing) const {
    const std::size_t begin = spots_.objects[thing].span.begin;
    const std::size_t from = spots_.objects[subject].span.end;
    for (std::size_t i = from; i < begin && begin - from < kAdjectives + 1; ++i) {
        if (wordIs(sentence_, i, "has") || wordIs(sentence_, i, "have")) {
            return true;
        }
    }
    return false;
}

bool ClauseRules::holdsItsObject(std::size_t act) const {
    const std::size_t end = spots_.acts[act].span.end;
    for (const std::string_view word : {"one", "it", "them", "that", "those", "unit", "set"}) {
        for (std::size_t i = spots_.acts[act].span.begin + 1; i < end; ++i) {
            if (wordIs(sentence_, i, word)) {
                return true;
            }
        }
    }
    return false;
}

bool ClauseRules::isLike(std::size_t first, std::size_t second) const {
    const std::size_t begin = spots_.objects[first].span.end;
    const std::size_t end = spots_.objects[second].span.begin;
    // "The steps down to the water are railroad ties"
    std::size_t is = end;
    while (is > begin && spots_.endOf(Cue::Small, is - 1) == is &&
           !wordIs(sentence_, is - 1, "is")) {
        --is;
    }
    const bool which = is > begin + 1 && wordIs(sentence_, is - 2, "which");
    if (is > begin && wordIs(sentence_, is - 1, "is") && (which || !isBreathless(sentence_))) {
        return true;
    }
    return !isBreathless(sentence_) && begin + 1 < end && !reaches(begin, end);
}

}  // namespace ledgerboard::intake
