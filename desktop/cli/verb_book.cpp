// verify, backup, restore: the book as a file.
#include <filesystem>

#include <nlohmann/json.hpp>

#include "core/report/money_text.h"
#include "core/store/book_photos.h"

#include "desktop/cli/run.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

namespace fs = std::filesystem;

// The file itself, what SQLite keeps beside it while in use, and its photos.
constexpr const char* kTails[] = {"", "-wal", "-shm", ".photos"};

// False too where it cannot be told, as in a folder that may not be read: what is tried next says
// so.
bool isThere(const fs::path& path) {
    std::error_code ignored;
    return fs::exists(path, ignored);
}

std::string missingText(const std::vector<std::string>& missing) {
    std::string text;
    for (const auto& sentence : missing) {
        text += "without  " + sentence + "\n";
    }
    return text;
}

// "3 photos", or nothing where there are none.
std::string andPhotos(std::size_t count) {
    return count == 0
               ? ""
               : " with " + report::countText(static_cast<std::int64_t>(count), "photo", "photos");
}

// What stands after verify, as an error; `bookHolds` where photos alone are wrong.
model::Error unsound(bool bookHolds, bool mend) {
    if (bookHolds) {
        return model::damaged(
            "the book holds, but photos are missing or damaged: copy their files back from a "
            "backup's .photos folder, or bring their folder again");
    }
    return model::damaged(mend ? "what stands above can't be rebuilt from the log: restore a "
                                 "backup, or sync with a device that has it"
                               : "the book does not add up: run 'ledgerboard verify --mend'");
}

// Whether the copied book can be used: it opens and adds up. Its photos are another matter: a book
// without some of them is still to be had back.
Done soundCopy(Session& session, const std::string& copyPath, const std::string& file) {
    auto copy = store::Book::open(copyPath, session.surroundings().random);
    if (!copy.ok()) {
        // Said of the copy; the person knows the file.
        std::string message = copy.error().message;
        if (const auto at = message.find(copyPath); at != std::string::npos) {
            message.replace(at, copyPath.size(), file);
        }
        return model::Error{copy.error().code, message};
    }
    auto report = copy.value().verify(false);
    if (!report.ok()) {
        return report.error();
    }
    if (!report.value().findings.empty()) {
        return model::damaged(file + " does not add up: " + report.value().findings.front().what);
    }
    return {};
}

// The photos of the copied book beside it, from the backup's and from those of the book that is
// there now.
model::Result<store::PhotosCopied> photosOfCopy(Session& session, const std::string& copyPath,
                                                const std::string& file,
                                                const std::string& target) {
    auto copy = store::Book::open(copyPath, session.surroundings().random);
    if (!copy.ok()) {
        return copy.error();
    }
    return store::copyPhotos(copy.value(), {store::Photos(file), store::Photos(target)},
                             store::Photos(copyPath));
}

// The restored book and its photos under their own names. Requires: nothing is there.
Done putInPlace(const std::string& aside, const std::string& target) {
    std::error_code problem;
    if (isThere(aside + ".photos")) {
        fs::rename(aside + ".photos", target + ".photos", problem);
    }
    if (!problem) {
        fs::rename(aside, target, problem);
    }
    return problem ? Done(model::damaged(target + " cannot be written: " + problem.message()))
                   : Done();
}

void removeWithTails(const std::string& path) {
    std::error_code ignored;
    for (const auto* tail : {"", "-wal", "-shm"}) {
        fs::remove(path + tail, ignored);
    }
    fs::remove_all(path + ".photos", ignored);
}

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
    auto photos = store::checkPhotos(*book.value(), store::Photos(book.value()->path()));
    if (!photos.ok()) {
        return photos.error();
    }
    auto& found = report.value().findings;
    std::size_t left = 0;
    for (const auto& finding : found) {
        left += finding.mended ? 0 : 1;
    }
    const bool bookHolds = left == 0;
    for (const auto& sentence : photos.value().wrong) {
        found.push_back({sentence, false});
        ++left;
    }
    nlohmann::json findings = nlohmann::json::array();
    std::string text;
    for (const auto& finding : found) {
        findings.push_back({{"what", finding.what}, {"mended", finding.mended}});
        text += (finding.mended ? "mended  " : "wrong   ") + finding.what + "\n";
    }
    if (session.json()) {
        session.printJson({{"entries", report.value().entries},
                           {"records", report.value().records},
                           {"photos", photos.value().checked},
                           {"findings", findings}});
    } else {
        session.print(
            text + "Read " + std::to_string(report.value().entries) + " entries, " +
            std::to_string(report.value().records) + " records and " +
            report::countText(static_cast<std::int64_t>(photos.value().checked), "photo",
                              "photos") +
            ": " +
            (left == 0 ? "all of it holds.\n" : std::to_string(left) + " findings stand.\n"));
    }
    return left > 0 ? Done(unsound(bookHolds, mend)) : Done();
}

Done verbBackup(Session& session, const std::string& file) {
    if (auto good = session.refusePast("backup", false); !good.ok()) {
        return good.error();
    }
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    const store::Photos goal(file);
    if (isThere(goal.folder())) {
        return model::cannotBeMet("there is already something at " + goal.folder().string() +
                                  ", where its photos would go: name another file");
    }
    if (auto done = book.value()->backup(file); !done.ok()) {
        return done.error();
    }
    // After the book: a picture is on disk before the book speaks of it, so none is left behind.
    auto photos = store::copyPhotos(*book.value(), {store::Photos(book.value()->path())}, goal);
    if (!photos.ok()) {
        removeWithTails(file);
        return photos.error();
    }
    const auto& missing = photos.value().missing;
    if (session.json()) {
        session.printJson(
            {{"backup", file}, {"photos", photos.value().copied}, {"without", missing}});
    } else {
        session.print(missingText(missing) + "Backed up to " + file +
                      andPhotos(photos.value().copied) +
                      (missing.empty() ? ".\n"
                                       : ", but without " + std::to_string(missing.size()) +
                                             " whose files are gone: 'ledgerboard verify' says "
                                             "what to do.\n"));
    }
    return {};
}

Done verbRestore(Session& session, const RestoreOptions& options) {
    if (auto good = session.refusePast("restore", false); !good.ok()) {
        return good.error();
    }
    const std::string target = session.bookPath();
    if (isThere(target) && !options.replace) {
        return model::cannotBeMet("there is already a book at " + target +
                                  ": add --replace to set it aside, or name another with --book");
    }
    // Tried out as a copy first, so that a bad backup costs nothing.
    const std::string aside = target + ".restoring";
    removeWithTails(aside);
    std::error_code problem;
    fs::copy_file(options.file, aside, fs::copy_options::overwrite_existing, problem);
    // A file saved while in use, or after a crash, may have its last actions beside it.
    if (!problem && isThere(options.file + "-wal")) {
        fs::copy_file(options.file + "-wal", aside + "-wal", fs::copy_options::overwrite_existing,
                      problem);
    }
    if (problem) {
        return model::cannotBeMet(options.file + " cannot be read: " + problem.message());
    }
    Done sound = soundCopy(session, aside, options.file);
    store::PhotosCopied photos;
    if (sound.ok()) {
        auto copied = photosOfCopy(session, aside, options.file, target);
        if (copied.ok()) {
            photos = std::move(copied).value();
        } else {
            sound = copied.error();
        }
    }
    // What is left without its book is set aside too: a log or photos of another book.
    const std::string before = target + ".before-restore-" + session.now().toString().substr(0, 19);
    const std::string setAside = sound.ok() && isThere(target) ? before : "";
    for (const auto* tail : kTails) {
        if (sound.ok() && isThere(target + tail)) {
            fs::rename(target + tail, before + tail, problem);
        }
    }
    if (sound.ok()) {
        sound = putInPlace(aside, target);
    }
    removeWithTails(aside);
    if (!sound.ok()) {
        // The book that was there must not be looked for in vain.
        return model::Error{sound.error().code,
                            sound.error().message + (!setAside.empty() && !isThere(target)
                                                         ? "; the book that stood there is now " +
                                                               setAside + ", rename it back"
                                                         : "")};
    }
    if (session.json()) {
        session.printJson({{"restored", target},
                           {"set_aside", setAside},
                           {"photos", photos.copied},
                           {"without", photos.missing}});
    } else {
        session.print(
            missingText(photos.missing) + "Restored " + target + " from " + options.file +
            andPhotos(photos.copied) + "." +
            (setAside.empty() ? "\n" : " The book that stood there is now " + setAside + ".\n"));
    }
    return {};
}

}  // namespace ledgerboard::cli
