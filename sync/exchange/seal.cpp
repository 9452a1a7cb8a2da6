#include "sync/exchange/seal.h"

#include <array>
#include <sodium.h>

#include "core/model/check.h"

namespace ledgerboard::sync {

namespace {

void add(std::string& bytes, const model::RawId& id) {
    bytes.append(reinterpret_cast<const char*>(id.bytes().data()), model::RawId::kBytes);
}

void add(std::string& bytes, std::int64_t number) {
    for (int shift = 56; shift >= 0; shift -= 8) {
        bytes += static_cast<char>(static_cast<std::uint64_t>(number) >> shift & 0xff);
    }
}

}  // namespace

store::EntryName Seal::nameFor(const model::RawId& receiver, const store::EntryName& name,
                               const store::CellName& cell) const {
    model::require(key_.size() == kKeyBytes, "Seal: a key of its length");
    std::string bytes;
    add(bytes, receiver);
    add(bytes, name.device);
    add(bytes, static_cast<std::int64_t>(name.lane));
    add(bytes, name.number);
    add(bytes, cell.record);
    add(bytes, std::int64_t{cell.field});
    std::array<unsigned char, crypto_generichash_BYTES_MIN> digest{};
    crypto_generichash(digest.data(), digest.size(),
                       reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(),
                       reinterpret_cast<const unsigned char*>(key_.data()), key_.size());
    std::uint64_t number = 0;
    for (std::size_t k = 0; k < 8; ++k) {
        number = number << 8 | digest[k];
    }
    number = (number >> 2) | 1;  // above 0, and within what every JSON reader holds as an integer
    return {name.device, store::Lane::Sealed, static_cast<std::int64_t>(number)};
}

}  // namespace ledgerboard::sync
