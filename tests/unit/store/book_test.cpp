// Protects: what is written to a book is there, whole, after closing and opening it; what may not
// be written is refused and leaves the book as it was; undo, redo, history and known-at tell the
// truth.
#include "core/store/book.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/books.h"
#include "tests/support/fixed_chance.h"

namespace ledgerboard::store {
namespace {

using model::Id;
using model::Kind;
using model::Money;
using model::Quantity;
using testing::HasSubstr;
using tests::fixedChance;
using tests::SteppingClock;
using tests::TestFolder;

class BookTest : public testing::Test {
  protected:
    TestFolder folder_{"book"};
    SteppingClock now_;
    std::string path_ = folder_.file("house.book");

    Book make() {
        auto book = tests::createBook(path_, "Owner", now_(), fixedChance(1));
        EXPECT_TRUE(book.ok()) << (book.ok() ? "" : book.error().message);
        return std::move(book).value();
    }

    // A job with one space and one item, each made by an action of its own.
    struct House {
        Id<Kind::Job> job;
        Id<Kind::Space> space;
        Id<Kind::Item> item;
    };

    House build(Book& book) {
        model::Job job;
        job.id = book.newId<Kind::Job>(now_());
        job.name = "Test house";
        model::Space space;
        space.id = book.newId<Kind::Space>(now_());
        space.job = job.id;
        space.name = "Kitchen";
        model::Item item;
        item.id = book.newId<Kind::Item>(now_());
        item.job = job.id;
        item.space = space.id;
        item.treatment = model::Treatment::Replace;
        item.object = "cabinets";
        item.quantity = Quantity::of(12);
        item.lumpSum = Money::of(4200);
        commit(book, "start", [&](Action& action) { action.add(job); });
        commit(book, "add space", [&](Action& action) { action.add(space); });
        commit(book, "add item", [&](Action& action) { action.add(item); });
        return {job.id, space.id, item.id};
    }

    template <class Fill>
    model::Result<void> tryCommit(Book& book, const std::string& what, Fill&& fill) {
        Action action(what);
        fill(action);
        return book.commit(action, now_());
    }

    template <class Fill>
    void commit(Book& book, const std::string& what, Fill&& fill) {
        auto done = tryCommit(book, what, std::forward<Fill>(fill));
        ASSERT_TRUE(done.ok()) << done.error().message;
    }

    model::Item itemOf(const Book& book, const House& house) {
        auto rows = book.jobRows(house.job);
        EXPECT_TRUE(rows.ok());
        EXPECT_EQ(rows.value().items.size(), 1U);
        return rows.value().items.empty() ? model::Item{} : rows.value().items[0];
    }
};

TEST_F(BookTest, KeepsEveryMemberOverClosingAndOpening) {
    House house;
    {
        Book book = make();
        house = build(book);
    }
    auto opened = tests::openBook(path_, fixedChance(2));
    ASSERT_TRUE(opened.ok()) << opened.error().message;
    const model::Item item = itemOf(opened.value(), house);
    EXPECT_EQ(item.space, house.space);
    EXPECT_EQ(item.treatment, model::Treatment::Replace);
    EXPECT_EQ(item.object, "cabinets");
    EXPECT_EQ(item.quantity, Quantity::of(12));
    EXPECT_EQ(item.lumpSum, Money::of(4200));
    EXPECT_EQ(item.costLow, std::nullopt);
    const auto people = opened.value().rows<model::Person>();
    ASSERT_EQ(people.value().size(), 1U);
    EXPECT_EQ(people.value()[0].name, "Owner");
    EXPECT_EQ(people.value()[0].id, opened.value().me());
}

TEST_F(BookTest, EveryFieldOfEveryKindSurvivesTheWayThroughTheFile) {
    Book book = make();
    std::string expected;
    for (const auto& info : model::kinds()) {
        Action action("add " + std::string(info.title));
        const model::RawId id = book.newId(now_());
        for (const auto& field : info.fields) {
            model::Value value;
            switch (field.type) {
                case model::FieldType::Text:
                    value = "t" + std::to_string(field.code);
                    break;
                case model::FieldType::Words:
                    value = std::string(field.words.back());
                    break;
                case model::FieldType::Ref:
                case model::FieldType::Refs: {  // the target must exist: make a bare one
                    const model::RawId target = book.newId(now_());
                    action.drop(field.meant, target);
                    value = field.type == model::FieldType::Ref
                                ? model::Value{target}
                                : model::valueOf(std::vector<model::RawId>{target});
                    break;
                }
                case model::FieldType::Amounts:
                case model::FieldType::Steps:
                    value = std::string(R"([["a",1]])");
                    break;
                case model::FieldType::ItemAmounts:
                    value = model::valueOf(std::vector<model::ItemAmount>{
                        {Id<Kind::Item>(book.newId(now_())), Money::of(1)}});
                    break;
                case model::FieldType::Dates:
                    value = std::string("[1]");
                    break;
                default:
                    value = std::int64_t{1};
            }
            action.set(id, field.code, value);
        }
        const auto done = book.commit(action, now_());
        ASSERT_TRUE(done.ok()) << info.title << ": " << done.error().message;
        const auto record = book.record(info.kind, id);
        ASSERT_TRUE(record.ok() && record.value().has_value()) << info.title;
        for (const auto& edit : action.edits()) {
            if (edit.record == id) {
                EXPECT_EQ(record.value()->at(edit.field), edit.value)
                    << info.title << ", " << model::fieldOf(edit.field)->heading;
            }
        }
    }
    EXPECT_THAT(book.verify(false).value().findings, testing::IsEmpty());
}

TEST_F(BookTest, RefusesWhatTheCatalogDoesNotAllowAndStaysAsItWas) {
    Book book = make();
    const House house = build(book);
    model::Mark mark;
    mark.id = book.newId<Kind::Mark>(now_());
    mark.job = house.job;
    mark.item = house.item;
    mark.percent = model::Percent::of(50);
    commit(book, "mark", [&](Action& action) { action.add(mark); });
    const std::string before = book.dump().value();

    struct Case {
        const char* what;
        std::function<void(Action&)> fill;
        const char* says;
    };

    const std::vector<Case> cases = {
        {"a kept fact edited",
         [&](Action& a) {
             a.set(mark.id.raw(), model::field::Mark::percent, model::Value{std::int64_t{6000}});
         },
         "kept fact"},
        {"a reference to nothing",
         [&](Action& a) { a.set(house.item.raw(), model::field::Item::crew, book.newId(now_())); },
         "no such crew"},
        {"a word that is none",
         [&](Action& a) {
             a.set(house.item.raw(), model::field::Item::treatment, std::string("smash"));
         },
         "not one of its words"},
        {"a text where money belongs",
         [&](Action& a) {
             a.set(house.item.raw(), model::field::Item::lumpSum, std::string("much"));
         },
         "Lump sum"},
        {"an unknown field", [&](Action& a) { a.set(house.item.raw(), 3999, std::int64_t{1}); },
         "does not know"},
        {"a good edit beside a bad one",
         [&](Action& a) {
             a.set(house.item.raw(), model::field::Item::object, std::string("doors"));
             a.set(house.item.raw(), model::field::Item::quantity, std::string("many"));
         },
         "Quantity"},
    };
    for (const auto& one : cases) {
        const auto done = tryCommit(book, one.what, one.fill);
        ASSERT_FALSE(done.ok()) << one.what;
        EXPECT_THAT(done.error().message, HasSubstr(one.says)) << one.what;
        EXPECT_EQ(book.dump().value(), before) << one.what;
    }
}

TEST_F(BookTest, AnEditThatChangesNothingWritesNothing) {
    Book book = make();
    const House house = build(book);
    const auto before = book.entries().value().size();
    commit(book, "same", [&](Action& action) {
        action.set(house.item.raw(), model::field::Item::object, std::string("cabinets"));
        action.set(house.item.raw(), model::field::Item::note, model::Value{});
    });
    EXPECT_EQ(book.entries().value().size(), before);
    EXPECT_EQ(book.undo(now_()).value().what, "add item");
}

TEST_F(BookTest, AnActionPlannedOnAnOlderBookIsRefused) {
    Book book = make();
    const House house = build(book);
    const LogPosition looked = book.position();
    commit(book, "meanwhile", [&](Action& action) {
        action.set(house.item.raw(), model::field::Item::note, std::string("by another"));
    });
    Action late("planned before", looked);
    late.set(house.item.raw(), model::field::Item::object, std::string("doors"));
    const auto done = book.commit(late, now_());
    ASSERT_FALSE(done.ok());
    EXPECT_THAT(done.error().message, HasSubstr("meanwhile"));
    EXPECT_EQ(itemOf(book, house).object, "cabinets");
    Action again("planned again", book.position());
    again.set(house.item.raw(), model::field::Item::object, std::string("doors"));
    EXPECT_TRUE(book.commit(again, now_()).ok());
}

TEST_F(BookTest, UndoAndRedoWalkBackAndForth) {
    Book book = make();
    const House house = build(book);
    auto setObject = [&](const std::string& object) {
        commit(book, "call it " + object, [&](Action& action) {
            action.set(house.item.raw(), model::field::Item::object, object);
        });
    };
    setObject("wall cabinets");
    setObject("base cabinets");
    EXPECT_EQ(book.undo(now_()).value().what, "call it base cabinets");
    EXPECT_EQ(itemOf(book, house).object, "wall cabinets");
    EXPECT_EQ(book.undo(now_()).value().what, "call it wall cabinets");
    EXPECT_EQ(itemOf(book, house).object, "cabinets");
    EXPECT_EQ(book.redo(now_()).value().what, "call it wall cabinets");
    EXPECT_EQ(itemOf(book, house).object, "wall cabinets");
    EXPECT_EQ(book.redo(now_()).value().what, "call it base cabinets");
    EXPECT_EQ(itemOf(book, house).object, "base cabinets");
    EXPECT_FALSE(book.redo(now_()).ok());
    // Something new ends what can be redone.
    ASSERT_TRUE(book.undo(now_()).ok());
    setObject("drawers");
    EXPECT_FALSE(book.redo(now_()).ok());
    EXPECT_EQ(book.undo(now_()).value().what, "call it drawers");
    EXPECT_EQ(itemOf(book, house).object, "wall cabinets");
}

TEST_F(BookTest, UndoingEverythingLeavesNoRowAndRedoingBringsAllBack) {
    Book book = make();
    build(book);
    const std::string full = book.dump().value();
    int undone = 0;
    while (book.undo(now_()).ok()) {
        ++undone;
    }
    EXPECT_EQ(undone, 3);
    EXPECT_TRUE(book.rows<model::Item>().value().empty());
    EXPECT_TRUE(book.rows<model::Job>().value().empty());
    while (book.redo(now_()).ok()) {
    }
    EXPECT_EQ(book.dump().value(), full);
}

TEST_F(BookTest, UndoRefusesToTreadOnAnotherDevicesLaterEdit) {
    Book book = make();
    const House house = build(book);
    commit(book, "mine", [&](Action& action) {
        action.set(house.item.raw(), model::field::Item::object, std::string("mine"));
    });
    Entry theirs;
    theirs.name = {model::RawId::parse("0196a000000070008000000000000abc").value(), Lane::Shared,
                   1};
    theirs.clock = model::HybridClock{}.next(now_());
    theirs.record = house.item.raw();
    theirs.field = model::field::Item::object;
    theirs.value = std::string("theirs");
    ASSERT_EQ(book.apply(std::span(&theirs, 1)).value(), 1U);
    const auto undone = book.undo(now_());
    ASSERT_FALSE(undone.ok());
    EXPECT_THAT(undone.error().message, HasSubstr("changed since"));
    EXPECT_EQ(itemOf(book, house).object, "theirs");
}

TEST_F(BookTest, HistoryNamesEveryValueAndTheCurrentOne) {
    Book book = make();
    const House house = build(book);
    commit(book, "rename", [&](Action& action) {
        action.set(house.item.raw(), model::field::Item::object, std::string("doors"));
    });
    const auto lines = book.history(house.item.raw()).value();
    std::vector<std::string> objects;
    for (const auto& line : lines) {
        if (line.field == model::field::Item::object) {
            objects.push_back(std::get<std::string>(line.value) + (line.current ? " now" : "") +
                              " by " + line.what);
        }
        EXPECT_EQ(line.device, book.thisDevice().raw());
    }
    EXPECT_THAT(objects, testing::ElementsAre("cabinets by add item", "doors now by rename"));
}

TEST_F(BookTest, KnownAtGivesTheBookAsItStoodAfterEachAction) {
    Book book = make();
    const House house = build(book);
    std::vector<std::pair<model::Instant, std::string>> stood;
    for (int k = 0; k < 12; ++k) {
        if (k % 4 == 3) {
            ASSERT_TRUE(book.undo(now_()).ok());
        } else {
            commit(book, "step", [&](Action& action) {
                action.set(house.item.raw(), model::field::Item::object, "o" + std::to_string(k));
                action.set(house.item.raw(), model::field::Item::quantity,
                           model::valueOf(Quantity::of(k)));
            });
        }
        stood.emplace_back(now_(), book.dump().value());
    }
    for (const auto& [instant, dump] : stood) {
        const auto then = book.knownAt(instant);
        ASSERT_TRUE(then.ok()) << then.error().message;
        EXPECT_EQ(then.value().dump().value(), dump) << instant.toString();
    }
}

// A crew lead's book has no row of its device: what names one there names none.
TEST_F(BookTest, OnlyWhatTheBookHoldsARowOfIsNamedAsItsOwn) {
    Book own = make();
    EXPECT_EQ(own.meAsKept(), own.me());
    EXPECT_EQ(own.thisDeviceAsKept(), own.thisDevice());
    const auto device = own.newId<Kind::Device>(now_());
    const auto person = own.newId<Kind::Person>(now_());
    const Book joined =
        Book::createJoined(folder_.file("lead.book"), device, person, fixedChance(2)).value();
    EXPECT_EQ(joined.thisDevice(), device);
    EXPECT_TRUE(joined.meAsKept().isNil());
    EXPECT_TRUE(joined.thisDeviceAsKept().isNil());
}

TEST_F(BookTest, IdPartsFindRecordsByEitherEnd) {
    Book book = make();
    const House house = build(book);
    std::string hex = house.item.raw().hex();
    for (char& c : hex) {
        c = static_cast<char>(std::toupper(c));
    }
    const auto byEnd = book.recordsByIdPart(hex.substr(26)).value();
    ASSERT_EQ(byEnd.size(), 1U);
    EXPECT_EQ(byEnd[0].id, house.item.raw());
    EXPECT_GE(book.recordsByIdPart(hex.substr(0, 6)).value().size(), 3U);
}

}  // namespace
}  // namespace ledgerboard::store
