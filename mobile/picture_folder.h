// The pictures on this device, the newest first: what its camera took a moment ago stands on top.
#pragma once

#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

struct PictureRow {
    Q_GADGET
    QML_VALUE_TYPE(pictureRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QUrl url MEMBER url)
    Q_PROPERTY(QString spoken MEMBER spoken)

  public:
    QString id;  // its path
    QUrl url;
    QString spoken;  // "Picture of Fri 15 May, 14:02"

    friend bool operator==(const PictureRow&, const PictureRow&) = default;
};

class PictureFolder : public RowList {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit PictureFolder(QObject* parent = nullptr);

    // Looks again.
    Q_INVOKABLE void refresh();
};

}  // namespace ledgerboard::phone
