// Which lines of the bank wait for the owner's decision?
//
// A line is settled where it is filed as a row of spend or a lender's draw that is there, where a
// row of spend bears its bank id (one written anew in place of another does), or where it is said
// to be not ours. Until then it counts nowhere.
// Threads: any number may ask.
#pragma once

#include <set>
#include <string>

#include "core/model/rows.h"

namespace ledgerboard::compute {

// Requires: `rows` holds no voided rows.
class SettledLines {
  public:
    explicit SettledLines(const model::JobRows& rows);

    [[nodiscard]] bool hasBankId(const std::string& id) const { return bankIds_.contains(id); }

    [[nodiscard]] bool isWaiting(const model::BankLine& line) const;

  private:
    std::set<model::RawId> ids_;     // of rows of spend and draws
    std::set<std::string> bankIds_;  // that rows of spend bear
};

}  // namespace ledgerboard::compute
