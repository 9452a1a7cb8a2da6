#include "core/intake/notes/phrases.h"

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
    std::uint32_t node = 0;
    for (const WordId word : words) {
        const auto fresh = static_cast<std::uint32_t>(meanings_.size());
        const auto [place, added] = edges_.emplace(edge(node, word), fresh);
        if (added) {
            likely_.add(edge(node, word));
            meanings_.emplace_back();
        }
        node = place->second;
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
