// What does typing in a field of any record write into the book?
//
// Values are read as the command line's `set` and `add` read them; words of a list may also be
// typed as the page says them. A fact (a spend's date, sum or kind) is never edited: the row is
// written anew in place of the old one, and what pointed at that follows.
// Threads: the UI's.
#pragma once

#include <map>
#include <memory>

#include <QString>
#include <QStringList>

#include "core/intake/files/find.h"
#include "core/model/result.h"
#include "core/store/action.h"
#include "core/store/book.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// The values a new record is to hold, by field.
using Draft = std::map<model::FieldCode, model::Value>;

// Names of the records of `now`, kept until another is asked for.
[[nodiscard]] const intake::Finder& namesIn(const std::shared_ptr<const JobNow>& now);

// The value of a field of a record of the job; empty where it holds none.
[[nodiscard]] model::Value valueIn(const JobNow& now, model::FieldCode field,
                                   const model::RawId& id);

// As it is typed: "1250.00", "2026-05-22", "Kitchen/cabinets", "receipt" in the page's words.
[[nodiscard]] QString typedText(const std::shared_ptr<const JobNow>& now, model::FieldCode field,
                                const model::Value& value);

// As a sheet shows it: money whole, days short.
[[nodiscard]] QString shownText(const std::shared_ptr<const JobNow>& now, model::FieldCode field,
                                const model::Value& value);

// Names or words that may stand in the field and go with what was typed, the best first, eight at
// most.
[[nodiscard]] QStringList choicesFor(const std::shared_ptr<const JobNow>& now,
                                     model::FieldCode field, const QString& typed);

// Errors (WrongUse, CannotBeMet): what is wrong with it and how to write it.
[[nodiscard]] model::Result<model::Value> readField(const std::shared_ptr<const JobNow>& now,
                                                    model::FieldCode field, const QString& text);

// Puts a value into a field of a record that is there. `stands` then holds the id of the record
// that has it: another where the row was written anew, which is so for every fact of a spend, said
// or not, since only that can be undone.
[[nodiscard]] store::Action setField(store::Book& book, const std::shared_ptr<const JobNow>& now,
                                     model::FieldCode field, const model::RawId& id,
                                     const model::Value& value, model::Instant at,
                                     model::RawId& stands);

// A new record of the job with the values of the draft.
[[nodiscard]] store::Action newRecord(const JobNow& now, model::Kind kind, const model::RawId& id,
                                      const Draft& draft);

}  // namespace ledgerboard::desk
