// What can be brought in from a CSV file, which columns may it have, and by what is a row known
// again?
//
// Source: project decision; the fields themselves come from the catalog.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/catalog.h"

namespace ledgerboard::intake {

struct BringKind {
    std::string_view word;  // as commands say it: "scope"
    model::Kind kind = model::Kind::None;
    // Fields that no file brings: what the book knows itself, and pictures.
    std::vector<model::FieldCode> leftOut{};
    // Fields whose column must be there and whose cells must be filled.
    std::vector<model::FieldCode> needed{};
    // Fields whose column must be there, though a cell may be empty.
    std::vector<model::FieldCode> neededColumns{};
    // What names a record: a row with the same key speaks of the same record. Empty for facts
    // (spend, marks), which are known by all they say.
    std::vector<model::FieldCode> key{};
    // Whether a record that lacks part of its key takes it from a row: a contract entered before
    // its crew was known is that contract, while a punch item without a space is of the whole
    // house.
    bool keyFillsIn = false;
    // Whether items may be named in two columns, Space and Item.
    bool spaceBesideItem = false;
    // Whether a column "After" may name the items that a row's item waits for (after_column.h).
    bool hasAfter = false;
};

// scope, prices, crews, spend, contracts, changes, marks, draws, punch.
[[nodiscard]] std::span<const BringKind> bringKinds();

// By its word, or any name the catalog knows the kind by; null where nothing of that name is
// brought from CSV.
[[nodiscard]] const BringKind* bringKindNamed(std::string_view word);

// The fields a file of this kind may have, in the catalog's order.
[[nodiscard]] std::vector<const model::Field*> columnsOf(const BringKind& kind);

// Where the columns of a kind are known by other words too; separated by semicolons.
struct Synonyms {
    model::FieldCode field;
    std::string_view words;
};

[[nodiscard]] std::span<const Synonyms> synonyms();

// Headings that people expect and that can't be brought, with what to do instead.
struct Advice {
    model::Kind kind;
    std::string_view words;
    std::string_view says;
};

[[nodiscard]] std::span<const Advice> advices();

}  // namespace ledgerboard::intake
