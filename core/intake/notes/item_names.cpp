#include "core/intake/notes/item_names.h"

#include <algorithm>

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
    if (lays && row.object == tables().objectNamed("tile") && found.object == kShower) {
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

// What is put on a thing and renewed there is named itself.
void nameRenewed(const ActRow& row, Found& found) {
    // Caulk is renewed; the tub is not mended.
    static const std::uint32_t kCaulk = tables().objectNamed("caulk");
    if (row.object == kCaulk &&
        (row.treatment == Treatment::Repair || row.treatment == Treatment::Replace)) {
        found.object = kCaulk;
    }
    // Insulation is laid, on whatever it may be; a fan's duct is run, through whatever it may be.
    static const std::uint32_t kInsulation = tables().objectNamed("insulation");
    static const std::uint32_t kDuct = tables().objectNamed("exhaust duct");
    if ((row.object == kInsulation && row.phrase == "insulate") || row.object == kDuct) {
        found.object = row.object;
    }
    static const std::uint32_t kStripping = tables().objectNamed("weatherstripping");
    if (row.object == kStripping && row.phrase.starts_with("weatherstrip")) {
        found.object = kStripping;
    }
}

// What is sealed is made to last or to hold water; what is reglazed gets a pane or a coat.
void nameSealed(const ActRow& row, Found& found) {
    // A floor is sealed to last, a gutter to hold water.
    const bool seals = row.phrase.find("seal") != std::string::npos;
    if (seals && found.treatment == Treatment::Refinish &&
        (tables().objects[found.object].trade == "roofing" ||
         tables().objects[found.object].trade == "gutters" ||
         tables().objects[found.object].name == "gutters")) {
        found.treatment = Treatment::Repair;
    }
    static const std::vector<std::uint32_t> kLaid = {
        tables().objectNamed("stair treads"), tables().objectNamed("driveway"),
        tables().objectNamed("walkway"),      tables().objectNamed("patio"),
        tables().objectNamed("deck boards"),  tables().objectNamed("concrete slab")};
    const bool laid = tables().objects[found.object].family == "floor" ||
                      std::find(kLaid.begin(), kLaid.end(), found.object) != kLaid.end();
    if (seals && laid && found.treatment == Treatment::Repair) {
        found.treatment = Treatment::Refinish;
    }
    // A pane is put back; a tub is coated.
    static const std::uint32_t kWindows = tables().objectNamed("windows");
    if (found.object == kWindows && row.phrase.find("reglaz") != std::string::npos &&
        found.treatment == Treatment::Refinish) {
        found.treatment = Treatment::Repair;
    }
}

// Wallpaper comes off, and what is done after that is done to the walls.
void namePapered(const ActRow& row, Found& found) {
    static const std::uint32_t kWallpaper = tables().objectNamed("wallpaper");
    static const std::uint32_t kPlaster = tables().objectNamed("plaster");
    static const std::uint32_t kDrywall = tables().objectNamed("drywall");
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    const bool boards = found.object == kPlaster || found.object == kDrywall;
    // Paint goes on the walls once the paper is off and the plaster is mended.
    if ((boards || found.object == kWallpaper) && found.treatment == Treatment::Refinish &&
        row.object == kWalls) {
        found.object = kWalls;
    }
    if (found.object != kWallpaper) {
        return;
    }
    // So are they mended.
    if (found.treatment == Treatment::Repair) {
        found.object = kWalls;
    }
    // Wallpaper is stripped off, not down.
    if (row.phrase.starts_with("strip")) {
        found.treatment = Treatment::Remove;
    }
}

}  // namespace

void nameRight(const ActRow& row, Found& found) {
    static const std::uint32_t kWallpaper = tables().objectNamed("wallpaper");
    static const std::uint32_t kFloor = tables().objectNamed("floor");
    static const std::uint32_t kWoodFloor = tables().objectNamed("wood floor");
    if (found.object == kFloor && found.treatment == Treatment::Refinish) {
        found.object = kWoodFloor;
    }
    nameSealed(row, found);
    // A stump that is ground is gone.
    static const std::uint32_t kStump = tables().objectNamed("stump");
    if (found.object == kStump && found.treatment == Treatment::Repair) {
        found.treatment = Treatment::Remove;
    }
    // Rubbish that is cleared out is gone.
    static const std::uint32_t kJunk = tables().objectNamed("junk");
    if (found.object == kJunk && found.treatment == Treatment::Clean) {
        found.treatment = Treatment::Remove;
    }
    // "Regrout the floor": of tile, then.
    static const std::uint32_t kTiled = tables().objectNamed("floor tile");
    if (found.object == kFloor && row.phrase.find("grout") != std::string::npos) {
        found.object = kTiled;
    }
    static const std::uint32_t kShower = tables().objectNamed("shower");
    if (found.object == kShower && row.phrase.find("grout") != std::string::npos) {
        found.object = tables().objectNamed("shower tile");
    }
    // New grout and new caulk mend what they are on.
    const std::string& thing = tables().objects[found.object].name;
    if ((thing == "grout" || thing == "caulk") &&
        (found.treatment == Treatment::Replace || found.treatment == Treatment::Refinish)) {
        found.treatment = Treatment::Repair;
    }
    nameRenewed(row, found);
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
        found.takenOut = true;
    }
    // A lamp that is rewired is mended; of anything else it is the wiring that is new.
    static const std::uint32_t kWiring = tables().objectNamed("wiring");
    if (row.object == kWiring && found.object != kWiring && found.treatment == Treatment::Replace) {
        const bool lamp = tables().objects[found.object].family == "light";
        found.treatment = lamp ? Treatment::Repair : Treatment::Replace;
        found.object = lamp ? found.object : kWiring;
    }
    namePapered(row, found);
    // "The pantry wants paint": its walls.
    static const std::uint32_t kWalls = tables().objectNamed("walls");
    const bool room =
        std::any_of(tables().spaces.begin(), tables().spaces.end(), [&](const SpaceRow& space) {
            return space.kind == SpaceKind::Room &&
                   space.name == tables().objects[found.object].name;
        });
    if (room && found.treatment == Treatment::Refinish && row.object == kWalls) {
        found.object = kWalls;
    }
}

bool isPartOf(const Sentence& sentence, const Spots& spots, const Span& span) {
    static const std::vector<std::string_view> kPieces = {
        "shingles", "slates", "boards", "bricks", "planks", "tiles", "pavers", "floorboards"};
    static const std::vector<std::string_view> kSections = {
        "section", "sections", "length", "lengths", "stretch", "piece", "pieces"};
    const auto text = [&](std::size_t at) {
        return at < sentence.tokens.size() ? sentence.tokens[at].plain : std::string();
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

}  // namespace ledgerboard::intake
