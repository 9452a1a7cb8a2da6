#include "core/model/lists.h"

#include <array>
#include <optional>

#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::model {

namespace {

constexpr std::array<std::string_view, 7> kDays = {"Monday", "Tuesday",  "Wednesday", "Thursday",
                                                   "Friday", "Saturday", "Sunday"};

// "Mon", "tues", "Thursday": three letters or more of a day's name. Requires: letters only.
std::optional<int> dayNamed(std::string_view word) {
    if (word.size() < 3) {
        return std::nullopt;
    }
    for (std::size_t k = 0; k < kDays.size(); ++k) {
        bool same = word.size() <= kDays[k].size();
        for (std::size_t c = 0; same && c < word.size(); ++c) {
            same = (word[c] | 0x20) == (kDays[k][c] | 0x20);
        }
        if (same) {
            return static_cast<int>(k);
        }
    }
    return std::nullopt;
}

}  // namespace

Result<Weekdays> Weekdays::parse(std::string_view text) {
    std::int64_t bits = 0;
    std::optional<int> rangeFrom;
    std::optional<int> last;
    std::string word;
    auto takeWord = [&]() {
        if (word.empty()) {
            return true;
        }
        const auto day = dayNamed(word);
        word.clear();
        if (!day) {
            return false;
        }
        for (int k = rangeFrom.value_or(*day); k != *day; k = (k + 1) % 7) {
            bits |= 1LL << k;
        }
        bits |= 1LL << *day;
        rangeFrom.reset();
        last = day;
        return true;
    };
    bool good = true;
    for (const char c : trimmed(text)) {
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z')) {
            word += c;
            continue;
        }
        good = good && takeWord();
        if (c == '-') {
            good = good && last.has_value();
            rangeFrom = last;
        } else if (c != ' ' && c != ',' && c != ';' && c != '.') {
            good = false;
        }
    }
    good = good && takeWord() && !rangeFrom;
    if (!good || bits == 0) {
        return wrongUse(
            saying("\"%1\" is not a work week: write it like Mon Tue Wed Thu Fri, or Mon-Sat",
                   text.substr(0, 40)));
    }
    return fromBits(bits);
}

std::string Weekdays::toString() const {
    std::string out;
    for (std::size_t k = 0; k < kDays.size(); ++k) {
        if (has(static_cast<int>(k))) {
            out += (out.empty() ? "" : " ") + std::string(kDays[k].substr(0, 3));
        }
    }
    return out;
}

}  // namespace ledgerboard::model
