// Protects the merge laws: the same entries, in any order and any number of times, make the same
// book; undo then redo is the identity on cells; known-at any past instant is the book rebuilt from
// the entries up to it. On generated histories of three devices, the seed printed with a failure.
#include <algorithm>
#include <gtest/gtest.h>
#include <random>

#include "core/store/book.h"

#include "tests/support/books.h"
#include "tests/support/fixed_chance.h"

namespace ledgerboard::store {
namespace {

using tests::fixedChance;
using tests::SteppingClock;
using tests::TestFolder;

model::RawId idOf(std::uint8_t tail) {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    bytes[6] = 0x70;
    bytes[8] = 0x80;
    bytes[15] = tail;
    return model::RawId{bytes};
}

// Entries of three devices over a few records, with equal clocks, equal values, cleared fields,
// gone cells, kept facts written twice, and fields that this catalog does not know.
std::vector<Entry> history(std::mt19937_64& chance, std::size_t count) {
    const std::vector<model::FieldCode> fields = {model::field::Item::object,
                                                  model::field::Item::quantity,
                                                  model::field::Item::crew,
                                                  model::field::Mark::percent,
                                                  model::field::Mark::note,
                                                  model::goneCode(model::Kind::Item),
                                                  model::field::Job::name,
                                                  3998,
                                                  98'001};
    std::map<std::pair<model::RawId, Lane>, std::int64_t> numbers;
    std::vector<Entry> entries;
    for (std::size_t k = 0; k < count; ++k) {
        Entry entry;
        const model::RawId device = idOf(static_cast<std::uint8_t>(200 + chance() % 3));
        const Lane lane = chance() % 2 == 0 ? Lane::OwnerOnly : Lane::Shared;
        entry.name = {device, lane, ++numbers[{device, lane}]};
        entry.clock =
            model::HybridClock::fromRaw(static_cast<std::int64_t>(1 + chance() % 20) << 16);
        entry.field = fields[chance() % fields.size()];
        const auto kind = static_cast<std::uint8_t>(model::kindOf(entry.field));
        entry.record = idOf(static_cast<std::uint8_t>(kind * 2 + chance() % 2));
        const auto* field = model::fieldOf(entry.field);
        if (chance() % 5 == 0) {
            entry.value = {};
        } else if (field != nullptr && field->type == model::FieldType::Text) {
            entry.value = "text " + std::to_string(chance() % 3);
        } else if (field != nullptr && field->type == model::FieldType::Ref) {
            entry.value = idOf(static_cast<std::uint8_t>(chance() % 3));
        } else {
            entry.value = static_cast<std::int64_t>(chance() % 2);
        }
        entries.push_back(entry);
    }
    return entries;
}

Book fresh(const TestFolder& folder, int number) {
    auto book = tests::createBook(folder.file("b" + std::to_string(number)), "Owner",
                                  model::Instant::fromMilliseconds(0), fixedChance(7));
    EXPECT_TRUE(book.ok());
    return std::move(book).value();
}

// With LEDGERBOARD_LONG=1, 20,000 orders; each is a book of its own, so in memory where there is
// one.
TEST(MergeTest, AnyOrderAndAnyRepetitionMakeTheSameBook) {
    if (tests::isLong()) {
        tests::preferMemory();
    }
    // A book in another database than a file takes many times as long to make.
    const bool inFiles = tests::bookPlace().isFile;
    const std::uint64_t seeds = tests::isLong() ? (inFiles ? 400 : 40) : (inFiles ? 12 : 3);
    const int rounds = tests::isLong() ? (inFiles ? 50 : 10) : (inFiles ? 6 : 3);
    std::size_t orders = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        TestFolder folder("merge");  // of its own, so that few files are there at a time
        int number = 0;
        std::mt19937_64 chance(seed);
        const auto entries = history(chance, 60);
        Book straight = fresh(folder, number++);
        ASSERT_EQ(straight.apply(entries).value(), entries.size());
        const std::string expected = straight.dump().value();
        const auto found = straight.verify(false).value().findings.size();
        ASSERT_NE(expected.find("text"), std::string::npos);
        for (int round = 0; round < rounds; ++round) {
            auto shuffled = entries;
            shuffled.insert(shuffled.end(), entries.begin(), entries.begin() + 20);
            std::shuffle(shuffled.begin(), shuffled.end(), chance);
            Book other = fresh(folder, number++);
            // In pieces, as they arrive from a peer.
            std::size_t taken = 0;
            for (std::size_t at = 0; at < shuffled.size(); at += 7) {
                const auto size = std::min<std::size_t>(7, shuffled.size() - at);
                taken += other.apply(std::span(shuffled).subspan(at, size)).value();
            }
            ASSERT_EQ(taken, entries.size()) << "seed " << seed;
            ASSERT_EQ(other.dump().value(), expected) << "seed " << seed << " round " << round;
            ASSERT_EQ(other.verify(false).value().findings.size(), found) << "seed " << seed;
            ++orders;
        }
    }
    EXPECT_EQ(orders, seeds * static_cast<std::size_t>(rounds));
}

TEST(MergeTest, KnownAtIsTheBookRebuiltFromTheEntriesUpToIt) {
    TestFolder folder("known");
    int number = 0;
    const std::uint64_t seeds = tests::bookPlace().isFile ? 6 : 1;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        std::mt19937_64 chance(seed * 31);
        const auto entries = history(chance, 80);
        Book whole = fresh(folder, number++);
        ASSERT_TRUE(whole.apply(entries).ok());
        for (std::int64_t millisecond = 0; millisecond <= 21; millisecond += 3) {
            const auto instant = model::Instant::fromMilliseconds(millisecond);
            std::vector<Entry> upTo;
            for (const auto& entry : entries) {
                if (entry.clock.instant() <= instant) {
                    upTo.push_back(entry);
                }
            }
            Book rebuilt = fresh(folder, number++);
            ASSERT_TRUE(rebuilt.apply(upTo).ok());
            EXPECT_EQ(whole.knownAt(instant).value().dump().value(), rebuilt.dump().value())
                << "seed " << seed << " at " << millisecond;
        }
    }
}

TEST(MergeTest, UndoThenRedoIsTheIdentityOnCells) {
    TestFolder folder("undo");
    const std::uint64_t seeds = tests::bookPlace().isFile ? 10 : 3;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        std::mt19937_64 chance(seed * 77);
        SteppingClock now;
        Book book = fresh(folder, static_cast<int>(seed));
        std::vector<model::RawId> records;
        std::vector<std::string> stood = {book.dump().value()};
        for (int step = 0; step < 15; ++step) {
            Action action("step " + std::to_string(step));
            if (records.empty() || chance() % 3 == 0) {
                records.push_back(book.newId(now()));
            }
            for (int edit = 0; edit < 3; ++edit) {
                const auto& record = records[chance() % records.size()];
                switch (chance() % 4) {
                    case 0:
                        action.drop(model::Kind::Item, record);
                        break;
                    case 1:
                        action.set(record, model::goneCode(model::Kind::Item), model::Value{});
                        break;
                    case 2:
                        action.set(record, model::field::Item::quantity,
                                   static_cast<std::int64_t>(chance() % 4));
                        break;
                    default:
                        action.set(record, model::field::Item::object,
                                   "o" + std::to_string(chance() % 4));
                }
            }
            ASSERT_TRUE(book.commit(action, now()).ok()) << "seed " << seed;
            if (const std::string dump = book.dump().value(); dump != stood.back()) {
                stood.push_back(dump);
            }
        }
        const std::string full = book.dump().value();
        int undone = 0;
        while (book.undo(now()).ok()) {
            ++undone;
        }
        ASSERT_GT(undone, 5) << "seed " << seed;
        while (undone-- > 0) {
            ASSERT_TRUE(book.redo(now()).ok()) << "seed " << seed;
        }
        EXPECT_EQ(book.dump().value(), full) << "seed " << seed;
        EXPECT_TRUE(book.verify(false).value().findings.empty()) << "seed " << seed;
    }
}

}  // namespace
}  // namespace ledgerboard::store
