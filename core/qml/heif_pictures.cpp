#include "core/qml/heif_pictures.h"

#include <QImage>
#include <QSize>
#include <QVariant>

#include "core/intake/photos/heif.h"

namespace ledgerboard::qml {

namespace {

constexpr qint64 kBeginning = 64;  // bytes that tell what a file is

std::string_view textOf(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

bool isHeif(QIODevice& device) {
    return intake::isHeif(textOf(device.peek(kBeginning)));
}

class Handler : public QImageIOHandler {
  public:
    [[nodiscard]] bool canRead() const override { return device() != nullptr && isHeif(*device()); }

    bool read(QImage* image) override {
        const QByteArray bytes = device()->readAll();
        auto pixels = intake::heifPixels(textOf(bytes));
        if (!pixels.ok()) {
            return false;
        }
        const auto& seen = pixels.value();
        // A copy, for the pixels go with this call.
        *image = QImage(seen.rgb.data(), seen.width, seen.height, qsizetype{3} * seen.width,
                        QImage::Format_RGB888)
                     .copy();
        return !image->isNull();
    }

    [[nodiscard]] bool supportsOption(ImageOption option) const override { return option == Size; }

    [[nodiscard]] QVariant option(ImageOption option) const override {
        if (option != Size || device() == nullptr) {
            return {};
        }
        const QByteArray bytes = device()->peek(device()->size());
        const auto size = intake::heifSize(textOf(bytes));
        return size.ok() ? QVariant(QSize(size.value().width, size.value().height)) : QVariant();
    }
};

}  // namespace

QImageIOPlugin::Capabilities HeifPictures::capabilities(QIODevice* device,
                                                        const QByteArray& format) const {
    const bool named = format == "heic" || format == "heif";
    const bool begins = format.isEmpty() && device != nullptr && device->isReadable();
    return named || (begins && isHeif(*device)) ? CanRead : Capabilities();
}

QImageIOHandler* HeifPictures::create(QIODevice* device, const QByteArray& format) const {
    auto* handler = new Handler;
    handler->setDevice(device);
    handler->setFormat(format);
    return handler;
}

}  // namespace ledgerboard::qml
