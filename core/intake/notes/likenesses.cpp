#include "core/intake/notes/likenesses.h"

#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/spotted_words.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

class Likenesses : SpottedWords {
  public:
    Likenesses(const Sentence& sentence, Spots& spots, bool hasTopic)
        : SpottedWords(sentence, spots), hasTopic_(hasTopic) {}

    void run() {
        static const std::uint32_t kWiring = tables().objectNamed("wiring");
        for (ObjectSpot& object : spots_.objects) {
            // "knob & tube"
            const std::size_t end = object.span.end;
            if (isOneOf(object.span.begin, {"knob"}) && end + 1 < sentence_.tokens.size() &&
                cueIsMark(end, "&+/") && isOneOf(end + 1, {"tube"})) {
                object.object = kWiring;
                object.span.end = end + 2;
            }
        }
        std::erase_if(spots_.objects, [&](const ObjectSpot& object) {
            return isSide(object) || isCrackedPanel(object) || isTimber(object) ||
                   isStuffOfLabel(object) || isPerson(object) || isSmell(object) ||
                   isWhatItIs(object);
        });
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return isHowItIs(act); });
    }

  private:
    [[nodiscard]] bool isOneOf(std::size_t at, const std::vector<std::string_view>& words) const {
        return at < sentence_.tokens.size() && intake::isOneOf(sentence_.tokens[at].plain, words);
    }

    // "dented on the drive side": which side.
    [[nodiscard]] bool isSide(const ObjectSpot& object) const {
        const std::size_t end = object.span.end;
        return object.span.begin > 0 && isOneOf(end, {"side", "end"}) &&
               isOneOf(object.span.begin - 1, {"the", "on", "at"}) &&
               !isOneOf(end + 1, {"door", "table", "panel", "wall"});
    }

    // "Ceiling: plaster, two cracks.": what the label is made of.
    [[nodiscard]] bool isStuffOfLabel(const ObjectSpot& object) const {
        static const std::vector<std::string_view> kStuff = {
            "plaster", "drywall", "concrete", "brick",  "bricks",  "stone",    "tile",
            "block",   "stucco",  "wood",     "steel",  "metal",   "aluminum", "shingle",
            "slate",   "oak",     "maple",    "birch",  "cherry",  "pine",     "walnut",
            "hickory", "formica", "laminate", "quartz", "granite", "vinyl"};
        const std::size_t begin = object.span.begin;
        const std::size_t end = object.span.end;
        const bool label =
            begin > 1 && end == begin + 1 && separates(begin - 1) &&
            std::any_of(spots_.objects.begin(), spots_.objects.end(),
                        [&](const ObjectSpot& other) { return other.span.end + 1 == begin; });
        return label && (isOneOf(begin, kStuff) || object.material) &&
               end < sentence_.tokens.size() && (cueIsMark(end, ",;(") || separates(end));
    }

    // The mark after a label: ":", or a dash by itself.
    [[nodiscard]] bool separates(std::size_t at) const {
        return cueIsMark(at, ":") || (cueIsMark(at, "-") && !sentence_.tokens[at].glued);
    }

    // "cabinets: refinish (maple, sound)": the wood, not a tree.
    [[nodiscard]] bool isTimber(const ObjectSpot& object) const {
        static const std::vector<std::string_view> kWoods = {"maple",  "birch",  "oak", "pine",
                                                             "cherry", "walnut", "ash", "fir"};
        return tables().objects[object.object].name == "trees" &&
               object.span.end == object.span.begin + 1 && isOneOf(object.span.begin, kWoods) &&
               std::any_of(spots_.objects.begin(), spots_.objects.end(),
                           [&](const ObjectSpot& other) {
                               return other.span.end <= object.span.begin &&
                                      tables().objects[other.object].place == Place::Inside;
                           });
    }

    // "surround - cracked panel": a piece of it, and nothing electric.
    [[nodiscard]] bool isCrackedPanel(const ObjectSpot& object) const {
        const std::size_t begin = object.span.begin;
        return begin > 0 && object.span.end == begin + 1 && isOneOf(begin, {"panel", "panels"}) &&
               isOneOf(begin - 1, {"cracked", "dented", "loose", "broken", "split", "rotten",
                                   "warped", "missing", "bent"});
    }

    [[nodiscard]] bool isPerson(const ObjectSpot& object) const {
        static const std::vector<std::string_view> kPeople = {
            "guy",    "guys",       "man",   "men",    "people", "person",     "company",
            "outfit", "contractor", "crew",  "fellow", "lady",   "inspector",  "tech",
            "dealer", "sweep",      "folks", "firm",   "fella",  "specialist", "bloke"};
        return tables().objects[object.object].family != "trouble" &&
               isOneOf(object.span.end, kPeople);
    }

    // "Smells of sewer", "smell of wet dog".
    [[nodiscard]] bool isSmell(const ObjectSpot& object) const {
        const std::string& family = tables().objects[object.object].family;
        return family != "trouble" &&
               std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
                   const std::string_view phrase = row(act).phrase;
                   const bool smells = phrase.starts_with("smell") &&
                                       (phrase.ends_with(" of") || phrase.ends_with(" like")) &&
                                       row(act).object != kNone &&
                                       tables().objects[row(act).object].name == "odor";
                   return smells && object.span.begin >= act.span.end &&
                          object.span.begin <= act.span.end + 2;
               });
    }

    // "It is concrete": of the thing that was spoken of before.
    [[nodiscard]] bool isWhatItIs(const ObjectSpot& object) const {
        static const std::vector<std::string_view> kStuff = {
            "concrete", "brick", "stone", "block", "stucco", "tile", "wood", "plaster"};
        const std::size_t at = object.span.begin;
        const bool is = (at == 2 && word(0, "it") && word(1, "is")) ||
                        (at == 1 && isOneOf(0, {"it's", "its"})) ||
                        (at == 2 && isOneOf(0, {"it's"}));
        return hasTopic_ && is && object.span.end == at + 1 && isOneOf(at, kStuff);
    }

    // Whether the thing is said to stay in the same sentence.
    [[nodiscard]] bool isKept(std::size_t after) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            return row(act).treatment == Treatment::Keep && row(act).weight > 1 &&
                   act.span.begin >= after;
        });
    }

    // "Oven built in, 2021, clean, stays.", "smooth and clean".
    [[nodiscard]] bool isHowItIs(const ActSpot& act) const {
        static const std::vector<std::string_view> kHow = {
            "clean", "level", "painted", "sealed", "finished", "stained", "tiled"};
        const std::size_t begin = act.span.begin;
        const std::size_t end = act.span.end;
        if (end != begin + 1 || begin == 0 || !isOneOf(begin, kHow)) {
            return false;
        }
        const bool opens = cueIsMark(begin - 1, ",:") || word(begin - 1, "and");
        const bool closes =
            end < sentence_.tokens.size() && (cueIsMark(end, ",") || word(end, "and"));
        if (opens && closes && isKept(end)) {
            return true;
        }
        // "Cabinets: painted steel."
        if (opens && isOneOf(begin, {"painted", "stained", "sealed"}) &&
            spots_.endOf(Cue::Material, end) > end) {
            return true;
        }
        // "is clean", "looks level"
        return isOneOf(begin, {"clean", "level"}) &&
               (word(begin - 1, "is") ||
                isOneOf(begin - 1, {"looks", "dead", "perfectly", "still"}));
    }

    bool hasTopic_;
};

}  // namespace

void dropLikenesses(const Sentence& sentence, Spots& spots, bool hasTopic) {
    Likenesses(sentence, spots, hasTopic).run();
}

}  // namespace ledgerboard::intake
