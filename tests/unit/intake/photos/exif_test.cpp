// Protects: the camera's note is read as the standard says, a note that is wrong or cut short reads
// as none, and a copy for other eyes has nothing of it. How: notes are built byte by byte in
// tests/support/pictures.h from Exif 2.32; each is also cut at every length.
#include "core/intake/photos/exif.h"

#include <gtest/gtest.h>

#include "core/intake/photos/preview.h"

#include "tests/support/pictures.h"

namespace ledgerboard::intake {
namespace {

const std::string& plain() {
    static const std::string kPlain = tests::paintedJpeg(64, 48);
    return kPlain;
}

TEST(CameraNotes, SayWhenHowFarFromUtcAndWhetherWhere) {
    const auto note =
        cameraNoteOf(tests::withCameraTime(plain(), "2026:05:08 14:05:09", "-05:30", true));
    ASSERT_TRUE(note.takenAt);
    EXPECT_EQ(note.takenAt->local, "2026-05-08T14:05:09");
    EXPECT_EQ(note.takenAt->offsetMinutes, -330);
    EXPECT_TRUE(note.saysWhere);
    EXPECT_EQ(note.orientation, 1);
    const auto other = cameraNoteOf(tests::withCameraTime(plain(), "2026:05:08 14:05:09"));
    ASSERT_TRUE(other.takenAt);
    EXPECT_FALSE(other.takenAt->offsetMinutes);
    EXPECT_FALSE(other.saysWhere);
    EXPECT_EQ(cameraNoteOf(tests::withOrientation(plain(), 6)).orientation, 6);
}

TEST(CameraNotes, ThatSayNothingSoundReadAsNone) {
    for (const char* time : {"0000:00:00 00:00:00", "    :  :     :  :  ", "2026:13:08 14:05:09",
                             "2026:05:08 25:05:09", "2026-05-08 14:05:0x", "soon"}) {
        EXPECT_FALSE(cameraNoteOf(tests::withCameraTime(plain(), time)).takenAt) << time;
    }
    for (const char* offset : {"+99:00", "05:00 ", "-05.00"}) {
        const auto note =
            cameraNoteOf(tests::withCameraTime(plain(), "2026:05:08 14:05:09", offset));
        ASSERT_TRUE(note.takenAt) << offset;
        EXPECT_FALSE(note.takenAt->offsetMinutes) << offset;
    }
    EXPECT_FALSE(cameraNoteOf("").takenAt);
    EXPECT_FALSE(cameraNoteOf(plain()).takenAt);
    const std::string whole = tests::withCameraTime(plain(), "2026:05:08 14:05:09", "-05:30", true);
    for (std::size_t size = 0; size < 220; ++size) {
        static_cast<void>(cameraNoteOf(whole.substr(0, size)));  // nothing is read beyond the end
    }
}

TEST(CameraNotes, AreInNoCopy) {
    const std::string whole = tests::withCameraTime(plain(), "2026:05:08 14:05:09", "-05:30", true);
    for (const auto& copy : {copyOf(whole), previewOf(whole)}) {
        ASSERT_TRUE(copy.ok());
        EXPECT_EQ(copy.value().find("Exif"), std::string::npos);
        EXPECT_EQ(copy.value().find("2026"), std::string::npos);
        EXPECT_FALSE(cameraNoteOf(copy.value()).saysWhere);
    }
}

}  // namespace
}  // namespace ledgerboard::intake
