// draw: what can be requested from the lender now, and asking for it.
#include <nlohmann/json.hpp>

#include "core/compute/draw_ask.h"
#include "core/report/draw_text.h"
#include "core/report/money_text.h"

#include "desktop/cli/money_view.h"
#include "desktop/cli/verbs.h"
#include "desktop/cli/work/money_json.h"

namespace ledgerboard::cli {

namespace {

using model::Kind;
using model::Money;
using nlohmann::json;

json percentJson(model::Percent percent) {
    return json::parse(percent.toString());
}

json lineJson(const compute::LenderLineFigures& line) {
    json refused = nullptr;
    if (line.refused) {
        refused = {{"draw", line.refused->number ? json(*line.refused->number) : json(nullptr)},
                   {"asked", percentJson(line.refused->asked)},
                   {"allowed", percentJson(line.refused->allowed)},
                   {"why", line.refused->why}};
    }
    return {{"lender_line", line.name},
            {"amount", line.inPlace.amount.toString()},
            {"share_lent", percentJson(line.inPlace.share)},
            {"seen", percentJson(line.inPlace.allowed)},
            {"held_back", line.heldBack.toString()},
            {"paid_before", line.inPlace.paidBefore.toString()},
            {"asked_open", line.askedOpen.toString()},
            {"draw", line.draw.toString()},
            {"why_not", line.whyNot},
            {"refused_before", std::move(refused)}};
}

json drawJson(const MoneyView& view) {
    const compute::DrawsNow& now = view.plan.drawsNow;
    json lines = json::array();
    for (const compute::LenderLineFigures& line : now.lines) {
        lines.push_back(lineJson(line));
    }
    json next = nullptr;
    for (const compute::DrawAhead& draw : view.plan.drawsAhead) {
        if (draw.askOn && next.is_null()) {
            next = {{"ask_on", draw.askOn->toString()},
                    {"money_on", draw.moneyOn.toString()},
                    {"total", draw.total.toString()},
                    {"why", draw.why}};
        }
    }
    return {{"by_lender_lines", now.byLines},
            {"lines", std::move(lines)},
            {"total", now.total.toString()},
            {"fee", now.fee.toString()},
            {"net", (now.total - std::min(now.fee, now.total)).toString()},
            {"held_back", now.heldBack.toString()},
            {"paid_before", now.paidBefore.toString()},
            {"limit", work::moneyJson(now.limit)},
            {"cut_by_limit", now.cutByLimit.toString()},
            {"final", now.isFinal},
            {"items_without_lender_line", now.itemsWithoutLine},
            {"next", std::move(next)},
            {"left_out", work::absentJson(now.leftOut)}};
}

model::Result<void> checkAsk(const compute::DrawsNow& now) {
    if (!now.byLines) {
        return model::cannotBeMet(
            "a draw is asked for by the lender's lines, and there are none: 'ledgerboard draw' "
            "says "
            "how to enter them");
    }
    if (now.total == Money{}) {
        return model::cannotBeMet(
            "nothing can be requested now: 'ledgerboard draw' says why, line by line");
    }
    return {};
}

// The draw and its lines, in one action: undo takes both back.
Done ask(Session& session, const MoneyView& view, const store::LogPosition& readAt,
         model::Date day) {
    const compute::DrawsNow& now = view.plan.drawsNow;
    if (auto fine = checkAsk(now); !fine.ok()) {
        return fine.error();
    }
    store::Book& book = *session.book().value();
    compute::DrawAsk asked = compute::drawAskOf(view.rows, now, day);
    model::Draw& draw = asked.draw;
    draw.id = book.newId<Kind::Draw>(session.now());
    store::Action action("ask for draw " + std::to_string(*draw.number), readAt);
    action.add(draw);
    json lines = json::array();
    for (model::DrawLine& line : asked.lines) {
        line.id = book.newId<Kind::DrawLine>(session.now());
        line.draw = draw.id;
        action.add(line);
    }
    for (const compute::LenderLineFigures& line : now.lines) {
        if (line.draw != Money{}) {
            lines.push_back(
                {{"lender_line", line.name}, {"asked", percentJson(line.inPlace.allowed)}});
        }
    }
    if (auto done = book.commit(action, session.now()); !done.ok()) {
        return done.error();
    }
    if (session.json()) {
        session.printJson({{"draw", draw.id.raw().toString()},
                           {"number", *draw.number},
                           {"asked_on", day.toString()},
                           {"total", now.total.toString()},
                           {"lines", std::move(lines)}});
        return {};
    }
    session.print("Draw " + std::to_string(*draw.number) + " asked for on " + day.toString() +
                  ": " + report::centsText(now.total, session.script()) + " over " +
                  report::countText(static_cast<std::int64_t>(lines.size()), "line", "lines") +
                  ". Enter the visit and the money with 'ledgerboard set' when they come.\n");
    return {};
}

}  // namespace

Done verbDraw(Session& session, const DrawOptions& options) {
    if (!options.ask && !options.at.empty()) {
        return model::wrongUse("--at is the day a draw is asked for: say --ask with it");
    }
    if (options.ask) {
        if (auto good = session.refusePast("draw --ask", true); !good.ok()) {
            return good.error();
        }
    }
    return model::guarded([&]() -> Done {
        auto opened = session.book();
        if (!opened.ok()) {
            return opened.error();
        }
        const store::LogPosition readAt = opened.value()->position();
        auto view = moneyView(session);
        if (!view.ok()) {
            return view.error();
        }
        const MoneyView& all = view.value();
        if (options.ask) {
            auto day = options.at.empty() ? model::Result<model::Date>(all.today)
                                          : model::Date::parseLoose(options.at);
            if (!day.ok()) {
                return model::wrongUse("--at: " + day.error().message);
            }
            return ask(session, all, readAt, day.value());
        }
        if (session.json()) {
            session.printJson(drawJson(all));
            return {};
        }
        session.print(report::drawText(all.rows, all.plan.drawsNow, all.plan.drawsAhead, all.today,
                                       styleOf(session)));
        return {};
    });
}

}  // namespace ledgerboard::cli
