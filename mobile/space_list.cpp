#include "mobile/space_list.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

QString leftText(const SpaceNow& space) {
    QString text;
    const auto left = static_cast<int>(space.counted - space.finished);
    if (space.counted == 0) {
        text = SpaceList::tr("Nothing to be done here yet.");
    } else if (left == 0) {
        text = SpaceList::tr("Everything is finished.");
    } else if (space.toStart == 0) {
        text = SpaceList::tr("%n item(s) left, all begun.", nullptr, left);
    } else {
        text = SpaceList::tr("%n item(s) left, ", nullptr, left) +
               SpaceList::tr("%n to start.", nullptr, static_cast<int>(space.toStart));
    }
    if (space.punchOpen > 0) {
        text += QLatin1Char(' ') +
                SpaceList::tr("%n punch item(s) open.", nullptr, static_cast<int>(space.punchOpen));
    }
    return text;
}

SpaceRow rowOf(const SpaceNow& space) {
    SpaceRow row;
    if (!space.id.isNil()) {
        row.id = Said::text(space.id.raw().toString());
    }
    row.name = space.name.empty() ? (space.id.isNil() ? SpaceList::tr("The whole house")
                                                      : SpaceList::tr("No name"))
                                  : Said::text(space.name);
    row.shortName = Said::chip(space.shortName);
    row.ground = QColor(Said::text(space.ground));
    row.ink = QColor(Said::text(space.ink));
    row.hasWork = space.counted > 0;
    row.finished = space.isFinished();
    row.figure = row.hasWork ? Said::done(space.shown) : QString();
    row.left = leftText(space);
    row.done = static_cast<double>(space.shown.basisPoints()) / 10'000;
    row.plan = space.plan ? static_cast<double>(space.plan->basisPoints()) / 10'000 : -1;
    return row;
}

}  // namespace

SpaceList::SpaceList(QObject* parent) : RowList(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &SpaceList::fill);
    fill();
}

void SpaceList::fill() {
    QList<SpaceRow> rows;
    if (const JobNow* now = JobBook::here()->now()) {
        for (const auto& space : now->spaces) {
            rows.append(rowOf(space));
        }
    }
    show(rows);
}

}  // namespace ledgerboard::phone
