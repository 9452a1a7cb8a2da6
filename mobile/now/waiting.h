// What has not left this phone yet? Records written here that the peer has not acknowledged.
#pragma once

#include <cstddef>

#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::phone {

struct Waiting {
    bool hasPeer = false;  // whether this book has ever met one
    std::size_t marks = 0;
    std::size_t photos = 0;
    std::size_t others = 0;

    [[nodiscard]] bool isEmpty() const { return marks + photos + others == 0; }
};

// Errors: of the book.
[[nodiscard]] model::Result<Waiting> waitingIn(store::Book& book);

}  // namespace ledgerboard::phone
