// How are entries numbered toward a device that receives only some of them? By a keyed digest, so
// that its numbers tell nothing of those it does not receive.
//
// Source: project decision; BLAKE2b as in RFC 7693, by libsodium, with the peer's secret key.
#pragma once

#include <string>

#include "core/store/sync_book.h"

namespace ledgerboard::sync {

class Seal {
  public:
    static constexpr std::size_t kKeyBytes = 32;

    // Requires: kKeyBytes of key.
    explicit Seal(std::string key) : key_(std::move(key)) {}

    // The name under which `receiver` gets the entry `name` in `cell`: the same each time.
    [[nodiscard]] store::EntryName nameFor(const model::RawId& receiver,
                                           const store::EntryName& name,
                                           const store::CellName& cell) const;

  private:
    std::string key_;
};

}  // namespace ledgerboard::sync
