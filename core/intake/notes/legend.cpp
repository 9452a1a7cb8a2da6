#include "core/intake/notes/legend.h"

#include <algorithm>
#include <array>

#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

constexpr std::size_t kLongestCode = 4;
constexpr std::size_t kMostCodes = 40;
constexpr std::size_t kSeekIn = 60;  // lines

std::string_view trimmed(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(" \t-:=");
    if (begin == std::string_view::npos) {
        return {};
    }
    return text.substr(begin, text.find_last_not_of(" \t.;,-") - begin + 1);
}

// Where a line opens with a word for such a list, the rest of it; else nothing.
std::string_view afterTitle(std::string_view text) {
    constexpr std::array<std::string_view, 10> kTitles = {
        "codes",  "code", "abbrev",  "abbr",  "abbreviations",
        "legend", "key",  "symbols", "marks", "shorthand"};
    const std::size_t end = text.find_first_of(" :-=");
    if (end == std::string_view::npos) {
        return {};
    }
    const std::string word = plainWord(text.substr(0, end));
    const bool title = std::find(kTitles.begin(), kTitles.end(), word) != kTitles.end();
    const std::size_t mark = text.find_first_not_of(' ', end);
    const bool opens = mark != std::string_view::npos &&
                       (text[mark] == ':' || text[mark] == '-' || text[mark] == '=');
    return title && opens ? text.substr(mark + 1) : std::string_view{};
}

bool isCode(std::string_view text) {
    bool capital = false;
    for (const char c : text) {
        capital = capital || (c >= 'A' && c <= 'Z');
        if (c == ' ' || c == '(' || c == ',') {
            return false;
        }
    }
    return capital && !text.empty() && text.size() <= kLongestCode;
}

// The parts of a list: ended by ";", by ". " or ", " before another code, or by " / ".
std::vector<std::string_view> entriesOf(std::string_view text) {
    std::vector<std::string_view> entries;
    std::size_t begin = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool spaced = i + 1 < text.size() && text[i + 1] == ' ';
        const bool slash = text[i] == '/' && spaced && i > 0 && text[i - 1] == ' ';
        bool cuts = text[i] == ';' || slash;
        if ((text[i] == '.' || text[i] == ',') && spaced) {
            const std::string_view rest = text.substr(i + 2);
            cuts = isCode(rest.substr(0, rest.find_first_of(" =")));
        }
        if (cuts) {
            entries.push_back(text.substr(begin, i - begin));
            begin = i + 1;
        }
    }
    entries.push_back(text.substr(begin));
    return entries;
}

// What the words say is done; Unset where they say nothing.
Treatment treatmentOf(std::string_view meaning, Speller& speller) {
    std::vector<Token> tokens;
    cutTokens(meaning, 0, speller, tables().lexicon, tokens);
    const Spots spots = findSpots(tokens);
    bool out = false;
    bool fresh = false;
    Treatment first = Treatment::Unset;
    for (const ActSpot& spot : spots.acts) {
        const ActRow& row = tables().acts[spot.row];
        fresh = fresh || row.fresh;
        out = out || row.treatment == Treatment::Remove;
        if (row.weight > 0 && first == Treatment::Unset) {
            first = row.fresh ? Treatment::Replace : row.treatment;
        }
    }
    static const WordId kOut = tables().id("out");
    static const WordId kNew = tables().id("new");
    for (const Token& token : tokens) {
        out = out || (kOut != kUnknown && token.word == kOut);
        fresh = fresh || (kNew != kUnknown && token.word == kNew);
    }
    if (first == Treatment::Inspect || first == Treatment::Keep) {
        return first;
    }
    if (spots.has(Cue::Absent) && (fresh || !out)) {
        return Treatment::Add;
    }
    if (out && fresh) {
        return Treatment::Replace;
    }
    return out ? Treatment::Remove : fresh ? Treatment::Replace : first;
}

// A word that the table of treatments knows as a plain order.
WordId orderFor(Treatment treatment) {
    switch (treatment) {
        case Treatment::Keep:
            return tables().id("keep");
        case Treatment::Inspect:
            return tables().id("inspect");
        case Treatment::Clean:
            return tables().id("clean");
        case Treatment::Repair:
            return tables().id("repair");
        case Treatment::Refinish:
            return tables().id("refinish");
        case Treatment::Replace:
            return tables().id("replac");
        case Treatment::Remove:
            return tables().id("remov");
        case Treatment::Add:
            return tables().id("add");
        default:
            return kUnknown;
    }
}

}  // namespace

Legend::Legend(const std::vector<NoteLine>& lines, Speller& speller) {
    for (std::size_t i = 0; i < lines.size() && i < kSeekIn; ++i) {
        takeLine(lines[i].text, lines[i].number, speller);
    }
}

bool Legend::takeLine(std::string_view text, int number, Speller& speller) {
    const std::string_view titled = afterTitle(text);
    const bool equals = text.find('=') != std::string_view::npos;
    if (titled.empty() && !equals) {
        return false;
    }
    const std::vector<std::string_view> entries = entriesOf(titled.empty() ? text : titled);
    const std::size_t before = codes_.size();
    for (const std::string_view entry : entries) {
        takeEntry(trimmed(entry), equals, number, speller);
    }
    const std::size_t taken = codes_.size() - before;
    if (taken < 2) {
        codes_.resize(before);
        return false;
    }
    lines_.push_back(number);
    return true;
}

bool Legend::takeEntry(std::string_view entry, bool equals, int number, Speller& speller) {
    const std::size_t end = entry.find_first_of(equals ? "=" : " =");
    if (end == std::string_view::npos || codes_.size() >= kMostCodes) {
        return false;
    }
    const std::string_view code = trimmed(entry.substr(0, end));
    const WordId word =
        isCode(code) ? orderFor(treatmentOf(entry.substr(end + 1), speller)) : kUnknown;
    if (word == kUnknown || number < 0) {
        return false;
    }
    codes_.push_back({std::string(code), word});
    return true;
}

bool Legend::explains(int line) const {
    return std::find(lines_.begin(), lines_.end(), line) != lines_.end();
}

void Legend::apply(std::vector<Token>& tokens, std::size_t begin) const {
    if (codes_.empty()) {
        return;
    }
    for (std::size_t i = begin; i < tokens.size(); ++i) {
        for (const Code& code : codes_) {
            std::size_t end = i;
            std::size_t length = 0;
            while (end < tokens.size() && length < code.written.size() &&
                   (end == i || tokens[end].glued) && tokens[end].line == tokens[i].line) {
                length += tokens[end].text.size();
                ++end;
                while (end < tokens.size() &&
                       tokens[end].text.data() == tokens[end - 1].text.data()) {
                    ++end;  // one of the several words that a short form stands for
                }
            }
            const bool whole =
                end >= tokens.size() || !tokens[end].glued || tokens[end].kind == TokenKind::Mark;
            const std::string_view written(tokens[i].text.data(),
                                           std::min(length, code.written.size()));
            if (length != code.written.size() || written != code.written || !whole ||
                (i > 0 && tokens[i].glued && tokens[i - 1].kind != TokenKind::Mark)) {
                continue;
            }
            tokens[i].kind = TokenKind::Word;
            tokens[i].word = code.word;
            tokens[i].text = written;
            tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(i + 1),
                         tokens.begin() + static_cast<std::ptrdiff_t>(end));
            break;
        }
    }
}

}  // namespace ledgerboard::intake
