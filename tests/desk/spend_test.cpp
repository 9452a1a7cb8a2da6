// Protects the page Spend: entries by real keys, kept as one and undone; a said amount is corrected
// by a row in place of the old one; what a phone began is completed; lines of the bank are filed,
// made new rows or left out, each undone; rules are listed and dropped; a bank's download is looked
// at first and then brought in whole, or stopped, and a wrong file changes nothing.
#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QTest>

#include "core/compute/as_of.h"
#include "core/intake/bank/bring_bank.h"
#include "core/intake/bank/settle_line.h"
#include "core/store/photos.h"

#include "tests/desk/desk_test.h"

namespace ledgerboard::ui {
namespace {

model::Date may(int day) {
    return model::Date::fromYmd(2026, 5, day).value();
}

intake::StatementLine lineOf(const char* id, int day, std::int64_t minor, const char* payee) {
    return {"4417", id, may(day), model::Money::fromMinor(minor), payee, {}};
}

class SpendTest : public DeskTest {
  protected:
    std::string book_;

    // With the program that knows OFX, or another in its place; on the day of the download.
    Hand& openWithProgram(const QString& program = QStringLiteral(LEDGERBOARD_OFX)) {
        book_ = demo();
        Laid laid;
        laid.bankProgram = program;
        laid.now = model::Instant::parse("2026-05-31T17:00Z").value();
        open(book_, laid).key(Qt::Key_7, Qt::ControlModifier);
        return *hand_;
    }

    // Looks into the file by keys alone.
    void tryFile(const QString& path) {
        hand_->key(Qt::Key_O, Qt::ControlModifier);
        hand_->type(path);
        hand_->key(Qt::Key_Return);
        (void)hand_->wait([this] { return hand_->all("stopDownload").empty(); });
        hand_->settle();
    }

    QString file(const char* name, const QByteArray& bytes) {
        const QString path = QString::fromStdString(folder_.file(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }

    Hand& openPage(const std::vector<intake::StatementLine>& lines = {}) {
        book_ = demo();
        if (!lines.empty()) {
            auto book = store::Book::open(book_, ledgerboard::tests::fixedChance(5));
            EXPECT_TRUE(book.ok());
            const auto job = book.value().rows<model::Job>().value().front().id;
            const auto brought = intake::bringBank(book.value(), job, {"USD", lines}, "may.ofx",
                                                   false, noonOnThatFriday());
            EXPECT_TRUE(brought.ok());
        }
        open(book_).key(Qt::Key_7, Qt::ControlModifier);
        return *hand_;
    }

    model::JobRows rows() { return compute::withoutVoided(jobIn(book_)); }

    std::vector<model::Spend> of(const std::string& payee, std::int64_t minor) {
        std::vector<model::Spend> found;
        for (const auto& spend : rows().spends) {
            if (spend.payee == payee && spend.amount == model::Money::fromMinor(minor)) {
                found.push_back(spend);
            }
        }
        return found;
    }

    void undo() { hand_->key(Qt::Key_Z, Qt::ControlModifier); }
};

// spend.csv: "receipt,2026-05-21,,Whole house/baseboards,,,Hardware store", without an amount.
TEST_F(SpendTest, WhatWasBegunStandsFirstAndIsCompleted) {
    Hand& hand = openPage();
    EXPECT_EQ(hand.said("headingText").value(0), "To be completed");
    EXPECT_EQ(hand.said("cell4").value(0), "to come");
    EXPECT_TRUE(hand.says("1 row without an amount: counted nowhere until it is entered."));
    const auto before = rows().spends.size();
    hand.keys(Qt::Key_Right, 4);
    hand.key(Qt::Key_Return);
    hand.type("18.40");
    hand.key(Qt::Key_Return);
    ASSERT_EQ(of("Hardware store", 1'840).size(), 1u);
    EXPECT_EQ(rows().spends.size(), before) << "a row in place of it";
    EXPECT_FALSE(hand.said("headingText").contains("To be completed"));
    undo();
    EXPECT_TRUE(of("Hardware store", 1'840).empty());
    EXPECT_EQ(hand.said("headingText").value(0), "To be completed");
}

// A fact that is said is never edited: a row in place of it is written, and its payment follows.
TEST_F(SpendTest, ASaidAmountIsCorrectedByARowInItsPlace) {
    Hand& hand = openPage();
    hand.type("invoice tile crew 2,780");
    ASSERT_EQ(hand.said("cell4"), QStringList{"2,780"});
    const auto old = of("Tile crew", 278'000);
    ASSERT_EQ(old.size(), 1u);
    const auto count = rows().spends.size();
    hand.keys(Qt::Key_Right, 4);
    hand.key(Qt::Key_Return);
    hand.type("2700");
    hand.key(Qt::Key_Return);
    const auto fresh = of("Tile crew", 270'000);
    ASSERT_EQ(fresh.size(), 1u);
    EXPECT_EQ(fresh[0].voids, old[0].id);
    EXPECT_EQ(rows().spends.size(), count);
    std::size_t payments = 0;
    for (const auto& spend : rows().spends) {
        payments += spend.pays == fresh[0].id ? 1 : 0;
        EXPECT_NE(spend.pays, old[0].id);
    }
    EXPECT_EQ(payments, 1u);
    undo();
    EXPECT_EQ(of("Tile crew", 278'000).size(), 1u);
    EXPECT_TRUE(of("Tile crew", 270'000).empty());
}

TEST_F(SpendTest, ABillIsEnteredWithTheBankLineBesideIt) {
    Hand& hand = openPage({lineOf("bk-9", 21, -8'125, "STONE AND SAND 12")});
    EXPECT_TRUE(hand.said("moneyFigure").size() == 5);
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.type("invo");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Down);  // the day is today's
    hand.type("Sand yard");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.all("bankFit").empty());
    hand.type("81.25");
    hand.key(Qt::Key_Return);
    ASSERT_EQ(hand.all("bankFit").size(), 1u);
    EXPECT_TRUE(hand.says("the same sum"));
    hand.click("bankFit");
    EXPECT_TRUE(hand.says("goes with it: the same sum"));
    hand.click("formKeep");
    // The invoice, and its payment on the bank's day with the bank's id.
    const auto made = of("Sand yard", 8'125);
    ASSERT_EQ(made.size(), 2u);
    const auto& invoice = made[0].type == model::SpendKind::Invoice ? made[0] : made[1];
    const auto& payment = made[0].type == model::SpendKind::Invoice ? made[1] : made[0];
    EXPECT_EQ(payment.type, model::SpendKind::Payment);
    EXPECT_EQ(payment.pays, invoice.id);
    EXPECT_EQ(payment.spentOn, may(21));
    EXPECT_EQ(payment.bankId, "bk-9");
    EXPECT_TRUE(intake::waitingLines(rows()).empty());
    undo();
    EXPECT_TRUE(of("Sand yard", 8'125).empty());
    EXPECT_EQ(intake::waitingLines(rows()).size(), 1u) << "the line waits again";
}

TEST_F(SpendTest, ALineOfAnotherSumIsRefusedAndNothingIsKept) {
    Hand& hand = openPage({lineOf("bk-9", 21, -8'125, "SAND YARD 12")});
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.keys(Qt::Key_Down, 2);
    hand.type("Sand yard");
    hand.key(Qt::Key_Return);
    hand.type("80");
    hand.key(Qt::Key_Return);
    ASSERT_TRUE(hand.tabTo("bankFit"));
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("The bank's line is of another sum"));
    EXPECT_TRUE(of("Sand yard", 8'000).empty());
    hand.click("bankFit");  // and without it
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(of("Sand yard", 8'000).size(), 1u);
}

TEST_F(SpendTest, AnEntryWithoutAKindOrWithTooMuchTaxIsRefused) {
    Hand& hand = openPage();
    const auto count = rows().spends.size();
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.key(Qt::Key_Delete);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Kind: say whether it is an invoice"));
    hand.type("fee");
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Down, 2);
    hand.type("10");
    hand.key(Qt::Key_Return);
    hand.type("11");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Tax: it is more than the whole sum"));
    EXPECT_EQ(rows().spends.size(), count);
}

// plumbing-4 of spend.csv: 2,080.00 of which 208.00 is held, so 1,872.00 is to be paid.
TEST_F(SpendTest, AnInvoiceIsPaidForWhatIsOpen) {
    Hand& hand = openPage();
    hand.type("invoice plumbing crew 2,080");
    EXPECT_EQ(hand.said("cell7"), QStringList{"1,872"});
    hand.key(Qt::Key_P, Qt::ControlModifier);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    const auto paid = of("Plumbing crew", 187'200);
    ASSERT_EQ(paid.size(), 1u);
    EXPECT_EQ(paid[0].pays, of("Plumbing crew", 208'000).at(0).id);
    undo();
    EXPECT_TRUE(of("Plumbing crew", 187'200).empty());
    hand.type("receipt");
}

TEST_F(SpendTest, LinesOfTheBankAreFiledLeftOutAndUndone) {
    Hand& hand = openPage({lineOf("bk-1", 19, -4'000, "QUARRY OFFICE 3"),
                           lineOf("bk-2", 20, -3'100, "CORNER GROCERY 9"),
                           lineOf("bk-3", 21, -3'300, "CORNER GROCERY 9")});
    hand.key(Qt::Key_E, Qt::ControlModifier);
    ASSERT_EQ(hand.said("cell2").size(), 3);
    EXPECT_EQ(hand.said("cell3").value(0), "not known");
    // Nothing to take, and a name that is none.
    hand.key(Qt::Key_T, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("nothing in the book says what that line is"));
    hand.key(Qt::Key_F, Qt::ControlModifier);
    hand.type("zeppelin");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.desk().notKeptText().contains("zeppelin"));
    EXPECT_EQ(hand.focus(), "fileTo");
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_F, Qt::ControlModifier);
    hand.type("outside/chimney");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(intake::waitingLines(rows()).size(), 2u);
    EXPECT_EQ(rows().payee_rules.size(), 1u);
    EXPECT_TRUE(hand.says("From now on"));
    // The grocery is not ours: the other line of it goes with it.
    hand.key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_TRUE(intake::waitingLines(rows()).empty());
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"No line of the bank waits"});
    // The rules learnt are listed; one is dropped, and comes back.
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("cell0").size(), 2);
    hand.key(Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(rows().payee_rules.size(), 1u);
    undo();
    EXPECT_EQ(rows().payee_rules.size(), 2u);
    undo();
    undo();
    EXPECT_EQ(intake::waitingLines(rows()).size(), 3u);
    EXPECT_TRUE(rows().payee_rules.empty());
}

TEST_F(SpendTest, ALineBecomesANewRow) {
    Hand& hand = openPage({lineOf("bk-1", 19, -4'000, "QUARRY OFFICE 3")});
    hand.key(Qt::Key_E, Qt::ControlModifier);
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("goes with it: the same sum and payee"));
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    const auto made = of("QUARRY OFFICE 3", 4'000);
    ASSERT_EQ(made.size(), 1u);
    EXPECT_EQ(made[0].bankId, "bk-1");
    EXPECT_EQ(made[0].spentOn, may(19));
    EXPECT_TRUE(intake::waitingLines(rows()).empty());
    undo();
    EXPECT_EQ(intake::waitingLines(rows()).size(), 1u);
}

// As a phone leaves it: a receipt with a picture and no amount.
TEST_F(SpendTest, ThePictureOfAReceiptStandsBesideItsFields) {
    book_ = demo();
    {
        QImage image(60, 90, QImage::Format_RGB32);
        image.fill(Qt::white);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        ASSERT_TRUE(buffer.open(QIODevice::WriteOnly));
        ASSERT_TRUE(image.save(&buffer, "JPG"));
        const auto digest = store::Photos(book_).keep(bytes.toStdString());
        ASSERT_TRUE(digest.ok());
        auto book = store::Book::open(book_, ledgerboard::tests::fixedChance(5));
        ASSERT_TRUE(book.ok());
        model::Photo photo;
        photo.id = book.value().newId<model::Kind::Photo>(noonOnThatFriday());
        photo.job = book.value().rows<model::Job>().value().front().id;
        photo.purpose = model::Purpose::Receipt;
        photo.digest = digest.value();
        model::Spend receipt;
        receipt.id = book.value().newId<model::Kind::Spend>(noonOnThatFriday());
        receipt.job = photo.job;
        receipt.type = model::SpendKind::Receipt;
        receipt.spentOn = may(22);
        receipt.payee = "Paper shop";
        receipt.photo = photo.id;
        store::Action action("receipt");
        action.add(photo);
        action.add(receipt);
        ASSERT_TRUE(book.value().commit(action, noonOnThatFriday()).ok());
    }
    Hand& hand = open(book_);
    hand.key(Qt::Key_7, Qt::ControlModifier);
    hand.type("paper shop");
    EXPECT_TRUE(hand.says("Begun with a picture; enter its amount"));
    hand.key(Qt::Key_I, Qt::ControlModifier);
    EXPECT_EQ(hand.all("paperPicture").size(), 1u);
    // Two facts one after the other: the fields stay open on the row in its place.
    hand.keys(Qt::Key_Down, 3);
    hand.type("12.50");
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Up, 3);
    hand.key(Qt::Key_Return);
    hand.type("2026-05-21");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.all("paperPicture").size(), 1u);
    const auto made = of("Paper shop", 1'250);
    ASSERT_EQ(made.size(), 1u);
    EXPECT_EQ(made[0].spentOn, may(21));
    undo();
    undo();
    EXPECT_TRUE(of("Paper shop", 1'250).empty());
}

TEST_F(SpendTest, PapersAreTickedAsSeen) {
    Hand& hand = openPage();
    hand.type("not seen");
    const auto count = hand.said("cell8").size();
    ASSERT_GT(count, 0);
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(hand.said("cell8").size(), count - 1);
    undo();
    EXPECT_EQ(hand.said("cell8").size(), count);
}

TEST_F(SpendTest, AnEmptyPageSaysHowToBegin) {
    Hand& hand = lay("");
    hand.type("9 Birch Lane");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_7, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"Nothing was spent yet"});
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"No line of the bank waits"});
    hand.key(Qt::Key_E, Qt::ControlModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"No rule was learnt yet"});
}

// bank-may.ofx has ten lines. The plumbing crew's 1,872.00 is what is open of plumbing-4 (2,080.00
// less 208.00 held); the corner grocery stands nowhere in the book; three lines (bk-0519-1,
// bk-0520-1, bk-0522-1) are those of rows of spend.csv already.
TEST_F(SpendTest, ADownloadIsLookedAtAndThenBroughtIn) {
    Hand& hand = openWithProgram();
    const QString may = QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx");
    tryFile(may);
    ASSERT_EQ(hand.said("bankTitle"), QStringList{"bank-may.ofx: 10 lines of the bank"});
    EXPECT_TRUE(rows().bank_lines.empty()) << "nothing comes in before it is said";
    EXPECT_TRUE(hand.said("downloadTaken").contains("not known"));
    EXPECT_TRUE(hand.says("Payment for Plumbing"))
        << hand.said("downloadTaken").join("; ").toStdString();
    EXPECT_EQ(hand.focus(), "bringDownload");
    const auto spends = rows().spends.size();
    hand.key(Qt::Key_Return);
    hand.settle();
    EXPECT_EQ(rows().bank_lines.size(), 7u);
    EXPECT_EQ(of("PLUMBING CREW", 187'200).size() + of("Plumbing crew", 187'200).size(), 1u);
    EXPECT_GT(rows().spends.size(), spends);
    EXPECT_TRUE(hand.desk().keptText().startsWith("bank-may.ofx: "))
        << hand.desk().keptText().toStdString();
    // The bank's part is open, with what waits.
    EXPECT_EQ(static_cast<std::size_t>(hand.said("cell2").size()),
              intake::waitingLines(rows()).size());
    // Once more: all of it is there.
    tryFile(may);
    EXPECT_EQ(hand.said("bankSum"), QStringList{"All of it is in the book already."});
    EXPECT_TRUE(hand.all("bringDownload").empty());
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.all("bankTitle").empty());
    undo();
    EXPECT_TRUE(rows().bank_lines.empty()) << "all of it at once";
    EXPECT_EQ(rows().spends.size(), spends);
}

TEST_F(SpendTest, ADownloadIsBroughtInByMouseOrLeft) {
    Hand& hand = openWithProgram();
    hand.click("part1");
    hand.click("nothingBegin");
    hand.type(QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx"));
    hand.key(Qt::Key_Return);
    ASSERT_TRUE(hand.find("bringDownload") != nullptr);
    hand.click("bringNoDownload");
    EXPECT_TRUE(rows().bank_lines.empty());
    hand.click("fetchLink");
    EXPECT_EQ(hand.focus(), "bankFile");
    hand.type(QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx"));
    hand.key(Qt::Key_Return);
    ASSERT_TRUE(hand.find("bringDownload") != nullptr);
    hand.click("bringDownload");
    hand.settle();
    EXPECT_EQ(rows().bank_lines.size(), 7u);
}

// Qt's own dialog, where the machine has none: it must be there with all that it needs.
TEST_F(SpendTest, AFileIsChosenInADialog) {
    Hand& hand = openWithProgram();
    hand.key(Qt::Key_O, Qt::ControlModifier);
    hand.click("chooseDownload");
    const auto isShown = [&] {
        for (const auto* object : hand.view().rootObject()->findChildren<QObject*>()) {
            if (object->inherits("QQuickFileDialog") &&
                object->property("title").toString() == "A bank's download") {
                return object->property("visible").toBool();
            }
        }
        return false;
    };
    EXPECT_TRUE(hand.wait(isShown, 3'000));
    EXPECT_TRUE(rows().bank_lines.empty());
}

TEST_F(SpendTest, AWrongFileIsToldAndNothingIsChanged) {
    Hand& hand = openWithProgram();
    const auto before = hand.desk().position();
    hand.key(Qt::Key_O, Qt::ControlModifier);
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("bankRefused"), QStringList{"Name the file, or choose it."});
    const auto refusedOf = [&](const QString& path) {
        hand.key(Qt::Key_Escape);
        tryFile(path);
        EXPECT_EQ(hand.focus(), "bankFile") << "another can be named at once";
        EXPECT_TRUE(hand.all("bringDownload").empty());
        return hand.said("bankRefused").value(0);
    };
    EXPECT_TRUE(refusedOf("/no/such.ofx").startsWith("Nothing is at /no/such.ofx"));
    EXPECT_TRUE(refusedOf(QString::fromStdString(folder_.file(""))).contains("is a folder"));
    EXPECT_TRUE(refusedOf(file("plain.txt", "only words")).contains("is no bank's download"));
    QFile whole(QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx"));
    ASSERT_TRUE(whole.open(QIODevice::ReadOnly));
    const QByteArray bytes = whole.readAll();
    EXPECT_TRUE(refusedOf(file("cut.ofx", bytes.left(900))).contains("cut.ofx"));
    QByteArray euros = bytes;
    euros.replace("<CURDEF>USD", "<CURDEF>EUR");
    EXPECT_TRUE(refusedOf(file("euros.ofx", euros)).contains("its amounts are in EUR"));
    hand.settle();
    EXPECT_EQ(hand.desk().position(), before);
    // And then the right one.
    hand.key(Qt::Key_Escape);
    tryFile(QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx"));
    EXPECT_EQ(hand.all("bringDownload").size(), 1u);
}

TEST_F(SpendTest, WithoutItsProgramADownloadIsRefusedByName) {
    Hand& hand = openWithProgram(QStringLiteral("/no/such/program"));
    tryFile(QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx"));
    EXPECT_TRUE(hand.says("ledgerboard-ofx")) << hand.said("bankRefused").join("").toStdString();
    EXPECT_TRUE(rows().bank_lines.empty());
}

// By a program that never ends.
TEST_F(SpendTest, ReadingADownloadIsStoppedAndTheWindowGoesOn) {
    const QString program = file("slow", "#!/bin/sh\nexec sleep 60\n");
    ASSERT_TRUE(
        QFile::setPermissions(program, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner));
    Hand& hand = openWithProgram(program);
    hand.key(Qt::Key_O, Qt::ControlModifier);
    hand.type(QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx"));
    QTest::keyClick(&hand.view(), Qt::Key_Return);
    ASSERT_TRUE(hand.find("stopDownload") != nullptr);
    EXPECT_EQ(hand.said("bankProgress"), QStringList{"The file is being read."});
    EXPECT_EQ(hand.focus(), "stopDownload");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(hand.said("bankRefused"), QStringList{"Stopped: nothing of it came in."});
    EXPECT_EQ(hand.focus(), "bankFile");
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(rows().bank_lines.empty());
    hand.type("receipt");  // the sheet has the keys again
    EXPECT_TRUE(hand.says("receipt"));
}

}  // namespace
}  // namespace ledgerboard::ui
