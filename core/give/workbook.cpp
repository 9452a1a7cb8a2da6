#include "core/give/workbook.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <unistd.h>
#include <xlsxwriter.h>

namespace ledgerboard::give {

namespace {

constexpr std::size_t kMostRows = 1'048'575;
constexpr std::size_t kMostColumns = 16'384;
constexpr std::size_t kMostInCell = 32'767;
constexpr std::size_t kMostInName = 31;

// A file of our own in the system's place for such files, gone at the end.
class TemporaryFile {
  public:
    TemporaryFile() {
        std::error_code none;
        path_ = (std::filesystem::temp_directory_path(none) / "ledgerboard-").string() +
                std::string(6, 'X');  // what mkstemp fills in
        const int file = ::mkstemp(path_.data());
        isThere_ = file >= 0;
        if (isThere_) {
            ::close(file);
        }
    }

    TemporaryFile(const TemporaryFile&) = delete;
    TemporaryFile& operator=(const TemporaryFile&) = delete;

    ~TemporaryFile() {
        if (isThere_) {
            ::unlink(path_.c_str());
        }
    }

    [[nodiscard]] bool isThere() const { return isThere_; }

    [[nodiscard]] const std::string& path() const { return path_; }

  private:
    std::string path_;
    bool isThere_ = false;
};

// The first characters of a text, whole ones. Requires: UTF-8.
std::string firstCharacters(const std::string& text, std::size_t most) {
    std::size_t at = 0;
    for (std::size_t count = 0; at < text.size(); ++at) {
        const bool begins = (static_cast<unsigned char>(text[at]) & 0xC0) != 0x80;
        if (begins && ++count > most) {
            break;
        }
    }
    return text.substr(0, at);
}

std::string sheetName(const std::string& name) {
    std::string out = name;
    std::replace_if(
        out.begin(), out.end(),
        [](char c) { return std::string_view("[]:*?/\\'").find(c) != std::string_view::npos; },
        ' ');
    return firstCharacters(out, kMostInName);
}

double asDouble(const Cell& cell) {
    if (const auto* money = std::get_if<model::Money>(&cell)) {
        return static_cast<double>(money->minor()) / 100;
    }
    if (const auto* quantity = std::get_if<model::Quantity>(&cell)) {
        return static_cast<double>(quantity->thousandths()) / 1000;
    }
    if (const auto* percent = std::get_if<model::Percent>(&cell)) {
        return static_cast<double>(percent->basisPoints()) / 10'000;  // 1 is 100 %
    }
    if (const auto* count = std::get_if<std::int64_t>(&cell)) {
        return static_cast<double>(*count);
    }
    return 0;
}

// Added up exactly: money, quantities and counts.
double sumOf(const Sheet& sheet, std::size_t column) {
    std::int64_t thousandths = 0;
    for (const auto& row : sheet.rows) {
        thousandths = model::addChecked(thousandths, std::llround(asDouble(row[column]) * 1000));
    }
    return static_cast<double>(thousandths) / 1000;
}

// One workbook being written. libxlsxwriter keeps what it is given until it is closed.
class Writer {
  public:
    explicit Writer(const std::string& path)
        : book_(workbook_new(path.c_str())),
          heading_(workbook_add_format(book_)),
          total_(workbook_add_format(book_)) {
        format_set_bold(heading_);
        format_set_text_wrap(heading_);
        format_set_bottom(heading_, LXW_BORDER_THIN);
        format_set_align(heading_, LXW_ALIGN_VERTICAL_TOP);
        format_set_bold(total_);
        format_set_top(total_, LXW_BORDER_THIN);
        for (const Form form :
             {Form::Text, Form::Money, Form::Quantity, Form::Percent, Form::Count, Form::Date}) {
            plain_.push_back(formatFor(form, false));
            bold_.push_back(formatFor(form, true));
        }
    }

    void add(const Sheet& sheet) {
        lxw_worksheet* page = workbook_add_worksheet(book_, sheetName(sheet.name).c_str());
        writeHeadings(page, sheet);
        for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
            for (std::size_t column = 0; column < sheet.columns.size(); ++column) {
                write(page, sheet, row, column);
            }
        }
        writeTotals(page, sheet);
        setUpPrint(page, sheet);
    }

    lxw_error close() { return workbook_close(book_); }

  private:
    lxw_format* formatFor(Form form, bool isTotal) {
        lxw_format* format = workbook_add_format(book_);
        static constexpr const char* kNumbers[] = {"@",     "#,##0.00", "#,##0.###",
                                                   "0.0#%", "#,##0",    "yyyy-mm-dd"};
        format_set_num_format(format, kNumbers[static_cast<std::size_t>(form)]);
        if (form == Form::Text) {
            format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
        }
        if (isTotal) {
            format_set_bold(format);
            format_set_top(format, LXW_BORDER_THIN);
        }
        return format;
    }

    void writeHeadings(lxw_worksheet* page, const Sheet& sheet) {
        for (std::size_t k = 0; k < sheet.columns.size(); ++k) {
            const auto column = static_cast<lxw_col_t>(k);
            worksheet_write_string(page, 0, column, sheet.columns[k].heading.c_str(), heading_);
            std::size_t widest = std::min<std::size_t>(sheet.columns[k].heading.size(), 14);
            for (const auto& row : sheet.rows) {
                const auto* text = std::get_if<std::string>(&row[k]);
                widest = std::max(widest, text != nullptr ? text->size() : std::size_t{11});
            }
            const double width = static_cast<double>(std::min<std::size_t>(widest, 48)) + 1;
            worksheet_set_column(page, column, column, width, nullptr);
        }
    }

    void write(lxw_worksheet* page, const Sheet& sheet, std::size_t at, std::size_t k) {
        const Cell& cell = sheet.rows[at][k];
        const auto row = static_cast<lxw_row_t>(at + 1);
        const auto column = static_cast<lxw_col_t>(k);
        lxw_format* format = plain_[static_cast<std::size_t>(sheet.columns[k].form)];
        if (std::holds_alternative<std::monostate>(cell)) {
            return;
        }
        if (const auto* text = std::get_if<std::string>(&cell)) {
            worksheet_write_string(page, row, column, text->c_str(), format);
        } else if (const auto* date = std::get_if<model::Date>(&cell)) {
            lxw_datetime day{date->year(), date->month(), date->dayOfMonth(), 0, 0, 0};
            worksheet_write_datetime(page, row, column, &day, format);
        } else if (!sheet.columns[k].formula.empty()) {
            std::string formula = sheet.columns[k].formula;
            for (auto place = formula.find('#'); place != std::string::npos;
                 place = formula.find('#', place)) {
                formula.replace(place, 1, std::to_string(at + 2));
            }
            worksheet_write_formula_num(page, row, column, formula.c_str(), format, asDouble(cell));
        } else {
            worksheet_write_number(page, row, column, asDouble(cell), format);
        }
    }

    void writeTotals(lxw_worksheet* page, const Sheet& sheet) {
        const bool any = std::any_of(sheet.columns.begin(), sheet.columns.end(),
                                     [](const SheetColumn& column) { return column.isTotalled; });
        if (!any || sheet.rows.empty()) {
            return;
        }
        const auto last = static_cast<lxw_row_t>(sheet.rows.size() + 1);
        for (std::size_t k = 0; k < sheet.columns.size(); ++k) {
            const auto column = static_cast<lxw_col_t>(k);
            if (!sheet.columns[k].isTotalled) {
                worksheet_write_string(page, last, column, k == 0 ? "Total" : "", total_);
                continue;
            }
            const std::string letters = columnLetters(k);
            const std::string formula =
                "=SUM(" + letters + "2:" + letters + std::to_string(last) + ")";
            worksheet_write_formula_num(page, last, column, formula.c_str(),
                                        bold_[static_cast<std::size_t>(sheet.columns[k].form)],
                                        sumOf(sheet, k));
        }
    }

    static void setUpPrint(lxw_worksheet* page, const Sheet& sheet) {
        worksheet_freeze_panes(page, 1, 0);
        worksheet_repeat_rows(page, 0, 0);
        if (sheet.columns.size() > 6) {
            worksheet_set_landscape(page);
        }
        worksheet_fit_to_pages(page, 1, 0);
        // & begins a code in headers.
        std::string title;
        for (const char c : firstCharacters(sheet.title, 120)) {
            title += c == '&' ? "&&" : std::string(1, c);
        }
        worksheet_set_header(page, ("&L" + title).c_str());
        worksheet_set_footer(page, "&L&A&RPage &P of &N");
        if (!sheet.rows.empty()) {
            worksheet_autofilter(page, 0, 0, static_cast<lxw_row_t>(sheet.rows.size()),
                                 static_cast<lxw_col_t>(sheet.columns.size() - 1));
        }
    }

    lxw_workbook* book_;
    lxw_format* heading_;
    lxw_format* total_;
    std::vector<lxw_format*> plain_;  // by form
    std::vector<lxw_format*> bold_;   // the same in the last row
};

model::Result<void> checkSizes(const Sheet& sheet) {
    if (sheet.rows.size() > kMostRows - 1 || sheet.columns.size() > kMostColumns) {
        return model::cannotBeMet("\"" + sheet.name +
                                  "\" is more than a spreadsheet holds: give it as csv");
    }
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        for (std::size_t k = 0; k < sheet.columns.size(); ++k) {
            const auto* text = std::get_if<std::string>(&sheet.rows[row][k]);
            if (text != nullptr && text->size() > kMostInCell) {
                return model::cannotBeMet("row " + std::to_string(row + 2) + ", \"" +
                                          sheet.columns[k].heading +
                                          "\" is longer than a spreadsheet's cell holds (32,767 "
                                          "characters): give it as csv");
            }
        }
    }
    return {};
}

}  // namespace

std::string columnLetters(std::size_t column) {
    std::string letters;
    for (std::size_t left = column + 1; left > 0; left = (left - 1) / 26) {
        letters.insert(letters.begin(), static_cast<char>('A' + (left - 1) % 26));
    }
    return letters;
}

model::Result<std::string> workbookBytes(const std::vector<Sheet>& sheets) {
    for (const Sheet& sheet : sheets) {
        if (auto good = checkSizes(sheet); !good.ok()) {
            return good.error();
        }
    }
    const TemporaryFile file;
    if (!file.isThere()) {
        return model::cannotBeMet(
            "the spreadsheet could not be written: the folder for temporary files can't be "
            "written (TMPDIR says which it is)");
    }
    Writer writer(file.path());
    for (const Sheet& sheet : sheets) {
        writer.add(sheet);
    }
    if (const lxw_error error = writer.close(); error != LXW_NO_ERROR) {
        return model::cannotBeMet(std::string("the spreadsheet could not be written: ") +
                                  lxw_strerror(error));
    }
    std::ifstream in(file.path(), std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(in), {});
}

}  // namespace ledgerboard::give
