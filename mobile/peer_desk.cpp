#include "mobile/peer_desk.h"

#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QSettings>
#include <QTimeZone>

#include "sync/link/wipe.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

constexpr int kOftenMs = 5 * 60 * 1000;
constexpr const char* kMetAt = "met_at";  // milliseconds since 1970, of the last meeting

QSettings settings() {
    return QSettings(JobBook::here()->surroundings().settingsFile, QSettings::IniFormat);
}

}  // namespace

PeerDesk::PeerDesk(QObject* parent) : QObject(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &PeerDesk::look);
    connect(&often_, &QTimer::timeout, this, &PeerDesk::meet);
    often_.start(kOftenMs);
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
        said_ = Said::text(wish.error().message);
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
    if (outcome.revoked) {
        book.close();
        const auto wiped = sync::wipeCopy(outcome.bookPath);
        said_ = wiped.ok() ? tr("An owner shut this phone out. Its copy is gone; what the peer had "
                                "already is not lost.")
                           : Said::text(wiped.error().message);
    } else if (!outcome.trouble.isEmpty()) {
        said_ = outcome.trouble;
    } else if (outcome.met) {
        settings().setValue(QLatin1String(kMetAt),
                            QVariant::fromValue<qint64>(book.instant().milliseconds()));
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
