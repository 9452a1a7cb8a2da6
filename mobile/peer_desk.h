// Does this phone meet others, when did it last, and how is a meeting going?
//
// A meeting runs in a thread of its own with a Book of its own: no screen waits for it. It is tried
// when the book is opened, soon after something was kept, when the network comes back, again and
// again where it did not come about, every few minutes, and when asked for.
// Threads: the UI's.
#pragma once

#include <optional>

#include <QObject>
#include <QThread>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "mobile/peer_meeting.h"

namespace ledgerboard::phone {

class PeerDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool hasPeer READ hasPeer NOTIFY changed)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString peerText READ peerText NOTIFY changed)
    Q_PROPERTY(QString metText READ metText NOTIFY changed)
    Q_PROPERTY(QString said READ said NOTIFY changed)
    Q_PROPERTY(QString clockText READ clockText NOTIFY changed)
    Q_PROPERTY(bool isTrouble READ isTrouble NOTIFY changed)

  public:
    explicit PeerDesk(QObject* parent = nullptr);
    ~PeerDesk() override;

    [[nodiscard]] bool hasPeer() const { return peer_.has_value(); }

    [[nodiscard]] bool isBusy() const { return thread_ != nullptr; }

    [[nodiscard]] QString peerText() const;  // "studio.example:8443"
    [[nodiscard]] QString metText() const;   // "met the peer 7:42"; "" before the first meeting

    // What became of the last meeting or joining, in words.
    [[nodiscard]] QString said() const { return said_; }

    // That this phone's clock is wrong, and what is done about it; "" where it is right.
    [[nodiscard]] QString clockText() const;

    [[nodiscard]] bool isTrouble() const { return isTrouble_; }

    Q_INVOKABLE void meet();
    // Joins by what the picture says, or by an address and a code. The book that is open comes
    // along; where none is, one is made.
    Q_INVOKABLE void join(const QString& addressOrPicture, const QString& code);

  signals:
    void changed();

  private:
    void look();
    void meetSoon();
    void followNetwork();
    void run(const MeetingAsk& ask);
    void take(const MeetingOutcome& outcome);
    [[nodiscard]] MeetingAsk askNow() const;

    std::string path_;  // of the book looked at last
    std::optional<sync::KnownPeer> peer_;
    QThread* thread_ = nullptr;
    QTimer often_;
    QTimer soon_;
    int againMs_ = 0;  // until the next try, after one that failed
    QString said_;
    bool isTrouble_ = false;
};

}  // namespace ledgerboard::phone
