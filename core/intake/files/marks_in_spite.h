// Which brought marks say that work was begun in spite of an open caution? They are facts, so they
// are kept; but they are flagged, and the owner is told.
#pragma once

#include <cstddef>
#include <set>
#include <string>

#include "core/compute/cautions.h"
#include "core/intake/files/row_reader.h"
#include "core/model/rows.h"

namespace ledgerboard::intake {

class MarksInSpite {
  public:
    // `rows`: of the job, as they stand before the file comes in; must outlive it.
    MarksInSpite(const model::JobRows& rows, model::Date today);

    // Whether the mark that these values make was made in spite of a caution. Counts it if so.
    [[nodiscard]] bool take(const FieldValues& values);

    // A sentence for the owner; empty where there was none.
    [[nodiscard]] std::string remark() const;

  private:
    const model::JobRows& rows_;
    compute::Cautions cautions_;
    std::size_t count_ = 0;
    std::set<std::string> names_;  // of the items
};

// A row as its values make it. Fields that are not among them are empty.
template <class Row>
[[nodiscard]] Row rowFrom(const FieldValues& values) {
    Row row;
    std::size_t at = 0;
    const auto fields = model::infoOf(Row::kKind).fields;
    model::visitFields(row, [&](auto& member) {
        const auto found = values.find(fields[at++].code);
        if (found != values.end()) {
            model::readMember(found->second, member);
        }
    });
    return row;
}

}  // namespace ledgerboard::intake
