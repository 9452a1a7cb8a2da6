#include "core/intake/notes/fact_sums.h"

#include <algorithm>
#include <array>

namespace ledgerboard::intake {

namespace {

constexpr std::int64_t kThousand = 1'000'000;  // thousandths

// "412 Elm Street", "number sixteen"
bool isAddress(const Sentence& sentence, const Amount& amount) {
    const auto isWay = [&](std::size_t at) {
        return isOneOf(lower(sentence, at), {"street", "st", "road", "rd", "lane", "ln", "avenue",
                                             "ave", "drive", "court", "close", "way", "terrace"});
    };
    const bool name = amount.end < sentence.tokens.size() && sentence.tokens[amount.end].capital;
    return (name && (isWay(amount.end) || isWay(amount.end + 1))) ||
           (amount.begin > 0 && lower(sentence, amount.begin - 1) == "number");
}

// Whether the word at `at` says that somebody else wants or would pay the sum behind it.
bool tellsAnothersPrice(const Sentence& sentence, std::size_t at) {
    const std::string_view word = lower(sentence, at);
    const std::string_view who = at > 0 ? lower(sentence, at - 1) : "";
    if (isOneOf(word, {"asking", "listed", "asks"})) {
        return true;
    }
    // "You'd pay eight hundred for it in the city"
    if (word == "pay") {
        return isOneOf(who, {"you'd", "they'd", "would"});
    }
    // "The neighbours wanted 260 for theirs"
    if (word == "wanted" && at > 0) {
        return !isOneOf(who, {"i", "we", "you", "", "always"});
    }
    // "Ask 289", "asked 142"
    const bool opens = at == 0 || sentence.tokens[at - 1].kind == TokenKind::Mark;
    if (opens && isOneOf(word, {"ask", "asked"})) {
        return true;
    }
    return isOneOf(word, {"want", "wants", "asked"}) &&
           isOneOf(who, {"they", "he", "she", "seller", "sellers", "bank", "owner", "vendor",
                         "vendors", "was", "were"});
}

}  // namespace

bool isAsked(const Sentence& sentence, const Amount& amount) {
    constexpr std::size_t kNear = 3;
    for (std::size_t i = amount.begin > kNear ? amount.begin - kNear : 0; i < amount.begin; ++i) {
        if (tellsAnothersPrice(sentence, i)) {
            return true;
        }
    }
    return false;
}

bool wasOnlyOffered(const Sentence& sentence, const Amount& amount) {
    const std::string_view next = lower(sentence, amount.end);
    if (next != "was" && next != "is") {
        return false;
    }
    for (std::size_t i = amount.end + 1; i < amount.end + 6; ++i) {
        const std::string_view word = lower(sentence, i);
        if (word == "offer" || word == "ask" || word == "asking" || word == "list" ||
            word == "bid" || word == "listing") {
            return true;
        }
    }
    return false;
}

bool countsThings(const Sentence& sentence, const Amount& amount) {
    const std::string_view next = lower(sentence, amount.end);
    return amount.kind == AmountKind::Plain && next.size() > 4 && next.ends_with('s') &&
           !next.ends_with("'s") &&
           !isOneOf(next, {"bucks", "dollars", "pounds", "euros", "thousands", "always", "perhaps",
                           "minus", "includes", "covers", "leaves", "makes", "sounds", "plus",
                           "less", "does", "gets"});
}

bool isOfOthers(const Sentence& sentence) {
    return std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
        return isOneOf(token.plain,
                       {"comps", "comp", "comparables", "nearby", "neighbours", "neighbors"});
    });
}

bool isOfOtherHouse(const Sentence& sentence, const Amount& amount) {
    struct Pair {
        std::string_view first;
        std::string_view second;
    };

    static constexpr std::array<Pair, 17> kElsewhere = {{{"next", "door"},
                                                         {"one", "on"},
                                                         {"one", "down"},
                                                         {"one", "across"},
                                                         {"doors", "down"},
                                                         {"doors", "along"},
                                                         {"the", "block"},
                                                         {"the", "corner"},
                                                         {"same", "house"},
                                                         {"similar", "houses"},
                                                         {"on", "the"},
                                                         {"down", "the"},
                                                         {"up", "the"},
                                                         {"across", "the"},
                                                         {"other", "half"},
                                                         {"end", "house"},
                                                         {"house", "next"}}};
    // "four hundred for hers"
    if (lower(sentence, amount.end) == "for" &&
        isOneOf(lower(sentence, amount.end + 1), {"hers", "his", "theirs"})) {
        return true;
    }
    bool other = false;
    for (std::size_t i = 0; i < amount.begin; ++i) {
        const std::string_view word = lower(sentence, i);
        const std::string_view next = lower(sentence, i + 1);
        if (isOneOf(word, {"so", "ours", "mine", "i", "we", "but", "this", "says", "thinks"}) ||
            word.starts_with("we'") || word.starts_with("i'")) {
            other = false;
        }
        const bool elsewhere =
            std::any_of(kElsewhere.begin(), kElsewhere.end(), [&](const Pair& pair) {
                // "on the street", "down the road": the place that is gone to.
                const auto way = [&] {
                    return isOneOf(lower(sentence, i + 2),
                                   {"street", "road", "lane", "beach", "gully"});
                };
                // "the one on three": of houses, not "one down"
                const bool house = word != "one" || (i > 0 && lower(sentence, i - 1) == "the");
                return word == pair.first && next == pair.second && house &&
                       (next != "the" || way());
            });
        const bool best = i > 0 && isOneOf(lower(sentence, i - 1), {"best", "nicest", "of"});
        other =
            other || (elsewhere && !best) || isOneOf(word, {"neighbor's", "neighbour's", "theirs"});
    }
    return other;
}

bool isAsItStands(const Sentence& sentence, const Amount& amount) {
    const std::string_view next = lower(sentence, amount.end);
    const std::string_view then = lower(sentence, amount.end + 1);
    const std::string_view last = lower(sentence, amount.end + 2);
    return (next == "as" && (then == "is" || (then == "it" && isOneOf(last, {"is", "sits"})))) ||
           (next == "the" && then == "way" && last == "it");
}

bool isTakenBack(const Sentence& sentence, const Spots& spots, const Amount& amount) {
    std::size_t at = amount.end;
    while (markIs(sentence, at, ',') || markIs(sentence, at, '-') || markIs(sentence, at, '.')) {
        ++at;
    }
    const std::string_view word = lower(sentence, at);
    // "259 > 251,500": come down to.
    const bool arrow = markIs(sentence, at, '>');
    if (!arrow && word != "no" && word != "sorry" && word != "wait" && word != "scratch") {
        return false;
    }
    const bool lie = lower(sentence, at + 5) == "lie" || lower(sentence, at + 4) == "lie";
    const std::size_t far = lie ? 9 : 4;  // "no, I tell a lie, …"
    return std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& next) {
        const std::int64_t left = amount.value < kThousand ? amount.value * 1000 : amount.value;
        const std::int64_t right = next.value < kThousand ? next.value * 1000 : next.value;
        const bool alike = right > left / 10 * 7 && right < left / 10 * 14;
        return next.begin > at && next.begin <= at + far && (alike || !arrow);
    });
}

bool isOfYears(const Sentence& sentence, const Amount& amount) {
    const std::string_view last = sentence.tokens[amount.end - 1].text;
    const bool one = amount.begin > 0 && (lower(sentence, amount.begin - 1) == "a" ||
                                          markIs(sentence, amount.begin - 1, '\''));
    // "18 April"
    const bool day =
        amount.value <= 31'000 && (isMonth(sentence, amount.end) ||
                                   (amount.begin > 0 && isMonth(sentence, amount.begin - 1)));
    // "the low 300s", "in the 420s"
    const bool about = lower(sentence, amount.end) == "s" && sentence.tokens[amount.end].glued;
    return day || about || last.ends_with("ties") ||
           (one && amount.kind == AmountKind::Plain && !amount.paired && amount.value < 100'000);
}

bool isOfOther(const Sentence& sentence, const Amount& amount) {
    if (amount.kind != AmountKind::Plain) {
        return false;
    }
    if (isAddress(sentence, amount)) {
        return true;
    }
    // "2/9/27", "1-25-27", "285/mo"
    const bool day = markIs(sentence, amount.end, '/') && markIs(sentence, amount.end + 2, '/') &&
                     amount.value <= 31'000 && sentence.tokens[amount.end].glued;
    const std::size_t mark = amount.begin == 0 ? 0 : amount.begin - 1;
    const bool dashes =
        markIs(sentence, mark, '-') &&
        (markIs(sentence, amount.end, '-') || (mark > 1 && markIs(sentence, mark - 2, '-')));
    const bool date = amount.begin > 1 && amount.value < 100'000 &&
                      (markIs(sentence, mark, '/') || dashes) &&
                      sentence.tokens[mark - 1].kind == TokenKind::Number &&
                      sentence.tokens[mark - 1].value <= 31'000;
    const bool rate = markIs(sentence, amount.end, '/') &&
                      isOneOf(lower(sentence, amount.end + 1),
                              {"mo", "month", "wk", "week", "yr", "year", "sf", "ft", "m"});
    // "a two hundred": a panel
    const bool sort = amount.begin > 0 && lower(sentence, amount.begin - 1) == "a" &&
                      !amount.paired && amount.value < kThousand;
    return date || day || rate || sort ||
           (isOneOf(lower(sentence, amount.end),
                    {"amp",       "amps", "degrees", "degree",  "deg",     "percent", "volt",
                     "volts",     "watt", "watts",   "mil",     "mm",      "cm",      "per",
                     "btu",       "dom",  "miles",   "acres",   "people",  "bath",    "baths",
                     "bathrooms", "bed",  "beds",    "bedroom", "bedrooms"}) ||
            markIs(sentence, amount.end, '%'));
}

bool isOfArea(const Sentence& sentence, const Spots& spots, const Amount& amount) {
    return amount.kind == AmountKind::Plain &&
           std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& area) {
               const UnitRow* unit = unitOf(area);
               return unit != nullptr && (unit->name == "sq m" || unit->name == "sq ft") &&
                      amount.value > area.value / 5 * 4 && amount.value < area.value / 4 * 5 &&
                      strokesBetween(sentence, area.end, amount.begin) < 4;
           });
}

}  // namespace ledgerboard::intake
