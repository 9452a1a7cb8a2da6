#include "mobile/first_rows.h"

namespace ledgerboard::phone {

void FirstRows::setRows(RowList* rows) {
    if (sourceModel() != rows) {
        setSourceModel(rows);
        emit rowsChanged();
    }
}

void FirstRows::setMost(int most) {
    if (most_ != most) {
        most_ = most;
        invalidateFilter();
        emit mostChanged();
    }
}

bool FirstRows::filterAcceptsRow(int row, const QModelIndex&) const {
    return row < most_;
}

}  // namespace ledgerboard::phone
