// Which record? A 128-bit id, made on the device without asking anyone.
//
// Source: RFC 9562 section 5.7 (UUID version 7), with the 12 bits of rand_a used as a counter
// within one millisecond (section 6.2, method 1), so that records made together keep their order.
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include "core/model/date.h"
#include "core/model/kind.h"
#include "core/model/result.h"

namespace ledgerboard::model {

// An id whose kind of record is not known to the type system: in the log and on the wire.
class RawId {
  public:
    static constexpr std::size_t kBytes = 16;
    constexpr RawId() = default;

    constexpr explicit RawId(const std::array<std::uint8_t, kBytes>& bytes) : bytes_(bytes) {}

    // The canonical form, 8-4-4-4-12 hex digits, or the 32 digits alone. Errors: anything else.
    [[nodiscard]] static Result<RawId> parse(std::string_view text);

    [[nodiscard]] constexpr bool isNil() const { return *this == RawId{}; }

    [[nodiscard]] constexpr const std::array<std::uint8_t, kBytes>& bytes() const { return bytes_; }

    [[nodiscard]] std::string toString() const;  // canonical, lower case
    [[nodiscard]] std::string hex() const;       // 32 digits, lower case

    friend constexpr auto operator<=>(const RawId&, const RawId&) = default;

  private:
    std::array<std::uint8_t, kBytes> bytes_{};
};

// The id of a record of one kind. Nil where none is named.
template <Kind K>
class Id {
  public:
    constexpr Id() = default;

    constexpr explicit Id(RawId raw) : raw_(raw) {}

    [[nodiscard]] constexpr RawId raw() const { return raw_; }

    [[nodiscard]] constexpr bool isNil() const { return raw_.isNil(); }

    friend constexpr auto operator<=>(const Id&, const Id&) = default;

  private:
    RawId raw_;
};

// Where chance comes from: fills `bytes` with unpredictable (or, in tests, repeatable) bytes.
using FillRandom = std::function<void(std::uint8_t* bytes, std::size_t count)>;

// Makes ids that rise with time, and within one millisecond with the order of asking.
// Threads: one at a time.
class IdMaker {
  public:
    explicit IdMaker(FillRandom random) : random_(std::move(random)) {}

    // `now` may stand still or step back: ids still rise.
    [[nodiscard]] RawId next(Instant now);

  private:
    FillRandom random_;
    std::int64_t lastMilliseconds_ = -1;
    std::uint32_t counter_ = 0;
};

struct RawIdHash {
    std::size_t operator()(const RawId& id) const noexcept {
        // The tail of a version 7 id is random, so eight of its bytes are a hash already.
        std::size_t hash = 0;
        for (std::size_t k = 8; k < RawId::kBytes; ++k) {
            hash = (hash << 8) | id.bytes()[k];
        }
        return hash ^ (static_cast<std::size_t>(id.bytes()[7]) << 3);
    }
};

}  // namespace ledgerboard::model

template <ledgerboard::model::Kind K>
struct std::hash<ledgerboard::model::Id<K>> {
    std::size_t operator()(const ledgerboard::model::Id<K>& id) const noexcept {
        return ledgerboard::model::RawIdHash{}(id.raw());
    }
};
