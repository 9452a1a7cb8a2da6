// What are the fields of money and their words called on the pages?
//
// In the language of the pages; a field without a word of its own is called what the catalog calls
// it. Threads: any.
#pragma once

#include <string_view>
#include <vector>

#include <QCoreApplication>
#include <QString>

#include "core/model/catalog.h"

namespace ledgerboard::desk {

class FieldWords {
    Q_DECLARE_TR_FUNCTIONS(FieldWords)

  public:
    [[nodiscard]] static QString heading(model::FieldCode field);
    // Of a word that a field may hold: "Invoice" for "invoice".
    [[nodiscard]] static QString word(std::string_view stored);
    [[nodiscard]] static QString yes();
    // "contract", "change order" ...; of a record as a page speaks of it.
    [[nodiscard]] static QString kind(model::Kind kind);

    // The fields that a page lets a person fill in, in the order they are asked for.
    [[nodiscard]] static const std::vector<model::FieldCode>& fields(model::Kind kind);
};

}  // namespace ledgerboard::desk
