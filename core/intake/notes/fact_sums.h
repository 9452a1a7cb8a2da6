// What may keep a figure from being a sum of the deal: it is another house's, asked for, taken
// back, or counts something else.
#pragma once

#include "core/intake/notes/fact_words.h"

namespace ledgerboard::intake {

// "Asking was 240, we got it for 231": what others hoped for is no fact.
[[nodiscard]] bool isAsked(const Sentence& sentence, const Amount& amount);

// "Three eighty nine was our first offer": no price that was paid.
[[nodiscard]] bool wasOnlyOffered(const Sentence& sentence, const Amount& amount);

// "180 litres", "forty minutes": so many of something, and no sum.
[[nodiscard]] bool countsThings(const Sentence& sentence, const Amount& amount);

// "Comps 209 / 221", "nearby ones have gone for 390": of other houses.
[[nodiscard]] bool isOfOthers(const Sentence& sentence);

// "The one two doors down got 199", "houses on the street have gone for 95": what is told of
// another house, up to where the talk turns to this one.
[[nodiscard]] bool isOfOtherHouse(const Sentence& sentence, const Amount& amount);

// "340 as is", "two ten as it sits": what it is worth before the work.
[[nodiscard]] bool isAsItStands(const Sentence& sentence, const Amount& amount);

// "Sixty, no, sixty-five": what the next figure takes the place of.
[[nodiscard]] bool isTakenBack(const Sentence& sentence, const Spots& spots, const Amount& amount);

// "In the thirties", "it's a sixty nine": years; "the low 300s": no one sum.
[[nodiscard]] bool isOfYears(const Sentence& sentence, const Amount& amount);

// "200 amp", "38 deg", "half past six": a figure of something else.
[[nodiscard]] bool isOfOther(const Sentence& sentence, const Amount& amount);

// "96 m2 (valuer) / 102 (old listing)": another reading of the area.
[[nodiscard]] bool isOfArea(const Sentence& sentence, const Spots& spots, const Amount& amount);

}  // namespace ledgerboard::intake
