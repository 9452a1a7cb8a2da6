#include "core/intake/notes/abbreviations.h"

#include <algorithm>

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kLetters = 26;
constexpr std::size_t kShortestName = 4;
constexpr std::size_t kShortest = 3;
constexpr std::size_t kLongest = 8;
constexpr int kNothing = 0;
constexpr int kEnough = 50;  // of 100
constexpr int kAhead = 6;    // of the next best
constexpr int kCommon = 3;   // times in the tables

bool isVowel(char c) {
    return c == 'a' || c == 'e' || c == 'i' || c == 'o' || c == 'u';
}

// The letters without vowels behind the first and without doubled ones.
std::string bonesOf(std::string_view word) {
    std::string kept;
    for (std::size_t i = 0; i < word.size(); ++i) {
        const bool again = i > 0 && word[i] == word[i - 1];
        if (!again && (i == 0 || !isVowel(word[i]))) {
            kept.push_back(word[i]);
        }
    }
    return kept;
}

// A bit for each letter that the word, in small letters, has.
std::uint32_t lettersOf(std::string_view word) {
    std::uint32_t letters = 0;
    for (const char c : word) {
        letters |= std::uint32_t{1} << (c - 'a');
    }
    return letters;
}

bool standsIn(std::string_view part, std::string_view whole) {
    std::size_t at = 0;
    for (const char c : part) {
        at = whole.find(c, at);
        if (at == std::string_view::npos) {
            return false;
        }
        ++at;
    }
    return true;
}

}  // namespace

bool isShortFor(std::string_view shortened, std::string_view name) {
    constexpr std::size_t kFewest = 3;
    return shortened.size() >= kFewest && shortened.size() < name.size() &&
           name.size() <= 3 * shortened.size() && shortened.front() == name.front() &&
           standsIn(shortened, name);
}

void Abbreviations::addName(std::string_view word) {
    names_.resize(kLetters);
    while (!word.empty() && (word.back() == '!' || word.back() == '~')) {
        word.remove_suffix(1);
    }
    const bool letters =
        std::all_of(word.begin(), word.end(), [](char c) { return c >= 'a' && c <= 'z'; });
    if (word.size() < kShortestName || !letters) {
        return;
    }
    std::vector<Name>& names = names_[static_cast<std::size_t>(word.front() - 'a')];
    const std::uint32_t has = lettersOf(word);
    const auto found = std::find_if(names.begin(), names.end(), [&](const Name& name) {
        return name.letters == has && name.word == word;
    });
    if (found == names.end()) {
        names.push_back({std::string(word), bonesOf(word), 1, has});
    } else {
        ++found->times;
    }
}

int Abbreviations::fitOf(std::string_view shortened, std::string_view bones, const Name& name) {
    const std::string& word = name.word;
    if (word.size() <= shortened.size() || word.front() != shortened.front()) {
        return kNothing;
    }
    const auto longer = static_cast<int>(word.size() - shortened.size());
    const bool vowels = std::any_of(shortened.begin() + 1, shortened.end(), isVowel);
    // "chandl", "sprink": the beginning. "lint" and "sat" look like words of their own.
    if (word.starts_with(shortened)) {
        const bool cut = longer > 1 && shortened.size() >= (vowels ? 5U : 4U);
        if (vowels && name.times < kCommon) {
            return kNothing;
        }
        return cut                     ? std::max(60, 92 - 4 * longer)
               : longer > 1 && !vowels ? 75 - 8 * longer
                                       : kNothing;
    }
    if (bones.size() < 3 || !standsIn(shortened, word)) {
        return kNothing;
    }
    // "srnd", "crpt": all but vowels and doubles. With a vowel left, as in "regrt", less surely.
    if (bones == name.bones) {
        return vowels ? 80 : 95;
    }
    // "drwl", "plmr": some consonants dropped, the last one kept or nearly so.
    const auto dropped =
        static_cast<int>(name.bones.size() - std::min(bones.size(), name.bones.size()));
    const bool ends = bones.back() == name.bones.back();
    // "chandl": the beginning without some vowels.
    constexpr std::size_t kBones = 4;
    if (vowels && name.times >= kCommon && bones.size() >= kBones &&
        name.bones.starts_with(bones)) {
        return 70;
    }
    // "walk" and "knees" look like words of their own.
    if (vowels || shortened.size() < 4) {
        return kNothing;
    }
    return 88 - 10 * dropped - (ends ? 0 : 14);
}

std::string Abbreviations::fullWord(std::string_view shortened) const {
    const bool letters = std::all_of(shortened.begin(), shortened.end(),
                                     [](char c) { return c >= 'a' && c <= 'z'; });
    if (!letters || shortened.size() < kShortest || shortened.size() > kLongest || names_.empty()) {
        return {};
    }
    const std::string bones = bonesOf(shortened);
    const std::uint32_t has = lettersOf(shortened);
    const Name* best = nullptr;
    int most = kNothing;
    int next = kNothing;
    for (const Name& name : names_[static_cast<std::size_t>(shortened.front() - 'a')]) {
        const int fit = (has & ~name.letters) != 0 ? kNothing : fitOf(shortened, bones, name);
        if (fit == kNothing) {
            continue;
        }
        const int score = fit + std::min(name.times, 8);
        // Forms of one word, "door" and "doors", are no rivals.
        const bool kin = best != nullptr &&
                         (name.word.starts_with(best->word) || best->word.starts_with(name.word));
        if (score > most) {
            next = kin ? next : most;
            most = score;
            best = &name;
        } else if (!kin) {
            next = std::max(next, score);
        }
    }
    return most >= kEnough && most >= next + kAhead ? best->word : std::string();
}

}  // namespace ledgerboard::intake
