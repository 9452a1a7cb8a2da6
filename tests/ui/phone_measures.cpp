// How long does the phone take, and how much does it hold? Medians on this machine, without a
// display: from nothing to the first frame that shows a job of 300 items and 2,000 photos; the
// longest frame while a list of 1,000 items and a grid of 500 pictures are flung from end to end;
// the memory after every photo was browsed; from the tap on "finished" to the mark being on disk.
// Not a test: figures are reported, and fail nothing. Without a graphics card each frame is painted
// by the processor.
//
// Usage: phone-measures FOLDER   (on a disk, not in memory; it is filled and can be thrown away)
#include <algorithm>
#include <cstdio>
#include <vector>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QTest>

#include "mobile/mark_desk.h"
#include "tests/support/fixed_chance.h"
#include "tests/ui/alder_street.h"
#include "tests/ui/thumb.h"

namespace {

using namespace ledgerboard;

constexpr int kItems = 295;  // beside the five of the house
constexpr int kPhotos = 2'000;
constexpr int kLong = 995;
constexpr int kPictures = 500;

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

// 500 pictures as a telephone's camera makes them, 12 megapixels each: one file, under many names.
QString makePictures(const QString& folder) {
    QDir().mkpath(folder);
    QImage picture(4'000, 3'000, QImage::Format_RGB32);
    for (int y = 0; y < picture.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(picture.scanLine(y));
        for (int x = 0; x < picture.width(); ++x) {
            line[x] = qRgb(x * 255 / picture.width(), y * 255 / picture.height(), (x ^ y) & 0xff);
        }
    }
    const QString first = folder + QStringLiteral("/0.jpg");
    picture.save(first, "JPG", 85);
    for (int k = 1; k < kPictures; ++k) {
        QFile::link(first, folder + QStringLiteral("/%1.jpg").arg(k));
    }
    return folder;
}

// What this process holds now, in MB, after the kernel's own count (proc(5), VmRSS).
double heldMb() {
    QFile status(QStringLiteral("/proc/self/status"));
    if (status.open(QIODevice::ReadOnly)) {
        for (QByteArray line = status.readLine(); !line.isEmpty(); line = status.readLine()) {
            if (line.startsWith("VmRSS:")) {
                return line.mid(6).trimmed().split(' ').first().toDouble() / 1024;
            }
        }
    }
    return 0;
}

// Moves a list or grid from its top to its foot in steps, as a hard fling does, and paints each.
// Returns the milliseconds of each frame.
std::vector<double> fling(ui::Thumb& thumb, const QString& name) {
    std::vector<double> frames;
    QQuickItem* list = thumb.find(name);
    if (list == nullptr) {
        return frames;
    }
    constexpr int kFrames = 200;
    for (int k = 0; k <= kFrames; ++k) {
        const double end =
            std::max(0.0, list->property("contentHeight").toDouble() - list->height());
        QElapsedTimer timer;
        timer.start();
        list->setProperty("contentY", list->property("originY").toDouble() + end * k / kFrames);
        (void)thumb.view().grabWindow();
        frames.push_back(milliseconds(timer));
        QCoreApplication::processEvents();
    }
    return frames;
}

void report(const char* what, std::vector<double> frames) {
    if (frames.empty()) {
        std::printf("%s: not found\n", what);
        return;
    }
    const double longest = *std::max_element(frames.begin(), frames.end());
    std::printf("%s: longest frame %.0f ms, median %.0f ms of %zu\n", what, longest, median(frames),
                frames.size());
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

void flingAll(const QString& folder, const QString& pictures) {
    const std::string path = (folder + QStringLiteral("/long.book")).toStdString();
    for (const char* tail : {"", "-wal", "-shm"}) {
        QFile::remove(QString::fromStdString(path + tail));
    }
    ui::Held held;
    held.now = ui::noonOnFriday();
    held.book = QString::fromStdString(ui::buildAlderStreet(path, kLong).path);
    held.pictures = pictures;
    ui::Thumb thumb(held);
    report("flinging a list of 1,000 items", fling(thumb, QStringLiteral("items")));
    thumb.tap("tool-photo");
    std::printf("held before any picture was seen: %.0f MB\n", heldMb());
    report("flinging a grid of 500 pictures", fling(thumb, QStringLiteral("pictures")));
    // Slowly, so that each is decoded.
    QQuickItem* grid = thumb.find(QStringLiteral("pictures"));
    for (double y = 0; grid != nullptr && y < grid->property("contentHeight").toDouble();
         y += grid->height()) {
        grid->setProperty("contentY", y);
        QTest::qWait(400);
        (void)thumb.view().grabWindow();
    }
    std::printf("held after all of them were seen: %.0f MB\n", heldMb());
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
    const QString pictures = makePictures(QString::fromLocal8Bit(argv[1]) + "/pictures");
    flingAll(QString::fromLocal8Bit(argv[1]), pictures);
    const auto marks = markMany(held, house);
    if (!marks.empty()) {
        std::printf("tap on finished to durable: %.1f ms (median of %zu), longest %.1f ms\n",
                    median(marks), marks.size(), *std::max_element(marks.begin(), marks.end()));
    }
    return 0;
}
