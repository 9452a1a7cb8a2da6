// Which devices does a peer know? Asked before anything else is done for a caller.
#pragma once

#include <optional>
#include <string>

#include "core/model/id.h"
#include "core/model/result.h"
#include "core/model/words.h"
#include "sync/identity/bytes.h"

namespace ledgerboard::sync {

// What an invitation gives to whoever takes it.
struct Grant {
    model::Role role = model::Role::Owner;
    model::RawId crew;  // of a crew lead
    model::RawId job;   // of a viewer
    // Whose device it will be, where the book has the person already; else a new one of this name.
    model::RawId person{};
    std::string name{};
    friend auto operator<=>(const Grant&, const Grant&) = default;
};

struct KnownDevice {
    PublicKey key{};
    Grant grant;
    bool revoked = false;
};

// Threads: any number.
class Roster {
  public:
    Roster() = default;
    Roster(const Roster&) = delete;
    Roster& operator=(const Roster&) = delete;
    virtual ~Roster() = default;

    // Empty where the device never joined. Errors: the list cannot be read now.
    [[nodiscard]] virtual model::Result<std::optional<KnownDevice>> find(
        const model::RawId& device) const = 0;
};

}  // namespace ledgerboard::sync
