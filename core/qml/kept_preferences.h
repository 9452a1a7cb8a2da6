// How does this person want the screens, whichever client it is: theme, motion, language? Kept on
// this device alone, beside no book.
//
// Threads: the UI's.
#pragma once

#include <QObject>
#include <QSettings>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::qml {

class KeptPreferences : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(int themeMode READ themeMode WRITE setThemeMode NOTIFY changed)
    Q_PROPERTY(bool stillness READ stillness WRITE setStillness NOTIFY changed)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)

  public:
    explicit KeptPreferences(const QString& settingsFile, QObject* parent = nullptr);

    // As Theme::Mode.
    [[nodiscard]] int themeMode() const { return number("theme", 0); }

    void setThemeMode(int mode) { keep("theme", mode); }

    [[nodiscard]] bool stillness() const { return number("stillness", 0) != 0; }

    void setStillness(bool still) { keep("stillness", still ? 1 : 0); }

    // "en", "es"; "" for the system's.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& language);

  signals:
    void changed();
    void languageChanged();

  protected:
    [[nodiscard]] int number(const char* name, int otherwise) const;
    // Says changed() where it is another value.
    void keep(const char* name, int value);
    [[nodiscard]] QString words(const char* name) const;
    // For what no screen has to be told of.
    void keepWords(const char* name, const QString& value);

  private:
    QSettings settings_;
};

}  // namespace ledgerboard::qml
