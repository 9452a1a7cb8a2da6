#include "desktop/client/devices_view.h"

#include <algorithm>
#include <arpa/inet.h>
#include <array>

#include <QBuffer>
#include <QDateTime>
#include <QFileInfo>
#include <QImage>
#include <QLocale>
#include <QThread>
#include <QTimeZone>
#include <QTimer>

#include "sync/identity/qr_picture.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/money/field_words.h"
#include "desktop/client/money/record_pen.h"
#include "desktop/client/peer_run.h"
#include "desktop/client/preferences.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

namespace {

constexpr std::size_t kMostAsides = 200;
constexpr int kQuiet = 4;   // modules of light border
constexpr int kModule = 6;  // pixels
constexpr int kListensMs = 700;
constexpr int kLeastPort = 1'024;  // those below are the system's
constexpr int kMostPort = 65'535;

bool isAddress(const std::string& text) {
    std::array<unsigned char, sizeof(in6_addr)> bytes{};
    return ::inet_pton(AF_INET, text.c_str(), bytes.data()) == 1 ||
           ::inet_pton(AF_INET6, text.c_str(), bytes.data()) == 1;
}

// Dark modules on white, as a camera wants them, whatever the theme.
QString qrAddress(const std::string& text) {
    const auto modules = sync::qrModules(text);
    if (!modules.ok() || modules.value().empty()) {
        return {};
    }
    const auto& rows = modules.value();
    const int size = static_cast<int>(rows.size()) + 2 * kQuiet;
    QImage image(size, size, QImage::Format_RGB32);
    image.fill(Qt::white);
    for (std::size_t y = 0; y < rows.size(); ++y) {
        for (std::size_t x = 0; x < rows[y].size(); ++x) {
            if (rows[y][x]) {
                image.setPixelColor(static_cast<int>(x) + kQuiet, static_cast<int>(y) + kQuiet,
                                    Qt::black);
            }
        }
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.scaled(size * kModule, size * kModule).save(&buffer, "PNG");
    return QStringLiteral("data:image/png;base64,") + QString::fromLatin1(bytes.toBase64());
}

}  // namespace

DevicesView::DevicesView(QObject* parent) : QObject(parent) {
    Desk* desk = Desk::here();
    connect(desk, &Desk::changed, this, &DevicesView::follow);
    connect(desk, &Desk::wordsChanged, this, &DevicesView::changed);
    PeerRun* run = PeerRun::of(*desk);
    connect(run, &PeerRun::changed, this, &DevicesView::changed);
    connect(run, &PeerRun::invited, this, &DevicesView::comeTo);
    follow();
    ask();
}

PeerAsk DevicesView::peerAsk() const {
    const Desk& desk = *Desk::here();
    return {desk.bookPath(), {desk.surroundings().now, desk.surroundings().random, [](int ms) {
                                  QThread::msleep(static_cast<unsigned long>(std::max(0, ms)));
                              }}};
}

void DevicesView::follow() {
    now_ = Desk::here()->now();
    readBook();
    emit changed();
}

// What the book itself knows: its peer, what clashes, what was set aside.
void DevicesView::readBook() {
    Desk& desk = *Desk::here();
    if (!desk.hasBook()) {
        return;
    }
    const auto known = sync::knownPeerOf(desk.bookPath());
    hasPeer_ = known.ok() && known.value() && known.value()->joined;
    peerPlace_ = hasPeer_ ? Said::text(sync::toText(known.value()->place)) : QString();
    store::SyncBook sync(desk.book());
    auto clashes = sync.clashes();
    auto asides = sync.asides(0, kMostAsides);
    clashes_ = clashes.ok() ? std::move(clashes).value() : std::vector<store::Clash>();
    asides_ = asides.ok() ? std::move(asides).value() : std::vector<store::Aside>();
}

template <class Work, class Take>
void DevicesView::inTurn(const QString& busy, Work work, Take take) {
    busy_ = busy;
    emit changed();
    inBackground(Desk::here()->pool(), this, std::move(work),
                 [this, take = std::move(take)](auto result) mutable {
                     busy_.clear();
                     take(std::move(result));
                     emit changed();
                 });
}

void DevicesView::ask() {
    if (!Desk::here()->hasBook()) {
        return;
    }
    inTurn(
        hasPeer_ ? tr("Asking the peer\u2026") : QString(),
        [ask = peerAsk()] { return devicesOf(ask); },
        [this](model::Result<DeviceLines> lines) {
            if (lines.ok()) {
                lines_ = std::move(lines).value();
                wasAsked_ = lines_.whyNotAsked.empty();
                place_ =
                    std::clamp(place_, 0, std::max(0, static_cast<int>(lines_.lines.size()) - 1));
            } else {
                Desk::here()->sayNotKept(Said::trouble(lines.error()));
            }
        });
}

void DevicesView::meet() {
    if (!hasPeer_) {
        Desk::here()->sayNotKept(tr("This book has met no peer yet: start one here."));
        return;
    }
    inTurn(
        tr("Meeting the peer\u2026"), [ask = peerAsk()] { return meetNow(ask); },
        [this](model::Result<sync::MeetReport> report) {
            Desk& desk = *Desk::here();
            if (!report.ok() || report.value().end != sync::MeetEnd::Met) {
                desk.sayNotKept(
                    Said::trouble(report.ok() ? report.value().message : report.error().message));
                return;
            }
            desk.sayPlainly(tr("Met the peer: %1 sent, %2 received.")
                                .arg(report.value().entries.sent)
                                .arg(report.value().entries.received));
            desk.refresh();
            ask();
        });
}

QString DevicesView::listenAddress() {
    const QString kept = Preferences::here()->peerAddress();
    return kept.isEmpty() ? Desk::here()->surroundings().peerAddress : kept;
}

QString DevicesView::listenPort() {
    const int kept = Preferences::here()->peerPort();
    return QString::number(kept == 0 ? Desk::here()->surroundings().peerPort : kept);
}

bool DevicesView::start(const QString& address, const QString& port) {
    Desk& desk = *Desk::here();
    if (!canStart()) {
        desk.sayNotKept(
            tr("This book meets the peer at %1, which runs elsewhere.").arg(peerPlace_));
        return false;
    }
    const QString at = address.trimmed();
    if (!isAddress(at.toStdString())) {
        desk.sayNotKept(
            tr("Address: “%1” is no address of a computer. 127.0.0.1 is this one alone, "
               "0.0.0.0 all of its networks.")
                .arg(at));
        return false;
    }
    bool isNumber = false;
    const int number = port.trimmed().toInt(&isNumber);
    if (!isNumber || number < kLeastPort || number > kMostPort) {
        desk.sayNotKept(tr("Port: “%1” is none. It is a number from %2 to %3.")
                            .arg(port.trimmed())
                            .arg(kLeastPort)
                            .arg(kMostPort));
        return false;
    }
    desk.forgetKept();
    Preferences::here()->setPeerAddress(at);
    Preferences::here()->setPeerPort(number);
    PeerRun::of(desk)->start(at, number);
    // One that was there before prints nothing: it is asked once it may listen.
    if (hasPeer_) {
        QTimer::singleShot(kListensMs, this, [this, at, number] { meetAt(at, number); });
    }
    return true;
}

// The book follows its peer to where it listens now; other devices are told by their people.
void DevicesView::meetAt(const QString& address, int port) {
    Desk& desk = *Desk::here();
    if (desk.hasBook() && PeerRun::of(desk)->isRunning()) {
        auto known = sync::knownPeerOf(desk.bookPath());
        if (known.ok() && known.value()) {
            sync::KnownPeer peer = *known.value();
            const bool isOfAll =
                address == QLatin1String("0.0.0.0") || address == QLatin1String("::");
            const sync::Place place{isOfAll ? peer.place.host : address.toStdString(),
                                    static_cast<std::uint16_t>(port)};
            if (place != peer.place) {
                const QString before = peerPlace_;
                peer.place = place;
                if (auto kept = sync::keepKnownPeer(desk.bookPath(), peer); !kept.ok()) {
                    desk.sayNotKept(Said::trouble(kept.error()));
                } else {
                    readBook();
                    desk.sayPlainly(tr("The peer listens at %1 now. Devices that came in at %2 "
                                       "must be told.")
                                        .arg(peerPlace_, before));
                }
            }
        }
    }
    ask();
}

void DevicesView::stop() {
    PeerRun::of(*Desk::here())->stop();
    ask();
}

// The peer was started for the first time, and lets its owner in.
void DevicesView::comeTo(const QString& address, const QString& code) {
    if (hasPeer_) {
        return;
    }
    inTurn(
        tr("Meeting the peer\u2026"),
        [ask = peerAsk(), at = address.toStdString(), by = code.toStdString()] {
            auto joined = joinPeer(ask, at, by);
            return joined.ok() ? meetNow(ask) : model::Result<sync::MeetReport>(joined.error());
        },
        [this](model::Result<sync::MeetReport> report) {
            Desk& desk = *Desk::here();
            readBook();
            if (!report.ok() || report.value().end != sync::MeetEnd::Met) {
                desk.sayNotKept(
                    Said::trouble(report.ok() ? report.value().message : report.error().message));
            } else {
                desk.sayPlainly(tr("The peer runs and has this book."));
            }
            desk.refresh();
            ask();
        });
}

std::vector<DevicesView::Whom> DevicesView::whoms() const {
    std::vector<Whom> list{{{}, tr("a device of your own")}};
    if (now_ == nullptr) {
        return list;
    }
    for (const auto& crew : now_->rows.crews) {
        Guest guest;
        guest.role = model::Role::CrewLead;
        guest.crew = crew.id.raw();
        guest.name = "Lead of " + crew.name;
        list.push_back({guest, tr("the lead of %1").arg(Said::text(crew.name))});
    }
    Guest viewer;
    viewer.role = model::Role::Viewer;
    viewer.job = now_->rows.job.id.raw();
    viewer.name = "Viewer of " + now_->rows.job.name;
    list.push_back(
        {viewer, tr("a viewer of %1, as for the lender").arg(Said::text(now_->rows.job.name))});
    return list;
}

QStringList DevicesView::guests() const {
    QStringList list;
    for (const auto& whom : whoms()) {
        list << whom.said;
    }
    return list;
}

void DevicesView::invite(int guest, const QString& name) {
    const auto all = whoms();
    if (guest < 0 || guest >= static_cast<int>(all.size())) {
        return;
    }
    Whom whom = all[static_cast<std::size_t>(guest)];
    if (!name.trimmed().isEmpty()) {
        whom.guest.name = name.trimmed().toStdString();
    }
    inTurn(
        tr("Asking the peer for a way in\u2026"),
        [ask = peerAsk(), guest = whom.guest] { return inviteGuest(ask, guest); },
        [this, said = whom.said](model::Result<WayIn> way) {
            if (!way.ok()) {
                Desk::here()->sayNotKept(Said::trouble(way.error()));
                return;
            }
            wayIn_ = std::move(way).value();
            invited_ = said;
            picture_ = qrAddress(wayIn_->picture);
        });
}

void DevicesView::forgetInvitation() {
    wayIn_.reset();
    picture_.clear();
    emit changed();
}

QString DevicesView::inviteText() const {
    return wayIn_ ? tr("For %1, within ten minutes. Show it to nobody else.").arg(invited_)
                  : QString();
}

QString DevicesView::inviteAddress() const {
    return wayIn_ ? Said::text(wayIn_->address) : QString();
}

QString DevicesView::inviteCode() const {
    return wayIn_ ? Said::text(wayIn_->code) : QString();
}

void DevicesView::setPlace(int place) {
    place_ = std::clamp(place, 0, std::max(0, static_cast<int>(lines_.lines.size()) - 1));
    emit changed();
}

void DevicesView::shutOut() {
    if (lines_.lines.empty() || now_ == nullptr) {
        return;
    }
    const auto line = lines_.lines[static_cast<std::size_t>(place_)];
    if (line.revoked) {
        Desk::here()->sayNotKept(tr("That device is shut out already."));
        return;
    }
    inTurn(
        tr("Telling the peer\u2026"),
        [ask = peerAsk(), device = line.device, today = now_->today] {
            return desk::shutOut(ask, device, today);
        },
        [this, name = line.name](model::Result<bool> told) {
            Desk& desk = *Desk::here();
            if (!told.ok()) {
                desk.sayNotKept(Said::trouble(told.error()));
                return;
            }
            desk.sayPlainly((told.value()
                                 ? tr("Shut out: %1. Its copy is wiped when it next calls.")
                                 : tr("%1 is shut out here; the next meeting tells the peer."))
                                .arg(Said::text(name)));
            desk.refresh();
            ask();
        });
}

bool DevicesView::settle(int clash, int value) {
    Desk& desk = *Desk::here();
    const auto at = static_cast<std::size_t>(clash);
    const auto which = static_cast<std::size_t>(value);
    if (clash < 0 || at >= clashes_.size() || value < 0 || which >= clashes_[at].heads.size()) {
        return false;
    }
    const store::Clash one = clashes_[at];
    const QString what = nameOf(one.cell.record) + QStringLiteral(", ") + fieldOf(one.heads[which]);
    const QString said = valueOf(one.heads[which]);
    auto done =
        store::SyncBook(desk.book()).settle(one.cell, one.heads[which].value, desk.instant());
    if (!done.ok()) {
        desk.sayNotKept(Said::trouble(done.error()));
        return false;
    }
    desk.sayPlainly(tr("%1 is %2").arg(what, said));
    readBook();
    desk.refresh();
    emit changed();
    return true;
}

bool DevicesView::isRunning() const {
    return PeerRun::of(*Desk::here())->isRunning();
}

bool DevicesView::canStart() const {
    const QString beside = PeerRun::bookBeside(QString::fromStdString(Desk::here()->bookPath()));
    return !hasPeer_ || QFileInfo::exists(beside);
}

QString DevicesView::peerText() const {
    return hasPeer_ ? tr("This book meets the peer at %1.").arg(peerPlace_)
                    : tr("This book has met no peer yet. A peer keeps a whole copy of it, and "
                         "phones meet through it. It can run on this computer, while this program "
                         "is open.");
}

QString DevicesView::runText() const {
    const PeerRun* run = PeerRun::of(*Desk::here());
    if (!run->trouble().isEmpty()) {
        return run->trouble();
    }
    return run->isRunning() ? tr("The peer runs on this computer.")
           : canStart()     ? tr("It does not run on this computer now.")
                            : tr("It runs elsewhere.");
}

QString DevicesView::sayInstant(model::Instant at) const {
    if (at.milliseconds() == 0) {
        return tr("never");
    }
    // Day and hour both at the house.
    const QTimeZone zone(now_ == nullptr ? QByteArray()
                                         : QByteArray::fromStdString(now_->rows.job.timeZone));
    const QDateTime local = zone.isValid() ? QDateTime::fromMSecsSinceEpoch(at.milliseconds(), zone)
                                           : QDateTime::fromMSecsSinceEpoch(at.milliseconds());
    const auto day =
        model::Date::fromYmd(local.date().year(), local.date().month(), local.date().day());
    return (day.ok() ? Said::day(day.value(), now_ == nullptr ? day.value() : now_->today)
                     : QString()) +
           QStringLiteral(", ") + QLocale().toString(local.time(), QLocale::ShortFormat);
}

QVariantList DevicesView::devices() const {
    QVariantList list;
    for (const auto& line : lines_.lines) {
        DeviceRow row;
        row.name = line.name.empty() ? tr("a device without a name") : Said::text(line.name);
        row.person = Said::text(line.person);
        row.isOut = line.revoked;
        row.isThis = line.device == lines_.own;
        row.role = line.revoked                                        ? tr("shut out")
                   : line.role == model::wordOf(model::Role::Owner)    ? tr("owner")
                   : line.role == model::wordOf(model::Role::CrewLead) ? tr("crew lead")
                                                                       : tr("viewer");
        row.heard = wasAsked_ ? sayInstant(line.heard) : QString();
        list << QVariant::fromValue(row);
    }
    return list;
}

QString DevicesView::devicesWhy() const {
    return wasAsked_ || lines_.whyNotAsked.empty() || !hasPeer_
               ? QString()
               : tr("This is what the book knows; when each last met the peer, the peer would say: "
                    "%1")
                     .arg(Said::trouble(lines_.whyNotAsked));
}

QString DevicesView::nameOf(const model::RawId& record) const {
    if (now_ == nullptr) {
        return Said::text(record.toString());
    }
    if (record == now_->rows.job.id.raw()) {
        return Said::text(now_->rows.job.name);
    }
    return Said::text(namesIn(now_).nameOf(record));
}

QString DevicesView::fieldOf(const store::Entry& entry) const {
    return model::fieldOf(entry.field) != nullptr ? FieldWords::heading(entry.field)
                                                  : tr("(a newer field)");
}

QString DevicesView::valueOf(const store::Entry& entry) const {
    const model::Field* field = model::fieldOf(entry.field);
    if (field == nullptr || now_ == nullptr) {
        return {};
    }
    const QString text =
        Said::text(model::printValue(*field, entry.value, namesIn(now_).nameRecord()));
    return text.isEmpty() ? tr("nothing") : text;
}

QString DevicesView::saidBy(const store::Entry& entry) const {
    QString device;
    for (const auto& line : lines_.lines) {
        if (line.device == entry.name.device) {
            device = Said::text(line.name);
        }
    }
    const QString when = sayInstant(entry.clock.instant());
    return device.isEmpty() ? when : device + QStringLiteral(", ") + when;
}

QVariantList DevicesView::clashes() const {
    QVariantList list;
    for (const auto& clash : clashes_) {
        ClashRow row;
        row.what = nameOf(clash.cell.record) + QStringLiteral(", ") +
                   (clash.heads.empty() ? QString() : fieldOf(clash.heads.front()));
        for (const auto& head : clash.heads) {
            row.values << valueOf(head);
            row.whens << saidBy(head);
        }
        list << QVariant::fromValue(row);
    }
    return list;
}

QVariantList DevicesView::asides() const {
    QVariantList list;
    for (const auto& aside : asides_) {
        AsideRow row;
        row.what = nameOf(aside.entry.record) + QStringLiteral(", ") + fieldOf(aside.entry);
        row.value = valueOf(aside.entry);
        row.when = saidBy(aside.entry);
        row.why = Said::trouble(aside.why);
        list << QVariant::fromValue(row);
    }
    return list;
}

}  // namespace ledgerboard::desk
