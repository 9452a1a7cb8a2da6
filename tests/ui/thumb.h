// The phone in the hand of a test: the real screens over a real book, driven by real touches, with
// the clock and the chance of the test. Any warning that Qt or QML gives is kept, for the test to
// fail on.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QPointF>
#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>

#include "core/qml/languages.h"
#include "core/store/book.h"

#include "mobile/job_book.h"
#include "mobile/preferences.h"

namespace ledgerboard::ui {

struct Held {
    QSize size{390, 844};
    int theme = 0;
    int textPercent = 100;
    QString language = QStringLiteral("en");
    model::Instant now;
    bool clockRuns =
        false;     // on from `now`; a peer that was started again takes nothing signed before
    QString book;  // to open; "" for none
    unsigned chance = 20260522;  // seed; two programs over one book must not make the same ids
    QString pictures;            // the folder of the device's pictures
    int meetSoonMs = 3'600'000;  // after a change; tests say when they meet
};

class Thumb {
  public:
    enum class Settle { Yes, No };

    // Settled, the job is on screen.
    explicit Thumb(const Held& held, Settle settled = Settle::Yes);
    ~Thumb();
    Thumb(const Thumb&) = delete;
    Thumb& operator=(const Thumb&) = delete;

    // Taps are counted; drags and swipes for themselves.
    void tap(const QString& objectName, int nth = 0);
    // Holds the thumb there for a second.
    void hold(const QString& objectName);
    // The one that says `text`, scrolled to where need be.
    void tapText(const QString& objectName, const QString& text);
    // Puts the thumb on an item at a share of its width and pulls it to another.
    void drag(const QString& objectName, double from, double to);
    void swipe(bool toNext);
    void scrollDown();
    void scrollTo(const QString& objectName);
    void type(const QString& objectName, const QString& text);

    void resetCount() { taps_ = drags_ = swipes_ = 0; }

    [[nodiscard]] int taps() const { return taps_; }

    [[nodiscard]] int drags() const { return drags_; }

    [[nodiscard]] int swipes() const { return swipes_; }

    // The visible items of this name, from top to bottom and left to right.
    [[nodiscard]] std::vector<QQuickItem*> all(const QString& objectName) const;
    // Every control that can be pressed and is on screen.
    [[nodiscard]] std::vector<QQuickItem*> controls() const;
    // Every text that is on screen and in no strip that slides sideways.
    [[nodiscard]] std::vector<QQuickItem*> textItems() const;
    // Waits for the nth of them; null where it does not come.
    [[nodiscard]] QQuickItem* find(const QString& objectName, int nth = 0) const;
    // Whether a visible text anywhere holds `words`.
    [[nodiscard]] bool says(const QString& words) const;
    [[nodiscard]] QStringList texts() const;
    // Waits until `holds`; false after five seconds.
    [[nodiscard]] bool wait(const std::function<bool()>& holds) const;
    // Until the reader is done and nothing moves.
    void settle();
    void shot(const QString& path);

    [[nodiscard]] phone::JobBook& book() { return *book_; }

    [[nodiscard]] phone::Preferences& preferences() { return *preferences_; }

    [[nodiscard]] QQuickView& view() { return *view_; }

    [[nodiscard]] QString folder() const { return folder_.path(); }

    // What Qt and QML complained of.
    [[nodiscard]] static QStringList& complaints();

  private:
    void touch(const QPointF& from, const QPointF& to, int restMs = 0);

    QTemporaryDir folder_;
    std::unique_ptr<phone::Preferences> preferences_;
    std::unique_ptr<phone::JobBook> book_;
    std::unique_ptr<QQuickView> view_;
    std::unique_ptr<qml::Languages> languages_;
    int taps_ = 0;
    int drags_ = 0;
    int swipes_ = 0;
};

}  // namespace ledgerboard::ui
