#include "core/report/plan_text.h"

#include <algorithm>
#include <cstdlib>

#include "core/model/decimal.h"
#include "core/report/money_text.h"
#include "core/report/plan_lines.h"

namespace ledgerboard::report {

namespace {

using compute::Hold;
using compute::Plan;
using compute::PlanItem;
using compute::PlanState;
using model::Date;

class Page {
  public:
    Page(const model::JobRows& rows, const compute::JobFigures& figures, const Plan& plan,
         Date today, const TableStyle& style)
        : rows_(rows), figures_(figures), plan_(plan), today_(today), style_(style) {
        for (std::size_t k = 0; k < plan.items.size(); ++k) {
            if (plan.items[k].state != PlanState::Finished) {
                open_.push_back(k);
            }
        }
        std::stable_sort(open_.begin(), open_.end(), [&](std::size_t a, std::size_t b) {
            return firstDay(plan.items[a]) < firstDay(plan.items[b]);
        });
    }

    std::string text() {
        say("Plan, to the end of " + longDateText(today_) + ": " + rows_.job.name);
        out_ += "\n";
        sayFinish();
        if (open_.empty()) {
            return out_;
        }
        out_ += "\n" + printTable(table(), style_);
        if (plan_.loop.empty()) {
            const std::string drawing = planLines(figures_, plan_, open_, rows_.job, style_);
            out_ += drawing.empty() ? "" : "\n" + drawing;
            sayOrders();
            sayNearCritical();
            sayDriving();
        }
        out_ += "\n";
        sayRest();
        return out_;
    }

  private:
    static std::optional<Date> firstDay(const PlanItem& item) {
        return item.resumesOn ? item.resumesOn : item.startOn;
    }

    void say(const std::string& sentence) {
        for (const auto& line : wrapped(shownText(sentence, style_.script), style_.width)) {
            out_ += line + "\n";
        }
    }

    // A line of a list, wrapped under its own beginning.
    void sayEntry(const std::string& sentence) {
        bool isFirst = true;
        for (const auto& line : wrapped(shownText(sentence, style_.script), style_.width - 4)) {
            out_ += (isFirst ? "  " : "    ") + line + "\n";
            isFirst = false;
        }
    }

    [[nodiscard]] const std::string& name(const PlanItem& item) const {
        return figures_.scope.lines[item.line].name;
    }

    [[nodiscard]] std::string day(const std::optional<Date>& date) const {
        return date ? dateText(*date, today_) : "";
    }

    void sayFinish() {
        if (plan_.items.empty()) {
            say("No items yet: 'ledgerboard bring scope FILE' or 'ledgerboard add item Space=... "
                "Object=...' makes some.");
        } else if (!plan_.loop.empty()) {
            say("No dates can be told, for these items wait for each other in a loop: " +
                compute::loopText(plan_, figures_) +
                ". Drop one of the links between them: 'ledgerboard list link' names them.");
        } else if (!plan_.on) {
            say("No finish can be told, for no item has days: 'ledgerboard set ITEM Days 3' enters "
                "them.");
        } else if (plan_.isFinished) {
            say("Finished on " + longDateText(*plan_.on) + ".");
        } else {
            say("Will finish " + longDateText(*plan_.on) + againstTarget() + ".");
        }
    }

    [[nodiscard]] std::string againstTarget() const {
        if (!rows_.job.targetFinishOn) {
            return "; no finish was planned to compare with";
        }
        const compute::WorkCalendar calendar(rows_.job);
        const int late = compute::workDaysLate(calendar, *rows_.job.targetFinishOn, *plan_.on);
        const std::string target = "the target of " + day(rows_.job.targetFinishOn);
        return late == 0 ? ", on " + target
                         : ", " + countText(std::abs(late), "working day", "working days") +
                               (late > 0 ? " after " : " before ") + target;
    }

    [[nodiscard]] Table table() const {
        Table table{{{"Item", false},
                     {"Days left", true},
                     {"Start", false},
                     {"Finish", false},
                     {"Float", true},
                     {"Order by", false}},
                    {}};
        for (const std::size_t k : open_) {
            const PlanItem& item = plan_.items[k];
            std::string start = item.state == PlanState::UnderWay ? "under way" : day(item.startOn);
            table.rows.push_back({name(item), item.hasDays ? daysText(item.left) : "none", start,
                                  day(item.finishOn), floatText(item), day(item.orderBy)});
        }
        return table;
    }

    [[nodiscard]] std::string floatText(const PlanItem& item) const {
        return !plan_.loop.empty() ? "" : item.isCritical ? "critical" : daysText(item.totalFloat);
    }

    void sayOrders() {
        std::vector<std::size_t> orders;
        std::copy_if(open_.begin(), open_.end(), std::back_inserter(orders),
                     [&](std::size_t k) { return plan_.items[k].orderBy.has_value(); });
        if (orders.empty()) {
            return;
        }
        std::stable_sort(orders.begin(), orders.end(), [&](std::size_t a, std::size_t b) {
            return plan_.items[a].orderBy < plan_.items[b].orderBy;
        });
        out_ += "\n";
        say("To order, each with " + countText(plan_.checkDays, "day", "days") +
            " to look the goods over before they are needed");
        for (const std::size_t k : orders) {
            const PlanItem& item = plan_.items[k];
            const auto lead = rows_.items[item.line].leadDays;
            sayEntry("by " + day(item.orderBy) + ": " + name(item) +
                     (lead ? ", " + countText(*lead, "day", "days") + " from order to delivery"
                           : std::string()) +
                     (item.hold == Hold::Order ? "; its order is what it waits for" : ""));
        }
    }

    void sayNearCritical() {
        std::string list;
        for (const std::size_t k : open_) {
            const PlanItem& item = plan_.items[k];
            if (item.isNearCritical) {
                list += (list.empty() ? "" : ", ") + name(item) + " (" + daysText(item.totalFloat) +
                        ")";
            }
        }
        if (!list.empty()) {
            out_ += "\n";
            say("Near critical, " + daysText(compute::kNearCritical) +
                " days of float or less: " + list + ".");
        }
    }

    void sayDriving() {
        if (plan_.driving.empty()) {
            return;
        }
        out_ += "\n";
        say("What drives the finish");
        for (std::size_t at = 0; at < plan_.driving.size(); ++at) {
            const PlanItem& item = plan_.items[plan_.driving[at]];
            sayEntry((at == 0 ? "" : "then ") + name(item) + ", " + spanText(item) +
                     (at == 0 ? holdText(item) : ""));
        }
    }

    [[nodiscard]] std::string spanText(const PlanItem& item) const {
        if (item.state == PlanState::Finished) {
            return item.finishOn ? "finished " + day(item.finishOn) : "finished";
        }
        const std::string from = day(firstDay(item));
        const std::string to = day(item.finishOn);
        return from == to ? from : from + " to " + to;
    }

    [[nodiscard]] std::string holdText(const PlanItem& item) const {
        switch (item.hold) {
            case Hold::PlannedStart:
                return ": not before the start planned for it";
            case Hold::ContractStart:
                return ": not before the start agreed in its contract";
            case Hold::Goods:
                return ": its goods come " + day(item.goodsOn) + ", and " +
                       countText(plan_.checkDays, "day", "days") + " to look them over";
            case Hold::Order:
                return ": its goods are not ordered";
            case Hold::Nothing:
            case Hold::Link:
                break;
        }
        return item.state == PlanState::UnderWay ? ": under way" : "";
    }

    void sayRest() {
        const std::size_t finished = plan_.items.size() - open_.size();
        std::string text =
            std::to_string(finished) + " of " +
            countText(static_cast<std::int64_t>(plan_.items.size()), "item", "items") +
            (finished == 1 ? " is finished." : " are finished.");
        const auto add = [&](std::size_t count, const char* one, const char* many) {
            text += count == 0 ? "" : " " + countText(static_cast<std::int64_t>(count), one, many);
        };
        add(plan_.withoutDays, "item has neither days nor dates and takes no time here.",
            "items have neither days nor dates and take no time here.");
        add(plan_.goodsWithoutDay, "order has no day promised and holds nothing back.",
            "orders have no day promised and hold nothing back.");
        add(plan_.waitingForInspection,
            "item waits for an inspection that was not held; that is not in the dates.",
            "items wait for an inspection that was not held; that is not in the dates.");
        if (plan_.unplacedChangeDays != model::Quantity{}) {
            text += " Signed changes of " + plan_.unplacedChangeDays.toString() +
                    " days name no item and are not in it.";
        }
        text += rows_.links.empty()
                    ? " No item waits for another: 'ledgerboard plan --link' puts in the usual "
                      "order of the trades."
                    : " Crews are not kept from being in two places at once.";
        say(text);
    }

    const model::JobRows& rows_;
    const compute::JobFigures& figures_;
    const Plan& plan_;
    Date today_;
    const TableStyle& style_;
    std::vector<std::size_t> open_;  // unfinished, by the first day of what is left
    std::string out_;
};

}  // namespace

std::string daysText(std::int64_t thousandths) {
    // To a tenth, rounded up, so that nothing left shows as nothing.
    constexpr std::int64_t kTenth = compute::kWorkDay / 10;
    return model::printDecimal((thousandths + kTenth - 1) / kTenth, 1, 0, false);
}

std::string planText(const model::JobRows& rows, const compute::JobFigures& figures,
                     const Plan& plan, Date today, const TableStyle& style) {
    return Page(rows, figures, plan, today, style).text();
}

}  // namespace ledgerboard::report
