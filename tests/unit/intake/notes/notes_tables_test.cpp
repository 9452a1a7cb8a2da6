// Protects: the tables are whole: every row can be used, and they stay as broad as they are meant
// to be. How: loads them as the reader does.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

#include "core/intake/notes/names.h"
#include "core/intake/notes/tables.h"

namespace ledgerboard::intake {
namespace {

TEST(NotesTables, EveryRowCanBeUsed) {
    EXPECT_THAT(tables().faults, testing::IsEmpty());
}

TEST(NotesTables, AreBroad) {
    EXPECT_GE(tables().objects.size(), 350U);
    EXPECT_GE(tables().acts.size(), 400U);
    EXPECT_GE(tables().spaces.size(), 45U);
}

TEST(NotesTables, ObjectsKnowTheirTradeUnitAndName) {
    std::set<std::string> names;
    for (const ObjectRow& row : tables().objects) {
        EXPECT_FALSE(row.trade.empty()) << row.name;
        EXPECT_FALSE(row.unit.empty()) << row.name;
        EXPECT_TRUE(names.insert(row.name).second) << row.name << " stands twice";
    }
}

TEST(NotesTables, HazardsAreCautions) {
    std::set<std::string> keys;
    for (const CautionRow& row : tables().cautions) {
        keys.insert(row.key);
    }
    for (const ObjectRow& row : tables().objects) {
        for (const std::string& hazard : row.hazards) {
            EXPECT_TRUE(keys.contains(hazard)) << row.name << ": " << hazard;
        }
    }
}

TEST(NotesTables, UnknownNamesStayThemselves) {
    EXPECT_FALSE(isKnownObject("zither"));
    EXPECT_TRUE(isKnownObject("kitchen cabinets"));
}

}  // namespace
}  // namespace ledgerboard::intake
