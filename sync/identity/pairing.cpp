#include "sync/identity/pairing.h"

#include <algorithm>

#include "sync/wire/bounded_json.h"

namespace ledgerboard::sync {

namespace {

constexpr std::string_view kFromDevice = "ledgerboard pairing 1: device to peer\n";
constexpr std::string_view kFromPeer = "ledgerboard pairing 1: peer to device\n";

// The lines both proofs share, behind the label of their direction.
std::string linesOf(std::string_view label, const PairingRequest& request,
                    const Digest& certificate) {
    std::string out(label);
    for (const auto& line : {hexOf(certificate), request.handle, request.device.hex(),
                             hexOf(request.nonce), hexOf(request.key)}) {
        out += line + "\n";
    }
    if (!request.self.person.isNil()) {
        out += "person " + request.self.person.hex() + "\n";
    }
    if (!request.self.called.empty()) {
        out += "called " + request.self.called + "\n";
    }
    return out;
}

template <class Array>
bool readMember(const nlohmann::json& object, const char* name, Array& out) {
    const auto text = textAt(object, name);
    return text && readHex(*text, out);
}

}  // namespace

bool isName(std::string_view text) {
    return text.size() <= kMostNameBytes && std::none_of(text.begin(), text.end(), [](char each) {
               return static_cast<unsigned char>(each) < 0x20 || each == 0x7f;
           });
}

PairingRequest makePairingRequest(const PairingCode& code, const Digest& certificate,
                                  const model::RawId& device, const DeviceKey& key,
                                  const Nonce& nonce, const Introduction& self) {
    PairingRequest request;
    request.handle = code.handle();
    request.device = device;
    request.nonce = nonce;
    request.key = key.publicKey();
    request.self = self;
    const std::string lines = linesOf(kFromDevice, request, certificate);
    request.proof = keyedDigest(code.secret(), lines);
    request.signature = key.sign(lines);
    return request;
}

std::string toJson(const PairingRequest& request) {
    nlohmann::json object{
        {"invitation", request.handle},  {"device", request.device.hex()},
        {"nonce", hexOf(request.nonce)}, {"key", hexOf(request.key)},
        {"proof", hexOf(request.proof)}, {"signature", hexOf(request.signature)},
    };
    if (!request.self.person.isNil()) {
        object["person"] = request.self.person.hex();
    }
    if (!request.self.called.empty()) {
        object["called"] = request.self.called;
    }
    return object.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::optional<PairingRequest> readPairingRequest(std::string_view json) {
    if (json.size() > kMostPairingBytes) {
        return std::nullopt;
    }
    const auto object = readJson(json, 1);
    if (!object) {
        return std::nullopt;
    }
    PairingRequest request;
    const auto handle = textAt(*object, "invitation");
    std::array<std::uint8_t, model::RawId::kBytes> device{};
    if (!handle || !PairingCode::isHandle(*handle) || !readMember(*object, "device", device) ||
        !readMember(*object, "nonce", request.nonce) || !readMember(*object, "key", request.key) ||
        !readMember(*object, "proof", request.proof) ||
        !readMember(*object, "signature", request.signature)) {
        return std::nullopt;
    }
    if (object->contains("person")) {
        std::array<std::uint8_t, model::RawId::kBytes> person{};
        if (!readMember(*object, "person", person)) {
            return std::nullopt;
        }
        request.self.person = model::RawId(person);
    }
    if (object->contains("called")) {
        const auto called = textAt(*object, "called");
        if (!called || !isName(*called)) {
            return std::nullopt;
        }
        request.self.called = *called;
    }
    request.handle = *handle;
    request.device = model::RawId(device);
    return request;
}

std::string roleName(model::Role role) {
    return std::string(model::wordsOf<model::Role>()[static_cast<std::size_t>(role)]);
}

model::Role roleNamed(std::string_view name) {
    const auto words = model::wordsOf<model::Role>();
    for (std::size_t k = 1; k < words.size(); ++k) {
        if (words[k] == name) {
            return static_cast<model::Role>(k);
        }
    }
    return model::Role::Unset;
}

std::string toJson(const PairingAnswer& answer) {
    return nlohmann::json{{"proof", hexOf(answer.proof)},
                          {"role", roleName(answer.grant.role)},
                          {"crew", answer.grant.crew.hex()},
                          {"job", answer.grant.job.hex()},
                          {"person", answer.person.hex()}}
        .dump();
}

std::optional<PairingAnswer> readPairingAnswer(std::string_view json) {
    const auto object = json.size() > kMostPairingBytes ? std::nullopt : readJson(json, 1);
    if (!object) {
        return std::nullopt;
    }
    PairingAnswer answer;
    std::array<std::uint8_t, model::RawId::kBytes> crew{};
    std::array<std::uint8_t, model::RawId::kBytes> job{};
    std::array<std::uint8_t, model::RawId::kBytes> person{};
    answer.grant.role = roleNamed(textAt(*object, "role").value_or(""));
    if (answer.grant.role == model::Role::Unset || !readMember(*object, "proof", answer.proof) ||
        !readMember(*object, "crew", crew) || !readMember(*object, "job", job) ||
        !readMember(*object, "person", person)) {
        return std::nullopt;
    }
    answer.grant.crew = model::RawId(crew);
    answer.grant.job = model::RawId(job);
    answer.person = model::RawId(person);
    return answer;
}

bool provesCode(const PairingRequest& request, const PairingCode& code, const Digest& certificate) {
    return sameDigest(request.proof,
                      keyedDigest(code.secret(), linesOf(kFromDevice, request, certificate)));
}

bool provesKey(const PairingRequest& request, const Digest& certificate) {
    return isSignedBy(request.key, linesOf(kFromDevice, request, certificate), request.signature);
}

Digest peerProof(const PairingRequest& request, const PairingCode& code,
                 const Digest& certificate) {
    return keyedDigest(code.secret(),
                       linesOf(kFromPeer, request, certificate) + hexOf(request.proof) + "\n");
}

}  // namespace ledgerboard::sync
