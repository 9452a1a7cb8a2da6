// Who has a device, when did each last meet the peer, what do two devices say of one thing, and
// what was set aside?
//
// The peer is asked in the background; where it is not in reach, the book's own list stands with
// the reason. Clashes are settled by one of their values. Threads: the UI's.
#pragma once

#include <memory>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/store/sync_book.h"

#include "desktop/client/devices_link.h"
#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

struct DeviceRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString person MEMBER person)
    Q_PROPERTY(QString role MEMBER role)
    Q_PROPERTY(QString heard MEMBER heard)
    Q_PROPERTY(bool isThis MEMBER isThis)
    Q_PROPERTY(bool isOut MEMBER isOut)

  public:
    QString name;
    QString person;
    QString role;
    QString heard;
    bool isThis = false;
    bool isOut = false;
};

struct ClashRow {
    Q_GADGET
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QStringList values MEMBER values)
    Q_PROPERTY(QStringList whens MEMBER whens)

  public:
    QString what;
    QStringList values;  // the first stands meanwhile
    QStringList whens;
};

struct AsideRow {
    Q_GADGET
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString value MEMBER value)
    Q_PROPERTY(QString when MEMBER when)
    Q_PROPERTY(QString why MEMBER why)

  public:
    QString what;
    QString value;
    QString when;
    QString why;
};

class DevicesView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString peerText READ peerText NOTIFY changed)
    Q_PROPERTY(QString runText READ runText NOTIFY changed)
    Q_PROPERTY(bool isRunning READ isRunning NOTIFY changed)
    Q_PROPERTY(bool canStart READ canStart NOTIFY changed)
    Q_PROPERTY(bool hasPeer READ hasPeer NOTIFY changed)
    Q_PROPERTY(QString listenAddress READ listenAddress CONSTANT)
    Q_PROPERTY(QString listenPort READ listenPort CONSTANT)
    Q_PROPERTY(QString busyText READ busyText NOTIFY changed)
    Q_PROPERTY(QVariantList devices READ devices NOTIFY changed)
    Q_PROPERTY(QString devicesWhy READ devicesWhy NOTIFY changed)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY changed)
    Q_PROPERTY(QStringList guests READ guests NOTIFY changed)
    Q_PROPERTY(QString inviteText READ inviteText NOTIFY changed)
    Q_PROPERTY(QString inviteAddress READ inviteAddress NOTIFY changed)
    Q_PROPERTY(QString inviteCode READ inviteCode NOTIFY changed)
    Q_PROPERTY(QString invitePicture READ invitePicture NOTIFY changed)
    Q_PROPERTY(QVariantList clashes READ clashes NOTIFY changed)
    Q_PROPERTY(QVariantList asides READ asides NOTIFY changed)

  public:
    explicit DevicesView(QObject* parent = nullptr);

    // Starts the peer at an address of this machine and a port, as typed; false where they can be
    // none, which Desk says. A port that is taken is told by runText.
    Q_INVOKABLE bool start(const QString& address, const QString& port);
    Q_INVOKABLE void stop();
    // Asks the peer who has a device.
    Q_INVOKABLE void ask();
    // Meets the peer now.
    Q_INVOKABLE void meet();
    // A way in for one of `guests`; `name` may be empty.
    Q_INVOKABLE void invite(int guest, const QString& name);
    Q_INVOKABLE void forgetInvitation();
    // Shuts the device in hand out.
    Q_INVOKABLE void shutOut();
    // One of the values of a clash is right.
    Q_INVOKABLE bool settle(int clash, int value);

    [[nodiscard]] QString peerText() const;
    [[nodiscard]] QString runText() const;
    [[nodiscard]] bool isRunning() const;
    // No peer elsewhere is met, or the one that is met is this machine's.
    [[nodiscard]] bool canStart() const;

    [[nodiscard]] bool hasPeer() const { return hasPeer_; }

    // Where it listened last, or would.
    [[nodiscard]] static QString listenAddress();
    [[nodiscard]] static QString listenPort();

    [[nodiscard]] QString busyText() const { return busy_; }

    [[nodiscard]] QVariantList devices() const;
    [[nodiscard]] QString devicesWhy() const;

    [[nodiscard]] int place() const { return place_; }

    void setPlace(int place);

    [[nodiscard]] QStringList guests() const;
    [[nodiscard]] QString inviteText() const;
    [[nodiscard]] QString inviteAddress() const;
    [[nodiscard]] QString inviteCode() const;

    // The picture a phone reads, as an address for an Image.
    [[nodiscard]] QString invitePicture() const { return picture_; }

    [[nodiscard]] QVariantList clashes() const;
    [[nodiscard]] QVariantList asides() const;

  signals:
    void changed();

  private:
    struct Whom {
        Guest guest;
        QString said;
    };

    void follow();
    void readBook();
    void meetAt(const QString& address, int port);
    void comeTo(const QString& address, const QString& code);
    template <class Work, class Take>
    void inTurn(const QString& busy, Work work, Take take);
    [[nodiscard]] PeerAsk peerAsk() const;
    [[nodiscard]] std::vector<Whom> whoms() const;
    [[nodiscard]] QString sayInstant(model::Instant at) const;
    [[nodiscard]] QString nameOf(const model::RawId& record) const;
    [[nodiscard]] QString fieldOf(const store::Entry& entry) const;
    [[nodiscard]] QString valueOf(const store::Entry& entry) const;
    [[nodiscard]] QString saidBy(const store::Entry& entry) const;

    std::shared_ptr<const JobNow> now_;
    bool hasPeer_ = false;
    QString peerPlace_;
    QString busy_;
    DeviceLines lines_;
    bool wasAsked_ = false;
    int place_ = 0;
    std::optional<WayIn> wayIn_;
    QString invited_;
    QString picture_;
    std::vector<store::Clash> clashes_;
    std::vector<store::Aside> asides_;
};

}  // namespace ledgerboard::desk
