// Protects what a screen has said is kept: the program is killed (SIGKILL) at random moments while
// a thumb marks an item, and every mark that the screen confirmed stands in the book, which adds
// up. Four rounds; fifty with LEDGERBOARD_LONG=1. The moments come from a fixed seed.
#include <algorithm>
#include <gtest/gtest.h>
#include <random>

#include <QProcess>
#include <QTest>

#include "tests/support/fixed_chance.h"
#include "tests/ui/alder_street.h"

namespace ledgerboard::ui {
namespace {

constexpr int kStartMs = 20'000;

TEST(Kill, WhatTheScreenConfirmedIsInTheBook) {
    const ledgerboard::tests::TestFolder folder("kill");
    const AlderStreet house = buildAlderStreet(folder.file("alder.book"));
    std::mt19937 chance(20260515);
    std::size_t confirmed = marksOf(house, "cabinets").size();
    const int rounds = ledgerboard::tests::isLong() ? 50 : 4;
    for (int round = 0; round < rounds; ++round) {
        QProcess hammer;
        hammer.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        hammer.start(QStringLiteral(LEDGERBOARD_HAMMER),
                     {QString::fromStdString(house.path), QString::number(100 + round)});
        ASSERT_TRUE(hammer.waitForStarted(kStartMs));
        QByteArray said;
        while (!said.contains("ready\n")) {
            ASSERT_TRUE(hammer.waitForReadyRead(kStartMs)) << said.toStdString();
            said += hammer.readAllStandardOutput();
        }
        QTest::qWait(static_cast<int>(500 + chance() % 2'000));
        hammer.kill();
        ASSERT_TRUE(hammer.waitForFinished(kStartMs));
        said += hammer.readAllStandardOutput();
        confirmed += static_cast<std::size_t>(said.count("kept\n"));
        // One more may be on disk: kept, and not yet said.
        const std::size_t there = marksOf(house, "cabinets").size();
        EXPECT_GE(there, confirmed) << "round " << round;
        EXPECT_LE(there, confirmed + 1) << "round " << round;
        confirmed = std::max(confirmed, there);
        auto book = store::Book::open(house.path, ledgerboard::tests::fixedChance(9));
        ASSERT_TRUE(book.ok());
        EXPECT_TRUE(book.value().verify(false).value().findings.empty()) << "round " << round;
    }
    EXPECT_GT(confirmed, static_cast<std::size_t>(rounds / 2)) << "too little was marked to tell";
}

}  // namespace
}  // namespace ledgerboard::ui
