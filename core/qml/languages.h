// In which language are the screens of a client? The one chosen there, else the system's.
//
// A client has translation files of its own, and one of what both share and of what core says.
#pragma once

#include <functional>

#include <QObject>
#include <QTranslator>

class QQmlEngine;

namespace ledgerboard::qml {

class KeptPreferences;

class Languages : public QObject {
    Q_OBJECT

  public:
    // `client` begins the names of its files: "phone" for phone_es and phone_en. `retold` is called
    // after every text of QML was asked for anew, at once for the first time: models ask for
    // theirs. Requires: engine and preferences outlive it.
    Languages(QQmlEngine& engine, KeptPreferences& preferences, QString client,
              std::function<void()> retold);

  private:
    void use();
    void install(QTranslator& translator, const QString& name);

    QQmlEngine& engine_;
    KeptPreferences& preferences_;
    QString client_;
    std::function<void()> retold_;
    QTranslator own_;
    QTranslator shared_;
};

}  // namespace ledgerboard::qml
