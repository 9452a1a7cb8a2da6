// What answers the calls of verified devices? The exchange over the peer's own copy of the book.
//
// One book, one writer: calls are carried out one after another, here and, where several peers
// serve one book, among them all. Threads: any number.
#pragma once

#include <memory>
#include <mutex>

#include "core/store/book.h"
#include "sync/exchange/peer_side.h"
#include "sync/identity/invitation.h"
#include "sync/identity/invitations.h"
#include "sync/peer/device_list.h"
#include "sync/peer/handler.h"
#include "sync/wire/limits.h"

namespace ledgerboard::sync {

class BookHandler final : public Handler {
  public:
    struct Parts {
        store::Book& book;  // outlives it, as do the others
        DeviceList& devices;
        InvitationList& invitations;
        model::FillRandom random;   // asked by one thread at a time
        int waitMs = kStoreWaitMs;  // for another program that writes to the book
    };

    // Errors: of the book.
    [[nodiscard]] static model::Result<std::unique_ptr<BookHandler>> make(const Parts& parts);

    [[nodiscard]] HandlerReply answer(Call call, const Caller& caller, std::string_view body,
                                      model::Instant now) override;

    // The device in the book, as one of the person it was invited for: the one that was named, else
    // an owner's own, who brings a book, else the only owner there is, else a new person. Where the
    // device is in the book already, nothing changes. Returns the person. Errors: of the book.
    [[nodiscard]] model::Result<model::RawId> welcome(const Newcomer& newcomer,
                                                      model::Instant now) override;

    // After the book was restored from a backup, before it serves: as PeerSide::beginEpoch.
    [[nodiscard]] model::Result<void> beginEpoch(model::Instant now) {
        return side_->beginEpoch(now);
    }

    // Where devices reach the peer, to be said in invitations. Before it serves.
    void reachedAt(const Place& place) { place_ = place; }

    // Devices that the book says are shut out are so from here on, at the door. Done at the start
    // and after each entry that shuts one out. Errors: of the book, of the list of devices.
    [[nodiscard]] model::Result<void> heedRevocations(model::Instant now);

  private:
    explicit BookHandler(const Parts& parts) : parts_(parts) {}

    // 503 where the book's store is out of reach or another program writes to it all the time, so
    // that the device asks again; else 500.
    [[nodiscard]] HandlerReply couldNot(model::Instant now) const;

    [[nodiscard]] HandlerReply invite(const Caller& caller, std::string_view body,
                                      model::Instant now);

    [[nodiscard]] model::Result<model::RawId> welcomeWithin(const Newcomer& newcomer,
                                                            model::Instant now);
    // The person the newcomer belongs to; where the book has nobody yet, added to `action`.
    [[nodiscard]] model::Result<model::RawId> personFor(const Newcomer& newcomer,
                                                        store::Action& action, model::Instant now);
    [[nodiscard]] bool shutsOut(Call call, std::string_view body) const;

    Parts parts_;
    Place place_;
    std::mutex mutex_;
    std::unique_ptr<PeerSide> side_;
};

}  // namespace ledgerboard::sync
