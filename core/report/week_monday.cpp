// What to do on Monday, in sentences: hazards nobody has acknowledged, then concerns.
#include <map>

#include "core/compute/cautions.h"
#include "core/compute/concerns.h"
#include "core/report/money_text.h"
#include "core/report/week_parts.h"

namespace ledgerboard::report {

namespace {

using compute::Concern;
using compute::ConcernKind;
using model::Date;
using model::Percent;

// Of each kind of concern so many are named; the page is to be read in two minutes.
constexpr int kNamedPerKind = 3;
constexpr int kSoonDays = 14;

std::string moneyOf(const Concern& concern) {
    return wholeText(concern.money.value_or(model::Money{}), Script::Unicode);
}

std::string daysOf(const Concern& concern) {
    return countText(concern.days.value_or(0), "day", "days");
}

// Payments that must not be made are barred.
std::string payText(const Concern& concern) {
    const bool isPressing = concern.level == compute::Level::Act;
    switch (concern.kind) {
        case ConcernKind::PaidAhead:
            return isPressing ? "Pay nothing more on " + concern.about +
                                    " yet: " + moneyOf(concern) + " ahead of its work"
                              : "Watch " + concern.about + ": paid " + moneyOf(concern) +
                                    " ahead of its work";
        case ConcernKind::BeyondContract:
            return "Pay on " + concern.about + " only what is signed: " + moneyOf(concern) +
                   " is billed beyond it";
        case ConcernKind::WaiverMissing:
            return isPressing
                       ? "Pay nothing more on " + concern.about + " before its final waiver is in"
                       : "Get the final waiver for " + concern.about;
        case ConcernKind::Insurance:
            return isPressing ? "Pay " + concern.about + " nothing until its insurance is renewed"
                              : "Have " + concern.about +
                                    " renew its insurance: " + daysOf(concern) + " left";
        default:
            return {};
    }
}

std::string whatText(const Concern& concern) {
    switch (concern.kind) {
        case ConcernKind::LineOver:
            return "Look into " + concern.about + ": " + moneyOf(concern) + " over budget";
        case ConcernKind::JobOver:
            return "The whole job is " + moneyOf(concern) +
                   " over its first budget, changes included";
        case ConcernKind::ContingencyRunsDown:
            return "Contingency goes faster than the work: " + moneyOf(concern) + " left";
        case ConcernKind::UnsignedChange:
            return "Sign or refuse " + concern.about + ": " +
                   signedText(concern.money.value_or(model::Money{}), Script::Unicode);
        case ConcernKind::Order:
            return "Order " + concern.about;
        case ConcernKind::ArrivesLate:
            return "Hurry or put off " + concern.about + ": it comes " + daysOf(concern) +
                   " after its planned start";
        case ConcernKind::Unfinished:
            return "Fill in the amount of " + concern.about;
        case ConcernKind::BankLineWaits:
            return "Say what " + concern.about + " paid for: " + moneyOf(concern) + " in all";
        case ConcernKind::PaperNotSeen:
            return "Find " + concern.about + ": " + moneyOf(concern) + " in all";
        case ConcernKind::NotMarked:
            return "Look at " + concern.about + ": not marked for " + daysOf(concern);
        case ConcernKind::OutsideBaseline:
            return "Have a change signed for " + concern.about + ": " + moneyOf(concern);
        case ConcernKind::FinishSlips:
            return concern.days.value_or(0) > 0
                       ? "Win back time: the finish slips by " +
                             countText(*concern.days, "working day", "working days")
                       : "Keep clear of the term end, or ask for an extension";
        case ConcernKind::NoShow:
            return "Call " + concern.about + ": it did not come on " + daysOf(concern);
        case ConcernKind::Stacked:
            return concern.recordKind == model::Kind::Crew
                       ? "Spread out " + concern.about + ": in several places at once for " +
                             daysOf(concern)
                       : "Keep " + concern.about + " to one crew at a time: several in it for " +
                             daysOf(concern);
        case ConcernKind::CashLow:
            return concern.level == compute::Level::Act
                       ? "Ask for a draw or put off a payment: cash falls to " + moneyOf(concern) +
                             " in " + daysOf(concern)
                       : "Watch the cash: it falls to " + moneyOf(concern) + " in " +
                             daysOf(concern);
        default:
            return payText(concern);
    }
}

std::string becauseText(const Concern& concern) {
    if (concern.kind == ConcernKind::UnsignedChange && concern.days.value_or(0) > 0) {
        return concern.rule + "; asked " + daysOf(concern) + " ago";
    }
    if (concern.kind == ConcernKind::Order && concern.days) {
        return concern.level == compute::Level::Act
                   ? concern.rule + ", " + daysOf(concern) + " ago"
                   : concern.rule + "; " + daysOf(concern) + " left";
    }
    if (concern.kind == ConcernKind::Insurance && concern.level == compute::Level::Act) {
        return concern.rule + ", " + daysOf(concern) + " ago";
    }
    return concern.rule;
}

bool isBarred(const Concern& concern) {
    return concern.level == compute::Level::Act &&
           (concern.kind == ConcernKind::PaidAhead || concern.kind == ConcernKind::BeyondContract ||
            concern.kind == ConcernKind::WaiverMissing || concern.kind == ConcernKind::Insurance);
}

enum class Nearness { Past, Far, Near };

// A hazard is near where work on its item begins within two weeks or has begun, past where that
// work is done or does not count.
Nearness nearnessOf(const compute::CautionRead& caution, const model::JobRows& rows,
                    const compute::JobFigures& figures, Date today) {
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        if (rows.items[k].id != caution.item) {
            continue;
        }
        const Percent shown = figures.lines[k].shown;
        if (figures.scope.lines[k].counting != compute::Counting::Counts ||
            shown >= Percent::whole()) {
            return Nearness::Past;
        }
        const auto& start = rows.items[k].plannedStartOn;
        return shown > Percent{} || (start && *start <= today + kSoonDays) ? Nearness::Near
                                                                           : Nearness::Far;
    }
    return Nearness::Past;
}

// Those that hold work up. What is to be known of the house as a whole stands in 'cautions'.
void addHazards(const model::JobRows& rows, const compute::JobFigures& figures, Date today,
                std::vector<ToDo>& monday) {
    std::int64_t far = 0;
    for (const auto& caution : compute::cautionsOf(rows, today).all) {
        if (!caution.holdsUp()) {
            continue;
        }
        const Nearness nearness = nearnessOf(caution, rows, figures, today);
        far += nearness == Nearness::Far ? 1 : 0;
        if (nearness == Nearness::Near) {
            monday.push_back({"Before it is touched: " + caution.what + ", " + caution.about,
                              (caution.why.empty() ? "" : caution.why + "; ") +
                                  "local codes and licensed practice decide",
                              "Scope of work", false, true});
        }
    }
    if (far > 0) {
        monday.push_back({countText(far, "hazard of later work is", "hazards of later work are") +
                              " not acknowledged yet",
                          "local codes and licensed practice decide", "Scope of work", false,
                          true});
    }
}

void addConcerns(const std::vector<Concern>& concerns, std::vector<ToDo>& monday) {
    std::map<ConcernKind, int> named;
    std::map<ConcernKind, std::size_t> firstMore;  // where "and more" of that kind stands
    std::map<ConcernKind, int> more;
    for (const Concern& concern : concerns) {
        if (++named[concern.kind] <= kNamedPerKind) {
            monday.push_back({whatText(concern), becauseText(concern),
                              std::string(wordsFor(concern.page)),
                              concern.level == compute::Level::Act, isBarred(concern)});
            continue;
        }
        if (++more[concern.kind] == 1) {
            firstMore[concern.kind] = monday.size();
            monday.push_back({"", "", std::string(wordsFor(concern.page)), false, false});
        }
    }
    for (const auto& [kind, at] : firstMore) {
        monday[at].what = "And " + std::to_string(more[kind]) +
                          " more of the same: " + std::string(wordsFor(kind));
    }
}

}  // namespace

std::vector<ToDo> mondayOf(const model::JobRows& rows, const compute::JobFigures& figures,
                           const compute::Plan& plan, Date today, const compute::Outlook& outlook) {
    std::vector<ToDo> monday;
    addHazards(rows, figures, today, monday);
    addConcerns(compute::concernsOf(rows, figures, plan, today, outlook), monday);
    return monday;
}

}  // namespace ledgerboard::report
