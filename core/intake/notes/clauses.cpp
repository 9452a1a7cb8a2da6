#include "core/intake/notes/clauses.h"

#include <algorithm>

#include "core/intake/notes/clause_events.h"
#include "core/intake/notes/clause_lists.h"
#include "core/intake/notes/clause_rules.h"
#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using Kind = ClauseEvent::Kind;
using Event = ClauseEvent;

constexpr std::size_t kNewOne = 4;  // between "replaced with" and what comes

// One reading of a sentence. Holds where it stands in the present clause.
class Clauses : ClauseRules {
  public:
    Clauses(const Sentence& sentence, const Spots& spots, std::size_t from)
        : ClauseRules(sentence, spots), from_(from) {}

    Bonds run() {
        events_ = clauseEvents(sentence_, spots_, from_);
        for (next_ = 0; next_ < events_.size(); ++next_) {
            take(events_[next_]);
        }
        closeList();
        return std::move(bonds_);
    }

  private:
    // What has been heard of the present clause.
    struct State {
        std::vector<std::size_t> subject;  // things that stand before what is said of them
        bool said = false;                 // something was said of the subject
        bool pronoun = false;              // the subject is "it": the topic
        std::size_t open = kNone;          // treatment whose list is open
        std::vector<std::size_t> list;     // things it has taken
        std::vector<std::size_t> pending;  // things that may go on the list, or be a subject
        std::vector<std::size_t> topic;    // what was spoken of last
        bool parted = false;               // a comma or "and" since the last thing
        bool comma = false;                // a comma since the last thing
        std::size_t had = kNone;           // what the subject is said to have
        bool label = false;                // the subject is a label: "North wall: …"
    };

    void take(const Event& event) {
        switch (event.kind) {
            case Kind::Thing:
                takeThing(event.index);
                break;
            case Kind::Pronoun:
                takePronoun();
                break;
            case Kind::Act:
                takeAct(event.index);
                break;
            case Kind::Comma:
                now_.parted = true;
                now_.comma = true;
                break;
            case Kind::And:
                now_.parted = true;
                break;
            case Kind::Turn:
                takeTurn();
                break;
            case Kind::Colon:
                now_.parted = true;
                now_.comma = true;
                now_.label =
                    !now_.subject.empty() && !now_.said && isMark(sentence_.tokens[event.at], ":");
                break;
            case Kind::Open:
                outer_.push_back(now_);
                enterBracket();
                break;
            case Kind::Close:
                if (!outer_.empty()) {
                    closeList();
                    now_ = std::move(outer_.back());
                    outer_.pop_back();
                }
                break;
            case Kind::Stop:
                closeList();
                endSubject();
                break;
        }
    }

    void enterBracket() {
        if (!now_.pending.empty()) {
            now_.topic = {now_.pending.back()};
        } else if (now_.open != kNone && !now_.list.empty()) {
            now_.topic = {now_.list.back()};
        } else if (!now_.subject.empty()) {
            now_.topic = {now_.subject.back()};
        }
        State inner;
        inner.topic = now_.topic;
        now_ = std::move(inner);
    }

    // "a new subfloor and then tile": the list goes on.
    [[nodiscard]] bool listGoesOn(std::size_t at) const {
        if (now_.open == kNone || now_.list.empty() || !wordIs(sentence_, at, "then")) {
            return false;
        }
        bool thing = false;
        for (std::size_t i = next_ + 1; i < events_.size(); ++i) {
            const Kind kind = events_[i].kind;
            if (kind == Kind::Stop || kind == Kind::Comma || kind == Kind::Turn) {
                break;
            }
            if (kind == Kind::Act || kind == Kind::Pronoun) {
                return false;
            }
            thing = thing || kind == Kind::Thing;
        }
        return thing;
    }

    // "… worn to the glue, so sheet vinyl.": a thing that follows from what was said.
    void takeWanted() {
        constexpr std::size_t kNear = 4;
        if (next_ + 1 >= events_.size() || events_[next_ + 1].kind != Kind::Thing ||
            events_[next_ + 1].at > events_[next_].at + kNear) {
            return;
        }
        for (std::size_t i = next_ + 2; i < events_.size(); ++i) {
            const Kind kind = events_[i].kind;
            if (kind == Kind::Stop || kind == Kind::Comma) {
                break;
            }
            if (kind == Kind::Act || kind == Kind::Pronoun || kind == Kind::Colon) {
                return;
            }
        }
        const std::size_t thing = events_[next_ + 1].index;
        const std::size_t end = spots_.objects[thing].span.end;
        const bool closes = end >= sentence_.tokens.size() ||
                            sentence_.tokens[end].kind == TokenKind::Mark ||
                            wordIs(sentence_, end, "there") || wordIs(sentence_, end, "here") ||
                            wordIs(sentence_, end, "instead") || wordIs(sentence_, end, "pleas");
        if (closes && !spots_.objects[thing].material) {
            bonds_.bonds.push_back({.spot = thing, .wanted = true});
        }
    }

    // "All the appliances go except the microwave.": what comes to the end of the clause stays.
    bool takeExcepted() {
        // "Everything goes except the tub."
        const bool idle = bonds_.bonds.empty() && !bonds_.idle.empty();
        const bool away = (idle || !bonds_.bonds.empty()) && [&] {
            const std::size_t last = idle ? bonds_.idle.back().act : bonds_.bonds.back().act;
            const model::Treatment said = row(last).treatment;
            return said == model::Treatment::Remove || said == model::Treatment::Replace ||
                   said == model::Treatment::Refinish;
        }();
        bool any = false;
        while (away && next_ + 1 < events_.size() && events_[next_ + 1].kind != Kind::Stop &&
               events_[next_ + 1].kind != Kind::Act && events_[next_ + 1].kind != Kind::Turn) {
            ++next_;
            if (events_[next_].kind == Kind::Thing) {
                bonds_.bonds.push_back({.spot = events_[next_].index, .kept = true});
                any = true;
            }
        }
        return any;
    }

    void takeTurn() {
        if (listGoesOn(events_[next_].at)) {
            now_.parted = true;
            return;
        }
        closeList();
        if (wordIs(sentence_, events_[next_].at, "except") && takeExcepted()) {
            return;
        }
        now_.parted = true;
        now_.comma = true;
        // "the stove, which is new, stays": the subject may still be waiting.
        turned_ = true;
        if (wordIs(sentence_, events_[next_].at, "so")) {
            takeWanted();
        }
    }

    [[nodiscard]] bool isSaidOf(std::size_t thing) const {
        return std::any_of(bonds_.bonds.begin(), bonds_.bonds.end(),
                           [&](const Bond& bond) { return bond.spot == thing; });
    }

    // The clause is over: its subject is the topic of the next.
    void endSubject() {
        if (!now_.subject.empty()) {
            now_.topic = now_.subject;
        }
        // "One window has a rotten sill; repair.": the sill.
        if (now_.had != kNone && isSaidOf(now_.had)) {
            now_.topic = {now_.had};
        }
        now_.had = kNone;
        now_.subject.clear();
        now_.said = false;
        now_.pronoun = false;
        now_.parted = false;
        now_.comma = false;
        now_.label = false;
        turned_ = false;
    }

    void takeThing(std::size_t thing) {
        // "a new porch floor, fir, tongue and groove": what it is made of.
        if (spots_.objects[thing].material &&
            (!now_.list.empty() || (!now_.subject.empty() && !now_.said))) {
            return;
        }
        if (now_.open != kNone) {
            if (now_.list.empty() && fits(now_.open, thing)) {
                now_.list.push_back(thing);
            } else {
                now_.pending.push_back(thing);
                commas_.resize(std::max(commas_.size(), thing + 1));
                commas_[thing] = now_.comma || !now_.parted;
            }
            now_.parted = false;
            now_.comma = false;
            return;
        }
        if (!now_.subject.empty() && !now_.parted && !turned_ &&
            isHad(now_.subject.back(), thing)) {
            now_.had = thing;
            return;
        }
        const bool waits =
            !now_.subject.empty() && !now_.said && !now_.parted && !turned_ && !now_.label;
        if (waits && isLike(now_.subject.back(), thing)) {
            return;
        }
        const bool fresh = now_.said || now_.pronoun || turned_ || now_.label ||
                           (!now_.subject.empty() && !now_.parted);
        if (fresh) {
            endSubject();
        }
        commas_.resize(std::max(commas_.size(), thing + 1));
        commas_[thing] = now_.comma;
        now_.subject.push_back(thing);
        now_.parted = false;
        now_.comma = false;
    }

    void takePronoun() {
        if (now_.open != kNone && now_.list.empty() && now_.pending.empty() && !now_.parted) {
            // "replace it"
            const std::size_t act = now_.open;
            now_.open = kNone;
            bondTopic(act, true);
            return;
        }
        if (now_.open != kNone && !now_.pending.empty() && !now_.parted) {
            splitPending();  // "new fan, the french doors one of them is rotten"
            return;
        }
        closeList();
        if (now_.open == kNone && !now_.said && !now_.subject.empty() && !now_.comma) {
            return;  // "the tub itself, all of it"
        }
        endSubject();
        now_.pronoun = true;
    }

    // Whether an order finds its thing after it: the next that is heard.
    [[nodiscard]] bool hasRight(std::size_t act) const {
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

    void takeAct(std::size_t act) {
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
    bool takeAlong(std::size_t act) {
        const bool joined = row(act).phrase.starts_with("and ") && row(act).object != kNone &&
                            row(act).treatment == model::Treatment::Refinish;
        const bool next =
            !bonds_.bonds.empty() && !bonds_.bonds.back().wanted && !bonds_.bonds.back().kept &&
            spots_.acts[bonds_.bonds.back().act].span.end == spots_.acts[act].span.begin;
        if (!joined || !next || hasRight(act)) {
            return false;
        }
        static const std::vector<std::string_view> kSurfaces = {"drywall", "plaster", "wallpaper"};
        const std::size_t thing = bonds_.bonds.back().spot;
        const ObjectRow& object = tables().objects[spots_.objects[thing].object];
        if (!canBeRefinished(object) ||
            std::find(kSurfaces.begin(), kSurfaces.end(), object.name) != kSurfaces.end()) {
            return false;
        }
        bonds_.bonds.push_back({.spot = thing, .act = static_cast<std::uint32_t>(act)});
        return true;
    }

    // "scrape and | paint the outside": the name of the thing begins within the phrase.
    bool holdsThing(std::size_t act) {
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
    void takeListed(std::size_t act) {
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
    [[nodiscard]] bool onlyLeads(std::size_t act) const {
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
    bool takeInside(std::size_t act) {
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
    void takeNone(std::size_t act) {
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
    bool takeInner(std::size_t act) {
        const ActSpot& spot = spots_.acts[act];
        if (spot.tail.end <= spot.tail.begin) {
            return false;
        }
        std::vector<std::size_t> inner;
        bool pronoun = false;
        for (std::size_t i = next_ + 1; i < events_.size() && events_[i].at < spot.tail.begin;
             ++i) {
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
        const bool follows =
            inner.empty() && next_ + 1 < events_.size() && events_[next_ + 1].kind == Kind::Thing &&
            events_[next_ + 1].at <= spot.tail.end + kNext && row(act).phrase.ends_with("patch") &&
            fits(act, events_[next_ + 1].index);
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
    bool takeAttribute(std::size_t act) {
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
    void openList(std::size_t act) {
        // "sand and seal the floor": the first goes with the second's list.
        const bool near = now_.open != kNone &&
                          spots_.acts[now_.open].span.end + 2 >= spots_.acts[act].span.begin;
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

    // The open list is complete, with all that may go on it.
    void closeList() {
        if (now_.open == kNone) {
            return;
        }
        std::vector<std::size_t> things = now_.list;
        for (const std::size_t thing : now_.pending) {
            if (fits(now_.open, thing)) {
                things.push_back(thing);
            }
        }
        const std::size_t act = now_.open;
        now_.open = kNone;
        now_.pending.clear();
        now_.list.clear();
        if (things.empty()) {
            bondTopic(act, false);
            for (const std::size_t shared : shared_) {
                bondTopic(shared, false);
            }
        } else {
            bondAll(act, things);
            now_.topic = things;
        }
        for (const std::size_t shared : shared_) {
            bondAll(shared, things);
        }
        shared_.clear();
        now_.subject.clear();
        now_.said = false;
        now_.pronoun = false;
    }

    // A treatment that stands after what it is said of.
    void takeLeft(std::size_t act) {
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
    [[nodiscard]] bool ownInstead(std::size_t act) const {
        // "fascia - peeling - paint": all of the line is about the label.
        const bool label = row(act).treatment == model::Treatment::Refinish &&
                           now_.subject.size() == 1 && now_.subject.front() == labelThing() &&
                           !isFloor(now_.subject.front());
        // "front door ok, repaint": once more, so it is the thing.
        const bool again = row(act).phrase.starts_with("re") && now_.subject.size() == 1 &&
                           row(act).treatment == model::Treatment::Refinish &&
                           fits(act, now_.subject.front()) && !isFloor(now_.subject.front());
        return !label && !again && now_.said && row(act).object != kNone && (now_.comma || turned_);
    }

    // Of the things that wait behind an open list, those joined by "and" alone before the treatment
    // are its subject: "replace the tap, the tub and the sink are fine".
    void splitPending() {
        std::vector<std::size_t> subject;
        std::vector<std::size_t> pending = now_.pending;
        while (!pending.empty()) {
            const std::size_t thing = pending.back();
            pending.pop_back();
            subject.insert(subject.begin(), thing);
            if (thing < commas_.size() && commas_[thing]) {
                break;
            }
        }
        now_.pending = pending;
        closeList();
        now_.subject = subject;
        now_.said = false;
    }

    // "sheet vinyl to be replaced with tile": what comes in its place.
    void takeNewOne(std::size_t act) {
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

    // The thing that the sentence opens with as a label, "Fascia: …" or "fascia - …"; kNone if
    // none.
    [[nodiscard]] std::size_t labelThing() const {
        for (std::size_t i = 0; i < spots_.objects.size(); ++i) {
            const Span& span = spots_.objects[i].span;
            if (span.begin <= from_ + 1 && span.end < sentence_.tokens.size() &&
                (isMark(sentence_.tokens[span.end], ":") ||
                 (isMark(sentence_.tokens[span.end], "-") && !sentence_.tokens[span.end].glued))) {
                return i;
            }
        }
        return kNone;
    }

    [[nodiscard]] bool isFloor(std::size_t thing) const {
        return tables().objects[spots_.objects[thing].object].family == "floor";
    }

    void bondAll(std::size_t act, const std::vector<std::size_t>& things, bool part = false) {
        for (const std::size_t thing : things) {
            bonds_.bonds.push_back(
                {.spot = thing, .act = static_cast<std::uint32_t>(act), .part = part});
        }
    }

    // No thing of its own: what was spoken of last in this sentence, else it stays idle.
    void bondTopic(std::size_t act, bool pronoun) {
        std::vector<std::size_t> things;
        for (const std::size_t thing : now_.subject.empty() ? now_.topic : now_.subject) {
            if (fits(act, thing)) {
                things.push_back(thing);
            }
        }
        const bool own = row(act).object != kNone && !pronoun;
        if (!things.empty() && newPart(act)) {
            bondAll(act, things, true);
            return;
        }
        const bool bareNew =
            row(act).fresh && row(act).side == Side::After && !pronoun && !newAllRound(act);
        if (things.empty() || own || bareNew) {
            bonds_.idle.push_back({static_cast<std::uint32_t>(act), pronoun});
            return;
        }
        bondAll(act, things);
    }

    std::size_t from_;
    std::vector<Event> events_;
    std::size_t next_ = 0;
    State now_;
    std::vector<State> outer_;
    std::vector<std::size_t> shared_;  // orders that wait for the next one's list
    std::vector<bool> commas_;         // by thing: a comma stands before it
    bool turned_ = false;
    Bonds bonds_;
};

}  // namespace

Bonds bondsOf(const Sentence& sentence, const Spots& spots, std::size_t from) {
    return Clauses(sentence, spots, from).run();
}

}  // namespace ledgerboard::intake
