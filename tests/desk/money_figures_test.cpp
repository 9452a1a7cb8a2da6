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
