// Protects: the catalog can be trusted by everything derived from it. Numbers are unique, every
// field says what it is, no two names mean the same thing, and nothing of the owner's money is
// readable by a crew lead. How: every kind and field is walked; the rules on who reads what are
// written out here a second time, by kind.
#include "core/model/catalog.h"

#include <gtest/gtest.h>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::model {
namespace {

std::string placeOf(const Field& field) {
    return std::string(infoOf(field.kind).name) + "." + std::string(field.name);
}

std::vector<const Field*> allFields() {
    std::vector<const Field*> out;
    for (const auto& info : kinds()) {
        for (const auto& field : info.fields) {
            out.push_back(&field);
        }
    }
    return out;
}

// The names a person may use for a kind.
std::vector<std::string> namesOf(const KindInfo& info) {
    std::vector<std::string> names = {std::string(info.name), std::string(info.table),
                                      std::string(info.title)};
    std::string one;
    for (const char c : std::string(info.aliases) + ",") {
        if (c == ',') {
            names.push_back(one);
            one.clear();
        } else {
            one += c;
        }
    }
    return names;
}

TEST(Catalog, NumbersAreUniqueAndFitTheirKind) {
    std::set<FieldCode> seen;
    for (const auto* field : allFields()) {
        EXPECT_TRUE(seen.insert(field->code).second) << placeOf(*field);
        EXPECT_EQ(kindOf(field->code), field->kind) << placeOf(*field);
        EXPECT_NE(field->code, goneCode(field->kind)) << placeOf(*field);
        EXPECT_EQ(fieldOf(field->code), field);
    }
    EXPECT_GT(seen.size(), 250u);
}

TEST(Catalog, StoredNumbersStayWhatTheyWere) {
    // A few that are in every book. A change here would orphan what is stored.
    EXPECT_EQ(field::Job::name, 1001);
    EXPECT_EQ(field::Item::quantity, 3007);
    EXPECT_EQ(field::Spend::job, 11001);
    EXPECT_EQ(field::Mark::percent, 15003);
    EXPECT_EQ(static_cast<int>(Kind::Note), 34);
}

TEST(Catalog, EveryFieldSaysWhatItIs) {
    for (const auto* field : allFields()) {
        EXPECT_FALSE(field->heading.empty()) << placeOf(*field);
        EXPECT_FALSE(field->says.empty()) << placeOf(*field);
    }
    for (const auto& info : kinds()) {
        EXPECT_FALSE(info.title.empty()) << info.name;
        EXPECT_FALSE(info.fields.empty()) << info.name;
    }
}

TEST(Catalog, NamesWithinAKindMeanOneField) {
    for (const auto& info : kinds()) {
        std::set<std::string_view> names;
        std::set<std::string_view> columns;
        std::set<std::string> headings;
        for (const auto& field : info.fields) {
            EXPECT_TRUE(names.insert(field.name).second) << placeOf(field);
            EXPECT_TRUE(columns.insert(field.column).second) << placeOf(field);
            EXPECT_TRUE(headings.insert(folded(field.heading)).second) << placeOf(field);
            EXPECT_EQ(fieldNamed(info.kind, field.name), &field) << placeOf(field);
            EXPECT_EQ(fieldNamed(info.kind, field.heading), &field) << placeOf(field);
        }
    }
}

TEST(Catalog, NamesOfKindsMeanOneKind) {
    std::map<std::string, Kind> owner;
    for (const auto& info : kinds()) {
        for (const auto& name : namesOf(info)) {
            const auto [at, fresh] = owner.emplace(folded(name), info.kind);
            EXPECT_EQ(at->second, info.kind) << name << " also means " << infoOf(at->second).name;
            EXPECT_EQ(kindNamed(name), info.kind) << name;
        }
    }
    EXPECT_EQ(kindNamed("Scope Items"), std::nullopt);
    EXPECT_EQ(kindNamed("PUNCH-ITEM"), Kind::Punch);
    EXPECT_EQ(kindNamed(""), std::nullopt);
}

TEST(Catalog, ColumnsCarryTheirUnit) {
    EXPECT_EQ(fieldOf(field::Job::budget)->column, "budget_cents");
    EXPECT_EQ(fieldOf(field::Item::quantity)->column, "quantity_thousandths");
    EXPECT_EQ(fieldOf(field::Job::builtYear)->name, "built_year");
}

TEST(Catalog, ReferencesNameAKindAndWordsHaveWords) {
    for (const auto* field : allFields()) {
        const bool refers = field->type == FieldType::Ref || field->type == FieldType::Refs;
        EXPECT_EQ(field->meant != Kind::None, refers) << placeOf(*field);
        EXPECT_EQ(!field->words.empty(), field->type == FieldType::Words) << placeOf(*field);
    }
}

TEST(Catalog, NoFieldOfPercentIsProgressButTheMarks) {
    // Progress is read from marks and never stored on the item.
    EXPECT_EQ(fieldNamed(Kind::Item, "percent"), nullptr);
    EXPECT_EQ(fieldNamed(Kind::Item, "progress"), nullptr);
    ASSERT_NE(fieldNamed(Kind::Mark, "percent"), nullptr);
}

TEST(Catalog, WholeKindsAreTheOwnersAlone) {
    for (const auto kind :
         {Kind::Alternate, Kind::Option, Kind::Unknown, Kind::Contract, Kind::Spend, Kind::Visit,
          Kind::Paper, Kind::Price, Kind::Review, Kind::Baseline, Kind::BaselineItem, Kind::Sale,
          Kind::Bid, Kind::Offer, Kind::Note}) {
        for (const auto& field : infoOf(kind).fields) {
            EXPECT_EQ(field.reads, Reads::Owner) << placeOf(field);
            EXPECT_EQ(field.writes, Writes::Owner) << placeOf(field);
        }
    }
}

TEST(Catalog, NoMoneyReachesACrewLead) {
    for (const auto* field : allFields()) {
        const bool money = field->type == FieldType::Money || field->type == FieldType::Amounts ||
                           field->type == FieldType::ItemAmounts;
        if (money && field->kind != Kind::Change) {  // a lead may ask for an amount; see below
            EXPECT_TRUE(field->reads == Reads::Owner || field->reads == Reads::Viewer)
                << placeOf(*field);
            EXPECT_EQ(field->writes, Writes::Owner) << placeOf(*field);
        }
    }
}

TEST(Catalog, MoneyOfAChangeIsNotReadByACrewLead) {
    for (const auto& field : infoOf(Kind::Change).fields) {
        if (field.type == FieldType::Money) {
            EXPECT_EQ(field.reads, Reads::Owner) << placeOf(field);
        }
    }
}

TEST(Catalog, OwnersFreeTextOnItemsIsTheOwnersAlone) {
    EXPECT_EQ(fieldOf(field::Item::note)->reads, Reads::Owner);
    EXPECT_EQ(fieldOf(field::Space::note)->reads, Reads::Owner);
    EXPECT_EQ(fieldOf(field::Photo::digest)->reads, Reads::Owner);
}

TEST(Catalog, FactsAreKept) {
    for (const auto kind : {Kind::Mark, Kind::Spend, Kind::Look, Kind::Review, Kind::Presence}) {
        EXPECT_TRUE(isKept(kind)) << infoOf(kind).name;
    }
    for (const auto kind : {Kind::Job, Kind::Item, Kind::Space, Kind::Punch, Kind::Price}) {
        EXPECT_FALSE(isKept(kind)) << infoOf(kind).name;
    }
}

// What is the whole book's: who works, what things cost, who is who, what the bank writes.
TEST(Catalog, RowsBelongToAJobButForAFewKinds) {
    std::set<Kind> withoutJob;
    for (const auto& info : kinds()) {
        if (jobFieldOf(info.kind) == nullptr) {
            withoutJob.insert(info.kind);
        }
    }
    EXPECT_EQ(withoutJob, (std::set<Kind>{Kind::Job, Kind::Crew, Kind::Price, Kind::Person,
                                          Kind::Device, Kind::PayeeRule, Kind::OwnWord}));
}

TEST(Catalog, RowsHaveAMemberForEveryField) {
    JobRows rows;
    std::size_t lists = 0;
    visitLists(rows, [&](auto& list) {
        using Row = typename std::remove_reference_t<decltype(list)>::value_type;
        Row row;
        std::size_t members = 0;
        visitFields(row, [&](auto&) { ++members; });
        EXPECT_EQ(members, infoOf(Row::kKind).fields.size()) << infoOf(Row::kKind).name;
        ++lists;
    });
    EXPECT_EQ(lists, kinds().size());
}

}  // namespace
}  // namespace ledgerboard::model
