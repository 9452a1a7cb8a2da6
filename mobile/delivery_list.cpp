#include "mobile/delivery_list.h"

#include "core/qml/id_text.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

void DeliveryList::fill() {
    QList<DeliveryRow> rows;
    if (const JobNow* now = JobBook::here()->now()) {
        qsizetype here = 0;
        for (const auto& delivery : now->rows.deliveries) {
            const Found found = findItem(*now, delivery.item);
            if (delivery.arrivedOn || found.item == nullptr) {
                continue;
            }
            DeliveryRow row;
            row.id = idText(delivery.id);
            row.words = Said::begun(now->rows.items[found.item->row].object);
            if (delivery.promisedOn) {
                row.words +=
                    QStringLiteral(", ") +
                    tr("promised for %1").arg(Said::near(*delivery.promisedOn, now->today));
            }
            row.words += QStringLiteral(" (") + Said::text(found.space->name) + QLatin1Char(')');
            if (idText(found.space->id) == spaceId()) {
                rows.insert(here++, row);
            } else {
                rows << row;
            }
        }
    }
    show(rows);
}

bool DeliveryList::keepArrived(int row, const QString& wrong) {
    JobBook& book = *JobBook::here();
    const auto id = idFrom<model::Kind::Delivery>(idAt(row));
    if (book.now() == nullptr || id.isNil()) {
        return false;
    }
    store::Action action("delivery arrived");
    action.set(id.raw(), model::field::Delivery::arrivedOn,
               model::Value{std::int64_t{book.now()->today.days()}});
    const std::string words = wrong.trimmed().toStdString();
    if (!words.empty()) {
        action.set(id.raw(), model::field::Delivery::wrongOrMissing, model::Value{words});
    }
    return book.keep(action, words.empty() ? tr("It came: kept")
                                           : tr("It came, and what is wrong with it: kept"));
}

}  // namespace ledgerboard::phone
