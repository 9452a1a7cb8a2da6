#include "mobile/preferences.h"

#include <QJSEngine>

namespace ledgerboard::phone {

Preferences* Preferences::here_ = nullptr;

Preferences* Preferences::here() {
    return here_;
}

Preferences* Preferences::create(QQmlEngine*, QJSEngine*) {
    QJSEngine::setObjectOwnership(here_, QJSEngine::CppOwnership);
    return here_;
}

Preferences::Preferences(const QString& settingsFile, QObject* parent)
    : QObject(parent), settings_(settingsFile, QSettings::IniFormat) {
    here_ = this;
}

Preferences::~Preferences() {
    here_ = nullptr;
}

QString Preferences::language() const {
    return settings_.value(QStringLiteral("language")).toString();
}

void Preferences::setLanguage(const QString& language) {
    if (language != this->language()) {
        settings_.setValue(QStringLiteral("language"), language);
        emit languageChanged();
    }
}

QString Preferences::lastSpace() const {
    return settings_.value(QStringLiteral("last_space")).toString();
}

void Preferences::setLastSpace(const QString& id) {
    // Read when the program begins: no screen is told of it.
    settings_.setValue(QStringLiteral("last_space"), id);
}

int Preferences::number(const char* name, int otherwise) const {
    return settings_.value(QLatin1String(name), otherwise).toInt();
}

void Preferences::keep(const char* name, int value) {
    if (number(name, value - 1) != value) {
        settings_.setValue(QLatin1String(name), value);
        emit changed();
    }
}

}  // namespace ledgerboard::phone
