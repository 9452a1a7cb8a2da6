// How does text from people get into a page without becoming part of its markup?
#pragma once

#include <string>
#include <string_view>

namespace ledgerboard::report {

// `text` safe as the content of an element and of a quoted attribute: & < > " ' become entities,
// control characters and line breaks spaces, bytes that are not UTF-8 U+FFFD.
[[nodiscard]] std::string htmlText(std::string_view text);

// The same, cut to `letters` with an ellipsis, so that one long name cannot push the page over its
// two sides.
[[nodiscard]] std::string htmlClipped(std::string_view text, std::size_t letters);

// A position in a drawing, with two decimals at most and a point whatever the locale: "12.5".
// A value that is not finite prints as "0".
[[nodiscard]] std::string svgNumber(double value);

// Standard base64 (RFC 4648 section 4), for pictures within the page.
[[nodiscard]] std::string base64(std::string_view bytes);

}  // namespace ledgerboard::report
