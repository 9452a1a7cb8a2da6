// How does a table become a spreadsheet that somebody goes on working with?
//
// Office Open XML (ISO/IEC 29500), written by libxlsxwriter: figures as figures, dates as dates,
// totals and differences as formulas with their worked-out values beside them, headings that stay
// in view and are repeated on every printed page, one page wide.
// Money stands as a decimal number, exact to the cent up to 90 thousand billion.
// Threads: any number may write, each its own.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/quantity.h"
#include "core/model/result.h"

namespace ledgerboard::give {

enum class Form { Text, Money, Quantity, Percent, Count, Date };

struct SheetColumn {
    std::string heading;
    Form form = Form::Text;
    bool isTotalled = false;  // a last row adds it up
    // Worked out from other columns of its row, such as "=G#-F#", # the number of the row. Its
    // cells then say what comes out.
    std::string formula;
};

using Cell = std::variant<std::monostate, std::string, model::Money, model::Quantity,
                          model::Percent, std::int64_t, model::Date>;

struct Sheet {
    std::string name;   // cut to the 31 characters that a spreadsheet allows
    std::string title;  // printed above each page
    std::vector<SheetColumn> columns;
    std::vector<std::vector<Cell>> rows;  // each as long as columns
};

// The bytes of a workbook with these sheets, in their order. Texts are never taken for formulas.
// Requires: at least one sheet, names that differ, rows of the length of columns. Errors:
// CannotBeMet: more than a spreadsheet holds (1,048,575 rows, 16,384 columns, 32,767 characters in
// a cell), or the place for temporary files can't be written.
[[nodiscard]] model::Result<std::string> workbookBytes(const std::vector<Sheet>& sheets);

// "A", "Z", "AA": the letters of a column, counted from 0.
[[nodiscard]] std::string columnLetters(std::size_t column);

}  // namespace ledgerboard::give
