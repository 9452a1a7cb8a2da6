#include "sync/identity/invitation.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace ledgerboard::sync {

using model::Result;

namespace {

constexpr std::string_view kOpening = "LEDGERBOARD:1:";
constexpr std::size_t kLongestHost = 253;  // RFC 1035, section 2.3.4, less what dots take

std::string upper(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
    return text;
}

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return text;
}

std::optional<std::uint16_t> portIn(std::string_view text) {
    std::uint16_t port = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), port);
    if (problem != std::errc() || end != text.data() + text.size() || port == 0) {
        return std::nullopt;
    }
    return port;
}

// Letters, digits, dots and hyphens of a name; colons of an IPv6 address.
bool isHost(std::string_view text) {
    constexpr std::string_view kAllowed =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-:";
    return !text.empty() && text.size() <= kLongestHost &&
           text.find_first_not_of(kAllowed) == std::string_view::npos;
}

}  // namespace

Result<Place> parsePlace(std::string_view text) {
    const auto colon = text.rfind(':');
    const auto port =
        colon == std::string_view::npos ? std::nullopt : portIn(text.substr(colon + 1));
    std::string_view host = text.substr(0, port ? colon : 0);
    const bool bracketed = host.size() > 2 && host.front() == '[' && host.back() == ']';
    if (bracketed) {
        host = host.substr(1, host.size() - 2);
    }
    const bool plainColon = !bracketed && host.find(':') != std::string_view::npos;
    if (!port || !isHost(host) || plainColon) {
        return model::wrongUse(
            "address: write it as host:port, such as 192.0.2.7:7440 or [2001:db8::7]:7440");
    }
    return Place{std::string(host), *port};
}

std::string toText(const Place& place) {
    const bool six = place.host.find(':') != std::string::npos;
    return (six ? "[" + place.host + "]" : place.host) + ":" + std::to_string(place.port);
}

std::string pictureText(const Invitation& invitation) {
    return std::string(kOpening) + invitation.code.plain() + ":" +
           upper(hexOf(invitation.certificate)) + ":" + std::to_string(invitation.place.port) +
           ":" + upper(invitation.place.host);
}

Result<Invitation> parseInvitation(std::string_view text) {
    const auto error = model::wrongUse(
        "invitation: this is not the text of a Ledgerboard invitation; type the address and the "
        "code instead");
    if (text.substr(0, kOpening.size()) != kOpening) {
        return error;
    }
    text.remove_prefix(kOpening.size());
    constexpr std::size_t kFixed = PairingCode::kLength + 1 + 64 + 1;
    if (text.size() < kFixed || text[PairingCode::kLength] != ':' || text[kFixed - 1] != ':') {
        return error;
    }
    auto code = PairingCode::parse(text.substr(0, PairingCode::kLength));
    const auto digest =
        fromHex<Digest>(lower(std::string(text.substr(PairingCode::kLength + 1, 64))));
    const std::string_view rest = text.substr(kFixed);
    const auto colon = std::min(rest.find(':'), rest.size());
    const auto port = portIn(rest.substr(0, colon));
    const std::string_view host = rest.substr(std::min(colon + 1, rest.size()));
    if (!code.ok() || !digest || !port || !isHost(host)) {
        return error;
    }
    return Invitation{code.value(), *digest, Place{lower(std::string(host)), *port}};
}

}  // namespace ledgerboard::sync
