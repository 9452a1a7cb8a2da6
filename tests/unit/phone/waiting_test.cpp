// Protects the line that says what has not left the phone: nothing is promised before there is a
// peer; then records are counted, not fields, and only those that the peer has not acknowledged.
#include "mobile/now/waiting.h"

#include <gtest/gtest.h>

#include "core/store/sync_book.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::phone {
namespace {

using model::Kind;

TEST(Waiting, CountsRecordsBeyondWhatThePeerAcknowledged) {
    ledgerboard::tests::TestFolder folder("waiting");
    ledgerboard::tests::SteppingClock clock;
    auto made = store::Book::create(folder.file("a.book"), "Owner", clock(),
                                    ledgerboard::tests::fixedChance(1));
    ASSERT_TRUE(made.ok());
    store::Book& book = made.value();
    EXPECT_FALSE(waitingIn(book).value().hasPeer);

    // As the exchange remembers it after a meeting that sent everything (docs/sync.md).
    store::SyncBook log(book);
    const auto numbers = log.lastNumbers(book.thisDevice().raw());
    ASSERT_TRUE(numbers.ok());
    store::Taking taking;
    taking.remember = {{"sync.epoch", std::string("1")},
                       {"sync.acknowledged.0", numbers.value()[0]},
                       {"sync.acknowledged.1", numbers.value()[1]}};
    ASSERT_TRUE(log.take(taking).ok());
    EXPECT_TRUE(waitingIn(book).value().hasPeer);
    EXPECT_TRUE(waitingIn(book).value().isEmpty());

    store::Action action("a visit");
    model::Job job;
    job.id = book.newId<Kind::Job>(clock());
    job.name = "14 Alder Street";
    action.add(job);
    for (int k = 0; k < 3; ++k) {
        model::Mark mark;
        mark.id = book.newId<Kind::Mark>(clock());
        mark.job = job.id;
        mark.percent = model::Percent::of(10 * k + 10);
        action.add(mark);
    }
    model::Photo photo;
    photo.id = book.newId<Kind::Photo>(clock());
    photo.job = job.id;
    photo.stage = model::Stage::Before;
    action.add(photo);
    ASSERT_TRUE(book.commit(action, clock()).ok());
    const auto waiting = waitingIn(book);
    ASSERT_TRUE(waiting.ok());
    EXPECT_EQ(waiting.value().marks, 3u);
    EXPECT_EQ(waiting.value().photos, 1u);
    EXPECT_EQ(waiting.value().others, 1u);  // the job
}

}  // namespace
}  // namespace ledgerboard::phone
