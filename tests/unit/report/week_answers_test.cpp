// Protects the answers to the questions of every week: thirteen in their order, each from the
// figures of the small job (worked by hand in jobs.h), and saying what to enter where it is silent.
#include "core/report/week_answers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/report/jobs.h"

namespace ledgerboard::report {
namespace {

using test::may;
using testing::HasSubstr;

std::string answer(const WeekPage& page, std::size_t number) {
    return page.answers.at(number - 1).answer;
}

TEST(WeekAnswers, ThirteenInTheirOrderFromTheSmallJob) {
    const WeekPage page = weekPage(test::smallJob(), may(15));
    ASSERT_EQ(page.answers.size(), 13U);
    EXPECT_EQ(page.answers[0].question, "Still earning?");
    EXPECT_THAT(answer(page, 1), HasSubstr("Not known: "));
    // Cabinets 300 over, tile 200 under; nothing else differs from its budget.
    EXPECT_THAT(answer(page, 6), HasSubstr("Over, and will stay so: Kitchen/cabinets 300."));
    EXPECT_THAT(answer(page, 11), HasSubstr("Cash at start"));
    EXPECT_THAT(page.answers[12].question, HasSubstr("Monday"));
}

TEST(WeekAnswers, AnEmptyJobIsAnsweredToo) {
    model::JobRows rows;
    rows.job.name = "Empty";
    const WeekPage page = weekPage(rows, may(15));
    ASSERT_EQ(page.answers.size(), 13U);
    EXPECT_EQ(answer(page, 3), "Nothing.");
    EXPECT_EQ(answer(page, 4), "Nobody is ahead. Nothing is owed.");
    EXPECT_EQ(answer(page, 5), "Nothing.");
    EXPECT_EQ(answer(page, 6), "None is over. None is early.");
    EXPECT_EQ(answer(page, 8), "None.");
    EXPECT_EQ(answer(page, 10), "Nothing.");
    EXPECT_EQ(answer(page, 12), "None.");
    EXPECT_EQ(answer(page, 13), "No crew has work planned for the week.");
}

TEST(WeekAnswers, NamesWhoWasPaidAndWhoIsAhead) {
    model::JobRows rows = test::smallJob();
    model::Crew crew;
    crew.id = model::Id<model::Kind::Crew>(rows.items[0].id.raw());
    crew.name = "Tile crew";
    rows.crews.push_back(crew);
    model::Contract contract;
    contract.id = model::Id<model::Kind::Contract>(rows.items[1].id.raw());
    contract.name = "Tile work";
    contract.crew = crew.id;
    contract.type = model::ContractKind::Subcontract;
    contract.sum = model::Money::of(2'000);
    contract.signedOn = may(1);
    rows.contracts.push_back(contract);
    rows.items[1].contract = contract.id;
    model::Spend payment;
    payment.id = model::Id<model::Kind::Spend>(rows.items[2].id.raw());
    payment.type = model::SpendKind::Payment;
    payment.spentOn = may(14);
    payment.amount = model::Money::of(1'300);
    payment.contract = contract.id;
    rows.spends.push_back(payment);
    model::Person owner;  // what an owner marked is seen
    owner.id = model::Id<model::Kind::Person>(rows.items[0].id.raw());
    owner.role = model::Role::Owner;
    rows.people.push_back(owner);
    rows.marks[1].by = owner.id;
    const WeekPage page = weekPage(rows, may(15));
    // Seen 50 % of 2,000 is 1,000: 300 ahead, 15 % of the contract.
    EXPECT_THAT(answer(page, 3),
                HasSubstr("Tile crew 1,300 (now 300 ahead of work you have seen)"));
    EXPECT_THAT(answer(page, 4), HasSubstr("Ahead: Tile work by 300, 15 % of it."));
}

}  // namespace
}  // namespace ledgerboard::report
