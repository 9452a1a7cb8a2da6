#include "core/compute/take_off.h"

#include "core/compute/in_quotes.h"
#include "core/compute/take_off_sizes.h"

namespace ledgerboard::compute {

namespace {

std::vector<TakeOffKind> gathered() {
    std::vector<TakeOffKind> all;
    for (const auto& table : {groundTakeOffs(), surfaceTakeOffs(), otherTakeOffs()}) {
        all.insert(all.end(), table.begin(), table.end());
    }
    return all;
}

const TakeOffKind* kindNamed(std::string_view what) {
    for (const TakeOffKind& kind : takeOffKinds()) {
        if (kind.what == what) {
            return &kind;
        }
    }
    return nullptr;
}

model::Error unknownKind(std::string_view what) {
    std::string message = "what is " + inQuotes(what) + ": it must be one of";
    std::string_view separator = " ";
    for (const TakeOffKind& kind : takeOffKinds()) {
        message += std::string(separator) + std::string(kind.what);
        separator = ", ";
    }
    return model::wrongUse(message);
}

}  // namespace

std::span<const TakeOffKind> takeOffKinds() {
    static const std::vector<TakeOffKind> kAll = gathered();
    return kAll;
}

model::Result<TakeOff> takeOff(std::string_view what, std::span<const GivenSize> given) {
    const TakeOffKind* kind = kindNamed(what);
    if (kind == nullptr) {
        return unknownKind(what);
    }
    auto sizes = Sizes::from(*kind, given);
    if (!sizes.ok()) {
        return sizes.error();
    }
    auto out = kind->compute(sizes.value());
    if (!out.ok()) {
        return out.error();
    }
    out.value().assumed = sizes.value().assumed();
    out.value().source = kind->source;
    out.value().caution = kind->caution;
    return out;
}

}  // namespace ledgerboard::compute
