#include "core/compute/bank_lines.h"

namespace ledgerboard::compute {

SettledLines::SettledLines(const model::JobRows& rows) {
    for (const auto& spend : rows.spends) {
        ids_.insert(spend.id.raw());
        if (!spend.bankId.empty()) {
            bankIds_.insert(spend.bankId);
        }
    }
    for (const auto& draw : rows.draws) {
        ids_.insert(draw.id.raw());
    }
}

bool SettledLines::isWaiting(const model::BankLine& line) const {
    const auto lives = [&](model::RawId id) { return !id.isNil() && ids_.contains(id); };
    return !line.notOurs && !lives(line.spend.raw()) && !lives(line.draw.raw()) &&
           !hasBankId(line.bankId);
}

}  // namespace ledgerboard::compute
