// What about an item tells how likely it is that the reader made it rightly?
//
// A sign is one thing that can be seen of how an item came about: which phrase said it, how far
// that stands from its object, what else the sentence holds. Signs are of the tables and of the
// form of the sentence alone, never its words. core/intake/tables/README.md lists them.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/intake/notes/clue_words.h"
#include "core/intake/notes/links.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

enum class SignKind : std::uint8_t {
    Every,     // of every item: where the scale begins
    Act,       // row of the treatments table
    Object,    // row of the objects table
    Trade,     // of that object
    Weight,    // of the phrase
    Gap,       // tokens between the phrase and its object, in steps
    Parted,    // how hard what stands between parts them, in steps
    Length,    // of the sentence, in steps
    Strange,   // words between and beside the two that no table knows
    Cue,       // a cue in the same clause
    Lead,      // what stands right before the object
    Follow,    // what stands right after it
    Words,     // of the object as said; from 10, of the phrase
    Since,     // sentences since the speaker came to where the item is, in steps
    Is,        // SignFlag
    Mentions,  // how often the item was said
    Also,      // another treatment that was read for the same object in the same space
    Count
};

enum class SignFlag : std::uint32_t {
    Negated,     // "not replacing"
    Passive,     // "to be replaced"
    Names,       // the phrase names the thing: "hang drywall"
    Before,      // its object was named in an earlier sentence
    Assumed,     // no object was named at all
    Material,    // the object is named by its material
    With,        // it is what another thing is exchanged for
    ObjectLeft,  // the object stands before the phrase
    ObjectFirst,
    OwnPlace,  // the object names its space: "bathroom fan"
    Turned,    // the item's treatment is another than the phrase's
    Quantity,
    Cost,
    Terse,
    Heading,
    Bullet,
    Alone,
    OpensLine,
    Question,
    Corrected,  // something was taken back
    Was,        // a past form of "be", "have" or "do" stands before the phrase
    Might,      // "would", "could", "might", "should" does
    Will,       // "will", "going", "need", "want", "have to", "let us" does
    And,        // "and" stands right before the phrase
    We,         // "we", "I" or "you" stands before the phrase
    Others,     // "they", "he", "she" or "somebody" does
    If,         // "if", "when", "until" or "unless" does
    First,      // the phrase opens the sentence
    Last,       // the phrase closes it
    Past,       // the phrase ends in -ed
    Doing,      // it ends in -ing
    Year,       // a year is named
    AfterIn,    // a preposition, article or none between, leads the object
    UnderHeading,
    Elsewhere,  // in another space than where the speaker stands
    Unplaced,   // the speaker stands nowhere yet
    Outdoors,
    WholeHouse,
    Open,    // under a heading of open questions
    Kept,    // under a heading of what is kept
    Copied,  // "same in here", "the hall too"
    Choice,  // of a choice of materials
    Place,   // a place that is cleaned as a whole
    Count
};

struct Sign {
    SignKind kind = SignKind::Every;
    std::uint32_t value = 0;

    bool operator==(const Sign&) const = default;
};

[[nodiscard]] inline Sign signOf(SignFlag flag) {
    return {SignKind::Is, static_cast<std::uint32_t>(flag)};
}

// The words of leanings.tsv for it: "gap" and "2".
[[nodiscard]] const ClueWords& kindWords(SignKind kind);
[[nodiscard]] const ClueWords& valueWords(const Sign& sign);

// What the sentence tells of `said`, in no particular order, none twice.
[[nodiscard]] std::vector<Sign> signsOf(const Sentence& sentence, const Spots& spots,
                                        const Said& said);

}  // namespace ledgerboard::intake
