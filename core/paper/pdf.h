// How does a paper become a PDF?
//
// Blocks one below the other on sheets of US Letter or A4; a table goes on to the next sheet with
// its headings again, a line of it is cut only where it is longer than a sheet, a heading stays
// with what it is of. Words never run over their column or the sheet. At the foot of each sheet
// stand the paper's foot and "Page n of m". The same paper and size give the same bytes wherever
// the same fonts are (Lato and Roboto Slab, and others for letters these lack). Threads: any number
// may ask.
#pragma once

#include <string>

#include "core/model/result.h"
#include "core/paper/paper.h"

namespace ledgerboard::paper {

// Errors: CannotBeMet where memory ran out.
[[nodiscard]] model::Result<std::string> pdfBytes(const Paper& paper, Size size);

}  // namespace ledgerboard::paper
