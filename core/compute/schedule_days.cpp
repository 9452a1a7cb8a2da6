#include "core/compute/schedule_days.h"

#include <algorithm>

#include "core/compute/orders_due.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Percent;

class Collector {
  public:
    Collector(const model::JobRows& rows, const JobFigures& figures, const Plan& plan,
              model::Id<model::Kind::Crew> crew)
        : rows_(rows),
          figures_(figures),
          plan_(plan),
          crew_(crew),
          items_(rows.items),
          crews_(rows.crews) {}

    ScheduleDays collect() {
        addWork();
        addDeliveries();
        addInspections();
        if (crew_.isNil()) {
            addOrders();
            addDecisions();
        }
        std::stable_sort(out_.days.begin(), out_.days.end(),
                         [](const ScheduleDay& a, const ScheduleDay& b) {
                             return a.from != b.from ? a.from < b.from : a.kind < b.kind;
                         });
        return std::move(out_);
    }

  private:
    void add(ScheduleDayKind kind, model::RawId record, std::string what,
             const std::optional<Date>& from, const std::optional<Date>& to, std::string note = "",
             std::string crew = "") {
        if (!from || !to) {
            ++out_.withoutDay;
            return;
        }
        out_.days.push_back({kind, record, std::move(what), std::move(crew), std::move(note), *from,
                             std::max(*from, *to)});
    }

    [[nodiscard]] bool isTheirs(std::size_t line) const {
        return crew_.isNil() || figures_.scope.lines[line].crew == crew_;
    }

    [[nodiscard]] std::string noteOf(const PlanItem& item) const {
        const Percent shown = figures_.lines[item.line].shown;
        if (item.state == PlanState::Finished) {
            return "finished";
        }
        std::string note = shown > Percent{} ? shown.toString() + " % shown" : "";
        if (item.isCritical) {
            note += (note.empty() ? "" : "; ") + std::string("the finish of the job waits for it");
        }
        return note;
    }

    void addWork() {
        for (const PlanItem& item : plan_.items) {
            const ScopeLine& line = figures_.scope.lines[item.line];
            if (!isTheirs(item.line)) {
                continue;
            }
            const auto crew = crews_.of(line.crew);
            const bool hasDays = item.state == PlanState::Finished || item.hasDays;
            add(ScheduleDayKind::Work,
                line.kind == LineKind::Option ? line.option.raw() : line.item.raw(), line.name,
                hasDays ? item.startOn : std::nullopt, item.finishOn, noteOf(item),
                crew ? rows_.crews[*crew].name : "");
        }
    }

    void addDeliveries() {
        for (const model::Delivery& delivery : rows_.deliveries) {
            const auto item = items_.of(delivery.item);
            if (!item || !isTheirs(*item)) {
                continue;
            }
            const auto on = delivery.arrivedOn ? delivery.arrivedOn : delivery.promisedOn;
            add(ScheduleDayKind::Delivery, delivery.id.raw(), figures_.scope.lines[*item].name, on,
                on, delivery.arrivedOn ? "arrived" : "promised");
        }
    }

    void addInspections() {
        for (const model::Inspection& inspection : rows_.inspections) {
            const bool waits = std::any_of(inspection.holdsUp.begin(), inspection.holdsUp.end(),
                                           [&](const auto& id) {
                                               const auto item = items_.of(id);
                                               return item && isTheirs(*item);
                                           });
            if (crew_.isNil() || waits) {
                add(ScheduleDayKind::Inspection, inspection.id.raw(), inspection.what,
                    inspection.heldOn, inspection.heldOn);
            }
        }
    }

    void addOrders() {
        const auto due = ordersDue(rows_, figures_, plan_, Orders(rows_));
        for (std::size_t k = 0; k < due.size(); ++k) {
            if (due[k]) {
                add(ScheduleDayKind::OrderBy, rows_.items[k].id.raw(), figures_.scope.lines[k].name,
                    due[k], due[k]);
            }
        }
    }

    void addDecisions() {
        for (const model::Alternate& alternate : rows_.alternates) {
            if (alternate.chosen.isNil()) {
                add(ScheduleDayKind::Decision, alternate.id.raw(), alternate.question,
                    alternate.decideBy, alternate.decideBy);
            }
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const Plan& plan_;
    model::Id<model::Kind::Crew> crew_;
    Positions<model::Item> items_;
    Positions<model::Crew> crews_;
    ScheduleDays out_;
};

}  // namespace

std::string_view wordsFor(ScheduleDayKind kind) {
    switch (kind) {
        case ScheduleDayKind::Work:
            return "work";
        case ScheduleDayKind::Delivery:
            return "delivery";
        case ScheduleDayKind::OrderBy:
            return "order-by";
        case ScheduleDayKind::Inspection:
            return "inspection";
        case ScheduleDayKind::Decision:
            return "decision";
    }
    return "";
}

ScheduleDays scheduleDaysOf(const model::JobRows& rows, const JobFigures& figures, const Plan& plan,
                            model::Id<model::Kind::Crew> crew) {
    return Collector(rows, figures, plan, crew).collect();
}

}  // namespace ledgerboard::compute
