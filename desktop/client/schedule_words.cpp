#include "desktop/client/schedule_words.h"

#include <algorithm>

#include <QLocale>

#include "core/compute/pricing.h"
#include "core/report/plan_lines.h"

#include "desktop/client/said.h"

namespace ledgerboard::desk {

using compute::Hold;
using compute::PlanItem;
using compute::PlanState;
using model::Date;

namespace {

constexpr const char* kHere = "ScheduleWords";

QString words(const char* text) {
    return QCoreApplication::translate(kHere, text);
}

// "2.5", as `plan` says it, by the locale.
QString numberOf(std::int64_t thousandths) {
    return QLocale().toString(std::stod(report::daysText(thousandths)), 'g', 12);
}

// "1 day", "2.5 days".
QString daysOf(std::int64_t thousandths) {
    return thousandths == compute::kWorkDay
               ? words(QT_TRANSLATE_NOOP("ScheduleWords", "1 day"))
               : words(QT_TRANSLATE_NOOP("ScheduleWords", "%1 days")).arg(numberOf(thousandths));
}

// Whether the day an item starts comes before another's; those without a day come last.
bool startsBefore(const PlanItem& a, const PlanItem& b) {
    if (a.startOn.has_value() != b.startOn.has_value()) {
        return a.startOn.has_value();
    }
    return a.startOn < b.startOn;
}

// Options without items, which no row of the scope stands for, into the group they belong to.
void addOptions(const JobNow& now, const compute::Plan& plan, const ScheduleAsk& ask,
                std::vector<ScheduleLine>& lines, std::vector<model::RawId>& groups) {
    for (std::size_t k = 0; k < plan.items.size(); ++k) {
        const auto& scope = now.figures.scope.lines[plan.items[k].line];
        if (scope.kind == compute::LineKind::Item ||
            (ask.openOnly && plan.items[k].state == PlanState::Finished) ||
            compute::folded(scope.name).find(compute::folded(ask.filter)) == std::string::npos) {
            continue;
        }
        const model::RawId group = ask.by == GroupBy::Crew ? scope.crew.raw() : scope.space.raw();
        auto at = std::find(groups.begin(), groups.end(), group) - groups.begin();
        if (at == static_cast<std::ptrdiff_t>(groups.size())) {
            ScheduleLine heading;
            heading.isHeading = true;
            heading.heading = ask.by == GroupBy::Crew ? crewName(now.rows, scope.crew)
                                                      : spaceName(now.rows, scope.space);
            lines.push_back(heading);
            groups.push_back(group);
        }
        ScheduleLine line;
        line.item = k;
        for (++at; at < static_cast<std::ptrdiff_t>(lines.size()) &&
                   !lines[static_cast<std::size_t>(at)].isHeading;
             ++at) {
        }
        lines.insert(lines.begin() + at, line);
        groups.insert(groups.begin() + at, group);
    }
}

}  // namespace

model::RawId lineId(const JobNow& now, std::size_t line) {
    const auto& scope = now.figures.scope.lines[line];
    return scope.kind == compute::LineKind::Item ? scope.item.raw() : scope.option.raw();
}

std::map<model::RawId, report::Chip> chipsOf(const std::vector<model::Space>& spaces) {
    std::vector<const model::Space*> order;
    order.reserve(spaces.size());
    for (const auto& space : spaces) {
        order.push_back(&space);
    }
    std::stable_sort(order.begin(), order.end(), [](const auto* a, const auto* b) {
        return a->walkOrder.value_or(INT64_MAX) < b->walkOrder.value_or(INT64_MAX);
    });
    std::map<model::RawId, report::Chip> chips;
    for (std::size_t k = 0; k < order.size(); ++k) {
        chips.emplace(order[k]->id.raw(), report::chipFor(order[k]->swatch, k));
    }
    return chips;
}

std::vector<ScheduleLine> scheduleRowsOf(const JobNow& now, const compute::Plan& plan,
                                         const ScopeRows& rows, const ScheduleAsk& ask) {
    std::vector<std::size_t> itemOf(now.figures.scope.lines.size(), plan.items.size());
    for (std::size_t k = 0; k < plan.items.size(); ++k) {
        if (!ask.openOnly || plan.items[k].state != PlanState::Finished) {
            itemOf[plan.items[k].line] = k;
        }
    }
    std::vector<ScheduleLine> lines;
    std::vector<model::RawId> groups;  // of each line
    model::RawId group;
    for (const ScopeRow& row : rows.rows) {
        ScheduleLine line;
        line.isHeading = row.isHeading;
        if (row.isHeading) {
            line.heading = row.heading;
            group = row.group;
            // A heading whose items the plan has none of is none.
            if (!lines.empty() && lines.back().isHeading) {
                lines.pop_back();
                groups.pop_back();
            }
        } else if (itemOf[row.item] == plan.items.size()) {
            continue;
        } else {
            line.item = itemOf[row.item];
        }
        lines.push_back(line);
        groups.push_back(group);
    }
    if (!lines.empty() && lines.back().isHeading) {
        lines.pop_back();
        groups.pop_back();
    }
    addOptions(now, plan, ask, lines, groups);
    for (auto at = lines.begin(); at != lines.end();) {
        const auto end = std::find_if(at + 1, lines.end(),
                                      [](const ScheduleLine& line) { return line.isHeading; });
        at->count = static_cast<std::size_t>(end - at) - 1;
        std::stable_sort(at + 1, end, [&](const ScheduleLine& a, const ScheduleLine& b) {
            return startsBefore(plan.items[a.item], plan.items[b.item]);
        });
        at = end;
    }
    return lines;
}

QString shortNameOf(const JobNow& now, std::size_t line) {
    if (line >= now.rows.items.size()) {
        return Said::text(now.figures.scope.lines[line].name);
    }
    const model::Item& item = now.rows.items[line];
    const QString what = Said::text(item.object);
    const QString treatment = Said::treatment(item.treatment);
    return treatment.isEmpty() ? what : treatment + QLatin1Char(' ') + what;
}

QString whyText(Unmovable why, const QString& name) {
    switch (why) {
        case Unmovable::Finished:
            return words(
                       QT_TRANSLATE_NOOP("ScheduleWords", "%1 is finished: it stays where it was."))
                .arg(name);
        case Unmovable::UnderWay:
            return words(QT_TRANSLATE_NOOP("ScheduleWords",
                                           "%1 is under way: what is left of it goes on from the "
                                           "next day worked. Its days are changed in the scope."))
                .arg(name);
        case Unmovable::NotAnItem:
            return words(QT_TRANSLATE_NOOP("ScheduleWords",
                                           "%1 is an open alternate without items of its own: it "
                                           "can be moved once it is decided."))
                .arg(name);
        case Unmovable::NoDays:
            return words(QT_TRANSLATE_NOOP("ScheduleWords",
                                           "%1 has no days, so it takes no time in the plan: enter "
                                           "its days in the scope first."))
                .arg(name);
        case Unmovable::Loop:
            return words(QT_TRANSLATE_NOOP("ScheduleWords",
                                           "Items wait for each other in a ring, so the plan has "
                                           "no days to move %1 from."))
                .arg(name);
        case Unmovable::BeforeNoDay:
            return words(QT_TRANSLATE_NOOP("ScheduleWords",
                                           "%1 waits for finished items whose day is not known, so "
                                           "nothing tells how far it could move."))
                .arg(name);
        case Unmovable::Movable:
            break;
    }
    return {};
}

QString ScheduleWords::say(const std::optional<Date>& day) const {
    return day ? Said::day(*day, now_.today) : QString();
}

QString ScheduleWords::name(std::size_t item) const {
    return Said::text(now_.figures.scope.lines[plan_.items[item].line].name);
}

QString ScheduleWords::finishRest() const {
    const auto& target = now_.rows.job.targetFinishOn;
    if (!plan_.on) {
        return plan_.loop.empty() ? tr("no item has days")
                                  : tr("items wait for each other in a ring");
    }
    if (!target) {
        return tr("no finish was planned to compare with");
    }
    const int late = compute::workDaysLate(calendar_, *target, *plan_.on);
    return late == 0 ? tr("on the target of %1").arg(say(target))
           : late > 0
               ? tr("%n working day(s) after the target of %1", nullptr, late).arg(say(target))
               : tr("%n working day(s) before the target of %1", nullptr, -late).arg(say(target));
}

QString ScheduleWords::count() const {
    int finished = 0;
    int underWay = 0;
    int critical = 0;
    for (const PlanItem& one : plan_.items) {
        finished += one.state == PlanState::Finished ? 1 : 0;
        underWay += one.state == PlanState::UnderWay ? 1 : 0;
        critical += one.isCritical ? 1 : 0;
    }
    QStringList parts{tr("%n item(s)", nullptr, static_cast<int>(plan_.items.size()))};
    parts << tr("%n finished", nullptr, finished) << tr("%n under way", nullptr, underWay)
          << tr("%n without float", nullptr, critical);
    return parts.join(QStringLiteral(", "));
}

QStringList ScheduleWords::notes() const {
    QStringList list;
    if (!plan_.loop.empty()) {
        list << tr("No dates can be told, for these items wait for each other in a ring: %1.")
                    .arg(Said::text(compute::loopText(plan_, now_.figures)));
    }
    if (plan_.withoutDays > 0) {
        list << tr("%n item(s) without days take no time here.", nullptr,
                   static_cast<int>(plan_.withoutDays));
    }
    if (plan_.goodsWithoutDay > 0) {
        list << tr("For %n item(s) goods are ordered and no day tells when they come.", nullptr,
                   static_cast<int>(plan_.goodsWithoutDay));
    }
    if (plan_.waitingForInspection > 0) {
        list << tr("%n item(s) wait for an inspection, which holds up nothing here.", nullptr,
                   static_cast<int>(plan_.waitingForInspection));
    }
    if (plan_.unplacedChangeDays != model::Quantity{}) {
        list << tr("%1 of signed changes name no item.")
                    .arg(daysOf(plan_.unplacedChangeDays.thousandths()));
    }
    if (now_.rows.links.empty() && plan_.items.size() > 1 && !plan_.isFinished) {
        list << tr("No item waits for another yet: everything starts as soon as it may.");
    }
    return list;
}

QString ScheduleWords::state(const PlanItem& one) const {
    if (one.state == PlanState::Finished) {
        if (!one.finishOn) {
            return tr("Finished; no mark tells when");
        }
        return one.startOn && one.startOn != one.finishOn
                   ? tr("Finished: on site %1 to %2").arg(say(one.startOn), say(one.finishOn))
                   : tr("Finished %1").arg(say(one.finishOn));
    }
    if (!one.startOn) {
        return tr("No dates");
    }
    if (!one.hasDays) {
        return tr("No days entered; falls on %1").arg(say(one.startOn));
    }
    if (one.state == PlanState::UnderWay) {
        return tr("Under way since %1; goes on %2 to %3, %4 left")
            .arg(say(one.startOn), say(one.resumesOn), say(one.finishOn), daysOf(one.left));
    }
    return one.startOn == one.finishOn
               ? tr("On site %1, %2").arg(say(one.startOn), daysOf(one.left))
               : tr("On site %1 to %2, %3")
                     .arg(say(one.startOn), say(one.finishOn), daysOf(one.left));
}

QString ScheduleWords::slip(const PlanItem& one) const {
    if (one.state == PlanState::Finished || !one.startOn) {
        return {};
    }
    if (one.isCritical) {
        return tr("No float: a day late here is a day late at the end.");
    }
    if (one.freeFloat == one.totalFloat) {
        return tr("May slip %1 and nothing else moves.").arg(daysOf(one.totalFloat));
    }
    return one.freeFloat == 0 ? tr("May slip %1 before the finish moves, but others move at once.")
                                    .arg(daysOf(one.totalFloat))
                              : tr("May slip %1 before the finish moves, %2 before others do.")
                                    .arg(daysOf(one.totalFloat), daysOf(one.freeFloat));
}

QString ScheduleWords::hold(const PlanItem& one) const {
    switch (one.hold) {
        case Hold::Link:
            return one.heldBy ? tr("Waits for %1.").arg(name(*one.heldBy)) : QString();
        case Hold::Order:
            return tr("Waits for goods that are not ordered yet.");
        case Hold::Goods:
            return tr("Waits for goods that are ordered.");
        case Hold::ContractStart:
            return tr("Waits for the day agreed with its crew.");
        case Hold::PlannedStart:
            return tr("Waits for the day planned for it.");
        case Hold::Nothing:
            break;
    }
    return {};
}

// The same in a cell.
QString ScheduleWords::shortHold(const PlanItem& one) const {
    switch (one.hold) {
        case Hold::Link:
            return one.heldBy ? name(*one.heldBy) : QString();
        case Hold::Order:
            return tr("goods, not ordered");
        case Hold::Goods:
            return tr("goods, ordered");
        case Hold::ContractStart:
            return tr("the day agreed");
        case Hold::PlannedStart:
            return tr("the day planned");
        case Hold::Nothing:
            break;
    }
    return {};
}

QString ScheduleWords::planned(const PlanItem& one) const {
    if (one.line >= now_.rows.items.size()) {
        return {};
    }
    const model::Item& row = now_.rows.items[one.line];
    if (!row.plannedFinishOn) {
        return tr("No planned dates.");
    }
    const QString dates =
        row.plannedStartOn && row.plannedStartOn != row.plannedFinishOn
            ? tr("Planned %1 to %2").arg(say(row.plannedStartOn), say(row.plannedFinishOn))
            : tr("Planned %1").arg(say(row.plannedFinishOn));
    if (!one.finishOn) {
        return dates + QLatin1Char('.');
    }
    const int late = compute::workDaysLate(calendar_, *row.plannedFinishOn, *one.finishOn);
    const bool isDone = one.state == PlanState::Finished;
    const QString how = late == 0 ? (isDone ? tr("it was on time") : tr("it is on time"))
                        : late > 0
                            ? (isDone ? tr("it was %n working day(s) late", nullptr, late)
                                      : tr("it will be %n working day(s) late", nullptr, late))
                            : (isDone ? tr("it was %n working day(s) early", nullptr, -late)
                                      : tr("it will be %n working day(s) early", nullptr, -late));
    return dates + QStringLiteral("; ") + how + QLatin1Char('.');
}

QString ScheduleWords::goods(const PlanItem& one) const {
    QStringList parts;
    if (one.orderBy) {
        parts << tr("Order by %1.").arg(say(one.orderBy));
    }
    if (one.goodsOn) {
        parts << tr("Goods come %1.").arg(say(one.goodsOn));
    }
    return parts.join(QLatin1Char(' '));
}

QStringList ScheduleWords::details(const PlanItem& one) const {
    QStringList lines{state(one) + QLatin1Char('.')};
    QStringList second;
    for (const QString& part : {slip(one), hold(one), goods(one)}) {
        if (!part.isEmpty()) {
            second << part;
        }
    }
    if (!second.isEmpty()) {
        lines << second.join(QLatin1Char(' '));
    }
    if (const QString dates = planned(one); !dates.isEmpty()) {
        lines << dates;
    }
    return lines;
}

QStringList ScheduleWords::columns() {
    return {tr("Start"), tr("Finish"),        tr("Days left"),      tr("Float"), tr("Order by"),
            tr("Goods"), tr("Planned start"), tr("Planned finish"), tr("Late"),  tr("Waits for")};
}

QStringList ScheduleWords::cells(const PlanItem& one) const {
    const bool isOpen = one.state != PlanState::Finished;
    const model::Item* row =
        one.line < now_.rows.items.size() ? &now_.rows.items[one.line] : nullptr;
    QString late;
    if (row != nullptr && row->plannedFinishOn && one.finishOn) {
        const int days = compute::workDaysLate(calendar_, *row->plannedFinishOn, *one.finishOn);
        late = days == 0  ? QStringLiteral("0")
               : days > 0 ? QStringLiteral("+") + QLocale().toString(days)
                          : QStringLiteral("\u2212") + QLocale().toString(-days);
    }
    return {say(one.startOn),
            say(one.finishOn),
            isOpen ? numberOf(one.left) : QString(),
            isOpen && one.startOn ? numberOf(one.totalFloat) : QString(),
            say(one.orderBy),
            say(one.goodsOn),
            row != nullptr ? say(row->plannedStartOn) : QString(),
            row != nullptr ? say(row->plannedFinishOn) : QString(),
            late,
            isOpen ? shortHold(one) : tr("finished")};
}

QString ScheduleWords::lagText(const LagChange& change) const {
    const model::Link& link = now_.rows.links[change.link];
    QString before;
    for (std::size_t k = 0; k < plan_.items.size(); ++k) {
        if (plan_.items[k].line < now_.rows.items.size() &&
            now_.rows.items[plan_.items[k].line].id == link.fromItem) {
            before = name(k);
        }
    }
    const auto lag = change.lag.thousandths();
    return lag == 0 ? tr("It follows %1 at once.").arg(before)
                    : tr("It follows %1 after %2.").arg(before, daysOf(lag));
}

QString ScheduleWords::moveText(std::size_t item, const PlanMove& move) const {
    const PlanItem& stands = plan_.items[item];
    if (!move.isMove) {
        return move.isHeld ? tr("%1 can't start before %2. %3")
                                 .arg(name(item), say(move.startOn), hold(stands))
                           : tr("%1 starts %2, as it stands.").arg(name(item), say(move.startOn));
    }
    QString text = tr("%1: from %2 to %3, ending %4.")
                       .arg(name(item), say(stands.startOn), say(move.startOn), say(move.finishOn));
    for (const LagChange& change : move.lags) {
        text += QLatin1Char(' ') + lagText(change);
    }
    if (move.isHeld) {
        text += QLatin1Char(' ') + tr("No sooner: %1").arg(hold(move.plan->items[item]));
    }
    return text;
}

QString ScheduleWords::pushText(const PlanMove& move) const {
    if (!move.isMove) {
        return {};
    }
    constexpr std::size_t kMostNames = 4;
    QStringList names;
    for (std::size_t k = 0; k < std::min(kMostNames, move.pushed.size()); ++k) {
        names << name(move.pushed[k]);
    }
    const auto more = static_cast<int>(move.pushed.size() - static_cast<std::size_t>(names.size()));
    if (more > 0) {
        names << tr("%n more", nullptr, more);
    }
    const QString pushed =
        move.pushed.empty() ? tr("It pushes nothing.")
                            : tr("It pushes %n: ", nullptr, static_cast<int>(move.pushed.size())) +
                                  names.join(QStringLiteral(", ")) + QLatin1Char('.');
    const int late = move.finishLaterDays;
    const QString finish =
        late == 0  ? tr("The finish stays %1.").arg(say(move.plan->on))
        : late > 0 ? tr("The finish moves to %1, %n working day(s) later.", nullptr, late)
                         .arg(say(move.plan->on))
                   : tr("The finish moves to %1, %n working day(s) sooner.", nullptr, -late)
                         .arg(say(move.plan->on));
    return finish + QLatin1Char(' ') + pushed;
}

}  // namespace ledgerboard::desk
