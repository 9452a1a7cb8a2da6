#include "sync/identity/invitations.h"

#include <algorithm>

#include "core/model/saying.h"
#include "sync/wire/limits.h"

namespace ledgerboard::sync {

namespace {

bool isOlder(model::Instant made, model::Instant now, std::int64_t ms) {
    return now.milliseconds() - made.milliseconds() > ms;
}

}  // namespace

void Invitations::forget(model::Instant now) {
    for (auto at = open_.begin(); at != open_.end();) {
        at = isOlder(at->second.made, now, 2 * kInvitationMs) ? open_.erase(at) : std::next(at);
    }
}

model::Result<PairingCode> Invitations::invite(const Grant& grant, model::Instant now) {
    const std::lock_guard<std::mutex> lock(mutex_);
    forget(now);
    const auto open = std::count_if(open_.begin(), open_.end(), [&](const auto& each) {
        return !each.second.takenBy && !isOlder(each.second.made, now, kInvitationMs);
    });
    if (static_cast<std::size_t>(open) >= kMostOpenInvitations) {
        return model::cannotBeMet(
            model::saying("%1 invitations are open: wait ten minutes for them to lapse", open));
    }
    for (;;) {
        PairingCode code = PairingCode::fresh(random_);
        if (open_.emplace(code.handle(), OpenInvitation{code, grant, now, 0, std::nullopt})
                .second) {
            return code;
        }
    }
}

Redeemed judge(OpenInvitation& invitation, const PairingRequest& request, const Digest& certificate,
               model::Instant now) {
    const auto refused = [](Refusal refusal) { return Redeemed{refusal, {}, {}}; };
    if (isOlder(invitation.made, now, kInvitationMs)) {
        return refused(Refusal::InvitationOver);
    }
    const std::pair<model::RawId, PublicKey> asker{request.device, request.key};
    if (invitation.takenBy && *invitation.takenBy != asker) {
        return refused(Refusal::InvitationTaken);
    }
    if (invitation.wrong >= kMostPairingTries) {
        return refused(Refusal::TriesUsedUp);
    }
    if (!provesCode(request, invitation.code, certificate)) {
        ++invitation.wrong;
        return refused(Refusal::WrongCode);
    }
    if (!provesKey(request, certificate)) {
        return refused(Refusal::Forged);
    }
    if (!request.self.person.isNil() && invitation.grant.role != model::Role::Owner) {
        return refused(Refusal::OwnBook);
    }
    invitation.takenBy = asker;
    return {Refusal::None, invitation.grant, peerProof(request, invitation.code, certificate)};
}

Redeemed Invitations::redeem(const PairingRequest& request, model::Instant now) {
    const std::lock_guard<std::mutex> lock(mutex_);
    forget(now);
    const auto at = open_.find(request.handle);
    return at == open_.end() ? Redeemed{Refusal::NoInvitation, {}, {}}
                             : judge(at->second, request, certificate_, now);
}

}  // namespace ledgerboard::sync
