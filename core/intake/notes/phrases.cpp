#include "core/intake/notes/phrases.h"

#include <algorithm>

namespace ledgerboard::intake {

namespace {

std::uint64_t edge(std::uint32_t node, WordId word) {
    return (static_cast<std::uint64_t>(node) << 32) | word;
}

}  // namespace

PhraseTrie::PhraseTrie() {
    meanings_.emplace_back();
}

void PhraseTrie::add(std::span<const WordId> words, Meaning meaning) {
    openings_.resize(std::max(openings_.size(), std::size_t{words.front()} + 1));
    Opening& opening = openings_[words.front()];
    opening.tables |= bitOf(meaning.from);
    std::uint32_t node = 0;
    for (const WordId word : words) {
        const auto fresh = static_cast<std::uint32_t>(meanings_.size());
        std::uint32_t& next = node == 0 ? opening.node : edges_[edge(node, word)];
        if (next == 0) {
            next = fresh;
            likely_.add(edge(node, word));
            meanings_.emplace_back();
        }
        node = next;
    }
    // An earlier row of the same table wins over a later one with the same phrase.
    for (const Meaning& held : meanings_[node]) {
        const bool oneEach = meaning.from == From::Object || meaning.from == From::Act ||
                             meaning.from == From::Space;
        if (held.from == meaning.from && (oneEach || held.row == meaning.row)) {
            return;
        }
    }
    meanings_[node].push_back(meaning);
}

std::uint32_t PhraseTrie::step(std::uint32_t node, WordId word) const {
    if (node == 0) {
        return word < openings_.size() ? openings_[word].node : 0;
    }
    if (!likely_.mayHave(edge(node, word))) {
        return 0;
    }
    const auto found = edges_.find(edge(node, word));
    return found == edges_.end() ? 0 : found->second;
}

std::span<const Meaning> PhraseTrie::at(std::uint32_t node) const {
    return meanings_[node];
}

}  // namespace ledgerboard::intake
