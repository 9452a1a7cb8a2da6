// Which column of a file is which field of the catalog?
//
// A heading is known by the field's heading or name or by a synonym, whatever its case, spaces,
// punctuation and unit in brackets: "QTY.", "Amount ($)", "paid_to". What is not known is an error
// that says what would do; nothing is left out unless the person says so.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/files/bring_kinds.h"
#include "core/intake/files/csv.h"
#include "core/intake/files/problems.h"
#include "core/model/catalog.h"
#include "core/model/result.h"

namespace ledgerboard::intake {

// "theirs=ours": a heading of the file stands for a heading of the catalog; "-" leaves it out.
struct HeadingMatch {
    std::string theirs;
    std::string ours;
};

// Reads "theirs=ours,theirs=ours". Empty: none. Errors (WrongUse): a part without both sides.
[[nodiscard]] model::Result<std::vector<HeadingMatch>> parseMatches(std::string_view text);

// A column that is brought in. A null field is the Space beside an item, or After (see BringKind).
struct Column {
    std::size_t at = 0;
    std::string heading;  // as the file writes it
    const model::Field* field = nullptr;
    bool isAfter = false;
};

// The columns of `table`, in its order. Adds to `problems`: unknown, doubled or missing headings, a
// column with cells and no heading, a match that names no column or no field.
[[nodiscard]] std::vector<Column> matchHeadings(const BringKind& kind, const CsvTable& table,
                                                const std::vector<HeadingMatch>& matches,
                                                Problems& problems);

// Letters, digits and % # of a heading in lower case: how headings are compared.
[[nodiscard]] std::string headingKey(std::string_view heading);

}  // namespace ledgerboard::intake
