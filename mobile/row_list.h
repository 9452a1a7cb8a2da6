// A list for QML whose rows are plain values with one role, `row`. A list of the same ids in the
// same order changes in place, so that its delegates stay.
#pragma once

#include <QAbstractListModel>
#include <QHash>
#include <QList>
#include <QStringList>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::phone {

class RowList : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(int count READ count NOTIFY countChanged)

  public:
    static constexpr int kRowRole = Qt::UserRole;

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    // The place of a row by its id; 0 where it is not there.
    Q_INVOKABLE [[nodiscard]] int placeOf(const QString& id) const;
    Q_INVOKABLE [[nodiscard]] QString idAt(int place) const;

  signals:
    void countChanged();

  protected:
    // Takes the new rows. Requires of Row: a Q_GADGET with a member `id` and operator==.
    template <class Row>
    void show(const QList<Row>& rows) {
        QVariantList values;
        QStringList ids;
        for (const auto& row : rows) {
            values << QVariant::fromValue(row);
            ids << row.id;
        }
        take(std::move(values), std::move(ids));
    }

  private:
    void take(QVariantList rows, QStringList ids);

    QVariantList rows_;
    QStringList ids_;
};

}  // namespace ledgerboard::phone
