// Where in its list does a record stand? Inside core/compute.
#pragma once

#include <cstddef>
#include <optional>
#include <unordered_map>
#include <vector>

namespace ledgerboard::compute {

// Positions of rows by id; of two rows with one id, the first. Threads: any number may ask.
template <class Row>
class Positions {
  public:
    using Id = decltype(Row::id);

    explicit Positions(const std::vector<Row>& rows) {
        byId_.reserve(rows.size());
        for (std::size_t k = 0; k < rows.size(); ++k) {
            byId_.emplace(rows[k].id, k);
        }
    }

    // Empty for a nil id and for one that is not in the list.
    [[nodiscard]] std::optional<std::size_t> of(const Id& id) const {
        const auto found = id.isNil() ? byId_.end() : byId_.find(id);
        return found == byId_.end() ? std::nullopt : std::optional<std::size_t>(found->second);
    }

  private:
    std::unordered_map<Id, std::size_t> byId_;
};

}  // namespace ledgerboard::compute
