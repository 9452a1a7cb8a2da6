// The program `ledgerboard-desk`: the one place of the desktop client that reads the clock and
// chance.
//
// Usage: ledgerboard-desk [--as-of DATE] [BOOK]
#include <cstdio>

#include <QCommandLineParser>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QStandardPaths>
#include <QTimeZone>

#include "core/intake/bank/bank_program.h"
#include "core/model/machine.h"
#include "core/qml/languages.h"

#include "desktop/client/desk.h"
#include "desktop/client/preferences.h"
#include "desktop/client/surroundings.h"

using namespace ledgerboard;

int main(int argc, char** argv) {
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("ledgerboard"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Ledgerboard"));
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("The job folder: a book of jobs, looked at and kept on a large screen."));
    parser.addHelpOption();
    const QCommandLineOption asOf(QStringLiteral("as-of"),
                                  QStringLiteral("Show the jobs as of this day."),
                                  QStringLiteral("DATE"));
    parser.addOption(asOf);
    parser.addPositionalArgument(QStringLiteral("BOOK"),
                                 QStringLiteral("The book; without it the last one."),
                                 QStringLiteral("[BOOK]"));
    parser.process(app);

    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    desk::Surroundings surroundings;
    surroundings.now = model::clockNow;
    surroundings.random = model::fillRandom;
    surroundings.settingsFile = QDir(folder).filePath(QStringLiteral("desk.ini"));
    surroundings.bookFolder = folder;
    surroundings.timeZone = QString::fromUtf8(QTimeZone::systemTimeZoneId());

    // The peer's program stands beside this one, or wherever programs are found.
    const QString peer =
        QDir(QCoreApplication::applicationDirPath()).filePath(surroundings.peerProgram);
    if (QFileInfo::exists(peer)) {
        surroundings.peerProgram = peer;
    }

    surroundings.bankProgram = QString::fromStdString(
        intake::bankProgramBeside(QCoreApplication::applicationFilePath().toStdString()));

    desk::Preferences preferences(surroundings.settingsFile);
    desk::Desk desk(surroundings);
    QQmlApplicationEngine engine;
    const qml::Languages languages(engine, preferences, QStringLiteral("desk"), [&desk] {
        emit desk.wordsChanged();
        emit desk.changed();
    });
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    const QStringList arguments = parser.positionalArguments();
    if (arguments.isEmpty()) {
        desk.openLast();
    } else {
        desk.open(arguments.first());
    }
    if (parser.isSet(asOf) && !desk.lookAt(parser.value(asOf))) {
        fprintf(stderr, "--as-of: %s\n", qPrintable(desk.notKeptText()));
        return 2;
    }
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Ledgerboard/Desk/Main.qml")));
    return engine.rootObjects().isEmpty() ? 1 : QGuiApplication::exec();
}
