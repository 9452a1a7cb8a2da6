#include "desktop/cli/work/fields.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

#include "core/compute/in_quotes.h"
#include "core/model/decimal.h"

namespace ledgerboard::work {

namespace {

constexpr std::size_t kMostInList = 100'000;

}  // namespace

Fields::Fields(const nlohmann::json& object, std::string place)
    : object_(object), place_(std::move(place)) {
    if (!object_.is_object()) {
        slip_ = place_ + "the input must be one JSON object, in { }";
    }
}

bool Fields::has(std::string_view key) const {
    return object_.is_object() && object_.contains(std::string(key));
}

const nlohmann::json* Fields::find(std::string_view key) {
    asked_.emplace(key);
    if (!has(key)) {
        return nullptr;
    }
    return &object_.at(std::string(key));
}

void Fields::slip(std::string_view key, const std::string& problem) {
    if (slip_.empty()) {
        slip_ = place_ + std::string(key) + problem;
    }
}

std::optional<double> Fields::read(std::string_view key, const nlohmann::json& value, Range range) {
    double number = 0;
    if (value.is_number()) {
        number = value.get<double>();
    } else if (value.is_string()) {
        constexpr int kDecimals = 3;
        constexpr double kUnits = 1000;
        const auto units = model::parseDecimal(value.get_ref<const std::string&>(), kDecimals);
        if (!units.ok()) {
            slip(key, ": " + units.error().message);
            return std::nullopt;
        }
        number = static_cast<double>(units.value()) / kUnits;
    } else {
        slip(key, " must be a number");
        return std::nullopt;
    }
    if (!(number >= range.least && number <= range.most)) {
        slip(key, " is " + shownNumber(number) + ": it must be from " + shownNumber(range.least) +
                      " to " + shownNumber(range.most));
        return std::nullopt;
    }
    return number;
}

double Fields::number(std::string_view key, Range range) {
    const nlohmann::json* value = find(key);
    if (value == nullptr) {
        slip(key, " is missing: give it as a number");
        return 0;
    }
    return read(key, *value, range).value_or(0);
}

std::optional<double> Fields::numberIfGiven(std::string_view key, Range range) {
    const nlohmann::json* value = find(key);
    return value == nullptr ? std::nullopt : read(key, *value, range);
}

int Fields::wholeNumber(std::string_view key, Range range) {
    const double value = number(key, range);
    if (value != std::floor(value)) {
        slip(key, " is " + shownNumber(value) + ": it must be a whole number");
    }
    return static_cast<int>(std::max(range.least, std::floor(value)));
}

model::Money Fields::money(std::string_view key) {
    const double amount = number(key, kMoneyRange);
    constexpr double kCents = 100;
    constexpr double kNearly = 1e-3;
    const double cents = std::round(amount * kCents);
    if (std::abs(cents - amount * kCents) > kNearly) {
        slip(key, " is " + shownNumber(amount) + ": give it in whole cents");
    }
    return model::Money::fromMinor(static_cast<std::int64_t>(cents));
}

bool Fields::flag(std::string_view key) {
    const nlohmann::json* value = find(key);
    if (value != nullptr && !value->is_boolean()) {
        slip(key, " must be true or false");
        return false;
    }
    return value != nullptr && value->get<bool>();
}

std::string Fields::text(std::string_view key) {
    const nlohmann::json* value = find(key);
    if (value == nullptr) {
        slip(key, " is missing: give it as a text");
        return {};
    }
    if (!value->is_string()) {
        slip(key, " must be a text, in quotes");
        return {};
    }
    return value->get<std::string>();
}

std::vector<std::string> Fields::textsIfGiven(std::string_view key) {
    const nlohmann::json* value = find(key);
    std::vector<std::string> texts;
    if (value == nullptr) {
        return texts;
    }
    const bool isList = value->is_array() && value->size() <= kMostInList;
    if (isList) {
        for (const nlohmann::json& text : *value) {
            texts.push_back(text.is_string() ? text.get<std::string>() : std::string());
        }
    }
    if (!isList || !std::all_of(value->begin(), value->end(),
                                [](const nlohmann::json& text) { return text.is_string(); })) {
        slip(key, " must be a list of texts, each in quotes");
    }
    return texts;
}

model::Date Fields::date(std::string_view key) {
    const nlohmann::json* value = find(key);
    if (value == nullptr) {
        slip(key, " is missing: give a date like \"2026-05-15\"");
        return {};
    }
    if (!value->is_string()) {
        slip(key, " must be a date, in quotes, like \"2026-05-15\"");
        return {};
    }
    const auto date = model::Date::parse(value->get_ref<const std::string&>());
    if (!date.ok()) {
        slip(key, ": " + date.error().message);
        return {};
    }
    return date.value();
}

const nlohmann::json* Fields::valueIfGiven(std::string_view key) {
    return find(key);
}

const nlohmann::json* Fields::list(std::string_view key) {
    const nlohmann::json* value = find(key);
    if (value == nullptr) {
        slip(key, " is missing: give a list, in [ ]");
        return nullptr;
    }
    if (!value->is_array() || value->empty()) {
        slip(key, " must be a list of at least one, in [ ]");
        return nullptr;
    }
    return notTooLong(key, value);
}

const nlohmann::json* Fields::listIfGiven(std::string_view key) {
    const nlohmann::json* value = find(key);
    if (value != nullptr && !value->is_array()) {
        slip(key, " must be a list, in [ ]");
        return nullptr;
    }
    return value == nullptr ? nullptr : notTooLong(key, value);
}

const nlohmann::json* Fields::objectIfGiven(std::string_view key) {
    const nlohmann::json* value = find(key);
    if (value != nullptr && !value->is_object()) {
        slip(key, " must be an object, in { }");
        return nullptr;
    }
    return value == nullptr ? nullptr : notTooLong(key, value);
}

std::optional<std::int64_t> Fields::wholeIfGiven(std::string_view key, Range range) {
    const auto value = numberIfGiven(key, range);
    if (value && *value != std::floor(*value)) {
        slip(key, " is " + shownNumber(*value) + ": it must be a whole number");
        return std::nullopt;
    }
    return value ? std::optional(static_cast<std::int64_t>(*value)) : std::nullopt;
}

const nlohmann::json* Fields::notTooLong(std::string_view key, const nlohmann::json* value) {
    if (value->size() > kMostInList) {
        slip(key, " has more than 100000 entries");
        return nullptr;
    }
    return value;
}

model::Result<void> Fields::done() const {
    if (object_.is_object()) {
        for (const auto& [key, value] : object_.items()) {
            if (asked_.find(key) != asked_.end()) {
                continue;
            }
            std::string known;
            for (const std::string& asked : asked_) {
                known += (known.empty() ? "" : ", ") + asked;
            }
            return model::wrongUse(place_ + "unknown key " + compute::inQuotes(key) +
                                   ": the keys are " + known);
        }
    }
    if (!slip_.empty()) {
        return model::wrongUse(slip_);
    }
    return {};
}

compute::DayCount dayCount(Fields& fields, std::string_view key) {
    const std::string name = fields.text(key);
    const auto basis = compute::dayCountNamed(name);
    if (!basis) {
        fields.slip(key, " is " + compute::inQuotes(name) +
                             ": it must be actual/360, actual/365, actual/actual-isda, "
                             "30/360-us, 30/360-bond or 30e/360");
    }
    return basis.value_or(compute::DayCount::Actual365);
}

std::string shownNumber(double number) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%.10g", number);
    return text.data();
}

nlohmann::json printed(double number) {
    constexpr double kWholeBelow = 1e15;
    const double shown = std::strtod(shownNumber(number).c_str(), nullptr);
    if (!std::isfinite(shown)) {
        return nullptr;
    }
    if (std::abs(shown) < kWholeBelow && shown == std::floor(shown)) {
        return static_cast<std::int64_t>(shown);
    }
    return shown;
}

nlohmann::json printed(std::optional<double> number) {
    return number ? printed(*number) : nlohmann::json(nullptr);
}

}  // namespace ledgerboard::work
