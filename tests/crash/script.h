// What do the crash tests write? A fixed script of bookings, an undo, entries and a place taken by
// the exchange, closing and opening in between; the same ids and times every time it is done.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/store/sync_book.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::tests {

class Script {
  public:
    // Makes the book it begins from at `path`.
    explicit Script(std::string path);

    [[nodiscard]] static int steps();
    // Does one step. Requires: begun(), and the steps before are done.
    [[nodiscard]] model::Result<void> step(int number);

    // Puts the book back to where the script begins, and opens it.
    void begin();

    // Closes the book, as the end of a process does; what fails then is nobody's to see.
    void close() { book_.reset(); }

    [[nodiscard]] model::Result<void> open();

    // All that the book holds, and where the exchange stands: equal text, equal book.
    [[nodiscard]] std::string holds();
    // What verify finds; empty where all adds up.
    [[nodiscard]] std::string wrong();
    [[nodiscard]] std::size_t entries();

  private:
    [[nodiscard]] model::Instant at(int number) const;
    [[nodiscard]] model::Result<void> book(int number);
    [[nodiscard]] model::Result<void> exchange(int number);

    std::string path_;
    std::string beginning_;
    std::unique_ptr<store::Book> book_;
    std::vector<model::RawId> ids_;
};

}  // namespace ledgerboard::tests
