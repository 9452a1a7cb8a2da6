// What is a new space called in two letters, and which colour is its chip?
//
// Source: project decision. The colours are muted, like old house paints, and keep apart from those
// that mean something on screens; two spaces may share one, since the letters tell them apart.
// Units: colours as #RRGGBB.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::intake {

class SpaceMaker {
  public:
    // `existing`: the spaces of the job. New ones follow them in walking order.
    explicit SpaceMaker(const std::vector<model::Space>& existing);

    // The next space in walking order, with letters no other space of the job has.
    [[nodiscard]] model::Space make(model::Id<model::Kind::Space> id,
                                    model::Id<model::Kind::Job> job, const std::string& name);

  private:
    [[nodiscard]] std::string lettersFor(std::string_view name);

    std::unordered_set<std::string> taken_;  // letters in use, folded
    std::int64_t lastOrder_ = 0;
    std::size_t count_ = 0;
};

}  // namespace ledgerboard::intake
