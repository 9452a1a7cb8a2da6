#include "mobile/found_desk.h"

#include "core/qml/id_text.h"

#include "mobile/job_book.h"
#include "mobile/picture_keeper.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

void FoundDesk::fill() {
    QList<AboutRow> rows;
    if (const JobNow* now = JobBook::here()->now()) {
        rows << AboutRow{QString(), tr("This space")};
        for (const auto& space : now->spaces) {
            if (idText(space.id) != spaceId()) {
                continue;
            }
            for (const auto& item : space.items) {
                if (item.isMine && !item.isKept) {
                    const auto& source = now->rows.items[item.row];
                    rows << AboutRow{idText(source.id),
                                     (Said::treatment(source.treatment) + QLatin1Char(' ') +
                                      Said::text(source.object))
                                         .trimmed()};
                }
            }
        }
    }
    show(rows);
}

bool FoundDesk::keepFound(const QString& words, const QString& picture, const QString& itemId) {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr) {
        return false;
    }
    if (words.trimmed().isEmpty()) {
        book.sayNotKept(tr("Say in a few words what was found."));
        return false;
    }
    model::Change change;
    change.id = book.book().newId<model::Kind::Change>(book.instant());
    change.job = book.now()->rows.job.id;
    change.name = words.trimmed().toStdString();
    change.askedOn = book.now()->today;
    change.askedBy = book.by();
    if (const auto item = idFrom<model::Kind::Item>(itemId); !item.isNil()) {
        change.items = {item};
    }
    if (!amount_.isNone()) {
        change.amount = amount_.money();
    }
    store::Action action("found something");
    if (!picture.isEmpty()) {
        PictureWish wish;
        wish.path = picture;
        wish.stage = model::Stage::During;
        wish.space = idFrom<model::Kind::Space>(spaceId());
        wish.item = idFrom<model::Kind::Item>(itemId);
        wish.caption = change.name;
        auto kept = keepPicture(book, wish, action);
        if (!kept.ok()) {
            book.sayNotKept(Said::trouble(kept.error()));
            return false;
        }
        change.photo = kept.value();
    }
    action.add(change);
    return book.keep(action, book.isOwner() ? tr("Kept as a change that is asked for")
                                            : tr("Kept: the owner gets it at the next meeting"));
}

}  // namespace ledgerboard::phone
