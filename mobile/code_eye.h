// What does an invitation's picture say? Read from a picture on this device, or from what the
// camera sees, by ZXing-C++.
//
// Threads: the UI's; a frame takes some milliseconds, and at most three a second are looked at.
#pragma once

#include <QElapsedTimer>
#include <QImage>
#include <QObject>
#include <QUrl>
#include <QVideoSink>
#include <QtQml/qqmlregistration.h>

namespace ledgerboard::phone {

// The words of the QR code (ISO/IEC 18004) in a picture; empty where none is read.
[[nodiscard]] QString codeIn(const QImage& picture);

class CodeEye : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVideoSink* sink READ sink WRITE setSink NOTIFY sinkChanged)

  public:
    using QObject::QObject;

    [[nodiscard]] QVideoSink* sink() const { return sink_; }

    // Looks at what is shown there, until a code is seen.
    void setSink(QVideoSink* sink);

    // The words in the picture at a path or a file's address; "" where none are.
    Q_INVOKABLE [[nodiscard]] QString readPicture(const QString& path) const;

  signals:
    void sinkChanged();
    void seen(const QString& words);

  private:
    QVideoSink* sink_ = nullptr;
    QElapsedTimer last_;
};

}  // namespace ledgerboard::phone
