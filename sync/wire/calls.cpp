#include "sync/wire/calls.h"

#include <array>

namespace ledgerboard::sync {

namespace {

// In the order of the enum.
constexpr std::array<std::string_view, 8> kPaths = {"/1/hello",    "/1/push",       "/1/pull",
                                                    "/1/snapshot", "/1/photo-have", "/1/photo-part",
                                                    "/1/roster",   "/1/invite"};

}  // namespace

std::string_view pathOf(Call call) {
    return kPaths[static_cast<std::size_t>(call)];
}

std::string_view nameOf(Call call) {
    return pathOf(call).substr(3);
}

std::optional<Call> callAt(std::string_view path) {
    for (std::size_t k = 0; k < kPaths.size(); ++k) {
        if (kPaths[k] == path) {
            return static_cast<Call>(k);
        }
    }
    return std::nullopt;
}

}  // namespace ledgerboard::sync
