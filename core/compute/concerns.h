// What should the owner do on Monday? What today's rows show to be of concern, each with the rule
// that raised it.
//
// Source: common practice, no source (concern_levels.h); the owner may change the levels.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/concern_levels.h"
#include "core/compute/job_crew_plan.h"
#include "core/compute/papers.h"
#include "core/compute/plan.h"
#include "core/compute/this_week.h"
#include "core/model/rows.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

enum class ConcernKind {
    LineOver,
    JobOver,
    ContingencyRunsDown,
    PaidAhead,
    BeyondContract,  // billed beyond sum + signed changes
    UnsignedChange,
    Order,            // order-by passed or near
    ArrivesLate,      // promised for after the planned start
    Unfinished,       // receipts without an amount
    BankLineWaits,    // lines of the bank that nobody has said what they are for
    PaperNotSeen,     // bills and receipts whose paper nobody has seen
    WaiverMissing,    // accepted, final waiver not in
    Insurance,        // lapsed or about to
    NotMarked,        // not marked while work should go on
    OutsideBaseline,  // scope added or priced after the baseline that no signed change holds
    FinishSlips,      // the plan ends later than was planned, or close to the term end
    NoShow,           // a crew was not there though work was planned for it
    Stacked,          // a crew is wanted in too many places at once, or a space by several crews
    CashLow,          // cash runs under so many days of bills, or under zero
};
[[nodiscard]] model::Saying sayingFor(ConcernKind kind);  // "paid ahead"

enum class Level { Watch, Act };

// Which page of the job folder it is dealt with on.
enum class Page {
    ThisWeek,
    ScopeOfWork,
    Schedule,
    ContractsAndOrders,
    Spend,
    Closing,
    Draws,
};
[[nodiscard]] std::string_view wordsFor(Page page);  // "Contracts and orders"

struct Concern {
    ConcernKind kind = ConcernKind::LineOver;
    Level level = Level::Watch;
    model::Saying about;  // the item, contract, crew or change by name
    model::Saying rule;   // the rule that raised it: "forecast over budget by 10 % or 750"
    std::optional<model::Money> money;  // at stake
    std::optional<int> days;            // at stake: late, open, or left (see kind)
    Page page = Page::ThisWeek;
    model::Kind recordKind = model::Kind::None;  // what it is about; None for the whole job
    model::RawId record;
};

// What is looked ahead to beside the plan. What is not known raises nothing.
struct Outlook {
    std::optional<model::Date> plannedFinishOn;  // by the baseline, else the owner's target
    std::optional<model::Money> lowestCash;
    std::optional<model::Date> lowestCashOn;
    model::Money billsAhead;           // what leaves in the next ConcernLevels::cashDays
    std::vector<NotThere> notThere;    // this week (this_week.h)
    std::vector<StackedDays> stacked;  // in the plan
};

// Act before watch, then by money, then by days (largest first), then as in the rows.
// Requires: rows as of today, figures and plan of them. Errors: OverflowError.
[[nodiscard]] std::vector<Concern> concernsOf(const model::JobRows& rows, const JobFigures& figures,
                                              const Plan& plan, model::Date today,
                                              const Outlook& outlook = {});

}  // namespace ledgerboard::compute
