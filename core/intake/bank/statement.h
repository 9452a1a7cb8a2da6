// Which lines does a bank's download hold? Read from what ledgerboard-ofx, the program beside this
// one that knows OFX, prints of it.
//
// The download itself (Open Financial Exchange, versions 1 and 2, .ofx and .qfx) is never parsed
// here: the library that can is under another licence (desktop/bank).
// Source: desktop/bank/README.md, "What it prints".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/result.h"

namespace ledgerboard::intake {

struct StatementLine {
    std::string account;  // its last four figures
    std::string bankId;   // the bank's own id of the line, one per account
    model::Date postedOn;
    model::Money amount;  // below 0: it left the account
    std::string payee;
    std::string memo;
};

struct Statement {
    std::string currency;  // "USD"; empty where the bank does not say
    std::vector<StatementLine> lines;
};

// How much of a file is looked at to tell whether it is a download.
inline constexpr std::size_t kBeginning = 4096;  // bytes

// Whether these bytes begin as an OFX download does.
[[nodiscard]] bool isBankDownload(std::string_view bytes);

// `printed` is what the helper printed for `file`. Errors (CannotBeMet): not in its form; a line
// without id, with an unreadable date or amount, naming the line and the field.
[[nodiscard]] model::Result<Statement> parseStatement(std::string_view printed,
                                                      const std::string& file);

}  // namespace ledgerboard::intake
