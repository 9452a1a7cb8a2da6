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
Result<bool> keepReview(Session& session, const model::JobRows& rows, model::Date today) {
    for (const auto& review : rows.reviews) {
        if (review.reviewedOn == today) {
            return model::cannotBeMet("the review of " + today.toString() +
                                      " is kept already: a review stays as it was that day");
        }
    }
    store::Book& book = *session.book().value();
    model::Review review = report::weekReview(rows, today);
    review.id = book.newId<model::Kind::Review>(session.now());
    review.job = rows.job.id;
    store::Action action("keep the review of " + today.toString());
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
    auto rows = session.rows();
    if (!rows.ok()) {
        return rows.error();
    }
    auto today = session.today();
    if (!today.ok()) {
        return today.error();
    }
    return model::guarded([&]() -> Done {
        std::vector<report::WeekPhoto> photos;
        if (session.json()) {  // a terminal shows none
            photos = weekPictures(session, rows.value(), today.value());
        }
        const report::WeekPage page =
            report::weekPage(rows.value(), today.value(), std::move(photos));
        if (options.keep) {
            if (auto kept = keepReview(session, rows.value(), today.value()); !kept.ok()) {
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
            session.print("\nKept as the review of " + today.value().toString() + ".\n");
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
