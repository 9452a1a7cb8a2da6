// What does an owner's correction of a read item teach?
//
// Only what is plain: the words of the sentence that named the object, where one phrase did; the
// words that said the treatment, where it was said once and by a judgement ("is tired") rather than
// an order ("replace"), since changing an order is a change of mind.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/intake/notes/own_word.h"

namespace ledgerboard::intake {

// What an item says.
struct ItemSays {
    std::string space{};
    model::Treatment treatment = model::Treatment::Unset;
    std::string object{};

    bool operator==(const ItemSays&) const = default;
};

struct Correction {
    std::string sentence;              // the item was read from
    std::optional<ItemSays> before{};  // empty: the item was added
    std::optional<ItemSays> after{};   // empty: it was dropped
    // Whether the space as a whole has another name now; else the item was moved.
    bool spaceRenamed = false;
};

// None where nothing plain is taught, or no more than `known` says. No lessons are: a name that
// only says more closely what was said ("vessel sink" for "sink"); another name for a space that
// was called by a name every house has; a drop of what was called by its own name, which is a
// change of plan. `nothing`, of any other dropped item, is a weak lesson: keep_words.h counts it.
[[nodiscard]] std::vector<OwnWord> lessonsOf(const Correction& correction,
                                             std::span<const OwnWord> known = {});

// The stems of a phrase, by which two are the same: "The Credenzas" and "the credenza".
[[nodiscard]] std::string phraseKey(std::string_view phrase);

}  // namespace ledgerboard::intake
