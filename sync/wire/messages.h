// What is said between a device and the peer, as values and as JSON.
//
// Each message has write(message) and a read function that checks everything: form, depth, counts,
// ranges. What it returns can be used without looking again at anything but meaning.
// Errors of every read (WrongUse): what is wrong, never what was in the message.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/result.h"
#include "core/store/sync_book.h"
#include "sync/wire/exchange_limits.h"
#include "sync/wire/reply.h"

namespace ledgerboard::sync {

struct HelloAsk {
    int version = kExchangeVersion;
    model::RawId epoch;         // of the peer when it was last met; nil before
    store::LaneNumbers last{};  // own highest numbers
    bool wantOthers = false;    // whether to say what the peer has of other devices
    model::RawId renew;         // the identity to take instead of this one; nil for none
};

struct HelloAnswer {
    model::RawId epoch;
    model::Instant time;
    // For which device the peer takes the caller: an old copy may not know what it became since.
    model::RawId device;
    model::RawId person;
    std::string role;               // a word of model::Role
    store::LaneNumbers last{};      // highest numbers the peer has of this device
    store::LaneNumbers unbroken{};  // up to which it has them all
    std::map<model::RawId, store::LaneNumbers> others;  // of owners only, where asked
    model::HybridClock horizon;  // to owners: what was written over before it may go
};

struct PushAsk {
    std::vector<store::Entry> entries;
};

struct PushAnswer {
    // An entry that was set aside: the device forgets it.
    struct Refusal {
        store::Lane lane = store::Lane::OwnerOnly;
        std::int64_t number = 0;
        std::string why;
    };

    store::LaneNumbers acknowledged{};
    std::vector<Refusal> refused;
};

struct PullAsk {
    std::string cursor;  // as the peer gave it; empty for everything
};

struct PullAnswer {
    std::string cursor;
    bool more = false;
    bool fresh = false;  // what is not sent from here on is to be dropped at the end
    std::vector<store::CellName> drops;
    std::vector<store::Entry> entries;
    std::vector<store::Aside> asides;  // for owners
};

struct RosterAnswer {
    struct Line {
        model::RawId device;
        std::string name;
        std::string person;
        std::string role;
        bool revoked = false;
        model::Instant heard;  // when it last met the peer; 0 where never
    };

    std::vector<Line> lines;
};

struct Refused {
    std::string message;  // for a person
    model::Instant time;  // the peer's
};

[[nodiscard]] std::string write(const HelloAsk& message);
[[nodiscard]] std::string write(const HelloAnswer& message);
[[nodiscard]] std::string write(const PushAsk& message);
[[nodiscard]] std::string write(const PushAnswer& message);
[[nodiscard]] std::string write(const PullAsk& message);
[[nodiscard]] std::string write(const PullAnswer& message);
// A device as a book knows it: never heard of.
[[nodiscard]] RosterAnswer::Line rosterLine(const model::Device& device,
                                            const std::vector<model::Person>& people);

[[nodiscard]] std::string write(const RosterAnswer& message);
[[nodiscard]] std::string write(const Refused& message);

[[nodiscard]] model::Result<HelloAsk> readHelloAsk(std::string_view body);
[[nodiscard]] model::Result<HelloAnswer> readHelloAnswer(std::string_view body);
[[nodiscard]] model::Result<PushAsk> readPushAsk(std::string_view body);
[[nodiscard]] model::Result<PushAnswer> readPushAnswer(std::string_view body);
[[nodiscard]] model::Result<PullAsk> readPullAsk(std::string_view body);
[[nodiscard]] model::Result<PullAnswer> readPullAnswer(std::string_view body);
[[nodiscard]] model::Result<RosterAnswer> readRosterAnswer(std::string_view body);
[[nodiscard]] model::Result<Refused> readRefused(std::string_view body);

}  // namespace ledgerboard::sync
