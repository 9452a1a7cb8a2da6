#include "mobile/presence_list.h"

#include "core/qml/id_text.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

namespace {

bool isHere(const JobNow& now, const model::Id<model::Kind::Crew>& crew) {
    for (const auto& presence : now.rows.presences) {
        if (presence.crew == crew && presence.presentOn == now.today) {
            return true;
        }
    }
    return false;
}

}  // namespace

PresenceList::PresenceList(QObject* parent) : RowList(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &PresenceList::fill);
    fill();
}

void PresenceList::fill() {
    QList<PresenceRow> rows;
    if (const JobNow* now = JobBook::here()->now()) {
        for (const auto& crew : now->rows.crews) {
            rows << PresenceRow{idText(crew.id), Said::text(crew.name), isHere(*now, crew.id)};
        }
    }
    show(rows);
}

bool PresenceList::keepHere(const QString& crewId) {
    JobBook& book = *JobBook::here();
    const auto crew = idFrom<model::Kind::Crew>(crewId);
    if (book.now() == nullptr || crew.isNil() || isHere(*book.now(), crew)) {
        return false;
    }
    model::Presence presence;
    presence.id = book.book().newId<model::Kind::Presence>(book.instant());
    presence.job = book.now()->rows.job.id;
    presence.presentOn = book.now()->today;
    presence.crew = crew;
    QString name;
    for (const auto& row : book.now()->rows.crews) {
        name = row.id == crew ? Said::text(row.name) : name;
    }
    store::Action action("who is here");
    action.add(presence);
    return book.keep(action, tr("%1 is here today").arg(name));
}

}  // namespace ledgerboard::phone
