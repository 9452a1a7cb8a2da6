// Protects: lines of shorthand, bullets and labels are read for what they say by their form alone:
// arrows, prices, codes cut short, entries parted by blanks. How: short notes against the items a
// careful reader would list; what stands beside each rule and must not be caught by it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/intake/notes/abbreviations.h"

#include "tests/unit/intake/notes/notes_text.h"

namespace ledgerboard::intake {
namespace {

using testing::Contains;
using testing::IsSupersetOf;
using testing::Not;
using testing::UnorderedElementsAre;

// Notes are read as shorthand where enough words stand in them and few are small ones.
std::vector<std::string> terse(const std::string& lines) {
    return itemsOf(
        "ranch blt 1961, 3 bed 1.5 bath, 1310 sf, buy 142k, arv 231k, reno 41k tops, "
        "9 wks, 20 DOM, keys w/ agent, pwr off, flashlight walk, cold day, rain later, "
        "two trucks, no ladder, roof seen from road only\n\n" +
        lines);
}

TEST(NotesShorthand, AnArrowBeforeAPriceReplaces) {
    EXPECT_THAT(terse("KIT\nhood dead > 420\nsnk > 310   fct > 195\n"),
                UnorderedElementsAre("kitchen: replace range hood", "kitchen: replace sink",
                                     "kitchen: replace faucet"));
}

TEST(NotesShorthand, AnArrowBeforeAThingOrAStuffReplaces) {
    EXPECT_THAT(terse("LR\ncpt stained > LVP 132 sf @ 5.60\noutlet covers > white\n"),
                UnorderedElementsAre("living room: replace vinyl plank",
                                     "living room: replace cover plates"));
}

TEST(NotesShorthand, WhatIsGoneIsAdded) {
    EXPECT_THAT(terse("KIT\nfridge gone > 900\n"),
                UnorderedElementsAre("kitchen: add refrigerator"));
}

TEST(NotesShorthand, AnArrowBeforeAnOrderLeavesTheOrder) {
    EXPECT_THAT(terse("YARD\ngate sags > fix hinge\n"), UnorderedElementsAre("yard: repair gate"));
}

TEST(NotesShorthand, WhatStandsBetweenAThingAndItsOk) {
    EXPECT_THAT(terse("KIT\nDW '22 ok\nrng gas 4 burners ok\n"),
                UnorderedElementsAre("kitchen: keep dishwasher", "kitchen: keep stove"));
}

TEST(NotesShorthand, ALabelInCapitalsBeginsARoom) {
    EXPECT_THAT(terse("BR2 cpt 16 sy @ 34\nBR3 cpt 15 sy @ 34; win fogged > 480\n"),
                UnorderedElementsAre("bedroom 2: replace carpet", "bedroom 3: replace carpet",
                                     "bedroom 3: replace windows"));
}

TEST(NotesShorthand, LinesOfOneLengthAreNotOneParagraph) {
    EXPECT_THAT(terse("KIT\nsnk dented, repl\nfct drips, repl\nrng dead, repl\nfan ok\n"),
                UnorderedElementsAre("kitchen: replace sink", "kitchen: replace faucet",
                                     "kitchen: replace stove", "kitchen: keep range hood"));
}

TEST(NotesShorthand, ShortFormsByTheirLetters) {
    Abbreviations names;
    for (const std::string_view name :
         {"carpet", "surround", "vanity", "chandelier", "chandelier", "chandelier", "stockade",
          "baseboard", "baseboard", "baseboard", "plumber"}) {
        names.addName(name);
    }
    EXPECT_EQ(names.fullWord("crpt"), "carpet");
    EXPECT_EQ(names.fullWord("srnd"), "surround");
    EXPECT_EQ(names.fullWord("vnty"), "vanity");
    EXPECT_EQ(names.fullWord("chandl"), "chandelier");
    EXPECT_EQ(names.fullWord("baseb"), "baseboard");
    // Words of their own, and what is no word.
    EXPECT_EQ(names.fullWord("stock"), "");
    EXPECT_EQ(names.fullWord("bass"), "");
    EXPECT_EQ(names.fullWord("b"), "");
    EXPECT_EQ(names.fullWord("r2d2"), "");
}

TEST(NotesShorthand, TwoThatFitAreNone) {
    Abbreviations names;
    names.addName("grate");
    names.addName("grout");
    EXPECT_EQ(names.fullWord("grt"), "");
}

TEST(NotesShorthand, ThePersonIsNotTheThing) {
    EXPECT_THAT(itemsOf("Attic\n- air handler 2006, hvac guy to look\n"),
                UnorderedElementsAre("attic: inspect furnace"));
}

TEST(NotesShorthand, HowAThingIsAndWhatItIsMadeOf) {
    EXPECT_THAT(itemsOf("Kitchen\n- Oven built in, 2021, clean, stays.\n"),
                UnorderedElementsAre("kitchen: keep wall oven"));
    EXPECT_THAT(itemsOf("Living room\nCeiling: plaster, two long cracks. Patch it.\n"),
                UnorderedElementsAre("living room: repair ceiling"));
}

TEST(NotesShorthand, AnEntryThatIsAnOrderByItself) {
    EXPECT_THAT(
        itemsOf("Dining room: refinish floors, paint, new chandelier\n"),
        UnorderedElementsAre("dining room: refinish wood floor", "dining room: refinish walls",
                             "dining room: replace chandelier"));
}

TEST(NotesShorthand, ALabelKeepsItsLine) {
    EXPECT_THAT(itemsOf("Outside\n- fascia - peeling - paint\n"),
                Not(Contains("exterior: refinish siding")));
    EXPECT_THAT(itemsOf("Hall\nVanity top yellowed. New top.\n"),
                Contains("hall: replace vanity top"));
}

TEST(NotesShorthand, WhatIsMissingAndCounted) {
    EXPECT_THAT(itemsOf("Throughout\nNo smoke alarms anywhere, fit 4.\n"),
                Contains("whole house: add smoke alarms"));
}

TEST(NotesShorthand, TheSameButNotAll) {
    EXPECT_THAT(
        itemsOf("Front bedroom: replace the carpet, paint the walls.\n"
                "Back bedroom: same as the front bedroom but the carpet is fine.\n"),
        UnorderedElementsAre("front bedroom: replace carpet", "front bedroom: refinish walls",
                             "back bedroom: refinish walls", "back bedroom: keep carpet"));
}

// Labels in capitals: short forms that a table holds, letters left out, and strange ones.
TEST(NotesShorthand, LabelsSayWhereTheLineIs) {
    EXPECT_THAT(terse("KIT: new snk. rng ok\nLDG: cpt > new\nPBA: new van. fan dead > new\n"
                      "CNSRV: blinds out. paint walls\nPUMP RM: new lt\nWC: new seat. pnt walls\n"),
                IsSupersetOf({"hall: replace carpet", "primary bath: replace vanity",
                              "sunroom: remove blinds", "pump room: replace light fixtures",
                              "wc: refinish walls"}));
}

TEST(NotesShorthand, AStrangeLabelIsNotTheRoomBefore) {
    EXPECT_THAT(terse("KIT: new snk. new fct\nHALL: pnt walls\nQUOX: new lt fixture\n"
                      "FURNACE: tired > new\nLDG: new cpt\n\nlady nxt dr says new hvac sys\n"),
                testing::AllOf(Contains("quox: replace light fixtures"),
                               Contains("whole house: replace furnace"),
                               Not(Contains("hall: replace light fixtures"))));
}

TEST(NotesShorthand, FtIsFrontWhereNoFigureStandsBefore) {
    EXPECT_THAT(terse("FT PORCH: new rail 12 ft long. steps ok\nHALL: ft dr sticks, plane it. "
                      "newel loose, fix. cpt out\nKIT: new snk. lino up. hood dead > new\n"),
                testing::AllOf(Contains("front porch: replace railing"),
                               Contains("hall: repair front door")));
}

// "Toilet: …" is of the bathroom; a heading of that name is a room.
TEST(NotesShorthand, AThingThatGivesARoomItsName) {
    EXPECT_THAT(terse("BATH\n- toilet: rocks, reset it\n- new vanity\n"),
                Contains("bath: replace vanity"));
    EXPECT_THAT(terse("BATH\n- new vanity\n\nTOILET\n- paint the walls\n"),
                Contains("half bath: refinish walls"));
}

TEST(NotesShorthand, ALabelAfterABathroomIsNoFixture) {
    EXPECT_THAT(
        terse("KIT - new snk. new fct\nBTHRM - new tub. new van\nWC - sep. dr sticks, plane it. "
              "pnt walls\nHALL - new cpt. pnt walls\n"),
        Contains("wc: refinish walls"));
}

TEST(NotesShorthand, ALineOpensWithALabelInSmallLetters) {
    EXPECT_THAT(terse("lounge - pnt\nkit - tap new\nb1 - cpt new\nwc - cistern dead, new\n"
                      "bed 2 - pnt\nfront bed - pnt\nout - gutters new\n"),
                IsSupersetOf({"lounge: refinish walls", "kitchen: replace faucet",
                              "bedroom 1: replace carpet", "bedroom 2: refinish walls",
                              "front bedroom: refinish walls", "outside: replace gutters"}));
}

TEST(NotesShorthand, ALabelInCapitalsStandsBeforeAThing) {
    EXPECT_THAT(terse("LR walls pnt\nKIT cabs new\nBA tub ok\nBR1 pnt\nBR2 pnt\nHALL pnt\n"),
                IsSupersetOf({"living room: refinish walls", "kitchen: replace cabinets",
                              "bathroom: keep bathtub"}));
}

TEST(NotesShorthand, APlusBehindAThingAddsIt) {
    EXPECT_THAT(terse("BA: fan +. sckts +2\n"),
                UnorderedElementsAre("bathroom: add bath fan", "bathroom: add outlets"));
}

TEST(NotesShorthand, UsualCodesStandBeforeFigures) {
    EXPECT_THAT(terse("LR: oak flr F 210. win K.\nDIN: oak flr F 90. lt K\nHALL: flr F 30. dr K\n"),
                IsSupersetOf({"living room: refinish wood floor", "living room: keep windows",
                              "dining room: refinish wood floor"}));
}

TEST(NotesShorthand, RefinishingAloneIsOfTheFloor) {
    EXPECT_THAT(
        terse("BR1: refin 130. pnt\n"),
        UnorderedElementsAre("bedroom 1: refinish wood floor", "bedroom 1: refinish walls"));
}

TEST(NotesShorthand, LinesOpenWithTheirRoomsAndNoMark) {
    EXPECT_THAT(terse("hall cpt new\nlnge pnt\nkit tap new\nb1 cpt new\nb2 pnt\n"
                      "K sink new. MBA wc new\n"),
                IsSupersetOf({"hall: replace carpet", "living room: refinish walls",
                              "kitchen: replace faucet", "bedroom 1: replace carpet",
                              "bedroom 2: refinish walls", "kitchen: replace sink",
                              "primary bath: replace toilet"}));
}

TEST(NotesShorthand, KAloneKeepsWhereItIsUsedThroughout) {
    EXPECT_THAT(terse("kit - tap K. oven K. DW K\nhall - tile K. clos K\nbath - tub K. van K\n"),
                IsSupersetOf(
                    {"kitchen: keep faucet", "kitchen: keep dishwasher", "hall: keep floor tile"}));
}

TEST(NotesShorthand, RoomsThatAreOneGoByOneName) {
    EXPECT_THAT(terse("liv/din - cpt > LVP\nkit - tap new\nhall - pnt\nb1 - pnt\nb2 - pnt\n"),
                IsSupersetOf({"living room: replace vinyl plank"}));
    EXPECT_THAT(itemsOf("Living / dining\n- paint\n"),
                UnorderedElementsAre("living room: refinish walls"));
}

TEST(NotesShorthand, ALabelOfTwoShortWordsNamesASpace) {
    EXPECT_THAT(
        terse("brkfst nk: pnt\ncr sp: vapor barrier new\nkit: tap new\nhall: pnt\nbr1: pnt\n"),
        IsSupersetOf({"breakfast nook: refinish walls", "crawl space: replace vapor barrier"}));
}

TEST(NotesShorthand, AShedStandsInTheYard) {
    EXPECT_THAT(itemsOf("Outside\n- fence ok\n- shed stays\n"),
                UnorderedElementsAre("outside: keep fence", "outside: keep shed"));
}

TEST(NotesShorthand, WhichRoomMayStandBehindIt) {
    EXPECT_THAT(
        itemsOf("Bedroom front\n- paint\n\nBedroom back\n- new carpet\n"),
        UnorderedElementsAre("front bedroom: refinish walls", "back bedroom: replace carpet"));
}

// Protects: the rooms of two flats are told apart, and no figure of a room's name or of the thing
// beside it becomes a quantity.
TEST(NotesShorthand, FlatsByAFigure) {
    const Draft draft = draftOf(
        "U1 (dn)\nKIT: ctop lam 30sf, sink new\nBR1: paint, cpt 140sf\n\n"
        "U2 (up)\nKIT: ctop repl\nBR1: paint\n");
    std::vector<std::string> told;
    for (const DraftItem& item : draft.items) {
        const std::string quantity = item.quantity ? " " + item.quantity->toString() : "";
        told.push_back(item.space + ": " + item.treatment + " " + item.object + quantity);
    }
    EXPECT_THAT(
        told,
        IsSupersetOf({"unit 1 kitchen: replace sink", "unit 1 bedroom 1: replace carpet 140",
                      "unit 2 kitchen: replace countertop", "unit 2 bedroom 1: refinish walls"}));
}

// Protects: words cut with a stroke are read whole.
TEST(NotesShorthand, WordsWithAStroke) {
    EXPECT_THAT(itemsOf("LOUNGE\nA/C not cold, new\nc/pet new\nw/robe ok\n"),
                IsSupersetOf({"lounge: replace air conditioner", "lounge: replace carpet",
                              "lounge: keep closet"}));
}

}  // namespace
}  // namespace ledgerboard::intake
