#include "core/compute/waits.h"

#include <algorithm>
#include <unordered_map>

#include "core/compute/orders_due.h"
#include "core/compute/positions.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;

// Days as entered, within what a calendar can bear.
int withinReason(const std::optional<std::int64_t>& days) {
    return static_cast<int>(std::clamp<std::int64_t>(days.value_or(0), 0, 10'000));
}

class Collector {
  public:
    Collector(const model::JobRows& rows, const JobFigures& figures, const Plan& plan, Date today,
              int days)
        : rows_(rows),
          figures_(figures),
          plan_(plan),
          today_(today),
          last_(today + days),
          items_(rows.items),
          spaces_(rows.spaces) {}

    std::vector<Wait> collect() {
        addOrders();
        addDeliveries();
        addDecisions();
        addInspections();
        addPayments();
        addDraws();
        std::stable_sort(out_.begin(), out_.end(), [](const Wait& a, const Wait& b) {
            constexpr std::int32_t kNoDay = INT32_MAX;
            return (a.on ? a.on->days() : kNoDay) < (b.on ? b.on->days() : kNoDay);
        });
        return std::move(out_);
    }

  private:
    void add(WaitKind kind, std::optional<Date> on, std::string what, std::optional<Money> money,
             model::Kind recordKind, model::RawId record) {
        if (on && *on > last_) {
            return;
        }
        out_.push_back({kind, on, on && *on < today_, std::move(what), money, recordKind, record});
    }

    void addOrders() {
        const auto due = ordersDue(rows_, figures_, plan_, Orders(rows_));
        for (std::size_t k = 0; k < due.size(); ++k) {
            if (due[k]) {
                add(WaitKind::Order, due[k], lineName(k), figures_.lines[k].budgetNow,
                    model::Kind::Item, rows_.items[k].id.raw());
            }
        }
    }

    const std::string& lineName(std::size_t k) const { return figures_.scope.lines[k].name; }

    std::string itemName(const model::Id<model::Kind::Item>& item) const {
        const auto k = items_.of(item);
        return k ? lineName(*k) : std::string("an item no longer in the job");
    }

    void addDeliveries() {
        for (const model::Delivery& delivery : rows_.deliveries) {
            if (!delivery.arrivedOn && delivery.promisedOn) {
                add(WaitKind::Delivery, delivery.promisedOn, itemName(delivery.item), std::nullopt,
                    model::Kind::Delivery, delivery.id.raw());
            }
        }
    }

    void addDecisions() {
        for (const model::Alternate& alternate : rows_.alternates) {
            if (!alternate.chosen.isNil() || !alternate.decideBy) {
                continue;
            }
            const auto space = spaces_.of(alternate.space);
            add(WaitKind::Decision, alternate.decideBy,
                (space ? rows_.spaces[*space].name + ": " : "") + alternate.question, std::nullopt,
                model::Kind::Alternate, alternate.id.raw());
        }
    }

    // An inspection asked for waits without a day until it is held; one held with corrections is
    // to be asked for again.
    void addInspections() {
        for (const model::Inspection& inspection : rows_.inspections) {
            const bool isAhead = inspection.heldOn && *inspection.heldOn > today_;
            if (!inspection.heldOn || isAhead) {
                add(WaitKind::Inspection, inspection.heldOn, inspection.what, std::nullopt,
                    model::Kind::Inspection, inspection.id.raw());
            } else if (inspection.outcome == model::Outcome::Corrections &&
                       !isPassedLater(inspection)) {
                add(WaitKind::Inspection, std::nullopt,
                    inspection.what + ", again after corrections", std::nullopt,
                    model::Kind::Inspection, inspection.id.raw());
            }
        }
    }

    bool isPassedLater(const model::Inspection& failed) const {
        return std::any_of(rows_.inspections.begin(), rows_.inspections.end(),
                           [&](const model::Inspection& other) {
                               return other.id != failed.id &&
                                      folded(other.what) == folded(failed.what) &&
                                      (!other.heldOn || *other.heldOn >= *failed.heldOn);
                           });
    }

    void addPayments() {
        for (const SpendRead& read : figures_.spending) {
            const model::Spend& spend = rows_.spends[read.spend];
            if (spend.type != model::SpendKind::Invoice || read.openAmount <= Money{} ||
                !spend.dueOn) {
                continue;
            }
            add(WaitKind::Payment, spend.dueOn, payeeOf(spend), read.openAmount, model::Kind::Spend,
                spend.id.raw());
        }
    }

    std::string payeeOf(const model::Spend& spend) const {
        if (!spend.payee.empty()) {
            return spend.payee;
        }
        for (const model::Crew& crew : rows_.crews) {
            if (!spend.crew.isNil() && crew.id == spend.crew) {
                return crew.name;
            }
        }
        return spend.item.isNil() ? "a bill without a payee" : itemName(spend.item);
    }

    void addDraws() {
        for (const model::Draw& draw : rows_.draws) {
            if (draw.fundedOn || (!draw.askedOn && !draw.inspectedOn)) {
                continue;
            }
            const int fundDays = withinReason(rows_.job.fundDays);
            const int visitDays = withinReason(rows_.job.visitDays);
            const Date on = draw.inspectedOn ? *draw.inspectedOn + fundDays
                                             : *draw.askedOn + visitDays + fundDays;
            add(WaitKind::Draw, on,
                draw.number ? "Draw " + std::to_string(*draw.number) : std::string("A draw"),
                draw.amount, model::Kind::Draw, draw.id.raw());
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const Plan& plan_;
    Date today_;
    Date last_;
    Positions<model::Item> items_;
    Positions<model::Space> spaces_;
    std::vector<Wait> out_;
};

}  // namespace

std::string_view wordsFor(WaitKind kind) {
    switch (kind) {
        case WaitKind::Order:
            return "order";
        case WaitKind::Delivery:
            return "delivery";
        case WaitKind::Decision:
            return "decide";
        case WaitKind::Inspection:
            return "inspection";
        case WaitKind::Payment:
            return "pay";
        case WaitKind::Draw:
            return "draw";
    }
    return "";
}

std::vector<Wait> waitsOf(const model::JobRows& rows, const JobFigures& figures, const Plan& plan,
                          Date today, int days) {
    return Collector(rows, figures, plan, today, days).collect();
}

}  // namespace ledgerboard::compute
