#include "core/intake/notes/link_acts.h"

#include <algorithm>

#include "core/intake/notes/spotted_words.h"

namespace ledgerboard::intake {

namespace {

class ActPreparer : SpottedWords {
  public:
    using SpottedWords::SpottedWords;

    // A word like "off" is a treatment only right after an object, where the clause ends.
    void dropEdges() {
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            return row(act).side == Side::Edge && !edgeHolds(act);
        });
    }

    void run() {
        readStaining();
        markPassive();
        dropNoOrders();
        dropTold();
    }

  private:
    // "wants staining", "rail > stain dark": what is done, not a stain.
    void readStaining() {
        static const std::uint32_t kRestain = [] {
            const auto& acts = tables().acts;
            for (std::uint32_t i = 0; i < acts.size(); ++i) {
                if (acts[i].phrase == "restain") {
                    return i;
                }
            }
            return kNone;
        }();
        for (ActSpot& act : spots_.acts) {
            const bool one = act.span.end == act.span.begin + 1;
            if (one && row(act).treatment == model::Treatment::Inspect &&
                (sentence_.tokens[act.span.begin].plain == "staining" ||
                 (act.span.begin > 0 && cueIsMark(act.span.begin - 1, ">+&") &&
                  sentence_.tokens[act.span.begin].plain == "stain")) &&
                kRestain != kNone) {
                act.row = kRestain;
            }
        }
    }

    // Whether another treatment closes what this one opens: "want | the chimney | swept".
    [[nodiscard]] bool isWhat(const ActSpot& act) const {
        constexpr std::size_t kFar = 7;
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& other) {
            const std::size_t begin = act.span.end;
            const std::size_t end = other.span.begin;
            if (end <= begin || end > begin + kFar || row(other).fresh || row(other).weight < 2) {
                return false;
            }
            const bool thing = std::any_of(
                spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& object) {
                    return object.span.begin >= begin && object.span.end <= end;
                });
            // "I want that gone"
            const bool it =
                std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& cue) {
                    return cue.cue == Cue::Pronoun && cue.span.begin == begin &&
                           cue.span.end == end;
                });
            return (thing || it) && partedBy(sentence_, spots_, begin, end) < 0.5;
        });
    }

    void markPassive() {
        for (ActSpot& act : spots_.acts) {
            // "needs two more outlets", "I want a proper lantern" are no passives either.
            const bool more = row(act).phrase.ends_with(" more") || row(act).phrase == "a proper" ||
                              row(act).phrase == "a real";
            // "walls skimmed and painted"
            const std::string_view last = sentence_.tokens[act.span.end - 1].text;
            const bool past = last.ends_with("ed") && last.size() > 4 &&
                              row(act).side == Side::After && !row(act).fresh;
            for (const CueSpot& cue : spots_.cues) {
                if (cue.cue == Cue::Passive && cue.span.end == act.span.begin && !more) {
                    // "we are replacing it" is no passive; "it wants replacing" is.
                    act.passive = !last.ends_with("ing") || word(cue.span.begin, "need") ||
                                  word(cue.span.begin, "want");
                }
                const bool near =
                    cue.span.end <= act.span.begin && cue.span.end + 3 >= act.span.begin;
                act.passive = act.passive || past;
                if (cue.cue == Cue::Negation && near &&
                    partedBy(sentence_, spots_, cue.span.end, act.span.begin) < 1.0) {
                    act.negated = true;
                }
            }
        }
        // "I want the chimney swept": the second says what is wanted of it.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const bool wants =
                row(act).fresh && (word(act.span.begin, "want") || word(act.span.begin, "i") ||
                                   word(act.span.begin, "we") || word(act.span.begin, "would"));
            return wants && isWhat(act);
        });
        // "the enamel sink": what it is like.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const std::size_t at = act.span.begin;
            const bool article = at > 0 && (word(at - 1, "the") || word(at - 1, "a") ||
                                            word(at - 1, "an") || word(at - 1, "this"));
            const bool thing = std::any_of(
                spots_.objects.begin(), spots_.objects.end(),
                [&](const ObjectSpot& object) { return object.span.begin == act.span.end; });
            return article && thing && act.span.end == at + 1 && !row(act).fresh &&
                   row(act).side == Side::After;
        });
    }

    // Drops what only looks like a treatment.
    void dropNoOrders() {
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            return saysWorkIsDone(act) || isUnderCoats(act) || leadsSomewhere(act);
        });
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return endsInAnother(act); });
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            return saysWhatOnesAreLike(act) || somebodyPut(act) || isOneOfThose(act) ||
                   isNoun(act) || isOfNothing(act) || goesWhere(act) || isSaidToOneself(act) ||
                   wantsOnlyThat(act);
        });
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return leavesToNext(act); });
    }

    // "Paint, and it's done": the work is, not the thing.
    [[nodiscard]] bool saysWorkIsDone(const ActSpot& act) const {
        const std::size_t at = act.span.begin;
        const bool done = (row(act).phrase == "is done" || row(act).phrase == "are done" ||
                           row(act).phrase == "out of here");
        return done && (word(at, "it") || word(at, "we") || word(at, "i") ||
                        (at > 0 && (word(at - 1, "it") || word(at - 1, "we") ||
                                    word(at - 1, "that") || word(at - 1, "i"))) ||
                        (at > 1 && word(at - 1, "is") && word(at - 2, "i")));
    }

    // "under nine coats of paint": how it is now.
    [[nodiscard]] bool isUnderCoats(const ActSpot& act) const {
        constexpr std::size_t kFar = 5;
        for (std::size_t i = act.span.begin > kFar ? act.span.begin - kFar : 0; i < act.span.begin;
             ++i) {
            if (word(i, "under") && row(act).treatment == model::Treatment::Refinish) {
                return true;
            }
        }
        return false;
    }

    // "so the hood can go straight out": where it leads, not that it is to be gone.
    [[nodiscard]] bool leadsSomewhere(const ActSpot& act) const {
        const bool goes = row(act).treatment == model::Treatment::Remove &&
                          (word(act.span.end - 1, "go") || word(act.span.end - 1, "goes"));
        bool leads = false;
        for (const std::string_view way : {"straight", "through", "into", "on", "over", "between",
                                           "against", "under", "from", "along", "all", "right"}) {
            leads = leads || word(act.span.end, way);
        }
        return goes && leads;
    }

    // "Get up in the attic and find out why": the tail is another treatment's.
    [[nodiscard]] bool endsInAnother(const ActSpot& act) const {
        return act.tail.end > act.tail.begin &&
               std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& other) {
                   return other.span.begin > act.span.begin && other.span.begin < act.tail.begin &&
                          other.span.end > act.tail.begin;
               });
    }

    // "solid ones": what they are like.
    [[nodiscard]] bool saysWhatOnesAreLike(const ActSpot& act) const {
        return row(act).treatment == model::Treatment::Keep && act.span.end == act.span.begin + 1 &&
               word(act.span.end, "one");
    }

    // "Somebody put a fist through it": told.
    [[nodiscard]] bool somebodyPut(const ActSpot& act) const {
        const std::size_t at = act.span.begin;
        return at > 0 && row(act).fresh && word(at, "put") &&
               (word(at - 1, "somebodi") || word(at - 1, "someon") || word(at - 1, "who") ||
                word(at - 1, "they") || word(at - 1, "he") || word(at - 1, "she"));
    }

    // "has one of those fluorescent boxes"
    [[nodiscard]] bool isOneOfThose(const ActSpot& act) const {
        return row(act).fresh && word(act.span.end - 1, "one") && word(act.span.end, "of");
    }

    // "by the ditch": a noun.
    [[nodiscard]] bool isNoun(const ActSpot& act) const {
        const std::string_view last = sentence_.tokens[act.span.end - 1].text;
        return act.span.begin > 0 && act.span.end == act.span.begin + 1 && !row(act).fresh &&
               row(act).side == Side::After && !last.ends_with("ed") && !last.ends_with("ing") &&
               word(act.span.begin - 1, "the");
    }

    // "Paint nothing out here."
    [[nodiscard]] bool isOfNothing(const ActSpot& act) const {
        return word(act.span.end, "nothing") && row(act).side == Side::After;
    }

    // "where the washer goes": what it does there.
    [[nodiscard]] bool goesWhere(const ActSpot& act) const {
        const bool goes = word(act.span.begin, "goes") || word(act.span.begin, "go");
        for (std::size_t i = act.span.begin > 4 ? act.span.begin - 4 : 0;
             goes && i < act.span.begin; ++i) {
            if (word(i, "where")) {
                return true;
            }
        }
        return false;
    }

    // "Okay, free them up": said to oneself, of nothing.
    [[nodiscard]] bool isSaidToOneself(const ActSpot& act) const {
        const bool okay = word(act.span.begin, "okay") || word(act.span.begin, "ok");
        const bool after = std::any_of(
            spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& object) {
                return object.span.end <= act.span.begin && object.span.end + 4 >= act.span.begin;
            });
        return okay && act.span.end == act.span.begin + 1 && !after;
    }

    // "I want that.": all that is said of it; "I want that looked at" is another matter.
    [[nodiscard]] bool wantsOnlyThat(const ActSpot& act) const {
        const bool wants =
            row(act).fresh && row(act).side == Side::Any && word(act.span.begin, "want");
        return wants && act.span.end < sentence_.tokens.size() &&
               sentence_.tokens[act.span.end].kind == TokenKind::Word;
    }

    // "gets painted": the second says what is done.
    [[nodiscard]] bool leavesToNext(const ActSpot& act) const {
        return row(act).fresh && row(act).side == Side::After &&
               std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& next) {
                   return next.span.begin == act.span.end && row(next).side != Side::After;
               });
    }

    // Drops what is told, not ordered.
    void dropTold() {
        // "I pulled the corner": told, not ordered.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const std::size_t at = act.span.begin;
            return at > 0 && row(act).side == Side::After &&
                   row(act).treatment != model::Treatment::Keep && isPast(at) &&
                   (word(at - 1, "i") || word(at - 1, "we") || word(at - 1, "they") ||
                    word(at - 1, "he") || word(at - 1, "she"));
        });
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const std::size_t opens = conditionOf(act);
            // What the condition speaks of is not what the rest of the sentence is about.
            for (ObjectSpot& object : spots_.objects) {
                object.landmark = object.landmark ||
                                  (opens < object.span.begin && object.span.end <= act.span.begin);
            }
            return isTold(act) || opens != kNone;
        });
        // "a moving blanket": no treatment.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const std::size_t at = act.span.begin;
            const bool named = word(act.span.end, "job") || word(act.span.end, "work") ||
                               word(act.span.end, "instal");
            const bool noun = sentence_.tokens[at].text.ends_with("ing") || named;
            return at > 0 && act.span.end == at + 1 && noun && row(act).phrase != "new" &&
                   (word(at - 1, "a") || word(at - 1, "the") || word(at - 1, "an") || named);
        });
        // "we will be hanging new drywall": not what is done to the things before.
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            return act.span.end > act.span.begin + 1 && row(act).side == Side::Before &&
                   sentence_.tokens[act.span.end - 1].text.ends_with("ing") &&
                   row(act).phrase.starts_with("be ");
        });
    }

    // Where the condition opens that a treatment is part of, kNone where it is part of none:
    // "before anyone paints it", "if the wall comes down", "whoever paints that": no order.
    [[nodiscard]] std::size_t conditionOf(const ActSpot& act) const {
        constexpr std::size_t kFar = 6;
        for (std::size_t i = act.span.begin; i-- > 0 && i + kFar >= act.span.begin;) {
            if (cueIsMark(i, ".,;:!?-()") || word(i, "and") || word(i, "so")) {
                return kNone;
            }
            const bool opens = word(i, "befor") || word(i, "until") || word(i, "till") ||
                               word(i, "unless") || word(i, "whoever") || word(i, "anyon") ||
                               word(i, "anybodi") || word(i, "if") || word(i, "onc");
            if (opens) {
                return i;
            }
        }
        return kNone;
    }

    // "somebody painted it four years ago", "tear-out is …": no order.
    [[nodiscard]] bool isTold(const ActSpot& act) const {
        const std::size_t begin = act.span.begin;
        const bool order = row(act).side == Side::After || row(act).side == Side::Any;
        if (!order || row(act).treatment == model::Treatment::Keep || act.passive) {
            return false;
        }
        if (begin == 0 && word(act.span.end, "is") && row(act).phrase != "new") {
            return true;
        }
        const bool past = begin > 0 && isPast(begin);
        if (row(act).treatment == model::Treatment::Replace && agoFollows(act.span.end)) {
            return false;  // done, and kept
        }
        if (past &&
            (word(begin - 1, "somebodi") || word(begin - 1, "someon") || word(begin - 1, "who") ||
             word(begin - 1, "whoever") || word(begin - 1, "owner") || word(begin - 1, "seller"))) {
            return true;
        }
        return past && agoFollows(act.span.end);
    }

    [[nodiscard]] bool isPast(std::size_t at) const {
        return sentence_.tokens[at].text.ends_with("ed") && !word(at, "need");
    }

    [[nodiscard]] bool agoFollows(std::size_t at) const {
        for (std::size_t i = at; i < sentence_.tokens.size() && i < at + 9; ++i) {
            if (word(i, "ago")) {
                return true;
            }
        }
        return false;
    }

    // "balusters white ok", "dw '22 ok": in shorthand what a thing is like stands between.
    [[nodiscard]] bool closesEntry(const ActSpot& act) const {
        constexpr std::size_t kMostWords = 3;
        std::size_t words = 0;
        // "thru-out"
        if (act.span.begin > 0 && cueIsMark(act.span.begin - 1, "-") &&
            sentence_.tokens[act.span.begin].glued) {
            return false;
        }
        const bool keeps = row(act).treatment == model::Treatment::Keep ||
                           row(act).treatment == model::Treatment::Remove;
        for (std::size_t at = act.span.begin;
             at-- > 0 && (sentence_.terse || sentence_.bullet) && keeps && words <= kMostWords;) {
            if (cueIsMark(at, ";.!?/>():") || cueEnds(Cue::Negation, at + 1)) {
                return false;
            }
            for (const ObjectSpot& object : spots_.objects) {
                if (object.span.holds(at)) {
                    return true;
                }
            }
            for (const ActSpot& other : spots_.acts) {
                // A fault that is called good is none: "R-30 blown ok".
                const bool fault = row(other).treatment == model::Treatment::Inspect &&
                                   row(act).treatment == model::Treatment::Keep;
                if (&other != &act && other.span.holds(at) && row(other).weight > 0 && !fault) {
                    return false;
                }
            }
            words += sentence_.tokens[at].kind == TokenKind::Word ? 1 : 0;
        }
        return false;
    }

    [[nodiscard]] bool edgeHolds(const ActSpot& act) const {
        // "Out.": all that is said of what was spoken of before.
        if (act.span.begin == 0 && act.span.end + 1 >= sentence_.tokens.size()) {
            return true;
        }
        // "The avocado suite, all of it out."
        const bool pronoun =
            cueEnds(Cue::Pronoun, act.span.begin) && act.span.begin > 1 && act.span.end < 14;
        const bool after =
            pronoun ||
            std::any_of(spots_.objects.begin(), spots_.objects.end(),
                        [&](const ObjectSpot& object) {
                            std::size_t at = object.span.end;
                            while (at < act.span.begin &&
                                   (spots_.endOf(Cue::Small, at) > at || cueIsMark(at, "-:,") ||
                                    spots_.endOf(Cue::Material, at) > at ||
                                    sentence_.tokens[at].kind == TokenKind::Number)) {
                                ++at;
                            }
                            return at == act.span.begin;
                        });
        if (!after && !closesEntry(act)) {
            return false;
        }
        // "HVAC down: furnace ok": the one downstairs.
        if (act.span.end < sentence_.tokens.size() && cueIsMark(act.span.end, ":") &&
            row(act).treatment == model::Treatment::Remove) {
            return false;
        }
        if (act.span.end >= sentence_.tokens.size()) {
            return true;
        }
        return sentence_.tokens[act.span.end].kind == TokenKind::Mark ||
               word(act.span.end, "and") || word(act.span.end, "so") || word(act.span.end, "but") ||
               word(act.span.end, "of") || word(act.span.end, "then") ||
               word(act.span.end, "except") ||
               (word(act.span.end, "in") &&
                (word(act.span.end + 1, "all") || word(act.span.end + 1, "here") ||
                 word(act.span.end + 1, "both") || word(act.span.end + 1, "everi")));
    }
};

}  // namespace

void dropEdgeActs(const Sentence& sentence, Spots& spots) {
    ActPreparer(sentence, spots).dropEdges();
}

void prepareActs(const Sentence& sentence, Spots& spots) {
    ActPreparer(sentence, spots).run();
}

}  // namespace ledgerboard::intake
