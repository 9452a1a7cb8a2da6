// How long does the phone take? Medians on this machine, without a display: from nothing to the
// first frame that shows a job of 300 items and 2,000 photos, and from the tap on "finished" to the
// mark being on disk. Not a test: times are reported, and fail nothing.
//
// Usage: phone-measures FOLDER   (on a disk, not in memory; it is filled and can be thrown away)
#include <algorithm>
#include <cstdio>
#include <vector>

#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QTest>

#include "mobile/mark_desk.h"
#include "tests/support/fixed_chance.h"
#include "tests/ui/alder_street.h"
#include "tests/ui/thumb.h"

namespace {

using namespace ledgerboard;

constexpr int kItems = 295;  // beside the five of the house
constexpr int kPhotos = 2'000;

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

double milliseconds(const QElapsedTimer& timer) {
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

void addPhotos(const ui::AlderStreet& house) {
    auto book = store::Book::open(house.path, ledgerboard::tests::fixedChance(4));
    const auto rows = ui::rowsOf(house);
    store::Action action("photos");
    for (int k = 0; k < kPhotos; ++k) {
        model::Photo photo;
        photo.id = book.value().newId<model::Kind::Photo>(ui::noonOnFriday());
        photo.job = house.job;
        photo.space = rows.spaces[static_cast<std::size_t>(k) % rows.spaces.size()].id;
        photo.stage = model::Stage::During;
        photo.takenAt = ui::noonOnFriday();
        action.add(photo);
    }
    if (!book.value().commit(action, ui::noonOnFriday()).ok()) {
        std::fputs("the photos could not be written\n", stderr);
    }
}

// From nothing to a screen that shows the job.
double startOnce(const ui::Held& held) {
    QElapsedTimer timer;
    timer.start();
    ui::Thumb thumb(held, ui::Thumb::Settle::No);
    (void)thumb.wait([&] { return thumb.book().state() == phone::JobBook::Open; });
    (void)thumb.view().grabWindow();
    return milliseconds(timer);
}

// Each in turn of the items of the kitchen.
std::vector<double> markMany(const ui::Held& held, const ui::AlderStreet& house) {
    ui::Thumb thumb(held);
    std::vector<double> times;
    phone::MarkDesk desk;
    for (const auto& item : ui::rowsOf(house).items) {
        if (item.object.rfind("outlet", 0) != 0 || times.size() == 25) {
            continue;
        }
        desk.setItemId(QString::fromStdString(item.id.raw().toString()));
        if (!desk.cautionAbout().isEmpty()) {
            (void)desk.acknowledge({});
            thumb.settle();
        }
        QElapsedTimer timer;
        timer.start();
        if (desk.keepFinished({})) {
            times.push_back(milliseconds(timer));
        }
        thumb.settle();
    }
    return times;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    if (argc != 2) {
        std::fputs("Usage: phone-measures FOLDER\n", stderr);
        return 2;
    }
    const std::string path = std::string(argv[1]) + "/measured.book";
    for (const char* tail : {"", "-wal", "-shm"}) {
        QFile::remove(QString::fromStdString(path + tail));
    }
    const auto house = ui::buildAlderStreet(path, kItems);
    addPhotos(house);
    ui::Held held;
    held.now = ui::noonOnFriday();
    held.book = QString::fromStdString(path);
    std::vector<double> starts;
    for (int k = 0; k < 5; ++k) {
        starts.push_back(startOnce(held));
    }
    std::printf("start to a screen that shows 300 items and 2,000 photos: %.0f ms (median of 5)\n",
                median(starts));
    const auto marks = markMany(held, house);
    if (!marks.empty()) {
        std::printf("tap on finished to durable: %.1f ms (median of %zu), longest %.1f ms\n",
                    median(marks), marks.size(), *std::max_element(marks.begin(), marks.end()));
    }
    return 0;
}
