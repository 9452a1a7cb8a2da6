#include "core/intake/notes/merge_floors.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "core/intake/notes/one_of.h"

namespace ledgerboard::intake {

using model::Treatment;

namespace {

bool isFloor(const Found& found) {
    return tables().objects[found.object].family == "floor";
}

// Whether the floor is one that stays and is walked on.
bool isUnderneath(const Found& found) {
    return isFloor(found) &&
           (found.treatment == Treatment::Refinish || found.treatment == Treatment::Repair ||
            found.treatment == Treatment::Clean || found.treatment == Treatment::Keep) &&
           found.weight > 1;
}

}  // namespace

void settleFloors(std::vector<Found>& found) {
    // "The vinyl goes and tile goes down": one floor, the new one.
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    std::unordered_set<std::string> laid;
    for (const Found& one : found) {
        if (isFloor(one) && !one.takenOut && one.object != kFloor && one.weight > 1 &&
            (one.treatment == Treatment::Replace || one.treatment == Treatment::Add)) {
            laid.insert(one.place);
        }
    }
    std::erase_if(found, [&](const Found& one) {
        return one.takenOut && one.treatment == Treatment::Replace && isFloor(one) &&
               laid.contains(one.place);
    });
    std::unordered_set<std::string> opened;  // places where a floor underneath stays
    for (const Found& one : found) {
        if (isUnderneath(one)) {
            opened.insert(one.place);
        }
    }
    for (Found& one : found) {
        if (one.takenOut && one.treatment == Treatment::Replace && isFloor(one) &&
            opened.contains(one.place)) {
            one.treatment = Treatment::Remove;
        }
    }
}

void settleTakenOut(std::vector<Found>& found) {
    static const std::vector<std::uint32_t> kFixtures = {
        tables().objectNamed("toilet"),  tables().objectNamed("sink"),
        tables().objectNamed("bathtub"), tables().objectNamed("shower"),
        tables().objectNamed("stove"),   tables().objectNamed("refrigerator"),
        tables().objectNamed("vanity")};
    static const std::vector<std::string_view> kOutOfTheWay = {
        "basement", "garage", "attic", "crawl space", "exterior", "yard", "backyard", "barn"};
    static const std::uint32_t kDeck = tables().objectNamed("deck boards");
    for (Found& one : found) {
        const bool fixture =
            std::find(kFixtures.begin(), kFixtures.end(), one.object) != kFixtures.end();
        const bool away = isOneOf(one.place, kOutOfTheWay);
        if (one.takenOut && one.treatment == Treatment::Replace &&
            ((fixture && away) || one.object == kDeck)) {
            one.treatment = Treatment::Remove;
        }
    }
}

}  // namespace ledgerboard::intake
