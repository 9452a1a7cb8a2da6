#include "sync/identity/request_signature.h"

#include <charconv>

namespace ledgerboard::sync {

namespace {

constexpr std::string_view kLabel = "ledgerboard request 1";

std::string signedBytes(const RequestLine& request, const SignatureHeaders& headers) {
    std::string out;
    const std::string certificate = hexOf(request.certificate);
    for (const std::string_view line :
         {kLabel, request.method, request.path, std::string_view(headers.time),
          std::string_view(headers.nonce), std::string_view(headers.device),
          std::string_view(headers.digest), std::string_view(certificate)}) {
        out += line;
        out += '\n';
    }
    return out;
}

// A time has one spelling: digits, no sign, no leading zero.
std::optional<model::Instant> timeIn(const std::string& text) {
    std::int64_t ms = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), ms);
    const bool whole = problem == std::errc() && end == text.data() + text.size();
    if (!whole || ms <= 0 || text.front() == '0') {
        return std::nullopt;
    }
    return model::Instant::fromMilliseconds(ms);
}

std::optional<model::RawId> deviceIn(const std::string& text) {
    const auto bytes = fromHex<std::array<std::uint8_t, model::RawId::kBytes>>(text);
    if (!bytes) {
        return std::nullopt;
    }
    return model::RawId(*bytes);
}

bool isWithinWindow(model::Instant signedAt, model::Instant now) {
    const std::int64_t apart = signedAt.milliseconds() - now.milliseconds();
    return apart >= -kSignatureWindowMs && apart <= kSignatureWindowMs;
}

}  // namespace

SignatureHeaders signRequest(const RequestLine& request, std::string_view body,
                             const DeviceKey& key, const model::RawId& device, model::Instant now,
                             const Nonce& nonce) {
    SignatureHeaders headers{
        device.hex(), std::to_string(now.milliseconds()), hexOf(nonce), hexOf(sha256(body)), {}};
    headers.signature = hexOf(key.sign(signedBytes(request, headers)));
    return headers;
}

Verdict verifyRequest(const RequestLine& request, const SignatureHeaders& headers,
                      const Roster& roster, NonceMemory& nonces, model::Instant now) {
    const auto device = deviceIn(headers.device);
    const auto signedAt = timeIn(headers.time);
    const auto nonce = fromHex<Nonce>(headers.nonce);
    const auto digest = fromHex<Digest>(headers.digest);
    const auto signature = fromHex<Signature>(headers.signature);
    if (!device || !signedAt || !nonce || !digest || !signature) {
        return {Refusal::Malformed, {}};
    }
    const auto found = roster.find(*device);
    if (!found.ok()) {
        return {Refusal::Unready, {}};
    }
    const auto& known = found.value();
    if (!known) {
        return {Refusal::Unknown, {}};
    }
    if (!isSignedBy(known->key, signedBytes(request, headers), *signature)) {
        return {Refusal::Forged, {}};
    }
    if (known->revoked) {
        return {Refusal::Revoked, *device};
    }
    if (!isWithinWindow(*signedAt, now)) {
        return {Refusal::Expired, *device};
    }
    return {nonces.take(*device, *nonce, *signedAt, now), *device};
}

bool isSignedBody(const SignatureHeaders& headers, std::string_view body) {
    return headers.digest == hexOf(sha256(body));
}

}  // namespace ledgerboard::sync
