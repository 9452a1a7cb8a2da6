#include "core/intake/bank/payee_words.h"

#include <algorithm>
#include <array>

namespace ledgerboard::intake {

namespace {

// A bank cuts names to the width of a column; fewer letters than these prove nothing.
constexpr std::size_t kFewestLettersOfCut = 4;

constexpr std::array<std::string_view, 42> kNameNobody = {
    "ach",       "and",         "auth",     "bill",       "bp",          "card",    "check",
    "checkcard", "co",          "com",      "company",    "contactless", "credit",  "ctr",
    "debit",     "deposit",     "eft",      "electronic", "for",         "from",    "inc",
    "llc",       "ltd",         "mobile",   "of",         "online",      "payment", "pmt",
    "pos",       "ppd",         "purchase", "ref",        "retail",      "sq",      "the",
    "to",        "transaction", "transfer", "web",        "withdrawal",  "wire",    "www"};

bool isLetter(unsigned char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c >= 0x80;
}

bool isFigure(unsigned char c) {
    return c >= '0' && c <= '9';
}

char lower(unsigned char c) {
    return static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
}

// The bank may have cut the word off at the end of its column.
bool isSameWord(const std::string& known, const std::string& written, bool isLast) {
    return known == written || (isLast && written.size() >= kFewestLettersOfCut &&
                                known.compare(0, written.size(), written) == 0);
}

}  // namespace

std::vector<std::string> payeeWords(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    bool holdsFigure = false;
    const auto end = [&] {
        const bool names =
            word.size() > 1 && !holdsFigure &&
            std::find(kNameNobody.begin(), kNameNobody.end(), word) == kNameNobody.end() &&
            std::find(words.begin(), words.end(), word) == words.end();
        if (names) {
            words.push_back(word);
        }
        word.clear();
        holdsFigure = false;
    };
    for (const char raw : text) {
        const auto c = static_cast<unsigned char>(raw);
        if (isLetter(c)) {
            word += lower(c);
        } else if (isFigure(c)) {
            word += raw;
            holdsFigure = true;
        } else if (c != '\'') {  // "Rowan's" is one word, "rowans"
            end();
        }
    }
    end();
    return words;
}

SamePayee samePayee(std::string_view known, std::string_view written) {
    const auto ours = payeeWords(known);
    const auto theirs = payeeWords(written);
    if (ours.empty() || theirs.empty()) {
        return SamePayee::Unknown;
    }
    const bool all = std::all_of(ours.begin(), ours.end(), [&](const std::string& word) {
        return std::any_of(theirs.begin(), theirs.end(), [&](const std::string& other) {
            return isSameWord(word, other, &other == &theirs.back());
        });
    });
    return all ? SamePayee::Yes : SamePayee::No;
}

}  // namespace ledgerboard::intake
