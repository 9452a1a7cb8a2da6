#include "core/intake/notes/item_names.h"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>
#include <vector>

#include "core/intake/notes/link_rules.h"

namespace ledgerboard::intake {

using model::Treatment;

namespace {

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
    if (lays && row.object == kTile && found.object == kShower) {
        found.object = kShowerTile;
        return;
    }
    // "Tear out the vinyl and tile it."
    if (lays && row.object == kTile && tables().objects[found.object].family == "floor") {
        found.object = tables().objectNamed("floor tile");
        return;
    }
    // "Drywall that ceiling": a new ceiling.
    static const std::uint32_t kCeiling = tables().objectNamed("ceiling");
    static const std::uint32_t kDrywall = tables().objectNamed("drywall");
    if (lays && row.object == kDrywall && found.object == kCeiling) {
        found.treatment = Treatment::Replace;
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

// What a thing is called, or what is done to it, for what was said of it. An empty column holds of
// anything, or changes nothing.
struct NameRow {
    std::string_view things;  // of the object table, or "~" and a family, or "@" and a trade
    std::string_view says;    // in the phrase that was said; "^": it begins so
    std::string_view means;   // the thing that the phrase means where none is named
    Treatment done = Treatment::Unset;
    std::string_view thing;  // what it then is
    Treatment treatment = Treatment::Unset;
};

constexpr std::array<NameRow, 12> kNames = {{
    {"floor", "", "", Treatment::Refinish, "wood floor"},
    // A floor is sealed to last, a roof or a gutter to hold water.
    {"@roofing;@gutters;gutters", "seal", "", Treatment::Refinish, "", Treatment::Repair},
    {"~floor;stair treads;driveway;walkway;patio;deck boards;concrete slab", "seal", "",
     Treatment::Repair, "", Treatment::Refinish},
    // A pane is put back; a tub is coated.
    {"windows", "reglaz", "", Treatment::Refinish, "", Treatment::Repair},
    // A stump that is ground is gone, and so is rubbish that is cleared out.
    {"stump", "", "", Treatment::Repair, "", Treatment::Remove},
    {"junk", "", "", Treatment::Clean, "", Treatment::Remove},
    // "Regrout the floor": of tile, then.
    {"floor", "grout", "", Treatment::Unset, "floor tile"},
    {"shower", "grout", "", Treatment::Unset, "shower tile"},
    // New grout and new caulk mend what they are on.
    {"grout;caulk", "", "", Treatment::Replace, "", Treatment::Repair},
    {"grout;caulk", "", "", Treatment::Refinish, "", Treatment::Repair},
    // Insulation is laid and a strip is put on, on whatever it may be.
    {"", "^insulate", "insulation", Treatment::Unset, "insulation"},
    {"", "^weatherstrip", "weatherstripping", Treatment::Unset, "weatherstripping"},
}};

// Wallpaper comes off, and what is done after that is done to the walls.
constexpr std::array<NameRow, 3> kPapered = {{
    // Paint goes on the walls once the paper is off and the plaster is mended.
    {"plaster;drywall;wallpaper", "", "walls", Treatment::Refinish, "walls"},
    // So are they mended.
    {"wallpaper", "", "", Treatment::Repair, "walls"},
    // Wallpaper is stripped off, not down.
    {"wallpaper", "^strip", "", Treatment::Unset, "", Treatment::Remove},
}};

// Rows of one of these tables made ready: things by their numbers.
class NameRules {
  public:
    explicit NameRules(std::span<const NameRow> rows) {
        for (const NameRow& row : rows) {
            rules_.push_back({row, thingsOf(row.things), numberOf(row.means), numberOf(row.thing)});
        }
    }

    // Each row in its turn, of what the rows before made of it.
    void apply(const ActRow& said, Found& found) const {
        for (const Rule& rule : rules_) {
            const NameRow& row = rule.row;
            const bool of = (rule.things.empty() || rule.things[found.object]) &&
                            (row.done == Treatment::Unset || row.done == found.treatment) &&
                            (rule.means == kNone || rule.means == said.object);
            if (of && says(said.phrase, row.says)) {
                found.object = rule.thing == kNone ? found.object : rule.thing;
                found.treatment =
                    row.treatment == Treatment::Unset ? found.treatment : row.treatment;
            }
        }
    }

  private:
    struct Rule {
        NameRow row;
        std::vector<bool> things;  // by row of the object table; empty: any
        std::uint32_t means = kNone;
        std::uint32_t thing = kNone;
    };

    static std::uint32_t numberOf(std::string_view thing) {
        return thing.empty() ? kNone : tables().objectNamed(thing);
    }

    static bool says(const std::string& phrase, std::string_view words) {
        return words.starts_with('^') ? phrase.starts_with(words.substr(1))
                                      : phrase.find(words) != std::string::npos;
    }

    static std::vector<bool> thingsOf(std::string_view names) {
        std::vector<bool> things;
        while (!names.empty()) {
            const std::string_view name = names.substr(0, names.find(';'));
            names.remove_prefix(std::min(name.size() + 1, names.size()));
            things.resize(tables().objects.size());
            for (std::size_t i = 0; i < things.size(); ++i) {
                const ObjectRow& object = tables().objects[i];
                things[i] = things[i] || (name.front() == '~'   ? object.family == name.substr(1)
                                          : name.front() == '@' ? object.trade == name.substr(1)
                                                                : object.name == name);
            }
        }
        return things;
    }

    std::vector<Rule> rules_;
};

// "The pantry wants paint": whether the thing is a room as well. By row of the object table.
const std::vector<bool>& rooms() {
    static const std::vector<bool> kRooms = [] {
        std::vector<bool> are(tables().objects.size());
        for (const SpaceRow& space : tables().spaces) {
            const std::uint32_t object = tables().objectNamed(space.name);
            if (space.kind == SpaceKind::Room && object != kNone) {
                are[object] = true;
            }
        }
        return are;
    }();
    return kRooms;
}

}  // namespace

void nameRight(const ActRow& row, Found& found) {
    static const NameRules kRules(kNames);
    static const NameRules kRulesOfPaper(kPapered);
    kRules.apply(row, found);
    // Caulk is renewed; the tub is not mended. A fan's duct is run, through whatever it may be.
    static const std::uint32_t kCaulk = tables().objectNamed("caulk");
    static const std::uint32_t kDuct = tables().objectNamed("exhaust duct");
    const bool renewed = row.treatment == Treatment::Repair || row.treatment == Treatment::Replace;
    if ((row.object == kCaulk && renewed) || row.object == kDuct) {
        found.object = row.object;
    }
    layOn(row, found);
    // Paint is scraped off a floor; a floor is not.
    static const std::uint32_t kWallpaper = tables().objectNamed("wallpaper");
    static const std::uint32_t kCeiling = tables().objectNamed("ceiling");
    if (row.phrase.find("scrape") != std::string::npos && found.object != kWallpaper &&
        found.object != kCeiling && canBeRefinished(tables().objects[found.object])) {
        found.treatment = Treatment::Refinish;
    }
    // What every house has is not taken out for good.
    if (found.treatment == Treatment::Remove && tables().objects[found.object].essential &&
        row.weight > 1) {
        found.treatment = Treatment::Replace;
        found.takenOut = true;
    }
    // A lamp that is rewired is mended; of anything else it is the wiring that is new.
    static const std::uint32_t kWiring = tables().objectNamed("wiring");
    if (row.object == kWiring && found.object != kWiring && found.treatment == Treatment::Replace) {
        const bool lamp = tables().objects[found.object].family == "light";
        found.treatment = lamp ? Treatment::Repair : Treatment::Replace;
        found.object = lamp ? found.object : kWiring;
    }
    kRulesOfPaper.apply(row, found);
    // "The pantry wants paint": its walls.
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    if (row.object == kWalls && found.treatment == Treatment::Refinish && rooms()[found.object]) {
        found.object = kWalls;
    }
}

bool isPartOf(const Sentence& sentence, const Spots& spots, const Span& span) {
    static const std::vector<std::string_view> kPieces = {
        "shingles",      "slates",      "boards", "bricks", "planks",  "tiles",
        "pavers",        "floorboards", "shakes", "slats",  "palings", "pickets",
        "weatherboards", "clapboards",  "flags",  "blocks"};
    static const std::vector<std::string_view> kFaults = {
        "bad", "broken", "cracked", "rotten", "missing", "loose", "split", "chipped", "gone"};
    static const std::vector<std::string_view> kSections = {
        "section", "sections", "length", "lengths", "stretch", "piece", "pieces"};
    const auto text = [&](std::size_t at) {
        return at < sentence.tokens.size() ? std::string_view(sentence.tokens[at].plain)
                                           : std::string_view();
    };
    const auto in = [](const auto& list, std::string_view word) {
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
        const bool before = amount.end <= at && amount.end + 2 >= at;
        // "the tiles, two of them cracked", "boards 5 bad"
        const bool after = amount.begin >= span.end && amount.begin <= span.end + kNear &&
                           (in(kFaults, text(amount.end)) ||
                            (text(amount.end) == "of" && text(amount.end + 1) == "them"));
        return amount.kind == AmountKind::Plain && (before || after) && amount.value <= kSmall;
    });
}

}  // namespace ledgerboard::intake
