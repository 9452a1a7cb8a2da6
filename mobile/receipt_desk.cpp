#include "mobile/receipt_desk.h"

#include "mobile/id_text.h"
#include "mobile/job_book.h"
#include "mobile/picture_keeper.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

// A receipt of a billion is a slip of the thumb.
constexpr qint64 kMostCents = 99'999'999'99;

}  // namespace

ReceiptDesk::ReceiptDesk(QObject* parent) : RowList(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &ReceiptDesk::fill);
}

void ReceiptDesk::setSpaceId(const QString& id) {
    if (spaceId_ != id) {
        spaceId_ = id;
        emit spaceIdChanged();
    }
    fill();
}

void ReceiptDesk::fill() {
    QList<PayForRow> rows;
    const JobNow* now = JobBook::here()->now();
    if (now != nullptr) {
        model::Id<model::Kind::Item> last;
        for (const auto& spend : now->rows.spends) {
            if (const Found found = findItem(*now, spend.item);
                found.space != nullptr && idText(found.space->id) == spaceId_) {
                last = spend.item;
            }
        }
        for (const auto& space : now->spaces) {
            if (idText(space.id) != spaceId_) {
                continue;
            }
            for (const auto& item : space.items) {
                const auto& source = now->rows.items[item.row];
                PayForRow row{idText(source.id), (Said::treatment(source.treatment) +
                                                  QLatin1Char(' ') + Said::text(source.object))
                                                     .trimmed()};
                if (source.id == last) {
                    rows.prepend(row);
                } else if (!item.isKept) {
                    rows.append(row);
                }
            }
        }
        rows.append(PayForRow{QString(), tr("The whole house")});
    }
    show(rows);
}

QString ReceiptDesk::amountText() const {
    return Said::money(model::Money::fromMinor(cents_), true);
}

void ReceiptDesk::type(const QString& digits) {
    for (const QChar digit : digits) {
        if (cents_ <= kMostCents / 10) {
            cents_ = cents_ * 10 + digit.digitValue();
        }
    }
    emit amountChanged();
}

void ReceiptDesk::rub() {
    cents_ /= 10;
    emit amountChanged();
}

bool ReceiptDesk::keepReceipt(const QString& picture, const QString& itemId, const QString& payee) {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr || !book.isOwner()) {
        return false;
    }
    if (picture.isEmpty() && cents_ == 0) {
        book.sayNotKept(tr("A receipt needs its picture or its amount."));
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
    if (cents_ > 0) {
        spend.amount = model::Money::fromMinor(cents_);
    }
    store::Action action("receipt");
    if (!picture.isEmpty()) {
        PictureWish wish;
        wish.path = picture;
        wish.purpose = model::Purpose::Receipt;
        auto kept = keepPicture(book, wish, action);
        if (!kept.ok()) {
            book.sayNotKept(Said::text(kept.error().message));
            return false;
        }
        spend.photo = kept.value();
    }
    action.add(spend);
    return book.keep(action, cents_ > 0 ? tr("Receipt kept: %1").arg(amountText())
                                        : tr("Receipt kept; its amount is still to come"));
}

}  // namespace ledgerboard::phone
