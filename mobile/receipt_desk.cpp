#include "mobile/receipt_desk.h"

#include "core/qml/id_text.h"

#include "mobile/job_book.h"
#include "mobile/picture_keeper.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

void ReceiptDesk::fill() {
    QList<AboutRow> rows;
    const JobNow* now = JobBook::here()->now();
    if (now != nullptr) {
        model::Id<model::Kind::Item> last;
        for (const auto& spend : now->rows.spends) {
            if (const Found found = findItem(*now, spend.item);
                found.space != nullptr && idText(found.space->id) == spaceId()) {
                last = spend.item;
            }
        }
        for (const auto& space : now->spaces) {
            if (idText(space.id) != spaceId()) {
                continue;
            }
            for (const auto& item : space.items) {
                const auto& source = now->rows.items[item.row];
                AboutRow row{idText(source.id), (Said::treatment(source.treatment) +
                                                 QLatin1Char(' ') + Said::text(source.object))
                                                    .trimmed()};
                if (source.id == last) {
                    rows.prepend(row);
                } else if (!item.isKept) {
                    rows.append(row);
                }
            }
        }
        rows.append(AboutRow{QString(), tr("The whole house")});
    }
    show(rows);
}

bool ReceiptDesk::keepReceipt(const QString& picture, const QString& itemId, const QString& payee) {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr || !book.isOwner()) {
        return false;
    }
    if (picture.isEmpty() && amount_.isNone()) {
        book.sayNotKept(tr("A receipt needs its picture or its amount."));
        return false;
    }
    if (tax_.money() > amount_.money()) {
        book.sayNotKept(tr("The tax is more than the whole sum."));
        return false;
    }
    model::Spend spend;
    spend.id = book.book().newId<model::Kind::Spend>(book.instant());
    spend.job = book.now()->rows.job.id;
    spend.type = model::SpendKind::Receipt;
    spend.spentOn = book.now()->today;
    spend.item = idFrom<model::Kind::Item>(itemId);
    spend.payee = payee.trimmed().toStdString();
    spend.paperSeen = !picture.isEmpty();
    if (!amount_.isNone()) {
        spend.amount = amount_.money();
    }
    if (!tax_.isNone()) {
        spend.tax = tax_.money();
    }
    store::Action action("receipt");
    if (!picture.isEmpty()) {
        PictureWish wish;
        wish.path = picture;
        wish.purpose = model::Purpose::Receipt;
        auto kept = keepPicture(book, wish, action);
        if (!kept.ok()) {
            book.sayNotKept(Said::trouble(kept.error()));
            return false;
        }
        spend.photo = kept.value();
    }
    action.add(spend);
    return book.keep(action, amount_.isNone() ? tr("Receipt kept; its amount is still to come")
                                              : tr("Receipt kept: %1").arg(amount_.text()));
}

}  // namespace ledgerboard::phone
