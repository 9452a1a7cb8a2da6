#include "core/intake/notes/line_leads.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/intake/notes/characters.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kLongestName = 24;

// The length of "am", " PM" at the start, a narrow space before it allowed; 0 if none.
std::size_t halfLength(std::string_view text) {
    constexpr std::string_view kNarrow = "\xE2\x80\xAF";
    const std::size_t space = text.starts_with(' ') ? 1 : text.starts_with(kNarrow) ? 3 : 0;
    const std::string_view half = text.substr(std::min(space, text.size()), 2);
    const bool is = half == "am" || half == "pm" || half == "AM" || half == "PM";
    return is && space > 0 ? space + 2 : 0;
}

// The length of "4/11/26, ", "2026-11-04 " at the start; 0 if there is none.
std::size_t dateLength(std::string_view text) {
    std::size_t at = 0;
    for (int part = 0; part < 3; ++part) {
        std::size_t digits = 0;
        while (at + digits < text.size() && isDigit(text[at + digits])) {
            ++digits;
        }
        if (digits == 0 || digits > 4) {
            return 0;
        }
        at += digits;
        if (part < 2) {
            if (at >= text.size() || (text[at] != '/' && text[at] != '.' && text[at] != '-')) {
                return 0;
            }
            ++at;
        }
    }
    at += at < text.size() && text[at] == ',' ? 1 : 0;
    return at < text.size() && (text[at] == ' ' || text[at] == 'T') ? at + 1 : 0;
}

// True when a word of `name` means something to the tables: then it is a heading, not a person.
bool meansSomething(std::string_view name, Speller& speller) {
    std::vector<Token> tokens;
    cutTokens(name, 0, speller, tables().lexicon, tokens);
    for (const Token& token : tokens) {
        const std::uint32_t node = tables().phrases.step(0, token.word);
        for (const Meaning& meaning : tables().phrases.at(node)) {
            const bool telling = meaning.from == From::Object || meaning.from == From::Act ||
                                 meaning.from == From::Space || meaning.from == From::Fact;
            if (node != 0 && telling) {
                return true;
            }
        }
    }
    return false;
}

// "Speaker 2", as a program that writes down talk names who speaks.
bool isNumberedSpeaker(std::string_view name) {
    static constexpr std::array<std::string_view, 5> kWords = {"speaker", "voice", "person",
                                                               "participant", "caller"};
    const std::size_t gap = name.find(' ');
    return gap != std::string_view::npos && gap + 1 < name.size() && gap + 3 >= name.size() &&
           std::all_of(name.begin() + static_cast<std::ptrdiff_t>(gap) + 1, name.end(),
                       [](char c) { return isDigit(c) || isUpper(c); }) &&
           isOneOf(plainWord(name.substr(0, gap)), kWords);
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view kWhite = " \t\r\f\v";
    const std::size_t begin = text.find_first_not_of(kWhite);
    if (begin == std::string_view::npos) {
        return {};
    }
    return text.substr(begin, text.find_last_not_of(kWhite) - begin + 1);
}

std::size_t clockLength(std::string_view text) {
    std::size_t at = 0;
    int parts = 0;
    while (true) {
        std::size_t digits = 0;
        while (at + digits < text.size() && isDigit(text[at + digits])) {
            ++digits;
        }
        if (digits == 0 || digits > 2) {
            return 0;
        }
        at += digits;
        ++parts;
        if (at + 1 < text.size() && text[at] == ':' && isDigit(text[at + 1]) && parts < 4) {
            ++at;
            continue;
        }
        break;
    }
    if (parts < 2) {
        return 0;
    }
    if (at + 1 < text.size() && (text[at] == '.' || text[at] == ',') && isDigit(text[at + 1])) {
        ++at;
        while (at < text.size() && isDigit(text[at])) {
            ++at;
        }
    }
    return at + halfLength(text.substr(at));
}

bool takeStamp(std::string_view& text) {
    std::string_view rest = text;
    const char open = rest.empty() ? '\0' : rest.front();
    const bool bracket = open == '[' || open == '(' || open == '<';
    if (bracket) {
        rest.remove_prefix(1);
    }
    const std::size_t date = dateLength(rest);
    const std::size_t clock = clockLength(rest.substr(date));
    const std::size_t length = date + clock;
    if (clock == 0) {
        return false;
    }
    rest.remove_prefix(length);
    if (bracket) {
        if (rest.empty() || (rest.front() != ']' && rest.front() != ')' && rest.front() != '>')) {
            return false;
        }
        rest.remove_prefix(1);
    } else if (!rest.empty() && rest.front() != ' ' && rest.front() != '\t') {
        return false;
    }
    rest = trimmed(rest);
    if (rest.starts_with("- ") || rest.starts_with(": ")) {
        rest = trimmed(rest.substr(1));
    }
    text = rest;
    return true;
}

namespace {

// Where a name with the time beside it ends, as messages are saved: "Nora, 9:41: ", "Pat [10:02] ".
// Nothing where the text opens otherwise.
LeadingName nameAndTime(std::string_view text) {
    const std::size_t end = text.substr(0, kLongestName + 1).find_first_of(",[(");
    if (end == std::string_view::npos || end == 0) {
        return {};
    }
    std::size_t at = text.find_first_not_of(" ,[(", end);
    if (at == std::string_view::npos) {
        return {};
    }
    at += dateLength(text.substr(at));
    const std::size_t clock = clockLength(text.substr(at));
    const std::size_t after = std::min(text.find_first_not_of("]):", at + clock), text.size());
    const bool closed = after > at + clock && (after == text.size() || text[after] == ' ');
    return clock > 0 && closed ? LeadingName{trimmed(text.substr(0, end)), after} : LeadingName{};
}

}  // namespace

LeadingName leadingName(std::string_view text) {
    if (text.empty() || !isUpper(text.front())) {
        return {};
    }
    if (const LeadingName timed = nameAndTime(text); timed.length > 0) {
        return timed;
    }
    constexpr std::array<std::string_view, 4> kMarks = {":", " - ", " \xE2\x80\x93 ",
                                                        " \xE2\x80\x94 "};
    const std::string_view head = text.substr(0, kLongestName + kMarks.back().size());
    std::size_t end = std::string_view::npos;
    std::size_t length = 0;
    for (const std::string_view mark : kMarks) {
        const std::size_t at = head.find(mark);
        if (at < end) {
            end = at;
            length = mark.size();
        }
    }
    if (end == std::string_view::npos || end == 0 || end > kLongestName ||
        end + length >= text.size()) {
        return {};
    }
    const std::string_view name = text.substr(0, end);
    const bool plain = std::all_of(name.begin(), name.end(), [](char c) {
        return isLetter(c) || isDigit(c) || c == ' ' || c == '.' || c == '\'' || c == '-';
    });
    const bool few = std::count(name.begin(), name.end(), ' ') <= 2;
    // "N - faucet", "BR2 - carpet": a code or a place rather than a name.
    const bool code = length == kMarks[1].size() &&
                      (name.size() < 3 || std::any_of(name.begin(), name.end(), isDigit));
    return plain && few && !code ? LeadingName{name, end + length} : LeadingName{};
}

std::set<std::string_view> speakersOf(const std::vector<std::string_view>& lines) {
    constexpr std::size_t kMostNames = 200;
    std::map<std::string_view, int> names;
    for (const std::string_view line : lines) {
        const std::string_view name = leadingName(line).name;
        if (!name.empty() && (names.size() < kMostNames || names.contains(name))) {
            ++names[name];
        }
    }
    Speller speller(tables().lexicon);
    std::map<std::string_view, int> meaning;
    std::erase_if(names, [&](const auto& entry) {
        const bool means = entry.second > 1 && !isNumberedSpeaker(entry.first) &&
                           meansSomething(entry.first, speller);
        if (means) {
            meaning.insert(entry);
        }
        return entry.second < 2 || means;
    });
    constexpr int kOften = 4;  // "Kit:", again and again among those who speak: a person
    for (const auto& [name, count] : meaning) {
        if (!names.empty() && count >= kOften && name.find(' ') == std::string_view::npos) {
            names.insert({name, count});
        }
    }
    std::set<std::string_view> found;
    for (const auto& [name, count] : names) {
        found.insert(name);
    }
    return found;
}

}  // namespace ledgerboard::intake
