#include "core/intake/notes/tokens.h"

#include <algorithm>
#include <string>

#include "core/intake/notes/characters.h"

namespace ledgerboard::intake {

namespace {

// Letters of other alphabets too: each byte of theirs is above ASCII.
bool isWordLetter(char c) {
    return isLetter(c) || static_cast<unsigned char>(c) >= 0x80;
}

struct Sign {
    std::string_view bytes;
    char mark;  // 0: a number
    std::int64_t value;
};

// "2nd", and "2ND" in a heading.
bool endsOrdinal(std::string_view tail) {
    return tail == "st" || tail == "nd" || tail == "rd" || tail == "th" || tail == "ST" ||
           tail == "ND" || tail == "RD" || tail == "TH";
}

// Signs outside ASCII that mean something here. The rest are letters.
constexpr Sign kSigns[] = {
    {"\xE2\x80\x93", '-', 0},  {"\xE2\x80\x94", '-', 0}, {"\xE2\x86\x92", '>', 0},
    {"\xC2\xA3", '$', 0},      {"\xE2\x82\xAC", '$', 0}, {"\xC2\xBD", 0, 500},
    {"\xC2\xBC", 0, 250},      {"\xC2\xBE", 0, 750},     {"\xE2\x80\x9C", '"', 0},
    {"\xE2\x80\x9D", '"', 0},  {"\xE2\x80\xA6", '.', 0}, {"\xC3\x97", 'x', 0},
    {"\xE2\x80\xB2", '\'', 0}, {"\xE2\x80\xB3", '"', 0}, {"\xE2\x80\xA2", '*', 0},
    {"\xC2\xA0", ' ', 0},      {"\xC2\xB2", '^', 0},
};

class Cutter {
  public:
    Cutter(std::string_view text, std::int32_t line, Speller& speller, const Lexicon& lexicon,
           std::vector<Token>& tokens)
        : text_(text), line_(line), speller_(speller), lexicon_(lexicon), tokens_(tokens) {}

    void run() {
        while (at_ < text_.size()) {
            const char c = text_[at_];
            if (c == ' ' || c == '\t' || c == '\r' || c == '\n' ||
                static_cast<unsigned char>(c) < 32) {
                ++at_;
                glued_ = false;
                continue;
            }
            if (isDigit(c) || (c == '.' && isDigit(peek(1)) && !glued_)) {
                cutNumber();
            } else if (c == 'R' && !glued_ && isSumInRand()) {
                push(Token{.kind = TokenKind::Mark, .text = text_.substr(at_, 1), .mark = '$'});
                ++at_;
            } else if (!cutSign() && !cutWord()) {
                push(Token{
                    .kind = TokenKind::Mark, .text = text_.substr(at_, 1), .mark = text_[at_]});
                ++at_;
            }
            glued_ = true;
        }
    }

  private:
    [[nodiscard]] char peek(std::size_t ahead) const {
        return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
    }

    void push(Token token) {
        token.line = line_;
        token.glued = glued_;
        if (token.plain.empty()) {
            token.plain = plainWord(token.text);
        }
        tokens_.push_back(std::move(token));
    }

    bool cutSign() {
        if (static_cast<unsigned char>(text_[at_]) < 0x80) {
            return false;
        }
        for (const Sign& sign : kSigns) {
            if (text_.substr(at_, sign.bytes.size()) != sign.bytes) {
                continue;
            }
            if (sign.mark == 0) {
                const bool joins = !tokens_.empty() && tokens_.back().kind == TokenKind::Number &&
                                   tokens_.back().line == line_;
                if (joins) {
                    tokens_.back().value += sign.value;
                } else {
                    push(Token{.kind = TokenKind::Number,
                               .text = text_.substr(at_, sign.bytes.size()),
                               .value = sign.value});
                }
            } else if (sign.mark != ' ') {
                push(Token{.kind = TokenKind::Mark,
                           .text = text_.substr(at_, sign.bytes.size()),
                           .mark = sign.mark});
            }
            at_ += sign.bytes.size();
            return true;
        }
        return false;
    }

    // "R280,000", "R1 640 000", "R1.38m": a letter that stands for the currency; "R38" is none.
    [[nodiscard]] bool isSumInRand() const {
        std::size_t ahead = 1;
        while (isDigit(peek(ahead)) || (peek(ahead) == '.' && isDigit(peek(ahead + 1)))) {
            ++ahead;
        }
        const char next = peek(ahead);
        return ahead > 4 ||
               (ahead > 1 && (((next == 'm' || next == 'k') && !isWordLetter(peek(ahead + 1))) ||
                              isThreeMore(ahead, ',') || isThreeMore(ahead, ' ')));
    }

    // Whether three digits more follow the mark `mark` there: "1,250".
    [[nodiscard]] bool isThreeMore(std::size_t ahead, char mark) const {
        return peek(ahead) == mark && isDigit(peek(ahead + 1)) && isDigit(peek(ahead + 2)) &&
               isDigit(peek(ahead + 3)) && !isDigit(peek(ahead + 4));
    }

    // "1,250" "4.25" "1/2" "2 1/2" "$1 640 000"; "2nd" is a word.
    void cutNumber() {
        constexpr std::int64_t kMost = 1'000'000'000'000;
        const std::size_t begin = at_;
        std::int64_t whole = 0;
        const bool sum = !tokens_.empty() && tokens_.back().mark == '$' && glued_;
        while (isDigit(peek(0)) || isThreeMore(0, ',') || (sum && isThreeMore(0, ' '))) {
            if (isDigit(text_[at_])) {
                whole = std::min(whole * 10 + (text_[at_] - '0'), kMost);
            }
            ++at_;
        }
        std::int64_t thousandths = whole * 1000;
        if (peek(0) == '.' && isDigit(peek(1))) {
            ++at_;
            for (std::int64_t place = 100; isDigit(peek(0)); place /= 10, ++at_) {
                thousandths += place * (text_[at_] - '0');
            }
        } else if (peek(0) == '/' && isDigit(peek(1)) && whole < 10) {
            cutFraction(whole, thousandths);
        }
        const std::string_view tail = text_.substr(at_, 2);
        if (endsOrdinal(tail) && !isWordLetter(peek(2))) {
            at_ += 2;
            pushWords(text_.substr(begin, at_ - begin));
            return;
        }
        // "1F", "2fl": a storey.
        const bool storey = (tail == "fl" || tail == "FL" || tail == "Fl")
                                ? !isWordLetter(peek(2))
                                : (peek(0) == 'F' && !isWordLetter(peek(1)) && peek(1) != '\'');
        if (storey && whole > 0 && whole < 5 && thousandths % 1000 == 0) {
            at_ += tail.size() == 2 && (tail[1] == 'l' || tail[1] == 'L') ? 2 : 1;
            pushWords(text_.substr(begin, at_ - begin));
            return;
        }
        const bool small = thousandths % 1000 == 0 && whole <= 999;
        push(Token{.kind = TokenKind::Number,
                   .text = text_.substr(begin, at_ - begin),
                   .word = small                ? lexicon_.find("#" + std::to_string(whole))
                           : thousandths == 500 ? lexicon_.find("half")
                                                : kUnknown,
                   .value = thousandths});
    }

    void cutFraction(std::int64_t whole, std::int64_t& thousandths) {
        const std::int64_t below = peek(1) - '0';
        const bool date = peek(2) == '/' && isDigit(peek(3));           // "6/8/26"
        if (below < 2 || below <= whole || isDigit(peek(2)) || date) {  // "3/2": beds and baths
            return;
        }
        at_ += 2;
        thousandths = whole * 1000 / below;
        const bool joins = !tokens_.empty() && tokens_.back().kind == TokenKind::Number &&
                           tokens_.back().line == line_ && thousandths < 1000 && !glued_;
        if (joins) {
            thousandths += tokens_.back().value;
            tokens_.pop_back();
        }
    }

    // What follows the letter, apostrophe, digit or joined word at `at` of the word from `begin`;
    // `at` itself where the word ends there.
    [[nodiscard]] std::size_t afterLetter(std::size_t begin, std::size_t at) const {
        const char c = text_[at];
        if (text_.substr(at, 3) == "\xE2\x80\x99") {  // a curly apostrophe
            return at + 3;
        }
        if (static_cast<unsigned char>(c) >= 0x80 && isKnownSign(at)) {
            return at;
        }
        const bool inside = at > begin;
        const bool apostrophe = c == '\'' && at + 1 < text_.size() && isWordLetter(text_[at + 1]);
        if (isWordLetter(c) || (inside && (isDigit(c) || apostrophe))) {
            return at + 1;
        }
        return inside && (c == '/' || c == '&') ? joinedEnd(begin, at) : at;
    }

    bool cutWord() {
        const std::size_t begin = at_;
        std::size_t end = at_;
        // "10x12": the x stands between two figures.
        if ((text_[at_] == 'x' || text_[at_] == 'X') && isDigit(peek(1)) && glued_ &&
            !tokens_.empty() && tokens_.back().kind == TokenKind::Number) {
            push(Token{.kind = TokenKind::Mark, .text = text_.substr(at_, 1), .mark = 'x'});
            ++at_;
            return true;
        }
        while (end < text_.size()) {
            const std::size_t next = afterLetter(begin, end);
            if (next == end) {
                break;
            }
            end = next;
        }
        if (end == begin) {
            return false;
        }
        at_ = end;
        pushWords(text_.substr(begin, end - begin));
        return true;
    }

    [[nodiscard]] bool isKnownSign(std::size_t at) const {
        return std::any_of(std::begin(kSigns), std::end(kSigns), [&](const Sign& sign) {
            return text_.substr(at, sign.bytes.size()) == sign.bytes;
        });
    }

    // "w/d", "k&t", "w/": one word where the table of words holds it whole.
    [[nodiscard]] std::size_t joinedEnd(std::size_t begin, std::size_t at) const {
        std::size_t end = at + 1;
        while (end < text_.size() && isWordLetter(text_[end])) {
            ++end;
        }
        const std::string whole = plainWord(text_.substr(begin, end - begin));
        if (lexicon_.respelling(whole) != nullptr) {
            return end;
        }
        const std::string open = plainWord(text_.substr(begin, at + 1 - begin));
        return lexicon_.respelling(open) != nullptr ? at + 1 : at;
    }

    void pushWords(std::string_view written) {
        const char first = written.front();
        const std::string plain = plainWord(written);
        for (const WordId id : speller_.idsOf(plain)) {
            push(Token{.kind = TokenKind::Word,
                       .text = written,
                       .plain = plain,
                       .word = id,
                       .capital = first >= 'A' && first <= 'Z'});
        }
    }

    std::string_view text_;
    std::int32_t line_;
    Speller& speller_;
    const Lexicon& lexicon_;
    std::vector<Token>& tokens_;
    std::size_t at_ = 0;
    bool glued_ = false;
};

}  // namespace

void cutTokens(std::string_view text, std::int32_t line, Speller& speller, const Lexicon& lexicon,
               std::vector<Token>& tokens) {
    Cutter(text, line, speller, lexicon, tokens).run();
}

}  // namespace ledgerboard::intake
