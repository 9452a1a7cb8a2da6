#include "core/intake/notes/merge_floors.h"

#include <string>
#include <unordered_set>

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

}  // namespace ledgerboard::intake
