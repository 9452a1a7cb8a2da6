// The part of the reader that holds on to what was said before: "same in here", "the door" just
// spoken of.
#include <algorithm>

#include "core/intake/notes/reader.h"
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
bool isOneOf(const std::vector<std::uint32_t>& named, std::uint32_t object) {
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

}  // namespace

// "BED 2: same, 10 m2": a plain "same" at the start of a clause.
void Reader::hearSame(const Sentence& sentence, Spots& spots, std::size_t begin) {
    static const WordId kSame = tables().id("same");
    // "The same, and patch the hole."
    static const WordId kThe = tables().id("the");
    const std::size_t first =
        begin < sentence.tokens.size() && sentence.tokens[begin].word == kThe ? begin + 1 : begin;
    const bool opens =
        first < sentence.tokens.size() && kSame != kUnknown &&
        sentence.tokens[first].word == kSame &&
        (first + 1 == sentence.tokens.size() || sentence.tokens[first + 1].kind == TokenKind::Mark);
    // "is to have the same carpet": what was said of the carpet before.
    std::size_t at = begin;
    bool thing = false;
    for (const ObjectSpot& object : spots.objects) {
        const std::size_t before = object.span.begin;
        const bool same = before > 0 && kSame != kUnknown && !object.material &&
                          sentence.tokens[before - 1].word == kSame;
        if (same && !thing && !opens) {
            at = before - 1;
            thing = true;
        }
    }
    if ((opens || thing) && !spots.has(Cue::Same)) {
        at = opens ? first : at;
        spots.cues.push_back({{at, at + 1}, Cue::Same});
        std::stable_sort(
            spots.cues.begin(), spots.cues.end(),
            [](const CueSpot& a, const CueSpot& b) { return a.span.begin < b.span.begin; });
    }
}

// "Same again, paint and carpet": after the comma it is said what, and nothing else is meant.
bool Reader::saysWhatAgain(const Sentence& sentence, const Spots& spots, const Span& cue) {
    constexpr std::size_t kLeast = 2;
    if (cue.end >= sentence.tokens.size() || !isMark(sentence.tokens[cue.end], ",:-")) {
        return false;
    }
    // "The same, and patch the hole.", "same, plus a new fan": more than that.
    if (cue.end + 1 < sentence.tokens.size()) {
        const std::string& next = sentence.tokens[cue.end + 1].plain;
        if (next == "and" || next == "plus" || next == "with" || next == "also") {
            return false;
        }
    }
    std::size_t said = 0;
    for (const ObjectSpot& object : spots.objects) {
        said += object.span.begin > cue.end ? 1 : 0;
    }
    bool orders = false;
    for (const ActSpot& act : spots.acts) {
        const bool own = act.span.begin > cue.end && tables().acts[act.row].object != kNone;
        said += own ? 1 : 0;
        orders = orders || own;
    }
    return said >= kLeast && orders;
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

// "Same in here", "same floor", "ditto": what was said of the space before holds here too.
void Reader::takeSame(const Sentence& sentence, Spots& spots, std::size_t begin) {
    hearSame(sentence, spots, begin);
    // "Same in all three, paint and new carpet": it is said what.
    const bool said = spots.has(Cue::Rooms) &&
                      std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
                          return tables().acts[act.row].weight > 1;
                      });
    if (said) {
        return;
    }
    if (!spots.has(Cue::Same) || walk_.current().empty() || isDead(sentence, spots, 0, 3)) {
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
    std::vector<std::uint32_t> named;
    std::vector<std::uint32_t> others;
    for (const ObjectSpot& object : spots.objects) {
        if (object.span.begin > but) {
            others.push_back(object.object);
        } else if (object.span.begin <= cue.end + 4) {
            named.push_back(object.object);
        }
    }
    const std::string here = walk_.current().front();
    const std::string from = sameAs(spots, cue.end, here, named);
    // They have had their say.
    std::erase_if(spots.objects, [&](const ObjectSpot& object) {
        return object.span.begin <= cue.end + 4 && object.span.end > cue.begin &&
               object.span.begin < but;
    });
    copySame(sentence, from, here, {named, others});
}

// Where it was said that is meant: a space named after the word, else the one before this.
std::string Reader::sameAs(const Spots& spots, std::size_t after, const std::string& here,
                           const std::vector<std::uint32_t>& named) const {
    std::string from = walk_.before(here);
    for (const SpaceSpot& space : spots.spaces) {
        if (space.span.begin >= after && space.key != here && walk_.find(space.key) != nullptr) {
            from = space.key;
        }
    }
    // "Carpet again, same treatment": where it was last spoken of.
    const bool holds = std::any_of(found_.begin(), found_.end(), [&](const Found& found) {
        return found.place == from && found.weight > 1 && isOneOf(named, found.object);
    });
    if (!named.empty() && !holds) {
        for (std::size_t i = found_.size(); i-- > 0;) {
            if (found_[i].place != here && found_[i].weight > 1 &&
                isOneOf(named, found_[i].object)) {
                return found_[i].place;
            }
        }
    }
    return from;
}

void Reader::copySame(const Sentence& sentence, const std::string& from, const std::string& here,
                      const SameThings& things) {
    const std::size_t saidBefore = found_.size();
    for (std::size_t k = 0; k < saidBefore && found_.size() < kMostItems; ++k) {
        if (found_[k].place != from || found_[k].weight <= 1 ||
            !(things.named.empty() || isOneOf(things.named, found_[k].object)) ||
            isOneOf(things.others, found_[k].object)) {
            continue;
        }
        Found copy = found_[k];
        copy.place = here;
        nameCopied(things.named, copy);
        copy.signs.push_back(signOf(SignFlag::Copied));
        copy.item.source = {sourceOf(sentence), sentence.line, 0};
        copy.item.quantity.reset();
        copy.item.cost.reset();
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
        const auto last =
            recent_.begin() + static_cast<std::ptrdiff_t>(std::min(kFresh, recent_.size()));
        if (here || std::find(recent_.begin(), last, kind.whole) != last) {
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
    for (std::size_t i = 0; i < recent_.size() && i < kFresh; ++i) {
        named.push_back(recent_[i]);
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
        const std::string head = plain.substr(plain.rfind(' ') + 1);
        // "The up and over door is bent, new door": what the sentence named before comes first.
        std::vector<std::uint32_t> named;
        for (const ObjectSpot& other : spots.objects) {
            if (other.span.end <= spot.span.begin && !other.material) {
                named.insert(named.begin(), other.object);
            }
        }
        named.insert(named.end(), recent_.begin(), recent_.end());
        for (const std::uint32_t recent : named) {
            const std::string& name = tables().objects[recent].name;
            const bool place =
                tables().objects[recent].place == tables().objects[spot.object].place ||
                tables().objects[recent].place == Place::Anywhere;
            const bool narrower = singular(name).ends_with(" " + singular(head)) && place;
            if (narrower && recent != spot.object) {
                spot.object = recent;
                break;
            }
        }
    }
}

}  // namespace ledgerboard::intake
