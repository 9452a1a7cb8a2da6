// work deal and work cash: what a house earns and how its cash runs, from the job's fields and
// dated rows alone.
#include "core/compute/cash.h"
#include "core/compute/deal_return.h"
#include "core/compute/profit_table.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"
#include "desktop/cli/work/job_fields.h"
#include "desktop/cli/work/money_json.h"

namespace ledgerboard::work {

namespace {

using compute::CashMove;
using compute::DrawMoney;
using model::Date;
using model::Money;
using nlohmann::json;

constexpr std::string_view kTakes =
    "  job              the fields of a job, as 'list job --json' prints them\n"
    "  work             forecast of the work; where left out, the payments add up\n"
    "                   to it\n"
    "  will_finish_on   forecast finish; the job's target where left out\n"
    "  sale_on          money from the sale; finish + days to resale where left\n"
    "                   out\n"
    "  as_of            the day of looking (may be left out)\n"
    "  contingency_left for the top offer (may be left out)\n"
    "  payments         for the work: a list of {\"date\", \"amount\"}\n"
    "  draws            a list of {\"date\", \"amount\", \"fee\"}: what was or will be\n"
    "                   received, and the lender's fee for it\n"
    "  draws_known      false: the days of draws still to come are not known, and\n"
    "                   half of the rest of the work loan is charged\n";

constexpr std::string_view kDealGives =
    "  profit, margin, break-even, return on cash, what a day costs, profit at\n"
    "  other resale values and finishes, ... under the names the verb deal uses;\n"
    "  missing: what no profit can be told without; left_out: counted as nothing\n";

constexpr std::string_view kCashGives =
    "  start, end, lowest, peak_cash_in, days: on, in, out, balance, moves of each\n"
    "  day on which something moves; end less start is the deal's profit\n";

struct Input {
    model::Job job;
    compute::DealFigures figures;
    std::vector<CashMove> payments;
    std::vector<DrawMoney> draws;
};

std::optional<Date> dateIfGiven(Fields& fields, const char* key) {
    return fields.has(key) ? std::optional(fields.date(key)) : std::nullopt;
}

std::optional<Money> moneyIfGiven(Fields& fields, const char* key) {
    return fields.has(key) ? std::optional(fields.money(key)) : std::nullopt;
}

model::Result<void> readPayments(Fields& fields, Input& in) {
    const json* list = fields.has("payments") ? fields.list("payments") : nullptr;
    if (list == nullptr) {
        return {};
    }
    Money sum;
    for (const json& entry : *list) {
        Fields one(entry, "payment " + std::to_string(in.payments.size() + 1) + " in payments: ");
        const Date on = one.date("date");
        const Money amount = one.money("amount");
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        sum += amount;
        const bool isAhead = in.figures.asOf && on > *in.figures.asOf;
        in.payments.push_back({on, compute::CashKind::Work, -amount, "work", isAhead});
    }
    if (in.figures.work && *in.figures.work != sum) {
        fields.slip("work", " is " + in.figures.work->toString() + ", but the payments add up to " +
                                sum.toString() + ": leave it out, or make them agree");
    }
    in.figures.work = sum;
    return {};
}

model::Result<void> readDraws(Fields& fields, Input& in) {
    const json* list = fields.has("draws") ? fields.list("draws") : nullptr;
    if (list == nullptr) {
        return {};
    }
    for (const json& entry : *list) {
        Fields one(entry, "draw " + std::to_string(in.draws.size() + 1) + " in draws: ");
        DrawMoney draw;
        draw.on = one.date("date");
        draw.received = one.money("amount");
        draw.fee = moneyIfGiven(one, "fee").value_or(Money{});
        draw.what = "a draw";
        draw.isAhead = in.figures.asOf && draw.on > *in.figures.asOf;
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        in.draws.push_back(draw);
    }
    return {};
}

model::Result<compute::CashLine> lineOf(const json& input, Input& in) {
    Fields fields(input);
    const json* jobObject = fields.valueIfGiven("job");
    if (jobObject == nullptr) {
        fields.slip("job", " is missing: give an object with the fields of a job, in { }");
    }
    in.figures.work = moneyIfGiven(fields, "work");
    in.figures.contingencyLeft = moneyIfGiven(fields, "contingency_left");
    in.figures.willFinishOn = dateIfGiven(fields, "will_finish_on");
    in.figures.saleOn = dateIfGiven(fields, "sale_on");
    in.figures.asOf = dateIfGiven(fields, "as_of");
    if (!fields.has("draws_known") || fields.flag("draws_known")) {
        in.figures.drawsAhead.emplace();
    }
    if (auto read = readPayments(fields, in); !read.ok()) {
        return read.error();
    }
    if (auto read = readDraws(fields, in); !read.ok()) {
        return read.error();
    }
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    auto job = jobFrom(*jobObject);
    if (!job.ok()) {
        return job.error();
    }
    in.job = std::move(job).value();
    // Without payments the whole work is paid on its finish, so that the line is whole.
    if (in.payments.empty() && in.figures.work) {
        const auto finish =
            in.figures.willFinishOn ? in.figures.willFinishOn : in.job.targetFinishOn;
        const auto on = finish ? finish : in.job.purchasedOn;
        if (on) {
            in.payments.push_back({*on, compute::CashKind::Work, -*in.figures.work, "work", true});
        }
    }
    return compute::cashLineOf(in.job, in.figures, in.payments, in.draws);
}

// The figures as the line took them, so that the table says the same.
compute::DealFigures asTaken(Input in) {
    in.figures.workDraws.clear();
    std::vector<compute::DatedAmount> ahead;
    for (const DrawMoney& draw : in.draws) {
        in.figures.visitFees += draw.fee;
        const compute::DatedAmount taken{draw.on, draw.received + draw.fee};
        (draw.isAhead && in.figures.drawsAhead ? ahead : in.figures.workDraws).push_back(taken);
    }
    if (in.figures.drawsAhead) {
        in.figures.drawsAhead = ahead;
    }
    return in.figures;
}

model::Result<json> runDeal(const json& input) {
    return model::guarded([&]() -> model::Result<json> {
        Input in;
        auto line = lineOf(input, in);
        if (!line.ok()) {
            return line.error();
        }
        auto table = compute::profitTableOf(in.job, asTaken(in));
        if (!table.ok()) {
            return table.error();
        }
        return dealJson(in.job, in.figures.work, line.value().deal,
                        compute::dealReturnOf(line.value()), table.value());
    });
}

model::Result<json> runCash(const json& input) {
    return model::guarded([&]() -> model::Result<json> {
        Input in;
        auto line = lineOf(input, in);
        return line.ok() ? model::Result<json>(cashJson(line.value()))
                         : model::Result<json>(line.error());
    });
}

constexpr std::string_view kExample =
    R"({"job":{"purchase_price":"168000","purchased_on":"2026-03-20",)"
    R"("resale_likely":"332000","selling_costs":1.5,"commission":5,)"
    R"("purchase_loan":"134400","loan_rate":10.5,"cash_at_start":"60000"},)"
    R"("payments":[{"date":"2026-04-10","amount":40000},)"
    R"({"date":"2026-05-29","amount":58000}],)"
    R"("draws":[{"date":"2026-04-28","amount":36000,"fee":175}],)"
    R"("sale_on":"2026-07-12"})";

}  // namespace

Calculation cashCalculation() {
    return {"cash", "the day-by-day cash line of a house", kTakes, kCashGives, kExample, runCash};
}

Calculation dealCalculation() {
    return {"deal", "what a house earns, and what its cash earns", kTakes, kDealGives, kExample,
            runDeal};
}

}  // namespace ledgerboard::work
