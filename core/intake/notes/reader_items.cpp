// The part of the reader that makes items of what was linked.
#include <algorithm>
#include <array>

#include "core/intake/notes/item_names.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/questions.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/space_names.h"

namespace ledgerboard::intake {

using model::Treatment;

bool Reader::absent(const Sentence& sentence, const Spots& spots, const Said& said) const {
    // "There's no heat in there, so put a heater in": of what serves the same end there is none.
    static const std::vector<std::string_view> kEnds = {"heat", "light", "range", "basin"};
    const std::string& end = tables().objects[said.object].family;
    const bool served = isOneOf(end, kEnds);
    const auto missing = [&](std::uint32_t object) {
        return object == said.object || (served && tables().objects[object].family == end);
    };
    if (said.fromBefore || said.spot == kNone) {
        return std::any_of(here_.absent.begin(), here_.absent.end(), missing);
    }
    // "Stove and fridge both walked off, so I need a stove": said of the same thing earlier.
    for (const ObjectSpot& object : spots.objects) {
        if (missing(object.object) && isAbsent(sentence, spots, object.span)) {
            return true;
        }
    }
    return std::any_of(here_.absent.begin(), here_.absent.end(), missing);
}

bool Reader::isAbsent(const Sentence& sentence, const Spots& spots, const Span& span) {
    for (const CueSpot& cue : spots.cues) {
        const bool before = cue.span.end <= span.begin && cue.span.end + 3 >= span.begin &&
                            sentence.tokens[cue.span.end].kind != TokenKind::Mark;
        // "has no globe": the globe is missing, not what has none.
        const std::string& ends = sentence.tokens[cue.span.end - 1].plain;
        const bool ofNext =
            ends == "no" || ends == "without" || ends == "have" || ends == "had" || ends == "not";
        const bool after = cue.span.begin >= span.end && cue.span.begin <= span.end + 4 && !ofNext;
        static const WordId kNew = tables().id("new");
        const bool word = before && cue.span.end < sentence.tokens.size() &&
                          sentence.tokens[cue.span.end].word == kNew;  // "no, new cabinets"
        if (cue.cue == Cue::Absent && (before || after) && !word &&
            partedBy(sentence, spots, std::min(cue.span.end, span.end),
                     std::max(cue.span.begin, span.begin)) < 2.5) {
            return true;
        }
    }
    return false;
}

namespace {

// "put a new roof on three years ago", "last year": lately enough that it may stay.
bool yearsAgo(const Sentence& sentence, std::size_t begin) {
    constexpr std::size_t kFar = 10;
    constexpr std::int64_t kOld = 15'000;  // thousandths of a year
    static const WordId kAgo = tables().id("ago");
    static const WordId kYear = tables().id("year");
    for (std::size_t i = begin; i < sentence.tokens.size() && i < begin + kFar; ++i) {
        const Token& token = sentence.tokens[i];
        if (token.kind == TokenKind::Mark && token.mark != ',') {
            return false;
        }
        if (token.word == kUnknown || token.word != kAgo || i < 2) {
            continue;
        }
        const bool years = sentence.tokens[i - 1].word == kYear;
        const Token& count = sentence.tokens[i - 2];
        const NumberRow number = tables().number(count.word);
        const std::int64_t value = count.kind == TokenKind::Number ? count.value : number.value;
        return !years || value < kOld;
    }
    return false;
}

// "Put in a light", "needs a handrail": one, and not one that is newer or better than another.
bool putsOne(const Sentence& sentence, const ActSpot& act, const ActRow& row) {
    static constexpr std::array<std::string_view, 22> kAnother = {
        "new",     "newer",   "bigger",   "smaller", "better",    "nicer",    "decent", "real",
        "proper",  "wider",   "taller",   "longer",  "modern",    "brighter", "larger", "simpler",
        "cheaper", "plainer", "stronger", "deeper",  "different", "matching"};
    const auto wordAt = [&](std::size_t at) {
        return at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Word
                   ? sentence.tokens[at].plain
                   : std::string();
    };
    const auto isOne = [&](std::size_t at) {
        const std::string word = wordAt(at);
        return word == "a" || word == "an" || word == "some";
    };
    const bool inPhrase = isOne(act.span.end - 1);
    if (row.phrase.find("new") != std::string::npos || (!inPhrase && !isOne(act.span.end))) {
        return false;
    }
    const std::string next = wordAt(inPhrase ? act.span.end : act.span.end + 1);
    return !isOneOf(next, kAnother);
}

// Whether something comes up or out before token `end`.
bool saysUp(const Sentence& sentence, std::size_t end) {
    for (std::size_t i = 0; i < end; ++i) {
        const std::string& word = sentence.tokens[i].plain;
        if (word == "up" || word == "out") {
            return true;
        }
    }
    return false;
}

// Whether a word stands from `begin` to `end`: "Island - new" says nothing of one that is there.
bool saysMore(const Sentence& sentence, std::size_t begin, std::size_t end) {
    bool more = false;
    for (std::size_t i = begin; i < end; ++i) {
        more = more || sentence.tokens[i].kind == TokenKind::Word;
    }
    return more;
}

// "was serviced in spring", "have just been painted": told of, and over.
bool wasDone(const Sentence& sentence, const ActSpot& act) {
    const std::string_view last = sentence.tokens[act.span.end - 1].text;
    const bool past = last.ends_with("ed") || last == "rebuilt" || last == "redone" ||
                      last == "relaid" || last == "rehung" || last == "put" || last == "hung";
    if (!past || act.span.begin == 0) {
        return false;
    }
    // "has been painted shut": a fault.
    if (act.span.end < sentence.tokens.size()) {
        const std::string& next = sentence.tokens[act.span.end].plain;
        if (next == "shut" || next == "open" || next == "closed" || next == "over") {
            return false;
        }
    }
    std::size_t at = act.span.begin - 1;
    const auto is = [&](std::string_view text) { return sentence.tokens[at].plain == text; };
    // "just waxed", "newly painted"
    if (is("just") || is("newly") || is("recently") || is("freshly")) {
        return true;
    }
    // "the seller had it redone"
    for (std::size_t i = act.span.begin; i-- > 0 && i + 4 >= act.span.begin;) {
        if (sentence.tokens[i].kind != TokenKind::Word) {
            break;
        }
        if (sentence.tokens[i].plain == "had") {
            return true;
        }
    }
    while (at > 0 && (is("just") || is("recently") || is("all") || is("newly") || is("only"))) {
        --at;
    }
    return is("was") || is("were") || is("been");
}

}  // namespace

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
    // "paint navy, she picked it already": done is what is said in the same breath.
    for (std::size_t i = act.span.begin; i < sentence.tokens.size() && i < act.span.end + 6; ++i) {
        if (sentence.tokens[i].kind == TokenKind::Mark && i > act.span.end) {
            break;
        }
        if (sentence.tokens[i].word != kUnknown && sentence.tokens[i].word == kAlready) {
            return true;
        }
    }
    if (yearsAgo(sentence, act.span.end) || wasDone(sentence, act)) {
        return true;
    }
    const std::string_view last = sentence.tokens[act.span.end - 1].text;
    // "panel 200A, 2014 swap"
    const bool dated =
        std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
            const std::int64_t year = amount.value / 1000;
            return amount.kind == AmountKind::Plain && amount.value % 1000 == 0 && year >= 1990 &&
                   year <= 2060 && amount.end == act.span.begin &&
                   act.span.end == act.span.begin + 1 && tables().acts[act.row].side == Side::After;
        });
    if (dated) {
        return true;
    }
    return last.ends_with("ed") &&
           std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
               const std::int64_t year = amount.value / 1000;
               return amount.kind == AmountKind::Plain && year >= 1990 && year <= 2060 &&
                      amount.begin >= act.span.end && amount.begin <= act.span.end + 4;
           });
}

// Whether something new is added to what is there, or takes the place of it.
void Reader::takeFresh(const Sentence& sentence, const Spots& spots, const Said& said,
                       Found& found) const {
    const ActSpot& act = spots.acts[said.act];
    const ActRow& row = tables().acts[act.row];
    if (row.fresh) {
        const bool missing = absent(sentence, spots, said);
        // "The fan sounds like a mower, so new fan": there is one.
        const bool seen =
            std::find(here_.recent.begin(), here_.recent.end(), said.object) !=
                here_.recent.end() ||
            (said.spot != kNone && saysMore(sentence, spots.objects[said.spot].span.end,
                                            act.span.begin)) ||  // "alarms chirp, put new ones"
            std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& other) {
                return other.object == said.object && other.span.end <= act.span.begin;
            });
        const bool there =
            !missing && seen && row.phrase.find("new") != std::string::npos &&
            std::none_of(found_.begin(), found_.end(), [&](const Found& other) {
                return other.object == said.object && other.treatment == Treatment::Add;
            });
        // "Install a dishwasher", of which nothing was said: there is none. Of what every house
        // has there may be one more where it has several.
        const ObjectRow& object = tables().objects[said.object];
        const bool first = !seen && said.spot != kNone && putsOne(sentence, act, row) &&
                           object.family != "floor" &&
                           (!object.essential || object.name.ends_with('s'));
        const bool adds = missing || first || (tables().objects[said.object].freshAdds && !there);
        found.treatment = adds ? Treatment::Add : Treatment::Replace;
    } else if (row.treatment == Treatment::Add && row.weight > 0 && row.weight < 3 &&
               !tables().objects[said.object].freshAdds) {
        found.treatment = Treatment::Add;
    }
}

// What sounds like a new thing and is work on what is there.
void Reader::takeMended(const Sentence& sentence, const Spots& spots, const Said& said,
                        Found& found) const {
    const ActSpot& act = spots.acts[said.act];
    const ActRow& row = tables().acts[act.row];
    // "It's off its track, put it back": what is there is mended.
    const bool hung = row.fresh && row.phrase.starts_with("hang it");
    if (hung && !absent(sentence, spots, said)) {
        found.treatment = Treatment::Repair;
        found.fresh = false;
    }
    if (row.treatment == Treatment::Add && row.phrase.starts_with("put ") &&
        row.phrase.ends_with("back") && !absent(sentence, spots, said)) {
        found.treatment = Treatment::Repair;
    }
    // "Then paint.": on what is there.
    const bool paint =
        said.spot != kNone &&
        sentence.tokens[spots.objects[said.spot].span.end - 1].plain.starts_with("paint");
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    if (paint && found.object == kWalls &&
        (found.treatment == Treatment::Replace || found.treatment == Treatment::Add)) {
        found.treatment = Treatment::Refinish;
        found.fresh = false;
    }
    // "Carpet up and plank down": laid.
    if (found.treatment == Treatment::Remove && row.phrase == "down" &&
        tables().objects[found.object].family == "floor" && saysUp(sentence, act.span.begin)) {
        found.treatment = Treatment::Replace;
        found.fresh = true;
    }
}

namespace {

// Whether only a few pieces of the thing are spoken of: "slate roof, 12 slates to be replaced".
bool isPartUpTo(const Sentence& sentence, const Spots& spots, const Span& span, std::size_t act) {
    bool part = isPartOf(sentence, spots, span);
    for (std::size_t at = span.end; at < act && !part; ++at) {
        part = isPartOf(sentence, spots, {at, at + 1});
    }
    return part;
}

// "The uppers are going, the lowers stay": one of two lots of a thing, of which one is kept and the
// other not. "Shingles look young, repair the roof there" speaks of one roof: by its own name a
// thing is meant as a whole.
bool isOneLot(const Sentence& sentence, const Spots& spots, const Linked& linked,
              const Said& said) {
    const auto keeps = [&](const Said& one) {
        return tables().acts[spots.acts[one.act].row].treatment == Treatment::Keep;
    };
    const auto head = [&](const Said& one) {
        return sentence.tokens[spots.objects[one.spot].span.end - 1].word;
    };
    const std::string& name = tables().objects[said.object].name;
    const WordId whole = placeWordOf(name.substr(name.rfind(' ') + 1));
    return said.spot != kNone && head(said) != whole &&
           std::any_of(linked.said.begin(), linked.said.end(), [&](const Said& other) {
               return other.object == said.object && other.spot != kNone &&
                      other.spot != said.spot && keeps(other) != keeps(said) &&
                      head(other) != head(said) && head(other) != whole;
           });
}

void markLot(const Sentence& sentence, const Spots& spots, const Linked& linked, const Said& said,
             Found& found) {
    if (isOneLot(sentence, spots, linked, said)) {
        found.lot = true;
        found.rest = found.treatment == Treatment::Keep;
        found.treatment = found.takenOut ? Treatment::Remove : found.treatment;
    }
}

}  // namespace

// Whether only a few pieces are meant: in this sentence, or "Three slates have slipped. Replace
// those."
bool Reader::isOfPieces(const Sentence& sentence, const Spots& spots, const Said& said) const {
    return (said.spot != kNone && isPartUpTo(sentence, spots, spots.objects[said.spot].span,
                                             spots.acts[said.act].span.begin)) ||
           (said.fromBefore &&
            std::find(last_.pieces.begin(), last_.pieces.end(), said.object) != last_.pieces.end());
}

Found Reader::foundOf(const Sentence& sentence, const Spots& spots, const Said& said) {
    const ActSpot& act = spots.acts[said.act];
    const ActRow& row = tables().acts[act.row];
    Found found;
    found.object = said.object;
    found.weight = row.weight;
    found.fresh = row.fresh;
    found.own = act.own;
    found.treatment = row.treatment;
    takeFresh(sentence, spots, said, found);
    takeMended(sentence, spots, said, found);
    nameRight(row, found);
    nameFloor(spots, said, found);
    // "Shingles on the upper half need paint": those of the walls.
    static const std::uint32_t kRoof = tables().objectNamed("roof");
    if (found.object == kRoof && found.treatment == Treatment::Refinish &&
        sentence.tokens[said.at].plain.starts_with("shingle")) {
        found.object = tables().objectNamed("siding");
    }
    if (found.treatment == Treatment::Replace && isOfPieces(sentence, spots, said)) {
        found.treatment = Treatment::Repair;
        found.fresh = false;
    }
    // "replaced 2019", "new windows already": done, not to be done.
    const bool toDo = found.treatment == Treatment::Replace || found.treatment == Treatment::Add ||
                      found.treatment == Treatment::Repair ||
                      found.treatment == Treatment::Refinish ||
                      found.treatment == Treatment::Clean ||
                      // "was inspected last fall"
                      (found.treatment == Treatment::Inspect && row.weight > 1);
    if (toDo && isDone(sentence, spots, act)) {
        found.treatment = Treatment::Keep;
        found.fresh = false;
    }
    if (act.negated) {
        found.fromNo = true;
        found.weight = std::min(found.weight, 2);
        const bool essential = tables().objects[found.object].essential;
        found.treatment = found.treatment != Treatment::Keep ? Treatment::Keep
                          : essential                        ? Treatment::Replace
                                                             : Treatment::Remove;
    }
    found.rest = found.treatment == Treatment::Keep && spots.has(Cue::Rest);
    found.signs = signsOf(sentence, spots, said);
    if (found.treatment != row.treatment) {
        found.signs.push_back(signOf(SignFlag::Turned));
    }
    found.item.source = {written(sentence), sentence.tokens[said.at].line, 0};
    if (found.treatment == Treatment::Keep || found.treatment == Treatment::Inspect) {
        found.item.note = found.item.source.sentence;
    }
    addAmounts(sentence, spots, said, found);
    return found;
}

// How surely it is known where the item is meant.
void Reader::signPlace(Found& found) const {
    const std::vector<std::string>& here = walk_.current();
    constexpr int kLong = 12;
    const int since = std::min(walk_.sinceMove(), kLong);
    found.signs.push_back({SignKind::Since, static_cast<std::uint32_t>(since == kLong ? 4
                                                                       : since > 5    ? 3
                                                                       : since > 2    ? 2
                                                                       : since > 0    ? 1
                                                                                      : 0)});
    if (walk_.underHeading()) {
        found.signs.push_back(signOf(SignFlag::UnderHeading));
    }
    if (here.empty()) {
        found.signs.push_back(signOf(SignFlag::Unplaced));
    } else if (std::find(here.begin(), here.end(), found.place) == here.end()) {
        found.signs.push_back(signOf(SignFlag::Elsewhere));
    }
    if (section_.is == Section::Open) {
        found.signs.push_back(signOf(SignFlag::Open));
    } else if (section_.is == Section::Keep) {
        found.signs.push_back(signOf(SignFlag::Kept));
    }
}

void Reader::takeItems(const Sentence& sentence, Spots& spots, const Placed& placed,
                       const Linked& linked, const Openness& open) {
    if (section_.is == Section::NotDoing) {
        return;
    }
    const bool asksFact = asksFor(sentence) == Asks::Fact;
    for (const Said& said : linked.said) {
        const ActSpot& act = spots.acts[said.act];
        const ActRow& row = tables().acts[act.row];
        if (ofHole(spots, linked, said)) {
            continue;
        }
        if (asksFact && row.treatment != Treatment::Keep && row.treatment != Treatment::Inspect) {
            continue;
        }
        const bool hinted = open.hinted && act.span.begin >= open.hintAt &&
                            partedBy(sentence, spots, open.hintAt, act.span.begin) < 4.0;
        if (isDead(sentence, spots, act.span.begin, row.weight) || hinted) {
            continue;
        }
        if (row.weight == 0 && row.treatment == Treatment::Add) {
            here_.absent.push_back(said.object);
            continue;
        }
        if (row.weight == 0) {
            continue;
        }
        if (answered(sentence, spots, linked, said)) {
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
        markLot(sentence, spots, linked, said, found);
        const bool trouble = tables().objects[found.object].family == "trouble";
        if (trouble &&
            (found.treatment == Treatment::Replace || found.treatment == Treatment::Add ||
             found.treatment == Treatment::Repair || found.treatment == Treatment::Refinish ||
             found.treatment == Treatment::Keep || found.treatment == Treatment::Relocate)) {
            continue;
        }
        // "Insulate the roof slopes": where the insulation goes, not where a roof is.
        Said named = said;
        named.object = found.object;
        for (const std::string& place : placesFor(spots, placed, named)) {
            if (found_.size() < kMostItems) {
                found.place = place;
                found_.push_back(found);
                nameOutside(found_.back());
                signPlace(found_.back());
            }
        }
    }
}

}  // namespace ledgerboard::intake
