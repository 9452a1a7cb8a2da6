// mark and baseline: progress, and what it is measured against.
#include <nlohmann/json.hpp>

#include "core/compute/as_of.h"
#include "core/compute/cautions.h"
#include "core/compute/progress.h"
#include "core/intake/keep/keep_baseline.h"
#include "core/report/money_text.h"

#include "desktop/cli/caution_text.h"
#include "desktop/cli/dated.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Kind;
using model::Result;

// What is said of the item: a percent, a count, or the steps done.
Result<void> readStatement(const MarkOptions& options, model::Mark& mark) {
    const int said = static_cast<int>(!options.percent.empty()) +
                     static_cast<int>(!options.count.empty()) +
                     static_cast<int>(!options.steps.empty());
    if (said != 1) {
        return model::wrongUse(
            "say one of: a PERCENT, --count N, or --step NAME (as often as steps are done)");
    }
    if (!options.percent.empty()) {
        auto percent = model::Percent::parse(options.percent);
        if (!percent.ok()) {
            return model::wrongUse("PERCENT: " + percent.error().message);
        }
        mark.percent = percent.value();
    } else if (!options.count.empty()) {
        auto count = model::Quantity::parse(options.count);
        if (!count.ok()) {
            return model::wrongUse("--count: " + count.error().message);
        }
        mark.count = count.value();
    } else {
        for (const auto& step : options.steps) {
            mark.stepsDone += (mark.stepsDone.empty() ? "" : "; ") + step;
        }
    }
    return {};
}

// Work isn't begun while a caution of its item is open. Where the caution was acknowledged only
// after the day of the mark, the mark is flagged.
Result<void> heedCautions(Session& session, model::Mark& mark, const std::string& name) {
    auto rows = session.book().value()->jobRows(mark.job);
    if (!rows.ok()) {
        return rows.error();
    }
    return model::guarded([&]() -> Result<void> {
        const auto cautions =
            compute::cautionsOf(compute::withoutVoided(std::move(rows.value())), *mark.markedOn);
        const auto open = cautions.holdingUp(mark.item);
        if (open.empty()) {
            mark.inSpiteOfCaution = compute::isInSpite(cautions, mark.item, mark.markedOn, true);
            return {};
        }
        std::string message = name + " isn't marked begun while a caution of it is open:";
        for (const auto* caution : open) {
            message += "\n  " + caution->about + ": " + caution->why + "\n    " +
                       acknowledgeCommand(session, *caution);
        }
        return model::cannotBeMet(message + "\n" + std::string(compute::kCautionReminder));
    });
}

Done tell(Session& session, const model::Mark& mark, const std::string& name,
          const std::string& percent) {
    const std::string day = mark.markedOn->toString();
    if (session.json()) {
        session.printJson({{"mark", mark.id.raw().toString()},
                           {"item", mark.item.raw().toString()},
                           {"percent", nlohmann::json::parse(percent)},
                           {"in_spite_of_caution", mark.inSpiteOfCaution},
                           {"date", day}});
        return {};
    }
    const auto today = session.today();
    const bool isAhead = today.ok() && *mark.markedOn > today.value();
    session.print(
        name + ": " + percent + " % on " + day + ".\n" +
        (mark.inSpiteOfCaution ? "Flagged: a caution of it was acknowledged only after that day.\n"
                               : "") +
        (isAhead ? "That day is still to come, and nothing counts the mark before it: 'ledgerboard "
                   "undo' takes it back.\n"
                 : ""));
    return {};
}

}  // namespace

Done verbMark(Session& session, const MarkOptions& options) {
    if (auto good = session.refusePast("mark", true); !good.ok()) {
        return good.error();
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    auto job = session.job();
    if (!job.ok()) {
        return job.error();
    }
    auto item = finder.value()->find(Kind::Item, options.item);
    if (!item.ok()) {
        return item.error();
    }
    auto day = dayOf(session, "--at", options.at);
    if (!day.ok()) {
        return day.error();
    }
    store::Book& book = *session.book().value();
    model::Mark mark;
    mark.id = book.newId<Kind::Mark>(session.now());
    mark.job = job.value();
    mark.item = model::Id<Kind::Item>(item.value());
    mark.markedOn = day.value();
    mark.by = book.meAsKept();
    mark.onDevice = book.thisDeviceAsKept();
    mark.note = options.note;
    if (auto read = readStatement(options, mark); !read.ok()) {
        return read.error();
    }
    const std::string name = finder.value()->nameOf(item.value());
    auto items = book.rows<model::Item>(job.value());
    if (!items.ok()) {
        return items.error();
    }
    std::optional<model::Percent> shown;
    for (const auto& one : items.value()) {
        if (one.id == mark.item) {
            if (auto good = compute::checkMark(one, mark, name); !good.ok()) {
                return good.error();
            }
            shown = compute::percentOf(one, mark);
        }
    }
    if (shown && *shown > model::Percent{}) {
        if (auto heeded = heedCautions(session, mark, name); !heeded.ok()) {
            return heeded.error();
        }
    }
    store::Action action("mark " + name);
    action.add(mark);
    if (auto done = book.commit(action, session.now()); !done.ok()) {
        return done.error();
    }
    return tell(session, mark, name, shown ? shown->toString() : "0");
}

Done verbBaseline(Session& session, const BaselineOptions& options) {
    if (auto good = session.refusePast("baseline", true); !good.ok()) {
        return good.error();
    }
    auto opened = session.book();
    if (!opened.ok()) {
        return opened.error();
    }
    const store::LogPosition readAt = opened.value()->position();
    auto rows = session.rows();
    if (!rows.ok()) {
        return rows.error();
    }
    auto day = dayOf(session, "--on", options.on);
    if (!day.ok()) {
        return day.error();
    }
    store::Book& book = *opened.value();
    auto kept = intake::keepBaseline(book, rows.value(), day.value(), readAt, session.now());
    if (!kept.ok()) {
        return kept.error();
    }
    if (auto done = book.commit(kept.value().action, session.now()); !done.ok()) {
        return done.error();
    }
    const compute::Frozen& frozen = kept.value().frozen;
    const model::Money total = kept.value().total;
    if (session.json()) {
        session.printJson({{"baseline", kept.value().id.raw().toString()},
                           {"date", day.value().toString()},
                           {"items", frozen.items.size()},
                           {"budget", total.toString()},
                           {"contingency", frozen.contingency.toString()},
                           {"unpriced", frozen.unpriced},
                           {"undated", frozen.undated}});
        return {};
    }
    std::string text = "Baseline of " + day.value().toString() + ": " +
                       std::to_string(frozen.items.size()) + " items, " +
                       report::centsText(total, session.script()) + ", contingency " +
                       report::centsText(frozen.contingency, session.script()) + ".\n";
    if (frozen.unpriced > 0) {
        text += std::to_string(frozen.unpriced) +
                " of them have no price and count as 0: bring prices, or set a lump sum.\n";
    }
    if (frozen.undated > 0) {
        text += std::to_string(frozen.undated) +
                " of them lack planned dates and are left out of the plan.\n";
    }
    session.print(text);
    return {};
}

}  // namespace ledgerboard::cli
