// Makes a picture of every screen of the phone: light, dark and sun; English and Spanish; empty and
// full; type at 100 and at 200 %. To be looked at.
//
// Usage: phone-pictures BOOK FOLDER PICTURES [ONLY]
//   BOOK      the demo house, as ./try makes it, with its photos beside it
//   FOLDER    where the pictures go
//   PICTURES  what the phone's camera is to have taken
//   ONLY      a part of the names of those to make
#include <functional>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>

#include "tests/ui/thumb.h"

namespace {

using ledgerboard::ui::Held;
using ledgerboard::ui::Thumb;

struct Scene {
    const char* name;
    std::function<void(Thumb&)> reach;
    bool full = true;  // over the demo house; else without a book
};

void inRoom(Thumb& thumb, const char* name) {
    thumb.tap("wholeHouse");
    thumb.tapText("space", QLatin1String(name));
}

void inKitchen(Thumb& thumb) {
    inRoom(thumb, "Kitchen");
}

const std::vector<Scene>& scenes() {
    static const std::vector<Scene> kScenes = {
        {"start", [](Thumb&) {}, false},
        {"begin", [](Thumb& thumb) { thumb.tap("begin"); }, false},
        {"house", [](Thumb& thumb) { thumb.tap("wholeHouse"); }},
        {"space", inKitchen},
        {"mark-list",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tap("tool-mark");
         }},
        {"mark",
         [](Thumb& thumb) {
             inRoom(thumb, "Bathroom");
             thumb.tapText("item", "shower");
             thumb.drag("pull", 0.5, 0.7);
         }},
        {"mark-caution",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tapText("item", "range");
         }},
        {"mark-counted",
         [](Thumb& thumb) {
             inRoom(thumb, "Stairs");
             thumb.tapText("item", "treads");
         }},
        {"kept",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tap("item", 1);
             thumb.tap("finished");
         }},
        {"photo",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tap("tool-photo");
             thumb.tap("stage", 2);
         }},
        {"punch",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tap("tool-punch");
             thumb.tap("crew", 1);
         }},
        {"look",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.scrollTo("punchItem");
             thumb.tap("punchItem");
         }},
        {"space-punch",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.scrollTo("addNote");
         }},
        {"receipt",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tap("tool-receipt");
             thumb.tap("key2");
             thumb.tap("key1");
             thumb.tap("key4");
             thumb.tap("key6");
             thumb.scrollTo("key0");
             thumb.tap("key0");
         }},
        {"devices",
         [](Thumb& thumb) {
             thumb.tap("wholeHouse");
             thumb.scrollTo("devices");
             thumb.tap("devices");
         }},
        {"walk",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.scrollTo("addItems");
             thumb.tap("addItems");
             thumb.type("walkNotes", "Replace the faucet. Repair the ceiling, forty square feet.");
             (void)thumb.wait([&] { return !thumb.all("draftItem").empty(); });
         }},
        {"note",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.scrollTo("addNote");
             thumb.tap("addNote");
         }},
        {"preferences",
         [](Thumb& thumb) {
             thumb.tap("wholeHouse");
             thumb.scrollTo("preferences");
             thumb.tap("preferences");
         }},
        {"which-space",
         [](Thumb& thumb) {
             thumb.tap("wholeHouse");
             thumb.tap("tool-mark");
         }},
    };
    return kScenes;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    if (argc < 4) {
        fputs("Usage: phone-pictures BOOK FOLDER PICTURES [ONLY]\n", stderr);
        return 2;
    }
    const QString book = QString::fromLocal8Bit(argv[1]);
    const QDir folder(QString::fromLocal8Bit(argv[2]));
    const QString pictures = QString::fromLocal8Bit(argv[3]);
    const QString only = argc > 4 ? QString::fromLocal8Bit(argv[4]) : QString();
    QDir().mkpath(folder.path());

    struct Look {
        const char* name;
        int theme;
        int percent;
        const char* language;
    };

    const Look looks[] = {{"light-en", 0, 100, "en"},
                          {"dark-en", 1, 100, "en"},
                          {"sun-en", 2, 100, "en"},
                          {"light-es", 0, 100, "es"},
                          {"light-en-200", 0, 200, "en"}};
    for (const auto& look : looks) {
        for (const auto& scene : scenes()) {
            const QString name =
                QStringLiteral("%1-%2").arg(QLatin1String(scene.name), QLatin1String(look.name));
            if (!only.isEmpty() && !name.contains(only)) {
                continue;
            }
            Held held;
            held.pictures = pictures;
            held.theme = look.theme;
            held.textPercent = look.percent;
            held.language = QLatin1String(look.language);
            // Friday 22 May 2026, noon in Chicago.
            held.now = ledgerboard::model::Instant::parse("2026-05-22T17:00Z").value();
            if (scene.full) {
                const QString copy = folder.filePath(QStringLiteral("copy.book"));
                for (const char* tail : {"", "-wal", "-shm"}) {
                    QFile::remove(copy + QLatin1String(tail));
                }
                QFile::copy(book, copy);
                QFile::remove(copy + QStringLiteral(".photos"));
                QFile::link(QFileInfo(book).absoluteFilePath() + QStringLiteral(".photos"),
                            copy + QStringLiteral(".photos"));
                held.book = copy;
            }
            Thumb thumb(held);
            scene.reach(thumb);
            thumb.shot(folder.filePath(name + QStringLiteral(".png")));
        }
    }
    for (const auto& complaint : Thumb::complaints()) {
        fprintf(stderr, "complaint: %s\n", qPrintable(complaint));
    }
    return Thumb::complaints().isEmpty() ? 0 : 1;
}
