// The punch items of a space as sentences, and what is done with them: written down, said to be
// fixed by the crew, accepted or sent back by the owner.
#pragma once

#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "mobile/space_rows.h"

namespace ledgerboard::phone {

struct PunchRow {
    Q_GADGET
    QML_VALUE_TYPE(punchRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString who MEMBER who)
    Q_PROPERTY(QString looked MEMBER looked)
    Q_PROPERTY(QList<QUrl> photos MEMBER photos)

  public:
    QString id;
    QString what;    // "grout open at tub"
    QString who;     // "Tile crew, by Thursday"
    QString looked;  // "Said fixed on Thu 14 May", "Not right on ..."; "" before any look
    QList<QUrl> photos;

    friend bool operator==(const PunchRow&, const PunchRow&) = default;
};

class PunchItems : public SpaceRows {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList crews READ crews NOTIFY crewsChanged)
    Q_PROPERTY(QStringList dueWords READ dueWords NOTIFY crewsChanged)

  public:
    using SpaceRows::SpaceRows;

    // Crews that may put it right: those with work in this space first.
    [[nodiscard]] QStringList crews() const;
    // Days it may be due on, soonest first; the second is the usual one.
    [[nodiscard]] QStringList dueWords() const;

    // Writes one down; true once it is on disk. `picture` is a path or "". `crew` and `due` are
    // places in the lists above, below 0 for none.
    Q_INVOKABLE bool keepItem(const QString& what, int crew, int due, const QString& picture);
    // A look: "fixed", "accepted" or "notRight", with a picture or "".
    Q_INVOKABLE bool keepLook(const QString& id, const QString& said, const QString& note,
                              const QString& picture);

  signals:
    void crewsChanged();

  private:
    void fill() override;

    QStringList crewIds_;
    QStringList crewNames_;
};

}  // namespace ledgerboard::phone
