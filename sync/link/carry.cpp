#include "sync/link/carry.h"

#include "sync/wire/http_status.h"

namespace ledgerboard::sync {

Carry carryOver(Link& link) {
    return [&link](Call call, const std::string& body) -> model::Result<Reply> {
        LinkAnswer answer = link.call(call, body);
        if (answer.refusal == Refusal::Revoked) {
            return Reply{Status::Revoked, write(Refused{answer.message, {}})};
        }
        const auto status = statusAt(answer.status);
        if (answer.fault != Fault::None || !answer.code.empty() || !status) {
            return model::cannotBeMet(answer.message);
        }
        return Reply{*status, std::move(answer.body)};
    };
}

}  // namespace ledgerboard::sync
