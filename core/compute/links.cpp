#include "core/compute/links.h"

#include <algorithm>
#include <unordered_map>

#include "core/compute/network.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

std::vector<ItemId> ringOf(const std::vector<model::Link>& links) {
    std::vector<ItemId> items;
    std::unordered_map<ItemId, std::size_t> positions;
    const auto positionOf = [&](const ItemId& item) {
        const auto [found, isNew] = positions.emplace(item, items.size());
        if (isNew) {
            items.push_back(item);
        }
        return found->second;
    };
    std::vector<Precedence> precedences;
    for (const model::Link& link : links) {
        if (!link.fromItem.isNil() && !link.toItem.isNil()) {
            const std::size_t from = positionOf(link.fromItem);
            precedences.push_back({from, positionOf(link.toItem), link.type, 0});
        }
    }
    std::vector<ItemId> ring;
    for (const std::size_t k : findLoop(items.size(), precedences)) {
        ring.push_back(items[k]);
    }
    return ring;
}

std::string ringText(const std::vector<ItemId>& ring, const NameItem& nameOf) {
    std::string text;
    for (const ItemId& item : ring) {
        text += nameOf(item) + " > ";
    }
    return ring.empty() ? text : text + nameOf(ring[0]);
}

model::Result<void> checkLink(const model::Link& link, const std::vector<model::Link>& others,
                              const NameItem& nameOf) {
    if (link.fromItem.isNil() || link.toItem.isNil()) {
        return model::cannotBeMet(std::string(link.fromItem.isNil() ? "From" : "To") +
                                  " is missing: a link names two items, From=ITEM and To=ITEM");
    }
    if (link.fromItem == link.toItem) {
        return model::cannotBeMet(model::saying(
            "From and To are both %1: an item does not wait for itself", nameOf(link.fromItem)));
    }
    std::vector<model::Link> all = others;
    std::erase_if(all, [&](const model::Link& other) { return other.id == link.id; });
    if (!ringOf(all).empty()) {
        return {};  // there before: this link is not to blame
    }
    all.push_back(link);
    const auto ring = ringOf(all);
    if (!ring.empty()) {
        return model::cannotBeMet(
            model::saying("To: with this link items would wait for each other in a loop: %1: leave "
                          "it out, or drop one of these",
                          ringText(ring, nameOf)));
    }
    return {};
}

}  // namespace ledgerboard::compute
