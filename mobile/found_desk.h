// Something that was found: a picture, words, what it is about, maybe what it may cost. It is kept
// as a change that is asked for; only an owner says yes or no to it.
//
// From a crew lead's phone it goes to the owner at the next meeting, and then leaves the phone.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/about_row.h"
#include "mobile/space_rows.h"
#include "mobile/typed_amount.h"

namespace ledgerboard::phone {

// What it may be about: the space, then the items of it that this phone may speak of.
class FoundDesk : public SpaceRows {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ledgerboard::phone::TypedAmount* amount READ amount CONSTANT)

  public:
    using SpaceRows::SpaceRows;

    [[nodiscard]] TypedAmount* amount() { return &amount_; }

    // True once it is on disk. `picture` is a path or ""; `itemId` "" for the space.
    Q_INVOKABLE bool keepFound(const QString& words, const QString& picture, const QString& itemId);

  private:
    void fill() override;

    TypedAmount amount_;
};

}  // namespace ledgerboard::phone
