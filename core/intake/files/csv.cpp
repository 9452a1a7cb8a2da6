#include "core/intake/files/csv.h"

#include <array>
#include <csv.h>
#include <filesystem>
#include <fstream>
#include <optional>

#include "core/intake/files/problems.h"
#include "core/model/catalog.h"
#include "core/model/decimal.h"
#include "core/model/saying.h"
#include "core/model/utf8.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kMostColumns = 256;  // short rows are filled up, so width must be bounded
constexpr unsigned char kLenient = CSV_STRICT_FINI | CSV_REPALL_NL;
constexpr unsigned char kStrict = kLenient | CSV_STRICT;

model::Error wholeFile(const std::string& file, const std::string& message) {
    return model::cannotBeMet(model::saying("%1: %2", file, message));
}

// The lines of a text, each with its ending: LF, CR LF or CR alone.
class Lines {
  public:
    explicit Lines(std::string_view text) : rest_(text) {}

    [[nodiscard]] bool done() const { return rest_.empty(); }

    std::string_view next() {
        std::size_t end = rest_.find_first_of("\r\n");
        if (end == std::string_view::npos) {
            end = rest_.size();
        } else {
            end += rest_[end] == '\r' && end + 1 < rest_.size() && rest_[end + 1] == '\n' ? 2 : 1;
        }
        const auto line = rest_.substr(0, end);
        rest_.remove_prefix(end);
        return line;
    }

  private:
    std::string_view rest_;
};

// What no text file holds: the line it stands on; 0 where there is none.
std::int64_t lineOfControlByte(std::string_view text) {
    std::int64_t number = 0;
    for (Lines lines(text); !lines.done();) {
        ++number;
        for (const char c : lines.next()) {
            const auto byte = static_cast<unsigned char>(c);
            if ((byte < 0x20 && c != '\t' && c != '\r' && c != '\n') || byte == 0x7F) {
                return number;
            }
        }
    }
    return 0;
}

std::int64_t lineNotUtf8(std::string_view text) {
    std::int64_t number = 0;
    for (Lines lines(text); !lines.done();) {
        ++number;
        if (!model::isUtf8(lines.next())) {
            return number;
        }
    }
    return number;
}

// The character that stands most often outside quotation marks in the first line with anything in
// it: headings hold no others.
char separatorOf(std::string_view text) {
    std::string_view first;
    for (Lines lines(text); !lines.done() && model::trimmed(first).empty();) {
        first = lines.next();
    }
    constexpr std::array<char, 3> kSeparators = {',', ';', '\t'};
    std::array<int, 3> counts{};
    bool quoted = false;
    for (const char c : first) {
        quoted = quoted != (c == '"');
        for (std::size_t k = 0; k < kSeparators.size(); ++k) {
            counts[k] += !quoted && c == kSeparators[k] ? 1 : 0;
        }
    }
    std::size_t best = 0;
    for (std::size_t k = 1; k < kSeparators.size(); ++k) {
        best = counts[k] > counts[best] ? k : best;
    }
    return kSeparators[best];
}

// libcsv fed line by line, so that each row knows the line it begins on.
class Reader {
  public:
    Reader(char separator, const std::string& file) : file_(file) {
        csv_init(&parser_, kStrict);
        csv_set_delim(&parser_, static_cast<unsigned char>(separator));
    }

    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

    ~Reader() { csv_free(&parser_); }

    model::Result<std::vector<CsvRow>> read(std::string_view text, std::int64_t firstLine) {
        std::int64_t line = firstLine - 1;
        for (Lines lines(text); !lines.done();) {
            ++line;
            if (!inRow_) {
                row_.line = line;
            }
            inRow_ = true;
            if (!feed(lines.next())) {
                return refusal(line);
            }
            if (rows_.size() > kMostRows + 1) {
                return wholeFile(file_, "has more than 100,000 rows: bring it in parts");
            }
        }
        if (csv_fini(&parser_, takeCell, takeRow, this) != 0) {
            return model::cannotBeMet(
                model::saying("%1:%2: a quotation mark opened in this row is never closed: close "
                              "it, or take it out",
                              file_, row_.line));
        }
        return std::move(rows_);
    }

  private:
    static void takeCell(void* bytes, std::size_t size, void* reader) {
        static_cast<Reader*>(reader)->row_.cells.emplace_back(
            bytes != nullptr ? static_cast<const char*>(bytes) : "", size);
    }

    static void takeRow(int /*end*/, void* reader) {
        auto& self = *static_cast<Reader*>(reader);
        self.inRow_ = false;
        bool anything = false;
        for (const auto& cell : self.row_.cells) {
            anything = anything || !cell.empty();
        }
        const std::int64_t line = self.row_.line;
        if (anything) {
            self.rows_.push_back(std::move(self.row_));
        }
        self.row_ = CsvRow{line, {}};
    }

    // False where a quotation mark stands where none belongs.
    bool feed(std::string_view line) {
        std::size_t at = 0;
        while (at < line.size()) {
            at += csv_parse(&parser_, line.data() + at, line.size() - at, takeCell, takeRow, this);
            if (at == line.size()) {
                return true;
            }
            if (parser_.quoted != 0 || csv_error(&parser_) != CSV_EPARSE) {
                return false;
            }
            // A quotation mark inside an unquoted cell means inches: 3/4" trim.
            csv_set_opts(&parser_, kLenient);
            at += csv_parse(&parser_, line.data() + at, 1, takeCell, takeRow, this);
            csv_set_opts(&parser_, kStrict);
        }
        return true;
    }

    [[nodiscard]] model::Error refusal(std::int64_t line) const {
        return model::cannotBeMet(
            model::saying("%1:%2: a quotation mark inside a quoted cell must be written twice, as "
                          "in \"3/4\"\" trim\" (the row begins on line %3)",
                          file_, line, row_.line));
    }

    std::string file_;
    csv_parser parser_{};
    CsvRow row_;
    bool inRow_ = false;
    std::vector<CsvRow> rows_;
};

// "sep=;" as some spreadsheets write it before the headings. Takes it off `text`.
std::optional<char> separatorLine(std::string_view& text) {
    Lines lines(text);
    if (lines.done()) {
        return std::nullopt;
    }
    const auto line = lines.next();
    std::string_view said = line;
    while (!said.empty() && (said.back() == '\n' || said.back() == '\r')) {
        said.remove_suffix(1);
    }
    if (said.size() == 6 && said.front() == '"' && said.back() == '"') {
        said = said.substr(1, 4);
    }
    if (said.size() != 5 || model::folded(said.substr(0, 3)) != "sep" || said[3] != '=') {
        return std::nullopt;
    }
    text.remove_prefix(line.size());
    return said[4];
}

model::Result<void> checkBytes(std::string_view bytes, const std::string& file) {
    if (bytes.size() > kLargestFile) {
        return wholeFile(file, "is larger than 64 MiB: bring it in parts");
    }
    if (bytes.substr(0, 2) == "\xFF\xFE" || bytes.substr(0, 2) == "\xFE\xFF") {
        return wholeFile(file, "is UTF-16 text: save it again as \"CSV UTF-8\" in the spreadsheet");
    }
    if (bytes.substr(0, 2) == "PK") {
        return wholeFile(file,
                         "is a spreadsheet or a zip, not CSV: save the sheet as \"CSV UTF-8\"");
    }
    if (const auto line = lineOfControlByte(bytes); line > 0) {
        return wholeFile(file + ":" + std::to_string(line),
                         "holds bytes that no text has, so it is not a CSV file: save it again as "
                         "\"CSV UTF-8\"");
    }
    if (!model::isUtf8(bytes)) {
        return wholeFile(file + ":" + std::to_string(lineNotUtf8(bytes)),
                         "is not UTF-8 text: save it again as \"CSV UTF-8\" in the spreadsheet");
    }
    return {};
}

}  // namespace

model::Result<CsvTable> readCsv(std::string_view bytes, const std::string& file) {
    if (auto checked = checkBytes(bytes, file); !checked.ok()) {
        return checked.error();
    }
    if (bytes.substr(0, 3) == "\xEF\xBB\xBF") {
        bytes.remove_prefix(3);
    }
    CsvTable table;
    const auto said = separatorLine(bytes);
    table.separator = said ? *said : separatorOf(bytes);
    if (table.separator == '"') {
        return wholeFile(file + ":1", "a quotation mark can't stand between cells: write sep=,");
    }
    auto rows = Reader(table.separator, file).read(bytes, said ? 2 : 1);
    if (!rows.ok()) {
        return rows.error();
    }
    if (rows.value().empty()) {
        return wholeFile(file, "is empty: its first line must hold the headings of the columns");
    }
    table.headings = std::move(rows.value().front());
    rows.value().erase(rows.value().begin());
    table.rows = std::move(rows).value();
    Problems problems(file);
    const std::size_t columns = table.headings.cells.size();
    if (columns > kMostColumns) {
        return wholeFile(file + ":" + std::to_string(table.headings.line),
                         "has more than 256 columns: leave only those to be brought in");
    }
    for (auto& row : table.rows) {
        while (row.cells.size() > columns && row.cells.back().empty()) {
            row.cells.pop_back();
        }
        if (row.cells.size() > columns) {
            problems.add(row.line, "",
                         (table.separator == ','
                              ? model::saying("has %1 cells under %2 headings: put quotation marks "
                                              "around a cell that holds a comma",
                                              row.cells.size(), columns)
                              : model::saying("has %1 cells under %2 headings: put quotation marks "
                                              "around a cell that holds a separator",
                                              row.cells.size(), columns))
                             .text());
        }
        row.cells.resize(columns);
    }
    if (!problems.none()) {
        return problems.asError();
    }
    return table;
}

model::Result<std::string> readWholeFile(const std::string& path) {
    std::error_code failed;
    const auto status = std::filesystem::status(path, failed);
    if (!std::filesystem::exists(status)) {
        return wholeFile(path, "there is no such file: check the name and the folder");
    }
    if (std::filesystem::is_directory(status)) {
        return wholeFile(path, "is a folder: name the file in it");
    }
    std::ifstream in(path, std::ios::binary);
    std::string bytes;
    std::array<char, 1 << 16> part{};
    while (in && bytes.size() <= kLargestFile) {
        in.read(part.data(), static_cast<std::streamsize>(part.size()));
        bytes.append(part.data(), static_cast<std::size_t>(in.gcount()));
    }
    if (!in.eof() && bytes.size() <= kLargestFile) {
        return wholeFile(path, "can't be read: check who may read it");
    }
    if (bytes.size() > kLargestFile) {
        return wholeFile(path, "is larger than 64 MiB: bring it in parts");
    }
    return bytes;
}

}  // namespace ledgerboard::intake
