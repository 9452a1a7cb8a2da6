// What the tests of bringing share: a book with a small house in it, and a short way to bring text.
#pragma once

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <string>
#include <string_view>

#include "core/intake/files/bring.h"
#include "core/store/action.h"
#include "core/store/book.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::intake {

// A job begun on 2026-03-02 with two spaces, six items, two crews, a contract and an invoice.
class BringHouse : public testing::Test {
  protected:
    void SetUp() override {
        auto made =
            store::Book::create(folder_.file("house.book"), "Owner", now_(), tests::fixedChance(7));
        ASSERT_TRUE(made.ok()) << made.error().message;
        book_.emplace(std::move(made).value());
        store::Action action("start");
        model::Job job;
        job.id = id<model::Kind::Job>();
        job.name = "Test house";
        job.beginOn = model::Date::fromYmd(2026, 3, 2).value();
        job_ = job.id;
        action.add(job);
        commit(action);
    }

    // The house itself, for tests that need more than an empty job.
    void buildHouse() {
        bringGood("crews", "Crew,Trade\nTile crew,tile\nPlumbing crew,plumbing\n");
        bringGood("contracts", "Contract,Crew,Sum,Retainage\nTile work,Tile crew,6000,10\n");
        bringGood("scope",
                  "Space,Treatment,Object,Quantity,Unit,Lump sum,Measured by,Steps\n"
                  "Kitchen,replace,cabinets,12,each,4200,,\n"
                  "Kitchen,keep,wood floor,,,,,\n"
                  "Kitchen,remove,old tile,40,sq ft,,counted units,\n"
                  "Bath,replace,tub,1,each,900,none or done,\n"
                  "Bath,replace,tile,80,sq ft,,weighted steps,prep 20; set 60; grout 20\n"
                  "Bath,add,fan,1,each,180,half and half,\n");
        bringGood("spend",
                  "Kind,Date,Amount,Payee,Bank id\n"
                  "invoice,2026-03-20,1200,Tile crew,inv-1\n"
                  "receipt,2026-03-21,45.50,Hardware shop,rec-1\n");
    }

    model::Result<BringReport> bringText(std::string_view kind, std::string_view text,
                                         const std::string& match = "", bool tryOnly = false) {
        return bring(*book_, job_, kind, "rows.csv", text, {match, tryOnly}, now_());
    }

    BringReport bringGood(std::string_view kind, std::string_view text,
                          const std::string& match = "") {
        auto done = bringText(kind, text, match);
        EXPECT_TRUE(done.ok()) << done.error().message << "\n" << text;
        return done.ok() ? std::move(done).value() : BringReport{};
    }

    void commit(const store::Action& action) {
        auto done = book_->commit(action, now_());
        ASSERT_TRUE(done.ok()) << done.error().message;
    }

    template <model::Kind K>
    model::Id<K> id() {
        return book_->newId<K>(now_());
    }

    template <class Row>
    std::vector<Row> rows() {
        const bool ofJob = model::jobFieldOf(Row::kKind) != nullptr;
        auto read = book_->rows<Row>(ofJob ? job_ : model::Id<model::Kind::Job>());
        EXPECT_TRUE(read.ok());
        return read.ok() ? std::move(read).value() : std::vector<Row>{};
    }

    std::string dump() {
        auto text = book_->dump();
        EXPECT_TRUE(text.ok());
        return text.ok() ? text.value() : "";
    }

    std::size_t entryCount() {
        auto entries = book_->entries();
        EXPECT_TRUE(entries.ok());
        return entries.ok() ? entries.value().size() : 0;
    }

    tests::TestFolder folder_{"bring"};
    tests::SteppingClock now_;
    std::optional<store::Book> book_;
    model::Id<model::Kind::Job> job_;
};

}  // namespace ledgerboard::intake
