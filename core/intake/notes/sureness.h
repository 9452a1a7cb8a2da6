// How likely is it that an item is what the speaker meant?
//
// Source: project decision. The figures were weighed on tests/notes/learning: for each feature, how
// many in a hundred of the items that had it were right; the scale is that of notes nobody opened.
// `score-notes` prints how the sum holds on every folder.
#pragma once

#include "core/intake/notes/links.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"
#include "core/model/words.h"

namespace ledgerboard::intake {

// 5 to 95, in percent. `treatment` is what the item came to, which may differ from the phrase's.
[[nodiscard]] int sureness(const Sentence& sentence, const Spots& spots, const Said& said,
                           model::Treatment treatment);

}  // namespace ledgerboard::intake
