// Which papers should be there and are not?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/rows.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

// A paper that should be there and is not: for the list by name.
struct MissingPaper {
    enum class Kind { Receipt, Bill, Amount, Insurance, Waiver, Expected };
    Kind kind = Kind::Receipt;
    model::Saying name;  // "Receipt, Hardware store, 2026-05-12"
    std::optional<model::Money> amount;
    std::optional<int> days;  // for how long
    model::Kind recordKind = model::Kind::None;
    model::RawId record;
};

// Receipts, fees and bills not seen, spends without an amount, insurance papers under signed
// contracts not yet accepted, final waivers of accepted contracts, and papers listed but not
// received; each in the order of its rows. Requires: rows as of today.
[[nodiscard]] std::vector<MissingPaper> missingPapersOf(const model::JobRows& rows,
                                                        model::Date today);

// A bill, receipt or fee with an amount whose paper nobody has seen and of which there is no photo.
[[nodiscard]] bool isPaperUnseen(const model::Spend& spend);

// The last day a crew's insurance covers, by the crew's own field or a received insurance paper,
// whichever is later. Empty where neither says.
[[nodiscard]] std::optional<model::Date> insuredUntil(const model::JobRows& rows,
                                                      const model::Crew& crew);

}  // namespace ledgerboard::compute
