// plan: when each item is on site, its float, what to order by when; with --keep the planned dates
// of unfinished items, with --link the usual order of the trades, put into the job.
#include <nlohmann/json.hpp>

#include "core/compute/budget.h"
#include "core/compute/plan.h"
#include "core/compute/usual_order.h"
#include "core/report/money_text.h"
#include "core/report/plan_json.h"
#include "core/report/plan_text.h"

#include "desktop/cli/keep_dates.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Result;

// The plan's dates of unfinished items that have days, as their planned ones.
Result<std::size_t> keepPlan(Session& session, const model::JobRows& rows,
                             const compute::Plan& plan, model::Date today) {
    if (!plan.loop.empty() || !plan.on) {
        return model::cannotBeMet("there are no dates to keep: 'ledgerboard plan' says why");
    }
    std::vector<DatesToKeep> dates;
    for (const compute::PlanItem& item : plan.items) {
        if (item.state != compute::PlanState::Finished && item.hasDays &&
            item.line < rows.items.size()) {
            dates.push_back({item.line, *item.startOn, *item.finishOn,
                             item.state == compute::PlanState::UnderWay});
        }
    }
    return keepDates(session, rows, dates, today);
}

Done linkUsually(Session& session, const model::JobRows& rows, const compute::JobFigures& figures) {
    store::Book& book = *session.book().value();
    store::Action action("link the usual order of the trades", book.position());
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    std::string text;
    nlohmann::json made = nlohmann::json::array();
    for (model::Link link : compute::usualLinks(rows, figures)) {
        link.id = book.newId<model::Kind::Link>(session.now());
        link.job = rows.job.id;
        const std::string from = finder.value()->nameOf(link.fromItem.raw());
        const std::string to = finder.value()->nameOf(link.toItem.raw());
        action.add(link);
        text += "  " + to + " after " + from + "\n";
        made.push_back({{"from_item", from}, {"to_item", to}});
    }
    if (!action.empty()) {
        if (auto done = book.commit(action, session.now()); !done.ok()) {
            return done.error();
        }
        session.forgetRows();
    }
    if (session.json()) {
        session.printJson({{"linked", made}});
    } else if (made.empty()) {
        session.print(
            "Nothing to link: every unfinished item whose place in the usual order is "
            "known\nhas a link already, or nothing before it in its space.\n");
    } else {
        session.print("Linked, by common practice (no source):\n" + text +
                      report::countText(static_cast<std::int64_t>(made.size()), "link", "links") +
                      " as one action: 'ledgerboard undo' takes all of them back.\n");
    }
    return {};
}

void showPlan(Session& session, const model::JobRows& rows, const compute::JobFigures& figures,
              const compute::Plan& plan, model::Date today, std::optional<std::size_t> kept) {
    if (session.json()) {
        session.print(report::planJson(rows, figures, plan, today, kept));
        return;
    }
    const bool bold = session.surroundings().isTerminal && session.surroundings().unicode;
    session.print(report::planText(rows, figures, plan, today,
                                   {session.surroundings().width, session.script(), bold}));
    if (kept) {
        session.print(keptText(*kept));
    }
}

}  // namespace

Done verbPlan(Session& session, const PlanOptions& options) {
    if (saysCrews(options.crews) && options.link) {
        return model::wrongUse("--crews shows or keeps a plan: say --link without it");
    }
    if (options.keep && options.link) {
        return model::wrongUse(
            "say --keep or --link, one at a time: link first, then look, then "
            "keep");
    }
    if (options.keep || options.link) {
        const char* said = options.keep ? "plan --keep" : "plan --link";
        if (auto good = session.refusePast(said, options.keep); !good.ok()) {
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
        const compute::JobFigures figures = compute::figuresOf(rows, today);
        if (options.link) {
            return linkUsually(session, rows, figures);
        }
        if (saysCrews(options.crews)) {
            return planByCrews(session, options.crews, options.keep, rows, figures, today);
        }
        const compute::Plan plan = compute::planOf(rows, figures, today);
        std::optional<std::size_t> kept;
        if (options.keep) {
            auto written = keepPlan(session, rows, plan, today);
            if (!written.ok()) {
                return written.error();
            }
            kept = written.value();
        }
        showPlan(session, rows, figures, plan, today, kept);
        return {};
    });
}

}  // namespace ledgerboard::cli
