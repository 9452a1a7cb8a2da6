#include "sync/identity/nonces.h"

#include <algorithm>

namespace ledgerboard::sync {

namespace {

model::RawId deviceIn(const std::array<std::uint8_t, 32>& key) {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    std::copy_n(key.begin(), bytes.size(), bytes.begin());
    return model::RawId(bytes);
}

}  // namespace

std::size_t RecentNonces::KeyHash::operator()(const Key& key) const noexcept {
    // Only signed requests come here, so a device could at most slow down its own.
    std::size_t hash = 0;
    for (const std::uint8_t byte : key) {
        hash = hash * 1099511628211u + byte;
    }
    return hash;
}

void RecentNonces::forget(std::int64_t nowMs) {
    while (!untilMs_.empty() && untilMs_.begin()->first < nowMs) {
        const Key& key = untilMs_.begin()->second;
        const auto count = perDevice_.find(deviceIn(key));
        if (--count->second == 0) {
            perDevice_.erase(count);
        }
        taken_.erase(key);
        untilMs_.erase(untilMs_.begin());
    }
}

Refusal RecentNonces::take(const model::RawId& device, const Nonce& nonce, model::Instant signedAt,
                           model::Instant now) {
    if (signedAt <= begin_) {
        return Refusal::Expired;
    }
    Key key{};
    std::copy(device.bytes().begin(), device.bytes().end(), key.begin());
    std::copy(nonce.begin(), nonce.end(), key.begin() + model::RawId::kBytes);

    const std::lock_guard<std::mutex> lock(mutex_);
    forget(now.milliseconds());
    if (taken_.count(key) != 0) {
        return Refusal::Replayed;
    }
    const auto count = perDevice_.find(device);
    if (taken_.size() >= most_ || (count != perDevice_.end() && count->second >= mostPerDevice_)) {
        return Refusal::Crowded;
    }
    taken_.insert(key);
    untilMs_.emplace(signedAt.milliseconds() + kSignatureWindowMs, key);
    ++perDevice_[device];
    return Refusal::None;
}

std::size_t RecentNonces::size() const {
    const std::lock_guard<std::mutex> lock(mutex_);
    return taken_.size();
}

}  // namespace ledgerboard::sync
