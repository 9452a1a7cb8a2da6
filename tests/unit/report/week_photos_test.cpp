// Protects: which pictures stand on the week's page: new ones first, finished work before begun,
// one of each room before two of any, and never a receipt or a picture of tomorrow. Each test names
// its photos by their captions and says the order in full.
#include "core/report/week_photos.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::report {
namespace {

using model::Photo;
using model::Purpose;
using model::Stage;
using testing::ElementsAre;
using testing::IsEmpty;

constexpr model::Date kToday = model::Date::fromDays(20'595);  // 2026-05-22

template <model::Kind K>
model::Id<K> id(std::uint8_t number) {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    bytes.back() = number;
    return model::Id<K>(model::RawId(bytes));
}

class WeekPhotos : public testing::Test {
  protected:
    // A photo taken at noon, so many days before today.
    Photo& add(const std::string& caption, std::uint8_t space, Stage stage, int daysBefore) {
        Photo photo;
        photo.id = id<model::Kind::Photo>(static_cast<std::uint8_t>(rows_.photos.size() + 1));
        photo.caption = caption;
        photo.digest = "some digest";
        if (space > 0) {
            photo.space = id<model::Kind::Space>(space);
        }
        photo.stage = stage;
        photo.purpose = Purpose::Site;
        constexpr std::int64_t kDay = 86'400'000;
        photo.takenAt =
            model::Instant::fromMilliseconds((kToday.days() - daysBefore) * kDay + kDay / 2);
        rows_.photos.push_back(photo);
        return rows_.photos.back();
    }

    std::vector<std::string> order() {
        std::vector<std::string> captions;
        for (const auto* photo : weekPhotos(rows_, kToday)) {
            captions.push_back(photo->caption);
        }
        return captions;
    }

    model::JobRows rows_;
};

TEST_F(WeekPhotos, NoneWhereThereAreNone) {
    EXPECT_THAT(order(), IsEmpty());
}

TEST_F(WeekPhotos, AfterComesBeforeDuringBeforeBefore) {
    add("before", 1, Stage::Before, 0);
    add("not said", 2, Stage::Unset, 0);
    add("during", 3, Stage::During, 1);
    add("after", 4, Stage::After, 2);
    EXPECT_THAT(order(), ElementsAre("after", "during", "before", "not said"));
}

TEST_F(WeekPhotos, ThisWeekComesBeforeEarlierWeeks) {
    add("finished last month", 1, Stage::After, 30);
    add("a week ago", 2, Stage::After, 7);  // Friday to Friday: last week's page had it
    add("six days ago", 3, Stage::During, 6);
    EXPECT_THAT(order(), ElementsAre("six days ago", "a week ago", "finished last month"));
}

TEST_F(WeekPhotos, TheLaterOfTwoComesFirst) {
    add("Tuesday", 1, Stage::After, 3);
    add("Thursday", 2, Stage::After, 1);
    add("Wednesday", 3, Stage::After, 2);
    add("Thursday too, entered later", 4, Stage::After, 1);
    EXPECT_THAT(order(),
                ElementsAre("Thursday too, entered later", "Thursday", "Wednesday", "Tuesday"));
}

TEST_F(WeekPhotos, EveryRoomBeforeTheSecondOfAny) {
    add("kitchen, best", 1, Stage::After, 0);
    add("kitchen, second", 1, Stage::After, 1);
    add("kitchen, third", 1, Stage::After, 2);
    add("bath, before", 2, Stage::Before, 40);
    add("bath, older still", 2, Stage::Before, 41);
    add("no room", 0, Stage::During, 0);
    EXPECT_THAT(order(), ElementsAre("kitchen, best", "no room", "bath, before", "kitchen, second",
                                     "bath, older still", "kitchen, third"));
}

TEST_F(WeekPhotos, LeavesOutReceiptsPapersTheFutureAndWhatHasNoPicture) {
    add("receipt", 1, Stage::After, 0).purpose = Purpose::Receipt;
    add("paper", 2, Stage::After, 0).purpose = Purpose::Paper;
    add("tomorrow", 3, Stage::After, -1);
    add("no picture", 4, Stage::After, 0).digest.clear();
    add("purpose not said", 5, Stage::After, 0).purpose = Purpose::Unset;
    EXPECT_THAT(order(), ElementsAre("purpose not said"));
}

TEST_F(WeekPhotos, WithoutATimeItIsTheOldest) {
    add("no time", 1, Stage::Before, 0).takenAt.reset();
    add("long ago", 2, Stage::Before, 400);
    EXPECT_THAT(order(), ElementsAre("long ago", "no time"));
}

}  // namespace
}  // namespace ledgerboard::report
