// taught: what the finished work says about the price book and the crews.
#include <algorithm>
#include <memory>

#include <nlohmann/json.hpp>

#include "core/compute/as_of.h"
#include "core/compute/budget.h"
#include "core/compute/taught.h"
#include "core/report/money_text.h"

#include "desktop/cli/paragraphs.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using compute::Taught;
using compute::TaughtPrice;
using model::Kind;
using model::Money;
using model::Result;
using nlohmann::json;

// Every job of the book, as known at and as of what the session asks for.
struct Houses {
    std::vector<model::JobRows> rows;
    std::vector<compute::JobFigures> figures;
    std::size_t finishedHouses = 0;

    [[nodiscard]] std::vector<compute::TaughtHouse> all() const {
        std::vector<compute::TaughtHouse> out;
        for (std::size_t k = 0; k < rows.size(); ++k) {
            out.push_back({&rows[k], &figures[k]});
        }
        return out;
    }
};

Result<Houses> readHouses(Session& session, model::Date today) {
    auto book = session.bookToRead();
    if (!book.ok()) {
        return book.error();
    }
    auto jobs = book.value()->rows<model::Job>();
    if (!jobs.ok()) {
        return jobs.error();
    }
    Houses houses;
    for (const model::Job& job : jobs.value()) {
        auto rows = book.value()->jobRows(job.id);
        if (!rows.ok()) {
            return rows.error();
        }
        houses.rows.push_back(session.globals().asOf.empty()
                                  ? compute::withoutVoided(std::move(rows.value()))
                                  : compute::asOf(std::move(rows.value()), today));
        houses.figures.push_back(compute::figuresOf(houses.rows.back(), today));
    }
    return houses;
}

std::string count(std::size_t number, const char* one, const char* many) {
    return report::countText(static_cast<std::int64_t>(number), one, many);
}

std::string workOf(std::string_view object, model::Treatment treatment) {
    return std::string(model::wordOf(treatment)) + " " + std::string(object);
}

// "1.25" for 125.
std::string hundredths(std::int64_t value) {
    const std::string cents = std::to_string(value % 100);
    return std::to_string(value / 100) + "." + (cents.size() < 2 ? "0" : "") + cents;
}

std::string paceWords(const compute::TaughtCrew& crew) {
    const auto pace = crew.paceHundredths();
    return pace ? hundredths(*pace) : "";
}

report::Table priceTable(Session& session, const Taught& taught) {
    const auto cents = [&](Money money) { return report::centsText(money, session.script()); };
    report::Table table{{{"Work", false},
                         {"Unit", false},
                         {"Items", true},
                         {"Houses", true},
                         {"Book", true},
                         {"Billed", true},
                         {"Least to most", true}},
                        {}};
    for (const TaughtPrice& price : taught.prices) {
        table.rows.push_back(
            {workOf(price.book.object, price.book.treatment) + (price.sharedBills > 0 ? " *" : ""),
             price.book.unit, std::to_string(price.items), std::to_string(price.houses),
             cents(price.bookPerUnit), cents(price.billedPerUnit),
             cents(price.leastPerUnit) + " to " + cents(price.mostPerUnit)});
    }
    return table;
}

report::Table crewTable(Session& session, const Taught& taught) {
    const auto cents = [&](Money money) { return report::centsText(money, session.script()); };
    report::Table table{{{"Crew", false},
                         {"Items", true},
                         {"Over", true},
                         {"Budget", true},
                         {"Billed", true},
                         {"Pace", true}},
                        {}};
    for (const auto& crew : taught.crews) {
        const bool isBilled = crew.items > 0;
        table.rows.push_back({crew.name, std::to_string(crew.items), std::to_string(crew.over),
                              isBilled ? cents(crew.budget) : "",
                              isBilled ? cents(crew.billed) : "", paceWords(crew)});
    }
    return table;
}

std::string leftOut(const Taught& taught) {
    std::string text;
    const auto add = [&text](std::size_t number, const char* why) {
        if (number > 0) {
            text += (text.empty() ? "" : ", ") + std::to_string(number) + " " + why;
        }
    };
    add(taught.notBilled, "not billed");
    add(taught.notAllBilled, "not all billed");
    add(taught.withoutQuantity, "without a quantity and a price by each");
    return text.empty() ? "" : "Finished items that tell nothing: " + text + ".";
}

void printText(Session& session, const Taught& taught, std::size_t houses) {
    session.print(paragraph(session, std::to_string(taught.finished) + " of " +
                                         count(taught.items, "item is", "items are") +
                                         " finished in " + count(houses, "house", "houses") + "."));
    if (taught.isNothing()) {
        session.print(paragraph(session,
                                "Nothing is taught before something is finished and billed. Next: "
                                "ledgerboard mark SPACE/OBJECT 100, and ledgerboard bring spend "
                                "spend.csv"));
        return;
    }
    if (!taught.prices.empty()) {
        session.print("\nWhat a unit cost, all in, beside the price book\n");
        session.printTable(priceTable(session, taught));
    }
    const bool isShared =
        std::any_of(taught.prices.begin(), taught.prices.end(),
                    [](const TaughtPrice& price) { return price.sharedBills > 0; });
    if (isShared) {
        session.print(paragraph(session,
                                "* rests on a bill for a whole contract, shared out by budget: it "
                                "tells what the contract cost rather than this work."));
    }
    for (const auto& one : taught.notInBook) {
        session.print(
            paragraph(session, "Not in the price book: " + workOf(one.object, one.treatment) +
                                   ", " + report::centsText(one.billedPerUnit, session.script()) +
                                   " a unit (" + (one.unit.empty() ? "no unit" : one.unit) +
                                   ") over " + count(one.items, "item", "items") + "."));
    }
    if (!taught.crews.empty()) {
        session.print(
            "\nCrews: finished and billed work; pace is days from begun to finished over "
            "likely\ndays, idle ones too\n");
        session.printTable(crewTable(session, taught));
    }
    if (const std::string text = leftOut(taught); !text.empty()) {
        session.print("\n" + paragraph(session, text));
    }
}

// What --keep writes: one new row of the price book for each that differs, true from today on.
std::vector<model::Price> corrections(const Taught& taught, model::Date today) {
    std::vector<model::Price> out;
    for (const TaughtPrice& price : taught.prices) {
        if (price.isChanged) {
            model::Price row = price.proposed;
            row.source = "what " + count(price.houses, "house", "houses") + " taught";
            row.asOf = today;
            out.push_back(row);
        }
    }
    return out;
}

std::string partsText(Session& session, const model::Price& price) {
    const auto cents = [&](const std::optional<Money>& money) {
        return money ? report::centsText(*money, session.script()) : std::string("none");
    };
    return "material " + cents(price.material) + ", labour " + cents(price.labour) + ", low " +
           cents(price.low) + ", high " + cents(price.high) + " a " +
           (price.unit.empty() ? "unit" : price.unit);
}

std::string correctionsText(Session& session, const std::vector<model::Price>& rows, bool keep) {
    if (rows.empty()) {
        return "\nThe price book says the same: there is nothing to correct.\n";
    }
    std::string out = keep ? "\nWritten into the price book\n"
                           : "\nCorrections: sum billed over sum of quantities, split as the book "
                             "splits it\n";
    for (const model::Price& row : rows) {
        out +=
            beside(session, "  " + workOf(row.object, row.treatment), 28, partsText(session, row));
    }
    return out + (keep ? "'ledgerboard undo' takes all of it back.\n"
                       : "'ledgerboard taught --keep' writes them, with source and day.\n");
}

json documentOf(const Taught& taught, std::size_t houses, std::size_t kept) {
    const auto money = [](const std::optional<Money>& amount) {
        return amount ? json(amount->toString()) : json(nullptr);
    };
    json prices = json::array();
    for (const TaughtPrice& price : taught.prices) {
        prices.push_back({{"object", price.book.object},
                          {"treatment", std::string(model::wordOf(price.book.treatment))},
                          {"unit", price.book.unit},
                          {"items", price.items},
                          {"items_on_shared_bills", price.sharedBills},
                          {"houses", price.houses},
                          {"quantity", json::parse(price.quantity.toString())},
                          {"billed", price.billed.toString()},
                          {"book_per_unit", price.bookPerUnit.toString()},
                          {"billed_per_unit", price.billedPerUnit.toString()},
                          {"least_per_unit", price.leastPerUnit.toString()},
                          {"most_per_unit", price.mostPerUnit.toString()},
                          {"changed", price.isChanged},
                          {"material", money(price.proposed.material)},
                          {"labour", money(price.proposed.labour)},
                          {"low", money(price.proposed.low)},
                          {"high", money(price.proposed.high)}});
    }
    json missing = json::array();
    for (const auto& one : taught.notInBook) {
        missing.push_back({{"object", one.object},
                           {"treatment", std::string(model::wordOf(one.treatment))},
                           {"unit", one.unit},
                           {"items", one.items},
                           {"billed_per_unit", one.billedPerUnit.toString()}});
    }
    json crews = json::array();
    for (const auto& crew : taught.crews) {
        const std::string pace = paceWords(crew);
        crews.push_back({{"crew", crew.name},
                         {"items", crew.items},
                         {"over", crew.over},
                         {"budget", crew.budget.toString()},
                         {"billed", crew.billed.toString()},
                         {"pace", pace.empty() ? json(nullptr) : json::parse(pace)}});
    }
    return {{"houses", houses},
            {"items", taught.items},
            {"finished", taught.finished},
            {"not_billed", taught.notBilled},
            {"not_all_billed", taught.notAllBilled},
            {"without_quantity", taught.withoutQuantity},
            {"prices", std::move(prices)},
            {"not_in_price_book", std::move(missing)},
            {"crews", std::move(crews)},
            {"kept", kept}};
}

Done keepAll(Session& session, std::vector<model::Price>& rows, store::LogPosition readAt) {
    store::Book& book = *session.book().value();
    store::Action action("what the houses taught", readAt);
    for (model::Price& row : rows) {
        row.id = book.newId<Kind::Price>(session.now());
        action.add(row);
    }
    auto done = book.commit(action, session.now());
    session.forgetRows();
    return done;
}

}  // namespace

Done verbTaught(Session& session, bool keep) {
    if (keep) {
        if (auto good = session.refusePast("taught --keep", false); !good.ok()) {
            return good.error();
        }
    }
    // Says so where there is no book, no job, or a --job that is none.
    if (auto job = session.job(); !job.ok() && session.globals().job.empty()) {
        auto opened = session.bookToRead();
        auto jobs = opened.ok() ? opened.value()->rows<model::Job>()
                                : Result<std::vector<model::Job>>(opened.error());
        if (!jobs.ok() || jobs.value().empty()) {
            return job.error();
        }
    } else if (!job.ok()) {
        return job.error();
    }
    auto today = session.today();
    if (!today.ok()) {
        return today.error();
    }
    const store::LogPosition readAt =
        keep ? session.book().value()->position() : store::LogPosition{};
    return model::guarded([&]() -> Done {
        auto houses = readHouses(session, today.value());
        if (!houses.ok()) {
            return houses.error();
        }
        const Taught taught = compute::taughtBy(houses.value().all());
        const std::size_t number = houses.value().rows.size();
        std::vector<model::Price> rows = corrections(taught, today.value());
        if (keep && taught.isNothing()) {
            return model::cannotBeMet(
                "nothing is finished yet, so there is nothing to keep: mark items finished with "
                "'ledgerboard mark SPACE/OBJECT 100'");
        }
        if (keep && !rows.empty()) {
            if (auto done = keepAll(session, rows, readAt); !done.ok()) {
                return done.error();
            }
        }
        if (session.json()) {
            session.printJson(documentOf(taught, number, keep ? rows.size() : 0));
            return {};
        }
        printText(session, taught, number);
        if (!taught.prices.empty()) {
            session.print(correctionsText(session, rows, keep));
        }
        return {};
    });
}

}  // namespace ledgerboard::cli
