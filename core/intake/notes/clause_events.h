// What does one hear in a sentence, in order: things, treatments, pronouns and joints?
#pragma once

#include <cstdint>
#include <vector>

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

struct ClauseEvent {
    // Comma, And: a list or a clause may go on. Turn ("so", "but", "because"): another clause.
    // Colon: also a dash. Open, Close: brackets. Stop: a clause is over.
    enum class Kind : std::uint8_t {
        Thing,
        Pronoun,
        Act,
        Comma,
        And,
        Turn,
        Colon,
        Open,
        Close,
        Stop
    };

    Kind kind = Kind::Stop;
    std::size_t at = 0;     // token
    std::size_t index = 0;  // of the thing in spots.objects or the treatment in spots.acts
};

// In the order of the sentence, from token `from`; no landmarks and no hints but "no".
[[nodiscard]] std::vector<ClauseEvent> clauseEvents(const Sentence& sentence, const Spots& spots,
                                                    std::size_t from);

}  // namespace ledgerboard::intake
