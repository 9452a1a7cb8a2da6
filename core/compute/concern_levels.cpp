#include "core/compute/concern_levels.h"

#include <algorithm>

#include "core/compute/pricing.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;

// An amount is kept with two decimals, as a percent is: 12.50 is 12.50 %.
Percent asPercent(Money amount) {
    return Percent::fromBasisPoints(amount.minor());
}

int asDays(Money amount) {
    return static_cast<int>(std::min<std::int64_t>(amount.minor() / 100, 10'000));
}

struct NamedLevel {
    std::string_view name;
    void (*set)(ConcernLevels&, Money);
};

constexpr std::array<NamedLevel, 19> kLevels = {{
    {"line over watch percent",
     [](ConcernLevels& levels, Money to) { levels.lineOverWatchPercent = asPercent(to); }},
    {"line over watch money",
     [](ConcernLevels& levels, Money to) { levels.lineOverWatchMoney = to; }},
    {"line over act percent",
     [](ConcernLevels& levels, Money to) { levels.lineOverActPercent = asPercent(to); }},
    {"line over act money", [](ConcernLevels& levels, Money to) { levels.lineOverActMoney = to; }},
    {"contingency act points",
     [](ConcernLevels& levels, Money to) { levels.contingencyActPoints = asPercent(to); }},
    {"paid ahead act points",
     [](ConcernLevels& levels, Money to) { levels.paidAheadActPoints = asPercent(to); }},
    {"paid ahead act money",
     [](ConcernLevels& levels, Money to) { levels.paidAheadActMoney = to; }},
    {"unsigned change days",
     [](ConcernLevels& levels, Money to) { levels.unsignedChangeDays = asDays(to); }},
    {"order days", [](ConcernLevels& levels, Money to) { levels.orderDays = asDays(to); }},
    {"order check days",
     [](ConcernLevels& levels, Money to) { levels.orderCheckDays = asDays(to); }},
    {"paper days", [](ConcernLevels& levels, Money to) { levels.paperDays = asDays(to); }},
    {"insurance days", [](ConcernLevels& levels, Money to) { levels.insuranceDays = asDays(to); }},
    {"not marked watch days",
     [](ConcernLevels& levels, Money to) { levels.notMarkedWatchDays = asDays(to); }},
    {"not marked act days",
     [](ConcernLevels& levels, Money to) { levels.notMarkedActDays = asDays(to); }},
    {"finish watch days",
     [](ConcernLevels& levels, Money to) { levels.finishWatchDays = asDays(to); }},
    {"finish act days", [](ConcernLevels& levels, Money to) { levels.finishActDays = asDays(to); }},
    {"term end days", [](ConcernLevels& levels, Money to) { levels.termEndDays = asDays(to); }},
    {"no-show act days",
     [](ConcernLevels& levels, Money to) { levels.noShowActDays = asDays(to); }},
    {"cash days", [](ConcernLevels& levels, Money to) { levels.cashDays = asDays(to); }},
}};

const NamedLevel* levelNamed(std::string_view name) {
    const std::string wanted = folded(name);
    const auto* found = std::find_if(kLevels.begin(), kLevels.end(),
                                     [&](const NamedLevel& level) { return level.name == wanted; });
    return found == kLevels.end() ? nullptr : found;
}

}  // namespace

std::vector<std::string_view> concernLevelNames() {
    std::vector<std::string_view> out;
    out.reserve(kLevels.size());
    for (const NamedLevel& level : kLevels) {
        out.push_back(level.name);
    }
    return out;
}

ConcernLevels concernLevelsOf(const model::Job& job) {
    ConcernLevels levels;
    for (const model::NamedAmount& own : job.concernLevels) {
        const NamedLevel* level = levelNamed(own.name);
        if (level != nullptr && own.amount >= Money{}) {
            level->set(levels, own.amount);
        }
    }
    return levels;
}

std::vector<std::string> unknownLevelNames(const model::Job& job) {
    std::vector<std::string> out;
    for (const model::NamedAmount& own : job.concernLevels) {
        if (levelNamed(own.name) == nullptr) {
            out.push_back(own.name);
        }
    }
    return out;
}

}  // namespace ledgerboard::compute
