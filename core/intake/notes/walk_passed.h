// Is a space only named on the way to saying something else, so that nobody is in it?
#pragma once

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// "It's carrying half of the second floor", "cracked from the hatch over to the bathroom", "two
// birches leaning at the bedroom", "a hatch through to the kitchen". `index` is of spots.spaces.
[[nodiscard]] bool isOnlyNamed(const Sentence& sentence, const Spots& spots, std::size_t index);

// "Off the kitchen there.", "it's off the living room": whether the sentence begins with where the
// room it speaks of lies, seen from the space named at token `at`.
[[nodiscard]] bool saysWhereItIs(const Sentence& sentence, std::size_t at);

// "The boiler, it's in the kitchen cupboard", "the fuse box is under the stairs": whether the space
// is where the thing is that the sentence speaks of.
[[nodiscard]] bool isWhereThingIs(const Sentence& sentence, const Spots& spots,
                                  const SpaceSpot& spot);

// "the little one, the nursery let's call it"
[[nodiscard]] bool isCalledSo(const Sentence& sentence, const SpaceSpot& spot);

// "Ed: Kitchen cabinets.", and the other says what is done: whether the talk goes through that
// room, thing by thing.
[[nodiscard]] bool isCalledOut(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot);

// "used as an office": what a room serves as, its name at token `at`.
[[nodiscard]] bool isUsedAs(const Sentence& sentence, std::size_t at);

// "My part's the patio, …", "Third one up here is the den, …": what a clause turns to, where
// nothing was said yet.
[[nodiscard]] bool isTurnedTo(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot);

// "Back room's the dining room", "The big room is the schoolroom": what a room that had no name but
// its side or size is.
[[nodiscard]] bool isWhatPlainRoomIs(const Sentence& sentence, const Spots& spots,
                                     std::size_t index);

// "What about the lounge walls?", "What's with the porch?": what one of several turns the talk to.
[[nodiscard]] bool isAskedAbout(const Sentence& sentence, const SpaceSpot& spot);

// "So second floor gets rewired.", "the kitchen and the bath get new wire": what runs to them is
// spoken of where it begins, in the cellar.
[[nodiscard]] bool isServed(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot,
                            const std::string& here);

// "Laundry's in the sunroom.": which room serves for it.
[[nodiscard]] bool isLaundryIn(const Sentence& sentence, const Spots& spots);

// Whether a part of the grounds holds the thing that names this space: "The decking's gone soft,
// take it up", "Shed's a good one, leave it", said in the garden.
[[nodiscard]] bool isThingOfGrounds(const Sentence& sentence, const Spots& spots,
                                    const SpaceSpot& spot);

}  // namespace ledgerboard::intake
