#include "desktop/client/book_reader.h"

#include <algorithm>

#include <QDateTime>
#include <QTimeZone>

#include "core/model/overflow.h"
#include "core/store/sync_book.h"
#include "sync/exchange/device_side.h"

#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Result;

namespace {

// The name under which the exchange remembers whose book it meets (docs/sync.md).
constexpr const char* kEpoch = "sync.epoch";

Result<WithPeer> peerOf(store::Book& book) {
    WithPeer peer;
    auto epoch = store::SyncBook(book).recall(kEpoch);
    if (!epoch.ok()) {
        return epoch.error();
    }
    peer.hasPeer = !model::isEmpty(epoch.value());
    if (!peer.hasPeer) {
        return peer;
    }
    auto waiting = sync::DeviceSide(book, {}).waiting();
    auto devices = book.rows<model::Device>();
    if (!waiting.ok() || !devices.ok()) {
        return waiting.ok() ? devices.error() : waiting.error();
    }
    peer.waiting = waiting.value();
    peer.devices = static_cast<std::size_t>(std::count_if(
        devices.value().begin(), devices.value().end(),
        [&](const auto& device) { return device.id != book.thisDevice() && !device.revokedOn; }));
    return peer;
}

}  // namespace

model::Date dayAt(model::Instant instant, const std::string& zone) {
    const QTimeZone named(QByteArray::fromStdString(zone));
    const QTimeZone used = zone.empty() || !named.isValid() ? QTimeZone::systemTimeZone() : named;
    const QDate day = QDateTime::fromMSecsSinceEpoch(instant.milliseconds(), used).date();
    auto date = model::Date::fromYmd(day.year(), day.month(), day.day());
    return date.ok() ? date.value() : instant.utcDate();
}

BookReader::BookReader(std::string path, Surroundings surroundings)
    : path_(std::move(path)), surroundings_(std::move(surroundings)) {}

void BookReader::read(const ReadAsk& ask) {
    auto reading = model::guarded([&] { return readOnce(ask); });
    Reading out;
    if (reading.ok()) {
        out = std::move(reading.value());
    } else {
        book_.reset();
        out.trouble = Said::trouble(reading.error());
    }
    emit done(out);
}

Result<Reading> BookReader::readOnce(const ReadAsk& ask) {
    if (!book_) {
        auto opened = store::Book::open(path_, surroundings_.random);
        if (!opened.ok()) {
            return opened.error();
        }
        book_.emplace(std::move(opened).value());
    }
    Reading reading;
    reading.position = book_->position();
    auto jobs = book_->rows<model::Job>();
    if (!jobs.ok()) {
        return jobs.error();
    }
    auto peer = peerOf(*book_);
    if (!peer.ok()) {
        return peer.error();
    }
    reading.peer = peer.value();
    for (const auto& job : jobs.value()) {
        reading.jobs.push_back({job.id, job.name});
        if (job.id != ask.job) {
            continue;
        }
        auto rows = book_->jobRows(job.id);
        if (!rows.ok()) {
            return rows.error();
        }
        const model::Date today = ask.asOf ? *ask.asOf : dayAt(surroundings_.now(), job.timeZone);
        reading.now = jobNowOf(std::move(rows).value(), today);
    }
    return reading;
}

}  // namespace ledgerboard::desk
