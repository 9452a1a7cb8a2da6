#include "desktop/client/preferences.h"

#include <QJSEngine>

namespace ledgerboard::desk {

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

int Preferences::number(const char* name, int otherwise) const {
    return settings_.value(QLatin1String(name), otherwise).toInt();
}

void Preferences::keep(const char* name, int value) {
    if (number(name, value - 1) != value) {
        settings_.setValue(QLatin1String(name), value);
        emit changed();
    }
}

}  // namespace ledgerboard::desk
