#include "desktop/cli/work/network_input.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <unordered_map>

#include "core/compute/in_quotes.h"

namespace ledgerboard::work {

namespace {

using model::LinkKind;
using nlohmann::json;

constexpr Range kDaysRange{0, 1e6};
constexpr Range kLagRange{-1e6, 1e6};

struct NamedKind {
    std::string_view name;
    LinkKind kind;
};

constexpr std::array<NamedKind, 4> kKinds = {{{"FS", LinkKind::FinishToStart},
                                              {"SS", LinkKind::StartToStart},
                                              {"FF", LinkKind::FinishToFinish},
                                              {"SF", LinkKind::StartToFinish}}};

std::int64_t unitsOf(double days) {
    return std::llround(days * kUnitsPerDay);
}

struct After {
    std::string id;
    LinkKind kind = LinkKind::FinishToStart;
    std::int64_t lag = 0;
};

// One entry of "after" as an object. `place` names it.
model::Result<After> readLink(const json& entry, const std::string& place) {
    Fields fields(entry, place);
    After after;
    after.id = fields.text("id");
    after.lag = unitsOf(fields.numberIfGiven("lag", kLagRange).value_or(0));
    if (fields.has("kind")) {
        const std::string name = fields.text("kind");
        const auto* found = std::find_if(kKinds.begin(), kKinds.end(),
                                         [&](const NamedKind& one) { return one.name == name; });
        if (found == kKinds.end()) {
            fields.slip("kind", " is " + compute::inQuotes(name) + ": it must be FS, SS, FF or SF");
        } else {
            after.kind = found->kind;
        }
    }
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    return after;
}

model::Result<std::vector<After>> readAfter(const json* list, const std::string& place) {
    std::vector<After> out;
    if (list == nullptr) {
        return out;
    }
    for (const json& entry : *list) {
        if (entry.is_string()) {
            out.push_back({entry.get<std::string>()});
            continue;
        }
        const std::string which = place + "entry " + std::to_string(out.size() + 1) + " of after: ";
        if (!entry.is_object()) {
            return model::wrongUse(which +
                                   "it must be an id in quotes, or {\"id\", \"lag\", "
                                   "\"kind\"}");
        }
        auto after = readLink(entry, which);
        if (!after.ok()) {
            return after.error();
        }
        out.push_back(std::move(after).value());
    }
    return out;
}

std::string placeOf(std::size_t k) {
    return "item " + std::to_string(k + 1) + " in items: ";
}

model::Result<void> loopNamed(const NamedNetwork& network) {
    const auto loop = compute::findLoop(network.ids.size(), network.precedences);
    if (loop.empty()) {
        return {};
    }
    constexpr std::size_t kMostShown = 20;
    std::string ring;
    for (std::size_t k = 0; k < std::min(loop.size(), kMostShown); ++k) {
        ring += compute::inQuotes(network.ids[loop[k]]) + " > ";
    }
    ring += loop.size() > kMostShown ? "... > " : "";
    return model::wrongUse("after: the items wait for each other in a loop: " + ring +
                           compute::inQuotes(network.ids[loop[0]]) +
                           ": take one of these out of after");
}

// Turns the ids waited for into positions.
model::Result<void> connect(const std::vector<std::vector<After>>& after, NamedNetwork& network) {
    std::unordered_map<std::string, std::size_t> byId;
    for (std::size_t k = 0; k < network.ids.size(); ++k) {
        if (!byId.emplace(network.ids[k], k).second) {
            return model::wrongUse(placeOf(k) + "id " + compute::inQuotes(network.ids[k]) +
                                   " is given twice: each item needs an id of its own");
        }
    }
    for (std::size_t k = 0; k < after.size(); ++k) {
        for (const After& one : after[k]) {
            const auto found = byId.find(one.id);
            if (found == byId.end()) {
                return model::wrongUse(placeOf(k) + "after names " + compute::inQuotes(one.id) +
                                       ", and no item has that id");
            }
            network.precedences.push_back({found->second, k, one.kind, one.lag});
        }
    }
    return loopNamed(network);
}

}  // namespace

model::Result<NamedNetwork> readItems(Fields& fields,
                                      const std::function<void(Fields& item, std::size_t k)>& more,
                                      bool readsDays) {
    NamedNetwork network;
    std::vector<std::vector<After>> after;
    const json* list = fields.list("items");
    if (list == nullptr) {
        return fields.done().error();
    }
    for (const json& entry : *list) {
        const std::size_t k = network.ids.size();
        Fields one(entry, placeOf(k));
        network.ids.push_back(one.text("id"));
        network.activities.push_back(
            {readsDays ? 0 : unitsOf(one.number("days", kDaysRange)), 0, std::nullopt});
        const json* waitsFor = one.listIfGiven("after");
        if (more) {
            more(one, k);
        }
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        auto read = readAfter(waitsFor, placeOf(k));
        if (!read.ok()) {
            return read.error();
        }
        after.push_back(std::move(read).value());
    }
    if (auto fine = connect(after, network); !fine.ok()) {
        return fine.error();
    }
    return network;
}

json printedDays(std::int64_t units) {
    return printed(static_cast<double>(units) / kUnitsPerDay);
}

}  // namespace ledgerboard::work
