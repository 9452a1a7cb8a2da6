#include "desktop/cli/session.h"

#include <cstdio>
#include <filesystem>
#include <fstream>

#include <nlohmann/json.hpp>

#include "core/compute/as_of.h"
#include "sync/exchange/device_side.h"

namespace ledgerboard::cli {

using model::Id;
using model::Kind;
using model::Result;

std::string Session::bookPath() const {
    return globals_.book.empty() ? surroundings_.book : globals_.book;
}

Result<store::Book*> Session::book() {
    if (!book_) {
        auto opened = store::Book::open(bookPath(), surroundings_.random);
        if (!opened.ok()) {
            return opened.error();
        }
        book_.emplace(std::move(opened).value());
        const auto offset = sync::DeviceSide(*book_, {}).clockOffsetMs();
        clockOffsetMs_ = offset.ok() ? offset.value() : 0;
    }
    return &*book_;
}

void Session::closeBook() {
    finder_.reset();
    then_.reset();
    book_.reset();
    clockOffsetMs_ = 0;
}

model::Instant Session::now() const {
    return model::Instant::fromMilliseconds(surroundings_.now().milliseconds() + clockOffsetMs_);
}

Result<const store::Book*> Session::bookToRead() {
    auto opened = book();
    if (!opened.ok()) {
        return opened.error();
    }
    if (globals_.knownAt.empty()) {
        return opened.value();
    }
    if (!then_) {
        auto instant = model::Instant::parse(globals_.knownAt);
        if (!instant.ok()) {
            return model::wrongUse("--known-at: " + instant.error().message);
        }
        auto then = opened.value()->knownAt(instant.value());
        if (!then.ok()) {
            return then.error();
        }
        then_.emplace(std::move(then).value());
    }
    return &*then_;
}

Result<void> Session::refusePast(const char* verb, bool dated) const {
    if (!globals_.knownAt.empty()) {
        return model::wrongUse(std::string("--known-at looks back; ") + verb +
                               " writes, so leave it out");
    }
    if (!dated && !globals_.asOf.empty()) {
        return model::wrongUse(std::string("--as-of looks back; ") + verb +
                               " writes, so leave it out");
    }
    return {};
}

Result<Id<Kind::Job>> Session::job() {
    auto opened = bookToRead();
    if (!opened.ok()) {
        return opened.error();
    }
    auto jobs = opened.value()->rows<model::Job>();
    if (!jobs.ok()) {
        return jobs.error();
    }
    if (!globals_.job.empty()) {
        auto rows = intake::rowsForFinding(*opened.value(), Id<Kind::Job>());
        if (!rows.ok()) {
            return rows.error();
        }
        auto found = intake::Finder(rows.value()).find(Kind::Job, globals_.job);
        if (!found.ok()) {
            return model::Error{found.error().code, "--job: " + found.error().message};
        }
        return Id<Kind::Job>(found.value());
    }
    if (jobs.value().empty()) {
        return model::cannotBeMet("there is no job in " + bookPath() +
                                  (globals_.knownAt.empty() ? "" : " at that instant") +
                                  ": begin one with 'ledgerboard start NAME'");
    }
    if (jobs.value().size() > 1) {
        std::string names;
        for (const auto& one : jobs.value()) {
            names += "\n  --job \"" + one.name + "\"";
        }
        return model::cannotBeMet("there are several jobs in the book; say which:" + names);
    }
    return jobs.value()[0].id;
}

Result<model::JobRows> Session::rows() {
    auto opened = bookToRead();
    if (!opened.ok()) {
        return opened.error();
    }
    auto meant = job();
    if (!meant.ok()) {
        return meant.error();
    }
    auto rows = opened.value()->jobRows(meant.value());
    if (!rows.ok()) {
        return rows.error();
    }
    if (globals_.asOf.empty()) {
        return compute::withoutVoided(std::move(rows).value());
    }
    auto day = today();
    if (!day.ok()) {
        return day.error();
    }
    return compute::asOf(std::move(rows).value(), day.value());
}

Result<model::Date> Session::today() {
    if (!globals_.asOf.empty()) {
        auto day = model::Date::parseLoose(globals_.asOf);
        if (!day.ok()) {
            return model::wrongUse("--as-of: " + day.error().message);
        }
        return day.value();
    }
    std::string zone;
    if (auto opened = bookToRead(); opened.ok()) {
        if (auto meant = job(); meant.ok()) {
            const auto jobs = opened.value()->rows<model::Job>();
            if (!jobs.ok()) {
                return jobs.error();
            }
            for (const auto& one : jobs.value()) {
                zone = one.id == meant.value() ? one.timeZone : zone;
            }
        }
    }
    return surroundings_.dayIn(now(), zone);
}

Result<JobOnDay> Session::jobOnDay() {
    auto read = rows();
    if (!read.ok()) {
        return read.error();
    }
    auto day = today();
    if (!day.ok()) {
        return day.error();
    }
    return JobOnDay{compute::asOf(std::move(read).value(), day.value()), day.value()};
}

Result<const intake::Finder*> Session::finder() {
    if (!finder_) {
        auto opened = bookToRead();
        if (!opened.ok()) {
            return opened.error();
        }
        const auto jobs = opened.value()->rows<model::Job>();
        Id<Kind::Job> meant;
        if (jobs.ok() && (!jobs.value().empty() || !globals_.job.empty())) {
            auto found = job();
            if (!found.ok()) {
                return found.error();
            }
            meant = found.value();
        }
        auto found = intake::Finder::open(*opened.value(), meant);
        if (!found.ok()) {
            return found.error();
        }
        finder_.emplace(std::move(found).value());
    }
    return &*finder_;
}

void Session::forgetRows() {
    finder_.reset();
}

void Session::printJson(const nlohmann::json& document) {
    // Bytes that are not UTF-8 can't be JSON: shown as the replacement sign rather than refused.
    surroundings_.out << document.dump(2, ' ', false, nlohmann::json::error_handler_t::replace)
                      << "\n";
}

void Session::printTable(const report::Table& table) {
    surroundings_.out << report::printTable(
        table, {surroundings_.width, script(), surroundings_.isTerminal && surroundings_.unicode});
}

std::string zoneOf(const store::Book& book, Id<Kind::Job> job) {
    const auto jobs = book.rows<model::Job>();
    std::string zone;
    for (const auto& one : jobs.ok() ? jobs.value() : std::vector<model::Job>()) {
        zone = one.id == job ? one.timeZone : zone;
    }
    return zone;
}

Result<void> refuseBook(const std::string& path) {
    std::string begins(16, '\0');
    if (std::ifstream existing(path, std::ios::binary); existing.read(begins.data(), 16)) {
        if (begins == std::string("SQLite format 3\0", 16)) {
            return model::cannotBeMet(path + " is a database: name another file");
        }
    }
    return {};
}

Result<void> writeFile(const std::string& path, const std::string& bytes) {
    namespace fs = std::filesystem;
    std::error_code problem;
    if (fs::is_directory(path, problem)) {
        return model::cannotBeMet(path + " is a folder: name a file in it");
    }
    const model::Error cannot =
        model::cannotBeMet(path + " cannot be written: check the folder and the disk");
    if (fs::exists(path, problem) && !fs::is_regular_file(path, problem)) {
        // A terminal or a pipe: nothing to be kept whole, and never to be replaced by a file.
        std::ofstream device(path, std::ios::binary);
        device << bytes << std::flush;
        return device ? Result<void>() : Result<void>(cannot);
    }
    if (auto good = refuseBook(path); !good.ok()) {
        return good;
    }
    // A link keeps leading where it led.
    const fs::path followed = fs::canonical(path, problem);
    const fs::path target = problem ? fs::path(path) : followed;
    const fs::path aside = target.string() + ".part";
    {
        std::ofstream file(aside, std::ios::binary | std::ios::trunc);
        file << bytes << std::flush;
        if (!file) {
            fs::remove(aside, problem);
            return cannot;
        }
    }
    fs::rename(aside, target, problem);
    if (problem) {
        std::error_code ignored;
        fs::remove(aside, ignored);
        return model::cannotBeMet(path + " cannot be written: " + problem.message());
    }
    return {};
}

}  // namespace ledgerboard::cli
