// What to do on Monday, in sentences: hazards nobody has acknowledged, then concerns.
#include <map>

#include "core/compute/cautions.h"
#include "core/compute/concerns.h"
#include "core/model/saying.h"
#include "core/report/said_places.h"
#include "core/report/week_parts.h"

namespace ledgerboard::report {

namespace {

using compute::Concern;
using compute::ConcernKind;
using model::Date;
using model::Percent;
using model::Saying;
using model::saying;

// Of each kind of concern so many are named; the page is to be read in two minutes.
constexpr int kNamedPerKind = 3;
constexpr int kSoonDays = 14;

model::Place moneyOf(const Concern& concern) {
    return wholePlace(concern.money.value_or(model::Money{}), Script::Unicode);
}

Saying daysOf(const Concern& concern) {
    const int days = concern.days.value_or(0);
    return days == 1 ? saying("%1 day", countPlace(days)) : saying("%1 days", countPlace(days));
}

// Payments that must not be made are barred.
Saying payText(const Concern& concern) {
    const bool isPressing = concern.level == compute::Level::Act;
    const Saying& about = concern.about;
    switch (concern.kind) {
        case ConcernKind::PaidAhead:
            return isPressing
                       ? saying("Pay nothing more on %1 yet: %2 ahead of its work", about,
                                moneyOf(concern))
                       : saying("Watch %1: paid %2 ahead of its work", about, moneyOf(concern));
        case ConcernKind::BeyondContract:
            return saying("Pay on %1 only what is signed: %2 is billed beyond it", about,
                          moneyOf(concern));
        case ConcernKind::WaiverMissing:
            return isPressing
                       ? saying("Pay nothing more on %1 before its final waiver is in", about)
                       : saying("Get the final waiver for %1", about);
        case ConcernKind::Insurance:
            return isPressing
                       ? saying("Pay %1 nothing until its insurance is renewed", about)
                       : saying("Have %1 renew its insurance: %2 left", about, daysOf(concern));
        default:
            return {};
    }
}

Saying timeText(const Concern& concern) {
    const Saying& about = concern.about;
    const int days = concern.days.value_or(0);
    switch (concern.kind) {
        case ConcernKind::Order:
            return saying("Order %1", about);
        case ConcernKind::ArrivesLate:
            return saying("Hurry or put off %1: it comes %2 after its planned start", about,
                          daysOf(concern));
        case ConcernKind::NotMarked:
            return saying("Look at %1: not marked for %2", about, daysOf(concern));
        case ConcernKind::FinishSlips:
            return days > 1    ? saying("Win back time: the finish slips by %1 working days",
                                        countPlace(days))
                   : days == 1 ? saying("Win back time: the finish slips by %1 working day",
                                        countPlace(days))
                               : saying("Keep clear of the term end, or ask for an extension");
        case ConcernKind::NoShow:
            return saying("Call %1: it did not come on %2", about, daysOf(concern));
        case ConcernKind::Stacked:
            return concern.recordKind == model::Kind::Crew
                       ? saying("Spread out %1: in several places at once for %2", about,
                                daysOf(concern))
                       : saying("Keep %1 to one crew at a time: several in it for %2", about,
                                daysOf(concern));
        default:
            return payText(concern);
    }
}

Saying whatText(const Concern& concern) {
    const Saying& about = concern.about;
    switch (concern.kind) {
        case ConcernKind::LineOver:
            return saying("Look into %1: %2 over budget", about, moneyOf(concern));
        case ConcernKind::JobOver:
            return saying("The whole job is %1 over its first budget, changes included",
                          moneyOf(concern));
        case ConcernKind::ContingencyRunsDown:
            return saying("Contingency goes faster than the work: %1 left", moneyOf(concern));
        case ConcernKind::UnsignedChange:
            return saying("Sign or refuse %1: %2", about,
                          signedPlace(concern.money.value_or(model::Money{}), Script::Unicode));
        case ConcernKind::Unfinished:
            return saying("Fill in the amount of %1", about);
        case ConcernKind::BankLineWaits:
            return saying("Say what %1 paid for: %2 in all", about, moneyOf(concern));
        case ConcernKind::PaperNotSeen:
            return saying("Find %1: %2 in all", about, moneyOf(concern));
        case ConcernKind::OutsideBaseline:
            return saying("Have a change signed for %1: %2", about, moneyOf(concern));
        case ConcernKind::CashLow:
            return concern.level == compute::Level::Act
                       ? saying("Ask for a draw or put off a payment: cash falls to %1 in %2",
                                moneyOf(concern), daysOf(concern))
                       : saying("Watch the cash: it falls to %1 in %2", moneyOf(concern),
                                daysOf(concern));
        default:
            return timeText(concern);
    }
}

Saying becauseText(const Concern& concern) {
    const Saying& rule = concern.rule;
    const bool isPressing = concern.level == compute::Level::Act;
    if (concern.kind == ConcernKind::UnsignedChange && concern.days.value_or(0) > 0) {
        return saying("%1; asked %2 ago", rule, daysOf(concern));
    }
    if (concern.kind == ConcernKind::Order && concern.days) {
        return isPressing ? saying("%1, %2 ago", rule, daysOf(concern))
                          : saying("%1; %2 left", rule, daysOf(concern));
    }
    if (concern.kind == ConcernKind::Insurance && isPressing) {
        return saying("%1, %2 ago", rule, daysOf(concern));
    }
    return rule;
}

Saying moreOf(ConcernKind kind, int count) {
    return saying("And %1 more of the same: %2", count, sayingFor(kind));
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
    const Saying decide = saying("local codes and licensed practice decide");
    std::int64_t far = 0;
    for (const auto& caution : compute::cautionsOf(rows, today).all) {
        if (!caution.holdsUp()) {
            continue;
        }
        const Nearness nearness = nearnessOf(caution, rows, figures, today);
        far += nearness == Nearness::Far ? 1 : 0;
        if (nearness == Nearness::Near) {
            const Saying what =
                saying("Before it is touched: %1, %2", caution.what, Saying(caution.about));
            const Saying because =
                caution.why.empty() ? decide : saying("%1; %2", Saying(caution.why), decide);
            monday.push_back({what.text(), because.text(), "Scope of work", false, true});
        }
    }
    if (far > 0) {
        const Saying what =
            far == 1 ? saying("%1 hazard of later work is not acknowledged yet", countPlace(far))
                     : saying("%1 hazards of later work are not acknowledged yet", countPlace(far));
        monday.push_back({what.text(), decide.text(), "Scope of work", false, true});
    }
}

void addConcerns(const std::vector<Concern>& concerns, std::vector<ToDo>& monday) {
    std::map<ConcernKind, int> named;
    std::map<ConcernKind, std::size_t> firstMore;  // where "and more" of that kind stands
    std::map<ConcernKind, int> more;
    for (const Concern& concern : concerns) {
        if (++named[concern.kind] <= kNamedPerKind) {
            monday.push_back({whatText(concern).text(), becauseText(concern).text(),
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
        monday[at].what = moreOf(kind, more[kind]).text();
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
