// Does this device see and hear? Whether it has a camera and a microphone, and where what they take
// lies until it is kept. Nothing of them is woken before somebody asks.
#pragma once

#include <memory>

#include <QObject>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QMediaDevices;
class QQmlEngine;

namespace ledgerboard::phone {

class Senses : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool hasCamera READ hasCamera NOTIFY changed)
    Q_PROPERTY(bool hasMicrophone READ hasMicrophone NOTIFY changed)

  public:
    explicit Senses(QObject* parent = nullptr);
    ~Senses() override;

    [[nodiscard]] bool hasCamera();
    [[nodiscard]] bool hasMicrophone();

    // A path for a file that is none yet, such as ".jpg".
    Q_INVOKABLE [[nodiscard]] QString newFile(const QString& suffix) const;
    // Takes away a file made there, once it is kept.
    Q_INVOKABLE void forget(const QString& path) const;

  signals:
    void changed();

  private:
    bool look();

    std::unique_ptr<QMediaDevices> devices_;
};

}  // namespace ledgerboard::phone
