// How does this person want the pages: beside what every client keeps, grouping of the scope and
// the schedule?
//
// Threads: the UI's.
#pragma once

#include "core/qml/kept_preferences.h"

class QJSEngine;
class QQmlEngine;

namespace ledgerboard::desk {

class Preferences : public qml::KeptPreferences {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(int scopeGroup READ scopeGroup WRITE setScopeGroup NOTIFY changed)

  public:
    static Preferences* create(QQmlEngine* engine, QJSEngine* script);
    [[nodiscard]] static Preferences* here();

    explicit Preferences(const QString& settingsFile, QObject* parent = nullptr);
    ~Preferences() override;

    // As GroupBy.
    [[nodiscard]] int scopeGroup() const { return number("scope_group", 0); }

    void setScopeGroup(int group) { keep("scope_group", group); }

    [[nodiscard]] bool scheduleByCrew() const { return number("schedule_by_crew", 0) != 0; }

    void setScheduleByCrew(bool byCrew) { keep("schedule_by_crew", byCrew ? 1 : 0); }

    // Where the peer on this machine listens; "" and 0 where it was never said.
    [[nodiscard]] QString peerAddress() const { return words("peer_address"); }

    void setPeerAddress(const QString& address) { keepWords("peer_address", address); }

    [[nodiscard]] int peerPort() const { return number("peer_port", 0); }

    void setPeerPort(int port) { keep("peer_port", port); }

  private:
    static Preferences* here_;
};

}  // namespace ledgerboard::desk
