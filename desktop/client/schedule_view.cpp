#include "desktop/client/schedule_view.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "core/compute/pricing.h"
#include "core/compute/usual_order.h"
#include "core/model/overflow.h"
#include "core/qml/id_text.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/preferences.h"
#include "desktop/client/said.h"
#include "desktop/client/schedule_words.h"

namespace ledgerboard::desk {

using compute::PlanItem;
using compute::PlanState;
using model::Date;
using qml::idText;
namespace f = model::field;

namespace {

constexpr int kAWeek = 7;
constexpr int kMonday = 0;
constexpr int kMostTicks = 60;
constexpr int kMostDays = 20'000;  // beyond it nothing is a schedule

GroupBy groupNow() {
    return Preferences::here()->scheduleByCrew() ? GroupBy::Crew : GroupBy::Space;
}

// Days as they can be drawn, however far off they are.
Date within(Date day, Date today) {
    return std::clamp(day, today - kMostDays, today + kMostDays);
}

}  // namespace

ScheduleView::ScheduleView(QObject* parent) : RowModel(parent) {
    connect(Desk::here(), &Desk::changed, this, &ScheduleView::follow);
    connect(Desk::here(), &Desk::wordsChanged, this, &ScheduleView::lookAgain);
    connect(Preferences::here(), &Preferences::changed, this, [this] {
        arrange();
        lookAgain();
    });
    follow();
}

QVariant ScheduleView::drawnAt(int place) const {
    return QVariant::fromValue(rowAt(place));
}

void ScheduleView::follow() {
    Desk& desk = *Desk::here();
    auto now = desk.now();
    if (now == nullptr || now == of_) {
        return;
    }
    of_ = now;
    inBackground(
        desk.pool(), this,
        [now] {
            return model::guarded([&]() -> model::Result<compute::Plan> {
                return compute::planOf(now->rows, now->figures, now->today);
            });
        },
        [this, now](model::Result<compute::Plan> plan) {
            if (now != of_) {
                return;
            }
            // What is in hand was taken from a plan that is no more.
            mover_.reset();
            move_ = {};
            trouble_ = plan.ok() ? QString() : Said::trouble(plan.error());
            plan_ = plan.ok() ? std::make_shared<const compute::Plan>(std::move(plan).value())
                              : nullptr;
            now_ = now;
            chips_ = chipsOf(now->rows.spaces);
            setAxis();
            arrange();
            lookAgain();
        });
}

// From the first day anything is or was on site to the last that matters.
void ScheduleView::setAxis() {
    first_ = last_ = now_->today;
    const auto take = [this](const std::optional<Date>& day) {
        if (day) {
            const Date kept = within(*day, now_->today);
            first_ = std::min(first_, kept);
            last_ = std::max(last_, kept);
        }
    };
    take(now_->rows.job.targetFinishOn);
    if (plan_ != nullptr) {
        take(plan_->firstDay);
        for (const PlanItem& one : plan_->items) {
            take(one.startOn);
            take(one.finishOn);
            take(one.orderBy);
            if (one.line < now_->rows.items.size()) {
                take(now_->rows.items[one.line].plannedStartOn);
                take(now_->rows.items[one.line].plannedFinishOn);
            }
        }
    }
    // Whole weeks, with room to move to.
    first_ = first_ - (first_.weekday() - kMonday);
    last_ = last_ + (2 * kAWeek - 1 - last_.weekday());
}

void ScheduleView::arrange() {
    beginResetModel();
    rows_.clear();
    if (plan_ != nullptr) {
        auto made = model::guarded([this]() -> model::Result<ScopeRows> {
            return scopeRowsOf(*now_, groupNow(), filter_.toStdString());
        });
        if (made.ok()) {
            rows_ = scheduleRowsOf(*now_, *plan_, made.value(),
                                   {groupNow(), filter_.toStdString(), openOnly_});
        } else {
            Desk::here()->sayNotKept(Said::trouble(made.error()));
        }
    }
    endResetModel();
    findPlace();
}

void ScheduleView::lookAgain() {
    redraw();
    emit shown();
    emit moved();
    emit detailChanged();
    emit handChanged();
}

bool ScheduleView::isItem(int place) const {
    return place >= 0 && place < count() && !rows_[static_cast<std::size_t>(place)].isHeading;
}

// The item in hand, wherever it stands now; else the row at the same height.
void ScheduleView::findPlace() {
    for (int k = 0; k < count() && !itemInHand_.isNil(); ++k) {
        if (isItem(k) &&
            lineId(*now_, plan_->items[rows_[static_cast<std::size_t>(k)].item].line) ==
                itemInHand_) {
            place_ = k;
            return;
        }
    }
    place_ = std::clamp(place_, count() > 0 ? 0 : -1, count() - 1);
    if (place_ >= 0 && !isItem(place_) && place_ + 1 < count()) {
        ++place_;
    }
}

void ScheduleView::setPlace(int place) {
    if (!isItem(place) || inHand()) {
        return;
    }
    place_ = place;
    itemInHand_ = lineId(*now_, plan_->items[rows_[static_cast<std::size_t>(place)].item].line);
    emit moved();
    emit detailChanged();
}

void ScheduleView::move(int down) {
    int place = place_;
    const int step = down > 0 ? 1 : -1;
    for (int left = std::abs(down); left > 0; --left) {
        int next = place + step;
        while (next >= 0 && next < count() && !isItem(next)) {
            next += step;
        }
        if (!isItem(next)) {
            break;
        }
        place = next;
    }
    setPlace(place);
}

void ScheduleView::setFilter(const QString& filter) {
    if (filter != filter_ && !inHand()) {
        filter_ = filter;
        arrange();
        lookAgain();
    }
}

void ScheduleView::setOpenOnly(bool openOnly) {
    if (openOnly != openOnly_ && !inHand()) {
        openOnly_ = openOnly;
        arrange();
        lookAgain();
    }
}

void ScheduleView::nextGroup() {
    if (!inHand()) {
        Preferences::here()->setScheduleByCrew(!Preferences::here()->scheduleByCrew());
    }
}

bool ScheduleView::take() {
    if (inHand() || !isItem(place_)) {
        return inHand();
    }
    const std::size_t item = rows_[static_cast<std::size_t>(place_)].item;
    const Unmovable why = whyUnmovable(*now_, *plan_, item);
    if (why != Unmovable::Movable) {
        Desk::here()->sayNotKept(whyText(why, nameOf(item)));
        return false;
    }
    auto made = model::guarded([&]() -> model::Result<std::unique_ptr<PlanMover>> {
        return std::make_unique<PlanMover>(now_, plan_, item);
    });
    if (!made.ok()) {
        Desk::here()->sayNotKept(Said::trouble(made.error()));
        return false;
    }
    mover_ = std::move(made).value();
    wantDay(*plan_->items[item].startOn);
    return true;
}

void ScheduleView::wantDay(Date day) {
    const compute::WorkCalendar calendar(now_->rows.job);
    wanted_ = calendar.onOrAfter(
        std::clamp(day, plan_->firstDay, within(last_ + kMostDays, now_->today)));
    auto looked = model::guarded([&]() -> model::Result<PlanMove> { return mover_->to(wanted_); });
    if (looked.ok()) {
        move_ = std::move(looked).value();
        for (const PlanItem& one : move_.plan->items) {
            if (one.finishOn && *one.finishOn > last_) {
                last_ = within(*one.finishOn, now_->today);
            }
        }
    } else {
        Desk::here()->sayNotKept(Said::trouble(looked.error()));
    }
    lookAgain();
}

void ScheduleView::shift(int workDays) {
    if (!inHand()) {
        return;
    }
    const compute::WorkCalendar calendar(now_->rows.job);
    // Back from where it stands, where it could not go as far as it was wanted.
    Date day = workDays < 0 ? std::max(wanted_, move_.startOn) : wanted_;
    const int step = workDays < 0 ? -1 : 1;
    for (int left = std::abs(workDays); left > 0; --left) {
        do {
            day = day + step;
        } while (!calendar.isWorkDay(day) && day > plan_->firstDay);
    }
    wantDay(day);
}

void ScheduleView::dragTo(double day) {
    if (!inHand() || !std::isfinite(day)) {
        return;
    }
    const double most = static_cast<double>(kMostDays);
    const Date wanted = first_ + static_cast<int>(std::floor(std::clamp(day, 0.0, most)));
    if (wanted != wanted_) {
        wantDay(wanted);
    }
}

void ScheduleView::putBack() {
    if (inHand()) {
        mover_.reset();
        move_ = {};
        lookAgain();
    }
}

void ScheduleView::letGo() {
    if (!inHand()) {
        return;
    }
    const std::size_t item = mover_->item();
    const PlanMove move = move_;
    putBack();
    if (!move.isMove) {
        return;
    }
    const model::RawId row = now_->rows.items[plan_->items[item].line].id.raw();
    const auto& name = now_->figures.scope.lines[plan_->items[item].line].name;
    store::Action action("move " + name + " to " + move.startOn.toString());
    action.set(row, f::Item::plannedStartOn, model::valueOf(move.startOn));
    action.set(row, f::Item::plannedFinishOn, model::valueOf(move.plannedFinishOn));
    for (const LagChange& change : move.lags) {
        action.set(now_->rows.links[change.link].id.raw(), f::Link::lag,
                   model::valueOf(change.lag));
    }
    Desk::here()->keep(action, tr("%1 starts %2").arg(nameOf(item), say(move.startOn)));
}

void ScheduleView::keepPlan() {
    if (plan_ == nullptr || inHand()) {
        return;
    }
    store::Action action("keep the plan of " + now_->today.toString());
    int count = 0;
    for (const PlanItem& one : plan_->items) {
        if (one.state == PlanState::Finished || !one.hasDays || !one.startOn ||
            one.line >= now_->rows.items.size()) {
            continue;
        }
        const model::Item& row = now_->rows.items[one.line];
        const bool setStart = one.state != PlanState::UnderWay || !row.plannedStartOn;
        const bool newStart = setStart && row.plannedStartOn != one.startOn;
        const bool newFinish = row.plannedFinishOn != one.finishOn;
        if (newStart) {
            action.set(row.id.raw(), f::Item::plannedStartOn, model::valueOf(*one.startOn));
        }
        if (newFinish) {
            action.set(row.id.raw(), f::Item::plannedFinishOn, model::valueOf(*one.finishOn));
        }
        count += newStart || newFinish ? 1 : 0;
    }
    if (count == 0) {
        Desk::here()->sayPlainly(tr("The planned dates are these already."));
        return;
    }
    Desk::here()->keep(action, tr("Planned dates of %n item(s) kept", nullptr, count));
}

bool ScheduleView::canLink() const {
    return plan_ != nullptr && !plan_->isFinished && !plan_->items.empty();
}

void ScheduleView::linkUsually() {
    if (!canLink() || inHand()) {
        return;
    }
    Desk& desk = *Desk::here();
    store::Action action("link the usual order of the trades");
    int count = 0;
    for (model::Link link : compute::usualLinks(now_->rows, now_->figures)) {
        link.id = desk.book().newId<model::Kind::Link>(desk.instant());
        link.job = now_->rows.job.id;
        action.add(link);
        ++count;
    }
    if (count == 0) {
        desk.sayPlainly(
            tr("Nothing to link: every unfinished item whose place in the usual order is known has "
               "a link already, or nothing before it in its space."));
        return;
    }
    desk.keep(action, tr("%n link(s) in the usual order of the trades", nullptr, count));
}

const compute::Plan& ScheduleView::drawn() const {
    return inHand() && move_.plan != nullptr ? *move_.plan : *plan_;
}

QString ScheduleView::nameOf(std::size_t item) const {
    return Said::text(now_->figures.scope.lines[plan_->items[item].line].name);
}

QString ScheduleView::say(const std::optional<Date>& day) const {
    return day ? Said::day(*day, now_->today) : QString();
}

QString ScheduleView::dayAt(double day) const {
    return plan_ != nullptr && std::isfinite(day) && std::abs(day) < kMostDays
               ? Said::day(first_ + static_cast<int>(std::floor(day)), now_->today)
               : QString();
}

void ScheduleView::drawItem(const PlanItem& one, std::size_t item, ScheduleRow& row) const {
    const auto start = [this](const std::optional<Date>& day) {
        return day ? static_cast<double>(within(*day, now_->today) - first_) : -1.0;
    };
    const auto end = [&](const std::optional<Date>& day) { return day ? start(day) + 1 : -1.0; };
    const bool isOpen = one.state != PlanState::Finished;
    if (isOpen) {
        row.from = start(one.resumesOn ? one.resumesOn : one.startOn);
        row.to = end(one.finishOn);
        row.mayEnd = std::max(row.to, end(one.latestFinishOn));
    }
    if (one.state == PlanState::UnderWay && one.startOn && one.startOn <= now_->today) {
        row.doneFrom = start(one.startOn);
        row.doneTo = end(now_->today);
    } else if (!isOpen && one.finishOn) {
        row.doneFrom = start(one.startOn ? one.startOn : one.finishOn);
        row.doneTo = end(one.finishOn);
    }
    if (one.line < now_->rows.items.size()) {
        const model::Item& planned = now_->rows.items[one.line];
        if (planned.plannedStartOn && planned.plannedFinishOn &&
            *planned.plannedStartOn <= *planned.plannedFinishOn) {
            row.plannedFrom = start(planned.plannedStartOn);
            row.plannedTo = end(planned.plannedFinishOn);
        }
    }
    const PlanItem& stands = plan_->items[item];
    if (inHand() && (stands.startOn != one.startOn || stands.finishOn != one.finishOn)) {
        row.wasFrom = start(stands.resumesOn ? stands.resumesOn : stands.startOn);
        row.wasTo = end(stands.finishOn);
    }
    row.orderBy = start(one.orderBy);
    row.goods = start(one.goodsOn);
    row.weight = one.isCritical ? 2 : one.isNearCritical ? 1 : 0;
}

ScheduleRow ScheduleView::rowAt(int place) const {
    const ScheduleLine& line = rows_[static_cast<std::size_t>(place)];
    ScheduleRow row;
    row.isHeading = line.isHeading;
    const bool byCrew = groupNow() == GroupBy::Crew;
    if (line.isHeading) {
        row.name = !line.heading.empty() ? Said::text(line.heading)
                   : byCrew              ? tr("No crew")
                                         : tr("No space");
        row.aside = tr("%n item(s)", nullptr, static_cast<int>(line.count));
        return row;
    }
    const PlanItem& one = drawn().items[line.item];
    const compute::ScopeLine& scope = now_->figures.scope.lines[one.line];
    row.name = shortNameOf(*now_, one.line);
    const QString crew = Said::text(crewName(now_->rows, scope.crew));
    const QString space = Said::text(spaceName(now_->rows, scope.space));
    row.aside = byCrew ? space : crew;
    for (const auto& room : now_->rows.spaces) {
        if (room.id == scope.space) {
            row.chip = Said::text(room.shortName.empty() ? room.name.substr(0, 2) : room.shortName);
        }
    }
    if (const auto chip = chips_.find(scope.space.raw()); chip != chips_.end()) {
        row.ground = QColor(Said::text(chip->second.ground));
        row.ink = QColor(Said::text(chip->second.text));
    }
    drawItem(one, line.item, row);
    const bool isUnderWay = one.state == PlanState::UnderWay;
    row.label = isUnderWay ? Said::done(now_->figures.lines[one.line].shown) : QString();
    const ScheduleWords words{*now_, drawn()};
    row.cells = words.cells(one);
    row.told = nameOf(line.item) + QStringLiteral(": ") + words.state(one);
    return row;
}

QString ScheduleView::groupText() const {
    return groupNow() == GroupBy::Crew ? tr("By crew") : tr("By space");
}

QString ScheduleView::finish() const {
    if (plan_ == nullptr || !drawn().on) {
        return tr("not known");
    }
    return say(drawn().on);
}

QString ScheduleView::finishRest() const {
    return plan_ == nullptr ? QString() : ScheduleWords{*now_, drawn()}.finishRest();
}

QString ScheduleView::countText() const {
    return plan_ == nullptr ? QString() : ScheduleWords{*now_, *plan_}.count();
}

QStringList ScheduleView::notes() const {
    return plan_ == nullptr ? QStringList() : ScheduleWords{*now_, *plan_}.notes();
}

int ScheduleView::days() const {
    return plan_ == nullptr ? 0 : last_ - first_ + 1;
}

double ScheduleView::today() const {
    return plan_ == nullptr ? -1 : now_->today - first_ + 0.5;
}

double ScheduleView::target() const {
    return plan_ == nullptr || !now_->rows.job.targetFinishOn
               ? -1
               : within(*now_->rows.job.targetFinishOn, now_->today) - first_ + 1;
}

QString ScheduleView::targetText() const {
    return target() < 0 ? QString()
                        : tr("target %1").arg(Said::dayMonth(*now_->rows.job.targetFinishOn));
}

// Mondays, as far apart as it takes for there to be not too many.
QVariantList ScheduleView::ticks() const {
    QVariantList list;
    const int weeks = days() / kAWeek;
    const int apart = std::max(1, (weeks + kMostTicks - 1) / kMostTicks) * kAWeek;
    for (int day = 0; day < days(); day += apart) {
        ScheduleTick tick;
        tick.day = day;
        tick.text = Said::dayMonth(first_ + day);
        list << QVariant::fromValue(tick);
    }
    return list;
}

// Stretches of days not worked, as a tick each whose text is how many they are.
QVariantList ScheduleView::daysOff() const {
    QVariantList list;
    if (plan_ == nullptr || days() > kMostTicks * kAWeek) {
        return list;
    }
    const compute::WorkCalendar calendar(now_->rows.job);
    for (int day = 0; day < days();) {
        int length = 0;
        while (day + length < days() && !calendar.isWorkDay(first_ + day + length)) {
            ++length;
        }
        if (length > 0) {
            list << QVariant::fromValue(QPointF(day, length));
        }
        day += length + 1;
    }
    return list;
}

QStringList ScheduleView::columns() const {
    return ScheduleWords::columns();
}

QString ScheduleView::itemText() const {
    if (!isItem(place_)) {
        return {};
    }
    const std::size_t item = rows_[static_cast<std::size_t>(place_)].item;
    const QString crew =
        Said::text(crewName(now_->rows, now_->figures.scope.lines[plan_->items[item].line].crew));
    return crew.isEmpty() ? nameOf(item) : nameOf(item) + QStringLiteral(", ") + crew;
}

QString ScheduleView::itemAt(int place) const {
    if (!isItem(place)) {
        return {};
    }
    const auto line = plan_->items[rows_[static_cast<std::size_t>(place)].item].line;
    return line < now_->rows.items.size() ? idText(now_->rows.items[line].id) : QString();
}

QStringList ScheduleView::details() const {
    if (!isItem(place_)) {
        return {};
    }
    return ScheduleWords{*now_, drawn()}.details(
        drawn().items[rows_[static_cast<std::size_t>(place_)].item]);
}

QString ScheduleView::moveText() const {
    return inHand() ? ScheduleWords{*now_, *plan_}.moveText(mover_->item(), move_) : QString();
}

QString ScheduleView::pushText() const {
    return inHand() ? ScheduleWords{*now_, *plan_}.pushText(move_) : QString();
}

}  // namespace ledgerboard::desk
