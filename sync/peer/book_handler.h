// What answers the calls of verified devices? The exchange over the peer's own copy of the book.
//
// One book, one writer: calls are carried out one after another. Threads: any number.
#pragma once

#include <memory>
#include <mutex>

#include "core/store/book.h"
#include "sync/exchange/peer_side.h"
#include "sync/identity/invitations.h"
#include "sync/peer/handler.h"
#include "sync/peer/paired_devices.h"

namespace ledgerboard::sync {

class BookHandler final : public Handler {
  public:
    struct Parts {
        store::Book& book;  // outlives it, as do the others
        PairedDevices& devices;
        Invitations& invitations;
        model::FillRandom random;  // asked by one thread at a time
    };

    // Errors: of the book.
    [[nodiscard]] static model::Result<std::unique_ptr<BookHandler>> make(const Parts& parts);

    [[nodiscard]] HandlerReply answer(Call call, const Caller& caller, std::string_view body,
                                      model::Instant now) override;

    // A person with this device in the book, by what was granted; where the device is in it
    // already, nothing changes. Returns the person. Errors: of the book.
    [[nodiscard]] model::Result<model::RawId> welcome(const model::RawId& device,
                                                      const Grant& grant,
                                                      model::Instant now) override;

  private:
    explicit BookHandler(const Parts& parts) : parts_(parts) {}

    [[nodiscard]] HandlerReply invite(const Caller& caller, std::string_view body,
                                      model::Instant now);

    Parts parts_;
    std::mutex mutex_;
    std::unique_ptr<PeerSide> side_;
};

}  // namespace ledgerboard::sync
