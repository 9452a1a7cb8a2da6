// week and deal: the owner's pages. work: the arithmetic alone.
#include <cmath>
#include <iterator>

#include <nlohmann/json.hpp>

#include "core/compute/budget.h"
#include "core/compute/deal.h"
#include "core/compute/plan.h"
#include "core/report/deal_figures.h"
#include "core/report/money_text.h"
#include "core/report/week_json.h"
#include "core/report/week_page.h"
#include "core/report/week_terminal.h"

#include "desktop/cli/verbs.h"
#include "desktop/cli/week_pictures.h"
#include "desktop/cli/work/work.h"

namespace ledgerboard::cli {

namespace {

using model::Money;
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

struct DealLine {
    const char* key;
    const char* words;
    std::optional<Money> money;
};

std::vector<DealLine> linesOf(const model::Job& job, const compute::DealFigures& in,
                              const compute::Deal& deal) {
    return {
        {"resale", "Resale, likely", job.resaleLikely},
        {"price", "Purchase price", job.purchasePrice},
        {"buying_costs", "Buying costs", deal.buyingCosts},
        {"points", "Points", deal.points},
        {"lender_fees", "Lender fees", deal.lenderFees},
        {"interest", "Interest", deal.interest},
        {"extension_fee", "Extension fee", deal.extensionFee},
        {"holding", "Holding", deal.holding},
        {"work", "Work, forecast", in.work},
        {"selling", "Selling", deal.selling},
        {"all_in", "All in", deal.allIn},
        {"profit", "Profit, before income tax", deal.profit},
        {"profit_low", "... at the low resale", deal.profitLow},
        {"profit_high", "... at the high resale", deal.profitHigh},
        {"break_even_resale", "Break-even resale", deal.breakEvenResale},
        {"cash_at_closing", "Cash at closing", deal.cashAtClosing},
        {"day_costs", "A day costs", deal.dayCosts},
        {"rule_of_thumb_offer", "70 % of resale less work", deal.ruleOfThumbOffer},
        {"top_offer", "Top offer for the wanted profit", deal.topOffer},
    };
}

json absentJson(const std::vector<compute::AbsentInput>& inputs) {
    json list = json::array();
    for (const auto& input : inputs) {
        list.push_back(std::string(input.heading));
    }
    return list;
}

std::string absentText(const char* words, const std::vector<compute::AbsentInput>& inputs) {
    std::string text;
    for (const auto& input : inputs) {
        text += (text.empty() ? "" : ", ") + std::string(input.heading);
    }
    return text.empty() ? "" : std::string(words) + text + ".\n";
}

json decimalJson(const std::optional<double>& value) {
    return value ? json(std::round(*value * 100) / 100) : json(nullptr);
}

void printDealJson(Session& session, const std::vector<DealLine>& lines,
                   const compute::Deal& deal) {
    json document;
    for (const auto& line : lines) {
        document[line.key] = line.money ? json(line.money->toString()) : json(nullptr);
    }
    document["margin"] = decimalJson(deal.marginPercent);
    document["resale_drop_that_eats_the_profit"] = decimalJson(deal.resaleDropPercent);
    document["sale_on"] = deal.saleOn ? json(deal.saleOn->toString()) : json(nullptr);
    document["day_91_on"] = deal.day91On ? json(deal.day91On->toString()) : json(nullptr);
    document["days_held"] = deal.daysHeld ? json(*deal.daysHeld) : json(nullptr);
    document["days_to_term_end"] = deal.daysToTermEnd ? json(*deal.daysToTermEnd) : json(nullptr);
    document["missing"] = absentJson(deal.missing);
    document["left_out"] = absentJson(deal.leftOut);
    session.printJson(document);
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

Done verbDeal(Session& session) {
    auto rows = session.rows();
    if (!rows.ok()) {
        return rows.error();
    }
    auto today = session.today();
    if (!today.ok()) {
        return today.error();
    }
    return model::guarded([&]() -> Done {
        const auto figures = compute::figuresOf(rows.value(), today.value());
        const auto plan = compute::planOf(rows.value(), figures, today.value());
        const compute::DealFigures in =
            report::dealFiguresOf(rows.value(), figures, plan.on, today.value());
        auto worked = compute::deal(rows.value().job, in);
        if (!worked.ok()) {
            return worked.error();
        }
        const compute::Deal& deal = worked.value();
        const auto lines = linesOf(rows.value().job, in, deal);
        if (session.json()) {
            printDealJson(session, lines, deal);
            return {};
        }
        report::Table table{{{rows.value().job.name, false}, {"Amount", true}}, {}};
        for (const auto& line : lines) {
            if (line.money) {
                table.rows.push_back(
                    {line.words, report::centsText(*line.money, session.script())});
            }
        }
        session.printTable(table);
        std::string text;
        if (deal.marginPercent) {
            const auto basisPoints =
                static_cast<std::int64_t>(std::llround(*deal.marginPercent * 100));
            text +=
                "\nMargin " +
                report::tenthsText(model::Percent::fromBasisPoints(basisPoints), session.script()) +
                " of resale.\n";
        }
        if (deal.saleOn) {
            text += "Money from the sale by " + report::longDateText(*deal.saleOn) +
                    (deal.daysHeld ? ", " + std::to_string(*deal.daysHeld) + " days after buying"
                                   : std::string()) +
                    ".\n";
        }
        if (deal.day91On) {
            text += "Day 91, the first on which a buyer with a government-insured loan may sign: " +
                    report::longDateText(*deal.day91On) + ".\n";
        }
        text += absentText("No profit can be told without: ", deal.missing);
        text += absentText("Counted as nothing, for it was not entered: ", deal.leftOut);
        text += "The 70 % rule is common practice, no source. Before income tax.\n";
        session.print(text);
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
