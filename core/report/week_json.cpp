#include "core/report/week_json.h"

#include <nlohmann/json.hpp>

namespace ledgerboard::report {

namespace {

using Json = nlohmann::ordered_json;
using model::Date;
using model::Money;
using model::Percent;

Json of(Money money) {
    return money.toString();
}

Json of(Date date) {
    return date.toString();
}

Json of(Percent percent) {
    // A number with two decimals at most: basis points divide without a rest that would show.
    return static_cast<double>(percent.basisPoints()) / 100.0;
}

Json of(int number) {
    return number;
}

template <class T>
Json of(const std::optional<T>& value) {
    return value ? of(*value) : Json(nullptr);
}

Json sinceJson(const Since& since) {
    const char* what = since.against == Against::Review     ? "review"
                       : since.against == Against::Baseline ? "baseline"
                                                            : "nothing";
    return {{"against", what}, {"on", of(since.on)}};
}

Json costJson(const WillCost& cost) {
    return {{"forecast", of(cost.forecast)},
            {"budget_now", of(cost.budget)},
            {"over", of(cost.forecast - cost.budget)},
            {"forecast_before", of(cost.forecastBefore)},
            {"over_before", of(cost.overBefore)}};
}

Json finishJson(const WillFinish& finish) {
    return {{"on", of(finish.on)},
            {"planned", of(finish.planned)},
            {"working_days_late", of(finish.workingDaysLate)},
            {"before", of(finish.before)},
            {"working_days_late_before", of(finish.workingDaysLateBefore)},
            {"finished", finish.isFinished}};
}

Json earnJson(const WillEarn& earn) {
    return {{"profit", of(earn.profit)},        {"percent_of_resale", of(earn.ofResale)},
            {"profit_before", of(earn.before)}, {"a_day_costs", of(earn.dayCosts)},
            {"missing", earn.whatIsMissing},    {"counted_as_nothing", earn.countedAsNothing}};
}

Json cashJson(const std::optional<CashLow>& cash) {
    if (!cash) {
        return nullptr;
    }
    return {{"lowest", of(cash->lowest)},       {"on", of(cash->on)},
            {"before", of(cash->before)},       {"out_next_14_days", of(cash->outNext14)},
            {"next_draw_on", of(cash->drawOn)}, {"next_draw", of(cash->draw)}};
}

// Eight chances in ten that it falls between the two.
template <class T>
Json spreadJson(const std::optional<Spread<T>>& spread) {
    return spread ? Json{{"p10", of(spread->low)}, {"p90", of(spread->high)}} : Json(nullptr);
}

Json methodsJson(const Methods& methods) {
    Json rules = Json::array();
    for (const auto& rule : methods.rules) {
        rules.push_back({{"rule", rule.rule}, {"lines", rule.lines}, {"to_go", of(rule.toGo)}});
    }
    Json others = Json::array();
    for (const auto& other : methods.others) {
        others.push_back({{"method", other.method}, {"estimate", of(other.estimate)}});
    }
    return {{"to_go_by", std::move(rules)}, {"other_methods", std::move(others)}};
}

Json answersJson(const std::vector<Answer>& answers) {
    Json out = Json::array();
    for (const auto& answer : answers) {
        out.push_back({{"question", answer.question}, {"answer", answer.answer}});
    }
    return out;
}

Json levelJson(const std::optional<Level>& level) {
    if (!level) {
        return nullptr;
    }
    return {{"over", of(level->over)},
            {"hairline", of(level->hairline)},
            {"end", of(level->end)},
            {"end_is_contingency_left", level->endIsContingencyLeft}};
}

Json progressJson(const Progress& progress) {
    return {{"done_percent", of(progress.done)},
            {"planned_percent", of(progress.planned)},
            {"spent_percent", of(progress.spent)},
            {"paid_percent", of(progress.paid)}};
}

Json curveJson(const std::vector<CurvePoint>& curve) {
    Json out = Json::array();
    for (const auto& point : curve) {
        out.push_back({{"on", of(point.on)},
                       {"planned", of(point.planned)},
                       {"earned", of(point.earned)},
                       {"spent", of(point.spent)}});
    }
    return out;
}

Json moversJson(const std::optional<Movers>& movers) {
    if (!movers) {
        return nullptr;
    }
    Json largest = Json::array();
    for (const auto& mover : movers->largest) {
        largest.push_back({{"what", mover.what}, {"why", mover.why}, {"amount", of(mover.amount)}});
    }
    return {{"largest", std::move(largest)},
            {"others", of(movers->others)},
            {"others_count", movers->otherCount},
            {"total", of(movers->total)}};
}

Json amountsJson(const Amounts& amounts) {
    return {{"budget_now", of(amounts.budgetNow)},
            {"committed", of(amounts.committed)},
            {"billed", of(amounts.billed)},
            {"held", of(amounts.held)},
            {"paid", of(amounts.paid)},
            {"forecast", of(amounts.forecast)}};
}

Json tradesJson(const std::vector<TradeMoney>& trades) {
    Json out = Json::array();
    for (const auto& trade : trades) {
        Json row = {{"trade", trade.trade}};
        row.update(amountsJson(trade.amounts));
        row["over"] = of(trade.amounts.forecast - trade.amounts.budgetNow);
        row["early"] = of(trade.early);
        out.push_back(std::move(row));
    }
    return out;
}

Json roomsJson(const std::vector<RoomProgress>& rooms) {
    Json out = Json::array();
    for (const auto& room : rooms) {
        out.push_back({{"space", room.name},
                       {"short_name", room.shortName},
                       {"items", room.items},
                       {"done_percent", of(room.done)},
                       {"planned_percent", of(room.planned)},
                       {"over", of(room.over)}});
    }
    return out;
}

Json nextJson(const std::vector<NextEvent>& next) {
    Json out = Json::array();
    for (const auto& event : next) {
        out.push_back({{"kind", std::string(compute::wordsFor(event.kind))},
                       {"on", of(event.on)},
                       {"late", event.isLate},
                       {"what", event.what},
                       {"amount", of(event.amount)}});
    }
    return out;
}

Json papersJson(const std::vector<MissingPaper>& papers) {
    Json out = Json::array();
    for (const auto& paper : papers) {
        out.push_back(
            {{"what", paper.what}, {"amount", of(paper.amount)}, {"days", of(paper.days)}});
    }
    return out;
}

Json mondayJson(const std::vector<ToDo>& monday) {
    Json out = Json::array();
    for (const auto& todo : monday) {
        out.push_back({{"what", todo.what},
                       {"because", todo.because},
                       {"page", todo.page},
                       {"pressing", todo.isPressing},
                       {"barred", todo.isBarred}});
    }
    return out;
}

Json photosJson(const std::vector<WeekPhoto>& photos) {
    Json out = Json::array();
    for (const auto& photo : photos) {
        out.push_back({{"caption", photo.caption}, {"taken_on", of(photo.takenOn)}});
    }
    return out;
}

}  // namespace

std::string weekJson(const WeekPage& page) {
    Json out;
    out["job"] = {{"id", page.jobId}, {"name", page.job}, {"currency", page.currency}};
    out["today"] = of(page.today);
    out["week"] = of(page.week);
    out["weeks"] = of(page.weeks);
    out["since"] = sinceJson(page.since);
    out["will_cost"] = costJson(page.cost);
    out["will_finish"] = finishJson(page.finish);
    out["will_earn"] = earnJson(page.earn);
    out["insured_buyer"] = {{"day_91_on", of(page.buyer.day91On)},
                            {"day_180_on", of(page.buyer.day180On)},
                            {"double_price", page.buyer.isDoublePrice}};
    out["cash_lowest"] = cashJson(page.cash);
    out["spread"] = {{"will_cost", spreadJson(page.spreads.cost)},
                     {"will_finish", spreadJson(page.spreads.finish)},
                     {"will_earn", spreadJson(page.spreads.earn)}};
    out["forecast_made"] = methodsJson(page.methods);
    out["level"] = levelJson(page.level);
    out["progress"] = progressJson(page.progress);
    out["curve"] = curveJson(page.curve);
    out["movers"] = moversJson(page.movers);
    out["if_signed"] = of(page.outside.ifSigned);
    out["unsigned_changes"] = page.outside.unsignedChanges;
    out["unknowns_expected"] = of(page.outside.unknownsExpected);
    out["contingency"] = page.contingency ? Json{{"total", of(page.contingency->total)},
                                                 {"left", of(page.contingency->left)}}
                                          : Json(nullptr);
    out["by_trade"] = tradesJson(page.trades);
    out["total"] = amountsJson(page.total);
    out["by_room"] = roomsJson(page.rooms);
    out["next_14_days"] = nextJson(page.next);
    out["papers_missing"] = papersJson(page.papers);
    out["on_monday"] = mondayJson(page.monday);
    out["asked_every_week"] = answersJson(page.answers);
    out["photos"] = photosJson(page.photos);
    out["items"] = page.items;
    out["undated"] = page.undated;
    out["unpriced"] = page.unpriced;
    out["without_days"] = page.withoutDays;
    out["spends_without_amount"] = page.spendsWithoutAmount;
    return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace ledgerboard::report
