#include "core/qml/kept_preferences.h"

namespace ledgerboard::qml {

namespace {

constexpr const char* kLanguage = "language";

}  // namespace

KeptPreferences::KeptPreferences(const QString& settingsFile, QObject* parent)
    : QObject(parent), settings_(settingsFile, QSettings::IniFormat) {}

QString KeptPreferences::language() const {
    return words(kLanguage);
}

void KeptPreferences::setLanguage(const QString& language) {
    if (language != this->language()) {
        keepWords(kLanguage, language);
        emit languageChanged();
    }
}

int KeptPreferences::number(const char* name, int otherwise) const {
    return settings_.value(QLatin1String(name), otherwise).toInt();
}

void KeptPreferences::keep(const char* name, int value) {
    if (number(name, value - 1) != value) {
        settings_.setValue(QLatin1String(name), value);
        emit changed();
    }
}

QString KeptPreferences::words(const char* name) const {
    return settings_.value(QLatin1String(name)).toString();
}

void KeptPreferences::keepWords(const char* name, const QString& value) {
    settings_.setValue(QLatin1String(name), value);
}

}  // namespace ledgerboard::qml
