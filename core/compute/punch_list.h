// What is still to be put right, by whom and by when, what does it cost, and who is charged?
//
// A punch item is open while its last look isn't "accepted"; the last look is the one with the
// latest date, then the one made last. An undated look stands before every dated one.
// More than about 30 open items: it is not ready to be walked (common practice, no source).
// Threads: any number may ask.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::compute {

inline constexpr std::size_t kMostPunchToWalk = 30;

struct PunchRead {
    std::size_t punch = 0;  // in rows.punches
    std::string space;      // "" where it names none
    std::string crew;       // "" where it names none
    std::string sentence;   // "Tile crew, by Thursday: grout open at tub"
    bool isOpen = true;
    bool isLate = false;                              // open, and due before today
    model::Verdict lastSaid = model::Verdict::Unset;  // Unset: nobody has looked
    std::optional<model::Date> lastLookOn;
    std::optional<model::Money> cost;
    std::string chargeBackTo;                // the crew that pays, "" where none
    std::optional<model::Money> chargeBack;  // as entered, else the cost, where a crew pays
};

// What one crew pays for, whether it is put right yet or not.
struct ChargeBack {
    model::Id<model::Kind::Crew> crew;
    std::string name;
    std::size_t items = 0;
    model::Money amount;
    std::size_t withoutAmount = 0;
};

struct PunchCrew {
    model::Id<model::Kind::Crew> crew;  // nil for items that name none
    std::string name;
    std::size_t open = 0;
    std::size_t late = 0;
    model::Money cost;
    std::size_t withoutCost = 0;
};

struct PunchList {
    std::vector<PunchRead> all;    // by space in walking order, then by due day, those without last
    std::vector<PunchCrew> crews;  // with open items, in the order of rows.crews; none named last
    std::vector<ChargeBack> chargeBacks;  // in the order of rows.crews
    std::size_t open = 0;
    std::size_t late = 0;
    model::Money cost;            // of open ones
    std::size_t withoutCost = 0;  // open ones without a cost

    [[nodiscard]] bool isReadyToWalk() const { return open <= kMostPunchToWalk; }
};

// Requires: rows as of `today`. Errors: OverflowError.
[[nodiscard]] PunchList punchListOf(const model::JobRows& rows, model::Date today);

// "Thursday" for today and up to six days ahead; else "Thu 28 May".
[[nodiscard]] std::string dayWords(model::Date day, model::Date today);

}  // namespace ledgerboard::compute
