// Where does this peer keep its book, and what it knows of devices? In files beside one another, or
// in a PostgreSQL database that several peers share.
#pragma once

#include <functional>
#include <memory>
#include <string>

#include "core/model/id.h"
#include "core/model/result.h"
#include "core/store/book.h"
#include "sync/identity/bytes.h"
#include "sync/identity/invitations.h"
#include "sync/identity/nonces.h"
#include "sync/peer/device_list.h"
#include "sync/peer/shared_store.h"

namespace ledgerboard::sync {

struct StorePlace {
    std::string book;     // the book's file; with an address, what key and photos stand beside
    std::string address;  // postgresql://...; empty for a file
    std::string bring;    // a book's file that is brought into an empty database; may be empty
};

// All that is kept but key and photos. The members below lean on those above.
struct Stores {
    std::unique_ptr<SharedStore> shared;  // null for a file
    std::unique_ptr<store::Book> book;
    std::unique_ptr<DeviceList> devices;
    std::unique_ptr<InvitationList> invitations;
    std::unique_ptr<NonceMemory> nonces;
};

// Opened; made where there is none: the book is nobody's then, and fills when devices come.
// Errors: the place, each in words for whoever starts the peer and without a password.
using OpenStores =
    std::function<model::Result<Stores>(const StorePlace& place, const Digest& certificate,
                                        model::Instant now, const model::FillRandom& random)>;

// In files.
[[nodiscard]] model::Result<Stores> openFiles(const StorePlace& place, const Digest& certificate,
                                              model::Instant now, const model::FillRandom& random);

// In a database, by the program ledgerboard-peer-shared; the program ledgerboard-peer has nothing
// here, and does without all that libpq brings into memory.
[[nodiscard]] OpenStores openShared();

}  // namespace ledgerboard::sync
