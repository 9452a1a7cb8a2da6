#include "core/report/plain_text.h"

#include <array>
#include <cstdint>
#include <utility>

#include "core/model/check.h"

namespace ledgerboard::report {

namespace {

constexpr char32_t kReplacement = 0xFFFD;

struct Range {
    char32_t first;
    char32_t last;
};

constexpr std::array<Range, 9> kNoWidth = {{{0x0300, 0x036F},
                                            {0x0483, 0x0489},
                                            {0x0591, 0x05BD},
                                            {0x064B, 0x065F},
                                            {0x1AB0, 0x1AFF},
                                            {0x1DC0, 0x1DFF},
                                            {0x200B, 0x200F},
                                            {0x20D0, 0x20FF},
                                            {0xFE00, 0xFE0F}}};

constexpr std::array<Range, 9> kTwoWide = {{{0x1100, 0x115F},
                                            {0x2E80, 0x303E},
                                            {0x3041, 0xA4CF},
                                            {0xAC00, 0xD7A3},
                                            {0xF900, 0xFAFF},
                                            {0xFE30, 0xFE6F},
                                            {0xFF00, 0xFF60},
                                            {0x1F300, 0x1FAFF},
                                            {0x20000, 0x3FFFD}}};

template <std::size_t N>
bool within(char32_t letter, const std::array<Range, N>& ranges) {
    for (const auto& range : ranges) {
        if (letter >= range.first && letter <= range.last) {
            return true;
        }
    }
    return false;
}

std::size_t columnsOfLetter(char32_t letter) {
    if (within(letter, kNoWidth)) {
        return 0;
    }
    return within(letter, kTwoWide) ? 2 : 1;
}

// Takes one letter off the front of `text`; kReplacement, and one byte, where it is not UTF-8
// (a stray or missing continuation, an overlong form, a surrogate, beyond U+10FFFF).
char32_t takeLetter(std::string_view& text) {
    const auto lead = static_cast<unsigned char>(text.front());
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xC2 ? 0
                               : lead < 0xE0 ? 2
                               : lead < 0xF0 ? 3
                               : lead < 0xF5 ? 4
                                             : 0;
    if (length == 0 || text.size() < length) {
        text.remove_prefix(1);
        return kReplacement;
    }
    char32_t letter = length == 1 ? lead : lead & (0xFFU >> (length + 1));
    for (std::size_t k = 1; k < length; ++k) {
        const auto next = static_cast<unsigned char>(text[k]);
        if ((next & 0xC0U) != 0x80U) {
            text.remove_prefix(1);
            return kReplacement;
        }
        letter = (letter << 6) | (next & 0x3FU);
    }
    const bool overlong = (length == 3 && letter < 0x800) || (length == 4 && letter < 0x10000);
    const bool outside = (letter >= 0xD800 && letter <= 0xDFFF) || letter > 0x10FFFF;
    if (overlong || outside) {
        text.remove_prefix(1);
        return kReplacement;
    }
    text.remove_prefix(length);
    return letter;
}

void appendUtf8(std::string& out, char32_t letter) {
    auto tail = [&out, letter](int shift) {
        out += static_cast<char>(0x80U | ((letter >> shift) & 0x3FU));
    };
    if (letter < 0x80) {
        out += static_cast<char>(letter);
    } else if (letter < 0x800) {
        out += static_cast<char>(0xC0U | (letter >> 6));
        tail(0);
    } else if (letter < 0x10000) {
        out += static_cast<char>(0xE0U | (letter >> 12));
        tail(6);
        tail(0);
    } else {
        out += static_cast<char>(0xF0U | (letter >> 18));
        tail(12);
        tail(6);
        tail(0);
    }
}

// U+00C0 to U+017F, each as the ASCII letter under its accent.
constexpr std::string_view kLatin =
    "AAAAAAACEEEEIIIIDNOOOOOxOUUUUYTsaaaaaaaceeeeiiiidnooooo/ouuuuyty"
    "AaAaAaCcCcCcCcDdDdEeEeEeEeEeGgGgGgGgHhHhIiIiIiIiIiJjJjKkkLlLlLlL"
    "lLlNnNnNnnNnOoOoOoOoRrRrRrSsSsSsSsTtTtTtUuUuUuUuUuUuWwYyYZzZzZzs";
static_assert(kLatin.size() == 0x180 - 0xC0);

constexpr std::array<std::pair<char32_t, std::string_view>, 24> kSigns = {{
    {0x00A0, " "}, {0x00A3, "GBP "}, {0x00B0, " deg"}, {0x00B1, "+/-"}, {0x00B2, "2"},
    {0x00B3, "3"}, {0x00B7, "."},    {0x00BC, "1/4"},  {0x00BD, "1/2"}, {0x00BE, "3/4"},
    {0x2009, " "}, {0x2010, "-"},    {0x2011, "-"},    {0x2012, "-"},   {0x2013, "-"},
    {0x2014, "-"}, {0x2018, "'"},    {0x2019, "'"},    {0x201C, "\""},  {0x201D, "\""},
    {0x2022, "*"}, {0x2026, "..."},  {0x20AC, "EUR "}, {0x2212, "-"},
}};

std::string_view inAscii(char32_t letter) {
    if (letter >= 0xC0 && letter < 0x180) {
        return kLatin.substr(letter - 0xC0, 1);
    }
    for (const auto& [sign, spelled] : kSigns) {
        if (sign == letter) {
            return spelled;
        }
    }
    return within(letter, kNoWidth) ? std::string_view{} : std::string_view{"?"};
}

// The bytes at the front of `text` that fill at most `columns`, combining marks included.
std::size_t bytesWithin(std::string_view text, std::size_t columns) {
    std::string_view rest = text;
    std::size_t used = 0;
    while (!rest.empty()) {
        std::string_view after = rest;
        const std::size_t wide = columnsOfLetter(takeLetter(after));
        if (used + wide > columns) {
            break;
        }
        used += wide;
        rest = after;
    }
    return text.size() - rest.size();
}

// U+0080 to U+009F are controls too, and so are the marks that turn the writing direction around.
bool movesTheCursor(char32_t letter) {
    return letter < 0x20 || (letter >= 0x7F && letter < 0xA0) ||
           (letter >= 0x2028 && letter <= 0x202E) || (letter >= 0x2066 && letter <= 0x2069);
}

}  // namespace

std::string shownText(std::string_view text, Script script) {
    std::string out;
    out.reserve(text.size());
    while (!text.empty()) {
        const char32_t letter = takeLetter(text);
        if (movesTheCursor(letter)) {
            out += ' ';
        } else if (letter < 0x80) {
            out += static_cast<char>(letter);
        } else if (script == Script::Ascii) {
            out += inAscii(letter);
        } else {
            appendUtf8(out, letter);
        }
    }
    return out;
}

std::size_t columnsOf(std::string_view text) {
    std::size_t columns = 0;
    while (!text.empty()) {
        columns += columnsOfLetter(takeLetter(text));
    }
    return columns;
}

std::string clipped(std::string_view text, std::size_t columns, Script script) {
    if (columnsOf(text) <= columns) {
        return std::string(text);
    }
    if (columns == 0) {
        return {};
    }
    std::string cut(text.substr(0, bytesWithin(text, columns - 1)));
    while (!cut.empty() && cut.back() == ' ') {
        cut.pop_back();
    }
    return cut + (script == Script::Unicode ? "…" : "~");
}

std::string_view frontOf(std::string_view text, std::size_t columns) {
    return text.substr(0, bytesWithin(text, columns));
}

std::string padded(std::string_view text, std::size_t columns) {
    const std::size_t used = columnsOf(text);
    return std::string(text) + std::string(used < columns ? columns - used : 0, ' ');
}

std::string paddedLeft(std::string_view text, std::size_t columns) {
    const std::size_t used = columnsOf(text);
    return std::string(used < columns ? columns - used : 0, ' ') + std::string(text);
}

std::vector<std::string> wrapped(std::string_view text, std::size_t columns) {
    model::require(columns >= 2, "text is wrapped to two columns at least");
    std::vector<std::string> lines;
    std::string line;
    auto close = [&lines, &line] {
        lines.push_back(line);
        line.clear();
    };
    while (!text.empty()) {
        const auto at = text.find(' ');
        std::string_view word = text.substr(0, at);
        text = at == std::string_view::npos ? std::string_view{} : text.substr(at + 1);
        if (word.empty()) {
            continue;
        }
        if (!line.empty() && columnsOf(line) + 1 + columnsOf(word) > columns) {
            close();
        }
        while (columnsOf(word) > columns) {
            const std::size_t bytes = bytesWithin(word, columns);
            lines.emplace_back(word.substr(0, bytes));
            word.remove_prefix(bytes);
        }
        line += (line.empty() ? "" : " ") + std::string(word);
    }
    if (!line.empty() || lines.empty()) {
        close();
    }
    return lines;
}

}  // namespace ledgerboard::report
