#include "core/model/decimal.h"

#include <cctype>

#include "core/model/saying.h"

namespace ledgerboard::model {

namespace {

constexpr std::int64_t kLargestUnits = 1'000'000'000'000'000;

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

// What stands around the digits: sign, currency mark, brackets.
struct Stripped {
    std::string_view digits;
    bool negative = false;
    bool twice = false;  // both brackets and a sign
};

Stripped stripped(std::string_view text) {
    Stripped out{trimmed(text)};
    if (out.digits.size() >= 2 && out.digits.front() == '(' && out.digits.back() == ')') {
        out.negative = true;
        out.digits = trimmed(out.digits.substr(1, out.digits.size() - 2));
    }
    auto takeSign = [&out] {
        static constexpr std::string_view kMinus = "\xE2\x88\x92";  // U+2212
        const bool bracketed = out.negative;
        if (!out.digits.empty() && (out.digits.front() == '-' || out.digits.front() == '+')) {
            out.negative = out.negative || out.digits.front() == '-';
            out.digits.remove_prefix(1);
        } else if (out.digits.substr(0, kMinus.size()) == kMinus) {
            out.negative = true;
            out.digits.remove_prefix(kMinus.size());
        } else {
            return false;
        }
        out.twice = bracketed;
        return true;
    };
    const bool signedBefore = takeSign();
    if (!out.digits.empty() && out.digits.front() == '$') {
        out.digits = trimmed(out.digits.substr(1));
        if (!signedBefore) {
            takeSign();
        }
    }
    return out;
}

// True where every comma of `whole` has exactly three digits behind it and digits before it.
bool commasWellPlaced(std::string_view whole) {
    const auto first = whole.find(',');
    if (first == std::string_view::npos) {
        return true;
    }
    if (first == 0 || first > 3) {
        return false;
    }
    for (std::size_t at = first; at < whole.size(); at += 4) {
        if (whole[at] != ',' || at + 4 > whole.size()) {
            return false;
        }
        for (std::size_t k = at + 1; k < at + 4; ++k) {
            if (!isDigit(whole[k])) {
                return false;
            }
        }
    }
    return true;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.front())) != 0) {
        text.remove_prefix(1);
    }
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.back())) != 0) {
        text.remove_suffix(1);
    }
    return text;
}

Result<std::int64_t> parseDecimal(std::string_view text, int decimals) {
    const std::string quoted = "\"" + std::string(trimmed(text).substr(0, 40)) + "\"";
    const Stripped body = stripped(text);
    const auto dot = body.digits.find('.');
    const std::string_view whole = body.digits.substr(0, dot);
    const std::string_view fraction =
        dot == std::string_view::npos ? std::string_view{} : body.digits.substr(dot + 1);
    if ((whole.empty() && fraction.empty()) || body.twice) {
        return wrongUse(saying("%1 is not a number: write it like 1250 or 1,250.50", quoted));
    }
    if (!commasWellPlaced(whole) || fraction.find(',') != std::string_view::npos) {
        return wrongUse(
            saying("%1 has a comma where none belongs: write 1,250.50, with a point for decimals",
                   quoted));
    }
    std::int64_t units = 0;
    auto take = [&units](char digit) {
        units = units * 10 + (digit - '0');
        return units <= kLargestUnits;
    };
    for (const char c : whole) {
        if (c == ',') {
            continue;
        }
        if (!isDigit(c)) {
            return wrongUse(saying("%1 is not a number: write it like 1250 or 1,250.50", quoted));
        }
        if (!take(c)) {
            return wrongUse(saying("%1 is too large to be kept", quoted));
        }
    }
    for (std::size_t k = 0; k < fraction.size() || k < static_cast<std::size_t>(decimals); ++k) {
        const char c = k < fraction.size() ? fraction[k] : '0';
        if (!isDigit(c)) {
            return wrongUse(saying("%1 is not a number: write it like 1250 or 1,250.50", quoted));
        }
        if (k >= static_cast<std::size_t>(decimals)) {
            if (c != '0') {
                return wrongUse(decimals == 0
                                    ? saying("%1 is not a whole number: round it", quoted)
                                    : saying("%1 has more than %2 decimals: round it to that many",
                                             quoted, decimals));
            }
            continue;
        }
        if (!take(c)) {
            return wrongUse(saying("%1 is too large to be kept", quoted));
        }
    }
    return body.negative ? -units : units;
}

std::string printDecimal(std::int64_t units, int decimals, int shown, bool fixed) {
    std::uint64_t magnitude =
        units < 0 ? 0 - static_cast<std::uint64_t>(units) : static_cast<std::uint64_t>(units);
    std::string digits = std::to_string(magnitude);
    const auto places = static_cast<std::size_t>(decimals);
    if (digits.size() <= places) {
        digits.insert(0, places + 1 - digits.size(), '0');
    }
    std::string out = digits.substr(0, digits.size() - places);
    std::string fraction = digits.substr(digits.size() - places);
    if (!fixed) {
        while (fraction.size() > static_cast<std::size_t>(shown) && fraction.back() == '0') {
            fraction.pop_back();
        }
    }
    if (!fraction.empty()) {
        out += "." + fraction;
    }
    return units < 0 ? "-" + out : out;
}

}  // namespace ledgerboard::model
