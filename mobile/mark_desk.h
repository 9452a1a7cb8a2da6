// One item in the hand: how far it is, what may be said of it, and keeping what is said.
#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/model/rows.h"

namespace ledgerboard::compute {
struct MarkWish;
}  // namespace ledgerboard::compute

namespace ledgerboard::phone {

struct Found;

class MarkDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY itemIdChanged)
    Q_PROPERTY(bool isThere READ isThere NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString facts READ facts NOTIFY changed)
    Q_PROPERTY(bool isSteps READ isSteps NOTIFY changed)
    Q_PROPERTY(bool isFinishedOnly READ isFinishedOnly NOTIFY changed)
    Q_PROPERTY(int stops READ stops NOTIFY changed)
    Q_PROPERTY(int lastStop READ lastStop NOTIFY changed)
    Q_PROPERTY(double last READ last NOTIFY changed)
    Q_PROPERTY(double plan READ plan NOTIFY changed)
    Q_PROPERTY(QString lastText READ lastText NOTIFY changed)
    Q_PROPERTY(QString planText READ planText NOTIFY changed)
    Q_PROPERTY(QStringList steps READ steps NOTIFY changed)
    Q_PROPERTY(QStringList stepsDone READ stepsDone NOTIFY changed)
    Q_PROPERTY(QString before READ before NOTIFY changed)
    Q_PROPERTY(QString after READ after NOTIFY changed)
    Q_PROPERTY(bool isReady READ isReady NOTIFY changed)
    Q_PROPERTY(bool canSayReady READ canSayReady NOTIFY changed)
    Q_PROPERTY(bool canAccept READ canAccept NOTIFY changed)
    Q_PROPERTY(QString spaceId READ spaceId NOTIFY changed)
    Q_PROPERTY(QString cautionAbout READ cautionAbout NOTIFY changed)
    Q_PROPERTY(QString cautionText READ cautionText NOTIFY changed)
    Q_PROPERTY(QString cautionSource READ cautionSource NOTIFY changed)

  public:
    explicit MarkDesk(QObject* parent = nullptr);

    [[nodiscard]] QString itemId() const { return itemId_; }

    void setItemId(const QString& id);
    [[nodiscard]] bool isThere() const;
    [[nodiscard]] QString place() const;  // "Hall bath"
    [[nodiscard]] QString title() const;  // "Replace wall tile"
    [[nodiscard]] QString facts() const;  // "86 sq ft. White, 3 by 6. Tile crew."
    [[nodiscard]] bool isSteps() const;
    [[nodiscard]] bool isFinishedOnly() const;
    [[nodiscard]] int stops() const;
    [[nodiscard]] int lastStop() const;
    [[nodiscard]] double last() const;  // 0 to 1; below 0 where it was never marked
    [[nodiscard]] double plan() const;
    [[nodiscard]] QString lastText() const;
    [[nodiscard]] QString planText() const;
    [[nodiscard]] QStringList steps() const;
    [[nodiscard]] QStringList stepsDone() const;
    // A crew lead's: whose work comes before this, and after it, in the same space; "" where
    // nobody's is known.
    [[nodiscard]] QString before() const;
    [[nodiscard]] QString after() const;
    // Whether the crew says that it can be looked at; whether this phone may say so, or accept it.
    [[nodiscard]] bool isReady() const;
    [[nodiscard]] bool canSayReady() const;
    [[nodiscard]] bool canAccept() const;
    [[nodiscard]] QString spaceId() const;
    // The first caution that holds it up; "" where none is open.
    [[nodiscard]] QString cautionAbout() const;
    [[nodiscard]] QString cautionText() const;
    [[nodiscard]] QString cautionSource() const;

    // "56 %", and under it "48 of 86 sq ft" where it is counted.
    Q_INVOKABLE [[nodiscard]] QString figureAt(int stop) const;
    Q_INVOKABLE [[nodiscard]] QString countAt(int stop) const;

    // Each is true once it is on disk.
    Q_INVOKABLE bool keepStop(int stop, const QString& note);
    Q_INVOKABLE bool keepSteps(const QStringList& done, const QString& note);
    Q_INVOKABLE bool keepFinished(const QString& note);
    Q_INVOKABLE bool sayReady(bool ready);
    Q_INVOKABLE bool accept();
    // Takes note of the first caution that holds it up.
    Q_INVOKABLE bool acknowledge(const QString& testResult);

  signals:
    void itemIdChanged();
    void changed();

  private:
    [[nodiscard]] Found found() const;
    [[nodiscard]] const model::Item* item() const;
    bool keep(compute::MarkWish wish, const QString& note);

    QString itemId_;
    model::Id<model::Kind::Item> id_;
};

}  // namespace ledgerboard::phone
