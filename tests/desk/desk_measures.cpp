// What the desktop takes, on this machine, painted without a graphics card: medians of five and the
// longest of each, reported, never a test. Build it with the release preset.
//
// Usage: desk-measures
#include <algorithm>
#include <array>
#include <atomic>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <vector>

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QTest>
#include <QThreadPool>

#include "core/compute/risk.h"
#include "core/store/book.h"

#include "desktop/client/desk.h"
#include "tests/desk/hand.h"
#include "tests/support/fixed_chance.h"

namespace {

using namespace ledgerboard;
using ui::Hand;
using ui::Laid;

model::Instant noon() {
    return model::Instant::parse("2026-05-22T17:00Z").value();
}

// A book of `jobs` jobs with `items` priced and dated items each, in a dozen spaces.
std::string makeBook(const std::string& path, int jobs, int items) {
    auto book = store::Book::create(path, "Owner", noon(), tests::fixedChance(5));
    for (int j = 0; j < jobs; ++j) {
        store::Action action("start");
        model::Job job;
        job.id = book.value().newId<model::Kind::Job>(noon());
        job.name = std::to_string(10 + j) + " Birch Lane";
        job.currency = "USD";
        job.beginOn = model::Date::fromYmd(2026, 4, 6).value();
        job.purchasePrice = model::Money::of(150'000);
        job.resaleLikely = model::Money::of(300'000);
        job.workWeek = model::Weekdays::mondayToFriday();
        action.add(job);
        std::vector<model::Id<model::Kind::Space>> spaces;
        for (int k = 0; k < 12; ++k) {
            model::Space space;
            space.id = book.value().newId<model::Kind::Space>(noon());
            space.job = job.id;
            space.name = "Room " + std::to_string(k + 1);
            space.walkOrder = k + 1;
            action.add(space);
            spaces.push_back(space.id);
        }
        std::vector<model::Id<model::Kind::Item>> ids;
        for (int k = 0; k < items; ++k) {
            model::Item item;
            item.id = book.value().newId<model::Kind::Item>(noon());
            item.job = job.id;
            item.space = spaces[static_cast<std::size_t>(k % 12)];
            item.treatment = model::Treatment::Replace;
            item.object = "part " + std::to_string(k);
            item.trade = "trade " + std::to_string(k % 9);
            item.quantity = model::Quantity::of(10 + k % 40);
            item.unit = "each";
            item.unitCostMaterial = model::Money::fromMinor(250 + k % 700);
            item.unitCostLabour = model::Money::fromMinor(400 + k % 900);
            item.daysLikely = model::Quantity::of(1 + k % 4);
            item.plannedStartOn = model::Date::fromYmd(2026, 4, 6 + k % 20).value();
            item.plannedFinishOn = model::Date::fromYmd(2026, 4, 8 + k % 20).value();
            action.add(item);
            // In each room one thing after the other.
            if (k >= 12) {
                model::Link link;
                link.id = book.value().newId<model::Kind::Link>(noon());
                link.job = job.id;
                link.fromItem = ids[static_cast<std::size_t>(k - 12)];
                link.toItem = item.id;
                action.add(link);
            }
            ids.push_back(item.id);
        }
        (void)book.value().commit(action, noon());
    }
    return path;
}

void report(const char* what, std::vector<double> ms) {
    std::sort(ms.begin(), ms.end());
    std::printf("%-58s median %7.1f ms, longest %7.1f ms\n", what, ms[ms.size() / 2], ms.back());
}

double since(const QElapsedTimer& timer) {
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

// From the press of a key until the picture that it changed is painted.
double press(Hand& hand, int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    bool painted = false;
    const auto connection =
        QObject::connect(&hand.view(), &QQuickWindow::frameSwapped, [&painted] { painted = true; });
    QElapsedTimer timer;
    timer.start();
    QTest::keyClick(&hand.view(), static_cast<Qt::Key>(key), with);
    while (!painted && timer.elapsed() < 3'000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
    }
    QObject::disconnect(connection);
    return since(timer);
}

Laid laidOver(const std::string& book) {
    Laid laid;
    laid.now = noon();
    laid.book = QString::fromStdString(book);
    return laid;
}

void measureStart(const std::string& book) {
    std::vector<double> first;
    std::vector<double> all;
    for (int k = 0; k < 5; ++k) {
        QElapsedTimer timer;
        timer.start();
        Laid laid = laidOver(book);
        laid.waits = false;
        Hand hand(laid);
        first.push_back(since(timer));
        hand.settle();
        all.push_back(since(timer));
    }
    report("20 jobs of 60 items: to the first frame", first);
    report("20 jobs of 60 items: until every figure stands", all);
}

void measureTyping(const std::string& book) {
    Hand hand(laidOver(book));
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_3, Qt::ControlModifier);
    hand.keys(Qt::Key_Right, 2);
    std::vector<double> totals;
    for (int k = 0; k < 5; ++k) {
        hand.key(Qt::Key_Return);
        hand.type(QString::number(61 + k));
        const QString before = hand.said(QStringLiteral("lineSum")).value(0);
        QElapsedTimer timer;
        timer.start();
        QTest::keyClick(&hand.view(), Qt::Key_Return);
        while (hand.said(QStringLiteral("lineSum")).value(0) == before && timer.elapsed() < 3'000) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
        }
        totals.push_back(since(timer));
        hand.settle();
    }
    report("300 items: Enter in a cell to the sums anew", totals);
}

// A letter of the filter, again and again while `goesOn`.
void reportLetters(Hand& hand, const std::string& what, const std::function<bool()>& goesOn) {
    const std::array keys = {Qt::Key_P, Qt::Key_A, Qt::Key_R, Qt::Key_T, Qt::Key_Escape};
    std::vector<double> letters;
    while (goesOn() && letters.size() < 1'000) {
        letters.push_back(press(hand, keys[letters.size() % keys.size()]));
    }
    if (!letters.empty()) {
        report((what + " (" + std::to_string(letters.size()) + " letters)").c_str(), letters);
    }
}

// Typing in the scope while risk is worked out beside it: the page's own after a change, and then
// 10,000 trials over 300 items, each after the one before it in its room, ten times.
void measureRisk(const std::string& book) {
    Hand hand(laidOver(book));
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_3, Qt::ControlModifier);
    hand.keys(Qt::Key_Right, 2);
    hand.key(Qt::Key_Return);
    hand.type(QStringLiteral("77"));
    hand.key(Qt::Key_Return);  // what stood until now is worked out anew
    desk::Desk& desk = *desk::Desk::here();
    QElapsedTimer timer;
    timer.start();
    desk.turnTo(QStringLiteral("deal"));
    while (!desk.isBusy() && timer.elapsed() < 3'000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
    }
    desk.turnTo(QStringLiteral("scope"));
    reportLetters(hand, "300 items: a letter while the page is worked out",
                  [&desk] { return desk.isBusy(); });
    compute::RiskInput input;
    input.trials = 10'000;
    for (std::size_t k = 0; k < 300; ++k) {
        const auto cost = static_cast<std::int64_t>(100'000 + k * 700);
        input.items.push_back({{cost, cost + 30'000, cost + 120'000}, {2'000, 3'000, 5'000}, {}});
        if (k >= 12) {
            input.precedences.push_back({k - 12, k, model::LinkKind::FinishToStart, 0});
        }
    }
    std::atomic<int> left = 10;
    timer.restart();
    QThreadPool::globalInstance()->start([&input, &left] {
        for (; left > 0; --left) {
            (void)compute::simulateRisk(input);
        }
    });
    reportLetters(hand, "300 items: a letter while risk is run", [&left] { return left > 0; });
    left = 0;
    QThreadPool::globalInstance()->waitForDone();
    std::printf("300 items: ten runs of risk, 10,000 trials each, beside typing %.0f ms\n",
                since(timer));
}

void measureScrolling(const std::string& book) {
    Hand hand(laidOver(book));
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_3, Qt::ControlModifier);
    std::vector<double> pages;
    for (int k = 0; k < 200; ++k) {
        pages.push_back(press(hand, Qt::Key_PageDown));
    }
    report("10,000 rows: a page down, key to picture", pages);
    std::vector<double> rows;
    for (int k = 0; k < 200; ++k) {
        rows.push_back(press(hand, Qt::Key_Down));
    }
    report("10,000 rows: a row down, key to picture", rows);
    std::vector<double> letters;
    for (const int key : {Qt::Key_P, Qt::Key_A, Qt::Key_R, Qt::Key_T, Qt::Key_Space, Qt::Key_7}) {
        letters.push_back(press(hand, key));
    }
    report("10,000 rows: a letter of the filter, key to picture", letters);
}

// The first item of a room is moved day by day, and pushes all others of it.
void measureSchedule(const std::string& book, const char* size) {
    Hand hand(laidOver(book));
    hand.key(Qt::Key_Return);
    QElapsedTimer timer;
    timer.start();
    hand.key(Qt::Key_5, Qt::ControlModifier);
    std::printf("%s items: the schedule laid out %26.1f ms\n", size, since(timer));
    std::vector<double> rows;
    for (int k = 0; k < 40; ++k) {
        rows.push_back(press(hand, Qt::Key_Down));
    }
    const std::string what(size);
    report((what + " items: a row down the schedule, key to picture").c_str(), rows);
    hand.key(Qt::Key_Home);
    hand.key(Qt::Key_Return);
    std::vector<double> days;
    for (int k = 0; k < 20; ++k) {
        days.push_back(press(hand, Qt::Key_Right));
    }
    report((what + " items: moved a day with all it pushes, key to picture").c_str(), days);
    hand.key(Qt::Key_Escape);
}

}  // namespace

int main(int argc, char** argv) {
    tests::preferMemory();
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    const tests::TestFolder folder("desk-measures");
    measureStart(makeBook(folder.file("twenty.book"), 20, 60));
    measureTyping(makeBook(folder.file("house.book"), 1, 300));
    measureRisk(folder.file("house.book"));
    measureSchedule(folder.file("house.book"), "300");
    measureSchedule(makeBook(folder.file("long.book"), 1, 1'000), "1,000");
    measureScrolling(makeBook(folder.file("large.book"), 1, 10'000));
    return 0;
}
