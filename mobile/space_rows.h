// A list of what belongs to one space. It is filled when the space is named, and again whenever the
// job was read anew.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/row_list.h"

namespace ledgerboard::phone {

class SpaceRows : public RowList {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QString spaceId READ spaceId WRITE setSpaceId NOTIFY spaceIdChanged)

  public:
    explicit SpaceRows(QObject* parent = nullptr);

    // "" for what belongs to no space.
    [[nodiscard]] QString spaceId() const { return spaceId_; }

    void setSpaceId(const QString& id);

  signals:
    void spaceIdChanged();

  protected:
    // Shows the rows of spaceId().
    virtual void fill() = 0;

  private:
    QString spaceId_;
};

}  // namespace ledgerboard::phone
