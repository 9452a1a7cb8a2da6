#include "mobile/need_list.h"

#include "mobile/job_book.h"
#include "mobile/now/needs_today.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

// "Front bedroom, in walking order": the name of the space a need is in.
QString spaceName(const JobNow& now, const Need& need) {
    for (const auto& space : now.spaces) {
        if (space.id == need.space && !space.id.isNil()) {
            return Said::text(space.name);
        }
    }
    return {};
}

QString withPlace(const QString& place, const QString& rest) {
    return place.isEmpty() ? rest : place + QStringLiteral("; ") + rest;
}

QString whatOf(const Need& need) {
    const QString what = Said::text(need.what);
    switch (need.kind) {
        case NeedKind::LookAtPunch:
            return NeedList::tr("Look at %n punch item(s) said to be fixed", nullptr,
                                static_cast<int>(need.count));
        case NeedKind::Delivery:
            return NeedList::tr("Has it come: %1?").arg(what);
        case NeedKind::Decide:
            return NeedList::tr("Decide: %1").arg(what);
        case NeedKind::AnswerChange:
            return need.money.value_or(model::Money{}) == model::Money{}
                       ? NeedList::tr("Say yes or no to %1").arg(what)
                       : NeedList::tr("Say yes or no to %1, %2")
                             .arg(what, Said::money(*need.money));
        case NeedKind::Caution:
            return NeedList::tr("Read the caution on %1").arg(what);
        case NeedKind::AcceptWork:
            return NeedList::tr("Look at %1: the crew says it is ready").arg(what);
        case NeedKind::InsuranceEnds:
            return NeedList::tr("%1: its insurance has ended").arg(what);
        case NeedKind::LeaveOpen:
            return NeedList::tr("Leave %1 open until it is looked at").arg(what);
    }
    return what;
}

QString whyOf(const JobNow& now, const Need& need) {
    const QString place = spaceName(now, need);
    const QString day = need.on ? Said::near(*need.on, now.today) : QString();
    switch (need.kind) {
        case NeedKind::LookAtPunch:
            return Said::text(need.why);
        case NeedKind::Delivery:
            return withPlace(place, NeedList::tr("promised for %1").arg(day));
        case NeedKind::Decide:
            return withPlace(place, *need.on < now.today ? NeedList::tr("was due %1").arg(day)
                                                         : NeedList::tr("by %1").arg(day));
        case NeedKind::AnswerChange:
            return withPlace(place, NeedList::tr("asked %1").arg(day));
        case NeedKind::Caution:
            return withPlace(place, Said::told(need.why));
        case NeedKind::InsuranceEnds:
            return NeedList::tr("Since %1. No payment to them until it is renewed.").arg(day);
        case NeedKind::AcceptWork:
        case NeedKind::LeaveOpen:
            break;
    }
    return place;
}

}  // namespace

NeedList::NeedList(QObject* parent) : RowList(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &NeedList::fill);
    fill();
}

void NeedList::fill() {
    QList<NeedRow> rows;
    if (const JobNow* now = JobBook::here()->now()) {
        for (const auto& need : needsToday(*now)) {
            NeedRow row;
            row.id = QString::number(rows.size());
            row.what = whatOf(need);
            row.why = whyOf(*now, need);
            row.hazard = need.kind == NeedKind::Caution;
            row.spaceId = need.space.isNil() ? QString() : Said::text(need.space.raw().toString());
            row.itemId = need.item.isNil() ? QString() : Said::text(need.item.raw().toString());
            row.changeId =
                need.change.isNil() ? QString() : Said::text(need.change.raw().toString());
            rows.append(row);
        }
    }
    show(rows);
}

}  // namespace ledgerboard::phone
