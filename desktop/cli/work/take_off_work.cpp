// work take-off: how much material a piece of work takes, and what is bought.
#include <sstream>
#include <vector>

#include "core/compute/take_off.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr std::string_view kTakes =
    "  what    slab, paint, tile, wall-board, roof, flooring, sod, gravel,\n"
    "          baseboard, insulation or fixtures\n"
    "  and its sizes, below; feet, inches and so on stand at the end of each key\n";

constexpr std::string_view kGives =
    "  quantities      unrounded, without waste unless named so\n"
    "  waste_percent   null where the work is counted\n"
    "  buy             what is bought: needed with waste, and rounded up to what\n"
    "                  is sold\n"
    "  assumed         every value you didn't give, with where it comes from\n"
    "  source          of the arithmetic\n"
    "  caution         the usual one; it is never the whole of it\n";

// One key and its value as core/compute takes them.
model::Result<compute::GivenSize> given(const std::string& key, const json& value) {
    compute::GivenSize size{key, {}, {}};
    const model::Error notNumbers = model::wrongUse(key + " must be a number");
    if (value.is_number()) {
        size.numbers.push_back(value.get<double>());
    } else if (value.is_string()) {
        size.word = value.get<std::string>();
    } else if (value.is_array() && !value.empty()) {
        for (const json& one : value) {
            if (!one.is_number()) {
                return model::wrongUse(key + " must be a number, or a list of numbers");
            }
            size.numbers.push_back(one.get<double>());
        }
    } else {
        return notNumbers;
    }
    return size;
}

json output(std::string_view what, const compute::TakeOff& takeOff) {
    json quantities = json::object();
    for (const compute::Figure& figure : takeOff.quantities) {
        quantities[std::string(figure.key)] = printed(figure.value);
    }
    json buy = json::array();
    for (const compute::Purchase& purchase : takeOff.buy) {
        buy.push_back({{"what", purchase.what},
                       {"needed", printed(purchase.needed)},
                       {"bought", printed(purchase.bought)},
                       {"unit", purchase.unit}});
    }
    json assumed = json::array();
    for (const compute::Assumption& assumption : takeOff.assumed) {
        assumed.push_back({{"key", assumption.key},
                           {"value", printed(assumption.value)},
                           {"says", assumption.says},
                           {"source", assumption.source}});
    }
    return {{"what", std::string(what)},
            {"quantities", std::move(quantities)},
            {"waste_percent", printed(takeOff.wastePercent)},
            {"buy", std::move(buy)},
            {"assumed", std::move(assumed)},
            {"source", std::string(takeOff.source)},
            {"caution", std::string(takeOff.caution)}};
}

model::Result<json> run(const json& input) {
    if (!input.is_object()) {
        return model::wrongUse("the input must be one JSON object, in { }");
    }
    const auto found = input.find("what");
    if (found == input.end()) {
        return model::wrongUse("what is missing: name the work, as \"what\": \"slab\"");
    }
    if (!found->is_string()) {
        return model::wrongUse("what must be a text, as \"what\": \"slab\"");
    }
    const auto what = found->get<std::string>();
    std::vector<compute::GivenSize> sizes;
    for (const auto& [key, value] : input.items()) {
        if (key == "what") {
            continue;
        }
        auto size = given(key, value);
        if (!size.ok()) {
            return size.error();
        }
        sizes.push_back(std::move(size.value()));
    }
    const auto takeOff = compute::takeOff(what, sizes);
    if (!takeOff.ok()) {
        return takeOff.error();
    }
    return output(what, takeOff.value());
}

// `text` broken into lines of at most `width`, each after the first behind `indent` blanks.
std::string wrapped(const std::string& text, std::size_t indent, std::size_t width) {
    std::istringstream words(text);
    std::string out;
    std::size_t column = indent;
    for (std::string word; words >> word;) {
        if (column > indent && column + 1 + word.size() > width) {
            out += "\n" + std::string(indent, ' ') + word;
            column = indent + word.size();
            continue;
        }
        out += (column > indent ? " " : "") + word;
        column += word.size() + (column > indent ? 1 : 0);
    }
    return out;
}

std::string keyText(const compute::SizeKey& key) {
    std::string text(key.says);
    if (key.form == compute::SizeForm::Word) {
        const std::string words(key.words);
        return text + ": one of " + words + "; " + words.substr(0, words.find(' ')) +
               " where not given";
    }
    text += " (" + shownNumber(key.least) + " to " + shownNumber(key.most) + ")";
    if (key.usual) {
        text += "; " + shownNumber(*key.usual) + " where not given";
        if (!key.usualSource.empty()) {
            text += " (" + std::string(key.usualSource) + ")";
        }
    }
    return text;
}

std::string keysOfAllKinds() {
    constexpr std::size_t kColumn = 30;
    constexpr std::size_t kWidth = 78;
    std::string text;
    for (const compute::TakeOffKind& kind : compute::takeOffKinds()) {
        text += std::string(kind.what) + ": " + std::string(kind.says) + "\n";
        for (const compute::SizeKey& key : kind.keys) {
            std::string name = "  " + std::string(key.name);
            name.resize(kColumn, ' ');
            text += name + wrapped(keyText(key), kColumn, kWidth) + "\n";
        }
        text += "  " + wrapped("Caution: " + std::string(kind.caution), 2, kWidth) + "\n";
        text += "  Example: " + std::string(kind.example) + "\n\n";
    }
    return text;
}

}  // namespace

Calculation takeOffCalculation() {
    return {"take-off",
            "how much material a piece of work takes, and what is bought",
            kTakes,
            kGives,
            R"({"what":"roof","area_sqft":2000,"rise_in":6})",
            run,
            keysOfAllKinds};
}

}  // namespace ledgerboard::work
