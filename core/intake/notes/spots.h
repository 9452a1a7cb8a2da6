// What do the tables recognise in a sentence, and where?
//
// Spans are half open: begin is the first token, end the one after the last.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "core/intake/notes/amounts.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

struct Span {
    std::size_t begin = 0;
    std::size_t end = 0;

    [[nodiscard]] bool holds(std::size_t at) const { return begin <= at && at < end; }

    [[nodiscard]] bool overlaps(const Span& other) const {
        return begin < other.end && other.begin < end;
    }
};

struct ObjectSpot {
    Span span;
    std::uint32_t object = kNone;
    bool landmark = false;  // only says where something is, or what it is made of
    bool with = false;      // what another thing is exchanged for
    bool material = false;  // named by its material: "the oak"
    bool verb = false;      // the same words are a treatment here ("paint it")
    bool porch = false;  // "porch steps", "porch rail": its first word is the porch it belongs to
    std::string place;   // key of the space it names itself: "bathroom fan"
};

struct ActSpot {
    Span span;  // of the head
    Span tail;  // of the words after the gap, empty if none
    std::uint32_t row = kNone;
    bool passive = false;  // "to be replaced": its objects stand before it
    bool names = false;    // its words name the thing: "hang drywall"
    bool negated = false;
    bool own = false;  // the owner says what it means
};

struct SpaceSpot {
    Span span;
    std::string key;    // one per space, whatever the synonym
    std::string shown;  // as the speaker says it
    SpaceKind kind = SpaceKind::Room;
    int count = 0;  // of a group: "all three bedrooms"
    bool headingOnly = false;
};

struct CueSpot {
    Span span;
    Cue cue = Cue::Filler;
};

struct RowSpot {
    Span span;
    std::uint32_t row = kNone;
};

struct Spots {
    std::vector<ObjectSpot> objects;
    std::vector<ActSpot> acts;
    std::vector<SpaceSpot> spaces;
    std::vector<CueSpot> cues;
    std::vector<RowSpot> facts;
    std::vector<RowSpot> cautions;
    std::vector<Amount> amounts;

    [[nodiscard]] bool has(Cue cue) const;
    // The first cue that begins at `at` or later: they stand in the order of their first tokens.
    [[nodiscard]] std::vector<CueSpot>::const_iterator cuesFrom(std::size_t at) const;
    // The cue that begins at `at`; its end, or `at` where none begins.
    [[nodiscard]] std::size_t endOf(Cue cue, std::size_t at) const;
};

[[nodiscard]] Spots findSpots(std::span<const Token> tokens);

// The tokens that the speaker takes back: of "the main bath, no, make that the hall bath", those
// from "main" to before "hall". Empty where nothing is.
[[nodiscard]] Span correction(const Spots& spots);

}  // namespace ledgerboard::intake
