// How much cash does the owner have each day, from the purchase to the sale?
//
// The line begins with the cash at the start and takes each day's moves in turn:
//   purchase   cash at closing leaves on the day it was bought (deal.h)
//   work       what was paid so far on its days; what is still to be paid as payments_ahead.h says
//   draws      what was received on its day; those ahead on theirs
//   interest, holding   what has come up since the month before leaves on the first of each month,
//              the rest on the day of the sale: whole cents that add up to the deal's figures
//   extension  the fee leaves on the term end where the sale comes later
//   sale       resale less season drop and selling costs comes in, both loans are paid off
// So it ends with the start + the deal's profit, to the cent.
// Within a day everything is one sum: balances are those of the day's end.
// Source: project decision.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/deal.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

enum class CashKind { Purchase, Work, Retainage, Draw, Interest, Holding, Extension, Sale, Payoff };
[[nodiscard]] std::string_view wordsFor(CashKind kind);

// Money that moves on a day: below 0 where it leaves.
struct CashMove {
    model::Date on;
    CashKind kind = CashKind::Work;
    model::Money amount;
    std::string what;      // who is paid or pays
    bool isAhead = false;  // forecast, not booked
};

// A draw as its money moves: the debt grows by both.
struct DrawMoney {
    model::Date on;
    model::Money received;
    model::Money fee;
    std::string what;
    bool isAhead = false;
};

struct CashDay {
    model::Date on;
    model::Money in;
    model::Money out;  // not below 0
    model::Money balance;
};

struct CashLine {
    Deal deal;           // of the same inputs
    model::Money start;  // the job's cash at start; 0 where not entered
    model::Money end;
    std::vector<CashMove> moves;             // in order of day
    std::vector<CashDay> days;               // those on which something moves, in order
    std::optional<CashDay> lowest;           // of all days; the first of equals
    std::optional<CashDay> lowestAhead;      // from the day of looking on
    model::Money today;                      // at the end of the day of looking
    std::optional<model::Date> underZeroOn;  // ahead: the first day below nothing
    // Ahead: the first day that leaves less than what goes out in the 14 days after it.
    std::optional<model::Date> underTwoWeeksOn;
    model::Money peakCashIn;  // the most of the owner's own that was in before the sale; 0: none
    bool reachesSale = false;
    std::vector<AbsentInput> missing;  // without these there is no line
    std::vector<AbsentInput> leftOut;  // counted as nothing
};

// `work` are payments for work, so far and ahead; `draws` all draws, those after the sale are left
// out. `figures` as the deal wants them; its draws and visit fees are taken from `draws`, and draws
// ahead are known where `figures.drawsAhead` is set. Errors: as deal. OverflowError.
[[nodiscard]] model::Result<CashLine> cashLineOf(const model::Job& job, DealFigures figures,
                                                 const std::vector<CashMove>& work,
                                                 const std::vector<DrawMoney>& draws);

// The end of the day `on`: the start before the first move.
[[nodiscard]] model::Money balanceOn(const CashLine& line, model::Date on);

}  // namespace ledgerboard::compute
