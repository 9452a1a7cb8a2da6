#include "core/intake/notes/facts.h"

#include <algorithm>

#include "core/intake/notes/fact_words.h"

namespace ledgerboard::intake {

bool FactReader::has(const std::string& name) const {
    return std::any_of(facts_.begin(), facts_.end(),
                       [&](const DraftFact& fact) { return fact.name == name; });
}

void FactReader::add(const Sentence& sentence, const std::string& name, const std::string& value,
                     int sure) {
    constexpr std::size_t kMostFacts = 200;
    for (const DraftFact& fact : facts_) {
        if (fact.name == name && fact.value == value) {
            return;
        }
    }
    if (facts_.size() < kMostFacts) {
        facts_.push_back({name, value, {sourceOf(sentence), sentence.line, sure}});
        lastDeal_ = taken_;
    }
}

bool FactReader::take(const Sentence& sentence, const Spots& spots) {
    ++taken_;
    for (const Amount& amount : spots.amounts) {
        if (const int year = yearOf(sentence, amount); year >= 2020 && yearSaid_ == 0) {
            yearSaid_ = year;
        }
    }
    if (spots.has(Cue::Chatter)) {
        // "Built 1951 by the grandfather": whoever built it, the year holds.
        const bool area = taken_ <= 14 && takeArea(sentence, spots);
        return takeYear(sentence, spots) || area;
    }
    // "What did we pay, one fifty one?": the answer counts.
    const std::string opens = lower(sentence, 0);
    const bool asks =
        (opens == "what" || opens == "how") && markIs(sentence, sentence.tokens.size() - 1, '?');
    bool deal = !asks && takeMoney(sentence, spots);
    deal = takeArea(sentence, spots) || deal;
    deal = takeYear(sentence, spots) || deal;
    deal = takeRooms(sentence, spots) || deal;
    deal = takeBegin(sentence, spots) || deal;
    deal = takeTimes(sentence, spots) || deal;
    asked_.clear();
    if (!sentence.tokens.empty() && markIs(sentence, sentence.tokens.size() - 1, '?')) {
        for (const RowSpot& cue : spots.facts) {
            const std::string& fact = tables().facts[cue.row];
            if (fact == "purchase" || fact == "resale" || fact == "budget" || fact == "profit") {
                asked_ = fact;
                break;
            }
        }
        constexpr std::size_t kBriefly = 9;
        if (asked_.empty() && sentence.tokens.size() <= kBriefly) {
            asked_ = roomFact(sentence);
        }
    }
    askedMarket_ = says(sentence, "sit") && markIs(sentence, sentence.tokens.size() - 1, '?');
    return deal;
}

}  // namespace ledgerboard::intake
