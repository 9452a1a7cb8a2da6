// Which kinds of record are kept?
//
// The kinds themselves, one line each, stand in catalog.def; this header is small because every id
// carries its kind. Do not renumber: stored in the log and sent.
#pragma once

#include <cstdint>

namespace ledgerboard::model {

enum class Kind : std::uint8_t {
    None = 0,
#define KIND(kind, code, plural, title, aliases) kind = code,
#include "core/model/catalog.def"
};

}  // namespace ledgerboard::model
