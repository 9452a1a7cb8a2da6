#include "mobile/change_desk.h"

#include "core/compute/scope_lines.h"
#include "core/qml/id_text.h"
#include "core/store/photos.h"

#include "mobile/job_book.h"
#include "mobile/picture_keeper.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idText;

ChangeDesk::ChangeDesk(QObject* parent) : QObject(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &ChangeDesk::changed);
}

void ChangeDesk::setChangeId(const QString& id) {
    if (changeId_ != id) {
        changeId_ = id;
        emit changed();
    }
}

const model::Change* ChangeDesk::change() const {
    const JobNow* now = JobBook::here()->now();
    if (now == nullptr || !now->isOwner) {
        return nullptr;
    }
    for (const auto& one : now->rows.changes) {
        if (idText(one.id) == changeId_) {
            return &one;
        }
    }
    return nullptr;
}

QString ChangeDesk::what() const {
    const auto* one = change();
    return one == nullptr ? QString() : Said::begun(one->name);
}

QString ChangeDesk::asked() const {
    const auto* one = change();
    if (one == nullptr || !one->askedOn) {
        return {};
    }
    const QString day = Said::near(*one->askedOn, JobBook::here()->now()->today);
    auto who = JobBook::here()->book().record(model::Kind::Person, one->askedBy.raw());
    const std::string* name =
        one->askedBy.isNil() || !who.ok() || !who.value()
            ? nullptr
            : std::get_if<std::string>(&who.value()->at(model::field::Person::name));
    return name == nullptr || name->empty() ? tr("Asked %1").arg(day)
                                            : tr("Asked %1 by %2").arg(day, Said::text(*name));
}

QString ChangeDesk::sum() const {
    const auto* one = change();
    if (one == nullptr) {
        return {};
    }
    const auto amount = compute::changeAmount(*one);
    return amount == model::Money{} ? tr("No sum is asked yet") : Said::cents(amount);
}

QString ChangeDesk::items() const {
    const auto* one = change();
    QStringList names;
    for (const auto& item : one == nullptr ? decltype(one->items){} : one->items) {
        const Found found = findItem(*JobBook::here()->now(), item);
        if (found.item != nullptr) {
            names << tr("%1 (%2)").arg(
                Said::whatIsDone(JobBook::here()->now()->rows.items[found.item->row]),
                Said::text(found.space->name));
        }
    }
    return names.join(QStringLiteral(", "));
}

QString ChangeDesk::why() const {
    const auto* one = change();
    return one == nullptr ? QString() : Said::text(one->why);
}

QUrl ChangeDesk::picture() const {
    const auto* one = change();
    JobBook& book = *JobBook::here();
    if (one == nullptr || one->photo.isNil()) {
        return {};
    }
    for (const auto& photo : book.now()->rows.photos) {
        if (photo.id == one->photo) {
            return pictureUrl(store::Photos(book.book().path()), photo);
        }
    }
    return {};
}

bool ChangeDesk::sign(bool fromContingency) {
    const auto* one = change();
    JobBook& book = *JobBook::here();
    if (one == nullptr) {
        return false;
    }
    store::Action action("sign " + one->name);
    action.set(one->id.raw(), model::field::Change::signedOn,
               model::Value{std::int64_t{book.now()->today.days()}});
    action.set(one->id.raw(), model::field::Change::paidFrom,
               model::Value{std::string(model::wordOf(
                   fromContingency ? model::PaidFrom::Contingency : model::PaidFrom::NewMoney))});
    return book.keep(action, tr("Signed: %1").arg(Said::text(one->name)));
}

bool ChangeDesk::refuse() {
    const auto* one = change();
    JobBook& book = *JobBook::here();
    if (one == nullptr) {
        return false;
    }
    store::Action action("refuse " + one->name);
    action.set(one->id.raw(), model::field::Change::refusedOn,
               model::Value{std::int64_t{book.now()->today.days()}});
    return book.keep(action, tr("Refused: %1").arg(Said::text(one->name)));
}

}  // namespace ledgerboard::phone
