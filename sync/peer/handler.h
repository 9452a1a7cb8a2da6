// What is behind the door? One interface, called for each request once its caller is verified.
//
// The peer's server knows who is calling and nothing of what is asked; the handler knows what is
// asked and nothing of sockets, signatures or clocks. Threads: called from many at a time.
#pragma once

#include <string>
#include <string_view>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/result.h"
#include "sync/identity/pairing.h"
#include "sync/identity/roster.h"
#include "sync/wire/calls.h"

namespace ledgerboard::sync {

// Who is calling: verified by signature, known to the roster, not revoked.
struct Caller {
    model::RawId device;
};

// A device that has proven that it was invited.
struct Newcomer {
    model::RawId device;
    Grant grant;
    Introduction self;
};

// `status` as in HTTP. `body` is JSON, or bytes where a photo is answered; at most kMostReplyBytes.
struct HandlerReply {
    int status = 200;
    std::string body;
};

class Handler {
  public:
    Handler() = default;
    Handler(const Handler&) = delete;
    Handler& operator=(const Handler&) = delete;
    virtual ~Handler() = default;

    // `body` is as it was sent, not looked at yet. `now` is the peer's clock.
    [[nodiscard]] virtual HandlerReply answer(Call call, const Caller& caller,
                                              std::string_view body, model::Instant now) = 0;

    // A device has proven that it was invited: whose it is from now on comes back, nil where no
    // people are kept. May be asked again for the same device. Errors: it could not be kept.
    [[nodiscard]] virtual model::Result<model::RawId> welcome(const Newcomer& newcomer,
                                                              model::Instant now) = 0;
};

}  // namespace ledgerboard::sync
