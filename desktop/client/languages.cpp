#include "desktop/client/languages.h"

#include <QCoreApplication>
#include <QLocale>
#include <QQmlEngine>

#include "desktop/client/desk.h"
#include "desktop/client/preferences.h"

namespace ledgerboard::desk {

namespace {

// The system's where it speaks the language chosen; else as it is written in the United States,
// where the houses are: 1,250.60.
QLocale localeOf(const QString& chosen) {
    const QLocale system = QLocale::system();
    const QLocale wanted(chosen);
    if (chosen.isEmpty() || system.language() == wanted.language()) {
        return system.language() == QLocale::C ? QLocale(QLocale::English, QLocale::UnitedStates)
                                               : system;
    }
    return {wanted.language(), QLocale::UnitedStates};
}

}  // namespace

Languages::Languages(QQmlEngine& engine, Preferences& preferences, Desk& desk)
    : engine_(engine), preferences_(preferences), desk_(desk) {
    connect(&preferences_, &Preferences::languageChanged, this, &Languages::use);
    use();
}

void Languages::use() {
    QCoreApplication::removeTranslator(&translator_);
    const QString chosen = preferences_.language();
    const QLocale locale = localeOf(chosen);
    QLocale::setDefault(locale);
    // English has a file as well, for its plurals.
    const QString name = locale.language() == QLocale::Spanish ? QStringLiteral("desk_es")
                                                               : QStringLiteral("desk_en");
    if (translator_.load(QStringLiteral(":/i18n/") + name)) {
        QCoreApplication::installTranslator(&translator_);
    }
    engine_.retranslate();
    emit desk_.wordsChanged();
    emit desk_.changed();
}

}  // namespace ledgerboard::desk
