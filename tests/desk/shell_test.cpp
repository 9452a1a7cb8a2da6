// Protects the shell: a book opened, begun, or in trouble; dividers, undo and looking back by key;
// what others write into the book showing itself.
#include <filesystem>
#include <fstream>

#include <QFile>

#include "tests/desk/desk_test.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

using ShellTest = DeskTest;

TEST_F(ShellTest, AJobIsBegunFromNothingByKeys) {
    Hand& hand = lay("");
    EXPECT_EQ(hand.focus(), "jobName");
    hand.type("9 Birch Lane");
    hand.key(Qt::Key_Return);
    hand.type("1936");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.desk().jobName(), "9 Birch Lane");
    EXPECT_TRUE(hand.says("There is nothing to add up yet"));
    hand.key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(hand.said("jobNameCell"), (QStringList{"Job", "9 Birch Lane"}));
    // A second one, beside it in the same book.
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.type("3 Elm Court");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.desk().jobName(), "3 Elm Court");
    EXPECT_EQ(hand.desk().jobs().size(), 2u);
    // And taken back.
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Undone: start 3 Elm Court"));
    EXPECT_EQ(hand.desk().jobs().size(), 1u);
    hand.key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(hand.says("Done again: start 3 Elm Court"));
    EXPECT_EQ(hand.desk().jobs().size(), 2u);
}

TEST_F(ShellTest, AJobWithoutANameOrOfANonsenseYearIsRefusedInWords) {
    Hand& hand = lay("");
    hand.click("beginJob");
    EXPECT_TRUE(hand.says("Give the house a name"));
    hand.click("closeNote");
    hand.click("jobName");
    hand.type("9 Birch Lane");
    hand.key(Qt::Key_Return);
    hand.type("soon");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("four digits"));
    EXPECT_EQ(hand.desk().state(), desk::Desk::NoBook);
}

TEST_F(ShellTest, TroublesAreToldAndLeadOn) {
    Hand& hand = lay(folder_.file("nowhere.book"));
    EXPECT_EQ(hand.said("startTitle"), QStringList{"There is no book here"});
    EXPECT_FALSE(hand.says("Nothing in it was changed"));

    const std::string letter = folder_.file("letter.txt");
    std::ofstream(letter) << "Dear owner, this is a letter and no book at all.";
    hand.desk().open(QString::fromStdString(letter));
    hand.settle();
    EXPECT_EQ(hand.said("startTitle"), QStringList{"This is no book"});
    EXPECT_FALSE(hand.says("--book"));

    const std::string torn = folder_.file("torn.book");
    std::filesystem::copy_file(demo(), torn);
    std::filesystem::resize_file(torn, std::filesystem::file_size(torn) / 2);
    hand.desk().open(QString::fromStdString(torn));
    hand.settle();
    EXPECT_EQ(hand.said("startTitle"), QStringList{"This book is damaged"});
    EXPECT_TRUE(hand.says("cut short"));
    EXPECT_TRUE(hand.says("Nothing in it was changed"));

    // Mended from outside, it opens.
    std::filesystem::copy_file(demo(), torn, std::filesystem::copy_options::overwrite_existing);
    hand.click("tryAgain");
    EXPECT_TRUE(hand.says("14 Quince Row"));
}

TEST_F(ShellTest, TheHouseMadeUpForShowStandsInItsSeventhWeek) {
    Hand& hand = lay("");
    hand.click("openDemo");
    EXPECT_TRUE(hand.says("14 Quince Row"));
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("This week, to Friday 22 May 2026"));
    EXPECT_TRUE(hand.says("As of Friday 22 May 2026"));
    EXPECT_EQ(hand.said("headFigure").size(), 4);
    hand.click("todayLink");
    EXPECT_TRUE(hand.says("As of today"));
}

TEST_F(ShellTest, AnotherDayIsLookedAtByKey) {
    Hand& hand = open(demo());
    hand.key(Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(hand.focus(), "dayArea");
    hand.type("2026-05-01");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("This week, to Friday 1 May 2026"));
    hand.key(Qt::Key_L, Qt::ControlModifier);
    hand.type("5/6/26x");
    hand.key(Qt::Key_Return);
    EXPECT_FALSE(hand.desk().notKeptText().isEmpty());
}

TEST_F(ShellTest, WhatAnotherProgramWritesShowsItself) {
    const std::string book = demo();
    Hand& hand = open(book);
    const QStringList before = hand.said("headFigure");
    ASSERT_EQ(before.size(), 4);
    const auto answer =
        cli::CommandLine(book, 11)({"set", "kitchen/cabinets", "Estimate to finish", "9000"});
    ASSERT_EQ(answer.status, 0) << answer.err;
    EXPECT_TRUE(hand.wait([&] { return hand.said("headFigure") != before; }));
    hand.settle();
    const QStringList after = hand.said("headFigure");
    ASSERT_EQ(after.size(), 4);
    EXPECT_NE(after[0], before[0]);
}

TEST_F(ShellTest, TheKeysAreToldAndAnyKeyClosesThem) {
    Hand& hand = open(demo());
    hand.key(Qt::Key_F1);
    EXPECT_TRUE(hand.says("takes back what was done last"));
    hand.key(Qt::Key_Escape);
    EXPECT_FALSE(hand.says("takes back what was done last"));
}

TEST_F(ShellTest, TheReviewIsKeptOnceAndUndone) {
    Hand& hand = open(demo());
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Kept as the review of Fri 22 May"));
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("is kept already"));
    hand.click("closeNote");
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Undone: keep the review of 2026-05-22"));
}

TEST_F(ShellTest, ThePlaceIsFoundAgain) {
    const std::string book = demo();
    Laid laid;
    laid.settings = QString::fromStdString(folder_.file("desk.ini"));
    open(book, laid);
    hand_.reset();
    laid.book.clear();
    Hand& again = lay("", laid);
    again.desk().openLast();
    again.settle();
    EXPECT_EQ(again.desk().page(), "week");
    EXPECT_EQ(again.desk().jobName(), "14 Quince Row");
}

}  // namespace
}  // namespace ledgerboard::ui
