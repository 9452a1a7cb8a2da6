// Protects how `work` reads loans, returns, draws, the deal and cash: what is wrong is named by its
// key, and the deal and the cash line it prints agree. The arithmetic is checked in tests/outside
// and tests/unit/compute.
#include <cmath>
#include <gtest/gtest.h>
#include <string>

#include "desktop/cli/work/work.h"

namespace {

using ledgerboard::work::runWork;
using ledgerboard::work::workExample;
using nlohmann::json;

struct Wrong {
    const char* name;
    const char* input;
    const char* named;
};

constexpr Wrong kWrong[] = {
    {"level-payment", R"({"rate":8,"months":10})", "principal is missing"},
    {"level-payment", R"({"principal":1,"rate":8,"months":0})", "months is 0"},
    {"level-payment", R"({"principal":1,"rate":8,"months":2.5})", "whole number"},
    {"level-payment", R"({"principal":1,"rate":8,"months":2,"when":"middle"})", "when is"},
    {"level-payment", R"({"principal":1,"rate":8,"months":2,"years":2})", "unknown key \"years\""},
    {"loan-interest", R"({})", "commitment is missing"},
    {"loan-interest", R"({"commitment":1,"rate":8,"months":5,"charged_on":"all"})", "charged_on"},
    {"loan-interest",
     R"({"draws":[{"date":"2026-05-01","amount":1}],"to":"2026-04-01","rate":1,)"
     R"("basis":"actual/365"})",
     "to is before draw 1"},
    {"loan-interest",
     R"({"draws":[{"date":"2026-05-01","amount":9}],"to":"2026-06-01","rate":1,)"
     R"("basis":"actual/365","commitment":5})",
     "less than the draws"},
    {"loan-interest",
     R"({"draws":[{"date":"2026-05-01","amount":9}],"to":"2026-06-01","rate":1,)"
     R"("basis":"actual/365","charged_on":"whole"})",
     "commitment is missing"},
    {"loan-interest",
     R"({"draws":[{"date":"2026-05-01"}],"to":"2026-06-01","rate":1,"basis":"actual/365"})",
     "draw 1 in draws: amount is missing"},
    {"return", R"({})", "flows is missing"},
    {"return", R"({"periods":[1,"x"]})", "amount 2 in periods"},
    {"return", R"({"flows":[{"date":"2026-02-30","amount":1}]})", "flow 1 in flows: date"},
    {"return", R"({"periods":[-1,2],"value_at":-100})", "value_at is -100"},
    {"return", R"({"periods":[-1,2],"flows":[]})", "unknown key \"flows\""},
    {"draws", R"({"lines":[]})", "lines must be a list"},
    {"draws", R"({"lines":[{"amount":1,"allowed_percent":101}]})", "allowed_percent is 101"},
    {"draws", R"({"lines":[{"amount":1,"allowed_percent":1}],"final":"yes"})", "final must be"},
    {"draws", R"({"lines":[{"amount":-1,"allowed_percent":1}]})", "amount is -1"},
    {"deal", R"({})", "job is missing"},
    {"deal", R"({"job":[]})", "job must be an object"},
    {"deal", R"({"job":{"colour":"red"}})", "job: unknown key \"colour\""},
    {"deal", R"({"job":{"loan_rate":"-1"}})", "job: loan_rate"},
    {"deal", R"({"job":{"loan_rate":101}})", "job: loan_rate"},
    {"deal", R"({"job":{"purchase_price":{}}})", "job: purchase_price holds nothing"},
    {"deal", R"({"job":{},"work":1.005})", "work is 1.005"},
    {"cash", R"({"job":{},"payments":[{"date":"2026-01-01","amount":5}],"work":6})",
     "work is 6.00, but the payments add up to 5.00"},
    {"cash", R"({"job":{},"payments":[{"date":"2026-01-01"}]})", "payment 1 in payments"},
    {"cash", R"({"job":{},"draws":[{"date":"2026-01-01","amount":1,"note":"x"}]})",
     "unknown key \"note\""},
};

TEST(WorkMoney, RefusesNamingTheKey) {
    for (const Wrong& wrong : kWrong) {
        const auto out = runWork(wrong.name, json::parse(wrong.input));
        ASSERT_FALSE(out.ok()) << wrong.input << out.value().dump();
        EXPECT_EQ(out.error().code, ledgerboard::model::ErrorCode::WrongUse) << wrong.input;
        EXPECT_NE(out.error().message.find(wrong.named), std::string::npos) << wrong.input << "\n"
                                                                            << out.error().message;
    }
}

// No number in it is NaN or infinite: JSON would show null where a figure belongs.
void expectFigures(const json& document) {
    for (const auto& [key, value] : document.items()) {
        if (value.is_structured()) {
            expectFigures(value);
        } else if (value.is_number_float()) {
            EXPECT_TRUE(std::isfinite(value.get<double>())) << key;
        }
    }
}

// The example of both: cash ends with the start and the deal's profit.
TEST(WorkMoney, DealAndCashAgree) {
    const json input = json::parse(workExample("cash"));
    const auto cash = runWork("cash", input);
    const auto deal = runWork("deal", input);
    ASSERT_TRUE(cash.ok() && deal.ok());
    const auto cents = [](const json& value) {
        return std::llround(std::stod(value.get<std::string>()) * 100);
    };
    EXPECT_EQ(cents(cash.value().at("end")) - cents(cash.value().at("start")),
              cents(deal.value().at("profit")));
    expectFigures(cash.value());
    expectFigures(deal.value());
    EXPECT_EQ(cash.value().at("days").back().at("balance"), cash.value().at("end"));
}

// Absurd but allowed: figures stay figures.
TEST(WorkMoney, AbsurdNumbersStayFigures) {
    for (const char* input :
         {R"({"job":{"purchase_price":"0","purchased_on":"2026-01-01","resale_likely":"0"},)"
          R"("work":0,"sale_on":"2026-01-01"})",
          R"({"job":{"purchase_price":"9000000000000","purchased_on":"1700-01-01",)"
          R"("resale_likely":"1","loan_rate":100,"purchase_loan":"1"},)"
          R"("work":"0.01","sale_on":"2900-01-01"})",
          R"({"job":{}})"}) {
        for (const char* name : {"deal", "cash"}) {
            const auto out = runWork(name, json::parse(input));
            ASSERT_TRUE(out.ok()) << name << " " << input << ": " << out.error().message;
            expectFigures(out.value());
        }
    }
}

}  // namespace
