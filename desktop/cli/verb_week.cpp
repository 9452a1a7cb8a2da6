// week: the owner's page. work: the arithmetic alone.
#include <iterator>

#include <nlohmann/json.hpp>

#include "core/report/week_json.h"
#include "core/report/week_page.h"
#include "core/report/week_terminal.h"

#include "desktop/cli/verbs.h"
#include "desktop/cli/week_pictures.h"
#include "desktop/cli/work/work.h"

namespace ledgerboard::cli {

namespace {

using model::Result;
using nlohmann::json;

// Keeps this week's figures, for the next review to stand beside. True where one was written.
Result<bool> keepReview(Session& session, const model::JobRows& rows, model::Review review) {
    const std::string day = review.reviewedOn->toString();
    for (const auto& kept : rows.reviews) {
        if (kept.reviewedOn == review.reviewedOn) {
            return model::cannotBeMet("the review of " + day +
                                      " is kept already: a review stays as it was that day");
        }
    }
    store::Book& book = *session.book().value();
    review.id = book.newId<model::Kind::Review>(session.now());
    store::Action action("keep the review of " + day);
    action.add(review);
    auto done = book.commit(action, session.now());
    return done.ok() ? Result<bool>(true) : Result<bool>(done.error());
}

}  // namespace

Done verbWeek(Session& session, const WeekOptions& options) {
    if (options.keep) {
        if (auto good = session.refusePast("week --keep", true); !good.ok()) {
            return good.error();
        }
    }
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    const model::JobRows& rows = job.value().rows;
    const model::Date today = job.value().today;
    return model::guarded([&]() -> Done {
        std::vector<report::WeekPhoto> photos;
        if (session.json()) {  // a terminal shows none
            photos = report::weekPictures(rows, today, pictureSource(session, rows.job.timeZone));
        }
        const report::WeekPage page = report::weekPage(rows, today, std::move(photos));
        if (options.keep) {
            if (auto kept = keepReview(session, rows, page.review); !kept.ok()) {
                return kept.error();
            }
        }
        if (session.json()) {
            session.print(report::weekJson(page));
            return {};
        }
        const bool bold = session.surroundings().isTerminal && session.surroundings().unicode;
        session.print(
            report::weekText(page, {session.surroundings().width, session.script(), bold}));
        if (options.keep) {
            session.print("\nKept as the review of " + today.toString() + ".\n");
        }
        return {};
    });
}

Done verbWork(Session& session, const std::string& name) {
    const std::string text(std::istreambuf_iterator<char>(session.surroundings().in), {});
    json input = json::parse(text, nullptr, false);
    if (input.is_discarded()) {
        // Asked again for the place: the message of the parser names it.
        std::string where;
        try {
            input = json::parse(text);
        } catch (const json::parse_error& error) {
            where = "byte " + std::to_string(error.byte);
        } catch (const json::exception&) {  // the one other: a number beyond what can be held
            where = "a number that is too large";
        }
        return model::wrongUse("standard input is not JSON (at " + where + "): 'ledgerboard work " +
                               name + " --help' shows an example");
    }
    const auto stopwatch = [&session] {
        return static_cast<double>(session.surroundings().now().milliseconds()) / 1000;
    };
    auto output = work::runWork(name, input, stopwatch);
    if (!output.ok()) {
        return output.error();
    }
    session.printJson(output.value());
    return {};
}

}  // namespace ledgerboard::cli
