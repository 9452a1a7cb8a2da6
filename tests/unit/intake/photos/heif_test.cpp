// Protects: a telephone's HEIC is a photo like any other: its size, its camera's time and place,
// and copies for other eyes that hold nothing of them; what is cut short gives an error and no
// more. How: pictures coded by libheif, its note by hand after Exif 2.32.
#include "core/intake/photos/heif.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/photos/exif.h"
#include "core/intake/photos/preview.h"

#include "tests/support/heif_pictures.h"

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

const std::string& withNote() {
    static const std::string kPicture =
        tests::paintedHeif(960, 640, "2026:05:08 14:05:09", "-05:30", true);
    return kPicture;
}

TEST(Heif, HasTheSizeItWasMadeWith) {
    const auto size = pictureSize(withNote());
    ASSERT_TRUE(size.ok()) << size.error().message;
    EXPECT_EQ(size.value().width, 960);
    EXPECT_EQ(size.value().height, 640);
}

TEST(Heif, SaysWhenItWasTakenAndThatItSaysWhere) {
    const auto note = cameraNoteOf(withNote());
    ASSERT_TRUE(note.takenAt);
    EXPECT_EQ(note.takenAt->local, "2026-05-08T14:05:09");
    EXPECT_EQ(note.takenAt->offsetMinutes, -330);
    EXPECT_TRUE(note.saysWhere);
    EXPECT_EQ(note.orientation, 1);
    EXPECT_FALSE(cameraNoteOf(tests::paintedHeif(64, 64)).takenAt);
}

TEST(Heif, GivesCopiesAsJpegThatHoldNothingOfTheCameras) {
    const auto preview = previewOf(withNote());
    ASSERT_TRUE(preview.ok()) << preview.error().message;
    const auto shown = tests::seen(preview.value());
    EXPECT_EQ(shown.width, 480);
    EXPECT_EQ(shown.height, 320);
    EXPECT_EQ(shown.corners, tests::kUpright);
    const auto copy = copyOf(withNote());
    ASSERT_TRUE(copy.ok());
    EXPECT_EQ(tests::seen(copy.value()).width, 960);
    for (const auto& one : {preview.value(), copy.value()}) {
        EXPECT_EQ(one.find("Exif"), std::string::npos);
        EXPECT_FALSE(cameraNoteOf(one).saysWhere);
    }
}

TEST(Heif, CutShortIsAnErrorAndNoMore) {
    const std::string& whole = withNote();
    ASSERT_TRUE(isHeif(whole));
    for (std::size_t size = 0; size < whole.size(); size += 1 + whole.size() / 97) {
        const auto part = std::string_view(whole).substr(0, size);
        static_cast<void>(cameraNoteOf(part));
        const auto preview = previewOf(part);
        EXPECT_FALSE(preview.ok()) << size << " of " << whole.size();
    }
}

TEST(Heif, LargerThanACameraMakesIsRefusedBeforeItIsDecoded) {
    // The size stands in the box `ispe` (ISO/IEC 23008-12, 6.5.3): version and flags, then width
    // and height, four bytes each.
    std::string bytes = tests::paintedHeif(64, 64);
    for (auto at = bytes.find("ispe"); at != std::string::npos; at = bytes.find("ispe", at + 4)) {
        bytes.replace(at + 8, 8, std::string("\0\0\x3f\xff\0\0\x3f\xff", 8));
    }
    const auto size = pictureSize(bytes);
    ASSERT_FALSE(size.ok());
    EXPECT_THAT(size.error().message, HasSubstr("larger than a camera makes"));
    EXPECT_FALSE(previewOf(bytes).ok());
}

}  // namespace
}  // namespace ledgerboard::intake
