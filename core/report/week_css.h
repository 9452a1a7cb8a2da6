// What does the page look like, on a screen and on a sheet of paper? Its style sheet.
//
// Paper and ink, light or dark as the reader's system asks; light on paper. Sizes are 13, 16, 20
// and 28 px on a screen, gaps steps of 4. Printed, the page is one sheet, two sides, two columns,
// on letter and on A4 alike: the sheet is the printer's own.
#pragma once

#include <string>

namespace ledgerboard::report {

// The text of the one <style> element.
[[nodiscard]] std::string weekCss();

}  // namespace ledgerboard::report
