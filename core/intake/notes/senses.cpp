#include "core/intake/notes/senses.h"

#include <algorithm>
#include <array>
#include <deque>

#include "core/intake/notes/number_table.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"
#include "core/intake/tables/embedded.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kLongest = 6;  // words
constexpr std::size_t kDenies = 3;   // words before

class Senses {
  public:
    Senses() {
        std::string_view text = embeddedTable("senses");
        Speller speller(tables().lexicon);
        while (!text.empty()) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            const std::string_view row = text.substr(0, end);
            text.remove_prefix(std::min(end + 1, text.size()));
            const std::size_t tab = row.find('\t');
            if (row.empty() || row.front() == '#' || tab == std::string_view::npos) {
                continue;
            }
            const std::string& name = names_.emplace_back(row.substr(0, tab));
            const std::string& denied = names_.emplace_back("not-" + name);
            words_.push_back({ClueWords(name), ClueWords(denied)});
            addWords(row.substr(tab + 1), static_cast<std::uint8_t>(words_.size() - 1), speller);
        }
    }

    // The senses of a phrase, empty where it only begins a saying; nullptr where it doesn't.
    [[nodiscard]] const std::vector<std::uint8_t>* of(std::uint64_t phrase) const {
        const std::uint32_t at = byPhrase_.indexOf(phrase);
        return at == kNoRow ? nullptr : &byPhrase_.row(at);
    }

    [[nodiscard]] const ClueWords& words(std::uint8_t sense, bool denied) const {
        return words_[sense][denied ? 1 : 0];
    }

    [[nodiscard]] std::uint8_t named(std::string_view name) const {
        const auto at = std::find_if(words_.begin(), words_.end(),
                                     [&](const auto& words) { return words[0].text() == name; });
        return static_cast<std::uint8_t>(at - words_.begin());
    }

  private:
    static constexpr std::uint32_t kNoRow = NumberTable<std::vector<std::uint8_t>>::kNoRow;

    void addWords(std::string_view words, std::uint8_t sense, Speller& speller) {
        while (!words.empty()) {
            const std::size_t end = std::min(words.find(';'), words.size());
            std::uint64_t phrase = 0;
            std::vector<Token> tokens;
            cutTokens(words.substr(0, end), 0, speller, tables().lexicon, tokens);
            std::string_view before;
            for (const Token& token : tokens) {
                if (token.kind == TokenKind::Mark || token.text.data() == before.data()) {
                    continue;
                }
                before = token.text;
                for (const std::string& stem : speller.stemsOf(token.text)) {
                    phrase = ClueWords(stem).after(phrase);
                    byPhrase_.add(phrase);
                }
            }
            std::vector<std::uint8_t>& senses = byPhrase_.row(byPhrase_.add(phrase).first);
            if (std::find(senses.begin(), senses.end(), sense) == senses.end()) {
                senses.push_back(sense);
            }
            words.remove_prefix(std::min(end + 1, words.size()));
        }
    }

    std::deque<std::string> names_;
    std::vector<std::array<ClueWords, 2>> words_;      // by sense: its name, and where it is denied
    NumberTable<std::vector<std::uint8_t>> byPhrase_;  // by its stems
};

const Senses& senses() {
    static const Senses kSenses;
    return kSenses;
}

}  // namespace

const ClueWords& senseWords(std::uint8_t sense, bool denied) {
    return senses().words(sense, denied);
}

std::vector<std::uint8_t> sensesNamed(std::initializer_list<std::string_view> names) {
    std::vector<std::uint8_t> all;
    for (const std::string_view name : names) {
        all.push_back(senses().named(name));
    }
    return all;
}

std::vector<SenseSpot> sensesIn(std::span<const ClueWords* const> stems) {
    std::vector<SenseSpot> spots;
    static const std::uint8_t kNot = senses().named("not");
    std::size_t next = 0;  // past the saying
    for (std::size_t i = 0; i < stems.size(); i = next) {
        next = i + 1;
        std::uint64_t phrase = 0;
        const std::size_t first = spots.size();
        for (std::size_t k = i; k < stems.size() && k < i + kLongest; ++k) {
            phrase = stems[k]->after(phrase);
            const std::vector<std::uint8_t>* found = senses().of(phrase);
            if (found == nullptr) {
                break;
            }
            if (found->empty()) {
                continue;
            }
            spots.resize(first);  // the longest saying alone
            next = k + 1;
            for (const std::uint8_t sense : *found) {
                spots.push_back({i, k + 1, sense, false});
            }
        }
        for (std::size_t s = first; s < spots.size(); ++s) {
            for (std::size_t n = 0; n < first; ++n) {
                spots[s].denied =
                    spots[s].denied || (spots[n].sense == kNot && spots[n].end + kDenies > i &&
                                        spots[n].end <= i && spots[s].sense != kNot);
            }
        }
    }
    return spots;
}

}  // namespace ledgerboard::intake
