#include "mobile/row_list.h"

namespace ledgerboard::phone {

int RowList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant RowList::data(const QModelIndex& index, int role) const {
    const bool isThere = index.row() >= 0 && index.row() < rows_.size();
    return role == kRowRole && isThere ? rows_.at(index.row()) : QVariant();
}

QHash<int, QByteArray> RowList::roleNames() const {
    return {{kRowRole, "row"}};
}

int RowList::placeOf(const QString& id) const {
    return static_cast<int>(qMax(qsizetype{0}, ids_.indexOf(id)));
}

QString RowList::idAt(int place) const {
    return place >= 0 && place < ids_.size() ? ids_.at(place) : QString();
}

void RowList::take(QVariantList rows, QStringList ids) {
    if (ids != ids_) {
        const bool otherCount = ids.size() != ids_.size();
        beginResetModel();
        rows_ = std::move(rows);
        ids_ = std::move(ids);
        endResetModel();
        if (otherCount) {
            emit countChanged();
        }
        return;
    }
    for (qsizetype k = 0; k < rows.size(); ++k) {
        if (rows_.at(k) != rows.at(k)) {
            rows_[k] = rows.at(k);
            const QModelIndex at = index(static_cast<int>(k));
            emit dataChanged(at, at, {kRowRole});
        }
    }
}

}  // namespace ledgerboard::phone
