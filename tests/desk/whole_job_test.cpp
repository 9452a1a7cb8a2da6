// Protects the whole job, from no book at all to closing, by keyboard alone: a walk kept, the scope
// completed, an alternate decided, items linked, days kept, the baseline fixed, a contract and a
// change signed, a bill paid, punch accepted, a draw asked, allowed and funded, work marked on its
// way and finished. Each kind of step is taken back and done again, and the book, opened anew
// beside the page, must follow.
//
// Hand calculation: sink 1 x (310 + 190) = 500; bathtub 1,780; shelf 3 x (40 + 25) = 195; cedar
// fence 2,100: in all 4,575. Contract 2,300 + change 300 = 2,600, billed and paid. The lender
// lends all of a line of 2,000, and both its items are finished: a draw of 2,000.
#include <nlohmann/json.hpp>

#include <QTest>

#include "core/compute/as_of.h"
#include "core/compute/budget.h"
#include "core/store/book.h"

#include "tests/desk/desk_test.h"
#include "tests/desk/said_figures.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

using model::Money;
using nlohmann::json;

constexpr const char* kNotes =
    "Kitchen. Replace the sink. Hall bath. Replace the tub, 1,780. Entry. Add three shelves. "
    "Outside. Either a cedar fence, 2,100, or leave the yard open.";

model::Date today() {
    return model::Date::fromYmd(2026, 5, 22).value();
}

class WholeJobTest : public DeskTest {
  protected:
    Hand& hand() { return *hand_; }

    void ctrl(int key) { hand_->key(key, Qt::ControlModifier); }

    // The job as a book opened anew holds it.
    model::JobRows rows() {
        auto book = store::Book::open(hand_->desk().bookPath(), ledgerboard::tests::fixedChance(3));
        EXPECT_TRUE(book.ok());
        for (const auto& job : book.value().rows<model::Job>().value()) {
            return compute::asOf(book.value().jobRows(job.id).value(), today());
        }
        return {};
    }

    compute::JobFigures figures() { return compute::figuresOf(rows(), today()); }

    template <class Row>
    static Row only(const std::vector<Row>& list) {
        EXPECT_EQ(list.size(), 1u);
        return list.empty() ? Row{} : list.front();
    }

    model::Item item(const std::string& object) {
        for (const auto& one : rows().items) {
            if (one.object.find(object) != std::string::npos) {
                return one;
            }
        }
        ADD_FAILURE() << "no item " << object;
        return {};
    }

    std::size_t finished() {
        std::size_t count = 0;
        const auto now = figures();
        for (std::size_t k = 0; k < rows().items.size(); ++k) {
            const bool counts = now.scope.lines[k].counting == compute::Counting::Counts;
            count += counts && now.lines[k].shown >= model::Percent::whole() ? 1 : 0;
        }
        return count;
    }

    // Does a step, takes it back and does it again; `figure` reads the book each time.
    template <class Step, class Figure>
    void step(const char* what, Step&& doIt, Figure&& figure) {
        SCOPED_TRACE(what);
        const auto before = figure();
        doIt();
        const auto after = figure();
        EXPECT_NE(after, before) << hand().desk().notKeptText().toStdString();
        ctrl(Qt::Key_Z);
        EXPECT_EQ(figure(), before) << "taken back";
        hand().key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        EXPECT_EQ(figure(), after) << "done again";
    }

    // Keys that only move about need no waiting.
    void press(int key, int times = 1) {
        for (int k = 0; k < times; ++k) {
            QTest::keyClick(&hand_->view(), static_cast<Qt::Key>(key));
        }
    }

    void letters(const QString& text) {
        for (const QChar c : text) {
            QTest::keyClick(&hand_->view(), c.toLatin1());
        }
    }

    // Puts a value into a cell of the scope's item in hand.
    void cell(const QString& filter, int column, const QString& value) {
        press(Qt::Key_Escape);
        letters(filter);
        press(Qt::Key_Home);
        press(Qt::Key_Left, 12);
        press(Qt::Key_Right, column);
        press(Qt::Key_Return);
        letters(value);
        hand().key(Qt::Key_Return);
        EXPECT_TRUE(hand().desk().notKeptText().isEmpty())
            << hand().desk().notKeptText().toStdString();
    }

    // Puts a value into a field of the form that is open; from the first one.
    void field(int place, const QString& value) {
        press(Qt::Key_Home);
        press(Qt::Key_Down, place);
        letters(value);
        hand().key(Qt::Key_Return);
        EXPECT_TRUE(hand().desk().notKeptText().isEmpty())
            << hand().desk().notKeptText().toStdString();
    }

    void begin();
    void walk();
    void completeScope();
    void decideAndPlan();
    void signContract();
    void lend();
    void billAndPay();
    void punch();
    void finishWork();
    void close();
    void agreeWithTheCommandLine();
};

void WholeJobTest::begin() {
    lay("");
    hand().type("3 Plum Lane");
    hand().key(Qt::Key_Return);
    hand().type("1996");
    hand().key(Qt::Key_Return);
    ASSERT_EQ(hand().desk().jobName(), "3 Plum Lane");
    ctrl(Qt::Key_Z);
    EXPECT_TRUE(hand().desk().jobs().empty());
    hand().key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(hand().desk().jobs().size(), 1u);
    hand().key(Qt::Key_Return);
    ASSERT_EQ(hand().desk().jobName(), "3 Plum Lane");
    ctrl(Qt::Key_9);
    ctrl(Qt::Key_I);
    ASSERT_EQ(hand().said("formTitle"), QStringList{"3 Plum Lane"});
    step(
        "what it rests on", [this] { field(1, "150000"); },
        [this] { return rows().job.purchasePrice; });
    EXPECT_EQ(rows().job.purchasePrice, Money::fromMinor(15'000'000));
    field(2, "2026-05-01");
    field(3, "240000");
    field(10, "2026-05-25");
    field(11, "2026-06-19");
    field(17, "60000");
    hand().key(Qt::Key_Escape);
}

void WholeJobTest::walk() {
    ctrl(Qt::Key_2);
    ASSERT_EQ(hand().focus(), "walkNotes");
    hand().type(QLatin1String(kNotes));
    ASSERT_TRUE(hand().wait([&] { return hand().all("draftRow").size() >= 4; }));
    hand().settle();
    step(
        "the walk", [this] { ctrl(Qt::Key_Return); },
        [this] { return rows().items.size() + rows().alternates.size(); });
    EXPECT_EQ(only(rows().alternates).chosen.isNil(), true);
}

void WholeJobTest::completeScope() {
    constexpr int kQuantity = 4;
    constexpr int kMaterial = 6;
    constexpr int kLabour = 7;
    constexpr int kLumpSum = 8;
    constexpr int kDays = 11;
    ctrl(Qt::Key_3);
    const auto sum = [this] { return figures().job.budgetNow; };
    step(
        "a quantity", [this] { cell("sink", kQuantity, "2"); },
        [this] { return item("sink").quantity; });
    cell("sink", kQuantity, "1");
    cell("sink", kMaterial, "310");
    step(
        "a price", [this] { cell("sink", kLabour, "190"); }, sum);
    cell("shel", kQuantity, "3");
    cell("shel", kMaterial, "40");
    cell("shel", kLabour, "25");
    cell("tub", kLumpSum, "1780");
    for (const char* object : {"sink", "tub", "shel"}) {
        cell(QLatin1String(object), kDays, "2");
    }
    EXPECT_EQ(hand().said("cell11"), QStringList{"2"});
}

void WholeJobTest::decideAndPlan() {
    ctrl(Qt::Key_4);
    step(
        "an alternate",
        [this] {
            hand().key(Qt::Key_Return);
            hand().type("the dog next door");
            hand().key(Qt::Key_Return);
        },
        [this] { return only(rows().alternates).chosen; });
    EXPECT_EQ(only(rows().alternates).why, "the dog next door");
    EXPECT_EQ(item("fence").lumpSum, Money::fromMinor(210'000));
    ctrl(Qt::Key_3);
    cell("fence", 11, "1");
    ctrl(Qt::Key_5);
    hand().type("sink");
    step(
        "a link",
        [this] {
            ctrl(Qt::Key_J);
            press(Qt::Key_Backspace, 4);
            hand().type("tub");
            hand().key(Qt::Key_Return);
        },
        [this] { return rows().links.size(); });
    EXPECT_EQ(only(rows().links).fromItem, item("sink").id);
    EXPECT_EQ(only(rows().links).toItem, item("tub").id);
    step(
        "planned days", [this] { ctrl(Qt::Key_K); },
        [this] { return item("sink").plannedStartOn; });
    ctrl(Qt::Key_3);
    step(
        "the baseline",
        [this] {
            ctrl(Qt::Key_F);
            hand().key(Qt::Key_Return);
        },
        [this] { return rows().baseline_items.size(); });
    EXPECT_EQ(rows().baseline_items.size(), 4u);
    EXPECT_EQ(only(rows().baselines).frozenOn, today());
}

void WholeJobTest::signContract() {
    ctrl(Qt::Key_6);
    step(
        "a contract",
        [this] {
            ctrl(Qt::Key_N);
            field(0, "Plumbing");
            field(3, "2300");
            ctrl(Qt::Key_Return);
        },
        [this] { return rows().contracts.size(); });
    const auto committed = [this] { return figures().job.committed; };
    step(
        "its signing", [this] { ctrl(Qt::Key_S); }, committed);
    EXPECT_EQ(only(rows().contracts).signedOn, today());
    ctrl(Qt::Key_E);
    step(
        "a change",
        [this] {
            ctrl(Qt::Key_N);
            field(0, "Longer drain");
            field(3, "300");
            ctrl(Qt::Key_Return);
        },
        [this] { return rows().changes.size(); });
    EXPECT_EQ(only(rows().changes).contract, only(rows().contracts).id);
    step(
        "the change signed", [this] { ctrl(Qt::Key_S); }, committed);
    EXPECT_EQ(committed(), Money::fromMinor(260'000));
}

void WholeJobTest::lend() {
    ctrl(Qt::Key_8);
    step(
        "a lender's line",
        [this] {
            ctrl(Qt::Key_N);
            field(0, "Plumbing");
            field(1, "2000");
            ctrl(Qt::Key_Return);
        },
        [this] { return rows().lender_lines.size(); });
    ctrl(Qt::Key_3);
    for (const char* object : {"sink", "tub"}) {
        hand().key(Qt::Key_Escape);
        hand().type(QLatin1String(object));
        ctrl(Qt::Key_I);
        field(0, "Plumbing");
        step(
            "its lender's line", [this] { field(1, "Plumbing"); },
            [&] { return item(object).lenderLine; });
        EXPECT_EQ(item(object).contract, only(rows().contracts).id);
        hand().key(Qt::Key_Escape);
        EXPECT_EQ(hand().focus(), "sheetRows");
    }
}

void WholeJobTest::billAndPay() {
    const auto billed = [this] { return figures().job.billed; };
    const auto paid = [this] { return figures().job.paid; };
    ctrl(Qt::Key_7);
    step(
        "a bill",
        [this] {
            ctrl(Qt::Key_N);
            field(0, "invoice");
            field(2, "Pipe crew");
            field(3, "2600");
            field(6, "Plumbing");
            ctrl(Qt::Key_Return);
        },
        billed);
    EXPECT_EQ(billed(), Money::fromMinor(260'000));
    step(
        "its paper seen", [this] { ctrl(Qt::Key_S); },
        [this] { return only(rows().spends).paperSeen; });
    step(
        "its payment",
        [this] {
            ctrl(Qt::Key_P);
            ctrl(Qt::Key_Return);
        },
        paid);
    EXPECT_EQ(paid(), Money::fromMinor(260'000));
}

void WholeJobTest::punch() {
    hand().key(Qt::Key_1, Qt::AltModifier);
    step(
        "a punch item",
        [this] {
            ctrl(Qt::Key_N);
            field(0, "Faucet drips");
            ctrl(Qt::Key_Return);
        },
        [this] { return rows().punches.size(); });
    step(
        "its look", [this] { ctrl(Qt::Key_S); }, [this] { return rows().looks.size(); });
    EXPECT_EQ(only(rows().looks).said, model::Verdict::Accepted);
}

void WholeJobTest::finishWork() {
    ctrl(Qt::Key_3);
    hand().key(Qt::Key_Escape);
    hand().type("sink");
    step(
        "how far it is",
        [this] {
            ctrl(Qt::Key_M);
            hand().type("60");
            hand().key(Qt::Key_Return);
        },
        [this] { return rows().marks.size(); });
    EXPECT_EQ(only(rows().marks).percent, model::Percent::of(60));
    EXPECT_EQ(finished(), 0u);
    step(
        "work finished", [this] { ctrl(Qt::Key_S); }, [this] { return finished(); });
    EXPECT_EQ(finished(), 1u);
    // A fence is dug: what that may cut is read first.
    hand().key(Qt::Key_Escape);
    hand().type("fence");
    ctrl(Qt::Key_S);
    EXPECT_TRUE(hand().desk().notKeptText().contains("digging"));
    EXPECT_EQ(finished(), 1u);
    step(
        "its caution read",
        [this] {
            ctrl(Qt::Key_K);
            EXPECT_TRUE(hand().said("cautionText").value(0).contains("one-call service"));
            hand().key(Qt::Key_Return);
        },
        [this] { return rows().cautions.size(); });
    EXPECT_EQ(hand().focus(), "sheetRows");
    // The others in one go.
    hand().key(Qt::Key_Escape);
    hand().key(Qt::Key_Home);
    hand().keys(Qt::Key_Down, 20, Qt::ShiftModifier);
    step(
        "the rest of it", [this] { ctrl(Qt::Key_S); }, [this] { return finished(); });
    EXPECT_EQ(finished(), 4u);
    ctrl(Qt::Key_S);
    EXPECT_TRUE(hand().says("That is finished already."));
}

void WholeJobTest::close() {
    ctrl(Qt::Key_8);
    EXPECT_EQ(hand().saidAcross("moneyFigure").value(0), "2,000") << "can be asked for now";
    step(
        "a draw", [this] { ctrl(Qt::Key_S); }, [this] { return rows().draws.size(); });
    EXPECT_EQ(only(rows().draws).askedOn, today());
    // What is left: that draw's money, and the papers of the contract.
    hand().key(Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(hand().said("closingSum"),
              QStringList{"4 of 4 items finished. 2 things stand between this job and finished."});
    ctrl(Qt::Key_8);
    ctrl(Qt::Key_E);
    step(
        "its money", [this] { cell("", 3, "2026-05-22"); },
        [this] { return only(rows().draws).fundedOn; });
    ctrl(Qt::Key_E);
    step(
        "what was allowed", [this] { ctrl(Qt::Key_S); },
        [this] { return only(rows().draw_lines).allowed; });
    EXPECT_EQ(only(rows().draw_lines).allowed, only(rows().draw_lines).asked);
    ctrl(Qt::Key_6);
    ctrl(Qt::Key_I);
    field(12, "yes");
    field(13, "2026-05-22");
    step(
        "the contract accepted", [this] { field(14, "2026-05-22"); },
        [this] { return only(rows().contracts).acceptedOn; });
    hand().key(Qt::Key_Escape);
    hand().key(Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(hand().said("closingSum"),
              QStringList{"4 of 4 items finished. Nothing that the book knows of stands between "
                          "this job and finished."});
    EXPECT_TRUE(hand().all("stands").empty());
}

void WholeJobTest::agreeWithTheCommandLine() {
    const auto answer =
        cli::CommandLine(hand().desk().bookPath())({"week", "--as-of", "2026-05-22", "--json"});
    ASSERT_EQ(answer.status, 0) << answer.err;
    const json week = json::parse(answer.out, nullptr, false);
    ctrl(Qt::Key_1);
    const QStringList figures = hand().said("headFigure");
    ASSERT_EQ(figures.size(), 4);
    EXPECT_EQ(figures[0], wholeOf(week["will_cost"]["forecast"]));
    EXPECT_EQ(figures[1], dayOf(week["will_finish"]["on"]));
    EXPECT_EQ(figures[2], wholeOf(week["will_earn"]["profit"]));
    EXPECT_EQ(figures[3], wholeOf(week["cash_lowest"]["lowest"]));
    const QStringList trades = hand().said("tradeCell");
    ASSERT_GE(trades.size(), 7);
    QStringList total;
    for (const char* key : {"budget_now", "committed", "billed", "held", "paid", "forecast"}) {
        total << wholeOf(week["total"][key]);
    }
    EXPECT_EQ(trades.mid(trades.size() - 7, 6), total);
    // And as worked out by hand above.
    EXPECT_EQ(week["total"]["budget_now"], "4875.00");
    EXPECT_EQ(week["total"]["paid"], "2600.00");
    EXPECT_EQ(week["items"], 4);
    EXPECT_EQ(week["progress"]["done_percent"], 100.0);
}

TEST_F(WholeJobTest, FromNoBookToClosingByKeysAlone) {
    ASSERT_NO_FATAL_FAILURE(begin());
    ASSERT_NO_FATAL_FAILURE(walk());
    ASSERT_NO_FATAL_FAILURE(completeScope());
    ASSERT_NO_FATAL_FAILURE(decideAndPlan());
    ASSERT_NO_FATAL_FAILURE(signContract());
    ASSERT_NO_FATAL_FAILURE(lend());
    ASSERT_NO_FATAL_FAILURE(billAndPay());
    ASSERT_NO_FATAL_FAILURE(punch());
    ASSERT_NO_FATAL_FAILURE(finishWork());
    ASSERT_NO_FATAL_FAILURE(close());
    ASSERT_NO_FATAL_FAILURE(agreeWithTheCommandLine());
}

}  // namespace
}  // namespace ledgerboard::ui
