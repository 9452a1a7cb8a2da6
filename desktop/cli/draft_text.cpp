#include "desktop/cli/draft_text.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/report/money_text.h"

namespace ledgerboard::cli {

using nlohmann::json;

namespace {

json sourced(json out, const intake::Source& source) {
    out["source"] = source.sentence;
    out["line"] = source.line;
    out["sure"] = source.sure;
    return out;
}

json numberOrNull(const std::optional<model::Quantity>& quantity) {
    return quantity ? json::parse(quantity->toString()) : json(nullptr);
}

json moneyOrNull(const std::optional<model::Money>& money) {
    return money ? json(money->toString()) : json(nullptr);
}

// A text in lines that begin with `indent` and end within `width`.
std::string indented(const std::string& text, const std::string& indent, std::size_t width,
                     report::Script script) {
    std::string out;
    const std::size_t room = width > indent.size() + 20 ? width - indent.size() : 20;
    for (const auto& line : report::wrapped(report::shownText(text, script), room)) {
        out += indent + line + "\n";
    }
    return out;
}

std::string sourceText(const intake::Source& source, std::size_t width, report::Script script) {
    return indented("line " + std::to_string(source.line) + ", sure " +
                        std::to_string(source.sure) + ": " + source.sentence,
                    "      ", width, script);
}

std::string itemText(const intake::DraftItem& item, std::size_t width, report::Script script) {
    std::string text = item.treatment + " " + item.object;
    if (item.quantity) {
        text += ", " + item.quantity->toString() + (item.unit.empty() ? "" : " " + item.unit);
    }
    if (item.cost) {
        text += ", " + report::centsText(*item.cost, script);
    }
    if (item.days) {
        text += ", " + item.days->toString() + " days";
    }
    if (item.leadDays) {
        text += ", " + item.leadDays->toString() + " days from order";
    }
    if (!item.note.empty() && item.note != item.source.sentence) {
        text += " (" + item.note + ")";
    }
    return indented(text, "  ", width, script) + sourceText(item.source, width, script);
}

std::string alternateText(const intake::DraftAlternate& alternate, std::size_t width,
                          report::Script script) {
    std::string text = indented(alternate.space + ": " + alternate.question, "  ", width, script);
    for (const auto& option : alternate.options) {
        std::string line = "or: " + option.name;
        if (option.cost) {
            line += ", " + report::centsText(*option.cost, script);
        }
        if (option.days) {
            line += ", " + option.days->toString() + " days";
        }
        if (!option.needs.empty()) {
            line += " (needs " + option.needs + ")";
        }
        text += indented(line, "    ", width, script);
    }
    return text + sourceText(alternate.source, width, script);
}

bool isMoneyFact(const std::string& name) {
    return name == "purchase" || name == "resale" || name == "budget" || name == "profit";
}

// "days_on_market" as people say it.
std::string factName(std::string name) {
    std::replace(name.begin(), name.end(), '_', ' ');
    return name;
}

// Money with its thousands apart, in whole units where it is whole.
std::string factText(const intake::DraftFact& fact, report::Script script) {
    const auto money = isMoneyFact(fact.name)
                           ? model::Money::parse(fact.value)
                           : model::Result<model::Money>(model::wrongUse("no money"));
    if (!money.ok()) {
        return fact.value;
    }
    return money.value().minor() % 100 == 0 ? report::wholeText(money.value(), script)
                                            : report::centsText(money.value(), script);
}

}  // namespace

std::string draftText(const intake::Draft& draft, std::size_t width, report::Script script) {
    std::string text;
    auto itemsOf = [&](const std::string& space) {
        std::string found;
        for (const auto& item : draft.items) {
            if (item.space == space) {
                found += itemText(item, width, script);
            }
        }
        return found;
    };
    for (const auto& space : draft.spaces) {
        const std::string found = itemsOf(space.name);
        text += (text.empty() ? "" : "\n") + report::shownText(space.name, script) + "\n" +
                (found.empty() ? "  nothing to do was said\n" : found);
    }
    if (const std::string loose = itemsOf(""); !loose.empty()) {
        text += "\nNo space said\n" + loose;
    }
    if (!draft.alternates.empty()) {
        text += "\nStill open\n";
        for (const auto& alternate : draft.alternates) {
            text += alternateText(alternate, width, script);
        }
    }
    if (!draft.facts.empty()) {
        text += "\nFacts\n";
        for (const auto& fact : draft.facts) {
            text +=
                indented(factName(fact.name) + ": " + factText(fact, script), "  ", width, script) +
                sourceText(fact.source, width, script);
        }
    }
    if (!draft.cautions.empty()) {
        text += "\nCautions\n";
        for (const auto& caution : draft.cautions) {
            text += indented(caution.about + ": " + caution.why, "  ", width, script) +
                    sourceText(caution.source, width, script);
        }
        text += indented(
            "Reminder only. Rules change by place. Ask your building office and a licensed trade.",
            "  ", width, script);
    }
    if (!draft.ownWords.empty()) {
        text += "\nYour own words, " + std::to_string(draft.ownWords.size()) + " used\n";
        for (const auto& word : draft.ownWords) {
            text += indented(word, "  ", width, script);
        }
    }
    if (draft.leftOut > 0) {
        text += (text.empty() ? "" : "\n") + std::string("Too unsure to be made items: ") +
                std::to_string(draft.leftOut) + ". With --unsure they are shown as well.\n";
    }
    if (text.empty()) {
        return "No work was found in these notes.\n";
    }
    return text;
}

json draftJson(const intake::Draft& draft) {
    json document = {{"spaces", json::array()},     {"items", json::array()},
                     {"alternates", json::array()}, {"facts", json::object()},
                     {"cautions", json::array()},   {"own_words", draft.ownWords},
                     {"left_out", draft.leftOut}};
    for (const auto& space : draft.spaces) {
        document["spaces"].push_back({{"name", space.name}});
    }
    for (const auto& item : draft.items) {
        document["items"].push_back(sourced({{"space", item.space},
                                             {"treatment", item.treatment},
                                             {"object", item.object},
                                             {"note", item.note},
                                             {"quantity", numberOrNull(item.quantity)},
                                             {"unit", item.unit},
                                             {"cost", moneyOrNull(item.cost)},
                                             {"days", numberOrNull(item.days)},
                                             {"lead_days", numberOrNull(item.leadDays)}},
                                            item.source));
    }
    for (const auto& alternate : draft.alternates) {
        json options = json::array();
        for (const auto& option : alternate.options) {
            options.push_back({{"name", option.name},
                               {"cost", moneyOrNull(option.cost)},
                               {"days", numberOrNull(option.days)},
                               {"needs", option.needs}});
        }
        document["alternates"].push_back(sourced(
            {{"space", alternate.space}, {"question", alternate.question}, {"options", options}},
            alternate.source));
    }
    for (const auto& fact : draft.facts) {
        // Counts are numbers; money stays text, dates too.
        const bool isText = fact.value.find('-') != std::string::npos || isMoneyFact(fact.name);
        json value = isText ? json(fact.value) : json::parse(fact.value, nullptr, false);
        if (value.is_discarded()) {
            value = fact.value;
        }
        document["facts"][fact.name].push_back(sourced({{"value", value}}, fact.source));
    }
    for (const auto& caution : draft.cautions) {
        document["cautions"].push_back(
            sourced({{"about", caution.about}, {"why", caution.why}}, caution.source));
    }
    return document;
}

std::string explainedText(const intake::Reading& reading) {
    std::string text;
    for (const auto& sentence : reading.explained) {
        text += "line " + std::to_string(sentence.line) + ": " + sentence.sentence + "\n";
        for (const auto& stage : sentence.stages) {
            text += "    " + stage.stage + ": " + stage.made + "\n";
        }
    }
    return text + "\n";
}

json explainedJson(const intake::Reading& reading) {
    json rows = json::array();
    for (const auto& sentence : reading.explained) {
        json stages = json::array();
        for (const auto& stage : sentence.stages) {
            stages.push_back({{"stage", stage.stage}, {"made", stage.made}});
        }
        rows.push_back(
            {{"line", sentence.line}, {"sentence", sentence.sentence}, {"stages", stages}});
    }
    return rows;
}

}  // namespace ledgerboard::cli
