// What if the disk fails? A disk under SQLite that the test can make fail, tear a write, be full or
// lose its power: a VFS of ours over the real one, made the default of this process.
//
// Counted are writes, changes of length and synchronisations, of every file, from arm() on.
// Source: SQLite's "How SQLite Is Tested", I/O errors and crashes.
// Threads: one.
#pragma once

#include <cstdint>
#include <string>

namespace ledgerboard::tests {

enum class Fault {
    None,
    Error,  // the operation fails and nothing of it is done
    Torn,   // the first half of a write is done, then it fails
    Full,   // the disk is full
};

class FaultyDisk {
  public:
    // Makes this disk the one that every book of this process is opened on, until it goes.
    FaultyDisk();
    FaultyDisk(const FaultyDisk&) = delete;
    FaultyDisk& operator=(const FaultyDisk&) = delete;
    ~FaultyDisk();

    // The `at`-th operation from here on (1: the next) fails; with `dead` all after it fail too.
    void arm(Fault fault, std::int64_t at, bool dead);
    // Everything succeeds again.
    void mend();
    // Operations since arm() or mend().
    [[nodiscard]] std::int64_t operations() const;
    [[nodiscard]] bool struck() const;

    // From here on every connection that opens has synchronous=OFF, whatever it asks for.
    void neverSynchronise();

    // From here on remembers what of each file is on the disk for certain; of files that are open
    // already it knows nothing.
    void watchPower();
    // After a power cut: puts each file back to what was synchronised, and of what was not, some
    // writes, drawn from `seed`, maybe torn. Requires: no book is open.
    void restorePower(std::uint64_t seed);
};

}  // namespace ledgerboard::tests
