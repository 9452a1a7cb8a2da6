#include "desktop/client/peer_run.h"

#include <QFileInfo>
#include <QRegularExpression>

#include "desktop/client/desk.h"

namespace ledgerboard::desk {

namespace {

constexpr int kStopMs = 5'000;

}  // namespace

PeerRun* PeerRun::of(Desk& desk) {
    auto* run = desk.findChild<PeerRun*>();
    return run != nullptr ? run : new PeerRun(desk);
}

PeerRun::PeerRun(Desk& desk) : QObject(&desk), desk_(desk) {
    connect(&process_, &QProcess::readyReadStandardOutput, this, &PeerRun::read);
    connect(&process_, &QProcess::stateChanged, this, [this] { emit changed(); });
    connect(&process_, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart) {
            wanted_ = false;
            trouble_ = tr("The program %1 could not be started: %2.")
                           .arg(process_.program(), process_.errorString());
            emit changed();
        }
    });
    connect(&process_, &QProcess::finished, this, [this] {
        if (wanted_) {
            wanted_ = false;
            const QString said =
                QString::fromUtf8(process_.readAllStandardError()).trimmed().section('\n', -1);
            trouble_ = whyEnded(said);
        }
        emit changed();
    });
}

PeerRun::~PeerRun() {
    process_.disconnect(this);
    stop();
}

QString PeerRun::bookBeside(const QString& book) {
    const QFileInfo file(book);
    return file.absolutePath() + QLatin1Char('/') + file.completeBaseName() +
           QStringLiteral(".at-peer.book");
}

QString PeerRun::whyEnded(const QString& said) const {
    if (!said.contains(QLatin1String("cannot be listened on"))) {
        return tr("The peer ended by itself: %1").arg(said);
    }
    return said.contains(QLatin1String("in use"))
               ? tr("Port %1 is taken: something else listens there already, another peer perhaps. "
                    "Stop that, or name another port.")
                     .arg(port_)
               : tr("The peer cannot listen at %1, port %2: that address may not be of this "
                    "computer. 0.0.0.0 is all of its own.")
                     .arg(address_)
                     .arg(port_);
}

void PeerRun::start(const QString& address, int port) {
    if (isRunning()) {
        return;
    }
    address_ = address;
    port_ = port;
    trouble_.clear();
    printed_.clear();
    wanted_ = true;
    const Surroundings& around = desk_.surroundings();
    process_.start(
        around.peerProgram,
        {QStringLiteral("--book"), bookBeside(QString::fromStdString(desk_.bookPath())),
         QStringLiteral("--address"), address, QStringLiteral("--port"), QString::number(port)});
}

void PeerRun::stop() {
    wanted_ = false;
    if (!isRunning()) {
        return;
    }
    process_.terminate();
    if (!process_.waitForFinished(kStopMs)) {
        process_.kill();
        process_.waitForFinished(kStopMs);
    }
}

void PeerRun::read() {
    printed_ += QString::fromUtf8(process_.readAllStandardOutput());
    static const QRegularExpression kWayIn(QStringLiteral("address  (\\S+)\\s+code     (\\S+)"));
    if (const auto match = kWayIn.match(printed_); match.hasMatch()) {
        printed_.clear();
        emit invited(match.captured(1), match.captured(2));
    }
}

}  // namespace ledgerboard::desk
