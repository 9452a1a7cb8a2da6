// Which HTTP status carries which answer of the exchange? One each, both ways.
//
// Answers of the exchange carry a Refused message; those of the transport before it (signatures,
// limits) an object with a "code". So a status alone is never taken for the other's.
#pragma once

#include <optional>

#include "sync/wire/reply.h"

namespace ledgerboard::sync {

[[nodiscard]] int httpStatusOf(Status status);
// Nothing where no answer of the exchange has it.
[[nodiscard]] std::optional<Status> statusAt(int httpStatus);

}  // namespace ledgerboard::sync
