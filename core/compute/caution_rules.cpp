#include "core/compute/caution_rules.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace ledgerboard::compute {

namespace {

constexpr std::array kRows = {
#define RULE(key, about, alsoCalled, builtBefore, where, treatments, objects, trades, words, text, \
             source, consequence)                                                                  \
    CautionRow{CautionRule::key, about,      alsoCalled, builtBefore, CautionWhere::where,         \
               treatments,       objects,    trades,     words,       text,                        \
               source,           consequence},
#include "core/compute/cautions.def"
};

constexpr std::array kWordLists = {
#define WORD_LIST(name, words) std::string_view(words),
#include "core/compute/cautions.def"
};

using Words = std::vector<std::string>;

bool endsIn(const std::string& word, std::string_view tail) {
    return word.size() > tail.size() + 1 &&
           std::string_view(word).substr(word.size() - tail.size()) == tail;
}

// Without the s of the plural: the words of the table and of people are cut alike.
std::string singular(std::string word) {
    if (endsIn(word, "ches") || endsIn(word, "shes") || endsIn(word, "xes")) {
        word.resize(word.size() - 2);
    } else if (word.size() > 3 && word.back() == 's' && !endsIn(word, "ss")) {
        word.pop_back();
    }
    return word;
}

// Small letters, singular, cut at whatever is no letter or digit. Letters beyond ASCII stay.
Words wordsOf(std::string_view text) {
    Words out;
    std::string word;
    for (const char c : text) {
        const bool isUpper = c >= 'A' && c <= 'Z';
        const bool isPart = isUpper || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ||
                            static_cast<unsigned char>(c) >= 0x80;
        if (isPart) {
            word += isUpper ? static_cast<char>(c - 'A' + 'a') : c;
        } else if (!word.empty()) {
            out.push_back(singular(std::move(word)));
            word.clear();
        }
    }
    if (!word.empty()) {
        out.push_back(singular(std::move(word)));
    }
    return out;
}

// The parts of "a;b c;!d".
std::vector<std::string_view> partsOf(std::string_view list) {
    std::vector<std::string_view> out;
    while (!list.empty()) {
        const std::size_t end = std::min(list.find(';'), list.size());
        out.push_back(list.substr(0, end));
        list.remove_prefix(std::min(end + 1, list.size()));
    }
    return out;
}

// A list of phrases of the table, ready to be looked for.
struct Phrases {
    std::vector<Words> any;
    std::vector<Words> none;

    explicit Phrases(std::string_view list) {
        for (const std::string_view part : partsOf(list)) {
            auto& to = part.front() == '!' ? none : any;
            to.push_back(wordsOf(part));
        }
    }

    [[nodiscard]] bool isIn(const Words& text) const {
        return hasOneOf(any, text) && !hasOneOf(none, text);
    }

  private:
    static bool hasOneOf(const std::vector<Words>& phrases, const Words& text) {
        return std::any_of(phrases.begin(), phrases.end(), [&](const Words& phrase) {
            return std::search(text.begin(), text.end(), phrase.begin(), phrase.end()) !=
                   text.end();
        });
    }
};

struct RowPhrases {
    Phrases objects;
    Phrases trades;
    Phrases words;
};

const RowPhrases& phrasesOf(CautionRule rule) {
    static const std::vector<RowPhrases> kPhrases = [] {
        std::vector<RowPhrases> out;
        out.reserve(kRows.size());
        for (const CautionRow& row : kRows) {
            out.push_back({Phrases(row.objects), Phrases(row.trades), Phrases(row.words)});
        }
        return out;
    }();
    return kPhrases[static_cast<std::size_t>(rule)];
}

bool hasTreatment(const CautionRow& row, model::Treatment treatment) {
    const auto treatments = partsOf(row.treatments);
    return treatments.empty() || std::find(treatments.begin(), treatments.end(),
                                           model::wordOf(treatment)) != treatments.end();
}

}  // namespace

std::span<const CautionRow> cautionRows() {
    return kRows;
}

const CautionRow& rowOf(CautionRule rule) {
    return kRows[static_cast<std::size_t>(rule)];
}

const CautionRow* cautionNamed(std::string_view about) {
    const std::string name = model::folded(about);
    for (const CautionRow& row : kRows) {
        if (model::folded(row.about) == name) {
            return &row;
        }
    }
    for (const CautionRow& row : kRows) {
        for (const std::string_view other : partsOf(row.alsoCalled)) {
            if (model::folded(other) == name) {
                return &row;
            }
        }
    }
    return nullptr;
}

bool saysOneOf(CautionWords list, std::string_view text) {
    static const std::vector<Phrases> kLists = [] {
        std::vector<Phrases> out;
        out.reserve(kWordLists.size());
        for (const std::string_view words : kWordLists) {
            out.emplace_back(words);
        }
        return out;
    }();
    return kLists[static_cast<std::size_t>(list)].isIn(wordsOf(text));
}

RaisedBy raisedBy(const CautionRow& row, const model::Job& job, const model::Item& item,
                  std::string_view trade) {
    if (item.treatment == model::Treatment::Keep) {
        return RaisedBy::Nothing;
    }
    const RowPhrases& phrases = phrasesOf(row.rule);
    const bool isOldEnough =
        row.builtBefore == 0 || !job.builtYear || *job.builtYear < row.builtBefore;
    if (isOldEnough && hasTreatment(row, item.treatment) &&
        (phrases.objects.isIn(wordsOf(item.object)) || phrases.trades.isIn(wordsOf(trade)))) {
        return RaisedBy::Work;
    }
    const bool byWords =
        phrases.words.isIn(wordsOf(item.hazards)) || phrases.words.isIn(wordsOf(item.condition));
    return byWords ? RaisedBy::Words : RaisedBy::Nothing;
}

}  // namespace ledgerboard::compute
