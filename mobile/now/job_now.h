// How does the job stand now, for whoever holds this phone? Its spaces in walking order, the items
// of each with how far they are, and what the core says of them.
//
// Percent of a space: by budget for an owner (as on the weekly page); by likely days, over its own
// items only, for a crew lead, whose phone holds no budget at all.
// Source: project decision. Threads: made on any one, then only read.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/cautions.h"
#include "core/compute/progress.h"
#include "core/compute/punch_list.h"
#include "core/model/rows.h"

namespace ledgerboard::phone {

struct ItemNow {
    std::size_t row = 0;  // in rows.items
    model::Percent shown;
    // Where the plan says it is at the end of today; empty where it is not planned.
    std::optional<model::Percent> plan;
    std::optional<model::Date> markedOn;  // the last mark
    bool isKept = false;                  // stays as it is: no progress
    bool isMine = true;                   // false: a crew lead's neighbour, to be read only
    std::vector<std::size_t> holdUps;     // open cautions of it, in cautions.all

    [[nodiscard]] bool isFinished() const { return shown == model::Percent::whole(); }

    [[nodiscard]] bool isStarted() const { return markedOn.has_value() && shown.basisPoints() > 0; }
};

struct SpaceNow {
    model::Id<model::Kind::Space> id;  // nil: what belongs to no space
    std::string name;                  // "" for what belongs to no space
    std::string shortName;             // two letters
    std::string ground;                // colours of its swatch
    std::string ink;
    model::Percent shown;
    std::optional<model::Percent> plan;
    std::vector<ItemNow> items;  // to do by planned start, then finished, then kept
    std::size_t counted = 0;     // items that count in the percent
    std::size_t finished = 0;    // of them
    std::size_t toStart = 0;     // of them
    std::size_t punchOpen = 0;

    [[nodiscard]] bool isFinished() const { return counted > 0 && finished == counted; }
};

// The bubble of the level: -1 to 1, and how far from the middle its hairlines are.
struct LevelNow {
    model::Money over;  // forecast less budget now
    double lean = 0;
    double hair = 0;
};

struct JobNow {
    explicit JobNow(model::JobRows all) : rows(std::move(all)) {}

    JobNow(const JobNow&) = delete;
    JobNow& operator=(const JobNow&) = delete;

    model::JobRows rows;  // as of today
    model::Date today;
    bool isOwner = false;
    std::optional<LevelNow> level;  // an owner's, where there is a budget
    compute::Cautions cautions;
    compute::PunchList punch;
    std::vector<SpaceNow> spaces;                // in walking order
    std::optional<compute::JobFigures> figures;  // an owner's
};

// Requires: `rows` as read from the book. Errors: OverflowError.
[[nodiscard]] std::shared_ptr<const JobNow> jobNowOf(model::JobRows rows, model::Date today,
                                                     bool isOwner);

// The item of this id and its space; null where it is not among them.
struct Found {
    const ItemNow* item = nullptr;
    const SpaceNow* space = nullptr;
};

[[nodiscard]] Found findItem(const JobNow& now, model::Id<model::Kind::Item> id);

}  // namespace ledgerboard::phone
