// Protects the punch list and the price book: looks accept and send back, sheets go to the crew
// leads, prices are edited, added and pasted, by real keys; each is undone.
#include <nlohmann/json.hpp>

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QProcess>

#include "tests/desk/desk_test.h"
#include "tests/desk/said_figures.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

using nlohmann::json;

class PeopleTest : public DeskTest {
  protected:
    std::string book_;

    Hand& openPage(int key) {
        if (book_.empty()) {
            book_ = demo();
        }
        open(book_).key(key, Qt::AltModifier);
        return *hand_;
    }

    Hand& openPunch() { return openPage(Qt::Key_1); }

    Hand& openPrices() { return openPage(Qt::Key_3); }

    model::JobRows rows() { return jobIn(book_); }

    json asked(std::vector<std::string> arguments) {
        arguments.insert(arguments.end(), {"--as-of", "2026-05-22", "--json"});
        const cli::Answer answer = cli::CommandLine(book_)(arguments);
        EXPECT_EQ(answer.status, 0) << answer.err;
        return json::parse(answer.out, nullptr, false);
    }

    const model::Price price(const std::string& object, model::Treatment treatment) {
        for (const auto& one : rows().prices) {
            if (one.object == object && one.treatment == treatment) {
                return one;
            }
        }
        ADD_FAILURE() << "no price of " << object;
        return {};
    }
};

TEST_F(PeopleTest, ThePunchListIsTheCommandLines) {
    Hand& hand = openPunch();
    const json punch = asked({"punch"});
    const QString sum = hand.said("punchSum").value(0);
    EXPECT_TRUE(sum.startsWith(QStringLiteral("%1 to put right").arg(punch["open"].get<int>())))
        << sum.toStdString();
    model::Money cost;
    int without = 0;
    for (const auto& item : punch["items"]) {
        if (item["cost"].is_null()) {
            ++without;
        } else {
            cost += model::Money::parse(item["cost"].get<std::string>()).value();
        }
    }
    EXPECT_TRUE(sum.contains(wholeOf(cost.toString()) + QStringLiteral(" of cost")))
        << sum.toStdString();
    EXPECT_TRUE(sum.contains(QStringLiteral("%1 without a cost").arg(without)));
    for (const auto& back : punch["charge_backs"]) {
        EXPECT_TRUE(sum.contains(wholeOf(back["amount"]) + QStringLiteral(" charged back to ") +
                                 QString::fromStdString(back["crew"].get<std::string>())));
    }
    // Row by row, as the list is read down.
    hand.key(Qt::Key_Home);
    for (const auto& item : punch["items"]) {
        EXPECT_EQ(hand.said("inHandText").value(0),
                  QString::fromStdString(item["what"].get<std::string>()));
        hand.key(Qt::Key_Down);
    }
    EXPECT_EQ(hand.said("rowCount").value(0),
              QStringLiteral("%1 rows").arg(punch["open"].get<int>()));
}

TEST_F(PeopleTest, ALookAcceptsAndIsUndone) {
    Hand& hand = openPunch();
    const int open = asked({"punch"})["open"].get<int>();
    hand.type("toilet");
    EXPECT_EQ(hand.said("cell0"), QStringList{"Toilet rocks"});
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(asked({"punch"})["open"].get<int>(), open - 1);
    EXPECT_TRUE(hand.says("Accepted: Toilet rocks"));
    EXPECT_TRUE(hand.said("cell0").isEmpty()) << "open ones only";
    hand.key(Qt::Key_O, Qt::ControlModifier);
    EXPECT_EQ(hand.said("cell4"), QStringList{"accepted"});
    EXPECT_TRUE(hand.says("Fri 22 May: accepted."));
    hand.key(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("That is accepted already"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(asked({"punch"})["open"].get<int>(), open);
    EXPECT_EQ(hand.said("cell4"), QStringList{"open"});
}

TEST_F(PeopleTest, SentBackWithWhatIsNotRight) {
    Hand& hand = openPunch();
    hand.type("toilet");
    hand.key(Qt::Key_R, Qt::ControlModifier);
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Say what is not right yet"));
    EXPECT_TRUE(rows().looks.empty());
    hand.type("still rocks to the left");
    hand.key(Qt::Key_Return);
    ASSERT_EQ(rows().looks.size(), 1u);
    EXPECT_EQ(rows().looks.front().said, model::Verdict::NotRight);
    EXPECT_EQ(rows().looks.front().note, "still rocks to the left");
    EXPECT_EQ(hand.said("cell4"), QStringList{"not right"});
    EXPECT_EQ(hand.focus(), "sheetRows");
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(rows().looks.empty());
    hand.key(Qt::Key_R, Qt::ControlModifier);
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.all("backEntry").empty());
}

TEST_F(PeopleTest, ANewPunchItemBesideTheOneInHand) {
    Hand& hand = openPunch();
    hand.type("toilet");
    const std::size_t before = rows().punches.size();
    hand.key(Qt::Key_N, Qt::ControlModifier);
    hand.type("Seat loose");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(rows().punches.size(), before + 1);
    for (const auto& punch : rows().punches) {
        if (punch.what == "Seat loose") {
            EXPECT_EQ(punch.foundOn, model::Date::parse("2026-05-22").value());
            EXPECT_FALSE(punch.space.isNil()) << "in the same room";
            EXPECT_FALSE(punch.crew.isNil()) << "for the same crew";
        }
    }
    EXPECT_TRUE(hand.says("Seat loose"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().punches.size(), before);
}

TEST_F(PeopleTest, BySpaceOrCrewAndOnPaper) {
    Hand& hand = openPunch();
    EXPECT_EQ(hand.said("headingText").value(0), "Outside");
    hand.key(Qt::Key_G, Qt::ControlModifier);
    EXPECT_EQ(hand.said("headingText").value(0), "Roof crew");
    hand.type("toilet");
    auto* sheet = hand.view().rootObject()->findChild<QObject*>(QStringLiteral("punchSheet"));
    ASSERT_NE(sheet, nullptr);
    const QString path = hand.folder() + QStringLiteral("/punch.pdf");
    bool done = false;
    QMetaObject::invokeMethod(sheet, "print", Q_RETURN_ARG(bool, done),
                              Q_ARG(QUrl, QUrl::fromLocalFile(path)));
    ASSERT_TRUE(done);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    bool refused = true;
    QMetaObject::invokeMethod(
        sheet, "print", Q_RETURN_ARG(bool, refused),
        Q_ARG(QUrl, QUrl::fromLocalFile(QStringLiteral("/nowhere/at/all.pdf"))));
    EXPECT_FALSE(refused);
    EXPECT_TRUE(hand.says("can't be written"));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), path, QStringLiteral("-")});
    if (!reader.waitForFinished(20'000)) {
        GTEST_SKIP() << "no pdftotext here to read the sheet with";
    }
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    EXPECT_TRUE(text.contains("Toilet rocks"));
    EXPECT_TRUE(text.contains("Plumbing crew"));
    EXPECT_FALSE(text.contains("Downspout")) << "another crew's";
}

TEST_F(PeopleTest, APriceIsEditedInPlaceAndUndone) {
    Hand& hand = openPrices();
    EXPECT_TRUE(hand.said("pricesSum")
                    .value(0)
                    .startsWith(QStringLiteral("%1 prices; ").arg(rows().prices.size())));
    hand.type("tear-out");
    hand.key(Qt::Key_Home);
    hand.keys(Qt::Key_Right, 4);
    hand.key(Qt::Key_Return);
    hand.type("3.50");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(price("tear-out", model::Treatment::Remove).labour,
              model::Money::parse("3.50").value());
    EXPECT_EQ(hand.said("cell4"), QStringList{"3.50"});
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(price("tear-out", model::Treatment::Remove).labour,
              model::Money::parse("3.10").value());
    hand.key(Qt::Key_Return);
    hand.type("much");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Labour")) << "what is wrong is told";
    EXPECT_EQ(price("tear-out", model::Treatment::Remove).labour,
              model::Money::parse("3.10").value());
}

// Where a price is used: those that the scope is priced by.
TEST_F(PeopleTest, WhereAPriceIsUsed) {
    Hand& hand = openPrices();
    std::map<model::RawId, int> used;
    for (const auto& line : hand.desk().now()->figures.scope.lines) {
        if (line.pricing.by == compute::PricedBy::PriceBook) {
            ++used[line.pricing.price.raw()];
        }
    }
    ASSERT_FALSE(used.empty());
    const auto all = rows().prices;
    const auto found = std::find_if(all.begin(), all.end(), [&](const model::Price& one) {
        return one.id.raw() == used.begin()->first;
    });
    ASSERT_NE(found, all.end());
    hand.type(QString::fromStdString(found->object));
    EXPECT_TRUE(hand.said("cell10").contains(QString::number(used.begin()->second)));
}

TEST_F(PeopleTest, PricesArePastedWithWhatIsWrongTold) {
    Hand& hand = openPrices();
    const std::size_t before = rows().prices.size();
    QGuiApplication::clipboard()->setText(
        QStringLiteral("Object\tTreatment\tUnit\tMaterial\tLabour\tSource\n"
                       "trellis\tadd\teach\t85\t60\town last house\n"
                       "trellis\tpolish\teach\t5\t60\t\n"));
    hand.key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("polish"));
    EXPECT_EQ(rows().prices.size(), before) << "nothing before it is said so";
    hand.click("bringGood");
    EXPECT_EQ(rows().prices.size(), before + 1);
    EXPECT_EQ(price("trellis", model::Treatment::Add).labour, model::Money::parse("60").value());
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().prices.size(), before);
}

TEST_F(PeopleTest, ANewBookHasNeither) {
    book_ = folder_.file("new.book");
    ASSERT_EQ(cli::CommandLine(book_)({"start", "9 Birch Lane"}).status, 0);
    Hand& hand = openPunch();
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"Nothing is left to put right"});
    hand.key(Qt::Key_3, Qt::AltModifier);
    EXPECT_EQ(hand.said("nothingHead"), QStringList{"There is no price yet"});
    hand.click("nothingBegin");
    hand.type("door");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(rows().prices.size(), 1u);
}

}  // namespace
}  // namespace ledgerboard::ui
