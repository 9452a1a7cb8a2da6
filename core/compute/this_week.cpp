#include "core/compute/this_week.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/compute/planned_value.h"
#include "core/compute/positions.h"
#include "core/compute/punch_list.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Percent;

constexpr int kAWeek = 7;

class Reader {
  public:
    Reader(const model::JobRows& rows, const JobFigures& figures, Date since, Date today)
        : rows_(rows),
          figures_(figures),
          since_(since),
          today_(today),
          calendar_(rows.job),
          crews_(rows.crews),
          contracts_(rows.contracts) {
        out_.since = since;
    }

    ThisWeek read() {
        readPayments();
        readNotDone();
        readPresence();
        readCrews();
        return std::move(out_);
    }

  private:
    bool isThisWeek(const std::optional<Date>& day) const {
        return day && *day > since_ && *day <= today_;
    }

    std::string nameOf(const model::Spend& spend, const SpendRead& read) const {
        auto crew = crews_.of(spend.crew);
        if (!crew && read.contract) {
            crew = crews_.of(rows_.contracts[*read.contract].crew);
        }
        return crew ? rows_.crews[*crew].name : spend.payee;
    }

    void readPayments() {
        std::map<std::string, Money> byName;
        for (const SpendRead& read : figures_.spending) {
            const model::Spend& spend = rows_.spends[read.spend];
            if (isThisWeek(spend.spentOn) && read.effect.paid != Money{}) {
                byName[nameOf(spend, read)] += read.effect.paid;
                out_.paidInAll += read.effect.paid;
            }
        }
        std::map<std::string, Money> ahead;
        for (const ContractFigures& contract : figures_.contracts) {
            const auto crew = crews_.of(rows_.contracts[contract.contract].crew);
            if (crew) {
                ahead[rows_.crews[*crew].name] += contract.paidAhead;
            }
        }
        for (const auto& [name, amount] : byName) {
            const auto found = ahead.find(name);
            out_.paid.push_back({name, amount, found == ahead.end() ? Money{} : found->second});
        }
        std::stable_sort(out_.paid.begin(), out_.paid.end(),
                         [](const PaidTo& a, const PaidTo& b) { return a.amount > b.amount; });
    }

    bool isOpen(std::size_t item) const {
        return figures_.scope.lines[item].counting == Counting::Counts &&
               figures_.lines[item].shown < Percent::whole();
    }

    void readNotDone() {
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const ScopeLine& scope = figures_.scope.lines[k];
            const Percent shown = figures_.lines[k].shown;
            if (!isOpen(k)) {
                continue;
            }
            if (isThisWeek(scope.finishOn)) {
                out_.notDone.push_back({k, false, *scope.finishOn, shown});
            } else if (isThisWeek(scope.startOn) && shown == Percent{}) {
                out_.notDone.push_back({k, true, *scope.startOn, shown});
            }
        }
        std::stable_sort(
            out_.notDone.begin(), out_.notDone.end(),
            [](const NotDone& a, const NotDone& b) { return a.wantedOn < b.wantedOn; });
    }

    // Working days of the week on which the plan has the crew at the house.
    std::set<Date> daysWanted(const model::Id<model::Kind::Crew>& crew) const {
        std::set<Date> days;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const ScopeLine& scope = figures_.scope.lines[k];
            if (scope.crew != crew || scope.counting != Counting::Counts || !scope.startOn ||
                !scope.finishOn) {
                continue;
            }
            const Date last = std::min(*scope.finishOn, today_);
            for (Date day = std::max(*scope.startOn, since_ + 1); day <= last; day = day + 1) {
                if (calendar_.isWorkDay(day)) {
                    days.insert(day);
                }
            }
        }
        return days;
    }

    // Who was there is told only where somebody enters it: a day on which nobody at all was
    // entered tells nothing of a crew.
    void readPresence() {
        std::set<Date> entered;
        std::set<std::pair<Date, model::RawId>> present;
        for (const model::Presence& presence : rows_.presences) {
            if (isThisWeek(presence.presentOn)) {
                entered.insert(*presence.presentOn);
                present.emplace(*presence.presentOn, presence.crew.raw());
            }
        }
        out_.knowsPresence = !entered.empty();
        for (std::size_t k = 0; k < rows_.crews.size(); ++k) {
            NotThere missing{k, {}, 0};
            std::optional<Date> before;
            int run = 0;
            for (const Date day : daysWanted(rows_.crews[k].id)) {
                if (!entered.contains(day) || present.contains({day, rows_.crews[k].id.raw()})) {
                    continue;
                }
                const bool follows = before && calendar_.onOrAfter(*before + 1) == day;
                run = follows ? run + 1 : 1;
                missing.inARow = std::max(missing.inARow, run);
                missing.days.push_back(day);
                before = day;
            }
            if (!missing.days.empty()) {
                out_.notThere.push_back(std::move(missing));
            }
        }
    }

    // Open = its last look is not "accepted".
    void readCrews() {
        std::set<std::size_t> openPunch;  // as the rows stand
        for (const PunchRead& read : punchListOf(rows_, today_).all) {
            if (read.isOpen) {
                openPunch.insert(read.punch);
            }
        }
        for (std::size_t c = 0; c < rows_.crews.size(); ++c) {
            CrewNews work{c, {}, {}, {}, {}};
            for (std::size_t k = 0; k < rows_.items.size(); ++k) {
                if (figures_.scope.lines[k].crew != rows_.crews[c].id || !isOpen(k)) {
                    continue;
                }
                const auto& start = rows_.items[k].plannedStartOn;
                if (figures_.lines[k].shown > Percent{}) {
                    work.going.push_back(k);
                } else if (start && *start <= today_ + kAWeek) {
                    work.beginning.push_back(k);
                }
                if (rows_.items[k].doNotCover && figures_.lines[k].shown > Percent{}) {
                    work.leaveOpen.push_back(k);
                }
            }
            for (const std::size_t p : openPunch) {
                if (rows_.punches[p].crew == rows_.crews[c].id) {
                    work.punch.push_back(p);
                }
            }
            if (!work.going.empty() || !work.beginning.empty() || !work.punch.empty()) {
                out_.crews.push_back(std::move(work));
            }
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    Date since_;
    Date today_;
    WorkCalendar calendar_;
    Positions<model::Crew> crews_;
    Positions<model::Contract> contracts_;
    ThisWeek out_;
};

}  // namespace

ThisWeek thisWeekOf(const model::JobRows& rows, const JobFigures& figures, Date since, Date today) {
    return Reader(rows, figures, since, today).read();
}

}  // namespace ledgerboard::compute
