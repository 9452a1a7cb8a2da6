#include "core/intake/notes/facts.h"

#include <algorithm>

#include "core/intake/notes/fact_words.h"

namespace ledgerboard::intake {

bool FactReader::has(const std::string& name) const {
    return std::any_of(told_.begin(), told_.end(),
                       [&](const ToldFact& told) { return told.fact.name == name; });
}

int FactReader::built() const {
    if (built_ != 0) {
        return built_;
    }
    for (const LooseFigure& figure : loose_) {
        if (figure.of == LooseFigure::Of::Year) {
            return static_cast<int>(figure.value);
        }
    }
    return 0;
}

void FactReader::add(const Sentence& sentence, const std::string& name, const std::string& value,
                     int sure, std::int64_t sum) {
    constexpr std::size_t kMostFacts = 200;
    for (const ToldFact& told : told_) {
        if (told.fact.name == name && told.fact.value == value) {
            return;
        }
    }
    // "And the budget's sixty?" "Sixty-four.": what was only asked.
    const bool answered = !told_.empty() && told_.back().asked && told_.back().fact.name == name &&
                          taken_ > told_.back().at && taken_ <= told_.back().at + 2 &&
                          sum > told_.back().sum / 10 * 7 && sum < told_.back().sum / 10 * 14;
    if (answered) {
        told_.pop_back();
    }
    if (told_.size() < kMostFacts) {
        told_.push_back({{name, value, {sourceOf(sentence), sentence.line, sure}}, sum, taken_});
        told_.back().asked =
            sentence.tokens.size() > 1 && markIs(sentence, sentence.tokens.size() - 1, '?');
        lastDeal_ = taken_;
    }
}

void FactReader::addLoose(const Sentence& sentence, LooseFigure::Of of, std::int64_t value,
                          const std::string& text, int words) {
    constexpr std::size_t kMostLoose = 400;
    constexpr int kSure = 70;
    if (loose_.size() < kMostLoose) {
        loose_.push_back({of,
                          value,
                          text,
                          taken_,
                          words,
                          false,
                          false,
                          {sourceOf(sentence), sentence.line, kSure}});
    }
}

namespace {

// "I gave 312,000 and the neighbours think I'm soft": the speaker's own sum among other talk.
bool saysOwnSum(const Sentence& sentence, const Spots& spots, std::string_view fact) {
    const auto own = [&](std::size_t at) {
        const std::string_view word = lower(sentence, at);
        return word == "i" || word == "we" || word == "you" || word == "i've" || word == "we've";
    };
    return std::any_of(spots.facts.begin(), spots.facts.end(), [&](const RowSpot& cue) {
        return tables().facts[cue.row] == fact && (own(cue.span.begin) || cue.span.begin == 0 ||
                                                   (cue.span.begin > 0 && own(cue.span.begin - 1)));
    });
}

}  // namespace

bool FactReader::take(const Sentence& sentence, const Spots& spots) {
    constexpr std::size_t kNear = 4;
    ++taken_;
    for (const Amount& amount : spots.amounts) {
        // "14 May 2027", "Saturday, 2026" at the top: the year of a day, and not that of a roof.
        bool dated = taken_ <= 3;
        for (std::size_t i = amount.begin > kNear ? amount.begin - kNear : 0; i < amount.begin;
             ++i) {
            dated = dated || isMonth(sentence, i);
        }
        if (const int year = yearOf(sentence, amount); year >= 2020 && dated && yearSaid_ == 0) {
            yearSaid_ = year;
        }
    }
    noteDay(sentence, spots);
    if (spots.has(Cue::Chatter)) {
        // "Built 1951 by the grandfather": whoever built it, the year holds.
        const bool area = taken_ <= 14 && takeArea(sentence, spots);
        const bool money = saysOwnSum(sentence, spots, "budget") ||
                           (taken_ <= 14 && saysOwnSum(sentence, spots, "purchase"));
        // "My agent thinks 340": an opinion, told among the facts.
        const bool opinion = speaksOf(spots, "resale") && (taken_ <= 14 || lastDeal_ + 2 >= taken_);
        const bool sum = (money || opinion) && takeMoney(sentence, spots);
        // "I start on 1 December 2026, my brother or no": among the facts.
        const std::string_view first = lower(sentence, 0);
        const bool among = (first == "i" || first == "we") && lastDeal_ + 1 >= taken_;
        const bool begins = among && takeBegin(sentence, spots);
        const bool times = among && takeTimes(sentence, spots);
        return takeYear(sentence, spots) || area || sum || begins || times;
    }
    // "What did we pay, one fifty one?": the answer counts.
    const std::string_view opens = lower(sentence, 0);
    const bool asks =
        (opens == "what" || opens == "how") && markIs(sentence, sentence.tokens.size() - 1, '?');
    bool deal = !asks && takeMoney(sentence, spots);
    deal = takeArea(sentence, spots) || deal;
    deal = takeYear(sentence, spots) || deal;
    deal = takeRooms(sentence, spots) || deal;
    deal = takeBegin(sentence, spots) || deal;
    deal = takeTimes(sentence, spots) || deal;
    asked_.clear();
    // "We closed." "One thirty-nine."
    constexpr std::size_t kBare = 4;
    const bool question =
        !sentence.tokens.empty() && markIs(sentence, sentence.tokens.size() - 1, '?');
    const bool names =
        !question && sentence.tokens.size() <= kBare && spots.amounts.empty() &&
        spots.objects.empty() && spots.acts.empty() && spots.spaces.empty() &&
        std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
            return isOneOf(token.plain, {"closed", "bought", "paid"});
        });
    if (names || (!sentence.tokens.empty() && markIs(sentence, sentence.tokens.size() - 1, '?'))) {
        for (const RowSpot& cue : spots.facts) {
            const std::string& fact = tables().facts[cue.row];
            if (fact == "purchase" ||
                (!names && (fact == "resale" || fact == "budget" || fact == "profit"))) {
                asked_ = fact;
                break;
            }
        }
        constexpr std::size_t kBriefly = 9;
        if (asked_.empty() && !names && sentence.tokens.size() <= kBriefly) {
            asked_ = roomFact(sentence);
        }
    }
    askedMarket_ = says(sentence, "sit") && markIs(sentence, sentence.tokens.size() - 1, '?');
    return deal;
}

}  // namespace ledgerboard::intake
