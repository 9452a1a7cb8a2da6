#include "mobile/code_eye.h"

// Texts as UTF-8, which this version of the library asks for by name.
#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>

#include <QImageReader>
#include <QVideoFrame>

namespace ledgerboard::phone {

namespace {

constexpr int kBetweenLooksMs = 330;
// A code fills much of a picture: more pixels than these tell nothing more.
constexpr int kMostSide = 1'600;

}  // namespace

QString codeIn(const QImage& picture) {
    if (picture.isNull()) {
        return {};
    }
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode);
    hints.setTryHarder(true);
    const ZXing::ImageView view(grey.constBits(), grey.width(), grey.height(),
                                ZXing::ImageFormat::Lum, static_cast<int>(grey.bytesPerLine()));
    const auto read = ZXing::ReadBarcode(view, hints);
    return read.isValid() ? QString::fromStdString(read.text()) : QString();
}

QString CodeEye::readPicture(const QString& path) const {
    const QUrl address(path);
    QImageReader reader(address.isLocalFile() ? address.toLocalFile() : path);
    reader.setAutoTransform(true);
    if (const QSize size = reader.size(); size.width() > kMostSide || size.height() > kMostSide) {
        reader.setScaledSize(size.scaled(kMostSide, kMostSide, Qt::KeepAspectRatio));
    }
    return codeIn(reader.read());
}

void CodeEye::setSink(QVideoSink* sink) {
    if (sink_ == sink) {
        return;
    }
    if (sink_ != nullptr) {
        disconnect(sink_, nullptr, this, nullptr);
    }
    sink_ = sink;
    if (sink_ != nullptr) {
        connect(sink_, &QVideoSink::videoFrameChanged, this, [this](const QVideoFrame& frame) {
            if (last_.isValid() && last_.elapsed() < kBetweenLooksMs) {
                return;
            }
            last_.start();
            if (const QString words = codeIn(frame.toImage()); !words.isEmpty()) {
                emit seen(words);
            }
        });
    }
    emit sinkChanged();
}

}  // namespace ledgerboard::phone
