// What is to be done with each thing, judged from all that was said of it?
//
// The rules make items of phrases that the tables hold; the words around a thing tell more. For
// each thing in a place every treatment has a score: the weights of the clues of the thing itself
// and of what the rules made of it, added up; and where it is named, the logarithm of the mean of e
// to the sums of the clues there, so that the mention that tells most decides. The chance of a
// treatment is that of one choice among all treatments and none: e to its score, over one plus the
// sum of e to the scores of all.
//
// Source: multinomial logistic regression on the labelled talk in tests/notes, by
// tests/notes/weigh_leanings.cpp, which tells how it is done and how to do it again.
// Threads: the functions may be called by several threads.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/intake/notes/clues.h"
#include "core/intake/notes/found.h"
#include "core/intake/notes/walk.h"
#include "core/model/words.h"

namespace ledgerboard::intake {

// A thing in one place, and all that was said and made of it.
struct Thing {
    std::string place;
    std::uint32_t object = kNone;
    std::vector<std::size_t> mentions;  // indexes
    std::vector<std::size_t> made;      // indexes of what the rules made of it
};

// In the order in which they were first named; groups of rooms are spelled out.
[[nodiscard]] std::vector<Thing> thingsOf(const std::vector<Mention>& mentions,
                                          const std::vector<Found>& made, const Walk& walk);

// What of a thing bears on its treatment.
struct Evidence {
    Clues thing;                  // what it is, where, and what the rules made of it
    std::vector<Clues> mentions;  // what stands around it where it is named
};

// Of all things, in their order. With the names of the clues where `named`.
[[nodiscard]] std::vector<Evidence> evidenceOf(const std::vector<Thing>& things,
                                               const std::vector<Mention>& mentions,
                                               const std::vector<Found>& made, const Walk& walk,
                                               bool named);

// By treatment; under Treatment::Unset the chance that nothing is to be done or said of it.
using Chances = std::array<double, model::wordsOf<model::Treatment>().size()>;
[[nodiscard]] Chances chancesOf(const Evidence& evidence);

// A treatment that a thing gets.
struct Leaning {
    model::Treatment treatment = model::Treatment::Unset;
    int sure = 0;                     // percent, 1 to 99
    std::optional<std::size_t> made;  // what the rules made, where they made the same
};

// What the owner's own words say, where they say it; else the likeliest treatment, then those
// others that the rules made and that do not contradict it, each as likely as it is where the
// likeliest is left out. None where nothing is likely enough to be looked at.
[[nodiscard]] std::vector<Leaning> leaningsOf(const Thing& thing, const Chances& chances,
                                              const std::vector<Found>& made);

// A thing that becomes an item, and what it gets.
struct Chosen {
    std::size_t thing = 0;
    model::Treatment treatment = model::Treatment::Unset;
    DraftItem item;
};

// "Carpet out, plank in": a room gets one new floor, the surest, and what it lies in place of is no
// item beside it. Leaves out what is less sure, but for what is sure by itself or measured by
// itself ("20 square feet of tile, 90 of carpet"); gives how many.
int leaveOneNew(const std::vector<Thing>& things, std::vector<Chosen>& chosen);

// Percent: what is less sure is not made an item.
[[nodiscard]] int leastSure();

// Rows of leanings.tsv that cannot be used, each with its line; a test keeps this empty.
[[nodiscard]] const std::vector<std::string>& leaningFaults();

}  // namespace ledgerboard::intake
