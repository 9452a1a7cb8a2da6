// Makes a picture of every screen of the phone: light, dark and sun; English and Spanish; empty,
// full and hard to show; an owner's and a crew lead's; type at 100 and at 200 %. To be looked at:
// the target `phone-pictures` makes them all.
//
// Usage: phone-scenes BOOK FOLDER PICTURES [ONLY]
//   BOOK      the demo house, as ./try makes it, with its photos beside it
//   FOLDER    where the pictures go
//   PICTURES  what the phone's camera is to have taken
//   ONLY      a part of the names of those to make
#include <functional>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>

#include "tests/ui/hard_house.h"
#include "tests/ui/thumb.h"

namespace {

using ledgerboard::ui::Held;
using ledgerboard::ui::Thumb;

// Over which book a scene is reached.
enum class Over { Nothing, Demo, Lead, Hard };

struct Scene {
    const char* name;
    std::function<void(Thumb&)> reach;
    Over over = Over::Demo;
};

void inRoom(Thumb& thumb, const char* name) {
    thumb.tap("wholeHouse");
    thumb.tapText("space", QLatin1String(name));
}

void inKitchen(Thumb& thumb) {
    inRoom(thumb, "Kitchen");
}

void atFoot(Thumb& thumb, const char* name) {
    thumb.scrollTo(name);
    thumb.tap(name);
}

const std::vector<Scene>& scenes() {
    static const std::vector<Scene> kScenes = {
        {"start", [](Thumb&) {}, Over::Nothing},
        {"begin", [](Thumb& thumb) { thumb.tap("begin"); }, Over::Nothing},
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
             atFoot(thumb, "devices");
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
        {"join", [](Thumb& thumb) { thumb.tap("joinPeer"); }, Over::Nothing},
        {"mark-steps",
         [](Thumb& thumb) {
             inRoom(thumb, "Hall bath");
             thumb.tapText("item", "curtain rods");
         },
         Over::Lead},
        {"found",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.hold("tool-photo");
             thumb.type("foundWords", "joists under the sink are rotten");
             thumb.tap("picture");
             thumb.scrollTo("askForMoney");
             thumb.tap("askForMoney");
         }},
        {"change",
         [](Thumb& thumb) {
             thumb.tap("wholeHouse");
             thumb.tapText("need", "Say yes or no");
         }},
        {"spoken",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.hold("tool-punch");
         }},
        {"presence",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.hold("tool-mark");
             thumb.tap("presentCrew");
         }},
        {"delivery",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.hold("tool-receipt");
         }},
        {"refused",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tap("tool-receipt");
             thumb.tap("keepTool");
         }},
        {"lead-house", [](Thumb& thumb) { thumb.tap("wholeHouse"); }, Over::Lead},
        {"lead-space", [](Thumb& thumb) { inKitchen(thumb); }, Over::Lead},
        {"lead-mark",
         [](Thumb& thumb) {
             inKitchen(thumb);
             thumb.tapText("item", "cabinets");
         },
         Over::Lead},
        {"hard-house", [](Thumb& thumb) { thumb.tap("wholeHouse"); }, Over::Hard},
        {"hard-space", [](Thumb&) {}, Over::Hard},
        {"hard-mark", [](Thumb& thumb) { thumb.tap("item"); }, Over::Hard},
        {"hard-no-name", [](Thumb& thumb) { thumb.swipe(true); }, Over::Hard},
        {"hard-punch",
         [](Thumb& thumb) {
             thumb.swipe(true);
             thumb.swipe(true);
         },
         Over::Hard},
    };
    return kScenes;
}

// A copy of the demo house that a scene may write in.
QString copyOf(const QString& book, const QDir& folder) {
    const QString copy = folder.filePath(QStringLiteral("copy.book"));
    for (const char* tail : {"", "-wal", "-shm"}) {
        QFile::remove(copy + QLatin1String(tail));
    }
    QFile::copy(book, copy);
    QFile::remove(copy + QStringLiteral(".photos"));
    QFile::link(QFileInfo(book).absoluteFilePath() + QStringLiteral(".photos"),
                copy + QStringLiteral(".photos"));
    return copy;
}

struct Asked {
    QString demo;
    QDir folder;
    QString pictures;
    QString only;
};

Held heldFor(const Scene& scene, const Asked& asked) {
    using namespace ledgerboard;
    Held held;
    held.pictures = scene.over == Over::Nothing ? QString() : asked.pictures;
    held.now = scene.over == Over::Demo
                   // Friday 22 May 2026, noon in Chicago.
                   ? model::Instant::parse("2026-05-22T17:00Z").value()
                   : ui::noonOnFriday();
    const QString made = asked.folder.filePath(QStringLiteral("made.book"));
    for (const char* tail : {"", "-wal", "-shm"}) {
        QFile::remove(made + QLatin1String(tail));
    }
    switch (scene.over) {
        case Over::Nothing:
            break;
        case Over::Demo:
            held.book = copyOf(asked.demo, asked.folder);
            break;
        case Over::Lead:
            held.book = QString::fromStdString(ui::buildLeadsCopy(made.toStdString()).path);
            break;
        case Over::Hard:
            held.book = QString::fromStdString(ui::buildHardHouse(made.toStdString()).path);
            break;
    }
    return held;
}

// One reaching of a scene, then every theme and language of it on the same screen.
void picture(const Scene& scene, const Asked& asked, const QString& size, int percent) {
    const QString name =
        QStringLiteral("%1-%2-%3").arg(QLatin1String(scene.name), size).arg(percent);
    if (!asked.only.isEmpty() && !name.contains(asked.only)) {
        return;
    }
    Held held = heldFor(scene, asked);
    held.textPercent = percent;
    held.size = size == QLatin1String("narrow") ? QSize(360, 780) : QSize(390, 844);
    Thumb thumb(held);
    scene.reach(thumb);
    constexpr const char* kThemes[] = {"light", "dark", "sun"};
    for (const char* language : {"en", "es"}) {
        thumb.preferences().setLanguage(QLatin1String(language));
        for (int theme = 0; theme < 3; ++theme) {
            thumb.preferences().setThemeMode(theme);
            thumb.shot(asked.folder.filePath(
                QStringLiteral("%1-%2-%3.png")
                    .arg(name, QLatin1String(kThemes[theme]), QLatin1String(language))));
        }
    }
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    if (argc < 4) {
        fputs("Usage: phone-scenes BOOK FOLDER PICTURES [ONLY]\n", stderr);
        return 2;
    }
    const Asked asked{QString::fromLocal8Bit(argv[1]), QDir(QString::fromLocal8Bit(argv[2])),
                      QString::fromLocal8Bit(argv[3]),
                      argc > 4 ? QString::fromLocal8Bit(argv[4]) : QString()};
    QDir().mkpath(asked.folder.path());
    for (const auto& scene : scenes()) {
        picture(scene, asked, QStringLiteral("phone"), 100);
        picture(scene, asked, QStringLiteral("phone"), 200);
        picture(scene, asked, QStringLiteral("narrow"), 100);
    }
    for (const auto& complaint : Thumb::complaints()) {
        fprintf(stderr, "complaint: %s\n", qPrintable(complaint));
    }
    return Thumb::complaints().isEmpty() ? 0 : 1;
}
