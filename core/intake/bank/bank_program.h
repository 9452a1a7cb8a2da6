// How is a bank's download read? By running ledgerboard-ofx and taking what it prints.
//
// Threads: any, each call for itself.
#pragma once

#include <functional>
#include <string>

#include "core/model/result.h"

namespace ledgerboard::intake {

// What the program at `program` prints of `file`, its days those of `timeZone` (empty: UTC).
// `goOn` is asked ten times a second; where it says no, the program is ended. Empty: always.
// Errors (CannotBeMet): it is not installed; what it says is wrong with the file; it printed more
// than 256 MiB, or ended in another way; it was to go on no more.
[[nodiscard]] model::Result<std::string> readByBankProgram(const std::string& program,
                                                           const std::string& file,
                                                           const std::string& timeZone,
                                                           const std::function<bool()>& goOn = {});

// Where ledgerboard-ofx is installed beside the program at `self`: in the same folder, or in
// ../lib/ledgerboard. The first where there is none.
[[nodiscard]] std::string bankProgramBeside(const std::string& self);

}  // namespace ledgerboard::intake
