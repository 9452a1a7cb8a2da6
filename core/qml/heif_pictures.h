// How does a screen show a picture that a telephone kept as HEIC? Qt reads none by itself; this
// lets every Image of ours do so. Linked into each program by look_theme.cpp.
#pragma once

#include <QImageIOHandler>
#include <QImageIOPlugin>

namespace ledgerboard::qml {

class HeifPictures : public QImageIOPlugin {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.qt-project.Qt.QImageIOHandlerFactoryInterface" FILE
                          "heif_pictures.json")

  public:
    [[nodiscard]] Capabilities capabilities(QIODevice* device,
                                            const QByteArray& format) const override;
    [[nodiscard]] QImageIOHandler* create(QIODevice* device,
                                          const QByteArray& format) const override;
};

}  // namespace ledgerboard::qml
