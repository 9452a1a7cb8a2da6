// What does the page Schedule show, which item is in hand, and what does moving it do?
//
// The days are those of compute::planOf, as `plan` prints them, worked out in the background when
// the book is read anew. An item taken in hand is moved day by day; what that pushes is shown from
// a plan of its own (plan_move.h), and nothing is written before it is let go.
// Days across are counted from firstDay(), a day being 1. Threads: the UI's.
#pragma once

#include <map>
#include <memory>
#include <optional>

#include <QColor>
#include <QPointF>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "desktop/client/now/plan_move.h"
#include "desktop/client/row_model.h"
#include "desktop/client/schedule_words.h"

namespace ledgerboard::desk {

// A row as the page draws it. Places are days across; below 0 where there is none, and an end is
// the end of its day.
struct ScheduleRow {
    Q_GADGET
    Q_PROPERTY(bool isHeading MEMBER isHeading)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString aside MEMBER aside)
    Q_PROPERTY(QString chip MEMBER chip)
    Q_PROPERTY(QColor ground MEMBER ground)
    Q_PROPERTY(QColor ink MEMBER ink)
    Q_PROPERTY(double from MEMBER from)
    Q_PROPERTY(double to MEMBER to)
    Q_PROPERTY(double doneFrom MEMBER doneFrom)
    Q_PROPERTY(double doneTo MEMBER doneTo)
    Q_PROPERTY(double mayEnd MEMBER mayEnd)
    Q_PROPERTY(double plannedFrom MEMBER plannedFrom)
    Q_PROPERTY(double plannedTo MEMBER plannedTo)
    Q_PROPERTY(double wasFrom MEMBER wasFrom)
    Q_PROPERTY(double wasTo MEMBER wasTo)
    Q_PROPERTY(double orderBy MEMBER orderBy)
    Q_PROPERTY(double goods MEMBER goods)
    Q_PROPERTY(int weight MEMBER weight)
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QStringList cells MEMBER cells)
    Q_PROPERTY(QString told MEMBER told)

  public:
    bool isHeading = false;
    QString name;
    QString aside;
    QString chip;
    QColor ground;
    QColor ink;
    double from = -1;  // what is left of it
    double to = -1;
    double doneFrom = -1;  // what was
    double doneTo = -1;
    double mayEnd = -1;  // how late it may end without moving the finish
    double plannedFrom = -1;
    double plannedTo = -1;
    double wasFrom = -1;  // where it stands, while a move pushes it
    double wasTo = -1;
    double orderBy = -1;
    double goods = -1;
    int weight = 0;  // 2: critical, 1: near it
    QString label;   // behind its line
    QStringList cells;
    QString told;  // what the pointer is told
};

// A tick along the days.
struct ScheduleTick {
    Q_GADGET
    Q_PROPERTY(double day MEMBER day)
    Q_PROPERTY(QString text MEMBER text)

  public:
    double day = 0;
    QString text;
};

class ScheduleView : public RowModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isReady READ isReady NOTIFY shown)
    Q_PROPERTY(QString trouble READ trouble NOTIFY shown)
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY shown)
    Q_PROPERTY(int count READ count NOTIFY shown)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY moved)
    Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY shown)
    Q_PROPERTY(bool openOnly READ openOnly WRITE setOpenOnly NOTIFY shown)
    Q_PROPERTY(QString groupText READ groupText NOTIFY shown)
    Q_PROPERTY(QString finish READ finish NOTIFY shown)
    Q_PROPERTY(QString finishRest READ finishRest NOTIFY shown)
    Q_PROPERTY(QString countText READ countText NOTIFY shown)
    Q_PROPERTY(QStringList notes READ notes NOTIFY shown)
    Q_PROPERTY(bool canLink READ canLink NOTIFY shown)
    Q_PROPERTY(int days READ days NOTIFY shown)
    Q_PROPERTY(double today READ today NOTIFY shown)
    Q_PROPERTY(double target READ target NOTIFY shown)
    Q_PROPERTY(QString targetText READ targetText NOTIFY shown)
    Q_PROPERTY(QVariantList ticks READ ticks NOTIFY shown)
    Q_PROPERTY(QVariantList daysOff READ daysOff NOTIFY shown)
    Q_PROPERTY(QStringList columns READ columns NOTIFY shown)
    Q_PROPERTY(QString itemText READ itemText NOTIFY detailChanged)
    Q_PROPERTY(QStringList details READ details NOTIFY detailChanged)
    Q_PROPERTY(QString itemId READ itemId NOTIFY detailChanged)
    Q_PROPERTY(bool inHand READ inHand NOTIFY handChanged)
    Q_PROPERTY(QString moveText READ moveText NOTIFY handChanged)
    Q_PROPERTY(QString pushText READ pushText NOTIFY handChanged)

  public:
    explicit ScheduleView(QObject* parent = nullptr);

    // Another item, over headings.
    Q_INVOKABLE void move(int down);
    Q_INVOKABLE void nextGroup();
    // Takes the item of the row in hand; false where it can't be moved, which Desk says why.
    Q_INVOKABLE bool take();
    // Moves what is in hand: by working days from where it is wanted now; to a place across.
    Q_INVOKABLE void shift(int workDays);
    Q_INVOKABLE void dragTo(double day);
    // Writes the move; nothing where it stands where it stood.
    Q_INVOKABLE void letGo();
    Q_INVOKABLE void putBack();
    // The plan's dates of unfinished items, as their planned ones.
    Q_INVOKABLE void keepPlan();
    // Links the items that have none in the usual order of the trades.
    Q_INVOKABLE void linkUsually();
    // The day that stands at a place across: "Wed 3 Jun".
    [[nodiscard]] Q_INVOKABLE QString dayAt(double day) const;

    [[nodiscard]] bool isReady() const { return plan_ != nullptr; }

    [[nodiscard]] QString trouble() const { return trouble_; }

    // Whether nothing is to be planned at all.
    [[nodiscard]] bool isEmpty() const { return plan_ != nullptr && plan_->items.empty(); }

    [[nodiscard]] int count() const override { return static_cast<int>(rows_.size()); }

    [[nodiscard]] int place() const { return place_; }

    void setPlace(int place);

    [[nodiscard]] QString filter() const { return filter_; }

    void setFilter(const QString& filter);

    // Whether what is finished is left out.
    [[nodiscard]] bool openOnly() const { return openOnly_; }

    void setOpenOnly(bool openOnly);
    [[nodiscard]] QString groupText() const;
    [[nodiscard]] QString finish() const;
    [[nodiscard]] QString finishRest() const;
    [[nodiscard]] QString countText() const;
    // What the plan could not count, and loops.
    [[nodiscard]] QStringList notes() const;
    [[nodiscard]] bool canLink() const;
    [[nodiscard]] int days() const;
    [[nodiscard]] double today() const;
    [[nodiscard]] double target() const;
    [[nodiscard]] QString targetText() const;
    [[nodiscard]] QVariantList ticks() const;
    [[nodiscard]] QVariantList daysOff() const;
    [[nodiscard]] QStringList columns() const;
    [[nodiscard]] QString itemText() const;

    // The item of the scope in the row in hand, or in another row; "" where there is none.
    [[nodiscard]] QString itemId() const { return itemAt(place_); }

    [[nodiscard]] Q_INVOKABLE QString itemAt(int place) const;
    [[nodiscard]] QStringList details() const;

    [[nodiscard]] bool inHand() const { return mover_ != nullptr; }

    [[nodiscard]] QString moveText() const;
    [[nodiscard]] QString pushText() const;

  signals:
    void shown();
    void moved();
    void detailChanged();
    void handChanged();

  protected:
    [[nodiscard]] QVariant drawnAt(int place) const override;

  private:
    void follow();
    void arrange();
    void setAxis();
    void findPlace();
    void wantDay(model::Date day);
    void lookAgain();
    [[nodiscard]] bool isItem(int place) const;
    [[nodiscard]] ScheduleRow rowAt(int place) const;
    void drawItem(const compute::PlanItem& one, std::size_t item, ScheduleRow& row) const;
    [[nodiscard]] QString nameOf(std::size_t item) const;
    [[nodiscard]] QString say(const std::optional<model::Date>& day) const;
    // The plan that is drawn: with what is in hand moved.
    [[nodiscard]] const compute::Plan& drawn() const;

    std::shared_ptr<const JobNow> of_;   // what plan_ was, or is being, worked out from
    std::shared_ptr<const JobNow> now_;  // what plan_ is of
    std::shared_ptr<const compute::Plan> plan_;
    QString trouble_;
    std::vector<ScheduleLine> rows_;
    std::map<model::RawId, report::Chip> chips_;
    QString filter_;
    bool openOnly_ = false;
    int place_ = -1;
    model::RawId itemInHand_;  // of the row in hand, kept when the book is read anew
    model::Date first_;
    model::Date last_;
    std::unique_ptr<PlanMover> mover_;
    PlanMove move_;
    model::Date wanted_;
};

}  // namespace ledgerboard::desk
