#include "mobile/item_list.h"

#include <QRegularExpression>

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

double share(model::Percent percent) {
    return static_cast<double>(percent.basisPoints()) / 10'000;
}

// Behind the plan by more than the thickness of a mark.
constexpr int kBehindBasisPoints = 500;

QString crewOf(const JobNow& now, const model::Item& item) {
    for (const auto& crew : now.rows.crews) {
        if (crew.id == item.crew) {
            return Said::text(crew.name);
        }
    }
    return {};
}

// What stands under the tape: that it is behind, or when it begins. Nothing where all is well.
QString underOf(const JobNow& now, const model::Item& row, const ItemNow& item) {
    if (item.isKept) {
        return Said::text(row.reason);
    }
    if (!item.isMine) {
        return ItemList::tr("Another crew's work");
    }
    QString text;
    const QString crew = crewOf(now, row);
    if (item.isFinished()) {
        return row.readyToLook && !row.acceptedOn ? ItemList::tr("ready to be looked at") : text;
    }
    if (item.plan && item.plan->basisPoints() > item.shown.basisPoints() + kBehindBasisPoints) {
        text = ItemList::tr("Plan says %1").arg(Said::done(*item.plan));
    } else if (!item.isStarted() && row.plannedStartOn && *row.plannedStartOn >= now.today) {
        text = ItemList::tr("Begins %1").arg(Said::near(*row.plannedStartOn, now.today));
    }
    if (!text.isEmpty() && !crew.isEmpty()) {
        text += QStringLiteral(". ") + crew;
    }
    if (row.doNotCover) {
        text = ItemList::tr("Do not cover before it is looked at") +
               (text.isEmpty() ? QString() : QStringLiteral(". ") + text);
    }
    return text;
}

ItemRow rowOf(const JobNow& now, const ItemNow& item) {
    const model::Item& source = now.rows.items[item.row];
    ItemRow row;
    row.id = Said::text(source.id.raw().toString());
    const QString treatment = Said::treatment(source.treatment);
    QString object = source.object.empty() ? ItemList::tr("something without a name")
                                           : Said::text(source.object);
    if (const QString size = Said::size(source); !size.isEmpty()) {
        object += QStringLiteral(", ") + size;
    }
    row.title =
        QStringLiteral("<b>%1</b> %2").arg(treatment.toHtmlEscaped(), object.toHtmlEscaped());
    row.kept = item.isKept;
    row.finished = item.isFinished();
    row.canMark = item.isMine && !item.isKept;
    row.done = share(item.shown);
    row.plan = item.plan ? share(*item.plan) : -1;
    row.figure = item.isKept ? QString() : Said::done(item.shown);
    row.under = underOf(now, source, item);
    if (!item.holdUps.empty() && !item.isFinished()) {
        const auto& caution = now.cautions.all[item.holdUps.front()];
        row.caution =
            ItemList::tr("Caution: %1. Read it before work begins.").arg(Said::told(caution.about));
    }
    row.spoken =
        QStringList{treatment + QLatin1Char(' ') + object, row.figure, row.under, row.caution}
            .filter(QRegularExpression(QStringLiteral(".")))
            .join(QStringLiteral(". "));
    return row;
}

}  // namespace

void ItemList::setOnlyToDo(bool only) {
    if (onlyToDo_ != only) {
        onlyToDo_ = only;
        emit onlyToDoChanged();
        fill();
    }
}

void ItemList::fill() {
    QList<ItemRow> rows;
    if (const JobNow* now = JobBook::here()->now()) {
        for (const auto& space : now->spaces) {
            const QString id = space.id.isNil() ? QString() : Said::text(space.id.raw().toString());
            if (id != spaceId()) {
                continue;
            }
            for (const auto& item : space.items) {
                if (!onlyToDo_ || (!item.isFinished() && !item.isKept && item.isMine)) {
                    rows.append(rowOf(*now, item));
                }
            }
        }
    }
    show(rows);
}

}  // namespace ledgerboard::phone
