#include "core/intake/notes/units.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>

#include "core/intake/notes/characters.h"
#include "core/intake/notes/one_of.h"

namespace ledgerboard::intake {

namespace {

// The next word or figure from `at` on, in small letters; `at` is moved behind it.
std::string nextWord(std::string_view text, std::size_t& at) {
    const auto inWord = [](char c) { return isLetter(c) || isDigit(c); };
    while (at < text.size() && !inWord(text[at])) {
        ++at;
    }
    const std::size_t begin = at;
    while (at < text.size() && inWord(text[at])) {
        ++at;
    }
    std::string word(text.substr(begin, at - begin));
    std::transform(word.begin(), word.end(), word.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return word;
}

// The letter or figure that a flat goes by; empty where the word is none.
std::string nameOf(const std::string& word) {
    static constexpr std::array<std::string_view, 4> kFigures = {"one", "two", "three", "four"};
    const auto figure = std::find(kFigures.begin(), kFigures.end(), word);
    if (figure != kFigures.end()) {
        return std::to_string(figure - kFigures.begin() + 1);
    }
    const bool name = word.size() == 1 &&
                      ((word[0] >= 'a' && word[0] <= 'f') || (word[0] > '0' && word[0] < '7'));
    return name ? word : std::string();
}

// Hands the place of each word of `text` that begins like one of the words looked for.
template <typename Use>
void eachStart(std::string_view text, std::string_view firsts, const Use& use) {
    std::array<bool, 256> looked{};
    for (const char first : firsts) {
        looked[static_cast<unsigned char>(first)] = true;
    }
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (looked[static_cast<unsigned char>(text[i] | 0x20)] &&
            (i == 0 || !isLetter(text[i - 1]))) {
            use(i);
        }
    }
}

// The word or figure that ends before `at`, in small letters; `at` is moved before it. A fraction
// ("1/2", ".5") is passed.
std::string wordBefore(std::string_view text, std::size_t& at) {
    const auto inWord = [](char c) { return isLetter(c) || (c >= '0' && c <= '9'); };
    std::string word;
    for (bool fraction = true; fraction;) {
        while (at > 0 && (text[at - 1] == ' ' || text[at - 1] == '-' || text[at - 1] == '\'')) {
            --at;
        }
        const std::size_t end = at;
        while (at > 0 && inWord(text[at - 1])) {
            --at;
        }
        word.assign(text.substr(at, end - at));
        fraction = end - at == 1 && at > 1 && text[at - 1] == '/' && text[at - 2] == '1';
        at -= fraction ? 2 : 0;
        fraction = fraction || word == "s";  // "kid's"
        // "2.5": the figure before the point
        if (at > 1 && text[at - 1] == '.' && !isLetter(text[at]) && inWord(text[at - 2])) {
            at -= 2;
            word.assign(1, text[at]);
        }
    }
    std::transform(word.begin(), word.end(), word.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return word;
}

// What the name of a bath at `at` tells: "two baths", "hall bath", "primary bath".
void noteBath(std::string_view notes, std::size_t at, Units& units) {
    static constexpr std::array<std::string_view, 8> kMore = {"2",   "3",     "4",    "5",
                                                              "two", "three", "four", "five"};
    static constexpr std::array<std::string_view, 13> kOther = {
        "hall",     "hallway",    "guest",    "family", "kid",   "kids",  "other",
        "upstairs", "downstairs", "basement", "second", "girls", "common"};
    static constexpr std::array<std::string_view, 4> kOwn = {"primary", "master", "her", "owner"};
    std::string word = wordBefore(notes, at);
    if (word == "full") {
        word = wordBefore(notes, at);
    } else if (word == "half") {
        units.halfBath = true;
        // "two and a half baths"
        for (int i = 0; i < 3 && (i == 0 || word == "a" || word == "and"); ++i) {
            word = wordBefore(notes, at);
        }
    }
    const auto is = [&](const auto& words) {
        return std::find(words.begin(), words.end(), word) != words.end();
    };
    units.baths = units.baths || is(kMore) || is(kOther);
    units.ownBath = units.ownBath || is(kOwn);
}

}  // namespace

bool isShortUnit(std::string_view word) {
    return word.size() == 2 && word[0] == 'u' && isDigit(word[1]);
}

bool isUnitWord(std::string_view word) {
    static constexpr std::array<std::string_view, 7> kWords = {"unit",  "apartment", "apt", "flat",
                                                               "suite", "half",      "side"};
    return isOneOf(word, kWords);
}

Units unitsIn(std::string_view notes) {
    static constexpr std::array<std::string_view, 4> kHouses = {"duplex", "triplex", "fourplex",
                                                                "twoflat"};
    static constexpr std::array<std::string_view, 3> kTwos = {"two", "2", "three"};
    Units units;
    std::set<std::string> names;
    eachStart(notes, "uafshdt2be", [&](std::size_t at) {
        const std::size_t begin = at;
        const std::string word = nextWord(notes, at);
        if (word.starts_with("bath")) {
            noteBath(notes, begin, units);
        } else if (word == "ensuite" || (word == "en" && nextWord(notes, at) == "suite")) {
            units.ownBath = true;
        } else if (isOneOf(word, kHouses)) {
            units.stacked = true;
        } else if (isOneOf(word, kTwos)) {
            const std::string next = nextWord(notes, at);
            units.stacked = units.stacked || next == "flat" || next == "family" ||
                            next == "families" || next == "plex";
        } else if (isShortUnit(word)) {
            names.insert(word.substr(1));
        } else if (isUnitWord(word)) {
            const std::string name = nameOf(nextWord(notes, at));
            if (!name.empty()) {
                names.insert(name);
            }
        }
    });
    units.lettered = names.size() > 1;
    units.stacked = units.stacked || units.lettered;
    return units;
}

}  // namespace ledgerboard::intake
