#include "core/intake/notes/clauses.h"

#include <algorithm>

#include "core/intake/notes/clause_reader.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

Bonds ClauseReader::run() {
    events_ = clauseEvents(sentence_, spots_, from_);
    for (next_ = 0; next_ < events_.size(); ++next_) {
        take(events_[next_]);
    }
    closeList();
    return std::move(bonds_);
}

void ClauseReader::take(const Event& event) {
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

void ClauseReader::enterBracket() {
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
bool ClauseReader::listGoesOn(std::size_t at) const {
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
void ClauseReader::takeWanted() {
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

// "The sink is fine and so is the toilet.": what was said last holds for it too.
bool ClauseReader::takeSoIs() {
    const std::size_t verb = events_[next_].at + 1;
    const bool is = wordIs(sentence_, verb, "is") || wordIs(sentence_, verb, "are") ||
                    wordIs(sentence_, verb, "do") || wordIs(sentence_, verb, "doe");
    if (!is || bonds_.bonds.empty()) {
        return false;
    }
    const Bond last = bonds_.bonds.back();
    while (next_ + 1 < events_.size() &&
           (events_[next_ + 1].kind == Kind::Thing || events_[next_ + 1].kind == Kind::And)) {
        ++next_;
        if (events_[next_].kind == Kind::Thing) {
            bonds_.bonds.push_back(last);
            bonds_.bonds.back().spot = events_[next_].index;
        }
    }
    return true;
}

// "All the appliances go except the microwave.": what comes to the end of the clause stays.
bool ClauseReader::takeExcepted() {
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

void ClauseReader::takeTurn() {
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
    if (wordIs(sentence_, events_[next_].at, "so") && !takeSoIs()) {
        takeWanted();
    }
}

bool ClauseReader::isSaidOf(std::size_t thing) const {
    return std::any_of(bonds_.bonds.begin(), bonds_.bonds.end(),
                       [&](const Bond& bond) { return bond.spot == thing; });
}

// The clause is over: its subject is the topic of the next.
void ClauseReader::endSubject() {
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

void ClauseReader::takeThing(std::size_t thing) {
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
    if (!now_.subject.empty() && !now_.parted && !turned_ && isHad(now_.subject.back(), thing)) {
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

void ClauseReader::takePronoun() {
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

// The open list is complete, with all that may go on it.
void ClauseReader::closeList() {
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

// Of the things that wait behind an open list, those joined by "and" alone before the treatment
// are its subject: "replace the tap, the tub and the sink are fine".
void ClauseReader::splitPending() {
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

// The thing that the sentence opens with as a label, "Fascia: …" or "fascia - …"; kNone if
// none.
std::size_t ClauseReader::labelThing() const {
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

bool ClauseReader::isFloor(std::size_t thing) const {
    return tables().objects[spots_.objects[thing].object].family == "floor";
}

void ClauseReader::bondAll(std::size_t act, const std::vector<std::size_t>& things, bool part) {
    for (const std::size_t thing : things) {
        bonds_.bonds.push_back(
            {.spot = thing, .act = static_cast<std::uint32_t>(act), .part = part});
    }
}

// No thing of its own: what was spoken of last in this sentence, else it stays idle.
void ClauseReader::bondTopic(std::size_t act, bool pronoun) {
    std::vector<std::size_t> things;
    for (const std::size_t thing : now_.subject.empty() ? now_.topic : now_.subject) {
        if (fits(act, thing)) {
            things.push_back(thing);
        }
    }
    // "the floor is old vinyl; tile it"
    const bool it = row(act).phrase.ends_with(" it") && !isMark(sentence_.tokens.back(), "?");
    const bool own = row(act).object != kNone && !pronoun && !it;
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

Bonds bondsOf(const Sentence& sentence, const Spots& spots, std::size_t from) {
    return ClauseReader(sentence, spots, from).run();
}

}  // namespace ledgerboard::intake
