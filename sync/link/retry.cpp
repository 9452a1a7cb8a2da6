#include "sync/link/retry.h"

#include <algorithm>

namespace ledgerboard::sync {

namespace {

constexpr int kLongestAskedSeconds = 300;  // a peer that asks for more is not believed

}  // namespace

int waitBeforeRetryMs(const RetryRules& rules, int failed, int retryAfterSeconds,
                      std::uint32_t chance) {
    int whole = std::min(rules.firstMs, rules.mostMs);
    for (int k = 1; k < failed && whole < rules.mostMs; ++k) {
        whole = std::min(whole * 2, rules.mostMs);
    }
    const int half = whole / 2;
    const int asked = std::clamp(retryAfterSeconds, 0, kLongestAskedSeconds) * 1'000;
    return asked + half + static_cast<int>(chance % static_cast<std::uint32_t>(whole - half + 1));
}

}  // namespace ledgerboard::sync
