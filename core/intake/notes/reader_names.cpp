// The part of the reader that names a thing by what was named before it and by where it is.
#include <algorithm>

#include "core/intake/notes/reader.h"

namespace ledgerboard::intake {

using model::Treatment;

// "Siding is sound, paint all": out of doors the walls are the siding.
void Reader::nameOutside(Found& found) const {
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    static const std::uint32_t kSiding = tables().objectNamed("siding");
    if (found.object == kWalls && found.place == "exterior" &&
        found.treatment == Treatment::Refinish) {
        found.object = kSiding;
    }
}

// "Patterned tiles, two of them loose, so that floor needs mending": the floor just named.
void Reader::nameFloor(const Spots& spots, const Said& said, Found& found) const {
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    const bool stays = found.treatment == Treatment::Repair ||
                       found.treatment == Treatment::Clean || found.treatment == Treatment::Keep ||
                       found.treatment == Treatment::Inspect;
    if (found.object != kFloor || !stays) {
        return;
    }
    for (const ObjectSpot& other : spots.objects) {
        const bool floor = tables().objects[other.object].family == "floor";
        if (floor && other.object != kFloor && !other.material && other.span.end <= said.at) {
            found.object = other.object;
            return;
        }
    }
    const auto named =
        std::find_if(here_.recent.begin(), here_.recent.end(), [&](std::uint32_t object) {
            return object != kFloor && tables().objects[object].family == "floor";
        });
    if (named != here_.recent.end()) {
        found.object = *named;
    }
}

}  // namespace ledgerboard::intake
