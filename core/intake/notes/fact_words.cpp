#include "core/intake/notes/fact_words.h"

#include <algorithm>

#include "core/model/quantity.h"

namespace ledgerboard::intake {

bool markIs(const Sentence& sentence, std::size_t at, char mark) {
    return at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Mark &&
           sentence.tokens[at].mark == mark;
}

double strokesBetween(const Sentence& sentence, std::size_t begin, std::size_t end) {
    double cost = 0;
    for (std::size_t i = begin; i < end && i < sentence.tokens.size(); ++i) {
        cost += markIs(sentence, i, '/') || markIs(sentence, i, ';') || markIs(sentence, i, '.')
                    ? 3.0
                    : 0.0;
    }
    return cost;
}

const UnitRow* unitOf(const Amount& amount) {
    return amount.unit == kNone ? nullptr : &tables().units[amount.unit];
}

// A year of building or of our day that begins at `at`.
int yearOf(const Sentence& sentence, const Amount& amount) {
    const std::int64_t year = amount.value / 1000;
    // "1,880" is no year.
    const bool comma = amount.begin < sentence.tokens.size() &&
                       sentence.tokens[amount.begin].text.find(',') != std::string_view::npos;
    const bool bare = amount.kind == AmountKind::Plain && amount.value % 1000 == 0 && !comma;
    return bare && year >= 1780 && year <= 2060 ? static_cast<int>(year) : 0;
}

bool says(const Sentence& sentence, std::string_view word) {
    const WordId id = tables().id(word);
    return id != kUnknown && std::any_of(sentence.tokens.begin(), sentence.tokens.end(),
                                         [&](const Token& token) { return token.word == id; });
}

int wordsBesideFigures(const Sentence& sentence, const Spots& spots) {
    constexpr int kMany = 99;
    if (spots.amounts.empty() || !spots.objects.empty() || !spots.acts.empty()) {
        return kMany;
    }
    int words = 0;
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const bool figure =
            std::any_of(spots.amounts.begin(), spots.amounts.end(),
                        [&](const Amount& amount) { return amount.begin <= i && i < amount.end; });
        words += sentence.tokens[i].kind == TokenKind::Word && !figure ? 1 : 0;
    }
    return words;
}

bool tellsFigures(const Sentence& sentence, const Spots& spots) {
    constexpr int kMostWords = 6;
    return wordsBesideFigures(sentence, spots) <= kMostWords;
}

bool tellsWork(const Sentence& sentence, const Spots& spots) {
    return std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        const bool ofDeal =
            std::any_of(spots.facts.begin(), spots.facts.end(),
                        [&](const RowSpot& fact) { return fact.span.overlaps(act.span); });
        const bool where = spots.objects.empty() && act.span.end == act.span.begin + 1 &&
                           isOneOf(lower(sentence, act.span.begin), {"up", "down"});
        return !ofDeal && !where;
    });
}

bool speaksOf(const Spots& spots, std::string_view fact) {
    return std::any_of(spots.facts.begin(), spots.facts.end(),
                       [&](const RowSpot& spot) { return tables().facts[spot.row] == fact; });
}

std::size_t afterLastWord(const Sentence& sentence) {
    std::size_t found = sentence.tokens.size();
    for (std::size_t i = 0; i + 1 < sentence.tokens.size(); ++i) {
        const std::string_view word = lower(sentence, i);
        const std::string_view next = lower(sentence, i + 1);
        const bool two = ((word == "call" || word == "make") && (next == "it" || next == "that")) ||
                         (word == "going" && next == "with") || (word == "agree" && next == "on") ||
                         (word == "agreed" && next == "on") || (word == "settle" && next == "on") ||
                         (word == "but" && next == "say");
        const bool put =
            word == "put" && tables().number(sentence.tokens[i + 1].word).kind != NumberKind::None;
        found = two ? i + 2 : put ? i + 1 : found;
    }
    return found;
}

std::string countText(std::int64_t thousandths) {
    return model::Quantity::fromThousandths(thousandths).toString();
}

}  // namespace ledgerboard::intake
