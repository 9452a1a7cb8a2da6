#include "core/report/plan_json.h"

#include <nlohmann/json.hpp>

namespace ledgerboard::report {

namespace {

using Json = nlohmann::ordered_json;
using compute::Hold;
using compute::Plan;
using compute::PlanItem;
using compute::PlanState;
using model::Date;

Json of(const std::optional<Date>& date) {
    return date ? Json(date->toString()) : Json(nullptr);
}

// Working days, from thousandths.
Json daysOf(std::int64_t thousandths) {
    return static_cast<double>(thousandths) / compute::kWorkDay;
}

const char* wordOf(PlanState state) {
    switch (state) {
        case PlanState::Ahead:
            return "ahead";
        case PlanState::UnderWay:
            return "under way";
        case PlanState::Finished:
            return "finished";
    }
    return "";
}

const char* wordOf(Hold hold) {
    switch (hold) {
        case Hold::Nothing:
            return "nothing";
        case Hold::PlannedStart:
            return "planned start";
        case Hold::ContractStart:
            return "contract start";
        case Hold::Goods:
            return "goods";
        case Hold::Order:
            return "order";
        case Hold::Link:
            return "item";
    }
    return "";
}

class Writer {
  public:
    Writer(const model::JobRows& rows, const compute::JobFigures& figures, const Plan& plan)
        : rows_(rows), figures_(figures), plan_(plan) {}

    [[nodiscard]] Json write(Date today, std::optional<std::size_t> kept) const {
        const compute::WorkCalendar calendar(rows_.job);
        const auto& target = rows_.job.targetFinishOn;
        Json out;
        out["job"] = rows_.job.name;
        out["as_of"] = today.toString();
        out["will_finish_on"] = of(plan_.on);
        out["finished"] = plan_.isFinished;
        out["target_finish_on"] = of(target);
        out["working_days_late"] = target && plan_.on
                                       ? Json(compute::workDaysLate(calendar, *target, *plan_.on))
                                       : Json(nullptr);
        out["first_day"] = plan_.firstDay.toString();
        out["loop"] = names(plan_.loop);
        out["driving"] = names(plan_.driving);
        out["near_critical_days"] = daysOf(compute::kNearCritical);
        out["check_days"] = plan_.checkDays;
        out["links"] = rows_.links.size();
        out["without_days"] = plan_.withoutDays;
        out["goods_without_day"] = plan_.goodsWithoutDay;
        out["waiting_for_inspection"] = plan_.waitingForInspection;
        out["unplaced_change_days"] = daysOf(plan_.unplacedChangeDays.thousandths());
        out["items"] = Json::array();
        for (const PlanItem& item : plan_.items) {
            out["items"].push_back(itemJson(item));
        }
        out["kept"] = kept ? Json(*kept) : Json(nullptr);
        return out;
    }

  private:
    [[nodiscard]] const std::string& name(const PlanItem& item) const {
        return figures_.scope.lines[item.line].name;
    }

    [[nodiscard]] Json names(const std::vector<std::size_t>& items) const {
        Json list = Json::array();
        for (const std::size_t k : items) {
            list.push_back(name(plan_.items[k]));
        }
        return list;
    }

    [[nodiscard]] Json itemJson(const PlanItem& item) const {
        const compute::ScopeLine& line = figures_.scope.lines[item.line];
        const bool isItem = line.kind == compute::LineKind::Item;
        const bool isOpen = item.state != PlanState::Finished && plan_.loop.empty();
        Json out;
        out["id"] = isItem ? line.item.raw().toString() : line.option.raw().toString();
        out["item"] = line.name;
        out["state"] = wordOf(item.state);
        out["has_days"] = item.hasDays;
        out["days_left"] = daysOf(item.left);
        out["start_on"] = of(item.startOn);
        out["resumes_on"] = of(item.resumesOn);
        out["finish_on"] = of(item.finishOn);
        out["latest_start_on"] = of(item.latestStartOn);
        out["latest_finish_on"] = of(item.latestFinishOn);
        out["float"] = isOpen ? daysOf(item.totalFloat) : Json(nullptr);
        out["free_float"] = isOpen ? daysOf(item.freeFloat) : Json(nullptr);
        out["critical"] = item.isCritical;
        out["near_critical"] = item.isNearCritical;
        out["held_by"] = wordOf(item.hold);
        out["held_by_item"] = item.heldBy ? Json(name(plan_.items[*item.heldBy])) : Json(nullptr);
        out["order_by"] = of(item.orderBy);
        out["goods_on"] = of(item.goodsOn);
        return out;
    }

    const model::JobRows& rows_;
    const compute::JobFigures& figures_;
    const Plan& plan_;
};

}  // namespace

std::string planJson(const model::JobRows& rows, const compute::JobFigures& figures,
                     const Plan& plan, Date today, std::optional<std::size_t> kept) {
    return Writer(rows, figures, plan)
               .write(today, kept)
               .dump(2, ' ', false, Json::error_handler_t::replace) +
           "\n";
}

}  // namespace ledgerboard::report
