// How far is each item? Read from marks; a percent is never stored.
//
// Shown = the mark with the latest date, then the later clock (the millisecond its id was made in),
// then device, then id. Seen = the same among the marks of people whose role is owner; 0 if none. A
// mark that names nobody is not an owner's. An undated mark stands before every dated one.
// Source: project decision (the owner's visit outranks a crew's word for paying).
//
// Five ways of measuring; where an item does not say, percent is judged:
//   none or done    0 until finished, then 100
//   half and half   50 from the first mark, 100 at finished (a mark of 0 says that it is not begun)
//   weighted steps  the weights of the steps done over the weights of all
//   counted units   units done over the quantity
//   judged percent  as marked
// A share that is not whole is rounded to a hundredth of a percent, and never to 100: that always
// means finished.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/result.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// How an item is measured: its own way, else judged percent.
[[nodiscard]] model::Measure measureOf(const model::Item& item);

// The step names in Mark::stepsDone, trimmed, empty ones left out.
[[nodiscard]] std::vector<std::string> stepsIn(std::string_view stepsDone);

// May this mark be made on this item? `what` names the item in the message ("Hall bath/tile").
// Exactly one of percent, count and steps must be said.
//   none or done: 0 or 100.  half and half: 0, 50 or 100.  judged percent: 0 to 100.
//   weighted steps: names of its steps, or percent 0 or 100.
//   counted units: a count from 0 to the quantity, or percent 0 or 100.
// Errors (WrongUse): anything else, saying what is allowed; CannotBeMet for a kept item, and for
// counted units without a quantity.
[[nodiscard]] model::Result<void> checkMark(const model::Item& item, const model::Mark& mark,
                                            std::string_view what);

// What a mark says by the item's way of measuring, 0 to 100. Empty where it says nothing (no
// percent, count or steps, or a count of an item without a quantity). Marks that checkMark would
// refuse (made before the way of measuring changed) are read as well as they can be.
[[nodiscard]] std::optional<model::Percent> percentOf(const model::Item& item,
                                                      const model::Mark& mark);

// One mark, read.
struct MarkRead {
    std::optional<model::Date> on;
    model::Percent percent;
    bool byOwner = false;
    const model::Mark* mark = nullptr;
};

// The marks of every item of a job, sorted once. Keeps pointers into the rows, which must outlive
// it and hold no voided marks (as_of.h). Threads: any number may ask.
class Marks {
  public:
    explicit Marks(const model::JobRows& rows);

    // Marks that say something, oldest first. `item` counts from 0 in rows.items.
    [[nodiscard]] std::span<const MarkRead> of(std::size_t item) const;
    [[nodiscard]] model::Percent shown(std::size_t item) const;
    [[nodiscard]] model::Percent seen(std::size_t item) const;
    // As of the end of a day, as known now.
    [[nodiscard]] model::Percent shownOn(std::size_t item, model::Date day) const;
    [[nodiscard]] model::Percent seenOn(std::size_t item, model::Date day) const;

  private:
    std::vector<MarkRead> read_;       // by item, oldest first
    std::vector<std::size_t> starts_;  // where each item's marks start in read_; one past the end
};

// Percent of a space, trade or job: sum(budget now x shown) / sum(budget now), rounded to a
// hundredth of a percent; the plain mean where that sum is 0; 0 where nothing was added. A budget
// below 0 weighs nothing, so the result is never outside 0 to 100.
class WeightedPercent {
  public:
    void add(model::Money budgetNow, model::Percent percent);
    [[nodiscard]] model::Percent value() const;
    // `money` x the percent before it is rounded x `part`; rounded once. Errors: OverflowError.
    [[nodiscard]] model::Money of(model::Money money,
                                  model::Percent part = model::Percent::whole()) const;

  private:
    model::Wide weighted_ = 0;
    model::Wide weights_ = 0;
    std::int64_t plain_ = 0;
    std::int64_t count_ = 0;
};

}  // namespace ledgerboard::compute
