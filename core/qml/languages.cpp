#include "core/qml/languages.h"

#include <QCoreApplication>
#include <QLocale>
#include <QQmlEngine>

#include "core/qml/kept_preferences.h"

namespace ledgerboard::qml {

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

Languages::Languages(QQmlEngine& engine, KeptPreferences& preferences, QString client,
                     std::function<void()> retold)
    : engine_(engine),
      preferences_(preferences),
      client_(std::move(client)),
      retold_(std::move(retold)) {
    connect(&preferences_, &KeptPreferences::languageChanged, this, &Languages::use);
    use();
}

void Languages::use() {
    const QLocale locale = localeOf(preferences_.language());
    QLocale::setDefault(locale);
    // English has files as well, for its plurals.
    const QString ending =
        locale.language() == QLocale::Spanish ? QStringLiteral("_es") : QStringLiteral("_en");
    install(shared_, QStringLiteral("shared") + ending);
    install(own_, client_ + ending);
    engine_.retranslate();
    retold_();
}

void Languages::install(QTranslator& translator, const QString& name) {
    QCoreApplication::removeTranslator(&translator);
    if (translator.load(QStringLiteral(":/i18n/") + name)) {
        QCoreApplication::installTranslator(&translator);
    }
}

}  // namespace ledgerboard::qml
