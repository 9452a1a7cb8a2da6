// The desktop under the hands of a test: the real pages over a real book, driven by real keys and
// the mouse, with the clock and the chance of the test. Any warning that Qt or QML gives is kept,
// for the test to fail on.
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>

#include "core/qml/languages.h"

#include "desktop/client/desk.h"
#include "desktop/client/preferences.h"

namespace ledgerboard::ui {

struct Laid {
    QSize size{1280, 800};
    int theme = 0;
    QString language = QStringLiteral("en");
    model::Instant now;
    QString book;  // to open; "" for none
    QString asOf;  // day to look at; "" for today
    unsigned chance = 20260522;
    bool waits = true;    // until everything stands; else only for the first frame
    QString peerProgram;  // for a peer on this machine, on loopback
    int peerPort = 0;
    QString bankProgram;  // that reads a bank's download
    QString settings;     // a settings file to go on with; "" for a new one
};

class Hand {
  public:
    explicit Hand(const Laid& laid);
    ~Hand();
    Hand(const Hand&) = delete;
    Hand& operator=(const Hand&) = delete;

    void key(int key, Qt::KeyboardModifiers with = Qt::NoModifier);
    // One key several times.
    void keys(int key, int times, Qt::KeyboardModifiers with = Qt::NoModifier);
    // Tabs on until what is called so has the focus; false where it never has.
    bool tabTo(const QString& objectName);
    // Letters, one after the other, to whatever has the focus.
    void type(const QString& text);
    void click(const QString& objectName, int nth = 0);
    // The one that says `text`.
    void clickText(const QString& objectName, const QString& text);
    // Moves the pointer to a share of an item's width and height.
    void hover(const QString& objectName, double across, double down);

    // The visible items of this name, from top to bottom and left to right; with `offScreen` also
    // those that are scrolled out of view.
    [[nodiscard]] std::vector<QQuickItem*> all(const QString& objectName,
                                               bool offScreen = false) const;
    // Waits for the nth of them; null where it does not come.
    [[nodiscard]] QQuickItem* find(const QString& objectName, int nth = 0) const;
    // What they say, from top to bottom.
    [[nodiscard]] QStringList said(const QString& objectName) const;
    // The same from left to right, whatever their height.
    [[nodiscard]] QStringList saidAcross(const QString& objectName) const;
    // Whether a visible text anywhere holds `words`.
    [[nodiscard]] bool says(const QString& words) const;
    // The objectName of what has the focus, or of the nearest around it that has one.
    [[nodiscard]] QString focus() const;
    [[nodiscard]] bool wait(const std::function<bool()>& holds, int ms = 20'000) const;
    // Until nothing is read or worked out any more.
    void settle();
    void shot(const QString& path);

    [[nodiscard]] desk::Desk& desk() { return *desk_; }

    [[nodiscard]] desk::Preferences& preferences() { return *preferences_; }

    [[nodiscard]] QQuickView& view() { return *view_; }

    [[nodiscard]] QString folder() const { return folder_.path(); }

    // What Qt and QML complained of.
    [[nodiscard]] static QStringList& complaints();

  private:
    QTemporaryDir folder_;
    std::unique_ptr<desk::Preferences> preferences_;
    std::unique_ptr<desk::Desk> desk_;
    std::unique_ptr<QQuickView> view_;
    std::unique_ptr<qml::Languages> languages_;
};

}  // namespace ledgerboard::ui
