// What would typed notes of a space become? The items read from them, each to be kept or dropped.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "core/intake/notes/draft.h"

#include "mobile/row_list.h"

namespace ledgerboard::phone {

struct DraftRow {
    Q_GADGET
    QML_VALUE_TYPE(draftRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(QString from MEMBER from)
    Q_PROPERTY(bool kept MEMBER kept)

  public:
    QString id;     // its place
    QString words;  // "Repair porch floor, 90 sq ft"
    QString from;   // the sentence it was read from
    bool kept = true;

    friend bool operator==(const DraftRow&, const DraftRow&) = default;
};

class WalkDraft : public RowList {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString why READ why NOTIFY whyChanged)

  public:
    using RowList::RowList;

    // Why nothing was read; "" where something was.
    [[nodiscard]] QString why() const { return why_; }

    // Reads notes spoken or typed in the space called `place`.
    Q_INVOKABLE void read(const QString& place, const QString& notes);
    Q_INVOKABLE void flip(int row);
    // Keeps those that are not dropped; true once they are on disk.
    Q_INVOKABLE bool keep();

  signals:
    void whyChanged();

  private:
    void fill();

    intake::Draft draft_;
    QList<bool> kept_;
    QString why_;
};

}  // namespace ledgerboard::phone
