// How do the stages follow one another, sentence by sentence?
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/intake/notes/choice_clues.h"
#include "core/intake/notes/choices.h"
#include "core/intake/notes/clues.h"
#include "core/intake/notes/facts.h"
#include "core/intake/notes/found.h"
#include "core/intake/notes/leanings.h"
#include "core/intake/notes/links.h"
#include "core/intake/notes/own_words.h"
#include "core/intake/notes/place_clues.h"
#include "core/intake/notes/read_notes.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/walk.h"

namespace ledgerboard::intake {

// "Clean out the garage": the thing is the place that it names.
[[nodiscard]] bool isPlaceItself(const ObjectSpot& spot);

// A thing that is a place by the same name: a garage, an attic.
[[nodiscard]] bool isPlaceToo(std::uint32_t object);

// Notes that ask for more than this are no notes of one house.
inline constexpr std::size_t kMostItems = 20'000;

class Reader {
  public:
    explicit Reader(const ReadOptions& options)
        : options_(options),
          owner_{OwnWords(options.ownWords), {}, {}},
          stems_(tables().lexicon),
          clues_(stems_),
          choiceClues_(stems_),
          placeClues_(options.explain) {}

    void setUnits(const Units& units) { walk_.setUnits(units); }

    void take(Sentence& sentence, const Around& around);
    [[nodiscard]] Reading finish();

  private:
    // What a heading that names no space makes of the lines under it.
    enum class Section { Plain, Open, NotDoing, Keep };

    // What a choice is about.
    struct Matter {
        std::vector<std::uint32_t> objects;  // rows of the object table; none of a whole space
        const SpaceSpot* space = nullptr;    // the space it is about, where it is named
        std::string name;                    // as the question is put
        bool known = false;                  // false where nothing says what the choice is about
    };

    // Where a choice is, and what may say otherwise once all is read.
    struct ChoicePlace {
        std::string place;
        std::uint32_t object = kNone;  // what it is about; kNone where it is surely there
        std::size_t sentence = 0;
    };

    // A sentence that may leave a choice open, too faintly to be taken for one by itself.
    struct Hint {
        Sentence sentence;
        Spots spots;
        Placed placed;
        Linked linked;
        Openness open;
        ChoiceSigns signs;
        std::string place;
        int chance = 0;
        int number = 0;  // of the sentence
    };

    // What of another space holds here too: all of it where `named` is empty, and never `others`.
    struct SameThings {
        std::vector<std::uint32_t> named;
        std::vector<std::uint32_t> others;
        bool carpetAlone = false;  // "same carpet": not the boards below
    };

    static void dropHadDone(const Sentence& sentence, Spots& spots);
    [[nodiscard]] Spots spotsOf(const Sentence& sentence);
    [[nodiscard]] const std::string& written(const Sentence& sentence);
    void takeBack(Sentence& sentence, Spots& spots);
    void nameOwnThings();
    bool takeSection(const Sentence& sentence, const Spots& spots, const Around& around);
    bool takePlaceHeading(const Sentence& sentence, const Spots& spots);
    bool hearSection(const Spots& spots, bool lists, bool idle);
    void takeHeaded(const Sentence& sentence, Spots& spots, Linked& linked) const;
    void arrive(const Sentence& sentence);
    Linked takeWork(const Sentence& sentence, Spots& spots, const Placed& placed, bool deal,
                    const Around& around);
    void takeAnswer(const Sentence& sentence, const Spots& spots, std::size_t foundBefore);
    void keepLastWords(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::vector<WordId> latelySaid() const;
    static void hearSame(const Sentence& sentence, Spots& spots, std::size_t begin);
    [[nodiscard]] static bool saysWhatAgain(const Sentence& sentence, const Spots& spots,
                                            const Span& cue);
    [[nodiscard]] static bool isLikeNothing(const Sentence& sentence, const Spots& spots,
                                            const Span& cue);
    void takeSame(const Sentence& sentence, Spots& spots, const Placed& placed);
    void copySame(const Sentence& sentence, const std::string& from, const std::string& here,
                  const SameThings& things);
    [[nodiscard]] std::string sameAs(const Spots& spots, std::size_t after,
                                     const std::vector<std::string>& places,
                                     const std::vector<std::uint32_t>& named) const;
    void takeItems(const Sentence& sentence, Spots& spots, const Placed& placed,
                   const Linked& linked, const Openness& open);
    void namePlaceItself(const Sentence& sentence, Spots& spots) const;
    void cleanPlace(const Sentence& sentence, const Spots& spots, const Placed& placed,
                    const Linked& linked);
    void nameOutside(Found& found) const;
    void nameFloor(const Spots& spots, const Said& said, Found& found) const;
    void signPlace(Found& found) const;
    bool takeChoice(const Sentence& sentence, const Spots& spots, const Placed& placed,
                    const Linked& linked, const Openness& open, const Around& around);
    [[nodiscard]] ChoiceSigns signsOfChoice(const Sentence& sentence, const Spots& spots,
                                            const Placed& placed, const Linked& linked,
                                            const Openness& open, const std::string& place) const;
    int chanceOfChoice(const Sentence& sentence, const Spots& spots, const Openness& open,
                       const ChoiceSigns& signs, const Around& around, const std::string& place);
    [[nodiscard]] bool isSameChoice(const Sentence& sentence, const Spots& spots,
                                    const ChoiceSigns& signs, const std::string& place) const;
    [[nodiscard]] bool isDeadChoice(const Sentence& sentence, const Spots& spots,
                                    const Openness& open) const;
    [[nodiscard]] std::string placeOfChoice(const Spots& spots, const Placed& placed) const;
    [[nodiscard]] bool isWholeBuilding(const Spots& spots, const std::string& place) const;
    [[nodiscard]] ChoicePlace homeOfChoice(const Sentence& sentence, const Spots& spots,
                                           const Placed& placed, const Matter& matter,
                                           const std::string& place, bool joined);
    [[nodiscard]] bool isHeatedFrom(const std::string& place) const;
    [[nodiscard]] const Whereabouts* whereaboutsOf(const ChoicePlace& choice) const;
    void settleChoices();
    [[nodiscard]] Matter matterOfChoice(const Sentence& sentence, const Spots& spots,
                                        const Placed& placed, const Linked& linked,
                                        const std::string& place, bool choice) const;
    void addChoice(const Sentence& sentence, const Spots& spots, const Placed& placed,
                   const Openness& open, const Matter& matter, const ChoicePlace& home,
                   bool hasMatter);
    [[nodiscard]] std::string shownAs(const std::string& place) const;
    [[nodiscard]] bool goesOn(const Sentence& sentence, const Spots& spots, const Openness& open,
                              const std::string& shown, bool hasMatter) const;
    [[nodiscard]] bool joinsHint(const Spots& spots, const ChoiceSigns& signs,
                                 const std::string& place, int chance) const;
    bool takeHint(int chance);
    void rememberSpace(const Sentence& sentence, const Spots& spots, const Placed& placed);
    void dropHinted(const std::vector<std::uint32_t>& objects);
    void addToChoice(const Sentence& sentence, const Spots& spots, const Placed& placed,
                     const ChoiceSigns& signs, const Openness& open, const std::string& place);
    void doubtWhatWasSaid(const Openness& open, bool hasMatter, DraftAlternate& alternate);
    void countMaterials(const Sentence& sentence, const Spots& spots, const std::string& place);
    void addMeasure(const Sentence& sentence, const Spots& spots, Found& found);
    void noteCautions(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] bool recallPart(const Spots& spots, ObjectSpot& spot) const;
    [[nodiscard]] std::uint32_t boardsOf(const Sentence& sentence, const Spots& spots,
                                         const ObjectSpot& spot) const;
    void recall(const Sentence& sentence, Spots& spots) const;
    [[nodiscard]] bool spreads(const Sentence& sentence,
                               const std::vector<std::string>& stood) const;
    void copyLast(const std::vector<std::string>& places);
    [[nodiscard]] bool saysAlso(const Sentence& sentence, const Spots& spots) const;
    void extendPlaces(const Sentence& sentence, const Spots& spots, const Placed& placed,
                      const Linked& linked);
    void takeFragment(const Sentence& sentence, Spots& spots, const Placed& placed, Linked& linked);
    void takeOnes(const Sentence& sentence, Spots& spots, const Placed& placed, Linked& linked);
    static void takeMeasured(const Sentence& sentence, Spots& spots, const Placed& placed,
                             Linked& linked);
    static void takeCountOfAbsent(const Sentence& sentence, Spots& spots, Linked& linked);
    void takeStuff(const Sentence& sentence, Spots& spots, Linked& linked);
    static void takeLaid(const Sentence& sentence, Spots& spots, Linked& linked);
    static void takeTroubles(Spots& spots, Linked& linked);
    static void takeYears(const Sentence& sentence, Spots& spots, Linked& linked);
    void makeItems();
    void settlePlaces();
    void spellOutSets();
    void nameWhereabouts();
    [[nodiscard]] DraftItem itemOf(const Thing& thing, const Leaning& leaning,
                                   const std::vector<Found>& made) const;
    void listSpaces();
    void sortItems(std::vector<DraftItem>& items) const;
    void tell(std::size_t sentence, const std::string& stage, const std::string& made);
    void tellLeaning(const std::string& object, const Chances& chances, std::size_t sentence);
    void nameThings(const std::vector<Thing>& things, const std::vector<Evidence>& evidence,
                    const std::vector<Chances>& chances, const std::vector<Found>& made);
    void nameItem(const std::string& place, std::uint32_t object, model::Treatment treatment,
                  DraftItem& item) const;
    void addPlaceClues(Mention& mention) const;
    void addHereClues(Mention& mention) const;
    void noteMentions(const Sentence& sentence, const Spots& spots,
                      const std::vector<ObjectSpot>& heard, const Placed& placed,
                      std::size_t foundBefore);
    void placeAsMade(std::size_t foundBefore, Mention& mention) const;
    void copyMention(std::uint32_t object, const std::string& from, const std::string& to,
                     const Source& source);
    void keepTopic(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::vector<std::uint32_t> spokenOf(const Sentence& sentence, const Spots& spots,
                                                      const Linked& linked,
                                                      std::uint32_t& act) const;
    void noteAbsent(const Sentence& sentence, const Spots& spots);
    void remember(const Sentence& sentence, const Spots& spots, const Placed& placed,
                  const Linked& linked);
    void rememberPlaces(const Spots& spots, const Placed& placed);
    [[nodiscard]] bool isDead(const Sentence& sentence, const Spots& spots, std::size_t at,
                              int weight) const;
    [[nodiscard]] std::string porchOf(const ObjectSpot& spot) const;
    [[nodiscard]] bool isOutdoors(const std::string& key) const;
    [[nodiscard]] std::optional<std::vector<std::string>> namedPlaces(const Spots& spots,
                                                                      const Placed& placed,
                                                                      const Said& said);
    [[nodiscard]] std::optional<KnownSpace> homeOf(const Spots& spots, const Said& said,
                                                   const std::vector<std::string>& keys) const;
    [[nodiscard]] std::vector<std::string> placesFor(const Spots& spots, const Placed& placed,
                                                     const Said& said);
    [[nodiscard]] Found foundOf(const Sentence& sentence, const Spots& spots, const Said& said);
    void takeFresh(const Sentence& sentence, const Spots& spots, const Said& said,
                   Found& found) const;
    [[nodiscard]] bool isOfPieces(const Sentence& sentence, const Spots& spots,
                                  const Said& said) const;
    void takeMended(const Sentence& sentence, const Spots& spots, const Said& said,
                    Found& found) const;
    void addAmounts(const Sentence& sentence, const Spots& spots, const Said& said, Found& found);
    [[nodiscard]] static bool ofAnother(const Sentence& sentence, const Spots& spots,
                                        const Amount& amount, const Said& said);
    static void addTime(const Sentence& sentence, const Amount& amount, DraftItem& item);
    [[nodiscard]] bool ofHole(const Spots& spots, const Linked& linked, const Said& said) const;
    [[nodiscard]] bool answered(const Sentence& sentence, const Spots& spots, const Linked& linked,
                                const Said& said) const;
    [[nodiscard]] bool isDone(const Sentence& sentence, const Spots& spots,
                              const ActSpot& act) const;
    [[nodiscard]] bool absent(const Sentence& sentence, const Spots& spots, const Said& said) const;
    [[nodiscard]] static bool isAbsent(const Sentence& sentence, const Spots& spots,
                                       const Span& span);
    void cautionItems(Draft& draft) const;
    void explain(const Sentence& sentence, const Spots& spots, const Placed& placed,
                 const Linked& linked, std::size_t foundBefore);

    // The owner's words, and which of them stand in the notes.
    struct Owner {
        OwnWords words;
        std::set<std::size_t> used;     // in all
        std::vector<std::size_t> here;  // in this sentence
    };

    // What an "it" may mean.
    struct Meant {
        std::vector<std::uint32_t> objects;
        std::vector<std::string> places;  // where they are, if not where the speaker stands
        std::vector<std::string> heads;   // how the first was last named
        bool loose = false;               // nothing was said yet of what to do with them
        int age = 0;                      // sentences
    };

    // What was said since the speaker came to the space.
    struct SaidHere {
        std::vector<std::uint32_t> absent;           // objects just said to be missing
        std::vector<std::uint32_t> recent;           // objects named, latest first
        std::vector<std::pair<WordId, int>> lately;  // words that kinds ask for; their sentence
    };

    // What the sentence before leaves behind.
    struct LastSentence {
        std::vector<std::string_view> words;  // that no table knows
        std::vector<std::uint32_t> pieces;    // objects of which it counted a few pieces
        std::uint32_t act = kNone;            // row of what was said last
        std::size_t found = 0;                // found_ before it
        std::size_t mentions = 0;             // mentions_ before it
        bool thought = false;                 // it told what might be done
        bool condition = false;               // … or on what something hangs
        bool asked = false;                   // it was a question
        bool proposed = false;                // … that asked leave to do some work
        bool ofAll = false;                   // it spoke of a storey or of all rooms
    };

    // What the heading says of the lines under it.
    struct UnderHeading {
        Section is = Section::Plain;
        std::uint32_t act = kNone;  // row of what is done to what it lists
    };

    // What holds for the rest of a line.
    struct RestOfLine {
        std::uint32_t topic = kNone;  // "Cabinets: …": what it is about
        bool allNew = false;          // after "new:"
    };

    // A space that "it" may mean.
    struct SpaceMeant {
        SpaceSpot space;
        int age = 99;  // sentences since it was spoken of as a thing is
    };

    // The last choice, which what is said next may add to.
    struct LastChoice {
        int age = 99;                  // sentences since it was added to
        std::uint32_t object = kNone;  // what it is about
        std::string place;             // where the speaker stood at it
        std::set<WordId> materials;    // named for it
        bool ruled = false;            // the rules told of it
        bool pending = false;          // said to be open before it was said what
        int chance = 0;                // percent: that one is open in the sentence at hand
    };

    ReadOptions options_;
    Owner owner_;
    std::optional<std::string> written_;  // the sentence at hand, once it was asked for
    Walk walk_;
    FactReader facts_;
    Stems stems_;
    ClueReader clues_;
    ChoiceClues choiceClues_;
    PlaceClues placeClues_;
    std::vector<Found> found_;
    std::vector<Mention> mentions_;
    std::vector<DraftAlternate> alternates_;
    std::vector<ChoicePlace> choicePlaces_;  // of each of them
    std::vector<DraftCaution> cautions_;
    std::size_t spoken_ = 0;          // spaces known before items were made
    std::set<std::string> unspoken_;  // those of them that only a thing belongs to
    Meant meant_;
    SaidHere here_;
    LastSentence last_;
    UnderHeading section_;
    RestOfLine line_;
    LastChoice choice_;
    int sentences_ = 0;
    std::optional<Hint> hint_;  // the last of them
    SpaceMeant spaceMeant_;
    int gutAge_ = 99;        // sentences since a space was said to be gutted
    bool speakers_ = false;  // more than one speaks
    Reading reading_;
};

}  // namespace ledgerboard::intake
