#include "sync/peer/peer_server.h"

#include <array>
#include <chrono>

#include <nlohmann/json.hpp>

#include "sync/identity/pairing.h"
#include "sync/identity/request_signature.h"
#include "sync/wire/calls.h"
#include "sync/wire/limits.h"

namespace ledgerboard::sync {

using model::Instant;

namespace {

const std::array<Route, 11>& routes() {
    static const std::array<Route, 11> kRoutes = {{
        {"GET", kTimePath, 0},
        {"GET", kHealthPath, 0},
        {"POST", kPairPath, kMostPairingBytes},
        {"POST", pathOf(Call::Hello), kMostBodyBytes},
        {"POST", pathOf(Call::Push), kMostBodyBytes},
        {"POST", pathOf(Call::Pull), kMostBodyBytes},
        {"POST", pathOf(Call::Snapshot), kMostBodyBytes},
        {"POST", pathOf(Call::PhotoHave), kMostBodyBytes},
        {"POST", pathOf(Call::PhotoPart), kMostBodyBytes},
        {"POST", pathOf(Call::Roster), kMostBodyBytes},
        {"POST", pathOf(Call::Invite), kMostPairingBytes},
    }};
    return kRoutes;
}

constexpr std::array<std::string_view, 5> kKeptHeaders = {kDeviceHeader, kTimeHeader, kNonceHeader,
                                                          kDigestHeader, kSignatureHeader};

SignatureHeaders signatureOf(const GuardedRequest& request) {
    const auto at = [&](const char* name) {
        const auto found = request.headers.find(name);
        return found == request.headers.end() ? std::string() : found->second;
    };
    return {at(kDeviceHeader), at(kTimeHeader), at(kNonceHeader), at(kDigestHeader),
            at(kSignatureHeader)};
}

// The last part of a path: what the log calls a call.
std::string callName(const std::string& path) {
    return path.substr(path.rfind('/') + 1);
}

std::string failed() {
    return R"({"code":"failed","message":"The peer could not do it: its log says more."})";
}

}  // namespace

model::Result<std::unique_ptr<PeerServer>> PeerServer::make(const PeerParts& parts) {
    std::unique_ptr<PeerServer> server(new PeerServer(parts));
    PeerServer* self = server.get();
    GuardSettings settings;
    settings.rules = {routes(), kKeptHeaders};
    settings.limits = parts.limits;
    settings.certificatePem = parts.certificate.certificatePem;
    settings.keyPem = parts.certificate.keyPem;
    settings.gate = [self](const GuardedRequest& request) { return self->gate(request); };
    settings.answer = [self](const GuardedRequest& request) { return self->answer(request); };
    settings.refused = [self](const GuardedRefusal& refusal) {
        Event event;
        event.what = "refused";
        event.code = refusal.why;
        event.address = refusal.address;
        event.status = refusal.status == 0 ? -1 : refusal.status;
        self->parts_.log.write(event, self->parts_.now());
    };
    auto guard = GuardedServer::make(std::move(settings));
    if (!guard.ok()) {
        return guard.error();
    }
    server->guard_ = std::move(guard.value());
    return server;
}

GuardedAnswer PeerServer::refuse(Refusal refusal, const GuardedRequest& request,
                                 const model::RawId& device) {
    const Instant now = parts_.now();
    Event event;
    event.what = "refused";
    event.call = callName(request.path);
    event.code = nameOf(refusal);
    event.address = request.address;
    event.device = device;
    event.status = statusOf(refusal);
    parts_.log.write(event, now);
    nlohmann::json body{{"code", nameOf(refusal)}, {"message", textOf(refusal)}};
    if (refusal == Refusal::Expired) {
        body["time"] = now.milliseconds();
    }
    return {statusOf(refusal), body.dump(), "application/json",
            statusOf(refusal) == 503 ? kRetryAfterSeconds : 0};
}

Gate PeerServer::gate(const GuardedRequest& request) {
    if (!callAt(request.path)) {
        return {};  // time, health and pairing are for strangers
    }
    const RequestLine line{request.method, request.path, parts_.certificate.digest};
    const Verdict verdict =
        verifyRequest(line, signatureOf(request), parts_.devices, parts_.nonces, parts_.now());
    // What a device that was shut out still sends is set aside behind the door, for the owner to
    // see; it may do nothing else.
    const bool late = verdict.refusal == Refusal::Revoked && callAt(request.path) == Call::Push;
    if (verdict.refusal != Refusal::None && !late) {
        return {refuse(verdict.refusal, request, verdict.device), {}};
    }
    return {std::nullopt, verdict.device};
}

// A store that is out of reach may be there again in a moment; a disk that fails will not.
GuardedAnswer PeerServer::notKept(const model::Error& error, const GuardedRequest& request) {
    return error.code == model::ErrorCode::CannotBeMet
               ? refuse(Refusal::Unready, request, {})
               : GuardedAnswer{500, failed(), "application/json", 0};
}

GuardedAnswer PeerServer::pair(const GuardedRequest& request) {
    const auto asked = readPairingRequest(request.body);
    if (!asked) {
        return refuse(Refusal::Malformed, request, {});
    }
    const Instant now = parts_.now();
    const Redeemed redeemed = parts_.invitations.redeem(*asked, now);
    if (redeemed.refusal != Refusal::None) {
        return refuse(redeemed.refusal, request, {});
    }
    const auto admitted = parts_.devices.admit(asked->device, asked->key, redeemed.grant, now);
    if (!admitted.ok()) {
        return notKept(admitted.error(), request);
    }
    if (admitted.value() != Refusal::None) {
        return refuse(admitted.value(), request, asked->device);
    }
    const auto person = parts_.handler.welcome({asked->device, redeemed.grant, asked->self}, now);
    if (!person.ok()) {
        return notKept(person.error(), request);
    }
    Event event;
    event.what = "joined";
    event.address = request.address;
    event.device = asked->device;
    event.code = roleName(redeemed.grant.role);
    parts_.log.write(event, now);
    return {200, toJson(PairingAnswer{redeemed.proof, redeemed.grant, person.value()}),
            "application/json", 0};
}

GuardedAnswer PeerServer::answerCall(Call call, const GuardedRequest& request) {
    if (!isSignedBody(signatureOf(request), request.body)) {
        return refuse(Refusal::Altered, request, request.caller);
    }
    HandlerReply reply = parts_.handler.answer(call, {request.caller}, request.body, parts_.now());
    if (reply.body.size() > kMostReplyBytes) {
        reply = {500, failed()};
    }
    const bool bytes = call == Call::PhotoPart && reply.status == 200;
    return {reply.status, std::move(reply.body),
            bytes ? "application/octet-stream" : "application/json",
            reply.status == 503 ? kRetryAfterSeconds : 0};
}

GuardedAnswer PeerServer::answer(const GuardedRequest& request) {
    if (request.path == kTimePath) {
        const nlohmann::json body{{"time", parts_.now().milliseconds()}, {"versions", {1}}};
        return {200, body.dump(), "application/json", 0};
    }
    if (request.path == kHealthPath) {
        // Without its store it is no use, and a balancer may ask the next one.
        return parts_.devices.count().ok()
                   ? GuardedAnswer{200, R"({"well":true})", "application/json", 0}
                   : GuardedAnswer{503, R"({"well":false})", "application/json",
                                   kRetryAfterSeconds};
    }
    if (request.path == kPairPath) {
        return pair(request);
    }
    const auto call = callAt(request.path);
    if (!call || request.caller.isNil()) {
        return refuse(Refusal::Malformed, request, {});
    }
    const auto begun = std::chrono::steady_clock::now();
    GuardedAnswer answer = answerCall(*call, request);
    Event event;
    event.what = "answered";
    event.call = nameOf(*call);
    event.address = request.address;
    event.device = request.caller;
    event.status = answer.status;
    event.bytesIn = static_cast<std::int64_t>(request.body.size());
    event.bytesOut = static_cast<std::int64_t>(answer.body.size());
    event.ms = std::chrono::duration_cast<std::chrono::milliseconds>(
                   std::chrono::steady_clock::now() - begun)
                   .count();
    parts_.log.write(event, parts_.now());
    return answer;
}

}  // namespace ledgerboard::sync
