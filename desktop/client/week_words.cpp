#include "desktop/client/week_words.h"

#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Money;
using report::Against;
using report::WeekPage;

namespace {

QString joined(const QStringList& parts) {
    return parts.join(QStringLiteral(", "));
}

QString late(int days) {
    if (days == 0) {
        return WeekWords::tr("on time");
    }
    return days > 0 ? WeekWords::tr("%n working day(s) late", nullptr, days)
                    : WeekWords::tr("%n working day(s) early", nullptr, -days);
}

QString overBudget(Money over) {
    if (Said::isNothing(over)) {
        return WeekWords::tr("on budget");
    }
    return over > Money{} ? WeekWords::tr("%1 over budget").arg(Said::size(over))
                          : WeekWords::tr("%1 under budget").arg(Said::size(over));
}

QString shortOver(Money over) {
    if (Said::isNothing(over)) {
        return WeekWords::tr("on it");
    }
    return over > Money{} ? WeekWords::tr("%1 over").arg(Said::size(over))
                          : WeekWords::tr("%1 under").arg(Said::size(over));
}

QString between(const QString& low, const QString& high) {
    return WeekWords::tr("8 in 10 between %1 and %2").arg(low, high);
}

HeadLine costLine(const WeekPage& page) {
    const auto& cost = page.cost;
    HeadLine line;
    line.name = WeekWords::tr("Will cost");
    line.figure = Said::money(cost.forecast);
    line.strong = overBudget(cost.forecast - cost.budget);
    if (cost.overBefore) {
        line.rest = WeekWords::tr(", was %1").arg(shortOver(*cost.overBefore));
    } else if (cost.forecastBefore) {
        line.rest = WeekWords::tr(", was %1").arg(Said::money(*cost.forecastBefore));
    }
    if (page.spreads.cost) {
        line.spread =
            between(Said::money(page.spreads.cost->low), Said::money(page.spreads.cost->high));
    }
    return line;
}

HeadLine finishLine(const WeekPage& page) {
    const auto& finish = page.finish;
    HeadLine line;
    line.name = finish.isFinished ? WeekWords::tr("Finished") : WeekWords::tr("Will finish");
    if (!finish.on) {
        line.figure = WeekWords::tr("not known");
        line.rest = finish.hasLoop
                        ? WeekWords::tr("items wait for each other in a ring: no day can be told")
                        : WeekWords::tr("enter days or planned dates of the items to see it");
        return line;
    }
    line.figure = Said::day(*finish.on, page.today);
    if (finish.workingDaysLate) {
        line.strong = late(*finish.workingDaysLate);
    } else {
        line.rest = WeekWords::tr("no finish was planned to compare with");
    }
    if (finish.workingDaysLateBefore) {
        line.rest += WeekWords::tr(", was %1").arg(late(*finish.workingDaysLateBefore));
    } else if (finish.before) {
        line.rest += WeekWords::tr(", was %1").arg(Said::day(*finish.before, page.today));
    }
    if (page.spreads.finish) {
        line.spread = between(Said::day(page.spreads.finish->low, page.today),
                              Said::day(page.spreads.finish->high, page.today));
    }
    return line;
}

HeadLine earnLine(const WeekPage& page) {
    const auto& earn = page.earn;
    HeadLine line;
    line.name = WeekWords::tr("Will earn");
    if (!earn.profit) {
        line.figure = WeekWords::tr("not known");
        line.rest = Said::told(earn.whatIsMissing);
        return line;
    }
    line.figure = Said::money(*earn.profit);
    QStringList rest;
    if (*earn.profit < Money{}) {
        line.strong = WeekWords::tr("a loss");
        rest << QString();
    }
    if (earn.ofResale) {
        rest << WeekWords::tr("%1 of resale").arg(Said::tenths(*earn.ofResale));
    }
    if (earn.before) {
        rest << WeekWords::tr("was %1").arg(Said::money(*earn.before));
    }
    line.rest = joined(rest);
    if (!Said::isNothing(earn.dayCosts)) {
        line.rest += WeekWords::tr("; a day costs %1").arg(Said::money(earn.dayCosts));
    }
    if (page.spreads.earn) {
        line.spread =
            between(Said::money(page.spreads.earn->low), Said::money(page.spreads.earn->high));
    }
    return line;
}

HeadLine cashLine(const WeekPage& page) {
    HeadLine line;
    line.name = WeekWords::tr("Cash, lowest");
    if (!page.cash) {
        line.figure = WeekWords::tr("not known");
        line.rest = WeekWords::tr("enter “Cash at start” of the job to see it");
        return line;
    }
    const auto& cash = *page.cash;
    line.figure = Said::money(cash.lowest);
    const QString on = WeekWords::tr("on %1").arg(Said::day(cash.on, page.today));
    if (cash.lowest < Money{}) {
        line.strong = WeekWords::tr("short");
        line.rest = QLatin1Char(' ') + on;
    } else {
        line.rest = on;
    }
    if (cash.before) {
        line.rest += WeekWords::tr(", was %1").arg(Said::money(*cash.before));
    }
    QStringList ahead;
    ahead << WeekWords::tr("%1 leaves in 14 days").arg(Said::money(cash.outNext14));
    if (cash.drawOn) {
        const QString day = Said::day(*cash.drawOn, page.today);
        ahead
            << (cash.draw
                    ? WeekWords::tr("a draw of %1 lands about %2").arg(Said::money(*cash.draw), day)
                    : WeekWords::tr("a draw lands about %1").arg(day));
    }
    line.spread = ahead.join(QStringLiteral("; "));
    return line;
}

}  // namespace

std::vector<HeadLine> WeekWords::head(const WeekPage& page) {
    return {costLine(page), finishLine(page), earnLine(page), cashLine(page)};
}

QString WeekWords::title(const WeekPage& page) {
    return tr("This week, to %1").arg(Said::longDay(page.today));
}

QString WeekWords::when(const WeekPage& page) {
    QStringList parts;
    if (page.week && *page.week >= 1) {
        // Past its last week a job is not in "week 10 of 8".
        parts << (page.weeks && *page.week <= *page.weeks
                      ? tr("Week %1 of %2.").arg(*page.week).arg(*page.weeks)
                  : page.weeks ? tr("Week %1, planned for %2.").arg(*page.week).arg(*page.weeks)
                               : tr("Week %1.").arg(*page.week));
    } else if (page.week) {
        parts << tr("Work has not begun.");
    }
    if (page.since.against == Against::Nothing || !page.since.on) {
        parts << tr("No baseline yet, so nothing to compare with.");
    } else {
        const QString day = Said::day(*page.since.on, page.today);
        parts << (page.since.against == Against::Review
                      ? tr("Last review %1.").arg(day)
                      : tr("Beside the baseline of %1.").arg(day));
    }
    return parts.join(QLatin1Char(' '));
}

QString WeekWords::since(const WeekPage& page) {
    if (!page.since.on) {
        return tr("In all");
    }
    const QString day = Said::day(*page.since.on, page.today);
    return page.since.against == Against::Baseline ? tr("Since the baseline of %1").arg(day)
                                                   : tr("Since %1").arg(day);
}

QString WeekWords::level(const report::Level& level) {
    if (Said::isNothing(level.over)) {
        return tr("will cost what was budgeted");
    }
    return level.over > Money{}
               ? tr("will cost <b>%1 more</b> than budget").arg(Said::size(level.over))
               : tr("will cost <b>%1 less</b> than budget").arg(Said::size(level.over));
}

QString WeekWords::levelScale(const report::Level& level) {
    return level.endIsContingencyLeft
               ? tr("hairlines at ±2\u00a0% of budget, ends at the contingency left")
               : tr("hairlines at ±2\u00a0% of budget, ends at ±%1, for the contingency "
                    "left is less than the hairlines")
                     .arg(Said::money(level.end));
}

QString WeekWords::progress(const report::Progress& progress) {
    QStringList parts{tr("Done %1").arg(Said::percent(progress.done))};
    if (progress.planned) {
        parts << tr("planned %1").arg(Said::percent(*progress.planned));
    }
    if (progress.spent) {
        parts << tr("spent %1").arg(Said::percent(*progress.spent));
    }
    if (progress.paid) {
        parts << tr("paid %1").arg(Said::percent(*progress.paid));
    }
    return tr("%1 of budget.").arg(joined(parts));
}

QString WeekWords::asked(const WeekPage& page) {
    QStringList parts;
    if (page.outside.unsignedChanges > 0) {
        parts << tr("If the %n unsigned change(s) are signed: %1.", nullptr,
                    static_cast<int>(page.outside.unsignedChanges))
                     .arg(Said::change(page.outside.ifSigned));
    }
    if (!Said::isNothing(page.outside.unknownsExpected)) {
        parts << tr("Unknowns expected: %1.").arg(Said::change(page.outside.unknownsExpected));
    }
    return parts.join(QLatin1Char(' '));
}

QString WeekWords::contingency(const WeekPage& page) {
    if (!page.contingency) {
        return {};
    }
    const QString left = Said::money(page.contingency->left);
    const QString total = Said::money(page.contingency->total);
    return Said::isNothing(page.outside.unknownsExpected)
               ? tr("Contingency left %1 of %2.").arg(left, total)
               : tr("Contingency left %1 of %2, against unknowns of %3.")
                     .arg(left, total, Said::money(page.outside.unknownsExpected));
}

QString WeekWords::buyer(const WeekPage& page) {
    if (!page.buyer.day91On) {
        return {};
    }
    const QString day = Said::day(*page.buyer.day91On, page.today);
    if (!page.buyer.isDoublePrice || !page.buyer.day180On) {
        return tr("A buyer with a government-insured loan may sign from day 91, %1. Double the "
                  "price: no.")
            .arg(day);
    }
    return tr("A buyer with a government-insured loan may sign from day 91, %1. Double the price: "
              "yes, so a second appraisal up to %2.")
        .arg(day, Said::day(*page.buyer.day180On, page.today));
}

QString WeekWords::leftOut(const WeekPage& page) {
    const auto count = [](std::int64_t number) { return static_cast<int>(number); };
    QStringList parts;
    if (page.undated > 0) {
        parts << tr("%n item(s) without planned dates are left out of what is planned.", nullptr,
                    count(page.undated));
    }
    if (page.withoutDays > 0) {
        parts << tr("%n item(s) without days or dates take no time in the plan.", nullptr,
                    count(page.withoutDays));
    }
    if (page.unpriced > 0) {
        parts << tr("%n item(s) without a price count as nothing.", nullptr, count(page.unpriced));
    }
    if (page.spendsWithoutAmount > 0) {
        parts << tr("%n bill(s) without an amount count nowhere.", nullptr,
                    count(page.spendsWithoutAmount));
    }
    QStringList inputs;
    for (const auto& heading : page.earn.countedAsNothing) {
        inputs << Said::told(heading);
    }
    if (!inputs.isEmpty()) {
        parts << tr("Not entered, so nothing in will earn: %1.").arg(joined(inputs));
    }
    return parts.join(QLatin1Char(' '));
}

QString WeekWords::standing(const report::TradeMoney& trade) {
    const Money over = trade.amounts.forecast - trade.amounts.budgetNow;
    if (over > Money{} && !Said::isNothing(over)) {
        return tr("over %1").arg(Said::size(over));
    }
    if (trade.early > Money{} && !Said::isNothing(trade.early)) {
        return tr("early %1").arg(Said::size(trade.early));
    }
    return Said::isNothing(over) ? tr("on budget") : tr("under %1").arg(Said::size(over));
}

QString WeekWords::next(const report::NextEvent& event) {
    const QString what = Said::text(event.what);
    switch (event.kind) {
        case compute::WaitKind::Order:
            return tr("Order %1").arg(what);
        case compute::WaitKind::Delivery:
            return tr("Delivery of %1").arg(what);
        case compute::WaitKind::Decision:
            return tr("Decide: %1").arg(what);
        case compute::WaitKind::Inspection:
            return tr("Inspection: %1").arg(what);
        case compute::WaitKind::Payment:
            return tr("Pay %1").arg(what);
        case compute::WaitKind::Draw:
            return tr("%1, money expected").arg(what);
    }
    return what;
}

QString WeekWords::answer(const WeekPage& page, const report::Answer& answer) {
    // Those two are told from the head of the page.
    const bool isCash = answer.question == "Cash?";
    if (answer.question != "Done when?" && !isCash) {
        return Said::told(answer.answer);
    }
    const HeadLine line = isCash ? cashLine(page) : finishLine(page);
    const QString beside = (line.strong + line.rest).trimmed();
    QString text = line.figure;
    if (!beside.isEmpty()) {
        text += QStringLiteral(": ") + beside;
    }
    if (isCash && !line.spread.isEmpty()) {
        text += QStringLiteral("; ") + line.spread;
    }
    return text + QLatin1Char('.');
}

}  // namespace ledgerboard::desk
