#include "sync/link/join_book.h"

#include <filesystem>

#include "core/model/saying.h"
#include "core/store/book.h"

namespace ledgerboard::sync {

using model::Id;
using model::Kind;
using model::RawId;
using model::Result;

namespace {

// Who joins: the device, and whose book it brings.
struct Joining {
    RawId device;
    Introduction self;
    bool hasBook = false;
};

Result<Joining> joiningOf(const JoinAsk& ask, const std::optional<KnownPeer>& known) {
    Joining joining;
    joining.self.called = ask.called;
    std::error_code problem;
    joining.hasBook = std::filesystem::exists(ask.bookPath, problem);
    if (joining.hasBook) {
        auto book = store::Book::open(ask.bookPath, ask.around.random);
        if (!book.ok()) {
            return book.error();
        }
        joining.device = book.value().thisDevice().raw();
        // A book that came from a peer in part is nobody's to bring.
        const bool whole = !known || !known->joined || known->role == model::Role::Owner;
        joining.self.person = whole ? book.value().me().raw() : RawId{};
    } else {
        joining.device =
            known ? known->device : model::IdMaker(ask.around.random).next(ask.around.now());
    }
    return joining;
}

}  // namespace

Result<JoinedBook> joinBook(const JoinAsk& ask) {
    if (!isName(ask.called)) {
        return model::wrongUse(model::saying(
            "a device's name has at most %1 characters, in one line", kMostNameBytes));
    }
    auto known = knownPeerOf(ask.bookPath);
    if (!known.ok() && !ask.again) {
        return known.error();
    }
    const std::optional<KnownPeer> before = known.ok() ? known.value() : std::nullopt;
    if (before && before->joined && !ask.again) {
        return model::cannotBeMet(
            model::saying("%1 has joined the peer at %2 already, and a book has one peer: "
                          "'ledgerboard sync' meets it",
                          ask.bookPath, toText(before->place)));
    }
    auto joining = joiningOf(ask, before);
    if (!joining.ok()) {
        return joining.error();
    }
    const RawId device = joining.value().device;
    auto key = DeviceKey::keptAt(keyFileOf(ask.bookPath), ask.around.random);
    if (!key.ok()) {
        return key.error();
    }
    if (!before) {
        // So that asking again after a lost answer is asking as the same device.
        if (auto kept = keepKnownPeer(ask.bookPath, {{}, {}, device, model::Role::Unset, false});
            !kept.ok()) {
            return kept.error();
        }
    }
    auto joined = join(ask.place, ask.code, ask.certificate, {device, key.value()}, ask.around,
                       ask.timeouts, joining.value().self);
    if (!joined.ok()) {
        return joined.error();
    }
    const Grant& grant = joined.value().grant;
    if (!joining.value().hasBook) {
        auto book =
            store::Book::createJoined(ask.bookPath, Id<Kind::Device>(device),
                                      Id<Kind::Person>(joined.value().person), ask.around.random);
        if (!book.ok()) {
            return book.error();
        }
    }
    const KnownPeer peer{joined.value().place, joined.value().certificate, device, grant.role,
                         true};
    if (auto kept = keepKnownPeer(ask.bookPath, peer); !kept.ok()) {
        return kept.error();
    }
    return JoinedBook{grant, joined.value().person, !joining.value().hasBook};
}

}  // namespace ledgerboard::sync
