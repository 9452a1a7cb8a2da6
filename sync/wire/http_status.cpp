#include "sync/wire/http_status.h"

#include <array>
#include <utility>

namespace ledgerboard::sync {

namespace {

constexpr std::array<std::pair<Status, int>, 9> kPairs = {{
    {Status::Ok, 200},
    {Status::Malformed, 422},
    {Status::NotAllowed, 403},
    {Status::NotThere, 404},
    {Status::Revoked, 410},
    {Status::Ahead, 425},
    {Status::OtherContent, 409},
    {Status::TooMuch, 429},
    {Status::Failed, 500},
}};

}  // namespace

int httpStatusOf(Status status) {
    for (const auto& [each, http] : kPairs) {
        if (each == status) {
            return http;
        }
    }
    return 500;
}

std::optional<Status> statusAt(int httpStatus) {
    for (const auto& [each, http] : kPairs) {
        if (http == httpStatus) {
            return each;
        }
    }
    return std::nullopt;
}

}  // namespace ledgerboard::sync
