#include "core/intake/notes/units.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>

#include "core/intake/notes/characters.h"

namespace ledgerboard::intake {

namespace {

// The next word or figure from `at` on, in small letters; `at` is moved behind it.
std::string nextWord(std::string_view text, std::size_t& at) {
    const auto inWord = [](char c) { return isLetter(c) || (c >= '0' && c <= '9'); };
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

}  // namespace

bool isUnitWord(std::string_view word) {
    static constexpr std::array<std::string_view, 7> kWords = {"unit",  "apartment", "apt", "flat",
                                                               "suite", "half",      "side"};
    return std::find(kWords.begin(), kWords.end(), word) != kWords.end();
}

Units unitsIn(std::string_view notes) {
    static constexpr std::array<std::string_view, 4> kHouses = {"duplex", "triplex", "fourplex",
                                                                "twoflat"};
    static constexpr std::array<std::string_view, 3> kTwos = {"two", "2", "three"};
    Units units;
    std::set<std::string> names;
    eachStart(notes, "uafshdt2", [&](std::size_t at) {
        const std::string word = nextWord(notes, at);
        if (std::find(kHouses.begin(), kHouses.end(), word) != kHouses.end()) {
            units.stacked = true;
        } else if (std::find(kTwos.begin(), kTwos.end(), word) != kTwos.end()) {
            const std::string next = nextWord(notes, at);
            units.stacked = units.stacked || next == "flat" || next == "family" ||
                            next == "families" || next == "plex";
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
