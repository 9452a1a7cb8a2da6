// Protects photos on their way: parts go on from what is held, wrong bytes are not kept, and a crew
// lead gets a copy of what it may see under the copy's own digest, never the original. And the
// device's end: cut after every single call, it goes on where it was and ends with the same files;
// small ones come first; what a crew lead may not see any more is removed from its folder.
#include <gtest/gtest.h>

#include "sync/exchange/device_photos.h"
#include "sync/exchange/photo_files.h"

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

// The device's end. A call beyond `callsUntilCut` fails, after the peer has carried it out.
struct Travel {
    PhotoMeeting meeting;
    bool cut = false;
    std::vector<std::string> asked;  // the first bytes of each part call
};

Travel travel(Star& star, const Phone& phone, bool owner, int callsUntilCut = 1'000'000) {
    Travel out;
    int calls = 0;
    DevicePhotos::Parts parts{phone.book.get(), store::Photos(phone.path), {}, owner, {}, {}};
    parts.carry = [&](Call call, const std::string& body) -> model::Result<Reply> {
        out.asked.push_back(body.substr(0, body.find('\n')));
        Reply reply = star.peer->answer(call, phone.device(), body, star.now());
        return ++calls > callsUntilCut ? model::Result<Reply>(model::cannotBeMet("cut"))
                                       : model::Result<Reply>(reply);
    };
    parts.previewOf = [](std::string_view original) {
        return model::Result<std::string>("small " + std::string(original.substr(0, 4)));
    };
    DevicePhotos photos(std::move(parts));
    out.cut = !photos.meet().ok();
    out.meeting = photos.meeting();
    return out;
}

TEST_F(PhotosExchangeTest, CutAfterEveryCallItGoesOnAndNothingIsSentTwice) {
    ASSERT_TRUE(star.meet(laptop).ok());
    ASSERT_TRUE(store::Photos(laptop.path).keep(bytes).ok());
    Phone other = star.join(Role::Owner);
    ASSERT_TRUE(star.meet(other).ok());
    for (Phone* phone : {&laptop, &other}) {
        std::int64_t moved = 0;
        int meetings = 0;
        for (bool cut = true; cut && meetings < 40; ++meetings) {
            const Travel part = travel(star, *phone, true, 1);
            cut = part.cut;
            moved += part.meeting.sentBytes + part.meeting.receivedBytes;
        }
        EXPECT_GT(meetings, 2);
        EXPECT_LT(meetings, 40);
        EXPECT_EQ(store::Photos(phone->path).read(digest).value(), bytes);
        // Acknowledgements that were lost are not counted, so it can be less, never more but
        // previews.
        EXPECT_LE(moved, static_cast<std::int64_t>(bytes.size()) + 100);
        const Travel none = travel(star, *phone, true);
        EXPECT_EQ(none.meeting.sent + none.meeting.received, 0U);
    }
    EXPECT_EQ(store::Photos(star.peerPath).read(digest).value(), bytes);
}

TEST_F(PhotosExchangeTest, SmallCopiesGoFirstAndStandInForThePicture) {
    ASSERT_TRUE(star.meet(laptop).ok());
    ASSERT_TRUE(store::Photos(laptop.path).keep(bytes).ok());
    // Cut once the small copy has gone: another owner sees it already.
    const Travel begun = travel(star, laptop, true, 2);
    EXPECT_TRUE(begun.cut);
    ASSERT_GE(begun.asked.size(), 2U);
    EXPECT_NE(begun.asked[1].find("preview"), std::string::npos);
    Phone other = star.join(Role::Owner);
    ASSERT_TRUE(star.meet(other).ok());
    EXPECT_EQ(travel(star, other, true).meeting.waiting, 1U);
    model::Photo row;
    row.id = model::Id<model::Kind::Photo>(photo);
    row.digest = digest;
    const store::Photos folder(other.path);
    EXPECT_EQ(fileOf(folder, row), folder.folder() / kPreviews / photo.hex());
    EXPECT_FALSE(travel(star, laptop, true).cut);
    EXPECT_EQ(travel(star, other, true).meeting.waiting, 0U);
    EXPECT_EQ(fileOf(folder, row), folder.pathOf(digest));
}

TEST_F(PhotosExchangeTest, ASpokenNotesSoundReachesOwnersAlone) {
    const std::string sound = "OggS, and what was said in the cellar";
    const std::string spoken = store::Photos::digestOf(sound);
    ASSERT_TRUE(star.meet(laptop).ok());
    ASSERT_TRUE(store::Photos(laptop.path).keep(sound).ok());
    store::Action action("spoken note");
    const RawId note = laptop.book->newId(star.now());
    action.set(note, field::Note::job, job);
    action.set(note, field::Note::sound, spoken);
    ASSERT_TRUE(laptop.book->commit(action, star.now()).ok());
    ASSERT_TRUE(star.meet(laptop).ok());
    EXPECT_EQ(travel(star, laptop, true).meeting.sent, 1U);
    Phone other = star.join(Role::Owner);
    Phone lead = star.join(Role::CrewLead, crew);
    ASSERT_TRUE(star.meet(other).ok());
    ASSERT_TRUE(star.meet(lead).ok());
    travel(star, other, true);
    EXPECT_EQ(store::Photos(other.path).read(spoken).value(), sound);
    EXPECT_FALSE(lead.book->record(model::Kind::Note, note).value());
    for (const auto& wanted : {GetPhotoAsk{spoken, {}, 0}, GetPhotoAsk{"", note, 0}}) {
        EXPECT_EQ(ask(lead, Call::PhotoPart, write(wanted)).status, Status::NotThere);
    }
}

TEST_F(PhotosExchangeTest, ACrewLeadsFolderHasCopiesOfItsOwnAndLosesThemWithTheItem) {
    put(laptop, 0, 500'000);
    put(laptop, 500'000, bytes.size());
    Phone lead = star.join(Role::CrewLead, crew);
    ASSERT_TRUE(star.meet(lead).ok());
    EXPECT_EQ(travel(star, lead, false).meeting.received, 1U);
    const store::Photos folder(lead.path);
    EXPECT_EQ(wholeFile(folder.folder() / kCopies / photo.hex()), "copy of pppp");
    EXPECT_EQ(folder.check(digest), store::PhotoState::Missing);
    EXPECT_FALSE(sizeOf(folder.folder() / kCopies / receipt.hex()));
    store::Action away("to another crew");
    const RawId painters = star.peerBook->newId(star.now());
    away.set(painters, field::Crew::name, std::string("Painters"));
    away.set(item, field::Item::crew, painters);
    ASSERT_TRUE(star.peerBook->commit(away, star.now()).ok());
    ASSERT_TRUE(star.meet(lead).ok());
    EXPECT_EQ(travel(star, lead, false).meeting.removed, 2U);  // the copy and the small one
    EXPECT_FALSE(sizeOf(folder.folder() / kCopies / photo.hex()));
}

}  // namespace
}  // namespace ledgerboard::sync
