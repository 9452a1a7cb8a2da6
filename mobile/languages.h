// In which language are the screens? The one chosen on the phone, else the system's.
#pragma once

#include <QObject>
#include <QTranslator>

class QQmlEngine;

namespace ledgerboard::phone {

class JobBook;
class Preferences;

class Languages : public QObject {
    Q_OBJECT

  public:
    // Requires: all three outlive it.
    Languages(QQmlEngine& engine, Preferences& preferences, JobBook& book);

  private:
    void use();

    QQmlEngine& engine_;
    Preferences& preferences_;
    JobBook& book_;
    QTranslator translator_;
};

}  // namespace ledgerboard::phone
