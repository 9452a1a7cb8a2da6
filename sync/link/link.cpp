#include "sync/link/link.h"

#include <array>

#include "core/model/saying.h"
#include "sync/identity/request_signature.h"
#include "sync/wire/bounded_json.h"

namespace ledgerboard::sync {

using model::Instant;

namespace {

// Fills in what a body that is no answer says, for the person and for the program.
void readRefusal(LinkAnswer& answer) {
    const auto said = readJson(answer.body);
    const auto code = said ? textAt(*said, "code") : std::nullopt;
    answer.refusal = code ? refusalNamed(*code) : Refusal::None;
    const std::string status = std::to_string(answer.status);
    answer.message = answer.refusal != Refusal::None ? textOf(answer.refusal)
                     : code ? model::saying("the peer answered %1 (%2)", status, *code).text()
                            : model::saying("the peer answered %1", status).text();
    answer.code = code.value_or("");
}

LinkAnswer answerOf(ClientAnswer&& got, const Place& place) {
    LinkAnswer answer{got.fault, got.status,          Refusal::None,
                      "",        std::move(got.body), textOf(got.fault, place)};
    if (got.fault == Fault::None && !answer.ok()) {
        readRefusal(answer);
    }
    return answer;
}

// Whether the same call may fare better a little later.
bool isPassing(const LinkAnswer& answer) {
    return answer.fault == Fault::Unreachable || answer.fault == Fault::Cut ||
           answer.status == 503 || answer.status == 408 || answer.refusal == Refusal::Expired;
}

std::optional<std::int64_t> timeIn(const std::string& body) {
    const auto said = readJson(body);
    if (!said || !said->is_object() || !said->contains("time") ||
        !(*said)["time"].is_number_integer()) {
        return std::nullopt;
    }
    return (*said)["time"].get<std::int64_t>();
}

}  // namespace

Link::Link(const Place& place, const Digest& certificate, LinkIdentity identity,
           LinkSurroundings surroundings, RetryRules retry, ClientTimeouts timeouts)
    : place_(place),
      certificate_(certificate),
      identity_(std::move(identity)),
      surroundings_(std::move(surroundings)),
      retry_(retry),
      client_(place, certificate, timeouts) {}

Instant Link::peerNow() const {
    return Instant::fromMilliseconds(surroundings_.now().milliseconds() + offsetMs_);
}

LinkAnswer Link::askTime() {
    const std::int64_t before = surroundings_.now().milliseconds();
    LinkAnswer answer = answerOf(client_.get(std::string(kTimePath)), place_);
    const std::int64_t after = surroundings_.now().milliseconds();
    if (!answer.ok()) {
        return answer;
    }
    const auto time = timeIn(answer.body);
    if (!time) {
        answer.status = 0;
        answer.fault = Fault::Cut;
        answer.message =
            model::saying("the peer's time does not read: use programs of one version").text();
        return answer;
    }
    offsetMs_ = *time - (before + (after - before) / 2);  // as if both ways took the same
    return answer;
}

LinkAnswer Link::callOnce(Call call, const std::string& body, int& retryAfterSeconds) {
    Nonce nonce{};
    surroundings_.random(nonce.data(), nonce.size());
    const auto headers = signRequest({"POST", pathOf(call), certificate_}, body, identity_.key,
                                     identity_.device, peerNow(), nonce);
    ClientAnswer got = client_.post(std::string(pathOf(call)),
                                    {{kDeviceHeader, headers.device},
                                     {kTimeHeader, headers.time},
                                     {kNonceHeader, headers.nonce},
                                     {kDigestHeader, headers.digest},
                                     {kSignatureHeader, headers.signature}},
                                    body);
    retryAfterSeconds = got.retryAfterSeconds;
    return answerOf(std::move(got), place_);
}

LinkAnswer Link::call(Call call, const std::string& body) {
    for (int tried = 1;; ++tried) {
        int retryAfterSeconds = 0;
        LinkAnswer answer = callOnce(call, body, retryAfterSeconds);
        if (!isPassing(answer) || tried >= retry_.tries) {
            return answer;
        }
        if (answer.refusal == Refusal::Expired) {
            if (LinkAnswer time = askTime(); !time.ok() && !isPassing(time)) {
                return time;
            }
        }
        std::array<std::uint8_t, 4> chance{};
        surroundings_.random(chance.data(), chance.size());
        const std::uint32_t bits = static_cast<std::uint32_t>(chance[0]) << 24 |
                                   static_cast<std::uint32_t>(chance[1]) << 16 |
                                   static_cast<std::uint32_t>(chance[2]) << 8 | chance[3];
        surroundings_.wait(waitBeforeRetryMs(retry_, tried, retryAfterSeconds, bits));
    }
}

model::Result<Joined> join(const Place& place, const PairingCode& code,
                           const std::optional<Digest>& certificate, const LinkIdentity& identity,
                           const LinkSurroundings& surroundings, ClientTimeouts timeouts,
                           const Introduction& self) {
    Digest pin{};
    if (certificate) {
        pin = *certificate;
    } else {
        auto seen = seenCertificate(place, timeouts);
        if (!seen.ok()) {
            return seen.error();
        }
        pin = seen.value();
    }
    Nonce nonce{};
    surroundings.random(nonce.data(), nonce.size());
    const auto request = makePairingRequest(code, pin, identity.device, identity.key, nonce, self);
    PeerClient client(place, pin, timeouts);
    const LinkAnswer answer =
        answerOf(client.post(std::string(kPairPath), {}, toJson(request)), place);
    if (!answer.ok()) {
        return model::cannotBeMet(answer.message);
    }
    const auto said = readPairingAnswer(answer.body);
    if (!said || !sameDigest(said->proof, peerProof(request, code, pin))) {
        return model::cannotBeMet(
            model::saying("%1 does not know the code: it is not the peer that gave it. This device "
                          "has joined nothing; check the address",
                          toText(place)));
    }
    return Joined{place, pin, said->grant, said->person};
}

}  // namespace ledgerboard::sync
