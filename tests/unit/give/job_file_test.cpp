// Protects: a whole job goes into one file and comes out of it the same, every kind and every type
// of field with it; brought twice it adds nothing, and what the book has since is left; a wrong
// file is refused with its place and changes nothing. How: one record of every kind, every field
// filled by its type, so that a field added to the catalog is covered from its first day.
#include "core/give/job_file.h"

#include <cstdio>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/give/job_document.h"
#include "core/give/zip_file.h"
#include "core/store/photos.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::give {
namespace {

using model::FieldType;
using model::Kind;
using model::RawId;
using model::Value;
using nlohmann::json;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::TestFolder;

constexpr const char* kPicture = "bytes of a picture";
constexpr const char* kSound = "OggS and a note that was spoken";  // RFC 3533, section 6

class JobFileTest : public testing::Test {
  protected:
    void SetUp() override {
        book_.emplace(make("house.book", 7));
        for (const auto& info : model::kinds()) {
            ids_[info.kind] = info.kind == Kind::Person   ? book_->me().raw()
                              : info.kind == Kind::Device ? book_->thisDevice().raw()
                                                          : book_->newId(now_());
        }
        store::Action action("everything");
        for (const auto& info : model::kinds()) {
            if (info.kind == Kind::Device) {
                continue;
            }
            for (const auto& field : info.fields) {
                if (info.kind != Kind::Person || field.name != "name") {
                    action.set(ids_[info.kind], field.code, filled(field));
                }
            }
        }
        const auto done = book_->commit(action, now_());
        ASSERT_TRUE(done.ok()) << done.error().message;
        ASSERT_TRUE(store::Photos(book_->path()).keep(kPicture).ok());
        ASSERT_TRUE(store::Photos(book_->path()).keep(kSound).ok());
    }

    store::Book make(const std::string& name, std::uint64_t seed) {
        auto made =
            store::Book::create(folder_.file(name), "Owner", now_(), tests::fixedChance(seed));
        EXPECT_TRUE(made.ok()) << made.error().message;
        return std::move(made).value();
    }

    model::Id<Kind::Job> job() { return model::Id<Kind::Job>(ids_[Kind::Job]); }

    // A value of the field's type, different from field to field where it may be.
    Value filled(const model::Field& field) {
        const std::int64_t number = field.code % 1000 + 1;
        const std::string item = ids_[Kind::Item].toString();
        switch (field.type) {
            case FieldType::Text:
                return field.name == "digest" ? store::Photos::digestOf(kPicture)
                       : field.name == "sound"
                           ? store::Photos::digestOf(kSound)
                           : "text; \"quoted\", = and é " + std::to_string(number);
            case FieldType::Flag:
                return number % 2;  // "no" is said, too
            case FieldType::Count:
            case FieldType::Money:
            case FieldType::Quantity:
            case FieldType::Percent:
                return field.name == "built_year" ? 1936 : number * 11;
            case FieldType::Date:
                return 20'000 + number;
            case FieldType::Instant:
                return 1'775'476'800'001 + number;
            case FieldType::Weekdays:
                return std::int64_t{0b0111110};
            case FieldType::Words:
                return std::string(field.words[1]);
            case FieldType::Ref:
                return ids_[field.meant];
            case FieldType::Refs:
                return json::array({ids_[field.meant].toString()}).dump();
            case FieldType::Amounts:
            case FieldType::Steps:
                return json::array({json::array({"a; b=c", number}), json::array({"d", 7})}).dump();
            case FieldType::ItemAmounts:
                return json::array({json::array({item, number})}).dump();
            case FieldType::Dates:
                return json::array({20'000, 20'001}).dump();
        }
        return {};
    }

    std::string give(const std::string& name = "job.zip") {
        const std::string path = folder_.file(name);
        const auto given = giveJobFile(*book_, job(), path, now_());
        EXPECT_TRUE(given.ok()) << given.error().message;
        return path;
    }

    std::string document() { return jobDocument(*book_, job(), now_()).value(); }

    // A zip whose job.json is `text`.
    std::string zipOf(const std::string& text) {
        const std::string path = folder_.file("made.zip");
        auto zip = ZipWriter::open(path, now_());
        EXPECT_TRUE(zip.value().add("job.json", text).ok());
        EXPECT_TRUE(zip.value().close().ok());
        return path;
    }

    std::string refusal(const std::string& path) {
        const auto brought = bringJobFile(*book_, path, false, now_());
        return brought.ok() ? "taken" : brought.error().message;
    }

    TestFolder folder_{"job-file"};
    tests::SteppingClock now_;
    std::optional<store::Book> book_;
    std::map<Kind, RawId> ids_;
};

TEST_F(JobFileTest, ComesOutAsItWentIn) {
    auto other = make("other.book", 8);
    const std::string path = give();
    EXPECT_TRUE(
        ZipReader::open(path).value().has("sounds/" + store::Photos::digestOf(kSound) + ".ogg"));
    const auto brought = bringJobFile(other, path, false, now_());
    ASSERT_TRUE(brought.ok()) << brought.error().message;
    EXPECT_THAT(brought.value().remarks, IsEmpty());
    EXPECT_EQ(brought.value().photos, 2U);
    for (const auto& info : model::kinds()) {
        if (info.kind == Kind::Device) {
            continue;
        }
        const auto ours = book_->record(info.kind, ids_[info.kind]).value();
        const auto theirs = other.record(info.kind, ids_[info.kind]).value();
        ASSERT_TRUE(ours && theirs) << info.name;
        for (const auto& field : info.fields) {
            const bool isDevice = field.type == FieldType::Ref && field.meant == Kind::Device;
            EXPECT_EQ(model::isEmpty(theirs->at(field.code)),
                      isDevice || model::isEmpty(ours->at(field.code)))
                << info.name << "." << field.name;
            if (!isDevice) {
                EXPECT_EQ(ours->at(field.code), theirs->at(field.code))
                    << info.name << "." << field.name;
            }
        }
    }
    EXPECT_EQ(store::Photos(other.path()).read(store::Photos::digestOf(kPicture)).value(),
              kPicture);
    EXPECT_EQ(store::Photos(other.path()).read(store::Photos::digestOf(kSound)).value(), kSound);
    EXPECT_THAT(other.verify(false).value().findings, IsEmpty());
}

TEST_F(JobFileTest, BroughtAgainAddsNothingAndTakesNothingBack) {
    const std::string path = give();
    auto other = make("other.book", 8);
    ASSERT_TRUE(bringJobFile(other, path, false, now_()).ok());
    store::Action action("later");
    action.set(ids_[Kind::Item], model::field::Item::object, Value{std::string("doors")});
    ASSERT_TRUE(other.commit(action, now_()).ok());
    const std::string before = other.dump().value();
    const auto again = bringJobFile(other, path, false, now_());
    ASSERT_TRUE(again.ok());
    EXPECT_EQ(again.value().added, 0U);
    EXPECT_EQ(again.value().differ, 1U);
    EXPECT_EQ(other.dump().value(), before);
    // One undo takes the whole of it back.
    ASSERT_TRUE(other.undo(now_()).ok());
    ASSERT_TRUE(other.undo(now_()).ok());
    EXPECT_THAT(other.rows<model::Job>().value(), IsEmpty());
}

TEST_F(JobFileTest, TryingWritesNothing) {
    const std::string path = give();
    auto other = make("other.book", 8);
    const std::string before = other.dump().value();
    const auto tried = bringJobFile(other, path, true, now_());
    ASSERT_TRUE(tried.ok());
    EXPECT_GT(tried.value().added, 30U);
    EXPECT_EQ(other.dump().value(), before);
    EXPECT_EQ(store::Photos(other.path()).check(store::Photos::digestOf(kPicture)),
              store::PhotoState::Missing);
}

TEST_F(JobFileTest, APictureThatIsNotThereIsSaid) {
    std::remove(store::Photos(book_->path()).pathOf(store::Photos::digestOf(kPicture)).c_str());
    const auto given = giveJobFile(*book_, job(), folder_.file("job.zip"), now_());
    ASSERT_TRUE(given.ok());
    EXPECT_EQ(given.value().missing.size(), 1U);
    auto other = make("other.book", 8);
    const auto brought = bringJobFile(other, folder_.file("job.zip"), false, now_());
    ASSERT_TRUE(brought.ok());
    ASSERT_EQ(brought.value().remarks.size(), 1U);
    EXPECT_THAT(brought.value().remarks.front(), HasSubstr("is not in the file"));
}

TEST_F(JobFileTest, AHeicKeepsItsEnding) {
    // ISO/IEC 14496-12: the first box's length, then its name.
    const std::string heic(
        "\0\0\0\x18"
        "ftypheic",
        12);
    const std::string digest = store::Photos::digestOf(heic);
    ASSERT_TRUE(store::Photos(book_->path()).keep(heic).ok());
    store::Action action("a telephone's picture");
    model::Photo photo;
    photo.id = book_->newId<Kind::Photo>(now_());
    photo.job = job();
    photo.digest = digest;
    action.add(photo);
    const auto done = book_->commit(action, now_());
    ASSERT_TRUE(done.ok()) << done.error().message;
    ASSERT_TRUE(giveJobFile(*book_, job(), folder_.file("job.zip"), now_()).ok());
    auto zip = ZipReader::open(folder_.file("job.zip"));
    ASSERT_TRUE(zip.ok());
    EXPECT_TRUE(zip.value().has("photos/" + digest + ".heic"));
    auto other = make("other.book", 8);
    ASSERT_TRUE(bringJobFile(other, folder_.file("job.zip"), false, now_()).ok());
    EXPECT_EQ(store::Photos(other.path()).read(digest).value(), heic);
}

TEST_F(JobFileTest, WhatANewerVersionKnowsIsNamedAndLeftOut) {
    json changed = json::parse(document());
    changed["records"]["items"][0]["colour"] = "red";
    changed["records"]["gardens"] = json::array({json::object()});
    auto other = make("other.book", 8);
    const auto brought = bringJobFile(other, zipOf(changed.dump()), false, now_());
    ASSERT_TRUE(brought.ok()) << brought.error().message;
    EXPECT_THAT(brought.value().remarks, testing::Contains(HasSubstr("items.colour")));
    EXPECT_THAT(brought.value().remarks, testing::Contains(HasSubstr("gardens")));
}

TEST_F(JobFileTest, WrongFilesAreRefusedAndChangeNothing) {
    const std::string before = book_->dump().value();
    const std::string whole = give("whole.zip");
    std::string bytes;
    {
        std::ifstream file(whole, std::ios::binary);
        bytes.assign(std::istreambuf_iterator<char>(file), {});
    }
    const auto written = [&](const std::string& text) {
        const std::string path = folder_.file("bad.zip");
        std::ofstream(path, std::ios::binary) << text;
        return path;
    };
    EXPECT_THAT(refusal(folder_.file("none.zip")), HasSubstr("there is no such file"));
    EXPECT_THAT(refusal(written("")), HasSubstr("bad.zip: not a whole zip file"));
    EXPECT_THAT(refusal(written("Date,Amount\n")), HasSubstr("not a whole zip file"));
    EXPECT_THAT(refusal(written(bytes.substr(0, bytes.size() - 30))), HasSubstr("not a whole zip"));
    std::string spoilt = bytes;
    spoilt[60] = static_cast<char>(spoilt[60] ^ 0x55);  // within the compressed job.json
    EXPECT_THAT(refusal(written(spoilt)), HasSubstr("job.json: is damaged"));

    const json good = json::parse(document());
    const auto with = [&](const std::function<void(json&)>& change) {
        json copy = good;
        change(copy);
        return refusal(zipOf(copy.dump()));
    };
    EXPECT_THAT(refusal(zipOf("[]")), HasSubstr("not a job that Ledgerboard gave"));
    EXPECT_THAT(refusal(zipOf("{\"form\": 1, \"records\": {\"jobs\": " + std::string(40, '[') +
                              std::string(40, ']') + "}}")),
                HasSubstr("not a job that Ledgerboard gave"));
    EXPECT_THAT(with([](json& all) { all["form"] = 2; }), HasSubstr("use a newer one"));
    EXPECT_THAT(with([](json& all) { all["records"].erase("jobs"); }),
                HasSubstr("does not hold one job"));
    EXPECT_THAT(with([](json& all) { all["records"]["items"][0].erase("id"); }),
                HasSubstr("a record of items has no id"));
    EXPECT_THAT(with([](json& all) { all["records"]["items"][0]["id"] = "x"; }),
                HasSubstr("items, id \"x\" is no id"));
    EXPECT_THAT(with([](json& all) { all["records"]["items"][0]["lump_sum"] = "ten"; }),
                HasSubstr(", lump_sum: "));
    EXPECT_THAT(with([](json& all) { all["records"]["items"][0]["lump_sum"] = 10; }),
                HasSubstr(", lump_sum: is not text"));
    EXPECT_THAT(with([](json& all) { all["records"]["items"] = 7; }),
                HasSubstr("items is no list"));
    EXPECT_THAT(
        with([](json& all) { all["records"]["items"].push_back(all["records"]["items"][0]); }),
        HasSubstr("is there twice"));
    EXPECT_EQ(book_->dump().value(), before);
}

TEST_F(JobFileTest, APictureThatIsAnotherIsRefused) {
    const std::string digest = store::Photos::digestOf(kPicture);
    const std::string path = folder_.file("made.zip");
    {
        auto zip = ZipWriter::open(path, now_());
        ASSERT_TRUE(zip.value().add("job.json", document()).ok());
        ASSERT_TRUE(zip.value().add("photos/" + digest + ".jpg", "another picture").ok());
        ASSERT_TRUE(zip.value().close().ok());
    }
    auto other = make("other.book", 8);
    const std::string before = other.dump().value();
    const auto brought = bringJobFile(other, path, false, now_());
    ASSERT_FALSE(brought.ok());
    EXPECT_THAT(brought.error().message, HasSubstr("its bytes are not those of its name"));
    EXPECT_EQ(other.dump().value(), before);
}

}  // namespace
}  // namespace ledgerboard::give
