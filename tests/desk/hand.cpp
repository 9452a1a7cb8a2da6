#include "tests/desk/hand.h"

#include <algorithm>
#include <mutex>
#include <random>

#include <QQmlEngine>
#include <QTest>

namespace ledgerboard::ui {

namespace {

void keepComplaint(QtMsgType type, const QMessageLogContext&, const QString& message) {
    if (type != QtDebugMsg && type != QtInfoMsg) {
        Hand::complaints() << message;
        fprintf(stderr, "%s\n", qPrintable(message));
    }
}

bool isInView(const QQuickItem& item) {
    const QPointF middle = item.mapToScene(QPointF(item.width() / 2, item.height() / 2));
    if (!QRectF(QPointF(0, 0), QSizeF(item.window()->size())).contains(middle)) {
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

void collectItems(QQuickItem* item, const std::function<void(QQuickItem*)>& take) {
    if (!item->isVisible() || item->opacity() == 0) {
        return;
    }
    take(item);
    for (QQuickItem* child : item->childItems()) {
        collectItems(child, take);
    }
}

QPoint middleOf(const QQuickItem& item) {
    return item.mapToScene(QPointF(item.width() / 2, item.height() / 2)).toPoint();
}

}  // namespace

QStringList& Hand::complaints() {
    static QStringList list;
    return list;
}

Hand::Hand(const Laid& laid) {
    qInstallMessageHandler(keepComplaint);
    desk::Surroundings surroundings;
    surroundings.now = [now = laid.now] { return now; };
    auto numbers = std::make_shared<std::mt19937_64>(laid.chance);
    auto one = std::make_shared<std::mutex>();
    surroundings.random = [numbers, one](std::uint8_t* bytes, std::size_t count) {
        const std::lock_guard<std::mutex> lock(*one);
        std::generate_n(bytes, count,
                        [&] { return static_cast<std::uint8_t>((*numbers)() & 0xff); });
    };
    surroundings.settingsFile =
        laid.settings.isEmpty() ? folder_.filePath(QStringLiteral("desk.ini")) : laid.settings;
    surroundings.peerProgram =
        laid.peerProgram.isEmpty() ? QStringLiteral("no-such-program") : laid.peerProgram;
    surroundings.peerAddress = QStringLiteral("127.0.0.1");
    constexpr int kPort = 7'440;
    surroundings.peerPort = laid.peerPort == 0 ? kPort : laid.peerPort;
    surroundings.bankProgram = laid.bankProgram;
    surroundings.bookFolder = folder_.filePath(QStringLiteral("books"));
    surroundings.timeZone = QStringLiteral("America/Chicago");
    preferences_ = std::make_unique<desk::Preferences>(surroundings.settingsFile);
    preferences_->setThemeMode(laid.theme);
    preferences_->setLanguage(laid.language);
    preferences_->setStillness(true);
    desk_ = std::make_unique<desk::Desk>(surroundings);
    view_ = std::make_unique<QQuickView>();
    view_->engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
    languages_ = std::make_unique<qml::Languages>(*view_->engine(), *preferences_,
                                                  QStringLiteral("desk"), [this] {
                                                      emit desk_->wordsChanged();
                                                      emit desk_->changed();
                                                  });
    if (!laid.book.isEmpty()) {
        desk_->open(laid.book);
        if (!laid.asOf.isEmpty()) {
            (void)desk_->lookAt(laid.asOf);
        }
    }
    view_->setResizeMode(QQuickView::SizeRootObjectToView);
    view_->resize(laid.size);
    view_->setSource(QUrl(QStringLiteral("qrc:/qt/qml/Ledgerboard/Desk/Folder.qml")));
    view_->show();
    view_->requestActivate();
    if (!laid.waits) {
        (void)QTest::qWaitForWindowExposed(view_.get());
        view_->grabWindow();
        return;
    }
    (void)QTest::qWaitForWindowActive(view_.get());
    settle();
}

Hand::~Hand() {
    view_.reset();
    languages_.reset();
    desk_.reset();
}

bool Hand::wait(const std::function<bool()>& holds, int ms) const {
    return QTest::qWaitFor(holds, ms);
}

void Hand::settle() {
    QTest::qWait(5);
    (void)wait([this] { return !desk_->isBusy() && desk_->pool().activeThreadCount() == 0; });
    QTest::qWait(25);
    // What is laid out anew stands once a frame was painted, however busy the machine is.
    bool painted = false;
    const auto frame =
        QObject::connect(view_.get(), &QQuickWindow::frameSwapped, [&painted] { painted = true; });
    view_->update();
    (void)wait([&painted] { return painted; }, 200);
    QObject::disconnect(frame);
}

void Hand::key(int key, Qt::KeyboardModifiers with) {
    QTest::keyClick(view_.get(), static_cast<Qt::Key>(key), with);
    settle();
}

void Hand::keys(int key, int times, Qt::KeyboardModifiers with) {
    for (int k = 0; k < times; ++k) {
        QTest::keyClick(view_.get(), static_cast<Qt::Key>(key), with);
    }
    settle();
}

bool Hand::tabTo(const QString& objectName) {
    constexpr int kMostTabs = 60;
    for (int k = 0; k < kMostTabs && focus() != objectName; ++k) {
        QTest::keyClick(view_.get(), Qt::Key_Tab);
        QTest::qWait(5);
    }
    settle();
    return focus() == objectName;
}

void Hand::type(const QString& text) {
    for (const QChar c : text) {
        QTest::keyClick(view_.get(), c.toLatin1());
    }
    settle();
}

void Hand::click(const QString& objectName, int nth) {
    QQuickItem* item = find(objectName, nth);
    if (item == nullptr) {
        complaints() << QStringLiteral("no %1 to click").arg(objectName);
        return;
    }
    QTest::mouseClick(view_.get(), Qt::LeftButton, Qt::NoModifier, middleOf(*item));
    settle();
}

void Hand::clickText(const QString& objectName, const QString& text) {
    const auto found = all(objectName);
    for (std::size_t k = 0; k < found.size(); ++k) {
        if (found[k]->property("text").toString().contains(text)) {
            click(objectName, static_cast<int>(k));
            return;
        }
    }
    complaints() << QStringLiteral("no %1 that says %2").arg(objectName, text);
}

void Hand::hover(const QString& objectName, double across, double down) {
    QQuickItem* item = find(objectName);
    if (item == nullptr) {
        complaints() << QStringLiteral("no %1 to point at").arg(objectName);
        return;
    }
    QTest::mouseMove(
        view_.get(),
        item->mapToScene(QPointF(item->width() * across, item->height() * down)).toPoint());
    settle();
}

std::vector<QQuickItem*> Hand::all(const QString& objectName, bool offScreen) const {
    std::vector<QQuickItem*> found;
    if (view_->rootObject() == nullptr) {
        return found;
    }
    collectItems(view_->rootObject(), [&](QQuickItem* item) {
        if (item->objectName() == objectName && item->width() > 0 && item->height() > 0 &&
            (offScreen || isInView(*item))) {
            found.push_back(item);
        }
    });
    std::stable_sort(found.begin(), found.end(), [](QQuickItem* a, QQuickItem* b) {
        const QPointF p = a->mapToScene(QPointF());
        const QPointF q = b->mapToScene(QPointF());
        return p.y() != q.y() ? p.y() < q.y() : p.x() < q.x();
    });
    return found;
}

QQuickItem* Hand::find(const QString& objectName, int nth) const {
    const auto at = static_cast<std::size_t>(nth);
    (void)wait([&] { return all(objectName).size() > at; }, 3'000);
    const auto found = all(objectName);
    return found.size() > at ? found[at] : nullptr;
}

QStringList Hand::said(const QString& objectName) const {
    QStringList list;
    for (const auto* item : all(objectName, true)) {
        list << item->property("text").toString();
    }
    return list;
}

QStringList Hand::saidAcross(const QString& objectName) const {
    auto items = all(objectName, true);
    std::stable_sort(items.begin(), items.end(), [](QQuickItem* a, QQuickItem* b) {
        return a->mapToScene(QPointF()).x() < b->mapToScene(QPointF()).x();
    });
    QStringList list;
    for (const auto* item : items) {
        list << item->property("text").toString();
    }
    return list;
}

bool Hand::says(const QString& words) const {
    bool found = false;
    collectItems(view_->rootObject(), [&](QQuickItem* item) {
        found = found || item->property("text").toString().contains(words);
    });
    return found;
}

QString Hand::focus() const {
    for (QQuickItem* item = view_->activeFocusItem(); item != nullptr; item = item->parentItem()) {
        if (!item->objectName().isEmpty()) {
            return item->objectName();
        }
    }
    return {};
}

void Hand::shot(const QString& path) {
    settle();
    view_->grabWindow().save(path);
}

}  // namespace ledgerboard::ui
