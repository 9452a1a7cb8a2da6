#include "sync/link/known_peer.h"

#include "core/model/saying.h"
#include "sync/identity/pairing.h"
#include "sync/identity/private_file.h"
#include "sync/wire/bounded_json.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

constexpr int kVersion = 1;

std::optional<KnownPeer> read(const std::string& text) {
    const auto object = readJson(text, 1);
    if (!object || object->value("version", nlohmann::json()) != kVersion) {
        return std::nullopt;
    }
    KnownPeer peer;
    const auto device = model::RawId::parse(textAt(*object, "device").value_or(""));
    if (!device.ok()) {
        return std::nullopt;
    }
    peer.device = device.value();
    peer.role = roleNamed(textAt(*object, "role").value_or(""));
    const auto joined = object->find("joined");
    peer.joined = joined != object->end() && joined->is_boolean() && joined->get<bool>();
    if (!peer.joined) {
        return peer;
    }
    const auto place = parsePlace(textAt(*object, "address").value_or(""));
    if (!place.ok() || peer.role == model::Role::Unset ||
        !readHex(textAt(*object, "certificate").value_or(""), peer.certificate)) {
        return std::nullopt;
    }
    peer.place = place.value();
    return peer;
}

}  // namespace

std::string peerFileOf(const std::string& bookPath) {
    return bookPath + ".peer";
}

std::string keyFileOf(const std::string& bookPath) {
    return bookPath + ".key";
}

Result<std::optional<KnownPeer>> knownPeerOf(const std::string& bookPath) {
    auto text = readPrivate(peerFileOf(bookPath));
    if (!text.ok()) {
        return text.error();
    }
    if (!text.value()) {
        return std::optional<KnownPeer>();
    }
    auto peer = read(*text.value());
    if (!peer) {
        return model::damaged(
            model::saying("%1 does not say which peer this book meets, or a newer program wrote "
                          "it: join again with 'ledgerboard join --again'",
                          peerFileOf(bookPath)));
    }
    return peer;
}

Result<void> keepKnownPeer(const std::string& bookPath, const KnownPeer& peer) {
    const nlohmann::json object{{"version", kVersion},
                                {"device", peer.device.hex()},
                                {"joined", peer.joined},
                                {"role", roleName(peer.role)},
                                {"address", peer.joined ? toText(peer.place) : ""},
                                {"certificate", hexOf(peer.certificate)}};
    return replacePrivate(peerFileOf(bookPath), object.dump(1) + "\n");
}

}  // namespace ledgerboard::sync
