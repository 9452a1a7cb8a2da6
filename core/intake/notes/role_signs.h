// What does a sentence say around the name of a space: is it entered, passed, or where something
// is?
//
// walk_roles.cpp weighs these signs, in its order, against where the speaker stands.
#pragma once

#include <cstddef>

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// "run it outside", "paint outside": which way, or which side, and not where one stands.
[[nodiscard]] bool isAdverb(const Sentence& sentence, const Spots& spots, std::size_t index);

// "The carport ceiling is sagging.", where a paragraph begins: what follows is there too.
[[nodiscard]] bool opensParagraph(const Sentence& sentence, const SpaceSpot& spot);

// "Living room plaster's cracked …" begins a room as well, in speech without marks.
[[nodiscard]] bool opensInBreath(const Sentence& sentence, const Spots& spots,
                                 const SpaceSpot& spot, bool inside);

// "The attic stairs, they're fine.": the ladder that comes down into the hall.
[[nodiscard]] bool isAtticLadder(const Sentence& sentence, const Spots& spots,
                                 const SpaceSpot& spot);

// Stairs that are a thing of the hall they stand in.
[[nodiscard]] bool isThingOfHall(const Sentence& sentence, const Spots& spots,
                                 const SpaceSpot& spot);

// "There's a powder room": one that is there, in long talk or where no order is given.
[[nodiscard]] bool thereIsSuch(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot);

// "To the right, the dining room: …", "off the kitchen, a utility": the sentence begins with the
// way to it.
[[nodiscard]] bool liesThatWay(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot);

// "It has its own bath with a cracked tub, …": what follows is in it.
[[nodiscard]] bool isOwnWith(const Sentence& sentence, const SpaceSpot& spot);

// "a powder room", "another bath": one that is not there yet. "a dentist's office": somebody's.
[[nodiscard]] bool isYetToBe(const Sentence& sentence, const SpaceSpot& spot);

// "The garage was turned into a den.": what the room is now, its article before token `begin`.
[[nodiscard]] bool isMadeInto(const Sentence& sentence, const SpaceSpot& spot);

// "the french windows onto the garden": what a thing before token `begin` leads to.
[[nodiscard]] bool isBeyond(const Sentence& sentence, const Spots& spots, std::size_t begin);

// "run the same plank through the entry, living room and hall"
[[nodiscard]] bool isLaidThrough(const Sentence& sentence, const Spots& spots, std::size_t begin);

// "South bedroom, that's the best one so it's the primary"
[[nodiscard]] bool isPrimaryToo(const Sentence& sentence, const Spots& spots, std::size_t index);

// "You come in by the kitchen, and the kitchen is where the money goes.": what the talk turns to,
// where no work was spoken of yet.
[[nodiscard]] bool talkTurnsTo(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot);

// "On the main floor: living room carpet comes up": the storey that the next sentences are of.
[[nodiscard]] bool isStoreyTurnedTo(const Sentence& sentence, const SpaceSpot& spot);

// "The kitchen cabinets are peeling.", in the middle of prose: what a kitchen is made of is spoken
// of in the kitchen.
[[nodiscard]] bool turnsByThing(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot,
                                const ObjectSpot& object);

// "Exterior trim is rotted …", where a paragraph begins.
[[nodiscard]] bool isExteriorOfParagraph(const Sentence& sentence, const Spots& spots,
                                         std::size_t index);

// "and then in the kitchen we …": a room stepped into, and no place of a thing named before it.
[[nodiscard]] bool isSteppedInto(const Sentence& sentence, const Spots& spots,
                                 const SpaceSpot& spot);

// "duct off at primary bedroom boot": the space only says which.
[[nodiscard]] bool onlySaysWhich(const Sentence& sentence, const Spots& spots,
                                 const SpaceSpot& spot);

// "oak 1st flr dull": in shorthand, which floor a thing is on.
[[nodiscard]] bool isWhichFloor(const Sentence& sentence, std::size_t begin);

// "Hall bath is the only full bath": the same room once more.
[[nodiscard]] bool isSameAgain(const Sentence& sentence, const Spots& spots, std::size_t index);

// "- kitchen cabinets, paint", "- hall bath tub": a line of a list opens with the room of the
// thing.
[[nodiscard]] bool opensListLine(const Sentence& sentence, const SpaceSpot& spot,
                                 const ObjectSpot& object);

// Whether a phrase that only looks like a space reaches over the name.
[[nodiscard]] bool isStopped(const Spots& spots, const Span& name);

// Whether a wall goes between here and the space.
[[nodiscard]] bool isKnockedThrough(const Sentence& sentence, const Spots& spots, const Span& name);

// "I have boards in my barn": not of this house.
[[nodiscard]] bool isSpeakersOwn(const Sentence& sentence, const SpaceSpot& spot);

// "The bathroom's downstairs in the old coal store": a storey that tells where a room is.
[[nodiscard]] bool isStoreyOfRoom(const Sentence& sentence, const Spots& spots, std::size_t index);

// "Agents will call it bedroom three", the name at token `begin`.
[[nodiscard]] bool othersCallItSo(const Sentence& sentence, std::size_t begin);

// "rewire the house", "paint the bedroom": whether work with a thing of its own leads up to
// token `begin`.
[[nodiscard]] bool isWorkedOn(const Spots& spots, std::size_t begin);

// "LVP: living room 260, dining room 120", "sand living room and hall": the first of a row.
[[nodiscard]] bool headsRow(const Sentence& sentence, const Spots& spots, std::size_t index);

// "all of them except the den", "throughout but for the kitchen": the space at token `at` is one of
// which it is not said.
[[nodiscard]] bool isExcepted(const Sentence& sentence, const Spots& spots, std::size_t at);

// "carry that through the hall, the half bath and the den": the first of a row of rooms, none of
// which is only passed.
[[nodiscard]] bool leadsRow(const Sentence& sentence, const Spots& spots, std::size_t index);

}  // namespace ledgerboard::intake
