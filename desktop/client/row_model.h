// A list for a page, whose rows are worked out when they are looked at: one role, `row`.
//
// Threads: the UI's.
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::desk {

class RowModel : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS

  public:
    static constexpr int kRowRole = Qt::UserRole;

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] virtual int count() const = 0;

  protected:
    // As the page draws it. Requires: 0 <= place < count().
    [[nodiscard]] virtual QVariant drawnAt(int place) const = 0;
    // Every row may say something else; they are the same ones.
    void redraw();
};

}  // namespace ledgerboard::desk
