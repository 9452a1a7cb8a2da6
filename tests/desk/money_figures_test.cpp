// Protects that every figure on the pages that speak of money is the command line's for the same
// book and day: the pages are opened, what they say is read off them, and held against `--json`.
#include <nlohmann/json.hpp>

#include <QDate>

#include "tests/desk/desk_test.h"
#include "tests/desk/said_figures.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

using nlohmann::json;

class MoneyFiguresTest : public DeskTest {
  protected:
    static json asked(const std::string& book, std::vector<std::string> arguments,
                      const std::string& day = "2026-05-22") {
        arguments.insert(arguments.end(), {"--as-of", day, "--json"});
        const cli::Answer answer = cli::CommandLine(book)(arguments);
        EXPECT_EQ(answer.status, 0) << answer.err;
        return json::parse(answer.out, nullptr, false);
    }

    // What the items of a name say that stand within one of another name.
    QStringList saidWithin(const QString& name, const QString& outerName) {
        QStringList list;
        for (const auto* item : hand_->all(name, true)) {
            for (const QQuickItem* outer = item->parentItem(); outer; outer = outer->parentItem()) {
                if (outer->objectName() == outerName) {
                    list << item->property("text").toString();
                    break;
                }
            }
        }
        return list;
    }

    static std::string text(const json& value) {
        return value.is_string() ? value.get<std::string>() : std::string();
    }
};

TEST_F(MoneyFiguresTest, TheHeadIsTheWeeks) {
    const std::string book = demo();
    const json total = asked(book, {"week"})["total"];
    const json cash = asked(book, {"cash"})["contracts"];
    Hand& hand = open(book);
    hand.key(Qt::Key_6, Qt::ControlModifier);
    const QStringList figures = hand.saidAcross("moneyFigure");
    ASSERT_EQ(figures.size(), 5);
    EXPECT_EQ(figures[0], wholeOf(total["committed"]));
    EXPECT_EQ(figures[1], wholeOf(total["billed"]));
    EXPECT_EQ(figures[2], wholeOf(total["paid"]));
    EXPECT_EQ(figures[3], wholeOf(total["held"]));
    // Owed = billed - held - paid (rules of the trade's own terms), from the three above.
    const auto minor = [&](const char* key) {
        return model::Money::parse(total[key].get<std::string>()).value().minor();
    };
    EXPECT_EQ(
        figures[4],
        wholeOf(
            model::Money::fromMinor(minor("billed") - minor("held") - minor("paid")).toString()));
    std::size_t ahead = 0;
    for (const auto& one : cash["paid_ahead"]) {
        EXPECT_TRUE(hand.said("moneySentence")
                        .value(0)
                        .contains(QString::fromStdString(text(one["crew"])) +
                                  QStringLiteral(" by ") + wholeOf(one["amount"])))
            << one.dump();
        ++ahead;
    }
    EXPECT_GT(ahead, 0u);
}

TEST_F(MoneyFiguresTest, ContractsAreTheListed) {
    const std::string book = demo();
    const json listed = asked(book, {"list", "contracts"}).front();
    Hand& hand = open(book);
    hand.key(Qt::Key_6, Qt::ControlModifier);
    const QStringList names = hand.said("cell0");
    const QStringList sums = hand.said("cell2");
    ASSERT_EQ(names.size(), static_cast<qsizetype>(listed.size()));
    for (const auto& one : listed) {
        const auto at = names.indexOf(QString::fromStdString(text(one["name"])));
        ASSERT_GE(at, 0) << one.dump();
        EXPECT_EQ(sums[at], wholeOf(one["sum"])) << one.dump();
    }
}

TEST_F(MoneyFiguresTest, SpendIsTheListedAndItsMonthsAddUpToWhatWasBilled) {
    const std::string book = demo();
    const json listed = asked(book, {"list", "spend"}).front();
    const json total = asked(book, {"week"})["total"];
    Laid laid;
    laid.size = QSize(1920, 4000);  // so that every row is there to be read
    Hand& hand = open(book, laid);
    hand.key(Qt::Key_7, Qt::ControlModifier);
    QStringList amounts;
    for (const auto& one : listed) {
        amounts << (one.contains("amount") && one["amount"].is_string() ? wholeOf(one["amount"])
                                                                        : QString("to come"));
    }
    QStringList shown = hand.said("cell4");
    amounts.sort();
    shown.sort();
    EXPECT_EQ(shown, amounts);
    // Months are shown whole, so their sum may be off by half a unit for each.
    qint64 billed = 0;
    const QStringList months = hand.said("headingSum");
    for (QString month : months) {
        billed += month.remove(QLatin1Char(',')).toLongLong();
    }
    const auto exact = model::Money::parse(total["billed"].get<std::string>()).value().minor();
    EXPECT_NEAR(static_cast<double>(billed), static_cast<double>(exact) / 100.0,
                0.5 * static_cast<double>(months.size()));
}

TEST_F(MoneyFiguresTest, DrawsAreTheVerbs) {
    const std::string book = demo();
    const json draw = asked(book, {"draw"});
    Hand& hand = open(book);
    hand.key(Qt::Key_8, Qt::ControlModifier);
    const QStringList figures = hand.saidAcross("moneyFigure");
    ASSERT_EQ(figures.size(), 5);
    EXPECT_EQ(figures[0], wholeOf(draw["total"]));
    EXPECT_EQ(figures[1], wholeOf(draw["net"]));
    EXPECT_EQ(figures[2], wholeOf(draw["held_back"]));
    EXPECT_EQ(figures[3], wholeOf(draw["paid_before"]));
    EXPECT_EQ(figures[4], wholeOf(draw["limit"]));
    QStringList cells;
    for (const auto& line : draw["lines"]) {
        cells << QString::fromStdString(text(line["lender_line"])) << wholeOf(line["amount"])
              << wholeOf(line["held_back"]) << wholeOf(line["paid_before"]) << wholeOf(line["draw"])
              << QString::fromStdString(text(line["why_not"]));
    }
    QStringList shown;
    const QStringList names = hand.said("cell0");
    for (qsizetype k = 0; k < names.size(); ++k) {
        shown << names[k];
        for (const char* column : {"cell1", "cell4", "cell5", "cell6", "cell7"}) {
            shown << hand.said(column).value(k);
        }
    }
    EXPECT_EQ(shown, cells);
}

TEST_F(MoneyFiguresTest, ClosingIsTheVerbs) {
    const std::string book = demo();
    const json close = asked(book, {"close"});
    Hand& hand = open(book);
    hand.key(Qt::Key_2, Qt::AltModifier);
    EXPECT_TRUE(hand.said("closingSum")
                    .value(0)
                    .startsWith(QStringLiteral("%1 of %2 items finished. %3 things stand")
                                    .arg(close["finished"].get<int>())
                                    .arg(close["items"].get<int>())
                                    .arg(close["stands_between"].size())));
    QStringList names;
    QStringList figures;
    for (const auto& one : close["stands_between"]) {
        names << QString::fromStdString(text(one["what"]));
        if (one["amount"].is_string() && one["amount"] != "0.00") {
            figures << wholeOf(one["amount"]);
        }
    }
    EXPECT_EQ(saidWithin("lineWhat", "stands"), names);
    EXPECT_EQ(saidWithin("lineFigure", "stands"), figures);
    for (const auto& release : close["releases"]) {
        EXPECT_TRUE(hand.says(QStringLiteral("held %1, left to pay %2")
                                  .arg(wholeOf(release["held"]), wholeOf(release["left_to_pay"]))))
            << release["name"];
    }
}

TEST_F(MoneyFiguresTest, BarredPaymentsAreThoseOfCash) {
    const std::string book = demo();
    const json barred = asked(book, {"cash"}, "2026-05-28")["contracts"]["barred"];
    ASSERT_FALSE(barred.empty());
    Laid laid;
    laid.asOf = QStringLiteral("2026-05-28");
    Hand& hand = open(book, laid);
    hand.key(Qt::Key_6, Qt::ControlModifier);
    for (const auto& one : barred) {
        EXPECT_TRUE(hand.said("barredOwed").value(0).contains(wholeOf(one["amount"])))
            << one.dump();
    }
}

}  // namespace
}  // namespace ledgerboard::ui
