// Protects: what a person writes into a field is what is kept, what is kept prints so that it reads
// back, and nothing of the wrong form enters the log. How: a text and the expected cell for each
// type, every field of the catalog there and back, and wrong values of every form.
#include "core/model/value.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

#include "core/model/check.h"
#include "core/model/decimal.h"

namespace ledgerboard::model {
namespace {

RawId idOf(std::uint8_t last) {
    std::array<std::uint8_t, RawId::kBytes> bytes{};
    bytes[15] = last;
    return RawId(bytes);
}

// A book of 255 records of every kind, each named by its number.
Result<RawId> find(Kind, std::string_view text) {
    const auto number = parseDecimal(text, 0);
    if (!number.ok() || number.value() < 1 || number.value() > 255) {
        return cannotBeMet("no record " + std::string(text));
    }
    return idOf(static_cast<std::uint8_t>(number.value()));
}

std::string name(RawId id) {
    return std::to_string(id.bytes()[15]);
}

const Field& fieldOfType(FieldType type) {
    for (const auto& info : kinds()) {
        for (const auto& field : info.fields) {
            if (field.type == type) {
                return field;
            }
        }
    }
    require(false, "every type stands somewhere in the catalog");
    return kinds()[0].fields[0];
}

Value read(FieldType type, std::string_view text) {
    const auto value = parseValue(fieldOfType(type), text, find);
    EXPECT_TRUE(value.ok()) << text << ": " << (value.ok() ? "" : value.error().message);
    return value.ok() ? value.value() : Value{};
}

// Read, then printed: what a person sees after writing `text`.
std::string again(FieldType type, std::string_view text) {
    return printValue(fieldOfType(type), read(type, text), name);
}

std::string messageOf(const Field& field, std::string_view text) {
    const auto value = parseValue(field, text, find);
    return value.ok() ? "accepted" : value.error().message;
}

constexpr FieldType kAllTypes[] = {
    FieldType::Text,     FieldType::Flag,    FieldType::Count,       FieldType::Money,
    FieldType::Quantity, FieldType::Percent, FieldType::Date,        FieldType::Instant,
    FieldType::Weekdays, FieldType::Words,   FieldType::Ref,         FieldType::Refs,
    FieldType::Amounts,  FieldType::Steps,   FieldType::ItemAmounts, FieldType::Dates};

TEST(Value, CellsHoldWhatTheCatalogSays) {
    EXPECT_EQ(read(FieldType::Text, " two words "), Value{std::string("two words")});
    EXPECT_EQ(read(FieldType::Flag, "yes"), Value{std::int64_t{1}});
    EXPECT_EQ(read(FieldType::Flag, "No"), Value{std::int64_t{0}});
    EXPECT_EQ(read(FieldType::Count, "1,926"), Value{std::int64_t{1926}});
    EXPECT_EQ(read(FieldType::Money, "$12.50"), Value{std::int64_t{1250}});
    EXPECT_EQ(read(FieldType::Quantity, "4.25"), Value{std::int64_t{4250}});
    EXPECT_EQ(read(FieldType::Percent, "12.5 %"), Value{std::int64_t{1250}});
    EXPECT_EQ(read(FieldType::Date, "1970-01-11"), Value{std::int64_t{10}});
    EXPECT_EQ(read(FieldType::Instant, "1970-01-01T00:00:01Z"), Value{std::int64_t{1000}});
    EXPECT_EQ(read(FieldType::Weekdays, "Mon-Fri"), Value{std::int64_t{31}});
    EXPECT_EQ(read(FieldType::Ref, "7"), Value{idOf(7)});
    EXPECT_EQ(read(FieldType::Dates, "1970-01-02; 1970-01-03"), Value{std::string("[1,2]")});
    EXPECT_EQ(read(FieldType::Amounts, "taxes 210; insurance 95.50"),
              Value{std::string(R"([["taxes",21000],["insurance",9550]])")});
    EXPECT_EQ(read(FieldType::Steps, "prep 20; set=60; grout 20%"),
              Value{std::string(R"([["prep",2000],["set",6000],["grout",2000]])")});
    EXPECT_EQ(read(FieldType::ItemAmounts, "7=12.50"),
              Value{std::string(R"([["00000000-0000-0000-0000-000000000007",1250]])")});
    EXPECT_EQ(read(FieldType::Refs, "1; 2"),
              Value{std::string(R"(["00000000-0000-0000-0000-000000000001",)"
                                R"("00000000-0000-0000-0000-000000000002"])")});
}

TEST(Value, EmptyTextIsNoValueInEveryField) {
    for (const auto type : kAllTypes) {
        EXPECT_TRUE(isEmpty(read(type, "  ")));
        EXPECT_EQ(printValue(fieldOfType(type), Value{}, name), "");
        EXPECT_TRUE(checkValue(fieldOfType(type), Value{}).ok());
    }
}

TEST(Value, PrintsForPeople) {
    EXPECT_EQ(again(FieldType::Flag, "x"), "yes");
    EXPECT_EQ(again(FieldType::Money, "(12.5)"), "-12.50");
    EXPECT_EQ(again(FieldType::Percent, "72.50"), "72.5");
    EXPECT_EQ(again(FieldType::Date, "May 15, 2026"), "2026-05-15");
    EXPECT_EQ(again(FieldType::Amounts, "taxes 210;insurance=95.5"),
              "taxes 210.00; insurance 95.50");
    EXPECT_EQ(again(FieldType::ItemAmounts, "7 12.5; 8 1"), "7=12.50; 8=1.00");
    EXPECT_EQ(again(FieldType::Refs, "3;4"), "3; 4");
    EXPECT_EQ(again(FieldType::Dates, "2026-05-25; 3 July 2026"), "2026-05-25; 2026-07-03");
}

TEST(Value, WordsForgiveCaseSpacesAndHyphens) {
    const Field& measure = *fieldOf(field::Item::measure);
    const auto value = parseValue(measure, "Half-and-Half", find);
    ASSERT_TRUE(value.ok());
    EXPECT_EQ(value.value(), Value{std::string("half and half")});
    EXPECT_THAT(
        messageOf(measure, "guesswork"),
        testing::AllOf(testing::HasSubstr("guesswork"), testing::HasSubstr("none or done")));
}

TEST(Value, MessagesSayWhatToWrite) {
    EXPECT_THAT(messageOf(fieldOfType(FieldType::Flag), "perhaps"),
                testing::HasSubstr("yes nor no"));
    EXPECT_THAT(messageOf(fieldOfType(FieldType::Amounts), "210"), testing::HasSubstr("taxes 210"));
    EXPECT_THAT(messageOf(fieldOfType(FieldType::Amounts), "taxes much"),
                testing::HasSubstr("much"));
    EXPECT_THAT(messageOf(fieldOfType(FieldType::ItemAmounts), "999=5"), testing::HasSubstr("999"));
    EXPECT_THAT(messageOf(fieldOfType(FieldType::Refs), "1; none"), testing::HasSubstr("none"));
    EXPECT_THAT(messageOf(fieldOfType(FieldType::Dates), "5/6/2026"),
                testing::HasSubstr("two diff"));
    EXPECT_THAT(messageOf(fieldOfType(FieldType::Text), "caf\xE9"), testing::HasSubstr("UTF-8"));
    EXPECT_THAT(messageOf(fieldOfType(FieldType::Amounts), "caf\xE9 5"),
                testing::HasSubstr("UTF-8"));
}

// A text that each type accepts.
std::string sampleOf(const Field& field) {
    switch (field.type) {
        case FieldType::Text:
            return "north wall";
        case FieldType::Flag:
            return "yes";
        case FieldType::Count:
            return field.unit == "year" ? "1936" : "12";
        case FieldType::Money:
            return "1250.50";
        case FieldType::Quantity:
            return "4.25";
        case FieldType::Percent:
            return "12.5";
        case FieldType::Date:
            return "2026-05-15";
        case FieldType::Instant:
            return "2026-05-15T12:00:00.250Z";
        case FieldType::Weekdays:
            return "Mon Tue Sat";
        case FieldType::Words:
            return std::string(field.words.back());
        case FieldType::Ref:
            return "9";
        case FieldType::Refs:
            return "9; 10";
        case FieldType::Amounts:
            return "taxes 210.00; yard care 95.50";
        case FieldType::Steps:
            return "prep 20; set 80";
        case FieldType::ItemAmounts:
            return "9=12.50; 10=1.00";
        case FieldType::Dates:
            return "2026-05-25; 2026-07-03";
    }
    return "";
}

TEST(Value, EveryFieldReadsPrintsAndPassesItsCheck) {
    for (const auto& info : kinds()) {
        for (const auto& field : info.fields) {
            const std::string text = sampleOf(field);
            const auto value = parseValue(field, text, find);
            ASSERT_TRUE(value.ok()) << info.name << "." << field.name << value.error().message;
            EXPECT_EQ(printValue(field, value.value(), name), text) << info.name << field.name;
            EXPECT_TRUE(checkValue(field, value.value()).ok()) << info.name << field.name;
        }
    }
}

// A slip of a digit would take the cautions of old houses away.
TEST(Value, AYearIsOneThatAHouseCanHave) {
    const Field& built = *fieldOf(field::Job::builtYear);
    for (const char* text : {"1600", "1936", "2999"}) {
        EXPECT_TRUE(parseValue(built, text, find).ok()) << text;
    }
    for (const char* text : {"0", "58", "1599", "3000", "19588", "-1936", "1936.5", "old"}) {
        EXPECT_FALSE(parseValue(built, text, find).ok()) << text;
    }
}

TEST(Value, EveryMemberOfEveryRowGoesThereAndBack) {
    JobRows rows;
    visitLists(rows, [](auto& list) {
        using Row = typename std::remove_reference_t<decltype(list)>::value_type;
        Row row;
        const auto fields = infoOf(Row::kKind).fields;
        std::size_t k = 0;
        visitFields(row, [&](auto& member) {
            const Field& field = fields[k++];
            const auto value = parseValue(field, sampleOf(field), find);
            ASSERT_TRUE(value.ok());
            readMember(value.value(), member);
            EXPECT_EQ(valueOf(member), value.value()) << field.heading;
            std::remove_reference_t<decltype(member)> empty{};
            readMember(Value{}, member);
            EXPECT_EQ(member, empty) << field.heading;
        });
        EXPECT_EQ(k, fields.size());
    });
}

TEST(Value, AWrongFormReadsAsEmpty) {
    std::optional<Money> money = Money::of(1);
    readMember(Value{std::string("12")}, money);
    EXPECT_EQ(money, std::nullopt);
    std::vector<NamedAmount> amounts = {{"x", Money::of(1)}};
    readMember(Value{std::string("no list")}, amounts);
    EXPECT_TRUE(amounts.empty());
    Treatment treatment = Treatment::Keep;
    readMember(Value{std::string("a word of tomorrow")}, treatment);
    EXPECT_EQ(treatment, Treatment::Unset);
    Id<Kind::Job> job(idOf(4));
    readMember(Value{std::int64_t{4}}, job);
    EXPECT_TRUE(job.isNil());
}

// Which of the forms a cell can have each type takes.
TEST(Value, TheCheckTakesEachTypesFormAlone) {
    for (const auto type : kAllTypes) {
        const Field& field = fieldOfType(type);
        const bool integer = type == FieldType::Flag || type == FieldType::Count ||
                             type == FieldType::Money || type == FieldType::Quantity ||
                             type == FieldType::Percent || type == FieldType::Date ||
                             type == FieldType::Instant || type == FieldType::Weekdays;
        EXPECT_EQ(checkValue(field, Value{std::int64_t{1}}).ok(), integer) << field.heading;
        EXPECT_EQ(checkValue(field, Value{std::string("plain text")}).ok(), type == FieldType::Text)
            << field.heading;
        EXPECT_EQ(checkValue(field, Value{idOf(1)}).ok(), type == FieldType::Ref) << field.heading;
    }
}

TEST(Value, TheCheckKnowsTheRanges) {
    const auto good = [](FieldType type, std::int64_t units) {
        return checkValue(fieldOfType(type), Value{units}).ok();
    };
    EXPECT_FALSE(good(FieldType::Flag, 2));
    EXPECT_TRUE(good(FieldType::Weekdays, 127));
    EXPECT_FALSE(good(FieldType::Weekdays, 128));
    EXPECT_FALSE(good(FieldType::Weekdays, 0));
    EXPECT_TRUE(good(FieldType::Money, 1'000'000'000'000'000));
    EXPECT_FALSE(good(FieldType::Money, 1'000'000'000'000'001));
    EXPECT_FALSE(good(FieldType::Money, std::numeric_limits<std::int64_t>::min()));
    const std::int64_t first = Date::fromYmd(1600, 1, 1).value().days();
    const std::int64_t last = Date::fromYmd(2999, 12, 31).value().days();
    EXPECT_TRUE(good(FieldType::Date, first));
    EXPECT_FALSE(good(FieldType::Date, first - 1));
    EXPECT_TRUE(good(FieldType::Date, last));
    EXPECT_FALSE(good(FieldType::Date, last + 1));
    EXPECT_TRUE(good(FieldType::Instant, first * 86'400'000));
    EXPECT_FALSE(good(FieldType::Instant, first * 86'400'000 - 1));
    EXPECT_FALSE(good(FieldType::Instant, std::numeric_limits<std::int64_t>::max()));
}

TEST(Value, TheCheckLooksIntoTexts) {
    const auto good = [](FieldType type, std::string text) {
        return checkValue(fieldOfType(type), Value{std::move(text)}).ok();
    };
    EXPECT_FALSE(good(FieldType::Text, ""));
    EXPECT_TRUE(good(FieldType::Text, std::string(100'000, 'a')));
    EXPECT_FALSE(good(FieldType::Text, std::string(100'001, 'a')));
    EXPECT_FALSE(good(FieldType::Text, std::string("a\0b", 3)));
    EXPECT_FALSE(good(FieldType::Text, "caf\xE9"));
    EXPECT_FALSE(good(FieldType::Words, "no such word"));
    EXPECT_FALSE(good(FieldType::Dates, "{}"));
    EXPECT_FALSE(good(FieldType::Dates, "[]"));
    EXPECT_FALSE(good(FieldType::Dates, "[\"2026-05-15\"]"));
    EXPECT_FALSE(good(FieldType::Dates, "[18446744073709551615]"));
    EXPECT_FALSE(good(FieldType::Dates, "[99999999]"));
    EXPECT_TRUE(good(FieldType::Dates, "[0, 1]"));
    EXPECT_FALSE(good(FieldType::Refs, "[\"no id\"]"));
    EXPECT_FALSE(good(FieldType::Refs, "[1]"));
    EXPECT_FALSE(good(FieldType::Amounts, R"([["taxes"]])"));
    EXPECT_FALSE(good(FieldType::Amounts, R"([["taxes",1.5]])"));
    EXPECT_FALSE(good(FieldType::Amounts, R"([["",5]])"));
    EXPECT_FALSE(good(FieldType::Amounts, R"([["taxes",1000000000000001]])"));
    EXPECT_FALSE(good(FieldType::Amounts, R"([["taxes",18446744073709551615]])"));
    EXPECT_FALSE(good(FieldType::Steps, R"([[20,"prep"]])"));
    EXPECT_FALSE(good(FieldType::ItemAmounts, R"([["taxes",5]])"));
}

TEST(Value, TheCheckNamesTheField) {
    const auto checked = checkValue(*fieldOf(field::Item::treatment), Value{std::string("paint")});
    ASSERT_FALSE(checked.ok());
    EXPECT_EQ(checked.error().message.rfind("Treatment: ", 0), 0u) << checked.error().message;
}

// Figures below 0 and percents beyond 100 can be read, and are then refused by the field in words
// of its own; everything else that is read passes the check.
RC_GTEST_PROP(ValueProperty, WhateverIsReadPassesTheCheckOrIsOutOfItsRange, ()) {
    const auto type =
        *rc::gen::elementOf(std::vector<FieldType>(std::begin(kAllTypes), std::end(kAllTypes)));
    // Short texts, mostly digits: nearly all others are refused at once.
    static const std::string kAlphabet = "000111199999.,--/ ;=%$amy\xC3\xA9";
    const auto text =
        *rc::gen::resize(6, rc::gen::container<std::string>(rc::gen::elementOf(kAlphabet)));
    const Field& field = fieldOfType(type);
    const auto value = parseValue(field, text, find);
    if (!value.ok()) {
        return;
    }
    const auto* units = std::get_if<std::int64_t>(&value.value());
    const bool percent = type == FieldType::Percent;
    const bool outside =
        units != nullptr && (percent ? *units < 0 || *units > Percent::whole().basisPoints()
                                     : *units < 0 && type != FieldType::Date && !field.maySubtract);
    const auto checked = checkValue(field, value.value());
    RC_ASSERT(checked.ok() == !outside);
    if (outside) {
        const char* words = percent ? "not within 0 to 100" : "below 0";
        RC_ASSERT(checked.error().message.find(words) != std::string::npos);
    }
}

}  // namespace
}  // namespace ledgerboard::model
