// What does every verb need? The book, the job meant, its rows as asked for, and a way to print.
#pragma once

#include <optional>
#include <string>

#include <nlohmann/json_fwd.hpp>

#include "core/intake/files/find.h"
#include "core/model/result.h"
#include "core/model/rows.h"
#include "core/report/table.h"
#include "core/store/book.h"

#include "desktop/cli/surroundings.h"

namespace ledgerboard::cli {

// The options that stand before (or behind) every verb.
struct Globals {
    std::string book;
    std::string job;
    std::string asOf;
    std::string knownAt;
    bool json = false;
};

// A job as of the day a verb is asked for, and that day.
struct JobOnDay {
    model::JobRows rows;
    model::Date today;
};

class Session {
  public:
    Session(Globals globals, Surroundings& surroundings)
        : globals_(std::move(globals)), surroundings_(surroundings) {}

    [[nodiscard]] bool json() const { return globals_.json; }

    [[nodiscard]] const Globals& globals() const { return globals_; }

    [[nodiscard]] Surroundings& surroundings() { return surroundings_; }

    // By this computer's clock, set right by the peer's as of the last meeting, so that what is
    // written here and elsewhere falls into one order.
    [[nodiscard]] model::Instant now() const;

    [[nodiscard]] std::string bookPath() const;

    // Opens the book, once. Errors: as Book::open.
    [[nodiscard]] model::Result<store::Book*> book();
    // The book to read from: as known at --known-at where that is given.
    [[nodiscard]] model::Result<const store::Book*> bookToRead();
    // Refuses --known-at and, unless `dated`, --as-of: for verbs that write.
    [[nodiscard]] model::Result<void> refusePast(const char* verb, bool dated) const;
    // The job that --job names; without it, the only one. Errors: none, several, unknown.
    [[nodiscard]] model::Result<model::Id<model::Kind::Job>> job();
    // The rows of the job: as known at, then as of, where asked.
    [[nodiscard]] model::Result<model::JobRows> rows();
    // --as-of, else the day it is at the house.
    [[nodiscard]] model::Result<model::Date> today();
    // Both, with what is dated later than today left out: it has not happened yet.
    [[nodiscard]] model::Result<JobOnDay> jobOnDay();
    // Names and finds records of the job (of the book alone while there is none), read once.
    [[nodiscard]] model::Result<const intake::Finder*> finder();
    // Lets go of the book, so that its files can be removed or another is opened next.
    void closeBook();
    // Forgets what was read: after a write.
    void forgetRows();

    void print(const std::string& text) { surroundings_.out << text; }

    void printJson(const nlohmann::json& document);
    void printTable(const report::Table& table);

    [[nodiscard]] report::Script script() const {
        return surroundings_.unicode ? report::Script::Unicode : report::Script::Ascii;
    }

  private:
    Globals globals_;
    Surroundings& surroundings_;
    std::optional<store::Book> book_;
    std::optional<store::Book> then_;
    std::optional<intake::Finder> finder_;
    std::int64_t clockOffsetMs_ = 0;
};

// Refuses to write over a database, a book above all.
[[nodiscard]] model::Result<void> refuseBook(const std::string& path);

// Writes a file aside and renames it, so that it is there whole or not at all. Refuses to replace
// a book. Errors name the file.
// The time zone of a job; empty where it names none or can't be read.
[[nodiscard]] std::string zoneOf(const store::Book& book, model::Id<model::Kind::Job> job);

[[nodiscard]] model::Result<void> writeFile(const std::string& path, const std::string& bytes);

}  // namespace ledgerboard::cli
