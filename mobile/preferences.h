// How does this person want the screens: theme, size of type, hand, language, and where were they
// last? Kept on this device alone, beside no book.
//
// Threads: the UI's.
#pragma once

#include <QObject>
#include <QSettings>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QQmlEngine;

namespace ledgerboard::phone {

class Preferences : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int themeMode READ themeMode WRITE setThemeMode NOTIFY changed)
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)
    Q_PROPERTY(bool leftHand READ leftHand WRITE setLeftHand NOTIFY changed)
    Q_PROPERTY(bool stillness READ stillness WRITE setStillness NOTIFY changed)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
    Q_PROPERTY(QString lastSpace READ lastSpace WRITE setLastSpace NOTIFY changed)

  public:
    static Preferences* create(QQmlEngine* engine, QJSEngine* script);
    [[nodiscard]] static Preferences* here();

    explicit Preferences(const QString& settingsFile, QObject* parent = nullptr);
    ~Preferences() override;

    [[nodiscard]] int themeMode() const { return number("theme", 0); }

    void setThemeMode(int mode) { keep("theme", mode); }

    [[nodiscard]] int textPercent() const { return number("text_percent", 100); }

    void setTextPercent(int percent) { keep("text_percent", percent); }

    [[nodiscard]] bool leftHand() const { return number("left_hand", 0) != 0; }

    void setLeftHand(bool left) { keep("left_hand", left ? 1 : 0); }

    [[nodiscard]] bool stillness() const { return number("stillness", 0) != 0; }

    void setStillness(bool still) { keep("stillness", still ? 1 : 0); }

    // "en", "es"; "" for the system's.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& language);

    // The space that was on screen last.
    [[nodiscard]] QString lastSpace() const;
    void setLastSpace(const QString& id);

  signals:
    void changed();
    void languageChanged();

  private:
    [[nodiscard]] int number(const char* name, int otherwise) const;
    void keep(const char* name, int value);

    static Preferences* here_;
    QSettings settings_;
};

}  // namespace ledgerboard::phone
