// How are the keys of a JSON object read strictly, so that a slip is named and never ignored?
//
// Reading goes on after a slip and returns neutral values; the first slip is kept and comes out of
// done(), so a caller reads everything first and asks once.
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/compute/interest.h"
#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/result.h"

namespace ledgerboard::work {

// Both ends allowed.
struct Range {
    double least = 0;
    double most = 0;
};

inline constexpr Range kMoneyRange{0, 1e12};
inline constexpr Range kPercentRange{0, 100};

class Fields {
  public:
    // `place` stands before each message, as "item 3 in items: "; empty for the outermost object.
    // Requires: `object` outlives this.
    explicit Fields(const nlohmann::json& object, std::string place = {});

    [[nodiscard]] bool has(std::string_view key) const;

    // A JSON number, or the same as a decimal string ("1250.00"). 0 after a slip.
    [[nodiscard]] double number(std::string_view key, Range range);
    [[nodiscard]] std::optional<double> numberIfGiven(std::string_view key, Range range);
    // A number without a fraction. The least of the range after a slip.
    [[nodiscard]] int wholeNumber(std::string_view key, Range range);
    // Whole cents, not below 0. 0 after a slip.
    [[nodiscard]] model::Money money(std::string_view key);
    // true or false; false where the key is left out.
    [[nodiscard]] bool flag(std::string_view key);
    [[nodiscard]] std::string text(std::string_view key);
    // A list of texts; empty where it is left out.
    [[nodiscard]] std::vector<std::string> textsIfGiven(std::string_view key);
    [[nodiscard]] model::Date date(std::string_view key);
    // Whatever stands there, for a caller that takes more than one form. Null where it is not
    // given.
    [[nodiscard]] const nlohmann::json* valueIfGiven(std::string_view key);
    // An array of at least one. Null after a slip.
    [[nodiscard]] const nlohmann::json* list(std::string_view key);
    // An array, empty or not. Null where it is not given, and after a slip.
    [[nodiscard]] const nlohmann::json* listIfGiven(std::string_view key);

    // An object, empty or not. Null where it is not given, and after a slip.
    [[nodiscard]] const nlohmann::json* objectIfGiven(std::string_view key);
    // A number without a fraction. Empty where it is not given, and after a slip.
    // Requires: both ends of `range` are whole, and within 2^53.
    [[nodiscard]] std::optional<std::int64_t> wholeIfGiven(std::string_view key, Range range);

    // Notes that `key` is wrong: `problem` follows its name, as " must be a number".
    void slip(std::string_view key, const std::string& problem);

    // The first slip, if any; a key that nobody asked for comes before all others.
    [[nodiscard]] model::Result<void> done() const;

  private:
    [[nodiscard]] const nlohmann::json* find(std::string_view key);
    [[nodiscard]] const nlohmann::json* notTooLong(std::string_view key,
                                                   const nlohmann::json* value);
    [[nodiscard]] std::optional<double> read(std::string_view key, const nlohmann::json& value,
                                             Range range);

    const nlohmann::json& object_;
    std::string place_;
    std::set<std::string, std::less<>> asked_;
    std::string slip_;
};

// The day count that `key` names. Actual/365 after a slip.
[[nodiscard]] compute::DayCount dayCount(Fields& fields, std::string_view key);

// A number as it is printed: 10 significant digits, and without a fraction where it is whole.
[[nodiscard]] nlohmann::json printed(double number);
// Null where there is none.
[[nodiscard]] nlohmann::json printed(std::optional<double> number);

// A number in a message.
[[nodiscard]] std::string shownNumber(double number);

}  // namespace ledgerboard::work
