// Protects the schedule: an item is moved by real keys and by the mouse, what it pushes is told
// before it is let go, nothing is written before that, and undo takes it back; what can't be moved
// says why; items are linked, their links changed and taken away.
//
// Hand calculation for the demo house on Friday 22 May 2026 (Monday 25 May is a holiday):
// Kitchen/backsplash takes 4 days from Wed 27 May, the day after Kitchen/counter top ends. Six
// working days later is Thu 4 Jun (28 and 29 May, 1 to 4 Jun), its fourth day Tue 9 Jun. The final
// clean takes the next day, Wed 10 Jun: two working days after Mon 8 Jun.
#include <fstream>

#include <nlohmann/json.hpp>

#include <QTest>

#include "tests/desk/desk_test.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

using model::Date;

class ScheduleTest : public DeskTest {
  protected:
    std::string book_;

    Hand& openSchedule(Laid laid = {}) {
        if (book_.empty()) {
            book_ = demo();
        }
        open(book_, laid).key(Qt::Key_5, Qt::ControlModifier);
        return *hand_;
    }

    // The job as a book opened anew holds it.
    model::JobRows rows() { return jobIn(book_); }

    model::Item item(const std::string& object) {
        for (const auto& one : rows().items) {
            if (one.object == object) {
                return one;
            }
        }
        ADD_FAILURE() << "no item " << object;
        return {};
    }

    std::optional<model::Link> linkBetween(const std::string& from, const std::string& to) {
        const auto first = item(from).id;
        const auto second = item(to).id;
        for (const auto& link : rows().links) {
            if (link.fromItem == first && link.toItem == second) {
                return link;
            }
        }
        return std::nullopt;
    }

    static QPoint middle(const QQuickItem& item) {
        return item.mapToScene(QPointF(item.width() / 2, item.height() / 2)).toPoint();
    }

    QQuickItem* rowNamed(const QString& name) {
        for (auto* item : hand_->all("scheduleName")) {
            if (item->property("text").toString() == name) {
                return item;
            }
        }
        return nullptr;
    }

    nlohmann::json plan() {
        const cli::Answer answer =
            cli::CommandLine(book_)({"plan", "--as-of", "2026-05-22", "--json"});
        EXPECT_EQ(answer.status, 0) << answer.err;
        return nlohmann::json::parse(answer.out, nullptr, false);
    }

    static QString only(const QStringList& list) {
        return list.size() == 1 ? list.front() : QStringLiteral("?");
    }
};

Date day(const char* text) {
    return Date::parse(text).value();
}

TEST_F(ScheduleTest, MovedByKeysWithWhatItPushesToldAndUndone) {
    Hand& hand = openSchedule();
    EXPECT_EQ(only(hand.said("scheduleFinish")), "Mon 8 Jun");
    const auto before = item("backsplash");
    hand.type("backsplash");
    ASSERT_TRUE(hand.says("Waits for Kitchen/counter top.")) << "what holds it";
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Right, 6);
    EXPECT_EQ(only(hand.said("moveText")),
              "Kitchen/backsplash: from Wed 27 May to Thu 4 Jun, ending Tue 9 Jun. It follows "
              "Kitchen/counter top after 6 days.");
    EXPECT_EQ(only(hand.said("pushText")),
              "The finish moves to Wed 10 Jun, 2 working days later. It pushes 1: Whole "
              "house/final clean.");
    EXPECT_EQ(only(hand.said("scheduleFinish")), "Wed 10 Jun");
    EXPECT_EQ(item("backsplash").plannedStartOn, before.plannedStartOn) << "not let go yet";
    hand.key(Qt::Key_Return);
    EXPECT_EQ(item("backsplash").plannedStartOn, day("2026-06-04"));
    EXPECT_EQ(item("backsplash").plannedFinishOn, day("2026-06-09"));
    EXPECT_EQ(plan()["will_finish_on"], "2026-06-10");
    EXPECT_EQ(only(hand.said("scheduleFinish")), "Wed 10 Jun");
    EXPECT_TRUE(hand.says("Kitchen/backsplash starts Thu 4 Jun"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(item("backsplash").plannedStartOn, before.plannedStartOn);
    EXPECT_EQ(plan()["will_finish_on"], "2026-06-08");
    EXPECT_EQ(only(hand.said("scheduleFinish")), "Mon 8 Jun");
}

TEST_F(ScheduleTest, NoSoonerThanWhatComesBefore) {
    Hand& hand = openSchedule();
    hand.type("backsplash");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Left);
    EXPECT_EQ(only(hand.said("moveText")),
              "Kitchen/backsplash can't start before Wed 27 May. Waits for Kitchen/counter top.");
    EXPECT_EQ(only(hand.said("pushText")), "");
    // From there one step later is one day later, however far it was pulled the other way.
    hand.keys(Qt::Key_Left, 4);
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.said("moveText").isEmpty());
    EXPECT_FALSE(hand.says("starts")) << "nothing was written";
    // A lag once given is taken back.
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Right, 1, Qt::ShiftModifier);
    hand.key(Qt::Key_Return);
    EXPECT_EQ(item("backsplash").plannedStartOn, day("2026-06-03"));
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Left, 4);
    EXPECT_TRUE(only(hand.said("moveText")).contains("It follows Kitchen/counter top after 1 day."))
        << only(hand.said("moveText")).toStdString();
    hand.key(Qt::Key_Return);
    EXPECT_EQ(item("backsplash").plannedStartOn, day("2026-05-28"));
}

TEST_F(ScheduleTest, EscapePutsItBack) {
    Hand& hand = openSchedule();
    hand.type("backsplash");
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Right, 9);
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.said("moveText").isEmpty());
    EXPECT_EQ(only(hand.said("scheduleFinish")), "Mon 8 Jun");
    EXPECT_EQ(only(hand.said("scheduleFilter")), "backsplash") << "the filter is left for later";
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.said("scheduleFilter").isEmpty());
}

TEST_F(ScheduleTest, DraggedByTheMouse) {
    Hand& hand = openSchedule();
    hand.type("backsplash");
    auto* bar = hand.find("scheduleBar");
    ASSERT_NE(bar, nullptr);
    const double dayWidth = (bar->width() + 1) / 6;  // Wed 27 May to Mon 1 Jun
    QPoint at = bar->mapToScene(QPointF(bar->width() / 2, bar->height() / 2)).toPoint();
    QTest::mousePress(&hand.view(), Qt::LeftButton, {}, at);
    for (int step = 1; step <= 16; ++step) {
        QTest::mouseMove(&hand.view(), at + QPoint(static_cast<int>(dayWidth * step / 2), 0));
    }
    hand.settle();
    EXPECT_TRUE(only(hand.said("moveText")).contains("to Thu 4 Jun, ending Tue 9 Jun"))
        << only(hand.said("moveText")).toStdString();
    EXPECT_TRUE(only(hand.said("pushText")).contains("Wed 10 Jun"));
    EXPECT_NE(item("backsplash").plannedStartOn, day("2026-06-04")) << "not let go yet";
    QTest::mouseRelease(&hand.view(), Qt::LeftButton, {},
                        at + QPoint(static_cast<int>(dayWidth * 8), 0));
    hand.settle();
    EXPECT_EQ(item("backsplash").plannedStartOn, day("2026-06-04"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(only(hand.said("scheduleFinish")), "Mon 8 Jun");
}

TEST_F(ScheduleTest, EscapeInTheMiddleOfADragWritesNothing) {
    Hand& hand = openSchedule();
    hand.type("backsplash");
    auto* bar = hand.find("scheduleBar");
    ASSERT_NE(bar, nullptr);
    const QPoint at = bar->mapToScene(QPointF(bar->width() / 2, bar->height() / 2)).toPoint();
    const auto before = item("backsplash").plannedStartOn;
    QTest::mousePress(&hand.view(), Qt::LeftButton, {}, at);
    for (int step = 1; step <= 10; ++step) {
        QTest::mouseMove(&hand.view(), at + QPoint(6 * step, 0));
    }
    hand.settle();
    EXPECT_FALSE(hand.said("moveText").isEmpty());
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.said("moveText").isEmpty());
    QTest::mouseRelease(&hand.view(), Qt::LeftButton, {}, at + QPoint(60, 0));
    hand.settle();
    EXPECT_EQ(item("backsplash").plannedStartOn, before);
}

// Bathroom/vanity does not wait for Kitchen/backsplash, which ends on Mon 1 Jun (see above).
TEST_F(ScheduleTest, ALinkIsMadeByKeysWithItsLagAndUndone) {
    Hand& hand = openSchedule();
    const auto before = rows().links.size();
    hand.type("backsplash");
    hand.key(Qt::Key_J, Qt::ControlModifier);
    EXPECT_EQ(only(hand.said("aimText")), "What starts after Kitchen/backsplash? Go to it.");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Go to the item that starts after Kitchen/backsplash first."));
    hand.key(Qt::Key_Backspace);
    hand.keys(Qt::Key_Backspace, 9);
    hand.type("vanity");
    EXPECT_EQ(only(hand.said("aimText")),
              "Bathroom/vanity starts once Kitchen/backsplash is finished.");
    EXPECT_TRUE(only(hand.said("aimRest")).startsWith("The finish "));
    hand.keys(Qt::Key_Right, 2);
    EXPECT_EQ(only(hand.said("aimText")),
              "Bathroom/vanity starts once Kitchen/backsplash is finished, 2 working days later.");
    EXPECT_EQ(rows().links.size(), before) << "not let go yet";
    hand.key(Qt::Key_Return);
    const auto made = linkBetween("backsplash", "vanity");
    ASSERT_TRUE(made.has_value());
    EXPECT_EQ(made->lag, model::Quantity::of(2));
    EXPECT_EQ(made->type, model::LinkKind::FinishToStart);
    EXPECT_TRUE(hand.said("aimText").isEmpty());
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(linkBetween("backsplash", "vanity").has_value());
}

TEST_F(ScheduleTest, ALinkIsPulledByTheMouse) {
    Hand& hand = openSchedule();
    hand.key(Qt::Key_O, Qt::ControlModifier);  // open work only: both rows are in sight
    auto* name = rowNamed("Add backsplash");
    ASSERT_NE(name, nullptr);
    QTest::mouseClick(&hand.view(), Qt::LeftButton, {}, middle(*name));
    hand.settle();
    auto* end = hand.find("scheduleEndHold");
    auto* row = rowNamed("Replace range");
    ASSERT_TRUE(end != nullptr && row != nullptr);
    const QPoint from = middle(*end);
    const QPoint to(from.x(), middle(*row).y());
    QTest::mousePress(&hand.view(), Qt::LeftButton, {}, from);
    for (int step = 1; step <= 10; ++step) {
        QTest::mouseMove(&hand.view(), from + (to - from) * step / 10);
    }
    hand.settle();
    EXPECT_EQ(only(hand.said("aimText")),
              "Kitchen/range starts once Kitchen/backsplash is finished.");
    EXPECT_FALSE(linkBetween("backsplash", "range").has_value()) << "not let go yet";
    QTest::mouseRelease(&hand.view(), Qt::LeftButton, {}, to);
    hand.settle();
    EXPECT_TRUE(linkBetween("backsplash", "range").has_value());
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(linkBetween("backsplash", "range").has_value());
}

// Kitchen/backsplash waits for Kitchen/counter top: the other way round would be a ring.
TEST_F(ScheduleTest, ARingAndALinkThatIsThereAreRefused) {
    Hand& hand = openSchedule();
    const auto before = rows().links.size();
    hand.type("backsplash");
    hand.key(Qt::Key_J, Qt::ControlModifier);
    hand.keys(Qt::Key_Backspace, 10);
    hand.type("counter top");
    EXPECT_TRUE(
        only(hand.said("aimRest")).startsWith("They would wait for each other in a ring: "));
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.desk().notKeptText().contains("in a ring"));
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_J, Qt::ControlModifier);  // from the counter top to the backsplash, which is
    hand.keys(Qt::Key_Backspace, 11);
    hand.type("backsplash");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Kitchen/backsplash waits for Kitchen/counter top already"));
    EXPECT_EQ(rows().links.size(), before);
}

TEST_F(ScheduleTest, LinksAreListedChangedAndTakenAway) {
    Hand& hand = openSchedule();
    hand.type("backsplash");
    hand.key(Qt::Key_I, Qt::ControlModifier);
    const auto at = hand.said("linkOther").indexOf("Kitchen/counter top");
    ASSERT_GE(at, 0);
    EXPECT_EQ(hand.said("linkHeading").value(0), "It waits for");
    hand.keys(Qt::Key_Down, static_cast<int>(at));
    hand.keys(Qt::Key_Right, 1);
    EXPECT_EQ(linkBetween("counter top", "backsplash")->lag, model::Quantity::of(1));
    EXPECT_EQ(hand.said("linkHow").value(at),
              "starts once that one is finished, 1 working day later");
    hand.key(Qt::Key_Left);
    EXPECT_FALSE(linkBetween("counter top", "backsplash")->lag.has_value());
    hand.key(Qt::Key_Space);
    EXPECT_EQ(linkBetween("counter top", "backsplash")->type, model::LinkKind::StartToStart);
    EXPECT_EQ(hand.said("linkHow").value(at), "starts once that one has started");
    hand.click("linkDrop");
    EXPECT_FALSE(linkBetween("counter top", "backsplash").has_value());
    EXPECT_FALSE(hand.said("linkOther").contains("Kitchen/counter top"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(linkBetween("counter top", "backsplash").has_value());
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.all("linksTitle").empty());
}

TEST_F(ScheduleTest, WhatCannotBeMovedSaysWhy) {
    Hand& hand = openSchedule();
    hand.type("shower tile");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Bathroom/shower tile is under way"));
    hand.key(Qt::Key_Escape);
    hand.type("gutters");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Outside/gutters is finished"));
    hand.key(Qt::Key_Escape);
    hand.type("flue");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("Living room/flue has no days"));
    EXPECT_TRUE(hand.said("moveText").isEmpty());
}

TEST_F(ScheduleTest, SpacesOrCrewsDownAndOpenWorkOnly) {
    Hand& hand = openSchedule();
    EXPECT_EQ(hand.said("scheduleHeadingText").value(0), "Outside");
    hand.key(Qt::Key_G, Qt::ControlModifier);
    EXPECT_TRUE(hand.said("scheduleHeadingText").value(0).contains("crew"));
    hand.key(Qt::Key_G, Qt::ControlModifier);
    hand.key(Qt::Key_O, Qt::ControlModifier);
    EXPECT_EQ(hand.said("scheduleName").value(0), "Refinish trim") << "the roof is finished";
    hand.key(Qt::Key_O, Qt::ControlModifier);
    EXPECT_EQ(hand.said("scheduleName").value(0), "Repair roof");
}

TEST_F(ScheduleTest, ThePointerIsToldTheDayAndTheItem) {
    Hand& hand = openSchedule();
    hand.type("backsplash");
    auto* bar = hand.find("scheduleBar");
    ASSERT_NE(bar, nullptr);
    QTest::mouseMove(&hand.view(), bar->mapToScene(QPointF(3, 3)).toPoint());
    hand.settle();
    EXPECT_EQ(only(hand.said("toldDay")), "Wed 27 May");
    EXPECT_EQ(only(hand.said("toldText")),
              "Kitchen/backsplash: On site Wed 27 May to Mon 1 Jun, 4 days");
}

// Ctrl+K writes what `plan --keep` writes: the same planned dates, of the same items.
TEST_F(ScheduleTest, TheDaysAreKeptAsPlannedLikeTheVerb) {
    book_ = demo();
    const std::string other = folder_.file("other.book");
    std::filesystem::copy_file(book_, other);
    const cli::Answer answer = cli::CommandLine(other)({"plan", "--keep", "--as-of", "2026-05-22"});
    ASSERT_EQ(answer.status, 0) << answer.err;
    Hand& hand = openSchedule();
    hand.key(Qt::Key_K, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("Planned dates of"));
    const auto mine = rows().items;
    book_ = other;
    const auto theirs = rows().items;
    ASSERT_EQ(mine.size(), theirs.size());
    for (std::size_t k = 0; k < mine.size(); ++k) {
        EXPECT_EQ(mine[k].plannedStartOn, theirs[k].plannedStartOn) << mine[k].object;
        EXPECT_EQ(mine[k].plannedFinishOn, theirs[k].plannedFinishOn) << mine[k].object;
    }
    hand.key(Qt::Key_K, Qt::ControlModifier);
    EXPECT_TRUE(hand.says("The planned dates are these already."));
}

TEST_F(ScheduleTest, AJobWithoutItemsSaysWhatComesFirst) {
    book_ = folder_.file("new.book");
    ASSERT_EQ(cli::CommandLine(book_)({"start", "9 Birch Lane"}).status, 0);
    Hand& hand = openSchedule();
    EXPECT_EQ(hand.said("scheduleEmpty").size(), 1);
    hand.click("scheduleToScope");
    EXPECT_EQ(hand.desk().page(), "scope");
}

// Two devices may each link one way; the page then says which items wait for each other.
TEST_F(ScheduleTest, ARingIsNamed) {
    book_ = demo();
    {
        auto book = store::Book::open(book_, ledgerboard::tests::fixedChance(4));
        ASSERT_TRUE(book.ok());
        model::Link link;
        link.id = book.value().newId<model::Kind::Link>(noonOnThatFriday());
        link.job = book.value().rows<model::Job>().value().front().id;
        link.fromItem = item("backsplash").id;
        link.toItem = item("counter top").id;
        store::Action action("link");
        action.add(link);
        ASSERT_TRUE(book.value().commit(action, noonOnThatFriday()).ok());
    }
    Hand& hand = openSchedule();
    EXPECT_EQ(only(hand.said("scheduleFinish")), "not known");
    EXPECT_TRUE(
        hand.says("wait for each other in a ring: Kitchen/counter top > "
                  "Kitchen/backsplash > Kitchen/counter top."));
    hand.type("backsplash");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.says("so the plan has no days"));
}

// A thousand items are laid out, walked and moved.
TEST_F(ScheduleTest, AThousandItems) {
    book_ = folder_.file("long.book");
    ASSERT_EQ(cli::CommandLine(book_)({"start", "Long Row", "--begin", "2026-05-26"}).status, 0);
    std::string csv = "Space,Treatment,Object,Days,Planned start,Planned finish\n";
    for (int k = 0; k < 1'000; ++k) {
        csv += "Room " + std::to_string(k / 20 + 1) + ",replace,part " + std::to_string(k) +
               ",2,2026-06-01,2026-06-02\n";
    }
    const std::string file = folder_.file("long.csv");
    std::ofstream(file) << csv;
    ASSERT_EQ(cli::CommandLine(book_)({"bring", "scope", file}).status, 0);
    Hand& hand = openSchedule();
    EXPECT_TRUE(only(hand.said("scheduleCount")).startsWith("1000 items"))
        << only(hand.said("scheduleCount")).toStdString();
    hand.key(Qt::Key_End);
    EXPECT_EQ(only(hand.said("scheduleItem")), "Room 50/part 999");
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Right, 3);
    EXPECT_TRUE(only(hand.said("moveText")).contains("to Thu 4 Jun, ending Fri 5 Jun"));
    hand.key(Qt::Key_Escape);
}

}  // namespace
}  // namespace ledgerboard::ui
