// How does a terminal show an invitation that a phone's camera reads? As a QR code of half blocks,
// two rows to a line, with the light border a camera needs.
//
// Source: ISO/IEC 18004 for the code, by libqrencode, error correction M.
#pragma once

#include <string>
#include <vector>

#include "core/model/result.h"

namespace ledgerboard::sync {

// The modules, row by row, without border; true is dark. Errors (CannotBeMet): too long.
[[nodiscard]] model::Result<std::vector<std::vector<bool>>> qrModules(const std::string& text);

// Lines of UTF-8. With `colours` the terminal is told black on white, so that it reads on a dark
// one as well; without, light modules are blocks, as fits light letters on a dark ground.
[[nodiscard]] std::string qrPicture(const std::vector<std::vector<bool>>& modules, bool colours);

}  // namespace ledgerboard::sync
