#include "core/intake/notes/phrases.h"

#include <algorithm>

namespace ledgerboard::intake {

void PhraseTrie::add(std::span<const WordId> words, Meaning meaning) {
    openings_.resize(std::max(openings_.size(), std::size_t{words.front()} + 1));
    Opening& opening = openings_[words.front()];
    opening.tables |= bitOf(meaning.from);
    std::uint32_t node = 0;
    for (const WordId word : words) {
        std::uint32_t& next =
            node == 0 ? opening.node : edges_.row(edges_.add(edge(node, word)).first);
        if (next == 0) {
            next = static_cast<std::uint32_t>(nodes_.size());
            nodes_.emplace_back();
        }
        node = next;
    }
    // An earlier row of the same table wins over a later one with the same phrase.
    for (const Meaning& held : at(node)) {
        const bool oneEach = meaning.from == From::Object || meaning.from == From::Act ||
                             meaning.from == From::Space;
        if (held.from == meaning.from && (oneEach || held.row == meaning.row)) {
            return;
        }
    }
    Node& held = nodes_[node];
    ++held.count;
    if (held.count == 1) {
        held.one = meaning;
    } else if (held.count == 2) {
        held.many = static_cast<std::uint32_t>(many_.size());
        many_.push_back({held.one, meaning});
    } else {
        many_[held.many].push_back(meaning);
    }
}

}  // namespace ledgerboard::intake
