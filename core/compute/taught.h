// What did the finished work teach the price book, and what the crews?
//
// Only items that are shown finished, are billed and have nothing to go tell anything. Per row of
// the price book (object, treatment and unit) what was billed per unit is the sum billed over the
// sum of quantities, so that a big room weighs more than a small one. The correction proposed: the
// row's material and labour, both times billed / what the book makes of the same quantities (waste
// and packs as the row has them), rounded to the cent; its low and high widened to the least and
// the most any item was billed per unit.
// An item without a quantity counts as one where the book prices it by each.
// Bills include tax. A bill on a whole contract was shared out over its items by budget; items that
// rest on such a share are counted apart, for they tell what the contract cost more than what each
// of its items did.
// Pace of a crew: working days from begun to finished, idle ones too, over likely days.
// Source: project decisions.
// Threads: any number may ask.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// One job of the book with its figures. Both must outlive the call.
struct TaughtHouse {
    const model::JobRows* rows = nullptr;
    const JobFigures* figures = nullptr;
};

struct TaughtPrice {
    model::Price book;            // the row it corrects
    std::size_t items = 0;        // that it rests on
    std::size_t sharedBills = 0;  // of them, with a bill shared out over a contract
    std::size_t houses = 0;
    model::Quantity quantity;
    model::Money billed;
    model::Money bookPerUnit;  // all in: the book's lines / quantity
    model::Money billedPerUnit;
    model::Money leastPerUnit;  // of one item
    model::Money mostPerUnit;
    model::Price proposed;   // the corrected row, without id, source and day
    bool isChanged = false;  // whether it differs from the book's
};

// Finished work that no row of the price book prices.
struct NotInBook {
    std::string object;
    model::Treatment treatment = model::Treatment::Unset;
    std::string unit;
    std::size_t items = 0;
    model::Money billedPerUnit;
};

struct TaughtCrew {
    model::Id<model::Kind::Crew> crew;
    std::string name;
    std::size_t items = 0;  // finished and all billed
    std::size_t over = 0;   // of them, billed beyond budget
    model::Money budget;
    model::Money billed;
    std::size_t timedItems = 0;
    model::Quantity actualDays;
    model::Quantity likelyDays;

    // Actual over likely days, in hundredths; empty where nothing tells.
    [[nodiscard]] std::optional<std::int64_t> paceHundredths() const;
};

struct Taught {
    std::vector<TaughtPrice> prices;  // in the order of the price book
    std::vector<NotInBook> notInBook;
    std::vector<TaughtCrew> crews;  // in the order of rows.crews; those that tell nothing left out
    std::size_t items = 0;          // that count, in all houses
    std::size_t finished = 0;
    // Finished ones that tell nothing, by why.
    std::size_t notBilled = 0;
    std::size_t notAllBilled = 0;
    std::size_t withoutQuantity = 0;

    [[nodiscard]] bool isNothing() const { return finished == 0; }
};

// Requires: rows as of the same day, figures = figuresOf(rows, day). Prices are those of the first
// house. Errors: OverflowError.
[[nodiscard]] Taught taughtBy(std::span<const TaughtHouse> houses);

}  // namespace ledgerboard::compute
