// Protects: a thing whose material alone is open is in the book once for each material, so that
// what it costs is counted once, before the choice and after it.
#include "core/intake/keep/keep_draft.h"

#include <gmock/gmock.h>

#include "core/intake/notes/read_notes.h"
#include "core/model/value.h"

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

using model::Alternate;
using model::Item;
using model::Money;
using model::Option;
using testing::SizeIs;

class KeepDraftTest : public BringHouse {
  protected:
    KeepReport keepNotes(std::string_view notes) {
        const auto draft = readNotes(notes);
        EXPECT_TRUE(draft.ok());
        auto kept = keepDraft(*book_, job_, draft.value(), now_());
        EXPECT_TRUE(kept.ok()) << kept.error().message;
        return std::move(kept).value();
    }
};

TEST_F(KeepDraftTest, EachMaterialHasTheItemAndTheFirstIsCarried) {
    constexpr std::string_view kNotes =
        "Kitchen. New counter, quartz for 4,200 or granite for 5,000, not sure yet.";
    EXPECT_EQ(keepNotes(kNotes).items, 1U);
    ASSERT_THAT(rows<Alternate>(), SizeIs(1));
    ASSERT_THAT(rows<Option>(), SizeIs(2));
    const Alternate alternate = rows<Alternate>()[0];
    std::vector<std::pair<std::string, Money>> costs;
    for (const Option& option : rows<Option>()) {
        EXPECT_FALSE(option.cost.has_value()) << "its item says it";
        for (const Item& item : rows<Item>()) {
            if (item.option == option.id) {
                EXPECT_EQ(item.object, "countertop");
                costs.emplace_back(option.name, item.lumpSum.value_or(Money{}));
            }
        }
        EXPECT_EQ(alternate.carried == option.id, option.name == "quartz");
    }
    EXPECT_THAT(costs, testing::UnorderedElementsAre(
                           std::pair<std::string, Money>("quartz", Money::fromMinor(420'000)),
                           std::pair<std::string, Money>("granite", Money::fromMinor(500'000))));
    EXPECT_THAT(rows<Item>(), SizeIs(2)) << "and none beside them";
    EXPECT_EQ(keepNotes(kNotes).items, 0U) << "the same notes again add nothing";
    EXPECT_THAT(rows<Item>(), SizeIs(2));
}

// Kept beside its options it would count twice once one is chosen.
TEST_F(KeepDraftTest, AnItemThatIsThereAlreadyBecomesTheFirstOptions) {
    constexpr std::string_view kChoice =
        "Kitchen. New counter, quartz for 4,200 or granite for 5,000, not sure yet.";
    keepNotes("Kitchen. Replace the countertop.");
    ASSERT_THAT(rows<Item>(), SizeIs(1));
    const auto before = rows<Item>()[0].id;
    EXPECT_EQ(keepNotes(kChoice).items, 0U);
    ASSERT_THAT(rows<Item>(), SizeIs(2));
    ASSERT_THAT(rows<Alternate>(), SizeIs(1));
    for (const Item& item : rows<Item>()) {
        const bool first = item.id == before;
        EXPECT_EQ(item.option == rows<Alternate>()[0].carried, first);
        EXPECT_EQ(item.lumpSum, Money::fromMinor(first ? 420'000 : 500'000));
    }
    EXPECT_EQ(keepNotes(kChoice).alternates, 0U) << "the same notes again change nothing";
    EXPECT_THAT(rows<Item>(), SizeIs(2));
}

TEST_F(KeepDraftTest, AnItemThatIsThereAlreadyKeepsItsPrice) {
    keepNotes("Kitchen. Replace the countertop.");
    store::Action action("price it");
    action.set(rows<Item>()[0].id.raw(), model::field::Item::lumpSum,
               Money::fromMinor(390'000).minor());
    ASSERT_TRUE(book_->commit(action, now_()).ok());
    keepNotes("Kitchen. New counter, quartz for 4,200 or granite for 5,000, not sure yet.");
    for (const Item& item : rows<Item>()) {
        const bool first = item.option == rows<Alternate>()[0].carried;
        EXPECT_EQ(item.lumpSum, Money::fromMinor(first ? 390'000 : 500'000));
    }
}

// What else is done to the thing is work of its own.
TEST_F(KeepDraftTest, OtherWorkOnItIsKeptBesideTheMaterials) {
    Draft draft;
    for (const char* treatment : {"replace", "repair"}) {
        DraftItem& item = draft.items.emplace_back();
        item.space = "kitchen";
        item.treatment = treatment;
        item.object = "countertop";
    }
    DraftAlternate& open = draft.alternates.emplace_back();
    open.space = "kitchen";
    open.question = "countertop material";
    open.materialOf = "countertop";
    for (const char* material : {"quartz", "granite"}) {
        open.options.emplace_back().name = material;
    }
    ASSERT_TRUE(keepDraft(*book_, job_, draft, now_()).ok());
    std::vector<std::string> ofNone;
    for (const Item& item : rows<Item>()) {
        if (item.option.isNil()) {
            ofNone.emplace_back(model::wordOf(item.treatment));
        }
    }
    EXPECT_THAT(rows<Item>(), SizeIs(3));
    EXPECT_THAT(ofNone, testing::ElementsAre("repair"));
}

}  // namespace
}  // namespace ledgerboard::intake
