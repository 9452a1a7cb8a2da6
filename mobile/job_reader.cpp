#include "mobile/job_reader.h"

#include <QDateTime>
#include <QTimeZone>

#include "core/model/overflow.h"
#include "sync/exchange/device_side.h"

#include "mobile/said.h"

namespace ledgerboard::phone {

using model::Result;

namespace {

// Whether the book's own person is an owner. A book that does not say is no owner's: of a crew
// lead's device the peer keeps the role.
Result<bool> isOwner(const store::Book& book) {
    auto me = book.record(model::Kind::Person, book.me().raw());
    if (!me.ok()) {
        return me.error();
    }
    if (!me.value()) {
        return false;
    }
    const auto* role = std::get_if<std::string>(&me.value()->at(model::field::Person::role));
    return role != nullptr && *role == model::wordOf(model::Role::Owner);
}

}  // namespace

model::Date dayAt(model::Instant instant, const QString& zone) {
    const QTimeZone named(zone.toUtf8());
    const QTimeZone used = zone.isEmpty() || !named.isValid() ? QTimeZone::systemTimeZone() : named;
    const QDate day = QDateTime::fromMSecsSinceEpoch(instant.milliseconds(), used).date();
    auto date = model::Date::fromYmd(day.year(), day.month(), day.day());
    return date.ok() ? date.value() : instant.utcDate();
}

JobReader::JobReader(std::string path, Surroundings surroundings)
    : path_(std::move(path)), surroundings_(std::move(surroundings)) {}

void JobReader::read() {
    auto reading = model::guarded([this] { return readOnce(); });
    Reading out;
    if (reading.ok()) {
        out = std::move(reading.value());
    } else {
        out.trouble = Said::trouble(reading.error());
    }
    emit done(out);
}

Result<Reading> JobReader::readOnce() {
    if (!book_) {
        auto opened = store::Book::open(path_, surroundings_.random);
        if (!opened.ok()) {
            return opened.error();
        }
        book_.emplace(std::move(opened).value());
    }
    Reading reading;
    auto waiting = waitingIn(*book_);
    if (!waiting.ok()) {
        return waiting.error();
    }
    reading.waiting = waiting.value();
    auto offset = sync::DeviceSide(*book_, {}).clockOffsetMs();
    if (!offset.ok()) {
        return offset.error();
    }
    reading.clockOffsetMs = offset.value();
    auto jobs = book_->rows<model::Job>();
    if (!jobs.ok()) {
        return jobs.error();
    }
    if (jobs.value().empty()) {
        return reading;
    }
    // The job begun last: a phone shows one house at a time.
    const model::Job& job = jobs.value().back();
    auto owner = isOwner(*book_);
    if (!owner.ok()) {
        return owner.error();
    }
    auto rows = book_->jobRows(job.id);
    if (!rows.ok()) {
        return rows.error();
    }
    const auto now = model::Instant::fromMilliseconds(surroundings_.now().milliseconds() +
                                                      reading.clockOffsetMs);
    const model::Date today = dayAt(now, Said::text(job.timeZone));
    reading.now = jobNowOf(std::move(rows).value(), today, owner.value());
    return reading;
}

}  // namespace ledgerboard::phone
