#include "mobile/languages.h"

#include <QCoreApplication>
#include <QLocale>
#include <QQmlEngine>

#include "mobile/job_book.h"
#include "mobile/preferences.h"

namespace ledgerboard::phone {

Languages::Languages(QQmlEngine& engine, Preferences& preferences, JobBook& book)
    : engine_(engine), preferences_(preferences), book_(book) {
    connect(&preferences_, &Preferences::languageChanged, this, &Languages::use);
    use();
}

void Languages::use() {
    QCoreApplication::removeTranslator(&translator_);
    const QString chosen = preferences_.language();
    const QLocale locale = chosen.isEmpty() ? QLocale::system() : QLocale(chosen);
    QLocale::setDefault(locale);
    // English has a file as well, for its plurals.
    const QString name = locale.language() == QLocale::Spanish ? QStringLiteral("phone_es")
                                                               : QStringLiteral("phone_en");
    if (translator_.load(QStringLiteral(":/i18n/") + name)) {
        QCoreApplication::installTranslator(&translator_);
    }
    engine_.retranslate();
    emit book_.changed();
}

}  // namespace ledgerboard::phone
