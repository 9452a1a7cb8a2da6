// The items of one space: what is left to do by planned start, then what is finished, then what
// stays as it is.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/space_rows.h"

namespace ledgerboard::phone {

struct ItemRow {
    Q_GADGET
    QML_VALUE_TYPE(itemRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString under MEMBER under)
    Q_PROPERTY(QString caution MEMBER caution)
    Q_PROPERTY(QString figure MEMBER figure)
    Q_PROPERTY(QString spoken MEMBER spoken)
    Q_PROPERTY(double done MEMBER done)
    Q_PROPERTY(double plan MEMBER plan)
    Q_PROPERTY(bool finished MEMBER finished)
    Q_PROPERTY(bool canMark MEMBER canMark)
    Q_PROPERTY(bool kept MEMBER kept)

  public:
    QString id;
    QString title;    // "<b>Replace</b> wall tile, 86 sq ft", escaped
    QString under;    // "Plan says 80 %: Tile crew, to Thursday"
    QString caution;  // "May hold asbestos ...", "" where none is open
    QString figure;   // "60 %", "done"
    QString spoken;   // all of it, for who listens
    double done = 0;
    double plan = -1;
    bool finished = false;
    bool canMark = true;
    bool kept = false;

    friend bool operator==(const ItemRow&, const ItemRow&) = default;
};

class ItemList : public SpaceRows {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool onlyToDo READ onlyToDo WRITE setOnlyToDo NOTIFY onlyToDoChanged)

  public:
    using SpaceRows::SpaceRows;

    // Whether finished and kept items are left out.
    [[nodiscard]] bool onlyToDo() const { return onlyToDo_; }

    void setOnlyToDo(bool only);

  signals:
    void onlyToDoChanged();

  private:
    void fill() override;

    bool onlyToDo_ = false;
};

}  // namespace ledgerboard::phone
