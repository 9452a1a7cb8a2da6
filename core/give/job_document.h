// How does a whole job stand in one JSON document, and what does such a document say?
//
// Every record of the job as it is now, and those of the whole book that it leans on (crews,
// prices, people, payee rules), each field that holds something under the catalog's name: money,
// quantities and percents as decimal text, dates and instants as ISO 8601, flags as true or false,
// counts as numbers, references as ids, lists as the log keeps them. History, dropped records and
// devices stay with the book; a backup holds them.
// Source: project decision; docs/job-file.md tells the form for other programs.
// Threads: any number may ask.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/model/date.h"
#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::give {

constexpr int kJobForm = 1;

// Whether a field names a device: those of another book say nothing in this one.
[[nodiscard]] bool meansDevice(const model::Field& field);

// Errors: as Book::records; no such job.
[[nodiscard]] model::Result<std::string> jobDocument(const store::Book& book,
                                                     model::Id<model::Kind::Job> job,
                                                     model::Instant now);

struct ReadJob {
    model::Id<model::Kind::Job> job;
    std::string name;
    std::vector<store::Record> records;  // the job first; values that are empty are not held
    std::vector<std::string> unknown;    // kinds and fields of a newer version: "items.colour"
};

// `place` is what messages call it. Errors (CannotBeMet): no such document, of a newer form, too
// large or too deep; a record or a value that can't be read, naming kind, id and field.
[[nodiscard]] model::Result<ReadJob> readJobDocument(std::string_view text,
                                                     const std::string& place);

}  // namespace ledgerboard::give
