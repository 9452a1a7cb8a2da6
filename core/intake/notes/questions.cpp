#include "core/intake/notes/questions.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/one_of.h"

namespace ledgerboard::intake {

namespace {

bool textIs(const Sentence& sentence, std::size_t at, const std::vector<std::string_view>& words) {
    if (at >= sentence.tokens.size() || sentence.tokens[at].kind != TokenKind::Word) {
        return false;
    }
    const std::string& word = sentence.tokens[at].plain;
    return isOneOf(word, words);
}

// The first word that is no joint.
std::size_t begins(const Sentence& sentence) {
    std::size_t at = 0;
    while (
        at < sentence.tokens.size() && at < 4 &&
        (sentence.tokens[at].kind == TokenKind::Mark ||
         textIs(sentence, at, {"and", "so", "but", "now", "then", "well", "okay", "oh", "hey"}))) {
        ++at;
    }
    return at;
}

}  // namespace

Asks asksFor(const Sentence& sentence) {
    if (sentence.tokens.empty() || sentence.tokens.back().kind != TokenKind::Mark ||
        sentence.tokens.back().mark != '?') {
        return Asks::Nothing;
    }
    const std::size_t at = begins(sentence);
    const bool modal = textIs(sentence, at, {"can", "could", "should", "shall", "do", "may"});
    const bool we = textIs(sentence, at + 1, {"we", "i"});
    const bool wants = (textIs(sentence, at, {"you"}) && textIs(sentence, at + 1, {"want"})) ||
                       (textIs(sentence, at, {"do"}) && textIs(sentence, at + 1, {"you"}) &&
                        textIs(sentence, at + 2, {"want"})) ||
                       (textIs(sentence, at, {"want"}) && textIs(sentence, at + 1, {"me"}));
    if ((modal && we) || wants) {
        return Asks::Leave;
    }
    static const std::vector<std::string_view> kFacts = {"how",  "where", "which", "who",  "whose",
                                                         "when", "why",   "did",   "does", "is",
                                                         "are",  "was",   "has",   "have"};
    const bool about = textIs(sentence, at, {"how"}) && textIs(sentence, at + 1, {"about"});
    return textIs(sentence, at, kFacts) && !about ? Asks::Fact : Asks::Other;
}

bool agrees(const Sentence& sentence) {
    static const std::vector<std::string_view> kAssent = {
        "yes",    "yeah",       "yep",   "yup", "sure",   "please", "do",    "okay",
        "ok",     "absolutely", "fine",  "all", "put",    "go",     "let's", "good",
        "agreed", "definitely", "right", "aye", "course", "why",    "might"};
    std::size_t at = 0;
    while (at < sentence.tokens.size() && at < 3 &&
           (sentence.tokens[at].kind == TokenKind::Mark ||
            textIs(sentence, at, {"oh", "well", "god", "of", "and", "then", "i"}))) {
        ++at;
    }
    const bool nay = textIs(sentence, at + 1, {"not", "no", "never"});
    return textIs(sentence, at, kAssent) && !nay;
}

bool answers(const Sentence& sentence, const Sentence& question) {
    const auto has = [](const Sentence& one, const std::vector<std::string_view>& words) {
        for (std::size_t i = 0; i < one.tokens.size(); ++i) {
            if (textIs(one, i, words)) {
                return true;
            }
        }
        return false;
    };
    static const std::vector<std::string_view> kOpen = {
        "or", "if", "maybe", "might", "could", "unless", "but", "says", "said", "ask", "depends"};
    const auto queries = [](const Sentence& one) {
        return std::any_of(one.tokens.begin(), one.tokens.end(), [](const Token& token) {
            return token.kind == TokenKind::Mark && token.mark == '?';
        });
    };
    constexpr std::size_t kLongestAnswer = 10;
    if (sentence.tokens.size() > kLongestAnswer || queries(sentence) || has(sentence, kOpen) ||
        !queries(question) || !has(question, {"or"})) {
        return false;
    }
    std::size_t at = begins(sentence);
    while (textIs(sentence, at, {"the", "a", "let's", "do", "definitely", "i'd", "go"})) {
        ++at;
    }
    constexpr std::size_t kLeastLetters = 3;
    if (at >= sentence.tokens.size() || sentence.tokens[at].kind != TokenKind::Word ||
        sentence.tokens[at].text.size() < kLeastLetters) {
        return false;
    }
    const std::vector<std::string_view> ways = {sentence.tokens[at].plain};
    // Right after or before the "or", articles aside.
    constexpr std::size_t kNear = 3;
    for (std::size_t i = 0; i < question.tokens.size(); ++i) {
        if (!textIs(question, i, {"or"})) {
            continue;
        }
        for (std::size_t k = i > kNear ? i - kNear : 0; k <= i + kNear; ++k) {
            if (textIs(question, k, ways)) {
                return true;
            }
        }
    }
    return false;
}

}  // namespace ledgerboard::intake
