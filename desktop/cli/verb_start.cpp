// start: a new job, and a new book where there is none.
#include <filesystem>

#include <nlohmann/json.hpp>

#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::FieldCode;
using model::Result;

struct Setting {
    const char* option;
    const std::string& text;
    FieldCode field;
};

// Makes the book unless it is there. True where it was made now.
Result<bool> ensureBook(Session& session, const std::string& owner) {
    const std::string path = session.bookPath();
    std::error_code problem;
    if (std::filesystem::exists(path, problem)) {
        auto opened = session.book();
        return opened.ok() ? Result<bool>(false) : Result<bool>(opened.error());
    }
    auto made = store::Book::create(path, owner.empty() ? "Owner" : owner, session.now(),
                                    session.surroundings().random);
    if (!made.ok() && std::filesystem::exists(path, problem)) {
        // Another program made it in between.
        auto opened = session.book();
        return opened.ok() ? Result<bool>(false) : Result<bool>(opened.error());
    }
    return made.ok() ? Result<bool>(true) : Result<bool>(made.error());
}

}  // namespace

Done verbStart(Session& session, const StartOptions& options) {
    if (auto good = session.refusePast("start", false); !good.ok()) {
        return good.error();
    }
    const Setting settings[] = {
        {"NAME", options.name, model::field::Job::name},
        {"--built", options.built, model::field::Job::builtYear},
        {"--area", options.area, model::field::Job::livingArea},
        {"--purchase", options.purchase, model::field::Job::purchasePrice},
        {"--resale", options.resale, model::field::Job::resaleLikely},
        {"--budget", options.budget, model::field::Job::budget},
        {"--begin", options.begin, model::field::Job::beginOn},
        {"--finish", options.finish, model::field::Job::targetFinishOn},
    };
    // Read everything before anything is made.
    std::vector<std::pair<FieldCode, model::Value>> values;
    const model::FindRecord findNothing = [](model::Kind,
                                             std::string_view) -> Result<model::RawId> {
        return model::wrongUse("no record can be named here");
    };
    for (const auto& setting : settings) {
        const model::Field& field = *model::fieldOf(setting.field);
        auto value = model::parseValue(field, setting.text, findNothing);
        if (value.ok()) {
            if (auto good = model::checkValue(field, value.value()); !good.ok()) {
                value = good.error();
            }
        }
        if (!value.ok()) {
            return model::wrongUse(std::string(setting.option) + ": " + value.error().message);
        }
        if (!model::isEmpty(value.value())) {
            values.emplace_back(setting.field, value.value());
        }
    }
    if (values.empty() || values.front().first != model::field::Job::name) {
        return model::wrongUse("NAME: a job needs a name, such as its street and number");
    }
    auto made = ensureBook(session, options.owner);
    if (!made.ok()) {
        return made.error();
    }
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    const auto jobs = book.value()->rows<model::Job>();
    if (!jobs.ok()) {
        return jobs.error();
    }
    for (const auto& job : jobs.value()) {
        if (model::folded(job.name) == model::folded(options.name)) {
            return model::cannotBeMet("there is already a job \"" + job.name +
                                      "\" in the book: give this one another name");
        }
    }
    model::Job job;
    job.id = book.value()->newId<model::Kind::Job>(session.now());
    job.currency = "USD";
    job.workWeek = model::Weekdays::mondayToFriday();
    job.timeZone = session.surroundings().timeZone;
    store::Action action("start " + options.name);
    action.add(job);
    for (const auto& [field, value] : values) {
        action.set(job.id.raw(), field, value);
    }
    if (auto done = book.value()->commit(action, session.now()); !done.ok()) {
        return done.error();
    }
    if (session.json()) {
        session.printJson({{"job", job.id.raw().toString()},
                           {"name", options.name},
                           {"book", session.bookPath()},
                           {"book_made", made.value()}});
        return {};
    }
    session.print((made.value() ? "New book " + session.bookPath() + ".\n" : std::string()) +
                  "Started \"" + options.name +
                  "\".\nNext: 'ledgerboard read NOTES --keep' for walk notes, or "
                  "'ledgerboard bring scope FILE'.\n");
    return {};
}

}  // namespace ledgerboard::cli
