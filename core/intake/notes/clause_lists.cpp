#include "core/intake/notes/clause_lists.h"

#include <algorithm>

#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using Kind = ClauseEvent::Kind;

// How many things stand behind event `next` up to the end of the clause; 0 where anything else is
// said there, or where the treatment cannot be done to one of them.
std::size_t thingsAfter(const ClauseRules& rules, const std::vector<ClauseEvent>& events,
                        std::size_t next, std::size_t act) {
    std::size_t things = 0;
    for (std::size_t i = next + 1; i < events.size(); ++i) {
        const Kind kind = events[i].kind;
        if (kind == Kind::Stop || kind == Kind::Turn) {
            break;
        }
        if (kind == Kind::Act || kind == Kind::Pronoun ||
            (kind == Kind::Thing && !rules.fits(act, events[i].index))) {
            return 0;
        }
        things += kind == Kind::Thing ? 1 : 0;
    }
    return things;
}

bool meansAll(const Token& token) {
    const std::string word = token.kind == TokenKind::Word ? token.plain : std::string();
    return word == "everything" || word == "all";
}

bool markAfter(const ClauseRules& rules, std::size_t act, std::string_view marks) {
    const std::size_t end = rules.spots().acts[act].span.end;
    return end < rules.sentence().tokens.size() && isMark(rules.sentence().tokens[end], marks);
}

}  // namespace

bool listsAll(const ClauseRules& rules, const std::vector<ClauseEvent>& events, std::size_t next,
              std::size_t act) {
    const std::size_t end = rules.spots().acts[act].span.end;
    const bool all = meansAll(rules.sentence().tokens[end - 1]);
    return all && markAfter(rules, act, ",:") && thingsAfter(rules, events, next, act) > 1;
}

bool listsOwn(const ClauseRules& rules, const std::vector<ClauseEvent>& events, std::size_t next,
              std::size_t from, std::size_t act) {
    const Span& span = rules.spots().acts[act].span;
    const bool alone = span.begin == from && span.end == span.begin + 1;
    return alone && rules.row(act).object != kNone &&
           rules.row(act).treatment == model::Treatment::Refinish && markAfter(rules, act, ",:") &&
           thingsAfter(rules, events, next, act) > 0;
}

bool beginsAnew(const ClauseRules& rules, std::size_t before, std::size_t act,
                const std::vector<std::size_t>& things) {
    using model::Treatment;
    if (rules.row(act).object == kNone) {
        return false;
    }
    const Treatment first = rules.row(before).treatment;
    const bool prepares =
        !rules.row(before).fresh &&
        (first == Treatment::Repair || first == Treatment::Refinish || first == Treatment::Clean);
    const bool takes = std::all_of(things.begin(), things.end(), [&](std::size_t thing) {
        const ObjectRow& object = tables().objects[rules.spots().objects[thing].object];
        return canBeRefinished(object) && object.family != "floor" && object.trade != "flooring";
    });
    return !(prepares && takes);
}

bool sumsUp(const ClauseRules& rules, const std::vector<ClauseEvent>& events, std::size_t next,
            std::size_t act) {
    const auto& tokens = rules.sentence().tokens;
    const auto begin = static_cast<std::ptrdiff_t>(rules.spots().acts[act].span.begin);
    const bool all = std::any_of(tokens.begin(), tokens.begin() + begin, meansAll);
    return all && markAfter(rules, act, ",:-") && next + 2 < events.size() &&
           events[next + 2].kind == Kind::Thing;
}

}  // namespace ledgerboard::intake
