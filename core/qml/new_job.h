// How is a job begun: in a new book, or in one that is open? A name, the year it was built where
// known, and its rooms.
#pragma once

#include <string>

#include <QString>
#include <QStringList>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::qml {

struct NewJob {
    QString name;
    QString builtYear;  // may be empty
    QString timeZone;   // may be empty
    QStringList rooms;  // in walking order; may be empty
};

struct MadeBook {
    std::string path;
    model::Id<model::Kind::Job> job;
};

// Errors (WrongUse): no name, a year that is none; (CannotBeMet): a name that another job has; of
// the book.
[[nodiscard]] model::Result<model::Id<model::Kind::Job>> addJob(store::Book& book,
                                                                const NewJob& wish,
                                                                model::Instant now);

// A new book in `folder`, in a file named after the job. Errors: as of addJob, before anything is
// made; (Damaged): the folder cannot be written.
[[nodiscard]] model::Result<MadeBook> makeBook(const QString& folder, const NewJob& wish,
                                               model::Instant now, const model::FillRandom& random);

}  // namespace ledgerboard::qml
