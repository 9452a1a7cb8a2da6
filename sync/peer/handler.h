// What is behind the door? One interface, called for each request once its caller is verified.
//
// The peer's server knows who is calling and nothing of what is asked; the handler knows what is
// asked and nothing of sockets, signatures or clocks. Threads: called from many at a time.
#pragma once

#include <string>
#include <string_view>

#include "core/model/date.h"
#include "core/model/id.h"
#include "sync/wire/calls.h"

namespace ledgerboard::sync {

// Who is calling: verified by signature, known to the roster, not revoked.
struct Caller {
    model::RawId device;
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
};

// Stands in until the exchange is there: says that it is not.
class NotYet final : public Handler {
  public:
    [[nodiscard]] HandlerReply answer(Call, const Caller&, std::string_view,
                                      model::Instant) override {
        return {501, R"({"code":"not-yet","message":"This peer knows who you are, but it cannot )"
                     R"(exchange anything yet: use a newer version."})"};
    }
};

}  // namespace ledgerboard::sync
