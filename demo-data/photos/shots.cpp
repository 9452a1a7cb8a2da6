#include "demo-data/photos/shots.h"

#include "demo-data/photos/scenes.h"

namespace ledgerboard::photos {

std::string Shot::fileName() const {
    std::string room;
    for (const char c : space) {
        room += c == ' ' ? '-' : static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    }
    return room + "--" + stage + "--" + takenAt.substr(0, 10) + "--" + spot + ".jpg";
}

std::vector<Shot> allShots() {
    return {
        {"Outside", "", "before", "2026-04-03T15:02:00Z", "gate", "The house from the gate", false,
         outsideBefore},
        {"Outside", "Outside/porch floor", "during", "2026-04-28T16:10:00Z", "gate",
         "Porch floor half open", false, outsidePorch},
        {"Outside", "Outside/trim", "during", "2026-05-22T16:05:00Z", "gate",
         "Trim half painted, ladder up at the north side", true, outsideTrim},
        {"Living room", "", "before", "2026-04-03T15:20:00Z", "corner-a", "Carpet, cracked ceiling",
         false, livingRoomBefore},
        {"Living room", "Living room/wood floor", "during", "2026-05-12T17:15:00Z", "corner-a",
         "Floor being sanded", false, livingRoomDuring},
        {"Living room", "Living room/wood floor", "after", "2026-05-22T16:20:00Z", "corner-a",
         "Floor finished, ceiling whole", true, livingRoomAfter},
        {"Dining room", "", "before", "2026-04-03T15:28:00Z", "corner-b",
         "Wallpaper and the wagon wheel", false, diningRoomBefore},
        {"Dining room", "Dining room/wallpaper", "during", "2026-04-22T18:40:00Z", "corner-b",
         "Paper coming off", false, diningRoomDuring},
        {"Dining room", "Dining room/wood floor", "after", "2026-05-22T16:26:00Z", "corner-b",
         "New light, floor finished", true, diningRoomAfter},
        {"Kitchen", "", "before", "2026-04-03T15:36:00Z", "corner-a", "As bought", false,
         kitchenBefore},
        {"Kitchen", "Whole house/wiring", "during", "2026-04-24T17:30:00Z", "corner-a",
         "Walls open, pipe and wire in", true, kitchenDuring},
        {"Kitchen", "Kitchen/cabinets", "after", "2026-05-22T16:33:00Z", "corner-a",
         "Cabinets hung, counter top still to come", true, kitchenAfter},
        {"Half bath", "", "before", "2026-04-03T15:44:00Z", "door", "As bought", false,
         halfBathBefore},
        {"Half bath", "Half bath/tile floor", "after", "2026-05-19T17:05:00Z", "door",
         "Floor tiled, toilet set", true, halfBathAfter},
        {"Stairs", "", "before", "2026-04-03T15:50:00Z", "foot", "Two spindles gone", false,
         stairsBefore},
        {"Stairs", "Stairs/stair treads", "during", "2026-05-22T16:45:00Z", "foot",
         "Three treads finished", true, stairsDuring},
        {"Front bedroom", "", "before", "2026-04-03T15:57:00Z", "corner-a", "As bought", false,
         frontBedroomBefore},
        {"Front bedroom", "Front bedroom/wood floor", "after", "2026-05-22T16:52:00Z", "corner-a",
         "Floor finished", true, frontBedroomAfter},
        {"Bathroom", "", "before", "2026-04-03T16:08:00Z", "door", "As bought", false,
         bathroomBefore},
        {"Bathroom", "Bathroom/subfloor", "during", "2026-04-16T17:50:00Z", "door",
         "New joists beside the rotten ones", true, bathroomOpened},
        {"Bathroom", "Bathroom/shower tile", "during", "2026-05-22T17:00:00Z", "door",
         "Shower half tiled", true, bathroomTiling},
        {"Attic", "Attic/wiring", "before", "2026-04-03T16:15:00Z", "hatch",
         "Knob and tube along the joists", false, atticBefore},
        {"Attic", "Attic/insulation", "after", "2026-05-01T16:30:00Z", "hatch",
         "Insulation in, depth stakes up", true, atticAfter},
        {"Basement", "Basement/electrical panel", "before", "2026-04-03T16:22:00Z", "panel-wall",
         "Fuse box", false, panelBefore},
        {"Basement", "Basement/electrical panel", "after", "2026-04-28T16:40:00Z", "panel-wall",
         "New panel, passed", true, panelAfter},
    };
}

}  // namespace ledgerboard::photos
