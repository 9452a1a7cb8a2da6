// The part of the reader that holds on to what was said before: "same in here", "the door" just
// spoken of.
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/space_names.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

// Where "but" or "except" stands close behind token `at`; the end of the sentence where it does
// not.
std::size_t butAfter(const Sentence& sentence, std::size_t at) {
    constexpr std::size_t kFar = 7;
    for (std::size_t i = at; i < sentence.tokens.size() && i < at + kFar; ++i) {
        const std::string& word = sentence.tokens[i].plain;
        if (word == "but" || word == "except" || word == "though") {
            return i;
        }
    }
    return sentence.tokens.size();
}

std::string singular(const std::string& name) {
    return name.ends_with('s') && !name.ends_with("ss") ? name.substr(0, name.size() - 1) : name;
}

// Whether an object is one of those named, or of their family.
bool namesAlike(const std::vector<std::uint32_t>& named, std::uint32_t object) {
    return std::any_of(named.begin(), named.end(), [&](std::uint32_t one) {
        const std::string& family = tables().objects[one].family;
        return one == object || (!family.empty() && family == tables().objects[object].family);
    });
}

// "Plank, same as upstairs": what is named, not the covering that was laid there.
void nameCopied(const std::vector<std::uint32_t>& named, Found& copy) {
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    const bool laid =
        copy.treatment == model::Treatment::Replace || copy.treatment == model::Treatment::Add;
    const std::string& family = tables().objects[copy.object].family;
    if (!laid || family.empty()) {
        return;
    }
    // "The same oak is underneath": it is found, not laid.
    static const std::uint32_t kWoodFloor = tables().objectNamed("wood floor");
    for (auto at = named.rbegin(); at != named.rend(); ++at) {
        const std::uint32_t one = *at;
        if (one == copy.object || one == kFloor || one == kWoodFloor ||
            tables().objects[one].family != family) {
            continue;
        }
        copy.object = one;
        copy.fresh = true;
        return;
    }
}

// Whether what was found in one place is meant by "same" in another, of all that is there: its
// walls and floors, and what is new in a bath.
bool isAlike(const Found& found, const std::string& to) {
    const bool fresh =
        found.treatment == model::Treatment::Replace || found.treatment == model::Treatment::Add;
    return isFinish(found.object) || (fresh && isBath(found.place) && isBath(to));
}

// "Same floor, same plan": all that was said is meant, and not of the floor alone.
bool saysTwice(const Sentence& sentence, const Spots& spots, std::size_t after) {
    static const WordId kSame = tables().id("same");
    for (std::size_t i = after; i < sentence.tokens.size(); ++i) {
        const bool thing =
            std::any_of(spots.objects.begin(), spots.objects.end(),
                        [&](const ObjectSpot& object) { return object.span.begin == i + 1; });
        if (sentence.tokens[i].word == kSame && kSame != kUnknown && !thing) {
            return true;
        }
    }
    return false;
}

// "The three bedrooms have the same hardwood": as one another.
bool isOfEachOther(const Sentence& sentence, std::size_t at) {
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "all"))) {
        --at;
    }
    return at > 0 && (wordIs(sentence, at - 1, "have") || wordIs(sentence, at - 1, "has") ||
                      wordIs(sentence, at - 1, "share") || wordIs(sentence, at - 1, "got"));
}

// Whether "same" at token `at` stands by itself: behind what opens the clause, or behind "gets
// the", and with nothing after it that would be the same.
bool isPlainSame(const Sentence& sentence, const Spots& spots, std::size_t begin, std::size_t at) {
    static const std::vector<std::string_view> kLeads = {
        "the", "gets", "get", "is", "are", "it's", "needs", "wants", "much", "also", "exactly"};
    static const std::vector<std::string_view> kEnds = {"and", "but",   "except", "plus",
                                                        "too", "again", "minus"};
    const auto isIn = [&](std::size_t i, const std::vector<std::string_view>& words) {
        return isOneOf(sentence.tokens[i].plain, words);
    };
    const bool closes = at + 1 >= sentence.tokens.size() ||
                        sentence.tokens[at + 1].kind == TokenKind::Mark || isIn(at + 1, kEnds);
    std::size_t lead = at;
    bool verb = false;
    while (lead > begin && isIn(lead - 1, kLeads)) {
        --lead;
        verb = verb || sentence.tokens[lead].plain != "the";
    }
    verb = verb || (lead > begin && lead < at && sentence.tokens[lead - 1].text.ends_with("'s"));
    const bool opens = lead == begin || sentence.tokens[lead - 1].kind == TokenKind::Mark;
    // "Same in the hall and the dining room."
    constexpr std::size_t kNear = 4;
    const bool in =
        at + 1 < sentence.tokens.size() &&
        (wordIs(sentence, at + 1, "in") || wordIs(sentence, at + 1, "through")) &&
        std::any_of(spots.spaces.begin(), spots.spaces.end(), [&](const SpaceSpot& space) {
            return space.span.begin > at + 1 && space.span.begin <= at + kNear;
        });
    return (closes && (opens || (verb && lead < at))) || (in && opens);
}

// Where what is said to be the same ends that begins behind token `at`: "same floor here | and a
// crack".
std::size_t endOfSame(const Sentence& sentence, std::size_t at) {
    constexpr std::size_t kFar = 4;
    const std::size_t end = std::min(sentence.tokens.size(), at + kFar);
    // "Same with the plaster and the floor."
    for (std::size_t i = at; i < end; ++i) {
        const std::string& word = sentence.tokens[i].plain;
        const bool with = i > at && sentence.tokens[at].plain == "with";
        if (isMark(sentence.tokens[i], ".,;") || (word == "and" && !with) || word == "plus" ||
            (word == "with" && i + 1 < end && sentence.tokens[i + 1].plain != "the")) {
            return i;
        }
    }
    return end;
}

}  // namespace

bool isFinish(std::uint32_t object) {
    static const std::vector<std::string_view> kFinishes = {
        "walls",   "ceiling",  "plaster",  "wallpaper",   "paneling",
        "drywall", "subfloor", "wainscot", "drop ceiling"};
    const ObjectRow& row = tables().objects[object];
    return row.family == "floor" || isOneOf(row.name, kFinishes);
}

// "BED 2: same, 10 m2", "Middle bedroom, same.", "this one gets the same": a plain "same" that no
// thing follows.
void Reader::hearSame(const Sentence& sentence, Spots& spots, std::size_t begin) {
    static const WordId kSame = tables().id("same");
    if (kSame == kUnknown || spots.has(Cue::Same)) {
        return;
    }
    std::size_t at = sentence.tokens.size();
    for (std::size_t i = begin; i < sentence.tokens.size() && at == sentence.tokens.size(); ++i) {
        at = sentence.tokens[i].word == kSame && isPlainSame(sentence, spots, begin, i) ? i : at;
    }
    // "is to have the same carpet": what was said of the carpet before.
    for (const ObjectSpot& object : spots.objects) {
        const std::size_t before = object.span.begin;
        if (before > 0 && before <= at && !object.material &&
            sentence.tokens[before - 1].word == kSame) {
            at = before - 1;
        }
    }
    if (at < sentence.tokens.size()) {
        spots.cues.push_back({{at, at + 1}, Cue::Same});
        std::stable_sort(
            spots.cues.begin(), spots.cues.end(),
            [](const CueSpot& a, const CueSpot& b) { return a.span.begin < b.span.begin; });
    }
}

// "Same as the lounge, paint and carpet", "same floor, sand it": after the comma it is said what is
// done to walls or floors, and nothing else is meant.
bool Reader::saysWhatAgain(const Sentence& sentence, const Spots& spots, const Span& cue) {
    constexpr std::size_t kFar = 8;
    std::size_t at = cue.end;
    while (at < std::min(sentence.tokens.size(), cue.end + kFar) &&
           !isMark(sentence.tokens[at], ",:;-")) {
        ++at;
    }
    if (at + 1 >= sentence.tokens.size() || !isMark(sentence.tokens[at], ",:;-")) {
        return false;
    }
    // "The same, and patch the hole.", "same, plus a new fan": more than that.
    static const std::vector<std::string_view> kMore = {"and",  "plus", "with",
                                                        "also", "but",  "except"};
    if (isOneOf(sentence.tokens[at + 1].plain, kMore)) {
        return false;
    }
    // "Same floor, sand it", but not "same floor, new lamp" nor "same floor, paint".
    const bool named =
        std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
            return object.span.begin < at && object.span.end + 1 >= cue.begin &&
                   isFinish(object.object);
        });
    bool finish = std::any_of(spots.objects.begin(), spots.objects.end(),
                              [](const ObjectSpot& object) { return isFinish(object.object); });
    bool orders = false;
    for (const ActSpot& act : spots.acts) {
        const ActRow& row = tables().acts[act.row];
        const bool other =
            std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
                return object.span.begin > at && object.span.begin <= act.span.end + 1 &&
                       !isFinish(object.object);
            });
        const bool own =
            row.object == kNone ? !other : tables().objects[row.object].family == "floor";
        const bool after = act.span.begin > at && row.weight > 1 && (own || !named);
        finish = finish || (after && row.object != kNone && isFinish(row.object));
        orders = orders || after;
    }
    return finish && orders;
}

// "She lived on a street just like this one": a likeness to no space of the house.
bool Reader::isLikeNothing(const Sentence& sentence, const Spots& spots, const Span& cue) {
    constexpr std::size_t kFar = 3;
    const std::string& first = sentence.tokens[cue.begin].plain;
    if (first != "just" && first != "identical" && first != "copy") {
        return false;
    }
    return std::none_of(spots.spaces.begin(), spots.spaces.end(), [&](const SpaceSpot& space) {
        return space.span.begin >= cue.end && space.span.begin <= cue.end + kFar;
    });
}

// "Same in here", "same floor", "ditto", "same in the hall and the dining room": what was said of
// the space before holds there too.
void Reader::takeSame(const Sentence& sentence, Spots& spots, const Placed& placed) {
    hearSame(sentence, spots, placed.from);
    // "Same in all three, paint and new carpet": it is said what.
    const bool said = spots.has(Cue::Rooms) &&
                      std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
                          return tables().acts[act.row].weight > 1;
                      });
    if (said || !spots.has(Cue::Same) || walk_.current().empty() || isDead(sentence, spots, 0, 3)) {
        return;
    }
    const Span cue = std::find_if(spots.cues.begin(), spots.cues.end(), [](const CueSpot& spot) {
                         return spot.cue == Cue::Same;
                     })->span;
    if (saysWhatAgain(sentence, spots, cue) || isLikeNothing(sentence, spots, cue)) {
        return;
    }
    // Named objects narrow what is copied; after "but" they are what is not.
    const std::size_t but = butAfter(sentence, cue.end);
    const std::size_t end = endOfSame(sentence, cue.end);
    static const std::uint32_t kCarpet = tables().objectNamed("carpet");
    SameThings things;
    for (const ObjectSpot& object : spots.objects) {
        // "Mike's room: same."
        const bool place =
            std::any_of(spots.spaces.begin(), spots.spaces.end(), [&](const SpaceSpot& space) {
                return space.span.begin <= object.span.begin && object.span.end <= space.span.end;
            });
        if (place) {
            continue;
        }
        if (object.span.begin > but) {
            things.others.push_back(object.object);
        } else if (object.span.begin < end) {
            things.named.push_back(object.object);
            things.carpetAlone = object.object == kCarpet && object.span.begin >= cue.end;
        }
    }
    // They have had their say.
    std::erase_if(spots.objects, [&](const ObjectSpot& object) {
        return object.span.begin < std::min(end, but) && object.span.end > cue.begin;
    });
    std::vector<std::string> places = walk_.current();
    for (const Placing& part : placed.parts) {
        places = part.span.holds(cue.begin) ? part.keys : places;
    }
    // "Same story." said long after the speaker came here is like something else. "The three
    // bedrooms have the same hardwood": as one another.
    const bool placedHere = placed.moved || !placed.parts.empty() || walk_.sinceMove() <= 1;
    const bool eachOther = places.size() > 1 && isOfEachOther(sentence, cue.begin);
    if (things.named.empty() ? !placedHere && !spots.has(Cue::Here) : eachOther) {
        return;
    }
    const std::string from = sameAs(spots, cue.end, places, things.named);
    if (saysTwice(sentence, spots, cue.end)) {
        things.named.clear();
    }
    for (const std::string& place : places) {
        if (place != from) {
            copySame(sentence, from, place, things);
        }
    }
}

// Where it was said that is meant: a space named after the word that is none of `places`, else
// where the speaker stands, else the space before.
std::string Reader::sameAs(const Spots& spots, std::size_t after,
                           const std::vector<std::string>& places,
                           const std::vector<std::uint32_t>& named) const {
    const std::string& here = walk_.current().front();
    std::string from = contains(places, here) ? walk_.before(here) : here;
    for (const SpaceSpot& space : spots.spaces) {
        if (space.span.begin >= after && !contains(places, space.key) &&
            walk_.find(space.key) != nullptr) {
            from = space.key;
        }
    }
    // "Carpet again, same treatment": where it was last spoken of.
    const bool holds = std::any_of(found_.begin(), found_.end(), [&](const Found& found) {
        return found.place == from && found.weight > 1 && namesAlike(named, found.object);
    });
    std::string family;
    for (std::size_t i = found_.size(); i-- > 0 && !named.empty() && !holds;) {
        if (contains(places, found_[i].place) || found_[i].weight <= 1 ||
            !namesAlike(named, found_[i].object)) {
            continue;
        }
        if (std::find(named.begin(), named.end(), found_[i].object) != named.end()) {
            return found_[i].place;
        }
        family = family.empty() ? found_[i].place : family;
    }
    return family.empty() ? from : family;
}

void Reader::copySame(const Sentence& sentence, const std::string& from, const std::string& here,
                      const SameThings& things) {
    static const std::uint32_t kCarpet = tables().objectNamed("carpet");
    const std::size_t saidBefore = found_.size();
    for (std::size_t k = 0; k < saidBefore && found_.size() < kMostItems; ++k) {
        const bool meant =
            things.named.empty()
                ? isAlike(found_[k], here)
                : namesAlike(things.named, found_[k].object) &&
                      !(things.carpetAlone && found_[k].object != kCarpet && !found_[k].fresh);
        if (found_[k].place != from || found_[k].weight <= 1 || !meant ||
            namesAlike(things.others, found_[k].object)) {
            continue;
        }
        Found copy = found_[k];
        copy.place = here;
        nameCopied(things.named, copy);
        copy.signs.push_back(signOf(SignFlag::Copied));
        copy.item.source = {sourceOf(sentence), sentence.line, 0};
        copy.item.quantity.reset();
        copy.item.cost.reset();
        copyMention(found_[k].object, from, here, copy.item.source);
        found_.push_back(std::move(copy));
    }
}

// "Cabinets are solid, doors get painted": the doors of the cabinets.
bool Reader::recallPart(const Spots& spots, ObjectSpot& spot) const {
    constexpr std::size_t kFresh = 3;
    for (const KindRow& kind : tables().kindsOf(spot.object)) {
        if (kind.whole == kNone) {
            continue;
        }
        const bool here =
            std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& other) {
                return other.object == kind.whole && other.span.end <= spot.span.begin;
            });
        const auto last = here_.recent.begin() +
                          static_cast<std::ptrdiff_t>(std::min(kFresh, here_.recent.size()));
        if (here || std::find(here_.recent.begin(), last, kind.whole) != last) {
            spot.object = kind.object;
            return true;
        }
    }
    return false;
}

// "The porch floor has a soft board. Replace the board.": the boards of what was just spoken of;
// kNone where that has none.
std::uint32_t Reader::boardsOf(const Sentence& sentence, const Spots& spots,
                               const ObjectSpot& spot) const {
    static const std::vector<std::uint32_t> kWholes = {
        tables().objectNamed("porch floor"), tables().objectNamed("deck boards"),
        tables().objectNamed("fence"), tables().objectNamed("siding")};
    static const std::uint32_t kWoodFloor = tables().objectNamed("wood floor");
    const std::string& word = sentence.tokens[spot.span.begin].plain;
    if (spot.object != kWoodFloor || (word != "board" && word != "boards")) {
        return kNone;
    }
    constexpr std::size_t kFresh = 2;
    std::vector<std::uint32_t> named;
    for (const ObjectSpot& other : spots.objects) {
        if (other.span.end <= spot.span.begin) {
            named.insert(named.begin(), other.object);
        }
    }
    for (std::size_t i = 0; i < here_.recent.size() && i < kFresh; ++i) {
        named.push_back(here_.recent[i]);
    }
    for (const std::uint32_t one : named) {
        if (std::find(kWholes.begin(), kWholes.end(), one) != kWholes.end()) {
            return one;
        }
    }
    return kNone;
}

// "The door" is the patio door just spoken of.
void Reader::recall(const Sentence& sentence, Spots& spots) const {
    for (ObjectSpot& spot : spots.objects) {
        if (spot.span.end != spot.span.begin + 1 || recallPart(spots, spot)) {
            continue;
        }
        if (const std::uint32_t whole = boardsOf(sentence, spots, spot); whole != kNone) {
            spot.object = whole;
            continue;
        }
        const std::string& plain = tables().objects[spot.object].name;
        const std::string head = " " + singular(plain.substr(plain.rfind(' ') + 1));
        // "The up and over door is bent, new door": what the sentence named before comes first.
        std::vector<std::uint32_t> named;
        for (const ObjectSpot& other : spots.objects) {
            if (other.span.end <= spot.span.begin && !other.material) {
                named.insert(named.begin(), other.object);
            }
        }
        named.insert(named.end(), here_.recent.begin(), here_.recent.end());
        for (const std::uint32_t recent : named) {
            const std::string& name = tables().objects[recent].name;
            const bool place =
                tables().objects[recent].place == tables().objects[spot.object].place ||
                tables().objects[recent].place == Place::Anywhere;
            const bool narrower = singular(name).ends_with(head) && place;
            if (narrower && recent != spot.object) {
                spot.object = recent;
                break;
            }
        }
    }
}

}  // namespace ledgerboard::intake
