// In which language are the pages? The one chosen here, else the system's.
#pragma once

#include <QObject>
#include <QTranslator>

class QQmlEngine;

namespace ledgerboard::desk {

class Desk;
class Preferences;

class Languages : public QObject {
    Q_OBJECT

  public:
    // Requires: all three outlive it.
    Languages(QQmlEngine& engine, Preferences& preferences, Desk& desk);

  private:
    void use();

    QQmlEngine& engine_;
    Preferences& preferences_;
    Desk& desk_;
    QTranslator translator_;
};

}  // namespace ledgerboard::desk
