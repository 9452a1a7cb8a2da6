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
