// Which rows and cells are in a CSV file as spreadsheets and people really write them?
//
// The cells are read by libcsv. Taken: UTF-8 with or without a byte-order mark; commas, semicolons
// or tabs between cells, found from the first line or named by a first line "sep=;"; any line ends;
// quoted line breaks; rows that end early; empty lines, which are no rows.
// Units: line numbers count from 1, as editors do.
// Source: RFC 4180 (quoting); the rest is project decision, from how spreadsheets export.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/result.h"

namespace ledgerboard::intake {

inline constexpr std::size_t kLargestFile = 64u << 20;  // bytes
inline constexpr std::size_t kMostRows = 100'000;       // far more than one house has of anything

struct CsvRow {
    std::int64_t line = 0;           // where the row begins
    std::vector<std::string> cells;  // white space around unquoted cells is taken off
};

struct CsvTable {
    CsvRow headings;           // the first row
    std::vector<CsvRow> rows;  // each with exactly as many cells as there are headings
    char separator = ',';
};

// Errors: too large, too many rows, UTF-16, not UTF-8, binary, empty, a quotation mark where none
// belongs or never closed, rows with more cells than headings (all such rows at once). `file` is
// what the messages call it.
[[nodiscard]] model::Result<CsvTable> readCsv(std::string_view bytes, const std::string& file);

// The bytes of the file at `path`. Errors: missing, a folder, unreadable, larger than kLargestFile.
[[nodiscard]] model::Result<std::string> readWholeFile(const std::string& path);

}  // namespace ledgerboard::intake
