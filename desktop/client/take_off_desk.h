// How much of it is there? Sizes typed beside the quantity cell, and what the take-off makes of
// them.
//
// The arithmetic, its usual values and their sources are compute/take_off.h's. Threads: the UI's.
#pragma once

#include <map>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/compute/take_off.h"

namespace ledgerboard::desk {

// A size that can be given.
struct SizeLine {
    Q_GADGET
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString usual MEMBER usual)
    Q_PROPERTY(QString text MEMBER text)

  public:
    QString key;
    QString label;  // "length, ft"
    QString usual;  // what counts where it is empty
    QString text;   // as typed
};

// A figure that came of it; one that may be put into the quantity has a unit.
struct TakenLine {
    Q_GADGET
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString figure MEMBER figure)
    Q_PROPERTY(QString exact MEMBER exact)
    Q_PROPERTY(QString unit MEMBER unit)
    Q_PROPERTY(QString why MEMBER why)

  public:
    QString what;
    QString figure;  // with its unit
    QString exact;   // as it is put into a cell; empty where it is no quantity
    QString unit;
    QString why;
};

class TakeOffDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList kinds READ kinds CONSTANT)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY kindChanged)
    Q_PROPERTY(QString says READ says NOTIFY kindChanged)
    Q_PROPERTY(QVariantList sizes READ sizes NOTIFY kindChanged)
    Q_PROPERTY(QString refused READ refused NOTIFY taken)
    Q_PROPERTY(QVariantList quantities READ quantities NOTIFY taken)
    Q_PROPERTY(QVariantList buy READ buy NOTIFY taken)
    Q_PROPERTY(QStringList assumed READ assumed NOTIFY taken)
    Q_PROPERTY(QString source READ source NOTIFY taken)
    Q_PROPERTY(QString caution READ caution NOTIFY taken)

  public:
    explicit TakeOffDesk(QObject* parent = nullptr);

    // Begins anew for an item: the kind that its object sounds like, the sizes of its space. Sizes
    // are texts of numbers, empty where not known.
    Q_INVOKABLE void begin(const QString& object, const QString& floorArea,
                           const QString& wallArea);
    // Gives a size: a number, several with plus signs or spaces between, or a word; empty takes it
    // back.
    Q_INVOKABLE void give(const QString& key, const QString& text);

    [[nodiscard]] QStringList kinds() const;

    [[nodiscard]] int kind() const { return kind_; }

    void setKind(int kind);

    [[nodiscard]] QString says() const;
    [[nodiscard]] QVariantList sizes() const;

    [[nodiscard]] QString refused() const { return refused_; }

    [[nodiscard]] QVariantList quantities() const;
    [[nodiscard]] QVariantList buy() const;
    [[nodiscard]] QStringList assumed() const;
    [[nodiscard]] QString source() const;
    [[nodiscard]] QString caution() const;

  signals:
    void kindChanged();
    void taken();

  private:
    void take();

    int kind_ = 0;
    std::map<std::string, QString> given_;
    QString floorArea_;
    QString wallArea_;
    QString refused_;
    std::optional<compute::TakeOff> result_;
};

}  // namespace ledgerboard::desk
