#include "core/intake/notes/clause_events.h"

#include <algorithm>
#include <array>

#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using Kind = ClauseEvent::Kind;
using Event = ClauseEvent;

class Collector {
  public:
    Collector(const Sentence& sentence, const Spots& spots, std::size_t from)
        : sentence_(sentence), spots_(spots), from_(from) {}

    std::vector<ClauseEvent> run() {
        collect();
        return std::move(events_);
    }

  private:
    void collect() {
        events_.reserve(spots_.objects.size() + spots_.acts.size() + sentence_.tokens.size() / 4);
        for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
            const ObjectSpot& object = spots_.objects[i];
            if (!object.landmark && object.span.begin >= from_) {
                events_.push_back({Kind::Thing, object.span.begin, i});
            }
        }
        for (std::size_t i = 0; i < spots_.acts.size(); ++i) {
            const ActSpot& act = spots_.acts[i];
            const bool none = tables().acts[act.row].weight == 0 &&
                              tables().acts[act.row].treatment == model::Treatment::Add;
            if (act.span.begin >= from_ && (tables().acts[act.row].weight > 0 || none)) {
                events_.push_back({Kind::Act, act.span.begin, i});
            }
        }
        for (std::size_t i = from_; i < sentence_.tokens.size(); ++i) {
            collectJoint(i);
        }
        std::stable_sort(events_.begin(), events_.end(),
                         [](const Event& a, const Event& b) { return a.at < b.at; });
    }

    [[nodiscard]] bool within(std::size_t at) const {
        return std::any_of(spots_.objects.begin(), spots_.objects.end(),
                           [&](const ObjectSpot& object) { return object.span.holds(at); }) ||
               std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                   return act.span.holds(at) || act.tail.holds(at);
               });
    }

    // In shorthand a comma between two entries that each have a thing and what is done to it parts
    // them for good: "carpet new, walls paint, window ok".
    [[nodiscard]] bool entryEnds(std::size_t at) const {
        if (!sentence_.terse) {
            return false;
        }
        const auto parts = [&](std::size_t i) {
            const Token& token = sentence_.tokens[i];
            return token.kind == TokenKind::Mark && (token.mark == ',' || token.mark == ';' ||
                                                     token.mark == '.' || token.mark == ':');
        };
        std::size_t begin = at;
        while (begin > from_ && !parts(begin - 1)) {
            --begin;
        }
        std::size_t end = at + 1;
        while (end < sentence_.tokens.size() && !parts(end)) {
            ++end;
        }
        return isEntry(begin, at) && isEntry(at + 1, end);
    }

    [[nodiscard]] bool isEntry(std::size_t begin, std::size_t end) const {
        const bool thing = std::any_of(
            spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& object) {
                return object.span.begin >= begin && object.span.end <= end && !object.landmark;
            });
        const bool act =
            std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& one) {
                return one.span.begin >= begin && one.span.end <= end &&
                       tables().acts[one.row].weight > 0;
            });
        return thing && act;
    }

    // "tub (S)": a code in brackets says it of the thing before.
    [[nodiscard]] bool bracketsCode(std::size_t open, std::size_t close) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            return act.span.begin == open + 1 && act.span.end == close;
        });
    }

    void collectJoint(std::size_t at) {
        const Token& token = sentence_.tokens[at];
        if (token.kind == TokenKind::Mark) {
            switch (token.mark) {
                case ',':
                    return events_.push_back({entryEnds(at) ? Kind::Stop : Kind::Comma, at, 0});
                case '&':
                case '+':
                    return events_.push_back({Kind::And, at, 0});
                case '/':
                    return events_.push_back({token.glued ? Kind::And : Kind::Stop, at, 0});
                case '-':
                    if (!token.glued) {
                        events_.push_back({Kind::Colon, at, 0});
                    }
                    return;
                case ':':
                    return events_.push_back({Kind::Colon, at, 0});
                case '(':
                    if (at + 2 < sentence_.tokens.size() && isMark(sentence_.tokens[at + 2], ")") &&
                        bracketsCode(at, at + 2)) {
                        return;
                    }
                    return events_.push_back({Kind::Open, at, 0});
                case ')':
                    if (at > 1 && isMark(sentence_.tokens[at - 2], "(") &&
                        bracketsCode(at - 2, at)) {
                        return;
                    }
                    return events_.push_back({Kind::Close, at, 0});
                case ';':
                case '.':
                case '!':
                case '?':
                    return events_.push_back({Kind::Stop, at, 0});
                default:
                    return;
            }
        }
        static const WordId kAnd = tables().id("and");
        static const WordId kOr = tables().id("or");
        static const std::array<WordId, 4> kTurns = {tables().id("so"), tables().id("then"),
                                                     tables().id("but"), tables().id("except")};
        while (cue_ != spots_.cues.end() && cue_->span.begin < at) {
            ++cue_;
        }
        const bool cue = cue_ != spots_.cues.end() && cue_->span.begin == at;
        if (within(at)) {
            return;
        }
        const bool known = token.word != kUnknown;
        if (known && (token.word == kAnd || token.word == kOr)) {
            events_.push_back({Kind::And, at, 0});
        } else if ((known && std::find(kTurns.begin(), kTurns.end(), token.word) != kTurns.end()) ||
                   (cue && spots_.endOf(Cue::Because, at) > at)) {
            events_.push_back({Kind::Turn, at, 0});
        } else if (cue && isPronoun(at)) {
            events_.push_back({Kind::Pronoun, at, 0});
        }
    }

    // "that" of "that carpet" is none.
    [[nodiscard]] bool isPronoun(std::size_t at) const {
        const std::size_t end = spots_.endOf(Cue::Pronoun, at);
        if (end == at) {
            return false;
        }
        bool points = false;
        for (const std::string_view word :
             {"this", "that", "these", "those", "both", "all", "one"}) {
            points = points || (end == at + 1 && wordIs(sentence_, at, word));
        }
        if (!points) {
            return true;
        }
        for (std::size_t i = end; i < end + 4 && i < sentence_.tokens.size(); ++i) {
            if (sentence_.tokens[i].kind == TokenKind::Mark || spots_.endOf(Cue::Passive, i) > i) {
                return true;
            }
            const bool act = std::any_of(spots_.acts.begin(), spots_.acts.end(),
                                         [&](const ActSpot& one) { return one.span.begin == i; });
            const bool thing =
                std::any_of(spots_.objects.begin(), spots_.objects.end(),
                            [&](const ObjectSpot& one) { return one.span.begin == i; });
            if (act || thing) {
                return act;
            }
        }
        return true;
    }

    const Sentence& sentence_;
    const Spots& spots_;
    std::size_t from_;
    std::vector<CueSpot>::const_iterator cue_ = spots_.cues.begin();  // at or behind the word
    std::vector<ClauseEvent> events_;
};

}  // namespace

std::vector<ClauseEvent> clauseEvents(const Sentence& sentence, const Spots& spots,
                                      std::size_t from) {
    return Collector(sentence, spots, from).run();
}

}  // namespace ledgerboard::intake
