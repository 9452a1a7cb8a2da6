// read and bring: walk notes and files.
#include <fstream>
#include <iterator>

#include <nlohmann/json.hpp>

#include "core/give/job_file.h"
#include "core/intake/bank/statement.h"
#include "core/intake/files/bring.h"
#include "core/intake/files/csv.h"
#include "core/intake/keep/keep_draft.h"
#include "core/intake/keep/keep_words.h"
#include "core/intake/notes/read_notes.h"
#include "core/intake/photos/bring_photos.h"
#include "core/report/money_text.h"
#include "core/report/plain_text.h"

#include "desktop/cli/draft_text.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Result;
using nlohmann::json;

// The bytes of a file, or of standard input for "-".
Result<std::string> bytesOf(Session& session, const std::string& file) {
    if (file == "-") {
        return std::string(std::istreambuf_iterator<char>(session.surroundings().in), {});
    }
    return intake::readWholeFile(file);
}

std::string keptText(const intake::KeepReport& kept) {
    const bool wrote =
        kept.spaces + kept.items + kept.alternates + kept.cautions > 0 || !kept.factsSet.empty();
    if (!wrote && kept.alreadyThere == 0 && kept.factsLeft.empty()) {
        return "Nothing to keep.\n";
    }
    std::string text =
        "Kept: " + report::countText(static_cast<std::int64_t>(kept.spaces), "space", "spaces") +
        ", " + report::countText(static_cast<std::int64_t>(kept.items), "item", "items") + ", " +
        report::countText(static_cast<std::int64_t>(kept.alternates), "alternate", "alternates") +
        ", " + report::countText(static_cast<std::int64_t>(kept.cautions), "caution", "cautions");
    text += kept.alreadyThere > 0
                ? "; " + std::to_string(kept.alreadyThere) +
                      (kept.alreadyThere == 1 ? " was" : " were") + " there already.\n"
                : ".\n";
    for (const auto& fact : kept.factsSet) {
        text += "  " + fact + "\n";
    }
    for (const auto& fact : kept.factsLeft) {
        text += "  Left: " + fact + "\n";
    }
    return text + (wrote ? "'ledgerboard undo' takes all of it out again.\n" : "");
}

json keptJson(const intake::KeepReport& kept) {
    return {{"spaces", kept.spaces},
            {"items", kept.items},
            {"alternates", kept.alternates},
            {"cautions", kept.cautions},
            {"already_there", kept.alreadyThere},
            {"facts_set", kept.factsSet},
            {"facts_left", kept.factsLeft}};
}

// The owner's words, where there is a book: notes can be looked at without one.
Result<std::vector<intake::OwnWord>> ownWords(Session& session) {
    auto book = session.bookToRead();
    return book.ok() ? intake::ownWordsOf(*book.value()) : std::vector<intake::OwnWord>();
}

}  // namespace

Done verbRead(Session& session, const ReadOptions& options) {
    if (options.keep) {
        if (auto good = session.refusePast("read --keep", false); !good.ok()) {
            return good.error();
        }
    }
    auto notes = bytesOf(session, options.file);
    if (!notes.ok()) {
        return notes.error();
    }
    intake::ReadOptions how;
    how.explain = options.explain;
    if (options.unsure) {
        how.leastSure = 0;
    }
    auto words = ownWords(session);
    if (!words.ok()) {
        return words.error();
    }
    how.ownWords = std::move(words).value();
    auto reading = intake::explainNotes(notes.value(), how);
    if (!reading.ok()) {
        return model::Error{reading.error().code, options.file + ": " + reading.error().message};
    }
    std::optional<intake::KeepReport> kept;
    if (options.keep) {
        auto book = session.book();
        if (!book.ok()) {
            return book.error();
        }
        auto job = session.job();
        if (!job.ok()) {
            return job.error();
        }
        auto report =
            intake::keepDraft(*book.value(), job.value(), reading.value().draft, session.now());
        if (!report.ok()) {
            return report.error();
        }
        kept = report.value();
    }
    if (session.json()) {
        json document = draftJson(reading.value().draft);
        if (options.explain) {
            document["explained"] = explainedJson(reading.value());
        }
        if (kept) {
            document["kept"] = keptJson(*kept);
        }
        session.printJson(document);
        return {};
    }
    if (options.explain) {
        session.print(explainedText(reading.value()));
    }
    session.print(draftText(reading.value().draft, session.surroundings().width, session.script()));
    if (kept) {
        session.print("\n" + keptText(*kept));
    } else if (!reading.value().draft.items.empty()) {
        session.print("\nNothing is kept yet: add --keep to put this draft into the job.\n");
    }
    return {};
}

namespace {

Done bringJob(Session& session, const BringOptions& options) {
    if (!options.match.empty()) {
        return model::wrongUse("--match is for CSV: a whole job has no headings to match");
    }
    auto done =
        give::bringJobFile(*session.book().value(), options.file, options.tryOnly, session.now());
    if (!done.ok()) {
        return done.error();
    }
    const auto& brought = done.value();
    if (session.json()) {
        session.printJson({{"job", brought.name},
                           {"added", brought.added},
                           {"same", brought.same},
                           {"differ", brought.differ},
                           {"photos", brought.photos},
                           {"remarks", brought.remarks},
                           {"written", !options.tryOnly && brought.added > 0}});
        return {};
    }
    for (const auto& remark : brought.remarks) {
        session.print("remark  " + remark + "\n");
    }
    session.print(brought.name + ": " + std::to_string(brought.added) + " records added with " +
                  std::to_string(brought.photos) + " photos, " + std::to_string(brought.same) +
                  " as they were" +
                  (options.tryOnly ? "; tried only, nothing is written.\n" : ".\n"));
    if (brought.differ > 0) {
        session.print(std::to_string(brought.differ) +
                      " say something else in this book, and were left as they are here.\n");
    }
    return {};
}

}  // namespace

namespace {

// Enough of a file to tell what it is; nothing of one that can't be read, which whoever reads it
// whole says.
std::string beginningOf(const std::string& path) {
    std::string bytes(intake::kBeginning, '\0');
    std::ifstream file(path, std::ios::binary);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(file.gcount()));
    return bytes;
}

}  // namespace

Done verbBring(Session& session, const BringOptions& options) {
    if (auto good = session.refusePast("bring", false); !good.ok()) {
        return good.error();
    }
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    if (model::kindNamed(options.kind) == model::Kind::Job) {
        return bringJob(session, options);
    }
    if (model::kindNamed(options.kind) == model::Kind::Spend) {
        if (intake::isBankDownload(beginningOf(options.file))) {
            return bringDownload(session, options);
        }
    }
    model::Id<model::Kind::Job> meant;
    const bool photos = model::kindNamed(options.kind) == model::Kind::Photo;
    const intake::BringKind* kind = intake::bringKindNamed(options.kind);
    if (photos || (kind != nullptr && model::jobFieldOf(kind->kind) != nullptr)) {
        auto job = session.job();
        if (!job.ok()) {
            return job.error();
        }
        meant = job.value();
    }
    intake::BringOptions how{options.match, options.tryOnly};
    const auto& instantIn = session.surroundings().instantIn;
    if (photos && instantIn) {
        const std::string zone = zoneOf(*book.value(), meant);
        how.atHouse = [&instantIn, zone](const std::string& local) {
            return instantIn(local, zone);
        };
    }
    auto report = photos
                      ? intake::bringPhotos(*book.value(), meant, options.file, how, session.now())
                      : intake::bringFile(*book.value(), meant, options.kind, options.file, how,
                                          session.now());
    if (!report.ok()) {
        return report.error();
    }
    const auto& brought = report.value();
    static constexpr const char* kOutcomes[] = {"added", "changed", "unchanged"};
    if (session.json()) {
        json lines = json::array();
        for (const auto& line : brought.lines) {
            lines.push_back({{"line", line.line},
                             {"outcome", kOutcomes[static_cast<std::size_t>(line.outcome)]},
                             {"name", line.name},
                             {"detail", line.detail}});
        }
        session.printJson({{"added", brought.added},
                           {"changed", brought.changed},
                           {"unchanged", brought.unchanged},
                           {"new_spaces", brought.newSpaces},
                           {"remarks", brought.remarks},
                           {"written", brought.written},
                           {"lines", lines}});
        return {};
    }
    std::string text;
    if (options.tryOnly) {
        for (const auto& line : brought.lines) {
            text += "line " + std::to_string(line.line) + "  " +
                    kOutcomes[static_cast<std::size_t>(line.outcome)] + "  " + line.name +
                    (line.detail.empty() ? "" : "  (" + line.detail + ")") + "\n";
        }
    }
    text += options.file + ": " + std::to_string(brought.added) + " added, " +
            std::to_string(brought.changed) + " changed, " + std::to_string(brought.unchanged) +
            " as they were" + (options.tryOnly ? "; tried only, nothing is written.\n" : ".\n");
    if (!brought.newSpaces.empty()) {
        text += "New spaces:";
        for (const auto& space : brought.newSpaces) {
            text += " " + space + (&space == &brought.newSpaces.back() ? ".\n" : ",");
        }
    }
    for (const auto& remark : brought.remarks) {
        text += remark + "\n";
    }
    session.print(text);
    return {};
}

}  // namespace ledgerboard::cli
