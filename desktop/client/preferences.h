// How does this person want the pages: theme, language, grouping of the scope? Kept on this machine
// alone, beside no book.
//
// Threads: the UI's.
#pragma once

#include <QObject>
#include <QSettings>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QQmlEngine;

namespace ledgerboard::desk {

class Preferences : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int themeMode READ themeMode WRITE setThemeMode NOTIFY changed)
    Q_PROPERTY(bool stillness READ stillness WRITE setStillness NOTIFY changed)
    Q_PROPERTY(int scopeGroup READ scopeGroup WRITE setScopeGroup NOTIFY changed)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)

  public:
    static Preferences* create(QQmlEngine* engine, QJSEngine* script);
    [[nodiscard]] static Preferences* here();

    explicit Preferences(const QString& settingsFile, QObject* parent = nullptr);
    ~Preferences() override;

    // As Theme::Mode.
    [[nodiscard]] int themeMode() const { return number("theme", 0); }

    void setThemeMode(int mode) { keep("theme", mode); }

    [[nodiscard]] bool stillness() const { return number("stillness", 0) != 0; }

    void setStillness(bool still) { keep("stillness", still ? 1 : 0); }

    // As GroupBy.
    [[nodiscard]] int scopeGroup() const { return number("scope_group", 0); }

    void setScopeGroup(int group) { keep("scope_group", group); }

    [[nodiscard]] bool scheduleByCrew() const { return number("schedule_by_crew", 0) != 0; }

    void setScheduleByCrew(bool byCrew) { keep("schedule_by_crew", byCrew ? 1 : 0); }

    // "en", "es"; "" for the system's.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& language);

  signals:
    void changed();
    void languageChanged();

  private:
    [[nodiscard]] int number(const char* name, int otherwise) const;
    void keep(const char* name, int value);

    static Preferences* here_;
    QSettings settings_;
};

}  // namespace ledgerboard::desk
