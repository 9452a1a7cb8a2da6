// What does this week's page say? All of it as plain data, in the order it is read.
//
// The renderers (week_terminal.h, week_html.h, week_json.h) show a WeekPage and compute nothing;
// what the rows do not tell is empty here, and a renderer names no part that is empty.
//
// Units: amounts in the job's currency, exact to the cent; dates of the job's time zone.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/compute/waits.h"
#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/quantity.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

// What "was" and "since" are told against: the last review kept before today, else the baseline.
enum class Against { Nothing, Baseline, Review };

struct Since {
    Against against = Against::Nothing;
    std::optional<model::Date> on;
};

struct WillCost {
    model::Money forecast;
    model::Money budget;  // budget now, without contingency
    std::optional<model::Money> forecastBefore;
    std::optional<model::Money> overBefore;  // forecast less budget, as it stood
};

struct WillFinish {
    std::optional<model::Date> on;
    std::optional<model::Date> planned;  // by the baseline, else the owner's target
    std::optional<int> workingDaysLate;  // less than 0: early
    std::optional<model::Date> before;
    std::optional<int> workingDaysLateBefore;
    bool isFinished = false;  // everything is shown finished; `on` is the day of the last finish
    bool hasLoop = false;     // items wait for each other in a ring: no day can be told
};

struct WillEarn {
    std::optional<model::Money> profit;  // before income tax
    std::optional<model::Percent> ofResale;
    std::optional<model::Money> before;
    model::Money dayCosts;                      // what each day costs, interest and holding
    std::string whatIsMissing;                  // where there is no profit: what to enter to see it
    std::vector<std::string> countedAsNothing;  // inputs that were not entered, by heading
};

// A buyer with a government-insured loan may sign from day 91; up to day 180, at double the price
// or more, a second appraisal is called for (HUD resale rules).
struct InsuredBuyer {
    std::optional<model::Date> day91On;
    std::optional<model::Date> day180On;
    bool isDoublePrice = false;
};

// The day on which the owner has least cash, from today to the sale.
struct CashLow {
    model::Money lowest;
    model::Date on;
    std::optional<model::Money> before;  // as the last review kept it
    model::Money outNext14;              // what leaves in the next 14 days
    std::optional<model::Date> drawOn;   // when the next draw is expected
    std::optional<model::Money> draw;    // and how much
};

// Eight chances in ten that a figure ends up between the two.
template <class T>
struct Spread {
    T low;
    T high;
};

// How sure the head figures are. Empty where the job does not say enough to tell.
struct Spreads {
    std::optional<Spread<model::Money>> cost;
    std::optional<Spread<model::Date>> finish;
    std::optional<Spread<model::Money>> earn;
};

// How the forecast was made, and what other methods would say of the whole job.
struct ForecastRule {
    std::string rule;  // "contract now less billed"
    std::int64_t lines = 0;
    model::Money toGo;
};

struct OtherMethod {
    std::string method;  // "at CPI"
    model::Money estimate;
};

struct Methods {
    std::vector<ForecastRule> rules;  // largest first
    std::vector<OtherMethod> others;  // lowest first
};

// The level: how far forecast stands from budget, between the ends of the vial.
struct Level {
    model::Money over;      // forecast less budget; less than 0: it will cost less
    model::Money hairline;  // 2 % of budget
    model::Money end;       // contingency left, or a little beyond the hairlines where that is less
    bool endIsContingencyLeft = true;
};

// Where the job stands on one day. Planned is told for every day, earned and spent up to today.
struct CurvePoint {
    model::Date on;
    std::optional<model::Money> planned;
    std::optional<model::Money> earned;
    std::optional<model::Money> spent;  // billed, tax included
};

struct Progress {
    model::Percent done;  // shown marks, by budget now
    std::optional<model::Percent> planned;
    std::optional<model::Percent> spent;  // billed of budget now
    std::optional<model::Percent> paid;   // paid of budget now
};

struct Mover {
    std::string what;  // "Kitchen/cabinets"
    std::string why;   // may be empty
    model::Money amount;
};

// What changed "will cost". The movers and others add up to total.
struct Movers {
    std::vector<Mover> largest;  // five at most, largest first
    model::Money others;
    std::int64_t otherCount = 0;
    model::Money total;
};

// What stands beside the forecast and is never in it.
struct Outside {
    std::int64_t unsignedChanges = 0;
    model::Money ifSigned;
    model::Money unknownsExpected;
};

// Money of the whole job or of one trade; six figures that are never mixed.
struct Amounts {
    model::Money budgetNow;
    model::Money committed;
    model::Money billed;
    model::Money held;
    model::Money paid;
    model::Money forecast;
};

struct TradeMoney {
    std::string trade;
    Amounts amounts;
    // Early: billed before plan while the forecast stays within budget. Zero where not.
    model::Money early;
};

struct Contingency {
    model::Money total;
    model::Money left;  // less than 0 where more was taken than there was
};

struct RoomProgress {
    std::string name;
    std::string shortName;  // two letters, for its swatch
    std::string swatch;     // "#RRGGBB", or empty
    model::Percent done;
    std::optional<model::Percent> planned;
    model::Money over;  // forecast less budget now
    std::int64_t items = 0;
};

// Something that falls in the next 14 days, or should have happened before today.
struct NextEvent {
    compute::WaitKind kind = compute::WaitKind::Order;
    std::optional<model::Date> on;  // empty where no day is known yet
    bool isLate = false;
    std::string what;
    std::optional<model::Money> amount;
};

struct MissingPaper {
    std::string what;  // "Receipt, Corner hardware, 2026-05-03"
    std::optional<model::Money> amount;
    std::optional<int> days;  // for how long it has been missing
};

// One thing to do on Monday: what, why, and the page of the book where it is done.
struct ToDo {
    std::string what;
    std::string because;
    std::string page;         // "Contracts and orders"
    bool isPressing = false;  // beyond the level at which to act
    bool isBarred = false;    // a hazard, or a payment that must not be made
};

// A question an owner asks every week, and its answer in a sentence or two; what is told of several
// crews has a line for each.
struct Answer {
    std::string question;
    std::string answer;
};

struct WeekPhoto {
    std::string caption;
    std::optional<model::Date> takenOn;
    std::string mediaType;  // "image/jpeg", "image/png", "image/webp"
    std::string bytes;      // of the picture, small enough to be carried within a page
};

// What a review keeps of a page beside the figures of compute/movers.h.
inline constexpr std::string_view kWillEarn = "will earn";
inline constexpr std::string_view kCashLowest = "cash lowest";

struct WeekPage {
    std::string job;
    std::string jobId;
    std::string currency;
    model::Date today;
    std::optional<int> week;  // 1 is the week the work begins in
    std::optional<int> weeks;
    Since since;

    std::int64_t items = 0;                // that count
    std::int64_t undated = 0;              // of them without planned dates: left out of the plan
    std::int64_t unpriced = 0;             // of them without a price: in the forecast as nothing
    std::int64_t withoutDays = 0;          // unfinished ones that take no time in "will finish"
    std::int64_t spendsWithoutAmount = 0;  // unfinished receipts: counted nowhere

    WillCost cost;
    WillFinish finish;
    WillEarn earn;
    InsuredBuyer buyer;
    std::optional<CashLow> cash;
    Spreads spreads;
    Methods methods;
    std::optional<Level> level;  // where there is a budget
    Progress progress;
    std::vector<CurvePoint> curve;
    std::optional<Movers> movers;  // where there is something to compare with
    Outside outside;
    std::optional<Contingency> contingency;
    std::vector<TradeMoney> trades;  // 14 at most, the last "All other trades" where there are more
    Amounts total;
    std::vector<RoomProgress> rooms;  // in walking order
    std::vector<NextEvent> next;      // late first, then by date, those without a day last
    std::vector<MissingPaper> papers;
    std::vector<ToDo> monday;       // most pressing first
    std::vector<Answer> answers;    // in the order the questions are asked
    std::vector<WeekPhoto> photos;  // three at most

    model::Review review;  // this week's figures, for the next one to stand beside; without an id
};

// The week's page of a job as of the end of `today`: rows dated later are left out here, whoever
// passes them in. Photos are the caller's choice, for they are kept outside the book's rows; the
// first three are taken. What was not entered leaves its part empty; what the page leaves out is
// counted. Errors: OverflowError.
[[nodiscard]] WeekPage weekPage(const model::JobRows& rows, model::Date today,
                                std::vector<WeekPhoto> photos = {});

}  // namespace ledgerboard::report
