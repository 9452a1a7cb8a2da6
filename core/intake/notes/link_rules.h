// Small questions that decide whether a treatment is meant for an object.
#pragma once

#include "core/intake/notes/links.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// By trade: whether paint, stain, polish or glaze can go on it. Source: common practice, no source.
[[nodiscard]] bool canBeRefinished(const ObjectRow& object);
// Words from `begin` to `end` that are no figures.
[[nodiscard]] std::size_t wordsBetween(const Sentence& sentence, const Spots& spots,
                                       std::size_t begin, std::size_t end);
// Words from `begin` to `end` that are no object, treatment, figure or joint.
[[nodiscard]] std::size_t otherWords(const Sentence& sentence, const Spots& spots,
                                     std::size_t begin, std::size_t end);
// "take down the dead ash": whether the treatment names a thing that no table knows.
// A word of the sentence before is known enough: "wallpaper with ducks. The ducks come off."
[[nodiscard]] bool namesUnknown(const Sentence& sentence, const Spots& spots, const ActSpot& act,
                                const std::vector<std::string_view>& before);

}  // namespace ledgerboard::intake
