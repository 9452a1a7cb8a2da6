// Which record of the book does a row of a file speak of, if any?
//
// Rows with a key (an item's space, treatment and object; a crew's name ...) speak of the record
// with that key, and what differs is written. Facts (spend, marks) are known by all they say: a row
// is the record it once made, however that was filed or even dropped since, and each record answers
// for one row, so that two equal receipts in one file are two. A spend with a bank id is known by
// it.
// Source: project decision: bringing the same file twice adds nothing.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/intake/files/bring_kinds.h"
#include "core/intake/files/headings.h"
#include "core/intake/files/problems.h"
#include "core/intake/files/row_check.h"
#include "core/intake/files/row_reader.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

enum class PairedAs {
    New,        // no record says it yet
    Same,       // a record says it, or once did and the owner changed or dropped it since
    Different,  // a record is to take `changes`
};

struct Pairing {
    PairedAs as = PairedAs::New;
    std::optional<std::size_t> record;  // in `existing`, where not New
    FieldValues changes;                // where Different
    std::string remark;                 // something the owner should look at; may be empty
};

// What pairing goes by. Must outlive it.
struct PairingInput {
    const BringKind& kind;
    const std::vector<BroughtRow>& rows;
    const std::vector<Column>& columns;  // that the rows were read from
    const std::vector<store::Record>&
        existing;  // every one of the kind (and job), dropped ones too
    const store::Book& book;
    const Finder& finder;
    const HeadingOf& headingOf;
};

// One for each row. Adds to `problems`: two rows with one key, a key that two records have, a bank
// id seen with other facts. Errors: those of reading history.
[[nodiscard]] model::Result<std::vector<Pairing>> pairRows(const PairingInput& in,
                                                           Problems& problems);

// A value as keys are compared: texts without case, spaces and hyphens.
[[nodiscard]] std::string keyOf(const model::Value& value);

// The value of a field in a row; empty where it is not filled.
[[nodiscard]] model::Value valueIn(const FieldValues& values, model::FieldCode code);

}  // namespace ledgerboard::intake
