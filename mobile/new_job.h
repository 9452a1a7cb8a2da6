// How is a job begun in under a minute? A name, the year it was built where known, and its rooms.
#pragma once

#include <string>

#include <QString>
#include <QStringList>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/result.h"

namespace ledgerboard::phone {

struct NewJob {
    QString name;
    QString builtYear;  // may be empty
    QStringList rooms;  // in walking order
    QString timeZone;   // may be empty
};

// Makes a book of its own for the job in `folder` and returns its path. Errors (WrongUse): no name,
// a year that is none; (Damaged): the folder cannot be written.
[[nodiscard]] model::Result<std::string> makeJob(const QString& folder, const NewJob& job,
                                                 model::Instant now,
                                                 const model::FillRandom& random);

}  // namespace ledgerboard::phone
