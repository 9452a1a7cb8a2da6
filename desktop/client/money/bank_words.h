// In what words do the pages say what a line of the bank is taken for?
//
// Threads: the UI's.
#pragma once

#include <memory>

#include <QCoreApplication>
#include <QString>

#include "core/intake/bank/match_line.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

class BankWords {
    Q_DECLARE_TR_FUNCTIONS(BankWords)

  public:
    // "Receipt for Kitchen/cabinets", "draw 2", "not ours"; empty where nothing says.
    [[nodiscard]] static QString taken(const std::shared_ptr<const JobNow>& now,
                                       const intake::LineMatch& match);
    // Who it went to or came from, as the bank writes it.
    [[nodiscard]] static QString written(const model::BankLine& line);
};

}  // namespace ledgerboard::desk
