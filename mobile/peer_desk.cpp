#include "mobile/peer_desk.h"

#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QNetworkInformation>
#include <QSettings>
#include <QTimeZone>

#include "sync/link/wipe.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

constexpr int kOftenMs = 5 * 60 * 1000;
constexpr int kFirstAgainMs = 15'000;
// A clock that is off by less is nobody's trouble.
constexpr qint64 kClockOffMs = qint64{5} * 60 * 1000;
constexpr const char* kMetAt = "met_at";  // milliseconds since 1970, of the last meeting

QSettings settings() {
    return QSettings(JobBook::here()->surroundings().settingsFile, QSettings::IniFormat);
}

}  // namespace

PeerDesk::PeerDesk(QObject* parent) : QObject(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &PeerDesk::look);
    connect(JobBook::here(), &JobBook::changed, this, &PeerDesk::changed);
    connect(&often_, &QTimer::timeout, this, &PeerDesk::meet);
    often_.start(kOftenMs);
    soon_.setSingleShot(true);
    connect(&soon_, &QTimer::timeout, this, &PeerDesk::meetSoon);
    connect(JobBook::here(), &JobBook::keptChanged, this, [this] {
        if (peer_ && JobBook::here()->canUndo()) {
            soon_.start(JobBook::here()->surroundings().meetSoonMs);
        }
    });
    followNetwork();
    look();
}

PeerDesk::~PeerDesk() {
    if (thread_ != nullptr) {
        thread_->wait();
        delete thread_;
    }
}

// The peer of the book that is open; a book just opened meets it.
void PeerDesk::look() {
    JobBook& book = *JobBook::here();
    const std::string path = book.hasBook() ? book.book().path() : std::string();
    if (path == path_) {
        return;
    }
    path_ = path;
    peer_.reset();
    if (!path_.empty()) {
        auto peer = sync::knownPeerOf(path_);
        if (peer.ok()) {
            peer_ = peer.value();
        }
    }
    emit changed();
    if (peer_) {
        meet();
    }
}

QString PeerDesk::peerText() const {
    return peer_ ? Said::text(sync::toText(peer_->place)) : QString();
}

QString PeerDesk::metText() const {
    const qint64 at = settings().value(QLatin1String(kMetAt)).toLongLong();
    if (!peer_ || at == 0) {
        return {};
    }
    const JobNow* now = JobBook::here()->now();
    const QTimeZone zone(now == nullptr ? QByteArray()
                                        : QByteArray::fromStdString(now->rows.job.timeZone));
    const QDateTime when =
        QDateTime::fromMSecsSinceEpoch(at, zone.isValid() ? zone : QTimeZone::systemTimeZone());
    const auto today = dayAt(JobBook::here()->instant(), QString::fromUtf8(when.timeZone().id()));
    const auto day =
        model::Date::fromYmd(when.date().year(), when.date().month(), when.date().day());
    const QString hour = QLocale().toString(when.time(), QLocale::ShortFormat);
    return day.ok() && day.value() != today ? tr("met the peer %1").arg(Said::day(day.value()))
                                            : tr("met the peer %1").arg(hour);
}

QString PeerDesk::clockText() const {
    const qint64 off = qAbs(JobBook::here()->clockOffsetMs());
    if (off < kClockOffMs) {
        return {};
    }
    constexpr qint64 kHourMs = qint64{3600} * 1000;
    const auto days = static_cast<int>(off / (24 * kHourMs));
    const auto hours = static_cast<int>(off / kHourMs);
    const QString span = days > 0    ? tr("%n day(s)", nullptr, days)
                         : hours > 0 ? tr("%n hour(s)", nullptr, hours)
                                     : tr("%n minute(s)", nullptr, static_cast<int>(off / 60'000));
    return JobBook::here()->clockOffsetMs() < 0 ? tr("This phone's clock is ahead by %1. What is "
                                                     "kept here goes by the peer's clock.")
                                                      .arg(span)
                                                : tr("This phone's clock is behind by %1. What is "
                                                     "kept here goes by the peer's clock.")
                                                      .arg(span);
}

// The program loads what knows of the network; where nothing does, tries alone tell.
void PeerDesk::followNetwork() {
    if (auto* network = QNetworkInformation::instance()) {
        connect(network, &QNetworkInformation::reachabilityChanged, this,
                [this](QNetworkInformation::Reachability reach) {
                    if (reach == QNetworkInformation::Reachability::Online) {
                        soon_.start(JobBook::here()->surroundings().meetSoonMs);
                    }
                });
    }
}

void PeerDesk::meetSoon() {
    if (isBusy()) {
        soon_.start(JobBook::here()->surroundings().meetSoonMs);
    } else {
        meet();
    }
}

MeetingAsk PeerDesk::askNow() const {
    return {path_, JobBook::here()->surroundings(), std::nullopt};
}

void PeerDesk::meet() {
    if (peer_ && !isBusy()) {
        run(askNow());
    }
}

void PeerDesk::join(const QString& addressOrPicture, const QString& code) {
    if (isBusy()) {
        return;
    }
    MeetingAsk ask = askNow();
    if (ask.bookPath.empty()) {
        const QDir folder(ask.around.bookFolder);
        folder.mkpath(QStringLiteral("."));
        ask.bookPath = folder.filePath(QStringLiteral("joined.book")).toStdString();
    }
    auto wish = joinAskOf(addressOrPicture, code, ask.bookPath, ask.around);
    if (!wish.ok()) {
        said_ = Said::trouble(wish.error());
        isTrouble_ = true;
        emit changed();
        return;
    }
    ask.join = std::move(wish).value();
    run(ask);
}

void PeerDesk::run(const MeetingAsk& ask) {
    thread_ = QThread::create([this, ask] {
        const MeetingOutcome outcome = holdMeeting(ask);
        QMetaObject::invokeMethod(
            this, [this, outcome] { take(outcome); }, Qt::QueuedConnection);
    });
    thread_->start();
    emit changed();
}

void PeerDesk::take(const MeetingOutcome& outcome) {
    thread_->wait();
    delete thread_;
    thread_ = nullptr;
    JobBook& book = *JobBook::here();
    isTrouble_ = !outcome.met;
    if (outcome.met || outcome.revoked) {
        againMs_ = 0;
    } else if (peer_) {
        againMs_ = againMs_ == 0 ? kFirstAgainMs : qMin(2 * againMs_, kOftenMs);
        soon_.start(againMs_);
    }
    if (outcome.revoked) {
        book.close();
        const auto wiped = sync::wipeCopy(outcome.bookPath);
        said_ = wiped.ok() ? tr("An owner shut this phone out. Its copy is gone; what the peer had "
                                "already is not lost.")
                           : Said::trouble(wiped.error());
    } else if (!outcome.trouble.isEmpty()) {
        said_ = outcome.trouble;
    } else if (outcome.met) {
        settings().setValue(QLatin1String(kMetAt),
                            QVariant::fromValue<qint64>(outcome.at.milliseconds()));
        said_ = tr("Up: %1 changes, %2 photos. Down: %3 changes, %4 photos.")
                    .arg(outcome.sent)
                    .arg(outcome.photosSent)
                    .arg(outcome.received)
                    .arg(outcome.photosReceived);
    }
    if (outcome.joined) {
        path_.clear();
        book.open(QString::fromStdString(outcome.bookPath));
        path_ = outcome.bookPath;
        if (auto peer = sync::knownPeerOf(path_); peer.ok()) {
            peer_ = peer.value();
        }
    } else if (!outcome.revoked) {
        book.refresh();
    }
    emit changed();
}

}  // namespace ledgerboard::phone
