#include "sync/guard/admissions.h"

#include <algorithm>
#include <arpa/inet.h>
#include <array>

namespace ledgerboard::sync {

Ticket Admissions::enter(const std::string& address) {
    const std::lock_guard<std::mutex> lock(mutex_);
    const auto held = perAddress_.find(address);
    const int count = held == perAddress_.end() ? 0 : held->second;
    if (served_ < limits_.all && count < limits_.perAddress) {
        ++served_;
        ++perAddress_[address];
        return {Admission::Served, address, {}};
    }
    if (turnedAway_ < limits_.turnedAway) {
        ++turnedAway_;
        return {Admission::TurnedAway, address, {}};
    }
    return {Admission::Dropped, address, {}};
}

void Admissions::release(const Ticket& ticket) {
    if (!ticket.device.isNil()) {
        const auto at = perDevice_.find(ticket.device);
        if (--at->second == 0) {
            perDevice_.erase(at);
        }
        return;
    }
    const auto at = perAddress_.find(ticket.address);
    if (--at->second == 0) {
        perAddress_.erase(at);
    }
}

void Admissions::leave(const Ticket& ticket) {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (ticket.admission == Admission::Served) {
        --served_;
        release(ticket);
    } else if (ticket.admission == Admission::TurnedAway) {
        --turnedAway_;
    }
}

bool Admissions::claim(Ticket& ticket, const model::RawId& device) {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (ticket.admission != Admission::Served || device.isNil()) {
        return false;
    }
    if (ticket.device == device) {
        return true;
    }
    int& count = perDevice_[device];
    if (count >= limits_.perDevice) {
        return false;
    }
    ++count;
    release(ticket);
    ticket.device = device;
    return true;
}

std::string addressGroup(const std::string& address) {
    std::array<std::uint8_t, 16> six{};
    if (::inet_pton(AF_INET6, address.c_str(), six.data()) != 1) {
        return address;
    }
    std::array<char, INET6_ADDRSTRLEN> text{};
    constexpr std::array<std::uint8_t, 12> kMapped = {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0xff, 0xff};
    if (std::equal(kMapped.begin(), kMapped.end(), six.begin())) {
        ::inet_ntop(AF_INET, six.data() + kMapped.size(), text.data(), text.size());
        return text.data();
    }
    std::fill(six.begin() + 8, six.end(), std::uint8_t{0});
    ::inet_ntop(AF_INET6, six.data(), text.data(), text.size());
    return std::string(text.data()) + "/64";
}

}  // namespace ledgerboard::sync
