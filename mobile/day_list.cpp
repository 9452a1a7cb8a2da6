#include "mobile/day_list.h"

#include "core/qml/id_text.h"

#include "mobile/job_book.h"
#include "mobile/now/crew_day.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idText;

namespace {

QString dayOf(const CrewDayItem& item, model::Date today) {
    switch (item.part) {
        case DayPart::Late:
            return DayList::tr("Late");
        case DayPart::Today:
            return DayList::tr("Today");
        case DayPart::Ahead:
            return Said::begun(Said::near(*item.on, today).toStdString());
        case DayPart::Undated:
            break;
    }
    return DayList::tr("Without a day yet");
}

QString underOf(const JobNow& now, const CrewDayItem& item) {
    const model::Item& row = now.rows.items[item.item->row];
    QStringList parts{item.space->name.empty() ? DayList::tr("The whole house")
                                               : Said::text(item.space->name)};
    if (item.part == DayPart::Late) {
        parts << DayList::tr("was to be finished %1").arg(Said::near(*item.on, now.today));
    } else if (row.plannedFinishOn) {
        parts << DayList::tr("to be finished %1").arg(Said::near(*row.plannedFinishOn, now.today));
    }
    if (row.doNotCover) {
        parts << DayList::tr("do not cover before it is looked at");
    }
    if (row.readyToLook) {
        parts << DayList::tr("ready to be looked at");
    }
    return parts.join(QStringLiteral("; "));
}

}  // namespace

DayList::DayList(QObject* parent) : RowList(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &DayList::fill);
    fill();
}

void DayList::fill() {
    QList<DayRow> rows;
    const JobNow* now = JobBook::here()->now();
    if (now != nullptr && !now->isOwner) {
        QString last;
        for (const auto& item : crewDays(*now)) {
            const model::Item& source = now->rows.items[item.item->row];
            DayRow row;
            row.id = idText(source.id);
            const QString day = dayOf(item, now->today);
            row.day = day == last ? QString() : day;
            last = day;
            row.title = Said::whatIsDone(source);
            row.under = underOf(*now, item);
            row.figure = Said::done(item.item->shown);
            row.shortName = Said::chip(item.space->shortName);
            row.ground = QColor(Said::text(item.space->ground));
            row.ink = QColor(Said::text(item.space->ink));
            rows << row;
        }
    }
    show(rows);
}

}  // namespace ledgerboard::phone
