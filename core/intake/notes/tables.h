// What does the reader know of objects, treatments, rooms and ways of speaking?
//
// The tables of core/intake/tables, read once and made ready for matching. Their form is told in
// core/intake/tables/README.md.
// Threads: tables() may be called from any thread; what it gives is never changed.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/intake/notes/phrases.h"
#include "core/intake/notes/words.h"
#include "core/model/words.h"

namespace ledgerboard::intake {

inline constexpr std::uint32_t kNone = 0xFFFFFFFF;

enum class Place : std::uint8_t { Inside, Anywhere, Outside };

// To what an object belongs, wherever it is spoken of.
enum class Home : std::uint8_t {
    Anywhere,
    Room,     // a room indoors: seen from the yard, it is in the room before
    Stairs,   // the stairs, where they share a heading with a hall
    Outside,  // the house's outdoors, always
    House,    // the outside of the house, also where the speaker stands in the yard or on the deck
    Deck,     // the deck, which is a space of its own
    Garage,
    Self  // a space of its own
};

struct ObjectRow {
    std::string name;
    std::string trade;
    std::string unit;
    Place place = Place::Anywhere;
    Home home = Home::Anywhere;
    bool hasDoing = false;   // one of its names ends in -ing
    bool hasDone = false;    // one of its names ends in -ed
    bool freshAdds = false;  // "a new one" adds it; else it replaces the old one
    bool essential = false;  // every house has one: what is taken out is replaced
    std::string family;      // objects of one family stand in for each other: floor coverings
    bool lone = false;       // a room gets one new thing of the family
    std::vector<std::string> hazards;
    std::vector<std::uint32_t> members;  // of a set, which is spoken of in place of them
};

// On which side of the phrase its objects stand.
enum class Side : std::uint8_t { After, Before, Any, Edge };

struct ActRow {
    std::string phrase;
    model::Treatment treatment = model::Treatment::Unset;
    bool fresh = false;  // add or replace, as the object's row says
    Side side = Side::Any;
    // 3: an order; 2: implied by a judgement; 1: a condition; 0: a mere hint, used with others.
    int weight = 0;
    std::uint32_t object = kNone;  // what is meant when no object is named
    bool names = false;            // it is meant whatever was spoken of before
    std::vector<WordId> tail;      // the words after a gap: "rip ~ out"
};

enum class SpaceKind : std::uint8_t { Room, Outside, Whole, Level, Group };

struct SpaceRow {
    std::string name;
    SpaceKind kind = SpaceKind::Room;
    bool building = false;  // beside the house, with a roof and walls of its own
};

// A name of one word that stands for a space.
struct SpaceWord {
    std::string word;
    std::uint32_t row = kNone;
};

enum class Cue : std::uint8_t {
    Filler,
    Correction,
    Negation,
    Hypothetical,
    Undecided,
    Decided,
    Soft,
    Chatter,
    Resume,
    Enter,
    Move,
    Landmark,
    With,
    Same,
    Pronoun,
    Split,
    Because,
    Absent,
    Small,
    Passive,
    Refused,
    Settled,
    Passing,
    Stop,
    Aside,
    Either,
    Open,
    Material,
    Rooms,
    Locus,
    Here,
    Nobody,
    Turn,
    Rest,
    Stress,
    Seems,
    Asks,
    Count
};

// How a word bends a phrase that it stands in.
inline constexpr std::uint8_t kStresses = 1;  // "completely": as if it weren't there
inline constexpr std::uint8_t kSeems = 2;     // "looks": as if it were "is"

enum class Measure : std::uint8_t { Area, Length, Count, Volume, Time };

struct UnitRow {
    std::string name;
    Measure measure = Measure::Count;
};

enum class NumberKind : std::uint8_t {
    None,
    Unit,
    Teen,
    Ten,
    Times,
    Scale,
    Money,
    Fraction,
    Few,
    Currency,
    Cents,
    Digit
};

struct NumberRow {
    NumberKind kind = NumberKind::None;
    std::int64_t value = 0;  // thousandths
};

struct CautionRow {
    std::string key;
    std::string about;
    int builtBefore = 0;                       // 0: whatever the year
    std::vector<model::Treatment> treatments;  // empty: any
    std::string why;
};

// "floor" said to be "oak" is a wood floor.
struct KindRow {
    std::uint32_t general = kNone;
    WordId word = kUnknown;
    bool place = false;           // the word is the last of a space's name: "floor" of a porch
    bool lately = false;          // the word may also stand in the two sentences before
    std::uint32_t whole = kNone;  // of what it is a part, in place of a word: "doors" of cabinets
    std::uint32_t object = kNone;
};

// Things that an owner calls by names no table holds: so many rows are kept for them.
inline constexpr std::size_t kMostOwnThings = 64;

struct Tables {
    Lexicon lexicon;
    PhraseTrie phrases;
    std::vector<ObjectRow> objects;
    std::vector<ActRow> acts;
    std::vector<SpaceRow> spaces;
    std::vector<SpaceWord> spaceWords;
    std::vector<std::string> qualifiers;
    std::vector<UnitRow> units;
    std::vector<std::string> facts;
    std::vector<CautionRow> cautions;
    std::vector<KindRow> kinds;       // those of one thing together, in the order of the table
    std::vector<NumberRow> numbers;   // by word id
    std::vector<std::uint8_t> loose;  // by word id
    std::vector<WordId> lately;       // words of kinds that may stand in a sentence before
    std::vector<std::string> faults;  // rows that could not be used; a test keeps this empty

    [[nodiscard]] std::uint32_t objectNamed(std::string_view name) const;  // kNone where unknown

    // What the thing may be, told more narrowly.
    [[nodiscard]] std::span<const KindRow> kindsOf(std::uint32_t general) const;

    // The row kept for one of the owner's own things. Requires: at < kMostOwnThings.
    [[nodiscard]] std::uint32_t ownThing(std::size_t at) const {
        return static_cast<std::uint32_t>(objects.size() - kMostOwnThings + at);
    }

    [[nodiscard]] NumberRow number(WordId word) const {
        return word < numbers.size() ? numbers[word] : NumberRow{};
    }

    [[nodiscard]] std::uint8_t looseness(WordId word) const {
        return word < loose.size() ? loose[word] : 0;
    }

    // The id of a word the code itself asks about; kUnknown where no table holds it.
    [[nodiscard]] WordId id(std::string_view stem) const { return lexicon.find(stem); }

    // Whether `word` is the id of that stem. Faster than to ask for the stem's id each time.
    [[nodiscard]] bool is(WordId word, std::string_view stem) const {
        return word != kUnknown && lexicon.stem(word) == stem;
    }
};

[[nodiscard]] Tables loadTables();

[[nodiscard]] inline const Tables& tables() {
    static const Tables kTables = loadTables();
    return kTables;
}

// The word of cues.tsv for it.
[[nodiscard]] std::string_view cueName(Cue cue);

}  // namespace ledgerboard::intake
