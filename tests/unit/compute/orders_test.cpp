// Protects by when goods are to be ordered, whether they were, and when they come. Days are worked
// out beside each check.
#include "core/compute/orders.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

TEST(Orders, OrderByIsTheEarlierOfPlanAndLead) {
    Item item;
    EXPECT_FALSE(orderBy(item, 3));
    item.plannedStartOn = day("2026-05-11");
    EXPECT_FALSE(orderBy(item, 3));  // nothing to wait for
    item.leadDays = 30;
    EXPECT_EQ(orderBy(item, 3), day("2026-04-08"));
    item.orderOn = day("2026-04-20");
    EXPECT_EQ(orderBy(item, 3), day("2026-04-08"));
    item.orderOn = day("2026-04-01");
    EXPECT_EQ(orderBy(item, 3), day("2026-04-01"));
}

TEST(Orders, ComesWhenPromisedElseByItsLead) {
    SampleJob job;
    Item& item = job.item("windows", "3000");
    item.contract = id<Kind::Contract>(1);
    item.leadDays = 30;
    EXPECT_FALSE(Orders(job.rows).comesOn(item));
    job.contract("Windows", "3000", "2026-04-29").type = ContractKind::Order;
    EXPECT_EQ(Orders(job.rows).comesOn(item), day("2026-05-29"));
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = item.id;
    delivery.promisedOn = day("2026-06-02");
    EXPECT_EQ(Orders(job.rows).comesOn(item), day("2026-06-02"));
    delivery.arrivedOn = day("2026-06-01");
    EXPECT_FALSE(Orders(job.rows).comesOn(item));
    EXPECT_TRUE(Orders(job.rows).hasArrived(item));
}

}  // namespace
