#include "core/intake/notes/choice_options.h"

#include <algorithm>
#include <array>
#include <span>
#include <string>
#include <string_view>

#include "core/intake/notes/choices.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

bool isOneOf(const Sentence& sentence, std::size_t at, std::span<const std::string_view> words) {
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return wordIs(sentence, at, word); });
}

// Cuts the phrase that names an option out of what stands on one side of an "or".
class Namer {
  public:
    Namer(const Sentence& sentence, const Spots& spots) : sentence_(sentence), spots_(spots) {}

    // `follows`: an "or" stands before it; `leads`: one stands after it.
    [[nodiscard]] Span nameIn(Span piece, bool follows, bool leads) const {
        Span name = clauseIn(piece, follows, leads);
        dropThing(name);
        dropLead(name);
        dropDoubt(name);
        dropPrice(name);
        dropLead(name);
        constexpr std::size_t kMostWords = 10;
        name.end = std::min(name.end, name.begin + kMostWords);
        return name;
    }

  private:
    [[nodiscard]] bool is(std::size_t at, const std::vector<std::string_view>& words) const {
        return isOneOf(sentence_, at, words);
    }

    [[nodiscard]] bool parts(std::size_t at) const {
        const Token& token = sentence_.tokens[at];
        return isMark(token, ",;:?!.()") || (isMark(token, "-") && !token.glued);
    }

    // How much a run of words says of what may be done.
    [[nodiscard]] int tellingOf(const Span& span) const {
        const auto within = [&](const auto& spot) { return span.holds(spot.span.begin); };
        const bool work = std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const auto& act) {
            return within(act) && tables().acts[act.row].weight > 1;
        });
        const bool stuff = std::any_of(
            spots_.cues.begin(), spots_.cues.end(),
            [&](const CueSpot& cue) { return cue.cue == Cue::Material && within(cue); });
        if (work || stuff) {
            return 3;
        }
        if (std::any_of(spots_.objects.begin(), spots_.objects.end(), within) ||
            std::any_of(spots_.spaces.begin(), spots_.spaces.end(), within)) {
            return 2;
        }
        Span rest = span;
        dropLead(rest);
        dropDoubt(rest);
        dropPrice(rest);
        return rest.begin < rest.end && sentence_.tokens[rest.begin].kind == TokenKind::Word ? 1
                                                                                             : 0;
    }

    // The clause of the piece that tells most: of "paint it, I think, or rip it out" the nearest
    // to the "or".
    [[nodiscard]] Span clauseIn(const Span& piece, bool follows, bool leads) const {
        std::size_t from = piece.begin;
        for (std::size_t i = piece.begin; leads && i < piece.end; ++i) {
            from = wordIs(sentence_, i, "either") ? i + 1 : from;
        }
        const bool first = follows || from > piece.begin;
        Span best{from, piece.end};
        int most = 0;
        for (std::size_t begin = from; begin < piece.end;) {
            std::size_t end = begin;
            while (end < piece.end && !parts(end)) {
                ++end;
            }
            const int telling = tellingOf({begin, end});
            const bool better = leads && !first ? telling >= most : telling > most;
            if (telling > 0 && better) {
                best = {begin, end};
                most = telling;
            }
            if (first && most > 0) {
                break;
            }
            begin = end + 1;
        }
        return best;
    }

    // "The counters in laminate": what the stuff is for is the question.
    void dropThing(Span& name) const {
        for (const CueSpot& cue : spots_.cues) {
            if (cue.cue != Cue::Material || !name.holds(cue.span.begin)) {
                continue;
            }
            for (const ObjectSpot& object : spots_.objects) {
                if (!object.material && name.holds(object.span.begin) &&
                    object.span.end < cue.span.begin) {
                    name.begin = object.span.end;
                }
            }
            return;
        }
    }

    // "Maybe we could", "I'm thinking about".
    void dropLead(Span& name) const {
        static const std::vector<std::string_view> kIdle = {
            "or",       "vs",      "either", "mayb", "perhap",  "we",     "i",     "you", "he",
            "she",      "they",    "could",  "can",  "might",   "may",    "would", "so",  "just",
            "then",     "also",    "and",    "but",  "do",      "should", "will",  "am",  "think",
            "thought",  "about",   "was",    "if",   "whether", "els",    "like",  "to",  "possibl",
            "otherwis", "between", "in",     "is",   "be",      "not"};
        bool dropped = true;
        while (dropped && name.begin < name.end) {
            const std::size_t after = endOfDoubt(name);
            const bool itIs = is(name.begin, {"it", "that", "this"}) &&
                              is(name.begin + 1, {"is", "could", "would", "can", "might", "has"});
            dropped = after > name.begin || itIs || is(name.begin, kIdle) ||
                      sentence_.tokens[name.begin].kind == TokenKind::Mark;
            name.begin = after > name.begin ? after : name.begin + (itIs ? 2U : dropped ? 1U : 0U);
        }
    }

    // The end of what says that something is open at the beginning of the name.
    [[nodiscard]] std::size_t endOfDoubt(const Span& name) const {
        std::size_t end = name.begin;
        for (const CueSpot& cue : spots_.cues) {
            const bool doubt = cue.cue == Cue::Undecided || cue.cue == Cue::Filler ||
                               cue.cue == Cue::Soft || isDoubt(cue);
            if (doubt && cue.span.begin == name.begin && cue.span.end < name.end) {
                end = std::max(end, cue.span.end);
            }
        }
        return end;
    }

    // Whether it says that something is open, and nothing of what.
    [[nodiscard]] bool isDoubt(const CueSpot& cue) const {
        return (cue.cue == Cue::Open && !is(cue.span.begin, {"or", "open"})) ||
               (cue.cue == Cue::Asks && !is(cue.span.begin, {"els", "otherwis"}));
    }

    // "Fix it, I don't know", "a bath if there's money".
    void dropDoubt(Span& name) const {
        for (const CueSpot& cue : spots_.cues) {
            if ((isDoubt(cue) || cue.cue == Cue::Undecided) && cue.span.begin > name.begin &&
                cue.span.begin < name.end) {
                name.end = cue.span.begin;
            }
        }
        dropTail(name);
    }

    // Words that lead to what was cut off.
    void dropTail(Span& name) const {
        static const std::vector<std::string_view> kLeads = {
            "at",  "for", "is",   "are",  "about", "around", "rough", "like",  "mayb", "run",
            "be",  "was", "say",  "call", "come",  "to",     "a",     "the",   "in",   "with",
            "and", "but", "cost", "that", "which", "i",      "we",    "would", "will", "on"};
        const auto leads = [&](std::size_t at) {
            // "as it is", "where they are"
            const bool stands = is(at, {"is", "are"}) && is(at - 1, {"it", "they", "that", "this"});
            return sentence_.tokens[at].kind == TokenKind::Mark || (!stands && is(at, kLeads));
        };
        while (name.end > name.begin + 1 && leads(name.end - 1)) {
            --name.end;
        }
        if (name.end > name.begin && sentence_.tokens[name.end - 1].kind == TokenKind::Mark) {
            --name.end;
        }
    }

    // "Oak at 1,150", "$2,300 buys new doors".
    void dropPrice(Span& name) const {
        for (const Amount& amount : spots_.amounts) {
            const bool price = isPrice(amount) || amount.kind == AmountKind::Time;
            if (!price || amount.begin < name.begin || amount.end > name.end) {
                continue;
            }
            if (amount.begin > name.begin) {
                Span before{name.begin, amount.begin};
                dropTail(before);
                if (before.begin < before.end) {
                    name = before;
                    return;
                }
            }
            if (amount.end < name.end) {
                name.begin = amount.end;
                while (name.begin + 1 < name.end &&
                       is(name.begin, {"buy", "for", "get", "to", "will", "do", "the"})) {
                    ++name.begin;
                }
            }
        }
    }

    const Sentence& sentence_;
    const Spots& spots_;
};

void priceOption(DraftOption& option, const Spots& spots, const Span& piece) {
    for (const Amount& amount : spots.amounts) {
        if (!piece.holds(amount.begin)) {
            continue;
        }
        const bool bare =
            amount.kind == AmountKind::Plain && (amount.value >= 100'000 || amount.paired);
        if ((amount.kind == AmountKind::Money || bare) && !option.cost && !amount.perUnit) {
            option.cost = model::Money::fromMinor(amount.value / 10);
        }
        if (amount.kind == AmountKind::Time && !option.days) {
            const std::string& unit = tables().units[amount.unit].name;
            const std::int64_t days = unit == "week" ? 5 : unit == "month" ? 21 : 1;
            option.days = model::Quantity::fromThousandths(amount.value * days);
        }
    }
}

// "Or", "versus", "otherwise", "if not": another way follows.
bool partsWays(const Sentence& sentence, const Spots& spots, std::size_t at) {
    const bool other = wordIs(sentence, at, "or") && wordIs(sentence, at + 1, "i");
    const bool ifNot = wordIs(sentence, at, "if") && wordIs(sentence, at + 1, "not");
    return joinsWays(sentence, spots, at) || other || ifNot || wordIs(sentence, at, "vs") ||
           wordIs(sentence, at, "otherwis");
}

// "It might be holding up the bathroom": what may be so is no way to choose.
bool supposes(const Sentence& sentence, std::size_t from) {
    static constexpr std::array<std::string_view, 4> kWhat = {"it", "that", "this", "they"};
    static constexpr std::array<std::string_view, 3> kMay = {"might", "may", "could"};
    static constexpr std::array<std::string_view, 2> kBe = {"be", "have"};
    return isOneOf(sentence, from, kWhat) && isOneOf(sentence, from + 1, kMay) &&
           isOneOf(sentence, from + 2, kBe);
}

// "Up for debate between slate and ash".
void cutBetween(const Sentence& sentence, std::vector<std::size_t>& cuts) {
    constexpr std::size_t kFar = 8;
    for (std::size_t i = cuts.front(); i < sentence.tokens.size(); ++i) {
        for (std::size_t j = i + 2; wordIs(sentence, i, "between") && j < i + kFar; ++j) {
            if (wordIs(sentence, j, "and")) {
                cuts = {i + 1, j};
                return;
            }
        }
    }
}

}  // namespace

std::vector<DraftOption> optionsOf(const Sentence& sentence, const Spots& spots, std::size_t from) {
    std::vector<DraftOption> options;
    std::vector<std::size_t> cuts{from};
    for (std::size_t i = from; i < sentence.tokens.size(); ++i) {
        if (partsWays(sentence, spots, i)) {
            cuts.push_back(i);
        }
    }
    if (cuts.size() == 1) {
        if (supposes(sentence, from)) {
            return options;
        }
        cutBetween(sentence, cuts);
    }
    cuts.push_back(sentence.tokens.size());
    const Namer namer(sentence, spots);
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const Span piece{cuts[i], cuts[i + 1]};
        const Span name = namer.nameIn(piece, i > 0, i + 2 < cuts.size());
        if (name.begin < name.end) {
            DraftOption option;
            option.name =
                writtenAs(std::span(sentence.tokens).subspan(name.begin, name.end - name.begin));
            priceOption(option, spots, piece);
            options.push_back(std::move(option));
        }
    }
    return options;
}

}  // namespace ledgerboard::intake
