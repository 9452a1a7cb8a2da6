#include "core/intake/notes/pauses.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "core/intake/notes/weight_table.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kVerbWithin = 6;  // words in which a verb is looked for

const WeightTable& pauses() {
    static const WeightTable kWeights("pauses", {{"least", 0}});
    return kWeights;
}

const WeightTable& stops() {
    static const WeightTable kWeights("stops", {{"least", 0}});
    return kWeights;
}

bool isLikely(const WeightTable& table, const Clues& clues) {
    return table.sumOf(clues.keys()) >= table.setting("least");
}

// The words that clues begin with, and those that they tell with.
struct Words {
    const ClueWords before{"before"};
    const ClueWords after{"after"};
    const ClueWords around{"around"};
    const ClueWords ends{"ends"};
    const ClueWords begins{"begins"};
    const ClueWords within{"within"};
    const ClueWords verb{"verb"};
    const ClueWords then{"then"};
    const ClueWords edge{"^"};
    const ClueWords none{"-"};
    const ClueWords figure{"@figure"};
    const std::array<ClueWords, 9> tables{
        // in the order of From
        ClueWords("@thing"), ClueWords("@act"),       ClueWords("@gap"),
        ClueWords("@space"), ClueWords("@qualifier"), ClueWords("@cue"),
        ClueWords("@unit"),  ClueWords("@fact"),      ClueWords("@caution")};
};

const Words& words() {
    static const Words kWords;
    return kWords;
}

// The longest phrase that begins with a word.
struct Phrase {
    std::size_t end = 0;
    const ClueWords* sort = nullptr;  // of which table it is; of a cue, which
};

const ClueWords& sortOf(const Meaning& meaning) {
    return meaning.from == From::Cue ? cueWords(static_cast<Cue>(meaning.row))
                                     : words().tables.at(static_cast<std::size_t>(meaning.from));
}

bool isFigure(const Token& token) {
    const NumberKind kind = tables().number(token.word).kind;
    return token.kind == TokenKind::Number || (kind != NumberKind::None && kind != NumberKind::Few);
}

// The everyday verbs, by which a clause is known.
bool isVerb(const Token& token) {
    static const std::vector<bool> kVerbs = [] {
        std::vector<bool> verbs(tables().lexicon.size() + 1, false);
        for (const char* stem :
             {"is",    "are",   "was",  "were", "be",    "have", "has",  "had",  "need",
              "want",  "get",   "got",  "go",   "goe",   "do",   "doe",  "did",  "can",
              "will",  "would", "come", "look", "could", "stay", "make", "take", "should",
              "think", "say",   "know", "work", "put",   "leav", "see"}) {
            verbs[tables().id(stem)] = true;
        }
        verbs[kUnknown] = false;
        return verbs;
    }();
    return kVerbs[token.word];
}

// A stretch of talk without its pauses.
class Heard {
  public:
    Heard(std::span<const Token> tokens, Stems& stems) {
        for (std::size_t i = 0; i < tokens.size(); ++i) {
            if (!isPause(tokens[i])) {
                at_.push_back(i);
                tokens_.push_back(&tokens[i]);
                stems_.push_back(&stems.of(tokens[i]));
            }
        }
        findPhrases();
    }

    [[nodiscard]] std::size_t size() const { return at_.size(); }

    // Of all tokens, the one that word `i` is.
    [[nodiscard]] std::size_t at(std::size_t i) const { return at_[i]; }

    // Of the place before word `i`.
    void addClues(std::size_t i, Clues& clues) const {
        addWords(i, clues);
        addPhrases(i, clues);
    }

  private:
    [[nodiscard]] const ClueWords& word(std::size_t i, std::ptrdiff_t off) const {
        const auto at = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(i) + off);
        return at < size() ? *stems_[at] : words().edge;
    }

    void addWords(std::size_t i, Clues& clues) const {
        const Words& to = words();
        const ClueWords& one = word(i, -1);
        const ClueWords& two = word(i, -2);
        const ClueWords& next = word(i, 0);
        const ClueWords& second = word(i, 1);
        clues.add(&to.before, &one);
        clues.add(&to.before, &two, &one);
        clues.add(&to.before, &word(i, -3), &two, &one);
        clues.add(&to.after, &next);
        clues.add(&to.after, &next, &second);
        clues.add(&to.after, &next, &second, &word(i, 2));
        clues.add(&to.around, &one, &next);
        clues.add(&to.around, &two, &one, &next);
        clues.add(&to.around, &one, &next, &second);
        clues.add(&to.around, &two, &to.then, &next);
        clues.add(&to.around, &one, &to.then, &second);
    }

    void addPhrases(std::size_t i, Clues& clues) const {
        const Words& to = words();
        const ClueWords& one = word(i, -1);
        const ClueWords& next = word(i, 0);
        const Phrase& opens = phrases_[i];
        const ClueWords& begins = opens.sort == nullptr ? to.none : *opens.sort;
        const ClueWords& ends = ended_[i] == nullptr ? to.none : *ended_[i];
        const std::size_t rest = opens.sort == nullptr ? i + 1 : opens.end;
        const ClueWords& following = word(rest, 0);
        const ClueWords& later =
            rest < size() && phrases_[rest].sort != nullptr ? *phrases_[rest].sort : to.none;
        clues.add(&to.begins, &begins);
        clues.add(&to.ends, &ends);
        clues.add(&to.around, &ends, &begins);
        clues.add(&to.around, &ends, &next);
        clues.add(&to.around, &one, &begins);
        clues.add(&to.around, &next, &to.then, &later);
        clues.add(&to.around, &ends, &begins, &to.then, &later);
        clues.add(&to.around, &ends, &next, &to.then, &later);
        clues.add(&to.around, &one, &begins, &to.then, &following);
        clues.add(&to.before, &word(i, -2), &ends);
        clues.add(&to.begins, &begins, &to.then, &following);
        clues.add(&to.begins, &begins, &to.then, &later);
        clues.add(&to.begins, &begins, &to.then, &following, &later);
        const ClueWords& ahead = verbAhead(i);
        const ClueWords& behind = verbBehind(i);
        clues.add(&to.verb, &ahead, &begins);
        clues.add(&to.verb, &ahead, &next);
        clues.add(&to.verb, &ahead, &ends);
        clues.add(&to.verb, &behind, &ahead, &begins);
        clues.add(&to.verb, &behind, &to.then, &next);
        if (within_[i] != nullptr) {
            clues.add(&to.within, within_[i]);
        }
    }

    // How many words ahead the next verb stands.
    [[nodiscard]] const ClueWords& verbAhead(std::size_t i) const {
        std::size_t far = 0;
        while (far < kVerbWithin && i + far < size() && !isVerb(*tokens_[i + far])) {
            ++far;
        }
        return figureWords(far);
    }

    [[nodiscard]] const ClueWords& verbBehind(std::size_t i) const {
        std::size_t far = 0;
        while (far < kVerbWithin && far < i && !isVerb(*tokens_[i - 1 - far])) {
            ++far;
        }
        return figureWords(far);
    }

    [[nodiscard]] Phrase phraseAt(std::size_t i) const {
        constexpr std::size_t kLongest = 6;
        if (isFigure(*tokens_[i])) {
            return {i + 1, &words().figure};
        }
        Phrase phrase;
        std::uint32_t node = 0;
        for (std::size_t k = i; k < size() && k < i + kLongest; ++k) {
            const WordId word = tokens_[k]->word;
            node = word == kUnknown ? 0 : tables().phrases.step(node, word);
            if (node == 0) {
                break;
            }
            if (const auto meanings = tables().phrases.at(node); !meanings.empty()) {
                phrase = {k + 1, &sortOf(meanings.front())};
            }
        }
        return phrase;
    }

    void findPhrases() {
        phrases_.resize(size());
        ended_.resize(size() + 1);
        within_.resize(size());
        for (std::size_t i = 0; i < size(); ++i) {
            const Phrase phrase = phraseAt(i);
            phrases_[i] = phrase;
            if (phrase.sort == nullptr) {
                continue;
            }
            // Of two that end together the one that began earlier is the longer one.
            if (ended_[phrase.end] == nullptr) {
                ended_[phrase.end] = phrase.sort;
            }
            std::fill(within_.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                      within_.begin() + static_cast<std::ptrdiff_t>(phrase.end), phrase.sort);
        }
    }

    // By word.
    std::vector<std::size_t> at_;
    std::vector<const Token*> tokens_;
    std::vector<const ClueWords*> stems_;
    std::vector<Phrase> phrases_;
    std::vector<const ClueWords*> ended_;   // the phrase that ends before it
    std::vector<const ClueWords*> within_;  // the phrase that it goes on with
};

Token markAfter(const Token& last, char mark) {
    Token token;
    token.kind = TokenKind::Mark;
    token.mark = mark;
    token.text = last.text.substr(last.text.size());
    token.line = last.line;
    token.glued = true;
    return token;
}

}  // namespace

bool isPause(const Token& token) {
    static constexpr std::string_view kPauses = ".,;:!?-\"()>";
    return token.kind == TokenKind::Mark && kPauses.find(token.mark) != std::string_view::npos;
}

std::vector<Clues> pauseClues(std::span<const Token> tokens, Stems& stems, bool named) {
    const Heard heard(tokens, stems);
    std::vector<Clues> clues(tokens.size(), Clues(named));
    for (std::size_t i = 1; i < heard.size(); ++i) {
        heard.addClues(i, clues[heard.at(i)]);
    }
    return clues;
}

void restorePauses(std::vector<Token>& tokens, std::size_t from, Stems& stems) {
    const Heard heard(tokens, stems);
    std::vector<Token> restored;
    restored.reserve(tokens.size() + tokens.size() / 4);
    Clues clues;
    std::size_t done = 0;
    for (std::size_t i = 1; i < heard.size(); ++i) {
        const std::size_t at = heard.at(i);
        if (at < from || heard.at(i - 1) + 1 != at) {
            continue;
        }
        clues.clear();
        heard.addClues(i, clues);
        const bool stop = isLikely(stops(), clues);
        if (stop || isLikely(pauses(), clues)) {
            restored.insert(restored.end(), tokens.begin() + static_cast<std::ptrdiff_t>(done),
                            tokens.begin() + static_cast<std::ptrdiff_t>(at));
            restored.push_back(markAfter(tokens[at - 1], stop ? '.' : ','));
            done = at;
        }
    }
    restored.insert(restored.end(), tokens.begin() + static_cast<std::ptrdiff_t>(done),
                    tokens.end());
    tokens = std::move(restored);
}

std::vector<std::string> pauseFaults() {
    std::vector<std::string> faults = pauses().faults();
    faults.insert(faults.end(), stops().faults().begin(), stops().faults().end());
    return faults;
}

}  // namespace ledgerboard::intake
