// What does the page Deal show: what the house earns, and what it would if something were
// different?
//
// Worked out in the background when the book is read anew; what is supposed on the sliders is
// worked out at once, and changes nothing in the book. Threads: the UI's.
#pragma once

#include <memory>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "desktop/client/now/job_now.h"
#include "desktop/client/now/what_if.h"

namespace ledgerboard::desk {

// A line of the deal: as it stands, as supposed, and the difference.
struct DealLine {
    Q_GADGET
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString now MEMBER now)
    Q_PROPERTY(QString then MEMBER then)
    Q_PROPERTY(QString change MEMBER change)
    Q_PROPERTY(bool isTotal MEMBER isTotal)

  public:
    QString what;
    QString now;
    QString then;
    QString change;  // empty where there is none
    bool isTotal = false;
};

// Something that can be supposed: where its slider stands, between which ends, what that says.
struct Supposition {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString said MEMBER said)
    Q_PROPERTY(int low MEMBER low)
    Q_PROPERTY(int high MEMBER high)
    Q_PROPERTY(int step MEMBER step)
    Q_PROPERTY(int at MEMBER at)

  public:
    QString name;
    QString said;
    int low = 0;
    int high = 0;
    int step = 1;
    int at = 0;
};

struct ProfitRow {
    Q_GADGET
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString sold MEMBER sold)
    Q_PROPERTY(QStringList profits MEMBER profits)

  public:
    QString when;
    QString sold;
    QStringList profits;
};

class DealView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isReady READ isReady NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(bool isSupposed READ isSupposed NOTIFY changed)
    Q_PROPERTY(QString profit READ profit NOTIFY changed)
    Q_PROPERTY(QString profitThen READ profitThen NOTIFY changed)
    Q_PROPERTY(QString profitChange READ profitChange NOTIFY changed)
    Q_PROPERTY(QString spread READ spread NOTIFY changed)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY changed)
    Q_PROPERTY(QVariantList suppositions READ suppositions NOTIFY changed)
    Q_PROPERTY(QStringList profitValues READ profitValues NOTIFY changed)
    Q_PROPERTY(QVariantList profitRows READ profitRows NOTIFY changed)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed)

  public:
    explicit DealView(QObject* parent = nullptr);

    // Moves a slider; the place is its own, within its ends.
    Q_INVOKABLE void suppose(int which, int at);
    // Everything as it stands.
    Q_INVOKABLE void forget();

    [[nodiscard]] bool isReady() const { return now_ != nullptr; }

    [[nodiscard]] QString trouble() const { return trouble_; }

    [[nodiscard]] bool isSupposed() const { return !wish_.isNothing(); }

    [[nodiscard]] QString profit() const;
    [[nodiscard]] QString profitThen() const;
    [[nodiscard]] QString profitChange() const;
    // Between which figures the earnings end eight times in ten.
    [[nodiscard]] QString spread() const;
    [[nodiscard]] QVariantList lines() const;
    [[nodiscard]] QVariantList suppositions() const;
    [[nodiscard]] QStringList profitValues() const;
    [[nodiscard]] QVariantList profitRows() const;
    [[nodiscard]] QStringList notes() const;

  signals:
    void changed();

  private:
    void follow();
    void work();

    std::shared_ptr<const JobNow> of_;  // what now_ was, or is being, worked out from
    std::shared_ptr<const DealNow> now_;
    Wish wish_;
    Supposed then_;
    QString trouble_;
};

}  // namespace ledgerboard::desk
