#include "sync/peer/stores.h"

#include <filesystem>

#include "sync/peer/paired_devices.h"

namespace ledgerboard::sync {

using model::Result;

Result<Stores> openFiles(const StorePlace& place, const Digest& certificate, model::Instant now,
                         const model::FillRandom& random) {
    auto devices = PairedDevices::open(place.book + ".devices");
    if (!devices.ok()) {
        return devices.error();
    }
    std::error_code problem;
    // Nobody's: the peer is no person, and what it writes are the devices that join.
    auto book =
        std::filesystem::exists(place.book, problem)
            ? store::Book::open(place.book, random)
            : store::Book::createJoined(
                  place.book, model::Id<model::Kind::Device>(model::IdMaker(random).next(now)), {},
                  random);
    if (!book.ok()) {
        return book.error();
    }
    Stores stores;
    stores.book = std::make_unique<store::Book>(std::move(book).value());
    stores.devices = std::move(devices).value();
    stores.invitations = std::make_unique<Invitations>(certificate, random);
    stores.nonces = std::make_unique<RecentNonces>(now);
    return stores;
}

}  // namespace ledgerboard::sync
