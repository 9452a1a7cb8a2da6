#include "core/intake/notes/reader.h"

#include <algorithm>

namespace ledgerboard::intake {

namespace {

using model::Treatment;

constexpr std::size_t kMostItems = 20'000;

bool isMark(const Token& token, std::string_view marks) {
    return token.kind == TokenKind::Mark && marks.find(token.mark) != std::string_view::npos;
}

bool shouted(const Sentence& sentence) {
    bool letters = false;
    for (const Token& token : sentence.tokens) {
        for (const char c : token.text) {
            if (c >= 'a' && c <= 'z') {
                return false;
            }
            letters = letters || (c >= 'A' && c <= 'Z');
        }
    }
    return letters;
}

std::size_t wordCount(const Sentence& sentence) {
    return static_cast<std::size_t>(
        std::count_if(sentence.tokens.begin(), sentence.tokens.end(),
                      [](const Token& token) { return token.kind == TokenKind::Word; }));
}

}  // namespace

// Leaves out what the speaker corrects in the same breath.
void Reader::takeBack(Sentence& sentence, Spots& spots) {
    constexpr int kMostCorrections = 4;
    for (int i = 0; i < kMostCorrections; ++i) {
        const Span back = correction(spots);
        if (back.end <= back.begin) {
            return;
        }
        if (sentence.whole.empty()) {
            sentence.whole = sentence.tokens;
        }
        sentence.tokens.erase(sentence.tokens.begin() + static_cast<std::ptrdiff_t>(back.begin),
                              sentence.tokens.begin() + static_cast<std::ptrdiff_t>(back.end));
        spots = findSpots(sentence.tokens);
    }
}

void Reader::take(Sentence& sentence) {
    ++sentences_;
    ++choiceAge_;
    ++beforeAge_;
    Spots spots = findSpots(sentence.tokens);
    takeBack(sentence, spots);
    if (takeSection(sentence, spots)) {
        return;
    }
    const bool deal = facts_.take(sentence, spots);
    const bool onlyDeal = deal && spots.acts.empty();
    const Placed placed = onlyDeal ? Placed{} : walk_.take(sentence, spots);
    if (placed.moved) {
        before_.clear();
        absent_.clear();
        recent_.clear();
        if (sentence.heading || sentence.alone) {
            section_ = Section::Plain;
        }
    }
    if (sentence.bullet && sentence.opensLine && !placed.moved && !spots.objects.empty()) {
        before_.clear();
    }
    if (beforeAge_ > 3) {
        before_.clear();
    }
    const std::size_t foundBefore = found_.size();
    Linked linked;
    if (!placed.onlyPlace) {
        takeSame(sentence, spots);
        const Openness open = opennessOf(sentence, spots);
        recall(spots);
        linked =
            linkSentence(sentence, spots, placed.from, {before_, looseBefore_, walk_.placeWord()});
        noteCautions(sentence, spots);
        extendPlaces(sentence, spots, placed, linked);
        const bool money = deal && spots.acts.empty();
        if (!money && !takeChoice(sentence, spots, placed, linked, open)) {
            takeItems(sentence, spots, placed, linked, open);
        }
        remember(spots, linked);
    }
    lastFound_ = foundBefore;
    if (options_.explain) {
        explain(sentence, spots, placed, linked, foundBefore);
    }
}

// "Undecided:", "NOT DOING", "Keep": a heading that names no space.
bool Reader::takeSection(const Sentence& sentence, const Spots& spots) {
    const bool colon = isMark(sentence.tokens.back(), ":");
    const bool heading =
        sentence.heading || (sentence.alone && !sentence.bullet && (colon || shouted(sentence)));
    const bool bare = sentence.alone && !sentence.bullet && wordCount(sentence) <= 3 &&
                      sentence.tokens.front().capital && !isMark(sentence.tokens.back(), ".!?");
    if ((!heading && !bare) || wordCount(sentence) > 5 || !spots.spaces.empty() ||
        !spots.objects.empty()) {
        return false;
    }
    if (spots.has(Cue::Refused) || spots.has(Cue::Negation)) {
        section_ = Section::NotDoing;
    } else if (spots.has(Cue::Open) || spots.has(Cue::Undecided)) {
        section_ = Section::Open;
    } else if (!spots.acts.empty() &&
               tables().acts[spots.acts.front().row].treatment == Treatment::Keep) {
        section_ = Section::Keep;
    } else if (!spots.acts.empty()) {
        return false;
    } else {
        section_ = Section::Plain;
    }
    if (section_ != Section::Open) {
        walk_.stand({});
    }
    before_.clear();
    return true;
}

// Whether what stands at token `at` is talk, memory or a thought put aside.
bool Reader::isDead(const Sentence& sentence, const Spots& spots, std::size_t at,
                    int weight) const {
    for (const CueSpot& cue : spots.cues) {
        const bool strong = cue.cue == Cue::Chatter;
        const bool thought = cue.cue == Cue::Hypothetical;
        const bool aside = cue.cue == Cue::Aside;
        if (!strong && !thought && !(aside && weight <= 2)) {
            continue;
        }
        const std::size_t begin = cue.span.begin;
        if (at >= begin) {
            // Ends where the talk comes back to this house.
            const bool back =
                partedBy(sentence, spots, begin, at) >= 3.4 ||
                std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& resume) {
                    return resume.cue == Cue::Resume && resume.span.begin > begin &&
                           resume.span.begin <= at;
                });
            if (!back) {
                return true;
            }
        } else if (!thought && weight <= 2 && partedBy(sentence, spots, at, begin) < 3.4) {
            return true;
        }
    }
    return false;
}

bool Reader::absent(const Sentence& sentence, const Spots& spots, const Said& said) const {
    if (said.fromBefore || said.spot == kNone) {
        return std::find(absent_.begin(), absent_.end(), said.object) != absent_.end();
    }
    const Span& span = spots.objects[said.spot].span;
    for (const CueSpot& cue : spots.cues) {
        const bool before = cue.span.end <= span.begin && cue.span.end + 3 >= span.begin;
        const bool after = cue.span.begin >= span.end && cue.span.begin <= span.end + 4;
        if (cue.cue == Cue::Absent && (before || after) &&
            partedBy(sentence, spots, std::min(cue.span.end, span.end),
                     std::max(cue.span.begin, span.begin)) < 2.5) {
            return true;
        }
    }
    return std::find(absent_.begin(), absent_.end(), said.object) != absent_.end();
}

// Whether the sentence says of a treatment that it has been carried out already.
bool Reader::isDone(const Sentence& sentence, const Spots& spots, const ActSpot& act) const {
    static const WordId kAlready = tables().id("alreadi");
    static const WordId kWill = tables().id("will");
    static const WordId kTo = tables().id("to");
    static const WordId kBe = tables().id("be");
    for (std::size_t i = act.span.begin > 4 ? act.span.begin - 4 : 0; i < act.span.begin; ++i) {
        const WordId word = sentence.tokens[i].word;
        if (word != kUnknown && (word == kWill || word == kTo || word == kBe)) {
            return false;
        }
    }
    for (std::size_t i = act.span.begin; i < sentence.tokens.size() && i < act.span.end + 6; ++i) {
        if (sentence.tokens[i].word != kUnknown && sentence.tokens[i].word == kAlready) {
            return true;
        }
    }
    const std::string_view last = sentence.tokens[act.span.end - 1].text;
    return last.ends_with("ed") &&
           std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
               const std::int64_t year = amount.value / 1000;
               return amount.kind == AmountKind::Plain && year >= 1990 && year <= 2060 &&
                      amount.begin >= act.span.end && amount.begin <= act.span.end + 4;
           });
}

Found Reader::foundOf(const Sentence& sentence, const Spots& spots, const Said& said) {
    const ActSpot& act = spots.acts[said.act];
    const ActRow& row = tables().acts[act.row];
    Found found;
    found.object = said.object;
    found.weight = row.weight;
    found.fresh = row.fresh;
    found.treatment = row.treatment;
    if (row.fresh) {
        const bool adds = tables().objects[said.object].freshAdds || absent(sentence, spots, said);
        found.treatment = adds ? Treatment::Add : Treatment::Replace;
    } else if (row.treatment == Treatment::Add && row.weight > 0 && row.weight < 3 &&
               !tables().objects[said.object].freshAdds) {
        found.treatment = Treatment::Add;
    }
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    static const std::uint32_t kWoodFloor = tables().objectNamed("wood floor");
    if (found.object == kFloor && found.treatment == Treatment::Refinish) {
        found.object = kWoodFloor;
    }
    int sure = row.weight >= 3 ? 90 : row.weight == 2 ? 80 : 62;
    sure -= said.fromBefore ? 10 : 0;
    sure -= said.assumed ? 6 : 0;
    sure -= spots.has(Cue::Soft) ? 4 : 0;
    sure -= sentence.tokens.size() > 40 ? 5 : 0;
    // "replaced 2019", "new windows already": done, not to be done.
    const bool toDo = found.treatment == Treatment::Replace || found.treatment == Treatment::Add ||
                      found.treatment == Treatment::Repair;
    if (toDo && isDone(sentence, spots, act)) {
        found.treatment = Treatment::Keep;
        found.fresh = false;
    }
    if (act.negated) {
        found.fromNo = true;
        found.weight = std::min(found.weight, 2);
        sure -= 20;
        found.treatment = found.treatment == Treatment::Keep ? Treatment::Replace : Treatment::Keep;
    }
    found.item.source = {sourceOf(sentence), sentence.tokens[said.at].line,
                         std::clamp(sure, 5, 97)};
    if (found.treatment == Treatment::Keep || found.treatment == Treatment::Inspect) {
        found.item.note = found.item.source.sentence;
    }
    addAmounts(sentence, spots, said, found);
    return found;
}

// The figures nearest the object become its quantity, cost, days and lead time.
void Reader::addAmounts(const Sentence& sentence, const Spots& spots, const Said& said,
                        Found& found) {
    for (const Amount& amount : spots.amounts) {
        const std::size_t begin = std::min(amount.begin, said.at);
        const std::size_t end = std::max(amount.end, said.at);
        const bool near = partedBy(sentence, spots, begin, end) < 5.0;
        const bool nearest =
            std::none_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& other) {
                return !other.landmark && other.span.begin > begin && other.span.end < end &&
                       other.span.begin != said.at;
            });
        if (!near || (!nearest && said.spot != kNone)) {
            continue;
        }
        DraftItem& item = found.item;
        const model::Quantity figure = model::Quantity::fromThousandths(amount.value);
        if (amount.kind == AmountKind::Money && amount.perUnit && item.quantity && !item.cost) {
            item.cost = model::times(*item.quantity, model::Money::fromMinor(amount.value / 10));
        } else if (amount.kind == AmountKind::Money && !item.cost) {
            item.cost = model::Money::fromMinor(amount.value / 10);
        } else if (amount.kind == AmountKind::Measured && !item.quantity) {
            item.quantity = figure;
            item.unit = tables().units[amount.unit].name;
        } else if (amount.kind == AmountKind::Plain && !item.quantity && said.spot != kNone &&
                   amount.end <= said.at && amount.end + 4 >= said.at && amount.value >= 1000 &&
                   amount.value <= 500'000) {
            item.quantity = figure;
            item.unit = "each";
        } else if (amount.kind == AmountKind::Time) {
            const std::string& unit = tables().units[amount.unit].name;
            const bool lead = unit == "week" || unit == "month";
            const std::int64_t perUnit = unit == "week" ? 7 : unit == "month" ? 30 : 1;
            if (lead && !item.leadDays) {
                item.leadDays = model::Quantity::fromThousandths(amount.value * perUnit);
            } else if (unit == "day" && !item.days) {
                item.days = figure;
            }
        }
    }
}

std::vector<std::string> Reader::placesFor(const Spots& spots, const Placed& placed,
                                           const Said& said) {
    const ObjectRow& object = tables().objects[said.object];
    if (said.spot != kNone && !spots.objects[said.spot].place.empty()) {
        const std::string& place = spots.objects[said.spot].place;
        walk_.learn(place, place, SpaceKind::Room);
        return {place};
    }
    for (const Placing& part : placed.parts) {
        if (part.span.holds(said.at)) {
            return part.keys;
        }
    }
    std::vector<std::string> keys = walk_.current();
    const auto outside = [&](const std::string& key) {
        const KnownSpace* space = walk_.find(key);
        return space != nullptr && space->kind == SpaceKind::Outside;
    };
    if (object.place == Place::Outside && (keys.empty() || !outside(keys.front()))) {
        walk_.learn("exterior", "outside", SpaceKind::Outside);
        keys = {"exterior"};
    } else if (keys.empty()) {
        walk_.learn("whole house", "whole house", SpaceKind::Whole);
        keys = {"whole house"};
    }
    return keys;
}

void Reader::takeItems(const Sentence& sentence, Spots& spots, const Placed& placed,
                       const Linked& linked, const Openness& open) {
    if (section_ == Section::NotDoing) {
        return;
    }
    for (const Said& said : linked.said) {
        const ActSpot& act = spots.acts[said.act];
        const ActRow& row = tables().acts[act.row];
        const bool hinted = open.hinted && act.span.begin >= open.hintAt &&
                            partedBy(sentence, spots, open.hintAt, act.span.begin) < 4.0;
        if (isDead(sentence, spots, act.span.begin, row.weight) || hinted) {
            continue;
        }
        if (row.weight == 0 && row.treatment == Treatment::Add) {
            absent_.push_back(said.object);
            continue;
        }
        if (row.weight == 0) {
            continue;
        }
        // "replace A with B": B is what is there afterwards.
        const bool exchanged =
            row.treatment == Treatment::Replace && said.spot != kNone &&
            !spots.objects[said.spot].with &&
            std::any_of(linked.said.begin(), linked.said.end(), [&](const Said& other) {
                return other.act == said.act && other.spot != kNone &&
                       spots.objects[other.spot].with;
            });
        if (exchanged && !row.fresh) {
            continue;
        }
        const bool lost = act.negated && row.treatment != Treatment::Replace &&
                          row.treatment != Treatment::Remove && row.treatment != Treatment::Keep &&
                          row.treatment != Treatment::Refinish;
        if (lost || (act.negated && (row.weight < 3 || spots.has(Cue::Nobody)))) {
            continue;
        }
        Found found = foundOf(sentence, spots, said);
        for (const std::string& place : placesFor(spots, placed, said)) {
            if (found_.size() < kMostItems) {
                found.place = place;
                found_.push_back(found);
            }
        }
    }
}

// "Same in here", "same floor", "ditto": what was said of the space before holds here too.
void Reader::takeSame(const Sentence& sentence, Spots& spots) {
    if (!spots.has(Cue::Same) || walk_.current().empty() || isDead(sentence, spots, 0, 3)) {
        return;
    }
    const auto cue = std::find_if(spots.cues.begin(), spots.cues.end(),
                                  [](const CueSpot& spot) { return spot.cue == Cue::Same; });
    const std::string here = walk_.current().front();
    std::string from = walk_.before(here);
    for (const SpaceSpot& space : spots.spaces) {
        if (space.span.begin >= cue->span.end && space.key != here &&
            walk_.find(space.key) != nullptr) {
            from = space.key;
        }
    }
    // Named objects narrow what is copied.
    std::vector<std::uint32_t> named;
    for (const ObjectSpot& object : spots.objects) {
        if (object.span.begin <= cue->span.end + 4) {
            named.push_back(object.object);
        }
    }
    const auto wanted = [&](std::uint32_t object) {
        return named.empty() || std::any_of(named.begin(), named.end(), [&](std::uint32_t one) {
                   const std::string& family = tables().objects[one].family;
                   return one == object ||
                          (!family.empty() && family == tables().objects[object].family);
               });
    };
    // They have had their say.
    std::erase_if(spots.objects, [&](const ObjectSpot& object) {
        return object.span.begin <= cue->span.end + 4 && object.span.end > cue->span.begin;
    });
    std::vector<Found> copies;
    for (const Found& found : found_) {
        if (found.place == from && wanted(found.object) && found.weight > 1) {
            copies.push_back(found);
            copies.back().place = here;
            copies.back().item.source = {sourceOf(sentence), sentence.line, 78};
            copies.back().item.quantity.reset();
            copies.back().item.cost.reset();
        }
    }
    for (Found& copy : copies) {
        if (found_.size() < kMostItems) {
            found_.push_back(std::move(copy));
        }
    }
}

// "The door" is the patio door just spoken of.
void Reader::recall(Spots& spots) const {
    for (ObjectSpot& spot : spots.objects) {
        if (spot.span.end != spot.span.begin + 1) {
            continue;
        }
        const std::string& plain = tables().objects[spot.object].name;
        const std::string head = plain.substr(plain.rfind(' ') + 1);
        for (const std::uint32_t recent : recent_) {
            const std::string& name = tables().objects[recent].name;
            const bool narrower =
                name.size() > head.size() && name.ends_with(" " + head) &&
                tables().objects[recent].place == tables().objects[spot.object].place;
            if (narrower && recent != spot.object) {
                spot.object = recent;
                break;
            }
        }
    }
}

// "This, the dining room, and the hall too.": what was said last holds there as well.
void Reader::extendPlaces(const Sentence& sentence, const Spots& spots, const Placed& placed,
                          const Linked& linked) {
    const bool bare =
        linked.said.empty() && !placed.parts.empty() && !placed.moved && lastFound_ < found_.size();
    static const WordId kToo = tables().id("too");
    static const WordId kBoth = tables().id("both");
    static const WordId kAlso = tables().id("also");
    const bool said =
        std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
            return token.word != kUnknown &&
                   (token.word == kToo || token.word == kBoth || token.word == kAlso);
        });
    if (!bare || !said || isDead(sentence, spots, 0, 2)) {
        return;
    }
    const std::vector<Found> last(found_.begin() + static_cast<std::ptrdiff_t>(lastFound_),
                                  found_.end());
    for (const Found& found : last) {
        for (const std::string& key : placed.parts.front().keys) {
            if (key != found.place && found_.size() < kMostItems) {
                found_.push_back(found);
                found_.back().place = key;
            }
        }
    }
}

// Keeps the objects that an "it" in the next sentence may mean.
void Reader::remember(const Spots& spots, const Linked& linked) {
    std::vector<std::uint32_t> objects;
    std::size_t last = 0;
    std::uint32_t act = kNone;
    for (const Said& said : linked.said) {
        if (said.spot != kNone && said.at >= last) {
            last = said.at;
            act = said.act;
        }
    }
    for (const Said& said : linked.said) {
        if (said.spot != kNone && said.act == act) {
            objects.push_back(said.object);
        }
    }
    for (const std::size_t loose : linked.loose) {
        if (spots.objects[loose].span.begin > last || objects.empty()) {
            if (spots.objects[loose].span.begin > last && act != kNone) {
                objects.clear();
                act = kNone;
            }
            objects.push_back(spots.objects[loose].object);
        }
    }
    if (!objects.empty()) {
        looseBefore_ = act == kNone;
        before_ = std::move(objects);
        beforeAge_ = 0;
    } else if (!linked.said.empty()) {
        looseBefore_ = false;
    }
    for (const ObjectSpot& object : spots.objects) {
        if (object.material) {
            continue;
        }
        recent_.insert(recent_.begin(), object.object);
    }
    recent_.resize(std::min<std::size_t>(recent_.size(), 8));
    for (const ObjectSpot& object : spots.objects) {
        for (const CueSpot& cue : spots.cues) {
            if (cue.cue == Cue::Absent && cue.span.end <= object.span.begin &&
                cue.span.end + 3 >= object.span.begin && absent_.size() < 50) {
                absent_.push_back(object.object);
            }
        }
    }
}

Reading Reader::finish() {
    Draft& draft = reading_.draft;
    draft.items = mergeFound(found_, walk_);
    draft.alternates = std::move(alternates_);
    draft.facts = facts_.facts();
    draft.cautions = std::move(cautions_);
    cautionItems(draft);
    for (const KnownSpace& space : walk_.known()) {
        if (space.kind != SpaceKind::Group) {
            draft.spaces.push_back({space.shown});
        }
    }
    return std::move(reading_);
}

}  // namespace ledgerboard::intake
