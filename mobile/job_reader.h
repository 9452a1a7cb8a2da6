// Who reads the book while the thumb goes on? A reader with a Book of its own, in a thread of its
// own: a screen never waits for a sum.
//
// Threads: lives in the thread it was moved to; ask it with a queued call.
#pragma once

#include <memory>
#include <optional>

#include <QObject>
#include <QString>

#include "core/model/result.h"
#include "core/store/book.h"

#include "mobile/now/job_now.h"
#include "mobile/now/waiting.h"
#include "mobile/surroundings.h"

namespace ledgerboard::phone {

struct Reading {
    std::shared_ptr<const JobNow> now;  // null where there is no job, or it cannot be read
    Waiting waiting;
    // To add to this device's clock for the peer's, as of the last meeting.
    std::int64_t clockOffsetMs = 0;
    QString trouble;  // why it cannot be read
};

// The day it is at an instant in a time zone; the device's own where empty or unknown.
[[nodiscard]] model::Date dayAt(model::Instant instant, const QString& zone);

class JobReader : public QObject {
    Q_OBJECT

  public:
    JobReader(std::string path, Surroundings surroundings);

    // Reads all of it and says so by done().
    void read();

  signals:
    void done(const ledgerboard::phone::Reading& reading);

  private:
    model::Result<Reading> readOnce();

    std::string path_;
    Surroundings surroundings_;
    std::optional<store::Book> book_;
};

}  // namespace ledgerboard::phone

Q_DECLARE_METATYPE(ledgerboard::phone::Reading)
