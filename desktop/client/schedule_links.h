// What waits for the item in hand and what does it wait for; and how is it linked to another, or no
// longer?
//
// A link is begun at an item and aimed at the one that is to start after it; what that does to the
// finish is worked out before it is let go, and nothing is written before that. A ring is refused,
// by names (compute::checkLink). Lags are whole working days here. Threads: the UI's.
#pragma once

#include <memory>
#include <optional>

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// A link of the item in hand.
struct LinkRow {
    Q_GADGET
    Q_PROPERTY(QString heading MEMBER heading)
    Q_PROPERTY(QString other MEMBER other)
    Q_PROPERTY(QString how MEMBER how)

  public:
    QString heading;  // over the first of its kind: "It waits for", "After it"; else empty
    QString other;    // the item at the other end
    QString how;      // "starts once that one is finished, 2 days later"
};

class ScheduleLinks : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString item READ item WRITE setItem NOTIFY changed)
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    Q_PROPERTY(bool isLinking READ isLinking NOTIFY changed)
    Q_PROPERTY(QString from READ from NOTIFY changed)
    Q_PROPERTY(QString aimText READ aimText NOTIFY changed)
    Q_PROPERTY(QString aimRest READ aimRest NOTIFY changed)

  public:
    explicit ScheduleLinks(QObject* parent = nullptr);

    // Begins a link at the item in hand; false where it is none of the scope's, which Desk says.
    Q_INVOKABLE bool begin();
    // The item that is to start after it, by its id; "" for none.
    Q_INVOKABLE void aim(const QString& to);
    Q_INVOKABLE void shift(int days);
    // Writes it; false where nothing is aimed at, or it was refused, which Desk says why.
    Q_INVOKABLE bool letGo();
    Q_INVOKABLE void leave();

    // Of a row of `rows`: its lag, another kind of link, and that there is none any more.
    Q_INVOKABLE void shiftLag(int row, int days);
    Q_INVOKABLE void turnKind(int row);
    Q_INVOKABLE void unlink(int row);

    [[nodiscard]] QString item() const { return item_; }

    void setItem(const QString& id);
    [[nodiscard]] QVariantList rows() const;

    [[nodiscard]] bool isLinking() const { return !from_.isNil(); }

    // The item a link is begun at; "" while none is.
    [[nodiscard]] QString from() const;
    // What would be linked, and what becomes of the finish.
    [[nodiscard]] QString aimText() const;

    [[nodiscard]] QString aimRest() const { return aimRest_; }

  signals:
    void changed();

  private:
    using ItemId = model::Id<model::Kind::Item>;

    void follow();
    void look();
    [[nodiscard]] QString nameOf(const ItemId& item) const;
    [[nodiscard]] model::Link link() const;
    [[nodiscard]] const model::Link* linkAt(int row) const;
    // The links of the item in hand: those it waits by first.
    [[nodiscard]] std::vector<const model::Link*> links() const;

    std::shared_ptr<const JobNow> now_;
    QString item_;
    ItemId from_;
    ItemId to_;
    int lagDays_ = 0;
    QString aimRest_;
    QString ringText_;  // "" where none would be closed
};

}  // namespace ledgerboard::desk
