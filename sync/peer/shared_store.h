// What do several peers of one book have to share beside the book? Which devices joined, which
// invitations are open, and which requests came already: in the book's own store, so that whichever
// peer a device meets knows the same.
//
// A connection of its own, apart from the book's, since a caller is judged before the book is asked
// and many are judged at a time. Nothing is kept in memory but the connection. Where the store is
// out of reach each says so, and the caller is told to come again.
// Units: instants are the peer's clock. Threads: any number.
#pragma once

#include <functional>
#include <memory>
#include <mutex>

#include "core/store/database.h"
#include "sync/identity/invitations.h"
#include "sync/identity/nonces.h"
#include "sync/peer/device_list.h"

namespace ledgerboard::sync {

class SharedStore {
  public:
    // The tables are made where there are none. Requires: the book is there. Errors: the store.
    [[nodiscard]] static model::Result<std::unique_ptr<SharedStore>> open(
        std::unique_ptr<store::Backend> backend);

    // Runs `work` with the connection, one caller at a time. Errors: of the store.
    [[nodiscard]] model::Result<void> with(
        const std::function<void(store::Database& database)>& work);
    // The same within a transaction, kept where `work` returns true.
    [[nodiscard]] model::Result<void> change(
        const std::function<bool(store::Database& database)>& work,
        store::Durable durable = store::Durable::Yes);

  private:
    explicit SharedStore(std::unique_ptr<store::Backend> backend) : database_(std::move(backend)) {}

    std::mutex mutex_;
    store::Database database_;
};

class StoredDevices final : public DeviceList {
  public:
    // Requires: `shared` outlives it, here and below.
    explicit StoredDevices(SharedStore& shared) : shared_(shared) {}

    [[nodiscard]] model::Result<std::optional<KnownDevice>> find(
        const model::RawId& device) const override;
    [[nodiscard]] model::Result<std::size_t> count() const override;
    [[nodiscard]] model::Result<Refusal> admit(const model::RawId& device, const PublicKey& key,
                                               const Grant& grant, model::Instant now) override;
    [[nodiscard]] model::Result<bool> revoke(const model::RawId& device,
                                             model::Instant now) override;

  private:
    SharedStore& shared_;
};

class StoredInvitations final : public InvitationList {
  public:
    StoredInvitations(SharedStore& shared, const Digest& certificate, model::FillRandom random)
        : shared_(shared), certificate_(certificate), random_(std::move(random)) {}

    [[nodiscard]] model::Result<PairingCode> invite(const Grant& grant,
                                                    model::Instant now) override;
    [[nodiscard]] Redeemed redeem(const PairingRequest& request, model::Instant now) override;

  private:
    SharedStore& shared_;
    const Digest certificate_;
    model::FillRandom random_;  // asked by one thread at a time: while it has the store
};

// A nonce is written without waiting for the disk. What the call then writes is on disk only
// together with all that was written before it, the nonce too; where the server loses what was
// written last, this peer has lost the connection, and refuses what was signed before it had it
// again: as one in memory does after a restart.
class StoredNonces final : public NonceMemory {
  public:
    // `begin` is when the peer was started, as of RecentNonces.
    StoredNonces(SharedStore& shared, model::Instant begin) : shared_(shared), begin_(begin) {}

    [[nodiscard]] Refusal take(const model::RawId& device, const Nonce& nonce,
                               model::Instant signedAt, model::Instant now) override;

  private:
    Refusal takeWithin(store::Database& database, const model::RawId& device,
                       const model::RawId& nonce, model::Instant signedAt, model::Instant now);
    void forget(store::Database& database, std::int64_t nowMs);

    // All of it while it has the store.
    SharedStore& shared_;
    model::Instant begin_;
    std::int64_t connections_ = 0;  // 0: not asked yet
    std::int64_t forgotMs_ = 0;
    std::int64_t count_ = 0;  // as counted then, and those taken here since
};

}  // namespace ledgerboard::sync
