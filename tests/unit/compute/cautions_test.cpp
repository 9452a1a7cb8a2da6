// Protects: which items raise which caution, what is open, what an acknowledgement closes, and what
// may not be begun. How: small scopes with the rows that a walk and an owner would leave; every
// rule of the table is tried with an item of its own.
#include "core/compute/cautions.h"

#include <algorithm>
#include <array>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

#include "core/compute/as_of.h"

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using model::Treatment;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using tests::amountOf;
using tests::day;
using tests::id;
using tests::SampleJob;

const model::Date kToday = day("2026-05-22");

constexpr std::array kDeferring = {"icensed",    "building office", "health office",
                                   "ocal rules", "ocal codes",      "ocal law"};

class CautionsTest : public testing::Test {
  protected:
    SampleJob job_;

    void SetUp() override {
        job_.rows.job.builtYear = 1936;
        job_.rows.people[0].name = "Wren";
        for (const char* name : {"Kitchen", "Front bedroom", "Outside"}) {
            job_.add(job_.rows.spaces).name = name;
        }
    }

    model::Item& item(std::uint32_t space, Treatment treatment, const char* object,
                      const char* trade = "") {
        model::Item& item = job_.add(job_.rows.items);
        item.space = id<Kind::Space>(space);
        item.treatment = treatment;
        item.object = object;
        item.trade = trade;
        return item;
    }

    [[nodiscard]] Cautions read() const { return cautionsOf(job_.rows, kToday); }

    // What an item raises, by name.
    [[nodiscard]] std::vector<std::string> raisedFor(std::uint32_t number) const {
        std::vector<std::string> out;
        for (const CautionRead& caution : read().all) {
            if (caution.item == id<Kind::Item>(number)) {
                out.push_back(caution.about);
            }
        }
        return out;
    }

    [[nodiscard]] CautionRead find(std::uint32_t number, const char* about) const {
        for (const CautionRead& caution : read().all) {
            if (caution.item == id<Kind::Item>(number) && caution.about == about) {
                return caution;
            }
        }
        ADD_FAILURE() << "item " << number << " raises no " << about;
        return {};
    }

    [[nodiscard]] std::vector<std::string> ofHouse() const {
        std::vector<std::string> out;
        for (const CautionRead& caution : read().all) {
            if (caution.item.isNil()) {
                out.push_back(caution.about);
            }
        }
        return out;
    }
};

TEST_F(CautionsTest, EveryRuleIsRaisedByAnItemOfItsKind) {
    struct Case {
        std::uint32_t space;
        Treatment treatment;
        const char* object;
        const char* trade;
        const char* about;
    };

    const std::vector<Case> cases = {
        {1, Treatment::Refinish, "walls", "", "lead paint"},
        {1, Treatment::Inspect, "vinyl floor", "", "asbestos"},
        {1, Treatment::Inspect, "asbestos", "", "asbestos"},
        {1, Treatment::Remove, "wall", "", "bearing wall"},
        {1, Treatment::Repair, "joists", "", "structure"},
        {1, Treatment::Replace, "fuse box", "", "electrical work"},
        {1, Treatment::Add, "bell", "electrical", "electrical work"},
        {1, Treatment::Replace, "range", "", "gas"},
        {3, Treatment::Replace, "gutters", "", "work at height"},
        {3, Treatment::Replace, "sewer line", "", "digging and sewers"},
        {1, Treatment::Add, "tile floor", "", "dust of brick, tile and stone"},
        {1, Treatment::Clean, "mildew", "", "mold or animal waste"},
        {2, Treatment::Replace, "windows", "", "way out of a room"},
        {1, Treatment::Repair, "railing", "", "stairs, rails and safety glass"},
        {1, Treatment::Refinish, "wood floor", "", "floor finishes and strippers"},
    };
    std::set<std::string> tried;
    for (const Case& one : cases) {
        item(one.space, one.treatment, one.object, one.trade);
        EXPECT_THAT(raisedFor(static_cast<std::uint32_t>(job_.rows.items.size())),
                    testing::Contains(one.about))
            << one.object;
        tried.insert(one.about);
    }
    for (const CautionRow& row : cautionRows()) {
        if (row.where == CautionWhere::Item || row.where == CautionWhere::WayOut) {
            EXPECT_TRUE(tried.contains(std::string(row.about))) << row.about << " is not tried";
        }
    }
}

TEST_F(CautionsTest, EveryRowIsWholeAndPromisesNothing) {
    for (const CautionRow& row : cautionRows()) {
        EXPECT_FALSE(row.about.empty());
        EXPECT_FALSE(row.text.empty()) << row.about;
        EXPECT_FALSE(row.source.empty()) << row.about;
        EXPECT_FALSE(row.consequence.empty()) << row.about;
        EXPECT_EQ(cautionNamed(row.about), &row) << "two rows are called " << row.about;
        const std::string text = std::string(row.text) + " " + std::string(row.consequence);
        EXPECT_THAT(text, Not(HasSubstr("is safe"))) << row.about;
        EXPECT_THAT(text, Not(HasSubstr("are safe"))) << row.about;
        // Each leaves the word to those whose it is.
        const bool defers =
            std::any_of(kDeferring.begin(), kDeferring.end(),
                        [&](const char* words) { return text.find(words) != std::string::npos; });
        EXPECT_TRUE(defers) << row.about << ": " << text;
    }
    EXPECT_THAT(std::string(kCautionReminder), HasSubstr("Reminder only"));
}

TEST_F(CautionsTest, TheYearDecidesAndAnUnknownYearCountsAsOld) {
    item(1, Treatment::Refinish, "walls");
    item(1, Treatment::Repair, "plaster");
    // 40 CFR 745.83 and 745.82: housing constructed prior to 1978.
    job_.rows.job.builtYear = 1978;
    EXPECT_THAT(raisedFor(1), IsEmpty());
    job_.rows.job.builtYear = 1977;
    EXPECT_THAT(raisedFor(1), ElementsAre("lead paint"));
    // Up to 1980 presumed to hold asbestos (from memory).
    job_.rows.job.builtYear = 1981;
    EXPECT_THAT(raisedFor(2), IsEmpty());
    job_.rows.job.builtYear = 1980;
    EXPECT_THAT(raisedFor(2), ElementsAre("asbestos"));
    job_.rows.job.builtYear.reset();
    EXPECT_THAT(raisedFor(2), ElementsAre("lead paint", "asbestos"));
    EXPECT_THAT(find(2, "lead paint").why, HasSubstr("the year it was built isn't entered"));
}

TEST_F(CautionsTest, KeptAndUncarriedItemsRaiseNothing) {
    item(1, Treatment::Keep, "gas range").hazards = "gas";
    model::Alternate& alternate = job_.add(job_.rows.alternates);
    model::Option& option = job_.add(job_.rows.options);
    option.alternate = alternate.id;
    item(1, Treatment::Remove, "wall").option = option.id;
    EXPECT_THAT(read().all, IsEmpty());
    job_.rows.alternates[0].carried = option.id;
    EXPECT_THAT(raisedFor(2), testing::Contains("bearing wall"));
}

TEST_F(CautionsTest, WordsOfHazardsAndConditionRaiseWhateverTheYear) {
    job_.rows.job.builtYear = 1999;
    item(1, Treatment::Add, "insulation").hazards = "Loose pebbles in attics may hold asbestos";
    item(1, Treatment::Repair, "subfloor").condition = "Joists rotten, mold under the tub";
    EXPECT_THAT(raisedFor(1), ElementsAre("asbestos"));
    EXPECT_THAT(find(1, "asbestos").why, HasSubstr("hazards: Loose pebbles"));
    EXPECT_THAT(raisedFor(2), ElementsAre("structure", "mold or animal waste"));
}

TEST_F(CautionsTest, WholeWordsOnly) {
    job_.rows.job.builtYear = 2001;
    item(1, Treatment::Add, "skylight");        // no light of the electrician's
    item(1, Treatment::Replace, "wall clock");  // says wall, but no wall is taken out
    item(1, Treatment::Remove, "wallpaper");
    EXPECT_THAT(raisedFor(1), ElementsAre("work at height"));
    EXPECT_THAT(raisedFor(2), IsEmpty());
    EXPECT_THAT(raisedFor(3), IsEmpty());
}

// A window in the kitchen is no way out of a bedroom; storm windows do not change the opening.
TEST_F(CautionsTest, WaysOutAreBedroomsAndBasements) {
    job_.rows.job.builtYear = 2001;
    item(1, Treatment::Replace, "windows");
    item(2, Treatment::Replace, "windows");
    item(2, Treatment::Add, "storm windows");
    EXPECT_THAT(raisedFor(1), IsEmpty());
    EXPECT_THAT(raisedFor(2), ElementsAre("way out of a room"));
    EXPECT_THAT(raisedFor(3), ElementsAre("work at height"));
    // IRC R310.1 as city copies print it.
    const std::string text(find(2, "way out of a room").text());
    EXPECT_THAT(text, HasSubstr("5.7 sq ft"));
    EXPECT_THAT(text, HasSubstr("24 in high and 20 in wide"));
    EXPECT_THAT(text, HasSubstr("44 in"));
}

TEST_F(CautionsTest, MinorWorkIsToldAndHoldsNothingUp) {
    model::Item& patch = item(1, Treatment::Repair, "trim");
    patch.quantity = amountOf("6");
    patch.unit = "sq ft";
    EXPECT_EQ(find(1, "lead paint").state, CautionState::Minor);
    EXPECT_THAT(read().holdingUp(id<Kind::Item>(1)), IsEmpty());
    patch.quantity = amountOf("6.01");
    EXPECT_EQ(find(1, "lead paint").state, CautionState::Open);
    EXPECT_EQ(read().holdingUp(id<Kind::Item>(1)).size(), 1U);
}

TEST_F(CautionsTest, AnAcknowledgementClosesWhatItNames) {
    item(1, Treatment::Replace, "range");
    item(1, Treatment::Replace, "water heater");
    model::Caution& kept = job_.add(job_.rows.cautions);
    kept.item = id<Kind::Item>(1);
    kept.about = "Gas line";  // another of its names
    kept.acknowledgedBy = id<Kind::Person>(1);
    kept.acknowledgedOn = day("2026-04-02");
    kept.testResult = "Tight at 10 inches of water";
    const CautionRead closed = find(1, "gas");
    EXPECT_EQ(closed.state, CautionState::Acknowledged);
    EXPECT_EQ(closed.acknowledgedBy, "Wren");
    EXPECT_EQ(closed.testResult, "Tight at 10 inches of water");
    EXPECT_EQ(closed.record, id<Kind::Caution>(1));
    EXPECT_EQ(find(2, "gas").state, CautionState::Open);
    EXPECT_EQ(read().openCount(), 1U);
}

TEST_F(CautionsTest, ATestResultAloneCloses) {
    item(1, Treatment::Inspect, "vinyl floor");
    model::Caution& kept = job_.add(job_.rows.cautions);
    kept.item = id<Kind::Item>(1);
    kept.about = "asbestos";
    EXPECT_EQ(find(1, "asbestos").state, CautionState::Open);
    kept.testResult = "none found, three samples";
    EXPECT_EQ(find(1, "asbestos").state, CautionState::Acknowledged);
}

// What walk notes left names no item: it stands with the house and closes nothing of an item.
TEST_F(CautionsTest, ReadFromNotesStandsWithTheHouse) {
    item(1, Treatment::Refinish, "walls");
    model::Caution& kept = job_.add(job_.rows.cautions);
    kept.about = "lead paint";
    kept.why = "In a house built before 1978 paint may hold lead.";
    kept.source = "The house is from 1936, so anything painted could be lead.";
    kept.acknowledgedOn = day("2026-04-02");
    EXPECT_THAT(ofHouse(), testing::Contains("lead paint"));
    EXPECT_EQ(find(1, "lead paint").state, CautionState::Open);
    for (const CautionRead& caution : read().all) {
        if (caution.item.isNil() && caution.about == "lead paint") {
            EXPECT_THAT(caution.readFrom, HasSubstr("from 1936"));
            EXPECT_FALSE(caution.holdsUp());
            EXPECT_EQ(caution.row, cautionNamed("lead paint"));
        }
    }
}

TEST_F(CautionsTest, AnOwnersOwnCautionHoldsItsItemUp) {
    item(1, Treatment::Add, "shelves");
    model::Caution& kept = job_.add(job_.rows.cautions);
    kept.item = id<Kind::Item>(1);
    kept.about = "beehive in the wall";
    const CautionRead own = find(1, "beehive in the wall");
    EXPECT_TRUE(own.holdsUp());
    EXPECT_EQ(own.text(), "");
    kept.acknowledgedOn = day("2026-04-02");
    EXPECT_FALSE(find(1, "beehive in the wall").holdsUp());
}

TEST_F(CautionsTest, OfTheHouse) {
    EXPECT_THAT(ofHouse(), IsEmpty());  // nothing is to be done
    item(1, Treatment::Add, "shelves");
    EXPECT_THAT(ofHouse(), ElementsAre("what buyers must be told"));
    item(1, Treatment::Replace, "electrical panel");
    EXPECT_THAT(ofHouse(), ElementsAre("permits", "smoke and carbon monoxide alarms",
                                       "what buyers must be told"));
    EXPECT_EQ(read().openCount(), 1U);  // the panel's own; the house's hold nothing up
}

TEST_F(CautionsTest, ACrewWithoutItsPapersIsNamed) {
    model::Crew& crew = job_.add(job_.rows.crews);
    crew.name = "Tile crew";
    crew.licence = "L-1";
    crew.insuredUntil = kToday;
    item(1, Treatment::Add, "shelves").crew = crew.id;
    EXPECT_THAT(ofHouse(), ElementsAre("what buyers must be told"));
    crew.insuredUntil = kToday - 1;
    EXPECT_THAT(ofHouse(), ElementsAre("crew without licence or insurance: Tile crew",
                                       "what buyers must be told"));
    crew.insuredUntil = kToday;
    crew.licence.clear();
    EXPECT_THAT(read().all[0].why, HasSubstr("no licence number"));
    model::Paper& paper = job_.add(job_.rows.papers);
    paper.type = model::PaperKind::Licence;
    paper.crew = crew.id;
    paper.receivedOn = kToday;
    EXPECT_THAT(ofHouse(), ElementsAre("what buyers must be told"));
}

TEST_F(CautionsTest, AsbestosOfTheHouseCallsForNotice) {
    model::Item& ceiling = item(1, Treatment::Replace, "ceiling");
    ceiling.quantity = amountOf("159.999");
    ceiling.unit = "sq ft";
    EXPECT_THAT(ofHouse(), Not(testing::Contains("notice of asbestos work")));
    ceiling.quantity = amountOf("160");
    EXPECT_THAT(ofHouse(), testing::Contains("notice of asbestos work"));
    ceiling.treatment = Treatment::Keep;
    EXPECT_THAT(ofHouse(), Not(testing::Contains("notice of asbestos work")));
}

TEST_F(CautionsTest, AMarkMadeInSpite) {
    item(1, Treatment::Replace, "range");
    item(1, Treatment::Add, "shelves");
    const auto range = id<Kind::Item>(1);
    EXPECT_TRUE(isInSpite(read(), range, day("2026-05-01"), true));
    EXPECT_FALSE(isInSpite(read(), range, day("2026-05-01"), false));  // a mark of 0
    EXPECT_FALSE(isInSpite(read(), id<Kind::Item>(2), day("2026-05-01"), true));
    model::Caution& kept = job_.add(job_.rows.cautions);
    kept.item = range;
    kept.about = "gas";
    kept.acknowledgedOn = day("2026-05-01");
    EXPECT_FALSE(isInSpite(read(), range, day("2026-05-01"), true));
    EXPECT_TRUE(isInSpite(read(), range, day("2026-04-30"), true));  // acknowledged afterwards
    EXPECT_FALSE(isInSpite(read(), range, std::nullopt, true));
    job_.mark(1, "2026-04-30", "10").inSpiteOfCaution = true;
    ASSERT_EQ(read().inSpite.size(), 1U);
    EXPECT_EQ(read().inSpite[0].what, "Kitchen/range");
}

// On an earlier day an acknowledgement that came later is not there yet.
TEST_F(CautionsTest, AsOfADay) {
    item(1, Treatment::Replace, "range");
    model::Caution& kept = job_.add(job_.rows.cautions);
    kept.item = id<Kind::Item>(1);
    kept.about = "gas";
    kept.testResult = "tight";
    kept.acknowledgedOn = day("2026-05-10");
    EXPECT_EQ(cautionsOf(asOf(job_.rows, day("2026-05-09")), day("2026-05-09")).openCount(), 1U);
    EXPECT_EQ(cautionsOf(asOf(job_.rows, day("2026-05-10")), day("2026-05-10")).openCount(), 0U);
}

}  // namespace
}  // namespace ledgerboard::compute
