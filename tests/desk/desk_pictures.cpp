// Makes a picture of every page of the desktop: 1280x800 and 1920x1080, light and dark, English and
// Spanish. To be looked at.
//
// Usage: desk-pictures BOOK FOLDER [ONLY]
//   BOOK    the demo house, as ./try makes it, with its photos beside it
//   FOLDER  where the pictures go
//   ONLY    a part of the names of those to make
#include <functional>

#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>

#include "core/intake/bank/bring_bank.h"

#include "tests/desk/hand.h"

namespace {

using ledgerboard::ui::Hand;
using ledgerboard::ui::Laid;

struct Scene {
    const char* name;
    std::function<void(Hand&)> reach;
    bool full = true;  // over the demo house; else without a book
};

void openHouse(Hand& hand) {
    hand.key(Qt::Key_Return);
}

void openScope(Hand& hand) {
    openHouse(hand);
    hand.key(Qt::Key_3, Qt::ControlModifier);
}

void openAlternates(Hand& hand) {
    openHouse(hand);
    hand.key(Qt::Key_4, Qt::ControlModifier);
}

void openSchedule(Hand& hand) {
    openHouse(hand);
    hand.key(Qt::Key_5, Qt::ControlModifier);
}

// May's download as lines that the book does not have yet; three of them it has.
QString otherDownload(const QString& folder) {
    QFile may(QStringLiteral(LEDGERBOARD_DEMO "/bank-may.ofx"));
    QFile made(QDir(folder).filePath(QStringLiteral("june.ofx")));
    if (may.open(QIODevice::ReadOnly) && made.open(QIODevice::WriteOnly)) {
        made.write(may.readAll()
                       .replace("bk-0523", "ju-0523")
                       .replace("bk-053", "ju-053")
                       .replace("bk-0528", "ju-0528")
                       .replace("bk-0527", "ju-0527")
                       .replace("bk-0526", "ju-0526"));
    }
    return made.fileName();
}

// With three lines of the bank that wait.
void openSpendWithBank(Hand& hand) {
    openHouse(hand);
    const auto line = [](const char* id, int day, std::int64_t minor, const char* payee) {
        return ledgerboard::intake::StatementLine{
            "4417",
            id,
            ledgerboard::model::Date::fromYmd(2026, 5, day).value(),
            ledgerboard::model::Money::fromMinor(minor),
            payee,
            {}};
    };
    const ledgerboard::intake::Statement statement{
        "USD",
        {line("bk-a", 19, -4'075, "CORNER GROCERY 9"), line("bk-b", 20, -14'875, "QUARRY OFFICE"),
         line("bk-c", 21, -22'500, "POS LUMBER YARD 2")}};
    (void)ledgerboard::intake::bringBank(hand.desk().book(), hand.desk().job(), statement,
                                         "may.ofx", false, hand.desk().instant());
    hand.desk().refresh();
    hand.settle();
    hand.key(Qt::Key_7, Qt::ControlModifier);
}

const std::vector<Scene>& scenes() {
    static const std::vector<Scene> kScenes = {
        {"start", [](Hand&) {}, false},
        {"trouble", [](Hand& hand) { hand.desk().open(QStringLiteral("/nowhere/at/all.book")); },
         false},
        {"jobs", [](Hand&) {}},
        {"week", openHouse},
        {"week-told",
         [](Hand& hand) {
             openHouse(hand);
             hand.hover("plotField", 0.4, 0.5);
         }},
        {"week-table",
         [](Hand& hand) {
             openHouse(hand);
             hand.click("curveTurn");
         }},
        {"week-below",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_PageDown);
         }},
        {"week-end",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_End);
         }},
        {"week-keys",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_F1);
         }},
        {"walk-empty",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_2, Qt::ControlModifier);
         }},
        {"walk",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_2, Qt::ControlModifier);
             QFile notes(QStringLiteral(LEDGERBOARD_DEMO "/walk-notes.txt"));
             if (notes.open(QIODevice::ReadOnly)) {
                 QGuiApplication::clipboard()->setText(QString::fromUtf8(notes.readAll()));
             }
             hand.key(Qt::Key_V, Qt::ControlModifier);
             (void)hand.wait([&] { return !hand.all("draftRow").empty(); });
             hand.tabTo(QStringLiteral("draft"));
             hand.keys(Qt::Key_Down, 6);
             hand.key(Qt::Key_Space);
             hand.keys(Qt::Key_Down, 3);
             hand.key(Qt::Key_Return);
         }},
        {"walk-words",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_2, Qt::ControlModifier);
             QGuiApplication::clipboard()->setText(
                 QStringLiteral("Kitchen. Replace the tap. The boiler is worn out.\n"
                                "Hall. Replace the light. Paint the walls.\n"));
             hand.key(Qt::Key_V, Qt::ControlModifier);
             (void)hand.wait([&] { return hand.all("draftRow").size() > 3; });
             hand.tabTo(QStringLiteral("draft"));
             for (const char* object : {"pot filler", "hot water tank"}) {
                 hand.key(Qt::Key_Return);
                 hand.type(QString::fromLatin1(object));
                 hand.key(Qt::Key_Return);
                 hand.key(Qt::Key_Down);
             }
             hand.key(Qt::Key_Return, Qt::ControlModifier);
             (void)hand.wait([&] { return hand.all("ownWord").size() == 2; });
             hand.tabTo(QStringLiteral("ownWords"));
         }},
        {"contracts",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_6, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 3);
         }},
        {"contracts-barred",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_6, Qt::ControlModifier);
             (void)hand.desk().lookAt(QStringLiteral("2026-05-29"));
             hand.keys(Qt::Key_Down, 3);
         }},
        {"contracts-changes",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_6, Qt::ControlModifier);
             hand.key(Qt::Key_E, Qt::ControlModifier);
         }},
        {"contracts-goods",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_6, Qt::ControlModifier);
             hand.key(Qt::Key_E, Qt::ControlModifier);
             hand.key(Qt::Key_E, Qt::ControlModifier);
         }},
        {"contracts-whole",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_6, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 3);
             hand.key(Qt::Key_I, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 2);
             hand.key(Qt::Key_Return);
             hand.type(QStringLiteral("ti"));
         }},
        {"contracts-empty",
         [](Hand& hand) {
             hand.type(QStringLiteral("9 Birch Lane"));
             hand.key(Qt::Key_Return);
             hand.key(Qt::Key_Return);
             hand.key(Qt::Key_6, Qt::ControlModifier);
         },
         false},
        {"spend",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_7, Qt::ControlModifier);
         }},
        {"spend-entry",
         [](Hand& hand) {
             openSpendWithBank(hand);
             hand.key(Qt::Key_N, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 2);
             hand.type(QStringLiteral("Quarry office"));
             hand.key(Qt::Key_Return);
             hand.type(QStringLiteral("148.75"));
             hand.key(Qt::Key_Return);
             hand.click(QStringLiteral("bankFit"));
         }},
        {"spend-bank",
         [](Hand& hand) {
             openSpendWithBank(hand);
             hand.key(Qt::Key_E, Qt::ControlModifier);
             hand.key(Qt::Key_Down);
         }},
        {"spend-file",
         [](Hand& hand) {
             openSpendWithBank(hand);
             hand.key(Qt::Key_E, Qt::ControlModifier);
             hand.key(Qt::Key_F, Qt::ControlModifier);
             hand.type(QStringLiteral("ti"));
         }},
        {"spend-download",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_7, Qt::ControlModifier);
             hand.key(Qt::Key_O, Qt::ControlModifier);
             hand.type(otherDownload(hand.folder()));
             hand.key(Qt::Key_Return);
         }},
        {"spend-wrong-file",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_7, Qt::ControlModifier);
             hand.key(Qt::Key_O, Qt::ControlModifier);
             hand.type(QStringLiteral(LEDGERBOARD_DEMO "/walk-notes.txt"));
             hand.key(Qt::Key_Return);
         }},
        {"spend-rules",
         [](Hand& hand) {
             openSpendWithBank(hand);
             hand.key(Qt::Key_E, Qt::ControlModifier);
             hand.key(Qt::Key_X, Qt::ControlModifier);
             hand.key(Qt::Key_E, Qt::ControlModifier);
         }},
        {"draws",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_8, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 2);
         }},
        {"draws-asked",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_8, Qt::ControlModifier);
             hand.key(Qt::Key_S, Qt::ControlModifier);
         }},
        {"draws-pictures",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_8, Qt::ControlModifier);
             for (int k = 0; k < 3; ++k) {
                 hand.key(Qt::Key_E, Qt::ControlModifier);
             }
             hand.key(Qt::Key_S, Qt::ControlModifier);
         }},
        {"closing",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_2, Qt::AltModifier);
         }},
        {"deal",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_9, Qt::ControlModifier);
         }},
        {"deal-rests-on",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_9, Qt::ControlModifier);
             hand.key(Qt::Key_I, Qt::ControlModifier);
         }},
        {"deal-supposed",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_9, Qt::ControlModifier);
             hand.keys(Qt::Key_Left, 10);
             hand.tabTo(QStringLiteral("whatIf2"));
             hand.keys(Qt::Key_Right, 6);
         }},
        {"alternates", openAlternates},
        {"alternates-deciding",
         [](Hand& hand) {
             openAlternates(hand);
             hand.key(Qt::Key_T);
             hand.key(Qt::Key_Escape);
             hand.key(Qt::Key_Right);
             hand.key(Qt::Key_Return);
             hand.type(QStringLiteral("the stairs are steep"));
         }},
        {"alternates-decided",
         [](Hand& hand) {
             openAlternates(hand);
             hand.key(Qt::Key_Right);
             hand.key(Qt::Key_Return);
             hand.type(QStringLiteral("the stairs are steep"));
             hand.key(Qt::Key_Return);
         }},
        {"punch",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_1, Qt::AltModifier);
             hand.keys(Qt::Key_Down, 6);
         }},
        {"punch-back",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_1, Qt::AltModifier);
             hand.key(Qt::Key_G, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 9);
             hand.key(Qt::Key_R, Qt::ControlModifier);
             hand.type(QStringLiteral("still loose at the top"));
         }},
        {"devices",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_4, Qt::AltModifier);
         }},
        {"prices",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_3, Qt::AltModifier);
             hand.keys(Qt::Key_Down, 5);
         }},
        {"schedule", openSchedule},
        {"schedule-crews",
         [](Hand& hand) {
             openSchedule(hand);
             hand.key(Qt::Key_G, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 3);
         }},
        {"schedule-table",
         [](Hand& hand) {
             openSchedule(hand);
             hand.key(Qt::Key_T, Qt::ControlModifier);
         }},
        {"schedule-move",
         [](Hand& hand) {
             openSchedule(hand);
             hand.key(Qt::Key_O, Qt::ControlModifier);
             for (int k = 0; k < 60 && !hand.said("scheduleItem")
                                            .value(0)
                                            .startsWith(QStringLiteral("Kitchen/backsplash"));
                  ++k) {
                 hand.key(Qt::Key_Down);
             }
             hand.key(Qt::Key_Return);
             hand.keys(Qt::Key_Right, 6);
         }},
        {"schedule-told",
         [](Hand& hand) {
             openSchedule(hand);
             hand.hover(QStringLiteral("scheduleRows"), 0.6, 0.4);
         }},
        {"scope", openScope},
        {"scope-filtered",
         [](Hand& hand) {
             openScope(hand);
             hand.type(QStringLiteral("floor"));
             hand.key(Qt::Key_G, Qt::ControlModifier);
         }},
        {"draws-allowed",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_8, Qt::ControlModifier);
             hand.key(Qt::Key_S, Qt::ControlModifier);
             hand.key(Qt::Key_E, Qt::ControlModifier);
             hand.keys(Qt::Key_Right, 3);
         }},
        {"scope-mark",
         [](Hand& hand) {
             openScope(hand);
             hand.type(QStringLiteral("baseboards"));
             hand.key(Qt::Key_M, Qt::ControlModifier);
             hand.type(QStringLiteral("85"));
         }},
        {"scope-steps",
         [](Hand& hand) {
             openScope(hand);
             hand.type(QStringLiteral("refinish walls"));
             hand.key(Qt::Key_M, Qt::ControlModifier);
             hand.key(Qt::Key_Down);
         }},
        {"scope-baseline",
         [](Hand& hand) {
             openScope(hand);
             hand.key(Qt::Key_F, Qt::ControlModifier);
         }},
        {"alternates-option",
         [](Hand& hand) {
             openAlternates(hand);
             hand.key(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
             hand.type(QStringLiteral("mend the old one"));
             hand.key(Qt::Key_Return);
         }},
        {"schedule-aim",
         [](Hand& hand) {
             openSchedule(hand);
             hand.key(Qt::Key_O, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 3);
             hand.key(Qt::Key_J, Qt::ControlModifier);
             hand.keys(Qt::Key_Down, 2);
             hand.key(Qt::Key_Right);
         }},
        {"schedule-links",
         [](Hand& hand) {
             openSchedule(hand);
             hand.type(QStringLiteral("backsplash"));
             hand.key(Qt::Key_I, Qt::ControlModifier);
         }},
        {"keys-scope",
         [](Hand& hand) {
             openScope(hand);
             hand.key(Qt::Key_F1);
         }},
        {"keys-schedule",
         [](Hand& hand) {
             openSchedule(hand);
             hand.key(Qt::Key_F1);
         }},
        {"keys-draws",
         [](Hand& hand) {
             openHouse(hand);
             hand.key(Qt::Key_8, Qt::ControlModifier);
             hand.key(Qt::Key_F1);
         }},
        {"scope-edited",
         [](Hand& hand) {
             openScope(hand);
             for (int k = 0; k < 4; ++k) {
                 hand.key(Qt::Key_Down, k > 1 ? Qt::ShiftModifier : Qt::NoModifier);
             }
             hand.key(Qt::Key_Right);
             hand.key(Qt::Key_Return);
             hand.type(QStringLiteral("pl"));
         }},
        {"scope-pasted",
         [](Hand& hand) {
             openScope(hand);
             QGuiApplication::clipboard()->setText(
                 QStringLiteral("Room\tDo\tItem\tQty\tUnit\tLump sum\tCrew\n"
                                "Kitchen\treplace\trange hood\t1\teach\t640\tElectric crew\n"
                                "Kitchen\tpolish\tcounter\t22\tsq ft\t\t\n"
                                "Pantry\tadd\tshelves\t5\teach\t380\t\n"
                                "Attic\tadd\tladder\tone\teach\t\t\n"
                                "Attic\trepair\thatch\t1\teach\t-90\tRope crew\n"));
             hand.key(Qt::Key_V, Qt::ControlModifier);
         }},
        {"scope-take-off",
         [](Hand& hand) {
             openScope(hand);
             hand.type(QStringLiteral("shower tile"));
             hand.key(Qt::Key_T, Qt::ControlModifier);
             hand.click(QStringLiteral("size-area_sqft"));
             hand.type(QStringLiteral("86"));
         }},
        {"scope-more",
         [](Hand& hand) {
             openScope(hand);
             hand.key(Qt::Key_I, Qt::ControlModifier);
         }},
        {"scope-caution",
         [](Hand& hand) {
             hand.type(QStringLiteral("9 Birch Lane"));
             hand.key(Qt::Key_Return);
             hand.key(Qt::Key_Return);
             hand.key(Qt::Key_3, Qt::ControlModifier);
             hand.key(Qt::Key_N, Qt::ControlModifier);
             hand.type(QStringLiteral("Outside: add fence"));
             hand.key(Qt::Key_Return);
             hand.key(Qt::Key_K, Qt::ControlModifier);
         },
         false},
        {"scope-empty",
         [](Hand& hand) {
             hand.type(QStringLiteral("9 Birch Lane"));
             hand.key(Qt::Key_Return);
             hand.key(Qt::Key_Return);
             hand.key(Qt::Key_3, Qt::ControlModifier);
         },
         false},
    };
    return kScenes;
}

// The book is only looked at, but a copy is what is opened.
QString copyOf(const QString& book, const QDir& folder) {
    const QString copy = folder.filePath(QStringLiteral("copy.book"));
    for (const char* tail : {"", "-wal", "-shm", ".photos"}) {
        QFile::remove(copy + QLatin1String(tail));
    }
    QFile::copy(book, copy);
    QFile::link(QFileInfo(book).absoluteFilePath() + QStringLiteral(".photos"),
                copy + QStringLiteral(".photos"));
    return copy;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    if (argc < 3) {
        fputs("Usage: desk-pictures BOOK FOLDER [ONLY]\n", stderr);
        return 2;
    }
    const QString book = QString::fromLocal8Bit(argv[1]);
    const QDir folder(QString::fromLocal8Bit(argv[2]));
    const QString only = argc > 3 ? QString::fromLocal8Bit(argv[3]) : QString();
    QDir().mkpath(folder.path());

    struct Look {
        const char* name;
        QSize size;
        int theme;
        const char* language;
    };

    const Look looks[] = {{"1280-light-en", {1280, 800}, 0, "en"},
                          {"1280-dark-en", {1280, 800}, 1, "en"},
                          {"1280-light-es", {1280, 800}, 0, "es"},
                          {"1920-light-en", {1920, 1080}, 0, "en"},
                          {"1920-dark-es", {1920, 1080}, 1, "es"}};
    for (const auto& look : looks) {
        for (const auto& scene : scenes()) {
            const QString name =
                QStringLiteral("%1-%2").arg(QLatin1String(scene.name), QLatin1String(look.name));
            if (!only.isEmpty() && !name.contains(only)) {
                continue;
            }
            Laid laid;
            laid.size = look.size;
            laid.theme = look.theme;
            laid.language = QLatin1String(look.language);
            laid.bankProgram = QStringLiteral(LEDGERBOARD_OFX);
            // Friday 22 May 2026, noon in Chicago.
            laid.now = ledgerboard::model::Instant::parse("2026-05-22T17:00Z").value();
            if (scene.full) {
                laid.book = copyOf(book, folder);
            }
            Hand hand(laid);
            scene.reach(hand);
            hand.shot(folder.filePath(name + QStringLiteral(".png")));
        }
    }
    for (const auto& complaint : Hand::complaints()) {
        fprintf(stderr, "complaint: %s\n", qPrintable(complaint));
    }
    return Hand::complaints().isEmpty() ? 0 : 1;
}
