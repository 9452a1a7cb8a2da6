// Who reads the book while the window goes on? A reader with a Book of its own, in a thread of its
// own.
//
// Threads: lives in the thread it was moved to; ask it with a queued call.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include <QObject>
#include <QString>

#include "core/model/result.h"
#include "core/store/book.h"

#include "desktop/client/now/job_now.h"
#include "desktop/client/surroundings.h"

namespace ledgerboard::desk {

struct JobName {
    model::Id<model::Kind::Job> id;
    std::string name;
};

// Whether the book has a peer, and what that has not heard yet.
struct WithPeer {
    bool hasPeer = false;
    std::size_t waiting = 0;  // own entries
    std::size_t devices = 0;  // other ones that may meet it
};

struct Reading {
    std::vector<JobName> jobs;          // in order of making
    std::shared_ptr<const JobNow> now;  // of the job asked for; null where there is none
    WithPeer peer;
    store::LogPosition position;  // how far the log had come
    QString trouble;              // why it cannot be read
};

struct ReadAsk {
    model::Id<model::Kind::Job> job;  // nil: the list of jobs alone
    std::optional<model::Date> asOf;  // else the day it is at the house
};

// The day it is at an instant in a time zone; this machine's own where empty or unknown.
[[nodiscard]] model::Date dayAt(model::Instant instant, const std::string& zone);

class BookReader : public QObject {
    Q_OBJECT

  public:
    BookReader(std::string path, Surroundings surroundings);

    // Reads all of it and says so by done().
    void read(const ledgerboard::desk::ReadAsk& ask);

  signals:
    void done(const ledgerboard::desk::Reading& reading);

  private:
    model::Result<Reading> readOnce(const ReadAsk& ask);

    std::string path_;
    Surroundings surroundings_;
    std::optional<store::Book> book_;
};

}  // namespace ledgerboard::desk

Q_DECLARE_METATYPE(ledgerboard::desk::Reading)
