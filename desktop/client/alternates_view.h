// What does the page Alternates show: the open decisions with their options side by side, the best
// set of them and what it beats, and what each sum of money buys?
//
// The figures are compute::choicesOf, as `choose` prints them, worked out in the background when
// the book is read anew or a limit is set. A choice made here is the verb's: the option, why, the
// item it makes. Threads: the UI's.
#pragma once

#include <memory>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/qml/look_plot.h"

#include "desktop/client/now/choices_now.h"

namespace ledgerboard::desk {

// An option as one column. Figures that are not known are a dash.
struct OptionColumn {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString standing MEMBER standing)
    Q_PROPERTY(QStringList figures MEMBER figures)
    Q_PROPERTY(QStringList notes MEMBER notes)
    Q_PROPERTY(bool isBest MEMBER isBest)
    Q_PROPERTY(bool canChoose MEMBER canChoose)

  public:
    QString name;
    QString standing;     // "carried", "best", "in no set"
    QStringList figures;  // in the order of AlternatesView::figureNames
    QStringList notes;
    bool isBest = false;
    bool canChoose = true;
};

struct AlternateRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString decideBy MEMBER decideBy)
    Q_PROPERTY(QString waiting MEMBER waiting)
    Q_PROPERTY(bool isLate MEMBER isLate)
    Q_PROPERTY(QVariantList options MEMBER options)

  public:
    QString name;
    QString decideBy;
    QString waiting;
    bool isLate = false;
    QVariantList options;
};

struct DecidedRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString chosen MEMBER chosen)
    Q_PROPERTY(QString why MEMBER why)
    Q_PROPERTY(QString change MEMBER change)
    Q_PROPERTY(bool wantsChange MEMBER wantsChange)

  public:
    QString name;
    QString chosen;
    QString why;
    QString change;  // what of it is not in the budget yet
    bool wantsChange = false;
};

// A set that no other beats.
struct SetRow {
    Q_GADGET
    Q_PROPERTY(QString cost MEMBER cost)
    Q_PROPERTY(QString finish MEMBER finish)
    Q_PROPERTY(QString net MEMBER net)
    Q_PROPERTY(QString standing MEMBER standing)
    Q_PROPERTY(QString options MEMBER options)

  public:
    QString cost;
    QString finish;
    QString net;
    QString standing;
    QString options;
};

class AlternatesView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isReady READ isReady NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(bool hasAny READ hasAny NOTIFY changed)
    Q_PROPERTY(QString countText READ countText NOTIFY changed)
    Q_PROPERTY(QStringList figureNames READ figureNames NOTIFY changed)
    Q_PROPERTY(QVariantList alternates READ alternates NOTIFY changed)
    Q_PROPERTY(QVariantList decided READ decided NOTIFY changed)
    Q_PROPERTY(QStringList bestOptions READ bestOptions NOTIFY changed)
    Q_PROPERTY(QString bestFigures READ bestFigures NOTIFY changed)
    Q_PROPERTY(QStringList bestWhy READ bestWhy NOTIFY changed)
    Q_PROPERTY(QVariantList sets READ sets NOTIFY changed)
    Q_PROPERTY(QStringList rests READ rests NOTIFY changed)
    Q_PROPERTY(ledgerboard::qml::Plot* plot READ plot CONSTANT)
    Q_PROPERTY(QString limitTrouble READ limitTrouble NOTIFY limitsChanged)
    Q_PROPERTY(int alternate READ alternate NOTIFY moved)
    Q_PROPERTY(int option READ option NOTIFY moved)
    Q_PROPERTY(QString alternateId READ alternateId NOTIFY moved)
    Q_PROPERTY(QString optionId READ optionId NOTIFY moved)
    Q_PROPERTY(QString question READ question NOTIFY moved)

  public:
    explicit AlternatesView(QObject* parent = nullptr);

    // Another alternate, another of its options.
    Q_INVOKABLE void move(int down, int right);
    Q_INVOKABLE void take(int alternate, int option);
    // What the sets must keep within; "" for no limit. A percent of chance makes the best set the
    // one that earns most with that chance.
    Q_INVOKABLE void limit(const QString& cash, const QString& finish, const QString& chance);
    // Decides for the option in hand; false where it was refused, which Desk says why.
    Q_INVOKABLE bool choose(const QString& why);
    // The option in hand counts until it is decided.
    Q_INVOKABLE void carry();
    // Asks for the change order that a decision wants.
    Q_INVOKABLE void askChange(int decided);

    [[nodiscard]] bool isReady() const { return choices_ != nullptr; }

    [[nodiscard]] QString trouble() const { return trouble_; }

    // Whether the job has alternates at all, decided or not.
    [[nodiscard]] bool hasAny() const { return now_ != nullptr && !now_->rows.alternates.empty(); }

    [[nodiscard]] QString countText() const;
    [[nodiscard]] static QStringList figureNames();
    [[nodiscard]] QVariantList alternates() const;
    [[nodiscard]] QVariantList decided() const;
    [[nodiscard]] QStringList bestOptions() const;
    [[nodiscard]] QString bestFigures() const;
    [[nodiscard]] QStringList bestWhy() const;
    [[nodiscard]] QVariantList sets() const;
    [[nodiscard]] QStringList rests() const;

    [[nodiscard]] qml::Plot* plot() { return &plot_; }

    [[nodiscard]] QString limitTrouble() const { return limitTrouble_; }

    [[nodiscard]] int alternate() const { return alternate_; }

    [[nodiscard]] int option() const { return option_; }

    // The alternate and the option in hand, as AlternateForm takes them; "" for none.
    [[nodiscard]] QString alternateId() const;
    [[nodiscard]] QString optionId() const;
    // "Dining room: walls".
    [[nodiscard]] QString question() const;

    // What is new comes in hand once it is read.
    Q_INVOKABLE void show(const QString& id) { wanted_ = id; }

  signals:
    void changed();
    void limitsChanged();
    void moved();

  private:
    void follow();
    void work();
    void draw();
    void keepInRange();
    void takeWanted();
    [[nodiscard]] OptionColumn columnOf(const compute::AlternateChoice& alternate,
                                        std::size_t option) const;
    [[nodiscard]] QString decideText(const compute::AlternateChoice& alternate) const;
    [[nodiscard]] QString waitText(const compute::AlternateChoice& alternate) const;
    [[nodiscard]] QString nameOf(const compute::OptionChoice& option) const;
    [[nodiscard]] QString setNames(const compute::SetChoice& set) const;
    [[nodiscard]] QString setFigures(const compute::SetChoice& set) const;
    [[nodiscard]] QString standingOf(const compute::SetChoice& set) const;
    [[nodiscard]] const compute::SetChoice* best() const;
    [[nodiscard]] const compute::OptionChoice* inHand() const;

    std::shared_ptr<const JobNow> of_;   // what choices_ is being worked out from
    std::shared_ptr<const JobNow> now_;  // what choices_ is of
    std::shared_ptr<const compute::Choices> choices_;
    compute::ChoicesAsk ask_;
    int asked_ = 0;  // counts what was asked for, so that the last answer counts
    QString trouble_;
    QString limitTrouble_;
    qml::Plot plot_;
    int alternate_ = 0;
    int option_ = 0;
    QString wanted_;  // of an alternate or option to be taken in hand
};

}  // namespace ledgerboard::desk
