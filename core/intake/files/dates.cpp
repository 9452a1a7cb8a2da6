#include "core/intake/files/dates.h"

#include <array>
#include <charconv>
#include <optional>
#include <string>

#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

// "5/6/2026" or "5-6-2026": two short numbers and a year of four digits.
struct Figures {
    int first = 0;
    int second = 0;
    int year = 0;
};

std::optional<Figures> figuresOf(std::string_view text) {
    text = model::trimmed(text);
    std::array<int, 3> numbers{};
    std::size_t count = 0;
    while (!text.empty() && count < 3) {
        const auto end = text.find_first_of("/-");
        const auto part = model::trimmed(text.substr(0, end));
        int value = 0;
        const auto [stop, error] = std::from_chars(part.data(), part.data() + part.size(), value);
        if (error != std::errc{} || stop != part.data() + part.size() || value < 0) {
            return std::nullopt;
        }
        numbers[count++] = value;
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    }
    if (count != 3 || !text.empty() || numbers[0] > 31 || numbers[1] > 31 || numbers[2] < 1000) {
        return std::nullopt;
    }
    return Figures{numbers[0], numbers[1], numbers[2]};
}

// "2026-05-15 00:00:00" and "2026-05-15T14:30" without the time.
std::string_view withoutTime(std::string_view text) {
    text = model::trimmed(text);
    if (text.size() >= 15 && (text[10] == 'T' || text[10] == ' ') && text[13] == ':' &&
        model::Date::parse(text.substr(0, 10)).ok() &&
        text.find_first_not_of("0123456789:.Z+-", 11) == std::string_view::npos) {
        return text.substr(0, 10);
    }
    return text;
}

}  // namespace

DateOrder dateOrderOf(const std::vector<std::string_view>& cells) {
    bool dayFirst = false;
    bool monthFirst = false;
    for (const auto cell : cells) {
        if (const auto figures = figuresOf(cell)) {
            dayFirst = dayFirst || (figures->first > 12 && figures->second <= 12);
            monthFirst = monthFirst || (figures->second > 12 && figures->first <= 12);
        }
    }
    if (dayFirst && monthFirst) {
        return DateOrder::Mixed;
    }
    return dayFirst ? DateOrder::DayFirst : monthFirst ? DateOrder::MonthFirst : DateOrder::Unknown;
}

model::Result<model::Date> parseDateIn(std::string_view text, DateOrder order) {
    text = withoutTime(text);
    const auto figures = figuresOf(text);
    if (!figures || figures->first > 12 || figures->second > 12 ||
        figures->first == figures->second) {
        return model::Date::parseLoose(text);
    }
    switch (order) {
        case DateOrder::DayFirst:
            return model::Date::fromYmd(figures->year, figures->second, figures->first);
        case DateOrder::MonthFirst:
            return model::Date::fromYmd(figures->year, figures->first, figures->second);
        case DateOrder::Mixed:
            return model::wrongUse(model::saying(
                "\"%1\" can be read as two different days, and the column writes some dates day "
                "first and others month first: write all of them like 2026-05-15",
                text));
        case DateOrder::Unknown:
            break;
    }
    return model::wrongUse(
        model::saying("\"%1\" can be read as two different days, and no other row of the column "
                      "shows which number is the month: write it like 2026-05-15",
                      text));
}

}  // namespace ledgerboard::intake
