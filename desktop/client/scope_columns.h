// Which columns does the scope sheet have, and which field of an item does each hold?
#pragma once

#include <array>

#include "core/model/catalog.h"

namespace ledgerboard::desk {

struct ScopeColumn {
    const char* title;
    model::FieldCode field;  // 0: worked out, not to be edited
    int width;
    bool right;
};

namespace scope_column {
inline constexpr int kSpace = 0;
inline constexpr int kTreatment = 1;
inline constexpr int kObject = 2;
inline constexpr int kQuantity = 4;
inline constexpr int kLine = 9;
inline constexpr int kCount = 12;
}  // namespace scope_column

// In the order of the sheet. Titles are translated in the context ScopeSheet.
[[nodiscard]] const std::array<ScopeColumn, scope_column::kCount>& scopeColumns();

}  // namespace ledgerboard::desk
