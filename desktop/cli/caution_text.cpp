#include "desktop/cli/caution_text.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/report/money_text.h"

#include "desktop/cli/paragraphs.h"

namespace ledgerboard::cli {

namespace {

using compute::CautionRead;
using compute::Cautions;
using compute::CautionState;
using nlohmann::json;

constexpr std::size_t kIndent = 26;

std::string asTyped(const std::string& text) {
    return text.find(' ') == std::string::npos ? text : "\"" + text + "\"";
}

const char* wordFor(CautionState state) {
    switch (state) {
        case CautionState::Open:
            return "open";
        case CautionState::Minor:
            return "minor";
        case CautionState::Acknowledged:
            return "acknowledged";
    }
    return "";
}

std::string sentenceOf(const CautionRead& caution) {
    std::string text = caution.about;
    // What the notes' reader says of a rule is told once, below.
    const bool isTold = caution.row != nullptr && !caution.readFrom.empty() && caution.item.isNil();
    if (!caution.why.empty() && !isTold) {
        text += ": " + caution.why;
    }
    if (!caution.readFrom.empty()) {
        text += " (notes: \"" + caution.readFrom + "\")";
    }
    return text;
}

std::string acknowledgement(const CautionRead& caution) {
    std::string text = caution.about + ": ";
    text += caution.testResult.empty() ? "acknowledged" : caution.testResult;
    std::string by = caution.acknowledgedBy;
    if (caution.acknowledgedOn) {
        by += (by.empty() ? "" : ", ") + caution.acknowledgedOn->toString();
    }
    return text + (by.empty() ? "" : " (" + by + ")");
}

template <class Pick, class Say>
std::string byName(Session& session, const Cautions& cautions, Pick&& pick, Say&& say) {
    std::string out;
    std::string last;
    for (const CautionRead& caution : cautions.all) {
        if (!pick(caution)) {
            continue;
        }
        const std::string name = caution.item.isNil() ? "The house" : caution.what;
        out += beside(session, "  " + (name == last ? std::string() : name), kIndent, say(caution));
        last = name;
    }
    return out;
}

// What the rules behind the open cautions mean, once each; or behind all where none is open.
std::string meanings(Session& session, const Cautions& cautions) {
    std::string out;
    for (const compute::CautionRow& row : compute::cautionRows()) {
        const bool isRaised =
            std::any_of(cautions.all.begin(), cautions.all.end(), [&](const CautionRead& caution) {
                return caution.row == &row && caution.state != CautionState::Acknowledged;
            });
        if (!isRaised) {
            continue;
        }
        out += "\n  " + std::string(row.about) + "\n";
        out += paragraph(session, row.text, 4);
        out += paragraph(session, "If not: " + std::string(row.consequence), 4);
        out += paragraph(session, "Source: " + std::string(row.source), 4);
    }
    return out.empty() ? "" : "\nWhat they mean\n" + out;
}

json oneJson(const CautionRead& caution) {
    json one = {{"about", caution.about},
                {"state", wordFor(caution.state)},
                {"holds_up", caution.holdsUp()},
                {"why", caution.why},
                {"text", std::string(caution.text())},
                {"source", std::string(caution.source())},
                {"consequence", std::string(caution.consequence())}};
    if (!caution.readFrom.empty()) {
        one["read_from"] = caution.readFrom;
    }
    if (!caution.record.isNil()) {
        one["caution"] = caution.record.raw().toString();
    }
    if (caution.state == CautionState::Acknowledged) {
        one["acknowledged_by"] =
            caution.acknowledgedBy.empty() ? json(nullptr) : json(caution.acknowledgedBy);
        one["acknowledged_on"] =
            caution.acknowledgedOn ? json(caution.acknowledgedOn->toString()) : json(nullptr);
        one["test_result"] = caution.testResult.empty() ? json(nullptr) : json(caution.testResult);
    }
    return one;
}

std::string summary(Session& session, const model::JobRows& rows, const Cautions& cautions) {
    const auto acknowledged = std::count_if(
        cautions.all.begin(), cautions.all.end(),
        [](const CautionRead& caution) { return caution.state == CautionState::Acknowledged; });
    return paragraph(session,
                     rows.job.name + ": " +
                         report::countText(static_cast<std::int64_t>(cautions.openCount()),
                                           "caution holds work up", "cautions hold work up") +
                         ", " + std::to_string(acknowledged) + " acknowledged.");
}

}  // namespace

std::string acknowledgeCommand(Session& session, const CautionRead& caution) {
    std::string name = caution.item.isNil() ? "house" : caution.what;
    if (auto finder = session.finder(); finder.ok() && !caution.item.isNil()) {
        name = finder.value()->nameOf(caution.item.raw());
    }
    return "ledgerboard acknowledge " + asTyped(name) + " " + asTyped(caution.about) +
           " --result \"what was found\"";
}

std::string cautionText(Session& session, const model::JobRows& rows, const Cautions& cautions) {
    std::string out = summary(session, rows, cautions);
    const CautionRead* first = nullptr;
    for (const CautionRead& caution : cautions.all) {
        first = first == nullptr && caution.holdsUp() ? &caution : first;
    }
    const auto isOpen = [](const CautionRead& caution) { return caution.holdsUp(); };
    if (first != nullptr) {
        out += "\nOpen: the item isn't marked begun before somebody acknowledges it\n";
        out += byName(session, cautions, isOpen, [](const CautionRead& caution) {
            return sentenceOf(caution) + (caution.isBegun ? " (begun in spite of it)" : "");
        });
        out += paragraph(session, "To close one: " + acknowledgeCommand(session, *first));
    }
    const auto isTold = [](const CautionRead& caution) {
        return caution.state != CautionState::Acknowledged && !caution.holdsUp();
    };
    if (std::string told = byName(session, cautions, isTold, sentenceOf); !told.empty()) {
        out += "\nTold, and holding nothing up\n" + told;
    }
    const auto isClosed = [](const CautionRead& caution) {
        return caution.state == CautionState::Acknowledged;
    };
    if (std::string closed = byName(session, cautions, isClosed, acknowledgement);
        !closed.empty()) {
        out += "\nAcknowledged\n" + closed;
    }
    if (!cautions.inSpite.empty()) {
        out += "\nMarked begun while a caution was open\n";
        for (const auto& mark : cautions.inSpite) {
            out += beside(session, "  " + mark.what, kIndent,
                          mark.on ? mark.on->toString() : "undated");
        }
    }
    return out + meanings(session, cautions) + "\n" + paragraph(session, compute::kCautionReminder);
}

json cautionJson(const Cautions& cautions) {
    json items = json::array();
    json house = json::array();
    for (const CautionRead& caution : cautions.all) {
        if (caution.item.isNil()) {
            house.push_back(oneJson(caution));
            continue;
        }
        const std::string id = caution.item.raw().toString();
        if (items.empty() || items.back()["item"] != id) {
            items.push_back({{"item", id},
                             {"name", caution.what},
                             {"begun", caution.isBegun},
                             {"cautions", json::array()}});
        }
        items.back()["cautions"].push_back(oneJson(caution));
    }
    json inSpite = json::array();
    for (const auto& mark : cautions.inSpite) {
        inSpite.push_back({{"mark", mark.mark.raw().toString()},
                           {"item", mark.what},
                           {"date", mark.on ? json(mark.on->toString()) : json(nullptr)}});
    }
    return {{"open", cautions.openCount()},
            {"items", std::move(items)},
            {"house", std::move(house)},
            {"marks_in_spite", std::move(inSpite)},
            {"reminder", std::string(compute::kCautionReminder)}};
}

}  // namespace ledgerboard::cli
