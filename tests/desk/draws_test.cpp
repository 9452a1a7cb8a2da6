// Protects the pages Draws and Closing: a draw is asked for and taken back, the lender's lines and
// pictures are edited in place, the request is written as a PDF; each thing that stands between the
// job and finished leads to its page.
#include <QFile>

#include "core/store/book.h"

#include "tests/desk/desk_test.h"

namespace ledgerboard::ui {
namespace {

class DrawsTest : public DeskTest {
  protected:
    std::string book_;

    Hand& openPage() {
        book_ = demo();
        open(book_).key(Qt::Key_8, Qt::ControlModifier);
        return *hand_;
    }

    model::JobRows rows() { return jobIn(book_); }

    // Lines of a draw, and those that say what was allowed.
    int linesOf(int number) { return countOf(number, false); }

    int allowedOf(int number) { return countOf(number, true); }

    int countOf(int number, bool allowedOnly) {
        int count = 0;
        const auto job = rows();
        for (const auto& draw : job.draws) {
            for (const auto& line : job.draw_lines) {
                const bool isOne = draw.number == number && line.draw == draw.id;
                count += isOne && (!allowedOnly || line.allowed) ? 1 : 0;
            }
        }
        return count;
    }

    QObject* view(const char* name) {
        for (auto* object : hand_->view().rootObject()->findChildren<QObject*>()) {
            if (QString::fromLatin1(object->metaObject()->className()).contains(name)) {
                return object;
            }
        }
        return nullptr;
    }
};

TEST_F(DrawsTest, ADrawIsAskedForAndTakenBack) {
    Hand& hand = openPage();
    const QString total = hand.saidAcross("moneyFigure").value(0);
    ASSERT_NE(total, "0");
    hand.key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_EQ(rows().draws.size(), 4u);
    std::size_t fourth = 0;
    for (const auto& draw : rows().draws) {
        const bool isIt =
            draw.number == 4 && draw.askedOn == model::Date::fromYmd(2026, 5, 22).value();
        fourth += isIt ? 1 : 0;
    }
    EXPECT_EQ(fourth, 1u);
    EXPECT_EQ(hand.saidAcross("moneyFigure").value(0), "0") << "nothing is asked for twice";
    EXPECT_EQ(hand.said("cell0").value(0), "4") << "the page turns to the draws";
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Nothing can be asked for now; the lines say why."));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().draws.size(), 3u);
    EXPECT_EQ(hand.saidAcross("moneyFigure").value(0), total);
}

TEST_F(DrawsTest, MoneyThatCameIsEnteredInItsCell) {
    Hand& hand = openPage();
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("headingText"), (QStringList{"Asked for", "Funded"}));
    hand.keys(Qt::Key_Right, 3);
    hand.key(Qt::Key_Return);
    hand.type("2026-05-22");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("headingText"), QStringList{"Funded"});
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(hand.said("headingText"), (QStringList{"Asked for", "Funded"}));
}

// draw-lines.csv: of draw 1 the electrical line was asked at 60 and allowed at 48.
TEST_F(DrawsTest, WhatTheInspectorAllowedIsEnteredInItsCell) {
    Hand& hand = openPage();
    hand.key(Qt::Key_S, Qt::ControlModifier);  // a fourth draw
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_TRUE(hand.said("headingText").value(0).startsWith("Draw 4, asked "))
        << "the open one first";
    EXPECT_EQ(hand.said("cell3").value(0), "to come");
    EXPECT_TRUE(hand.says("What the inspector allowed is not entered yet"));
    const QString asked = hand.said("cell2").value(0);
    hand.keys(Qt::Key_Right, 3);
    hand.key(Qt::Key_Return);
    hand.type("101");
    hand.key(Qt::Key_Return);
    EXPECT_FALSE(hand.desk().notKeptText().isEmpty()) << "no percent";
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_Return);
    hand.type("12");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("cell3").value(0), "12");
    EXPECT_EQ(allowedOf(4), 1);
    hand.key(Qt::Key_Up);  // Enter went on to the next line
    hand.key(Qt::Key_Right);
    hand.key(Qt::Key_Return);
    hand.type("Half of it is not fixed");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("cell4").value(0), "Half of it is not fixed");
    // The others as they were asked, in one.
    const int lines = linesOf(4);
    ASSERT_GT(lines, 1);
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(allowedOf(4), lines);
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Each line of this draw says what was allowed."));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(allowedOf(4), 1);
    hand.type("electrical 60 48");
    EXPECT_EQ(hand.said("cell4"), QStringList{"Panel not passed yet"});
    EXPECT_TRUE(hand.says("60\u00a0% was asked and 48\u00a0% allowed"));
}

TEST_F(DrawsTest, ALenderLineIsEditedAndARefusalSaysWhy) {
    Hand& hand = openPage();
    hand.type("tile");
    EXPECT_TRUE(hand.says("Refused before: 65")) << "draw-lines.csv, draw 3";
    hand.keys(Qt::Key_Right, 2);
    hand.key(Qt::Key_Return);
    hand.type("120");
    hand.key(Qt::Key_Return);
    EXPECT_FALSE(hand.desk().notKeptText().isEmpty());
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_Return);
    hand.type("80");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("cell2"), QStringList{"80"});
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(hand.said("cell2"), QStringList{"100"});
}

TEST_F(DrawsTest, TheRequestIsAPdf) {
    Hand& hand = openPage();
    auto* draws = view("DrawsView");
    ASSERT_NE(draws, nullptr);
    const QString path = hand.folder() + QStringLiteral("/request.pdf");
    bool done = false;
    QMetaObject::invokeMethod(draws, "print", Q_RETURN_ARG(bool, done), Q_ARG(QString, path));
    ASSERT_TRUE(done);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    QMetaObject::invokeMethod(draws, "print", Q_RETURN_ARG(bool, done),
                              Q_ARG(QString, QStringLiteral("/nowhere/at/all.pdf")));
    EXPECT_FALSE(done);
    EXPECT_TRUE(hand.says("/nowhere/at/all.pdf could not be written"));
}

TEST_F(DrawsTest, EmptyPagesSayHowToBegin) {
    Hand& hand = lay("");
    hand.type("9 Birch Lane");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_8, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"There is no loan for the work"});
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("A draw is asked for by the lender's lines, and there are none"));
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"No draw was asked for yet"});
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"No line of a draw was asked for yet"});
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"There are no pictures of the site"});
    hand.key(Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"There is nothing to finish yet"});
}

TEST_F(DrawsTest, WhatStandsBetweenLeadsToItsPage) {
    Hand& hand = openPage();
    hand.key(Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(hand.said("closingTitle"), QStringList{"Closing"});
    EXPECT_EQ(hand.focus(), "stands");
    hand.key(Qt::Key_Return);  // the first part are items of the scope
    EXPECT_EQ(hand.desk().page(), "scope");
    EXPECT_EQ(hand.said("filterText").size(), 1);
    EXPECT_EQ(hand.said("cell2").size(), 1) << "the item alone";
}

}  // namespace
}  // namespace ledgerboard::ui
