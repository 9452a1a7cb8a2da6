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
            trouble_ = tr("The peer ended by itself: %1").arg(said);
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

void PeerRun::start() {
    if (isRunning()) {
        return;
    }
    trouble_.clear();
    printed_.clear();
    wanted_ = true;
    const Surroundings& around = desk_.surroundings();
    process_.start(around.peerProgram,
                   {QStringLiteral("--book"), bookBeside(QString::fromStdString(desk_.bookPath())),
                    QStringLiteral("--address"), around.peerAddress, QStringLiteral("--port"),
                    QString::number(around.peerPort)});
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
