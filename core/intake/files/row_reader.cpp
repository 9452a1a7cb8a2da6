#include "core/intake/files/row_reader.h"

#include <algorithm>
#include <array>

#include "core/intake/files/dates.h"
#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

namespace f = model::field;
using model::Date;
using model::Field;
using model::FieldType;
using model::Value;

constexpr int kFiveYears = 1827;  // days, with two leap days

// Figures that may be below 0: a change can save money and days.
constexpr std::array kMayBeNegative = {f::Change::amount, f::Change::days, f::Change::split};

// Texts in which a line break is meant.
constexpr std::array kLongTexts = {f::Item::note,   f::Item::instructions, f::Item::condition,
                                   f::Item::reason, f::Item::source,       f::Item::estimateReason,
                                   f::Crew::note,   f::Contract::note,     f::Contract::whoBuysWhat,
                                   f::Change::why,  f::Spend::note,        f::Mark::note,
                                   f::Draw::note};

// Dates that may lie long before the job: the day a price was true.
constexpr std::array kMayBeOld = {f::Price::asOf};

constexpr std::array kUnitFields = {f::Item::unit, f::Price::unit};

struct OtherWord {
    model::FieldCode field;
    std::string_view written;
    std::string_view meant;
};

// Words people write for one of a field's own words: common practice, no source.
constexpr std::array kOtherWords = {
    OtherWord{f::Spend::type, "bill", "invoice"},
    OtherWord{f::Spend::type, "credit", "refund"},
    OtherWord{f::Spend::type, "return", "refund"},
    OtherWord{f::Contract::type, "sub", "subcontract"},
    OtherWord{f::Contract::type, "purchaseorder", "order"},
    OtherWord{f::Contract::type, "po", "order"},
    OtherWord{f::Item::treatment, "demolish", "remove"},
    OtherWord{f::Item::treatment, "demo", "remove"},
    OtherWord{f::Item::treatment, "tearout", "remove"},
    OtherWord{f::Item::treatment, "fix", "repair"},
    OtherWord{f::Price::treatment, "demolish", "remove"},
    OtherWord{f::Price::treatment, "demo", "remove"},
    OtherWord{f::Price::treatment, "tearout", "remove"},
    OtherWord{f::Price::treatment, "fix", "repair"},
};

struct UnitWord {
    std::string_view unit;
    std::string_view written;  // folded, without points, semicolons between
};

// One way of writing each unit, so that scope and price book meet: common practice, no source.
constexpr std::array kUnits = {
    UnitWord{"sq ft", "sf;sqft;squarefoot;squarefeet;sqfeet;squareft;ft2"},
    UnitWord{"sq yd", "sy;sqyd;squareyard;squareyards"},
    UnitWord{"lin ft", "lf;linft;linearfoot;linearfeet;linealfeet;linealfoot"},
    UnitWord{"cu yd", "cy;cuyd;cubicyard;cubicyards"},
    UnitWord{"each", "ea;each;piece;pieces;pc;pcs"},
    UnitWord{"gallon", "gal;gals;gallon;gallons"},
    UnitWord{"hour", "hr;hrs;hour;hours"},
    UnitWord{"day", "day;days"},
};

bool isIn(std::span<const model::FieldCode> list, model::FieldCode code) {
    return std::find(list.begin(), list.end(), code) != list.end();
}

std::string usualUnit(const std::string& written) {
    std::string key = model::folded(written);
    std::erase(key, '.');
    for (const auto& unit : kUnits) {
        std::string_view words = unit.written;
        while (!words.empty()) {
            const auto end = words.find(';');
            if (words.substr(0, end) == key) {
                return std::string(unit.unit);
            }
            words = end == std::string_view::npos ? std::string_view{} : words.substr(end + 1);
        }
    }
    return written;
}

std::string usualWord(const Field& field, std::string_view written) {
    for (const auto& word : kOtherWords) {
        if (word.field == field.code && word.written == model::folded(written)) {
            return std::string(word.meant);
        }
    }
    return std::string(written);
}

// Spaces that do not break (U+00A0, U+202F), as spreadsheets write them, as plain ones.
std::string withPlainSpaces(std::string_view text) {
    std::string out(text);
    for (const std::string_view wide : {"\xC2\xA0", "\xE2\x80\xAF"}) {
        for (auto at = out.find(wide); at != std::string::npos; at = out.find(wide, at)) {
            out.replace(at, wide.size(), " ");
        }
    }
    return out;
}

// A cell in which the spreadsheet itself failed.
bool isSpreadsheetError(std::string_view text) {
    for (const auto* mark : {"#REF!", "#N/A", "#VALUE!", "#DIV/0!", "#NAME?", "#NUM!", "#NULL!"}) {
        if (text == mark) {
            return true;
        }
    }
    return text.size() >= 3 && text.find_first_not_of('#') == std::string_view::npos;
}

model::Result<void> checkDate(const Field& field, Date date, const DateRange& range) {
    const auto earliest = Date::fromYmd(1900, 1, 1).value();
    const Date from = isIn(kMayBeOld, field.code) || model::jobFieldOf(field.kind) == nullptr
                          ? earliest
                          : range.from;
    if (date < from || date > range.to) {
        return model::wrongUse(
            date < earliest
                ? model::saying("%1 is before 1900: check the year", date.toString())
                : model::saying("%1 is %2: check the year", date.toString(), range.about));
    }
    return {};
}

// Whether a value can be true of a house under renovation.
model::Result<void> checkRange(const Field& field, const Value& value, const DateRange& range) {
    const auto* units = std::get_if<std::int64_t>(&value);
    if (units == nullptr) {
        return {};
    }
    if (field.type == FieldType::Date) {
        return checkDate(field, Date::fromDays(static_cast<std::int32_t>(*units)), range);
    }
    const bool figure = field.type == FieldType::Money || field.type == FieldType::Quantity ||
                        field.type == FieldType::Percent || field.type == FieldType::Count;
    if (figure && *units < 0 && !isIn(kMayBeNegative, field.code)) {
        return model::wrongUse(
            field.kind == model::Kind::Spend
                ? model::saying("is below 0: write amounts without a minus; money that came back "
                                "has the kind refund")
                : model::saying("is below 0: write it without a minus"));
    }
    if (field.type == FieldType::Percent && *units > model::Percent::whole().basisPoints()) {
        return model::wrongUse("is more than 100 percent: write 0 to 100");
    }
    if (field.code == f::Draw::number && *units < 1) {
        return model::wrongUse("is no number of a draw: count them from 1");
    }
    return {};
}

// One use of readRows.
class Reading {
  public:
    Reading(const BringKind& kind, const CsvTable& table, const std::vector<Column>& columns,
            const Finder& finder, const DateRange& range, Problems& problems)
        : kind_(kind),
          table_(table),
          columns_(columns),
          find_(finder.findRecord()),
          range_(range),
          problems_(problems) {
        for (const auto& column : columns) {
            orders_.push_back(column.field != nullptr && column.field->type == FieldType::Date
                                  ? orderOf(column.at)
                                  : DateOrder::Unknown);
            if (column.field == nullptr && !column.isAfter) {
                spaceColumn_ = &column;
            }
        }
    }

    std::vector<BroughtRow> run() {
        std::vector<BroughtRow> out;
        out.reserve(table_.rows.size());
        for (const auto& row : table_.rows) {
            out.push_back(read(row));
        }
        return out;
    }

  private:
    [[nodiscard]] DateOrder orderOf(std::size_t at) const {
        std::vector<std::string_view> cells;
        for (const auto& row : table_.rows) {
            cells.push_back(row.cells[at]);
        }
        return dateOrderOf(cells);
    }

    BroughtRow read(const CsvRow& row) {
        BroughtRow out{row.line, {}, {}};
        bool itemRead = false;
        for (std::size_t k = 0; k < columns_.size(); ++k) {
            const Column& column = columns_[k];
            if (column.field == nullptr) {
                continue;
            }
            auto value = readCell(*column.field, row, column, orders_[k]);
            if (!value.ok()) {
                problems_.add(row.line, column.heading, value.error().message);
                out.unreadable.push_back(column.field->code);
            } else if (!model::isEmpty(value.value())) {
                out.values.emplace(column.field->code, std::move(value).value());
            } else if (isIn(kind_.needed, column.field->code)) {
                problems_.add(
                    row.line, column.heading,
                    model::saying("is empty: say %1", lowerFirst(column.field->says)).text());
            }
            itemRead = itemRead || (column.field->meant == model::Kind::Item &&
                                    column.field->type == FieldType::Ref &&
                                    !model::trimmed(row.cells[column.at]).empty());
        }
        if (spaceColumn_ != nullptr && !itemRead && kind_.kind == model::Kind::Spend &&
            !row.cells[spaceColumn_->at].empty()) {
            problems_.add(
                row.line, spaceColumn_->heading,
                model::saying("names a space and the row names no item: spend is for an item or "
                              "for the whole job; name the item, or leave both empty")
                    .text());
        }
        return out;
    }

    static std::string lowerFirst(std::string_view text) {
        std::string out(text);
        if (!out.empty() && out[0] >= 'A' && out[0] <= 'Z') {
            out[0] = static_cast<char>(out[0] - 'A' + 'a');
        }
        return out;
    }

    // "cabinets" beside a cell "Kitchen" is Kitchen/cabinets.
    [[nodiscard]] std::string withSpace(const Field& field, const CsvRow& row,
                                        std::string text) const {
        if (spaceColumn_ == nullptr || field.meant != model::Kind::Item ||
            field.type != FieldType::Ref || text.empty()) {
            return text;
        }
        const std::string& space = row.cells[spaceColumn_->at];
        const std::string before = model::folded(space) + "/";
        if (space.empty() || model::folded(text).compare(0, before.size(), before) == 0) {
            return text;
        }
        return space + "/" + text;
    }

    model::Result<Value> readCell(const Field& field, const CsvRow& row, const Column& column,
                                  DateOrder order) const {
        const std::string text = withSpace(field, row, cleanText(field, row.cells[column.at]));
        if (text.empty()) {
            return Value{};
        }
        if (isSpreadsheetError(text)) {
            return model::wrongUse(
                model::saying("\"%1\" is what a spreadsheet shows for a cell it could not work "
                              "out: mend the sheet",
                              text));
        }
        model::Result<Value> value = Value{};
        if (field.type == FieldType::Date) {
            auto date = parseDateIn(text, order);
            if (!date.ok()) {
                return date.error();
            }
            value = model::valueOf(date.value());
        } else {
            const bool isUnit = isIn(kUnitFields, field.code);
            value =
                model::parseValue(field, isUnit ? usualUnit(text) : usualWord(field, text), find_);
        }
        if (!value.ok()) {
            return value;
        }
        for (const auto& checked :
             {checkRange(field, value.value(), range_), model::checkValue(field, value.value())}) {
            if (!checked.ok()) {
                return checked.error();
            }
        }
        return value;
    }

    const BringKind& kind_;
    const CsvTable& table_;
    const std::vector<Column>& columns_;
    model::FindRecord find_;
    const DateRange& range_;
    Problems& problems_;
    std::vector<DateOrder> orders_;  // of each column
    const Column* spaceColumn_ = nullptr;
};

}  // namespace

DateRange datesAround(const std::optional<Date>& begin, Date today) {
    const Date middle = begin.value_or(today);
    return {std::max(middle - kFiveYears, Date::fromYmd(1900, 1, 1).value()), middle + kFiveYears,
            "more than five years from " +
                (begin ? "the beginning of the job (" + begin->toString() + ")"
                       : "today (" + today.toString() + ")")};
}

std::string cleanText(const Field& field, std::string_view text) {
    const bool isName = field.type != FieldType::Text || !isIn(kLongTexts, field.code);
    const std::string plain = withPlainSpaces(text);
    text = model::trimmed(plain);
    // A CSV file of ours sets an apostrophe before what a spreadsheet would take for a formula.
    constexpr std::string_view kFormulaStarts = "=+-@\t\r";
    if (field.type == FieldType::Text && text.size() > 1 && text.front() == '\'' &&
        kFormulaStarts.find(text[1]) != std::string_view::npos) {
        text.remove_prefix(1);
    }
    std::string out;
    for (std::size_t k = 0; k < text.size(); ++k) {
        char c = text[k];
        if (c == '\r') {
            if (k + 1 < text.size() && text[k + 1] == '\n') {
                continue;
            }
            c = '\n';
        }
        if (isName && (c == '\n' || c == '\t' || c == ' ')) {
            if (out.empty() || out.back() != ' ') {
                out += ' ';
            }
            continue;
        }
        out += c;
    }
    return out;
}

std::vector<BroughtRow> readRows(const BringKind& kind, const CsvTable& table,
                                 const std::vector<Column>& columns, const Finder& finder,
                                 const DateRange& range, Problems& problems) {
    return Reading(kind, table, columns, finder, range, problems).run();
}

}  // namespace ledgerboard::intake
