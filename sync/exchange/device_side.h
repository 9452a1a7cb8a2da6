// How does a device meet the peer? Sends what it wrote, takes what it is given, and picks up where
// it was cut off.
//
// A meeting can end after any call, and the next one goes on from there: whatever was taken and how
// far that went are on disk together. Nothing is lost and nothing is taken twice.
// Threads: one at a time.
#pragma once

#include <functional>
#include <string>

#include "core/store/sync_book.h"
#include "sync/wire/calls.h"
#include "sync/wire/messages.h"
#include "sync/wire/reply.h"

namespace ledgerboard::sync {

// Carries one call to the peer and brings its answer. Errors: no answer came, or none that was
// whole; the call may have been carried out all the same.
using Carry = std::function<model::Result<Reply>(Call call, const std::string& body)>;

// How a meeting went.
struct Meeting {
    std::size_t sent = 0;      // entries the peer acknowledged
    std::size_t received = 0;  // entries that were new here
    std::size_t refused = 0;   // own entries that were set aside, and are forgotten here
    std::size_t dropped = 0;   // cells that are not for this device any more
    std::size_t restamped = 0;
    bool renewed = false;            // the device has a new identity: it was restored from a backup
    bool revoked = false;            // the device was shut out: its copy is to be wiped
    std::int64_t clockOffsetMs = 0;  // to add to the device's clock for the peer's
};

class DeviceSide {
  public:
    // Requires: `book` outlives it.
    DeviceSide(store::Book& book, Carry carry) : book_(book), carry_(std::move(carry)) {}

    // Sends and takes everything there is. `now` is the device's own clock.
    // Errors (CannotBeMet): the peer was not reached, or said no, in words for a person; what was
    // done until then stays done. Of the book.
    [[nodiscard]] model::Result<Meeting> meet(model::Instant now);

    // How the last meeting went, also where it was cut.
    [[nodiscard]] const Meeting& meeting() const { return meeting_; }

    // Whether the peer said, in the last meeting, that this device is an owner's.
    [[nodiscard]] bool isOwner() const { return owner_; }

    // After the peer said that this device was shut out: sends what it has not acknowledged, to be
    // set aside there for the owner to see. Best effort: whatever is answered, the copy is to be
    // wiped.
    void sendLate();

    // How many own entries the peer has not acknowledged. Errors: of the book.
    [[nodiscard]] model::Result<std::size_t> waiting();

    // What to add to this device's clock for the peer's, as of the last meeting; 0 before.
    [[nodiscard]] model::Result<std::int64_t> clockOffsetMs();

  private:
    model::Result<Reply> call(Call call, const std::string& body);
    model::Result<HelloAnswer> greet();
    model::Result<HelloAnswer> hello(const model::RawId& renew);
    model::Result<void> learn(const HelloAnswer& answer, model::Instant now);
    model::Result<void> compact();
    model::Result<void> renew(model::Instant now);
    model::Result<void> pushOwn(model::Instant now);
    model::Result<void> pushPart(std::vector<store::Entry> entries, model::Instant now);
    model::Result<bool> restamp(model::Instant now);
    model::Result<void> acknowledge(const std::vector<store::Entry>& entries,
                                    const PushAnswer& answer);
    model::Result<void> relay(model::Instant now);
    model::Result<bool> pullAll();
    model::Result<bool> takePulled(const PullAnswer& answer);

    [[nodiscard]] model::Result<store::LaneNumbers> acknowledged();
    [[nodiscard]] model::Result<store::LaneNumbers> everAcknowledged();
    [[nodiscard]] model::Result<store::LaneNumbers> numbers(const char* ownerOnlyName,
                                                            const char* sharedName);
    [[nodiscard]] model::Result<std::int64_t> number(const std::string& name);
    [[nodiscard]] model::Result<void> remember(std::vector<store::Remembered> what);

    store::SyncBook book_;
    Carry carry_;
    Meeting meeting_;
    std::map<model::RawId, store::LaneNumbers> others_;  // what the peer has, as it said
    bool owner_ = false;
    model::HybridClock horizon_;
    store::LaneNumbers peerHas_{};  // highest own numbers
    bool mustRenew_ = false;
    bool restamped_ = false;    // under this identity, in this meeting
    model::RawId given_;        // the identity to take, where the peer gave it already
    Status said_ = Status::Ok;  // of the last call
};

}  // namespace ledgerboard::sync
