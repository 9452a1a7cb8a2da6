#include "tests/ui/thumb.h"

#include <algorithm>
#include <mutex>
#include <random>

#include <QElapsedTimer>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QTest>

namespace ledgerboard::ui {

namespace {

constexpr int kWaitMs = 5'000;
constexpr int kMostScrolls = 30;
constexpr int kRestMs = 150;  // a finger that rested so long flings nothing

QPointingDevice* finger() {
    static QPointingDevice* device = QTest::createTouchDevice();
    return device;
}

void keepComplaint(QtMsgType type, const QMessageLogContext&, const QString& message) {
    if (type != QtDebugMsg && type != QtInfoMsg) {
        Thumb::complaints() << message;
        fprintf(stderr, "%s\n", qPrintable(message));
    }
}

// Whether its middle is on screen, and not cut off by a list that it scrolled out of.
bool isSeen(const QQuickItem& item) {
    const QPointF middle = item.mapToScene(QPointF(item.width() / 2, item.height() / 2));
    const QSizeF window(item.window()->size());
    if (!QRectF(QPointF(0, 0), window).contains(middle)) {
        return false;
    }
    for (const QQuickItem* outer = item.parentItem(); outer != nullptr;
         outer = outer->parentItem()) {
        if (outer->clip() && !outer->contains(outer->mapFromScene(middle))) {
            return false;
        }
    }
    return true;
}

void collect(QQuickItem* item, const std::function<void(QQuickItem*)>& take) {
    if (!item->isVisible() || item->opacity() == 0) {
        return;
    }
    take(item);
    for (QQuickItem* child : item->childItems()) {
        collect(child, take);
    }
}

}  // namespace

QStringList& Thumb::complaints() {
    static QStringList list;
    return list;
}

Thumb::Thumb(const Held& held, Settle settled) {
    qInstallMessageHandler(keepComplaint);
    phone::Surroundings surroundings;
    QElapsedTimer running;
    running.start();
    surroundings.now = [now = held.now, running, runs = held.clockRuns] {
        return runs ? model::Instant::fromMilliseconds(now.milliseconds() + running.elapsed())
                    : now;
    };
    auto numbers = std::make_shared<std::mt19937_64>(held.chance);
    auto one = std::make_shared<std::mutex>();
    surroundings.random = [numbers, one](std::uint8_t* bytes, std::size_t count) {
        const std::lock_guard<std::mutex> lock(*one);
        std::generate_n(bytes, count,
                        [&] { return static_cast<std::uint8_t>((*numbers)() & 0xff); });
    };
    surroundings.settingsFile = folder_.filePath(QStringLiteral("phone.ini"));
    surroundings.bookFolder = folder_.filePath(QStringLiteral("books"));
    surroundings.pictureFolders = {held.pictures};
    surroundings.meetSoonMs = held.meetSoonMs;
    surroundings.timeZone = QStringLiteral("America/Chicago");
    preferences_ = std::make_unique<phone::Preferences>(surroundings.settingsFile);
    preferences_->setThemeMode(held.theme);
    preferences_->setTextPercent(held.textPercent);
    preferences_->setLanguage(held.language);
    preferences_->setStillness(true);
    book_ = std::make_unique<phone::JobBook>(surroundings);
    view_ = std::make_unique<QQuickView>();
    view_->engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
    languages_ =
        std::make_unique<qml::Languages>(*view_->engine(), *preferences_, QStringLiteral("phone"),
                                         [this] { emit book_->changed(); });
    view_->setResizeMode(QQuickView::SizeRootObjectToView);
    view_->resize(held.size);
    view_->setSource(QUrl(QStringLiteral("qrc:/qt/qml/Ledgerboard/Phone/Shell.qml")));
    view_->show();
    (void)QTest::qWaitForWindowExposed(view_.get());
    if (!held.book.isEmpty()) {
        book_->open(held.book);
    }
    if (settled == Settle::Yes) {
        settle();
    }
}

Thumb::~Thumb() {
    view_.reset();
    languages_.reset();
    book_.reset();
}

bool Thumb::wait(const std::function<bool()>& holds) const {
    return QTest::qWaitFor(holds, kWaitMs);
}

void Thumb::settle() {
    (void)wait([this] { return !book_->isBusy(); });
    QTest::qWait(60);
}

std::vector<QQuickItem*> Thumb::all(const QString& objectName) const {
    std::vector<QQuickItem*> found;
    if (view_->rootObject() == nullptr) {
        return found;
    }
    collect(view_->rootObject(), [&](QQuickItem* item) {
        if (item->objectName() == objectName && item->width() > 0 && item->height() > 0) {
            if (isSeen(*item)) {
                found.push_back(item);
            }
        }
    });
    std::stable_sort(found.begin(), found.end(), [](QQuickItem* a, QQuickItem* b) {
        const QPointF p = a->mapToScene(QPointF());
        const QPointF q = b->mapToScene(QPointF());
        return p.y() != q.y() ? p.y() < q.y() : p.x() < q.x();
    });
    return found;
}

std::vector<QQuickItem*> Thumb::controls() const {
    std::vector<QQuickItem*> found;
    collect(view_->rootObject(), [&](QQuickItem* item) {
        if (item->inherits("QQuickAbstractButton") && item->isEnabled() && isSeen(*item)) {
            found.push_back(item);
        }
    });
    return found;
}

std::vector<QQuickItem*> Thumb::textItems() const {
    std::vector<QQuickItem*> found;
    collect(view_->rootObject(), [&](QQuickItem* item) {
        bool slides = false;
        for (const QQuickItem* outer = item; outer != nullptr; outer = outer->parentItem()) {
            slides = slides || outer->objectName() == QLatin1String("chips");
        }
        if (item->inherits("QQuickText") && !slides && item->width() > 0 && isSeen(*item)) {
            found.push_back(item);
        }
    });
    return found;
}

QQuickItem* Thumb::find(const QString& objectName, int nth) const {
    const auto at = static_cast<std::size_t>(nth);
    (void)wait([&] { return all(objectName).size() > at; });
    const auto found = all(objectName);
    return found.size() > at ? found[at] : nullptr;
}

void Thumb::touch(const QPointF& from, const QPointF& to, int restMs) {
    constexpr int kSteps = 12;
    QTest::touchEvent(view_.get(), finger()).press(0, from.toPoint(), view_.get());
    for (int k = 1; from != to && k <= kSteps; ++k) {
        QTest::qWait(8);
        QTest::touchEvent(view_.get(), finger())
            .move(0, (from + (to - from) * k / kSteps).toPoint(), view_.get());
    }
    if (restMs > 0) {
        QTest::qWait(restMs);
    }
    QTest::touchEvent(view_.get(), finger()).release(0, to.toPoint(), view_.get());
    QTest::qWait(30);
    settle();
}

void Thumb::tap(const QString& objectName, int nth) {
    QQuickItem* item = find(objectName, nth);
    if (item == nullptr) {
        complaints() << QStringLiteral("no %1 to tap").arg(objectName);
        return;
    }
    ++taps_;
    const QPointF middle = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
    touch(middle, middle);
}

void Thumb::hold(const QString& objectName) {
    QQuickItem* item = find(objectName);
    if (item == nullptr) {
        complaints() << QStringLiteral("no %1 to hold").arg(objectName);
        return;
    }
    ++taps_;
    const QPoint middle =
        item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
    QTest::touchEvent(view_.get(), finger()).press(0, middle, view_.get());
    QTest::qWait(1'000);
    QTest::touchEvent(view_.get(), finger()).release(0, middle, view_.get());
    QTest::qWait(30);
    settle();
}

void Thumb::tapText(const QString& objectName, const QString& text) {
    const auto has = [&](QQuickItem* item) {
        return item->property("text").toString().contains(text);
    };
    const auto isThere = [&] {
        const auto found = all(objectName);
        return std::any_of(found.begin(), found.end(), has);
    };
    (void)wait([&] { return !all(objectName).empty(); });
    for (int k = 0; k < kMostScrolls && !isThere(); ++k) {
        scrollDown();
    }
    const auto found = all(objectName);
    for (std::size_t k = 0; k < found.size(); ++k) {
        if (has(found[k])) {
            tap(objectName, static_cast<int>(k));
            return;
        }
    }
    complaints() << QStringLiteral("no %1 that says %2").arg(objectName, text);
}

void Thumb::drag(const QString& objectName, double from, double to) {
    QQuickItem* item = find(objectName);
    if (item == nullptr) {
        complaints() << QStringLiteral("no %1 to pull").arg(objectName);
        return;
    }
    ++drags_;
    const double y = item->height() / 2;
    touch(item->mapToScene(QPointF(item->width() * from, y)),
          item->mapToScene(QPointF(item->width() * to, y)));
}

void Thumb::swipe(bool toNext) {
    ++swipes_;
    const double width = view_->width();
    const double y = view_->height() * 0.35;
    const QPointF right(width * 0.85, y);
    const QPointF left(width * 0.15, y);
    touch(toNext ? right : left, toNext ? left : right);
    QTest::qWait(400);
}

void Thumb::scrollTo(const QString& objectName) {
    for (int k = 0; k < kMostScrolls && all(objectName).empty(); ++k) {
        scrollDown();
    }
}

// The list is pulled, not flung: how far a fling goes hangs on the machine's load, and what it flew
// past is not seen.
void Thumb::scrollDown() {
    const double x = view_->width() * 0.5;
    touch(QPointF(x, view_->height() * 0.7), QPointF(x, view_->height() * 0.3), kRestMs);
}

void Thumb::type(const QString& objectName, const QString& text) {
    QQuickItem* item = find(objectName);
    if (item == nullptr) {
        complaints() << QStringLiteral("no %1 to type in").arg(objectName);
        return;
    }
    item->forceActiveFocus();
    for (const QChar c : text) {
        QTest::keyClick(view_.get(), c.toLatin1());
    }
    settle();
}

QStringList Thumb::texts() const {
    QStringList list;
    collect(view_->rootObject(), [&](QQuickItem* item) {
        const QString text = item->property("text").toString();
        if (!text.isEmpty()) {
            list << text;
        }
    });
    return list;
}

bool Thumb::says(const QString& words) const {
    const QStringList list = texts();
    return std::any_of(list.begin(), list.end(),
                       [&](const QString& text) { return text.contains(words); });
}

void Thumb::shot(const QString& path) {
    settle();
    QTest::qWait(40);
    view_->grabWindow().save(path);
}

}  // namespace ledgerboard::ui
