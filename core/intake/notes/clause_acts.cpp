// What a clause makes of a treatment that is heard.
#include <algorithm>

#include "core/intake/notes/clause_lists.h"
#include "core/intake/notes/clause_reader.h"
#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kNewOne = 4;  // between "replaced with" and what comes

}  // namespace

// Whether an order finds its thing after it: the next that is heard.
bool ClauseReader::hasRight(std::size_t act) const {
    const std::size_t end = spots_.acts[act].span.end;
    if (holdsItsObject(act)) {
        return false;
    }
    for (std::size_t i = next_ + 1; i < events_.size(); ++i) {
        const Event& event = events_[i];
        if (event.at < end) {
            continue;
        }
        if (event.kind == Kind::Thing) {
            return fits(act, event.index) && event.at - end <= reachOf(act);
        }
        if (event.kind == Kind::Act) {
            // "new | tiled | shower": what the thing is like.
            continue;
        }
        constexpr std::size_t kAtOnce = 2;
        // "carpet - pull - oak under?": a dash parts what is said of a label.
        const bool parts = event.kind == Kind::Colon && labelThing() != kNone &&
                           isMark(sentence_.tokens[event.at], "-");
        return (event.kind == Kind::Pronoun && event.at <= end + kAtOnce) ||
               (event.kind == Kind::Colon && !parts);
    }
    return false;
}

void ClauseReader::takeAct(std::size_t act) {
    const ActSpot& spot = spots_.acts[act];
    if (row(act).weight == 0) {
        return takeNone(act);
    }
    if (onlyLeads(act) || takeInside(act) || takeInner(act) || takeAttribute(act) ||
        takeAlong(act)) {
        return;
    }
    if (spot.names) {
        closeList();
        bonds_.idle.push_back({static_cast<std::uint32_t>(act), false});
        return;
    }
    if (holdsThing(act)) {
        return;
    }
    if (listsAll(*this, events_, next_, act) || listsOwn(*this, events_, next_, from_, act)) {
        takeListed(act);
        return;
    }
    if (now_.pronoun && sumsUp(*this, events_, next_, act)) {
        takeListed(act);
        now_.said = true;
        return;
    }
    const Side side = row(act).side;
    const bool right = (side == Side::After || side == Side::Any) && !spot.passive;
    const bool left = side != Side::After || spot.passive;
    const bool waiting = (!now_.subject.empty() && !now_.said) || !now_.pending.empty();
    if (right && hasRight(act) && !(left && waiting && !now_.comma)) {
        return openList(act);
    }
    takeLeft(act);
}

// "Railing is loose; tighten and paint.": the second is done to the same thing, where it can
// be.
bool ClauseReader::takeAlong(std::size_t act) {
    const bool joined = row(act).phrase.starts_with("and ") && row(act).object != kNone &&
                        row(act).treatment == model::Treatment::Refinish;
    const bool next = !bonds_.bonds.empty() && !bonds_.bonds.back().wanted &&
                      !bonds_.bonds.back().kept &&
                      spots_.acts[bonds_.bonds.back().act].span.end == spots_.acts[act].span.begin;
    if (!joined || !next || hasRight(act)) {
        return false;
    }
    static const std::vector<std::string_view> kSurfaces = {"drywall", "plaster", "wallpaper"};
    const std::size_t thing = bonds_.bonds.back().spot;
    const ObjectRow& object = tables().objects[spots_.objects[thing].object];
    if (!canBeRefinished(object) || isOneOf(object.name, kSurfaces)) {
        return false;
    }
    bonds_.bonds.push_back({.spot = thing, .act = static_cast<std::uint32_t>(act)});
    return true;
}

// "scrape and | paint the outside": the name of the thing begins within the phrase.
bool ClauseReader::holdsThing(std::size_t act) {
    const Span& span = spots_.acts[act].span;
    bool any = false;
    for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
        const ObjectSpot& object = spots_.objects[i];
        if (object.span.begin > span.begin && object.span.begin < span.end &&
            object.span.end > span.end && !object.landmark && fits(act, i)) {
            bonds_.bonds.push_back({.spot = i, .act = static_cast<std::uint32_t>(act)});
            any = true;
        }
    }
    return any;
}

// "Everything in it is to be replaced, tub, sink and toilet.": what follows is what goes.
void ClauseReader::takeListed(std::size_t act) {
    while (next_ + 1 < events_.size() && events_[next_ + 1].kind != Kind::Stop &&
           events_[next_ + 1].kind != Kind::Act && events_[next_ + 1].kind != Kind::Turn) {
        ++next_;
        if (events_[next_].kind == Kind::Thing && fits(act, events_[next_].index)) {
            bonds_.bonds.push_back(
                {.spot = events_[next_].index, .act = static_cast<std::uint32_t>(act)});
        }
    }
}

// "needs scraping", "need to be jacked up": the treatment after it says what is needed.
bool ClauseReader::onlyLeads(std::size_t act) const {
    constexpr std::size_t kNear = 3;
    const std::size_t end = spots_.acts[act].span.end;
    if (!row(act).fresh || row(act).phrase.find("new") != std::string::npos ||
        next_ + 1 >= events_.size()) {
        return false;
    }
    // "I want that looked over"
    const bool that = events_[next_ + 1].kind == Kind::Pronoun && next_ + 2 < events_.size();
    const Event& event = events_[that ? next_ + 2 : next_ + 1];
    return event.kind == Kind::Act && event.at <= end + kNear && row(event.index).weight > 0 &&
           !row(event.index).fresh && event.at >= end;
}

// "carpet 15 yd; hole in wall": what it is in.
bool ClauseReader::takeInside(std::size_t act) {
    const ActSpot& spot = spots_.acts[act];
    constexpr std::size_t kNear = 2;
    if (row(act).side != Side::Before || !wordIs(sentence_, spot.span.end - 1, "in") ||
        next_ + 1 >= events_.size() || events_[next_ + 1].kind != Kind::Thing ||
        events_[next_ + 1].at > spot.span.end + kNear || !now_.subject.empty()) {
        return false;
    }
    const std::size_t thing = events_[++next_].index;
    closeList();
    bonds_.bonds.push_back({.spot = thing, .act = static_cast<std::uint32_t>(act)});
    now_.subject = {thing};
    now_.said = true;
    return true;
}

// "no dishwasher": takes the thing right after it.
void ClauseReader::takeNone(std::size_t act) {
    const std::size_t end = spots_.acts[act].span.end;
    for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
        const std::size_t begin = spots_.objects[i].span.begin;
        // "Toilet, no, new toilet."
        const bool marked =
            end < sentence_.tokens.size() && sentence_.tokens[end].kind == TokenKind::Mark;
        if (!spots_.objects[i].landmark && begin >= end && begin <= end + 2 && !marked) {
            bonds_.bonds.push_back({.spot = i, .act = static_cast<std::uint32_t>(act)});
            // "The closet has no doors, hang some.": the doors.
            endSubject();
            now_.topic = {i};
            while (next_ + 1 < events_.size() && events_[next_ + 1].kind == Kind::Thing &&
                   events_[next_ + 1].index <= i) {
                ++next_;
            }
        }
    }
}

// "rip the carpet out": what stands within the phrase.
bool ClauseReader::takeInner(std::size_t act) {
    const ActSpot& spot = spots_.acts[act];
    if (spot.tail.end <= spot.tail.begin) {
        return false;
    }
    std::vector<std::size_t> inner;
    bool pronoun = false;
    for (std::size_t i = next_ + 1; i < events_.size() && events_[i].at < spot.tail.begin; ++i) {
        if (events_[i].kind == Kind::Thing) {
            inner.push_back(events_[i].index);
        }
        pronoun = pronoun || events_[i].kind == Kind::Pronoun;
    }
    closeList();
    while (next_ + 1 < events_.size() && events_[next_ + 1].at < spot.tail.end) {
        ++next_;
    }
    // "cut that out and patch the stucco"
    constexpr std::size_t kNext = 3;
    const bool follows = inner.empty() && next_ + 1 < events_.size() &&
                         events_[next_ + 1].kind == Kind::Thing &&
                         events_[next_ + 1].at <= spot.tail.end + kNext &&
                         row(act).phrase.ends_with("patch") && fits(act, events_[next_ + 1].index);
    if (follows) {
        openList(act);
        return true;
    }
    if (inner.empty()) {
        bondTopic(act, pronoun);
        now_.said = true;
        return true;
    }
    endSubject();
    bondAll(act, inner);
    now_.subject = inner;
    now_.said = true;
    return true;
}

// "a rotten sill": a condition right before the thing that it is said of.
bool ClauseReader::takeAttribute(std::size_t act) {
    const ActSpot& spot = spots_.acts[act];
    const bool one = spot.span.end == spot.span.begin + 1;
    if (!one || row(act).weight > 1 || row(act).side != Side::Before || spot.passive) {
        return false;
    }
    for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
        if (spots_.objects[i].span.begin == spot.span.end && !spots_.objects[i].landmark) {
            bonds_.bonds.push_back({.spot = i, .act = static_cast<std::uint32_t>(act)});
            return true;
        }
    }
    return false;
}

// "replace …": what comes next is its list.
void ClauseReader::openList(std::size_t act) {
    // "sand and seal the floor": the first goes with the second's list.
    const bool near =
        now_.open != kNone && spots_.acts[now_.open].span.end + 2 >= spots_.acts[act].span.begin;
    if (near && now_.list.empty() && now_.pending.empty() && !row(act).fresh) {
        shared_.push_back(now_.open);
        now_.open = kNone;
    }
    closeList();
    if (now_.said || turned_) {
        endSubject();
    } else if (!now_.subject.empty()) {
        now_.topic = now_.subject;
        now_.subject.clear();
    }
    now_.open = act;
    now_.list.clear();
    now_.parted = false;
    now_.comma = false;
}

// A treatment that stands after what it is said of.
void ClauseReader::takeLeft(std::size_t act) {
    if (isDoing(act)) {
        return;
    }
    const bool part = wantsPart(act) || newPart(act);
    if (now_.open != kNone && !now_.pending.empty()) {
        splitPending();
    } else if (now_.open != kNone && !now_.list.empty()) {
        // "I want the chimney swept", "replace the sill that is rotten", "tear up the vinyl and
        // fix": of what was taken last.
        const std::vector<std::size_t> list = now_.list;
        const bool own = now_.comma && beginsAnew(*this, now_.open, act, list);
        closeList();
        now_.subject = list;
        now_.said = own;
    } else if (now_.open != kNone) {
        closeList();
    }
    if (now_.pronoun) {
        bondTopic(act, true);
        now_.said = true;
        return;
    }
    if (!now_.subject.empty()) {
        std::vector<std::size_t> things;
        for (const std::size_t thing : now_.subject) {
            if (fits(act, thing)) {
                things.push_back(thing);
            }
        }
        if (!things.empty() && !ownInstead(act)) {
            bondAll(act, things, part);
            takeNewOne(act);
            now_.said = true;
            return;
        }
    }
    bondTopic(act, false);
    now_.said = true;
}

// "the carpet is toast, and then a hole by the door": a remark with a thing of its own.
bool ClauseReader::ownInstead(std::size_t act) const {
    // "fascia - peeling - paint": all of the line is about the label.
    const bool label = row(act).treatment == model::Treatment::Refinish &&
                       now_.subject.size() == 1 && now_.subject.front() == labelThing() &&
                       !isFloor(now_.subject.front());
    // "front door ok, repaint": once more, so it is the thing.
    const bool again = row(act).phrase.starts_with("re") && now_.subject.size() == 1 &&
                       row(act).treatment == model::Treatment::Refinish &&
                       fits(act, now_.subject.front()) && !isFloor(now_.subject.front());
    // "railing rusty, wire brush and paint": what paint is there for.
    static const std::vector<std::string_view> kShabby = {"rust", "peel",   "stain", "fade",
                                                          "worn", "scuff",  "chip",  "weather",
                                                          "flak", "grubby", "dated", "yellow"};
    const bool shabby =
        row(act).treatment == model::Treatment::Refinish && now_.subject.size() == 1 &&
        !isMark(sentence_.tokens.back(), "?") && fits(act, now_.subject.front()) &&
        !isFloor(now_.subject.front()) && !bonds_.bonds.empty() &&
        bonds_.bonds.back().spot == now_.subject.front() && !bonds_.bonds.back().wanted &&
        !bonds_.bonds.back().kept &&
        std::any_of(kShabby.begin(), kShabby.end(), [&](std::string_view word) {
            return row(bonds_.bonds.back().act).phrase.find(word) != std::string::npos;
        });
    return !label && !again && !shabby && now_.said && row(act).object != kNone &&
           (now_.comma || turned_);
}

// "sheet vinyl to be replaced with tile": what comes in its place.
void ClauseReader::takeNewOne(std::size_t act) {
    if (row(act).treatment != model::Treatment::Replace || row(act).fresh ||
        next_ + 1 >= events_.size() || events_[next_ + 1].kind != Kind::Thing) {
        return;
    }
    const std::size_t thing = events_[next_ + 1].index;
    if (spots_.objects[thing].with &&
        spots_.objects[thing].span.begin <= spots_.acts[act].span.end + kNewOne) {
        ++next_;
        bonds_.bonds.push_back({.spot = thing, .act = static_cast<std::uint32_t>(act)});
    }
}

}  // namespace ledgerboard::intake
