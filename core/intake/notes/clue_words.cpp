#include "core/intake/notes/clue_words.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <deque>

namespace ledgerboard::intake {

namespace {

constexpr std::uint64_t kSpread = 0x9E3779B97F4A7C15ULL;

// Spreads each of two numbers over all bits (Fibonacci hashing). What is made of it lives no longer
// than the program.
std::uint64_t folded(std::uint64_t key, std::uint64_t next) {
    key = (key ^ next) * kSpread;
    return key ^ (key >> 29U);
}

template <class Piece>
std::uint64_t pieceAt(const char* from) {
    Piece piece = 0;
    std::memcpy(&piece, from, sizeof piece);
    return piece;
}

// Eight bytes at a time; the last piece may overlap the one before it.
std::uint64_t keyOfWord(std::string_view word) {
    const std::size_t size = word.size();
    const char* at = word.data();
    if (size >= sizeof(std::uint64_t)) {
        const char* last = at + size - sizeof(std::uint64_t);
        std::uint64_t key = size;
        for (; at < last; at += sizeof(std::uint64_t)) {
            key = folded(key, pieceAt<std::uint64_t>(at));
        }
        return folded(key, pieceAt<std::uint64_t>(last));
    }
    if (size >= sizeof(std::uint32_t)) {
        const std::uint64_t last = pieceAt<std::uint32_t>(at + size - sizeof(std::uint32_t));
        return folded(size, pieceAt<std::uint32_t>(at) | last << 32U);
    }
    const auto byte = [&](std::size_t i) {
        return std::uint64_t{static_cast<unsigned char>(word[i])} << (8 * i);
    };
    return folded(size, size == 0   ? 0
                        : size == 1 ? byte(0)
                        : size == 2 ? byte(0) | byte(1)
                                    : byte(0) | byte(1) | byte(2));
}

// To what the thing belongs, and whether it stands indoors.
std::string_view homeOf(const ObjectRow& object) {
    constexpr std::array<std::array<std::string_view, 3>, 8> kHomes = {
        {{"any in", "any any", "any out"},
         {"room in", "room any", "room out"},
         {"stairs in", "stairs any", "stairs out"},
         {"outside in", "outside any", "outside out"},
         {"house in", "house any", "house out"},
         {"deck in", "deck any", "deck out"},
         {"garage in", "garage any", "garage out"},
         {"self in", "self any", "self out"}}};
    return kHomes.at(static_cast<std::size_t>(object.home))
        .at(static_cast<std::size_t>(object.place));
}

const std::vector<ClueWords>& knownStems() {
    static const std::vector<ClueWords> kStems = [] {
        const Lexicon& lexicon = tables().lexicon;
        std::vector<ClueWords> stems;
        stems.reserve(lexicon.size());
        for (std::size_t i = 1; i <= lexicon.size(); ++i) {
            stems.emplace_back(lexicon.stem(static_cast<WordId>(i)));
        }
        return stems;
    }();
    return kStems;
}

// Any character may stand as a mark.
const ClueWords& markWords(char mark) {
    constexpr std::size_t kCharacters = 256;
    static const std::string kMarks = [] {
        std::string marks;
        for (std::size_t i = 0; i < kCharacters; ++i) {
            marks += static_cast<char>(i);
        }
        return marks;
    }();
    static const std::vector<ClueWords> kWords = [] {
        std::vector<ClueWords> words;
        for (std::size_t i = 0; i < kCharacters; ++i) {
            words.emplace_back(std::string_view(kMarks).substr(i, 1));
        }
        return words;
    }();
    return kWords[static_cast<unsigned char>(mark)];
}

}  // namespace

// Each word more multiplies the number of those before it, so that words in another order have
// another number, and words that are numbered already are put behind others in one step.
ClueWords::ClueWords(std::string_view words) : text_(words) {
    constexpr std::uint64_t kStep = 0xD1342543DE82EF95ULL;  // any odd number with its bits spread
    while (!words.empty()) {
        const std::size_t end = std::min(words.find(' '), words.size());
        key_ = key_ * kStep + keyOfWord(words.substr(0, end));
        step_ *= kStep;
        words.remove_prefix(std::min(end + 1, words.size()));
    }
}

std::uint64_t keyOfBoth(std::uint64_t one, std::uint64_t other) {
    return folded(one, other);
}

ThingWords::ThingWords(const ObjectRow& object)
    : name(object.name),
      head(std::string_view(object.name).substr(object.name.rfind(' ') + 1)),
      family(object.family),
      trade(object.trade),
      home(homeOf(object)) {}

const ThingWords& thingWords(std::uint32_t object) {
    static const std::vector<ThingWords> kThings(tables().objects.begin(), tables().objects.end());
    return kThings[object];
}

const ClueWords& cueWords(Cue cue) {
    static const std::vector<ClueWords> kCues = [] {
        std::vector<ClueWords> words;
        for (std::size_t i = 0; i < static_cast<std::size_t>(Cue::Count); ++i) {
            words.emplace_back(cueName(static_cast<Cue>(i)));
        }
        return words;
    }();
    return kCues[static_cast<std::size_t>(cue)];
}

const ClueWords& treatmentWords(model::Treatment treatment) {
    static const auto kNames = model::wordsOf<model::Treatment>();
    static const std::vector<ClueWords> kTreatments(kNames.begin(), kNames.end());
    return kTreatments[static_cast<std::size_t>(treatment)];
}

const ClueWords& figureWords(std::size_t figure) {
    constexpr std::size_t kFigures = 64;
    static const std::deque<std::string> kNames = [] {
        std::deque<std::string> names;
        for (std::size_t i = 0; i < kFigures; ++i) {
            names.push_back(std::to_string(i));
        }
        return names;
    }();
    static const std::vector<ClueWords> kWords(kNames.begin(), kNames.end());
    return kWords[std::min(figure, kFigures - 1)];
}

Stems::Stems(const Lexicon& lexicon) : known_(knownStems()), speller_(lexicon) {}

const ClueWords& Stems::of(const Token& token) {
    static const ClueWords kFigure("#");
    if (token.kind == TokenKind::Number) {
        return kFigure;
    }
    if (token.kind == TokenKind::Mark) {
        return markWords(token.mark);
    }
    if (token.word != kUnknown) {
        return known_[token.word - 1];
    }
    const auto [at, fresh] = unknown_.try_emplace(token.plain);
    Stem& stem = at->second;
    if (fresh) {
        stem.text = speller_.stemsOf(token.plain).front();
        stem.words = ClueWords(stem.text);
    }
    return stem.words;
}

}  // namespace ledgerboard::intake
