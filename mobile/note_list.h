// A note about a space, or about an item of it, typed or dictated. Notes are the owner's alone.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/space_rows.h"

namespace ledgerboard::phone {

struct NoteRow {
    Q_GADGET
    QML_VALUE_TYPE(noteRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString text MEMBER text)
    Q_PROPERTY(bool spoken MEMBER spoken)
    Q_PROPERTY(QString about MEMBER about)

  public:
    QString id;
    QString text;
    bool spoken = false;  // kept as sound, and not typed yet
    QString about;        // the item, "" where it is about the space

    friend bool operator==(const NoteRow&, const NoteRow&) = default;
};

class NoteList : public SpaceRows {
    Q_OBJECT
    QML_ELEMENT

  public:
    using SpaceRows::SpaceRows;

    // True once it is on disk. Empty text is no note.
    Q_INVOKABLE bool keepNote(const QString& text);
    // What a spoken note says, typed out today.
    Q_INVOKABLE bool typeOut(const QString& noteId, const QString& text);

  private:
    void fill() override;
};

}  // namespace ledgerboard::phone
