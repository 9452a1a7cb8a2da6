#include "desktop/client/row_model.h"

namespace ledgerboard::desk {

int RowModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant RowModel::data(const QModelIndex& index, int role) const {
    const bool isThere = index.row() >= 0 && index.row() < count();
    return role == kRowRole && isThere ? drawnAt(index.row()) : QVariant();
}

QHash<int, QByteArray> RowModel::roleNames() const {
    return {{kRowRole, "row"}};
}

void RowModel::redraw() {
    if (count() > 0) {
        emit dataChanged(index(0), index(count() - 1), {kRowRole});
    }
}

}  // namespace ledgerboard::desk
