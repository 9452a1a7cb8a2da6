// The program `ledgerboard-phone`: the one place of the phone that reads the clock and chance.
//
// Usage: ledgerboard-phone [BOOK]
#include <QDir>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QNetworkInformation>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTimeZone>

#include "core/model/machine.h"
#include "core/qml/languages.h"

#include "mobile/job_book.h"
#include "mobile/preferences.h"
#include "mobile/surroundings.h"

using namespace ledgerboard;

int main(int argc, char** argv) {
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("ledgerboard"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Ledgerboard"));
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    phone::Surroundings surroundings;
    surroundings.now = model::clockNow;
    surroundings.random = model::fillRandom;
    surroundings.settingsFile = QDir(folder).filePath(QStringLiteral("phone.ini"));
    surroundings.bookFolder = folder;
    surroundings.pictureFolders =
        QStandardPaths::standardLocations(QStandardPaths::PicturesLocation);
    surroundings.usesSenses = true;
    surroundings.timeZone = QString::fromUtf8(QTimeZone::systemTimeZoneId());

    QNetworkInformation::loadBackendByFeatures(QNetworkInformation::Feature::Reachability);
    phone::Preferences preferences(surroundings.settingsFile);
    phone::JobBook book(surroundings);
    QQmlApplicationEngine engine;
    const qml::Languages languages(engine, preferences, QStringLiteral("phone"),
                                   [&book] { emit book.changed(); });
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    const QStringList arguments = QGuiApplication::arguments();
    if (arguments.size() > 1) {
        book.open(arguments.at(1));
    } else {
        book.openLast();
    }
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Ledgerboard/Phone/Main.qml")));
    return engine.rootObjects().isEmpty() ? 1 : QGuiApplication::exec();
}
