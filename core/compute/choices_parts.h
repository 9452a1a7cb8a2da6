// How are the open alternates of a job read, and how are sets of their options weighed? Inside
// core/compute.
#pragma once

#include "core/compute/choices.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

struct ChoicesInput {
    const model::JobRows& rows;
    const JobFigures& figures;
    model::Date today;
    const ChoicesAsk& ask;
    const PlanJob& plan;
};

// `rows` with `option` counting for alternate k; nil: nothing.
void count(model::JobRows& rows, std::size_t alternate, model::Id<model::Kind::Option> option);

// Fills out.alternates and what they lean on, but for the sets. Errors: as choicesOf.
[[nodiscard]] model::Result<void> readAlternates(const ChoicesInput& in, Choices& out);

// The limits and prices that every set of a job is weighed by, without alternates.
[[nodiscard]] ChooseInput chooseTermsOf(const Choices& choices);

// What an option likely adds: as entered, else the mean of what is; 0 where nothing is.
[[nodiscard]] model::Money likelyValueOf(const model::Option& option);

// Fills the sets: now, best, frontier. Errors: as choicesOf.
[[nodiscard]] model::Result<void> weighSets(const ChoicesInput& in, Choices& out);

// The day `days` calendar days after the finish without options, or the next working day; empty
// where that finish is not known.
[[nodiscard]] std::optional<model::Date> finishAfter(const model::Job& job, const Choices& choices,
                                                     int days);

}  // namespace ledgerboard::compute
