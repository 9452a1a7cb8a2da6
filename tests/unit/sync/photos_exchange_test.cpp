// Protects photos on their way: parts go on from what is held, wrong bytes are not kept, and a crew
// lead gets a copy of what it may see under the copy's own digest, never the original.
#include <gtest/gtest.h>

#include "tests/support/star.h"

namespace ledgerboard::sync {
namespace {

namespace field = model::field;
using model::RawId;
using model::Role;
using tests::Phone;
using tests::Star;

class PhotosExchangeTest : public testing::Test {
  protected:
    PhotosExchangeTest() : star("photos-exchange"), laptop(star.join(Role::Owner)) {
        store::Action action("photo");
        job = star.peerBook->newId(star.now());
        crew = star.peerBook->newId(star.now());
        item = star.peerBook->newId(star.now());
        photo = star.peerBook->newId(star.now());
        receipt = star.peerBook->newId(star.now());
        action.set(job, field::Job::name, std::string("Elm Street"));
        action.set(crew, field::Crew::name, std::string("Tilers"));
        action.set(item, field::Item::job, job);
        action.set(item, field::Item::crew, crew);
        for (const auto& [row, purpose] :
             {std::pair(photo, "site"), std::pair(receipt, "receipt")}) {
            action.set(row, field::Photo::job, job);
            action.set(row, field::Photo::item, item);
            action.set(row, field::Photo::purpose, std::string(purpose));
            action.set(row, field::Photo::digest, digest);
        }
        EXPECT_TRUE(star.peerBook->commit(action, star.now()).ok());
    }

    Reply ask(const Phone& phone, Call call, const std::string& body) {
        return star.peer->answer(call, phone.device(), body, star.now());
    }

    std::int64_t put(const Phone& phone, std::size_t from, std::size_t count) {
        const auto reply =
            ask(phone, Call::PhotoPart,
                write(PhotoPart{digest, static_cast<std::int64_t>(bytes.size()),
                                static_cast<std::int64_t>(from), bytes.substr(from, count)}));
        EXPECT_EQ(reply.status, Status::Ok) << reply.body;
        return reply.status == Status::Ok ? readPhotosAnswer(reply.body).value().held.at(0) : -2;
    }

    Star star;
    Phone laptop;
    RawId job, crew, item, photo, receipt;
    std::string bytes = std::string(700'000, 'p') + "end";
    std::string digest = store::Photos::digestOf(bytes);
};

TEST_F(PhotosExchangeTest, PartsGoOnFromWhatIsHeld) {
    const std::string have = write(PhotosAsk{{digest}});
    EXPECT_EQ(readPhotosAnswer(ask(laptop, Call::PhotoHave, have).body).value().held[0], 0);
    EXPECT_EQ(put(laptop, 0, 500'000), 500'000);
    EXPECT_EQ(put(laptop, 0, 500'000), 500'000);  // again changes nothing
    EXPECT_EQ(put(laptop, 600'000, 10), 500'000);
    EXPECT_EQ(readPhotosAnswer(ask(laptop, Call::PhotoHave, have).body).value().held[0], 500'000);
    EXPECT_EQ(put(laptop, 500'000, bytes.size()), -1);
    EXPECT_EQ(store::Photos(star.peerPath).read(digest).value(), bytes);
    const auto part =
        readPhotoPart(ask(laptop, Call::PhotoPart, write(GetPhotoAsk{digest, {}, 600'000})).body);
    EXPECT_EQ(part.value().bytes, bytes.substr(600'000));
}

TEST_F(PhotosExchangeTest, BytesOfAnotherDigestAreNotKept) {
    const std::string wrong(bytes.size(), 'x');
    auto reply = ask(laptop, Call::PhotoPart, write(PhotoPart{digest, 5, 0, wrong.substr(0, 5)}));
    EXPECT_EQ(reply.status, Status::Malformed);
    EXPECT_EQ(store::Photos(star.peerPath).check(digest), store::PhotoState::Missing);
    EXPECT_EQ(put(laptop, 0, 10), 10);  // and can be sent anew
    const std::string unknown(64, 'b');
    EXPECT_EQ(ask(laptop, Call::PhotoPart, write(PhotoPart{unknown, 5, 0, "12345"})).status,
              Status::NotThere);
}

TEST_F(PhotosExchangeTest, ACrewLeadGetsACopyOfSitePhotosAlone) {
    put(laptop, 0, 500'000);
    put(laptop, 500'000, bytes.size());
    Phone lead = star.join(Role::CrewLead, crew);
    ASSERT_TRUE(star.meet(lead).ok());
    EXPECT_TRUE(model::isEmpty(
        lead.book->record(model::Kind::Photo, photo).value()->at(field::Photo::digest)));
    EXPECT_FALSE(lead.book->record(model::Kind::Photo, receipt).value());
    const auto copy = ask(lead, Call::PhotoPart, write(GetPhotoAsk{"", photo, 0}));
    ASSERT_EQ(copy.status, Status::Ok);
    EXPECT_EQ(copy.body.find(digest), std::string::npos);
    EXPECT_EQ(readPhotoPart(copy.body).value().bytes, "copy of pppp");
    for (const auto& wanted : {GetPhotoAsk{"", receipt, 0}, GetPhotoAsk{digest, {}, 0}}) {
        EXPECT_EQ(ask(lead, Call::PhotoPart, write(wanted)).status, Status::NotThere);
    }
    // Nor is it told whether the peer has what it did not write.
    EXPECT_EQ(readPhotosAnswer(ask(lead, Call::PhotoHave, write(PhotosAsk{{digest}})).body)
                  .value()
                  .held[0],
              0);
}

}  // namespace
}  // namespace ledgerboard::sync
