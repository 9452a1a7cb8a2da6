// How does text from people sit in columns on a terminal, and what becomes of it where only plain
// ASCII can be shown?
//
// Units: widths are terminal columns. Wide East Asian letters and pictures take two, combining
// marks none. Text is UTF-8; what is not UTF-8 shows as a replacement sign, and control characters
// as spaces, so that no name in a book can move the cursor or colour the screen.
// Source: project decision; the ranges of wide and combining letters follow Unicode's East Asian
// Width (UAX #11) coarsely, which is enough to line columns up.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::report {

// What the place that shows the text can show.
enum class Script { Unicode, Ascii };

// `text` made safe to show: control characters and line breaks become spaces, bytes that are not
// UTF-8 become U+FFFD. With Script::Ascii accents come off ("Peña" is "Pena"), signs are spelled
// with their ASCII neighbours, and what has none becomes '?'.
[[nodiscard]] std::string shownText(std::string_view text, Script script);

// Columns that `text` takes. Requires: text as shownText gives it.
[[nodiscard]] std::size_t columnsOf(std::string_view text);

// `text` cut to at most `columns`, its last column an ellipsis ("~" in ASCII) where it was cut.
// Zero columns: empty.
[[nodiscard]] std::string clipped(std::string_view text, std::size_t columns, Script script);

// The front of `text` that fills at most `columns`, with no sign that it was cut.
[[nodiscard]] std::string_view frontOf(std::string_view text, std::size_t columns);

// `text` with spaces added at its end, or at its start, to fill `columns`; longer text is left.
[[nodiscard]] std::string padded(std::string_view text, std::size_t columns);
[[nodiscard]] std::string paddedLeft(std::string_view text, std::size_t columns);

// `text` in lines of at most `columns`, broken at spaces, and within words only where a word alone
// is longer. Empty text: one empty line. Requires: columns >= 2, so that a wide letter fits.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t columns);

}  // namespace ledgerboard::report
