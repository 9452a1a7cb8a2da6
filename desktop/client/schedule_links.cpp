#include "desktop/client/schedule_links.h"

#include <algorithm>
#include <cstdlib>

#include "core/compute/links.h"
#include "core/compute/plan.h"
#include "core/model/overflow.h"
#include "core/qml/id_text.h"

#include "desktop/client/desk.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Kind;
using model::LinkKind;
using model::Quantity;
using qml::idFrom;
using qml::idText;
namespace f = model::field;

namespace {

constexpr int kMostLagDays = 3'650;  // beyond it nothing is a plan

QString daysText(const Quantity& lag) {
    const auto thousandths = std::abs(lag.thousandths());
    constexpr std::int64_t kOne = 1'000;
    return thousandths == kOne
               ? ScheduleLinks::tr("1 working day")
               : ScheduleLinks::tr("%1 working days")
                     .arg(Said::text(Quantity::fromThousandths(thousandths).toString()));
}

// "starts once that one is finished, 2 working days later".
QString howText(const model::Link& link, bool isBefore) {
    QString how;
    switch (link.type) {
        case LinkKind::StartToStart:
            how = isBefore ? ScheduleLinks::tr("starts once that one has started")
                           : ScheduleLinks::tr("starts once this one has started");
            break;
        case LinkKind::FinishToFinish:
            how = isBefore ? ScheduleLinks::tr("finishes once that one is finished")
                           : ScheduleLinks::tr("finishes once this one is finished");
            break;
        case LinkKind::StartToFinish:
            how = isBefore ? ScheduleLinks::tr("finishes once that one has started")
                           : ScheduleLinks::tr("finishes once this one has started");
            break;
        case LinkKind::Unset:
        case LinkKind::FinishToStart:
            how = isBefore ? ScheduleLinks::tr("starts once that one is finished")
                           : ScheduleLinks::tr("starts once this one is finished");
            break;
    }
    const Quantity lag = link.lag.value_or(Quantity{});
    if (lag == Quantity{}) {
        return how;
    }
    return lag > Quantity{} ? ScheduleLinks::tr("%1, %2 later").arg(how, daysText(lag))
                            : ScheduleLinks::tr("%1, %2 sooner").arg(how, daysText(lag));
}

Quantity shifted(const std::optional<Quantity>& lag, int days) {
    constexpr std::int64_t kOne = 1'000;
    const auto wanted = lag.value_or(Quantity{}).thousandths() + days * kOne;
    return Quantity::fromThousandths(std::clamp(wanted, -kMostLagDays * kOne, kMostLagDays * kOne));
}

}  // namespace

ScheduleLinks::ScheduleLinks(QObject* parent) : QObject(parent) {
    connect(Desk::here(), &Desk::changed, this, &ScheduleLinks::follow);
    connect(Desk::here(), &Desk::wordsChanged, this, &ScheduleLinks::changed);
    follow();
}

void ScheduleLinks::follow() {
    if (now_ != Desk::here()->now()) {
        now_ = Desk::here()->now();
        from_ = to_ = {};  // what was being linked was so in a plan that is no more
        emit changed();
    }
}

void ScheduleLinks::setItem(const QString& id) {
    if (id != item_) {
        item_ = id;
        emit changed();
    }
}

QString ScheduleLinks::nameOf(const ItemId& item) const {
    for (std::size_t k = 0; now_ != nullptr && k < now_->rows.items.size(); ++k) {
        if (now_->rows.items[k].id == item) {
            return Said::text(now_->figures.scope.lines[k].name);
        }
    }
    return {};
}

bool ScheduleLinks::begin() {
    const auto item = idFrom<Kind::Item>(item_);
    if (now_ == nullptr || nameOf(item).isEmpty()) {
        Desk::here()->sayNotKept(
            tr("Only items of the scope are linked: an option gets its own once it is chosen."));
        return false;
    }
    from_ = item;
    to_ = {};
    lagDays_ = 0;
    aimRest_.clear();
    emit changed();
    return true;
}

void ScheduleLinks::leave() {
    from_ = to_ = {};
    emit changed();
}

void ScheduleLinks::aim(const QString& to) {
    if (!isLinking()) {
        return;
    }
    const auto wanted = idFrom<Kind::Item>(to);
    to_ = wanted == from_ || nameOf(wanted).isEmpty() ? ItemId() : wanted;
    look();
}

void ScheduleLinks::shift(int days) {
    if (isLinking()) {
        lagDays_ = std::clamp(lagDays_ + days, -kMostLagDays, kMostLagDays);
        look();
    }
}

model::Link ScheduleLinks::link() const {
    model::Link link;
    link.job = now_->rows.job.id;
    link.fromItem = from_;
    link.toItem = to_;
    link.type = LinkKind::FinishToStart;
    if (lagDays_ != 0) {
        link.lag = Quantity::of(lagDays_);
    }
    return link;
}

// What the finish would be, by the plan of the rows with the link among them.
void ScheduleLinks::look() {
    aimRest_.clear();
    ringText_.clear();
    if (!to_.isNil()) {
        model::JobRows rows = now_->rows;
        rows.links.push_back(link());
        const auto on = [this](const model::JobRows& of) {
            return model::guarded([&]() -> model::Result<std::optional<model::Date>> {
                return compute::planOf(of, now_->figures, now_->today).on;
            });
        };
        const auto ring = compute::ringOf(rows.links);
        const auto before = on(now_->rows);
        const auto after = on(rows);
        if (!ring.empty()) {
            aimRest_ = ringText_ =
                tr("They would wait for each other in a ring: %1.")
                    .arg(Said::text(compute::ringText(
                        ring, [this](const ItemId& item) { return nameOf(item).toStdString(); })));
        } else if (before.ok() && after.ok() && after.value()) {
            const QString day = Said::day(*after.value(), now_->today);
            aimRest_ = before.value() == after.value() ? tr("The finish stays at %1.").arg(day)
                                                       : tr("The finish moves to %1.").arg(day);
        }
    }
    emit changed();
}

QString ScheduleLinks::from() const {
    return idText(from_);
}

QString ScheduleLinks::aimText() const {
    if (!isLinking()) {
        return {};
    }
    if (to_.isNil()) {
        return tr("What starts after %1? Go to it.").arg(nameOf(from_));
    }
    //: An item, how it starts: "Kitchen/backsplash starts once Kitchen/counter top is finished"
    const QString text = tr("%1 starts once %2 is finished").arg(nameOf(to_), nameOf(from_));
    if (lagDays_ == 0) {
        return text + QLatin1Char('.');
    }
    const QString days = daysText(Quantity::of(lagDays_));
    return (lagDays_ > 0 ? tr("%1, %2 later.") : tr("%1, %2 sooner.")).arg(text, days);
}

bool ScheduleLinks::letGo() {
    if (!isLinking() || now_ == nullptr) {
        return false;
    }
    Desk& desk = *Desk::here();
    if (to_.isNil()) {
        desk.sayNotKept(tr("Go to the item that starts after %1 first.").arg(nameOf(from_)));
        return false;
    }
    for (const auto& known : now_->rows.links) {
        if (known.fromItem == from_ && known.toItem == to_) {
            desk.sayNotKept(
                tr("%1 waits for %2 already: Ctrl+I changes how.").arg(nameOf(to_), nameOf(from_)));
            return false;
        }
    }
    model::Link made = link();
    made.id = desk.book().newId<Kind::Link>(desk.instant());
    const auto name = [this](const ItemId& item) { return nameOf(item).toStdString(); };
    if (!ringText_.isEmpty()) {
        desk.sayNotKept(ringText_);
        return false;
    }
    if (auto good = compute::checkLink(made, now_->rows.links, name); !good.ok()) {
        desk.sayNotKept(Said::trouble(good.error()));
        return false;
    }
    store::Action action("link " + name(from_) + " to " + name(to_));
    action.add(made);
    const QString said = aimText();
    if (!desk.keep(action, said.chopped(1))) {
        return false;
    }
    leave();
    return true;
}

std::vector<const model::Link*> ScheduleLinks::links() const {
    std::vector<const model::Link*> found;
    const auto item = idFrom<Kind::Item>(item_);
    if (now_ == nullptr || item.isNil()) {
        return found;
    }
    for (const bool isBefore : {true, false}) {
        for (const auto& link : now_->rows.links) {
            const auto& here = isBefore ? link.toItem : link.fromItem;
            const auto& there = isBefore ? link.fromItem : link.toItem;
            if (here == item && !nameOf(there).isEmpty()) {
                found.push_back(&link);
            }
        }
    }
    return found;
}

QVariantList ScheduleLinks::rows() const {
    QVariantList list;
    const auto item = idFrom<Kind::Item>(item_);
    bool hadBefore = false;
    bool hadAfter = false;
    for (const auto* link : links()) {
        const bool isBefore = link->toItem == item;
        LinkRow row;
        bool& had = isBefore ? hadBefore : hadAfter;
        if (!had) {
            row.heading = isBefore ? tr("It waits for") : tr("After it");
        }
        had = true;
        row.other = nameOf(isBefore ? link->fromItem : link->toItem);
        row.how = howText(*link, isBefore);
        list << QVariant::fromValue(row);
    }
    return list;
}

const model::Link* ScheduleLinks::linkAt(int row) const {
    const auto all = links();
    return row >= 0 && row < static_cast<int>(all.size()) ? all[static_cast<std::size_t>(row)]
                                                          : nullptr;
}

void ScheduleLinks::shiftLag(int row, int days) {
    const auto* link = linkAt(row);
    if (link == nullptr) {
        return;
    }
    model::Link wanted = *link;
    wanted.lag = shifted(link->lag, days);
    store::Action action("lag of " + nameOf(link->toItem).toStdString());
    action.set(link->id.raw(), f::Link::lag,
               *wanted.lag == Quantity{} ? model::Value() : model::valueOf(*wanted.lag));
    Desk::here()->keep(action, tr("%1 %2").arg(nameOf(link->toItem), howText(wanted, true)));
}

void ScheduleLinks::turnKind(int row) {
    const auto* link = linkAt(row);
    if (link == nullptr) {
        return;
    }
    model::Link wanted = *link;
    wanted.type = link->type == LinkKind::StartToStart     ? LinkKind::FinishToFinish
                  : link->type == LinkKind::FinishToFinish ? LinkKind::StartToFinish
                  : link->type == LinkKind::StartToFinish  ? LinkKind::FinishToStart
                                                           : LinkKind::StartToStart;
    store::Action action("link of " + nameOf(link->toItem).toStdString());
    action.set(link->id.raw(), f::Link::type, model::valueOf(wanted.type));
    Desk::here()->keep(action, tr("%1 %2").arg(nameOf(link->toItem), howText(wanted, true)));
}

void ScheduleLinks::unlink(int row) {
    const auto* link = linkAt(row);
    if (link == nullptr) {
        return;
    }
    store::Action action("drop link");
    action.drop(Kind::Link, link->id.raw());
    Desk::here()->keep(
        action, tr("%1 no longer waits for %2").arg(nameOf(link->toItem), nameOf(link->fromItem)));
}

}  // namespace ledgerboard::desk
