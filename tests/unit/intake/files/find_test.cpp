// Protects: a name means one record or is refused with what tells the candidates apart, and every
// name the program shows is understood again as the same record.
#include "core/intake/files/find.h"

#include <gmock/gmock.h>

#include "tests/unit/intake/files/bring_house.h"

namespace ledgerboard::intake {
namespace {

using model::Kind;
using testing::HasSubstr;
using testing::Not;

class FindTest : public BringHouse {
  protected:
    void SetUp() override {
        BringHouse::SetUp();
        buildHouse();
    }

    Finder finder() {
        auto made = Finder::open(*book_, job_);
        EXPECT_TRUE(made.ok());
        return std::move(made).value();
    }

    std::string found(Kind kind, std::string_view text) {
        const Finder f = finder();
        const auto id = f.find(kind, text);
        return id.ok() ? f.nameOf(id.value()) : "refused: " + id.error().message;
    }
};

TEST_F(FindTest, KnowsNamesWhateverTheirCase) {
    EXPECT_EQ(found(Kind::Crew, "tile CREW"), "Tile crew");
    EXPECT_EQ(found(Kind::Space, " kitchen "), "Kitchen");
    EXPECT_EQ(found(Kind::Space, "ki"), "Kitchen");
    EXPECT_EQ(found(Kind::Contract, "tile-work"), "Tile work");
    EXPECT_EQ(found(Kind::Contract, "Tile crew/Tile work"), "Tile work");
    EXPECT_EQ(found(Kind::Spend, "inv-1"), "inv-1");
    EXPECT_EQ(found(Kind::Job, "test house"), "Test house");
}

TEST_F(FindTest, KnowsItemsBySpaceAndObject) {
    EXPECT_EQ(found(Kind::Item, "kitchen/CABINETS"), "Kitchen/cabinets");
    EXPECT_EQ(found(Kind::Item, "Ki/cabinets"), "Kitchen/cabinets");
    EXPECT_EQ(found(Kind::Item, "Kitchen/replace cabinets"), "Kitchen/cabinets");
    EXPECT_EQ(found(Kind::Item, "Kitchen / wood floor"), "Kitchen/wood floor");
}

TEST_F(FindTest, TwoMatchesAreListedWithWhatTellsThemApart) {
    bringGood("scope", "Space,Treatment,Object\nKitchen,remove,cabinets\n");
    const std::string message = found(Kind::Item, "Kitchen/cabinets");
    EXPECT_THAT(message, HasSubstr("may mean 2 records"));
    EXPECT_THAT(message, HasSubstr("\"Kitchen/replace cabinets\" (id ending "));
    EXPECT_THAT(message, HasSubstr("\"Kitchen/remove cabinets\" (id ending "));
    EXPECT_EQ(found(Kind::Item, "kitchen/remove cabinets"), "Kitchen/remove cabinets");
}

TEST_F(FindTest, NoMatchSuggestsTheNearest) {
    EXPECT_THAT(found(Kind::Crew, "Tyle crew"), HasSubstr("did you mean \"Tile crew\"?"));
    EXPECT_THAT(found(Kind::Crew, "Masons"), HasSubstr("add crew"));
    EXPECT_THAT(found(Kind::Item, "cabinets"), HasSubstr("did you mean \"Kitchen/cabinets\"?"));
    EXPECT_THAT(found(Kind::Item, "Bath/cabinet"), HasSubstr("there is no scope item"));
    EXPECT_THAT(found(Kind::Alternate, "floor"), HasSubstr("nor any other yet"));
    EXPECT_THAT(found(Kind::Crew, ""), HasSubstr("there is no crew"));
}

TEST_F(FindTest, KnowsIdsByEitherEnd) {
    const auto crew = rows<model::Crew>()[0];
    const std::string hex = crew.id.raw().hex();
    EXPECT_EQ(found(Kind::Crew, hex), crew.name);
    EXPECT_EQ(found(Kind::Crew, crew.id.raw().toString()), crew.name);
    EXPECT_EQ(found(Kind::Crew, hex.substr(22)), crew.name);
    EXPECT_EQ(found(Kind::Crew, "any name at all [" + hex.substr(24) + "]"), crew.name);
    // Three digits are too few; the start of an id is the time, which two crews here share.
    EXPECT_THAT(found(Kind::Crew, hex.substr(29)), HasSubstr("refused"));
    EXPECT_THAT(found(Kind::Crew, hex.substr(0, 8)), HasSubstr("may mean 2 records"));
    EXPECT_THAT(found(Kind::Space, hex), HasSubstr("there is no space"));
}

TEST_F(FindTest, ANameGoesBeforeAnId) {
    const auto crew = rows<model::Crew>()[0];
    const std::string tail = crew.id.raw().hex().substr(26);
    bringGood("crews", "Crew\n" + tail + "\n");
    EXPECT_EQ(found(Kind::Crew, tail), tail);
}

TEST_F(FindTest, FindsAmongAllKinds) {
    const Finder f = finder();
    EXPECT_EQ(f.findAny("Bath/tub").value().first, Kind::Item);
    EXPECT_EQ(f.findAny("Tile crew").value().first, Kind::Crew);
    EXPECT_EQ(f.findAny("Bath").value().first, Kind::Space);
    bringGood("changes", "Change\nBath\n");
    const auto both = finder().findAny("bath");
    ASSERT_FALSE(both.ok());
    EXPECT_THAT(both.error().message, HasSubstr("space \"Bath\""));
    EXPECT_THAT(both.error().message, HasSubstr("change order \"Bath\""));
    EXPECT_THAT(f.findAny("Bath/tube").error().message, HasSubstr("\"Bath/tub\""));
}

TEST_F(FindTest, EveryNameShownIsUnderstoodAsTheSameRecord) {
    bringGood("scope", "Space,Treatment,Object\nKitchen,remove,cabinets\nHall,clean,sink/tap\n");
    bringGood("contracts", "Contract,Crew\nTile work,Plumbing crew\n");
    // Two records that nothing but their ids tells apart.
    store::Action action("add twins");
    for (int k = 0; k < 2; ++k) {
        model::Unknown unknown;
        unknown.id = id<Kind::Unknown>();
        unknown.job = job_;
        unknown.what = "rot under the tub";
        action.add(unknown);
    }
    commit(action);
    const Finder f = finder();
    const auto all = book_->jobRows(job_).value();
    std::size_t checked = 0;
    model::visitLists(all, [&](const auto& list) {
        for (const auto& row : list) {
            const std::string name = f.nameOf(row.id.raw());
            const auto again = f.find(row.kKind, name);
            ASSERT_TRUE(again.ok()) << name << ": " << again.error().message;
            EXPECT_EQ(again.value(), row.id.raw()) << name;
            ++checked;
        }
    });
    EXPECT_GT(checked, 15U);
}

TEST_F(FindTest, KnowsRecordsOfTheSameAction) {
    Finder f = finder();
    model::Space space;
    space.id = id<Kind::Space>();
    space.name = "Attic";
    model::Item item;
    item.id = id<Kind::Item>();
    item.space = space.id;
    item.treatment = model::Treatment::Clean;
    item.object = "joists";
    EXPECT_FALSE(f.hasName(Kind::Space, "attic"));
    f.add(space);
    f.add(item);
    EXPECT_TRUE(f.hasName(Kind::Space, "attic"));
    EXPECT_EQ(f.find(Kind::Item, "attic/joists").value(), item.id.raw());
    EXPECT_EQ(f.kindOf(item.id.raw()), Kind::Item);
}

TEST_F(FindTest, WithoutAJobKnowsWhatIsTheWholeBooks) {
    const Finder f = Finder::open(*book_, {}).value();
    EXPECT_TRUE(f.find(Kind::Crew, "Tile crew").ok());
    EXPECT_TRUE(f.find(Kind::Job, "Test house").ok());
    EXPECT_FALSE(f.find(Kind::Space, "Kitchen").ok());
}

}  // namespace
}  // namespace ledgerboard::intake
