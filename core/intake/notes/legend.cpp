#include "core/intake/notes/legend.h"

#include <algorithm>
#include <array>

#include "core/intake/notes/one_of.h"
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
    const bool title = isOneOf(word, kTitles);
    const std::size_t mark = text.find_first_not_of(' ', end);
    const bool opens = mark != std::string_view::npos &&
                       (text[mark] == ':' || text[mark] == '-' || text[mark] == '=');
    return title && opens ? text.substr(mark + 1) : std::string_view{};
}

bool isCode(std::string_view text, bool equals = false) {
    bool capital = equals;
    for (const char c : text) {
        capital = capital || (c >= 'A' && c <= 'Z');
        if ((c >= '0' && c <= '9') || c == ' ' || c == '(' || c == ',') {
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

// The parts of a line between its marks.
std::vector<std::string_view> partsOf(std::string_view text) {
    std::vector<std::string_view> parts;
    while (!text.empty()) {
        const auto stop = std::find_if(text.begin(), text.end(), [](char c) {
            return c == ',' || c == ';' || c == '.' || c == ':' || c == '|' || c == '(' || c == ')';
        });
        const auto end = static_cast<std::size_t>(stop - text.begin());
        if (const std::string_view part = trimmed(text.substr(0, end)); !part.empty()) {
            parts.push_back(part);
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return parts;
}

// "flr oak F 210": without the figures at its end, which only say how much.
std::string_view withoutFigures(std::string_view part) {
    for (std::size_t gap = part.rfind(' '); gap != std::string_view::npos; gap = part.rfind(' ')) {
        const char first = gap + 1 < part.size() ? part[gap + 1] : '0';
        if (first < '0' || first > '9') {
            break;
        }
        part = part.substr(0, gap);
    }
    return part;
}

bool speaksOfFloor(std::string_view part) {
    constexpr std::array<std::string_view, 6> kFloors = {"flr", "floor", "oak",
                                                         "hwd", "hdwd",  "pine"};
    return std::any_of(kFloors.begin(), kFloors.end(), [&](std::string_view word) {
        return part.find(word) != std::string_view::npos;
    });
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

// The words that a code stands for: an order, or what it is short for.
std::vector<WordId> wordsFor(std::string_view meaning, Speller& speller) {
    const Treatment treatment = treatmentOf(meaning, speller);
    if (const WordId order = orderFor(treatment); order != kUnknown) {
        return {order};
    }
    constexpr std::size_t kMostWords = 3;
    std::vector<Token> tokens;
    cutTokens(meaning, 0, speller, tables().lexicon, tokens);
    std::vector<WordId> words;
    for (const Token& token : tokens) {
        if (token.kind == TokenKind::Word && token.word != kUnknown) {
            words.push_back(token.word);
        } else if (token.kind != TokenKind::Mark) {
            return {};
        }
    }
    return words.size() <= kMostWords ? words : std::vector<WordId>{};
}

}  // namespace

Legend::Legend(const std::vector<NoteLine>& lines, Speller& speller) {
    // A code a line counts where there are several such lines.
    constexpr std::size_t kSeveral = 3;
    std::vector<std::pair<int, Code>> single;
    for (std::size_t i = 0; i < lines.size() && i < kSeekIn; ++i) {
        std::vector<Code> codes = codesIn(lines[i].text, speller);
        const bool titled = !afterTitle(lines[i].text).empty();
        if (codes.size() > 1 || (titled && !codes.empty())) {
            lines_.push_back(lines[i].number);
            codes_.insert(codes_.end(), codes.begin(), codes.end());
        } else if (codes.size() == 1) {
            single.emplace_back(lines[i].number, codes.front());
        }
    }
    if (single.size() >= kSeveral) {
        for (const auto& [line, code] : single) {
            lines_.push_back(line);
            codes_.push_back(code);
        }
    }
    codes_.resize(std::min(codes_.size(), kMostCodes));
    if (codes_.empty()) {
        takeUsual(lines);
    }
}

// Codes that need no telling where a writer uses them throughout: "K" keeps, "R" replaces.
void Legend::takeUsual(const std::vector<NoteLine>& lines) {
    struct Usual {
        std::string_view written;
        Treatment treatment;
    };

    constexpr std::array<Usual, 9> kUsual = {{{"K", Treatment::Keep},
                                              {"R", Treatment::Replace},
                                              {"RR", Treatment::Replace},
                                              {"N", Treatment::Replace},
                                              {"P", Treatment::Refinish},
                                              {"RF", Treatment::Refinish},
                                              {"X", Treatment::Remove},
                                              {"F", Treatment::Repair},
                                              {"RP", Treatment::Repair}}};
    constexpr std::size_t kLongestUsual = 2;
    constexpr std::size_t kOften = 6;
    std::array<std::size_t, kUsual.size()> uses{};
    std::size_t sum = 0;
    std::size_t kinds = 0;
    std::size_t keeps = 0;   // "tub K"
    std::size_t floors = 0;  // where "F" stands by a floor, and is to finish it
    for (const NoteLine& line : lines) {
        for (const std::string_view whole : partsOf(line.text)) {
            const std::string_view part = withoutFigures(whole);
            const std::size_t gap = part.find(' ');
            if (gap == std::string_view::npos) {
                continue;
            }
            const std::string_view first = part.substr(0, gap);
            const std::string_view last = part.substr(part.rfind(' ') + 1);
            if (first.size() > kLongestUsual && last.size() > kLongestUsual) {
                continue;
            }
            keeps += last == "K" ? 1 : 0;
            floors += last == "F" && speaksOfFloor(part) ? 1 : 0;
            for (std::size_t i = 0; i < kUsual.size(); ++i) {
                const bool used = first == kUsual[i].written || last == kUsual[i].written;
                kinds += used && uses[i] == 0 ? 1 : 0;
                uses[i] += used ? 1 : 0;
                sum += used ? 1 : 0;
            }
        }
    }
    for (std::size_t i = 0; i < kUsual.size() && sum >= kOften && (kinds > 1 || keeps >= kOften);
         ++i) {
        if (uses[i] > 0) {
            const bool finish = kUsual[i].written == "F" && floors * 2 >= uses[i];
            codes_.push_back({std::string(kUsual[i].written),
                              {orderFor(finish ? Treatment::Refinish : kUsual[i].treatment)}});
        }
    }
}

std::vector<Legend::Code> Legend::codesIn(std::string_view text, Speller& speller) {
    const std::string_view titled = afterTitle(text);
    const std::string_view list = titled.empty() ? text : titled;
    std::vector<Code> codes;
    const auto take = [&](std::string_view code, std::string_view meaning, bool equals) {
        Code made{std::string(code), {}};
        if (isCode(code, equals)) {
            made.words = wordsFor(meaning, speller);
        }
        if (!made.words.empty()) {
            codes.push_back(std::move(made));
        }
    };
    if (list.find('=') == std::string_view::npos) {
        if (!titled.empty()) {
            for (const std::string_view part : entriesOf(titled)) {
                const std::string_view entry = trimmed(part);
                const std::size_t end = entry.find(' ');
                if (end != std::string_view::npos) {
                    take(entry.substr(0, end), entry.substr(end + 1), false);
                }
            }
        }
        return codes;
    }
    // "k=keep r=replace", "R/R = tear out + new. REF = refin.": the code is the word before the
    // sign, the meaning what stands before the next code.
    std::vector<std::pair<std::size_t, std::size_t>> at;  // where each code begins, and its sign
    for (std::size_t i = list.find('='); i != std::string_view::npos; i = list.find('=', i + 1)) {
        const std::size_t last = list.find_last_not_of(' ', i == 0 ? 0 : i - 1);
        const std::size_t gap =
            last == std::string_view::npos ? last : list.find_last_of(" (,;", last);
        at.emplace_back(gap == std::string_view::npos ? 0 : gap + 1, i);
    }
    // "KIT: alder cabs, ctop = tile": in the middle of a line the sign explains no code.
    if (titled.empty() &&
        list.substr(0, at.front().first).find_first_not_of(" (-*") != std::string_view::npos) {
        return codes;
    }
    for (std::size_t k = 0; k < at.size(); ++k) {
        const std::size_t end = k + 1 < at.size() ? at[k + 1].first : list.size();
        const auto [begin, sign] = at[k];
        if (sign > begin && end > sign + 1) {
            take(trimmed(list.substr(begin, sign - begin)),
                 trimmed(list.substr(sign + 1, end - sign - 1)), true);
        }
    }
    return codes;
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
            tokens[i].word = code.words.front();
            tokens[i].text = written;
            tokens[i].plain = plainWord(written);
            tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(i + 1),
                         tokens.begin() + static_cast<std::ptrdiff_t>(end));
            for (std::size_t k = 1; k < code.words.size(); ++k) {
                Token more = tokens[i];
                more.word = code.words[k];
                tokens.insert(tokens.begin() + static_cast<std::ptrdiff_t>(i + k), more);
            }
            i += code.words.size() - 1;
            break;
        }
    }
}

}  // namespace ledgerboard::intake
