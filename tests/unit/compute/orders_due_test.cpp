// Protects by when goods are to be ordered: the earlier of what was planned and what the plan of
// what is left says, for items that still wait for an order. Days are worked out beside each check.
#include "core/compute/orders_due.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");  // a Friday

std::vector<std::optional<Date>> due(const SampleJob& job) {
    const JobFigures figures = figuresOf(job.rows, kToday);
    return ordersDue(job.rows, figures, planOf(job.rows, figures, kToday), Orders(job.rows));
}

TEST(OrdersDue, ComesFromThePlanWhereNoStartWasPlanned) {
    SampleJob job;
    Item& frame = job.item("framing", "5000");
    frame.daysLikely = amountOf("20");  // Mon 25 May to Fri 19 June
    Item& cabinets = job.item("cabinets", "7000");
    cabinets.daysLikely = amountOf("2");
    cabinets.leadDays = 10;
    Link& link = job.add(job.rows.links);
    link.fromItem = id<Kind::Item>(1);
    link.toItem = id<Kind::Item>(2);
    link.type = LinkKind::FinishToStart;
    // They start Mon 22 June: less 10 days on the way and 3 to look them over, Tue 9 June.
    EXPECT_EQ(due(job), (std::vector<std::optional<Date>>{{}, day("2026-06-09")}));
}

TEST(OrdersDue, IsThePlannedStartsWhereThatIsEarlier) {
    SampleJob job;
    Item& windows = job.item("windows", "3000");
    windows.leadDays = 10;
    windows.plannedStartOn = day("2026-05-28");  // less 13: 15 May, which has passed
    windows.daysLikely = amountOf("1");
    EXPECT_EQ(due(job).at(0), day("2026-05-15"));
}

// A promise without a day it was ordered on once had its lead days read though there were none.
TEST(OrdersDue, IsEmptyForWhatIsPromised) {
    SampleJob job;
    job.item("windows", "3000");
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<Kind::Item>(1);
    delivery.promisedOn = day("2026-05-25");
    EXPECT_EQ(due(job), std::vector<std::optional<Date>>(1));
}

TEST(OrdersDue, IsEmptyForWhatIsOrderedBegunOrDropped) {
    SampleJob job;
    for (const char* object : {"ordered", "begun", "kept"}) {
        job.item(object, "100").orderOn = day("2026-05-20");
    }
    Contract& order = job.contract("Order", "100", "2026-05-19");
    order.type = ContractKind::Order;
    job.rows.items[0].contract = order.id;
    job.mark(2, "2026-05-21", "10");
    job.rows.items[2].treatment = Treatment::Keep;
    EXPECT_EQ(due(job), std::vector<std::optional<Date>>(3));
}

}  // namespace
