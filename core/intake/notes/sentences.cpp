#include "core/intake/notes/sentences.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/intake/notes/legend.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/pauses.h"
#include "core/intake/notes/spaces.h"
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
    const std::string& word = token.plain;
    if (isOneOf(word, kShortForms)) {
        return true;
    }
    // "siding pnt. rear deck demo.": where work is said, the point ends it.
    const std::uint32_t node = token.word == kUnknown ? 0 : tables().phrases.step(0, token.word);
    for (const Meaning& one : tables().phrases.at(node)) {
        if (node != 0 && one.from == From::Act) {
            return false;
        }
    }
    const std::string* meaning = tables().lexicon.respelling(word);
    return meaning != nullptr && word.size() <= 5 && meaning->size() > word.size() + 1 &&
           word.find('\'') == std::string::npos;
}

// "baseb. 3 in", "chandl. on the chain": a short form that the tables do not write out, and what
// goes on with it.
bool isCutOff(const Token& token, const Token& next) {
    static constexpr std::array<std::string_view, 8> kGoesOn = {"on", "in", "at", "by",
                                                                "w/", "of", "is", "over"};
    const std::string& word = token.plain;
    if (token.kind != TokenKind::Word || token.word == kUnknown ||
        tables().lexicon.find(word) != kUnknown || tables().lexicon.respelling(word) != nullptr) {
        return false;
    }
    const bool goesOn = next.kind == TokenKind::Number || isOneOf(next.plain, kGoesOn);
    return goesOn && !tables().lexicon.abbreviations().fullWord(word).empty();
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
    return at == 0 || (!isShort(tokens[at - 1]) && !isCutOff(tokens[at - 1], next)) || next.capital;
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

// Where the longest phrase of one table ends that begins at `at`; `at` where none does.
std::size_t phraseEnd(const std::vector<Token>& tokens, std::size_t at, From from) {
    std::size_t end = at;
    std::uint32_t node = 0;
    for (std::size_t i = at; i < tokens.size() && i < at + 6; ++i) {
        node = tokens[i].word == kUnknown ? 0 : tables().phrases.step(node, tokens[i].word);
        if (node == 0) {
            break;
        }
        for (const Meaning& meaning : tables().phrases.at(node)) {
            end = meaning.from == from && meaning.flag == 0 ? i + 1 : end;
        }
    }
    return end;
}

using Ids = std::vector<WordId>;

Ids idsOf(std::initializer_list<std::string_view> stems) {
    Ids ids;
    for (const std::string_view stem : stems) {
        if (const WordId id = tables().id(stem); id != kUnknown) {
            ids.push_back(id);
        }
    }
    return ids;
}

bool isAmong(const Token& token, const Ids& ids) {
    return token.word != kUnknown && std::find(ids.begin(), ids.end(), token.word) != ids.end();
}

// Where the name of a space ends that begins at `at`, with a word before it that tells it from
// others ("second bedroom"); `at` where none does.
std::size_t spaceEnd(const std::vector<Token>& tokens, std::size_t at) {
    const std::size_t most = std::min(tokens.size(), at + 5);
    const std::span<const Token> ahead(tokens.data() + at, most - at);
    for (const SpaceSpot& spot : spacesIn(ahead)) {
        const bool group = spot.kind == SpaceKind::Whole || spot.kind == SpaceKind::Group;
        if (spot.span.begin == 0 && !group) {
            return at + spot.span.end;
        }
        break;
    }
    return at;
}

// Past the words that lead on: "and then the", "okay so".
std::size_t leadEnd(const std::vector<Token>& tokens, std::size_t at) {
    static const Ids kLeads = idsOf({"then", "and", "next", "the", "now", "so", "okay", "ok"});
    while (at < tokens.size() && isAmong(tokens[at], kLeads)) {
        ++at;
    }
    return at;
}

// "… new carpet, | hall bath, tub's fine, | second bedroom same as …": in a long run of clauses a
// space by itself, or one that something is said of, begins a sentence.
bool spaceAt(const std::vector<Token>& tokens, std::size_t at) {
    static const Ids kWords2 = idsOf({"same", "first", "also", "next", "now", "is", "has", "need",
                                      "get", "want", "just", "then", "there", "i", "we"});
    at = leadEnd(tokens, at);
    if (at >= tokens.size() || tokens[at].kind != TokenKind::Word) {
        return false;
    }
    const std::size_t end = spaceEnd(tokens, at);
    if (end == at) {
        return false;
    }
    const bool is = tokens[end - 1].text.ends_with("'s");
    return is || end >= tokens.size() || tokens[end].kind == TokenKind::Mark ||
           isAmong(tokens[end], kWords2);
}

// "… replace the chandelier | and then the kitchen": whether talk turns to another space.
bool turnsToSpace(const std::vector<Token>& tokens, std::size_t at) {
    const std::size_t begin = turnsAt(tokens, at) ? leadEnd(tokens, at) : tokens.size();
    return begin < tokens.size() && spaceEnd(tokens, begin) > begin;
}

// "… sanded in the living room, | the dining room, the hall": whether the rooms in a row that ends
// before the comma at `at` are where something is done, as the words before the first of them tell.
bool inRowOfPlaces(const std::vector<Token>& tokens, std::size_t begin, std::size_t at) {
    static const Ids kArticles = idsOf({"the", "both", "all", "our", "my"});
    static const Ids kLeads = idsOf({"in", "for", "through", "throughout", "of", "to", "into"});
    static const WordId kAnd = tables().id("and");
    const std::span<const Token> said(tokens.data() + begin, at - begin);
    std::size_t end = said.size();
    const std::vector<SpaceSpot> spaces = spacesIn(said);
    for (std::size_t i = spaces.size(); i-- > 0;) {
        if (spaces[i].span.end != end) {
            return false;
        }
        end = spaces[i].span.begin;
        while (end > 0 && isAmong(said[end - 1], kArticles)) {
            --end;
        }
        if (end > 0 && isAmong(said[end - 1], kLeads)) {
            return true;
        }
        while (end > 0 && (isMark(said[end - 1], ',') || said[end - 1].word == kAnd)) {
            --end;
        }
    }
    return false;
}

// Whether the thing that begins at `at` is what something is said of: "tub's fine", "the cathedral
// ceiling has a stain".
bool subjectAt(const std::vector<Token>& tokens, std::size_t at) {
    static const Ids kWords1 = idsOf({"the", "this", "that", "these", "those"});
    static const Ids kWords2 = idsOf({"in", "up", "down", "out"});
    static const Ids kWords3 = idsOf({"here", "there"});
    static const Ids kWords4 = idsOf({"is",   "has",  "need", "want", "get",  "got",    "go",
                                      "goes", "stay", "look", "can",  "will", "should", "could",
                                      "seem", "leak", "work", "run",  "come", "have",   "was"});
    if (at >= tokens.size() || tokens[at].kind != TokenKind::Word) {
        return false;
    }
    const bool article = isAmong(tokens[at], kWords1);
    const std::size_t begin = article ? at + 1 : at;
    std::size_t end =
        std::max(phraseEnd(tokens, begin, From::Space), phraseEnd(tokens, begin, From::Object));
    if (end == begin && article && begin + 1 < tokens.size()) {
        end = phraseEnd(tokens, begin + 1, From::Object);
        end = end == begin + 1 ? begin : end;
    }
    end = end > begin ? std::max(end, phraseEnd(tokens, end, From::Object)) : end;
    // "floor in here's vinyl"
    if (end > begin && end + 1 < tokens.size() && isAmong(tokens[end], kWords2) &&
        isAmong(tokens[end + 1], kWords3)) {
        end += 2;
    }
    if (end == begin || end >= tokens.size() || tokens[end].kind != TokenKind::Word) {
        return false;
    }
    return tokens[end - 1].text.ends_with("'s") || isAmong(tokens[end], kWords4);
}

// "hall cpt clean", "- bath toilet": whether a line opens with a room and says more.
bool opensWithRoom(std::span<const Token> tokens) {
    constexpr std::size_t kLongest = 5;
    const std::vector<SpaceSpot> spaces = spacesIn(tokens.first(std::min(tokens.size(), kLongest)));
    return !spaces.empty() && spaces.front().span.begin == 0 &&
           spaces.front().kind != SpaceKind::Whole && spaces.front().kind != SpaceKind::Level &&
           spaces.front().span.end < tokens.size();
}

// How the notes are written.
struct Manner {
    bool terse = false;     // in shorthand
    bool rooms = false;     // most lines open with the room they are of
    bool unmarked = false;  // as a phone writes what it hears
};

class Cutter {
  public:
    Cutter(Speller& speller, const Legend& legend, const Manner& manner,
           const std::function<void(Sentence&)>& use)
        : speller_(speller), legend_(legend), manner_(manner), use_(use) {}

    void add(const NoteLine& line) {
        if (line.opens) {
            flush();
            first_ = line;
        }
        ++linesInBlock_;
        const std::size_t begin = block_.size();
        cutTokens(line.text, line.number, speller_, tables().lexicon, block_);
        legend_.apply(block_, begin);
        if (manner_.terse) {
            readFronts(begin);
            readAdds(begin);
        }
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
        restore();
        for (std::size_t i = 0; i < block_.size(); ++i) {
            const bool mark = block_[i].kind == TokenKind::Mark;
            sinceMark = mark ? 0 : sinceMark + 1;
            const std::size_t length = i + 1 - begin;
            const bool ends = endsAt(block_, i) || (manner_.terse && isColumn(i));
            bool parts = length >= kMostTokens;
            if (!ends && !parts && i + 1 < block_.size() && length >= kLeastPart) {
                const bool afterComma = isMark(block_[i], ',') && restOf(i) > kLeastPart &&
                                        length + restOf(i) > kLongSentence;
                parts = (sinceMark >= kBreathless || afterComma) && turnsAt(block_, i + 1);
            }
            parts = parts || (restored_ > 0 && !ends && length > 1 && turnsToSpace(block_, i + 1));
            if (!ends && !parts && isMark(block_[i], ',')) {
                long_ = long_ || length + restOf(i) > kLongSentence;
                parts = long_ &&
                        (spaceAt(block_, i + 1) || subjectAt(block_, i + 1) ||
                         (length < kLeastPart && spaceAt(block_, begin) &&
                          spaceEnd(block_, begin) == i)) &&
                        !(spaceAt(block_, i + 1) && inRowOfPlaces(block_, begin, i));
            }
            long_ = long_ && !ends;
            if (ends || parts) {
                emit(begin, i + 1, all && i + 1 == block_.size());
                begin = i + 1;
            }
        }
        if (all) {
            emit(begin, block_.size(), true);
            block_.clear();
            restored_ = 0;
        } else {
            block_.erase(block_.begin(), block_.begin() + static_cast<std::ptrdiff_t>(begin));
            restored_ -= std::min(begin, restored_);
        }
    }

    // Gives talk that runs on without marks those that it would have.
    void restore() {
        const auto marks = static_cast<std::size_t>(
            std::count_if(block_.begin(), block_.end(),
                          [](const Token& token) { return token.kind == TokenKind::Mark; }));
        if (manner_.unmarked || (block_.size() > kBreathless && marks * 20 <= block_.size())) {
            if (!stems_) {
                stems_.emplace(tables().lexicon);
            }
            restorePauses(block_, restored_, *stems_);
            restored_ = block_.size();
        }
    }

    // "fan +", "sckts +3", "gut + 90 lf": one more of it, or so many.
    void readAdds(std::size_t begin) {
        static const WordId kAdd = tables().id("add");
        for (std::size_t i = begin + 1; i < block_.size(); ++i) {
            const bool follows =
                block_[i - 1].kind == TokenKind::Word || isMark(block_[i - 1], '>');
            if (!isMark(block_[i], '+') || !follows || block_[i - 1].line != block_[i].line) {
                continue;
            }
            std::size_t end = i + 1;
            end += end < block_.size() && block_[end].kind == TokenKind::Number ? 1 : 0;
            const bool unit =
                end > i + 1 && end < block_.size() && phraseEnd(block_, end, From::Unit) > end;
            const bool closes = end >= block_.size() || isMark(block_[end], '.') ||
                                isMark(block_[end], ',') || isMark(block_[end], ';');
            if (closes || unit) {
                block_[i].kind = TokenKind::Word;
                block_[i].word = kAdd;
                block_[i].plain = "add";
            }
        }
    }

    // "ft dr", "FT VERANDAH": the front one, where no figure says that feet are meant.
    void readFronts(std::size_t begin) {
        static const WordId kFront = tables().id("front");
        for (std::size_t i = begin; i + 1 < block_.size(); ++i) {
            const bool counted = i > begin && (block_[i - 1].kind == TokenKind::Number ||
                                               isMark(block_[i - 1], '.'));
            const bool measure = i > begin && isShort(block_[i - 1]);
            const Token& next = block_[i + 1];
            if (block_[i].kind == TokenKind::Word && block_[i].plain == "ft" && !counted &&
                !measure && next.kind == TokenKind::Word &&
                (phraseEnd(block_, i + 1, From::Space) > i + 1 ||
                 phraseEnd(block_, i + 1, From::Object) > i + 1 || next.plain == "rm")) {
                block_[i].word = kFront;
            }
        }
    }

    // "sink > 310   faucet > 195": in shorthand two blanks and more part two entries.
    [[nodiscard]] bool isColumn(std::size_t at) const {
        constexpr std::ptrdiff_t kBlanks = 2;
        if (at + 1 >= block_.size() || block_[at].line != block_[at + 1].line ||
            isMark(block_[at], ':')) {
            return false;
        }
        const char* end = block_[at].text.data() + block_[at].text.size();
        return block_[at + 1].text.data() - end >= kBlanks;
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
        sentence.ticked = first_.ticked;
        sentence.spoken = first_.spoken && pieces_ == 0;
        sentence.terse = manner_.terse;
        sentence.labelled = (first_.labelled || (first_.marked && manner_.terse)) && pieces_ == 0;
        if (manner_.rooms && pieces_ == 0 && !sentence.heading) {
            const bool opens = opensWithRoom(sentence.tokens);
            sentence.labelled = sentence.labelled || (manner_.terse && !sentence.bullet && opens);
            sentence.roomless = sentence.bullet && !opens;
        }
        sentence.unlabelled = first_.unlabelled && pieces_ == 0;
        sentence.opensParagraph = pieces_ == 0 && first_.afterBlank && !first_.bullet &&
                                  !first_.heading && !first_.spoken && !first_.labelled &&
                                  !sentence.alone;
        ++pieces_;
        use_(sentence);
    }

    Speller& speller_;
    std::optional<Stems> stems_;  // most notes have their marks and need none
    const Legend& legend_;
    Manner manner_;
    const std::function<void(Sentence&)>& use_;
    std::vector<Token> block_;
    std::size_t restored_ = 0;  // tokens of it that were given their marks
    NoteLine first_;
    bool long_ = false;  // the sentence is a long run of clauses
    int linesInBlock_ = 0;
    int pieces_ = 0;
};

}  // namespace

namespace {

// Shorthand leaves out the small words: fewer than one word in ten is one.
bool isTerse(const std::vector<NoteLine>& lines) {
    static constexpr std::array<std::string_view, 13> kSmall = {
        "the", "a", "an", "is", "it", "i", "we", "and", "that", "this", "to", "in", "of"};
    constexpr std::size_t kEnough = 30;
    constexpr std::size_t kLooked = 5000;
    std::size_t words = 0;
    std::size_t small = 0;
    for (const NoteLine& line : lines) {
        std::size_t at = 0;
        while (at < line.text.size() && words < kLooked) {
            const std::size_t end = std::min(line.text.find(' ', at), line.text.size());
            const std::string word = plainWord(line.text.substr(at, end - at));
            const bool letter = !word.empty() && word.front() >= 'a' && word.front() <= 'z';
            words += letter ? 1 : 0;
            small += isOneOf(word, kSmall) ? 1 : 0;
            at = end + 1;
        }
    }
    return words >= kEnough && small * 10 < words;
}

// Speech that a phone wrote down has hardly a mark: fewer than one for forty words.
bool isUnmarked(const std::vector<NoteLine>& lines) {
    constexpr std::size_t kEnough = 60;
    std::size_t words = 0;
    std::size_t marks = 0;
    for (const NoteLine& line : lines) {
        if (line.bullet) {
            return false;
        }
        words += static_cast<std::size_t>(std::count(line.text.begin(), line.text.end(), ' ')) + 1;
        marks +=
            static_cast<std::size_t>(std::count_if(line.text.begin(), line.text.end(), [](char c) {
                return std::string_view(".,;:!?").find(c) != std::string_view::npos;
            }));
    }
    return words >= kEnough && marks * 40 < words;
}

// Whether most lines of shorthand or of a list open so.
bool openWithRooms(const std::vector<NoteLine>& lines, bool terse, Speller& speller) {
    constexpr std::size_t kFew = 4;
    constexpr std::size_t kMost = 400;  // lines
    constexpr std::size_t kAhead = 40;  // bytes
    std::size_t entries = 0;
    std::size_t rooms = 0;
    std::vector<Token> tokens;
    for (std::size_t i = 0; i < lines.size() && i < kMost; ++i) {
        const NoteLine& line = lines[i];
        if (line.heading || line.spoken || !(terse || line.bullet) ||
            line.text.find(' ') == std::string_view::npos) {
            continue;
        }
        tokens.clear();
        cutTokens(line.text.substr(0, kAhead), line.number, speller, tables().lexicon, tokens);
        ++entries;
        rooms += opensWithRoom(tokens) ? 1 : 0;
    }
    return rooms >= kFew && rooms * 5 >= entries * 2;
}

}  // namespace

void eachSentence(std::string_view notes, Speller& speller,
                  const std::function<void(Sentence&)>& use) {
    const std::vector<NoteLine> lines = noteLines(notes);
    const bool terse = isTerse(lines);
    speller.setTerse(terse);
    const Legend legend(lines, speller);
    const Manner manner = {terse, openWithRooms(lines, terse, speller),
                           !terse && isUnmarked(lines)};
    Cutter cutter(speller, legend, manner, use);
    for (const NoteLine& line : lines) {
        if (!legend.explains(line.number)) {
            cutter.add(line);
        }
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
