// Protects: nothing but UTF-8 enters the book. How: the boundaries of RFC 3629, section 4 (the
// table of well-formed byte sequences), from both sides.
#include "core/model/utf8.h"

#include <gtest/gtest.h>
#include <string>

namespace ledgerboard::model {
namespace {

TEST(Utf8, TakesEveryBoundaryOfTheTable) {
    for (const std::string text :
         {"", "plain", "\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xEC\xBF\xBF",
          "\xED\x9F\xBF", "\xEE\x80\x80", "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF3\xBF\xBF\xBF",
          "\xF4\x8F\xBF\xBF", "caf\xC3\xA9 \xE2\x88\x92 5"}) {
        EXPECT_TRUE(isUtf8(text)) << text;
    }
    EXPECT_TRUE(isUtf8(std::string("a\0b", 3)));
}

TEST(Utf8, RefusesWhatLiesBeyond) {
    for (const std::string text :
         {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC2", "\xC2\x7F", "\xC2\xC0", "\xE0\x9F\xBF",
          "\xED\xA0\x80", "\xE2\x88", "\xE2\x88X", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
          "\xF5\x80\x80\x80", "\xFF", "\xFE\xFF", "caf\xE9"}) {
        EXPECT_FALSE(isUtf8(text));
    }
}

}  // namespace
}  // namespace ledgerboard::model
