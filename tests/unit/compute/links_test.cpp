// Protects links between items: one that names an item twice, lacks an end or closes a ring is
// refused with the names, and one that was there before is never blamed on another.
#include "core/compute/links.h"

#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::compute;
using namespace ledgerboard::tests;
using ledgerboard::model::Kind;
using ledgerboard::model::Link;

Link link(std::uint32_t number, std::uint32_t from, std::uint32_t to) {
    Link made;
    made.id = id<Kind::Link>(number);
    made.fromItem = from == 0 ? ItemId{} : id<Kind::Item>(from);
    made.toItem = to == 0 ? ItemId{} : id<Kind::Item>(to);
    return made;
}

std::string named(ItemId item) {
    return item == id<Kind::Item>(1) ? "tile" : item == id<Kind::Item>(2) ? "vanity" : "toilet";
}

std::string refusal(const Link& made, const std::vector<Link>& others) {
    const auto good = checkLink(made, others, named);
    return good.ok() ? "" : good.error().message;
}

TEST(Links, NameTwoItems) {
    EXPECT_EQ(refusal(link(1, 1, 2), {}), "");
    EXPECT_NE(refusal(link(1, 0, 2), {}).find("From is missing"), std::string::npos);
    EXPECT_NE(refusal(link(1, 1, 0), {}).find("To is missing"), std::string::npos);
    EXPECT_NE(refusal(link(1, 2, 2), {}).find("both vanity"), std::string::npos);
}

TEST(Links, ARingIsRefusedByNames) {
    const std::vector<Link> others{link(1, 1, 2), link(2, 2, 3)};
    EXPECT_NE(refusal(link(3, 3, 1), others).find("tile > vanity > toilet > tile"),
              std::string::npos)
        << refusal(link(3, 3, 1), others);
    EXPECT_EQ(refusal(link(3, 1, 3), others), "");
    // The same link turned round is looked at as it will be, not beside itself.
    EXPECT_EQ(refusal(link(2, 3, 2), others), "");
}

TEST(Links, ARingThatWasThereIsNotBlamedOnAnotherLink) {
    const std::vector<Link> ring{link(1, 1, 2), link(2, 2, 1)};
    EXPECT_EQ(refusal(link(3, 1, 3), ring), "");
    EXPECT_EQ(ringOf(ring).size(), 2U);
    EXPECT_TRUE(ringOf({}).empty());
    EXPECT_EQ(ringText({}, named), "");
}

}  // namespace
