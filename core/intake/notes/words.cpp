#include "core/intake/notes/words.h"

#include <algorithm>
#include <libstemmer.h>

namespace ledgerboard::intake {

namespace {

// A word met in the notes is remembered, up to this many: a bound on memory for hostile input.
constexpr std::size_t kMostWordsRemembered = 50'000;
constexpr std::size_t kLongestWord = 48;

}  // namespace

WordId Lexicon::learn(const std::string& stem) {
    const auto next = static_cast<WordId>(ids_.size() + 1);
    const auto [at, fresh] = ids_.emplace(stem, next);
    if (fresh) {
        stems_.push_back(&at->first);
    }
    return at->second;
}

WordId Lexicon::find(std::string_view stem) const {
    const auto found = ids_.find(stem);
    return found == ids_.end() ? kUnknown : found->second;
}

void Lexicon::addRespelling(std::string word, std::string meaning) {
    respellings_.insert_or_assign(std::move(word), std::move(meaning));
}

const std::string* Lexicon::respelling(const std::string& word) const {
    const auto found = respellings_.find(word);
    return found == respellings_.end() ? nullptr : &found->second;
}

Speller::Speller(const Lexicon& lexicon)
    : lexicon_(lexicon), stemmer_(sb_stemmer_new("english", nullptr)) {}

Speller::~Speller() {
    sb_stemmer_delete(stemmer_);
}

std::string Speller::stemOf(const std::string& word) {
    const auto* stem = sb_stemmer_stem(stemmer_, reinterpret_cast<const sb_symbol*>(word.data()),
                                       static_cast<int>(word.size()));
    return {reinterpret_cast<const char*>(stem),
            static_cast<std::size_t>(sb_stemmer_length(stemmer_))};
}

std::vector<std::string> Speller::stemsOf(std::string_view written) {
    std::string word = plainWord(written);
    const std::string* meaning = lexicon_.respelling(word);
    if (meaning == nullptr && word.size() > 2 && word.ends_with("'s")) {
        word.resize(word.size() - 2);
        meaning = lexicon_.respelling(word);
    }
    // "the range'll do"
    if (meaning == nullptr && word.size() > 4 && word.ends_with("'ll")) {
        std::vector<std::string> stems = stemsOf(word.substr(0, word.size() - 3));
        stems.emplace_back("will");
        return stems;
    }
    if (meaning == nullptr) {
        return {stemOf(word)};
    }
    // A meaning of one word that is the word itself says: do not cut this one to its stem.
    std::vector<std::string> stems;
    std::size_t at = 0;
    while (at < meaning->size()) {
        const std::size_t end = std::min(meaning->find(' ', at), meaning->size());
        const std::string part = meaning->substr(at, end - at);
        // The parts may be short for something themselves: "we're" is "we are", and "are" is "is".
        const std::string* fixed = part == word ? &part : lexicon_.respelling(part);
        const bool single = fixed != nullptr && fixed->find(' ') == std::string::npos;
        const std::string& meant = single ? *fixed : part;
        const bool whole = single && (*fixed == part || lexicon_.respelling(meant) != nullptr);
        stems.push_back(whole ? meant : stemOf(meant));
        at = end + 1;
    }
    return stems;
}

const std::vector<WordId>& Speller::idsOf(const std::string& plain) {
    if (const auto found = met_.find(plain); found != met_.end()) {
        return found->second;
    }
    if (met_.size() >= kMostWordsRemembered) {
        met_.clear();
    }
    // "van" is a vanity in shorthand alone.
    const std::string shorthand = plain + '~';
    const bool shortens = terse_ && lexicon_.respelling(shorthand) != nullptr;
    std::vector<WordId> ids;
    for (const std::string& stem : stemsOf(shortens ? shorthand : plain)) {
        ids.push_back(lexicon_.find(stem));
    }
    if (terse_ && ids.size() == 1 && ids.front() == kUnknown) {
        if (const std::string whole = lexicon_.abbreviations().fullWord(plain); !whole.empty()) {
            ids.clear();
            for (const std::string& stem : stemsOf(whole)) {
                ids.push_back(lexicon_.find(stem));
            }
        }
    }
    return met_.emplace(plain, std::move(ids)).first->second;
}

std::string plainWord(std::string_view written) {
    std::string word(written.substr(0, kLongestWord));
    std::size_t size = 0;
    for (std::size_t i = 0; i < written.size() && size < kLongestWord; ++i, ++size) {
        const char c = written[i];
        word[size] = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        const bool curly = c == '\xE2' && (written.substr(i, 3) == "\xE2\x80\x99" ||
                                           written.substr(i, 3) == "\xE2\x80\x98");
        if (curly) {
            word[size] = '\'';
            i += 2;
        }
    }
    word.resize(size);
    return word;
}

}  // namespace ledgerboard::intake
