// Which invitations are open, and does this device hold one? Kept in memory: they last ten minutes.
//
// Units: instants are the peer's clock. Threads: any number.
#pragma once

#include <map>
#include <mutex>
#include <optional>
#include <string>

#include "core/model/date.h"
#include "core/model/result.h"
#include "sync/identity/pairing.h"
#include "sync/identity/refusal.h"
#include "sync/identity/roster.h"

namespace ledgerboard::sync {

// What redeeming came to. `grant` and `proof` hold where `refusal` is None.
struct Redeemed {
    Refusal refusal = Refusal::None;
    Grant grant;
    Digest proof{};
};

class Invitations {
  public:
    // `certificate` is this peer's own: what devices must have seen.
    Invitations(const Digest& certificate, model::FillRandom random)
        : certificate_(certificate), random_(std::move(random)) {}

    // A new one. Errors (CannotBeMet): kMostOpenInvitations are open.
    [[nodiscard]] model::Result<PairingCode> invite(const Grant& grant, model::Instant now);

    // Judges in this order: handle, age, taken by another, tries, the code's proof, the key's
    // signature, and that only an owner's device brings a book of its own. A wrong proof uses up
    // one of kMostPairingTries. The device that took an invitation may ask again while it lasts, in
    // case the answer was lost.
    [[nodiscard]] Redeemed redeem(const PairingRequest& request, model::Instant now);

  private:
    struct Open {
        PairingCode code;
        Grant grant;
        model::Instant made;
        int wrong = 0;
        std::optional<std::pair<model::RawId, PublicKey>> takenBy;
    };

    // One that is over is kept as long again, so that its holder is told so.
    void forget(model::Instant now);

    const Digest certificate_;
    std::mutex mutex_;
    model::FillRandom random_;
    std::map<std::string, Open, std::less<>> open_;  // by handle
};

}  // namespace ledgerboard::sync
