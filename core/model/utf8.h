// Is this text UTF-8? Everything kept and sent is; whatever else a file holds is refused at the
// door.
//
// Source: RFC 3629 section 4 (the byte sequences that are UTF-8: no overlong forms, no surrogates,
// nothing above U+10FFFF).
#pragma once

#include <string_view>

namespace ledgerboard::model {

// True for the empty text. Zero bytes are UTF-8; whether they may stand is the caller's question.
[[nodiscard]] bool isUtf8(std::string_view text);

}  // namespace ledgerboard::model
