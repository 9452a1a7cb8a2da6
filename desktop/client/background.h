// How is something worked out while the window goes on?
//
// Threads: called from the UI's, and `take` is called there; `work` runs in the pool. Nothing is
// taken once `receiver` is gone.
#pragma once

#include <memory>
#include <utility>

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace ledgerboard::desk {

template <class Work, class Take>
void inBackground(QThreadPool& pool, QObject* receiver, Work work, Take take) {
    const QPointer<QObject> kept(receiver);
    auto taking = std::make_shared<Take>(std::move(take));
    pool.start([kept, work = std::move(work), taking]() mutable {
        auto result = std::make_shared<decltype(work())>(work());
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [kept, taking, result] {
                if (!kept.isNull()) {
                    (*taking)(std::move(*result));
                }
            },
            Qt::QueuedConnection);
    });
}

}  // namespace ledgerboard::desk
