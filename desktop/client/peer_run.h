// Does the peer run on this machine? Started and stopped as a program of its own, beside this one.
//
// Its book stands beside the one on the desk. It ends with this program. Threads: the UI's.
#pragma once

#include <QObject>
#include <QProcess>

namespace ledgerboard::desk {

class Desk;

class PeerRun : public QObject {
    Q_OBJECT

  public:
    // The one of the desk; made at first.
    [[nodiscard]] static PeerRun* of(Desk& desk);

    explicit PeerRun(Desk& desk);
    ~PeerRun() override;

    // Listens at an address of this machine and a port.
    void start(const QString& address, int port);
    void stop();

    [[nodiscard]] bool isRunning() const { return process_.state() != QProcess::NotRunning; }

    // Why it did not start, or ended by itself; empty where it is as it was wanted.
    [[nodiscard]] QString trouble() const { return trouble_; }

    // Where the peer of a book keeps its own.
    [[nodiscard]] static QString bookBeside(const QString& book);

  signals:
    void changed();
    // It printed the way in of the first owner.
    void invited(const QString& address, const QString& code);

  private:
    void read();
    [[nodiscard]] QString whyEnded(const QString& said) const;

    Desk& desk_;
    QProcess process_;
    QString address_;
    int port_ = 0;
    QString printed_;
    QString trouble_;
    bool wanted_ = false;
};

}  // namespace ledgerboard::desk
