#include "mobile/space_rows.h"

#include "mobile/job_book.h"

namespace ledgerboard::phone {

SpaceRows::SpaceRows(QObject* parent) : RowList(parent) {
    connect(JobBook::here(), &JobBook::changed, this, [this] { fill(); });
}

void SpaceRows::setSpaceId(const QString& id) {
    if (spaceId_ != id) {
        spaceId_ = id;
        emit spaceIdChanged();
    }
    fill();
}

}  // namespace ledgerboard::phone
