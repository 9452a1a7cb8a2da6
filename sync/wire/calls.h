// What may a device ask of a peer? The calls, and the paths they are sent to.
#pragma once

#include <optional>
#include <string_view>

namespace ledgerboard::sync {

// The signed calls, all of them POST. Their names are part of the wire: do not change one.
enum class Call {
    Hello,      // versions, cursor, what each side has
    Push,       // entries up
    Pull,       // entries down after a cursor
    Snapshot,   // a book for a new device, in parts
    PhotoHave,  // which photos are held, and how much of each
    PhotoPart,  // bytes of a photo
    Roster,     // people and devices
    Invite,     // opens an invitation; of owners
};

inline constexpr std::string_view kTimePath = "/1/time";      // GET, unsigned
inline constexpr std::string_view kHealthPath = "/1/health";  // GET, unsigned
inline constexpr std::string_view kPairPath = "/1/pair";      // POST, proven by the code

// "/1/hello", "/1/push", ...: the 1 is the version of the wire.
[[nodiscard]] std::string_view pathOf(Call call);
// "hello", "push", ...: what a log calls it.
[[nodiscard]] std::string_view nameOf(Call call);
// Empty where no call has this path.
[[nodiscard]] std::optional<Call> callAt(std::string_view path);

}  // namespace ledgerboard::sync
