// verify, backup, restore: the book as a file.
#include <filesystem>

#include <nlohmann/json.hpp>

#include "desktop/cli/run.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

// The file itself and what SQLite keeps beside it while in use.
constexpr const char* kTails[] = {"", "-wal", "-shm"};

}  // namespace

Done verbVerify(Session& session, bool mend) {
    if (auto good = session.refusePast("verify", false); !good.ok()) {
        return good.error();
    }
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    auto report = book.value()->verify(mend);
    if (!report.ok()) {
        return report.error();
    }
    std::size_t left = 0;
    nlohmann::json findings = nlohmann::json::array();
    std::string text;
    for (const auto& finding : report.value().findings) {
        left += finding.mended ? 0 : 1;
        findings.push_back({{"what", finding.what}, {"mended", finding.mended}});
        text += (finding.mended ? "mended  " : "wrong   ") + finding.what + "\n";
    }
    if (session.json()) {
        session.printJson({{"entries", report.value().entries},
                           {"records", report.value().records},
                           {"findings", findings}});
    } else {
        session.print(
            text + "Read " + std::to_string(report.value().entries) + " entries and " +
            std::to_string(report.value().records) + " records: " +
            (left == 0 ? "all of it holds.\n" : std::to_string(left) + " findings stand.\n"));
    }
    if (left > 0) {
        return model::damaged(mend ? "what stands above can't be rebuilt from the log: restore a "
                                     "backup, or sync with a device that has it"
                                   : "the book does not add up: run 'ledgerboard verify --mend'");
    }
    return {};
}

Done verbBackup(Session& session, const std::string& file) {
    if (auto good = session.refusePast("backup", false); !good.ok()) {
        return good.error();
    }
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    if (auto done = book.value()->backup(file); !done.ok()) {
        return done.error();
    }
    if (session.json()) {
        session.printJson({{"backup", file}});
    } else {
        session.print("Backed up to " + file + ".\n");
    }
    return {};
}

Done verbRestore(Session& session, const RestoreOptions& options) {
    if (auto good = session.refusePast("restore", false); !good.ok()) {
        return good.error();
    }
    namespace fs = std::filesystem;
    const std::string target = session.bookPath();
    if (fs::exists(target) && !options.replace) {
        return model::cannotBeMet("there is already a book at " + target +
                                  ": add --replace to set it aside, or name another with --book");
    }
    // Tried out as a copy first, so that a bad backup costs nothing.
    const std::string aside = target + ".restoring";
    std::error_code problem;
    fs::copy_file(options.file, aside, fs::copy_options::overwrite_existing, problem);
    if (problem) {
        return model::cannotBeMet(options.file + " cannot be read: " + problem.message());
    }
    Done sound = [&]() -> Done {
        auto copy = store::Book::open(aside, session.surroundings().random);
        if (!copy.ok()) {
            return model::Error{copy.error().code, options.file + ": " + copy.error().message};
        }
        auto report = copy.value().verify(false);
        if (!report.ok()) {
            return report.error();
        }
        if (!report.value().findings.empty()) {
            return model::damaged(options.file +
                                  " does not add up: " + report.value().findings.front().what);
        }
        return {};
    }();
    std::string setAside;
    if (sound.ok() && fs::exists(target)) {
        setAside = target + ".before-restore-" + session.now().toString().substr(0, 19);
        for (const auto* tail : kTails) {
            if (fs::exists(target + tail)) {
                fs::rename(target + tail, setAside + tail, problem);
            }
        }
    }
    if (sound.ok()) {
        fs::rename(aside, target, problem);
        if (problem) {
            sound = model::damaged(target + " cannot be written: " + problem.message());
        }
    }
    std::error_code ignored;
    for (const auto* tail : kTails) {
        fs::remove(aside + tail, ignored);
    }
    if (!sound.ok()) {
        return sound.error();
    }
    if (session.json()) {
        session.printJson({{"restored", target}, {"set_aside", setAside}});
    } else {
        session.print(
            "Restored " + target + " from " + options.file + "." +
            (setAside.empty() ? "\n" : " The book that stood there is now " + setAside + ".\n"));
    }
    return {};
}

}  // namespace ledgerboard::cli
