// Which invitations are open, and does this device hold one? They last ten minutes: one peer keeps
// them in memory; where several serve one book they stand in its store.
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

// An invitation that was given out.
struct OpenInvitation {
    PairingCode code;
    Grant grant;
    model::Instant made;
    int wrong = 0;
    std::optional<std::pair<model::RawId, PublicKey>> takenBy{};
};

// Judges in this order: age, taken by another, tries, the code's proof, the key's signature, and
// that only an owner's device brings a book of its own. A wrong proof uses up one of
// kMostPairingTries, and who proves all is noted as having taken it.
[[nodiscard]] Redeemed judge(OpenInvitation& invitation, const PairingRequest& request,
                             const Digest& certificate, model::Instant now);

class InvitationList {
  public:
    InvitationList() = default;
    InvitationList(const InvitationList&) = delete;
    InvitationList& operator=(const InvitationList&) = delete;
    virtual ~InvitationList() = default;

    // A new one. Errors (CannotBeMet): kMostOpenInvitations are open.
    [[nodiscard]] virtual model::Result<PairingCode> invite(const Grant& grant,
                                                            model::Instant now) = 0;

    // NoInvitation where none has that handle; else as judge() says. The device that took an
    // invitation may ask again while it lasts, in case the answer was lost. Unready: the list
    // cannot be read now.
    [[nodiscard]] virtual Redeemed redeem(const PairingRequest& request, model::Instant now) = 0;
};

class Invitations final : public InvitationList {
  public:
    // `certificate` is this peer's own: what devices must have seen.
    Invitations(const Digest& certificate, model::FillRandom random)
        : certificate_(certificate), random_(std::move(random)) {}

    [[nodiscard]] model::Result<PairingCode> invite(const Grant& grant,
                                                    model::Instant now) override;
    [[nodiscard]] Redeemed redeem(const PairingRequest& request, model::Instant now) override;

  private:
    // One that is over is kept as long again, so that its holder is told so.
    void forget(model::Instant now);

    const Digest certificate_;
    std::mutex mutex_;
    model::FillRandom random_;
    std::map<std::string, OpenInvitation, std::less<>> open_;  // by handle
};

}  // namespace ledgerboard::sync
