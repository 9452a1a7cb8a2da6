#include "core/intake/notes/merge.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/intake/notes/found.h"
#include "core/intake/notes/merge_floors.h"

namespace ledgerboard::intake {

std::vector<std::string> placesOf(const std::string& place, const Walk& walk) {
    const std::size_t star = place.find('*');
    if (star == std::string::npos) {
        return {place};
    }
    return walk.membersOf(place.substr(0, star), std::atoi(place.c_str() + star + 1));
}

void fillFigures(DraftItem& into, const DraftItem& from) {
    if (!into.quantity) {
        into.quantity = from.quantity;
        into.unit = from.unit;
    }
    into.cost = into.cost ? into.cost : from.cost;
    into.days = into.days ? into.days : from.days;
    into.leadDays = into.leadDays ? into.leadDays : from.leadDays;
}

namespace {

using model::Treatment;

bool isNew(const Found& found) {
    return found.treatment == Treatment::Replace || found.treatment == Treatment::Add;
}

bool has(const std::vector<Found>& all, Treatment treatment) {
    return std::any_of(all.begin(), all.end(),
                       [&](const Found& found) { return found.treatment == treatment; });
}

void addSign(std::vector<Sign>& signs, const Sign& sign) {
    if (std::find(signs.begin(), signs.end(), sign) == signs.end()) {
        signs.push_back(sign);
    }
}

// One of each treatment that was meant, moved out of `said`: faint words give way to plain ones.
std::vector<Found> oneOfEach(std::vector<Found>& said) {
    int strongest = 0;
    bool anyReal = false;
    for (const Found& found : said) {
        strongest = std::max(strongest, found.weight);
        anyReal = anyReal || (!found.fromNo && found.weight > 1);
    }
    std::vector<Found> left;
    left.reserve(said.size());
    for (Found& found : said) {
        const bool outranked = (found.weight <= 1 && strongest > 1) || (found.fromNo && anyReal);
        if (outranked) {
            continue;
        }
        const auto same = std::find_if(left.begin(), left.end(), [&](const Found& held) {
            return held.treatment == found.treatment;
        });
        if (same == left.end()) {
            left.push_back(std::move(found));
            continue;
        }
        fillFigures(same->item, found.item);
        for (const Sign& sign : found.signs) {
            addSign(same->signs, sign);
        }
        same->fresh = same->fresh || found.fresh;
        same->own = same->own || found.own;
        if (found.weight > same->weight) {
            same->item.source = found.item.source;
            same->weight = found.weight;
        }
    }
    return left;
}

// Taking out and putting in is replacing.
void settleReplacing(std::vector<Found>& left) {
    // A judgement ("it is dead") gives way to the order that follows from it ("pull it out").
    int ordered = 0;
    for (const Found& found : left) {
        ordered = found.treatment == Treatment::Remove ? found.weight : ordered;
    }
    std::erase_if(left, [&](const Found& f) {
        return f.treatment == Treatment::Replace && !f.fresh && f.weight < ordered;
    });
    // "Oak, beat up, sand and finish": so does one that is not followed up.
    const bool worked = std::any_of(left.begin(), left.end(), [](const Found& f) {
        return (f.treatment == Treatment::Refinish || f.treatment == Treatment::Repair) &&
               f.weight == 3;
    });
    const bool fresh = std::any_of(left.begin(), left.end(), [](const Found& f) {
        return isNew(f) && (f.fresh || (f.weight == 3 && !f.takenOut));
    });
    if (worked && !fresh) {
        std::erase_if(left, [](const Found& f) { return f.treatment == Treatment::Replace; });
    }
    if (has(left, Treatment::Replace)) {
        std::erase_if(left, [](const Found& f) {
            return f.treatment == Treatment::Remove || f.treatment == Treatment::Add;
        });
    } else if (has(left, Treatment::Remove) && has(left, Treatment::Add)) {
        std::erase_if(left, [](const Found& f) { return f.treatment == Treatment::Remove; });
        for (Found& found : left) {
            found.treatment =
                found.treatment == Treatment::Add ? Treatment::Replace : found.treatment;
        }
    }
    // What is replaced or taken out is not worked on as well.
    if (has(left, Treatment::Replace)) {
        std::erase_if(left, [](const Found& f) {
            return f.treatment == Treatment::Repair || f.treatment == Treatment::Clean ||
                   (f.treatment == Treatment::Refinish && f.weight < 3);
        });
    }
}

// Keeping and working on it: the later of two orders; lesser work is no contradiction.
void settleKeeping(std::vector<Found>& left) {
    const bool keep = has(left, Treatment::Keep);
    const bool keepOrdered = std::any_of(left.begin(), left.end(), [](const Found& f) {
        return f.treatment == Treatment::Keep && f.weight == 3 && !f.fromNo;
    });
    const bool rest = std::any_of(left.begin(), left.end(), [](const Found& f) { return f.rest; });
    const bool lots = std::any_of(left.begin(), left.end(), [](const Found& f) { return f.lot; });
    if (lots || (rest && !has(left, Treatment::Remove))) {
        return;
    }
    if (keepOrdered) {
        // "We keep those boxes and have them sprayed": what stays may get work.
        std::erase_if(left, [](const Found& f) {
            const bool lesser =
                f.treatment == Treatment::Refinish || f.treatment == Treatment::Repair;
            return isWork(f.treatment) && f.weight < (lesser ? 2 : 3);
        });
    }
    const bool work =
        std::any_of(left.begin(), left.end(), [](const Found& f) { return isWork(f.treatment); });
    if (keep && work) {
        const bool keepsLast = left.back().treatment == Treatment::Keep && left.back().weight == 3;
        std::erase_if(left, [&](const Found& f) {
            const bool away = f.treatment == Treatment::Remove || f.treatment == Treatment::Replace;
            return keepsLast ? away : f.treatment == Treatment::Keep;
        });
        if (left.size() > 1) {
            std::erase_if(left, [](const Found& f) { return f.treatment == Treatment::Keep; });
        }
    }
}

// What was said of one object in one space, settled. Requires: not empty, in order. What is left of
// `said` are the treatments.
std::vector<Found> settled(std::vector<Found>& said) {
    std::vector<Found> left = oneOfEach(said);
    settleReplacing(left);
    settleKeeping(left);
    if (has(left, Treatment::Inspect) && left.size() > 1) {
        std::erase_if(
            left, [](const Found& f) { return f.treatment == Treatment::Inspect && f.weight < 3; });
    }
    // "It looks fine, but I'd have somebody check it."
    const bool rest = std::any_of(left.begin(), left.end(), [](const Found& f) { return f.rest; });
    if (has(left, Treatment::Inspect) && has(left, Treatment::Keep) && !rest) {
        std::erase_if(left, [](const Found& f) { return f.treatment == Treatment::Keep; });
    }
    return left;
}

// A new thing takes the place of what served the same end in that space: plank the place of the
// carpet that comes up, a furnace that of the boiler that is shot. "The floor" is then plain too.
void settleFamilies(std::vector<Found>& found) {
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    std::unordered_map<std::string, std::vector<std::uint32_t>> laid;  // new things by their end
    const auto endOf = [](const Found& f) {
        return f.place + "\n" + tables().objects[f.object].family;
    };
    for (const Found& f : found) {
        const bool named = !tables().objects[f.object].family.empty() && f.object != kFloor;
        if (named && isNew(f) && f.weight > 1 && f.fresh) {
            laid[endOf(f)].push_back(f.object);
        }
    }
    // "The floor was refinished last year, leave it": one floor, kept once.
    std::unordered_set<std::string> keptFloors;
    for (const Found& f : found) {
        if (f.treatment == Treatment::Keep && f.object != kFloor &&
            tables().objects[f.object].family == "floor") {
            keptFloors.insert(endOf(f));
        }
    }
    std::erase_if(found, [&](const Found& f) {
        return f.treatment == Treatment::Keep && f.object == kFloor &&
               keptFloors.contains(endOf(f));
    });
    std::unordered_set<std::string> replaced;
    std::erase_if(found, [&](const Found& f) {
        const auto at = laid.find(endOf(f));
        if (at == laid.end() || tables().objects[f.object].family.empty()) {
            return false;
        }
        const bool itself =
            std::find(at->second.begin(), at->second.end(), f.object) != at->second.end();
        const bool old = f.treatment == Treatment::Remove ||
                         (f.treatment == Treatment::Replace && !f.fresh) ||
                         (f.treatment == Treatment::Inspect && f.weight < 2);
        const bool plain = f.object == kFloor && (isNew(f) || f.weight <= 1);
        const bool gone = !itself && old;
        if (gone) {
            replaced.insert(at->first);
        }
        return gone || plain;
    });
    for (Found& f : found) {
        if (f.treatment == Treatment::Add && f.fresh && replaced.contains(endOf(f))) {
            f.treatment = Treatment::Replace;
        }
    }
}

// What all that was said of the object in its space tells of one item of it.
void addSignsOfGroup(const std::vector<Found>& said, Found& one) {
    constexpr std::uint32_t kMany = 3;
    std::uint32_t mentions = 0;
    for (const Found& other : said) {
        mentions += other.treatment == one.treatment ? 1 : 0;
        if (other.treatment != one.treatment) {
            addSign(one.signs, {SignKind::Also, static_cast<std::uint32_t>(other.treatment)});
        }
    }
    addSign(one.signs, {SignKind::Mentions, std::min(mentions, kMany)});
    if (one.item.quantity) {
        addSign(one.signs, signOf(SignFlag::Quantity));
    }
    if (one.item.cost) {
        addSign(one.signs, signOf(SignFlag::Cost));
    }
}

void addSignsOfPlace(const KnownSpace* space, std::vector<Sign>& signs) {
    if (space != nullptr && space->kind == SpaceKind::Outside) {
        signs.push_back(signOf(SignFlag::Outdoors));
    } else if (space != nullptr && space->kind == SpaceKind::Whole) {
        signs.push_back(signOf(SignFlag::WholeHouse));
    }
}

}  // namespace

std::vector<Found> mergeFound(std::vector<Found> found, Walk& walk) {
    std::vector<std::vector<Found>> groups;
    std::unordered_map<std::string, std::size_t> groupOf;
    const auto put = [&](const std::string& place, Found one) {
        const std::string key = place + "\n" + std::to_string(one.object);
        const auto [at, fresh] = groupOf.emplace(key, groups.size());
        if (fresh) {
            groups.emplace_back();
        }
        groups[at->second].push_back(std::move(one));
        groups[at->second].back().place = place;
    };
    for (Found& one : found) {
        const std::vector<std::string> places = placesOf(one.place, walk);
        for (std::size_t i = 0; i + 1 < places.size(); ++i) {
            put(places[i], one);
        }
        if (!places.empty()) {
            put(places.back(), std::move(one));
        }
    }
    std::vector<Found> left;
    for (std::vector<Found>& group : groups) {
        for (Found& one : settled(group)) {
            addSignsOfGroup(group, one);
            left.push_back(std::move(one));
        }
    }
    settleFamilies(left);
    settleFloors(left);
    settleTakenOut(left);
    for (Found& one : left) {
        addSignsOfPlace(walk.find(one.place), one.signs);
        walk.learn(one.place, one.place, SpaceKind::Room);
    }
    return left;
}

}  // namespace ledgerboard::intake
