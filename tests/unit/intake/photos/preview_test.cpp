// Protects: a preview is small, shows the same picture the way it was held, and carries nothing
// else of what the camera wrote; a picture that can't be read gives none. Pictures are painted in
// four plain corners, so that turning or mirroring one wrongly shows.
#include "core/intake/photos/preview.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/pictures.h"

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;
using testing::Not;
using tests::paintedJpeg;
using tests::seen;

void expectPreview(const std::string& bytes, int width, int height) {
    const auto preview = previewOf(bytes);
    ASSERT_TRUE(preview.ok()) << preview.error().message;
    const auto picture = seen(preview.value());
    EXPECT_EQ(picture.width, width);
    EXPECT_EQ(picture.height, height);
    EXPECT_EQ(picture.corners, tests::kUpright);
}

TEST(Preview, IsAtMost480Wide) {
    expectPreview(paintedJpeg(1200, 900), 480, 360);
    expectPreview(paintedJpeg(900, 1200), 480, 640);
    expectPreview(paintedJpeg(700, 350), 480, 240);  // between two eighths of the decoder
    expectPreview(paintedJpeg(481, 481), 480, 480);
    expectPreview(paintedJpeg(4000, 398), 480, 48);  // 47.8 rounds up
}

TEST(Preview, SmallPicturesKeepTheirSize) {
    expectPreview(paintedJpeg(480, 360), 480, 360);
    expectPreview(paintedJpeg(60, 90), 60, 90);
}

TEST(Preview, IsSmallerThanThePicture) {
    const std::string bytes = paintedJpeg(1200, 900);
    EXPECT_LT(previewOf(bytes).value().size(), bytes.size() / 2);
}

// Where the stored corners belong, by the orientation the camera noted. Source:
// Exif 2.32, 4.6.5.1.6: of 6, "the 0th row is the visual right-hand side of the image, and the 0th
// column is the visual top", so the stored top left is the visual top right; and so on.
TEST(Preview, IsTurnedTheWayTheCameraWasHeld) {
    const std::array<std::pair<int, const char*>, 8> cases = {
        std::pair{1, "rgbw"}, {2, "grwb"}, {3, "wbgr"}, {4, "bwrg"},
        {5, "rbgw"},          {6, "gwrb"}, {7, "wgbr"}, {8, "brwg"}};
    for (const auto& [orientation, stored] : cases) {
        SCOPED_TRACE(orientation);
        const bool onItsSide = orientation >= 5;
        const std::string jpeg =
            onItsSide ? paintedJpeg(60, 80, stored) : paintedJpeg(80, 60, stored);
        expectPreview(tests::withOrientation(jpeg, orientation), 80, 60);
    }
    // Made smaller as it is seen, not as it is stored.
    expectPreview(tests::withOrientation(paintedJpeg(600, 800, "gwrb"), 6), 480, 360);
}

TEST(Preview, AnOrientationThatIsNoneIsUpright) {
    for (const int orientation : {0, 9, 255}) {
        expectPreview(tests::withOrientation(paintedJpeg(80, 60), orientation), 80, 60);
    }
}

TEST(Preview, CarriesNothingTheCameraWrote) {
    const std::string bytes = tests::withOrientation(paintedJpeg(800, 600), 1);
    ASSERT_THAT(bytes, HasSubstr("Exif"));
    EXPECT_THAT(previewOf(bytes).value(), Not(HasSubstr("Exif")));
}

TEST(Preview, NoneOfWhatCannotBeRead) {
    const std::string bytes = paintedJpeg(800, 600);
    EXPECT_FALSE(previewOf("").ok());
    EXPECT_FALSE(previewOf("not a picture").ok());
    const auto cut = previewOf(bytes.substr(0, bytes.size() / 2));
    ASSERT_FALSE(cut.ok());
    EXPECT_THAT(cut.error().message, HasSubstr("cut short"));
}

// Whatever one byte of a picture is, it gives a picture or an error; the sanitizers watch the rest.
TEST(Preview, OneWrongByteDoesNoHarm) {
    const std::string good = tests::withOrientation(paintedJpeg(16, 12), 6);
    std::size_t read = 0;
    for (std::size_t at = 0; at < good.size(); ++at) {
        for (const int change : {0x01, 0xFF}) {
            std::string bytes = good;
            bytes[at] = static_cast<char>(bytes[at] ^ change);
            const auto preview = previewOf(bytes);
            if (preview.ok()) {
                ++read;
                const auto picture = seen(preview.value());
                EXPECT_GT(picture.width, 0) << at;
                EXPECT_LE(picture.width, kPreviewWidth) << at;
            }
        }
    }
    EXPECT_GT(read, 0U);
}

TEST(Preview, RefusesASizeThatNoCameraHas) {
    std::string bytes = paintedJpeg(64, 64);
    const auto frame = bytes.find("\xFF\xC0");
    ASSERT_NE(frame, std::string::npos);
    for (std::size_t k = 5; k < 9; k += 2) {  // height and width: 65,000 each
        bytes[frame + k] = static_cast<char>(65'000 >> 8);
        bytes[frame + k + 1] = static_cast<char>(65'000 & 0xFF);
    }
    const auto preview = previewOf(bytes);
    ASSERT_FALSE(preview.ok());
    EXPECT_THAT(preview.error().message, HasSubstr("larger than a camera makes"));
}

}  // namespace
}  // namespace ledgerboard::intake
