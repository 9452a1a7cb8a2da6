#include "core/compute/take_off_sizes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "core/compute/in_quotes.h"
#include "core/model/check.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

constexpr std::size_t kMostInList = 1'000;

const SizeKey* keyNamed(std::span<const SizeKey> keys, std::string_view name) {
    const auto found = std::find_if(keys.begin(), keys.end(),
                                    [&](const SizeKey& key) { return key.name == name; });
    return found == keys.end() ? nullptr : &*found;
}

std::string shown(double number) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%.10g", number);
    return text.data();
}

std::string listed(std::span<const SizeKey> keys) {
    std::string list;
    for (const SizeKey& key : keys) {
        list += (list.empty() ? "" : ", ") + std::string(key.name);
    }
    return list;
}

// Whether `word` is one of the words in `words`, which stand with spaces between.
bool isOneOf(std::string_view words, std::string_view word) {
    const std::string padded = " " + std::string(words) + " ";
    return !word.empty() && word.find(' ') == std::string_view::npos &&
           padded.find(" " + std::string(word) + " ") != std::string::npos;
}

model::Result<void> checkNumber(const SizeKey& key, double number) {
    const std::string name(key.name);
    if (!(number >= key.least && number <= key.most)) {
        return model::wrongUse(model::saying("%1 is %2: it must be from %3 to %4", name,
                                             shown(number), shown(key.least), shown(key.most)));
    }
    if (key.form == SizeForm::Count && number != std::floor(number)) {
        return model::wrongUse(
            model::saying("%1 is %2: it must be a whole number", name, shown(number)));
    }
    return {};
}

model::Result<void> checkGiven(const SizeKey& key, const GivenSize& given) {
    const std::string name(key.name);
    if (key.form == SizeForm::Word) {
        if (isOneOf(key.words, given.word)) {
            return {};
        }
        return model::wrongUse(model::saying("%1 must be one of these words: %2", name, key.words));
    }
    if (given.numbers.empty()) {
        return model::wrongUse(model::saying("%1 must be a number", name));
    }
    if (given.numbers.size() > 1 && key.form != SizeForm::Sum) {
        return model::wrongUse(model::saying("%1 must be one number, not a list", name));
    }
    if (given.numbers.size() > kMostInList) {
        return model::wrongUse(
            model::saying("%1 has more than 1000 numbers: give their sum", name));
    }
    for (const double number : given.numbers) {
        if (auto fine = checkNumber(key, number); !fine.ok()) {
            return fine;
        }
    }
    return {};
}

}  // namespace

model::Result<Sizes> Sizes::from(const TakeOffKind& kind, std::span<const GivenSize> given) {
    Sizes sizes;
    sizes.keys_ = kind.keys;
    for (const GivenSize& one : given) {
        const SizeKey* key = keyNamed(kind.keys, one.key);
        if (key == nullptr) {
            return model::wrongUse(model::saying("unknown key %1: %2 takes %3", inQuotes(one.key),
                                                 kind.what, listed(kind.keys)));
        }
        if (sizes.has(one.key)) {
            return model::wrongUse(model::saying("%1 is given twice: give it once", one.key));
        }
        if (auto fine = checkGiven(*key, one); !fine.ok()) {
            return fine.error();
        }
        double sum = 0;
        for (const double number : one.numbers) {
            sum += number;
        }
        sizes.held_.push_back({one.key, sum, one.word});
    }
    return sizes;
}

const Sizes::Held* Sizes::find(std::string_view key) const {
    const auto found =
        std::find_if(held_.begin(), held_.end(), [&](const Held& held) { return held.key == key; });
    return found == held_.end() ? nullptr : &*found;
}

bool Sizes::has(std::string_view key) const {
    return find(key) != nullptr;
}

double Sizes::value(std::string_view key) {
    if (const Held* held = find(key)) {
        return held->number;
    }
    const SizeKey* table = keyNamed(keys_, key);
    model::require(table != nullptr && table->usual.has_value(), "a size without a usual value");
    if (!table->usualSource.empty()) {
        assume({std::string(key), *table->usual, std::string(table->says),
                std::string(table->usualSource)});
    }
    return *table->usual;
}

std::string_view Sizes::word(std::string_view key) const {
    if (const Held* held = find(key)) {
        return held->word;
    }
    const SizeKey* table = keyNamed(keys_, key);
    model::require(table != nullptr && table->form == SizeForm::Word, "a word that is no word");
    return table->words.substr(0, table->words.find(' '));
}

void Sizes::assume(Assumption assumption) {
    const bool known = std::any_of(assumed_.begin(), assumed_.end(), [&](const Assumption& other) {
        return other.key == assumption.key;
    });
    if (!known) {
        assumed_.push_back(std::move(assumption));
    }
}

model::Result<double> flatArea(Sizes& sizes, std::span<const std::string_view> acrossKeys) {
    std::string_view across;
    std::string choice;
    for (const std::string_view key : acrossKeys) {
        choice += (choice.empty() ? "" : " or ") + std::string(key);
        if (!sizes.has(key)) {
            continue;
        }
        if (!across.empty()) {
            return model::wrongUse(model::saying(
                "give %1 or %2, not both: take off walls and ceiling one by one", across, key));
        }
        across = key;
    }
    if (sizes.has("area_sqft")) {
        if (sizes.has("length_ft") || !across.empty()) {
            return model::wrongUse(
                model::saying("give area_sqft, or length_ft with %1, not both", choice));
        }
        return sizes.value("area_sqft");
    }
    if (!sizes.has("length_ft")) {
        return model::wrongUse(
            model::saying("length_ft is missing: give length_ft with %1, or area_sqft", choice));
    }
    if (across.empty()) {
        return model::wrongUse(
            model::saying("%1 is missing: give length_ft with %2, or area_sqft", choice, choice));
    }
    return sizes.value("length_ft") * sizes.value(across);
}

model::Result<double> areaLessOpenings(Sizes& sizes) {
    constexpr std::array<std::string_view, 2> kHeightOrWidth = {"height_ft", "width_ft"};
    const auto flat = flatArea(sizes, kHeightOrWidth);
    if (!flat.ok()) {
        return flat.error();
    }
    const double sqft = flat.value() - sizes.value("openings_sqft");
    if (!(sqft > 0)) {
        return model::wrongUse("openings_sqft takes up all of the area: check it");
    }
    return sqft;
}

model::Result<void> needAll(const Sizes& sizes, std::initializer_list<std::string_view> keys,
                            std::string_view instead) {
    for (const std::string_view key : keys) {
        if (!sizes.has(key)) {
            return model::wrongUse(model::saying("%1 is missing: give %2", key, instead));
        }
    }
    return {};
}

model::Result<void> refuseBeside(const Sizes& sizes, std::string_view key,
                                 std::initializer_list<std::string_view> others) {
    for (const std::string_view other : others) {
        if (sizes.has(other)) {
            return model::wrongUse(model::saying("give %1 or %2, not both", key, other));
        }
    }
    return {};
}

double roundedUp(double amount, double step) {
    constexpr double kHair = 1e-9;
    const double steps = amount / step;
    return std::ceil(steps - kHair * std::max(1.0, steps)) * step;
}

double withWaste(double quantity, double wastePercent) {
    return quantity * (1 + wastePercent / 100);
}

Purchase inPacks(std::string what, double amount, double perPack, std::string unit) {
    const double packs = amount / perPack;
    return {std::move(what), packs, roundedUp(packs), std::move(unit)};
}

Purchase covering(Sizes& sizes, std::string what, double sqft, std::string_view packKey,
                  std::string packUnit) {
    if (sizes.has(packKey)) {
        return inPacks(std::move(what), sqft, sizes.value(packKey), std::move(packUnit));
    }
    return inPacks(std::move(what), sqft, 1, "sq ft");
}

TakeOff coveredArea(double sqft, double wastePercent) {
    TakeOff out;
    out.quantities = {{"area_sqft", sqft}, {"area_with_waste_sqft", withWaste(sqft, wastePercent)}};
    out.wastePercent = wastePercent;
    return out;
}

}  // namespace ledgerboard::compute
