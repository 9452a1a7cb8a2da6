// Protects that every figure on the pages is the command line's for the same book and day: the
// pages are opened, what they say is read off them, and held against `--json`.
#include <algorithm>
#include <cmath>
#include <functional>

#include <nlohmann/json.hpp>

#include <QDate>
#include <QFile>
#include <QProcess>

#include "tests/desk/desk_test.h"
#include "tests/desk/more_alternates.h"
#include "tests/desk/said_figures.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

using nlohmann::json;

class FiguresTest : public DeskTest {
  protected:
    static json asked(const std::string& book, std::vector<std::string> arguments) {
        arguments.insert(arguments.end(), {"--as-of", "2026-05-22", "--json"});
        const cli::Answer answer = cli::CommandLine(book)(arguments);
        EXPECT_EQ(answer.status, 0) << answer.err;
        return json::parse(answer.out, nullptr, false);
    }
};

TEST_F(FiguresTest, TheHeadOfTheWeek) {
    const std::string book = demo();
    const json week = asked(book, {"week"});
    Hand& hand = open(book);
    const QStringList figures = hand.said("headFigure");
    ASSERT_EQ(figures.size(), 4);
    EXPECT_EQ(figures[0], wholeOf(week["will_cost"]["forecast"]));
    EXPECT_EQ(figures[1], dayOf(week["will_finish"]["on"]));
    EXPECT_EQ(figures[2], wholeOf(week["will_earn"]["profit"]));
    EXPECT_EQ(figures[3], wholeOf(week["cash_lowest"]["lowest"]));
    const QStringList beside = hand.saidAcross("headRest");
    ASSERT_EQ(beside.size(), 4);
    EXPECT_TRUE(beside[0].contains(wholeOf(week["will_cost"]["over"]))) << qPrintable(beside[0]);
    EXPECT_TRUE(beside[0].contains(wholeOf(week["will_cost"]["over_before"])))
        << qPrintable(beside[0]);
    EXPECT_TRUE(
        beside[1].contains(QString::number(week["will_finish"]["working_days_late"].get<int>())));
    EXPECT_TRUE(beside[2].contains(wholeOf(week["will_earn"]["profit_before"])));
    EXPECT_TRUE(beside[2].contains(wholeOf(week["will_earn"]["a_day_costs"])));
    EXPECT_TRUE(beside[3].contains(dayOf(week["cash_lowest"]["on"])));
    const QStringList spreads = hand.saidAcross("headSpread");
    ASSERT_EQ(spreads.size(), 4);
    EXPECT_TRUE(spreads[0].contains(wholeOf(week["spread"]["will_cost"]["p10"])));
    EXPECT_TRUE(spreads[0].contains(wholeOf(week["spread"]["will_cost"]["p90"])));
    EXPECT_TRUE(spreads[1].contains(dayOf(week["spread"]["will_finish"]["p10"])));
    EXPECT_TRUE(spreads[1].contains(dayOf(week["spread"]["will_finish"]["p90"])));
    EXPECT_TRUE(spreads[2].contains(wholeOf(week["spread"]["will_earn"]["p10"])));
    EXPECT_TRUE(spreads[2].contains(wholeOf(week["spread"]["will_earn"]["p90"])));
    EXPECT_TRUE(spreads[3].contains(wholeOf(week["cash_lowest"]["out_next_14_days"])));
}

TEST_F(FiguresTest, MoneyByTradeAndByRoom) {
    const std::string book = demo();
    const json week = asked(book, {"week"});
    Hand& hand = open(book);
    QStringList cells;
    for (const auto& trade : week["by_trade"]) {
        for (const char* key : {"budget_now", "committed", "billed", "held", "paid", "forecast"}) {
            cells << wholeOf(trade[key]);
        }
    }
    for (const char* key : {"budget_now", "committed", "billed", "held", "paid", "forecast"}) {
        cells << wholeOf(week["total"][key]);
    }
    QStringList shown;
    const QStringList all = hand.said("tradeCell");
    for (qsizetype k = 7; k < all.size(); ++k) {  // the first seven are the headings
        if (k % 7 != 6) {
            shown << all[k];  // the seventh of each row says it in words
        }
    }
    EXPECT_EQ(shown, cells);
    QStringList over;
    for (const auto& room : week["by_room"]) {
        over << wholeOf(room["over"], true);
    }
    EXPECT_EQ(hand.said("roomOver"), over);
}

TEST_F(FiguresTest, WhatMovedItAndTheCurve) {
    const std::string book = demo();
    const json week = asked(book, {"week"});
    Hand& hand = open(book);
    QStringList moved;
    for (const auto& mover : week["movers"]["largest"]) {
        moved << wholeOf(mover["amount"], true);
    }
    moved << wholeOf(week["movers"]["others"], true) << wholeOf(week["movers"]["total"], true);
    const auto* part = hand.find("moversPart");
    ASSERT_NE(part, nullptr);
    QStringList shown;
    for (const auto* item : hand.all("lineFigure", true)) {
        for (const QQuickItem* outer = item->parentItem(); outer; outer = outer->parentItem()) {
            if (outer == part) {
                shown << item->property("text").toString();
            }
        }
    }
    EXPECT_EQ(shown, moved);
    // The curve, day by day, as the arrow keys tell it: from its first day to its last.
    ASSERT_TRUE(hand.tabTo("curve"));
    hand.key(Qt::Key_Home);
    std::size_t seen = 0;
    for (const auto& point : week["curve"]) {
        QStringList figures;
        for (const char* key : {"planned", "spent", "earned"}) {
            if (!point[key].is_null()) {
                figures << QLatin1String(key) + QLatin1Char(' ') + wholeOf(point[key]);
            }
        }
        EXPECT_EQ(hand.said("plotWhen"), QStringList{dayOf(point["on"])});
        EXPECT_EQ(hand.said("plotFigure"), figures);
        ++seen;
        hand.key(Qt::Key_Right);
    }
    EXPECT_GT(seen, 8u);
}

TEST_F(FiguresTest, TheListOfJobsAddsUp) {
    const std::string book = demo();
    ASSERT_EQ(cli::CommandLine(book, 7)({"start", "9 Birch Lane", "--built", "1950"}).status, 0);
    const json week = asked(book, {"week", "--job", "14 Quince Row"});
    Hand& hand = lay(book);
    EXPECT_EQ(hand.said("stakeCost"), QStringList{wholeOf(week["will_cost"]["forecast"])});
    EXPECT_EQ(hand.said("stakeSpent"), QStringList{wholeOf(week["total"]["billed"])});
    EXPECT_EQ(hand.said("stakeEarn"), QStringList{wholeOf(week["will_earn"]["profit"])});
    EXPECT_TRUE(hand.says("9 Birch Lane"));
    EXPECT_TRUE(hand.says("no items yet"));
    EXPECT_TRUE(hand.said("jobCost").contains(wholeOf(week["will_cost"]["forecast"])));
    EXPECT_TRUE(hand.said("jobFinish").contains(dayOf(week["will_finish"]["on"])));
}

// Sums of the scope: budget now is the week's, and the lines of each space add up to the sum.
TEST_F(FiguresTest, TheScopeAddsUp) {
    const std::string book = demo();
    const json week = asked(book, {"week"});
    Hand& hand = open(book);
    hand.key(Qt::Key_3, Qt::ControlModifier);
    // What belongs to the whole job, and contracts without items, are no rows of the scope.
    model::Money others;
    for (const auto& line : hand.desk().now()->figures.scope.lines) {
        if (line.kind != compute::LineKind::Item) {
            others = others + line.budgetNow();
        }
    }
    const auto total = model::Money::parse(week["total"]["budget_now"].get<std::string>());
    ASSERT_TRUE(total.ok());
    EXPECT_EQ(hand.said("budgetSum"), QStringList{wholeOf((total.value() - others).toString())});
}

// The deal as it stands, and the profit table, are the verb's; moving the finish by whole weeks
// gives the table's own rows, and putting it back the deal as it stood.
TEST_F(FiguresTest, TheDealAndWhatIf) {
    const std::string book = demo();
    const json deal = asked(book, {"deal"});
    Hand& hand = open(book);
    hand.key(Qt::Key_9, Qt::ControlModifier);
    EXPECT_EQ(hand.said("dealProfit"), QStringList{wholeOf(deal["profit"])});
    QStringList lines;
    for (const char* key : {"resale",
                            "season_drop",
                            "price",
                            "buying_costs",
                            "points",
                            "lender_fees",
                            "visit_fees",
                            "interest",
                            "extension_fee",
                            "holding",
                            "work",
                            "selling",
                            "all_in",
                            "profit",
                            "profit_low",
                            "profit_high",
                            "break_even_resale",
                            "cash_at_closing",
                            "day_costs",
                            "rule_of_thumb_offer",
                            "top_offer"}) {
        const bool onlyIfAny =
            std::string(key) == "season_drop" || std::string(key) == "visit_fees";
        if (!deal[key].is_null() && !(onlyIfAny && deal[key] == "0.00")) {
            lines << wholeOf(deal[key]);
        }
    }
    EXPECT_EQ(hand.said("dealNow"), lines);
    QStringList cells;
    for (const auto& row : deal["profit_table"]["rows"]) {
        for (const auto& profit : row["profits"]) {
            cells << wholeOf(profit);
        }
    }
    EXPECT_EQ(hand.said("profitCell"), cells);
    // Two weeks later, at the likely resale: the table's third row.
    ASSERT_TRUE(hand.tabTo("whatIf2"));
    hand.keys(Qt::Key_Right, 2);
    EXPECT_EQ(hand.said("whatIfSaid").value(2), "2 weeks later");
    ASSERT_EQ(deal["profit_table"]["rows"].size(), 5u);
    const QString later = wholeOf(deal["profit_table"]["rows"][2]["profits"][1]);
    EXPECT_TRUE(hand.said("dealThen").value(0).startsWith(later + QStringLiteral("  (")))
        << hand.said("dealThen").value(0).toStdString();
    // A resale higher by 5 %: 6.5 % of it go to selling (1.5 + 5), so the profit
    // rises by 332,000 x 5 % x 93.5 % = 15,521.
    hand.key(Qt::Key_Home);
    ASSERT_TRUE(hand.tabTo("whatIf0"));
    hand.keys(Qt::Key_Right, 10);
    EXPECT_TRUE(hand.said("dealThen").value(0).endsWith("(+15,521)"))
        << hand.said("dealThen").value(0).toStdString();
    hand.key(Qt::Key_R, Qt::ControlModifier);
    EXPECT_TRUE(hand.said("dealThen").isEmpty());
    EXPECT_EQ(hand.said("profitCell"), cells);
}

// Every figure of every option, the best set, and what each sum of money buys.
TEST_F(FiguresTest, TheAlternates) {
    const std::string book = demo();
    addAlternates(book);
    const json choose = asked(book, {"choose"});
    Hand& hand = open(book);
    hand.key(Qt::Key_4, Qt::ControlModifier);
    QStringList figures;
    for (const auto& alternate : choose["alternates"]) {
        const auto each = [&](const std::function<QString(const json&)>& say) {
            for (const auto& option : alternate["options"]) {
                figures << say(option);
            }
        };
        const auto money = [](const char* key, bool sign) {
            return [key, sign](const json& option) { return wholeOf(option[key], sign); };
        };
        each(money("cost", false));
        each([](const json& option) {
            const int days = option["finish_days"].get<int>();
            return days == 0   ? QStringLiteral("not at all")
                   : days == 1 ? QStringLiteral("1 day later")
                               : QStringLiteral("%1 days later").arg(days);
        });
        each([](const json& option) {
            const bool isNothing = option["cost"] == "0.00" && !option["has_value"].get<bool>();
            return option["has_value"].get<bool>() || isNothing ? wholeOf(option["value_likely"])
                                                                : QStringLiteral("\u2013");
        });
        each(money("net_likely", true));
        each(money("net_low", true));
        each(money("net_high", true));
        each(money("break_even_value", false));
    }
    EXPECT_EQ(hand.said("optionFigure"), figures);
    const auto& best = choose["best"];
    EXPECT_EQ(hand.said("bestFigures"),
              QStringList{
                  QStringLiteral("It costs %1, ends the work on %2 and earns %3.")
                      .arg(wholeOf(best["cost"]), dayOf(best["finish_on"]), wholeOf(best["net"]))});
    hand.key(Qt::Key_T);
    QStringList costs;
    QStringList ends;
    QStringList nets;
    for (const auto& set : choose["frontier"]) {
        costs << wholeOf(set["cost"]);
        ends << dayOf(set["finish_on"]);
        nets << wholeOf(set["net"]);
    }
    EXPECT_EQ(hand.said("setCost"), costs);
    EXPECT_EQ(hand.said("setFinish"), ends);
    EXPECT_EQ(hand.said("setNet"), nets);
}

// The days, floats and last days to order of every item, as the foot tells them one after the
// other, and the finish.
TEST_F(FiguresTest, TheSchedule) {
    const std::string book = demo();
    const json plan = asked(book, {"plan"});
    Hand& hand = open(book);
    hand.key(Qt::Key_5, Qt::ControlModifier);
    EXPECT_EQ(hand.said("scheduleFinish"), QStringList{dayOf(plan["will_finish_on"])});
    EXPECT_TRUE(hand.said("scheduleRest")
                    .value(0)
                    .startsWith(QString::number(plan["working_days_late"].get<int>())));
    std::vector<json> left(plan["items"].begin(), plan["items"].end());
    QString before;
    for (std::size_t k = 0; k < plan["items"].size(); ++k) {
        const QString name = hand.said("scheduleItem").value(0);
        const QString told = hand.said("scheduleDetail").join(QLatin1Char(' '));
        EXPECT_NE(name + told, before) << "the arrow goes on to the next item";
        before = name + told;
        const auto matches = [&](const json& item) {
            const auto says = [&](const char* key, const QString& with) {
                return item[key].is_null() || told.contains(with.arg(dayOf(item[key])));
            };
            const QString called = QString::fromStdString(item["item"].get<std::string>());
            const bool isOpen = item["state"] != "finished";
            const bool isFree = isOpen && !item["critical"].get<bool>();
            // Tenths of a day, rounded up, as `plan` prints them.
            const double slip =
                isFree ? std::ceil(item["float"].get<double>() * 10 - 1e-9) / 10 : 0;
            return (name == called || name.startsWith(called + QStringLiteral(", "))) &&
                   says("start_on", QStringLiteral("%1")) &&
                   says("finish_on", QStringLiteral("%1")) &&
                   says("order_by", QStringLiteral("Order by %1.")) &&
                   says("goods_on", QStringLiteral("Goods come %1.")) &&
                   (!isFree || told.contains(QStringLiteral("May slip %1 day").arg(slip))) &&
                   told.contains(QStringLiteral("No float")) == item["critical"].get<bool>();
        };
        const auto found = std::find_if(left.begin(), left.end(), matches);
        ASSERT_NE(found, left.end()) << name.toStdString() << ": " << told.toStdString();
        left.erase(found);
        hand.key(Qt::Key_Down);
    }
    EXPECT_TRUE(left.empty());
}

// The sheet is read back with a program that is not ours, where it is there.
TEST_F(FiguresTest, TheSheetHasTheSameFiguresOnTwoSides) {
    const std::string book = demo();
    const json week = asked(book, {"week"});
    Hand& hand = open(book);
    const QString path = hand.folder() + QStringLiteral("/week.pdf");
    auto* view = hand.find("weekFlick");
    ASSERT_NE(view, nullptr);
    bool done = false;
    for (auto* object : hand.view().rootObject()->findChildren<QObject*>()) {
        if (QString::fromLatin1(object->metaObject()->className()).contains("WeekView")) {
            QMetaObject::invokeMethod(object, "print", Q_RETURN_ARG(bool, done),
                                      Q_ARG(QString, path));
        }
    }
    ASSERT_TRUE(done);
    if (const QByteArray keep = qgetenv("LEDGERBOARD_SHEET"); !keep.isEmpty()) {
        QFile::copy(path, QString::fromLocal8Bit(keep));  // to be looked at
    }
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.startsWith("%PDF-"));
    EXPECT_TRUE(bytes.contains("/Count 2")) << "one sheet has two sides";
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), path, QStringLiteral("-")});
    if (!reader.waitForFinished(20'000)) {
        GTEST_SKIP() << "no pdftotext here to read the sheet with";
    }
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    for (const auto& figure :
         {wholeOf(week["will_cost"]["forecast"]), dayOf(week["will_finish"]["on"]),
          wholeOf(week["will_earn"]["profit"]), wholeOf(week["cash_lowest"]["lowest"])}) {
        EXPECT_TRUE(text.contains(figure)) << qPrintable(figure);
    }
    for (const auto& trade : week["by_trade"]) {
        EXPECT_TRUE(text.contains(wholeOf(trade["forecast"]))) << trade.dump();
    }
}

}  // namespace
}  // namespace ledgerboard::ui
