// Protects the walk through the house: one swipe to the next space, the strip, the house, notes, a
// job begun from nothing, and that a crew lead's phone has no way to money.
#include <QFile>
#include <QTranslator>

#include "core/compute/caution_rules.h"

#include "tests/ui/phone_test.h"

namespace ledgerboard::ui {
namespace {

class WalkTest : public PhoneTest {
  protected:
    // The name of the space on screen.
    QString here() {
        QQuickItem* title = thumb_->find(QStringLiteral("title"));
        return title == nullptr ? QString() : title->property("text").toString();
    }
};

TEST_P(WalkTest, ASwipeLeadsToTheNextSpaceAndBack) {
    Thumb& thumb = hold();
    EXPECT_EQ(here(), "Kitchen");
    thumb.swipe(true);
    EXPECT_EQ(here(), "Hall bath");
    thumb.swipe(true);
    EXPECT_EQ(here(), "Dining room");
    thumb.swipe(false);
    EXPECT_EQ(here(), "Hall bath");
    EXPECT_EQ(thumb.taps(), 0);
}

TEST_P(WalkTest, WhatASpaceStillNeedsIsThereWithoutATap) {
    Thumb& thumb = hold();
    EXPECT_TRUE(thumb.says("2 items left, 1 to start."));
    EXPECT_TRUE(thumb.says("cabinets"));
    EXPECT_TRUE(thumb.says("closet shelves"));
}

TEST_P(WalkTest, AChipOfTheStripLeadsStraightThere) {
    Thumb& thumb = hold();
    thumb.tap("chipDR");
    EXPECT_EQ(here(), "Dining room");
    EXPECT_EQ(thumb.taps(), 1);
}

TEST_P(WalkTest, TheHouseShowsEverySpaceAndLeadsToIt) {
    Thumb& thumb = hold();
    thumb.tap("wholeHouse");
    EXPECT_EQ(here(), "14 Alder Street");
    EXPECT_TRUE(thumb.says("Fri 15 May, week 6"));
    thumb.tapText("space", "Hall bath");
    EXPECT_EQ(here(), "Hall bath");
}

TEST_P(WalkTest, InTheHouseAToolFirstAsksWhere) {
    Thumb& thumb = hold();
    thumb.tap("wholeHouse");
    thumb.resetCount();
    thumb.tap("tool-mark");
    thumb.tapText("space", "Kitchen");
    thumb.tap("finish");
    EXPECT_EQ(thumb.taps(), 3);  // one more than from the space
    EXPECT_EQ(marksOf(house_, "cabinets").size(), 2u);
}

TEST_P(WalkTest, TheLastSpaceIsOnScreenAgain) {
    hold().tap("chipDR");
    const QString id = thumb_->preferences().lastSpace();
    EXPECT_FALSE(id.isEmpty());
}

TEST_P(WalkTest, ANoteIsKept) {
    Thumb& thumb = hold();
    thumb.scrollTo("addNote");
    thumb.tap("addNote");
    thumb.type("noteText", "soft spot at the sink");
    thumb.tap("keepNote");
    const auto rows = rowsOf(house_);
    ASSERT_EQ(rows.notes.size(), 1u);
    EXPECT_EQ(rows.notes[0].text, "soft spot at the sink");
    EXPECT_FALSE(rows.notes[0].space.isNil());
}

TEST_P(WalkTest, AJobIsBegunFromNothing) {
    Thumb& thumb = hold("");
    thumb.tap("begin");
    thumb.type("jobName", "9 Birch Lane");
    thumb.type("builtYear", "1936");
    thumb.tap("room-Entry");
    thumb.tap("room-Kitchen");
    thumb.tap("beginJob");
    EXPECT_TRUE(thumb.wait([&] { return here() == "Entry"; }));
    thumb.swipe(true);
    EXPECT_EQ(here(), "Kitchen");
    EXPECT_TRUE(thumb.says("Nothing to be done here yet."));
}

// Whoever has no house yet looks at the one of the demo, in its seventh week today: begun on Monday
// 6 April 2026, so on Friday 15 May, a week before its own Friday, on Monday 30 March.
TEST_P(WalkTest, TheDemoHouseIsThereForWhoHasNone) {
    Thumb& thumb = hold("");
    thumb.tap("openDemo");
    ASSERT_TRUE(thumb.wait([&] { return thumb.book().state() == phone::JobBook::Open; }));
    const auto& rows = thumb.book().now()->rows;
    EXPECT_EQ(rows.job.name, "14 Quince Row");
    EXPECT_EQ(rows.job.beginOn, model::Date::parse("2026-03-30").value());
    EXPECT_GT(rows.items.size(), 50U);
    EXPECT_TRUE(thumb.book().isOwner());
}

TEST_P(WalkTest, AJobWithoutANameIsNotBegunAndSaysWhy) {
    Thumb& thumb = hold("");
    thumb.tap("begin");
    thumb.tap("beginJob");
    EXPECT_TRUE(thumb.says("Give the house a name"));
    EXPECT_EQ(thumb.book().state(), phone::JobBook::NoBook);
}

TEST_P(WalkTest, ABookThatIsNoneSaysSo) {
    Thumb& thumb = hold("/nowhere/at/all.book");
    EXPECT_TRUE(thumb.says("The book does not open"));
    EXPECT_FALSE(thumb.all("begin").empty());
}

TEST_P(WalkTest, InSpanishItSaysItAsCrewsDo) {
    Thumb& thumb = hold();
    thumb.preferences().setLanguage("es");
    thumb.settle();
    EXPECT_TRUE(thumb.says("Faltan 2 trabajos, 1 sin empezar."));
    EXPECT_TRUE(thumb.says("Cambiar"));
    thumb.tapText("item", "cabinets");
    EXPECT_TRUE(thumb.says("Terminado"));
    EXPECT_TRUE(thumb.says("25\u00a0% el mar 12 may"));
}

// Whatever is on a screen is translated: no message of the file is unfinished.
TEST(Translations, NoneIsUnfinished) {
    for (const char* name : {"mobile/phone_es.ts", "mobile/phone_en.ts", "core/qml/shared_es.ts"}) {
        QFile file(QStringLiteral(LEDGERBOARD_SOURCES "/") + QLatin1String(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        const QByteArray all = file.readAll();
        EXPECT_TRUE(all.contains("<translation>")) << name;
        EXPECT_FALSE(all.contains("type=\"unfinished\"")) << name;
    }
}

// A refusal of core as well as one of the screens.
TEST_P(WalkTest, InSpanishARefusalIsSpanish) {
    Thumb& thumb = hold("");
    thumb.preferences().setLanguage("es");
    thumb.tap("begin");
    thumb.tap("beginJob");
    EXPECT_TRUE(thumb.says("Póngale un nombre a la casa"));
    EXPECT_FALSE(thumb.says("en inglés"));
}

TEST_P(WalkTest, ACrewLeadsPhoneHasNoWayToMoney) {
    const AlderStreet lead = buildLeadsCopy(folder_.file("lead.book"));
    Thumb& thumb = hold(lead.path);
    EXPECT_FALSE(thumb.book().isOwner());
    EXPECT_TRUE(thumb.says("cabinets"));
    EXPECT_TRUE(thumb.all("addNote").empty());  // notes are the owner's
    EXPECT_TRUE(thumb.all("tool-receipt").empty());
    EXPECT_TRUE(thumb.all("tool-punch").empty());
    thumb.tap("wholeHouse");
    for (const auto& text : thumb.texts()) {
        EXPECT_FALSE(text.contains("budget") || text.contains("cost") || text.contains("1,000"))
            << text.toStdString();
    }
    thumb.tapText("space", "Kitchen");
    thumb.tapText("item", "cabinets");
    thumb.tap("finished");
    EXPECT_TRUE(thumb.says("Cabinets: done")) << thumb.texts().join(" | ").toStdString();
    EXPECT_EQ(marksOf(lead, "cabinets").back().percent, model::Percent::whole());
}

INSTANTIATE_TEST_SUITE_P(Sizes, WalkTest, everySize());

}  // namespace
}  // namespace ledgerboard::ui
