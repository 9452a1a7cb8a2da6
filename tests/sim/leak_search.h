// Is a value that must not be here, here after all? Searches bytes for planted amounts and texts,
// as text and as a database stores them.
//
// A planted amount is a number of 13 digits beginning with 777 (or 776, of what a viewer may see
// and a crew lead may not), so it is six bytes in a file and can't stand there by accident. A
// planted text begins with one of the words below.
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace ledgerboard::sim {

inline constexpr std::int64_t kOwnerAmount = 7'770'000'000'000;
inline constexpr std::int64_t kViewerAmount = 7'760'000'000'000;
inline constexpr std::int64_t kAmounts = 10'000'000'000;  // how many there are of each
inline constexpr std::string_view kOwnerText = "OWNERONLY";
inline constexpr std::string_view kCrewText = "CREWONLY";

// The amounts that were planted, and where each stands.
class LeakSearch {
  public:
    void plant(std::int64_t amount) { planted_.insert(amount); }

    // What was found in `bytes` that neither a crew lead (or, with `viewer`, a viewer) may have;
    // empty where nothing.
    [[nodiscard]] std::optional<std::string> find(std::string_view bytes, bool viewer) const {
        for (const auto word : {kOwnerText, viewer ? kCrewText : kOwnerText}) {
            if (const auto at = bytes.find(word); at != std::string_view::npos) {
                return std::string(bytes.substr(at, 24));
            }
        }
        const std::int64_t lowest = viewer ? kOwnerAmount : kViewerAmount;
        auto hit = [&](std::int64_t number) {
            return number >= lowest && number < kOwnerAmount + kAmounts &&
                   planted_.contains(number);
        };
        for (auto at = bytes.find('\x07'); at != kNone; at = bytes.find('\x07', at + 1)) {
            if (at + 6 <= bytes.size() && hit(bigEndian(bytes, at))) {
                return "the bytes of " + std::to_string(bigEndian(bytes, at));
            }
        }
        for (auto at = bytes.find("77"); at != kNone; at = bytes.find("77", at + 1)) {
            if (const auto number = digits(bytes, at); number && hit(*number)) {
                return "the digits of " + std::to_string(*number);
            }
        }
        return std::nullopt;
    }

  private:
    static constexpr auto kNone = std::string_view::npos;

    static std::int64_t bigEndian(std::string_view bytes, std::size_t at) {
        std::int64_t number = 0;
        for (std::size_t k = 0; k < 6; ++k) {
            number = number << 8 | static_cast<std::uint8_t>(bytes[at + k]);
        }
        return number;
    }

    // Thirteen digits, with or without a point before the last two.
    static std::optional<std::int64_t> digits(std::string_view bytes, std::size_t at) {
        std::int64_t number = 0;
        int count = 0;
        for (; at < bytes.size() && count < 13; ++at) {
            if (bytes[at] == '.' && count == 11) {
                continue;
            }
            if (bytes[at] < '0' || bytes[at] > '9') {
                return std::nullopt;
            }
            number = number * 10 + (bytes[at] - '0');
            ++count;
        }
        return count == 13 ? std::optional(number) : std::nullopt;
    }

    std::set<std::int64_t> planted_;
};

}  // namespace ledgerboard::sim
