#include "desktop/client/scope_columns.h"

#include <QCoreApplication>

namespace ledgerboard::desk {

namespace f = model::field;

const std::array<ScopeColumn, scope_column::kCount>& scopeColumns() {
    static const std::array<ScopeColumn, scope_column::kCount> kColumns = {
        {{QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Space"), f::Item::space, 56, false},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Treatment"), f::Item::treatment, 84,
          false},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Object"), f::Item::object, 0, false},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Trade"), f::Item::trade, 96, false},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Quantity"), f::Item::quantity, 66,
          true},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Unit"), f::Item::unit, 60, false},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Material"), f::Item::unitCostMaterial,
          74, true},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Labour"), f::Item::unitCostLabour, 74,
          true},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Lump sum"), f::Item::lumpSum, 78,
          true},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Line"), 0, 84, true},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Crew"), f::Item::crew, 122, false},
         {QT_TRANSLATE_NOOP("ledgerboard::desk::ScopeSheet", "Days"), f::Item::daysLikely, 48,
          true}}};
    return kColumns;
}

}  // namespace ledgerboard::desk
