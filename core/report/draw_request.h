// What does a request for a draw say to the lender: the lines, the work in place behind each, and
// the pictures of it?
//
// A draw asked for that nobody has come to look at yet: at the percents asked, on the day it was
// asked; where there is none, what can be asked for now, as `draw` has it. Work is told by what it
// is and how far the owner saw it. Pictures are those marked for the lender alone. No cost,
// contract, note or caption of the owner's is in it. Source: project decision; common practice, no
// source. Threads: any number may ask.
#pragma once

#include <string>
#include <vector>

#include "core/compute/lender_draws.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

inline constexpr std::size_t kMostPicturesALine = 3;

struct RequestPhoto {
    model::Photo photo;
    std::string shows;  // "Bathroom, shower tile, during"
};

struct RequestWork {
    std::string what;  // "Bathroom: replace shower tile"
    model::Percent seen;
};

struct RequestLine {
    compute::LenderLineFigures figures;
    bool isAsked = true;               // false: this draw in the book doesn't ask for it
    std::vector<RequestWork> work;     // in the order of the scope
    std::vector<RequestPhoto> photos;  // latest first, kMostPicturesALine at most
};

struct DrawRequest {
    std::int64_t number = 1;
    model::Date day;       // asked for on, or as of
    bool isAsked = false;  // it is in the book as asked for
    compute::DrawsNow now;
    std::vector<RequestLine> lines;  // one for each of now.lines
};

// No lines where no work loan is entered. Requires: rows as of `today`. Errors: OverflowError.
[[nodiscard]] DrawRequest drawRequestOf(const model::JobRows& rows, model::Date today);

}  // namespace ledgerboard::report
