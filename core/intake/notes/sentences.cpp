#include "core/intake/notes/sentences.h"

#include <algorithm>
#include <array>

#include "core/intake/notes/tables.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kLongestSource = 400;
// A sentence longer than this is parted where talk turns.
constexpr std::size_t kLongSentence = 28;
constexpr std::size_t kLeastPart = 9;
constexpr std::size_t kBreathless = 22;

constexpr std::array<std::string_view, 14> kShortForms = {
    "sq", "ft", "approx", "mr", "mrs", "st", "vs", "lin", "yd", "oz", "dr", "e.g", "i.e", "etc"};

bool isMark(const Token& token, char mark) {
    return token.kind == TokenKind::Mark && token.mark == mark;
}

bool isShort(const Token& token) {
    if (token.kind != TokenKind::Word) {
        return false;
    }
    const std::string word = plainWord(token.text);
    if (std::find(kShortForms.begin(), kShortForms.end(), word) != kShortForms.end()) {
        return true;
    }
    const std::string* meaning = tables().lexicon.respelling(word);
    return meaning != nullptr && word.size() <= 5 && meaning->size() > word.size() + 1 &&
           word.find('\'') == std::string::npos;
}

// Does a sentence end with token `at`?
bool endsAt(const std::vector<Token>& tokens, std::size_t at) {
    if (isMark(tokens[at], '?') || isMark(tokens[at], '!')) {
        return at + 1 == tokens.size() || !isMark(tokens[at + 1], tokens[at].mark);
    }
    if (!isMark(tokens[at], '.')) {
        return false;
    }
    if (at + 1 == tokens.size()) {
        return true;
    }
    const Token& next = tokens[at + 1];
    if (next.glued && next.line == tokens[at].line) {
        return next.kind == TokenKind::Mark && next.mark == '"';
    }
    return at == 0 || !isShort(tokens[at - 1]) || next.capital;
}

bool turnsAt(const std::vector<Token>& tokens, std::size_t at) {
    std::uint32_t node = 0;
    for (std::size_t i = at; i < tokens.size() && i < at + 3; ++i) {
        node = tokens[i].word == kUnknown ? 0 : tables().phrases.step(node, tokens[i].word);
        if (node == 0) {
            return false;
        }
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (meaning.from == From::Cue && static_cast<Cue>(meaning.row) == Cue::Split) {
                return true;
            }
        }
    }
    return false;
}

class Cutter {
  public:
    Cutter(Speller& speller, const std::function<void(Sentence&)>& use)
        : speller_(speller), use_(use) {}

    void add(const NoteLine& line) {
        if (line.opens) {
            flush();
            first_ = line;
        }
        ++linesInBlock_;
        cutTokens(line.text, line.number, speller_, tables().lexicon, block_);
        // An endless line or paragraph is worked off in pieces, so that memory stays bounded.
        if (block_.size() > 4 * kMostTokens) {
            cutBlock(false);
        }
    }

    void flush() {
        cutBlock(true);
        linesInBlock_ = 0;
        pieces_ = 0;
    }

  private:
    void cutBlock(bool all) {
        std::size_t begin = 0;
        std::size_t sinceMark = 0;
        for (std::size_t i = 0; i < block_.size(); ++i) {
            const bool mark = block_[i].kind == TokenKind::Mark;
            sinceMark = mark ? 0 : sinceMark + 1;
            const std::size_t length = i + 1 - begin;
            const bool ends = endsAt(block_, i);
            bool parts = length >= kMostTokens;
            if (!ends && !parts && i + 1 < block_.size() && length >= kLeastPart) {
                const bool afterComma = isMark(block_[i], ',') && restOf(i) > kLeastPart &&
                                        length + restOf(i) > kLongSentence;
                parts = (sinceMark >= kBreathless || afterComma) && turnsAt(block_, i + 1);
            }
            if (ends || parts) {
                emit(begin, i + 1, all && i + 1 == block_.size());
                begin = i + 1;
            }
        }
        if (all) {
            emit(begin, block_.size(), true);
            block_.clear();
        } else {
            block_.erase(block_.begin(), block_.begin() + static_cast<std::ptrdiff_t>(begin));
        }
    }

    // How many tokens are left until the sentence ends by itself, counted up to 40.
    [[nodiscard]] std::size_t restOf(std::size_t at) const {
        std::size_t count = 0;
        for (std::size_t i = at + 1; i < block_.size() && count < 40; ++i, ++count) {
            if (endsAt(block_, i)) {
                break;
            }
        }
        return count;
    }

    void emit(std::size_t begin, std::size_t end, bool last) {
        if (begin >= end) {
            return;
        }
        Sentence sentence;
        sentence.tokens.assign(block_.begin() + static_cast<std::ptrdiff_t>(begin),
                               block_.begin() + static_cast<std::ptrdiff_t>(end));
        sentence.line = sentence.tokens.front().line;
        sentence.indent = first_.indent;
        sentence.opensLine = pieces_ == 0;
        sentence.alone = pieces_ == 0 && last && linesInBlock_ == 1;
        sentence.heading = first_.heading;
        sentence.bullet = first_.bullet;
        sentence.spoken = first_.spoken && pieces_ == 0;
        ++pieces_;
        use_(sentence);
    }

    Speller& speller_;
    const std::function<void(Sentence&)>& use_;
    std::vector<Token> block_;
    NoteLine first_;
    int linesInBlock_ = 0;
    int pieces_ = 0;
};

}  // namespace

void eachSentence(std::string_view notes, Speller& speller,
                  const std::function<void(Sentence&)>& use) {
    Cutter cutter(speller, use);
    for (const NoteLine& line : noteLines(notes)) {
        cutter.add(line);
    }
    cutter.flush();
}

std::string writtenAs(std::span<const Token> tokens) {
    std::string text;
    const char* last = nullptr;
    for (const Token& token : tokens) {
        if (token.text.data() == last) {
            continue;  // one of the several words that a short form stands for
        }
        last = token.text.data();
        if (text.size() + token.text.size() > kLongestSource) {
            break;
        }
        if (!text.empty() && !token.glued) {
            text.push_back(' ');
        }
        text.append(token.text);
    }
    return text;
}

std::string sourceOf(const Sentence& sentence) {
    return writtenAs(sentence.whole.empty() ? sentence.tokens : sentence.whole);
}

}  // namespace ledgerboard::intake
