// What stands in the price book: prices by object and treatment, where each came from, and which
// items of this job it prices?
//
// Where used is read from the scope's own pricing (compute::ScopeLine). Threads: the UI's.
#pragma once

#include <map>

#include "desktop/client/money/record_sheet.h"

namespace ledgerboard::desk {

class PriceSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString sumText READ sumText NOTIFY shown)

  public:
    explicit PriceSheet(QObject* parent = nullptr);

    // "69 prices; 41 of them price items of this job".
    [[nodiscard]] QString sumText() const;
    [[nodiscard]] QString itemText() const override;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;

  private:
    std::vector<std::string> trades_;
    std::map<model::RawId, std::vector<std::size_t>> usedBy_;  // lines of the scope, by price
};

}  // namespace ledgerboard::desk
