// The photos of a space: which are there, what stage a new one would be of, and keeping one.
#pragma once

#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "mobile/space_rows.h"

namespace ledgerboard::phone {

struct PhotoRow {
    Q_GADGET
    QML_VALUE_TYPE(photoRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QUrl url MEMBER url)
    Q_PROPERTY(QString words MEMBER words)

  public:
    QString id;
    QUrl url;
    QString words;  // "before, Mon 6 Apr"

    friend bool operator==(const PhotoRow&, const PhotoRow&) = default;
};

class SitePhotos : public SpaceRows {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int guess READ guess NOTIFY guessChanged)
    Q_PROPERTY(QUrl before READ before NOTIFY guessChanged)

  public:
    using SpaceRows::SpaceRows;

    // What a photo taken now is of: 0 before, 1 during, 2 after.
    [[nodiscard]] int guess() const { return guess_; }

    // The first picture of before, to stand where that one stood. Empty where there is none.
    [[nodiscard]] QUrl before() const { return before_; }

    // Keeps the picture at `path` as one of this space; true once it is on disk.
    Q_INVOKABLE bool keepPicture(const QString& path, int stage);

  signals:
    void guessChanged();

  private:
    void fill() override;

    int guess_ = 1;
    QUrl before_;
    QString beforeId_;
};

}  // namespace ledgerboard::phone
