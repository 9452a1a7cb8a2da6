// How does this person want the phone: beside what every client keeps, size of type, hand, and
// where were they last?
//
// Threads: the UI's.
#pragma once

#include "core/qml/kept_preferences.h"

class QJSEngine;
class QQmlEngine;

namespace ledgerboard::phone {

class Preferences : public qml::KeptPreferences {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)
    Q_PROPERTY(bool leftHand READ leftHand WRITE setLeftHand NOTIFY changed)
    Q_PROPERTY(QString lastSpace READ lastSpace WRITE setLastSpace NOTIFY changed)

  public:
    static Preferences* create(QQmlEngine* engine, QJSEngine* script);
    [[nodiscard]] static Preferences* here();

    explicit Preferences(const QString& settingsFile, QObject* parent = nullptr);
    ~Preferences() override;

    [[nodiscard]] int textPercent() const { return number("text_percent", 100); }

    void setTextPercent(int percent) { keep("text_percent", percent); }

    [[nodiscard]] bool leftHand() const { return number("left_hand", 0) != 0; }

    void setLeftHand(bool left) { keep("left_hand", left ? 1 : 0); }

    // The space that was on screen last. Read when the program begins: no screen is told of it.
    [[nodiscard]] QString lastSpace() const { return words("last_space"); }

    void setLastSpace(const QString& id) { keepWords("last_space", id); }

  private:
    static Preferences* here_;
};

}  // namespace ledgerboard::phone
