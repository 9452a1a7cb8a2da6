#include "core/model/machine.h"

#include <chrono>
#include <sys/random.h>

namespace ledgerboard::model {

Instant clockNow() {
    const auto now = std::chrono::system_clock::now().time_since_epoch();
    return Instant::fromMilliseconds(
        std::chrono::duration_cast<std::chrono::milliseconds>(now).count());
}

void fillRandom(std::uint8_t* bytes, std::size_t count) {
    while (count > 0) {
        const ssize_t got = ::getrandom(bytes, count, 0);
        if (got > 0) {
            bytes += got;
            count -= static_cast<std::size_t>(got);
        }
    }
}

}  // namespace ledgerboard::model
