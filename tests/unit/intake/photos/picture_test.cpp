// Protects: the size of a JPEG is what its frame header says, and what is no picture is told so in
// words for the person who has to save it anew. The frame header is read here by hand, as ITU-T
// T.81 (JPEG), B.2.2 lays it out: marker FFC0, length, precision, height, width.
#include "core/intake/photos/picture.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/pictures.h"

namespace ledgerboard::intake {
namespace {

using testing::HasSubstr;

int twoBytes(const std::string& bytes, std::size_t at) {
    return static_cast<unsigned char>(bytes[at]) << 8 | static_cast<unsigned char>(bytes[at + 1]);
}

TEST(Jpeg, SizeIsThatOfTheFrameHeader) {
    for (const auto& [width, height] : {std::pair{640, 480}, std::pair{31, 500}, std::pair{1, 1}}) {
        const std::string bytes = tests::paintedJpeg(width, height);
        const auto frame = bytes.find("\xFF\xC0");
        ASSERT_NE(frame, std::string::npos);
        const auto size = pictureSize(bytes);
        ASSERT_TRUE(size.ok()) << size.error().message;
        EXPECT_EQ(size.value().height, twoBytes(bytes, frame + 5));
        EXPECT_EQ(size.value().width, twoBytes(bytes, frame + 7));
        EXPECT_EQ(size.value().width, width);
    }
}

TEST(Jpeg, SaysWhatAnotherFileIs) {
    const std::string jpeg = tests::paintedJpeg(64, 64);
    const std::vector<std::pair<std::string, std::string>> cases = {
        {"", "is empty"},
        {"not a picture at all", "is not a JPEG or HEIC picture"},
        {std::string("\x89PNG\r\n\x1A\n\0\0\0\rIHDR", 16), "is a PNG picture"},
        {std::string("RIFF\x10\0\0\0WEBPVP8 ", 16), "is a WebP picture"},
        {std::string("\0\0\0\x18"
                     "ftypheic\0\0\0\0",
                     16),
         "the picture is damaged, cut short or of a kind that is not read here"},
        {"%PDF-1.7", "is a PDF document"},
        {"GIF89a", "is a GIF picture"},
        {jpeg.substr(0, 2), "is not a JPEG or HEIC picture, or damaged"},
        {jpeg.substr(0, jpeg.find("\xFF\xC0") + 4), "is not a JPEG or HEIC picture, or damaged"},
    };
    for (const auto& [bytes, says] : cases) {
        const auto size = pictureSize(bytes);
        ASSERT_FALSE(size.ok()) << says;
        EXPECT_THAT(size.error().message, HasSubstr(says));
        EXPECT_THAT(size.error().message, HasSubstr("save it as JPEG"));
    }
}

}  // namespace
}  // namespace ledgerboard::intake
