// The first few rows of a longer list, for a page that shows no more of them.
#pragma once

#include <QSortFilterProxyModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

class FirstRows : public QSortFilterProxyModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ledgerboard::phone::RowList* rows READ rows WRITE setRows NOTIFY rowsChanged)
    Q_PROPERTY(int most READ most WRITE setMost NOTIFY mostChanged)

  public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

    [[nodiscard]] RowList* rows() const { return qobject_cast<RowList*>(sourceModel()); }

    void setRows(RowList* rows);

    [[nodiscard]] int most() const { return most_; }

    void setMost(int most);

  signals:
    void rowsChanged();
    void mostChanged();

  protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

  private:
    int most_ = 0;
};

}  // namespace ledgerboard::phone
