// Where is the speaker, and which space does each part of a sentence speak of?
//
// The walk keeps the spaces named so far, in order, and where the speaker stands. A heading or
// "now we're in the hall bath" moves; "put the washer in the garage" names a space for that clause
// alone; "the door to the garage" names none.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"
#include "core/intake/notes/units.h"

namespace ledgerboard::intake {

struct KnownSpace {
    std::string key;
    std::string shown;
    SpaceKind kind = SpaceKind::Room;
    std::string storey = {};  // as it was called where the room was named first; empty if unsaid
};

// The spaces that hold for a run of tokens.
struct Placing {
    Span span;
    std::vector<std::string> keys;
};

// What the walk makes of one sentence.
struct Placed {
    std::size_t from = 0;  // tokens before it are a heading or a move and say nothing else
    bool moved = false;
    bool onlyPlace = false;      // the sentence does nothing but name a space
    std::vector<Placing> parts;  // clauses that speak of another space than where the speaker is
};

class Walk {
  public:
    // Whether the house has flats, as the notes tell as a whole.
    void setUnits(const Units& units) { houseUnits_ = units; }

    // Takes in the next sentence. `spots.objects` that name their own space have it set.
    Placed take(const Sentence& sentence, Spots& spots);

    // Where the speaker is: one space as a rule, two after "living room / dining room", none before
    // the first is named.
    [[nodiscard]] const std::vector<std::string>& current() const { return current_; }

    // The space the speaker was in before, of the same sort where there is one; empty if none.
    [[nodiscard]] std::string before(const std::string& key) const;

    // The room the speaker was in last; empty if none.
    [[nodiscard]] std::string lastRoom() const;

    // The yard, garden or outside that was named last; the outside where none was.
    [[nodiscard]] KnownSpace groundsBefore() const;

    [[nodiscard]] const std::vector<KnownSpace>& known() const { return known_; }

    [[nodiscard]] const KnownSpace* find(const std::string& key) const;
    // Makes sure the space is known; shown as given.
    void learn(const std::string& key, const std::string& shown, SpaceKind kind);
    // The rooms that a group like "all three bedrooms" stands for; the group itself where none is
    // known by name.
    [[nodiscard]] std::vector<std::string> membersOf(const std::string& key, int count) const;
    void stand(std::vector<std::string> keys);
    // A heading that names no space, with a list under it: each line of it is an entry of its own,
    // of the house where it names no space.
    void beginList(const Sentence& heading);
    void endList();

    [[nodiscard]] bool inList() const { return listing_; }

    // A heading of one or two words that no table knows ("Sala") is the speaker's own name of a
    // space: moves there. False where it is none.
    bool enterUnnamed(const Sentence& heading);

    // Whether a heading that names a space stood above.
    [[nodiscard]] bool hadHeading() const { return headings_ > 0; }

    // Whether a heading says where the speaker is.
    [[nodiscard]] bool underHeading() const { return headingIndent_ >= 0 || sinceMove_ == 0; }

    // Sentences since the speaker moved; 99 and more before the first move.
    // Whether the stairs were spoken of here a few sentences ago.
    [[nodiscard]] bool spokeOfStairs() const;

    // Whether a paragraph of prose has begun since the speaker came where they are, under no
    // heading.
    [[nodiscard]] bool hasLeftParagraph() const { return leftParagraph_ && headingIndent_ < 0; }

    [[nodiscard]] int sinceMove() const { return sinceMove_; }

    // The last word of the name of where the speaker is: "porch".
    [[nodiscard]] WordId placeWord() const;

  private:
    enum class Role { Ignored, Move, Local, OfObject };

    std::string resolve(const SpaceSpot& spot);
    [[nodiscard]] std::string ownBath() const;
    void nameOwnBath(const Sentence& sentence, SpaceSpot& spot);
    static void nameAsBedroom(const Sentence& sentence, Spots& spots);
    void nameByStorey(std::string& key, std::string& shown);

    // A room that was named, or left, in the sentence of that number.
    struct Lately {
        std::string key;
        int sentence = 0;
    };

    struct Clause {
        std::size_t begin = 0;
        std::vector<std::string> keys;  // the spaces it speaks of, where not the current one
    };

    [[nodiscard]] Role roleOf(const Sentence& sentence, const Spots& spots,
                              std::size_t index) const;
    [[nodiscard]] bool opensSentence(const Sentence& sentence, const Spots& spots,
                                     std::size_t index) const;
    [[nodiscard]] Role roleWithThing(const Sentence& sentence, const Spots& spots,
                                     std::size_t index, const ObjectSpot& object, bool first) const;
    [[nodiscard]] std::optional<Role> roleByObject(const Sentence& sentence, const Spots& spots,
                                                   std::size_t index, bool first) const;
    [[nodiscard]] std::optional<Role> roleEntering(const Sentence& sentence, const Spots& spots,
                                                   std::size_t index, bool first) const;
    [[nodiscard]] bool isOnGrounds(const Sentence& sentence, const Spots& spots,
                                   const SpaceSpot& spot) const;
    [[nodiscard]] bool isOnlyShed(const Sentence& sentence, const Spots& spots,
                                  const SpaceSpot& spot) const;
    [[nodiscard]] bool isPartHere(const Sentence& sentence, const SpaceSpot& spot) const;
    [[nodiscard]] bool isFirstRoom(const Sentence& sentence, const SpaceSpot& spot) const;
    [[nodiscard]] bool isAlias(const Sentence& sentence) const;
    [[nodiscard]] bool isSameRoom(const Sentence& sentence, const SpaceSpot& spot) const;
    [[nodiscard]] Role roleOfWhole(const Sentence& sentence, const Spots& spots,
                                   const SpaceSpot& spot) const;
    [[nodiscard]] Role roleInClause(const Sentence& sentence, const Spots& spots,
                                    std::size_t index) const;
    void closeClause(Placed& placed, Clause& clause, std::size_t end);
    void takeHeading(const Sentence& sentence, const Spots& spots, Placed& placed);
    bool takeLabel(const Sentence& sentence, const Spots& spots, Placed& placed);
    [[nodiscard]] SpaceSpot spaceOfLabel(const Sentence& sentence, const Spots& spots,
                                         const Span& label) const;
    bool enterOnStorey(const Sentence& sentence, const std::vector<const SpaceSpot*>& named);
    void enterNamed(const Sentence& sentence, const Spots& spots,
                    const std::vector<const SpaceSpot*>& named, std::size_t end);
    void nameFully(const Sentence& sentence, const Spots& spots, const SpaceSpot& spot,
                   std::size_t end);
    void keepApart(const SpaceSpot& spot);
    [[nodiscard]] bool isOtherName(const SpaceSpot& spot) const;
    void namePlainly(const Sentence& sentence, SpaceSpot& spot);
    void beginSentence(const Sentence& sentence, Spots& spots);
    void keepJoined(const Sentence& sentence, const Spots& spots);
    void hearOwnRooms(const Sentence& sentence, Spots& spots);
    void useOwnNames(const Sentence& sentence, Spots& spots);
    void takeMove(Spots& spots, std::size_t index, Placed& placed, Clause& clause);
    void takeSpace(const Sentence& sentence, Spots& spots, std::size_t index, Placed& placed,
                   Clause& clause);
    void noteHeading(const Sentence& sentence, const Placed& placed);
    void takeLocal(const Sentence& sentence, const SpaceSpot& spot, Clause& clause);
    void leaveOut(const SpaceSpot& spot, Clause& clause) const;
    void takeOfObject(Spots& spots, std::size_t index);
    // Whether most lines of prose so far began with a room.
    [[nodiscard]] bool opensByRooms() const;
    [[nodiscard]] bool opensWithLabel(const Sentence& sentence, const Spots& spots) const;
    [[nodiscard]] const SpaceSpot* broughtUp(const Sentence& sentence, const Spots& spots,
                                             std::size_t from) const;
    void takeEveryOne(const Sentence& sentence, Spots& spots);
    void takeSystems(const Sentence& sentence, const Spots& spots, Placed& placed);
    void takeBroughtUp(const Sentence& sentence, const Spots& spots, Placed& placed);
    void takeRow(const Spots& spots, Placed& placed);
    void settleIdle(const Sentence& sentence, const Spots& spots, Placed& placed);

    void dropOthers(const Sentence& sentence, Spots& spots) const;
    static void hearShortNames(const Sentence& sentence, Spots& spots);
    void takeFixtures(const Sentence& sentence, Spots& spots) const;
    void placeRoofs(const Sentence& sentence, Spots& spots) const;
    void openLine(const Sentence& sentence);
    [[nodiscard]] bool isAsideOfSection(const Sentence& sentence, const Spots& spots,
                                        std::size_t index) const;
    [[nodiscard]] bool isCupboardHere(const Sentence& sentence, const Spots& spots,
                                      std::size_t index) const;
    [[nodiscard]] bool isWhereSystemIs(const Spots& spots, std::size_t index) const;
    void leaveRooms(const Sentence& sentence, const Spots& spots, const Placed& placed);
    [[nodiscard]] Clause firstClause(const Sentence& sentence, const Spots& spots,
                                     std::size_t from);
    void keepRun(std::size_t count);
    void hearAll(const Sentence& sentence, Spots& spots);
    [[nodiscard]] std::string thatPlace(const Sentence& sentence) const;
    void moveTo(const std::vector<const SpaceSpot*>& spots);
    [[nodiscard]] std::pair<std::string, std::size_t> unitAt(const Sentence& sentence,
                                                             const Spots& spots,
                                                             std::size_t at) const;
    void hearUnit(const Sentence& sentence, const Spots& spots);
    void nameInUnit(Spots& spots);
    void leaveUnit();
    [[nodiscard]] bool takeQualified(const Sentence& sentence);
    [[nodiscard]] bool takeNumbered(const Sentence& sentence);
    void learnOnes(const Sentence& sentence, const Spots& spots);
    void noteNamed(const std::string& key);
    [[nodiscard]] bool leaveStairs(const Sentence& sentence);
    [[nodiscard]] bool goBack(const Sentence& sentence, const Spots& spots);
    void keepRow(const Spots& spots, const Placed& placed);
    [[nodiscard]] bool followThing(const Sentence& sentence, const Spots& spots);
    void keepThings(const Sentence& sentence, const Spots& spots, const Placed& placed);

    std::vector<KnownSpace> known_;
    std::unordered_map<std::string, std::size_t> byKey_;  // indexes of known_
    std::vector<std::string> current_;
    std::vector<std::string> trail_;  // where the speaker has been, latest last
    std::string level_;
    std::string storey_;  // the same as the speaker called it
    Units houseUnits_;
    std::string unit_;        // the flat the speaker is in, "unit b" or "downstairs"; empty if none
    std::string bathStorey_;  // of the bathroom, where that was only said after its name
    std::vector<std::string> lastPlaces_;  // what "those rooms" means
    std::vector<std::string> lineKeys_;    // a list line under a heading that names its own space
    std::vector<std::string> headed_;  // where the heading stands, while a line has strayed from it
    std::string group_;                // "bedroom" after "Bedrooms.": "front left" is one of them
    std::vector<std::string> joined_;  // rooms just said to be one
    std::vector<std::pair<std::string, std::string>> parts_;  // and by the name of which they go
    std::string thingsAt_;                    // where the sentence before ended, if in another room
    std::vector<std::uint32_t> thingsThere_;  // and what it named there
    std::vector<Lately> named_;               // lately, latest last
    std::size_t lastMoved_ = 0;  // one past the space of this sentence moved to last; 0 if none
    std::size_t passed_ = 0;     // likewise the one passed last
    int stairsAge_ = 99;         // sentences since the stairs were named
    int bedroomsAge_ = 99;       // sentences since the bedrooms were spoken of together
    std::vector<std::string> counted_;  // words of number in the sentence before
    int placesAge_ = 0;                 // sentences since they were named
    int lineIndent_ = 0;
    int headingIndent_ = -1;   // of the heading the lines stand under; -1 if none
    int headings_ = 0;         // that name a space and say nothing else
    int sinceMove_ = 99;       // sentences
    int joinedAge_ = 99;       // sentences since
    int sentences_ = 0;        // taken in
    int roomLines_ = 0;        // lines of prose that began with a room
    int otherLines_ = 0;       // and without one
    bool saysStairs_ = false;  // this sentence says "upstairs" or "at the top of the stairs"
    bool groupLoose_ = false;  // one such room was entered by itself: only "the … one" is meant
    bool leftParagraph_ = false;
    bool listing_ = false;     // under a heading that names no space
    bool labelled_ = false;    // this line opened with a label in capitals
    bool whole_ = false;       // the rest of this line speaks of the whole house
    bool cameWithin_ = false;  // in the middle of a line, to where the speaker is
};

}  // namespace ledgerboard::intake
