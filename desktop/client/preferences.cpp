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
    : KeptPreferences(settingsFile, parent) {
    here_ = this;
}

Preferences::~Preferences() {
    here_ = nullptr;
}

}  // namespace ledgerboard::desk
