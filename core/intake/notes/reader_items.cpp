// The part of the reader that makes items of what was linked.
#include <algorithm>

#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/sureness.h"

namespace ledgerboard::intake {

using model::Treatment;

bool Reader::absent(const Sentence& sentence, const Spots& spots, const Said& said) const {
    if (said.fromBefore || said.spot == kNone) {
        return std::find(absent_.begin(), absent_.end(), said.object) != absent_.end();
    }
    // "Stove and fridge both walked off, so I need a stove": said of the same thing earlier.
    for (const ObjectSpot& object : spots.objects) {
        if (object.object == said.object && isAbsent(sentence, spots, object.span)) {
            return true;
        }
    }
    return std::find(absent_.begin(), absent_.end(), said.object) != absent_.end();
}

bool Reader::isAbsent(const Sentence& sentence, const Spots& spots, const Span& span) {
    for (const CueSpot& cue : spots.cues) {
        const bool before = cue.span.end <= span.begin && cue.span.end + 3 >= span.begin &&
                            sentence.tokens[cue.span.end].kind != TokenKind::Mark;
        // "has no globe": the globe is missing, not what has none.
        const std::string ends = plainWord(sentence.tokens[cue.span.end - 1].text);
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

// "Tile the walls", "drywall the ceiling", "carpet the bedrooms": the thing laid, not what it is
// laid on.
void layOn(const ActRow& row, Found& found) {
    static const std::uint32_t kTile = tables().objectNamed("tile");
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    static const std::vector<std::uint32_t> kSurfaces = {kWalls,
                                                         kFloor,
                                                         tables().objectNamed("ceiling"),
                                                         tables().objectNamed("framing"),
                                                         tables().objectNamed("rafters"),
                                                         tables().objectNamed("floor joists")};
    const bool lays = row.object != kNone && (row.fresh || row.treatment == Treatment::Add ||
                                              row.treatment == Treatment::Replace);
    // "Retile the shower"
    static const std::uint32_t kShower = tables().objectNamed("shower");
    static const std::uint32_t kShowerTile = tables().objectNamed("shower tile");
    if (lays && row.object == tables().objectNamed("tile") && found.object == kShower) {
        found.object = kShowerTile;
        return;
    }
    const bool on = std::find(kSurfaces.begin(), kSurfaces.end(), found.object) != kSurfaces.end();
    if (!lays || !on || row.object == kWalls) {
        return;
    }
    static const std::uint32_t kWallTile = tables().objectNamed("wall tile");
    static const std::uint32_t kFloorTile = tables().objectNamed("floor tile");
    const bool tile = row.object == kTile;
    found.object = tile && found.object == kWalls   ? kWallTile
                   : tile && found.object == kFloor ? kFloorTile
                                                    : row.object;
}

// What the words come to in the trade: the floor that is sanded is wood, a lamp that is rewired is
// mended, what every house has is not taken out for good.
void nameRight(const ActRow& row, Found& found) {
    static const std::uint32_t kWallpaper = tables().objectNamed("wallpaper");
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    static const std::uint32_t kWoodFloor = tables().objectNamed("wood floor");
    if (found.object == kFloor && found.treatment == Treatment::Refinish) {
        found.object = kWoodFloor;
    }
    // A floor is sealed to last, a gutter to hold water.
    const bool seals = row.phrase.find("seal") != std::string::npos;
    if (seals && found.treatment == Treatment::Refinish &&
        (tables().objects[found.object].trade == "roofing" ||
         tables().objects[found.object].trade == "gutters" ||
         tables().objects[found.object].name == "gutters")) {
        found.treatment = Treatment::Repair;
    }
    const bool laid = tables().objects[found.object].family == "floor";
    if (seals && laid && found.treatment == Treatment::Repair) {
        found.treatment = Treatment::Refinish;
    }
    // A stump that is ground is gone.
    static const std::uint32_t kStump = tables().objectNamed("stump");
    if (found.object == kStump && found.treatment == Treatment::Repair) {
        found.treatment = Treatment::Remove;
    }
    // Caulk is renewed; the tub is not mended.
    static const std::uint32_t kCaulk = tables().objectNamed("caulk");
    if (row.object == kCaulk && row.treatment == Treatment::Repair) {
        found.object = kCaulk;
    }
    layOn(row, found);
    // Paint is scraped off a floor; a floor is not.
    static const std::uint32_t kCeiling = tables().objectNamed("ceiling");
    if (row.phrase.find("scrape") != std::string::npos && found.object != kWallpaper &&
        found.object != kCeiling && canBeRefinished(tables().objects[found.object])) {
        found.treatment = Treatment::Refinish;
    }
    // What every house has is not taken out for good.
    if (found.treatment == Treatment::Remove && tables().objects[found.object].essential &&
        row.weight > 1) {
        found.treatment = Treatment::Replace;
    }
    // A lamp that is rewired is mended; of anything else it is the wiring that is new.
    static const std::uint32_t kWiring = tables().objectNamed("wiring");
    if (row.object == kWiring && found.object != kWiring && found.treatment == Treatment::Replace) {
        const bool lamp = tables().objects[found.object].family == "light";
        found.treatment = lamp ? Treatment::Repair : Treatment::Replace;
        found.object = lamp ? found.object : kWiring;
    }
    // Paint goes on the walls once the paper is off.
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    if (found.object == kWallpaper && found.treatment == Treatment::Refinish &&
        row.object == kWalls) {
        found.object = kWalls;
    }
    // "The pantry wants paint": its walls.
    const bool room =
        std::any_of(tables().spaces.begin(), tables().spaces.end(), [&](const SpaceRow& space) {
            return space.kind == SpaceKind::Room &&
                   space.name == tables().objects[found.object].name;
        });
    if (room && found.treatment == Treatment::Refinish) {
        found.object = kWalls;
    }
    // Wallpaper is stripped off, not down.
    if (found.object == kWallpaper && row.phrase.starts_with("strip")) {
        found.treatment = Treatment::Remove;
    }
}

}  // namespace

namespace {

// Whether a word stands from `begin` to `end`: "Island - new" says nothing of one that is there.
bool saysMore(const Sentence& sentence, std::size_t begin, std::size_t end) {
    bool more = false;
    for (std::size_t i = begin; i < end; ++i) {
        more = more || sentence.tokens[i].kind == TokenKind::Word;
    }
    return more;
}

// "A few shingles", "two sections of fence": not the whole of it.
bool isPartOf(const Sentence& sentence, const Spots& spots, const Span& span) {
    static const std::vector<std::string_view> kPieces = {
        "shingles", "slates", "boards", "bricks", "planks", "tiles", "pavers", "floorboards"};
    static const std::vector<std::string_view> kSections = {
        "section", "sections", "length", "lengths", "stretch", "piece", "pieces"};
    const auto text = [&](std::size_t at) {
        return at < sentence.tokens.size() ? plainWord(sentence.tokens[at].text) : std::string();
    };
    const auto in = [](const auto& list, const std::string& word) {
        return std::find(list.begin(), list.end(), word) != list.end();
    };
    std::size_t at = span.begin;
    if (at > 1 && text(at - 1) == "of" && in(kSections, text(at - 2))) {
        return true;
    }
    if (!in(kPieces, text(span.end - 1))) {
        return false;
    }
    constexpr std::size_t kNear = 4;
    constexpr std::int64_t kSmall = 20'000;  // thousandths
    for (std::size_t i = at > kNear ? at - kNear : 0; i < at; ++i) {
        if (text(i) == "few" || text(i) == "some" || text(i) == "couple" || text(i) == "several") {
            return true;
        }
    }
    return std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
        return amount.kind == AmountKind::Plain && amount.end <= at && amount.end + 2 >= at &&
               amount.value <= kSmall;
    });
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
        const std::string next = plainWord(sentence.tokens[act.span.end].text);
        if (next == "shut" || next == "open" || next == "closed" || next == "over") {
            return false;
        }
    }
    std::size_t at = act.span.begin - 1;
    const auto is = [&](std::string_view text) {
        return plainWord(sentence.tokens[at].text) == text;
    };
    // "just waxed", "newly painted"
    if (is("just") || is("newly") || is("recently") || is("freshly")) {
        return true;
    }
    // "the seller had it redone"
    for (std::size_t i = act.span.begin; i-- > 0 && i + 4 >= act.span.begin;) {
        if (sentence.tokens[i].kind != TokenKind::Word) {
            break;
        }
        if (plainWord(sentence.tokens[i].text) == "had") {
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
    for (std::size_t i = act.span.begin; i < sentence.tokens.size() && i < act.span.end + 6; ++i) {
        if (sentence.tokens[i].word != kUnknown && sentence.tokens[i].word == kAlready) {
            return true;
        }
    }
    if (yearsAgo(sentence, act.span.end) || wasDone(sentence, act)) {
        return true;
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
        const bool missing = absent(sentence, spots, said);
        // "The fan sounds like a mower, so new fan": there is one.
        const bool seen =
            std::find(recent_.begin(), recent_.end(), said.object) != recent_.end() ||
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
        const bool adds = missing || (tables().objects[said.object].freshAdds && !there);
        found.treatment = adds ? Treatment::Add : Treatment::Replace;
    } else if (row.treatment == Treatment::Add && row.weight > 0 && row.weight < 3 &&
               !tables().objects[said.object].freshAdds) {
        found.treatment = Treatment::Add;
    }
    nameRight(row, found);
    if (found.treatment == Treatment::Replace && said.spot != kNone &&
        isPartOf(sentence, spots, spots.objects[said.spot].span)) {
        found.treatment = Treatment::Repair;
        found.fresh = false;
    }
    // "replaced 2019", "new windows already": done, not to be done.
    const bool toDo = found.treatment == Treatment::Replace || found.treatment == Treatment::Add ||
                      found.treatment == Treatment::Repair ||
                      found.treatment == Treatment::Refinish;
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
    found.item.source = {sourceOf(sentence), sentence.tokens[said.at].line,
                         sureness(sentence, spots, said, found.treatment)};
    if (found.treatment == Treatment::Keep || found.treatment == Treatment::Inspect) {
        found.item.note = found.item.source.sentence;
    }
    addAmounts(sentence, spots, said, found);
    return found;
}

// "New cabinets, 18 feet, new tops, 40 square feet": a measure belongs to what it follows.
bool Reader::ofAnother(const Sentence& sentence, const Spots& spots, const Amount& amount,
                       const Said& said) {
    if (amount.kind != AmountKind::Measured) {
        return false;
    }
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        const bool follows = object.span.end <= amount.begin && amount.begin <= object.span.end + 2;
        const bool marks =
            std::all_of(sentence.tokens.begin() +
                            static_cast<std::ptrdiff_t>(std::min(object.span.end, amount.begin)),
                        sentence.tokens.begin() + static_cast<std::ptrdiff_t>(amount.begin),
                        [](const Token& token) { return token.kind == TokenKind::Mark; });
        return follows && marks && object.span.begin != said.at;
    });
}

// A span of time is a wait where the sentence speaks of ordering; else it is how long the work
// takes.
void Reader::addTime(const Sentence& sentence, const Amount& amount, DraftItem& item) {
    static const std::vector<WordId> kWaits = [] {
        std::vector<WordId> ids;
        for (const std::string_view word :
             {"order", "lead", "shop", "deliveri", "deliv", "measur", "templat", "maker",
              "supplier", "notic", "wait", "ship", "arriv", "backord", "custom", "mill", "yard"}) {
            ids.push_back(tables().id(word));
        }
        return ids;
    }();
    static const WordId kOut = tables().id("out");
    const bool out = amount.end < sentence.tokens.size() && kOut != kUnknown &&
                     sentence.tokens[amount.end].word == kOut;  // "six weeks out"
    const bool waits =
        out || std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [&](const Token& token) {
            return token.word != kUnknown &&
                   std::find(kWaits.begin(), kWaits.end(), token.word) != kWaits.end();
        });
    const std::string& unit = tables().units[amount.unit].name;
    const bool week = unit == "week";
    const bool month = unit == "month";
    if (!week && !month && unit != "day") {
        return;
    }
    if (waits && !item.leadDays) {
        item.leadDays = model::Quantity::fromThousandths(amount.value * (week    ? 7
                                                                         : month ? 30
                                                                                 : 1));
    } else if (!waits && !item.days) {
        item.days = model::Quantity::fromThousandths(amount.value * (week ? 5 : month ? 21 : 1));
    }
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
        if (!near || (!nearest && said.spot != kNone) || ofAnother(sentence, spots, amount, said)) {
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
            addTime(sentence, amount, item);
        }
    }
}

// The porch that a thing names as its place; empty where it names none.
std::string Reader::porchOf(const ObjectSpot& spot) const {
    const std::string& name = tables().objects[spot.object].name;
    const bool part = name.starts_with("porch ") || (name == "steps" && spot.porch);
    if (!part) {
        return {};
    }
    for (const KnownSpace& space : walk_.known()) {
        if (space.key.ends_with("porch")) {
            return space.key;
        }
    }
    return "front porch";
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
    // "Stairs and upstairs hall": the treads are the stairs', the walls the hall's.
    if (keys.size() > 1) {
        static const std::vector<std::string_view> kOfStairs = {"stair treads", "balusters",
                                                                "newel post", "railing", "stairs"};
        const bool ofStairs =
            std::find(kOfStairs.begin(), kOfStairs.end(), object.name) != kOfStairs.end();
        const auto stairs = std::find(keys.begin(), keys.end(), "stairs");
        if (stairs != keys.end() && ofStairs) {
            return {"stairs"};
        }
        if (stairs != keys.end()) {
            keys.erase(stairs);
        }
    }
    const auto outside = [&](const std::string& key) {
        // An outbuilding has a roof and walls of its own.
        static const std::vector<std::string_view> kOutbuildings = {
            "garage", "workshop", "carriage house", "guest house", "boathouse", "well house"};
        const KnownSpace* space = walk_.find(key);
        const bool building =
            std::find(kOutbuildings.begin(), kOutbuildings.end(), key) != kOutbuildings.end();
        return space != nullptr &&
               (space->kind == SpaceKind::Outside || (building && walk_.underHeading()));
    };
    // "Outside … the barn we leave": an outbuilding is its own space.
    static const std::vector<std::string_view> kSpaces = {"deck", "barn", "boathouse", "shed"};
    const bool space = std::find(kSpaces.begin(), kSpaces.end(), object.name) != kSpaces.end();
    if (space && (keys.empty() || keys.front() == "exterior")) {
        walk_.learn(object.name, object.name, SpaceKind::Outside);
        return {object.name};
    }
    // What is the house's own outdoors, seen from the yard or the porch.
    static const std::vector<std::string_view> kOfHouse = {"driveway",      "walkway", "sewer line",
                                                           "septic system", "gutters", "downspouts",
                                                           "fascia",        "siding"};
    const bool ofHouse = std::find(kOfHouse.begin(), kOfHouse.end(), object.name) != kOfHouse.end();
    const bool yard = !keys.empty() && (keys.front().ends_with("yard") || keys.front() == "garden");
    static const std::vector<std::string_view> kAlways = {"driveway", "walkway", "sewer line",
                                                          "septic system"};
    const bool always = std::find(kAlways.begin(), kAlways.end(), object.name) != kAlways.end();
    if ((ofHouse && yard) || always) {
        walk_.learn("exterior", "outside", SpaceKind::Outside);
        return {"exterior"};
    }
    // "Porch steps", "porch ceiling": the porch's.
    const std::string porch =
        said.spot == kNone ? std::string() : porchOf(spots.objects[said.spot]);
    if (!porch.empty() && (keys.empty() || keys.front().find("porch") == std::string::npos)) {
        walk_.learn(porch, porch, SpaceKind::Outside);
        return {porch};
    }
    // A deck is a place of its own, and its parts are in it.
    static const std::vector<std::string_view> kOfDeck = {"deck boards", "deck frame", "ledger",
                                                          "deck post"};
    const bool ofDeck = std::find(kOfDeck.begin(), kOfDeck.end(), object.name) != kOfDeck.end();
    if (ofDeck && (keys.empty() || keys.front() == "exterior" || keys.front().ends_with("yard"))) {
        walk_.learn("deck", "deck", SpaceKind::Outside);
        return {"deck"};
    }
    // A garage door is the garage's, wherever it is spoken of.
    static const std::vector<std::string_view> kOfGarage = {"garage door", "garage door opener",
                                                            "garage door panel"};
    const bool ofGarage =
        std::find(kOfGarage.begin(), kOfGarage.end(), object.name) != kOfGarage.end();
    if (ofGarage && (keys.empty() || keys.front().find("garage") == std::string::npos)) {
        walk_.learn("garage", "garage", SpaceKind::Room);
        return {"garage"};
    }
    // "Door to the yard, fine. Fridge stays.": a fridge stands in the room before.
    static const std::vector<std::string_view> kIndoor = {"appliances", "cabinets", "counters"};
    static const std::vector<std::string_view> kOfRooms = {
        "sink",       "faucet",      "toilet",      "bathtub",
        "backsplash", "vinyl floor", "vinyl plank", "carpet"};
    const bool indoor = std::find(kIndoor.begin(), kIndoor.end(), object.trade) != kIndoor.end() ||
                        std::find(kOfRooms.begin(), kOfRooms.end(), object.name) != kOfRooms.end();
    if (indoor && !keys.empty() && outside(keys.front()) && !walk_.lastRoom().empty()) {
        return {walk_.lastRoom()};
    }
    if (object.place == Place::Outside && (keys.empty() || !outside(keys.front()))) {
        walk_.learn("exterior", "outside", SpaceKind::Outside);
        keys = {"exterior"};
    } else if (keys.empty()) {
        walk_.learn("whole house", "whole house", SpaceKind::Whole);
        keys = {"whole house"};
    }
    return keys;
}

// "The flashing is loose, so repair the roof": the order answers the condition.
bool Reader::answered(const Sentence& sentence, const Spots& spots, const Linked& linked,
                      const Said& said) const {
    static const WordId kSo = tables().id("so");
    const ActSpot& act = spots.acts[said.act];
    if (tables().acts[act.row].weight > 1) {
        return false;
    }
    return std::any_of(linked.said.begin(), linked.said.end(), [&](const Said& other) {
        const ActSpot& order = spots.acts[other.act];
        if (tables().acts[order.row].weight < 3 || order.span.begin < act.span.end) {
            return false;
        }
        for (std::size_t i = act.span.end; i < order.span.begin; ++i) {
            if (sentence.tokens[i].word == kSo && kSo != kUnknown) {
                return true;
            }
        }
        return false;
    });
}

// "Siding is sound, paint all": out of doors the walls are the siding.
void Reader::nameOutside(Found& found) const {
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    static const std::uint32_t kSiding = tables().objectNamed("siding");
    if (found.object == kWalls && found.place == "exterior" &&
        found.treatment == Treatment::Refinish) {
        found.object = kSiding;
    }
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
        const bool trouble = tables().objects[found.object].family == "trouble";
        if (trouble &&
            (found.treatment == Treatment::Replace || found.treatment == Treatment::Add ||
             found.treatment == Treatment::Refinish)) {
            continue;
        }
        for (const std::string& place : placesFor(spots, placed, said)) {
            if (found_.size() < kMostItems) {
                found.place = place;
                found_.push_back(found);
                nameOutside(found_.back());
            }
        }
    }
}

}  // namespace ledgerboard::intake
