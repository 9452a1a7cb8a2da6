// Which of these rows has that id?
#pragma once

#include <algorithm>

namespace ledgerboard::intake {

// Nothing where none has, or the id is nil. Requires: `list` outlives what comes back.
template <class List, class Id>
[[nodiscard]] const typename List::value_type* rowOf(const List& list, Id id) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const auto& row) { return row.id == id; });
    return found == list.end() || id.isNil() ? nullptr : &*found;
}

}  // namespace ledgerboard::intake
