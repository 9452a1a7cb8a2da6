// Of the program that knows PostgreSQL.
#include <filesystem>

#include "core/store/postgres/postgres_backend.h"
#include "sync/peer/paired_devices.h"
#include "sync/peer/stores.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

using DeviceId = model::Id<model::Kind::Device>;

// The book as it stands in a file goes into the database, and who joined with it.
Result<store::Book> bringBook(const StorePlace& place, std::unique_ptr<store::Backend> backend,
                              const model::FillRandom& random) {
    auto file = store::Book::open(place.bring, random);
    if (!file.ok()) {
        return file.error();
    }
    return store::Book::createCopyIn(std::move(backend), place.book, file.value(), random);
}

Result<void> bringDevices(const StorePlace& place, DeviceList& devices, model::Instant now) {
    auto known = PairedDevices::open(place.bring + ".devices");
    if (!known.ok()) {
        return known.error();
    }
    for (const auto& [device, one] : known.value()->all()) {
        auto admitted = devices.admit(device, one.key, one.grant, now);
        auto done = admitted.ok() && one.revoked ? devices.revoke(device, now) : Result<bool>(true);
        if (!admitted.ok() || !done.ok()) {
            return admitted.ok() ? done.error() : admitted.error();
        }
    }
    return {};
}

Result<Stores> openIt(const StorePlace& place, const Digest& certificate, model::Instant now,
                      const model::FillRandom& random) {
    auto address = store::PostgresAddress::parse(place.address);
    if (!address.ok()) {
        return address.error();
    }
    std::error_code problem;
    if (std::filesystem::exists(place.book, problem)) {
        return model::cannotBeMet("--book: " + place.book +
                                  " is a file, but with --store the book is in the database: name "
                                  "another place, and this file with --bring where it is to go "
                                  "there");
    }
    auto backend = store::PostgresBackend::open(address.value());
    if (!backend.ok()) {
        return backend.error();
    }
    auto book = place.bring.empty()
                    ? store::Book::openIn(std::move(backend).value(), place.book,
                                          DeviceId(model::IdMaker(random).next(now)), random)
                    : bringBook(place, std::move(backend).value(), random);
    if (!book.ok()) {
        return book.error();
    }
    auto second = store::PostgresBackend::open(address.value(), store::kPostgresSchema, "devices");
    auto shared = second.ok() ? SharedStore::open(std::move(second).value())
                              : Result<std::unique_ptr<SharedStore>>(second.error());
    if (!shared.ok()) {
        return shared.error();
    }
    Stores stores;
    stores.shared = std::move(shared).value();
    stores.book = std::make_unique<store::Book>(std::move(book).value());
    stores.devices = std::make_unique<StoredDevices>(*stores.shared);
    stores.invitations = std::make_unique<StoredInvitations>(*stores.shared, certificate, random);
    stores.nonces = std::make_unique<StoredNonces>(*stores.shared, now);
    if (!place.bring.empty()) {
        if (auto brought = bringDevices(place, *stores.devices, now); !brought.ok()) {
            return brought.error();
        }
    }
    return stores;
}

}  // namespace

OpenStores openShared() {
    return openIt;
}

}  // namespace ledgerboard::sync
